"""A chart along a route: a figure over stations, its limit, curves and stems of two directions."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final, NamedTuple

from ductrun.drawings.figures import figure
from ductrun.drawings.svg import MARGIN, Drawing, Place
from ductrun.units import AnyQuantity

_HEIGHT: Final = 124.0
_MOST_MARKERS: Final = 60  # of a curve: with more they would be a band
_IN_SIGHT: Final = 3.0  # times the highest, up to which a limit is drawn to scale


class Axis(NamedTuple):
    """What lies from `low` to `high` drawn from `left` to `right`."""

    left: float
    right: float
    low: float
    high: float

    def x(self, place: float) -> float:
        """Give where a place is drawn."""
        return self.left + (self.right - self.left) * (place - self.low) / (self.high - self.low)


class Scale(NamedTuple):
    """The figures of a chart, from none to `most`, written at every `step`; `unit` as it is told."""

    most: float
    step: float
    unit: str


class Curve(NamedTuple):
    """A line through `points`, marked at its `joints`, of a pull from the other end or not, and its `highest`."""

    points: list[Place]
    joints: list[Place]
    backward: bool
    highest: AnyQuantity


class Stem(NamedTuple):
    """A value at one place, of a pull from the other end or not."""

    place: float
    value: float
    backward: bool


def axis_of(highest: AnyQuantity, limit: AnyQuantity | None) -> Scale:
    """Give the scale that holds a figure, and its limit too where that is not far above."""
    most = highest.value
    if limit is not None and limit.value <= _IN_SIGHT * most:
        most = max(most, limit.value)
    if not most > 0.0:
        most = 1.0 if limit is None else limit.value
    most *= 1.12
    rough = most / 4
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(power * times for times in (1.0, 2.0, 2.5, 5.0, 10.0) if power * times >= rough * (1 - 1e-9))
    return Scale(most, step, highest.unit)


def draw_chart(
    drawing: Drawing,
    what: str,
    axis: Axis,
    scale: Scale,
    curves: Sequence[Curve],
    stems: Sequence[Stem],
    limit: AnyQuantity | None,
    stops: Sequence[float],
) -> None:
    """Draw a chart below what is drawn so far; `stops` are pull points."""
    drawing.y += 14.0
    drawing.text(MARGIN, drawing.y, f"{what}, {scale.unit}", bold=True)
    if limit is not None:
        drawing.y += 14.0
        above = ", above what is drawn" if limit.value > scale.most else ""
        drawing.line([(MARGIN, drawing.y - 4.0), (MARGIN + 34.0, drawing.y - 4.0)], "limit", 1.8, "9 3 2 3")
        drawing.text(MARGIN + 42.0, drawing.y, f"limit {figure(limit)}{above}", role="limit")
    top, foot = drawing.y + 10.0, drawing.y + 10.0 + _HEIGHT

    def y(value: float) -> float:
        return foot - _HEIGHT * min(value, scale.most) / scale.most

    _draw_grid(drawing, axis, scale, (top, foot))
    for stop in stops:
        drawing.line([(axis.x(stop), top), (axis.x(stop), foot)], "ink", 1.0, "1 3")
    if limit is not None and limit.value <= scale.most:
        drawing.line([(axis.left, y(limit.value)), (axis.right, y(limit.value))], "limit", 1.8, "9 3 2 3")
    for curve in curves:
        role, dash = ("back", "5 3") if curve.backward else ("there", "")
        drawing.line([(axis.x(place), y(value)) for place, value in curve.points], role, 2.0, dash)
        if len(curve.joints) <= _MOST_MARKERS:
            for place, value in curve.joints:
                mark(drawing, (axis.x(place), y(value)), backward=curve.backward)
    for stem in stems:
        x = axis.x(stem.place) + (2.0 if stem.backward else -2.0)
        role, dash = ("back", "5 3") if stem.backward else ("there", "")
        drawing.line([(x, foot), (x, y(stem.value))], role, 1.8, dash)
        mark(drawing, (x, y(stem.value)), backward=stem.backward)
    drawing.y = foot + 6.0


def mark(drawing: Drawing, at: Place, *, backward: bool) -> None:
    """Mark a value: a hollow square of a pull from the other end, else a dot."""
    x, y = at
    if backward:
        drawing.box(x - 2.5, y - 2.5, 5.0, 5.0, "paper", "back", 1.3)
    else:
        drawing.circle(x, y, 2.8, "there", "there")


def _draw_grid(drawing: Drawing, axis: Axis, scale: Scale, ends: Place) -> None:
    """Draw the figures at the left and a line at each."""
    top, foot = ends
    value = 0.0
    while value <= scale.most * (1 + 1e-9):
        y = foot - (foot - top) * value / scale.most
        drawing.line(
            [(axis.left, y), (axis.right, y)], "ink" if value == 0.0 else "faint", 1.0 if value == 0.0 else 0.6
        )
        text = f"{value:,.5g}" if abs(value) < 1e5 else f"{value:.3g}"
        drawing.text(axis.left - 4.0, y + 3.6, text, 10.0, "end", "soft")
        value += scale.step
    drawing.line([(axis.left, top), (axis.left, foot)], "ink", 1.0)
