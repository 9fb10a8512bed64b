"""A stream as windows: so many lines are sent, their answers read, and only then the next are taken from the caller.

Each window is an ordinary request of the client of httpx, so that its timeouts, proxies and transport hold for it, and
it can be asked again as a whole. It is small enough for the buffers on the way: neither side waits for the other.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import Any, NamedTuple, TypeAlias

import httpx
import msgspec

from .errors import CutOffError, UnexpectedAnswerError
from .giving import to_send
from .items import StreamItem, line_of
from .models import BatchItem, StreamStopped, StreamSummary
from .requesting import Wire, encoded, expected, params_of

PATH = "/v1/batch/stream"
_LINES = 500
_BYTES = 49_152  # under the 64 KiB that a server reads ahead
Question: TypeAlias = BatchItem | Mapping[str, Any]


class Window(NamedTuple):
    """Some questions on their way, and how many lines were before them."""

    wire: Wire
    lines: int
    before: int


def windows(body: Iterable[Question], asked: Mapping[str, Any]) -> Iterator[Window]:
    """Cut the questions into windows."""
    params, before = params_of(asked), 0
    lines: list[bytes] = []
    size = 0
    for item in body:
        line = encoded(to_send(item, BatchItem)) + b"\n"
        if lines and (len(lines) == _LINES or size + len(line) > _BYTES):
            yield _window(lines, params, before)
            before, lines, size = before + len(lines), [], 0
        lines.append(line)
        size += len(line)
    if lines:
        yield _window(lines, params, before)


def _window(lines: list[bytes], params: dict[str, str], before: int) -> Window:
    media_type = "application/jsonl"
    headers = {"Content-Type": media_type, "Accept": media_type}
    return Window(Wire("POST", PATH, params, b"".join(lines), headers), len(lines), before)


def answers_of(response: httpx.Response, window: Window) -> list[StreamItem]:
    """Read the answers of a window, each with the number of its line in the whole stream."""
    media_type = expected(response)
    if media_type != "application/jsonl" or not response.is_success:
        raise UnexpectedAnswerError(response.status_code, media_type, response.content)
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
                one.line = (one.line or 0) + window.before
                answers.append(one)
    except msgspec.DecodeError:
        summary = None  # a line that ends in its middle
    if summary is None or not summary.item_count == len(answers) == window.lines:
        raise CutOffError(window.before, reason)
    return answers
