"""What every answer is made of: plain records, written to JSON once and never validated again.

A quantity is of its dimension here as in a request, one schema for both: `answers.Length` is the Length that units
declares.
"""

from __future__ import annotations

from typing import Any

from msgspec import UNSET, Struct, UnsetType

from ductrun.kit.choices import Severity, Standing, Verdict
from ductrun.units import *  # noqa: F403  # every dimension that is declared
from ductrun.units import AnyQuantity

Figure = float | AnyQuantity  # a bare one is told as a ratio


class Finding(Struct, frozen=True, gc=False):
    """One sentence a foreman understands: what, how much, the limit, what to do; `pointer` is where in the request.

    What the caller gave, and what is worked out, has no source id.
    """

    severity: Severity
    code: str
    message: str
    citation: str
    standing: Standing
    source_id: str | UnsetType = UNSET
    actual: AnyQuantity | UnsetType = UNSET
    limit: AnyQuantity | UnsetType = UNSET
    pointer: str | UnsetType = UNSET


class Caution(Struct, frozen=True, gc=False):
    """A usual caution of the work at hand, whatever the figures."""

    code: str
    message: str
    citation: str


class Assumption(Struct, frozen=True, gc=False):
    """A value taken for want of one, with every member it stands in for; a quantity too, where it is a figure."""

    pointers: list[str]
    text: str
    citation: str
    standing: Standing
    source_id: str | UnsetType = UNSET
    quantity: AnyQuantity | UnsetType = UNSET


class Step(Struct, frozen=True, gc=False):
    """One line of the working; `pointer` is the part of the request it is about."""

    pointer: str
    symbol: str
    formula: str
    substituted: str
    quantity: AnyQuantity


class Basis(Struct, frozen=True, gc=False):
    """What the answer rests on: service version, hash of the tables, code edition, ids of the sources."""

    service_version: str
    tables_version: str
    code_edition: str
    source_ids: tuple[str, ...]


class Answer(Struct, frozen=True, gc=False, kw_only=True):
    """The envelope of every calculation; it has a verdict where something was held against a limit."""

    verdict: Verdict | UnsetType = UNSET
    result: Any
    findings: list[Finding]
    cautions: list[Caution]
    assumptions: list[Assumption]
    basis: Basis
    notice: str
    working: list[Step] | UnsetType = UNSET
    request: Any | UnsetType = UNSET


NOTICE = (
    "A planning figure. The adopted code with its local amendments, the authority having jurisdiction and a licensed "
    "professional decide."
)

# what the service is for, as its contract and its pages say it
PURPOSE = "The engineering behind a conduit run."
USE = "ductrun turns a conduit run on a drawing into what is priced, ordered, permitted and built."
WITHOUT_ANSWER = "a duct wider than its envelope, cables that do not pass the bore, a size the tables do not hold"
