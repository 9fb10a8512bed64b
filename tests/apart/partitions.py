"""The recipe of docs/partitions.md on a local cluster: 200,000 lines, a worker killed, every line answered once.

`make dask` installs what it needs beside the environment and runs it.
"""

from __future__ import annotations

import io
import json
import os
import re
import signal
import threading
import time
from typing import Any

from tools.live import REPOSITORY

from tests.asking import EXAMPLES

LINES = 200_000


def recipe() -> Any:
    page = (REPOSITORY / "docs/partitions.md").read_text(encoding="utf-8")
    [code] = re.findall(r"```python\n(.*?)```", page, re.DOTALL)
    namespace: dict[str, Any] = {}
    exec(code, namespace)  # noqa: S102  (the page's own code is what is tried)
    return namespace["answer_file"]


def line(number: int) -> bytes:
    request = EXAMPLES["spacers"] | {"length": {"value": number % 500 + 1, "unit": "ft"}}
    return json.dumps({"id": str(number), "operation": "spacers", "request": request}).encode()


def test_every_line_is_answered_once_though_a_worker_is_killed() -> None:
    from dask.distributed import Client, LocalCluster

    source = io.BytesIO(b"\n".join(map(line, range(1, LINES + 1))))
    target = io.BytesIO()
    killed: list[int] = []
    with (
        LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None) as local,
        Client(local) as cluster,
    ):

        def kill() -> None:
            while target.tell() < 20_000_000:
                time.sleep(0.05)
            victim = next(iter(local.workers.values())).process.pid
            os.kill(victim, signal.SIGKILL)
            killed.append(victim)

        killer = threading.Thread(target=kill)
        killer.start()
        counts = recipe()(cluster, source, target)
        killer.join(30)
    assert killed
    assert counts == (LINES, 0)
    found = [json.loads(one) for one in target.getvalue().splitlines()]
    assert [one["line"] for one in found] == list(range(1, LINES + 1))
    assert all(one["id"] == str(one["line"]) and one["status"] == 200 for one in found)
    # spacers at most 5 ft apart, one at either end (derived)
    assert all(
        one["answer"]["result"]["station_count"] == -(-(one["line"] % 500 + 1) // 5) + 1
        for one in found[:: LINES // 97]
    )
