"""A change of a request: members of its JSON that are set, and where what is found in the changed run lies in it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any, NamedTuple

from ductrun.kit.wording import listing
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind

Pointers = Callable[[str], str]


def as_given(pointer: str) -> str:
    """Give a pointer of a run in which nothing moves."""
    return pointer


class Edit(NamedTuple):
    """One member that is set, or, where `put_in`, one item that is put into a list before the one at its place."""

    path: str
    value: Any
    put_in: bool = False


class Change(NamedTuple):
    """One change: its kind, what to do in a sentence, its edits; `origin` gives for a pointer in the changed request
    that of the same part in the request given. The sentence ends in the names of what is changed `alike`, if any.
    """

    kind: ChangeKind
    message: str
    edits: list[Edit]
    origin: Pointers = as_given
    alike: tuple[str, ...] = ()

    @property
    def sentence(self) -> str:
        """What to do, with the names of what is changed alike."""
        return f"{self.message} {listing(self.alike)}." if self.alike else self.message


class Ladder(NamedTuple):
    """Changes of one kind from the smallest to the largest, against violations of some codes at some place.

    `pointer` is None where any place will do. It is climbed until one of them is gone, or `all_at_once`.
    """

    codes: frozenset[str]
    pointer: str | None
    rungs: list[Change]
    all_at_once: bool = False


def together(changes: Sequence[Change]) -> Change:
    """Make changes of one kind one change: what several of them say or set alike, once."""
    edits = {_sameness(edit): edit for change in changes for edit in change.edits}
    named: dict[str, list[str]] = {}
    for change in changes:
        named.setdefault(change.message, []).extend(change.alike)
    if len(named) == 1:
        [alike] = named.values()
        return changes[0]._replace(alike=tuple(dict.fromkeys(alike)), edits=list(edits.values()))
    said = [
        Change(changes[0].kind, message, [], alike=tuple(dict.fromkeys(alike))).sentence.removesuffix(".")
        for message, alike in named.items()
    ]
    rest = [f"{words[0].lower()}{words[1:]}" for words in said[1:]]
    return changes[0]._replace(message=f"{'; '.join([said[0], *rest])}.", edits=list(edits.values()), alike=())


def _sameness(edit: Edit) -> tuple[str, bool, str]:
    return edit.path, edit.put_in, repr(edit.value)


def member(body: Any, path: str) -> Any:
    """Give the member of a document at a JSON pointer, None if it is not there."""
    node = body
    for step in path.split("/")[1:]:
        if isinstance(node, list):
            node = node[int(step)]
        elif isinstance(node, dict):
            node = node.get(step)
        else:
            return None
    return node


def applied(body: Any, edits: Iterable[Edit]) -> Any:
    """Give a document with edits made; what they do not name is that of the document given."""
    for edit in edits:
        body = _made(body, edit.path.split("/")[1:], edit)
    return body


def _made(node: Any, steps: Sequence[str], edit: Edit) -> Any:
    step, *inner = steps
    if isinstance(node, list):
        items, at = list(node), int(step)
        if edit.put_in and not inner:
            items.insert(at, edit.value)
        else:
            items[at] = _made(items[at], inner, edit) if inner else edit.value
        return items
    members = {} if node is None else dict(node)  # an object that was left out is made
    members[step] = _made(members.get(step), inner, edit) if inner else edit.value
    return members


def pointers_of(edits: Iterable[Edit]) -> list[str]:
    """Give the pointers of what edits set, as they are when all are made: an item put in moves those behind it."""
    paths: list[list[str]] = []
    for edit in edits:
        path = edit.path.split("/")[1:]
        if edit.put_in:
            around, at = path[:-1], int(path[-1])
            for one in paths:
                if one[: len(around)] == around and int(one[len(around)]) >= at:
                    one[len(around)] = str(int(one[len(around)]) + 1)
        paths.append(path)
    return list(dict.fromkeys("/".join(["#", *one]) for one in paths))
