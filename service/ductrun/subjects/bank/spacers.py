"""POST /v1/spacers: how many spacers a duct bank needs."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.kit import answers
from ductrun.kit.forms import Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.spacing import Runs, Spacers, runs_of, space
from ductrun.subjects.bank.spacing_practice import Spacing
from ductrun.subjects.parts.bank import MOST_IN_A_TIER, MOST_TIERS, DuctBank, Tiers, caution_overhang, tiers_of


class SpacersRequest(Spacing):
    """One straight run of a duct bank and how its spacers are specified."""

    length: RunLength = Field(description="Length of the run, face to face.", examples=[{"value": 300, "unit": "ft"}])
    tiers: Omissible[Tiers] = Field(
        default=None, description="Ducts in each tier, the bottom tier first.", examples=[[3, 3, 2]]
    )
    bank: Omissible[DuctBank] = Field(
        default=None, description="In place of tiers: the duct bank, whose pieces are counted by the size of its ducts."
    )


class SpacersOfSize(Struct, frozen=True, gc=False):
    """The pieces for ducts of one size."""

    outside_diameter: Annotated[answers.Length, Meta(description="Of the ducts that they carry or close.")]
    base_spacer_count: Annotated[int, Meta(description="Base spacers, which carry the bottom tier.")]
    intermediate_spacer_count: Annotated[int, Meta(description="Intermediate spacers, which part two tiers.")]
    top_piece_count: Annotated[int, Meta(description="Pieces that close the top tier.")]
    order_count: Annotated[int, Meta(description="All pieces of this size with waste, rounded up.")]


class SpacersResult(Struct, frozen=True, gc=False):
    """The stations and the pieces."""

    station_count: Annotated[int, Meta(description="Stations along the run.")]
    base_spacer_count: Annotated[int, Meta(description="Base pieces, under the bottom tier.")]
    intermediate_spacer_count: Annotated[int, Meta(description="Intermediate pieces, between tiers.")]
    top_piece_count: Annotated[int, Meta(description="Pieces that close the stacks from above.")]
    piece_count: Annotated[int, Meta(description="All pieces, before waste.")]
    order_count: Annotated[int, Meta(description="All pieces with waste, rounded up; by size, if they are.")]
    actual_spacing: Annotated[
        answers.Length | UnsetType,
        Meta(description="Even distance between stations; none for a single station."),
    ] = UNSET
    sizes: Annotated[
        Annotated[list[SpacersOfSize], Meta(max_length=MOST_TIERS * MOST_IN_A_TIER)] | UnsetType,
        Meta(description="The pieces by size, the largest first, if a bank is given."),
    ] = UNSET


def assess(request: SpacersRequest, sheet: Worksheet) -> Spacers:
    """Space the run of a request."""
    return space(request, _ducts(request, sheet), request.length.si, sheet)


def _ducts(request: SpacersRequest, sheet: Worksheet) -> Runs | dict[float, Runs]:
    """Give the ducts of every tier, of a bank by their outside diameter."""
    if request.bank is not None and request.tiers is None:
        return runs_of([tier.diameters for tier in tiers_of(request.bank, sheet.within("bank"))])
    if request.bank is not None or request.tiers is None:
        member, words = ("tiers", "") if request.bank is None else ("bank", ", not both")
        raise UnanswerableError(sheet.fault(member, "one_of_two", f"Give either tiers or bank{words}."))
    caution_overhang(request.tiers, sheet)
    return [(ducts,) for ducts in request.tiers]


def tell(found: Spacers, telling: Telling) -> SpacersResult:
    """Put spacers into the caller's units."""
    stations, pieces = found.stations, found.pieces
    return SpacersResult(
        station_count=stations.own,
        base_spacer_count=pieces.base,
        intermediate_spacer_count=pieces.intermediate,
        top_piece_count=pieces.top,
        piece_count=pieces.base + pieces.intermediate + pieces.top,
        order_count=pieces.order,
        actual_spacing=telling.distance(stations.spacing) if stations.spacing else UNSET,
        sizes=_told_sizes(found, telling) if found.sizes else UNSET,
    )


def _told_sizes(found: Spacers, telling: Telling) -> list[SpacersOfSize]:
    return [SpacersOfSize(telling.size(size), *of_size) for size, of_size in found.sizes]


OPERATION = Operation(
    name="spacers",
    operation_id="calculate_spacers",
    summary="Spacers of a duct bank",
    description="Counts the spacer stations of a run, by distance (fence posts, ends included) or by stick (one "
    "station fewer), and the base, intermediate and top pieces for rectangular and stepped banks, by size for a bank.",
    request=SpacersRequest,
    result=SpacersResult,
    assess=assess,
    tell=tell,
    example={
        "length": {"value": 300, "unit": "ft"},
        "tiers": [3, 3, 2],
        "interval": {"kind": "distance", "distance": {"value": 5, "unit": "ft"}},
        "end_offset": {"value": 0, "unit": "ft"},
        "piece_system": "pieces",
        "duct_count_per_spacer": 1,
        "shared_end_count": 0,
        "top_closure": "none",
        "waste_percent": 5,
    },
)
