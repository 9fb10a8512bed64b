"""From the bytes of a request to the bytes of its answer: the one way into an operation, whoever asks.

A single request, an item of a batch and a line of a stream all come through here. Nothing is known of how the bytes
came or where the answer goes: what has no answer is raised, one of REFUSALS, and whoever asked tells it in a form of
its own.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Final, NamedTuple, TypeVar

from msgspec import UNSET, json
from pydantic import ValidationError

from ductrun import __version__
from ductrun.kit import strict_json
from ductrun.kit.answers import NOTICE, Answer, Assumption, Basis
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form
from ductrun.kit.operation import Operation
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.strict_json import NotStrictError
from ductrun.kit.telling import US, Telling
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.tables import TABLES

T = TypeVar("T")
_encode: Callable[[Any], bytes] = json.Encoder().encode


class Chosen(NamedTuple):
    """How a caller wants the answer: its units, whether with the working, whether without assumptions, whether with the
    request given back completed, of a document which page, and whether with what would make it comply.
    """

    telling: Telling = US
    working: bool = False
    refuse_assumptions: bool = False
    complete_request: bool = False
    page: str = "sheet"
    remedies: bool = False


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


REFUSALS: Final = (NotStrictError, InvalidRequestError, AssumptionsRefusedError, UnanswerableError)
Answering = Callable[[bytes, Chosen], bytes]


def assessed_by(operation: Operation[Any, T, Any]) -> Callable[[bytes, Chosen], tuple[T, Worksheet]]:
    """Give the function from the bytes of a request to what was assessed of it; it raises one of REFUSALS."""
    read, assess = reader_of(operation.request), operation.assess

    def assessed(body: bytes, chosen: Chosen) -> tuple[T, Worksheet]:
        try:
            request = read(body)
        except REFUSED:
            request = read_slowly(operation.request, body)
        sheet = Worksheet(chosen.telling, working=chosen.working)
        assessment = assess(request, sheet)
        if chosen.refuse_assumptions and sheet.book.settled:
            raise AssumptionsRefusedError(sheet.assumptions)
        return assessment, sheet

    return assessed


def told_by(operation: Operation[Any, T, Any]) -> Callable[[bytes, Chosen], tuple[Answer, T]]:
    """Give the function from the bytes of a request to its answer, not written yet, and what was assessed of it; it
    raises one of REFUSALS.
    """
    assessed, tell, remedying = assessed_by(operation), operation.tell, operation.remedying

    def told(body: bytes, chosen: Chosen) -> tuple[Answer, T]:
        assessment, sheet = assessed(body, chosen)
        book = sheet.book
        verdict = book.verdict
        answer = Answer(
            verdict=UNSET if verdict is None else verdict,
            result=tell(assessment, sheet.tell),
            findings=book.findings,
            cautions=book.cautions,
            assumptions=sheet.assumptions,
            basis=Basis(
                __version__,
                TABLES.hash,
                tuple(book.sources),
                f"NFPA 70-{book.edition}" if book.follows_code else UNSET,
            ),
            notice=NOTICE,
            working=UNSET if book.working is None else book.working,
            request=completed(json.decode(body), book) if chosen.complete_request else UNSET,
            remedies=(
                remedying.find(json.decode(body), assessment, sheet)
                if chosen.remedies and remedying is not None
                else UNSET
            ),
        )
        return answer, assessment

    return told


def answer_to(operation: Operation[Any, Any, Any]) -> Answering:
    """Give the function from the bytes of a request to those of its answer; it raises one of REFUSALS."""
    told, name = told_by(operation), operation.name

    def answer(body: bytes, chosen: Chosen) -> bytes:
        return written(name, told(body, chosen)[0])

    return answer


def written(name: str, answer: Answer) -> bytes:
    """Write the answer of an operation as JSON.

    A number that is not finite would be written as null, and an answer holds no other null but in a text.
    """
    text = _encode(answer)
    if b":null" in text and _holds_null(json.decode(text)):
        raise ArithmeticError(f"{name} gave a number that is not finite")
    return text


def drawing_of(operation: Operation[Any, T, Any], draw: Callable[[T, Telling], str]) -> Answering:
    """Give the function from the bytes of a request to those of a drawing of its answer; it raises one of REFUSALS."""
    assessed = assessed_by(operation)

    def drawn(body: bytes, chosen: Chosen) -> bytes:
        assessment, sheet = assessed(body, chosen)
        return draw(assessment, sheet.tell).encode()

    return drawn


def _holds_null(node: Any) -> bool:
    if isinstance(node, dict):
        node = list(node.values())
    return node is None or (isinstance(node, list) and any(map(_holds_null, node)))


def read_slowly(form: type[Form], body: bytes) -> Any:
    """Say what is wrong with a body that a reader refused; if nothing is, the form has it."""
    strict_json.check(body)
    try:
        return form.__pydantic_validator__.validate_json(body)
    except ValidationError as error:
        strict_json.explain(body)
        raise InvalidRequestError(form, error) from None
