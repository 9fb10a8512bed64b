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
from ductrun.operations import answers
from ductrun.operations.choices import PullDirection, Severity
from ductrun.operations.inputs import Form, Interval, Omissible, RoutePosition
from ductrun.operations.operation import Operation
from ductrun.operations.pull_inputs import Pulling, PullInputs, settle
from ductrun.operations.pull_tension import OPERATION as PULL_TENSION
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of

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


class PullPlanResult(Struct, frozen=True, gc=False):
    """The fewest pulls, or the bend that forbids any."""

    possible: Annotated[bool, Meta(description="Whether any plan keeps all limits.")]
    pulls: Annotated[list[PlannedPull], Meta(description="The pulls in the order of the route; none if impossible.")]
    pull_count: Annotated[int, Meta(description="Pulls of the plan.")]
    box_count: Annotated[int, Meta(description="Pull points between them.")]
    worst_utilization_percent: Annotated[
        float | UnsetType, Meta(description="Largest share of its limits that any pull uses: the lowest there can be.")
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
                parts = 1 if spacing is None else -int(-(section.length / spacing - 1e-9) // 1)
                cuts = [start + section.length * part / parts for part in range(1, parts)]
                self._stop_if(here=True)
            for place in [*cuts, end]:
                self._add(engineering.Straight(place - self.places[-1], section.grade), index)
                self._stop_if(listed is None or place != end or any(abs(at - end) <= _TOUCHES for at in listed))
        self._stop_if(here=True)

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
    if request.box_positions is None:
        sheet.assume("#/box_positions", "between_sections", "common practice, no source", "trade-practice")
    cut = _Cut(pulling.route, request.box_positions)
    _check_positions(cut, request.box_positions, sheet)
    stops = sorted(cut.stops)
    turned = [element.reversed() for element in cut.elements]
    found = pull_search.spans(cut.elements, turned, stops, pulling.load, pulling.limits)
    chain = pull_search.fewest_pulls(found, stops)
    if chain is None:
        return _impossible(cut, stops, found, pulling, sheet)
    tell = sheet.tell
    pulls = [
        PlannedPull(
            start=tell.distance(cut.places[span.start]),
            end=tell.distance(cut.places[span.end]),
            direction=PullDirection.REVERSED if span.backward else PullDirection.FORWARD,
            tension=tell.force(span.use.tension),
            sidewall_pressure=tell.force_per_length(span.use.pressure),
            bend_total=tell.angle(span.use.bend_total),
            utilization_percent=span.use.share * 100,
        )
        for span in chain
    ]
    for index, (span, pull) in enumerate(zip(chain, pulls, strict=True), start=1):
        sheet.show(
            f"pull {index}",
            "largest share of tension and sidewall pressure",
            f"{text_of(pull.start)} to {text_of(pull.end)}, {pull.direction.value}: {text_of(pull.tension)}",
            span.use.share * 100,
        )
    sheet.find(
        Severity.CAUTION,
        "rope_under_tension",
        "Nobody stands in line with a rope under tension; use rated gear, watch the tension, and stop if it rises "
        "unexpectedly. The limits of the cable's maker govern.",
        "common practice, no source",
    )
    return PullPlanResult(
        possible=True,
        pulls=pulls,
        pull_count=len(pulls),
        box_count=len(pulls) - 1,
        worst_utilization_percent=max(pull.utilization_percent for pull in pulls),
    )


def _impossible(
    cut: _Cut,
    stops: Sequence[int],
    found: dict[tuple[int, int], pull_search.Span],
    pulling: Pulling,
    sheet: Worksheet,
) -> PullPlanResult:
    """Name what forbids any plan: the first stretch between neighboring places that breaks a limit from both ends."""
    start, end = next(pair for pair in pairwise(stops) if pair not in found)
    elements = cut.elements[start:end]
    ways = (elements, engineering.reverse(elements))
    uses = [pull_search.use_of(way, pulling.load, pulling.limits) for way in ways]
    use = min(uses, key=lambda one: one.share)
    bends = [at for at in range(start, end) if not isinstance(cut.elements[at], engineering.Straight)]
    index = cut.origin[bends[0] if bends else start]
    told_start, told_end = sheet.tell.distance(cut.places[start]), sheet.tell.distance(cut.places[end])
    what = f"bend in section {index + 1}" if bends else f"straight in section {index + 1}"
    share = "beyond any rope" if use.share > 1e6 else f"{use.share * 100:.0f} percent of its limits"
    if use.bend_total > pulling.limits.bend_total * (1 + 1e-9):
        share = f"{text_of(sheet.tell.angle(use.bend_total))} of bends, over 360"
    sheet.find(
        Severity.VIOLATION,
        "no_plan",
        f"No plan keeps the limits: the stretch from {text_of(told_start)} to {text_of(told_end)}, with the {what}, "
        f"takes {share} from its better end. Allow a pull point within it, widen the bend, or take a lighter pull.",
        pulling.tension_rule,
    )
    return PullPlanResult(possible=False, pulls=[], pull_count=0, box_count=0, forbidding_section=index)


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
