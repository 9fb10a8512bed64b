"""From the bytes of a request to the bytes of its answer: the one way into an operation, whoever asks.

A single request, an item of a batch and a line of a stream all come through here. Nothing is known of how the bytes
came or where the answer goes: what has no answer is raised, one of REFUSALS, and whoever asked tells it in a form of
its own.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import Any, Final, NamedTuple, TypeVar

from msgspec import UNSET, Raw, Struct, json, structs
from pydantic import ValidationError

from ductrun import __version__
from ductrun.kit import strict_json
from ductrun.kit.answers import NOTICE, Answer, Assumption, Basis
from ductrun.kit.bounding import LARGE, SMALL, TooCostlyError, TooManyValuesError, check_values
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form
from ductrun.kit.operation import Operation
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.strict_json import NotStrictError
from ductrun.kit.telling import US, Telling
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.tables import TABLES

T = TypeVar("T")
Told = TypeVar("Told", bound=Struct)
_MANY = 20  # items of a list
_BACKSLASH = ord("\\")
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


REFUSALS: Final = (
    NotStrictError,
    TooManyValuesError,
    TooCostlyError,
    InvalidRequestError,
    AssumptionsRefusedError,
    UnanswerableError,
)
Answering = Callable[[bytes, Chosen], bytes]
STEPS_ON_THE_LOOP: Final = 1_000  # of ten microseconds, roughly
MOST_REQUEST_STEPS: Final = 1_000_000  # of one request: some ten seconds
DRAWN_UP_STEPS: Final = 1_500.0  # of a page, a drawing or a list: a large one of a small request takes 80 ms
PAGE_TIMES: Final = 2.0  # as long as the answer that it is drawn up of
DRAWING_TIMES: Final = 1.25  # and of a list
BYTES_A_STEP: Final = 40.0  # of a large body, whatever it asks for
FAULTY_BYTES_A_STEP: Final = 5.0  # of a body whose faults are told: 130 ms of 64 KiB


class PutOffError(Exception):
    """An answer that takes long enough to delay others; `finish` gives it, or raises one of REFUSALS, wherever."""

    def __init__(self, finish: Callable[[], Any], steps: float) -> None:
        """Keep the function that finishes, and about how many steps it takes."""
        super().__init__("the answer is to be finished where it delays nobody")
        self.finish = finish
        self.steps = steps


Made = TypeVar("Made")
Making = Callable[[Any, bytes, Chosen], Made]  # from a request that was read, and its bytes


def made_by(
    operation: Operation[Any, Any, Any],
    make: Making[Made],
    make_at_length: Making[Made] | None = None,
    *,
    puts_off: bool = False,
    drawn_up: float = 0.0,
) -> Callable[[bytes, Chosen], Made]:
    """Give the function from the bytes of a request to what `make` makes of it, read; it raises one of REFUSALS.
    What is put off `make_at_length` makes, if it is given.

    One that `puts_off` raises PutOffError before it begins on what takes long, as the size of the body or the steps of
    the operation have it; so does all that is drawn up of an answer, a page, a drawing or a list, which takes
    `drawn_up` times as long. A large body is put off again once it is read, now by what it asks for.
    """
    read = reader_of(operation.request)

    def made(body: bytes, chosen: Chosen) -> Made:
        if len(body) > LARGE:
            if puts_off:
                raise PutOffError(partial(at_length, body, chosen), len(body) / BYTES_A_STEP)
            return at_length(body, chosen)
        try:
            request = read(body)
        except REFUSED:
            if puts_off and len(body) > SMALL:
                raise PutOffError(partial(slowly, body, chosen), len(body) / FAULTY_BYTES_A_STEP) from None
            request = read_slowly(operation.request, body)
        return of_read(request, body, chosen)

    def of_read(request: Any, body: bytes, chosen: Chosen) -> Made:
        needed = _steps_of(operation, request, chosen, drawn_up=drawn_up)
        if puts_off and needed > STEPS_ON_THE_LOOP:
            raise PutOffError(partial(make_at_length or make, request, body, chosen), needed)
        return make(request, body, chosen)

    def at_length(body: bytes, chosen: Chosen) -> Made:
        check_values(operation.request, body)
        try:
            request = read(body)
        except REFUSED:
            if puts_off:
                raise PutOffError(partial(slowly, body, chosen), len(body) / FAULTY_BYTES_A_STEP) from None
            return slowly(body, chosen)
        return of_read(request, body, chosen)

    def slowly(body: bytes, chosen: Chosen) -> Made:
        return of_read(read_slowly(operation.request, body), body, chosen)

    return made


def _steps_of(operation: Operation[Any, Any, Any], request: Any, chosen: Chosen, *, drawn_up: float) -> float:
    """Bound the steps of a request; raises TooCostlyError if they are more than are done for one."""
    own = 0.0 if operation.steps is None else operation.steps(request)
    needed = own
    if chosen.remedies and operation.remedying is not None:
        needed += operation.remedying.steps(request)
    if drawn_up:
        needed = needed * drawn_up + DRAWN_UP_STEPS
    if needed > MOST_REQUEST_STEPS:
        words = f"This asks for {needed / MOST_REQUEST_STEPS:.1f} times the work that is done for one request: "
        if own > MOST_REQUEST_STEPS:
            raise TooCostlyError(words + "divide it, and ask for each part.")
        extra = "without remedies" if chosen.remedies else "for application/json"
        raise TooCostlyError(words + f"divide it and ask for each part, or ask {extra}.")
    return needed


def told_of(operation: Operation[Any, T, Any]) -> Making[tuple[Answer, T]]:
    """Give the function from a request, read and as bytes, to its answer, not written yet, and what was assessed of it;
    it raises one of REFUSALS.
    """
    tell, remedying = operation.tell, operation.remedying

    def told(request: Any, body: bytes, chosen: Chosen) -> tuple[Answer, T]:
        assessment, sheet = _assessed(operation, request, chosen)
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


def _assessed(operation: Operation[Any, T, Any], request: Any, chosen: Chosen) -> tuple[T, Worksheet]:
    sheet = Worksheet(chosen.telling, working=chosen.working)
    assessment = operation.assess(request, sheet)
    if chosen.refuse_assumptions and sheet.book.settled:
        raise AssumptionsRefusedError(sheet.assumptions)
    return assessment, sheet


def answer_to(operation: Operation[Any, Any, Any], *, puts_off: bool = False) -> Answering:
    """Give the function from the bytes of a request to those of its answer; it raises one of REFUSALS."""
    told, name = told_of(operation), operation.name

    def answer(request: Any, body: bytes, chosen: Chosen, *, at_length: bool = False) -> bytes:
        return written(name, told(request, body, chosen)[0], at_length=at_length)

    return made_by(operation, answer, partial(answer, at_length=True), puts_off=puts_off)


def written(name: str, answer: Answer, *, at_length: bool = False) -> bytes:
    """Write the answer of an operation as JSON, `at_length` so that others have their turns meanwhile.

    A number that is not finite would be written as null, and an answer holds no other null but in a text.
    """
    if at_length:
        answer = _in_parts(structs.replace(answer, result=_in_parts(answer.result)))
    text = _encode(answer)
    if _holds_null(text):
        raise ArithmeticError(f"{name} gave a number that is not finite")
    return text


def _in_parts(told: Told) -> Told:
    """Give a record whose long lists are written already, item by item: a large answer that is written in one go holds
    everybody up, for 14 MiB some forty milliseconds.
    """
    long = {
        name: [Raw(_encode(one)) for one in value]
        for name, value in zip(told.__struct_fields__, structs.astuple(told), strict=True)
        if type(value) is list and len(value) > _MANY
    }
    return structs.replace(told, **long) if long else told


def drawing_of(
    operation: Operation[Any, T, Any], draw: Callable[[T, Telling], str], *, puts_off: bool = False
) -> Answering:
    """Give the function from the bytes of a request to those of a drawing of its answer; it raises one of REFUSALS."""

    def drawn(request: Any, _body: bytes, chosen: Chosen) -> bytes:
        assessment, sheet = _assessed(operation, request, chosen)
        return draw(assessment, sheet.tell).encode()

    return made_by(operation, drawn, puts_off=puts_off, drawn_up=DRAWING_TIMES)


def _holds_null(text: bytes) -> bool:
    """Tell whether a member is null; within a text a backslash stands before the quote."""
    at = text.find(b'":null')
    while at > 0 and text[at - 1] == _BACKSLASH:
        at = text.find(b'":null', at + 1)
    return at > 0


def read_slowly(form: type[Form], body: bytes) -> Any:
    """Say what is wrong with a body that a reader refused; if nothing is, the form has it."""
    strict_json.check(body)
    try:
        return form.__pydantic_validator__.validate_json(body)
    except ValidationError as error:
        strict_json.explain_what_passes(body)
        raise InvalidRequestError(form, error) from None
