"""A stream as windows: so many lines are sent, their answers read, and only then the next are taken from the caller.

Each window is an ordinary request of the client of httpx, so that its timeouts, proxies and transport hold for it, and
it can be asked again as a whole. It is small enough for the buffers on the way: neither side waits for the other.
Several windows may be asked at once, each on a connection of its own; their answers come in the order of the questions.
"""

from __future__ import annotations

import asyncio
from collections import deque
from collections.abc import AsyncIterable, AsyncIterator, Awaitable, Callable, Iterable, Iterator, Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from typing import Any, NamedTuple, TypeAlias

import httpx
import msgspec

from .errors import CutOffError, QuantityError, UnexpectedAnswerError
from .giving import to_send
from .items import StreamItem, line_of
from .models import BatchItem, Fault, Problem, StreamProblem, StreamStopped, StreamSummary
from .requesting import Wire, encoded, expected, params_of

PATH = "/v1/batch/stream"
LINES = 500
_BYTES = 49_152  # under the 64 KiB that a server reads ahead
_MEDIA_TYPE = "application/jsonl"
Question: TypeAlias = BatchItem | Mapping[str, Any]


class Window(NamedTuple):
    """Some questions on their way, each with its number in the stream, and those that could not be sent."""

    wire: Wire
    numbers: list[int]
    refused: list[StreamProblem]
    before: int


class Filling:
    """The window that is being filled with questions."""

    def __init__(self, asked: Mapping[str, Any], most: int) -> None:
        """Begin with none; `asked` is the query of every window, `most` how many questions it has."""
        self._params = params_of(asked)
        self._most = most
        self._taken = 0
        self._begin()

    def _begin(self) -> None:
        self._before, self._size = self._taken, 0
        self._lines: list[bytes] = []
        self._numbers: list[int] = []
        self._refused: list[StreamProblem] = []

    def add(self, item: Question) -> Window | None:
        """Take a question; give the window before it, if that is full."""
        try:
            line: bytes | StreamProblem = encoded(to_send(item, BatchItem)) + b"\n"
        except QuantityError as fault:
            line = _problem_of(item, fault)
        size = len(line) if isinstance(line, bytes) else 0
        full = self._taken - self._before == self._most or (self._lines and self._size + size > _BYTES)
        window = self.rest() if full else None
        self._taken += 1
        if isinstance(line, bytes):
            self._lines.append(line)
            self._numbers.append(self._taken)
            self._size += size
        else:
            line.line = self._taken
            self._refused.append(line)
        return window

    def rest(self) -> Window | None:
        """Give the window as far as it is filled, and begin the next."""
        if self._taken == self._before:
            return None
        headers = {"Content-Type": _MEDIA_TYPE, "Accept": _MEDIA_TYPE}
        wire = Wire("POST", PATH, self._params, b"".join(self._lines), headers)
        window = Window(wire, self._numbers, self._refused, self._before)
        self._begin()
        return window


def windows_of(items: Iterable[Question], asked: Mapping[str, Any], most: int) -> Iterator[Window]:
    """Give the windows of questions, taking no more of these than fill the next one."""
    filling = Filling(asked, most)
    for item in items:
        window = filling.add(item)
        if window is not None:
            yield window
    last = filling.rest()
    if last is not None:
        yield last


async def async_windows_of(
    items: AsyncIterable[Question], asked: Mapping[str, Any], most: int
) -> AsyncIterator[Window]:
    """Do the same for questions that come in an event loop."""
    filling = Filling(asked, most)
    async for item in items:
        window = filling.add(item)
        if window is not None:
            yield window
    last = filling.rest()
    if last is not None:
        yield last


def in_turn(
    windows: Iterable[Window], answered: Callable[[Window], list[StreamItem]], connections: int
) -> Iterator[StreamItem]:
    """Give the answers of windows in order, so many of which are asked at once."""
    with ThreadPoolExecutor(connections) as asking:
        under_way: deque[Future[list[StreamItem]]] = deque()
        try:
            for window in windows:
                under_way.append(asking.submit(answered, window))
                if len(under_way) == connections:
                    yield from under_way.popleft().result()
            while under_way:
                yield from under_way.popleft().result()
        finally:
            for one in under_way:
                one.cancel()


async def async_in_turn(
    windows: AsyncIterable[Window], answered: Callable[[Window], Awaitable[list[StreamItem]]], connections: int
) -> AsyncIterator[StreamItem]:
    """Do the same in an event loop."""
    under_way: deque[asyncio.Future[list[StreamItem]]] = deque()
    try:
        async for window in windows:
            under_way.append(asyncio.ensure_future(answered(window)))
            if len(under_way) == connections:
                for answer in await under_way.popleft():
                    yield answer
        while under_way:
            for answer in await under_way.popleft():
                yield answer
    finally:
        for one in under_way:
            one.cancel()
        await asyncio.gather(*under_way, return_exceptions=True)


def _problem_of(item: Question, fault: QuantityError) -> StreamProblem:
    """Give the problem of a question with a quantity that cannot be sent: it is that line's and no other's."""
    said = {name: item.get(name) if isinstance(item, Mapping) else getattr(item, name) for name in ("id", "operation")}
    known = {name: value for name, value in said.items() if isinstance(value, str)}
    problem = Problem(
        type="/problems/invalid_request",
        title="The request is not valid",
        status=422,
        detail="A quantity of it cannot be sent; the service was not asked.",
        request_id="",
        errors=[Fault(code="not_allowed", message=str(fault), pointer=fault.pointer)],
    )
    return StreamProblem(line=0, status=422, problem=problem, **known)  # type: ignore[arg-type]


def answers_of(response: httpx.Response, window: Window) -> list[StreamItem]:
    """Read the answers of a window, each with the number of its line in the whole stream."""
    if expected(response) != _MEDIA_TYPE or not response.is_success:
        raise UnexpectedAnswerError(response.status_code, response.headers, response.content)
    answers: list[StreamItem] = []
    summary, reason = None, None
    try:
        for line in response.content.splitlines():
            one = line_of(line)
            if isinstance(one, StreamSummary):
                summary = one
            elif isinstance(one, StreamStopped):
                reason = one.reason
            elif one is not None:
                answers.append(one)
    except msgspec.DecodeError:
        summary = None  # a line that ends in its middle
    if summary is None or not summary.item_count == len(answers) == len(window.numbers):
        raise CutOffError(window.before, reason)
    for number, answer in zip(window.numbers, answers, strict=True):
        answer.line = number
    return sorted([*answers, *window.refused], key=_line) if window.refused else answers


def _line(answer: StreamItem) -> int:
    return answer.line or 0
