"""`ductrun answer`: the stream without HTTP, from lines to lines, by as many processes as are wanted, in order."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Generator, Iterable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from contextlib import closing
from ctypes import c_bool
from functools import cache, partial
from multiprocessing.sharedctypes import RawValue
from typing import Any, BinaryIO

from ductrun.http.exchange import read_query
from ductrun.http.items import Items, Settled
from ductrun.http.stream import BASIS, Lines, settle_line, summary_of
from ductrun.kit.answering import Chosen, PutOffError, answer_to
from ductrun.subjects import OPERATIONS

__all__ = ["BrokenProcessPool", "answer", "answer_part"]

_CHUNK = 262_144  # bytes
_AHEAD = 3  # parts that wait for each process

Part = list[tuple[int, bytes | None]]
Answered = tuple[bytes, int, int]  # the lines of answers, how many, and how many of them are problems


def answer(source: BinaryIO, target: BinaryIO, query: bytes, workers: int, limit: int) -> tuple[int, int]:
    """Answer every line, the basis first and the summary last; gives how many there were, and how many have no answer.

    `limit` is the longest line, in bytes; `query` says how answers are wanted, as in a URL. What stands in
    memory is bounded, whatever the number of lines. Where the target takes no more, the lines at work are the last.
    """
    target.write(BASIS)
    items = failed = 0
    parts = _parts(source, limit)
    every = (answer_part(part, limit, query) for part in parts)
    with closing(every if workers == 1 else _by_processes(parts, limit, query, workers)) as answered:
        for written, count, problems in answered:
            target.write(written)
            items += count
            failed += problems
    target.write(summary_of(items, failed))
    target.flush()
    return items, failed


def answer_part(part: Iterable[tuple[int, bytes | None]], limit: int, query: bytes = b"") -> Answered:
    """Answer numbered lines in order: the same bytes for the same lines, wherever and however often it is done."""
    items, chosen = _items(), read_query(query)
    settled = [_settled(items, number, line, limit, chosen) for number, line in part]
    written = b"".join(told + b"\n" for _, told in settled)
    return written, len(settled), sum(status != 200 for status, _ in settled)


def _settled(items: Items, number: int, line: bytes | None, limit: int, chosen: Chosen) -> Settled:
    settle: Callable[[], Settled] = partial(settle_line, items, number, line, limit, chosen, f"line-{number}")
    while True:
        try:
            return settle()
        except PutOffError as put_off:  # nobody waits here for anything else
            settle = put_off.finish  # what finishes an item gives it settled


@cache
def _items() -> Items:
    return Items({operation.name: answer_to(operation) for operation in OPERATIONS})


def _parts(source: BinaryIO, limit: int) -> Iterator[Part]:
    lines = Lines(limit)
    while chunk := source.read(_CHUNK):
        if part := list(lines.cut(chunk, last=False)):
            yield part
    if part := list(lines.cut(b"", last=True)):
        yield part


def _by_processes(parts: Iterable[Part], limit: int, query: bytes, workers: int) -> Generator[Answered, None, None]:
    waiting: deque[Future[Answered]] = deque()
    left = RawValue(c_bool, False)  # without a lock, which a process that is killed could keep for ever
    pool = ProcessPoolExecutor(workers, initializer=_watch, initargs=(left,))
    try:
        for part in parts:
            waiting.append(pool.submit(_answered_while_asked, part, limit, query))
            if len(waiting) > workers * _AHEAD:
                yield waiting.popleft().result()
        while waiting:
            yield waiting.popleft().result()
    finally:
        left.value = True
        pool.shutdown(cancel_futures=True)


_left: Any = None  # in each process: whether nobody takes the answers any more


def _watch(left: Any) -> None:
    global _left  # noqa: PLW0603  (a process of a pool is given what it shares in no other way)
    _left = left


def _answered_while_asked(part: Part, limit: int, query: bytes) -> Answered:
    return answer_part((line for line in part if not _left.value), limit, query)
