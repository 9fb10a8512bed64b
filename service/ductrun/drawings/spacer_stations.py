"""The spacer stations of a run, and how its ducts stand on each other at one of them."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.drawings.bank_view import draw_bank
from ductrun.drawings.drafting import width_below
from ductrun.drawings.figures import figure
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing
from ductrun.engineering.bank import Alignment, Tier, bare, place
from ductrun.kit.telling import Telling

_MOST_DRAWN = 85  # stations that can be told apart
_LEFT, _RIGHT = MARGIN + 8.0, WIDTH - MARGIN - 8.0


def spacer_stations(
    length: float,
    tiers: Sequence[int],
    stations: tuple[int, float, float],
    pieces: Sequence[tuple[str, int]],
    telling: Telling,
) -> str:
    """Draw a run of a length [m]: `stations` are how many, how far apart and where the first is [m]; `pieces` what is
    counted of each kind. The ducts, from the bottom tier up, are drawn as they lie and not to scale.
    """
    number, spacing, first = stations
    drawing = Drawing()
    drawing.heading("Spacers: stations along the run")
    y = drawing.y + 18.0
    scale = (_RIGHT - _LEFT) / length
    drawing.box(_LEFT, y - 6.0, _RIGHT - _LEFT, 12.0, "concrete", "ink", 1.2)
    if number <= _MOST_DRAWN:
        places = [_LEFT + (first + spacing * index) * scale for index in range(number)]
        drawing.lines([((x, y - 10.0), (x, y + 10.0)) for x in places], "ink", 1.4)
    drawing.y = y + 12.0
    if number > 1 and number <= _MOST_DRAWN:
        start = _LEFT + first * scale
        width_below(
            drawing, start, start + spacing * scale, f"{figure(telling.distance(spacing))} from one to the next"
        )
    width_below(drawing, _LEFT, _RIGHT, figure(telling.distance(length)))
    if number > _MOST_DRAWN:
        drawing.note(f"The {number} stations stand too close to be drawn apart.", "soft")
    words = _in_words(stations, pieces, telling)
    drawing.note(words)
    drawing.y += 6.0
    drawing.note("At a station, looking from start to end, not to scale:", "soft")
    bank = place(
        [Tier((1.0,) * ducts) for ducts in tiers], 0.45, 0.45, 0.45, Alignment.CENTERED, center_to_center=False
    )
    draw_bank(drawing, bare(bank), telling, (), to_scale=False)
    drawing.note("Ducts are named tier-position: tier 1 is the bottom, position 1 the left.", "soft")
    tiers_words = ", ".join([str(ducts) for ducts in tiers])
    return drawing.written("Spacer stations", f"{words} Ducts in each tier from the bottom up: {tiers_words}.")


def _in_words(stations: tuple[int, float, float], pieces: Sequence[tuple[str, int]], telling: Telling) -> str:
    number, spacing, first = stations
    apart = f", {figure(telling.distance(spacing))} apart" if number > 1 else ""
    counted = "; ".join([f"{words}: {count}" for words, count in pieces if count])
    plural = "station" if number == 1 else "stations"
    return f"{number} {plural}{apart}, the first {figure(telling.distance(first))} from the start. {counted}."
