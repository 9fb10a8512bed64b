"""A change of a request: operations on its JSON, and where what is found in the changed run lies in the one given."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any, NamedTuple

from ductrun.subjects.duct_run.suggesting.suggestions import ChangeKind, PatchOp, PatchOperation

Pointers = Callable[[str], str]


def _as_given(pointer: str) -> str:
    return pointer


class Edit(NamedTuple):
    """One member that is set, or one item that is put in: as an operation of a patch, but of any value."""

    op: PatchOp
    path: str
    value: Any


class Change(NamedTuple):
    """One change: its kind, what to do in a sentence, its edits; `origin` gives for a pointer in the changed request
    that of the same part in the request given.
    """

    kind: ChangeKind
    message: str
    edits: list[Edit]
    origin: Pointers = _as_given


class Ladder(NamedTuple):
    """Changes of one kind from the smallest to the largest, against violations of some codes at some place.

    `pointer` is None where any place will do.
    """

    codes: frozenset[str]
    pointer: str | None
    rungs: list[Change]


def setting(body: Any, path: str, value: Any) -> Edit:
    """Give the operation that sets a member: put in where it was left out, in place of what is there otherwise."""
    return Edit(PatchOp.REPLACE if member(body, path) is not None else PatchOp.ADD, path, value)


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


def patch_of(body: Any, edits: Iterable[Edit]) -> list[PatchOperation]:
    """Give the patch that makes edits, each of an object, so that its values have one type: what is set to a text, a
    number or a list comes with the object around it.
    """
    patch: list[PatchOperation] = []
    changed = body
    for edit in edits:
        if isinstance(edit.value, dict):
            whole = edit
        else:
            around, _, last = edit.path.rpartition("/")
            whole = Edit(PatchOp.REPLACE, around, member(changed, around) | {last: edit.value})
        changed = applied(changed, [whole])
        if patch and whole.op is PatchOp.REPLACE and patch[-1].path == whole.path:
            whole = Edit(patch.pop().op, *whole[1:])
        patch.append(PatchOperation(*whole))
    return patch


def applied(body: Any, edits: Iterable[Edit | PatchOperation]) -> Any:
    """Give a document with edits made; what they leave alone is shared with the one given, not copied."""
    for operation in edits:
        body = _with(body, operation.path.split("/")[1:], operation)
    return body


def _with(node: Any, steps: list[str], operation: Edit | PatchOperation) -> Any:
    step, *rest = steps
    place: Any = int(step) if isinstance(node, list) else step
    changed = node.copy()
    if rest:
        changed[place] = _with(node[place], rest, operation)
    elif isinstance(node, list) and operation.op is PatchOp.ADD:
        changed.insert(place, operation.value)
    else:
        changed[place] = operation.value
    return changed
