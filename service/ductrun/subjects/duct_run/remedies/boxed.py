"""A larger box, handhole or manhole where one is too small."""

from __future__ import annotations

from math import prod
from typing import Any

from ductrun.kit.answers import Finding
from ductrun.subjects.boxes.box_findings import DIMENSIONS
from ductrun.subjects.boxes.sizing import Sized
from ductrun.subjects.duct_run.remedies.case import Case, at_least, inches, length_of, place_of, written
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, member
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.units import Length

_MORE = (0, 2, 4, 6, 9, 12)  # inches that are tried beyond the least, for room that no one side decides

_Size = dict[str, Any]  # a box as a request has it


def larger_box(found: Finding, case: Case) -> list[Change]:
    """Take one of the boxes that can be had which holds what enters it, the smallest first; else a box whose every side
    is the least that is asked for, up to the next inch, then larger ones.
    """
    at = _stop_at(found, case)
    sized = None if at is None else case.run.boxes[at]
    if at is None or sized is None:
        return []
    path = f"{case.run.stops[at].sheet.place[1:]}/box"
    given: _Size | None = member(case.body, path)
    if given is None:
        return []
    sizes = _that_hold(sized, case) + [_least(sized, given, more) for more in _MORE]
    return [_change(at, size, Edit(path, size), case) for size in sizes if size != given]


def one_more_size(found: Finding, case: Case) -> list[Change]:
    """Have one more box to choose from, which holds what enters it."""
    at = _stop_at(found, case)
    sized = None if at is None else case.run.boxes[at]
    if at is None or sized is None:
        return []
    path = f"{case.run.stops[at].sheet.place[1:]}/box_sizes"
    given: list[_Size] = member(case.body, path)
    shallow = {str(side): min((one[side] for one in given), key=length_of) for side in DIMENSIONS}
    sizes = [_least(sized, shallow, more) for more in _MORE]
    return [_change(at, size, Edit(f"{path}/{len(given)}", size, put_in=True), case) for size in sizes]


def _stop_at(found: Finding, case: Case) -> int | None:
    places = [one.sheet.place for one in case.run.stops]
    place = place_of(found)
    return next((at for at, one in enumerate(places) if place == one or place.startswith(f"{one}/")), None)


def _that_hold(sized: Sized, case: Case) -> list[_Size]:
    """Give the boxes that can be had and hold what enters, the smallest first, each as it must stand."""
    sizes = []
    for one in sized.candidates:
        size = member(case.body, one.pointer[1:])
        if one.holds:
            sizes.append(size | {"length": size["width"], "width": size["length"]} if one.turned else size)
    return sorted(sizes, key=lambda size: prod(length_of(size[side]) for side in DIMENSIONS))


def _least(sized: Sized, given: _Size, more: float) -> _Size:
    """Give a box as large as one given and as what is asked of it, and larger by so many inches than that."""
    size = {}
    for side, need in zip(DIMENSIONS, sized.least, strict=True):
        has = length_of(given[side])
        least = max(has, 0.0 if need is None else need.least) + inches(more)
        size[str(side)] = given[side] if least <= has else at_least(least, given[side]["unit"], Length)
    return size


def _change(at: int, size: _Size, edit: Edit, case: Case) -> Change:
    stop = case.run.stops[at]
    long, wide, deep = (written(size[side]) for side in DIMENSIONS)
    kind = stop.given.kind.replace("_", " ")
    message = f"Take a {kind} {long} long, {wide} wide and {deep} deep at {stop.name}."
    return Change(ChangeKind.BOX, message, [edit])
