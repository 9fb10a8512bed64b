"""One question among many: read, answered or refused by itself, whatever becomes of its neighbours."""

from __future__ import annotations

import logging
from collections.abc import Callable, Mapping
from functools import cache, partial
from typing import Annotated, Any

from msgspec import UNSET, Meta, Raw, Struct, json, structs
from pydantic import StringConstraints

from ductrun.http.problems import Fault, ProblemRaised, body_of, failure
from ductrun.http.refusals import problem_of
from ductrun.kit import strict_json
from ductrun.kit.answering import BYTES_A_STEP, REFUSALS, Answering, Chosen, PutOffError, read_slowly
from ductrun.kit.bounding import LARGE, check_marks, most_values
from ductrun.kit.forms import Form
from ductrun.kit.reading import REFUSED
from ductrun.subjects import OPERATIONS, Operation
from ductrun.units import Code

_log = logging.getLogger("ductrun")
_encode = json.Encoder().encode

Settled = tuple[int, bytes]  # the status of an item, and what is written of it
LONGEST_ID = 200
_JOINTS = str.maketrans("-/", "__")


def in_an_item(name: str) -> str:
    """Give the name of an operation as an item has it: that of its path in one word."""
    return name.translate(_JOINTS)


NAMED: dict[str, Operation[Any, Any, Any]] = {in_an_item(operation.name): operation for operation in OPERATIONS}

OperationName = Code("OperationName", {name.upper(): name for name in NAMED})  # type: ignore[call-arg]
OperationName.__doc__ = "The calculations an item may ask for."

EXAMPLES: list[dict[str, Any]] = [
    {"id": f"run-{number}", "operation": name, "request": operation.example}
    for number, (name, operation) in enumerate(list(NAMED.items())[:2], start=1)
]


class Item(Form):
    """What is said of an item that cannot be used; its request is the calculation's own to judge."""

    id: Annotated[str, StringConstraints(max_length=LONGEST_ID)]
    operation: OperationName  # type: ignore[valid-type]
    request: dict[str, Any]


class _Item(Struct, forbid_unknown_fields=True, gc=False):
    id: Annotated[str, Meta(max_length=LONGEST_ID)]
    operation: str
    request: Raw


class _Named(Struct, gc=False):
    id: Any = UNSET
    operation: Any = UNSET


_ANSWER = b'{"type":"answer",%b"status":200,"answer":%b}'
_read_item = json.Decoder(_Item).decode
_read_name = json.Decoder(_Named).decode


class Items:
    """Answers items: each becomes one JSON object, with its id, its operation, its status, its answer or problem."""

    def __init__(self, answers: Mapping[str, Answering]) -> None:
        """Keep what answers each operation, by its name in an item."""
        self.answers = {name: answers[operation.name] for name, operation in NAMED.items()}

    def settle(self, item: bytes, chosen: Chosen, instance: str, place: bytes = b"") -> Settled:
        """Answer an item; whatever is wrong with it stays its own. Raises PutOffError for one that takes long.

        `place` is a member that goes before the others.
        """
        if len(item) > LARGE:
            raise PutOffError(partial(self._settle_large, item, chosen, instance, place), len(item) / BYTES_A_STEP)
        return self._settle(item, chosen, instance, place)

    def _settle_large(self, item: bytes, chosen: Chosen, instance: str, place: bytes) -> Settled:
        try:
            check_marks(item, _most_values())
            return self._settle(item, chosen, instance, place)
        except REFUSALS as refusal:
            return _told(refusal, instance, place)

    def _settle(self, item: bytes, chosen: Chosen, instance: str, place: bytes) -> Settled:
        named, start = place, "#"
        try:
            try:
                read = _read_item(item)
                request = bytes(read.request)
                if not _each_member_once(item, read, request):
                    strict_json.check(item)
                answer = self.answers[read.operation]
            except (*REFUSED, KeyError):
                strict_json.check(item)
                named += self.name_of(item)
                read_slowly(Item, item)
                raise
            named += b'"id":%b,"operation":"%b",' % (_encode(read.id), read.operation.encode())
            start = "#/request"
            return 200, _ANSWER % (named, answer(request, chosen))
        except PutOffError as put_off:
            finish = partial(self._finish, put_off.finish, instance, named)
            raise PutOffError(finish, put_off.steps) from None
        except REFUSALS as refusal:
            return _told(refusal, instance, named, start)
        except Exception:
            return _failed(instance, named)

    def _finish(self, finish: Callable[[], bytes], instance: str, named: bytes) -> Settled:
        try:
            return 200, _ANSWER % (named, finish())
        except PutOffError as again:
            raise PutOffError(partial(self._finish, again.finish, instance, named), again.steps) from None
        except REFUSALS as refusal:
            return _told(refusal, instance, named, "#/request")
        except Exception:
            return _failed(instance, named)

    def name_of(self, item: bytes) -> bytes:
        """Write what can be read of the id and the operation of an item that cannot be used."""
        try:
            read = _read_name(item)
        except REFUSED:
            return b""
        named = b""
        if isinstance(read.id, str) and len(read.id) <= LONGEST_ID:
            named += b'"id":%b,' % _encode(read.id)
        if isinstance(read.operation, str) and read.operation in self.answers:
            named += b'"operation":"%b",' % read.operation.encode()
        return named


def _each_member_once(item: bytes, read: _Item, request: bytes) -> bool:
    """Tell by its colons whether an item has its three members once; no for one that needs a closer look."""
    outside = item.count(b":") - request.count(b":") - read.id.count(":")
    return outside == 3 and b"\\" not in item


def _told(refusal: Exception, instance: str, named: bytes, start: str = "#") -> Settled:
    problem = problem_of(refusal)
    return refused(problem, instance, named, _moved(problem.errors, start))


def _failed(instance: str, named: bytes) -> Settled:
    _log.exception("request %s failed at an item (%s)", instance, named.decode())
    return refused(failure(), instance, named)


@cache
def _most_values() -> int:
    return LONGEST_ID + 3 + max(map(most_values, [operation.request for operation in OPERATIONS]))


def refused(problem: ProblemRaised, instance: str, named: bytes, errors: list[Fault] | None = None) -> Settled:
    """Write what became of an item that has no answer; `named` are the members that say which item it is."""
    written = body_of(problem.kind, problem.detail, instance, errors)
    return problem.kind.status, b'{"type":"problem",%b"status":%d,"problem":%b}' % (
        named,
        problem.kind.status,
        written,
    )


def _moved(errors: list[Fault] | None, start: str) -> list[Fault] | None:
    """Give faults whose pointers start at the item."""
    return errors and [
        structs.replace(error, pointer=start + error.pointer[1:]) if error.pointer else error for error in errors
    ]
