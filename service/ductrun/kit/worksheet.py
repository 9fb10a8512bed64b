"""The sheet a calculation writes on: what was assumed, what was found, how it was worked out, on which sources.

A calculation takes its request and a sheet and returns its result; everything an answer says beside the result is
on the sheet. A question without an answer is raised as Unanswerable, with every fault and where it lies.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, TypeVar

from msgspec import UNSET

from ductrun.kit.answers import AnyQuantity, Assumption, Figure, Finding, Step
from ductrun.kit.choices import CodeEdition, Severity
from ductrun.kit.defaults import Default, choice
from ductrun.kit.telling import Telling
from ductrun.tables import TABLES
from ductrun.units import Quantity

T = TypeVar("T")

CODE_EDITION: Default[CodeEdition] = choice("fill.code_edition", CodeEdition)
_SECTIONS = {row.rule: row for row in TABLES["code_sections"]}


@dataclass(frozen=True, slots=True)
class Fault:
    """Why a question has no answer: where it lies (a JSON pointer), what, and what would be allowed."""

    pointer: str
    code: str
    message: str
    allowed: Any = None


class UnanswerableError(Exception):
    """A well-formed question that has no answer; carries every fault found."""

    def __init__(self, *faults: Fault) -> None:
        """Keep the faults."""
        super().__init__("; ".join(fault.message for fault in faults))
        self.faults = faults


class Gathering:
    """Gathers the faults of several questions, so that all come back at once: `with faults: ...`, then `stop()`."""

    __slots__ = ("faults",)

    def __init__(self) -> None:
        """Start with no fault."""
        self.faults: list[Fault] = []

    def __enter__(self) -> None:
        """Ask a question."""

    def __exit__(self, kind: object, error: BaseException | None, trace: object) -> bool:
        """Keep its faults, if it had no answer; let every other error through."""
        if not isinstance(error, UnanswerableError):
            return False
        self.faults += error.faults
        return True

    def stop(self) -> None:
        """Raise what was gathered, if anything."""
        if self.faults:
            raise UnanswerableError(*self.faults)


class Worksheet:
    """Collects what an answer says beside its result. `working` is None unless the caller asked for it."""

    __slots__ = ("assumptions", "edition", "findings", "sources", "tell", "working")

    def __init__(self, tell: Telling, *, working: bool) -> None:
        """Start a sheet in the units of the answer."""
        self.tell = tell
        self.working: list[Step] | None = [] if working else None
        self.findings: list[Finding] = []
        self.assumptions: list[Assumption] = []
        self.sources: dict[str, None] = {}  # in the order in which they were cited
        self.edition: str = CODE_EDITION.value.value

    def settle(self, field: str, given: T | None, default: Default[T]) -> T:
        """Give what the caller gave, or the default, which then stands under the assumptions."""
        if given is not None:
            return given
        value: Any = default.value
        told = self.tell.given(value) if isinstance(value, Quantity) else value
        self.assume(field, told, default.source, default.source_id)
        return default.value

    def settle_once(self, field: str, given: T | None, default: Default[T]) -> T:
        """Settle a field that is asked for several times and stands under the assumptions once."""
        if given is None and any(assumption.field == field for assumption in self.assumptions):
            return default.value
        return self.settle(field, given, default)

    def assume(self, field: str, value: float | str | bool | AnyQuantity, source: str, source_id: str) -> None:
        """Put a value the caller left out under the assumptions."""
        self.assumptions.append(Assumption(field, value, source))
        self.cite(source_id)

    def follow_edition(self, given: CodeEdition | None) -> None:
        """Follow the code edition the caller named, or the default one."""
        self.edition = self.settle("#/code_edition", given, CODE_EDITION)

    def rule(self, name: str) -> str:
        """Say where a rule of the code stands in the edition of this answer."""
        row = _SECTIONS[name]
        section = {"2017": row.edition_2017, "2020": row.edition_2020, "2023": row.edition_2023}[self.edition]
        self.cite(row.source)
        return f"NFPA 70-{self.edition}, {section}"

    def cite(self, *source_ids: str) -> None:
        """Add sources to the basis, each once."""
        self.sources.update(dict.fromkeys(source_ids))

    def find(
        self,
        severity: Severity,
        code: str,
        message: str,
        source: str,
        actual: Figure | None = None,
        limit: Figure | None = None,
        pointer: str | None = None,
    ) -> None:
        """Add a finding; `pointer` is the member of the request it is about."""
        self.findings.append(
            Finding(
                severity,
                code,
                message,
                source,
                UNSET if actual is None else actual,
                UNSET if limit is None else limit,
                UNSET if pointer is None else pointer,
            )
        )

    def show(self, symbol: str, formula: str, substituted: str, value: Figure) -> None:
        """Add a line of working, if the caller asked for the working."""
        if self.working is not None:
            self.working.append(Step(symbol, formula, substituted, value))


def text_of(told: AnyQuantity) -> str:
    """Write a told quantity in a sentence, to five digits at most: the figure itself is never rounded."""
    return f"{told.value:,.5g} {told.unit}" if abs(told.value) < 1e5 else f"{told.value:,.0f} {told.unit}"


def listing(items: Sequence[str]) -> str:
    """Write a list in a sentence."""
    return ", ".join(items)
