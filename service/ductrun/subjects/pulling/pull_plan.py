"""POST /v1/pull-plan: the fewest pull points a route needs, and where."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from pydantic import Field

from ductrun.engineering import pull_search
from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import over, under
from ductrun.kit.answers import AnyQuantity
from ductrun.kit.backing import WORKED_OUT, Backing
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice
from ductrun.kit.forms import Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.wording import in_percent, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.parts.route import inside
from ductrun.subjects.pulling.assessment import PlanAssessment, PlannedSpan
from ductrun.subjects.pulling.choices import BoxPlacing, PullDirection
from ductrun.subjects.pulling.cuts import MOST_POSITIONS, BoxPositions, Cut, check_count, check_positions, most_places
from ductrun.subjects.pulling.direction import BEYOND_ANY_ROPE, direction_of
from ductrun.subjects.pulling.findings import BRAKE_GIVEN, caution_rope, report_brake, report_burning_rope
from ductrun.subjects.pulling.practice import PullInputs
from ductrun.subjects.pulling.pull_plan_told import PullPlanResult, tell
from ductrun.subjects.pulling.pull_tension import OPERATION as PULL_TENSION
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.settling import BEND_TOTAL_LIMIT, settle_request

BOX_POSITIONS = choice("pulling.box_positions", BoxPlacing).written_as(lambda kind: {"kind": kind})


class PullPlanRequest(PullInputs):
    """Cables, conduit, the whole route, and where pull points may stand."""

    box_positions: Omissible[BoxPositions] = Field(
        default=None,
        description="Where pull boxes, handholes or manholes may stand.",
        json_schema_extra=BOX_POSITIONS.stated,
    )


def assess(request: PullPlanRequest, sheet: Worksheet) -> PlanAssessment:
    """Plan the pulls of a request."""
    pulling = settle_request(request, sheet)
    if request.box_positions is None:
        sheet.settle("box_positions", None, BOX_POSITIONS)
    return plan(request.box_positions, pulling, sheet)


def steps(request: PullPlanRequest) -> float:
    """Bound the search, which tries every pair of places and carries each pull through what lies between."""
    sections = request.sections
    lengths = (section.length.si if section.kind == "straight" else None for section in sections)
    places = min(most_places(lengths, request.box_positions), MOST_POSITIONS)  # more are refused at once
    return 1.25 * places * (places + len(sections))


def plan(positions: BoxPositions | None, pulling: Pulling, sheet: Worksheet) -> PlanAssessment:
    """Find the fewest pulls, and with that number those whose worst use of the limits is lowest."""
    found = _plan(positions, pulling, sheet)
    sheet.judge(found.possible)
    return found


def _plan(positions: BoxPositions | None, pulling: Pulling, sheet: Worksheet) -> PlanAssessment:
    route, braking = pulling.route_at(pulling.coefficient), pulling.braking_at(pulling.coefficient)
    check_count(route, positions, sheet.within("box_positions"))
    cut = Cut(route, positions)
    check_positions(cut, positions, sheet.within("box_positions"))
    if pulling.forbidden_bend is not None:
        return PlanAssessment(pulling, [], possible=False, forbidding_section=pulling.forbidden_bend)
    held = None if braking is None else Cut(braking, positions).elements
    stops = sorted(cut.stops)
    found = pull_search.spans(cut.elements, held, stops, pulling.load, pulling.limits)
    lost = cut.lost_before(pulling)
    known = {key: span for key, span in found.items() if span.use.judged and lost[span.start + 1] == lost[span.end]}
    chain, every = pull_search.fewest_pulls(known, stops), pull_search.fewest_pulls(found, stops)
    if every is None:
        section = _report_impossible(cut, stops, found, held, pulling, sheet)
        return PlanAssessment(pulling, [], possible=False, forbidding_section=section)
    if chain is not None and len(every) < len(chain):
        _note_fewer(every, chain, sheet)
    spans = [_planned(span, cut, held, pulling, judged=chain is not None) for span in chain or every]
    _report(spans, pulling, sheet)
    for span in chain or every:
        length = cut.places[span.end] - cut.places[span.start]
        report_burning_rope(pulling.route, length, cut.origin[span.start : span.end])
    _note_turning_points(chain or every, cut, pulling, sheet)
    return PlanAssessment(pulling, spans, True if chain is not None and pulling.cable_judged else None)


def _note_fewer(every: Sequence[pull_search.Span], chain: Sequence[pull_search.Span], sheet: Worksheet) -> None:
    """Say that fewer pulls may do once what was not judged is known, and what that is."""
    brake = not all(span.use.judged for span in every)
    sheet.find(
        Severity.NOTE,
        "fewer_pulls_with_more_known",
        f"{len(every)} {'pull' if len(every) == 1 else 'pulls'} may do instead of {len(chain)}: give "
        f"{'what the reel brake can hold' if brake else 'the bends that were left out'}.",
        WORKED_OUT,
        float(len(every)),
        float(len(chain)),
        member="brake_limit" if brake else "sections",
    )


def _note_turning_points(spans: Sequence[pull_search.Span], cut: Cut, pulling: Pulling, sheet: Worksheet) -> None:
    """Say which pull points stand in the place of a bend that was left out: there the box itself turns the run."""
    for span in spans[1:]:
        joint = cut.origin[span.start]
        if joint in pulling.lost_bends and cut.origin[span.start - 1] != joint:
            pulling.route.at(joint).find(
                Severity.NOTE,
                "pull_point_turns",
                f"The pull point at {text_of(sheet.tell.distance(cut.places[span.start]))}, "
                f"{inside(pulling.route.before(joint))}, stands where a bend was left out: its box must take the turn.",
                WORKED_OUT,
                member="",
            )


def _planned(
    span: pull_search.Span, cut: Cut, held: Sequence[engineering.Section] | None, pulling: Pulling, *, judged: bool
) -> PlannedSpan:
    """Carry one pull of the plan; `judged` says that every pull of it was."""
    lost = cut.lost_before(pulling)
    known = judged or (span.use.judged and lost[span.start + 1] == lost[span.end])
    ways = [
        None
        if elements is None
        else engineering.reverse(elements[span.start : span.end])
        if span.backward
        else elements[span.start : span.end]
        for elements in (cut.elements, held)
    ]
    assert ways[0] is not None  # noqa: S101  (the pulling route is always there)
    way = direction_of(ways[0], ways[1], span.use.bend_total, pulling)
    return PlannedSpan(
        cut.places[span.start],
        cut.places[span.end],
        span.backward,
        way,
        span.use,
        True if known and pulling.cable_judged else None,
    )


def _report(spans: Sequence[PlannedSpan], pulling: Pulling, sheet: Worksheet) -> None:
    """Show each pull, say what its reel must hold, and give the caution every pull needs."""
    tell = sheet.tell
    for index, span in enumerate(spans, start=1):
        report_brake(span.way, pulling, sheet, f"Pull {index}: ")
        if sheet.working is not None:
            direction = PullDirection.REVERSED if span.backward else PullDirection.FORWARD
            start, end = text_of(tell.distance(span.start)), text_of(tell.distance(span.end))
            sheet.show(
                f"pull {index}",
                "largest share of tension, sidewall pressure and brake",
                f"{start} to {end}, {direction.value}: {text_of(tell.force(span.use.pulling.final))}",
                in_percent(span.use.share * 100),
            )
    caution_rope(sheet, braked=any(span.way.braked for span in spans))


def _report_impossible(
    cut: Cut,
    stops: Sequence[int],
    found: dict[tuple[int, int], pull_search.Span],
    held: Sequence[engineering.Section] | None,
    pulling: Pulling,
    sheet: Worksheet,
) -> int:
    """Name what forbids any plan: the first stretch between neighboring places that breaks a limit from both ends."""
    start, end = next(pair for pair in pairwise(stops) if pair not in found)
    elements, low = cut.elements[start:end], None if held is None else held[start:end]
    turned = None if low is None else engineering.reverse(low)
    uses = [
        pull_search.use_of(way, braking, pulling.load, pulling.limits)
        for way, braking in ((elements, low), (engineering.reverse(elements), turned))
    ]
    use = min(uses, key=lambda one: one.share)
    bends = [at for at in range(start, end) if not isinstance(cut.elements[at], engineering.Straight)]
    index = cut.origin[bends[0] if bends else start]
    told_start, told_end = sheet.tell.distance(cut.places[start]), sheet.tell.distance(cut.places[end])
    what = f"{'bend' if bends else 'straight'} in {inside(pulling.route.named(index))}"
    breaks = _worst_break(use, pulling, sheet)
    pulling.route.at(index).find(
        Severity.VIOLATION,
        "no_plan",
        f"No plan keeps the limits: the stretch from {text_of(told_start)} to {text_of(told_end)}, with the {what}, "
        f"{breaks.words}. {breaks.do}",
        breaks.rule,
        breaks.actual,
        breaks.limit,
        member="",
    )
    return index


class _Break(NamedTuple):
    """What a stretch breaks from its better end: in words, what to do, by which rule, how much and the limit."""

    words: str
    do: str
    rule: Backing
    actual: AnyQuantity | None
    limit: AnyQuantity | None


def _worst_break(use: pull_search.Use, pulling: Pulling, sheet: Worksheet) -> _Break:
    limits, tell = pulling.limits, sheet.tell
    do = "Allow a pull point within it, widen the bend, or take a lighter pull."
    if not use.highest < BEYOND_ANY_ROPE:
        return _Break("grows beyond any rope from its better end", do, WORKED_OUT, None, None)
    if over(use.bend_total, limits.bend_total):
        bends, all_bends = tell.angle(use.bend_total), tell.given(BEND_TOTAL_LIMIT.value)
        words = f"has {text_of(bends)} of bends, over {text_of(all_bends)}"
        return _Break(words, do, BEND_TOTAL_LIMIT.backing, bends, all_bends)
    shares = (use.highest / limits.tension, use.pressure / limits.pressure)
    if under(max(shares), use.share):
        told, most = tell.force(use.share * (limits.brake or 0.0)), tell.force(limits.brake or 0.0)
        words = f"needs {text_of(told)} of reel brake from its better end; it holds {text_of(most)}"
        return _Break(words, "Take a stronger brake, or allow a pull point within it.", BRAKE_GIVEN, told, most)
    if shares[0] >= shares[1]:
        told, most = tell.force(use.highest), tell.force(limits.tension)
        words = f"reaches {text_of(told)} from its better end; {text_of(most)} is allowed"
        return _Break(words, do, pulling.tension_rule, told, most)
    pressed, least = tell.force_per_length(use.pressure), tell.given(pulling.pressure_limit)
    words = f"presses with {text_of(pressed)} from its better end; {text_of(least)} is allowed"
    return _Break(words, do, pulling.pressure_rule, pressed, least)


OPERATION = Operation(
    name="pull-plan",
    operation_id="calculate_pull_plan",
    summary="Pull points of a route",
    description="Finds the fewest pulls that bring a cable through a route within all limits and, with that number, "
    "the ones that use least of them, by an exact search over the places where pull points may stand; or says which "
    "bend forbids any plan.",
    request=PullPlanRequest,
    result=PullPlanResult,
    assess=assess,
    tell=tell,
    example=PULL_TENSION.example | {"box_positions": {"kind": "between_sections"}},
    steps=steps,
)
