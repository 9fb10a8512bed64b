"""Ducts in a fluid: how hard they push upward, and what holds them down."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import flotation as engineering
from ductrun.engineering.bank import Bank
from ductrun.engineering.spacing import stations_by_distance
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, by_rule, choice, number, quantity
from ductrun.kit.forms import Between, DuctMass, FluidDensity, Form, Interval, Omissible, PullAnchor
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import DuctContents, FlotationMedium
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit, find_row
from ductrun.units import Density, Length, MassPerLength

MEDIUM = choice("flotation.medium", FlotationMedium)
CONTENTS = choice("flotation.contents", DuctContents)
DENSITIES: dict[FlotationMedium, Default[Density]] = {
    medium: quantity(f"flotation.{medium.value}_density", Density) for medium in FlotationMedium
}
PVC_DENSITY = quantity("flotation.pvc_density", Density)
HDPE_DENSITY = quantity("flotation.hdpe_density", Density)
NO_MASS = quantity("flotation.unknown_duct_mass", MassPerLength)
_CONTENTS_IN_WORDS = {
    DuctContents.EMPTY: "empty",
    DuctContents.WATER: "full of water",
    DuctContents.CABLE: "with cable in them",
}
WATER_DENSITY = quantity("flotation.water_density", Density)
STATION_SPACING = quantity("flotation.station_spacing", Length)
SAFETY_FACTOR = number("flotation.safety_factor")

DuctDensity = Annotated[Density, Between(Density.parse(20, "lb/ft3"), Density.parse(700, "lb/ft3"))]


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
    duct_density: Omissible[DuctDensity] = Field(
        default=None,
        description="Density of what the ducts are made of, where duct_mass_per_length is left out.",
        examples=[{"value": 87.4, "unit": "lb/ft3"}],
        json_schema_extra=by_rule(
            f"{PVC_DENSITY.value} as of PVC; {HDPE_DENSITY.value} of HDPE and of a duct that is measured"
        ),
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


class DuctWall(NamedTuple):
    """A duct by its outside diameter, its wall and its bore [m], where they are known, and the sheet of its place.

    `may_float_off` says that it may be of a plastic lighter than water: of HDPE, or of what nobody named.
    """

    outside: float
    wall: float | None
    bore: float | None
    place: Worksheet
    may_float_off: bool


class Tier(NamedTuple):
    """A tier: its ducts, the mass of one empty duct [kg/m] and the uplift of one duct [N/m], negative if it sinks."""

    duct_count: int
    duct_mass: float
    uplift: float


class Flotation(NamedTuple):
    """A bank that floats or sinks: uplift per length [N/m], forces on a station [N], tie-downs if they are counted."""

    bank: Bank
    tiers: tuple[Tier, ...]
    full_uplift: float
    live_uplift: float
    station_spacing: float
    safety_factor: float
    station_uplift: float
    hold_down: float
    tie_downs: int | None
    all_tie_downs: int | None


def wall_of(conduit: ListedConduit | MeasuredConduit, place: Worksheet) -> DuctWall:
    """Give what is known of the wall of a duct that was placed in a bank: it has an outside diameter."""
    if conduit.kind == "measured":
        outside = 0.0 if conduit.outside_diameter is None else conduit.outside_diameter.si
        return DuctWall(outside, (outside - conduit.inside_diameter.si) / 2, conduit.inside_diameter.si, place, True)
    row = find_row(conduit, place)
    outside = 0.0 if row.outside_diameter is None else row.outside_diameter.si
    wall = None if row.minimum_wall_in is None else Length.parse(float(row.minimum_wall_in), "in").si
    light = conduit.type is ConduitType.HDPE_SCHEDULE_40
    if row.inside_diameter is not None:
        return DuctWall(outside, wall, row.inside_diameter.si, place, light)
    return DuctWall(outside, wall, None if wall is None else outside - 2 * wall, place, light)


def float_bank(
    given: Floating, bank: Bank, walls: Sequence[DuctWall], length: float | None, sheet: Worksheet
) -> Flotation:
    """Give the uplift of a bank and the tie-downs that hold it.

    `walls` are the ducts of every tier, or the one of all tiers alone; length [m] of the run to count all tie-downs.
    """
    density = _fluid_density(given, sheet)
    contents = sheet.settle("contents", given.contents, CONTENTS)
    tiers = _tiers(given, contents, bank, walls, density, sheet)
    full = sum(tier.uplift * tier.duct_count for tier in tiers)
    live = _live_uplift(given, bank, tiers, full)
    spacing = sheet.settle("station_spacing", given.station_spacing, STATION_SPACING).si
    factor = sheet.settle("safety_factor", given.safety_factor, SAFETY_FACTOR)
    station = live * spacing
    at_each = _tie_downs(given, station, factor)
    of_all = None
    if at_each is not None and length is not None:
        of_all = at_each * stations_by_distance(length, spacing, 0.0)
    found = Flotation(bank, tuple(tiers), full, live, spacing, factor, station, station * factor, at_each, of_all)
    _report(found, contents, sheet, in_concrete=given.medium in (None, FlotationMedium.CONCRETE))
    if sheet.working is not None:
        tell = sheet.tell
        most = tell.force_per_length(max(tier.uplift for tier in tiers))
        sheet.show("u", "(pi/4 OD^2 rho - m) g", f"rho = {density:.6g} kg/m3", most)
        sheet.show("F", "uplift per length x spacing", f"{live:.6g} N/m x {spacing:.6g} m", tell.force(station))
    return found


def _tiers(
    given: Floating, contents: DuctContents, bank: Bank, walls: Sequence[DuctWall], density: float, sheet: Worksheet
) -> list[Tier]:
    """Give every tier with the uplift of its ducts in a fluid of a density [kg/m3]."""
    masses = _duct_masses(given, walls, sheet)
    inside = [_contents_mass(given, contents, wall, sheet) for wall in walls]
    tiers = []
    for index, count in enumerate(bank.counts):
        diameter = bank.tier_tops[index] - bank.tier_bottoms[index]
        which = index if len(walls) > 1 else 0
        uplift = engineering.uplift(diameter, density, masses[which] + inside[which])
        tiers.append(Tier(count, masses[which], uplift))
    return tiers


def _live_uplift(given: Floating, bank: Bank, tiers: Sequence[Tier], full: float) -> float:
    """Give the uplift per length [N/m] in the worst lift that is liquid at once; that of all without lifts."""
    if given.lift_height is None:
        return max(0.0, full)
    bottoms = [(bank.tier_bottoms[duct.tier], tiers[duct.tier].uplift) for duct in bank.ducts]
    return engineering.governing_lift(bottoms, given.lift_height.si)


def _tie_downs(given: Floating, station: float, factor: float) -> int | None:
    """Count the tie-downs for the uplift of a station [N]; none for what sinks, None without the capacity of one."""
    if station <= 0.0:
        return 0
    if given.tie_down_capacity is None:
        return None
    return engineering.tie_downs(station, factor, given.tie_down_capacity.si)


def _fluid_density(given: Floating, sheet: Worksheet) -> float:
    """Give the density [kg/m3] of what the ducts lie in, as given or by the medium."""
    if given.fluid_density is not None:
        return given.fluid_density.si
    medium = sheet.settle("medium", given.medium, MEDIUM)
    return sheet.settle("fluid_density", None, DENSITIES[medium]).si


def _duct_masses(given: Floating, walls: Sequence[DuctWall], sheet: Worksheet) -> list[float]:
    """Give the mass of an empty duct [kg/m] for every wall: as given, from the wall, or none where none is known."""
    if given.duct_mass_per_length is not None:
        return [given.duct_mass_per_length.si] * len(walls)
    if all(wall.wall is None for wall in walls):  # told as assumed
        sheet.settle("duct_mass_per_length", None, NO_MASS)
        return [0.0] * len(walls)
    if any(wall.wall is None for wall in walls):
        sheet.find(
            Severity.NOTE,
            "duct_mass_left_out",
            "Some ducts have no wall on file, and their mass is left out: they push up a little less than told. Give "
            "duct_mass_per_length.",
            WORKED_OUT,
            member="duct_mass_per_length",
        )
    lightest = HDPE_DENSITY if any(wall.may_float_off for wall in walls) else PVC_DENSITY
    density = sheet.settle("duct_density", given.duct_density, lightest).si
    return [0.0 if wall.wall is None else engineering.wall_mass(wall.outside, wall.wall, density) for wall in walls]


def _contents_mass(given: Floating, contents: DuctContents, wall: DuctWall, sheet: Worksheet) -> float:
    """Give the mass per length [kg/m] of what is in one duct."""
    if contents is DuctContents.EMPTY:
        return 0.0
    if contents is DuctContents.CABLE:
        if given.cable_mass_per_length is None:
            raise UnanswerableError(
                sheet.fault("cable_mass_per_length", "missing", "Give the mass of the cables in each duct.")
            )
        return given.cable_mass_per_length.si
    if wall.bore is None:
        raise UnanswerableError(
            wall.place.fault(
                "", "inside_diameter_not_listed", "The bore is unknown: give the conduit as kind measured."
            )
        )
    sheet.cite(WATER_DENSITY.backing.source_id)
    return engineering.contents_mass(wall.bore, WATER_DENSITY.value.si)


def _report(found: Flotation, contents: DuctContents, sheet: Worksheet, *, in_concrete: bool) -> None:
    if found.live_uplift <= 0.0:
        return
    tell = sheet.tell
    held, apart = tell.force(found.hold_down), tell.distance(found.station_spacing)
    sheet.find(
        Severity.CAUTION,
        "bank_floats",
        f"The ducts ({_CONTENTS_IN_WORDS[contents]}) push up with "
        f"{text_of(tell.force_per_length(found.live_uplift))}: hold down "
        f"{text_of(held)} at each station with the factor of {found.safety_factor:g}."
        + (" Pour in lifts and let each stiffen." if in_concrete else ""),
        WORKED_OUT,
        held,
        member="contents",
    )
    if found.tie_downs is None:
        sheet.find(
            Severity.CAUTION,
            "tie_downs_not_counted",
            f"Give the capacity of a tie-down to count them: each station, {text_of(apart)} from the next, must hold "
            f"{text_of(held)}.",
            WORKED_OUT,
            held,
            member="tie_down_capacity",
        )
