"""POST /v1/batch/stream: questions as JSON Lines, any number, each answered while the next are still arriving.

What stands in memory is bounded whatever the length of the stream: one chunk that is at work, one that waits, at most
one unfinished line, and the answers of one slice of work. A reader that is slow holds up the work, and through it the
sender; a caller that goes away ends it within a slice.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterator
from time import perf_counter
from typing import Final

from msgspec import json
from starlette.types import Message, Receive, Scope, Send

from ductrun import __version__
from ductrun.http.aside import ASIDE, ClientGone
from ductrun.http.exchange import content_type_of, media_type_asked, read_query
from ductrun.http.eyes import ITEMS
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items, Settled, refused
from ductrun.http.problems import ProblemRaised
from ductrun.http.stopping import STOPPING
from ductrun.kit.answering import Chosen, PutOffError
from ductrun.tables import TABLES

MEDIA_TYPES = ("application/jsonl", "application/x-ndjson")
CLOSES: Final = "ductrun.closes"  # in the scope: the answer ended before its request did
IS_LOST: Final = "ductrun.is_lost"  # there too, where the server knows: whether the connection is no more
_SLICE = 0.001  # seconds of work before other requests get their turn
BASIS = json.encode({"type": "basis", "service_version": __version__, "tables_version": TABLES.hash}) + b"\n"


def _never() -> bool:
    return False


class EndedError(Exception):
    """A stream that the service ends before its sender does; says why."""

    def __init__(self, reason: str) -> None:
        """Keep the reason."""
        super().__init__(reason)
        self.reason = reason


class Arriving:
    """The body as it arrives: the next chunk is received while the last one is at work, and no further ahead."""

    def __init__(self, receive: Receive, idle_seconds: float, is_lost: Callable[[], bool]) -> None:
        """Begin to receive; `idle_seconds` is how long a sender may pause, `is_lost` tells of the connection."""
        self._receive = receive
        self._is_lost = is_lost
        self._idle_seconds = idle_seconds
        self._task = asyncio.create_task(self._next())
        self._stopped = asyncio.Event()
        STOPPING.tell(self._stopped.set)

    async def _next(self) -> Message:
        return await self._receive()

    async def chunk(self) -> tuple[bytes, bool]:
        """Give the next chunk and whether more will come; raises ClientGone, or EndedError where none is waited for."""
        if not self._task.done():
            stopped = asyncio.ensure_future(self._stopped.wait())
            waited_for = {self._task, stopped}
            await asyncio.wait(waited_for, timeout=self._idle_seconds, return_when=asyncio.FIRST_COMPLETED)
            stopped.cancel()
        self.check()
        if not self._task.done():
            raise EndedError("idle")
        message = self._task.result()
        if message["type"] == "http.disconnect":
            raise ClientGone
        self._task = asyncio.create_task(self._next())  # past the end it waits for the caller to go
        return message.get("body", b""), message.get("more_body", False)

    def gone(self) -> bool:
        """Tell whether the caller has gone, without waiting; a chunk that came before hides it from who receives."""
        return self._is_lost() or (self._task.done() and self._task.result()["type"] == "http.disconnect")

    def check(self) -> None:
        """Raise EndedError if the service stops."""
        if self._stopped.is_set():
            raise _stopping()

    def close(self) -> None:
        """Receive no more."""
        STOPPING.forget(self._stopped.set)
        self._task.cancel()


class Lines:
    """Cuts chunks into numbered lines; of a line beyond the limit nothing is kept but that it was there."""

    def __init__(self, limit: int) -> None:
        """Start before the first line; `limit` in bytes."""
        self.limit = limit
        self.number = 0
        self._rest = b""
        self._too_long = False

    def cut(self, chunk: bytes, *, last: bool) -> Iterator[tuple[int, bytes | None]]:
        """Give the lines that a chunk completes, blank ones left out, None for one that is too long."""
        lines = (self._rest + chunk).split(b"\n")
        self._rest = b"" if last else lines.pop()
        for line in lines:
            self.number += 1
            if self._too_long or len(line) > self.limit:
                self._too_long = False
                yield self.number, None
            elif line.strip(b" \t\r"):
                yield self.number, line
        if len(self._rest) > self.limit:
            self._rest = b""
            self._too_long = True


class Stream:
    """The endpoint of streams."""

    def __init__(self, items: Items, max_line_bytes: int, idle_seconds: float) -> None:
        """Keep what answers an item, the limit of a line, and that of a pause."""
        self.items = items
        self.idle_seconds = idle_seconds
        self.max_line_bytes = max_line_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one stream, with breaks in which other requests are answered."""
        sent = content_type_of(dict(scope["headers"]), MEDIA_TYPES)
        media_type = media_type_asked(scope["headers"], (sent, *MEDIA_TYPES))
        chosen = read_query(scope["query_string"])
        arriving = Arriving(receive, self.idle_seconds, scope.get(IS_LOST, _never))
        try:
            await asyncio.sleep(0)  # receiving begins, and a caller who waits for leave to send is given it
            headers = [(b"content-type", media_type.encode()), (b"cache-control", b"no-store")]
            await send({"type": "http.response.start", "status": 200, "headers": headers})
            await send({"type": "http.response.body", "body": BASIS, "more_body": True})
            await self._answer(arriving, chosen, scope, send)
        finally:
            arriving.close()

    async def _answer(self, arriving: Arriving, chosen: Chosen, scope: Scope, send: Send) -> None:
        instance: str = scope[REQUEST_ID]
        lines = Lines(self.max_line_bytes)
        written: list[bytes] = []
        number = items = failed = answered = 0
        turn = perf_counter()
        more = True

        async def hand_over() -> None:
            if written:
                await send({"type": "http.response.body", "body": b"".join(written), "more_body": True})
                written.clear()  # not before: what waits for a slow reader leaves with the last line of a stop
            await asyncio.sleep(0)
            scope[ITEMS] = items
            if arriving.gone():
                raise ClientGone
            arriving.check()

        try:
            while more:
                chunk, more = await arriving.chunk()
                for number, line in lines.cut(chunk, last=not more):
                    try:
                        status, answer = settle_line(self.items, number, line, self.max_line_bytes, chosen, instance)
                    except PutOffError as put_off:
                        status, answer = await ASIDE.finish(put_off, arriving.gone, stopped=_stopping)
                    answered = number
                    written += (answer, b"\n")
                    items += 1
                    failed += status != 200
                    if perf_counter() - turn > _SLICE:
                        await hand_over()
                        turn = perf_counter()
                await hand_over()
                turn = perf_counter()
        except (EndedError, asyncio.CancelledError) as ended:
            if isinstance(ended, asyncio.CancelledError):
                if not STOPPING.stopped:
                    raise
                ended = _stopping()  # which does not wait for the line at work any longer
            last = b'{"type":"stopped","reason":"%b","line":%d,"item_count":%d,"failed_count":%d}\n'
            scope[CLOSES] = True
            last %= (ended.reason.encode(), answered, items, failed)
        else:
            last = summary_of(items, failed)
        scope[ITEMS] = items
        await send({"type": "http.response.body", "body": b"".join([*written, last])})


def _stopping() -> EndedError:
    return EndedError("stopping")


def settle_line(items: Items, number: int, line: bytes | None, limit: int, chosen: Chosen, instance: str) -> Settled:
    """Answer a line, None for one beyond the limit; raises PutOffError for one that takes long."""
    place = b'"line":%d,' % number
    if line is None:
        return refused(ProblemRaised("body_too_large", f"A line may have {limit} bytes."), instance, place)
    return items.settle(line, chosen, instance, place)


def summary_of(items: int, failed: int) -> bytes:
    """Write the last line of a stream."""
    return b'{"type":"summary","item_count":%d,"failed_count":%d}\n' % (items, failed)
