"""From the bytes of a request to the bytes of its answer: the one way into an operation, whoever asks.

A single request, an item of a batch and a line of a stream all come through here. Nothing is known of how the bytes
came or where the answer goes: what has no answer is raised, one of REFUSALS, and whoever asked tells it in a form of
its own.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import Any, Final, NamedTuple

from msgspec import UNSET, json
from pydantic import ValidationError

from ductrun import __version__
from ductrun.kit import strict_json
from ductrun.kit.answers import NOTICE, Answer, Assumption, Basis
from ductrun.kit.bounding import LARGE, SMALL, TooManyValuesError, check_values
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form
from ductrun.kit.operation import Operation
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.strict_json import NotStrictError
from ductrun.kit.telling import US, Telling
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.tables import TABLES

_encode: Callable[[Any], bytes] = json.Encoder().encode


class Chosen(NamedTuple):
    """How a caller wants the answer: its units, whether with the working, whether without assumptions, and whether with
    the request given back completed.
    """

    telling: Telling = US
    working: bool = False
    refuse_assumptions: bool = False
    complete_request: bool = False


class InvalidRequestError(Exception):
    """A request that is JSON but not of its form; carries what the form says of it."""

    def __init__(self, form: type[Form], error: ValidationError) -> None:
        """Keep the form and its faults."""
        super().__init__(f"{error.error_count()} field(s) cannot be used.")
        self.form = form
        self.error = error


class AssumptionsRefusedError(Exception):
    """A request whose answer would rest on assumptions where the caller wants none; carries them."""

    def __init__(self, assumptions: Sequence[Assumption]) -> None:
        """Keep what would be assumed."""
        super().__init__(f"{sum(len(one.pointers) for one in assumptions)} field(s) would have to be assumed.")
        self.assumptions = assumptions


REFUSALS: Final = (
    NotStrictError,
    TooManyValuesError,
    InvalidRequestError,
    AssumptionsRefusedError,
    UnanswerableError,
)
Answering = Callable[[bytes, Chosen], bytes]
STEPS_ON_THE_LOOP = 1_000  # of ten microseconds, roughly


class PutOffError(Exception):
    """An answer that takes long enough to delay others; `finish` gives it, or raises one of REFUSALS, wherever."""

    def __init__(self, finish: Callable[[], Any]) -> None:
        """Keep the function that finishes."""
        super().__init__("the answer is to be finished where it delays nobody")
        self.finish = finish


def answer_to(operation: Operation[Any, Any, Any], *, puts_off: bool = False) -> Answering:
    """Give the function from the bytes of a request to those of its answer; it raises one of REFUSALS.

    One that `puts_off` raises PutOffError before it begins on an answer that takes long, as the size of the body or the
    steps of the operation have it.
    """
    read = reader_of(operation.request)
    assess, tell, steps = operation.assess, operation.tell, operation.steps

    def answer(body: bytes, chosen: Chosen) -> bytes:
        if len(body) > LARGE:
            if puts_off:
                raise PutOffError(partial(at_length, body, chosen))
            return at_length(body, chosen)
        request = read_any(body, chosen)
        if puts_off and steps is not None and steps(request) > STEPS_ON_THE_LOOP:
            raise PutOffError(partial(worked, request, body, chosen))
        return worked(request, body, chosen)

    def at_length(body: bytes, chosen: Chosen) -> bytes:
        check_values(operation.request, body)
        return worked(read_any(body, chosen), body, chosen)

    def read_any(body: bytes, chosen: Chosen) -> Any:
        try:
            return read(body)
        except REFUSED:
            if puts_off and SMALL < len(body) <= LARGE:
                raise PutOffError(partial(refused_at_length, body, chosen)) from None
            return read_slowly(operation.request, body)

    def refused_at_length(body: bytes, chosen: Chosen) -> bytes:
        return worked(read_slowly(operation.request, body), body, chosen)

    def worked(request: Any, body: bytes, chosen: Chosen) -> bytes:
        sheet = Worksheet(chosen.telling, working=chosen.working)
        result = tell(assess(request, sheet), sheet.tell)
        book, assumptions = sheet.book, sheet.assumptions
        verdict = book.verdict
        if chosen.refuse_assumptions and assumptions:
            raise AssumptionsRefusedError(assumptions)
        written = _encode(
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


def read_slowly(form: type[Form], body: bytes) -> Any:
    """Say what is wrong with a body that a reader refused; if nothing is, the form has it."""
    strict_json.check(body)
    try:
        return form.__pydantic_validator__.validate_json(body)
    except ValidationError as error:
        strict_json.explain_what_passes(body)
        raise InvalidRequestError(form, error) from None
