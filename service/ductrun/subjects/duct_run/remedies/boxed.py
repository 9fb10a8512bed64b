"""A larger box, handhole or manhole where one is too small."""

from __future__ import annotations

from typing import Any

from msgspec import UNSET

from ductrun.kit.answers import Finding
from ductrun.subjects.boxes.box_findings import DIMENSIONS
from ductrun.subjects.duct_run.remedies.case import Case, at_least, inches, length_of, place_of, si, written
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, member
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.subjects.duct_run.stops import Stop
from ductrun.units import Length

_MORE = (2, 4, 6, 9, 12)  # inches that are tried beyond the least, for room that no one side decides


def larger_box(found: Finding, case: Case) -> list[Change]:
    """Take a box whose every side is the least that is asked for, up to the next inch, then larger ones."""
    stop = next((one for one in case.run.stops if place_of(found).startswith(f"{one.sheet.place}/box")), None)
    if stop is None:
        stop = next((one for one in case.run.stops if one.sheet.place == place_of(found)), None)
    if stop is None or member(case.body, f"{stop.sheet.place[1:]}/box") is None:
        return []
    least = _least(stop, case)
    mores = (0, *_MORE) if found.code == "box_too_small" else _MORE
    return [_box(stop, {side: value + inches(more) for side, value in least.items()}, case) for more in mores]


def _least(stop: Stop, case: Case) -> dict[str, float]:
    """Give the sides of the box at a stop, each at least what is asked of it [m]."""
    path = f"{stop.sheet.place}/box"
    sides = {str(side): length_of(member(case.body, f"{path[1:]}/{side}")) for side in DIMENSIONS}
    for one in case.violations:
        side = place_of(one).removeprefix(f"{path}/")
        if one.code == "box_too_small" and side in sides and one.limit is not UNSET:
            sides[side] = max(sides[side], si(one.limit, Length))
    return sides


def _box(stop: Stop, sides: dict[str, float], case: Case) -> Change:
    path = f"{stop.sheet.place[1:]}/box"
    box: dict[str, Any] = {}
    for side, value in sides.items():
        given = member(case.body, f"{path}/{side}")
        box[side] = given if value <= length_of(given) else at_least(value, given["unit"], Length)
    kind = stop.given.kind.replace("_", " ")
    long, wide, deep = (written(one) for one in box.values())
    message = f"Take a {kind} {long} long, {wide} wide and {deep} deep at {stop.name}."
    return Change(ChangeKind.BOX, message, [Edit(path, box)])
