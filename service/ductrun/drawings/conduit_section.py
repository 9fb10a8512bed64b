"""Conductors inside a conduit, to scale, in one arrangement in which they can lie, with fill, limit and jam ratio."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.drawings.drafting import letters_within
from ductrun.drawings.figures import figure
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing, shortened
from ductrun.engineering.packing import MOST_PACKED, Circle, pack
from ductrun.kit.telling import Telling
from ductrun.subjects.parts.jam import JAM_HIGH, JAM_LOW, OVALITY, in_jam_band

_RADIUS = 104.0
_MOST_LINES = 40  # of the list of conductors
_LARGEST_SAMPLE = 13.0


class Conductors(NamedTuple):
    """So many alike conductors or cables: how they are called, their `number`, and the `diameter` of one [m]."""

    words: str
    number: int
    diameter: float


class Figures(NamedTuple):
    """How full a conduit is: `percent` of its bore, the `limit_percent` and the `reason` why that applies, whether it
    is kept, and the `jam_ratio` of three that govern, None of other sets.
    """

    percent: float
    limit_percent: float
    reason: str
    within: bool
    jam_ratio: float | None


def conduit_section(
    bore: float, conductors: Sequence[Conductors], figures: Figures, telling: Telling, *, name: str = "Conduit"
) -> str:
    """Draw conductors in a bore [m]; where no arrangement of them is found the picture says so and shows none."""
    drawing = Drawing()
    drawing.heading(name)
    diameters = [one.diameter for one in conductors for _ in range(one.number)]
    laid = pack(diameters, bore)
    scale = 2 * _RADIUS / bore
    x, y = WIDTH / 2, drawing.y + _RADIUS + 4.0
    drawing.circle(x, y, _RADIUS + 4.0, "concrete", "ink", 1.2)
    drawing.circle(x, y, _RADIUS, "paper", "ink", 1.2)
    if laid is not None:
        marked = [index for index, one in enumerate(conductors) for _ in range(one.number)]
        for circle, index in zip(laid, marked, strict=True):
            at = Circle(x + circle.x * scale, y - circle.y * scale, circle.radius * scale)
            _draw(drawing, at, index)
    drawing.y = y + _RADIUS + 10.0
    drawing.note(_how_they_lie(len(diameters), found=laid is not None), "soft" if laid is not None else "limit")
    _draw_fill(drawing, figures)
    _list(drawing, conductors, telling, scale)
    drawing.note(f"Inside diameter {figure(telling.size(bore))}.")
    _tell_jam(drawing, figures.jam_ratio)
    return drawing.written(name, _in_words(bore, conductors, figures, telling, drawn=laid is not None))


def _how_they_lie(count: int, *, found: bool) -> str:
    if found:
        return "One way in which they can lie, to scale; a pull may lay them otherwise."
    if count > MOST_PACKED:
        return f"{count} conductors are too many to draw."
    return "No way was found in which all of them lie in this bore: none is drawn."


def _draw(drawing: Drawing, circle: Circle, index: int) -> None:
    """Draw a conductor with the letter of its line, or with its mark where it is too small for one."""
    x, y, radius = circle
    letter = _letter(index)
    size = letters_within(letter, radius * 1.3)
    drawing.circle(x, y, radius, "sand" if index % 2 else "earth", "ink", 1.0 if radius > 3.0 else 0.6)
    if size:
        drawing.text(x, y + size * 0.36, letter, size, "middle")
    else:
        _mark(drawing, x, y, radius * 0.5, index)


def _mark(drawing: Drawing, x: float, y: float, reach: float, index: int) -> None:
    """Mark a small circle so that its line is known without colours or letters."""
    across, up = ((x - reach, y), (x + reach, y)), ((x, y - reach), (x, y + reach))
    drawing.lines([(), (across,), (up,), (across, up)][index % 4], "ink", 0.8)


def _letter(index: int) -> str:
    """Give the letter of a line: A to Z, then AA and on."""
    before, place = divmod(index, 26)
    return (_letter(before - 1) if before else "") + chr(ord("A") + place)


def _draw_fill(drawing: Drawing, figures: Figures) -> None:
    """Draw how full the conduit is as a bar against its limit."""
    left, wide = MARGIN, WIDTH - 2 * MARGIN
    most = max(figures.limit_percent * 1.4, figures.percent * 1.05)
    drawing.y += 16.0
    limit = left + wide * figures.limit_percent / most
    drawing.text(limit, drawing.y, f"limit {figures.limit_percent:g} %", anchor="middle", role="limit")
    top = drawing.y + 5.0
    drawing.box(left, top, wide, 12.0, "none", "soft", 0.8)
    drawing.box(
        left, top, max(0.5, wide * figures.percent / most), 12.0, "there" if figures.within else "limit", "none"
    )
    drawing.line([(limit, top - 3.0), (limit, top + 15.0)], "ink", 2.0)
    drawing.y = top + 12.0
    words = "within the limit" if figures.within else "over the limit"
    drawing.note(f"Filled {figures.percent:.2f} %: {words}. {figures.reason}", "ink" if figures.within else "limit")


def _list(drawing: Drawing, conductors: Sequence[Conductors], telling: Telling, scale: float) -> None:
    """List the conductors, each line with a sample of it to scale, as large as the list has room for."""
    for index, one in enumerate(conductors[:_MOST_LINES]):
        radius = min(one.diameter / 2 * scale, _LARGEST_SAMPLE)
        half = max(radius, 7.0) + 2.0
        drawing.y += half
        _draw(drawing, Circle(MARGIN + 26.0 + _LARGEST_SAMPLE, drawing.y, radius), index)
        drawing.text(MARGIN, drawing.y + 4.0, _letter(index), bold=True)
        start = MARGIN + 34.0 + 2 * _LARGEST_SAMPLE
        text = f"{one.number} \u00d7 {one.words}, {figure(telling.size(one.diameter))}"
        drawing.text(start, drawing.y + 4.0, shortened(text, 11.0, WIDTH - MARGIN - start))
        drawing.y += half
    rest = len(conductors) - _MOST_LINES
    if rest > 0:
        drawing.note(f"And {rest} lines more.")


def _tell_jam(drawing: Drawing, ratio: float | None) -> None:
    if ratio is None:
        return
    band = f"the jam band of {JAM_LOW:.2f} to {JAM_HIGH:.2f}"
    if in_jam_band(ratio):
        words, role = f"inside {band}: three cables may wedge in a bend", "limit"
    else:
        words, role = f"outside {band}", "ink"
    drawing.note(f"Jam ratio {ratio:.2f}, {ratio * OVALITY:.2f} with ovality: {words}.", role)


def _in_words(bore: float, conductors: Sequence[Conductors], figures: Figures, telling: Telling, *, drawn: bool) -> str:
    """Say what the section shows."""
    shown = [f"{one.number} of {one.words}" for one in conductors[:_MOST_LINES]]
    what = "; ".join(shown) + ("; and more" if len(conductors) > _MOST_LINES else "")
    held = "within" if figures.within else "over"
    jam = "" if figures.jam_ratio is None else f" The jam ratio is {figures.jam_ratio:.2f}."
    lie = "" if drawn else f" {_how_they_lie(sum([one.number for one in conductors]), found=False)}"
    return (
        f"A bore of {figure(telling.size(bore))} with {what}. They fill {figures.percent:.2f} percent of it, {held} "
        f"the limit of {figures.limit_percent:g} percent.{jam}{lie}"
    )
