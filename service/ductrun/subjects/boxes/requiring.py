"""What a box must measure: every requirement, by the rule it comes of and the entries that ask for it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from ductrun.engineering import box_size as engineering
from ductrun.kit.backing import WORKED_OUT, Backing
from ductrun.kit.choices import Standing
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.boxes.box_cables import SPACES, BoxCable
from ductrun.subjects.boxes.choices import BoxRule, BoxWall, PullKind
from ductrun.subjects.boxes.placing import ACROSS, ALONG, AXES, OPPOSITE, Circuit, Entered, Entry, Pull
from ductrun.subjects.parts.choices import CableShielding
from ductrun.tables import TABLES
from ductrun.tables.box_rows import BoxMultiple
from ductrun.units import Length, LengthUnit

_MULTIPLES: dict[str, BoxMultiple] = {row.key: row for row in TABLES["box_multiples"]}
_RADIUS_GIVEN = Backing("the radius given", Standing.CALLER)
_BY_SIZE = _MULTIPLES["trade_size"]


Term = tuple[float, float]


class Requirement(NamedTuple):
    """The least of a dimension [m], by the index of its axis: its rule and what backs it, and the entries that decided
    it by their index, none where no entry did; `terms` are what it adds up of [m], each with
    how many times it is taken.
    """

    axis: int
    least: float
    rule: BoxRule
    backing: Backing
    entries: tuple[int, ...]
    terms: tuple[Term, ...] = ()


def in_inches(least: float) -> Length:
    """Give a length [m] of a box in inches, as multiples of trade sizes come out, without what conversion leaves."""
    return Length(without_noise(LengthUnit.INCH.from_si(least)), LengthUnit.INCH)


class _Rules(NamedTuple):
    """Where the rules of a box stand in the edition of an answer."""

    straight: Backing
    angle: Backing
    cover: Backing
    cover_rule: BoxRule


def _rules(by_cable: bool, sheet: Worksheet) -> _Rules:
    if by_cable:
        straight, angle = sheet.rule("box_above_straight"), sheet.rule("box_above_angle")
        return _Rules(straight, angle, sheet.rule("cable_radius"), BoxRule.BENDING_RADIUS)
    straight, angle = sheet.rule("box_straight"), sheet.rule("box_angle")
    return _Rules(straight, angle, sheet.rule("box_bending_space"), BoxRule.BENDING_SPACE)


def requirements_of(entered: Entered, removable: BoxWall, sheet: Worksheet) -> list[Requirement]:
    """Give everything that the entries of a box ask of it."""
    rules = _rules(entered.by_cable, sheet)
    asked = [pull for pull in entered.pulls if sized(entered, pull)]
    found = list(_straight(entered, asked, rules))
    found += _turning(entered, asked, removable, rules)
    found += _u_pulls(entered, asked, rules)
    if not entered.by_cable:
        found += _by_radius(entered)
    return found + list(_room(entered))


def sized(entered: Entered, pull: Pull) -> bool:
    """Say whether a pull sizes the box: not one of small conductors, which take volume instead."""
    return entered.by_cable or entered.circuits[pull.circuit].large


def turns(entered: Entered, pull: Pull) -> bool:
    """Say whether conductors turn or are spliced on their way, so that they need the distance to the opposite wall."""
    return pull.kind is not PullKind.STRAIGHT or entered.circuits[pull.circuit].spliced


def multiple_of(cable: BoxCable) -> BoxMultiple:
    """Give the multiples of the diameter of a cable."""
    return _MULTIPLES["nonshielded" if cable.shielding is CableShielding.NONSHIELDED else "shielded"]


def _straight(entered: Entered, pulls: Sequence[Pull], rules: _Rules) -> Iterator[Requirement]:
    for pull in pulls:
        if pull.kind is not PullKind.STRAIGHT:
            continue
        one, other = entered.entries[pull.one], entered.entries[pull.other]
        if entered.by_cable:
            cables = entered.circuits[pull.circuit].cables or []
            most = max(cables, key=lambda cable: multiple_of(cable).straight * cable.diameter)
            least = engineering.straight_length(multiple_of(most).straight, most.diameter)
            terms, both = ((multiple_of(most).straight, most.diameter),), (pull.one, pull.other)
            yield Requirement(one.axis, least, BoxRule.STRAIGHT_PULL, rules.straight, both, terms)
        elif not entered.circuits[pull.circuit].spliced:
            largest = max(pull.one, pull.other, key=lambda at: size_of(entered.entries[at]))
            decided = (largest, pull.other if largest == pull.one else pull.one)
            size = max(size_of(one), size_of(other))
            least = engineering.straight_length(_BY_SIZE.straight, size)
            terms = ((_BY_SIZE.straight, size),)
            yield Requirement(one.axis, least, BoxRule.STRAIGHT_PULL, rules.straight, decided, terms)


def size_of(entry: Entry) -> float:
    """Give the trade size of an entry [m]."""
    return entry.size or 0.0


def _turning(entered: Entered, pulls: Sequence[Pull], removable: BoxWall, rules: _Rules) -> Iterator[Requirement]:
    """Give the distance to the opposite wall of every row, or with cables of every wall, from which conductors turn."""
    turning = [at for pull in pulls if turns(entered, pull) for at in (pull.one, pull.other)]
    groups: dict[tuple[BoxWall, int], list[int]] = {}
    for at, entry in enumerate(entered.entries):
        groups.setdefault((entry.wall, 0 if entered.by_cable else entry.row), []).append(at)
    for (wall, _), members in groups.items():
        if not set(members) & set(turning):
            continue
        to_cover = OPPOSITE[wall] is removable
        least, decided, spaced = _to_opposite_wall(entered, members, to_cover)
        rule = (rules.cover_rule, rules.cover) if spaced else (BoxRule.OPPOSITE_WALL, rules.angle)
        terms = () if spaced else _terms_of_wall(entered, members, decided)
        yield Requirement(AXES[wall], least, *rule, (decided,), terms)


def in_words(terms: Sequence[Term]) -> str:
    """Write terms as a sum in inches."""
    inches = [(times, f"{LengthUnit.INCH.from_si(length):.6g} in") for times, length in terms]
    return " + ".join(length if times == 1 else f"{times:g} x {length}" for times, length in inches)


def _terms_of_wall(entered: Entered, members: Sequence[int], decided: int) -> tuple[Term, ...]:
    """Give the multiple of the largest, and the sum of all others."""
    if entered.by_cable:
        through = [cable for at in members for cable in cables_of(entered, at)]
        most = max(through, key=lambda cable: (multiple_of(cable).angle - 1) * cable.diameter)
        others = sum(cable.cable_count * cable.diameter for cable in through) - most.diameter
        return (multiple_of(most).angle, most.diameter), (1, others)
    largest = size_of(entered.entries[decided])
    return (_BY_SIZE.angle, largest), (1, sum(size_of(entered.entries[at]) for at in members) - largest)


def _to_opposite_wall(entered: Entered, members: Sequence[int], to_cover: bool) -> tuple[float, int, bool]:
    """Give the least distance [m], the entry that decided it, and whether that is the room to bend at a cover."""
    if entered.by_cable:
        cables = [(at, cable) for at in members for cable in cables_of(entered, at)]
        if to_cover:
            at, widest = max(cables, key=lambda one: one[1].radius or 0.0)
            return widest.radius or 0.0, at, True
        sizes = [(cable.diameter, multiple_of(cable).angle) for _, cable in cables for _ in range(cable.cable_count)]
        at = max(cables, key=lambda one: (multiple_of(one[1]).angle - 1) * one[1].diameter)[0]
        return engineering.opposite_distance(sizes), at, False
    largest = max(members, key=lambda at: size_of(entered.entries[at]))
    space = _bending_space(entered, members) if to_cover else None
    if space is not None:
        return *space, True
    sizes = [(size_of(entered.entries[at]), _BY_SIZE.angle) for at in members]
    return engineering.opposite_distance(sizes), largest, False


def cables_of(entered: Entered, at: int) -> Iterator[BoxCable]:
    """Give the cables of all circuits in an entry."""
    for circuit in entered.entries[at].circuits:
        yield from entered.circuits[circuit].cables or ()


def _bending_space(entered: Entered, members: Sequence[int]) -> tuple[float, int] | None:
    """Give the room [m] that the largest conductor of a row needs to bend, and its entry; None where one is unknown."""
    spaces = []
    for at in members:
        circuits: list[Circuit] = [entered.circuits[circuit] for circuit in entered.entries[at].circuits]
        for circuit in circuits:
            for cable in circuit.cables or (None,):
                if cable is None or cable.size is None:
                    return None
                if cable.size in SPACES:
                    spaces.append((SPACES[cable.size].si, at))
    return max(spaces, key=lambda one: one[0]) if spaces else None


def apart_of(entered: Entered, pull: Pull) -> float:
    """Give the least distance [m] between the near edges of two entries of a circuit that turns."""
    if entered.by_cable:
        cables = entered.circuits[pull.circuit].cables or []
        return max(engineering.entry_distance(multiple_of(one).apart, one.diameter) for one in cables)
    larger = max(size_of(entered.entries[pull.one]), size_of(entered.entries[pull.other]))
    return engineering.entry_distance(_BY_SIZE.apart, larger)


def _u_pulls(entered: Entered, pulls: Sequence[Pull], rules: _Rules) -> Iterator[Requirement]:
    for pull in pulls:
        one, other = (entered.entries[at] for at in (pull.one, pull.other))
        if pull.kind is PullKind.U_PULL and one.row == other.row:  # in two rows they may be apart across them
            apart = apart_of(entered, pull)
            least = engineering.wall_of_u_pull(one.outside or 0.0, apart, other.outside or 0.0)
            terms = (1, one.outside or 0.0), (1, apart), (1, other.outside or 0.0)
            both = (pull.one, pull.other)
            yield Requirement(ALONG[one.axis], least, BoxRule.ENTRIES_APART, rules.angle, both, terms)


def _by_radius(entered: Entered) -> Iterator[Requirement]:
    """Give the room in which cables turn whose maker's radius is known, from each of their entries."""
    for pull in entered.pulls:
        radii = [cable for cable in entered.circuits[pull.circuit].cables or () if cable.radius is not None]
        if pull.kind is PullKind.STRAIGHT or not radii:
            continue
        least = max(engineering.turning_room(cable.radius or 0.0, cable.diameter) for cable in radii)
        for at in (pull.one, pull.other):
            axis = entered.entries[at].axis
            yield Requirement(axis, least, BoxRule.BENDING_RADIUS, _RADIUS_GIVEN, (at,))


def taken_by(entered: Entered, at: int) -> float:
    """Give what an entry takes of its wall [m]: its raceway, or without one the thickest of its cables."""
    outside = entered.entries[at].outside
    return max([cable.diameter for cable in cables_of(entered, at)], default=0.0) if outside is None else outside


def _room(entered: Entered) -> Iterator[Requirement]:
    """Give what the entries of every wall take of it: along the fullest row, and across rows."""
    walls: dict[BoxWall, dict[int, list[int]]] = {}
    takes = [taken_by(entered, at) for at in range(len(entered.entries))]
    for at, entry in enumerate(entered.entries):
        walls.setdefault(entry.wall, {}).setdefault(entry.row, []).append(at)
    for wall, rows in walls.items():
        taken = {row: sum(takes[at] for at in members) for row, members in rows.items()}
        fullest = max(taken, key=lambda row: taken[row])
        widest = [max(members, key=lambda at: takes[at]) for members in rows.values()]
        deep = sum(takes[at] for at in widest)
        axis, rule = AXES[wall], BoxRule.ROOM_FOR_ENTRIES
        yield Requirement(ALONG[axis], taken[fullest], rule, WORKED_OUT, tuple(rows[fullest]))
        yield Requirement(ACROSS[axis], deep, rule, WORKED_OUT, tuple(widest))
