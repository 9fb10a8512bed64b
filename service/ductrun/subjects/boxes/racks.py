"""The wall on which cable is racked, and the published sizes of manholes and handholes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from ductrun.engineering import box_size as engineering
from ductrun.engineering.rounding import over
from ductrun.kit.backing import WORKED_OUT, backing_of, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.boxes.boxing import SPLICE_WALL, STRAIGHT_OUT, Racking
from ductrun.subjects.boxes.choices import BoxRule, Structure
from ductrun.subjects.boxes.placing import Entered
from ductrun.subjects.boxes.requiring import Requirement
from ductrun.tables import TABLES
from ductrun.units import Length

RACKING_MULTIPLE = number("box.racking_multiple")
_GEOMETRY = published("racking-geometry")
[_MANHOLE] = [row for row in TABLES["structure_sizes"] if row.structure == "manhole"]
[_HANDHOLE] = [row for row in TABLES["structure_sizes"] if row.structure == "handhole"]
OPENING = None if _MANHOLE.opening_in is None else Length.parse(_MANHOLE.opening_in, "in")


def _sizes(row: object) -> tuple[Length, ...]:
    return tuple(Length.parse(getattr(row, f"{name}_ft"), "ft") for name in ("length", "width", "depth"))


_LEAST, _MOST = _sizes(_MANHOLE), _sizes(_HANDHOLE)


class Racked(NamedTuple):
    """Cable on racks: the radius of its center line, the length of its offset, and that of the wall [m]."""

    radius: float
    aside: float
    wall: float


def rack(given: Racking, entered: Entered, sheet: Worksheet) -> Racked:
    """Give the wall that the racks take, from duct to duct."""
    cables = [cable for circuit in entered.circuits for cable in circuit.cables or ()]
    widest = max([cable.diameter for cable in cables], default=0.0)
    if given.bending_radius is not None:
        inner = given.bending_radius.si
    elif not cables:
        raise UnanswerableError(
            sheet.fault(
                "bending_radius", "missing", "Give the bending radius on the racks, or the cables of the circuits."
            )
        )
    else:
        sheet.cite(RACKING_MULTIPLE.backing.source_id)
        inner = max(RACKING_MULTIPLE.value * widest, *(cable.radius or 0.0 for cable in cables))
    radius = inner + widest / 2
    straight = sheet.settle("straight_out", given.straight_out, STRAIGHT_OUT).si
    splice = 0.0
    if any(circuit.spliced for circuit in entered.circuits):
        splice = sheet.settle("splice_wall", given.splice_wall, SPLICE_WALL).si
    aside = engineering.offset_length(radius, given.offset.si)
    sheet.cite(_GEOMETRY.source_id)
    return Racked(radius, aside, engineering.racking_length(straight, aside, splice))


def structure_needs(structure: Structure, racked: Racked | None) -> Iterator[Requirement]:
    """Give what a manhole must measure whatever enters it, and what the racks take."""
    if structure is Structure.MANHOLE:
        for axis, least in enumerate(_LEAST):
            yield Requirement(axis, least.si, BoxRule.LEAST_STRUCTURE, backing_of(_MANHOLE), ())
    if racked is not None:
        yield Requirement(0, racked.wall, BoxRule.RACKING, WORKED_OUT, ())


def check_handhole(entered: Entered, sides: Sequence[float], sheet: Worksheet) -> None:
    """Caution where a handhole holds a splice, or is or must be larger [m] than handholes are made."""
    backing = backing_of(_HANDHOLE)
    for index, circuit in enumerate(entered.circuits):
        if circuit.spliced:
            circuit.sheet.find(
                Severity.CAUTION,
                "splice_in_a_handhole",
                f"Circuit {index + 1} is spliced in a handhole, where owners want no splices: take a manhole.",
                backing,
                member="spliced",
            )
            break
    for side, limit in zip(sides, _MOST, strict=True):
        if over(side, limit.si):
            told, most = sheet.tell.distance(side), sheet.tell.given(limit)
            sheet.find(
                Severity.CAUTION,
                "larger_than_a_handhole",
                f"It measures {text_of(told)}, and handholes are built to {text_of(most)} at most: take a manhole.",
                backing,
                told,
                most,
                member="structure",
            )
