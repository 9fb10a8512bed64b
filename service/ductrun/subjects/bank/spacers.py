"""POST /v1/spacers: how many spacers a duct bank needs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Literal

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import spacing as engineering
from ductrun.engineering.rounding import over
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, citation, count, number, quantity, standing_of
from ductrun.kit.forms import Form, Interval, Offset, Omissible, Percent, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.subjects.bank.choices import PieceSystem, SpacerPreset, TopClosure
from ductrun.subjects.parts.bank import Tiers, caution_overhang
from ductrun.tables import TABLES
from ductrun.units import Length

INTERVAL = quantity("spacers.interval", Length).written_as(lambda value: {"kind": "distance", "distance": value})
END_OFFSET = quantity("spacers.end_offset", Length)
DUCTS_PER_SPACER = count("spacers.ducts_per_spacer")
TOP_CLOSURE = choice("spacers.top_closure", TopClosure)
WASTE_PERCENT = number("spacers.waste_percent")
PIECE_SYSTEM = choice("spacers.piece_system", PieceSystem)
SHARED_END_COUNT = count("spacers.shared_end_count")
CLEAR_OF_JOINT = Length.parse(6, "in")
_PRESETS = {row.preset: row for row in TABLES["spacer_intervals"]}


class DistanceInterval(Form):
    """Stations no more than a distance apart, ends included."""

    kind: Literal["distance"] = Field(description="Fixed text that says: by distance.")
    distance: Interval = Field(description="Greatest distance between stations.", examples=[{"value": 8, "unit": "ft"}])


class PerStickInterval(Form):
    """So many stations for each stick of duct."""

    kind: Literal["per_stick"] = Field(description="Fixed text that says: by stick.")
    count: Annotated[int, Field(ge=1, le=100)] = Field(description="Stations for each stick.", examples=[2])
    stick_length: Interval = Field(description="Length of a stick.", examples=[{"value": 10, "unit": "ft"}])


class PresetInterval(Form):
    """The interval of a published specification or of the trade, by name."""

    kind: Literal["preset"] = Field(description="Fixed text that says: by a specification.")
    preset: SpacerPreset = Field(description="The specification.", examples=["cegs_4ft"])


SpacerInterval = TypeAliasType(
    "SpacerInterval",
    Annotated[DistanceInterval | PerStickInterval | PresetInterval, Field(discriminator="kind")],
)


class SpacersRequest(Form):
    """One straight run of a duct bank and how its spacers are specified."""

    length: RunLength = Field(description="Length of the run, face to face.", examples=[{"value": 300, "unit": "ft"}])
    tiers: Tiers = Field(description="Ducts in each tier, the bottom tier first.", examples=[[3, 3, 2]])
    interval: Omissible[SpacerInterval] = Field(default=None, description="How far apart the stations stand.")
    end_offset: Omissible[Offset] = Field(
        default=None,
        description="Distance of the first and last station from the ends, for an interval by distance.",
        examples=[{"value": 1, "unit": "ft"}],
    )
    ducts_per_spacer: Omissible[Annotated[int, Field(ge=1, le=20)]] = Field(
        default=None, description="Ducts that one piece carries side by side.", examples=[1]
    )
    piece_system: Omissible[PieceSystem] = Field(
        default=None,
        description="Whether a piece carries a few ducts, a whole tier or the whole bank.",
        examples=["pieces"],
    )
    shared_end_count: Omissible[Annotated[int, Field(ge=0, le=2)]] = Field(
        default=None,
        description="Ends of this segment whose station belongs to the segment it meets; 0 between manholes.",
        examples=[0],
    )
    stick_length: Omissible[Interval] = Field(
        default=None,
        description="Length of a stick, to keep stations clear of the joints.",
        examples=[{"value": 20, "unit": "ft"}],
    )
    top_closure: Omissible[TopClosure] = Field(
        default=None, description="What closes each stack above the top ducts.", examples=["none"]
    )
    waste_percent: Omissible[Percent] = Field(
        default=None, description="Extra pieces to order, in percent.", examples=[5]
    )


class SpacersResult(Struct, frozen=True, gc=False):
    """The stations and the pieces."""

    station_count: Annotated[int, Meta(description="Stations along the run.")]
    base_spacer_count: Annotated[int, Meta(description="Base pieces, under the bottom tier.")]
    intermediate_spacer_count: Annotated[int, Meta(description="Intermediate pieces, between tiers.")]
    top_piece_count: Annotated[int, Meta(description="Pieces that close the stacks from above.")]
    total_count: Annotated[int, Meta(description="All pieces, before waste.")]
    order_count: Annotated[int, Meta(description="All pieces with waste, rounded up.")]
    actual_spacing: Annotated[
        answers.Length | UnsetType,
        Meta(description="Even distance between stations; none for a single station."),
    ] = UNSET


def _preset(interval: PresetInterval, sheet: Worksheet) -> DistanceInterval | PerStickInterval:
    """Give the interval a preset stands for, and say where it comes from."""
    row = _PRESETS[interval.preset]
    sheet.cite(row.source)
    sheet.find(
        Severity.NOTE,
        "preset_interval",
        f"The interval is that of {standing_of(row)}, for {row.setting.replace('_', ' ')} ducts.",
        standing_of(row),
    )
    if row.distance_ft is not None:
        return DistanceInterval(kind="distance", distance=Length.parse(row.distance_ft, "ft"))
    return PerStickInterval(kind="per_stick", count=row.count, stick_length=Length.parse(row.stick_length_ft, "ft"))


def _stations(request: SpacersRequest, sheet: Worksheet) -> tuple[int, float, float]:
    """Give the stations, their even spacing [m], 0 for a single one, and where the first one stands [m]."""
    length = request.length.si
    given = request.interval
    interval = _preset(given, sheet) if given is not None and given.kind == "preset" else given
    if interval is not None and interval.kind == "per_stick":
        if request.end_offset is not None:
            raise UnanswerableError(
                Fault(
                    "#/end_offset",
                    "not_with_per_stick",
                    "An end offset belongs to an interval by distance; stations by stick stand half an interval in.",
                )
            )
        stations = engineering.stations_by_stick(length, interval.count, interval.stick_length.si)
        spacing = interval.stick_length.si / interval.count
        sheet.show(
            "stations",
            "L x count / stick, rounded up",
            f"{length:.6g} m x {interval.count} / {interval.stick_length.si:.6g} m",
            stations,
        )
        return stations, spacing if stations > 1 else 0.0, spacing / 2
    distance = sheet.settle("#/interval", None if interval is None else interval.distance, INTERVAL).si
    offset = sheet.settle("#/end_offset", request.end_offset, END_OFFSET).si
    stations = engineering.stations_by_distance(length, distance, offset)
    sheet.show(
        "stations",
        "(L - 2 offset) / distance, rounded up, + 1",
        f"({length:.6g} m - 2 x {offset:.6g} m) / {distance:.6g} m",
        stations,
    )
    return stations, engineering.spacing_by_distance(length, stations, offset), offset


def _joints(stick: Length | None, stations: int, spacing: float, first: float, sheet: Worksheet) -> None:
    """Caution where a station would stand on a bell or coupling."""
    if stick is None or not spacing:
        return
    hits = sum(
        1
        for index in range(stations)
        if (place := first + index * spacing) > CLEAR_OF_JOINT.si
        and abs(place - round(place / stick.si) * stick.si) < CLEAR_OF_JOINT.si
    )
    if hits:
        sheet.find(
            Severity.CAUTION,
            "stations_on_joints",
            f"{hits} of {stations} stations come within {text_of(sheet.tell.size(CLEAR_OF_JOINT.si))} of a joint every "
            f"{text_of(sheet.tell.given(stick))}. Start half an interval in, so that pieces clear the bells.",
            "derived",
            hits,
            0,
        )


def _spread(sheet: Worksheet, spacing: float) -> None:
    rows = [row for row in TABLES["spacer_intervals"] if row.distance_ft is not None and row.standing == "read"]
    widest, closest = max(rows, key=lambda row: row.distance_ft), min(rows, key=lambda row: row.distance_ft)
    limit = Length.parse(widest.distance_ft, "ft")
    if over(spacing, limit.si):
        sheet.cite(widest.source)
        sheet.find(
            Severity.CAUTION,
            "spacing_beyond_published",
            f"Stations {text_of(sheet.tell.distance(spacing))} apart are wider than any specification on file "
            f"({closest.distance_ft:g} to {widest.distance_ft:g} ft): ducts may sag between them.",
            citation(widest.source),
            sheet.tell.distance(spacing),
            sheet.tell.given(limit),
        )


def _pieces(system: PieceSystem, tiers: Sequence[int], wide: int, closure: TopClosure) -> tuple[int, int, int]:
    """Give the base, intermediate and top pieces of one station."""
    closed = closure is not TopClosure.NONE
    if system is PieceSystem.WHOLE_BANK:
        return 1, 0, int(closed)
    if system is PieceSystem.WHOLE_TIER:
        return 1, len(tiers) - 1, int(closed)
    return (
        engineering.base_pieces(tiers, wide),
        engineering.intermediate_pieces(tiers, wide),
        engineering.top_pieces(tiers, wide) if closed else 0,
    )


def compute(request: SpacersRequest, sheet: Worksheet) -> SpacersResult:
    """Count the stations of a run and the pieces at each."""
    stations, spacing, first = _stations(request, sheet)
    shared = sheet.settle("#/shared_end_count", request.shared_end_count, SHARED_END_COUNT)
    own = max(0, stations - shared)
    system = sheet.settle("#/piece_system", request.piece_system, PIECE_SYSTEM)
    wide = 1
    if system is PieceSystem.PIECES:
        wide = sheet.settle("#/ducts_per_spacer", request.ducts_per_spacer, DUCTS_PER_SPACER)
    closure = sheet.settle("#/top_closure", request.top_closure, TOP_CLOSURE)
    waste = sheet.settle("#/waste_percent", request.waste_percent, WASTE_PERCENT)
    tiers = request.tiers
    caution_overhang(tiers, sheet)
    _spread(sheet, spacing)
    _joints(request.stick_length, stations, spacing, first, sheet)
    base, intermediate, top = (count * own for count in _pieces(system, tiers, wide, closure))
    total = base + intermediate + top
    sheet.show("base", "stations x base pieces of one", f"{own} x {base // own if own else 0}", base)
    sheet.show(
        "intermediate", "stations x pieces between tiers", f"{own} x {intermediate // own if own else 0}", intermediate
    )
    if system is not PieceSystem.PIECES and len(tiers) > 1:
        sheet.find(
            Severity.NOTE,
            "tiers_not_staggered",
            "Pieces that carry whole tiers keep all tiers at one station: spacers of successive tiers cannot be "
            "staggered with them.",
            citation("cegs-16526a"),
        )
    sheet.find(
        Severity.NOTE,
        "one_station_apart",
        "The two readings of a specification differ by one station a run: a greatest distance counts both ends (fence "
        "posts), so many a stick does not. Runs that meet at a manhole share no station.",
        "derived",
    )
    return SpacersResult(
        station_count=own,
        base_spacer_count=base,
        intermediate_spacer_count=intermediate,
        top_piece_count=top,
        total_count=total,
        order_count=engineering.with_waste(total, waste),
        actual_spacing=sheet.tell.distance(spacing) if spacing else UNSET,
    )


OPERATION = Operation(
    name="spacers",
    operation_id="calculate_spacers",
    summary="Spacers of a duct bank",
    description="Counts the spacer stations of a run, by distance (fence posts, ends included) or by stick (one "
    "station fewer), and the base, intermediate and top pieces for rectangular and stepped banks.",
    request=SpacersRequest,
    result=SpacersResult,
    compute=compute,
    example={
        "length": {"value": 300, "unit": "ft"},
        "tiers": [3, 3, 2],
        "interval": {"kind": "distance", "distance": {"value": 5, "unit": "ft"}},
        "end_offset": {"value": 0, "unit": "ft"},
        "piece_system": "pieces",
        "ducts_per_spacer": 1,
        "shared_end_count": 0,
        "top_closure": "none",
        "waste_percent": 5,
    },
)
