"""What is known of a pull when it has been carried: numbers in SI, to be told, drawn or taken off."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.pull_search import Use
from ductrun.subjects.pulling.cable_order import OrderedLine
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.direction import Direction
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.studies import Largest, Point, UseAtFriction


class PullAssessment(NamedTuple):
    """A pull carried from both ends: what it is made of, both directions with their verdicts, the better end, all bends
    [rad], the lubricant [m3], and what was asked for beside it.
    """

    pulling: Pulling
    forward: Direction
    backward: Direction
    within: bool | None
    within_backward: bool | None
    better: PullDirection
    better_reason: str
    bend_total: float
    lubricant_volume: float
    friction_cases: list[UseAtFriction] | None
    largest: Largest | None
    profile: list[Point] | None
    cables_to_order: list[OrderedLine] | None


class PlannedSpan(NamedTuple):
    """One pull of a plan from `start` to `end` [m] along the route, its direction carried, what it uses, and whether
    it keeps its limits: None where that was not judged.
    """

    start: float
    end: float
    backward: bool
    way: Direction
    use: Use
    within: bool | None


class PlanAssessment(NamedTuple):
    """The pulls of a plan, none where no plan keeps the limits; whether it is possible, None where that was not judged;
    the section that forbids any.
    """

    pulling: Pulling
    spans: list[PlannedSpan]
    possible: bool | None
    forbidding_section: int | None = None
