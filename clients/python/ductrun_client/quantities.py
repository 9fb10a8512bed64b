"""A value with its unit, and the way to pint and back."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, ClassVar, Protocol, cast

import msgspec


class PintQuantity(Protocol):
    """A quantity of pint, as far as it matters here; pint itself is an extra and need not be there."""

    @property
    def magnitude(self) -> Any:
        """Its number."""

    @property
    def units(self) -> Any:
        """Its unit."""

    @property
    def dimensionality(self) -> Any:
        """What it measures."""


class Registry(Protocol):
    """A unit registry of pint."""

    @property
    def Quantity(self) -> Any:  # noqa: N802
        """Its class of quantities."""


class Quantity(msgspec.Struct, frozen=True):
    """A value with its unit: `Length(300, "ft")`; PINT has how pint writes each unit."""

    value: float
    unit: str
    PINT: ClassVar[Mapping[str, str]] = {}
    CLOSED: ClassVar[bool] = True

    def pint(self, registry: Registry) -> Any:
        """Give it as a quantity of a registry of pint."""
        return registry.Quantity(self.value, self.PINT.get(self.unit, self.unit))


def in_pint(answer: object, registry: Registry) -> Any:
    """Give an answer, or a part of it, in dicts and lists with every quantity as one of a registry of pint."""
    if isinstance(answer, Quantity):
        return answer.pint(registry)
    if isinstance(answer, msgspec.Struct):
        members = ((name, getattr(answer, name)) for name in answer.__struct_fields__)
        return {name: in_pint(value, registry) for name, value in members if value is not None}
    if isinstance(answer, list):
        return [in_pint(value, registry) for value in cast("Any", answer)]
    return answer
