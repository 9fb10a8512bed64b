"""The findings of a run beside those of the base: what it gained, what it lost."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Hashable
from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit.answers import Finding
from ductrun.kit.choices import Severity
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.names import About, Apart, together

_PLACE = 4  # steps of a pointer before those within the run: #/runs/0/run
_NUMBER = re.compile(r" \d+$")  # of a stretch or a circuit without a name


class ComparedFinding(Struct, frozen=True, gc=False):
    """A finding that one of two runs has, by its pointer in that run."""

    severity: Annotated[Severity, Meta(description="Violation, caution or note.")]
    code: Annotated[str, Meta(description="What was found, in one stable word for programs.", max_length=100)]
    message: Annotated[str, Meta(description="The sentence for people.")]
    pointer: Annotated[str | UnsetType, Meta(description="JSON pointer of the member it is about.")] = UNSET


def findings_apart(one: DuctRun, base: DuctRun) -> tuple[list[ComparedFinding], list[ComparedFinding]]:
    """Give the findings that a run has beyond the base, and those that the base alone has.

    They are held against each other place by place, before alike ones are told together. A finding is the same with
    the same sentence at the same place, else with the same code there whatever its figures; what is left of it
    elsewhere in what bears the same name is the same by its sentence. What bears no name of its own may have moved.
    """
    mine, theirs = _placed(one), _placed(base)
    said, other = {_sentence(each) for each in mine}, {_sentence(each) for each in theirs}
    for alike in (_exactly, _place):
        mine, theirs = _unmatched(mine, theirs, alike)
    mine = [each for each in mine if _sentence(each) not in other]
    theirs = [each for each in theirs if _sentence(each) not in said]
    mine, theirs = _unmatched(mine, theirs, _wherever)
    return _told(mine), _told(theirs)


class _Placed(NamedTuple):
    """A finding of one place of a run, with what that is: its pointer, stretches and circuits by their names."""

    apart: Apart
    place: tuple[str, ...] | None


def _placed(run: DuctRun) -> list[_Placed]:
    return [_Placed(apart, _place_of(*apart, run)) for apart in run.apart]


def _place_of(found: Finding, about: About, run: DuctRun) -> tuple[str, ...] | None:
    """Give where in the run a finding lies, a stretch and a circuit by its name: others may stand before it, and what
    was worked out for one circuit may be about another.
    """
    if found.pointer is UNSET:
        return None
    steps = found.pointer.split("/")[_PLACE:]
    if steps[:1] == ["stretches"] and len(steps) > 1:
        steps[1] = run.stretches[int(steps[1])].laid.name
    elif steps[:1] == ["circuits"] and len(steps) > 1:
        steps[1] = about.name or run.circuits[int(steps[1])].placed.name
    return tuple(steps)


def _place(one: _Placed) -> Hashable:
    found, about = one.apart
    return found.severity, found.code, about.name, about.where, one.place


def _exactly(one: _Placed) -> Hashable:
    return _place(one), one.apart[0].message


def _sentence(one: _Placed) -> Hashable:
    found, about = one.apart
    return found.severity, found.code, about.name, about.where, found.message


def _wherever(one: _Placed) -> Hashable:
    """Know what bears a number for a name by its sentence alone: one more before it moves it on."""
    found, about = one.apart
    return found.severity, found.code, *(_NUMBER.sub("", name) for name in (about.name, about.where)), found.message


def _unmatched(
    mine: list[_Placed], theirs: list[_Placed], alike: Callable[[_Placed], Hashable]
) -> tuple[list[_Placed], list[_Placed]]:
    """Leave out what both have, each as often as both have it."""
    both = Counter(map(alike, mine)) & Counter(map(alike, theirs))
    return _beyond(mine, Counter(both), alike), _beyond(theirs, both, alike)


def _beyond(placed: list[_Placed], both: Counter[Hashable], alike: Callable[[_Placed], Hashable]) -> list[_Placed]:
    left = []
    for one in placed:
        key = alike(one)
        if both[key]:
            both[key] -= 1
        else:
            left.append(one)
    return left


def _told(placed: list[_Placed]) -> list[ComparedFinding]:
    return [
        ComparedFinding(found.severity, found.code, found.message, found.pointer)
        for found in together(one.apart for one in placed)
    ]
