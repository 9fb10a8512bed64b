"""POST /v1/flotation: how hard ducts push upward, and what holds them down."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import bank as geometry
from ductrun.engineering import flotation as engineering
from ductrun.engineering.spacing import stations_by_distance
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, choice, number, quantity
from ductrun.kit.forms import (
    Clearance,
    DuctMass,
    FluidDensity,
    Form,
    Interval,
    Omissible,
    PullAnchor,
    RunLength,
)
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.subjects.bank.choices import DuctContents, FlotationMedium
from ductrun.subjects.bank.encasement import COVER
from ductrun.subjects.parts.bank import DuctBank, bank_of
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit, find_row
from ductrun.units import Density, Length

MEDIUM = choice("flotation.medium", FlotationMedium)
CONTENTS = choice("flotation.contents", DuctContents)
DENSITIES: dict[FlotationMedium, Default[Density]] = {
    medium: quantity(f"flotation.{medium.value}_density", Density) for medium in FlotationMedium
}
PVC_DENSITY = quantity("flotation.pvc_density", Density)
STATION_SPACING = quantity("flotation.station_spacing", Length)
SAFETY_FACTOR = number("flotation.safety_factor")
WATER = Density.parse(62.4, "lb/ft3")


class FlotationRequest(Form):
    """A bank in a fluid."""

    bank: DuctBank = Field(description="The duct bank.")
    medium: Omissible[FlotationMedium] = Field(default=None, description="What surrounds it.", examples=["concrete"])
    fluid_density: Omissible[FluidDensity] = Field(
        default=None, description="Density of the fluid.", examples=[{"value": 150, "unit": "lb/ft3"}]
    )
    contents: Omissible[DuctContents] = Field(default=None, description="What is in the ducts.", examples=["empty"])
    cable_mass_per_length: Omissible[DuctMass] = Field(
        default=None,
        description="Mass of the cables in each duct, if they are in it.",
        examples=[{"value": 5, "unit": "lb/ft"}],
    )
    duct_mass_per_length: Omissible[DuctMass] = Field(
        default=None, description="Mass of an empty duct.", examples=[{"value": 2, "unit": "lb/ft"}]
    )
    bottom_cover: Omissible[Clearance] = Field(
        default=None, description="Fluid below the bottom tier, for lifts.", examples=[{"value": 3, "unit": "in"}]
    )
    lift_height: Omissible[Interval] = Field(
        default=None,
        description="Depth of fluid that is liquid at once; the whole pour if left out.",
        examples=[{"value": 12, "unit": "in"}],
    )
    station_spacing: Omissible[Interval] = Field(
        default=None,
        description="Distance of the stations that hold the bank down.",
        examples=[{"value": 5, "unit": "ft"}],
    )
    anchor_capacity: Omissible[PullAnchor] = Field(
        default=None, description="What one anchor holds.", examples=[{"value": 500, "unit": "lbf"}]
    )
    safety_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None, description="Factor on the uplift.", examples=[1.5]
    )
    length: Omissible[RunLength] = Field(
        default=None, description="Length of the run, to count all anchors.", examples=[{"value": 300, "unit": "ft"}]
    )


class TierUplift(Struct, frozen=True, gc=False):
    """One tier."""

    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.")]
    duct_count: int
    uplift_per_duct: Annotated[answers.ForcePerLength, Meta(description="Of one duct; negative if it sinks.")]
    uplift: Annotated[answers.ForcePerLength, Meta(description="Of the tier.")]


class FlotationResult(Struct, frozen=True, gc=False):
    """The uplift and what holds it."""

    uplift_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Of the ducts in the worst live lift; 0 if none floats.")
    ]
    full_uplift_per_length: Annotated[
        answers.ForcePerLength, Meta(description="Of all ducts, with the whole depth liquid at once.")
    ]
    uplift_per_station: Annotated[answers.Force, Meta(description="On one station.")]
    hold_down_per_station: Annotated[answers.Force, Meta(description="The same with the safety factor.")]
    tiers: list[TierUplift]
    tie_down_count: Annotated[int, Meta(description="Anchors at each station.")]
    total_tie_down_count: Annotated[
        int | UnsetType, Meta(description="Anchors of the run, if its length is given.")
    ] = UNSET


def _duct_mass(
    conduit: ListedConduit | MeasuredConduit, pointer: str, request: FlotationRequest, sheet: Worksheet
) -> tuple[float, float | None]:
    """Give the mass per length of an empty duct [kg/m] and its inside diameter [m], where known."""
    if conduit.kind == "measured":
        inside: float | None = conduit.inside_diameter.si
        outside = conduit.outside_diameter.si if conduit.outside_diameter is not None else 0.0
        wall = (outside - conduit.inside_diameter.si) / 2
    else:
        row = find_row(conduit, sheet.within(pointer))
        outside = row.outside_diameter.si if row.outside_diameter else 0.0
        wall = float(row.minimum_wall_in) * 0.0254 if row.minimum_wall_in is not None else 0.0
        bore = row.inside_diameter
        inside = bore.si if bore is not None else (outside - 2 * wall if wall else None)
    if request.duct_mass_per_length is not None:
        return request.duct_mass_per_length.si, inside
    mass = engineering.wall_mass(outside, wall, PVC_DENSITY.value.si)
    told = sheet.tell.mass_per_length(mass)
    source = (
        f"outside diameter and wall, PVC of {PVC_DENSITY.value} ({PVC_DENSITY.source})" if wall else "no wall on file"
    )
    if sheet.pointer("duct_mass_per_length") not in sheet.book.settled:
        sheet.assume("duct_mass_per_length", told, source, PVC_DENSITY.source_id)
    return mass, inside


def _contents(contents: DuctContents, inside: float | None, pointer: str, request: FlotationRequest) -> float:
    """Give the mass per length [kg/m] of what is in one duct."""
    if contents is DuctContents.EMPTY:
        return 0.0
    if contents is DuctContents.CABLE:
        if request.cable_mass_per_length is None:
            raise UnanswerableError(
                Fault("#/cable_mass_per_length", "missing", "Give the mass of the cables in each duct.")
            )
        return request.cable_mass_per_length.si
    if inside is None:
        raise UnanswerableError(
            Fault(pointer, "inside_diameter_not_listed", "The bore is unknown: give the conduit as kind measured.")
        )
    return engineering.contents_mass(inside, WATER.si)


def compute(request: FlotationRequest, sheet: Worksheet) -> FlotationResult:
    """Give the uplift of a bank, and the anchors that hold it."""
    tell = sheet.tell
    placed = bank_of(request.bank, sheet.within("bank"))
    medium = sheet.settle("#/medium", request.medium, MEDIUM)
    density = sheet.settle("#/fluid_density", request.fluid_density, DENSITIES[medium]).si
    contents = sheet.settle("#/contents", request.contents, CONTENTS)
    bank = request.bank
    forces: list[float] = []
    for tier in range(len(bank.tiers)):
        conduit = bank.tier_conduits[tier] if bank.tier_conduits else bank.conduit
        pointer = f"#/bank/tier_conduits/{tier}" if bank.tier_conduits else "#/bank/conduit"
        mass, inside = _duct_mass(conduit, pointer, request, sheet)
        diameter = placed.tier_tops[tier] - placed.tier_bottoms[tier]
        forces.append(engineering.uplift(diameter, density, mass + _contents(contents, inside, pointer, request)))
    counts = placed.counts
    full = sum(force * count for force, count in zip(forces, counts, strict=True))
    live = max(0.0, full)
    if request.lift_height is not None:
        below = sheet.settle("#/bottom_cover", request.bottom_cover, COVER).si
        bottoms = [(below + placed.tier_bottoms[duct.tier], forces[duct.tier]) for duct in placed.ducts]
        live = engineering.governing_lift(bottoms, request.lift_height.si)
    spacing = sheet.settle("#/station_spacing", request.station_spacing, STATION_SPACING).si
    factor = sheet.settle("#/safety_factor", request.safety_factor, SAFETY_FACTOR)
    station = live * spacing
    anchors = _anchors(request, placed, station, factor, sheet)
    sheet.show("u", "(pi/4 OD^2 rho - m) g", f"rho = {density:.6g} kg/m3", tell.force_per_length(max(forces)))
    sheet.show("F", "uplift per length x spacing", f"{live:.6g} N/m x {spacing:.6g} m", tell.force(station))
    if live > 0:
        told = tell.force(station * factor)
        sheet.find(
            Severity.CAUTION,
            "bank_floats",
            f"The {contents.value} ducts push up with {text_of(tell.force_per_length(live))}: hold down "
            f"{text_of(told)} at each station with the factor of {factor:g}. Pour in lifts and let each stiffen.",
            "derived",
            told,
        )
    run = request.length
    return FlotationResult(
        uplift_per_length=tell.force_per_length(live),
        full_uplift_per_length=tell.force_per_length(full),
        uplift_per_station=tell.force(station),
        hold_down_per_station=tell.force(station * factor),
        tiers=[
            TierUplift(number, count, tell.force_per_length(force), tell.force_per_length(force * count))
            for number, (force, count) in enumerate(zip(forces, counts, strict=True), start=1)
        ],
        tie_down_count=anchors,
        total_tie_down_count=UNSET if run is None else anchors * stations_by_distance(run.si, spacing, 0.0),
    )


def _anchors(request: FlotationRequest, placed: geometry.Bank, station: float, factor: float, sheet: Worksheet) -> int:
    """Give the anchors of a station: by their capacity, else by practice."""
    if station <= 0.0:
        return 0
    if request.anchor_capacity is not None:
        return engineering.tie_downs(station, factor, request.anchor_capacity.si)
    count = 1 if max(placed.counts) <= 2 else 2
    sheet.assume(
        "#/anchor_capacity",
        f"{count} at each station",
        "derived: one bar at a station for banks up to two ducts wide, two for wider; give the capacity of an anchor "
        "to count them by force",
        "trade-practice",
    )
    return count


OPERATION = Operation(
    name="flotation",
    operation_id="calculate_flotation",
    summary="Flotation of ducts",
    description="Gives the uplift of empty, water-filled or cable-filled ducts in fresh concrete, slurry or "
    "groundwater, per duct, tier and station, for the live lift of a pour, and the anchors that hold it.",
    request=FlotationRequest,
    result=FlotationResult,
    compute=compute,
    example={
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
            "tiers": [3, 3, 3],
            "horizontal_separation": {"value": 2, "unit": "in"},
            "vertical_separation": {"value": 2, "unit": "in"},
            "separation_measure": "clear",
        },
        "medium": "concrete",
        "fluid_density": {"value": 150, "unit": "lb/ft3"},
        "contents": "empty",
        "duct_mass_per_length": {"value": 2, "unit": "lb/ft"},
        "bottom_cover": {"value": 3, "unit": "in"},
        "lift_height": {"value": 12, "unit": "in"},
        "station_spacing": {"value": 5, "unit": "ft"},
        "anchor_capacity": {"value": 500, "unit": "lbf"},
        "safety_factor": 1.5,
        "length": {"value": 300, "unit": "ft"},
    },
)
