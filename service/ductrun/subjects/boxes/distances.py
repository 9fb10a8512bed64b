"""Where entries lie in their walls, and how far apart the two of a circuit are or can be."""

from __future__ import annotations

import math
from typing import NamedTuple

from ductrun.engineering import box_size as engineering
from ductrun.engineering.box_size import Vector
from ductrun.engineering.rounding import over, under
from ductrun.kit.worksheet import Fault, UnanswerableError
from ductrun.subjects.boxes.choices import BoxWall
from ductrun.subjects.boxes.placing import ACROSS, ALONG, Entered, Entry, Pull
from ductrun.subjects.boxes.requiring import apart_of, sized, taken_by, turns

_FAR_WALLS = (BoxWall.RIGHT, BoxWall.TOP, BoxWall.FRONT)

Sides = tuple[float, float, float]
Reach = tuple[float, float]


class Through(NamedTuple):
    """A pull with the least distance [m] between the near edges of its entries, None where none is asked; that distance
    by the positions given [m], None where they do not tell it; whether it is kept, None where that is open; and the
    most that it can be in the box [m] where that is too little wherever they enter.
    """

    pull: Pull
    apart: float | None
    gap: float | None
    kept: bool | None
    most: float | None = None


def through_box(entered: Entered, pull: Pull, sides: Sides | None) -> Through:
    """Hold the distance of the two entries of a pull against the rule, in a box of these sides [m] if there is one."""
    if not (sized(entered, pull) and turns(entered, pull)):
        return Through(pull, None, None, True)
    apart = apart_of(entered, pull)
    one, other = entered.entries[pull.one], entered.entries[pull.other]
    gap, whole = _gap(one, other, sides)
    if not under(gap, apart):
        return Through(pull, apart, gap if whole else None, True)
    if whole:
        return Through(pull, apart, gap, False)
    most = None if sides is None else most_apart(one, other, sides)
    near = most is not None and under(most, apart)
    return Through(pull, apart, None, False if near else None, most if near else None)


def turning_pulls(entered: Entered) -> list[Pull]:
    """Give the pulls whose entries must lie apart, of all between entries at the same places the one that asks most."""
    found: dict[tuple[object, ...], tuple[float, Pull]] = {}
    for pull in entered.pulls:
        if sized(entered, pull) and turns(entered, pull):
            one, other = entered.entries[pull.one], entered.entries[pull.other]
            key: tuple[object, ...] = (one.wall, one.position, one.offset, one.outside)
            key += (other.wall, other.position, other.offset, other.outside)
            apart = apart_of(entered, pull)
            if key not in found or apart > found[key][0]:
                found[key] = apart, pull
    return [pull for _, pull in found.values()]


def most_apart(one: Entry, other: Entry, sides: Sides) -> float:
    """Give the most [m] that the near edges of two entries can be apart in a box, wherever they enter their walls."""
    apart = []
    for axis in range(3):
        at, to = _range(one, axis, sides), _range(other, axis, sides)
        apart.append(max(abs(to[0] - at[1]), abs(to[1] - at[0])))
    if one.wall is other.wall:  # wherever the wall stands
        apart[one.axis] = 0.0
    radii = ((one.outside or 0.0) / 2, (other.outside or 0.0) / 2)
    return engineering.gap_between(Vector(0.0, 0.0, 0.0), Vector(*apart), (one.axis, other.axis), radii)


def _range(entry: Entry, axis: int, sides: Sides) -> Reach:
    """Give the least and the most of the center of an entry [m] along an axis."""
    if axis == entry.axis:
        stands = sides[axis] if entry.wall in _FAR_WALLS else 0.0
        return stands, stands
    given = entry.position if axis == ALONG[entry.axis] else entry.offset
    if given is not None:
        return given, given
    radius = (entry.outside or 0.0) / 2
    return min(radius, sides[axis] / 2), max(sides[axis] - radius, sides[axis] / 2)


def beyond(entry: Entry, sides: Sides) -> bool:
    """Say whether an entry reaches beyond its wall in a box of these sides [m]."""
    radius = (entry.outside or 0.0) / 2
    for place, axis in ((entry.position, ALONG[entry.axis]), (entry.offset, ACROSS[entry.axis])):
        if place is not None and over(place + radius, sides[axis]):
            return True
    return False


def _gap(one: Entry, other: Entry, sides: Sides | None) -> tuple[float, bool]:
    """Give the distance [m] of two entries, and whether it is known; a place that is not counts as the nearest."""
    at, to = _center(one, sides), _center(other, sides)
    if one.wall is other.wall:  # wherever the wall stands
        at[one.axis] = to[one.axis] = 0.0
    if one.outside is None or other.outside is None:
        return 0.0, False
    whole = None not in at and None not in to
    places = [(0.0, 0.0) if a is None or b is None else (a, b) for a, b in zip(at, to, strict=True)]
    near, far = (Vector(*[pair[which] for pair in places]) for which in (0, 1))
    gap = engineering.gap_between(near, far, (one.axis, other.axis), (one.outside / 2, other.outside / 2))
    return gap, whole


def _center(entry: Entry, sides: Sides | None) -> list[float | None]:
    """Give the center of an entry [m], from the left, the bottom and the back; None where that is not known."""
    center: list[float | None] = [None, None, None]
    center[ALONG[entry.axis]], center[ACROSS[entry.axis]] = entry.position, entry.offset
    center[entry.axis] = 0.0
    if entry.wall in _FAR_WALLS:
        center[entry.axis] = None if sides is None else sides[entry.axis]
    return center


def check_places(entered: Entered, sides: Sides | None) -> None:
    """Refuse an entry that is larger than its wall or reaches beyond it, and raceways that lie over each other."""
    faults = []
    for at, entry in enumerate(entered.entries):
        takes = taken_by(entered, at)
        room = (None, None) if sides is None else (sides[ALONG[entry.axis]], sides[ACROSS[entry.axis]])
        if sides is not None and any(over(takes, one) for one in room if one is not None):
            faults.append(_too_large(entry, takes, min(one for one in room if one is not None)))
            continue
        for member, place, most in (("position", entry.position, room[0]), ("offset", entry.offset, room[1])):
            if place is not None and (fault := _beyond(entry, member, place, takes / 2, most)):
                faults.append(fault)
    if faults := faults or _overlapping(entered):
        raise UnanswerableError(*faults)


def _overlapping(entered: Entered) -> list[Fault]:
    """Find every entry that lies over one before it in its wall; those of one row lie in one line."""
    faults = []
    for at, entry in enumerate(entered.entries):
        for before in range(at):
            other = entered.entries[before]
            if other.wall is not entry.wall or entry.position is None or other.position is None:
                continue
            if entry.offset is not None and other.offset is not None:
                aside = entry.offset - other.offset
            elif entry.row == other.row:
                aside = 0.0
            else:
                continue
            room = (taken_by(entered, at) + taken_by(entered, before)) / 2
            if under(math.hypot(entry.position - other.position, aside), room):
                faults.append(_over_another(entry, before))
                break
    return faults


def _over_another(entry: Entry, before: int) -> Fault:
    return entry.sheet.fault(
        "position",
        "overlaps_another_entry",
        f"This entry lies over entry {before + 1} in the same wall: set their centers half of both diameters apart.",
    )


def _too_large(entry: Entry, takes: float, room: float) -> Fault:
    size = entry.sheet.tell.size
    cable = entry.outside is None
    return entry.sheet.fault(
        "wall" if cable else "conduit",
        "larger_than_its_wall",
        f"{'A cable' if cable else 'This raceway'} is larger than the wall it enters: enter by another wall, or take a "
        "larger box.",
        minimum=None,
        maximum=size(min(takes, room)),
    )


def _beyond(entry: Entry, member: str, place: float, radius: float, most: float | None) -> Fault | None:
    low, high = under(place, radius), most is not None and over(place, most - radius)
    if not (low or high):
        return None
    size = entry.sheet.tell.size
    return entry.sheet.fault(
        f"{member}/value",
        "outside_its_wall",
        "The raceway reaches beyond its wall: its center lies half its diameter from every edge at least.",
        minimum=size(radius),
        maximum=None if most is None else size(most - radius),
    )
