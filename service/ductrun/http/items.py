"""One question among many: read, answered or refused by itself, whatever becomes of its neighbours."""

from __future__ import annotations

import logging
from collections.abc import Callable
from typing import Annotated, Any

from msgspec import UNSET, Meta, Raw, Struct, UnsetType, json, structs
from pydantic import Field, StringConstraints, ValidationError

from ductrun.http import strict_json
from ductrun.http.calculations import answer_to
from ductrun.http.exchange import Chosen
from ductrun.http.faults import errors_of
from ductrun.http.problems import Problem, ProblemError, ProblemRaised, body_of, failure
from ductrun.kit.forms import Form
from ductrun.kit.reading import REFUSED
from ductrun.subjects import OPERATIONS
from ductrun.units import Code

_log = logging.getLogger("ductrun")
_encode = json.Encoder().encode

OperationName = Code("OperationName", {operation.operation_id.upper(): operation.name for operation in OPERATIONS})  # type: ignore[call-arg]
OperationName.__doc__ = "The calculations an item may ask for."

EXAMPLES: list[dict[str, Any]] = [
    {"id": f"run-{number}", "operation": operation.name, "request": operation.example}
    for number, operation in enumerate(OPERATIONS[:2], start=1)
]


class BatchItem(Form):
    """One question of a batch, or one line of a stream."""

    id: Annotated[str, StringConstraints(max_length=200)] = Field(
        description="Any text of the caller's, given back with the answer.", examples=["run-1"]
    )
    operation: OperationName = Field(description="The calculation: the last part of its path.", examples=["fill"])  # type: ignore[valid-type]
    request: dict[str, Any] = Field(
        description="The body that calculation takes on its own path.",
        examples=[OPERATIONS[0].example],
    )


Status = Annotated[int, Meta(description="HTTP status the question would have had by itself.", ge=200, le=599)]
Identity = Annotated[str | UnsetType, Meta(description="Id of the item; left out if it had none that could be read.")]
ItemAnswer = Annotated[
    dict[str, Any] | UnsetType, Meta(description="The answer, if the status is 200: that of the calculation.")
]


class BatchItemAnswer(Struct, frozen=True, gc=False):
    """What became of one question."""

    status: Status
    id: Identity = UNSET
    answer: ItemAnswer = UNSET
    problem: Annotated[
        Problem | UnsetType, Meta(description="The problem otherwise; its pointers start at the body of the batch.")
    ] = UNSET


class _Item(Struct, forbid_unknown_fields=True, gc=False):
    id: Annotated[str, Meta(max_length=200)]
    operation: str
    request: Raw


class _Named(Struct, gc=False):
    id: Annotated[str, Meta(max_length=200)]


_read_item = json.Decoder(_Item).decode
_read_name = json.Decoder(_Named).decode


class Items:
    """Answers items: each becomes one JSON object, with its status, its id, and its answer or its problem."""

    def __init__(self) -> None:
        """Prepare the calculations an item may ask for."""
        self.answers: dict[str, Callable[[bytes, Chosen], bytes]] = {
            operation.name: answer_to(operation) for operation in OPERATIONS
        }

    def settle(self, item: bytes, chosen: Chosen, instance: str, pointer: str, place: bytes = b"") -> tuple[int, bytes]:
        """Answer an item; whatever is wrong with it stays its own.

        `pointer` is where the item stands in what the caller sent; `place` is a member that goes before the others.
        """
        identity: str | UnsetType = UNSET
        try:
            try:
                read = _read_item(item)
                request = bytes(read.request)
                if not _each_member_once(item, read, request):
                    strict_json.check(item)
                identity = read.id
                answer = self.answers[read.operation]
            except (*REFUSED, KeyError):
                strict_json.check(item)
                identity = _name_of(item)
                raise refusal(BatchItem, item) from None
            pointer += "/request"
            written = answer(request, chosen)
            return 200, b'{%b"status":200,"id":%b,"answer":%b}' % (place, _encode(identity), written)
        except ProblemRaised as problem:
            return refused(problem, instance, identity, _moved(problem.errors, pointer), place)
        except Exception:
            _log.exception("request %s failed at %s", instance, place.decode() or pointer)
            return refused(failure(), instance, identity, None, place)


def _each_member_once(item: bytes, read: _Item, request: bytes) -> bool:
    """Tell by its colons whether an item has its three members once; no for one that needs a closer look."""
    outside = item.count(b":") - request.count(b":") - read.id.count(":")
    return outside == 3 and b"\\" not in item


def refused(
    problem: ProblemRaised,
    instance: str,
    identity: str | UnsetType = UNSET,
    errors: list[ProblemError] | None = None,
    place: bytes = b"",
) -> tuple[int, bytes]:
    """Write what became of an item that has no answer."""
    written = body_of(problem.kind, problem.detail, instance, errors)
    named = b"" if identity is UNSET else b'"id":%b,' % _encode(identity)
    return problem.kind.status, b'{%b"status":%d,%b"problem":%b}' % (place, problem.kind.status, named, written)


def refusal(model: type[Form], body: bytes) -> ProblemRaised:
    """Give the problem of a body, or an item, that has not the form it should have."""
    try:
        model.__pydantic_validator__.validate_json(body)
    except ValidationError as error:
        errors = errors_of(error, model)
        return ProblemRaised("invalid_request", f"{len(errors)} field(s) cannot be used.", errors)
    raise ArithmeticError(f"two readers of {model.__name__} disagree")


def _name_of(item: bytes) -> str | UnsetType:
    try:
        return _read_name(item).id
    except REFUSED:
        return UNSET


def _moved(errors: list[ProblemError] | None, start: str) -> list[ProblemError] | None:
    """Give faults whose pointers start at what the caller sent."""
    return errors and [
        structs.replace(error, pointer=start + error.pointer[1:]) if error.pointer else error for error in errors
    ]
