"""A box for what enters it: its least dimensions, whether the one at hand has them, and the smallest of a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import box_size as engineering
from ductrun.engineering.box_size import Vector
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.boxes.box_findings import find_box, find_distances, find_sizes, find_use
from ductrun.subjects.boxes.boxing import REMOVABLE_COVER, STRUCTURE, Boxing, BoxSize
from ductrun.subjects.boxes.choices import BoxWall, Structure
from ductrun.subjects.boxes.filling import SmallConductors, volume_of
from ductrun.subjects.boxes.placing import ACROSS, ALONG, Entered, Entry, Pull
from ductrun.subjects.boxes.racks import Racked, check_handhole, rack, structure_needs
from ductrun.subjects.boxes.requiring import Requirement, apart_of, in_inches, requirements_of, sized, turns
from ductrun.tables import TABLES
from ductrun.units import Voltage

_THRESHOLDS = {row.edition: Voltage.parse(row.threshold_v, "V").si for row in TABLES["box_voltage_thresholds"]}
_FAR_WALLS = (BoxWall.RIGHT, BoxWall.TOP, BoxWall.FRONT)

Sides = tuple[float, float, float]


class Through(NamedTuple):
    """A pull with the least distance [m] between the near edges of its entries, None where none is asked; that distance
    by the positions given [m], None where they do not tell it; and whether it is kept, None where that is open.
    """

    pull: Pull
    apart: float | None
    gap: float | None
    kept: bool | None


class Candidate(NamedTuple):
    """A box that can be had: its place in the request, its dimensions as given, whether it holds the entries, and
    whether it does so with length and width exchanged.
    """

    pointer: str
    size: BoxSize
    holds: bool
    turned: bool


class Sized(NamedTuple):
    """A box for what enters it: everything asked of it, the requirement that decided each dimension, the pulls through
    it, and what was found of racks, small conductors and the boxes that can be had. Pointers are those of the entries.
    """

    structure: Structure
    removable: BoxWall
    entered: Entered
    requirements: list[Requirement]
    least: tuple[Requirement | None, Requirement | None, Requirement | None]
    through: list[Through]
    small: SmallConductors | None
    racked: Racked | None
    box: Sides | None
    candidates: list[Candidate]
    smallest: Candidate | None
    pointers: list[str]


def sized_by_cable(voltage: float, sheet: Worksheet) -> bool:
    """Say whether cables and not raceways size a box at a voltage [V] in the edition of the answer."""
    return over(voltage, _THRESHOLDS[sheet.edition])


def cover_of(given: Boxing, sheet: Worksheet) -> BoxWall:
    """Settle the side of a box that comes off."""
    return sheet.settle("removable_cover", given.removable_cover, REMOVABLE_COVER)


def size_box(given: Boxing, entered: Entered, removable: BoxWall, sheet: Worksheet) -> Sized:
    """Size a box for what enters it, and hold the boxes at hand against that."""
    structure = sheet.settle("structure", given.structure, STRUCTURE)
    sides = None if given.box is None else _sides(given.box)
    _check_places(entered.entries, sides)
    racked = None if given.racking is None else rack(given.racking, entered, sheet.within("racking"))
    requirements = requirements_of(entered, removable, sheet)
    requirements += structure_needs(structure, racked)
    least = (_deciding(requirements, 0), _deciding(requirements, 1), _deciding(requirements, 2))
    small = volume_of(entered, sheet)
    through = [_through(entered, pull, sides) for pull in entered.pulls]
    candidates = [
        _candidate(size, least, small, sheet.pointer(f"box_sizes/{index}"))
        for index, size in enumerate(given.box_sizes or ())
    ]
    holding = [one for one in candidates if one.holds]
    smallest = min(holding, key=lambda one: _volume(_sides(one.size)), default=None)
    found = Sized(
        structure=structure,
        removable=removable,
        entered=entered,
        requirements=requirements,
        least=least,
        through=through,
        small=small,
        racked=racked,
        box=sides,
        candidates=candidates,
        smallest=smallest,
        pointers=[entry.sheet.place for entry in entered.entries],
    )
    if sides is not None:
        find_box(sides, least, small, entered.entries, sheet.within("box"))
    find_distances([(one.pull, one.apart, one.gap, one.kept) for one in through], entered, sides is not None)
    if candidates and smallest is None:
        find_sizes(least, sheet)
    if structure is Structure.HANDHOLE:
        check_handhole(entered, least, sheet)
    find_use(structure, sides or _leasts(least), sheet)
    if sheet.working is not None:
        _show(requirements, entered, sheet)
    return found


def _sides(size: BoxSize) -> Sides:
    return size.length.si, size.width.si, size.depth.si


def _volume(sides: Sides) -> float:
    return sides[0] * sides[1] * sides[2]


def _leasts(least: Sequence[Requirement | None]) -> Sides:
    one, two, three = (0.0 if need is None else need.least for need in least)
    return one, two, three


def _deciding(requirements: Sequence[Requirement], axis: int) -> Requirement | None:
    """Give the largest requirement across an axis, of several alike the first."""
    found = None
    for one in requirements:
        if one.axis == axis and (found is None or over(one.least, found.least)):
            found = one
    return found


def _candidate(
    size: BoxSize, least: Sequence[Requirement | None], small: SmallConductors | None, pointer: str
) -> Candidate:
    sides, needs = _sides(size), _leasts(least)
    turned = (sides[1], sides[0], sides[2])
    upright, lying = (
        not any(under(side, need) for side, need in zip(way, needs, strict=True)) for way in (sides, turned)
    )
    holds = (upright or lying) and (small is None or not under(_volume(sides), small.volume))
    return Candidate(pointer, size, holds, holds and not upright)


def _through(entered: Entered, pull: Pull, sides: Sides | None) -> Through:
    if not (sized(entered, pull) and turns(entered, pull)):
        return Through(pull, None, None, None)
    apart = apart_of(entered, pull)
    gap, whole = _gap(entered.entries[pull.one], entered.entries[pull.other], sides)
    kept = True if not under(gap, apart) else False if whole else None
    return Through(pull, apart, gap if whole else None, kept)


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


def _check_places(entries: Sequence[Entry], sides: Sides | None) -> None:
    """Refuse an entry that is larger than its wall, or that reaches beyond it."""
    faults = []
    for entry in entries:
        if entry.outside is None:
            continue
        room = (None, None) if sides is None else (sides[ALONG[entry.axis]], sides[ACROSS[entry.axis]])
        if sides is not None and any(over(entry.outside, one) for one in room if one is not None):
            faults.append(_too_large(entry, entry.outside, min(one for one in room if one is not None)))
            continue
        for member, place, most in (("position", entry.position, room[0]), ("offset", entry.offset, room[1])):
            if place is not None and (fault := _beyond(entry, member, place, entry.outside / 2, most)):
                faults.append(fault)
    if faults:
        raise UnanswerableError(*faults)


def _too_large(entry: Entry, outside: float, room: float) -> Fault:
    size = entry.sheet.tell.size
    return entry.sheet.fault(
        "conduit",
        "larger_than_its_wall",
        "This raceway is larger than the wall it enters: enter by another wall, or take a larger box.",
        minimum=None,
        maximum=size(min(outside, room)),
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


def _show(requirements: Sequence[Requirement], entered: Entered, sheet: Worksheet) -> None:
    for one in requirements:
        symbol = "LWD"[one.axis]
        where = ", ".join(f"{entered.entries[at].wall.value} row {entered.entries[at].row}" for at in one.entries)
        rule = one.rule.value.replace("_", " ")
        substituted = where or (one.backing.citation if one.backing is not WORKED_OUT else rule)
        sheet.show(symbol, rule, substituted, sheet.tell.given(in_inches(one.least)))
