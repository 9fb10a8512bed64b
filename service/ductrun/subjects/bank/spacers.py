"""POST /v1/spacers: how many spacers a duct bank needs."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.kit import answers
from ductrun.kit.forms import RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.spacing import Spacers, Spacing, space
from ductrun.subjects.parts.bank import Tiers, caution_overhang


class SpacersRequest(Spacing):
    """One straight run of a duct bank and how its spacers are specified."""

    length: RunLength = Field(description="Length of the run, face to face.", examples=[{"value": 300, "unit": "ft"}])
    tiers: Tiers = Field(description="Ducts in each tier, the bottom tier first.", examples=[[3, 3, 2]])


class SpacersResult(Struct, frozen=True, gc=False):
    """The stations and the pieces."""

    station_count: Annotated[int, Meta(description="Stations along the run.")]
    base_spacer_count: Annotated[int, Meta(description="Base pieces, under the bottom tier.")]
    intermediate_spacer_count: Annotated[int, Meta(description="Intermediate pieces, between tiers.")]
    top_piece_count: Annotated[int, Meta(description="Pieces that close the stacks from above.")]
    piece_count: Annotated[int, Meta(description="All pieces, before waste.")]
    order_count: Annotated[int, Meta(description="All pieces with waste, rounded up.")]
    actual_spacing: Annotated[
        answers.Length | UnsetType,
        Meta(description="Even distance between stations; none for a single station."),
    ] = UNSET


def assess(request: SpacersRequest, sheet: Worksheet) -> Spacers:
    """Space the run of a request."""
    caution_overhang(request.tiers, sheet)
    return space(request, request.tiers, request.length.si, sheet)


def tell(found: Spacers, telling: Telling) -> SpacersResult:
    """Put spacers into the caller's units."""
    return SpacersResult(
        station_count=found.station_count,
        base_spacer_count=found.base_count,
        intermediate_spacer_count=found.intermediate_count,
        top_piece_count=found.top_count,
        piece_count=found.piece_count,
        order_count=found.order_count,
        actual_spacing=telling.distance(found.stations.spacing) if found.stations.spacing else UNSET,
    )


OPERATION = Operation(
    name="spacers",
    operation_id="calculate_spacers",
    summary="Spacers of a duct bank",
    description="Counts the spacer stations of a run, by distance (fence posts, ends included) or by stick (one "
    "station fewer), and the base, intermediate and top pieces for rectangular and stepped banks.",
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
