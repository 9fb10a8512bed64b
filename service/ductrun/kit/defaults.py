"""The defaults, typed, from the table that holds each with its source and standing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any, Generic, TypeVar

from ductrun.kit.choices import Standing
from ductrun.tables import TABLES
from ductrun.tables.rows import Row
from ductrun.units import Quantity

T = TypeVar("T")
E = TypeVar("E", bound=StrEnum)
Q = TypeVar("Q", bound=Quantity)

_ROWS = {row.name: row for row in TABLES["defaults"]}
_CITATIONS: dict[str, str] = {source.id: source.citation for source in TABLES["sources"]}


@dataclass(frozen=True, slots=True)
class Default(Generic[T]):
    """A default value and where it comes from, in words and as the id of its source.

    `written` is the value in the form of the request's schema, in the table's own unit, where that is another than the
    value itself.
    """

    value: T
    source: str
    source_id: str
    standing: Standing = Standing.DERIVED
    written: Any = None

    def written_as(self, form: Callable[[Any], Any]) -> Default[T]:
        """Give the default of a member whose form in a request holds the value in it."""
        return replace(self, written=form(_plain(self.value)))

    @property
    def given(self) -> Any:
        """What a request would hold in the place of the default."""
        return _plain(self.value) if self.written is None else self.written


def _plain(value: Any) -> Any:
    if hasattr(value, "unit"):  # a quantity, or one that is told
        return {"value": value.value, "unit": str(value.unit)}
    return str(value) if isinstance(value, str) else value


_STANDINGS = {"derived": Standing.DERIVED, "common practice, no source": Standing.PRACTICE}


def _standing_of(row: Row) -> Standing:
    if row.standing.startswith("read"):
        return Standing.PUBLISHED
    return _STANDINGS.get(row.standing, Standing.MEMORY)


def citation(source_id: str) -> str:
    """Give the citation of a source; an unknown id is a KeyError at import, not at a request."""
    return _CITATIONS[source_id]


def standing_of(row: Row) -> str:
    """Say in words where a row's figure comes from: its citation if it was read, else that nothing backs it."""
    if row.standing.startswith("read"):
        words = citation(row.source)
    elif row.standing == "common practice, no source":
        words = row.standing
    else:
        words = f"{row.standing}: {citation(row.source)}"
    return f"{words} ({row.note})" if row.note else words


def _default(name: str, value: T) -> Default[T]:
    row = _ROWS[name]
    return Default(value, standing_of(row), row.source, _standing_of(row))


def number(name: str) -> Default[float]:
    """Give a default that is a plain number."""
    return _default(name, float(_ROWS[name].value))


def count(name: str) -> Default[int]:
    """Give a default that is a count."""
    return _default(name, int(_ROWS[name].value))


def flag(name: str) -> Default[bool]:
    """Give a default that is yes or no."""
    return _default(name, {"yes": True, "no": False}[_ROWS[name].value])


def choice(name: str, choices: type[E]) -> Default[E]:
    """Give a default that is a member of a closed set."""
    return _default(name, choices(_ROWS[name].value))


def quantity(name: str, dimension: type[Q]) -> Default[Q]:
    """Give a default that is a quantity, as printed."""
    row = _ROWS[name]
    return _default(name, dimension.parse(float(row.value), row.unit))
