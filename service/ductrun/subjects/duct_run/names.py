"""Findings of a run: each names what it is about, alike ones come once, in the order of their weight and place."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

import msgspec

from ductrun.kit.answers import Finding
from ductrun.kit.choices import Severity
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Book

_ORDER = {severity: rank for rank, severity in enumerate(Severity)}
_MOST_NAMED = 6


class _About(NamedTuple):
    """What a finding is about, where along the run that begins [m], and the place in words that is not in its name."""

    name: str
    station: float
    where: str


class Names:
    """Remembers what the findings of a book are about, by when they were found."""

    __slots__ = ("_about", "_also", "_book", "_next", "_within")

    def __init__(self, book: Book) -> None:
        """Start with a book."""
        self._book = book
        self._about: list[_About] = []
        self._also: dict[int, list[_About]] = {}
        self._next = _About("", 0.0, "")
        self._within = [self._next]

    def about(self, name: str, station: float = 0.0, where: str = "") -> Names:
        """Say what is found within: `with names.about("F-21", 12.0, "West approach"): ...`; within it others may be
        named.
        """
        self._next = _About(name, station, where)
        return self

    def __enter__(self) -> None:
        """Name what was found before, and begin with what `about` said."""
        self._name_found()
        self._within.append(self._next)

    def __exit__(self, kind: object, error: object, trace: object) -> None:
        """Name what was found within."""
        self._name_found()
        self._within.pop()

    @property
    def count(self) -> int:
        """How many findings there are so far."""
        return len(self._book.findings)

    def repeat(self, found: range) -> None:
        """Say that what was found before, from one count to another, is also about what is named now."""
        for index in found:
            self._also.setdefault(index, []).append(self._within[-1])

    def _name_found(self) -> None:
        missing = len(self._book.findings) - len(self._about)
        if missing:
            self._about += [self._within[-1]] * missing

    def write(self) -> None:
        """Put the findings of the book in order, alike ones together, each with the name of what it is about."""
        self._name_found()
        alike: dict[tuple[object, ...], tuple[Finding, list[_About]]] = {}
        for index, (finding, about) in enumerate(zip(self._book.findings, self._about, strict=True)):
            key = (finding.severity, finding.code, finding.message, finding.citation)
            alike.setdefault(key, (finding, []))[1].extend((about, *self._also.get(index, ())))
        found = sorted(alike.values(), key=lambda one: (_ORDER[one[0].severity], one[1][0].station))
        self._book.findings[:] = [_named(finding, about) for finding, about in found]


def _named(finding: Finding, about: list[_About]) -> Finding:
    """Write before a finding what it is about: of one place every name once, and of the same names every place."""
    names: dict[str, dict[str, None]] = {}
    for one in about:
        if one.name:
            names.setdefault(one.where, {})[one.name] = None
    if not names:
        return finding
    places: dict[tuple[str, ...], list[str]] = {}
    for where, there in names.items():
        places.setdefault(tuple(there), []).append(where)
    parts = [listing([_listed(there), *([_listed(where)] if where[0] else [])]) for there, where in places.items()]
    words = "; ".join(parts)
    return msgspec.structs.replace(finding, message=f"{words[0].upper()}{words[1:]}: {finding.message}")


def _listed(names: Sequence[str]) -> str:
    told = names if len(names) <= _MOST_NAMED else [*names[: _MOST_NAMED - 1], f"{len(names) - _MOST_NAMED + 1} more"]
    return listing(told)
