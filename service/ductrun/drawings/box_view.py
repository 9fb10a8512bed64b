"""A box from its front: what enters each wall, how conductors go through, and the dimensions with what decided them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ductrun.drawings.drafting import LINE, height_at_left, width_below
from ductrun.drawings.figures import figure
from ductrun.drawings.svg import MARGIN, Drawing
from ductrun.engineering.rounding import under
from ductrun.kit.telling import Telling
from ductrun.subjects.boxes.choices import BoxWall, PullKind
from ductrun.subjects.boxes.placing import Entry, Pull
from ductrun.subjects.boxes.requiring import Requirement, in_inches
from ductrun.subjects.boxes.sizing import Sized

_LEFT: Final = 126.0
_RIGHT: Final = 312.0
_TALLEST, _LOWEST = 230.0, 64.0
_STUB: Final = 14.0
_MOST_PULLS: Final = 60
_MOST_NAMED: Final = 6  # entries of a row, or circuits of one
_NAMES: Final = ("length", "width", "depth")
_WALLS: Final = {
    BoxWall.LEFT: "left",
    BoxWall.RIGHT: "right",
    BoxWall.TOP: "top",
    BoxWall.BOTTOM: "bottom",
    BoxWall.BACK: "back",
    BoxWall.FRONT: "front",
}
_FACING: Final = {BoxWall.BACK, BoxWall.FRONT}
Spot = tuple[float, float]


def box_view(found: Sized, telling: Telling, *, name: str = "") -> str:
    """Draw a box with its entries and pulls, and say its least dimensions and what decided each."""
    drawing = Drawing()
    title = f"{name or _words(found.structure.value).capitalize()}: least size"
    drawing.heading(title)
    drawing.note("Looking at its roof from above." if found.structure == "manhole" else "Looking at its front.", "soft")
    length, width = _sides(found)
    true = (_RIGHT - _LEFT) * width / length
    tall = min(max(true, _LOWEST), _TALLEST)
    top = drawing.y + _STUB + 18.0
    spots = _draw_box(drawing, found.entered.entries, _decided(found), top, tall)
    _draw_pulls(drawing, found, spots, tall)
    if width > 0.0:
        height_at_left(drawing, _LEFT - 44.0, top, top + tall, _size(width, telling))
    drawing.y = top + tall + _STUB + 14.0
    if length > 0.0:
        width_below(drawing, _LEFT, _RIGHT, _size(length, telling))
    drawing.y += 4.0
    words = _dimensions(found, telling)
    for line, is_short in words:
        drawing.note(line, "limit" if is_short else "ink")
    _draw_legend(drawing, found)
    if tall != true:
        drawing.note("Not to scale.", "soft")
    entries = [f"{_row_words(wall, row, members, found)}." for (wall, row), members in _rows(found).items()]
    return drawing.written(title, " ".join([line for line, _ in words] + entries))


def _words(code: str) -> str:
    return code.replace("_", " ")


def _size(side: float, telling: Telling) -> str:
    return figure(telling.given(in_inches(side)))


def _sides(found: Sized) -> tuple[float, float]:
    """Give length and width [m] to draw: those of the box, else the least; 0 where nothing tells it."""
    if found.box is not None:
        return found.box[:2]
    length, width = (0.0 if need is None else need.least for need in found.least[:2])
    return length or width or 1.0, width


def _decided(found: Sized) -> set[int]:
    """Give the entries that decided a dimension."""
    return {entry for need in found.least if need is not None for entry in need.entries}


def _draw_box(
    drawing: Drawing, entries: Sequence[Entry], decided: set[int], top: float, tall: float
) -> dict[int, Spot]:
    """Draw the box and a stub for every entry; gives where each lies on the sheet."""
    drawing.box(_LEFT, top, _RIGHT - _LEFT, tall, "concrete", "ink", 1.6)
    spots: dict[int, Spot] = {}
    for wall in BoxWall:
        members = [at for at, entry in enumerate(entries) if entry.wall is wall]
        upright = wall in (BoxWall.LEFT, BoxWall.RIGHT)
        room = tall if upright else _RIGHT - _LEFT
        numbered = len(members) * (LINE if upright else 1.7 * LINE) <= room
        for place, at in enumerate(members):
            along = room * (place + 0.5) / len(members)
            spot = _spot(wall, along, top, tall)
            spots[at] = spot
            _draw_entry(drawing, wall, spot, f"{at + 1}" if numbered else "", decided=at in decided)
        if members and not numbered:
            _draw_count(drawing, wall, len(members), top, tall)
    return spots


def _spot(wall: BoxWall, along: float, top: float, tall: float) -> Spot:
    """Give the place of an entry; those in the back or the front lie in a row across the middle."""
    if wall is BoxWall.LEFT:
        return _LEFT, top + tall - along
    if wall is BoxWall.RIGHT:
        return _RIGHT, top + tall - along
    if wall is BoxWall.TOP:
        return _LEFT + along, top
    if wall is BoxWall.BOTTOM:
        return _LEFT + along, top + tall
    return _LEFT + along, top + tall * (0.42 if wall is BoxWall.BACK else 0.66)


def _draw_entry(drawing: Drawing, wall: BoxWall, spot: Spot, number: str, *, decided: bool) -> None:
    x, y = spot
    role, thick = ("there", 3.0) if decided else ("ink", 1.6)
    if wall in _FACING:
        drawing.circle(x, y, 4.0, "paper", role, thick / 1.5)
        drawing.text(x, y - 6.0, number, 9.0, "middle", role, halo=True)
        return
    out_x = {BoxWall.LEFT: -1.0, BoxWall.RIGHT: 1.0}.get(wall, 0.0)
    out_y = {BoxWall.TOP: -1.0, BoxWall.BOTTOM: 1.0}.get(wall, 0.0)
    drawing.line([(x, y), (x + out_x * _STUB, y + out_y * _STUB)], role, thick)
    anchor = {-1.0: "end", 0.0: "middle", 1.0: "start"}[out_x]
    drawing.text(
        x + out_x * (_STUB + 3.0),
        y + out_y * (_STUB + 3.0) + {-1.0: 0.0, 0.0: 3.0, 1.0: 7.0}[out_y],
        number,
        9.0,
        anchor,
        role,
    )


def _draw_count(drawing: Drawing, wall: BoxWall, count: int, top: float, tall: float) -> None:
    """Say how many entries a wall has, where they are too close to be numbered."""
    x, y = _spot(wall, (tall if wall in (BoxWall.LEFT, BoxWall.RIGHT) else _RIGHT - _LEFT) / 2, top, tall)
    if wall is BoxWall.LEFT:
        drawing.text(x - _STUB - 3.0, y + 3.0, f"{count}", anchor="end", halo=True)
    elif wall is BoxWall.RIGHT:
        drawing.text(x + _STUB + 3.0, y + 3.0, f"{count}", halo=True)
    elif wall is BoxWall.BOTTOM:
        drawing.text(x, y + _STUB + 11.0, f"{count}", anchor="middle", halo=True)
    else:
        drawing.text(x, y - (_STUB + 3.0 if wall is BoxWall.TOP else 6.0), f"{count}", anchor="middle", halo=True)


def _draw_pulls(drawing: Drawing, found: Sized, spots: dict[int, Spot], tall: float) -> None:
    for one in found.through[:_MOST_PULLS]:
        spliced = found.entered.circuits[one.pull.circuit].spliced
        way = _way(one.pull, found.entered.entries, spots, tall)
        role = "limit" if one.kept is False else "back"
        drawing.line(way, role, 1.1, "3 2" if spliced else "")


def _way(pull: Pull, entries: Sequence[Entry], spots: dict[int, Spot], tall: float) -> list[Spot]:
    """Give the way of a pull on the sheet: straight, around a corner, or in and back out."""
    one, other = spots[pull.one], spots[pull.other]
    wall = entries[pull.one].wall
    if pull.kind is PullKind.STRAIGHT or {wall, entries[pull.other].wall} & _FACING:
        return [one, other]
    if pull.kind is PullKind.ANGLE:
        upright = wall in (BoxWall.LEFT, BoxWall.RIGHT)
        return [one, (other[0], one[1]) if upright else (one[0], other[1]), other]
    into = 0.3 * (tall if wall in (BoxWall.TOP, BoxWall.BOTTOM) else _RIGHT - _LEFT)
    across = {BoxWall.LEFT: into, BoxWall.RIGHT: -into}.get(wall, 0.0)
    down = {BoxWall.TOP: into, BoxWall.BOTTOM: -into}.get(wall, 0.0)
    return [one, (one[0] + across, one[1] + down), (other[0] + across, other[1] + down), other]


def _dimensions(found: Sized, telling: Telling) -> list[tuple[str, bool]]:
    """Say of each dimension the least, what decided it, and what the box has; whether it falls short of it."""
    lines = []
    sides = found.box or (None, None, None)
    for name, need, side in zip(_NAMES, found.least, sides, strict=True):
        has = "" if side is None else f"; it has {_size(side, telling)}"
        if need is None:
            lines.append((f"No rule sets the {name}{has}.", False))
            continue
        short = side is not None and under(side, need.least)
        lines.append((f"Least {name} {_size(need.least, telling)}: {_why(need)}{has}.", short))
    return lines


def _why(need: Requirement) -> str:
    """Say by which rule and which entries a dimension was decided."""
    if not need.entries:
        return _words(need.rule.value)
    numbers = [str(at + 1) for at in need.entries]
    listed = ", ".join(numbers[:_MOST_NAMED]) + (f" and {len(numbers) - _MOST_NAMED} more" if len(numbers) > 6 else "")
    return f"{_words(need.rule.value)}, by {'entry' if len(numbers) == 1 else 'entries'} {listed}"


def _rows(found: Sized) -> dict[tuple[BoxWall, int], list[int]]:
    """Give the entries of every row."""
    rows: dict[tuple[BoxWall, int], list[int]] = {}
    for at, entry in enumerate(found.entered.entries):
        rows.setdefault((entry.wall, entry.row), []).append(at)
    return rows


def _row_words(wall: BoxWall, row: int, members: list[int], found: Sized) -> str:
    """Say what enters in one row."""
    numbers = [str(at + 1) for at in members]
    listed = ", ".join(numbers[:_MOST_NAMED]) + ("" if len(numbers) <= _MOST_NAMED else f" to {numbers[-1]}")
    circuits = found.entered.circuits
    held = [found.entered.entries[at].circuits for at in members]
    names = list(dict.fromkeys(circuits[number].name for circuit in held for number in circuit))
    called = ", ".join(names[:_MOST_NAMED]) + ("" if len(names) <= _MOST_NAMED else f" and {len(names) - 6} more")
    return f"{_WALLS[wall].capitalize()}, row {row}: {listed} ({called})"


def _draw_legend(drawing: Drawing, found: Sized) -> None:
    drawing.y += 2.0
    for (wall, row), members in _rows(found).items():
        drawing.note(_row_words(wall, row, members, found))
    if _decided(found):
        drawing.y += LINE
        drawing.line([(MARGIN, drawing.y - 1.0), (MARGIN + 18.0, drawing.y - 1.0)], "there", 3.0)
        drawing.text(MARGIN + 24.0, drawing.y + 3.0, "entries that decided a dimension")
        drawing.y += 5.0
    if any(circuit.spliced for circuit in found.entered.circuits):
        drawing.note("Broken lines: spliced.", "soft")
    if len(found.through) > _MOST_PULLS:
        drawing.note(f"The first {_MOST_PULLS} of {len(found.through)} pulls are drawn.", "soft")
    drawing.note("Entries are set evenly along their walls, not where they lie.", "soft")
