"""Single requests of pull-tension (five sections) against a bare FastAPI echo of the same model, in turn, as a ratio.

Both servers run one worker with the same options; the load comes over keep-alive connections on loopback. Rounds
alternate, so that a slow spell of the machine falls on both; the ratio is the median of the rounds.
"""

from __future__ import annotations

import asyncio
import json
import os
import statistics
import time
from contextlib import ExitStack
from typing import cast

import uvloop
from ductrun.operations.pull_tension import OPERATION

from tests.live import free_port, running

ROUNDS = int(os.environ.get("DUCTRUN_BENCH_ROUNDS", "7"))
SECONDS = float(os.environ.get("DUCTRUN_BENCH_SECONDS", "2"))
CONNECTIONS = 8


class Connection(asyncio.Protocol):
    """One keep-alive connection that sends the next request as soon as the answer is complete."""

    def __init__(self, request: bytes, until: float, taken: list[float]) -> None:
        self.request, self.until, self.taken = request, until, taken
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
        if now < self.until:
            self.send()
        else:
            self.done.set_result(None)
            self.transport.close()


async def load(port: int, request: bytes, seconds: float) -> list[float]:
    """Load one server for some seconds; returns the time each request took."""
    taken: list[float] = []
    until = time.perf_counter() + seconds
    loop = asyncio.get_running_loop()
    made = [
        await loop.create_connection(lambda: Connection(request, until, taken), "127.0.0.1", port)
        for _ in range(CONNECTIONS)
    ]
    await asyncio.wait_for(asyncio.gather(*(protocol.done for _, protocol in made)), seconds + 10)
    return taken


def request_bytes(path: str, port: int) -> bytes:
    body = json.dumps(OPERATION.example).encode()
    head = f"POST {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Type: application/json\r\n"
    return f"{head}Content-Length: {len(body)}\r\n\r\n".encode() + body


def p99(taken: list[float]) -> float:
    return sorted(taken)[int(len(taken) * 0.99)] * 1e3


def main() -> None:
    ports = {"ductrun": free_port(), "echo": free_port()}
    commands = {
        "ductrun": ["uvicorn", "ductrun.http.app:create_app", "--factory"],
        "echo": ["uvicorn", "tests.benchmarks.echo_app:app"],
    }
    options = ["--no-access-log", "--no-proxy-headers", "--no-server-header", "--log-level", "warning"]
    requests = {
        "ductrun": request_bytes("/v1/pull-tension", ports["ductrun"]),
        "echo": request_bytes("/echo", ports["echo"]),
    }
    rates: dict[str, list[float]] = {"ductrun": [], "echo": []}
    slowest: dict[str, list[float]] = {"ductrun": [], "echo": []}
    with ExitStack() as servers:
        for name, command in commands.items():
            port = ports[name]
            servers.enter_context(running([*command, "--port", str(port), *options], port, "/openapi.json"))
        for round_number in range(ROUNDS + 1):
            for name in ("ductrun", "echo"):
                seconds = SECONDS if round_number else 0.5
                taken = uvloop.run(load(ports[name], requests[name], seconds))
                if round_number:  # the first round warms up
                    rates[name].append(len(taken) / seconds)
                    slowest[name].append(p99(taken))
    ratios = [a / b for a, b in zip(rates["ductrun"], rates["echo"], strict=True)]
    print(
        f"pull-tension, five sections, {CONNECTIONS} connections, one worker, {ROUNDS} rounds of {SECONDS:g} s in turn"
    )
    for name, figures in rates.items():
        print(f"  {name:8}{statistics.median(figures):8.0f} requests/s, p99 {statistics.median(slowest[name]):.2f} ms")
    print(
        f"  ratio of throughput ductrun / echo: {statistics.median(ratios):.2f} "
        f"(from {min(ratios):.2f} to {max(ratios):.2f})"
    )


if __name__ == "__main__":
    main()
