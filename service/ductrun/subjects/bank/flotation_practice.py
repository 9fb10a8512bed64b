"""What a bank floats in, and what its ducts are and hold."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import Default, by_rule, choice, number, quantity
from ductrun.kit.forms import ConcreteDensity, DuctMass, FluidDensity, Form, Interval, Omissible, PullAnchor, between
from ductrun.subjects.bank.choices import DuctContents, DuctMaterial, FlotationMedium
from ductrun.units import Density, Length

MEDIUM = choice("flotation.medium", FlotationMedium)
CONTENTS = choice("flotation.contents", DuctContents)
DENSITIES: dict[FlotationMedium, Default[Density]] = {
    medium: quantity(f"flotation.{medium.value}_density", Density) for medium in FlotationMedium
}
ENVELOPE_DENSITY = quantity("flotation.envelope_density", Density)
EARTH_DENSITY = quantity("flotation.saturated_soil_density", Density)
STATION_SPACING = quantity("flotation.station_spacing", Length)
SAFETY_FACTOR = number("flotation.safety_factor")
DUCT_MATERIAL = choice("flotation.duct_material", DuctMaterial)


class Floating(Form):
    """What a bank floats in, and how it is held down."""

    medium: Omissible[FlotationMedium] = Field(
        default=None,
        description="What surrounds it.",
        examples=["concrete"],
        json_schema_extra=MEDIUM.stated,
    )
    fluid_density: Omissible[FluidDensity] = Field(
        default=None,
        description="Density of the fluid.",
        examples=[{"value": 150, "unit": "lb/ft3"}],
        json_schema_extra=by_rule("that of the medium"),
    )
    contents: Omissible[DuctContents] = Field(
        default=None,
        description="What is in the ducts.",
        examples=["empty"],
        json_schema_extra=CONTENTS.stated,
    )
    cable_mass_per_length: Omissible[DuctMass] = Field(
        default=None,
        description="Mass of the cables in each duct, if they are in it.",
        examples=[{"value": 5, "unit": "lb/ft"}],
    )
    duct_mass_per_length: Omissible[DuctMass] = Field(
        default=None,
        description="Mass of an empty duct.",
        examples=[{"value": 2, "unit": "lb/ft"}],
        json_schema_extra=by_rule("that of its wall and duct_density; none where no wall is on file"),
    )
    duct_material: Omissible[DuctMaterial] = Field(
        default=None,
        description="What ducts that are given by their diameters are made of; a listed one tells it by its type.",
        examples=["pvc"],
        json_schema_extra=DUCT_MATERIAL.stated,
    )
    duct_density: Omissible[Annotated[Density, between(Density, 20, 700, "lb/ft3")]] = Field(
        default=None,
        description="Density of what the ducts are made of, where duct_mass_per_length is left out.",
        examples=[{"value": 87.4, "unit": "lb/ft3"}],
        json_schema_extra=by_rule("that of their material; of the lightest one, where they differ"),
    )
    concrete_density: Omissible[ConcreteDensity] = Field(
        default=None,
        description="Density of the concrete around ducts in groundwater, whose weight holds them.",
        examples=[{"value": 145, "unit": "lb/ft3"}],
        json_schema_extra=ENVELOPE_DENSITY.stated,
    )
    saturated_soil_density: Omissible[Annotated[Density, between(Density, 50, 200, "lb/ft3")]] = Field(
        default=None,
        description="Density of the earth over ducts in groundwater, full of water, with that water.",
        examples=[{"value": 120, "unit": "lb/ft3"}],
        json_schema_extra=EARTH_DENSITY.stated,
    )
    lift_height: Omissible[Interval] = Field(
        default=None,
        description="Depth of a pour that is liquid at once, wherever it starts; the whole pour if left out.",
        examples=[{"value": 12, "unit": "in"}],
    )
    station_spacing: Omissible[Interval] = Field(
        default=None,
        description="Distance of the stations that hold the bank down.",
        examples=[{"value": 5, "unit": "ft"}],
        json_schema_extra=STATION_SPACING.stated,
    )
    tie_down_capacity: Omissible[PullAnchor] = Field(
        default=None,
        description="What one tie-down holds; without it tie-downs are not counted.",
        examples=[{"value": 500, "unit": "lbf"}],
    )
    safety_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None,
        description="Factor on the uplift.",
        examples=[1.5],
        json_schema_extra=SAFETY_FACTOR.stated,
    )
