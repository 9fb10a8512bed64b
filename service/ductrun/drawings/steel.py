"""Bars and ties in the concrete of a bank: as shapes in its section, and in words."""

from __future__ import annotations

from itertools import pairwise

from ductrun.drawings.readable import quantity_text, words_of
from ductrun.drawings.svg import Drawing, Place
from ductrun.engineering.bank import Envelope
from ductrun.engineering.outline import stepped
from ductrun.kit.telling import Telling
from ductrun.subjects.bank.reinforcing import Bars

_LEAST = 1.7  # of the sheet: a thinner bar would not be seen in print


def steel_words(bars: Bars, telling: Telling, *, counted: bool = False) -> str:
    """Say what steel is set: bars with their laps, ties, `counted` or not, and the concrete outside them."""
    size = telling.size
    laps = f", lapped {quantity_text(size(bars.lap))}" if bars.lap_count else ""
    apart = quantity_text(telling.given(bars.tie_spacing))
    long = f"{bars.bar_count} {words_of(bars.size)} bar{'' if bars.bar_count == 1 else 's'}{laps}"
    outside = quantity_text(telling.given(bars.edge))
    ties = f"{bars.tie_count:,} {words_of(bars.tie_size)}" if counted else words_of(bars.tie_size)
    return f"{long}; {ties} ties, {apart} apart, {outside} of concrete outside them"


def can_be_drawn(envelope: Envelope) -> bool:
    """Say whether ties around the bounding rectangle lie in the concrete: it does not step with the tiers."""
    return envelope.concrete is not None and not stepped(envelope)


def draw_steel(drawing: Drawing, envelope: Envelope, bars: Bars, middle: float, floor: float, scale: float) -> None:
    """Draw the ties in the concrete on a floor of the sheet, and the bars inside them."""
    if not can_be_drawn(envelope):
        return
    tie, bar = bars.edge.si + bars.tie_diameter / 2, bars.cage - bars.diameter / 2
    drawing.line(_corners(envelope, tie, middle, floor, scale), "limit", 1.1, closed=True)
    radius = max(_LEAST, bars.diameter / 2 * scale)
    for x, y in _shared(_corners(envelope, bar, middle, floor, scale), bars.bar_count):
        drawing.circle(x, y, radius, "limit", "limit", 0.6)


def _corners(envelope: Envelope, inset: float, middle: float, floor: float, scale: float) -> list[Place]:
    """Give the corners of the concrete on the sheet, all faces moved inward [m]."""
    low, high = floor - inset * scale, floor - (envelope.height - inset) * scale
    lean = (envelope.top_width - envelope.width) / 2 / envelope.height
    half = [envelope.width / 2 + lean * height - inset for height in (inset, envelope.height - inset)]
    wide = [max(0.0, one) * scale for one in half]
    return [(middle - wide[0], low), (middle - wide[1], high), (middle + wide[1], high), (middle + wide[0], low)]


def _shared(corners: list[Place], count: int) -> list[Place]:
    """Give places for so many bars: one in each corner, the rest where the way between two is longest."""
    sides = list(pairwise([*corners, corners[0]]))
    lengths = [abs(x - u) + abs(y - v) for (x, y), (u, v) in sides]
    gaps = [1, 1, 1, 1]
    for _ in range(count - 4):
        side = max(range(4), key=lambda one: lengths[one] / gaps[one])
        gaps[side] += 1
    places = [
        (x + (u - x) * step / number, y + (v - y) * step / number)
        for ((x, y), (u, v)), number in zip(sides, gaps, strict=True)
        for step in range(number)
    ]
    return places[:count] if count >= len(corners) else corners[:count]
