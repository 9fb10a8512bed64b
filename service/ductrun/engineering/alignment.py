"""The alignment of a run: what its sections measure in plan and in height, and tangents of bends.

Symbols: L length along the center line [m]; phi slope from level [rad], positive upward; R radius to the center line
[m]; theta angle of a bend [rad].
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from ductrun.engineering.pulling import HorizontalBend, Section, Straight


def tangent_length(radius: float, angle: float) -> float:
    """Give the distance from the start of a bend to the intersection of its tangents [m]: R tan(theta / 2).

    Valid below a half turn, where the tangents meet.
    Parameters: radius R [m], angle theta [rad].
    Source: derived.
    """
    return radius * math.tan(angle / 2)


def plan_length(section: Section) -> float:
    """Give the length of a section in plan [m]: L cos phi, R theta of a level bend, R |sin phi2 - sin phi1| of a bend
    in a vertical plane.

    Parameters: section, a straight or a bend.
    Source: derived.
    """
    if isinstance(section, Straight):
        return section.length * math.cos(section.grade)
    if isinstance(section, HorizontalBend):
        return section.radius * section.angle
    return section.radius * abs(math.sin(section.exit_grade) - math.sin(section.entry_grade))


def rise(section: Section) -> float:
    """Give by how much a section climbs [m], negative where it falls: L sin phi of a straight and of a bend in plan, R
    |cos phi1 - cos phi2| with the sign of its mean slope.

    Parameters: section, a straight or a bend.
    Source: derived.
    """
    if isinstance(section, Straight):
        return section.length * math.sin(section.grade)
    if isinstance(section, HorizontalBend):
        return section.developed_length * math.sin(section.grade)
    turned = math.cos(section.entry_grade) - math.cos(section.exit_grade)
    return section.radius * (turned if section.exit_grade > section.entry_grade else -turned)


class Line(NamedTuple):
    """A line of heights over stations, straight between its points: both [m], the stations rising."""

    stations: tuple[float, ...]
    heights: tuple[float, ...]

    def height(self, station: float) -> float:
        """Give the height [m] at a station [m], beyond its ends that of the end."""
        after = bisect_right(self.stations, station)
        if after == 0:
            return self.heights[0]
        if after == len(self.stations):
            return self.heights[-1]
        start, end = self.stations[after - 1], self.stations[after]
        share = (station - start) / (end - start)
        return self.heights[after - 1] + share * (self.heights[after] - self.heights[after - 1])

    def between(self, start: float, end: float) -> list[float]:
        """Give the stations [m] from start to end [m]: both, and every point between them."""
        return [start, *(at for at in self.stations if start < at < end), end]


def nearest(lower: Sequence[tuple[float, float]], upper: Line) -> float:
    """Give the shortest way [m] from a line of points to another line above it; 0 where they meet.

    Two lines that do not cross are nearest at a point of one of them.
    Parameters: lower line as stations and heights [m], stations not falling; upper line, over the same stations.
    Source: derived.

    Below ground that rises 3 in 4, 25 in measured plumb are 20 in by the shortest way:

    >>> round(nearest([(0.0, -25.0), (400.0, 275.0)], Line((0.0, 400.0), (0.0, 300.0))), 9)
    20.0
    """
    ground = list(zip(upper.stations, upper.heights, strict=True))
    return min(_nearest_to_points(lower, ground), _nearest_to_points(ground, lower))


def _nearest_to_points(points: Sequence[tuple[float, float]], line: Sequence[tuple[float, float]]) -> float:
    """Give the shortest way [m] from any of some points to a line of others, beyond whose ends nothing is."""
    stations, heights = [station for station, _ in line], [height for _, height in line]
    lowest, highest = min(heights), max(heights)
    best = math.inf
    for station, height in points:
        at = bisect_right(stations, station)
        apart = max(0.0, lowest - height, height - highest)
        reach = math.sqrt(max(0.0, best * best - apart * apart))  # ahead or behind: what is farther off is no nearer
        for after in range(max(at, 1), len(line)):
            if stations[after - 1] - station > reach:
                break
            best = min(best, _to_segment(station, height, line[after - 1], line[after]))
        for after in range(min(at, len(line) - 1), 0, -1):
            if station - stations[after] > reach:
                break
            best = min(best, _to_segment(station, height, line[after - 1], line[after]))
    return best


def _to_segment(station: float, height: float, near: tuple[float, float], far: tuple[float, float]) -> float:
    along, up = far[0] - near[0], far[1] - near[1]
    square = along * along + up * up
    share = 0.0
    if square > 0.0:
        share = min(1.0, max(0.0, ((station - near[0]) * along + (height - near[1]) * up) / square))
    return math.hypot(station - near[0] - share * along, height - near[1] - share * up)


def bends_along(line: Line, start: float, bend: HorizontalBend, *, follows: bool) -> list[HorizontalBend]:
    """Give a bend in plan the slope of a line from a station on: where it `follows` its breaks, a part for each slope,
    else one with the mean slope.

    Parameters: line of heights [m], start of the bend [m] in plan, bend, follows whether it is laid on the line.
    Source: derived.
    """
    end = start + bend.radius * bend.angle
    places = line.between(start, end) if follows else [start, end]
    return [
        bend._replace(
            angle=(far - near) / bend.radius,
            grade=math.atan2(line.height(far) - line.height(near), far - near),
        )
        for near, far in pairwise(places)
    ]


def straights_along(line: Line, start: float, end: float) -> list[Straight]:
    """Give the straights that follow a line from a station to another: atan(rise / plan), plan / cos phi long.

    Parameters: line of heights [m], start of the way [m], end of it [m], both stations in plan.
    Source: derived.
    """
    found = []
    for near, far in pairwise(line.between(start, end)):
        grade = math.atan2(line.height(far) - line.height(near), far - near)
        found.append(Straight((far - near) / math.cos(grade), grade))
    return found
