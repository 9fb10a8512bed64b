"""The profile of a route: heights over stations, finished grade where it is known, grades, and a scale of its own."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import NamedTuple

from ductrun.drawings.alignment import Placed, Point
from ductrun.drawings.chart import Axis
from ductrun.drawings.drafting import Boxes
from ductrun.drawings.stations import station_text
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing, Place
from ductrun.engineering.pulling import Straight
from ductrun.kit.telling import Telling

_LEFT, _HEIGHT = 58.0, 96.0
_RING = 6.0
_LEVEL = 1e-3  # m
_STEEPEST = 10.0  # times the heights may be drawn as large as the lengths


class Staked(NamedTuple):
    """Elevations along a route [m]: of finished grade, station in plan and height; of the start of the conduit; and
    what the conduit is drawn by.
    """

    ground: Sequence[Place]
    start: float
    of_what: str


def draw_profile(
    drawing: Drawing,
    placed: Sequence[Placed],
    numbered: Sequence[tuple[str, Point]],
    staked: Staked | None,
    telling: Telling,
) -> None:
    """Draw the profile below what is drawn so far; that of a level route without grade is said and not drawn."""
    points = [point for one in placed for point in one.points]
    start = 0.0 if staked is None else staked.start
    ground = [] if staked is None else [(station, height - start) for station, height in staked.ground]
    heights = [point.z for point in points] + [height for _, height in ground]
    low, high = min(heights), max(heights)
    if high - low < _LEVEL:
        drawing.note("The route is level: it has no profile to draw.", "soft")
        return
    drawing.y += 20.0
    drawing.text(MARGIN, drawing.y, "Profile", bold=True)
    end = max([points[-1].station, *[station for station, _ in ground], 1e-6])
    axis = Axis(_LEFT, WIDTH - MARGIN - 8.0, 0.0, end)
    along = (axis.right - axis.left) / end
    upward = min(_HEIGHT / (high - low), _STEEPEST * along)
    top = drawing.y + 26.0
    foot = top + (high - low) * upward

    def on_sheet(station: float, z: float) -> Place:
        return axis.x(station), foot - (z - low) * upward

    taken = Boxes()
    _draw_heights(drawing, axis, (low, high), (top, foot), taken, start, telling)
    if ground:
        drawing.line([on_sheet(*one) for one in ground], "ink", 1.4, "7 3")
    for one in placed:
        bend = not isinstance(one.given.section, Straight)
        drawing.line([on_sheet(p.station, p.z) for p in one.points], "there" if bend else "ink", 3.6 if bend else 2.2)
    _number(drawing, [(number, on_sheet(point.station, point.z)) for number, point in numbered], taken)
    _write_grades(drawing, placed, on_sheet, taken)
    drawing.y = foot + 30.0
    drawing.text(axis.left, drawing.y, station_text(0.0, telling), 10.0, "start", "soft")
    drawing.text(axis.right, drawing.y, station_text(points[-1].station, telling), 10.0, "end", "soft")
    times = upward / along
    what = "Heights from the start of the conduit" if staked is None else f"Elevations, {staked.of_what}"
    scale = f"{times:.3g} times as large as lengths" if times >= 1 else f"{1 / times:.3g} times smaller than lengths"
    drawing.note(f"{what}, drawn {scale}.{' Dashed: finished grade.' if ground else ''}", "soft")


def _draw_heights(
    drawing: Drawing, axis: Axis, ends: Place, at: Place, taken: Boxes, zero: float, telling: Telling
) -> None:
    """Draw the lowest and the highest height, and that of the start where there is room between them."""
    (low, high), (top, foot) = ends, at
    heights = [(high, top), (low, foot)]
    start = foot - (0.0 - low) * (foot - top) / (high - low)
    if start - top > 14.0 and foot - start > 14.0:
        heights.append((0.0, start))
    if foot - top < 12.0:
        heights = heights[:1]
    for height, y in heights:
        drawing.line([(axis.left, y), (axis.right, y)], "faint", 0.6)
        taken.take(0.0, y - 9.0, axis.left - 6.0, y + 7.0)
        told = telling.distance(height + zero)
        drawing.text(axis.left - 6.0, y + 3.6, f"{round(told.value, 1) + 0.0:.1f} {told.unit}", 10.0, "end", "soft")


def _number(drawing: Drawing, numbered: Sequence[tuple[str, Place]], taken: Boxes) -> None:
    """Write the numbers of the plan beside their places, where there is room."""
    for number, (x, y) in numbered:
        for dy in (-15.0, 15.0):
            if taken.take(x - _RING, y + dy - _RING, x + _RING, y + dy + _RING):
                drawing.text(x, y + dy + 3.4, number, 9.0, "middle", halo=True)
                break


def _write_grades(
    drawing: Drawing, placed: Sequence[Placed], on_sheet: Callable[[float, float], Place], taken: Boxes
) -> None:
    """Write the grade of every straight that has one, where there is room."""
    for one in placed:
        section = one.given.section
        if not isinstance(section, Straight) or abs(section.grade) < 1e-6 or abs(section.grade) > math.pi / 3:
            continue
        start, end = one.points[0], one.points[-1]
        x, y = on_sheet((start.station + end.station) / 2, (start.z + end.z) / 2)
        text = f"{100 * math.tan(section.grade):+.3g} %"
        for dy in (-6.0, 16.0):
            if taken.take_text(x, y + dy, text, 10.0):
                drawing.text(x, y + dy, text, 10.0, "middle", halo=True)
                break
