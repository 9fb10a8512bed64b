"""What every answer is made of: plain records, written to JSON once and never validated again.

A quantity's record carries the name of its dimension in the contract, where its unit is the same closed set as in a
request.
"""

from __future__ import annotations

from typing import Any

from msgspec import UNSET, Struct, UnsetType

from ductrun.kit.choices import Severity


class AnyQuantity(Struct, frozen=True, gc=False):
    """A value with its unit, of whatever dimension the text beside it says."""

    value: float
    unit: str


class Length(AnyQuantity, frozen=True, gc=False):
    """A length with its unit."""


class Area(AnyQuantity, frozen=True, gc=False):
    """An area with its unit."""


class Volume(AnyQuantity, frozen=True, gc=False):
    """A volume with its unit."""


class Mass(AnyQuantity, frozen=True, gc=False):
    """A mass with its unit; a force is not a mass: see Force."""


class MassPerLength(AnyQuantity, frozen=True, gc=False):
    """A mass per length with its unit."""


class Force(AnyQuantity, frozen=True, gc=False):
    """A force with its unit; tension is a force."""


class ForcePerLength(AnyQuantity, frozen=True, gc=False):
    """A force per length with its unit; sidewall pressure is one."""


class Temperature(AnyQuantity, frozen=True, gc=False):
    """A temperature with its unit."""


class TemperatureDifference(AnyQuantity, frozen=True, gc=False):
    """A difference between two temperatures with its unit."""


class Duration(AnyQuantity, frozen=True, gc=False):
    """A time with its unit."""


class Angle(AnyQuantity, frozen=True, gc=False):
    """An angle with its unit."""


Figure = float | AnyQuantity


class Finding(Struct, frozen=True, gc=False):
    """One sentence a foreman understands: what, how much, the limit, the rule; `pointer` is where in the request."""

    severity: Severity
    code: str
    message: str
    source: str
    actual: Figure | UnsetType = UNSET
    limit: Figure | UnsetType = UNSET
    pointer: str | UnsetType = UNSET


class Assumption(Struct, frozen=True, gc=False):
    """A value taken because the caller gave none, where it comes from, and every member it stands in for."""

    pointers: list[str]
    value: float | str | bool | AnyQuantity
    source: str


class Step(Struct, frozen=True, gc=False):
    """One line of the working."""

    symbol: str
    formula: str
    substituted: str
    value: Figure


class Basis(Struct, frozen=True, gc=False):
    """What the answer rests on: service version, hash of the tables, code edition, ids of the sources."""

    service: str
    tables: str
    code: str
    sources: tuple[str, ...]


class Answer(Struct, frozen=True, gc=False):
    """The envelope of every calculation."""

    result: Any
    findings: list[Finding]
    assumptions: list[Assumption]
    basis: Basis
    notice: str
    working: list[Step] | UnsetType = UNSET


NOTICE = (
    "A planning figure. The adopted code with its local amendments, the authority having jurisdiction and a licensed "
    "professional decide."
)
