"""Every benchmark in one run on one machine: prints the figures and writes them, as a table and as a picture.

Many short rounds in turn, rather than few long ones: a shared machine is slow for seconds at a time, and what is
compared must meet the same spells. DUCTRUN_BENCH_ROUNDS, DUCTRUN_BENCH_SECONDS and DUCTRUN_BENCH_LINES shorten or
lengthen it.
"""

from __future__ import annotations

import os
import platform
import sys
from collections.abc import Callable

from tools.benchmarks import singles, starting, streams
from tools.benchmarks.figures import Figure, table, write
from tools.live import REPOSITORY

ROUNDS = int(os.environ.get("DUCTRUN_BENCH_ROUNDS", "16"))
SECONDS = float(os.environ.get("DUCTRUN_BENCH_SECONDS", "0.6"))
LINES = int(os.environ.get("DUCTRUN_BENCH_LINES", "1000000"))
FOLDER = REPOSITORY / "build" / "benchmarks"


def main() -> int:
    conditions = (
        f"{os.cpu_count()} cores, {platform.machine()}, Python {platform.python_version()}; {ROUNDS} rounds of "
        f"{SECONDS:g} s in turn, medians"
    )
    measures: tuple[tuple[str, Callable[[], list[Figure]]], ...] = (
        ("single requests", lambda: singles.measure(ROUNDS, SECONDS)),
        ("streams", lambda: streams.throughput(ROUNDS, SECONDS)),
        ("the Python client", lambda: streams.through_the_client(3)),
        ("memory", lambda: streams.memory(LINES)),
        ("a request beside a stream", lambda: streams.beside(3, 4.0)),
        ("two workers", lambda: streams.workers(ROUNDS // 2, SECONDS)),
        ("starting", lambda: starting.measure(ROUNDS // 2)),
    )
    figures: list[Figure] = []
    for name, measure in measures:
        print(f"measuring {name} ...", file=sys.stderr, flush=True)
        figures += measure()
    print(table(figures, conditions))
    write(figures, conditions, FOLDER)
    print(f"written to {FOLDER.relative_to(REPOSITORY)}/figures.md and figures.svg")
    return 0


if __name__ == "__main__":
    sys.exit(main())
