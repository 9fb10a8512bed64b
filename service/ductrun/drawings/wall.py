"""A straight run along a wall: fixed points, expansion fittings, straps that slide and straps that hold, and travel."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import NamedTuple

from ductrun.drawings.drafting import LINE, Boxes, width_below
from ductrun.drawings.figures import figure
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing
from ductrun.kit.telling import Telling
from ductrun.subjects.movement.fittings import Layout
from ductrun.units import AnyQuantity

_LEFT, _RIGHT = MARGIN + 10.0, WIDTH - MARGIN - 10.0
_APART = 7.0  # least between marks that can be told apart
_MOST_ROWS = 12


class Run(NamedTuple):
    """A straight run of a `length` [m] between two fixed points: where its fittings stand, None without any, and how
    many it `needs`; where the straps that slide and those that hold stand [m], as far as they are known; `goes_on` says
    that it does not end there, `joints` at which of its ends a fitting leads on over a joint of the structure.
    """

    length: float
    layout: Layout | None
    needs: int = 0
    sliding: Sequence[float] = ()
    holding: Sequence[float] = ()
    goes_on: bool = False
    joints: tuple[bool, bool] = (False, False)


class Travel(NamedTuple):
    """How far a run moves [m], the travel of a fitting [m], and by temperature how far its piston is opened [m]."""

    change: float
    travel: float | None
    openings: Sequence[tuple[AnyQuantity, float]] = ()


def wall(
    runs: Sequence[Run],
    telling: Telling,
    travels: Sequence[Travel] = (),
    *,
    name: str = "Run along a wall",
    spacing: float | None = None,
    joints: Sequence[float] = (),
) -> str:
    """Draw runs one below the other, each with its marks and what they stand for; `spacing` [m] of supports at most,
    `joints` of the structure from the start of all runs [m].
    """
    drawing = Drawing()
    drawing.heading(name)
    words: list[str] = []
    if runs:
        _legend(drawing, runs)
    else:
        words.append("Runs that the ground or concrete holds have no movement to draw.")
        drawing.note(words[0])
    for number, run in enumerate(runs, start=1):
        which = f"Run {number}" if len(runs) > 1 else ""
        travel = travels[number - 1] if number <= len(travels) else None
        words.append(_draw_run(drawing, run, travel, which, telling))
    if spacing is not None:
        text = f"Straps stand {figure(telling.distance(spacing))} apart at most."
        drawing.note(text)
        words.append(text)
    if joints:
        text = f"Over joints of the structure every duct has a fitting more: {_listed(joints, telling)} from the start."
        drawing.note(text)
        words.append(text)
    return drawing.written(name, " ".join(words))


def _legend(drawing: Drawing, runs: Sequence[Run]) -> None:
    """Say what the marks stand for, those that are there."""
    marks = ["fixed"]
    if any(run.layout is not None for run in runs):
        marks.append("fitting")
    if any(run.layout is not None and run.layout.anchors for run in runs):
        marks.append("anchor")
    if any(run.sliding for run in runs):
        marks.append("slides")
    if any(run.holding or run.layout is not None for run in runs):
        marks.append("holds")
    if any(any(run.joints) for run in runs):
        marks.append("joint")
    words = {
        "joint": "expansion fitting over a joint of the structure",
        "fixed": "fixed end: box, elbow or termination",
        "fitting": "expansion fitting: barrel, and piston fully open",
        "anchor": "anchor between fittings",
        "slides": "strap that lets the run slide",
        "holds": "strap that holds",
    }
    for mark in marks:
        drawing.y += LINE + 3.0
        x, y = MARGIN + 12.0, drawing.y - 4.0
        if mark == "fitting":
            _draw_fitting(drawing, x - 12.0, x + 14.0, y)
        else:
            _MARKS[mark](drawing, x, y + _LEGEND_SHIFTS.get(mark, 0.0))
        drawing.text(MARGIN + 34.0, drawing.y, words[mark])
    drawing.y += 8.0


def _fixed(drawing: Drawing, x: float, y: float) -> None:
    drawing.line([(x, y - 9.0), (x, y + 9.0)], "ink", 2.0)
    drawing.lines([((x - 4.0, y + step + 3.0), (x, y + step)) for step in (-8.0, -4.0, 0.0, 4.0)], "ink", 0.8)


def _anchor(drawing: Drawing, x: float, y: float) -> None:
    drawing.shape([(x - 5.0, y + 9.0), (x + 5.0, y + 9.0), (x, y)], "ink", "ink", 1.0)


def _slides(drawing: Drawing, x: float, y: float) -> None:
    drawing.circle(x, y, 2.8, "paper", "ink", 1.1)


def _holds(drawing: Drawing, x: float, y: float) -> None:
    drawing.box(x - 3.0, y - 5.0, 6.0, 10.0, "ink", "ink", 1.0)


def _joint(drawing: Drawing, x: float, y: float) -> None:
    _draw_fitting(drawing, x - 9.0, x + 9.0, y - 17.0)


_MARKS = {"fixed": _fixed, "anchor": _anchor, "slides": _slides, "holds": _holds, "joint": _joint}
_LEGEND_SHIFTS = {"anchor": -4.0, "joint": 17.0}


def _draw_fitting(drawing: Drawing, start: float, stop: float, y: float) -> None:
    """Draw a fitting, its barrel from the start to the middle and its open piston on to the stop."""
    middle = (start + stop) / 2
    drawing.box(min(start, middle), y - 5.0, abs(middle - start), 10.0, "concrete", "ink", 1.1)
    drawing.box(min(stop, middle), y - 2.5, abs(stop - middle), 5.0, "paper", "there", 1.3)


def _draw_run(drawing: Drawing, run: Run, travel: Travel | None, which: str, telling: Telling) -> str:
    """Draw one run and say what it is."""
    length = figure(telling.distance(run.length))
    if which:
        drawing.y += 18.0
        drawing.text(MARGIN, drawing.y, which, bold=True)
    scale = (_RIGHT - _LEFT) / run.length
    y = drawing.y + 26.0
    end = _RIGHT

    def x(place: float) -> float:
        return _LEFT + place * scale

    drawing.line([(_LEFT, y), (end, y)], "ink", 3.0)
    left_out = _draw_straps(drawing, run, x, y)
    left_out += _draw_fittings(drawing, run, x, y)
    _fixed(drawing, _LEFT, y)
    if run.goes_on:
        _draw_break(drawing, end, y)
    else:
        _fixed(drawing, end, y)
    for there, place in zip(run.joints, (_LEFT, end), strict=True):
        if there:
            _joint(drawing, place, y)
    _write_places(drawing, run, x, y, telling)
    drawing.y = y + 14.0
    width_below(drawing, _LEFT, end, f"{length}, and on" if run.goes_on else length)
    for text in left_out:
        drawing.note(text, "soft")
    texts = _texts(run, travel, telling)
    for text in texts:
        drawing.note(text)
    _list_openings(drawing, travel, telling)
    return " ".join([f"{which or 'The run'} is {length} long.", *texts])


def _draw_break(drawing: Drawing, x: float, y: float) -> None:
    """Draw the break line of what goes on."""
    places = [(0.0, -10.0), (0.0, -3.0), (4.0, -1.5), (-4.0, 1.5), (0.0, 3.0), (0.0, 10.0)]
    drawing.line([(x + across, y + down) for across, down in places], "ink", 1.2)


def _told_apart(places: Sequence[float], scale: float) -> bool:
    return len(places) < 2 or min([(other - one) * scale for one, other in pairwise(sorted(places))]) >= _APART


def _draw_straps(drawing: Drawing, run: Run, x: Callable[[float], float], y: float) -> list[str]:
    """Draw the straps that can be told apart but for those on barrels; say which were left out."""
    scale = (_RIGHT - _LEFT) / run.length
    clamps = set() if run.layout is None else set(run.layout.clamps)
    holding = [place for place in run.holding if place not in clamps]
    left_out = []
    for places, draw, words in ((run.sliding, _slides, "let it slide"), (holding, _holds, "hold")):
        if _told_apart(places, scale):
            for place in places:
                draw(drawing, x(place), y)
        elif places:
            left_out.append(f"The {len(places)} straps that {words} stand too close to be drawn apart.")
    return left_out


def _draw_fittings(drawing: Drawing, run: Run, x: Callable[[float], float], y: float) -> list[str]:
    """Draw fittings and anchors that can be told apart; say which were left out."""
    layout = run.layout
    if layout is None:
        return []
    if not _fittings_fit(layout):
        return [f"The {len(layout.clamps)} expansion fittings stand too close to be drawn apart."]
    for piece, reach in zip(layout.pieces, layout.reaches, strict=True):
        start, end = x(piece.barrel), x(reach)
        size = min(max(abs(end - start), 34.0), abs(x(piece.far) - start) * 0.8)
        stop = start + size if end > start else start - size
        _draw_fitting(drawing, start, stop, y)
        drawing.box(start + (stop - start) / 4 - 1.5, y - 7.0, 3.0, 14.0, "ink", "ink", 0.6)
    for anchor in layout.anchors:
        _anchor(drawing, x(anchor), y + 5.0)
    return []


def _fittings_fit(layout: Layout) -> bool:
    return (_RIGHT - _LEFT) / len(layout.clamps) >= 2 * _APART or len(layout.clamps) == 1


def _write_places(drawing: Drawing, run: Run, x: Callable[[float], float], y: float, telling: Telling) -> None:
    """Write where the anchors are, where there is room."""
    if run.layout is None or not _fittings_fit(run.layout):
        return
    taken = Boxes()
    for anchor in run.layout.anchors:
        text = figure(telling.distance(anchor))
        if taken.take_text(x(anchor), y - 13.0, text, 10.0):
            drawing.text(x(anchor), y - 13.0, text, 10.0, "middle", "soft")


def _texts(run: Run, travel: Travel | None, telling: Telling) -> list[str]:
    """Say what there is along a run."""
    texts = []
    if travel is not None:
        texts.append(f"It moves {figure(telling.size(travel.change))} over the whole span of temperature.")
    layout = run.layout
    if layout is None and run.needs:
        texts.append(f"It needs {run.needs} expansion fittings, for which it has no room: none is drawn.")
    if layout is not None:
        each = "" if travel is None or travel.travel is None else f" of {figure(telling.size(travel.travel))} travel"
        texts.append(f"Expansion fittings{each}: {_listed(layout.clamps, telling)}, where the barrels are clamped.")
        if layout.anchors:
            texts.append(f"Anchors: {_listed(layout.anchors, telling)}.")
    if run.sliding:
        texts.append(f"Straps that let it slide: {_listed(run.sliding, telling)}.")
    if run.holding:
        texts.append(f"Straps that hold: {_listed(run.holding, telling)}.")
    return texts


def _listed(places: Sequence[float], telling: Telling) -> str:
    """List places, the first of them where they are many."""
    shown = [figure(telling.distance(place)) for place in places[:_MOST_ROWS]]
    more = len(places) - len(shown)
    return f"{len(places)}, at {', '.join(shown)}" + (f" and {more} more" if more else "")


def _list_openings(drawing: Drawing, travel: Travel | None, telling: Telling) -> None:
    """List how far pistons are opened by the temperature of the conduit."""
    if travel is None or not travel.openings:
        return
    drawing.note("Open the piston, by the temperature of the conduit:")
    for temperature, opening in travel.openings[: 2 * _MOST_ROWS]:
        drawing.y += 14.5
        drawing.text(MARGIN + 12.0, drawing.y, figure(temperature))
        drawing.text(MARGIN + 110.0, drawing.y, figure(telling.size(opening)))
    drawing.y += 2.0
