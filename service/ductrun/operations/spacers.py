"""POST /v1/spacers: how many spacers a duct bank needs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Literal

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import spacing as engineering
from ductrun.operations import answers
from ductrun.operations.choices import Severity, TopClosure
from ductrun.operations.defaults import choice, citation, count, number, quantity
from ductrun.operations.inputs import Form, Interval, Offset, Omissible, Percent, RunLength
from ductrun.operations.operation import Operation
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.tables import TABLES
from ductrun.units import Length

INTERVAL = quantity("spacers.interval", Length)
END_OFFSET = quantity("spacers.end_offset", Length)
DUCTS_PER_SPACER = count("spacers.ducts_per_spacer")
TOP_CLOSURE = choice("spacers.top_closure", TopClosure)
WASTE_PERCENT = number("spacers.waste_percent")

Tiers = Annotated[list[Annotated[int, Field(ge=1, le=100)]], Field(min_length=1, max_length=50)]


class DistanceInterval(Form):
    """Stations no more than a distance apart, ends included."""

    kind: Literal["distance"] = Field(description="Fixed text that says: by distance.")
    distance: Interval = Field(description="Greatest distance between stations.", examples=[{"value": 8, "unit": "ft"}])


class PerStickInterval(Form):
    """So many stations for each stick of duct."""

    kind: Literal["per_stick"] = Field(description="Fixed text that says: by stick.")
    count: Annotated[int, Field(ge=1, le=100)] = Field(description="Stations for each stick.", examples=[2])
    stick_length: Interval = Field(description="Length of a stick.", examples=[{"value": 10, "unit": "ft"}])


SpacerInterval = TypeAliasType(
    "SpacerInterval", Annotated[DistanceInterval | PerStickInterval, Field(discriminator="kind")]
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


def _stations(request: SpacersRequest, sheet: Worksheet) -> tuple[int, float]:
    """Give the stations and their even spacing [m], 0 for a single one."""
    length = request.length.si
    interval = request.interval
    if isinstance(interval, PerStickInterval):
        if request.end_offset is not None:
            raise UnanswerableError(
                Fault(
                    "#/end_offset",
                    "not_with_per_stick",
                    "An end offset belongs to an interval by distance; stations by stick stand half an interval in.",
                )
            )
        stations = engineering.stations_by_stick(length, interval.count, interval.stick_length.si)
        sheet.show(
            "stations",
            "L x count / stick, rounded up",
            f"{length:.6g} m x {interval.count} / {interval.stick_length.si:.6g} m",
            stations,
        )
        return stations, interval.stick_length.si / interval.count if stations > 1 else 0.0
    distance = sheet.settle("#/interval", None if interval is None else interval.distance, INTERVAL).si
    offset = sheet.settle("#/end_offset", request.end_offset, END_OFFSET).si
    stations = engineering.stations_by_distance(length, distance, offset)
    sheet.show(
        "stations",
        "(L - 2 offset) / distance, rounded up, + 1",
        f"({length:.6g} m - 2 x {offset:.6g} m) / {distance:.6g} m",
        stations,
    )
    return stations, engineering.spacing_by_distance(length, stations, offset)


def caution_overhang(tiers: Sequence[int], sheet: Worksheet) -> None:
    """Caution where a tier is wider than the one below it."""
    for index in range(1, len(tiers)):
        if tiers[index] > tiers[index - 1]:
            sheet.find(
                Severity.CAUTION,
                "tier_overhangs",
                f"Tier {index + 1} has {tiers[index]} ducts above {tiers[index - 1]}: the outer ducts have nothing to "
                "stand on. Tiers are given from the bottom.",
                "derived",
                tiers[index],
                tiers[index - 1],
            )


def _spread(sheet: Worksheet, spacing: float) -> None:
    rows = [row for row in TABLES["spacer_intervals"] if row.distance_ft is not None and row.standing == "read"]
    widest, closest = max(rows, key=lambda row: row.distance_ft), min(rows, key=lambda row: row.distance_ft)
    limit = Length.parse(widest.distance_ft, "ft")
    if spacing > limit.si * (1 + 1e-9):
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


def compute(request: SpacersRequest, sheet: Worksheet) -> SpacersResult:
    """Count the stations of a run and the pieces at each."""
    stations, spacing = _stations(request, sheet)
    wide = sheet.settle("#/ducts_per_spacer", request.ducts_per_spacer, DUCTS_PER_SPACER)
    closure = sheet.settle("#/top_closure", request.top_closure, TOP_CLOSURE)
    waste = sheet.settle("#/waste_percent", request.waste_percent, WASTE_PERCENT)
    tiers = request.tiers
    caution_overhang(tiers, sheet)
    _spread(sheet, spacing)
    base = engineering.base_pieces(tiers, wide) * stations
    intermediate = engineering.intermediate_pieces(tiers, wide) * stations
    top = 0 if closure is TopClosure.NONE else engineering.top_pieces(tiers, wide) * stations
    total = base + intermediate + top
    sheet.show(
        "base",
        "stations x ceil(bottom tier / ducts per spacer)",
        f"{stations} x ceil({tiers[0]} / {wide})",
        base,
    )
    upper = " + ".join(f"ceil({ducts} / {wide})" for ducts in tiers[1:]) or "0"
    sheet.show("intermediate", "stations x sum over the upper tiers", f"{stations} x ({upper})", intermediate)
    sheet.find(
        Severity.NOTE,
        "separate_runs",
        "Runs that meet at a manhole do not share a station; segments of one run that meet share one.",
        "derived",
    )
    return SpacersResult(
        station_count=stations,
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
        "ducts_per_spacer": 1,
        "top_closure": "none",
        "waste_percent": 5,
    },
)
