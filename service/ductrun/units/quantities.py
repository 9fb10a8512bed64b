"""A value with its unit, one class a dimension: what a request gives, what a table holds, what an answer tells.

SI is the meeting point. Many quantities never meet it: those of an answer are written and not computed with, so the
telling and the reader have lean records of their own, which have the attributes of these classes.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Mapping
from dataclasses import make_dataclass
from functools import cache
from types import MappingProxyType
from typing import Annotated, Any, ClassVar, Final, NamedTuple, Self

from msgspec import Meta, Struct
from pydantic import Field
from pydantic_core import core_schema

from ductrun.units.codes import UnitCode
from ductrun.units.factors import settle


class Told(NamedTuple):
    """The units in which an answer tells an SI number of one role, by unit system."""

    us: UnitCode
    metric: UnitCode


def by_role(**units: UnitCode | tuple[UnitCode, UnitCode]) -> Mapping[str, Told]:
    """Give the units of the answers by role, US customary and metric, or the one of both.

    The first role is the one in which the dimension is told where none is named.
    """
    return MappingProxyType(
        {role: Told(*pair) if isinstance(pair, tuple) else Told(pair, pair) for role, pair in units.items()}
    )


class _InSI:
    """Room for the value in SI: no field of the quantity, since it is not given but follows from those that are."""

    __slots__ = ("si",)

    si: float


_keep: Final = vars(_InSI)["si"].__set__  # the room is no field, so it can be filled in a frozen record


class AnyQuantity(_InSI, Struct, frozen=True, gc=False):
    """A value with its unit, of whatever dimension the text beside it says."""

    value: Annotated[float, Meta(description="The number, in the unit.")]
    unit: Annotated[str, Meta(description="The unit, by its code in the table of units.")]


UNIT_CODES: Final[dict[type[Quantity], type[UnitCode]]] = {}  # every dimension, in the order of their declaration


class Quantity(AnyQuantity, frozen=True):
    """A value and its unit, just as it was given or printed; `si` is the same in SI.

    A dimension is declared as a subclass: its `unit` has a closed set of codes, `told` says what the answers use.
    """

    dimension: ClassVar[type[Quantity]]
    told: ClassVar[Mapping[str, Told]]

    unit: UnitCode

    def __init_subclass__(cls) -> None:
        """Enter the dimension: from here on it can be read, bounded, converted and told."""
        cls.dimension = cls
        codes = cls.__annotations__["unit"]
        if isinstance(codes, str):
            codes = getattr(sys.modules[cls.__module__], codes)
        settle(cls.__name__, codes)
        UNIT_CODES[cls] = codes

    def __post_init__(self) -> None:
        """Convert once; with the bare text of a code in the place of its unit, a quantity is only there to be told."""
        unit = self.unit
        if type(unit) is not str:
            _keep(self, unit.to_si(self.value))

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: Callable[[Any], Any]) -> Any:
        """Take an object of value and unit wherever the quantity is taken, in Python also the quantity itself."""
        form = handler.generate_schema(_form_of(cls))  # type: ignore[attr-defined]

        def take(given: Any) -> Quantity:
            return cls(given.value, given.unit)

        def take_any(given: Any, read: Callable[[Any], Any]) -> Quantity:
            return given if isinstance(given, cls) else take(read(given))

        return core_schema.json_or_python_schema(
            core_schema.no_info_after_validator_function(take, form),
            core_schema.no_info_wrap_validator_function(take_any, form),
            serialization=core_schema.plain_serializer_function_ser_schema(_as_given),
        )

    def in_unit(self, unit: UnitCode) -> float:
        """The value in another unit of the same dimension; untouched, bit for bit, when the unit is its own."""
        return self.value if unit is self.unit else unit.from_si(self.si)

    def in_system(self, system: str) -> Self:
        """The same quantity for a reader of one unit system: itself if its unit belongs there, else converted."""
        if self.unit.system in (system, "both"):
            return self
        other = self.unit.counterpart
        # the last digits of a conversion are noise: 50 degC is 122 degF, and not 121.99999999999993
        return self.dimension(float(f"{self.in_unit(other):.13g}"), other)  # type: ignore[return-value]

    def __str__(self) -> str:
        """Write the quantity as a person would: `0.25 in`."""
        return f"{self.value:g} {self.unit.text}"

    @classmethod
    def parse(cls, value: float, unit: str) -> Self:
        """Make a quantity of this dimension from a printed value and unit code; an unknown code is a ValueError."""
        return cls(value, UNIT_CODES[cls](unit))


def _as_given(quantity: Quantity | None) -> dict[str, Any] | None:
    """Write a quantity as it was given; a member that was left out is None in a form."""
    return None if quantity is None else {"value": quantity.value, "unit": str(quantity.unit)}


@cache
def _form_of(dimension: type[Quantity]) -> type[Any]:
    """Give what a form validates: a closed object of a number, which is no text, and a unit code of the dimension."""

    def take_objects(_: Any, source: Any, handler: Callable[[Any], Any]) -> Any:
        schema = handler(source)
        (schema["schema"] if schema["type"] == "definitions" else schema)["strict"] = False
        return schema

    return make_dataclass(
        dimension.__name__,
        [
            ("value", Annotated[float, Field(description="The number, in the unit.")]),
            ("unit", Annotated[UNIT_CODES[dimension], Field(description="The unit, by its code.")]),
        ],
        namespace={
            "__doc__": dimension.__doc__,
            "__module__": dimension.__module__,
            "__pydantic_config__": {"extra": "forbid", "strict": True, "allow_inf_nan": False},
            "__get_pydantic_core_schema__": classmethod(take_objects),
        },
        slots=True,
    )
