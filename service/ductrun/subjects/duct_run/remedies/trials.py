"""Trying changes of a run that breaks limits: what is told was run, and complies or breaks less."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import zip_longest
from typing import Any, NamedTuple

from msgspec import UNSET, Raw, json

from ductrun.kit.answering import REFUSALS, read_slowly
from ductrun.kit.answers import Finding
from ductrun.kit.choices import Severity, Verdict
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.duct_run.assess import assess
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.cost import most_trials
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.names import Apart
from ductrun.subjects.duct_run.remedies.acting import KNOWN, ladders_of
from ductrun.subjects.duct_run.remedies.case import Case
from ductrun.subjects.duct_run.remedies.changes import Change, Ladder, Pointers, applied, as_given, pointers_of
from ductrun.subjects.duct_run.remedies.remedies import (
    MOST_BYTES,
    MOST_CHANGED,
    MOST_REMEDIES,
    MOST_TRIALS,
    ChangeKind,
    Remedies,
    Remedy,
    RemovedViolation,
    UnremediedViolation,
)

_read = reader_of(DuctRunRequest)
_encode: Callable[[Any], bytes] = json.Encoder().encode
_Key = tuple[str, str]  # code and pointer
# why nothing was tried: whether its turn did not come, and whether something is known that acts on its code
_UNTRIED = {
    (True, True): "Not tried: changes against others took all trials. Mend what is told, and ask again.",
    (False, True): "Not tried: what could be changed against it is not given in this run, or not on file.",
    (False, False): "Not tried: no one change is known against it. Do what the finding says.",
}
_REFUSED = "Not tried: no change known against it could be worked out in this run. Do what the finding says."
_NOT_PERMITTED = {"use_not_permitted", "needs_concrete"}
_CONDITION = "use_under_condition"
_UNDER_CONDITION = " It is permitted under a condition, which its answer names: use_under_condition."
_ORDER = {kind: place for place, kind in enumerate(ChangeKind)}


class _Tried(NamedTuple):
    """A change that was run: the violations that are gone, and the codes of what is found instead; the run as changed,
    its verdict, how many violations it has and whether it is permitted under a condition only, where it is a remedy.
    Of a change that is `refused` nothing is known: it was not run.
    """

    change: Change
    gone: Sequence[Finding] = ()
    instead: Sequence[str] = ()
    run: bytes = b""
    verdict: Verdict | None = None
    left: int = 0
    under_condition: bool = False
    refused: bool = False

    @property
    def removed(self) -> Sequence[Finding]:
        """What it removes as a remedy: nothing, where something else is found instead."""
        return () if self.instead else self.gone


class _Was(NamedTuple):
    """The run as given: how much of it was not judged, its findings apart, and its violations with all their places."""

    unjudged_count: int
    apart: Sequence[Apart]
    violations: list[tuple[Finding, set[_Key]]]


class _Vain(NamedTuple):
    """What was tried against a violation, whether there is anything to try, and whether some of it was refused."""

    tried: list[_Tried]
    acted: bool
    refused: bool


def find_remedies(body: Any, run: DuctRun, sheet: Worksheet) -> Remedies:
    """Find what would make a run comply; a run that breaks no limit gets none, and costs nothing."""
    if sheet.book.verdict is not Verdict.VIOLATES:
        return Remedies([], [], 0, cut_short=False)
    violations = [found for found in sheet.book.findings if found.severity is Severity.VIOLATION]
    ladders = ladders_of(Case(body, run, sheet.tell, violations))
    was = _Was(sheet.book.unjudged_count, run.apart, _places(violations, run.apart))
    tried: dict[bytes, _Tried] = {}
    against: dict[_Key, set[bytes]] = {_key(found): set() for found in violations}
    asked_by: dict[bytes, set[int]] = {}
    done: set[int] = set()
    cut_short, most = False, most_trials(run.given, MOST_TRIALS)
    for number, change in _in_turn(ladders):
        if number in done:
            continue
        key = _encode(change.edits)
        if key not in tried:
            if len(tried) == most:
                cut_short = True
                break
            tried[key] = _try(change, body, was, sheet)
        asked_by.setdefault(key, set()).add(number)
        for found in violations:
            if _is_meant(found, ladders[number]):
                against[_key(found)].add(key)
        if not tried[key].under_condition and _reaches(ladders[number], tried[key].removed, violations):
            done.add(number)
    told, whole = _told(_worth_telling(tried, asked_by, done))
    cut_short = cut_short or not whole
    acted = {_key(found) for found in violations if any(_is_meant(found, ladder) for ladder in ladders)}
    vain = {key: _vain([tried[one] for one in sorted(changes)], acted=key in acted) for key, changes in against.items()}
    run_count = sum(not one.refused for one in tried.values())
    return Remedies(told, _unremedied(told, vain, cut_short), run_count, cut_short)


def _vain(tried: list[_Tried], *, acted: bool) -> _Vain:
    run = [one for one in tried if not one.refused]
    return _Vain(run, acted, len(run) < len(tried))


def _places(violations: Sequence[Finding], apart: Sequence[Apart]) -> list[tuple[Finding, set[_Key]]]:
    """Give for every violation as it is told all places that it was found at: alike ones are told once."""
    return [
        (
            found,
            {
                _key(one)
                for one, _ in apart
                if one.code == found.code and one.severity is Severity.VIOLATION and found.message.endswith(one.message)
            },
        )
        for found in violations
    ]


def _in_turn(ladders: list[Ladder]) -> Iterator[tuple[int, Change]]:
    """Give the smallest change of every ladder, then the next of each."""
    for rungs in zip_longest(*(ladder.rungs for ladder in ladders)):
        yield from ((number, change) for number, change in enumerate(rungs) if change is not None)


def _is_meant(found: Finding, ladder: Ladder) -> bool:
    return found.code in ladder.codes and ladder.pointer in {None, found.pointer}


def _reaches(ladder: Ladder, removed: Sequence[Finding], violations: Sequence[Finding]) -> bool:
    """Say whether a ladder need be climbed no further."""
    gone = [_is_meant(found, ladder) and found in removed for found in violations]
    meant = [_is_meant(found, ladder) for found in violations]
    return any(gone) and (not ladder.all_at_once or gone == meant)


def _try(change: Change, body: Any, was: _Was, sheet: Worksheet) -> _Tried:
    """Run a change; it is told if it removes a violation, adds none, and leaves nothing unjudged that was judged but
    where it broke a limit.
    """
    trial = Worksheet(sheet.tell)
    book = trial.book
    nothing = _Tried(change, refused=True)
    if len(change.edits) > MOST_CHANGED:
        return nothing
    try:
        changed = _encode(applied(body, change.edits))
    except LookupError:  # one cut of several moved what another names
        return nothing
    try:
        run = assess(_request(changed), trial)
    except REFUSALS:
        return nothing
    before = _keys(was.apart, Severity.VIOLATION)
    after = _keys(run.apart, Severity.VIOLATION, change.origin)
    gone = _gone(was.violations, before - after)
    opened = _opened(change, book.unjudged_count, run.apart, was)
    under_condition = _CONDITION in opened and any(found.code in _NOT_PERMITTED for found in gone)
    instead = {code for code, _ in after - before} | (opened - {_CONDITION} if under_condition else opened)
    if instead or not gone:
        return _Tried(change, gone, sorted(instead))
    left = sum(found.severity is Severity.VIOLATION for found in book.findings)
    return _Tried(change, gone, (), changed, book.verdict, left, under_condition)


def _gone(violations: Sequence[tuple[Finding, set[_Key]]], missing: Counter[_Key]) -> list[Finding]:
    """Give the violations that are missing at every place that they were found at, as many at one place as are: what is
    left is then all that there is.
    """
    gone = []
    for found, places in violations:
        if places and all(missing[place] for place in places):
            missing.subtract(places)
            gone.append(found)
    return gone


def _opened(change: Change, unjudged_count: int, apart: Sequence[Apart], was: _Was) -> set[str]:
    """Give the cautions of a changed run that leaves more unjudged; among them that a use is permitted under a
    condition, which is more than not permitted.
    """
    if unjudged_count <= was.unjudged_count:
        return set()
    known = _keys(was.apart, Severity.CAUTION)
    return {key[0] for key in _keys(apart, Severity.CAUTION, change.origin) if key not in known}


def _request(body: bytes) -> Any:
    try:
        return _read(body)
    except REFUSED:
        return read_slowly(DuctRunRequest, body)


def _keys(apart: Sequence[Apart], severity: Severity, origin: Pointers = as_given) -> Counter[_Key]:
    """Count what was found at each place; alike ones of one place, as of the pieces of a stretch, are one."""
    alike = {(found.code, origin(_key(found)[1]), found.message) for found, _ in apart if found.severity is severity}
    return Counter((code, place) for code, place, _ in alike)


def _key(found: Finding | RemovedViolation) -> _Key:
    return found.code, "" if found.pointer is UNSET else found.pointer


def _worth_telling(tried: dict[bytes, _Tried], asked_by: dict[bytes, set[int]], done: set[int]) -> Iterator[_Tried]:
    """Give what removes a violation; what is permitted under a condition where no other of its ladder is permitted
    without, and of several of a kind the smallest.
    """
    conditions = set()
    for key, one in tried.items():
        alike = one.change.kind, tuple(map(_key, one.removed))
        if one.under_condition and (asked_by[key] & done or alike in conditions):
            continue
        if one.under_condition:
            conditions.add(alike)
        if one.removed:
            yield one


def _told(tried: Iterable[_Tried]) -> tuple[list[Remedy], bool]:
    """Tell the best remedies, as many as may be and as their runs have room; say whether these are all."""
    found = sorted(
        tried,
        key=lambda one: (one.left, one.verdict is not Verdict.COMPLIES, one.under_condition, _ORDER[one.change.kind]),
    )
    told: list[Remedy] = []
    size = 0
    for one in found[:MOST_REMEDIES]:
        size += len(one.run)
        if size > MOST_BYTES:
            break
        told.append(_remedy(one))
    return told, len(told) == len(found)


def _remedy(one: _Tried) -> Remedy:
    assert one.verdict is not None  # noqa: S101  (a run that broke a limit is held against it)
    return Remedy(
        one.change.kind,
        f"{one.change.sentence}{_UNDER_CONDITION if one.under_condition else ''}",
        Raw(one.run),
        pointers_of(one.change.edits),
        one.verdict,
        [RemovedViolation(found.code, found.pointer) for found in one.removed],
        one.left,
    )


def _unremedied(told: list[Remedy], against: dict[_Key, _Vain], cut_short: bool) -> list[UnremediedViolation]:
    """Tell of every violation that no remedy told removes, and why."""
    removed = {_key(one) for remedy in told for one in remedy.removed}
    return [
        UnremediedViolation(key[0], _why(key, vain, cut_short), len(vain.tried), key[1] or UNSET)
        for key, vain in against.items()
        if key not in removed
    ]


def _why(key: _Key, vain: _Vain, cut_short: bool) -> str:
    more = " More was left untried or untold." if cut_short else ""
    if not vain.tried and vain.refused:
        return f"{_REFUSED}{more}"
    if not vain.tried:
        return _UNTRIED[cut_short and vain.acted, vain.acted or key[0] in KNOWN]
    if any(key in map(_key, one.removed) for one in vain.tried):
        return (
            "A change was found that removes it, and is left out: the answer is full. Mend what is told, and ask again."
        )
    kinds = [kind.replace("_", " ") for kind in dict.fromkeys(one.change.kind for one in vain.tried)]
    count = (
        "The one change tried does not remove it"
        if len(vain.tried) == 1
        else f"None of {len(vain.tried)} changes removes it"
    )
    instead = {code for one in vain.tried if any(_key(found) == key for found in one.gone) for code in one.instead}
    told = f"; {listing(sorted(instead))} would come of it" if instead else ""
    singly = "; of these kinds one was tried at a time; two at once may remove it" if len(kinds) > 1 else ""
    return f"Tried: {listing(kinds)}. {count}{told}{singly}.{more}"
