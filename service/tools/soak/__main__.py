"""Faults proved on loopback, each with its figures: overload, callers who stall, a worker killed, hostile bodies, time.

DUCTRUN_SOAK_SECONDS is how long the whole of it takes, about: two minutes unless set. DUCTRUN_SOAK_BODIES is how many
hostile bodies are sent, however long it takes: as many as go into the time unless set. What is found is printed and
written to build/soak, with the load curve as a picture, and the exit status is 1 where a promise was not kept.
"""

from __future__ import annotations

import asyncio
import os
import platform
import random
import signal
import statistics
import sys
import time
from collections import Counter
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import NamedTuple

from tools.live import REPOSITORY, free_port, started
from tools.soak.callers import CUT, EXAMPLES, HUNG, Caller, loaded, open_files, percentile, resident, told, written
from tools.soak.hostile import bodies
from tools.soak.load_curve import Step, median_of, picture, table

SECONDS = float(os.environ.get("DUCTRUN_SOAK_SECONDS", "120"))
BODIES = int(os.environ.get("DUCTRUN_SOAK_BODIES", "0"))
TAKEN = 32  # at once, where the load is ramped
FOLDER = REPOSITORY / "build" / "soak"


class Row(NamedTuple):
    """One promise: what was done, what came of it, and whether it was kept."""

    fault: str
    found: str
    kept: bool


RAMP = [(callers, False) for callers in (1, 4, 16, 32, 64, 128)] + [(64, True), (128, True)]


def overload(share: float) -> tuple[list[Row], list[Step]]:
    """Ramp the callers to far more than are taken at once; several times in turn if there is time, for medians."""
    rounds = max(1, int(share // 20))
    seconds = share / rounds / len(RAMP)
    taken: list[list[Step]] = [[] for _ in RAMP]
    counts = [Counter[int]() for _ in RAMP]
    with started(environment={"DUCTRUN_MAX_CONCURRENT": str(TAKEN)}) as (address, _):
        port = int(address.rpartition(":")[2])
        for _ in range(rounds):
            for (callers, patient), steps, count in zip(RAMP, taken, counts, strict=True):
                statuses, times = asyncio.run(loaded(port, callers, seconds, patience=1.0 if patient else 0.0))
                count.update(statuses)
                rates = statuses[200] / seconds, statuses[503] / seconds
                steps.append(Step(callers, patient, *rates, percentile(times, 50), percentile(times, 99)))
        again, _ = asyncio.run(loaded(port, 1, 0.5))
    curve = [median_of(steps) for steps in taken]
    rows = [refused(step, count) for step, count in zip(curve, counts, strict=True) if step.callers > TAKEN]
    return [*rows, Row("one caller right after", told(again), set(again) == {200})], curve


def refused(step: Step, count: Counter[int]) -> Row:
    waits = "wait a second where they are refused" if step.patient else "ask again at once where they are refused"
    kept = set(count) == {200, 503} and step.p99 < 1_000
    found = f"{told(count)}; p99 of those taken {step.p99:.0f} ms"
    return Row(f"{step.callers} callers where {TAKEN} are taken, who {waits}", found, kept)


async def stalling(port: int, server: int, seconds: float) -> tuple[Counter[int], int]:
    """Open heads and bodies that trickle, and answers that nobody reads; ask as usual beside them.

    Gives what was answered to the others, and how many of those who stall the server has not ended soon after.
    """

    async def trickle(begun: bytes) -> None:
        _, writer = await asyncio.open_connection("127.0.0.1", port)
        try:
            writer.write(begun)
            while True:
                writer.write(b"x")
                await writer.drain()
                await asyncio.sleep(1)
        finally:
            writer.close()

    async def unread() -> None:
        reader, writer = await asyncio.open_connection("127.0.0.1", port, limit=1)
        reader._transport.pause_reading()  # type: ignore[attr-defined]
        writer.write(b"GET /openapi.json HTTP/1.1\r\nHost: a\r\n\r\n" * 20)  # more than the buffers between them hold
        await asyncio.sleep(3_600)

    await asyncio.sleep(1)  # the connection that found it ready has gone by then
    before = open_files(server)
    head = b"POST /v1/fill HTTP/1.1\r\nHost: a\r\n"
    body = head + b"Content-Type: application/json\r\nContent-Length: 100000\r\n\r\n"
    tasks = [asyncio.create_task(trickle(sent)) for sent in (head + b"X-A: ", body) for _ in range(30)]
    tasks += [asyncio.create_task(unread()) for _ in range(30)]
    await asyncio.sleep(0.2)
    statuses, _ = await loaded(port, 4, seconds)
    until = time.monotonic() + 20
    while (left := max(0, open_files(server) - before)) and time.monotonic() < until:
        await asyncio.sleep(0.2)
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
    return statuses, left


def stalls(share: float) -> list[Row]:
    short = {"DUCTRUN_SENDER_SECONDS": "2", "DUCTRUN_READER_SECONDS": "2"}
    with started(environment=short) as (address, server):
        statuses, left = asyncio.run(stalling(int(address.rpartition(":")[2]), server.pid, max(share, 6.0)))
    found = f"the service has ended {90 - left} of the 90; {told(statuses)} to four others beside them"
    return [
        Row("60 senders of a byte a second, 30 readers who never read", found, set(statuses) == {200} and left == 0)
    ]


def workers_of(process: int) -> list[int]:
    children = Path(f"/proc/{process}/task/{process}/children").read_text(encoding="ascii").split()
    return [int(child) for child in children if "spawn_main" in Path(f"/proc/{child}/cmdline").read_text("ascii")]


def stop(share: float, number: signal.Signals) -> list[Row]:
    """Tell one of two workers to go, or kill it, under load."""
    port = free_port()
    command = ["ductrun", "serve", "--port", str(port), "--workers", "2"]
    with started(command, port, environment={"DUCTRUN_DRAIN_SECONDS": "1"}) as (_, server):

        def end_the_busiest() -> None:
            os.kill(max(workers_of(server.pid), key=open_files), number)

        async def run() -> Counter[int]:
            asyncio.get_running_loop().call_later(share / 2, end_the_busiest)
            return (await loaded(port, 16, share, 400))[0]

        statuses = asyncio.run(run())
    kept = set(statuses) == {200} if number == signal.SIGTERM else statuses[200] > 0 and statuses[CUT] <= 16
    what = "told to stop (TERM)" if number == signal.SIGTERM else "killed: its callers' own requests are cut"
    return [Row(f"a worker of two under load {what}", told(statuses), kept and not statuses[HUNG])]


def hours(share: float) -> list[Row]:
    """Mix traffic of every kind, streams that are left in the middle too, and hold the memory against its beginning."""
    item = b'{"id":"a","operation":"pull_tension","request":%b}' % EXAMPLES["pull-tension"]
    batch = b'{"items":[' + b",".join([item] * 20) + b"]}"
    with started() as (address, server):
        port = int(address.rpartition(":")[2])
        statuses: Counter[int] = Counter()
        left = 0
        sizes: list[float] = []

        async def ask(seed: int) -> None:
            source, caller = random.Random(seed), Caller(port)
            while time.monotonic() < ends:
                name = source.choice(list(EXAMPLES))
                asked = written(f"/v1/{name}", EXAMPLES[name])
                statuses[await caller.ask(written("/v1/batch", batch) if source.random() < 0.05 else asked)] += 1
            caller.close()

        async def leave() -> None:
            nonlocal left
            while time.monotonic() < ends:
                reader, writer = await asyncio.open_connection("127.0.0.1", port)
                writer.write(written("/v1/batch/stream", b"\n".join([item] * 500), b"application/jsonl"))
                await reader.read(2_000)
                writer.transport.abort()
                left += 1
                await asyncio.sleep(0.02)

        async def watch() -> None:
            await asyncio.sleep(share / 2)  # what is made at first need has been made by then
            while time.monotonic() < ends:
                sizes.append(resident(server.pid))
                await asyncio.sleep(share / 40)

        async def run() -> None:
            await asyncio.gather(*map(ask, range(4)), leave(), watch())

        ends = time.monotonic() + share
        asyncio.run(run())
        time.sleep(0.5)
        files = open_files(server.pid)
    growth = statistics.median(sizes[-5:]) / statistics.median(sizes[:5]) - 1
    found = f"{told(statuses)}, as many as one a second in {sum(statuses.values()) / 3_600:.1f} hours; {left} streams"
    found += f" left in the middle, {files} files open at the end; {sizes[-1]:.0f} MB, {growth:+.1%} in the second half"
    return [Row("traffic of every kind", found, set(statuses) == {200} and abs(growth) < 0.05 and files < 30)]


def conditions() -> str:
    day = f"{datetime.now(UTC):%d %B %Y}".removeprefix("0")
    return f"{day}; {os.cpu_count()} cores, {platform.machine()}, Python {platform.python_version()}"


def line(row: Row) -> str:
    return f"| {row.fault} | {row.found} | {'kept' if row.kept else 'NOT KEPT'} |"


def write(rows: list[Row], steps: list[Step]) -> None:
    page = "\n".join([conditions(), "", "| fault | what came of it | |", "|---|---|---|", *map(line, rows), ""])
    page += "\n" + table(steps)
    print(page)
    FOLDER.mkdir(parents=True, exist_ok=True)
    (FOLDER / "faults.md").write_text(page, encoding="utf-8")
    drawn = picture(steps, TAKEN, f"{conditions()}. Pulls of five sections; the callers run on the same cores.")
    (FOLDER / "load.svg").write_text(drawn, encoding="utf-8")


def main() -> int:
    share = SECONDS / 7
    rows, steps = overload(share)
    parts: tuple[Callable[[], list[Row]], ...] = (
        lambda: stalls(share),
        lambda: stop(share / 2, signal.SIGTERM),
        lambda: stop(share / 2, signal.SIGKILL),
        lambda: [Row(*bodies(share * 2, BODIES))],
        lambda: hours(share * 2),
    )
    for part in parts:
        rows += part()
        print(line(rows[-1]), file=sys.stderr, flush=True)
    write(rows, steps)
    return 0 if all(row.kept for row in rows) else 1


if __name__ == "__main__":
    sys.exit(main())
