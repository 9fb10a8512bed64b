"""A run divided at pull points: the operations that do it, and where what is found of it lies in the run given."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from typing import Any, NamedTuple

from ductrun.engineering.pulling import HorizontalBend, VerticalBend
from ductrun.kit.texts import MOST_NAME
from ductrun.kit.wording import without_noise
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.remedies.changes import Edit, applied

_POINTER = re.compile(r"#/stretches/(\d+)(?:/sections/(\d+))?(.*)")


class Cut(NamedTuple):
    """Where a pull point may stand, `at` [m] along the pull: at the end of a stretch, before a section of it, or, with
    `near`, so far along a straight, in the unit of its length; a straight without a section is the length of a stretch.
    """

    stretch: int
    section: int | None
    near: float | None
    at: float

    @property
    def divides(self) -> bool:
        """Whether it divides its stretch."""
        return self.section is not None or self.near is not None


def order_of(cut: Cut) -> tuple[int, float, float]:
    """Give where a cut stands among those of a run."""
    section = float(cut.section or 0) if cut.divides else math.inf
    return cut.stretch, section, cut.near or 0.0


def edits_of(stretch: int, cuts: Sequence[tuple[Cut, dict[str, Any]]], body: Any, run: DuctRun) -> list[Edit]:
    """Give the edits that put pull points into a stretch, or at its end; each cut comes with its pull point."""
    pieces = [body["stretches"][stretch]]
    beyond: list[Edit] = []
    for cut, point in sorted(cuts, key=lambda one: order_of(one[0]), reverse=True):
        graded = _graded(cut, pieces[0], body, run)
        inside = f"/stretches/{stretch}/"
        beyond += [edit for edit in graded if not edit.path.startswith(inside)]
        if not cut.divides:
            pieces[0] = pieces[0] | {"pull_point": point}
            continue
        own = [Edit(f"/{edit.path.removeprefix(inside)}", edit.value) for edit in graded if edit not in beyond]
        first, second = _parts(cut, applied(pieces[0], own))
        pieces[:1] = [first | {"pull_point": point}, second]
    pieces = _named_apart(pieces, stretch, body)
    if len(pieces) == 1:
        return [*beyond, Edit(f"/stretches/{stretch}/pull_point", pieces[0]["pull_point"])]
    added = [Edit(f"/stretches/{stretch + at}", piece, put_in=True) for at, piece in enumerate(pieces) if at]
    return [*beyond, Edit(f"/stretches/{stretch}", pieces[0]), *added]


def _named_apart(pieces: list[dict[str, Any]], stretch: int, body: Any) -> list[dict[str, Any]]:
    """Name the pieces of a named stretch, each as no other stretch of the run is."""
    name = body["stretches"][stretch].get("name")
    if name is None or len(pieces) == 1:
        return pieces
    taken = {one.get("name") for one in body["stretches"]}
    endings = (f", part {number}" for number in range(1, len(pieces) + len(taken) + 1))
    names = (f"{name[: MOST_NAME - len(ending)]}{ending}" for ending in endings)
    free = (one for one in names if one not in taken)
    return [piece | {"name": next(free)} for piece in pieces]


def _parts(cut: Cut, stretch: dict[str, Any]) -> tuple[dict[str, Any], dict[str, Any]]:
    """Divide a stretch in two."""
    if cut.section is None:
        near, far = _lengths(stretch["length"], cut)
        return stretch | {"length": near}, stretch | {"length": far}
    sections, at = stretch["sections"], cut.section
    if cut.near is None:
        return stretch | {"sections": sections[:at]}, stretch | {"sections": sections[at:]}
    near, far = _lengths(sections[at]["length"], cut)
    before, after = sections[at] | {"length": near}, sections[at] | {"length": far}
    return (
        stretch | {"sections": [*sections[:at], before]},
        stretch | {"sections": [after, *sections[at + 1 :]]},
    )


def _lengths(length: dict[str, Any], cut: Cut) -> tuple[dict[str, Any], dict[str, Any]]:
    near = cut.near or 0.0
    return length | {"value": near}, length | {"value": without_noise(length["value"] - near)}


def _graded(cut: Cut, piece: dict[str, Any], body: Any, run: DuctRun) -> list[Edit]:
    """State the grade of what lies beyond a cut of a piece of its stretch: a pull point would let it begin level."""
    if "profile" in body:
        return []
    start, first = (cut.stretch, cut.section or 0) if cut.divides else (cut.stretch + 1, 0)
    for index in range(start, len(body["stretches"])):
        stretch = piece if index == cut.stretch else body["stretches"][index]
        for number, section in enumerate(stretch.get("sections", ())):
            if (index == start and number < first) or section["kind"] == "horizontal_bend":
                continue
            name = "grade" if section["kind"] == "straight" else "entry_grade"
            grade = _grade_of(f"#/stretches/{index}/sections/{number}", run)
            if name in section or not grade:
                return []
            told = {"value": without_noise(math.degrees(grade)), "unit": "deg"}
            return [Edit(f"/stretches/{index}/sections/{number}/{name}", told)]
        if "length" in stretch or "pull_point" in stretch:
            return []
    return []


def _grade_of(place: str, run: DuctRun) -> float:
    """Give the grade with which a section of the run given begins [rad]."""
    for stretch in run.stretches:
        for one in stretch.laid.sections:
            element = one.element
            if one.sheet.place == place and not isinstance(element, HorizontalBend):
                return element.entry_grade if isinstance(element, VerticalBend) else element.grade
    return 0.0


class Divided:
    """Gives for a pointer of the divided run that of the same part in the run given."""

    def __init__(self, cuts: Sequence[Cut]) -> None:
        """Take the cuts of the run."""
        self._cuts = sorted((cut for cut in cuts if cut.divides), key=order_of)

    def __call__(self, pointer: str) -> str:
        """Give the pointer in the run given."""
        found = _POINTER.fullmatch(pointer)
        if found is None:
            return pointer
        stretch, first = self._begins(int(found[1]))
        section = f"/sections/{int(found[2]) + first}" if found[2] is not None else ""
        return f"#/stretches/{stretch}{section}{found[3]}"

    def _begins(self, index: int) -> tuple[int, int]:
        """Give the stretch that a stretch of the divided run was, and the section of it that is its first."""
        before = [cut for place, cut in enumerate(self._cuts) if cut.stretch + place < index]
        stretch = index - len(before)
        inside = [cut for cut in before if cut.stretch == stretch]
        return stretch, inside[-1].section or 0 if inside else 0
