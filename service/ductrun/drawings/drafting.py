"""What drawings of this trade have in common: dimension lines, labels beside them, marks of ground and of breaks."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.drawings.svg import SMALLEST, WIDTH, Drawing, Place, text_width

LETTERS = 11.0  # height of those of labels
LINE = 13.0  # from one line of a label to the next
_TICK = 3.0


class Label(NamedTuple):
    """What is said beside a drawing of a place at the height `y`."""

    y: float
    text: str
    role: str = "ink"


class Boxes:
    """Where text stands already, so that no other is written over it."""

    def __init__(self) -> None:
        """Start with an empty sheet."""
        self._taken: list[tuple[float, float, float, float]] = []

    def take(self, left: float, top: float, right: float, bottom: float) -> bool:
        """Take a box if it is free, and say whether it was."""
        for a, b, c, d in self._taken:
            if left < c and a < right and top < d and b < bottom:
                return False
        self._taken.append((left, top, right, bottom))
        return True

    def take_text(self, x: float, y: float, text: str, size: float = LETTERS) -> bool:
        """Take the box of a text whose middle is at `x` and whose letters stand on `y`; none lies beyond the sheet."""
        half = text_width(text, size) / 2 + 1.0
        if x - half < 2.0 or x + half > WIDTH - 2.0:
            return False
        return self.take(x - half, y - size, x + half, y + size * 0.3)


def spread(wanted: Sequence[float], apart: float, low: float, high: float) -> list[float]:
    """Give places in the order of those wanted, as near to them as can be and so far apart; more than fit between low
    and high go on beyond high.
    """
    places: list[float] = []
    for want in wanted:
        places.append(max(want, places[-1] + apart if places else low))
    for index in range(len(places) - 1, -1, -1):
        limit = places[index + 1] - apart if index + 1 < len(places) else high
        places[index] = min(places[index], limit)
    if places and places[0] < low:
        places = [max(place, low + index * apart) for index, place in enumerate(places)]
    return places


def beside(drawing: Drawing, labels: Sequence[Label], edge: float, x: float, low: float, high: float) -> float:
    """Write labels beside a drawing, each with a line to its place at the `edge`; `x` is where the text begins, or ends
    where it is left of the edge. Gives how far down they reach.
    """
    ordered = sorted(labels)
    heights = spread([label.y for label in ordered], LINE, low + LINE / 2, high)
    right = x > edge
    for label, height in zip(ordered, heights, strict=True):
        bend = x - 5.0 if right else x + 5.0
        end = x - 2.0 if right else x + 2.0
        drawing.line([(edge, label.y), (bend, height), (end, height)], "soft", 0.6)
        drawing.text(x, height + 4.0, label.text, anchor="start" if right else "end", role=label.role)
    return max([*heights, high - LINE / 2]) + LINE / 2


def upright(drawing: Drawing, x: float, places: Sequence[float], reach: float = 0.0) -> None:
    """Draw an upright dimension line with its ticks; `reach` is how far extension lines go back toward the drawing."""
    drawing.line([(x, min(places)), (x, max(places))], "soft", 0.8)
    drawing.lines([((x - _TICK, y + _TICK), (x + _TICK, y - _TICK)) for y in places], "ink", 1.0)
    if reach:
        drawing.lines([((x + reach, y), (x - (2.0 if reach > 0 else -2.0), y)) for y in places], "faint", 0.6)


def height_at_left(drawing: Drawing, x: float, top: float, bottom: float, text: str) -> None:
    """Draw an upright dimension line with its figure left of it, feet above inches."""
    upright(drawing, x, (top, bottom), 6.0)
    lines = text.replace("\u00a0ft\u00a0", "\u00a0ft\n").split("\n")
    y = (top + bottom) / 2 - (len(lines) - 1) * LINE / 2 + 4.0
    for line in lines:
        drawing.text(x - 6.0, y, line, anchor="end")
        y += LINE


def width_below(drawing: Drawing, left: float, right: float, text: str) -> None:
    """Draw a level dimension line below what is drawn so far, its figure within it or beside it."""
    drawing.y += 16.0
    y = drawing.y - 4.0
    drawing.lines([((at - _TICK, y + _TICK), (at + _TICK, y - _TICK)) for at in (left, right)], "ink", 1.0)
    drawing.lines([((at, y - 5.0), (at, y + 4.0)) for at in (left, right)], "faint", 0.6)
    half = text_width(text, LETTERS) / 2 + 4.0
    middle = (left + right) / 2
    if 2 * half <= right - left:
        drawing.lines([((left, y), (middle - half, y)), ((middle + half, y), (right, y))], "soft", 0.8)
        drawing.text(middle, y + 4.0, text, anchor="middle")
        return
    drawing.line([(left, y), (right, y)], "soft", 0.8)
    if right + 2 * half <= 356.0 or right < 360.0 - left:
        drawing.text(right + 6.0, y + 4.0, text)
    else:
        drawing.text(left - 6.0, y + 4.0, text, anchor="end")


def ground(drawing: Drawing, left: float, right: float, y: float) -> None:
    """Draw a stretch of grade with the marks of undisturbed earth under it."""
    drawing.line([(left, y), (right, y)], "ink", 1.6)
    marks: list[tuple[Place, Place]] = []
    at = left + 3.0
    while at + 3.0 < right:
        marks += [((at + step * 2.4 + 3.0, y + 1.0), (at + step * 2.4 - 1.0, y + 5.0)) for step in (0, 1)]
        at += 12.0
    drawing.lines(marks, "soft", 0.8)


def room_for(texts: Sequence[str]) -> float:
    """Give what labels at the right of a drawing take of the sheet, with the dimension line before them."""
    return min(max([text_width(text, LETTERS) for text in texts], default=0.0) + 24.0, WIDTH / 2)


def letters_within(text: str, width: float) -> float:
    """Give the height of letters with which a text fits a width, none where they would be too small to read."""
    for size in (12.0, 11.0, 10.0, SMALLEST):
        if text_width(text, size) <= width:
            return size
    return 0.0
