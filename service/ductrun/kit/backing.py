"""What backs a figure or a rule: its source in words and by id, and with what right it is given."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.kit.choices import Standing
from ductrun.tables import TABLES
from ductrun.tables.rows import Row

_CITATIONS: dict[str, str] = {source.id: source.citation for source in TABLES["sources"]}
_STANDINGS = {"derived": Standing.DERIVED, "common practice, no source": Standing.PRACTICE}


class Backing(NamedTuple):
    """Where a figure or a rule comes from; `source_id` is None for what the caller gave and what is worked out."""

    citation: str
    standing: Standing
    source_id: str | None = None

    def of(self, what: str) -> Backing:
        """Say first what it is the backing of."""
        return Backing(f"{what}, {self.citation}", self.standing, self.source_id)

    def noting(self, words: str) -> Backing:
        """Add words behind, such as the spread of what is published."""
        return Backing(self.citation + words, self.standing, self.source_id)

    def beside(self, other: Backing) -> Backing:
        """Name a second source beside the first, whose standing counts."""
        return Backing(f"{self.citation}; {other.citation}", self.standing, self.source_id)


PRACTICE = Backing("common practice, no source", Standing.PRACTICE, "trade-practice")
WORKED_OUT = Backing("derived", Standing.DERIVED)
GIVEN = Backing("the limit given", Standing.CALLER)


def published(source_id: str) -> Backing:
    """Give what a source of the table says; an unknown id is a KeyError at import, not at a request."""
    return Backing(_CITATIONS[source_id], Standing.PUBLISHED, source_id)


def standing_of(words: str) -> Standing:
    """Give the standing that the words of a table mean: what is read in one of two columns is not yet read."""
    return Standing.PUBLISHED if words.startswith("read") else _STANDINGS.get(words, Standing.MEMORY)


def backing_of(row: Row, citation: str | None = None) -> Backing:
    """Say where a row's figure comes from: its citation if it was read, else that nothing backs it.

    `citation` is that of the code edition followed, where the source has another in each.
    """
    standing = standing_of(row.standing)
    words = citation or _CITATIONS[row.source]
    if standing is Standing.PRACTICE:
        words = row.standing
    elif standing is not Standing.PUBLISHED:
        words = f"{row.standing}: {words}"
    return Backing(f"{words} ({row.note})" if row.note else words, standing, row.source)
