"""The sheet a calculation writes on: what was assumed, what was found, how it was worked out, on which sources.

A calculation takes its request and a sheet and returns its result; everything an answer says beside the result is
on the sheet. Every sheet of an answer writes into one book. A question without an answer is raised as Unanswerable,
with every fault and where it lies.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, NamedTuple, TypeVar

from msgspec import UNSET

from ductrun.kit.answers import AnyQuantity, Assumption, Caution, Figure, Finding, Step
from ductrun.kit.backing import Backing, backing_of
from ductrun.kit.choices import CodeEdition, Severity, Verdict
from ductrun.kit.defaults import CODE_EDITION, Default
from ductrun.kit.telling import Telling
from ductrun.kit.wording import in_percent, text_of
from ductrun.tables import TABLES
from ductrun.units import Quantity

T = TypeVar("T")

_SECTIONS = {row.rule: row for row in TABLES["code_sections"]}


@cache
def _rule(name: str, edition: str) -> Backing:
    row = _SECTIONS[name]
    section = {"2017": row.edition_2017, "2020": row.edition_2020, "2023": row.edition_2023}[edition]
    return Backing(f"NFPA 70-{edition}, {section}", backing_of(row).standing, row.source)


@dataclass(frozen=True, slots=True)
class Fault:
    """Why a question has no answer: where it lies (a JSON pointer), what, and what would be taken there."""

    pointer: str
    code: str
    message: str
    allowed_values: Sequence[str] = ()
    minimum: AnyQuantity | None = None
    maximum: AnyQuantity | None = None


class UnanswerableError(Exception):
    """A well-formed question that has no answer; carries every fault found."""

    def __init__(self, *faults: Fault) -> None:
        """Keep the faults."""
        super().__init__("; ".join(dict.fromkeys(fault.message for fault in faults)))
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
        """Raise what was gathered, if anything: each fault once, however many parts met it."""
        if self.faults:
            raise UnanswerableError(*{(one.pointer, one.code, one.message): one for one in self.faults}.values())


class Taken(NamedTuple):
    """What a part took for a member that may be given once for all parts: the sheet of the part, that of what it may
    say of its own, None where it can say nothing, the member there, and the default; None where it does without.
    """

    part: Worksheet
    own: Worksheet | None
    member: str
    default: Default[Any] | None


_NEW = object.__new__  # a sheet is made for every part of every request, and asked for its pointer seldom


class Book:
    """What all sheets of one answer write into. `working` is None unless the caller asked for it.

    `settled` holds what was taken because the caller gave nothing, by the pointer of the member left out; `contested`
    what else was taken for a member that one practice leaves out for parts which ask for different defaults. `shared`
    holds, by pointer, what was taken for members that may be given once for all parts or for one alone.
    """

    __slots__ = (
        "cautioned",
        "cautions",
        "contested",
        "edition",
        "findings",
        "follows_code",
        "held",
        "settled",
        "shared",
        "sources",
        "unjudged_count",
        "violated",
        "working",
    )

    def __init__(self, *, working: bool) -> None:
        """Start an empty book."""
        self.working: list[Step] | None = [] if working else None
        self.findings: list[Finding] = []
        self.cautioned: set[str] = set()
        self.cautions: list[Caution] = []
        self.settled: dict[str, Default[Any]] = {}
        self.sources: dict[str, None] = {}  # in the order in which they were cited
        self.edition: str = CODE_EDITION.value.value
        self.follows_code = False
        self.contested: list[tuple[str, Default[Any]]] = []
        self.shared: dict[str, list[Taken]] = {}
        self.held = self.violated = False
        self.unjudged_count = 0

    @property
    def verdict(self) -> Verdict | None:
        """What the answer says of its limits; None where nothing was held against one."""
        if self.violated:
            return Verdict.VIOLATES
        if self.unjudged_count:
            return Verdict.NOT_JUDGED
        return Verdict.COMPLIES if self.held else None

    def take(self, pointer: str, default: Default[Any]) -> None:
        """Take a default in the place of a member; a second one for the same member is told beside the first."""
        known = self.settled.setdefault(pointer, default)
        if known is not default and known.value != default.value:
            self.contested.append((pointer, default))
        if default.backing.source_id is not None:
            self.sources[default.backing.source_id] = None


class Worksheet:
    """A sheet of the book of an answer, about one part of the request.

    It knows two places: `place`, where the members it settles were given, and `about`, what its findings are about
    where that is another place. Members are named relative to them: `bedding`, `sections/3/made`.
    """

    __slots__ = ("_member", "_parent", "about", "book", "tell")

    def __init__(self, tell: Telling, *, working: bool = False) -> None:
        """Start a book in the units of the answer, with the sheet of the whole request."""
        self.tell = tell
        self.about: str | None = None
        self.book = Book(working=working)
        self._parent: Worksheet | None = None
        self._member = ""

    def within(self, member: str, about: str | None = None) -> Worksheet:
        """Give the sheet of a part: its members lie within `member`; its findings are about `about`, a pointer, if that
        is given.
        """
        sheet = _NEW(Worksheet)
        sheet.tell = self.tell
        sheet.about = about or self.about
        sheet.book = self.book
        sheet._parent = self
        sheet._member = member
        return sheet

    @property
    def place(self) -> str:
        """The JSON pointer of this part."""
        return "#" if self._parent is None else self._parent.pointer(self._member)

    def pointer(self, member: str = "") -> str:
        """Give the JSON pointer of a member of this part, of the part itself without one."""
        return f"{self.place}/{member}" if member else self.place

    @property
    def working(self) -> list[Step] | None:
        """The lines of the working, None unless the caller asked for them."""
        return self.book.working

    @property
    def edition(self) -> str:
        """The code edition the answer follows."""
        return self.book.edition

    def settle(self, member: str, given: T | None, default: Default[T]) -> T:
        """Give what the caller gave, or the default, which then stands under the assumptions."""
        if given is not None:
            return given
        self.book.take(self.pointer(member), default)
        return default.value

    def leave(self, member: str) -> None:
        """Say that this part does without a member: nothing is settled; a part of a whole tells it (LayeredSheet)."""

    @property
    def assumptions(self) -> list[Assumption]:
        """Tell what was assumed, alike ones once with every member they stand in for."""
        told: dict[tuple[Backing, str], Assumption] = {}
        for pointer, default in (*self.book.settled.items(), *self.book.contested):
            key = (default.backing, str(default.value))
            if key in told:
                told[key].pointers.append(pointer)
            else:
                told[key] = self.assumption_of(pointer, default)
        return list(told.values())

    def assumption_of(self, pointer: str, default: Default[Any]) -> Assumption:
        """Tell a default as the assumption it is in the place of a member."""
        value: Any = default.value
        citation, standing, source_id = default.backing
        backing = (citation, standing, UNSET if source_id is None else source_id)
        if isinstance(value, bool):
            return Assumption([pointer], "true" if value else "false", *backing)
        if isinstance(value, str):
            return Assumption([pointer], str(value), *backing)
        quantity = self.tell.given(value) if isinstance(value, Quantity) else self._figure(value)
        if pointer.endswith("_percent"):
            quantity = in_percent(value)
        text = f"{value:g}" if isinstance(value, (int, float)) else text_of(quantity)
        return Assumption([pointer], text, *backing, quantity)

    def _figure(self, value: Figure) -> AnyQuantity:
        """Give a figure as a quantity: a bare one is a ratio."""
        return self.tell.ratio(value) if isinstance(value, (int, float)) else value

    def fault(
        self,
        member: str,
        code: str,
        message: str,
        allowed_values: Sequence[str] = (),
        minimum: Figure | None = None,
        maximum: Figure | None = None,
    ) -> Fault:
        """Give a fault of a member of this part, with the values or the bounds that would be taken."""
        least, most = (None if bound is None else self._figure(bound) for bound in (minimum, maximum))
        return Fault(self.pointer(member), code, message, allowed_values, least, most)

    def follow_edition(self, given: CodeEdition | None) -> None:
        """Follow the code edition the caller named, or the default one."""
        self.book.follows_code = True
        self.book.edition = self.settle("code_edition", given, CODE_EDITION)

    def rule(self, name: str) -> Backing:
        """Say where a rule of the code stands in the edition of this answer."""
        self.book.follows_code = True
        rule = _rule(name, self.book.edition)
        self.cite(rule.source_id)
        return rule

    def cite(self, *source_ids: str | None) -> None:
        """Add sources to the basis, each once; what the caller gave has none."""
        sources = self.book.sources
        for source_id in source_ids:
            if source_id is not None:
                sources[source_id] = None

    def find(
        self,
        severity: Severity,
        code: str,
        message: str,
        backing: Backing,
        actual: Figure | None = None,
        limit: Figure | None = None,
        member: str | None = None,
    ) -> None:
        """Add a finding about a member of this part, or about the part; a violation decides the verdict."""
        book, where = self.book, self.about
        if where is None and member is not None:
            where = self.pointer(member)
        citation, standing, source_id = backing
        if source_id is not None:
            book.sources[source_id] = None
        if severity is Severity.VIOLATION:
            book.violated = True
        book.findings.append(
            Finding(
                severity,
                code,
                message,
                citation,
                standing,
                UNSET if source_id is None else source_id,
                UNSET if actual is None else self._figure(actual),
                UNSET if limit is None else self._figure(limit),
                UNSET if where is None else where,
            )
        )

    def judge(self, within: bool | None) -> None:
        """Say whether the limits of this part are kept; None where that could not be judged, which a finding tells."""
        book = self.book
        book.held = True
        if within is None:
            book.unjudged_count += 1
        elif not within:
            book.violated = True

    def caution(self, code: str, message: str, backing: Backing) -> None:
        """Give a usual caution of the work at hand, once an answer however many parts call for it."""
        book = self.book
        if code not in book.cautioned:
            book.cautioned.add(code)
            book.cautions.append(Caution(code, message, backing.citation))
            if backing.source_id is not None:
                book.sources[backing.source_id] = None

    def show(self, symbol: str, formula: str, substituted: str, value: Figure) -> None:
        """Add a line of working, if the caller asked for the working."""
        if self.book.working is not None:
            self.book.working.append(Step(self.about or self.place, symbol, formula, substituted, self._figure(value)))
