"""The load: keep-alive connections that ask again as soon as they are answered, and streams at full speed.

Everything goes to loopback, and every loop is bounded in number or time.
"""

from __future__ import annotations

import asyncio
import itertools
import json
import re
import time
from collections.abc import Iterable, Sequence
from typing import Any, cast

import uvloop
from ductrun.http.items import in_an_item
from ductrun.subjects import OPERATIONS

EXAMPLES: dict[str, dict[str, Any]] = {operation.name: operation.example for operation in OPERATIONS}
_SUMMARY = re.compile(rb'\{"type":"summary","item_count":(\d+),"failed_count":(\d+)\}\n')
_BLOCK = 65_536


class Asking(asyncio.Protocol):
    """One connection that sends the next request as soon as the answer is complete, or after a pause."""

    def __init__(self, request: bytes, until: float, taken: list[float], pause: float) -> None:
        self.request, self.until, self.taken, self.pause = request, until, taken, pause
        self.done = asyncio.get_running_loop().create_future()
        self.buffer = b""

    def connection_made(self, transport: asyncio.BaseTransport) -> None:
        self.transport = cast(asyncio.Transport, transport)  # uvloop's transports are not asyncio's classes
        self.send()

    def send(self) -> None:
        self.sent = time.perf_counter()
        self.transport.write(self.request)

    def data_received(self, data: bytes) -> None:
        self.buffer += data
        head, separator, body = self.buffer.partition(b"\r\n\r\n")
        if not separator:
            return
        length = int(head.lower().partition(b"content-length:")[2].split(b"\r\n", 1)[0])
        if len(body) < length:
            return
        if not head.startswith(b"HTTP/1.1 200"):
            self.done.set_exception(RuntimeError(head.decode()))
            return
        now = time.perf_counter()
        self.taken.append(now - self.sent)
        self.buffer = b""
        if now >= self.until:
            self.done.set_result(None)
            self.transport.close()
        elif self.pause:
            asyncio.get_running_loop().call_later(self.pause, self.send)
        else:
            self.send()


class Streaming(asyncio.Protocol):
    """One stream: sends blocks as fast as they are taken, and counts the answers until the summary."""

    def __init__(self, port: int, blocks: Iterable[bytes]) -> None:
        self.head = (
            f"POST /v1/batch/stream HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Type: application/jsonl\r\n"
            "Transfer-Encoding: chunked\r\n\r\n"
        ).encode()
        self.blocks = iter(blocks)
        self.done: asyncio.Future[int] = asyncio.get_running_loop().create_future()
        self.tail = b""
        self.open = True
        self.answered = 0

    def connection_made(self, transport: asyncio.BaseTransport) -> None:
        self.transport = cast(asyncio.Transport, transport)
        self.transport.write(self.head)
        self.resume_writing()

    def pause_writing(self) -> None:
        self.open = False

    def resume_writing(self) -> None:
        self.open = True
        while self.open:
            block = next(self.blocks, b"")
            self.transport.write(b"%x\r\n%b\r\n" % (len(block), block))
            if not block:
                return

    def data_received(self, data: bytes) -> None:
        self.answered += data.count(b'"line":')  # one that falls between two reads is missed
        self.tail = (self.tail + data)[-200:]
        if self.tail.endswith(b"\r\n0\r\n\r\n"):
            found = _SUMMARY.search(self.tail)
            if found is None or found[2] != b"0":
                self.done.set_exception(RuntimeError(f"a stream failed: {self.tail!r}"))
            else:
                self.done.set_result(int(found[1]))
            self.transport.close()

    def connection_lost(self, error: Exception | None) -> None:
        if not self.done.done():
            self.done.set_exception(RuntimeError(f"a stream was cut off: {error}"))


def request_bytes(path: str, port: int, body: Any) -> bytes:
    """Write one request."""
    written = json.dumps(body).encode()
    head = f"POST {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Type: application/json\r\n"
    return f"{head}Content-Length: {len(written)}\r\n\r\n".encode() + written


def ask(port: int, request: bytes, seconds: float, connections: int = 8, pause: float = 0.0) -> list[float]:
    """Load one server for some seconds; gives the time each request took."""

    async def run() -> list[float]:
        taken: list[float] = []
        until = time.perf_counter() + seconds
        loop = asyncio.get_running_loop()
        made = [
            await loop.create_connection(lambda: Asking(request, until, taken, pause), "127.0.0.1", port)
            for _ in range(connections)
        ]
        await asyncio.wait_for(asyncio.gather(*(asking.done for _, asking in made)), seconds + 10)
        return taken

    return uvloop.run(run())


def different(name: str, count: int = 2_000) -> list[dict[str, Any]]:
    """Make requests of one calculation that all differ in a length."""
    requests = []
    for number in range(count):
        request = json.loads(json.dumps(EXAMPLES[name]))
        if name == "pull-tension":
            request["sections"][0]["length"]["value"] = 100 + number / 16
        requests.append(request)
    return requests


def blocks_of(name: str, lines: int) -> list[bytes]:
    """Write so many lines of one calculation in blocks of about 64 KiB; the blocks repeat, and cost no memory."""
    operation = in_an_item(name)
    distinct = [
        json.dumps({"id": str(number), "operation": operation, "request": request}, separators=(",", ":")).encode()
        + b"\n"
        for number, request in enumerate(different(name))
    ]
    several = max(1, _BLOCK // len(distinct[0]))
    blocks = [b"".join(distinct[at : at + several]) for at in range(0, len(distinct) - several + 1, several)]
    whole, rest = divmod(lines, several)
    return [*itertools.islice(itertools.cycle(blocks), whole), *([b"".join(distinct[:rest])] if rest else [])]


async def _streams(port: int, blocks: Iterable[bytes], count: int) -> list[Streaming]:
    loop = asyncio.get_running_loop()
    made = []
    for _ in range(count):
        made.append((await loop.create_connection(lambda: Streaming(port, blocks), "127.0.0.1", port))[1])
        await asyncio.sleep(0.02)  # a worker that is at work by then leaves the next connection to another
    return made


def stream(port: int, blocks: Sequence[bytes], limit: float = 600.0) -> float:
    """Send the blocks through one stream; gives the items answered a second."""

    async def run() -> float:
        begun = time.perf_counter()
        (streaming,) = await _streams(port, blocks, 1)
        answered = await asyncio.wait_for(streaming.done, limit)
        return answered / (time.perf_counter() - begun)

    return uvloop.run(run())


def stream_for(port: int, blocks: Sequence[bytes], seconds: float, streams: int) -> float:
    """Keep so many streams full for some seconds, then hang up; gives the items answered a second, all together."""

    async def run() -> float:
        made = await _streams(port, itertools.cycle(blocks), streams)
        await asyncio.sleep(0.5)
        before, begun = sum(one.answered for one in made), time.perf_counter()
        await asyncio.sleep(seconds)
        rate = (sum(one.answered for one in made) - before) / (time.perf_counter() - begun)
        for one in made:
            one.done.cancel()
            one.transport.abort()
        return rate

    return uvloop.run(run())
