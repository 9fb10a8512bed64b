"""Random routes over hills, and a fine integration of the cable along them that knows none of the closed forms."""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend


class Integrated(NamedTuple):
    """What an integration finds: least and highest tension anywhere, the highest and the last of each section [N]."""

    least: float
    highest: float
    tops: list[float]
    ends: list[float]


def random_route(source: random.Random) -> tuple[list[Section], float, float]:
    """Make a route whose grades meet, from -90 to 90 degrees, with its weight [N/m] and incoming tension [N]."""
    friction = source.choice([0.1, 0.15, 0.35, 0.5, 0.8]) * source.uniform(1.0, 1.4)
    grade = math.radians(source.choice([0, 0, -90, 90, source.uniform(-90, 90)]))
    sections: list[Section] = []
    for _ in range(source.randint(1, 8)):
        kind = source.choice(["straight", "vertical", "vertical", "level"])
        if kind == "straight":
            sections.append(Straight(source.uniform(1, 120), grade, friction))
        elif kind == "level" and grade == 0.0:
            sections.append(HorizontalBend(source.uniform(0.5, 30), source.uniform(0.1, 1.6), friction))
        else:
            leave = math.radians(source.choice([0, -90, 90, source.uniform(-90, 90)]))
            if abs(leave - grade) > 0.02:
                sections.append(VerticalBend(source.choice([1.0, 5.0, 30.0, 150.0]), grade, leave, friction))
                grade = leave
    if not sections:
        sections.append(Straight(50.0, grade, friction))
    return sections, source.uniform(1, 120), source.choice([0.0, 0.0, 200.0, 3_000.0])


def integrate(route: Sequence[Section], weight: float, entering: float, steps: int = 1_000) -> Integrated:
    """Follow a cable from the tension that enters by Runge-Kutta steps, on friction and weight alone, with no floor."""
    tension = entering
    least = highest = entering
    tops, ends = [], []
    for section in route:
        step = section.developed_length / steps
        top = tension
        for index in range(steps):
            at = index / steps
            k1 = _rate(section, at, tension, weight)
            k2 = _rate(section, at + 0.5 / steps, tension + step / 2 * k1, weight)
            k3 = _rate(section, at + 0.5 / steps, tension + step / 2 * k2, weight)
            k4 = _rate(section, at + 1 / steps, tension + step * k3, weight)
            tension += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
            least, top = min(least, tension), max(top, tension)
        tops.append(top)
        ends.append(tension)
        highest = max(highest, top)
    return Integrated(least, highest, tops, ends)


def _rate(section: Section, share: float, tension: float, weight: float) -> float:
    """Change of tension a metre along a section, from the forces on a metre of cable."""
    if isinstance(section, Straight):
        return weight * (section.friction * math.cos(section.grade) + math.sin(section.grade))
    if isinstance(section, HorizontalBend):
        return section.friction * math.hypot(tension / section.radius, weight)
    slope = section.entry_grade + share * (section.exit_grade - section.entry_grade)
    across = weight * math.cos(slope)  # of the weight, square to the conduit
    drawn = tension / section.radius  # toward the centre of the bend
    rising = section.exit_grade > section.entry_grade
    wall = abs(drawn - across) if rising else abs(drawn + across)
    return section.friction * wall + weight * math.sin(slope)
