"""POST /v1/batch/stream: questions as JSON Lines, any number, each answered while the next are still arriving.

What stands in memory is bounded whatever the length of the stream: one chunk that is at work, one that waits, at most
one unfinished line, and the answers of one slice of work. A reader that is slow holds up the work, and through it the
sender; a caller that goes away ends it within a slice.
"""

from __future__ import annotations

import asyncio
from collections.abc import Iterator
from time import perf_counter

from msgspec import json
from starlette.types import Message, Receive, Scope, Send

from ductrun import __version__
from ductrun.http.aside import ASIDE, ClientGone
from ductrun.http.exchange import content_type_of, read_query
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items, refused
from ductrun.http.problems import ProblemRaised
from ductrun.kit.answering import Chosen, PutOffError
from ductrun.tables import TABLES

MEDIA_TYPES = ("application/jsonl", "application/x-ndjson")
_SLICE = 0.001  # seconds of work before other requests get their turn
_BASIS = json.encode({"type": "basis", "service_version": __version__, "tables_version": TABLES.hash}) + b"\n"


class Arriving:
    """The body as it arrives: the next chunk is received while the last one is at work, and no further ahead."""

    def __init__(self, receive: Receive) -> None:
        """Begin to receive."""
        self._receive = receive
        self._task = asyncio.create_task(self._next())

    async def _next(self) -> Message:
        return await self._receive()

    async def chunk(self) -> tuple[bytes, bool]:
        """Give the next chunk and whether more will come; raises ClientGone."""
        message = await self._task
        if message["type"] == "http.disconnect":
            raise ClientGone
        self._task = asyncio.create_task(self._next())  # past the end it waits for the caller to go
        return message.get("body", b""), message.get("more_body", False)

    def gone(self) -> bool:
        """Tell whether the caller has gone, without waiting."""
        return self._task.done() and self._task.result()["type"] == "http.disconnect"

    def close(self) -> None:
        """Receive no more."""
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

    def __init__(self, items: Items, max_line_bytes: int) -> None:
        """Keep what answers an item, and the limit of a line."""
        self.items = items
        self.max_line_bytes = max_line_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one stream, with breaks in which other requests are answered."""
        media_type = content_type_of(dict(scope["headers"]), MEDIA_TYPES)
        chosen = read_query(scope["query_string"])
        arriving = Arriving(receive)
        try:
            await asyncio.sleep(0)  # receiving begins, and a caller who waits for leave to send is given it
            headers = [(b"content-type", media_type.encode()), (b"cache-control", b"no-store")]
            await send({"type": "http.response.start", "status": 200, "headers": headers})
            await send({"type": "http.response.body", "body": _BASIS, "more_body": True})
            await self._answer(arriving, chosen, scope[REQUEST_ID], send)
        finally:
            arriving.close()

    async def _answer(self, arriving: Arriving, chosen: Chosen, instance: str, send: Send) -> None:
        lines = Lines(self.max_line_bytes)
        written: list[bytes] = []
        items = failed = 0
        turn = perf_counter()
        more = True

        async def hand_over() -> None:
            if written:
                body = b"".join(written)
                written.clear()
                await send({"type": "http.response.body", "body": body, "more_body": True})
            await asyncio.sleep(0)
            if arriving.gone():
                raise ClientGone

        while more:
            chunk, more = await arriving.chunk()
            for number, line in lines.cut(chunk, last=not more):
                try:
                    status, answer = self._one(number, line, chosen, instance)
                except PutOffError as put_off:
                    status, answer = await ASIDE.finish(put_off.finish, arriving.gone)
                written += (answer, b"\n")
                items += 1
                failed += status != 200
                if perf_counter() - turn > _SLICE:
                    await hand_over()
                    turn = perf_counter()
            await hand_over()
            turn = perf_counter()
        summary = b'{"type":"summary","item_count":%d,"failed_count":%d}\n' % (items, failed)
        await send({"type": "http.response.body", "body": summary})

    def _one(self, number: int, line: bytes | None, chosen: Chosen, instance: str) -> tuple[int, bytes]:
        place = b'"line":%d,' % number
        if line is None:
            too_long = ProblemRaised("body_too_large", f"A line may have {self.max_line_bytes} bytes.")
            return refused(too_long, instance, place)
        return self.items.settle(line, chosen, instance, "#", place)
