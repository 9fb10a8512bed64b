"""Faults proved on loopback, each with its figures: overload, callers who stall, a worker killed, hostile bodies, time.

DUCTRUN_SOAK_SECONDS is how long the whole of it takes, about: two minutes unless set. What is found is printed and
written to build/soak, and the exit status is 1 where a promise was not kept.
"""

from __future__ import annotations

import asyncio
import os
import random
import signal
import statistics
import sys
import time
from collections import Counter
from pathlib import Path
from typing import NamedTuple

from tools.live import REPOSITORY, free_port, started
from tools.soak_callers import CUT, EXAMPLES, HUNG, Caller, loaded, open_files, percentile, resident, told, written

SECONDS = float(os.environ.get("DUCTRUN_SOAK_SECONDS", "120"))
FOLDER = REPOSITORY / "build" / "soak"


class Row(NamedTuple):
    """One promise: what was done, what came of it, and whether it was kept."""

    fault: str
    found: str
    kept: bool


def overload(share: float) -> tuple[list[Row], str]:
    """Ramp the callers to far more than are taken at once."""
    rows, curve = [], []
    with started(environment={"DUCTRUN_MAX_CONCURRENT": "32"}) as (address, _):
        port = int(address.rpartition(":")[2])
        for callers in (1, 4, 16, 32, 64, 128):
            statuses, times = asyncio.run(loaded(port, callers, share / 6))
            rate = statuses[200] / (share / 6)
            curve.append((callers, rate, percentile(times, 50), percentile(times, 99), statuses[503]))
        others = {status for status in statuses if status not in (200, 503)}
        p99 = curve[-1][3]
        found = f"{told(statuses)}; p99 of those taken {p99:.0f} ms, alone {curve[0][3]:.1f} ms"
        rows.append(Row("128 callers where 32 are taken", found, not others and statuses[503] > 0 and p99 < 1_000))
        again, _ = asyncio.run(loaded(port, 1, 0.5))
        rows.append(Row("one caller right after", told(again), set(again) == {200}))
    lines = ["| callers | taken a second | p50, ms | p99, ms | refused |", "|---|---|---|---|---|"]
    lines += [f"| {n} | {rate:.0f} | {p50:.1f} | {p99:.1f} | {refused} |" for n, rate, p50, p99, refused in curve]
    return rows, "\n".join(lines)


async def stalling(port: int, seconds: float) -> tuple[Counter[int], float]:
    """Open heads and bodies that trickle, and answers that nobody reads; ask as usual beside them."""

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
        writer.write(b"GET /v1/tables/conductors HTTP/1.1\r\nHost: a\r\n\r\n" * 50)
        await asyncio.sleep(3_600)

    head = b"POST /v1/fill HTTP/1.1\r\nHost: a\r\n"
    body = head + b"Content-Type: application/json\r\nContent-Length: 100000\r\n\r\n"
    tasks = [asyncio.create_task(trickle(sent)) for sent in (head + b"X-A: ", body) for _ in range(30)]
    tasks += [asyncio.create_task(unread()) for _ in range(30)]
    await asyncio.sleep(0.2)
    statuses, _ = await loaded(port, 4, seconds)
    ended = sum(task.done() for task in tasks) / 60
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
    return statuses, ended


def stalls(share: float) -> list[Row]:
    short = {"DUCTRUN_SENDER_SECONDS": "2", "DUCTRUN_READER_SECONDS": "2"}
    with started(environment=short) as (address, server):
        before = open_files(server.pid)
        statuses, ended = asyncio.run(stalling(int(address.rpartition(":")[2]), max(share, 6.0)))
        time.sleep(1.5)
        left = open_files(server.pid) - before
    found = f"{told(statuses)} beside them; {ended:.0%} of the senders ended, {left} connections left"
    return [
        Row("60 senders of a byte a second, 30 readers who never read", found, set(statuses) == {200} and left <= 4)
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


def hostile(source: random.Random) -> bytes:
    """Make a body that is wrong: cut, mixed up, nested, crowded, or of plain noise."""
    good = source.choice(list(EXAMPLES.values()))
    place = source.randrange(len(good))
    return source.choice(
        (
            lambda: good[:place],
            lambda: good[:place] + bytes([source.randrange(256)]) + good[place + 1 :],
            lambda: good[:place] + good[place // 2 : place] + good[place:],
            lambda: b"[" * source.randrange(400) + b"]" * source.randrange(400),
            lambda: good.replace(b":", b":" + source.choice((b"NaN", b"1e999", b'"\\ud800"', b"null,")), 1),
            lambda: b'{"a":[' + b"{}," * source.randrange(2_000) + b"0]}",
            lambda: source.randbytes(source.randrange(200)),
            lambda: good.replace(b"}", b',"kind":"x"}', source.randrange(3)),
        )
    )()


def bodies(share: float, million: int) -> list[Row]:
    """Send hostile bodies, to calculations and in batches, and watch what is kept of them."""
    with started() as (address, server):
        port = int(address.rpartition(":")[2])
        statuses: Counter[int] = Counter()
        sizes: list[float] = []

        async def one(seed: int) -> None:
            source, caller = random.Random(seed), Caller(port)
            while time.monotonic() < ends and sum(statuses.values()) < million:
                path = f"/v1/{source.choice([*EXAMPLES, 'batch'])}"
                statuses[await caller.ask(written(path, hostile(source)))] += 1
            caller.close()

        async def watch() -> None:
            began = time.monotonic()
            while time.monotonic() < ends:
                await asyncio.sleep(share / 40)
                if time.monotonic() - began > share / 4:
                    sizes.append(resident(server.pid))

        async def run() -> None:
            watching = asyncio.create_task(watch())
            await asyncio.gather(*(one(seed) for seed in range(8)))
            watching.cancel()

        ends = time.monotonic() + share
        asyncio.run(run())
    growth = max(sizes) / sizes[0] - 1
    count = sum(statuses.values())
    kept = not any(status >= 500 or status in (CUT, HUNG) for status in statuses) and growth < 0.05
    return [Row(f"{count:,} hostile bodies", f"{told(statuses)}; memory {growth:+.1%} after the first quarter", kept)]


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
    found = f"{told(statuses)}; {left} streams left in the middle, {files} files open at the end"
    found += f"; memory {growth:+.1%} in the second half"
    return [Row("traffic of every kind", found, set(statuses) == {200} and abs(growth) < 0.05 and files < 30)]


def main() -> int:
    share = SECONDS / 7
    rows, curve = overload(share)
    rows += stalls(share)
    rows += stop(share / 2, signal.SIGTERM) + stop(share / 2, signal.SIGKILL)
    rows += bodies(share if SECONDS < 1_000 else share * 2, 1_000_000)
    rows += hours(share * 2)
    lines = ["| fault | what came of it | |", "|---|---|---|"]
    lines += [f"| {row.fault} | {row.found} | {'kept' if row.kept else 'NOT KEPT'} |" for row in rows]
    table = "\n".join(lines) + "\n\n" + curve + "\n"
    print(table)
    FOLDER.mkdir(parents=True, exist_ok=True)
    (FOLDER / "faults.md").write_text(table, encoding="utf-8")
    return 0 if all(row.kept for row in rows) else 1


if __name__ == "__main__":
    sys.exit(main())
