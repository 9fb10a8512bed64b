"""Plan and profile of a route: stations from one zero, bends with angle and radius, pull points, grades."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.drawings.alignment import Placed, Point, PullPoint, RouteSection, aligned
from ductrun.drawings.drafting import Boxes
from ductrun.drawings.figures import figure
from ductrun.drawings.profile import Staked, draw_profile
from ductrun.drawings.stations import angle_text, station_text
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing, Place, wrapped
from ductrun.engineering.pulling import HorizontalBend, Straight, VerticalBend
from ductrun.kit.telling import Telling

_MOST_ROWS = 60  # of the list of what lies along the route
_TALLEST = 230.0
_RING = 7.5


class Feature(NamedTuple):
    """Something along a route that has a number in plan and profile, where it is, and what it is in words."""

    number: str
    at: Point
    words: str
    is_pull_point: bool


def route(
    sections: Sequence[RouteSection],
    telling: Telling,
    *,
    pull_points: Sequence[PullPoint] = (),
    staked: Staked | None = None,
    name: str = "Route",
    start_name: str = "start",
    end_name: str = "end",
) -> str:
    """Draw plan and profile of a route whose sections follow each other.

    `staked` are the elevations of a profile. A level bend
    whose side is not known is drawn straight on, and the plan says so.
    """
    drawing = Drawing()
    drawing.heading(f"{name}: plan and profile")
    placed = aligned(sections, pull_points)
    features = _features(placed, pull_points, telling, (start_name, end_name))
    _draw_plan(drawing, placed, pull_points, features)
    draw_profile(drawing, placed, [(one.number, one.at) for one in features], staked, telling)
    _list(drawing, features, telling)
    return drawing.written(f"{name}: plan and profile", _in_words(placed, features, telling))


def _features(
    placed: Sequence[Placed], pull_points: Sequence[PullPoint], telling: Telling, ends: tuple[str, str]
) -> list[Feature]:
    """Give what lies along a route, in its order: its ends, bends and pull points."""
    start, end = placed[0].points[0], placed[-1].points[-1]
    found: list[tuple[Point, str, bool]] = [(start, ends[0], True)]
    between = {point.before: point for point in pull_points}
    for index, one in enumerate(placed):
        if index and index in between:
            found.append((one.points[0], _pull_point_words(between[index]), True))
        words = _bend_words(one.given, telling)
        if words:
            found.append((one.points[len(one.points) // 2], words, False))
    found.append((end, ends[1], True))
    return [Feature(str(number), *one) for number, one in enumerate(found, start=1)]


def _pull_point_words(point: PullPoint) -> str:
    words = point.name or "pull point"
    if point.heading_change:
        side = "left" if point.heading_change > 0 else "right"
        words += f", heading turns {side} {angle_text(abs(point.heading_change))}"
    return words


def _bend_words(given: RouteSection, telling: Telling) -> str:
    """Say what a bend is; nothing of a straight."""
    section = given.section
    if isinstance(section, Straight):
        return ""
    size = f"{angle_text(section.angle)}, radius {figure(telling.distance(section.radius))}"
    called = f"{given.name}: " if given.name else ""
    if isinstance(section, HorizontalBend):
        return (
            f"{called}bend {given.turn} {size}"
            if given.turn
            else f"{called}{'' if section.grade else 'level '}bend {size}"
        )
    way = "up" if section.exit_grade > section.entry_grade else "down"
    return f"{called}bend {way} {size}"


def _draw_plan(
    drawing: Drawing, placed: Sequence[Placed], pull_points: Sequence[PullPoint], features: Sequence[Feature]
) -> None:
    """Draw the plan as wide as the sheet, turned so that start and end lie level where they are apart."""
    drawing.y += 14.0
    drawing.text(MARGIN, drawing.y, "Plan", bold=True)
    ends = placed[0].points[0], placed[-1].points[-1]
    turn = -math.atan2(ends[1].y - ends[0].y, ends[1].x - ends[0].x)

    def turned(point: Point) -> Place:
        return (
            point.x * math.cos(turn) - point.y * math.sin(turn),
            -(point.x * math.sin(turn) + point.y * math.cos(turn)),
        )

    every = [turned(point) for one in placed for point in one.points]
    low = (min([x for x, _ in every]), min([y for _, y in every]))
    size = (max([x for x, _ in every]) - low[0], max([y for _, y in every]) - low[1])
    inset = MARGIN + 18.0
    scale = min((WIDTH - 2 * inset) / max(size[0], 1e-9), _TALLEST / max(size[1], 1e-9))
    left, top = (WIDTH - size[0] * scale) / 2, drawing.y + 30.0

    def on_sheet(point: Point) -> Place:
        x, y = turned(point)
        return left + (x - low[0]) * scale, top + (y - low[1]) * scale

    broken = {point.before for point in pull_points}
    for index, one in enumerate(placed):
        places = [on_sheet(point) for point in one.points]
        bend = not isinstance(one.given.section, Straight)
        drawing.line(places, "there" if bend else "ink", 4.0 if bend else 2.2)
        if index in broken and index:
            _draw_break(drawing, places[0])
    _number(drawing, [(one.number, on_sheet(one.at), one.is_pull_point) for one in features])
    drawing.y = top + size[1] * scale + 26.0
    drawing.note(_plan_words(placed, pull_points), "soft")


def _draw_break(drawing: Drawing, at: Place) -> None:
    """Mark a place where the heading may break."""
    x, y = at
    drawing.box(x - 4.0, y - 4.0, 8.0, 8.0, "paper", "ink", 1.6)


def _plan_words(placed: Sequence[Placed], pull_points: Sequence[PullPoint]) -> str:
    words = "Plan to scale, turned to lie level; heavy where the conduit bends."
    if any(isinstance(one.given.section, HorizontalBend) and one.given.turn is None for one in placed):
        words = "The side to which bends turn is not given: the plan is drawn out straight."
    if any(point.heading_change is None for point in pull_points):
        words += " At pull points (squares) the heading may break; it is drawn on."
    return words


def _number(drawing: Drawing, numbered: Sequence[tuple[str, Place, bool]]) -> None:
    """Write the number of everything along the route in a ring beside it, where there is room; ends first."""
    taken = Boxes()
    for _, (x, y), _ in numbered:
        taken.take(x - 1.0, y - 1.0, x + 1.0, y + 1.0)
    for number, (x, y), is_pull_point in sorted(numbered, key=lambda one: not one[2]):
        for dx, dy in ((0.0, -15.0), (0.0, 15.0), (14.0, -11.0), (-14.0, -11.0), (14.0, 11.0), (-14.0, 11.0)):
            at = (min(max(x + dx, MARGIN), WIDTH - MARGIN), y + dy)
            box = (at[0] - _RING - 1.0, at[1] - _RING - 1.0, at[0] + _RING + 1.0, at[1] + _RING + 1.0)
            if taken.take(*box):
                drawing.line([(x, y), at], "soft", 0.6)
                if is_pull_point:
                    drawing.box(at[0] - _RING, at[1] - _RING, 2 * _RING, 2 * _RING, "paper", "ink", 1.2)
                else:
                    drawing.circle(*at, _RING, "paper", "ink", 1.0)
                drawing.text(at[0], at[1] + 3.4, number, 9.0, "middle")
                break


def _list(drawing: Drawing, features: Sequence[Feature], telling: Telling) -> None:
    """List what lies along the route by its number and station."""
    drawing.y += 20.0
    drawing.text(MARGIN, drawing.y, "Along the route", bold=True)
    column = MARGIN + 96.0
    for one in features[:_MOST_ROWS]:
        drawing.y += 15.0
        drawing.text(MARGIN, drawing.y, one.number, bold=one.is_pull_point)
        drawing.text(MARGIN + 28.0, drawing.y, station_text(one.at.station, telling))
        for row, line in enumerate(wrapped(one.words, 11.0, WIDTH - MARGIN - column)):
            drawing.y += 13.0 if row else 0.0
            drawing.text(column, drawing.y, line)
    if len(features) > _MOST_ROWS:
        drawing.note(f"And {len(features) - _MOST_ROWS} more.")
    drawing.note(
        f"Station {station_text(0.0, telling)} is the start; stations run along the center line in plan.", "soft"
    )


def _in_words(placed: Sequence[Placed], features: Sequence[Feature], telling: Telling) -> str:
    """Say what plan and profile show."""
    end = placed[-1].points[-1]
    rise = end.z
    words = [
        f"A route of {figure(telling.distance(end.along))} along the conduit and "
        f"{figure(telling.distance(end.station))} in plan."
    ]
    if abs(rise) > 1e-3:
        words.append(f"It ends {figure(telling.distance(abs(rise)))} {'above' if rise > 0 else 'below'} its start.")
    bends = sum([isinstance(one.given.section, (HorizontalBend, VerticalBend)) for one in placed])
    words.append(f"It has {bends} bends.")
    shown = [f"{station_text(one.at.station, telling)} {one.words}" for one in features[:_MOST_ROWS]]
    return " ".join([*words, "; ".join(shown) + "."])
