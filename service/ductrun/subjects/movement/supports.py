"""POST /v1/supports: straps of conduit above ground."""

from __future__ import annotations

from itertools import pairwise
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.kit import answers
from ductrun.kit.forms import Edition, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.movement.fittings import MOST_FITTINGS
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.spacing import CLOSEST, SupportedConduit, spacing_of
from ductrun.subjects.movement.strapping import (
    MOST_STRAPS,
    MOST_SUPPORTS,
    Supported,
    Supporting,
    support,
    supporting_steps,
)

_ALWAYS = 20.0  # steps


class SupportsRequest(Supporting):
    """A straight run above ground."""

    conduit: SupportedConduit = Field(description="The conduit.")
    length: RunLength = Field(
        description="Length of the run above ground, between boxes, fittings or other terminations.",
        examples=[{"value": 100, "unit": "ft"}],
    )
    code_edition: Edition = None


class SupportsResult(Struct, frozen=True, gc=False):
    """How far apart, how many and where."""

    support_spacing: Annotated[answers.Length, Meta(description="Most that supports may stand apart, as printed.")]
    support_count: Annotated[int, Meta(description="Straps of the run.")]
    positions: Annotated[
        list[answers.Length], Meta(description="Where the supports stand along the run.", max_length=MOST_STRAPS)
    ]
    holding_strap_positions: Annotated[
        list[answers.Length],
        Meta(
            description="Supports that hold: with fittings the clamps of their barrels, and anchors without "
            "barrels; of metal and flexible conduit without fittings all. All others let the run slide.",
            max_length=MOST_STRAPS,
        ),
    ]
    fitting_positions: Annotated[
        list[answers.Length],
        Meta(description="Where the barrels of the fittings given are clamped.", max_length=MOST_FITTINGS),
    ]
    piston_reaches: Annotated[
        list[answers.Length],
        Meta(
            description="Where the pistons of the fittings end when fully open, in the order of fitting_positions.",
            max_length=MOST_FITTINGS,
        ),
    ]
    anchor_positions: Annotated[
        list[answers.Length],
        Meta(description="Where the run is fixed between them; its ends are fixed.", max_length=MOST_FITTINGS),
    ]
    end_distance: Annotated[answers.Length, Meta(description="Distance of the first strap from its termination.")]
    actual_spacing: Annotated[
        answers.Length | UnsetType, Meta(description="Widest distance between straps; none for a single one.")
    ] = UNSET


def steps(request: SupportsRequest) -> float:
    """Bound the work by the straps, as if they stood as close as any rule has them."""
    fittings = 0 if request.fittings is None else request.fittings.fitting_count
    length = min(request.length.si, MOST_SUPPORTS * CLOSEST)
    return _ALWAYS + supporting_steps(length, CLOSEST, fittings)


def assess(request: SupportsRequest, sheet: Worksheet) -> Supported:
    """Support the run of a request."""
    sheet.follow_edition(request.code_edition)
    run = StraightRun(request.length.si, sheet.within("length"))
    return support(request, spacing_of(request.conduit, sheet.within("conduit")), run, sheet)


def tell(supported: Supported, telling: Telling) -> SupportsResult:
    """Tell how far apart the straps stand, how many there are and where."""
    places, layout = supported.positions, supported.layout
    clamps, reaches, anchors = ([], [], []) if layout is None else layout[1:4]
    widest = places[1] - places[0] if len(places) > 1 else None  # all are alike but for where fittings stand
    if layout is not None and widest is not None:
        widest = max([other - one for one, other in pairwise(places)])
    return SupportsResult(
        support_spacing=telling.given(supported.spacing.most),
        support_count=len(places),
        positions=[telling.distance(place) for place in places],
        holding_strap_positions=[telling.distance(place) for place in supported.holding],
        fitting_positions=[telling.distance(place) for place in clamps],
        piston_reaches=[telling.distance(place) for place in reaches],
        anchor_positions=[telling.distance(place) for place in anchors],
        end_distance=telling.distance(places[0]),
        actual_spacing=UNSET if widest is None else telling.distance(widest),
    )


OPERATION = Operation(
    name="supports",
    operation_id="calculate_supports",
    summary="Supports above ground",
    description="Gives how far apart straps may stand for a type and trade size, how many a straight run needs and "
    "where each goes, which of them hold and which let it slide, clear of the expansion fittings given.",
    request=SupportsRequest,
    result=SupportsResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"},
        "length": {"value": 100, "unit": "ft"},
        "termination_count": 2,
        "end_distance": {"value": 3, "unit": "ft"},
        "fittings": {
            "fitting_count": 2,
            "fitting_travel": {"value": 6, "unit": "in"},
            "piston_engagement": {"value": 6, "unit": "in"},
        },
        "code_edition": "2023",
    },
)
