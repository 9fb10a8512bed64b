"""A trench around an envelope: its size, its volumes, and what its depth asks for."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import trench as engineering
from ductrun.engineering.bank import Envelope
from ductrun.kit.defaults import by_rule, choice, number, quantity
from ductrun.kit.forms import Clearance, Depth, Form, Omissible, Percent, TrenchWidth
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.choices import ExcavationSoilType, SoilKind
from ductrun.subjects.ground.excavation import TAPE_DEPTH, caution_depth, caution_slope, caution_utility, tape_depth
from ductrun.subjects.parts.envelope import trench_width_of
from ductrun.tables import TABLES
from ductrun.units import Length

WORKING_SPACE = quantity("trench.working_space", Length)
DIRECT_BURIED_SIDE = quantity("trench.direct_buried_side", Length)
DIRECT_BURIED_LEAST_WIDTH = quantity("trench.direct_buried_least_width", Length)
BEDDING_FORMED = quantity("trench.bedding_formed", Length)
BEDDING_DIRECT_BURIED = quantity("trench.bedding_direct_buried", Length)
SIDE_SLOPE = number("trench.side_slope")
SOIL = choice("trench.soil", SoilKind)
SOIL_TYPE = choice("trench.soil_type", ExcavationSoilType)
TAPE_OVERLAP = number("trench.tape_overlap_percent")
_SOILS = {row.soil: row for row in TABLES["soils"]}


class Digging(Form):
    """How a trench is dug and filled."""

    width: Omissible[TrenchWidth] = Field(
        default=None, description="Width of the bottom, in place of practice.", examples=[{"value": 36, "unit": "in"}]
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
    side_slope: Omissible[Annotated[float, Field(ge=0, le=10)]] = Field(
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
        default=None, description="Loose volume of one in the bank, in place of the soil's.", examples=[1.25]
    )
    compacted_volume_factor: Omissible[Annotated[float, Field(ge=0.5, le=2)]] = Field(
        default=None, description="Compacted volume of one in the bank, in place of the soil's.", examples=[0.9]
    )
    tape_overlap_percent: Omissible[Percent] = Field(
        default=None,
        description="Extra warning tape.",
        examples=[5],
        json_schema_extra=TAPE_OVERLAP.stated,
    )
    warning_tape_depth: Omissible[Depth] = Field(
        default=None,
        description="Warning tape below grade.",
        examples=[{"value": 12, "unit": "in"}],
        json_schema_extra=TAPE_DEPTH.stated,
    )
    nearest_utility: Omissible[Depth] = Field(
        default=None, description="Clear distance to the nearest other utility.", examples=[{"value": 24, "unit": "in"}]
    )


class EarthCover(NamedTuple):
    """Earth over the envelope along a run [m]: the least, the greatest, all by (position, cover) from start to end.

    `deepest` is the sheet of the place where the greatest was given.
    """

    least: float
    greatest: float
    along: tuple[tuple[float, float], ...]
    deepest: Worksheet


class Volumes(NamedTuple):
    """What is dug in the bank, and what fills it again [m3]: bedding, envelope, select fill and native backfill."""

    excavated: float
    bedding: float
    envelope: float
    select_fill: float
    backfill: float


class Trench(NamedTuple):
    """A trench: sizes and lengths [m], its volumes, and what is left over or wanting, loose [m3]."""

    envelope: Envelope
    length: float
    width: float
    depth: float
    side_slope: float
    bedding: float
    volumes: Volumes
    spoil: float
    loose_excavation: float
    tape_length: float
    tape_depth: float


def dig(given: Digging, envelope: Envelope, earth: EarthCover, length: float, sheet: Worksheet) -> Trench:
    """Give the trench around an envelope over a length [m], and its volumes."""
    width = bottom_width(given, envelope, sheet)
    default = BEDDING_DIRECT_BURIED if envelope.concrete is None else BEDDING_FORMED
    bedding = sheet.settle("bedding", given.bedding, default).si
    slope = sheet.settle("side_slope", given.side_slope, SIDE_SLOPE)
    loose, compacted = _swell(given, sheet)
    volumes = _volumes(given, envelope, earth, length, (width, slope, bedding))
    overlap = sheet.settle("tape_overlap_percent", given.tape_overlap_percent, TAPE_OVERLAP)
    found = Trench(
        envelope=envelope,
        length=length,
        width=width,
        depth=earth.greatest + envelope.height + bedding,
        side_slope=slope,
        bedding=bedding,
        volumes=volumes,
        spoil=engineering.spoil(volumes.excavated, volumes.backfill, loose, compacted),
        loose_excavation=volumes.excavated * loose,
        tape_length=length * (1 + overlap / 100),
        tape_depth=tape_depth(given.warning_tape_depth, earth.least, sheet),
    )
    soil_type = sheet.settle("soil_type", given.soil_type, SOIL_TYPE)
    caution_slope(soil_type, found.depth, slope, sheet)
    caution_depth(found.depth, earth.deepest)
    caution_utility(given.nearest_utility, sheet)
    if sheet.working is not None:
        _show(found, sheet)
    return found


def _volumes(
    given: Digging, envelope: Envelope, earth: EarthCover, length: float, section: tuple[float, float, float]
) -> Volumes:
    """Give the volumes of a trench over a length [m] of a section: width of the bottom [m], side slope, bedding [m]."""
    width, slope, bedding = section
    height = envelope.height
    excavated = engineering.excavation(
        width, slope, [(position, cover + height + bedding) for position, cover in earth.along]
    )
    bed = engineering.layer(width, slope, 0.0, bedding, length)
    taken = envelope.area * length
    select = 0.0
    if given.select_fill is not None:
        thickness = height + min(given.select_fill.si, earth.least)
        select = max(0.0, engineering.layer(width, slope, bedding, thickness, length) - taken)
    return Volumes(excavated, bed, taken, select, max(0.0, excavated - bed - taken - select))


def _swell(given: Digging, sheet: Worksheet) -> tuple[float, float]:
    """Give the loose and the compacted volume of one in the bank, as given or by the soil."""
    loose, compacted = given.loose_volume_factor, given.compacted_volume_factor
    if loose is not None and compacted is not None:
        return loose, compacted
    soil = _SOILS[sheet.settle("soil", given.soil, SOIL)]
    sheet.cite(soil.source)
    return loose or soil.loose_per_bank, compacted or soil.compacted_per_bank


def bottom_width(given: Digging, envelope: Envelope, sheet: Worksheet) -> float:
    """Give the width of the bottom [m], by practice unless it is given."""
    if given.width is not None:
        return trench_width_of(given.width, envelope.width, "narrower_than_the_bank", sheet.within("width"))
    if envelope.trench_formed:
        return envelope.width
    if envelope.concrete is not None:
        return envelope.width + 2 * sheet.settle("working_space", given.working_space, WORKING_SPACE).si
    space = sheet.settle("working_space", given.working_space, DIRECT_BURIED_SIDE).si
    least = sheet.settle("least_width", given.least_width, DIRECT_BURIED_LEAST_WIDTH).si
    return max(envelope.width + 2 * space, least)


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
