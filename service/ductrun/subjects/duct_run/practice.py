"""Practice given once for all, with what a part of the run has of its own laid over it."""

from __future__ import annotations

from functools import cache
from typing import Any, TypeVar, cast

from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default
from ductrun.kit.forms import Form
from ductrun.kit.worksheet import Book, Taken, Worksheet

T = TypeVar("T")
F = TypeVar("F", bound=Form)


class _Over:
    """Members of one object, with others laid over them; it is read and never written."""

    __slots__ = ("_own", "_shared")

    def __init__(self, shared: Any, own: dict[str, Any]) -> None:
        self._shared = shared
        self._own = own

    def __getattr__(self, name: str) -> Any:
        return self._own[name] if name in self._own else getattr(self._shared, name)


def laid_over(shared: T, own: dict[str, Any]) -> T:
    """Give an object with other members laid over its own."""
    return cast(T, _Over(shared, own)) if own else shared


def members_of(form: Form | None) -> dict[str, Any]:
    """Give the members that a form, or the record of one, was given."""
    if form is None:
        return {}
    names = getattr(form, "__struct_fields__", None) or type(form).model_fields
    return {name: value for name in names if (value := getattr(form, name)) is not None}


class LayeredSheet(Worksheet):
    """The sheet of members of which some were given in another place: each is told where it was given.

    `redirected` holds the pointers of those, by member; `own` is the sheet of the part, where a default goes that is
    another there than in other parts; None where a part can say nothing of its own.
    """

    __slots__ = ("_own", "_redirected", "_taken", "_within")

    def __init__(self, shared: Worksheet, own: Worksheet | None, redirected: dict[str, str], about: str | None) -> None:
        """Lay the places of members over those of a sheet; what is found is about `about`, a pointer."""
        self.tell = shared.tell
        self.about = about
        self.book = shared.book
        self._parent, self._member = shared, ""
        self._within, self._own, self._redirected = shared.place, own, redirected
        self._taken: list[tuple[str, Default[Any] | None]] = []

    @property
    def place(self) -> str:
        """The JSON pointer of what is given once for all."""
        return self._within

    def pointer(self, member: str = "") -> str:
        """Give the JSON pointer of a member where it was given."""
        if self._redirected:
            first, slash, rest = member.partition("/")
            if first in self._redirected:
                return f"{self._redirected[first]}{slash}{rest}"
        return f"{self._within}/{member}" if member else self._within

    def settle(self, member: str, given: T | None, default: Default[T]) -> T:
        """Settle a member; where its default then stands is said when all parts are settled (`settle_shared`)."""
        if given is not None:
            return given
        self._take(member, default)
        return default.value

    def leave(self, member: str) -> None:
        """Say that this part does without a member, which others may take: given for all, it would hold here too."""
        self._take(member, None)

    def repeat(self, other: LayeredSheet) -> None:
        """Settle what another part settled, which was worked out for this one too."""
        for member, default in other._taken:
            self._take(member, default)

    def _take(self, member: str, default: Default[Any] | None) -> None:
        self._taken.append((member, default))
        own = None if default is None else self._own
        self.book.shared.setdefault(self.pointer(member), []).append(Taken(self, own, member, default))


def settle_shared(book: Book) -> list[Taken]:
    """Say where the defaults stand that parts of a run took: once for all where they took the same, else with each;
    give what stands nowhere, for its part can say nothing of its own.

    Where one part took several, as for pipes of two sizes, no one value of a member would say that: it is a rule then,
    and the result tells what came of it.
    """
    untold: list[Taken] = []
    for pointer, taken in book.shared.items():
        first = taken[0].default
        if all(one.default is first or _alike(one.default, first) for one in taken):
            if first is not None:
                book.take(pointer, first)
        else:
            untold += _settle_apart(book, taken)
    book.shared.clear()
    return untold


def find_untold(one: Taken) -> None:
    """Tell of a default that it was taken for its part alone, where no member could be given back for it."""
    assert one.default is not None  # noqa: S101  (what a part does without is not untold)
    name = one.member.replace("_", " ")
    text = one.part.assumption_of(one.member, one.default).text
    one.part.find(
        Severity.NOTE,
        "taken_here_alone",
        f"{name[0].upper()}{name[1:]} is not given, and no one value holds for all of the run: {text} is taken here.",
        one.default.backing,
        member="",
    )


def _alike(default: Default[Any] | None, other: Default[Any] | None) -> bool:
    return default is not None and other is not None and bool(default.value == other.value)


def _settle_apart(book: Book, taken: list[Taken]) -> list[Taken]:
    by_part: dict[str, list[Default[Any]]] = {}
    untold: dict[tuple[str | None, str], Taken] = {}
    for one in taken:
        if one.default is None:
            continue
        if one.own is None:
            untold.setdefault((one.part.about, str(one.default.value)), one)
        else:
            by_part.setdefault(one.own.pointer(one.member), []).append(one.default)
        if one.default.backing.source_id is not None:
            book.sources[one.default.backing.source_id] = None
    for pointer, defaults in by_part.items():
        if all(one.value == defaults[0].value for one in defaults):
            book.take(pointer, defaults[0])
    return list(untold.values())


class MemberSheet(Worksheet):
    """The sheet of what one member says of a whole part: every fault and finding in it is of that member."""

    __slots__ = ()

    def __init__(self, parent: Worksheet, member: str) -> None:
        """Stand for a member of a part."""
        self.tell, self.book = parent.tell, parent.book
        self.about = parent.about
        self._parent, self._member = parent, member

    def pointer(self, member: str = "") -> str:  # noqa: ARG002  (all of it is one member)
        """Give the JSON pointer of the member."""
        return self.place


@cache
def _empty(form: type[F]) -> F:
    """Give a form that nothing was written in."""
    return form()


def practice_of(
    form: type[F],
    name: str,
    shared: F | None,
    own: F | None,
    run: Worksheet,
    part: Worksheet,
    either: frozenset[str] = frozenset(),
) -> tuple[F, LayeredSheet]:
    """Give the practice of a part and its sheet: what the run gives, and over it what the part has of its own.

    `run` and `part` are the sheets of the whole request and of the part, whose member `name` the practice is. Of the
    members of `either` one alone is given: what the part has of its own displaces the others of the run.
    """
    common, mine = run.within(name), part.within(name)
    given = members_of(own)
    redirected = {member: mine.pointer(member) for member in given}
    laid = dict.fromkeys(either, None) | given if given.keys() & either else given
    return laid_over(_empty(form) if shared is None else shared, laid), LayeredSheet(
        common, mine, redirected, part.place
    )


def practice_for_all(
    form: type[F], name: str, shared: F | None, run: Worksheet, part: Worksheet
) -> tuple[F, Worksheet]:
    """Give the practice of a part that can say nothing of its own in it, and its sheet."""
    return _empty(form) if shared is None else shared, LayeredSheet(run.within(name), None, {}, part.place)
