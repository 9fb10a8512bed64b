"""What is said of earth, water, traffic and support around ducts, and what they are held against."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from ductrun.kit.backing import backing_of
from ductrun.kit.defaults import Default, by_rule, choice, number, quantity
from ductrun.kit.forms import Depth, DuctMass, FluidDensity, Form, Interval, Omissible, TrenchWidth, between
from ductrun.subjects.ground.choices import (
    ArchingSoil,
    Compaction,
    EarthLoadMethod,
    Embedment,
    LiveLoadMethod,
    PlasticMaterial,
    Traffic,
)
from ductrun.tables import TABLES
from ductrun.units import Angle, Density, Force, Length, Pressure

SOIL_DENSITY = quantity("earth_load.soil_density", Density)
SATURATED_DENSITY = quantity("earth_load.saturated_density", Density)
GROUNDWATER_DEPTH = quantity("earth_load.groundwater_depth", Length)
METHOD = choice("earth_load.method", EarthLoadMethod)
LAGS = {
    EarthLoadMethod.PRISM: number("earth_load.prism_lag"),
    EarthLoadMethod.TRENCH: number("earth_load.trench_lag"),
}
ARCHING_SOIL = choice("earth_load.arching_soil", ArchingSoil)
EMBEDMENT = choice("earth_load.embedment", Embedment)
COMPACTION = choice("earth_load.compaction", Compaction)
BEDDING_ANGLE = quantity("earth_load.bedding_angle", Angle)
LIVE_LOAD_METHOD = choice("earth_load.live_load_method", LiveLoadMethod)
WHEEL_LOAD = quantity("earth_load.wheel_load", Force)
SPREAD = number("earth_load.spread_ratio")
DEFLECTION_LIMIT = number("earth_load.deflection_limit")
FLOTATION_FACTOR = number("earth_load.flotation_safety_factor")
CONCRETE_DENSITY = quantity("flotation.concrete_density", Density)
DUCT_DENSITIES = {
    PlasticMaterial(row.material): Default(Density.parse(row.density_lb_per_ft3, "lb/ft3"), backing_of(row))
    for row in TABLES["duct_densities"]
    if row.material in {str(material) for material in PlasticMaterial}
}
MATERIALS = {PlasticMaterial(row.material): row for row in TABLES["duct_materials"]}
_SOFTER = backing_of(MATERIALS[PlasticMaterial.HDPE]).of("the softer of the two")
MATERIAL = Default(PlasticMaterial.HDPE, _SOFTER)

LEAST_STIFFNESS, MOST_STIFFNESS = 1, 1_000_000  # psi
Stiffness = Annotated[Pressure, between(Pressure, LEAST_STIFFNESS, MOST_STIFFNESS, "psi")]
Modulus = Annotated[Pressure, between(Pressure, 1_000, 100_000_000, "psi")]
WallStress = Annotated[Pressure, between(Pressure, 10, 100_000, "psi")]
SoilModulus = Annotated[Pressure, between(Pressure, 0, 20_000, "psi")]
EarthDensity = Annotated[Density, between(Density, 50, 200, "lb/ft3")]
WheelLoad = Annotated[Force, between(Force, 1, 500_000, "lbf")]
SupportAngle = Annotated[Angle, between(Angle, 0, 180, "deg")]


def _by_material(column: str) -> dict[str, Any]:
    return by_rule(", ".join(f"{row.material} {getattr(row, column):g} psi" for row in MATERIALS.values()))


class EarthLoading(Form):
    """What lies and passes over ducts, how they are bedded, and the limits they are held against."""

    traffic: Traffic = Field(
        description="What passes over them: nothing, or the axle of H-20 and HS-20.", examples=["h_20"]
    )
    wheel_load: Omissible[WheelLoad] = Field(
        default=None,
        description="Load of one wheel of the axle, under traffic.",
        examples=[{"value": 16000, "unit": "lbf"}],
        json_schema_extra=WHEEL_LOAD.stated,
    )
    live_load_method: Omissible[LiveLoadMethod] = Field(
        default=None,
        description="How the load of a wheel is found at the depth of the ducts; the governing one is the largest.",
        examples=["governing"],
        json_schema_extra=LIVE_LOAD_METHOD.stated,
    )
    load_spread_ratio: Omissible[Annotated[float, Field(ge=0, le=2)]] = Field(
        default=None,
        description="By how much the load of a tire print widens with the depth, for the AASHTO spread.",
        examples=[1.15],
        json_schema_extra=SPREAD.stated,
    )
    soil_density: Omissible[EarthDensity] = Field(
        default=None,
        description="Mass of the earth over the ducts per volume.",
        examples=[{"value": 120, "unit": "lb/ft3"}],
        json_schema_extra=SOIL_DENSITY.stated,
    )
    saturated_soil_density: Omissible[EarthDensity] = Field(
        default=None,
        description="Mass per volume of the earth below groundwater, for flotation.",
        examples=[{"value": 125, "unit": "lb/ft3"}],
        json_schema_extra=SATURATED_DENSITY.stated,
    )
    earth_load_method: Omissible[EarthLoadMethod] = Field(
        default=None,
        description="How earth loads the ducts: the prism above them, or arching on the walls of the trench.",
        examples=["prism"],
        json_schema_extra=METHOD.stated,
    )
    trench_width: Omissible[TrenchWidth] = Field(
        default=None,
        description="Width of the trench at the top of the ducts, for arching.",
        examples=[{"value": 24, "unit": "in"}],
    )
    arching_soil: Omissible[ArchingSoil] = Field(
        default=None,
        description="Fill that arches on the walls of the trench, where its width is given.",
        examples=["clay"],
        json_schema_extra=ARCHING_SOIL.stated,
    )
    lag_factor: Omissible[Annotated[float, Field(ge=1, le=3)]] = Field(
        default=None,
        description="By how much the deflection under the earth grows in the long term.",
        examples=[1],
        json_schema_extra=by_rule("; ".join(f"{method}: {lag.value:g}" for method, lag in LAGS.items())),
    )
    embedment: Omissible[Embedment] = Field(
        default=None,
        description="Soil around the ducts, in place of which its modulus may be given.",
        examples=["coarse_grained"],
        json_schema_extra=EMBEDMENT.stated,
    )
    compaction: Omissible[Compaction] = Field(
        default=None,
        description="How it is compacted.",
        examples=["moderate"],
        json_schema_extra=COMPACTION.stated,
    )
    soil_modulus: Omissible[SoilModulus] = Field(
        default=None,
        description="Modulus of soil reaction, in place of that of embedment and compaction.",
        examples=[{"value": 1000, "unit": "psi"}],
        json_schema_extra=by_rule("that of embedment and compaction"),
    )
    bedding_angle: Omissible[SupportAngle] = Field(
        default=None,
        description="Angle over which the bedding supports a duct.",
        examples=[{"value": 60, "unit": "deg"}],
        json_schema_extra=BEDDING_ANGLE.stated,
    )
    bedding_constant_ratio: Omissible[Annotated[float, Field(ge=0.05, le=0.2)]] = Field(
        default=None,
        description="Bedding constant of the deflection formula, in place of that of the angle.",
        examples=[0.1],
        json_schema_extra=by_rule("that of the bedding angle"),
    )
    duct_material: Omissible[PlasticMaterial] = Field(
        default=None,
        description="What ducts by their diameters and of no type are made of.",
        examples=["pvc"],
        json_schema_extra=MATERIAL.stated,
    )
    pipe_stiffness: Omissible[Stiffness] = Field(
        default=None,
        description="Stiffness of the ducts at 5 percent deflection.",
        examples=[{"value": 60, "unit": "psi"}],
        json_schema_extra=by_rule("the number of the class of DB and EB duct; of others by diameter, wall and modulus"),
    )
    modulus: Omissible[Modulus] = Field(
        default=None,
        description="Modulus of elasticity of the ducts for a moment.",
        examples=[{"value": 400000, "unit": "psi"}],
        json_schema_extra=_by_material("modulus_psi"),
    )
    long_term_modulus: Omissible[Modulus] = Field(
        default=None,
        description="Modulus of elasticity of the ducts for the long term, for buckling.",
        examples=[{"value": 140000, "unit": "psi"}],
        json_schema_extra=_by_material("long_term_modulus_psi"),
    )
    allowable_wall_stress: Omissible[WallStress] = Field(
        default=None,
        description="Compression that the wall of a duct bears for the long term.",
        examples=[{"value": 2000, "unit": "psi"}],
        json_schema_extra=_by_material("allowable_stress_psi"),
    )
    deflection_limit_percent: Omissible[Annotated[float, Field(ge=0.1, le=30)]] = Field(
        default=None,
        description="Most deflection of the vertical diameter.",
        examples=[5],
        json_schema_extra=DEFLECTION_LIMIT.stated,
    )
    duct_mass_per_length: Omissible[DuctMass] = Field(
        default=None,
        description="Mass of an empty duct, for flotation.",
        examples=[{"value": 2, "unit": "lb/ft"}],
        json_schema_extra=by_rule("that of its wall and duct_density; none where no wall is on file"),
    )
    duct_density: Omissible[FluidDensity] = Field(
        default=None,
        description="Density of what the ducts are made of, where duct_mass_per_length is left out.",
        examples=[{"value": 87.4, "unit": "lb/ft3"}],
        json_schema_extra=by_rule("; ".join(f"{name}: {one.value}" for name, one in DUCT_DENSITIES.items())),
    )
    flotation_safety_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None,
        description="What holds the ducts down, over the uplift of groundwater, at least.",
        examples=[1.5],
        json_schema_extra=FLOTATION_FACTOR.stated,
    )
    concrete_density: Omissible[FluidDensity] = Field(
        default=None,
        description="Density of the concrete, where the ducts are encased.",
        examples=[{"value": 150, "unit": "lb/ft3"}],
        json_schema_extra=CONCRETE_DENSITY.stated,
    )
    lift_height: Omissible[Interval] = Field(
        default=None,
        description="Depth of concrete that is liquid at once, where they are encased; the whole pour if left out.",
        examples=[{"value": 12, "unit": "in"}],
    )


class EarthAndWater(EarthLoading):
    """What loads ducts, with the groundwater of their place."""

    groundwater_depth: Omissible[Depth] = Field(
        default=None,
        description="Groundwater below grade, at its highest.",
        examples=[{"value": 10, "unit": "ft"}],
        json_schema_extra=GROUNDWATER_DEPTH.stated,
    )
