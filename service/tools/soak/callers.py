"""Callers for the soak, who ask without end and tell what became of it, and what a process holds meanwhile."""

from __future__ import annotations

import asyncio
import json
import random
import statistics
import time
from collections import Counter
from collections.abc import Sequence
from pathlib import Path

import msgspec
from ductrun.subjects import OPERATIONS

EXAMPLES = {operation.name: json.dumps(operation.example).encode() for operation in OPERATIONS}
CUT, HUNG = 0, -1


def written(path: str, body: bytes, kind: bytes = b"application/json", more: bytes = b"") -> bytes:
    head = b"POST %b HTTP/1.1\r\nHost: a\r\nContent-Type: %b\r\n%bContent-Length: %d\r\n\r\n"
    return head % (path.encode(), kind, more, len(body)) + body


async def head_of(reader: asyncio.StreamReader) -> bytes:
    return (await reader.readuntil(b"\r\n\r\n")).lower()


class AnsweredLine(msgspec.Struct):
    """What is looked at in a line of a stream."""

    type: str
    status: int = 0


_LINE = msgspec.json.Decoder(AnsweredLine)


class Caller:
    """One connection that asks, and opens another where one is closed."""

    def __init__(self, port: int) -> None:
        self.port = port
        self.streams: tuple[asyncio.StreamReader, asyncio.StreamWriter] | None = None

    async def ask(self, sent: bytes) -> int:
        """Give the status, CUT where an answer did not come whole."""
        return (await self.ask_all([sent]))[0]

    async def ask_all(self, several: Sequence[bytes]) -> list[int]:
        """Send requests one behind the other, without waiting; give the status of each."""
        statuses: list[int] = []
        lost = CUT
        try:
            async with asyncio.timeout(30):
                reader, writer = await self.opened()
                writer.write(b"".join(several))
                while len(statuses) < len(several):
                    head = await head_of(reader)
                    await reader.readexactly(int(head.partition(b"content-length: ")[2].partition(b"\r\n")[0]))
                    statuses.append(int(head[9:12]))
                    if b"connection: close" in head:
                        self.close()
                        break
        except TimeoutError:
            self.close()
            lost = HUNG
        except (OSError, EOFError):
            self.close()
        return statuses + [lost] * (len(several) - len(statuses))

    async def stream(self, lines: Sequence[bytes]) -> list[int]:
        """Send lines as one stream; give the status of each."""
        statuses: list[int] = []
        lost = CUT
        try:
            async with asyncio.timeout(60):
                reader, writer = await self.opened()
                writer.write(written("/v1/batch/stream", b"\n".join(lines), b"application/jsonl"))
                await head_of(reader)
                answers = b""
                while size := int(await reader.readline(), 16):
                    answers += (await reader.readexactly(size + 2))[:-2]
                await reader.readline()
                told = [_LINE.decode(answer) for answer in answers.splitlines()]
                statuses = [line.status for line in told if line.type in ("answer", "problem")]
        except TimeoutError:
            self.close()
            lost = HUNG
        except (OSError, EOFError, ValueError):
            self.close()
        return statuses + [lost] * (len(lines) - len(statuses))

    async def opened(self) -> tuple[asyncio.StreamReader, asyncio.StreamWriter]:
        if self.streams is None:
            self.streams = await asyncio.open_connection("127.0.0.1", self.port, limit=1 << 24)
        return self.streams

    def close(self) -> None:
        if self.streams is not None:
            self.streams[1].close()
        self.streams = None


async def loaded(
    port: int, callers: int, seconds: float, rate: float = 0.0, patience: float = 0.0
) -> tuple[Counter[int], list[float]]:
    """Have callers ask for pulls, as fast as they can or at a rate over all; give the statuses and the times.

    One who is refused has the patience to wait so many seconds, or half as long again.
    """
    sent = written("/v1/pull-tension", EXAMPLES["pull-tension"])
    statuses: Counter[int] = Counter()
    times: list[float] = []
    ends = time.monotonic() + seconds

    async def one() -> None:
        caller = Caller(port)
        due = time.monotonic() + random.random() * callers / rate if rate else 0.0
        while time.monotonic() < ends:
            if rate:
                await asyncio.sleep(max(0.0, due - time.monotonic()))
                due += callers / rate
            began = time.monotonic()
            status = await caller.ask(sent)
            statuses[status] += 1
            if status == 200:
                times.append(time.monotonic() - began)
            elif status == 503 and patience:
                await asyncio.sleep(patience * random.uniform(1.0, 1.5))  # not all at the same moment
        caller.close()

    await asyncio.gather(*(one() for _ in range(callers)))
    return statuses, times


def percentile(times: list[float], percent: int) -> float:
    return statistics.quantiles(times, n=100)[percent - 1] * 1e3 if len(times) > 1 else 0.0


def told(statuses: Counter[int]) -> str:
    names = {CUT: "cut", HUNG: "hung"}
    return ", ".join(f"{count} {names.get(status, status)}" for status, count in sorted(statuses.items()))


def open_files(process: int) -> int:
    return len(list(Path(f"/proc/{process}/fd").iterdir()))


def resident(process: int) -> float:
    found = Path(f"/proc/{process}/status").read_text(encoding="ascii")
    return int(found.partition("VmRSS:")[2].split()[0]) / 1_024
