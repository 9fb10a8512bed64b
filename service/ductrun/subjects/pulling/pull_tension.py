"""POST /v1/pull-tension: can this cable be pulled through this run without damage, and from which end."""

from __future__ import annotations

from pydantic import Field

from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import under
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import by_rule, number
from ductrun.kit.forms import Form, Interval, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.pulling.assessment import PullAssessment
from ductrun.subjects.pulling.cable_order import CableOrder, cables_to_order
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.direction import Direction, direction_of, verdict_of
from ductrun.subjects.pulling.findings import (
    caution_rope,
    report_bend_total,
    report_burning_rope,
    report_direction,
    report_other_end,
    show_working,
)
from ductrun.subjects.pulling.practice import PullInputs
from ductrun.subjects.pulling.pull_tension_told import PullTensionResult, tell
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.settling import settle_request
from ductrun.subjects.pulling.studies import (
    FrictionRange,
    find_largest,
    friction_cases,
    profile,
)
from ductrun.units import LengthUnit, VolumeUnit

_LUBRICANT = number("pulling.lubricant_per_length")  # US gallons for each foot and inch
_FILM = _LUBRICANT.value * VolumeUnit.GAL_US.scale / (LengthUnit.FT.scale * LengthUnit.INCH.scale)


class Studying(Form):
    """What to find of a pull beside its tension."""

    friction_range: Omissible[FrictionRange] = Field(
        default=None, description="Gives the pull at a low and a high friction as well."
    )
    find_largest: Omissible[bool] = Field(
        default=None,
        description="Whether to find the largest friction, incoming tension and last straight that still comply.",
        examples=[True],
        json_schema_extra=by_rule("no"),
    )
    profile_spacing: Omissible[Interval] = Field(
        default=None,
        description="Gives the tension along the run at points this far apart, for plotting.",
        examples=[{"value": 10, "unit": "ft"}],
    )
    ordering: Omissible[CableOrder] = Field(default=None, description="Gives the cable to order as well.")


class PullTensionRequest(PullInputs, Studying):
    """Cables, conduit, and the route in the order of the pull; and what to find beside the tension."""


def assess(request: PullTensionRequest, sheet: Worksheet) -> PullAssessment:
    """Pull the cables of a request through its route."""
    return pull(request, settle_request(request, sheet), sheet)


def pull(given: Studying, pulling: Pulling, sheet: Worksheet) -> PullAssessment:
    """Carry the tension through the route in both directions and hold it against the limits."""
    forward, backward, total = carry(pulling)
    within, within_backward = verdict_of(forward.use, pulling), verdict_of(backward.use, pulling)
    sheet.judge(within)
    length = engineering.developed_length(pulling.sections)
    report_bend_total(pulling.route, total)
    report_direction(forward, pulling, sheet, may_turn=within_backward is not False)
    report_other_end(backward, sheet)
    report_burning_rope(pulling.route, length, range(len(pulling.sections)))
    caution_rope(sheet, braked=forward.braked or backward.braked)
    better, reason = _better_end(forward, backward, within, within_backward, sheet)
    _note_better(better, reason, backward, pulling.route.sheet)
    if sheet.working is not None:
        show_working(forward, pulling, sheet)
    sheet.cite("lubricant-technical-talk-17")
    cases, spacing, order = given.friction_range, given.profile_spacing, given.ordering
    return PullAssessment(
        pulling=pulling,
        forward=forward,
        backward=backward,
        within=within,
        within_backward=within_backward,
        better=better,
        better_reason=reason,
        bend_total=total,
        lubricant_volume=_lubricant(pulling, length),
        friction_cases=None if cases is None else friction_cases(cases, pulling, sheet.within("friction_range")),
        largest=find_largest(pulling) if given.find_largest else None,
        profile=(
            None
            if spacing is None
            else profile(pulling, forward.pulling.case.entering, spacing.si, sheet.within("profile_spacing"))
        ),
        cables_to_order=(
            None if order is None else cables_to_order(order, pulling.cables, length, sheet.within("ordering"))
        ),
    )


def pull_from_better_end(pulling: Pulling, sheet: Worksheet) -> PullAssessment:
    """Carry the tension both ways and judge the pull from its better end: nobody has said from which it is pulled."""
    forward, backward, total = carry(pulling)
    within, within_backward = verdict_of(forward.use, pulling), verdict_of(backward.use, pulling)
    better, reason = _better_end(forward, backward, within, within_backward, sheet)
    turned = better is PullDirection.REVERSED
    sheet.judge(within_backward if turned else within)
    length = engineering.developed_length(pulling.sections)
    report_bend_total(pulling.route, total)
    report_direction(backward if turned else forward, pulling, sheet, may_turn=False, turned=turned)
    report_burning_rope(pulling.route, length, range(len(pulling.sections)))
    caution_rope(sheet, braked=(backward if turned else forward).braked)
    if sheet.working is not None:
        show_working(forward, pulling, sheet)
    sheet.cite("lubricant-technical-talk-17")
    lubricant = _lubricant(pulling, length)
    return PullAssessment(
        pulling,
        forward,
        backward,
        within,
        within_backward,
        better,
        reason,
        total,
        lubricant,
        friction_cases=None,
        largest=None,
        profile=None,
        cables_to_order=None,
    )


def carry(pulling: Pulling) -> tuple[Direction, Direction, float]:
    """Carry a pull from both ends; gives both directions and the sum of the bends [rad]."""
    route, braking = pulling.route_at(pulling.coefficient), pulling.braking_at(pulling.coefficient)
    total = engineering.bend_total(route)
    turned = None if braking is None else engineering.reverse(braking)
    return (
        direction_of(route, braking, total, pulling),
        direction_of(engineering.reverse(route), turned, total, pulling),
        total,
    )


def _lubricant(pulling: Pulling, length: float) -> float:
    """Give the lubricant [m3] of all sections, each by its bore."""
    bores = pulling.route.bores
    if len(pulling.lies) == 1:
        return engineering.lubricant_volume(length, bores[0], _FILM)
    return sum(
        engineering.lubricant_volume(section.developed_length, bore, _FILM)
        for section, bore in zip(pulling.sections, bores, strict=True)
    )


_OTHER_END = "Pull from the other end"
_RANK = {True: 0, None: 1, False: 2}  # of a verdict
_WORDS = {True: "keeps its limits", None: "was not judged", False: "breaks a limit"}


def _better_end(
    forward: Direction, backward: Direction, within: bool | None, within_backward: bool | None, sheet: Worksheet
) -> tuple[PullDirection, str]:
    """Recommend the end that complies, or was judged, or uses less of the limits.

    A pull that needs no brake comes before one that does where neither can be told better; where both ends break a
    limit, neither is recommended.
    """
    shares = (
        f"{forward.use.share * 100:.0f} percent of the limits is used as given, {backward.use.share * 100:.0f} from "
        "the other end"
    )
    if within is not within_backward:
        shares = f"as given the pull {_WORDS[within]}, from the other end it {_WORDS[within_backward]}; {shares}"
    elif within is False:
        shares = f"from neither end the pull keeps its limits; {shares}"
    elif within is None and forward.use.judged != backward.use.judged:
        shares = f"only one end needs no brake that is not known; {shares}"
    ranks = [
        (_RANK[verdict], verdict is None and not way.use.judged)
        for way, verdict in ((forward, within), (backward, within_backward))
    ]
    turn = ranks[1] < ranks[0] or (ranks[1] == ranks[0] and under(backward.use.share, forward.use.share))
    if within is within_backward is False:
        return PullDirection.REVERSED if turn else PullDirection.FORWARD, f"{shares[0].upper()}{shares[1:]}."
    if not turn:
        return PullDirection.FORWARD, f"Pull as given: {shares}."
    ends, other = sheet.tell.force(forward.pulling.case.final), sheet.tell.force(backward.pulling.case.final)
    reason = f"{_OTHER_END}: {shares}; the pull ends at {text_of(other)} instead of {text_of(ends)}."
    return PullDirection.REVERSED, reason


def _note_better(better: PullDirection, reason: str, backward: Direction, sheet: Worksheet) -> None:
    """Say so where the better end is not the one asked."""
    if better is PullDirection.REVERSED and reason.startswith(_OTHER_END):
        other = sheet.tell.force(backward.pulling.case.final)
        sheet.find(Severity.NOTE, "pull_from_the_other_end", reason, WORKED_OUT, other, member="")


def steps(request: PullTensionRequest) -> float:
    """Bound the work by the sections, each passed again in every trial of the largest that complies."""
    return 30.0 + (30.0 if request.find_largest else 5.0) * len(request.sections)


OPERATION = Operation(
    name="pull-tension",
    operation_id="calculate_pull_tension",
    summary="Pulling tension",
    description="Carries the tension of a cable pull through straights at any grade, level and vertical bends, in "
    "both directions, with the least reel brake that keeps the cable taut downhill, and holds tension, sidewall "
    "pressure, brake, bends, jam ratio and clearance against their limits.",
    request=PullTensionRequest,
    result=PullTensionResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "5"},
        "cables": [
            {
                "count": 3,
                "cable": {
                    "kind": "measured",
                    "diameter": {"value": 1.42, "unit": "in"},
                    "mass_per_length": {"value": 2.6, "unit": "lb/ft"},
                    "conductor": {"material": "copper", "size": "500 kcmil", "temper": "soft", "count": 1},
                    "cable_type": "power_shielded_5_to_15_kv",
                    "shielding": "shielded",
                },
            }
        ],
        "arrangement": "cradled",
        "friction_coefficient": 0.35,
        "weight_correction_in": "straights_and_bends",
        "incoming_tension": {"value": 0, "unit": "lbf"},
        "attachment": "pulling_eye",
        "conductor_counting": "two_of_three",
        "device_limit": {"value": 10000, "unit": "lbf"},
        "allowable_sidewall_pressure": {"value": 500, "unit": "lbf/ft"},
        "sections": [
            {
                "kind": "straight",
                "length": {"value": 150, "unit": "ft"},
                "grade": {"value": 0, "unit": "deg"},
            },
            {
                "kind": "horizontal_bend",
                "radius": {"value": 3, "unit": "ft"},
                "angle": {"value": 90, "unit": "deg"},
                "made": "factory_elbow",
            },
            {
                "kind": "straight",
                "length": {"value": 220, "unit": "ft"},
                "grade": {"value": 0, "unit": "deg"},
            },
            {
                "kind": "horizontal_bend",
                "radius": {"value": 3, "unit": "ft"},
                "angle": {"value": 90, "unit": "deg"},
                "made": "factory_elbow",
            },
            {"kind": "straight", "length": {"value": 90, "unit": "ft"}, "grade": {"value": 0, "unit": "deg"}},
        ],
        "code_edition": "2023",
    },
)
