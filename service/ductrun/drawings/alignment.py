"""The center line of a route in space: where every section lies in plan and in height, from one zero.

x runs along the first heading, y to its left, z upward, all [m]; a station is the distance along the center line in
plan. At a pull point the heading may break; where no break is given the next stretch is drawn on along the last one.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Literal, NamedTuple

from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend

Turn = Literal["left", "right"]
_PARTS = 12  # of a bend


class RouteSection(NamedTuple):
    """A section of a route: a level bend with the side it turns to, None where that is not known; how it is called."""

    section: Section
    turn: Turn | None = None
    name: str = ""


class PullPoint(NamedTuple):
    """A pull point `before` the section of an index: how it is called, and the turn of the heading in it [rad], to the
    left positive, where one is known.
    """

    before: int
    name: str = ""
    heading_change: float | None = None


class Point(NamedTuple):
    """A point of the center line [m], with its station in plan and its distance along the conduit."""

    x: float
    y: float
    z: float
    station: float
    along: float


class Placed(NamedTuple):
    """A section placed: the points through which it is drawn, from its start to its end."""

    given: RouteSection
    points: list[Point]


def aligned(route: Sequence[RouteSection], pull_points: Sequence[PullPoint]) -> list[Placed]:
    """Place the sections of a route one after the other."""
    breaks = {point.before: point.heading_change or 0.0 for point in pull_points}
    heading, at = 0.0, Point(0.0, 0.0, 0.0, 0.0, 0.0)
    placed = []
    for index, given in enumerate(route):
        heading += breaks.get(index, 0.0) if index else 0.0
        points, heading = _through(given, at, heading)
        placed.append(Placed(given, points))
        at = points[-1]
    return placed


def _through(given: RouteSection, at: Point, heading: float) -> tuple[list[Point], float]:
    """Give the points of a section from its start on, and the heading with which it ends."""
    section = given.section
    if isinstance(section, Straight):
        level, up = section.length * math.cos(section.grade), section.length * math.sin(section.grade)
        return [at, _gone(at, heading, level, up, section.length)], heading
    points = [at]
    step = section.angle / _PARTS
    chord = 2 * section.radius * math.sin(step / 2)
    if isinstance(section, HorizontalBend):
        up, along = section.radius * step * math.tan(section.grade), section.developed_length / _PARTS
        side = {"left": 1.0, "right": -1.0, None: 0.0}[given.turn]
        for _ in range(_PARTS):
            level = chord if side else section.radius * step
            points.append(_gone(points[-1], heading + side * step / 2, level, up, along))
            heading += side * step
        return points, heading
    return [*points, *_over(section, at, heading, chord)], heading


def _over(section: VerticalBend, at: Point, heading: float, chord: float) -> list[Point]:
    step = (section.exit_grade - section.entry_grade) / _PARTS
    points = []
    for part in range(_PARTS):
        grade = section.entry_grade + step * (part + 0.5)
        at = _gone(at, heading, chord * math.cos(grade), chord * math.sin(grade), section.radius * abs(step))
        points.append(at)
    return points


def _gone(at: Point, heading: float, level: float, up: float, along: float) -> Point:
    """Give the point a way further: so far level, so far up, so far along the conduit."""
    x, y = at.x + level * math.cos(heading), at.y + level * math.sin(heading)
    return Point(x, y, at.z + up, at.station + level, at.along + along)
