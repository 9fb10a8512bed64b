"""POST /v1/trench: how wide, how deep, how much to dig, bed, backfill and haul."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Annotated

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import bank as geometry
from ductrun.engineering import trench as engineering
from ductrun.engineering.rounding import under
from ductrun.kit import answers
from ductrun.kit.defaults import choice, number, quantity
from ductrun.kit.forms import Depth, Form, Omissible, Percent, RoutePosition, RunLength, TrenchWidth
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.bank.encasement import COVER, ConcreteCover
from ductrun.subjects.ground.choices import ExcavationSoilType, SoilKind, TrenchPractice
from ductrun.subjects.ground.excavation import caution_excavation, caution_utility, tape_depth
from ductrun.subjects.parts.bank import DuctBank, bank_of
from ductrun.tables import TABLES
from ductrun.units import Length

PRACTICE = choice("trench.practice", TrenchPractice)
WORKING_SPACE = quantity("trench.working_space", Length)
DIRECT_BURIED_SIDE = quantity("trench.direct_buried_side", Length)
DIRECT_BURIED_LEAST_WIDTH = quantity("trench.direct_buried_least_width", Length)
BEDDING = {
    TrenchPractice.FORMED: quantity("trench.bedding_formed", Length),
    TrenchPractice.TRENCH_FORMED: quantity("trench.bedding_formed", Length),
    TrenchPractice.DIRECT_BURIED: quantity("trench.bedding_direct_buried", Length),
}
SIDE_SLOPE = number("trench.side_slope")
SOIL = choice("trench.soil", SoilKind)
SOIL_TYPE = choice("trench.soil_type", ExcavationSoilType)
TAPE_OVERLAP = number("trench.tape_overlap_percent")
_SOILS = {row.soil: row for row in TABLES["soils"]}


class Station(Form):
    """Depth of cover at one place of the run."""

    position: RoutePosition = Field(description="Distance from the start.", examples=[{"value": 0, "unit": "ft"}])
    cover: Depth = Field(description="Cover over the bank there.", examples=[{"value": 30, "unit": "in"}])


class TrenchRequest(Form):
    """A bank in its trench."""

    length: RunLength = Field(description="Length of the trench.", examples=[{"value": 300, "unit": "ft"}])
    bank: DuctBank = Field(description="The duct bank.")
    practice: Omissible[TrenchPractice] = Field(
        default=None, description="How the bank lies in its trench.", examples=["formed"]
    )
    concrete_cover: Omissible[ConcreteCover] = Field(
        default=None, description="Concrete outside the ducts, unless they are buried directly."
    )
    cover: Depth = Field(
        description="Earth over the envelope, or over the ducts if there is none.",
        examples=[{"value": 30, "unit": "in"}],
    )
    stations: Omissible[Annotated[list[Station], Field(min_length=2, max_length=500)]] = Field(
        default=None, description="Cover along the run where it varies, from its start to its end."
    )
    width: Omissible[TrenchWidth] = Field(
        default=None, description="Width of the bottom, in place of practice.", examples=[{"value": 36, "unit": "in"}]
    )
    bedding: Omissible[Depth] = Field(
        default=None, description="Bedding under the bank.", examples=[{"value": 3, "unit": "in"}]
    )
    select_fill: Omissible[Depth] = Field(
        default=None,
        description="Select fill over the bank, before native backfill.",
        examples=[{"value": 6, "unit": "in"}],
    )
    side_slope: Omissible[Annotated[float, Field(ge=0, le=10)]] = Field(
        default=None, description="Side of the trench, horizontal for one vertical.", examples=[0]
    )
    soil: Omissible[SoilKind] = Field(default=None, description="What is dug, for its volumes.", examples=["loam"])
    soil_type: Omissible[ExcavationSoilType] = Field(
        default=None, description="Soil type of the excavation rules, by the competent person.", examples=["type_c"]
    )
    loose_per_bank: Omissible[Annotated[float, Field(ge=1, le=3)]] = Field(
        default=None, description="Loose volume of one in the bank, in place of the soil's.", examples=[1.25]
    )
    compacted_per_bank: Omissible[Annotated[float, Field(ge=0.5, le=2)]] = Field(
        default=None, description="Compacted volume of one in the bank, in place of the soil's.", examples=[0.9]
    )
    tape_overlap_percent: Omissible[Percent] = Field(default=None, description="Extra warning tape.", examples=[5])
    warning_tape_depth: Omissible[Depth] = Field(
        default=None, description="Warning tape below grade.", examples=[{"value": 12, "unit": "in"}]
    )
    nearest_utility: Omissible[Depth] = Field(
        default=None, description="Clear distance to the nearest other utility.", examples=[{"value": 24, "unit": "in"}]
    )


class TrenchResult(Struct, frozen=True, gc=False):
    """Size and volumes; bank, loose and compacted are named as such."""

    width: Annotated[answers.Length, Meta(description="Width of the bottom.")]
    depth: Annotated[answers.Length, Meta(description="Depth to the bottom; the greatest, if it varies.")]
    excavation_volume: Annotated[answers.Volume, Meta(description="In the bank.")]
    bedding_volume: Annotated[answers.Volume, Meta(description="Compacted, under the bank.")]
    envelope_volume: Annotated[answers.Volume, Meta(description="What the envelope, or the ducts, take.")]
    select_fill_volume: Annotated[answers.Volume, Meta(description="Compacted, beside and over the bank.")]
    backfill_volume: Annotated[answers.Volume, Meta(description="Native, compacted, up to grade.")]
    spoil_volume: Annotated[answers.Volume, Meta(description="Loose, to haul away; negative if fill must be brought.")]
    loose_excavation_volume: Annotated[answers.Volume, Meta(description="All that is dug, loose.")]
    warning_tape_length: Annotated[answers.Length, Meta(description="Tape over the run.")]
    warning_tape_depth: Annotated[answers.Length, Meta(description="Below grade.")]


def _covers(request: TrenchRequest, practice: TrenchPractice, sheet: Worksheet) -> tuple[float, float, float]:
    """Give the concrete above, below and beside the ducts [m]; none where they are buried directly."""
    if practice is TrenchPractice.DIRECT_BURIED:
        if request.concrete_cover is not None:
            raise UnanswerableError(
                Fault("#/concrete_cover", "contradiction", "Ducts that are buried directly have no concrete cover.")
            )
        return 0.0, 0.0, 0.0
    given = request.concrete_cover or ConcreteCover()
    sides = {"top": given.top, "bottom": given.bottom, "side": given.side}
    top, bottom, side = (sheet.settle(f"#/concrete_cover/{name}", cover, COVER).si for name, cover in sides.items())
    return top, bottom, side


def _width(
    request: TrenchRequest, practice: TrenchPractice, placed: geometry.Bank, side: float, sheet: Worksheet
) -> float:
    """Give the width of the bottom [m], by practice unless it is given."""
    envelope = placed.width + 2 * side
    if request.width is not None:
        if under(request.width.si, envelope):
            least = request.width.unit.from_si(envelope)
            raise UnanswerableError(
                Fault(
                    "#/width/value",
                    "narrower_than_the_bank",
                    f"The bank takes {least:.4g} {request.width.unit.value}: the trench cannot be narrower.",
                    {"minimum": {"value": least, "unit": request.width.unit.value}},
                )
            )
        return request.width.si
    if practice is TrenchPractice.TRENCH_FORMED:
        return envelope
    if practice is TrenchPractice.FORMED:
        space, width = WORKING_SPACE, envelope + 2 * WORKING_SPACE.value.si
    else:
        space = DIRECT_BURIED_SIDE
        width = max(envelope + 2 * space.value.si, DIRECT_BURIED_LEAST_WIDTH.value.si)
    sheet.assume(
        "#/width", sheet.tell.size(width), f"the bank and {space.value} each side: {space.source}", space.source_id
    )
    return width


def _profile(request: TrenchRequest, below: float) -> list[tuple[float, float]]:
    """Give (position, depth of the bottom) [m] along the run."""
    if request.stations is None:
        return [(0.0, request.cover.si + below), (request.length.si, request.cover.si + below)]
    places = [station.position.si for station in request.stations]
    rising = all(one < other for one, other in pairwise(places))
    if not rising or abs(places[0]) > 1e-6 or abs(places[-1] - request.length.si) > 1e-6 * request.length.si:
        raise UnanswerableError(
            Fault(
                "#/stations",
                "not_from_start_to_end",
                "Stations run from 0 to the length of the trench, each beyond the one before.",
                {"from": 0, "to": {"value": request.length.value, "unit": request.length.unit.value}},
            )
        )
    return [(place, station.cover.si + below) for place, station in zip(places, request.stations, strict=True)]


def compute(request: TrenchRequest, sheet: Worksheet) -> TrenchResult:
    """Give the size of a trench and its volumes."""
    tell = sheet.tell
    practice = sheet.settle("#/practice", request.practice, PRACTICE)
    placed = bank_of(request.bank, sheet.within("bank"))
    top, bottom, side = _covers(request, practice, sheet)
    width = _width(request, practice, placed, side, sheet)
    bedding = sheet.settle("#/bedding", request.bedding, BEDDING[practice]).si
    slope = sheet.settle("#/side_slope", request.side_slope, SIDE_SLOPE)
    soil = _SOILS[sheet.settle("#/soil", request.soil, SOIL)]
    sheet.cite(soil.source)
    loose = request.loose_per_bank or soil.loose_per_bank
    compacted = request.compacted_per_bank or soil.compacted_per_bank
    height = placed.height + top + bottom
    profile = _profile(request, height + bedding)
    depth = max(deep for _, deep in profile)
    length = request.length.si
    excavated = engineering.excavation(width, slope, profile)
    bed = engineering.layer(width, slope, 0.0, bedding, length)
    if practice is TrenchPractice.DIRECT_BURIED:
        envelope = geometry.duct_area(placed) * length
    else:
        envelope = (width if practice is TrenchPractice.TRENCH_FORMED else placed.width + 2 * side) * height * length
    select = 0.0
    if request.select_fill is not None:
        thickness = height + min(request.select_fill.si, min(deep for _, deep in profile) - height - bedding)
        select = max(0.0, engineering.layer(width, slope, bedding, thickness, length) - envelope)
    backfill = max(0.0, excavated - bed - envelope - select)
    overlap = sheet.settle("#/tape_overlap_percent", request.tape_overlap_percent, TAPE_OVERLAP)
    tape = tape_depth(request.warning_tape_depth, request.cover.si, sheet)
    sheet.show("V", "prismoids of (B + z d) d", f"B = {width:.5g} m, z = {slope:g}", tell.concrete_volume(excavated))
    sheet.show(
        "backfill",
        "V - bedding - envelope - select fill",
        f"{excavated:.6g} - {bed:.6g} - {envelope:.6g} - {select:.6g} m3",
        tell.concrete_volume(backfill),
    )
    soil_type = sheet.settle("#/soil_type", request.soil_type, SOIL_TYPE)
    caution_excavation(soil_type, depth, slope, sheet)
    caution_utility(request.nearest_utility, sheet)
    return TrenchResult(
        width=tell.size(width),
        depth=tell.size(depth),
        excavation_volume=tell.concrete_volume(excavated),
        bedding_volume=tell.concrete_volume(bed),
        envelope_volume=tell.concrete_volume(envelope),
        select_fill_volume=tell.concrete_volume(select),
        backfill_volume=tell.concrete_volume(backfill),
        spoil_volume=tell.concrete_volume(engineering.spoil(excavated, backfill, loose, compacted)),
        loose_excavation_volume=tell.concrete_volume(excavated * loose),
        warning_tape_length=tell.distance(length * (1 + overlap / 100)),
        warning_tape_depth=tell.size(tape),
    )


def _example() -> dict[str, object]:
    inches: Sequence[tuple[str, float]] = (("top", 3), ("bottom", 3), ("side", 3))
    return {
        "length": {"value": 300, "unit": "ft"},
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
            "tiers": [3, 3],
            "horizontal_separation": {"value": 2, "unit": "in"},
            "vertical_separation": {"value": 2, "unit": "in"},
            "separation_measure": "clear",
        },
        "practice": "formed",
        "concrete_cover": {name: {"value": value, "unit": "in"} for name, value in inches},
        "cover": {"value": 30, "unit": "in"},
        "width": {"value": 36, "unit": "in"},
        "bedding": {"value": 0, "unit": "in"},
        "side_slope": 0,
        "soil": "loam",
        "soil_type": "type_c",
        "tape_overlap_percent": 5,
        "warning_tape_depth": {"value": 12, "unit": "in"},
    }


OPERATION = Operation(
    name="trench",
    operation_id="calculate_trench",
    summary="Trench volumes",
    description="Gives width and depth of the trench of a duct bank and its volumes: excavation in the bank, bedding, "
    "select fill, native backfill compacted, spoil loose, for even or varying depth and sloped sides.",
    request=TrenchRequest,
    result=TrenchResult,
    compute=compute,
    example=_example(),
)
