"""The life of a calculation: bytes in, validated once, computed, written once.

FastAPI owns the route and its place in the contract; the request itself is answered here, on the event loop, by one
small ASGI application for each operation.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Protocol
from urllib.parse import parse_qsl

from fastapi.routing import APIRoute
from msgspec import UNSET, json
from pydantic import ValidationError
from starlette.routing import Match
from starlette.types import Receive, Scope, Send

from ductrun import __version__
from ductrun.http import strict_json
from ductrun.http.faults import RequestSchema, errors_of, errors_of_faults
from ductrun.http.problems import MEDIA_TYPE, ProblemError, ProblemRaised, body_of
from ductrun.http.request_id import REQUEST_ID
from ductrun.operations import Operation
from ductrun.operations.answers import NOTICE, Answer, Basis
from ductrun.operations.telling import METRIC, US, Telling
from ductrun.operations.worksheet import UnanswerableError, Worksheet
from ductrun.tables import TABLES

_encode: Callable[[Any], bytes] = json.Encoder().encode
_QUERY: dict[str, dict[str, Any]] = {
    "units": {"us": US, "metric": METRIC},
    "working": {"true": True, "false": False},
    "assumptions": {"state": False, "refuse": True},
}


class ClientGone(Exception):  # noqa: N818
    """The caller hung up before the body was complete."""


def read_query(query: bytes) -> tuple[Telling, bool, bool]:
    """Read the units of the answer, whether to show the working, and whether to refuse assumptions."""
    if not query:
        return US, False, False
    chosen: dict[str, Any] = {}
    errors: list[ProblemError] = []
    for name, text in parse_qsl(query.decode("latin-1"), keep_blank_values=True):
        values = _QUERY.get(name)
        if values is None:
            message = f"There is no such query parameter. Allowed: {', '.join(_QUERY)}."
            errors.append(ProblemError("unknown_parameter", message, parameter=name[:100], allowed=list(_QUERY)))
        elif text not in values:
            message = f"{name} must be {' or '.join(values)}."
            errors.append(ProblemError("not_allowed", message, parameter=name, allowed=list(values)))
        elif name in chosen:
            errors.append(ProblemError("repeated", f"{name} may be given once.", parameter=name))
        else:
            chosen[name] = values[text]
    if errors:
        raise ProblemRaised("invalid_query", f"{len(errors)} query parameter(s) cannot be used.", errors)
    return chosen.get("units", US), chosen.get("working", False), chosen.get("assumptions", False)


def _is_json(content_type: bytes) -> bool:
    essence, _, parameters = content_type.partition(b";")
    essence = essence.strip().lower()
    if essence != b"application/json" and not (essence.startswith(b"application/") and essence.endswith(b"+json")):
        return False
    charset = parameters.strip().lower()
    return not charset.startswith(b"charset=") or charset[8:].strip(b'" ') in {b"utf-8", b"utf8"}


async def read_body(scope: Scope, receive: Receive, limit: int) -> bytes:
    """Read the body, whose content type must be JSON and whose size, declared or counted, must keep the limit."""
    content_type = b""
    for name, value in scope["headers"]:
        if name == b"content-type":
            content_type = value
        elif name == b"content-length" and value.isdigit() and int(value) > limit:
            raise ProblemRaised("body_too_large", f"A request may have {limit} bytes.")
    if not _is_json(content_type):
        raise ProblemRaised("unsupported_media_type", "Send the body with Content-Type: application/json.")
    chunks: list[bytes] = []
    size = 0
    while True:
        message = await receive()
        if message["type"] == "http.disconnect":
            raise ClientGone
        chunk: bytes = message.get("body", b"")
        chunks.append(chunk)
        size += len(chunk)
        if size > limit:
            raise ProblemRaised("body_too_large", f"A request may have {limit} bytes.")
        if not message.get("more_body", False):
            return b"".join(chunks)


async def send_written(send: Send, status: int, media_type: bytes, written: bytes) -> None:
    """Send an answer or a problem that is written already."""
    headers = [
        (b"content-type", media_type),
        (b"content-length", str(len(written)).encode()),
        (b"cache-control", b"no-store"),
    ]
    if status == 415:
        headers.append((b"accept-post", b"application/json"))
    await send({"type": "http.response.start", "status": status, "headers": headers})
    await send({"type": "http.response.body", "body": written})


def answer_to(operation: Operation[Any, Any]) -> Callable[[bytes, bytes], bytes]:
    """Give the function from a body and a query to the bytes of an answer; it raises ProblemRaised."""
    validate = operation.request.__pydantic_validator__.validate_json
    schema = RequestSchema(operation.request.model_json_schema())
    compute = operation.compute

    def answer(body: bytes, query: bytes) -> bytes:
        telling, working, refuse = read_query(query)
        strict_json.check(body)
        try:
            request = validate(body)
        except ValidationError as error:
            strict_json.explain(body)
            errors = errors_of(error, schema)
            raise ProblemRaised("invalid_request", f"{len(errors)} field(s) cannot be used.", errors) from None
        sheet = Worksheet(telling, working=working)
        try:
            result = compute(request, sheet)
        except UnanswerableError as error:
            raise ProblemRaised("unanswerable", str(error)[:2000], errors_of_faults(error.faults)) from None
        if refuse and sheet.assumptions:
            raise _refusal(sheet)
        written: bytes = _encode(
            Answer(
                result,
                sheet.findings,
                sheet.assumptions,
                Basis(__version__, TABLES.hash, f"NFPA 70-{sheet.edition}", tuple(sheet.sources)),
                NOTICE,
                UNSET if sheet.working is None else sheet.working,
            )
        )
        # a number that is not finite would be written as null, and an answer holds no other null
        if b":null" in written:
            raise ArithmeticError(f"{operation.name} gave a number that is not finite")
        return written

    return answer


def _refusal(sheet: Worksheet) -> ProblemRaised:
    errors = [
        ProblemError(
            "assumption_needed",
            f"Give this field; without it this would be assumed: {assumption.source}.",
            pointer=assumption.field,
            allowed=assumption.value,
        )
        for assumption in sheet.assumptions
    ]
    return ProblemRaised("assumptions_refused", f"{len(errors)} field(s) would have to be assumed.", errors)


class Calculation:
    """The endpoint of one operation."""

    def __init__(self, operation: Operation[Any, Any], max_body_bytes: int) -> None:
        """Prepare everything that does not depend on the request."""
        self.answer = answer_to(operation)
        self.max_body_bytes = max_body_bytes
        self.__name__ = operation.operation_id

    async def app(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        status, media_type = 200, b"application/json"
        try:
            body = await read_body(scope, receive, self.max_body_bytes)
            written = self.answer(body, scope["query_string"])
        except ProblemRaised as problem:
            status, media_type = problem.kind.status, MEDIA_TYPE.encode()
            written = body_of(problem.kind, problem.detail, scope[REQUEST_ID], problem.errors)
        except ClientGone:
            return
        await send_written(send, status, media_type, written)

    async def __call__(self) -> None:
        """Stand in the contract: FastAPI reads this signature, CalculationRoute answers before it is ever called."""
        raise RuntimeError("a calculation is answered by its route")


class Answering(Protocol):
    """An endpoint that answers a request itself."""

    async def app(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""

    async def __call__(self) -> None:
        """Stand in the contract."""


class CalculationRoute(APIRoute):
    """A FastAPI route whose requests skip the framework's own body handling: see `Calculation.app`."""

    def __init__(self, path: str, endpoint: Answering, **options: Any) -> None:
        """Put the endpoint's own ASGI application in the place of the one FastAPI would make."""
        super().__init__(path, endpoint, **options)
        self.app = endpoint.app

    def matches(self, scope: Scope) -> tuple[Match, Scope]:
        """Match a path that has no parameters by comparing it; behind a prefix, as FastAPI does."""
        if scope.get("root_path"):
            return super().matches(scope)
        if scope["path"] != self.path:
            return Match.NONE, {}
        return (Match.FULL if scope["method"] == "POST" else Match.PARTIAL), {"endpoint": self.endpoint, "route": self}
