"""Single requests of pull-tension (five sections), against two plain FastAPI handlers, as ratios of throughput.

The service is started by its own command, the others by uvicorn's; all run one worker with the same options. The load
comes over eight keep-alive connections. Rounds alternate, so that a slow spell of the machine falls on all; a ratio is
the median of the rounds.
"""

from __future__ import annotations

import json
import statistics
import urllib.request
from contextlib import ExitStack
from typing import Any

import pytest

from tools.benchmarks.figures import Figure
from tools.benchmarks.load import EXAMPLES, ask, request_bytes
from tools.live import free_port, running

OPTIONS = ["--no-access-log", "--no-proxy-headers", "--no-server-header", "--log-level", "warning"]
SERVERS = {
    "ductrun": (["ductrun", "serve"], "/v1/pull-tension"),
    "echo": (["uvicorn", "tools.benchmarks.echo_app:app", *OPTIONS], "/echo"),
    "pint": (["uvicorn", "tools.benchmarks.pint_app:app", *OPTIONS], "/pull"),
}
BODY = EXAMPLES["pull-tension"]


def answer_of(port: int, path: str) -> Any:
    headers = {"Content-Type": "application/json"}
    request = urllib.request.Request(f"http://127.0.0.1:{port}{path}", json.dumps(BODY).encode(), headers)
    with urllib.request.urlopen(request, timeout=10) as answer:
        return json.load(answer)


def check_that_pint_agrees(ports: dict[str, int]) -> None:
    """Hold the baseline's tensions against the service's: a baseline that does less is none."""
    ours = answer_of(ports["ductrun"], SERVERS["ductrun"][1])["result"]
    theirs = answer_of(ports["pint"], SERVERS["pint"][1])
    for mine, other in ((ours, theirs["forward"]), (ours["reversed"], theirs["backward"])):
        for section, step in zip(mine["sections"], other, strict=True):
            assert section["tension_out"]["value"] == pytest.approx(step["tension_out"]["value"], rel=1e-6)


def measure(rounds: int, seconds: float) -> list[Figure]:
    ports = {name: free_port() for name in SERVERS}
    rates: dict[str, list[float]] = {name: [] for name in SERVERS}
    slowest: dict[str, list[float]] = {name: [] for name in SERVERS}
    with ExitStack() as servers:
        for name, (command, _) in SERVERS.items():
            servers.enter_context(running([*command, "--port", str(ports[name])], ports[name], "/openapi.json"))
        check_that_pint_agrees(ports)
        for round_number in range(rounds + 1):
            for name, (_, path) in SERVERS.items():
                taken = ask(ports[name], request_bytes(path, ports[name], BODY), seconds if round_number else 0.5)
                if round_number:  # the first round warms up
                    rates[name].append(len(taken) / seconds)
                    slowest[name].append(statistics.quantiles(taken, n=100)[98] * 1e3)
    told = "; ".join(
        f"{name} {statistics.median(figures):.0f}/s, p99 {statistics.median(slowest[name]):.1f} ms"
        for name, figures in rates.items()
    )
    return [
        against("single request against a bare FastAPI echo", rates["ductrun"], rates["echo"], 1.5, told),
        against("single request against a pint handler", rates["ductrun"], rates["pint"], 8.0, told),
    ]


def against(name: str, ours: list[float], others: list[float], reach: float, told: str) -> Figure:
    ratios = [one / other for one, other in zip(ours, others, strict=True)]
    spread = f"rounds from {min(ratios):.2f} to {max(ratios):.2f}; {told}"
    return Figure(name, statistics.median(ratios), spread, reach)
