"""POST /v1/supports: straps of conduit above ground."""

from __future__ import annotations

from itertools import pairwise
from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import supports as engineering
from ductrun.engineering.rounding import over, round_down
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, count
from ductrun.kit.forms import Edition, Form, Offset, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.movement.fittings import MOST_FITTINGS, Fitting, FittingMade, Layout, fitting_of, lay_out
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.service_temperature import caution_heat
from ductrun.subjects.movement.spacing import SupportedConduit, SupportSpacing, spacing_of
from ductrun.units import Length

TERMINATION_COUNT = count("supports.termination_count")
MOST_SUPPORTS = 5_000  # a bound of the answer, like those of the forms
MOST_STRAPS = MOST_SUPPORTS + 1 + 3 * MOST_FITTINGS  # a piece of run takes two more at most, and an anchor


class Fittings(FittingMade):
    """The expansion fittings of a run, as `expansion` counts them: one in each of as many equal pieces."""

    fitting_count: Annotated[int, Field(ge=1, le=MOST_FITTINGS)] = Field(
        description="Expansion fittings of the run.", examples=[2]
    )


class Supporting(Form):
    """How a run is supported."""

    termination_count: Omissible[Annotated[int, Field(ge=1, le=2)]] = Field(
        default=None,
        description="Ends of the run at a box or other termination; with one, the run goes on.",
        examples=[2],
        json_schema_extra=TERMINATION_COUNT.stated,
    )
    end_distance: Omissible[Offset] = Field(
        default=None,
        description="Distance of the end straps from the terminations, at most what the rule of the conduit allows.",
        examples=[{"value": 2, "unit": "ft"}],
        json_schema_extra=by_rule(
            "the most that the rule of the conduit allows: 1 ft for fmc, lfmc and lfnc, 3 ft for all others"
        ),
    )
    fittings: Omissible[Fittings] = Field(
        default=None,
        description="Expansion fittings of the run, which then lies between two fixed points; without them the straps "
        "are those of a run that needs none.",
        examples=[{"fitting_count": 2}],
    )


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
        list[answers.Length], Meta(description="Where they stand along the run.", max_length=MOST_STRAPS)
    ]
    holding_strap_positions: Annotated[
        list[answers.Length],
        Meta(
            description="Those of them that hold: on the barrels of fittings, and at anchors without barrels. All "
            "others let the run slide.",
            max_length=MOST_FITTINGS + MOST_FITTINGS // 2,
        ),
    ]
    fitting_positions: Annotated[
        list[answers.Length],
        Meta(description="Where the barrels of the fittings given are clamped.", max_length=MOST_FITTINGS),
    ]
    piston_reaches: Annotated[
        list[answers.Length],
        Meta(description="Where their pistons end when fully open, in the same order.", max_length=MOST_FITTINGS),
    ]
    anchor_positions: Annotated[
        list[answers.Length],
        Meta(description="Where the run is fixed between them; its ends are fixed.", max_length=MOST_FITTINGS),
    ]
    end_distance: Annotated[answers.Length, Meta(description="Distance of the first strap from its termination.")]
    actual_spacing: Annotated[
        answers.Length | UnsetType, Meta(description="Widest distance between straps; none for a single one.")
    ] = UNSET


class Supported(NamedTuple):
    """The straps of a straight run and where they stand along it [m]; its fittings, None without any."""

    spacing: SupportSpacing
    termination_count: int
    end_distance: Length
    positions: list[float]
    layout: Layout | None


def support(given: Supporting, spacing: SupportSpacing, run: StraightRun, sheet: Worksheet) -> Supported:
    """Count the straps of a run and say where they go."""
    terminations = sheet.settle("termination_count", given.termination_count, TERMINATION_COUNT)
    end = sheet.settle("end_distance", given.end_distance, spacing.end)
    _judge_end(end, spacing, sheet)
    length, most = run.length, spacing.most
    if length / most.si > MOST_SUPPORTS:
        raise UnanswerableError(
            run.place.fault(
                "value",
                "too_long_for_one_list",
                f"That is more than {MOST_SUPPORTS:,} straps: give the run in parts.",
                maximum=Length(most.value * MOST_SUPPORTS, most.unit),
            )
        )
    layout = None
    if given.fittings is None:
        places = engineering.support_positions(length, most.si, end.si, terminations)
    else:
        fitting, layout = _laid_out(given.fittings, terminations, spacing, length, sheet)
        places = sorted(layout.holding + layout.sliding(fitting, most.si, end.si))
    _show(length, end, most, len(places), layout, sheet)
    _report_sliding(layout, spacing)
    caution_heat(spacing.family, spacing.place)
    return Supported(spacing, terminations, end, places, layout)


def _laid_out(
    given: Fittings, terminations: int, spacing: SupportSpacing, length: float, sheet: Worksheet
) -> tuple[Fitting, Layout]:
    """Place the fittings given; refuse what no straps could be placed around."""
    place = sheet.within("fittings")
    fitting = fitting_of(given, place)
    layout = lay_out(length, given.fitting_count, fitting)
    faults: list[Fault] = []
    if terminations != 2:
        faults.append(
            sheet.fault(
                "termination_count",
                "contradiction",
                "A run with expansion fittings lies between two fixed points: give 2.",
                ["2"],
            )
        )
    if layout is None:
        faults.append(_no_room(given.fitting_count, fitting, length, place))
    if over(fitting.reach - fitting.clamp, spacing.most.si) or over(fitting.clamp, spacing.end.value.si):
        faults.append(_too_long(fitting, spacing, place))
    if layout is None or faults:
        raise UnanswerableError(*faults)
    return fitting, layout


def _no_room(fitting_count: int, fitting: Fitting, length: float, place: Worksheet) -> Fault:
    """Say that the pieces of the run are shorter than the fittings in them."""
    reach, room = place.tell.size(fitting.reach), place.tell.size(length / fitting_count)
    most = round_down(length / fitting.reach)
    return place.fault(
        "fitting_count",
        "no_room_for_fittings",
        f"Each fitting has {text_of(room)} of the run, and one fully open takes {text_of(reach)}.",
        maximum=float(most) if most else None,
    )


def _too_long(fitting: Fitting, spacing: SupportSpacing, place: Worksheet) -> Fault:
    """Say that straps on either side of a fitting would stand too far apart, or from the termination."""
    tell, most, end = place.tell, spacing.most, spacing.end.value
    engagement = fitting.engagement.si
    return place.fault(
        "fitting_travel",
        "fitting_too_long",
        f"Open, the fitting is {text_of(tell.size(fitting.reach))} long and no strap may stand on its piston: that "
        f"does not go with straps {text_of(tell.given(most))} apart and {text_of(tell.given(end))} from a termination.",
        maximum=tell.size(min((2 * most.si - engagement) / 3, 2 * end.si - engagement)),
    )


def _show(length: float, end: Length, most: Length, straps: int, layout: Layout | None, sheet: Worksheet) -> None:
    if sheet.working is None:
        return
    if layout is None:
        formula = "(L - 2 end) / spacing, rounded up, + 1"
        sheet.show("n", formula, f"({length:.6g} m - 2 x {end.si:.6g} m) / {most.si:.6g} m", straps)
    else:
        holding = len(layout.holding)
        sheet.show("n", "straps that slide + straps that hold", f"{straps - holding} + {holding}", straps)


def _report_sliding(layout: Layout | None, spacing: SupportSpacing) -> None:
    """Say which straps let the run slide."""
    only = "only those on barrels and at anchors clamp it"
    if layout is None:
        only = (
            "only anchors clamp it. Where the run needs expansion fittings, give them: no strap may stand on a piston"
        )
    spacing.place.find(
        Severity.NOTE,
        "straps_let_it_slide",
        f"Straps hold the conduit but let it slide along as it moves with temperature; {only}.",
        spacing.rule,
        member="",
    )


def _judge_end(end: Length, spacing: SupportSpacing, sheet: Worksheet) -> None:
    """Hold the distance of the end straps against the most that it may be."""
    limit = spacing.end.value
    too_far = over(end.si, limit.si)
    sheet.judge(not too_far)
    if too_far:
        told, most = sheet.tell.given(end), sheet.tell.given(limit)
        sheet.find(
            Severity.VIOLATION,
            "end_support_too_far",
            f"The end straps stand {text_of(told)} from the terminations; {text_of(most)} is the most.",
            spacing.rule,
            told,
            most,
            member="end_distance",
        )


def assess(request: SupportsRequest, sheet: Worksheet) -> Supported:
    """Support the run of a request."""
    sheet.follow_edition(request.code_edition)
    run = StraightRun(request.length.si, sheet.within("length"))
    return support(request, spacing_of(request.conduit, sheet.within("conduit")), run, sheet)


def tell(supported: Supported, telling: Telling) -> SupportsResult:
    """Tell how far apart the straps stand, how many there are and where."""
    places, layout = supported.positions, supported.layout
    clamps, reaches, anchors, holding = ([], [], [], []) if layout is None else layout[1:]
    widest = places[1] - places[0] if len(places) > 1 else None  # all are alike but for where fittings stand
    if layout is not None and widest is not None:
        widest = max([other - one for one, other in pairwise(places)])
    return SupportsResult(
        support_spacing=telling.given(supported.spacing.most),
        support_count=len(places),
        positions=[telling.distance(place) for place in places],
        holding_strap_positions=[telling.distance(place) for place in holding],
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
