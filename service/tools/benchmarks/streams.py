"""The stream: against the limit of its arithmetic and single requests, its memory, its neighbours, two workers."""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import msgspec
from ductrun.kit.answers import NOTICE, Answer, Basis
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects import OPERATIONS
from ductrun.tables import TABLES

from tools.benchmarks.figures import Figure
from tools.benchmarks.load import EXAMPLES, ask, blocks_of, different, request_bytes, stream, stream_for
from tools.live import REPOSITORY, free_port, running


@contextmanager
def serving(workers: int = 1) -> Iterator[int]:
    port = free_port()
    command = ["ductrun", "serve", "--port", str(port), "--workers", str(workers)]
    with running(command, port, "/readyz"):
        yield port


def seconds_of(work: Callable[[Any], object], given: list[Any]) -> float:
    begun = time.perf_counter()
    for one in given:
        work(one)
    return (time.perf_counter() - begun) / len(given)


def limit_of(name: str, count: int = 800) -> Callable[[], float]:
    """Prepare the measure of the limit: the seconds that validation, arithmetic and encoding of one item take."""
    operation = next(one for one in OPERATIONS if one.name == name)
    bodies = [json.dumps(request, separators=(",", ":")).encode() for request in different(name, count)]
    read = reader_of(operation.request)
    requests = [read(body) for body in bodies]
    made = []
    for request in requests:
        sheet = Worksheet(US, working=False)
        result = operation.tell(operation.assess(request, sheet), sheet.tell)
        made.append(
            Answer(
                verdict=sheet.book.verdict or msgspec.UNSET,
                result=result,
                findings=sheet.book.findings,
                cautions=sheet.book.cautions,
                assumptions=sheet.assumptions,
                basis=Basis("", TABLES.hash, tuple(sheet.book.sources)),
                notice=NOTICE,
            )
        )
    encode = msgspec.json.Encoder().encode

    def limit() -> float:
        return (
            seconds_of(read, bodies)
            + seconds_of(lambda request: operation.tell(operation.assess(request, Worksheet(US)), US), requests)
            + seconds_of(encode, made)
        )

    return limit


def throughput(rounds: int, seconds: float) -> list[Figure]:
    """Streams of pull-tension and of cover, the lightest calculation, each between its limit and single requests."""
    figures = []
    with serving() as port:
        for name in ("pull-tension", "cover"):
            limit = limit_of(name)
            blocks = blocks_of(name, max(2_000, int(seconds * 0.6 / limit())))
            request = request_bytes(f"/v1/{name}", port, EXAMPLES[name])
            stream(port, blocks[:20])
            told = []
            for _ in range(rounds):
                before = limit()
                streamed = stream(port, blocks)
                least = (before + limit()) / 2
                single = len(ask(port, request, seconds / 2, connections=1)) / (seconds / 2)
                told.append((streamed * least, streamed / single, streamed, single, least))
            to_limit, to_single, streamed, single, least = (statistics.median(one) for one in zip(*told, strict=True))
            detail = (
                f"{streamed:.0f} items/s on one core; in process {least * 1e6:.0f} us an item; "
                f"{single:.0f} requests/s on one connection"
            )
            figures += [
                Figure(f"stream of {name} against its in-process limit", to_limit, detail, 0.7),
                Figure(f"stream of {name} against single requests", to_single, detail, 10.0),
            ]
    return figures


_CLIENT = """
import json, sys, time
import msgspec
from ductrun_client import Client, models
address, count = sys.argv[1], int(sys.argv[2])
with Client(address) as client:
    body = msgspec.json.decode(sys.argv[3], type=models.CoverRequest)
    client.cover(body)
    begun = time.perf_counter()
    for _ in range(count // 20):
        client.cover(body)
    single = (time.perf_counter() - begun) / (count // 20)
    items = (models.CoverItem(id="a", request=body) for _ in range(count))
    begun = time.perf_counter()
    assert sum(answer.status == 200 for answer in client.stream(items)) == count
    print(single * count / (time.perf_counter() - begun), 1 / single)
"""


def through_the_client(rounds: int) -> list[Figure]:
    """The Python client: its stream against its single calls, as a script would choose between them."""
    found = []
    with serving() as port:
        for _ in range(rounds):
            done = subprocess.run(
                [sys.executable, "-c", _CLIENT, f"http://127.0.0.1:{port}", "10000", json.dumps(EXAMPLES["cover"])],
                capture_output=True,
                text=True,
                check=True,
                timeout=120,
                env={"PYTHONPATH": str(REPOSITORY / "clients" / "python")},
            )
            found.append([float(text) for text in done.stdout.split()])
    ratio, single = (statistics.median(figures) for figures in zip(*found, strict=True))
    detail = f"cover, one connection each: {single * ratio:.0f} items/s against {single:.0f} calls/s"
    return [Figure("stream through the Python client against its single calls", ratio, detail, 10.0)]


def highest_memory() -> float:
    """Give the highest resident memory [MB] of the one server this process has started, from Linux's /proc."""
    [server] = Path(f"/proc/self/task/{os.getpid()}/children").read_text(encoding="utf-8").split()
    status = Path(f"/proc/{server}/status").read_text(encoding="utf-8")
    return int(status.partition("VmHWM:")[2].split()[0]) / 1024


def memory(lines: int) -> list[Figure]:
    """A long stream of cover against one of a thousand lines, in the same server."""
    with serving() as port:
        stream(port, blocks_of("cover", 1_000))
        before = highest_memory()
        rate = stream(port, blocks_of("cover", lines))
        after = highest_memory()
    detail = f"{before:.1f} MB after 1,000 lines, {after:.1f} MB after {lines:,} ({lines / rate:.0f} s)"
    return [Figure("memory of a million lines over a thousand", after - before, detail, 20.0, at_most=True, unit="MB")]


_BESIDE = """
import sys
from tools.benchmarks.load import blocks_of, stream
stream(int(sys.argv[1]), blocks_of("pull-tension", 2_000_000))
"""


def beside(rounds: int, seconds: float) -> list[Figure]:
    """One connection that asks every few milliseconds, alone and beside a stream that another process keeps full."""
    alone, together = [], []
    with serving() as port:
        request = request_bytes("/v1/pull-tension", port, EXAMPLES["pull-tension"])

        def p99() -> float:
            return statistics.quantiles(ask(port, request, seconds, connections=1, pause=0.003), n=100)[98] * 1e3

        p99()
        for _ in range(rounds):
            alone.append(p99())
            other = subprocess.Popen([sys.executable, "-c", _BESIDE, str(port)], cwd=REPOSITORY)
            try:
                time.sleep(1.5)
                assert other.poll() is None, "the stream beside it has ended"
                together.append(p99())
            finally:
                other.kill()
                other.wait(10)
            time.sleep(0.3)
    ratio = statistics.median(two / one for one, two in zip(alone, together, strict=True))
    detail = f"p99 {statistics.median(together):.1f} ms beside, {statistics.median(alone):.1f} ms alone"
    return [Figure("p99 of a single request beside a stream", ratio, detail, 4.5, at_most=True)]


def workers(rounds: int, seconds: float) -> list[Figure]:
    """Eight full streams of pull-plan at once, on one worker and on two.

    Pull-plan is heavy arithmetic with a short answer: the load, which runs on the same cores, takes little of them.
    """
    blocks = blocks_of("pull-plan", 2_000)
    ratios, told = [], []
    with serving(1) as one, serving(2) as two:
        for _ in range(rounds):
            single, double = (stream_for(port, blocks, seconds, streams=8) for port in (one, two))
            ratios.append(double / single)
            told.append((single, double))
    single, double = (statistics.median(rates) for rates in zip(*told, strict=True))
    detail = f"{double:.0f} items/s against {single:.0f}; pull-plan; the load runs on the same cores"
    return [Figure("two workers against one", statistics.median(ratios), detail, 1.8)]
