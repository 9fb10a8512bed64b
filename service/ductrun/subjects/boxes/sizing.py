"""A box for what enters it: its least dimensions, whether the one at hand has them, and the smallest of a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.boxes.box_findings import find_box, find_distances, find_least_too_near, find_sizes, find_use
from ductrun.subjects.boxes.boxing import REMOVABLE_COVER, STRUCTURE, Boxing, BoxSize
from ductrun.subjects.boxes.choices import BoxWall, Structure
from ductrun.subjects.boxes.distances import Sides, Through, beyond, check_places, through_box, turning_pulls
from ductrun.subjects.boxes.filling import SmallConductors, volume_of
from ductrun.subjects.boxes.placing import Entered
from ductrun.subjects.boxes.racks import Racked, check_handhole, rack, structure_needs
from ductrun.subjects.boxes.requiring import Requirement, in_inches, in_words, requirements_of
from ductrun.tables import TABLES
from ductrun.units import Voltage

_THRESHOLDS = {row.edition: Voltage.parse(row.threshold_v, "V").si for row in TABLES["box_voltage_thresholds"]}


class Candidate(NamedTuple):
    """A box that can be had: its place in the request, its dimensions as given, whether it holds the entries, None
    where that hangs on positions that are not given, and whether it does so with length and width exchanged.
    """

    pointer: str
    size: BoxSize
    holds: bool | None
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
    check_places(entered, sides)
    racked = None if given.racking is None else rack(given.racking, entered, sheet.within("racking"))
    requirements = requirements_of(entered, removable, sheet)
    requirements += structure_needs(structure, racked)
    least = (_deciding(requirements, 0), _deciding(requirements, 1), _deciding(requirements, 2))
    small = volume_of(entered, sheet)
    through = [through_box(entered, pull, sides) for pull in entered.pulls]
    turning = turning_pulls(entered) if given.box_sizes else []
    candidates = [
        _candidate(size, least, small, entered._replace(pulls=turning), sheet.pointer(f"box_sizes/{index}"))
        for index, size in enumerate(given.box_sizes or ())
    ]
    smallest = _smallest(candidates)
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
    unknown = smallest is not None and smallest.holds is None
    find_distances(through, entered, in_a_box=sides is not None or unknown)
    if sides is None and not candidates:
        find_least_too_near(entered, _leasts(least))
    if candidates and smallest is None:
        find_sizes(least, sheet, judged=sides is None)
    elif smallest is not None and sides is None:
        sheet.judge(smallest.holds)
    if structure is Structure.HANDHOLE:
        check_handhole(entered, sides or _leasts(least), sheet)
    find_use(structure, sides or _leasts(least), entered.by_cable, sheet)
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
    size: BoxSize, least: Sequence[Requirement | None], small: SmallConductors | None, entered: Entered, pointer: str
) -> Candidate:
    sides = _sides(size)
    if small is not None and under(_volume(sides), small.volume):
        return Candidate(pointer, size, False, False)
    upright = _holds(sides, least, entered)
    if upright is not False:
        return Candidate(pointer, size, upright, False)
    lying = _holds((sides[1], sides[0], sides[2]), least, entered)
    return Candidate(pointer, size, lying, lying is not False)


def _holds(sides: Sides, least: Sequence[Requirement | None], entered: Entered) -> bool | None:
    """Say whether a box holds its entries as it stands; None where that hangs on positions that are not given."""
    if any(under(side, need) for side, need in zip(sides, _leasts(least), strict=True)):
        return False
    if any(beyond(entry, sides) for entry in entered.entries):
        return False
    kept = True
    for pull in entered.pulls:
        held = through_box(entered, pull, sides).kept
        if held is False:
            return False
        kept = kept and held is True
    return kept or None


def _smallest(candidates: Sequence[Candidate]) -> Candidate | None:
    """Give the least by volume of the boxes that hold the entries; of those that may where none is known to."""
    for held in (True, None):
        holding = [one for one in candidates if one.holds is held]
        if holding:
            return min(holding, key=lambda one: _volume(_sides(one.size)))
    return None


def _show(requirements: Sequence[Requirement], entered: Entered, sheet: Worksheet) -> None:
    for one in requirements:
        symbol = "LWD"[one.axis]
        where = ", ".join(f"{entered.entries[at].wall.value} row {entered.entries[at].row}" for at in one.entries)
        rule = one.rule.value.replace("_", " ")
        where = where or (one.backing.citation if one.backing is not WORKED_OUT else rule)
        substituted = f"{where}: {in_words(one.terms)}" if one.terms else where
        sheet.show(symbol, rule, substituted, sheet.tell.given(in_inches(one.least)))
