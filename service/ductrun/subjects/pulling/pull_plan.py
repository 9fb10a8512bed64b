"""POST /v1/pull-plan: the fewest pull points a route needs, and where."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Annotated, Literal

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import pull_search
from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import over, round_up, under
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice
from ductrun.kit.forms import Form, Interval, Omissible, RoutePosition
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.subjects.pulling.choices import BoxPlacing, PullDirection
from ductrun.subjects.pulling.direction import BEYOND_ANY_ROPE, Direction, direction_of
from ductrun.subjects.pulling.findings import caution_rope, report_brake, report_burning_rope
from ductrun.subjects.pulling.inputs import BEND_TOTAL_LIMIT, PullInputs, settle
from ductrun.subjects.pulling.pull_tension import OPERATION as PULL_TENSION
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.telling import BrakingCase, told_brake, told_braking_case

BOX_POSITIONS = choice("pulling.box_positions", BoxPlacing).written_as(lambda kind: {"kind": kind})
MOST_POSITIONS = 400
_TOUCHES = 1e-6  # m: a position this close to the end of a section stands at it


class BetweenSections(Form):
    """Pull points may stand at either end of every straight."""

    kind: Literal["between_sections"] = Field(description="Fixed text that says: at the ends of straights.")


class Anywhere(Form):
    """Pull points may stand anywhere on a straight, at places no more than a spacing apart."""

    kind: Literal["anywhere"] = Field(description="Fixed text that says: anywhere on straights.")
    spacing: Interval = Field(description="Greatest distance between places.", examples=[{"value": 20, "unit": "ft"}])


class ListedPositions(Form):
    """Pull points may stand at given places only."""

    kind: Literal["listed"] = Field(description="Fixed text that says: at these places.")
    positions: Annotated[list[RoutePosition], Field(min_length=1, max_length=MOST_POSITIONS)] = Field(
        description="Distances along the centre line from the start of the route, each on a straight.",
        examples=[[{"value": 200, "unit": "ft"}]],
    )


BoxPositions = TypeAliasType(
    "BoxPositions", Annotated[BetweenSections | Anywhere | ListedPositions, Field(discriminator="kind")]
)


class PullPlanRequest(PullInputs):
    """Cables, conduit, the whole route, and where pull points may stand."""

    box_positions: Omissible[BoxPositions] = Field(
        default=None, description="Where pull boxes, handholes or manholes may stand."
    )


class PlannedPull(Struct, frozen=True, gc=False):
    """One pull of the plan."""

    start: Annotated[answers.Length, Meta(description="Where the pull starts, along the route from its start.")]
    end: Annotated[answers.Length, Meta(description="Where it ends.")]
    direction: Annotated[PullDirection, Meta(description="Forward toward the end of the route, or reversed.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    sidewall_pressure: Annotated[answers.ForcePerLength, Meta(description="Highest sidewall pressure; 0 without bend.")]
    bend_total: Annotated[answers.Angle, Meta(description="Bends of this pull together.")]
    utilization_percent: Annotated[float, Meta(description="The largest share of its limits that it uses.")]
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    braking_case: Annotated[
        BrakingCase | UnsetType, Meta(description="The pull at the low friction, where the route can run away.")
    ] = UNSET


class PullPlanResult(Struct, frozen=True, gc=False):
    """The fewest pulls, or the bend that forbids any."""

    pulls: Annotated[list[PlannedPull], Meta(description="The pulls in the order of the route; none if impossible.")]
    pull_count: Annotated[int, Meta(description="Pulls of the plan.")]
    box_count: Annotated[int, Meta(description="Pull points between them.")]
    possible: Annotated[
        bool | UnsetType,
        Meta(description="Whether a plan keeps all limits; absent where something that decides was not judged."),
    ] = UNSET
    worst_utilization_percent: Annotated[
        float | UnsetType,
        Meta(
            description="Largest share of its limits that any pull uses; with so many judged pulls the lowest there is."
        ),
    ] = UNSET
    forbidding_section: Annotated[
        int | UnsetType, Meta(description="Section of the route, from 0, that forbids any plan.")
    ] = UNSET


class _Cut:
    """The route cut at every place a pull point may stand."""

    __slots__ = ("elements", "origin", "places", "stops")

    def __init__(self, route: Sequence[engineering.Section], positions: BoxPositions | None) -> None:
        self.elements: list[engineering.Section] = []
        self.origin: list[int] = []  # section of the route each element is part of
        self.places: list[float] = [0.0]  # position of every joint between elements [m]
        self.stops: set[int] = {0}
        listed = _listed(positions)
        spacing = positions.spacing.si if positions is not None and positions.kind == "anywhere" else None
        for index, section in enumerate(route):
            start = self.places[-1]
            if not isinstance(section, engineering.Straight):
                self._add(section, index)
                continue
            end = start + section.length
            if listed is not None:
                cuts = [place for place in listed if start + _TOUCHES < place < end - _TOUCHES]
                self._stop_if(any(abs(place - start) <= _TOUCHES for place in listed))
            else:
                parts = 1 if spacing is None else round_up(section.length / spacing)
                cuts = [start + section.length * part / parts for part in range(1, parts)]
                self._stop_if(here=True)
            for place in [*cuts, end]:
                self._add(section._replace(length=place - self.places[-1]), index)
                self._stop_if(listed is None or place != end or any(abs(at - end) <= _TOUCHES for at in listed))
        self._stop_if(here=True)

    def lost_before(self, pulling: Pulling) -> list[int]:
        """Count the joints before each element, and before the end, at which a bend was left out.

        A pull within which the count grows loses a bend; at its ends a pull point may turn.
        """
        joints = set(pulling.lost_bends)
        counts = [0, 0]
        for before, after in pairwise(self.origin):
            counts.append(counts[-1] + (after != before and after in joints))
        return counts

    def _add(self, element: engineering.Section, index: int) -> None:
        self.elements.append(element)
        self.origin.append(index)
        self.places.append(self.places[-1] + element.developed_length)

    def _stop_if(self, here: bool) -> None:
        if here:
            self.stops.add(len(self.elements))


def _listed(positions: BoxPositions | None) -> list[float] | None:
    if positions is None or positions.kind != "listed":
        return None
    return sorted(position.si for position in positions.positions)


def _check_positions(cut: _Cut, positions: BoxPositions | None, sheet: Worksheet) -> None:
    if len(cut.stops) > MOST_POSITIONS:
        raise UnanswerableError(
            Fault(
                "#/box_positions",
                "too_many_positions",
                f"That makes {len(cut.stops)} places for pull points; {MOST_POSITIONS} are the most. Take them farther "
                "apart.",
                {"maximum_positions": MOST_POSITIONS},
            )
        )
    if positions is None or positions.kind != "listed":
        return
    stops = [cut.places[stop] for stop in cut.stops]
    faults = [
        Fault(
            f"#/box_positions/positions/{index}/value",
            "position_not_on_a_straight",
            f"{position} along the route lies in a bend or beyond its end, "
            f"{text_of(sheet.tell.distance(cut.places[-1]))}: a pull point stands on a straight.",
        )
        for index, position in enumerate(positions.positions)
        if not any(abs(position.si - place) <= 2 * _TOUCHES for place in stops)
    ]
    if faults:
        raise UnanswerableError(*faults)


def compute(request: PullPlanRequest, sheet: Worksheet) -> PullPlanResult:
    """Find the fewest pulls, and with that number those whose worst use of the limits is lowest."""
    pulling = settle(request, sheet)
    positions = request.box_positions
    if positions is None:
        sheet.settle("#/box_positions", None, BOX_POSITIONS)
    route, braking = pulling.route_at(pulling.coefficient), pulling.braking_at(pulling.coefficient)
    cut = _Cut(route, positions)
    _check_positions(cut, positions, sheet)
    if pulling.forbidden_bend is not None:
        return _nothing(pulling.forbidden_bend)
    held = None if braking is None else _Cut(braking, positions).elements
    stops = sorted(cut.stops)
    found = pull_search.spans(cut.elements, held, stops, pulling.load, pulling.limits)
    lost = cut.lost_before(pulling)
    known = {key: span for key, span in found.items() if span.use.judged and lost[span.start + 1] == lost[span.end]}
    chain, every = pull_search.fewest_pulls(known, stops), pull_search.fewest_pulls(found, stops)
    if every is None:
        return _impossible(cut, stops, found, held, pulling, sheet)
    judged = chain is not None and pulling.cable_judged
    if chain is not None and len(every) < len(chain):
        _note_fewer(every, chain, sheet)
    ways = [_way_of(span, cut, held, pulling) for span in chain or every]
    pulls = [_told(span, way, cut, pulling, sheet) for span, way in zip(chain or every, ways, strict=True)]
    _report(pulls, ways, pulling, sheet)
    for span in chain or every:
        length = cut.places[span.end] - cut.places[span.start]
        report_burning_rope(request, length, cut.origin[span.start : span.end], sheet)
    _note_turning_points(chain or every, cut, pulling, sheet)
    return PullPlanResult(
        possible=True if judged else UNSET,
        pulls=pulls,
        pull_count=len(pulls),
        box_count=len(pulls) - 1,
        worst_utilization_percent=max(pull.utilization_percent for pull in pulls),
    )


def _note_fewer(every: Sequence[pull_search.Span], chain: Sequence[pull_search.Span], sheet: Worksheet) -> None:
    """Say that fewer pulls may do once what was not judged is known, and what that is."""
    brake = not all(span.use.judged for span in every)
    sheet.find(
        Severity.NOTE,
        "fewer_pulls_with_more_known",
        f"{len(every)} {'pull' if len(every) == 1 else 'pulls'} may do instead of {len(chain)}: give "
        f"{'what the reel brake can hold' if brake else 'the bends that were left out'}.",
        "derived",
        float(len(every)),
        float(len(chain)),
        pointer="#/brake_limit" if brake else "#/sections",
    )


def _note_turning_points(spans: Sequence[pull_search.Span], cut: _Cut, pulling: Pulling, sheet: Worksheet) -> None:
    """Say which pull points stand in the place of a bend that was left out: there the box itself turns the run."""
    for span in spans[1:]:
        joint = cut.origin[span.start]
        if joint in pulling.lost_bends and cut.origin[span.start - 1] != joint:
            sheet.find(
                Severity.NOTE,
                "pull_point_turns",
                f"The pull point at {text_of(sheet.tell.distance(cut.places[span.start]))}, between sections {joint} "
                f"and {joint + 1}, stands where a bend was left out: its box must take the turn.",
                "derived",
                pointer=f"#/sections/{joint}",
            )


def _way_of(
    span: pull_search.Span, cut: _Cut, held: Sequence[engineering.Section] | None, pulling: Pulling
) -> Direction:
    """Carry one pull of the plan."""
    ways = [
        None
        if elements is None
        else engineering.reverse(elements[span.start : span.end])
        if span.backward
        else elements[span.start : span.end]
        for elements in (cut.elements, held)
    ]
    assert ways[0] is not None  # noqa: S101  (the pulling route is always there)
    return direction_of(ways[0], ways[1], span.use.bend_total, pulling)


def _told(span: pull_search.Span, way: Direction, cut: _Cut, pulling: Pulling, sheet: Worksheet) -> PlannedPull:
    tell = sheet.tell
    return PlannedPull(
        start=tell.distance(cut.places[span.start]),
        end=tell.distance(cut.places[span.end]),
        direction=PullDirection.REVERSED if span.backward else PullDirection.FORWARD,
        tension=tell.force(span.use.pulling.final),
        sidewall_pressure=tell.force_per_length(span.use.pulling.pressure),
        bend_total=tell.angle(span.use.bend_total),
        utilization_percent=span.use.share * 100,
        brake_tension=told_brake(way.pulling, sheet),
        braking_case=told_braking_case(way, pulling, sheet),
    )


def _report(pulls: Sequence[PlannedPull], ways: Sequence[Direction], pulling: Pulling, sheet: Worksheet) -> None:
    """Show each pull, say what its reel must hold, and give the caution every pull needs."""
    for index, (pull, way) in enumerate(zip(pulls, ways, strict=True), start=1):
        report_brake(way, pulling, sheet, f"Pull {index}: ")
        sheet.show(
            f"pull {index}",
            "largest share of tension, sidewall pressure and brake",
            f"{text_of(pull.start)} to {text_of(pull.end)}, {pull.direction.value}: {text_of(pull.tension)}",
            pull.utilization_percent,
        )
    caution_rope(sheet, braked=any(way.braked for way in ways))


def _nothing(section: int) -> PullPlanResult:
    return PullPlanResult(possible=False, pulls=[], pull_count=0, box_count=0, forbidding_section=section)


def _impossible(
    cut: _Cut,
    stops: Sequence[int],
    found: dict[tuple[int, int], pull_search.Span],
    held: Sequence[engineering.Section] | None,
    pulling: Pulling,
    sheet: Worksheet,
) -> PullPlanResult:
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
    what = f"bend in section {index + 1}" if bends else f"straight in section {index + 1}"
    limits = pulling.limits
    share = f"takes {use.share * 100:.0f} percent of its limits from its better end"
    do = "Allow a pull point within it, widen the bend, or take a lighter pull."
    if not use.highest < BEYOND_ANY_ROPE:
        share = "grows beyond any rope from its better end"
    elif over(use.bend_total, limits.bend_total):
        share = f"has {text_of(sheet.tell.angle(use.bend_total))} of bends, over {BEND_TOTAL_LIMIT.value}"
    elif under(max(use.highest / limits.tension, use.pressure / limits.pressure), use.share):
        share = f"needs {use.share * 100:.0f} percent of what the reel brake holds from its better end"
        do = "Take a stronger brake, or allow a pull point within it."
    sheet.find(
        Severity.VIOLATION,
        "no_plan",
        f"No plan keeps the limits: the stretch from {text_of(told_start)} to {text_of(told_end)}, with the {what}, "
        f"{share}. {do}",
        pulling.tension_rule,
        pointer=f"#/sections/{index}",
    )
    return _nothing(index)


OPERATION = Operation(
    name="pull-plan",
    operation_id="calculate_pull_plan",
    summary="Pull points of a route",
    description="Finds the fewest pulls that bring a cable through a route within all limits and, with that number, "
    "the ones that use least of them, by an exact search over the places where pull points may stand; or says which "
    "bend forbids any plan.",
    request=PullPlanRequest,
    result=PullPlanResult,
    compute=compute,
    example=PULL_TENSION.example | {"box_positions": {"kind": "between_sections"}},
)
