"""What every answer is made of: plain records, written to JSON once and never validated again.

A quantity is of its dimension here as in a request, one schema for both: `answers.Length` is the Length that units
declares.
"""

from __future__ import annotations

from typing import Any

from msgspec import UNSET, Struct, UnsetType

from ductrun.kit.choices import Severity
from ductrun.units import *  # noqa: F403  # every dimension that is declared
from ductrun.units import AnyQuantity

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
    request: Any | UnsetType = UNSET


NOTICE = (
    "A planning figure. The adopted code with its local amendments, the authority having jurisdiction and a licensed "
    "professional decide."
)
