"""The defaults, typed, from the table that holds each with its source and standing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any, Generic, TypeVar

from ductrun.kit.backing import Backing, backing_of
from ductrun.kit.choices import CodeEdition
from ductrun.tables import TABLES
from ductrun.units import Quantity

T = TypeVar("T")
E = TypeVar("E", bound=StrEnum)
Q = TypeVar("Q", bound=Quantity)

_ROWS = {row.name: row for row in TABLES["defaults"]}


@dataclass(frozen=True, slots=True)
class Default(Generic[T]):
    """A default value and what backs it.

    `written` is the value in the form of the request's schema, in the table's own unit, where that is another than the
    value itself.
    """

    value: T
    backing: Backing
    written: Any = None

    def written_as(self, form: Callable[[Any], Any]) -> Default[T]:
        """Give the default of a member whose form in a request holds the value in it."""
        return replace(self, written=form(_plain(self.value)))

    def noting(self, words: str) -> Default[T]:
        """Add words to what backs it, such as the spread of what is published."""
        return replace(self, backing=self.backing.noting(f"; {words}"))

    @property
    def stated(self) -> dict[str, Any]:
        """State the default in the schema of the member it stands in for, with what backs it."""
        citation, standing, source_id = self.backing
        return {
            "x-default": {
                "value": self.given,
                "citation": citation,
                "standing": str(standing),
                **({} if source_id is None else {"source_id": source_id}),
            }
        }

    @property
    def given(self) -> Any:
        """What a request would hold in the place of the default."""
        return _plain(self.value) if self.written is None else self.written


def by_rule(words: str) -> dict[str, Any]:
    """State in the schema of a member what is taken in its place where that hangs on other members."""
    return {"x-default": {"rule": words}}


def _plain(value: Any) -> Any:
    if hasattr(value, "unit"):  # a quantity, or one that is told
        return {"value": value.value, "unit": str(value.unit)}
    return str(value) if isinstance(value, str) else value


def _default(name: str, value: T) -> Default[T]:
    return Default(value, backing_of(_ROWS[name]))


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


CODE_EDITION = choice("fill.code_edition", CodeEdition)
