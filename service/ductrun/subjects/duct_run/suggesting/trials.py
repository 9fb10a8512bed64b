"""Trying changes of a run that breaks limits: what is told was run, and complies or breaks less."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from itertools import zip_longest
from typing import Any, NamedTuple

from msgspec import UNSET, json

from ductrun.kit.answering import REFUSALS, read_slowly
from ductrun.kit.answers import Finding
from ductrun.kit.choices import Severity, Verdict
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.worksheet import Book, Worksheet
from ductrun.subjects.duct_run.assess import assess
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.cost import most_trials
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.suggesting.changes import Change, Ladder, Pointers, applied, patch_of
from ductrun.subjects.duct_run.suggesting.remedies import Case, ladders_of
from ductrun.subjects.duct_run.suggesting.suggestions import (
    MOST_OPERATIONS,
    MOST_SUGGESTIONS,
    MOST_TRIALS,
    ChangeKind,
    PatchOperation,
    RemovedViolation,
    Suggestion,
    Suggestions,
)

_read = reader_of(DuctRunRequest)
_encode: Callable[[Any], bytes] = json.Encoder().encode
_Key = tuple[str, str]  # code and pointer
_ORDER = {kind: place for place, kind in enumerate(ChangeKind)}


class _Tried(NamedTuple):
    """A change that was run: its patch, the book of the changed run, and the violations that are gone; none are gone of
    a change that is not told.
    """

    change: Change
    patch: list[PatchOperation]
    book: Book
    removed: list[Finding]


def suggest(body: Any, run: DuctRun, sheet: Worksheet) -> Suggestions:
    """Suggest what would make a run comply; a run that breaks no limit gets none, and costs nothing."""
    book = sheet.book
    if book.verdict is not Verdict.VIOLATES:
        return Suggestions([], 0, bound_met=False)
    violations = [found for found in book.findings if found.severity is Severity.VIOLATION]
    ladders = ladders_of(violations, Case(body, run, sheet.tell))
    tried: dict[bytes, _Tried] = {}
    done: set[int] = set()
    most, bound_met = most_trials(run.given, MOST_TRIALS), False
    for number, change in _in_turn(ladders):
        if number in done:
            continue
        key = _encode(change.edits)
        if key not in tried:
            if len(tried) == most:
                bound_met = True
                break
            tried[key] = _try(change, body, violations, sheet)
        if any(_is_meant(found, ladders[number]) for found in tried[key].removed):
            done.add(number)
    return Suggestions(_told(tried.values()), len(tried), bound_met)


def _in_turn(ladders: list[Ladder]) -> Iterator[tuple[int, Change]]:
    """Give the smallest change of every ladder, then the next of each."""
    for rungs in zip_longest(*(ladder.rungs for ladder in ladders)):
        yield from ((number, change) for number, change in enumerate(rungs) if change is not None)


def _is_meant(found: Finding, ladder: Ladder) -> bool:
    return found.code in ladder.codes and ladder.pointer in {None, found.pointer}


def _try(change: Change, body: Any, violations: list[Finding], sheet: Worksheet) -> _Tried:
    """Run a change; it is told if it removes a violation, adds none, and leaves nothing unjudged that was judged."""
    trial = Worksheet(sheet.tell)
    book, was = trial.book, sheet.book
    patch = patch_of(body, change.edits)
    nothing = _Tried(change, patch, book, [])
    if len(patch) > MOST_OPERATIONS:
        return nothing
    try:
        assess(_request(_encode(applied(body, patch))), trial)
    except REFUSALS:
        return nothing
    before, after = _keys(was, Severity.VIOLATION), _keys(book, Severity.VIOLATION, change.origin)
    cautions = _keys(book, Severity.CAUTION, change.origin) - _keys(was, Severity.CAUTION)
    opened = book.unjudged_count > was.unjudged_count and cautions
    if after - before or opened:
        return nothing
    return _Tried(change, patch, book, [found for found in violations if _key(found) not in after])


def _request(body: bytes) -> Any:
    try:
        return _read(body)
    except REFUSED:
        return read_slowly(DuctRunRequest, body)


def _keys(book: Book, severity: Severity, origin: Pointers | None = None) -> set[_Key]:
    keys = {_key(found) for found in book.findings if found.severity is severity}
    return keys if origin is None else {(code, origin(pointer)) for code, pointer in keys}


def _key(found: Finding) -> _Key:
    return found.code, "" if found.pointer is UNSET else found.pointer


def _told(tried: Iterable[_Tried]) -> list[Suggestion]:
    told = [_suggestion(one) for one in tried if one.removed]
    told.sort(key=lambda one: (one.remaining_violation_count, one.verdict is not Verdict.COMPLIES, _ORDER[one.change]))
    return told[:MOST_SUGGESTIONS]


def _suggestion(one: _Tried) -> Suggestion:
    left = sum(found.severity is Severity.VIOLATION for found in one.book.findings)
    verdict = one.book.verdict
    assert verdict is not None  # noqa: S101  (a run that broke a limit is held against it)
    return Suggestion(
        one.change.kind,
        one.change.message,
        one.patch,
        verdict,
        list(dict.fromkeys(RemovedViolation(found.code, found.pointer) for found in one.removed)),
        left,
    )
