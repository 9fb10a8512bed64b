"""The findings of a run beside those of the base: what it gained, what it lost."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit.answers import Finding
from ductrun.kit.choices import Severity
from ductrun.subjects.duct_run.comparing.comparison import ComparedAssessment

_PLACE = 4  # steps of a pointer before those within the run: #/runs/0/run


class ComparedFinding(Struct, frozen=True, gc=False):
    """A finding that one of two runs has, by its pointer in that run."""

    severity: Annotated[Severity, Meta(description="Violation, caution or note.")]
    code: Annotated[str, Meta(description="What was found, in one stable word for programs.", max_length=100)]
    message: Annotated[str, Meta(description="The sentence for people.")]
    pointer: Annotated[str | UnsetType, Meta(description="JSON pointer of the member it is about.")] = UNSET


def findings_apart(
    one: ComparedAssessment, base: ComparedAssessment
) -> tuple[list[ComparedFinding], list[ComparedFinding]]:
    """Give the findings that a run has beyond the base, and those that the base alone has.

    The same sentence is the same finding wherever its stretch stands, and so is the same code at the same place
    of what bears the same name, whatever its figures.
    """
    gained, lost = _unmatched(one.book.findings, base.book.findings, lambda found: found.message)
    gained, lost = _unmatched(gained, lost, _place)
    return [_told(found) for found in gained], [_told(found) for found in lost]


def _unmatched(
    mine: Sequence[Finding], theirs: Sequence[Finding], by: Callable[[Finding], object]
) -> tuple[list[Finding], list[Finding]]:
    """Leave out what both have, each as often as both have it."""
    open_: dict[tuple[object, ...], list[Finding]] = {}
    for found in theirs:
        open_.setdefault((found.severity, found.code, by(found)), []).append(found)
    left = []
    matched: set[int] = set()
    for found in mine:
        alike = open_.get((found.severity, found.code, by(found)))
        if alike:
            matched.add(id(alike.pop(0)))
        else:
            left.append(found)
    return left, [found for found in theirs if id(found) not in matched]


def _place(found: Finding) -> object:
    """Give where in the run a finding lies, and what it names: alike ones of several stretches are one sentence."""
    where = None if found.pointer is UNSET else tuple(found.pointer.split("/")[_PLACE:])
    return where, found.message.partition(": ")[0]


def _told(found: Finding) -> ComparedFinding:
    return ComparedFinding(found.severity, found.code, found.message, found.pointer)
