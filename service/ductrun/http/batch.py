"""POST /v1/batch: many questions in one request, each answered or refused by itself, in the order they came."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable
from time import perf_counter
from typing import Annotated, Any

from msgspec import UNSET, Meta, Raw, Struct, UnsetType, json, structs
from msgspec import ValidationError as Unfit
from pydantic import Field, StringConstraints, ValidationError
from starlette.types import Receive, Scope, Send

from ductrun.http import strict_json
from ductrun.http.calculations import ClientGone, answer_to, read_body, read_query, send_written
from ductrun.http.faults import RequestSchema, errors_of
from ductrun.http.problems import KINDS, MEDIA_TYPE, Problem, ProblemError, ProblemRaised, body_of
from ductrun.http.request_id import REQUEST_ID
from ductrun.operations import OPERATIONS
from ductrun.operations.inputs import Form
from ductrun.units import Code

MOST_ITEMS = 1_000
_SLICE = 0.001  # seconds of work before other requests get their turn
_log = logging.getLogger("ductrun")
_encode = json.Encoder().encode

OperationName = Code("OperationName", {operation.operation_id.upper(): operation.name for operation in OPERATIONS})  # type: ignore[call-arg]
OperationName.__doc__ = "The calculations an item may ask for."


EXAMPLE = {
    "items": [
        {"id": f"run-{number}", "operation": operation.name, "request": operation.example}
        for number, operation in enumerate(OPERATIONS[:2], start=1)
    ]
}


class BatchItem(Form):
    """One question of a batch."""

    id: Annotated[str, StringConstraints(max_length=200)] = Field(
        description="Any text of the caller's, given back with the answer.", examples=["run-1"]
    )
    operation: OperationName = Field(description="The calculation: the last part of its path.", examples=["fill"])  # type: ignore[valid-type]
    request: dict[str, Any] = Field(
        description="The body that calculation takes on its own path.",
        examples=[OPERATIONS[0].example],
    )


class BatchRequest(Form):
    """Questions to answer in one go."""

    items: Annotated[list[BatchItem], Field(min_length=1, max_length=MOST_ITEMS)] = Field(
        description="The questions, of any calculations in any order."
    )


class BatchItemAnswer(Struct, frozen=True, gc=False):
    """What became of one question."""

    status: Annotated[int, Meta(description="HTTP status the question would have had by itself.", ge=200, le=599)]
    id: Annotated[str | UnsetType, Meta(description="Id of the item; left out if it had none that could be read.")] = (
        UNSET
    )
    answer: Annotated[
        dict[str, Any] | UnsetType, Meta(description="The answer, if the status is 200: that of the calculation.")
    ] = UNSET
    problem: Annotated[
        Problem | UnsetType, Meta(description="The problem otherwise; its pointers start at the body of the batch.")
    ] = UNSET


class BatchAnswer(Struct, frozen=True, gc=False):
    """What became of each question, in order."""

    items: list[BatchItemAnswer]


class _Envelope(Struct, forbid_unknown_fields=True, gc=False):
    items: Annotated[list[Raw], Meta(min_length=1, max_length=MOST_ITEMS)]


class _Item(Struct, forbid_unknown_fields=True, gc=False):
    id: Annotated[str, Meta(max_length=200)]
    operation: str
    request: Raw


class _Named(Struct, gc=False):
    id: Annotated[str, Meta(max_length=200)]


class _Opaque(Form):
    items: Annotated[list[Any], Field(min_length=1, max_length=MOST_ITEMS)]


_read_envelope = json.Decoder(_Envelope).decode
_read_item = json.Decoder(_Item).decode
_read_name = json.Decoder(_Named).decode


def _refuse(model: type[Form], body: bytes | Raw) -> ProblemRaised:
    """Give the problem of a body, or an item, that has not the form it should have."""
    try:
        model.__pydantic_validator__.validate_json(bytes(body))
    except ValidationError as error:
        errors = errors_of(error, RequestSchema(model.model_json_schema()))
        return ProblemRaised("invalid_request", f"{len(errors)} field(s) cannot be used.", errors)
    raise ArithmeticError(f"two readers of {model.__name__} disagree")


def _name_of(raw: Raw) -> str | UnsetType:
    try:
        return _read_name(raw).id
    except Unfit:
        return UNSET


class Batch:
    """The endpoint of batches."""

    def __init__(self, max_body_bytes: int) -> None:
        """Prepare the calculations an item may ask for."""
        self.answers: dict[str, Callable[[bytes, bytes], bytes]] = {
            operation.name: answer_to(operation) for operation in OPERATIONS
        }
        self.max_body_bytes = max_body_bytes
        self.__name__ = "calculate_batch"

    def _one(self, index: int, raw: Raw, query: bytes, instance: str) -> bytes:
        """Answer one item; whatever is wrong with it stays its own."""
        identity: str | UnsetType = UNSET
        start = f"#/items/{index}"
        try:
            try:
                item = _read_item(raw)
                identity = item.id
                answer = self.answers[item.operation]
            except (Unfit, KeyError):
                identity = _name_of(raw)
                raise _refuse(BatchItem, raw) from None
            start += "/request"
            written = answer(bytes(item.request), query)
            return b'{"status":200,"id":%b,"answer":%b}' % (_encode(identity), written)
        except ProblemRaised as problem:
            written = body_of(problem.kind, problem.detail, instance, _moved(problem.errors, start))
            status = problem.kind.status
        except Exception:
            _log.exception("request %s failed at item %d", instance, index)
            written = body_of(KINDS["internal_error"], "The service failed. Report the request id.", instance)
            status = 500
        return _encode(BatchItemAnswer(status, identity, problem=Raw(written)))  # type: ignore[arg-type]

    async def app(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one batch, with breaks in which other requests are answered."""
        query = scope["query_string"]
        try:
            body = await read_body(scope, receive, self.max_body_bytes)
            read_query(query)
            strict_json.check(body)
            try:
                envelope = _read_envelope(body)
            except Unfit:
                raise _refuse(_Opaque, body) from None
        except ProblemRaised as problem:
            written = body_of(problem.kind, problem.detail, scope[REQUEST_ID], problem.errors)
            await send_written(send, problem.kind.status, MEDIA_TYPE.encode(), written)
            return
        except ClientGone:
            return
        answers = []
        turn = perf_counter()
        for index, raw in enumerate(envelope.items):
            answers.append(self._one(index, raw, query, scope[REQUEST_ID]))
            if perf_counter() - turn > _SLICE:
                await asyncio.sleep(0)
                turn = perf_counter()
        await send_written(send, 200, b"application/json", b'{"items":[%b]}' % b",".join(answers))

    async def __call__(self) -> None:
        """Stand in the contract: FastAPI reads this signature, the route answers before it is ever called."""
        raise RuntimeError("a batch is answered by its route")


def _moved(errors: list[ProblemError] | None, start: str) -> list[ProblemError] | None:
    """Give faults whose pointers start at the body of the batch."""
    return errors and [
        structs.replace(error, pointer=start + error.pointer[1:]) if error.pointer else error for error in errors
    ]
