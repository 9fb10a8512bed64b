"""The life of a calculation: bytes in, validated once, computed, written once.

FastAPI owns the route and its place in the contract; the request itself is answered here, on the event loop, by one
small ASGI application for each operation.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Protocol

from fastapi.routing import APIRoute
from msgspec import UNSET, json
from pydantic import ValidationError
from starlette.types import Receive, Scope, Send

from ductrun import __version__
from ductrun.http import strict_json
from ductrun.http.exchange import Chosen, ClientGone, read_body, read_query, send_problem, send_written
from ductrun.http.faults import errors_of, errors_of_faults
from ductrun.http.gate import REQUEST_ID
from ductrun.http.problems import ProblemError, ProblemRaised, RefusedAssumption
from ductrun.kit.answers import NOTICE, Answer, Assumption, Basis
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects import Operation
from ductrun.tables import TABLES

_encode: Callable[[Any], bytes] = json.Encoder().encode


def answer_to(operation: Operation[Any, Any, Any]) -> Callable[[bytes, Chosen], bytes]:
    """Give the function from a body to the bytes of its answer; it raises ProblemRaised."""
    read = reader_of(operation.request)
    assess, tell = operation.assess, operation.tell

    def answer(body: bytes, chosen: Chosen) -> bytes:
        try:
            request = read(body)
        except REFUSED:
            request = _read_slowly(operation.request, body)
        sheet = Worksheet(chosen.telling, working=chosen.working)
        try:
            result = tell(assess(request, sheet), sheet.tell)
        except UnanswerableError as error:
            raise ProblemRaised("unanswerable", str(error)[:2000], errors_of_faults(error.faults)) from None
        book, assumptions = sheet.book, sheet.assumptions
        verdict = book.verdict
        if chosen.refuse_assumptions and assumptions:
            raise _refusal(assumptions)
        written: bytes = _encode(
            Answer(
                verdict=UNSET if verdict is None else verdict,
                result=result,
                findings=book.findings,
                cautions=book.cautions,
                assumptions=assumptions,
                basis=Basis(
                    __version__,
                    TABLES.hash,
                    tuple(book.sources),
                    f"NFPA 70-{book.edition}" if book.follows_code else UNSET,
                ),
                notice=NOTICE,
                working=UNSET if book.working is None else book.working,
                request=completed(json.decode(body), book) if chosen.complete_request else UNSET,
            )
        )
        # a number that is not finite would be written as null, and an answer holds no other null
        if b":null" in written:
            raise ArithmeticError(f"{operation.name} gave a number that is not finite")
        return written

    return answer


def _read_slowly(form: type[Form], body: bytes) -> Any:
    """Say what is wrong with a body that the reader refused; if nothing is, the form has it."""
    strict_json.check(body)
    try:
        return form.__pydantic_validator__.validate_json(body)
    except ValidationError as error:
        strict_json.explain(body)
        errors = errors_of(error, form)
        raise ProblemRaised("invalid_request", f"{len(errors)} field(s) cannot be used.", errors) from None


def _refusal(assumptions: Sequence[Assumption]) -> ProblemRaised:
    errors = [
        ProblemError(
            "assumption_needed",
            f"Give this member; without it {assumption.text} would be assumed: {assumption.citation}."[:2000],
            pointer,
            assumption=refused,
        )
        for assumption, refused in zip(assumptions, map(_refused, assumptions), strict=True)
        for pointer in assumption.pointers
    ]
    return ProblemRaised("assumptions_refused", f"{len(errors)} field(s) would have to be assumed.", errors)


def _refused(assumption: Assumption) -> RefusedAssumption:
    return RefusedAssumption(
        assumption.text, assumption.citation, assumption.standing, assumption.source_id, assumption.quantity
    )


class Calculation:
    """The endpoint of one operation."""

    def __init__(self, operation: Operation[Any, Any, Any], max_body_bytes: int) -> None:
        """Prepare everything that does not depend on the request."""
        self.answer = answer_to(operation)
        self.max_body_bytes = max_body_bytes
        self.__name__ = operation.operation_id

    async def app(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        try:
            body = await read_body(scope, receive, self.max_body_bytes)
            chosen = read_query(scope["query_string"])
            written = self.answer(body, chosen)
        except ProblemRaised as problem:
            await send_problem(send, problem, scope[REQUEST_ID])
        except ClientGone:
            return
        else:
            await send_written(send, 200, b"application/json", written)

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
        super().__init__(path, endpoint, methods=["POST"], **options)
        self.app = endpoint.app
