"""Closed sets of texts, and the unit codes among them: what one dimension allows, and how its units convert."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum
from typing import TYPE_CHECKING, Any, ClassVar, Literal, Self

System = Literal["us", "metric", "both"]


class Code(StrEnum):
    """A closed set of texts; the contract names its members, so that no generator has to guess a name.

    A member finds in a dict what its text finds: its hash is that of the text, where Enum would take the name's.
    """

    __hash__ = str.__hash__

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: Callable[[Any], Any]) -> Any:
        """Take the text of a member wherever the member is taken: a text is how a code comes in."""
        schema = handler(source)
        schema["strict"] = False
        return schema

    @classmethod
    def __get_pydantic_json_schema__(cls, core_schema: Any, handler: Callable[[Any], dict[str, Any]]) -> Any:
        """Add the member names to the JSON schema of the set."""
        schema = handler.resolve_ref_schema(handler(core_schema))  # type: ignore[attr-defined]
        schema["x-enum-varnames"] = [member.name for member in cls]
        return schema


class UnitCode(Code):
    """The units one dimension allows, each with what it means.

    A member is declared as: code, pint's expression, UCUM code and, unless it serves readers of both unit systems, its
    system and the code of its counterpart in the other. `si`, given with the class, is pint's expression of the SI
    unit. `scale` is the size of one unit in SI and `zero` what is added; both come from factors.csv.
    """

    si: ClassVar[str]

    text: str
    pint: str
    ucum: str
    system: System
    other: str
    counterpart: Self
    scale: float
    zero: float

    if TYPE_CHECKING:

        @property
        def value(self) -> Self:
            """The text of the code: a quantity to be told takes it for the code."""

    def __new__(cls, code: str, pint: str = "", ucum: str = "", system: System = "both", other: str = "") -> Self:
        """Make a member out of its declaration; once made, its code alone gives it."""
        member = str.__new__(cls, code)
        member._value_ = member.text = code
        member.pint, member.ucum, member.system = pint, ucum, system
        member.other = other or code
        return member

    def __init_subclass__(cls, si: str = "", **_: Any) -> None:
        """Note the SI unit of the dimension."""
        if si:
            cls.si = si

    @property
    def si_unit(self) -> str:
        """The SI unit that `scale` leads to, in words."""
        return type(self).si

    def to_si(self, value: float) -> float:
        """Give `value` of this unit in SI."""
        return value * self.scale

    def from_si(self, si: float) -> float:
        """Give the SI value `si` in this unit: divided by the exact factor, which rounds once."""
        return si / self.scale
