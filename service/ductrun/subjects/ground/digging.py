"""A trench around an envelope: its size, its volumes, and what its depth asks for."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import trench as engineering
from ductrun.engineering.bank import Bank, Concrete, Envelope
from ductrun.engineering.rounding import under
from ductrun.kit.backing import backing_of
from ductrun.kit.defaults import Default, by_rule, choice, number, quantity
from ductrun.kit.forms import Clearance, Depth, Form, Omissible, Percent, SideSlope, TrenchWidth, TruckVolume
from ductrun.kit.wording import enough_text, without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import ExcavationSoilType, SoilKind
from ductrun.subjects.ground.excavation import (
    caution_depth,
    caution_slope,
    caution_utility,
    shoring_area,
)
from ductrun.subjects.ground.filling import (
    EarthCover,
    Section,
    Volumes,
    fill,
    find_import,
    find_select_fill,
    loads_of,
)
from ductrun.subjects.ground.pavement import Paved, Pavement, pave, thickness_of
from ductrun.subjects.ground.tape import TAPE_DEPTH, Tape, tape_of
from ductrun.subjects.parts.envelope import SIDE_SLOPE, AskedPour, poured_in_trench, trench_width_of
from ductrun.tables import TABLES
from ductrun.units import Length, Volume

WORKING_SPACE = quantity("trench.working_space", Length)
DIRECT_BURIED_SIDE = quantity("trench.direct_buried_side", Length)
DIRECT_BURIED_LEAST_WIDTH = quantity("trench.direct_buried_least_width", Length)
BEDDING_FORMED = quantity("trench.bedding_formed", Length)
BEDDING_DIRECT_BURIED = quantity("trench.bedding_direct_buried", Length)
SOIL = choice("trench.soil", SoilKind)
SOIL_TYPE = choice("trench.soil_type", ExcavationSoilType)
TAPE_OVERLAP = number("trench.tape_overlap_percent")
HAUL_CAPACITY = quantity("trench.haul_capacity", Volume)
_SOILS = {row.soil: row for row in TABLES["soils"]}


class Digging(Form):
    """How a trench is dug and filled."""

    width: Omissible[TrenchWidth] = Field(
        default=None, description="Width of the bottom, in place of practice.", examples=[{"value": 36, "unit": "in"}]
    )
    bucket_widths: Omissible[Annotated[list[TrenchWidth], Field(min_length=1, max_length=50)]] = Field(
        default=None,
        description="Widths of the buckets at hand: the floor is as wide as the narrowest that digs the width wanted.",
        examples=[[{"value": 24, "unit": "in"}, {"value": 36, "unit": "in"}]],
    )
    working_space: Omissible[Clearance] = Field(
        default=None,
        description="Room beside the bank on each side, where width is left out and the trench is not the form.",
        examples=[{"value": 6, "unit": "in"}],
        json_schema_extra=by_rule(
            f"{WORKING_SPACE.value} beside a formed envelope, {DIRECT_BURIED_SIDE.value} beside bare ducts"
        ),
    )
    least_width: Omissible[TrenchWidth] = Field(
        default=None,
        description="Least width of the bottom where ducts are buried directly and width is left out.",
        examples=[{"value": 12, "unit": "in"}],
        json_schema_extra=DIRECT_BURIED_LEAST_WIDTH.stated,
    )
    bedding: Omissible[Depth] = Field(
        default=None,
        description="Bedding under the bank.",
        examples=[{"value": 3, "unit": "in"}],
        json_schema_extra=by_rule(
            f"{BEDDING_FORMED.value} below a poured envelope, {BEDDING_DIRECT_BURIED.value} below bare ducts"
        ),
    )
    select_fill: Omissible[Depth] = Field(
        default=None,
        description="Select fill over the bank, before native backfill.",
        examples=[{"value": 6, "unit": "in"}],
    )
    side_slope_ratio: Omissible[SideSlope] = Field(
        default=None,
        description="Side of the trench, horizontal for one vertical.",
        examples=[0],
        json_schema_extra=SIDE_SLOPE.stated,
    )
    soil: Omissible[SoilKind] = Field(
        default=None,
        description="What is dug, for its volumes.",
        examples=["loam"],
        json_schema_extra=SOIL.stated,
    )
    soil_type: Omissible[ExcavationSoilType] = Field(
        default=None,
        description="Soil type of the excavation rules, by the competent person.",
        examples=["type_c"],
        json_schema_extra=SOIL_TYPE.stated,
    )
    loose_volume_factor: Omissible[Annotated[float, Field(ge=1, le=3)]] = Field(
        default=None,
        description="Loose volume of one in the bank, in place of the soil's.",
        examples=[1.25],
        json_schema_extra=by_rule("that of the soil"),
    )
    compacted_volume_factor: Omissible[Annotated[float, Field(ge=0.5, le=2)]] = Field(
        default=None,
        description="Compacted volume of one in the bank, in place of the soil's.",
        examples=[0.9],
        json_schema_extra=by_rule("that of the soil"),
    )
    haul_capacity: Omissible[TruckVolume] = Field(
        default=None,
        description="What one truck hauls, loose.",
        examples=[{"value": 10, "unit": "yd3"}],
        json_schema_extra=HAUL_CAPACITY.stated,
    )
    pavement: Omissible[Pavement] = Field(default=None, description="The pavement over the trench, if there is any.")
    tape_overlap_percent: Omissible[Percent] = Field(
        default=None,
        description="Extra warning tape.",
        examples=[5],
        json_schema_extra=TAPE_OVERLAP.stated,
    )
    warning_tape_depth: Omissible[Depth] = Field(
        default=None,
        description="Warning tape below grade; under a pavement that is thicker it lies right under that.",
        examples=[{"value": 12, "unit": "in"}],
        json_schema_extra=TAPE_DEPTH.stated,
    )
    nearest_utility: Omissible[Depth] = Field(
        default=None, description="Clear distance to the nearest other utility.", examples=[{"value": 24, "unit": "in"}]
    )


class Trench(NamedTuple):
    """A trench: sizes and lengths [m], its volumes, what is left over or wanting and one truck hauls, loose [m3].

    `shoring` is the area of both sides that is to be held [m2]; `ducts_cover` the least over the ducts themselves.
    """

    envelope: Envelope
    length: float
    width: float
    depth: float
    side_slope: float
    bedding: float
    ducts_cover: float
    volumes: Volumes
    spoil: float
    loose_excavation: float
    haul_capacity: float
    load_count: int
    shoring: float
    pavement: Paved | None
    tape_length: float
    tape: Tape
    fall_height: float | None


def dig(given: Digging, envelope: Envelope, earth: EarthCover, length: float, sheet: Worksheet) -> Trench:
    """Give the trench around an envelope over a length in plan [m], and its volumes."""
    section = section_of(given, envelope, sheet)
    loose, compacted = _swell(given, sheet)
    paved = thickness_of(given.pavement, earth, sheet)
    profile = [point for part in earth.slopes for point in part.profile(envelope, section.bedding)]
    depth = max(deep for _, deep in profile)
    volumes = fill(section, envelope, earth, length, given.select_fill, paved)
    spoil = engineering.spoil(volumes.excavated, volumes.backfill, loose, compacted)
    overlap = sheet.settle("tape_overlap_percent", given.tape_overlap_percent, TAPE_OVERLAP)
    capacity = sheet.settle("haul_capacity", given.haul_capacity, HAUL_CAPACITY)
    soil_type = sheet.settle("soil_type", given.soil_type, SOIL_TYPE)
    found = Trench(
        envelope=envelope,
        length=length,
        width=section.width,
        depth=depth,
        side_slope=section.side_slope,
        bedding=section.bedding,
        ducts_cover=earth.shortest + (0.0 if envelope.concrete is None else envelope.concrete.top),
        volumes=volumes,
        spoil=spoil,
        loose_excavation=volumes.excavated * loose,
        haul_capacity=capacity.si,
        load_count=loads_of(abs(spoil), capacity, sheet),
        shoring=shoring_area(soil_type, depth, profile, section.side_slope),
        pavement=None if given.pavement is None else pave(given.pavement, section, profile, sheet.within("pavement")),
        tape_length=earth.duct_length(length) * (1 + overlap / 100),
        tape=tape_of(given.warning_tape_depth, earth, paved, sheet),
        fall_height=earth.fall,
    )
    find_select_fill(given.select_fill, earth, paved, sheet)
    find_import(spoil, sheet)
    caution_slope(soil_type, depth, section.side_slope, sheet)
    caution_depth(depth, earth.deepest)
    caution_utility(given.nearest_utility, sheet)
    if sheet.working is not None:
        _show(found, sheet)
    return found


def _swell(given: Digging, sheet: Worksheet) -> tuple[float, float]:
    """Give the loose and the compacted volume of one in the bank, as given or by the soil."""
    loose, compacted = given.loose_volume_factor, given.compacted_volume_factor
    if loose is not None and compacted is not None:
        return loose, compacted
    soil = _SOILS[sheet.settle("soil", given.soil, SOIL)]
    backing = backing_of(soil)
    return (
        sheet.settle("loose_volume_factor", loose, Default(soil.loose_per_bank, backing)),
        sheet.settle("compacted_volume_factor", compacted, Default(soil.compacted_per_bank, backing)),
    )


def section_of(given: Digging, envelope: Envelope, sheet: Worksheet) -> Section:
    """Give the section of the trench; where it is the form, its concrete tells how wide it is."""
    width = None if envelope.trench_formed else bottom_width(given, envelope, sheet)
    bedding, slope = bedding_of(given, sheet, bare=envelope.concrete is None), side_slope_of(given, sheet)
    return Section(envelope.width - 2 * slope * bedding if width is None else width, slope, bedding)


def bedding_of(given: Digging, sheet: Worksheet, *, bare: bool = False) -> float:
    """Give the thickness of the bedding [m], by default that of bare ducts or of concrete."""
    return sheet.settle("bedding", given.bedding, BEDDING_DIRECT_BURIED if bare else BEDDING_FORMED).si


def side_slope_of(given: Digging, sheet: Worksheet) -> float:
    """Give the slope of the sides, horizontal to 1."""
    return sheet.settle("side_slope_ratio", given.side_slope_ratio, SIDE_SLOPE)


def poured_as_dug(given: Digging, bank: Bank, asked: AskedPour, concrete: Concrete, sheet: Worksheet) -> Envelope:
    """Give the envelope of a pour whose form is the trench as it is dug."""
    slope, bedding = side_slope_of(given, sheet), bedding_of(given, sheet)
    floor = dug_width(given, bank.width + 2 * concrete.side, sheet)
    return poured_in_trench(bank, asked, concrete, floor + 2 * slope * bedding, slope)


def bottom_width(given: Digging, envelope: Envelope, sheet: Worksheet) -> float:
    """Give the width of the floor [m] of a trench that is no form, by practice unless it is given."""
    if given.width is not None or envelope.trench_formed:
        return dug_width(given, envelope.width, sheet)
    if envelope.concrete is not None:
        space = sheet.settle("working_space", given.working_space, WORKING_SPACE).si
        return up_to_bucket(given, envelope.width + 2 * space, sheet)
    space = sheet.settle("working_space", given.working_space, DIRECT_BURIED_SIDE).si
    least = sheet.settle("least_width", given.least_width, DIRECT_BURIED_LEAST_WIDTH).si
    return up_to_bucket(given, max(envelope.width + 2 * space, least), sheet)


def dug_width(given: Digging, least: float, sheet: Worksheet) -> float:
    """Give the width of a floor [m] that must hold a least width [m]: as given, else the least, up to a bucket."""
    if given.width is None:
        return up_to_bucket(given, least, sheet)
    return up_to_bucket(given, trench_width_of(given.width, least, sheet.within("width")), sheet)


def up_to_bucket(given: Digging, width: float, sheet: Worksheet) -> float:
    """Give the width [m] that the narrowest bucket of those at hand digs for a width wanted [m]."""
    buckets = given.bucket_widths
    if not buckets:
        return width
    fitting = [bucket.si for bucket in buckets if not under(bucket.si, width)]
    if not fitting:
        unit = buckets[0].unit
        least = Length(without_noise(unit.from_si(width)), unit)
        raise UnanswerableError(
            sheet.fault(
                "bucket_widths",
                "no_bucket_wide_enough",
                f"The trench takes {enough_text(least)}: no bucket of the list is as wide.",
                minimum=least,
            )
        )
    return min(fitting)


def _show(found: Trench, sheet: Worksheet) -> None:
    volume = sheet.tell.bulk_volume
    sheet.show(
        "V",
        "prismoids of (B + z d) d",
        f"B = {found.width:.5g} m, z = {found.side_slope:g}",
        volume(found.volumes.excavated),
    )
    parts = found.volumes[:-1]
    sheet.show(
        "backfill",
        "V - bedding - envelope - select fill",
        " - ".join(f"{part:.6g}" for part in parts) + " m3",
        volume(found.volumes.backfill),
    )
