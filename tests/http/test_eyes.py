"""What an operator sees: a line and the figures of each request, without a byte of what was asked."""

from __future__ import annotations

import errno
import json
import re
import threading
import time
import urllib.request
from concurrent.futures import ThreadPoolExecutor
from functools import cache
from typing import Any, ClassVar
from unittest.mock import MagicMock

import pytest
from ductrun import __version__
from ductrun.http.eyes import EYES, Eyes, Seen, traced
from ductrun.http.metrics import Metrics, metrics
from ductrun.tables import TABLES
from tools.live import started

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, post, reply

TRACE, PARENT = "4bf92f3577b34da6a3ce929d0e0e4736", "00f067aa0ba902b7"  # the example of W3C Trace Context, section 3.2
SEEN = Seen(0.0, "r-1", "/v1/fill", 200, 0.0125, None, b"")


def written(monkeypatch: Any, *seen: Seen, operations: tuple[str, ...] = ("/v1/fill",)) -> list[Any]:
    lines: list[bytes] = []
    monkeypatch.setattr("ductrun.http.eyes.LOG.add", lines.extend)
    eyes = Eyes()
    eyes.name(operations)
    eyes._logs = True
    eyes.gathered.extend(seen)
    eyes.write()
    assert all(line.endswith(b"\n") for line in lines)
    return [json.loads(line) for line in lines]


def test_a_request_is_one_line(monkeypatch: Any) -> None:
    assert written(monkeypatch, SEEN) == [
        {
            "time": "1970-01-01T00:00:00.000+00:00",
            "level": "info",
            "event": "request",
            "request_id": "r-1",
            "operation": "fill",
            "status": 200,
            "milliseconds": 12.5,
        }
    ]


def test_a_line_has_the_items_and_the_trace_where_there_are_any(monkeypatch: Any) -> None:
    header = f"00-{TRACE}-{PARENT}-01".encode()
    [line] = written(monkeypatch, SEEN._replace(items=3, traceparent=header, path="/etc/passwd"))
    assert (line["items"], line["trace_id"], line["parent_id"], line["operation"]) == (3, TRACE, PARENT, "other")


@pytest.mark.parametrize(
    "header",
    [
        b"",
        b"00-4bf9",
        f"ff-{TRACE}-{PARENT}-01".encode(),
        f"00-{'0' * 32}-{PARENT}-01".encode(),
        f"00-{TRACE}-{'0' * 16}-01".encode(),
        f'00-{TRACE}-{PARENT}-01","x":"'.encode(),
        f"00-{TRACE.upper()}-{PARENT}-01".encode(),
    ],
)
def test_a_header_that_is_no_trace_is_passed_over(header: bytes) -> None:
    assert traced(header) == ""


def test_requests_are_gathered_only_while_the_eyes_are_open(monkeypatch: Any) -> None:
    EYES.gathered.clear()
    post("fill", EXAMPLES["fill"])
    assert not EYES.gathered
    monkeypatch.setattr(EYES, "open", True)
    item = {"id": "a", "operation": "fill", "request": EXAMPLES["fill"]}
    reply("POST", "/v1/batch", json.dumps({"items": [item] * 3}).encode(), JSON_TYPE)
    reply("POST", "/v1/batch/stream", json.dumps(item).encode(), [("content-type", "application/jsonl")])
    reply("GET", "/nowhere")
    seen = list(EYES.gathered)
    EYES.gathered.clear()
    assert [(one.path, one.status, one.items) for one in seen] == [
        ("/v1/batch", 200, 3),
        ("/v1/batch/stream", 200, 1),
        ("/nowhere", 404, None),
    ]
    assert all(0 < one.seconds < 5 for one in seen)
    assert EYES.in_flight == 0


def test_what_cannot_be_counted_ends_neither_log_nor_figures(monkeypatch: Any, caplog: Any) -> None:
    class Full:
        """Has no room for one label."""

        counted: ClassVar[list[str]] = []
        in_flight = MagicMock()

        def count(self, operation: str, *_more: Any) -> None:
            if operation == "other":
                raise OSError(errno.ENOSPC, "No space left on device")
            self.counted.append(operation)

    monkeypatch.setattr("ductrun.http.eyes.metrics", Full)
    eyes = Eyes()
    eyes.name(["/v1/fill"])
    eyes.start(logs=False, counts=True)
    lost = SEEN._replace(path="/nowhere")
    eyes.gathered.extend([lost, SEEN, lost])
    eyes.end()
    eyes.start(logs=False, counts=True)
    eyes.gathered.append(SEEN)
    eyes.end()
    assert Full.counted == ["fill", "fill"]
    assert [record.getMessage() for record in caplog.records] == ["not every request is counted"]
    assert "No space left" in caplog.text


def test_figures_are_those_of_the_requests() -> None:
    figures = Metrics()
    for status in (200, 200, 503):
        figures.count("fill", status, 0.003, None)
    figures.count("batch", 200, 0.2, 12)
    figures.in_flight.set(4)
    told = figures.written().decode()
    for line in (
        'ductrun_requests_total{operation="fill",status="200"} 2.0',
        'ductrun_requests_total{operation="fill",status="503"} 1.0',
        'ductrun_request_seconds_bucket{le="0.0025",operation="fill"} 0.0',
        'ductrun_request_seconds_bucket{le="0.005",operation="fill"} 3.0',
        'ductrun_items_total{operation="batch"} 12.0',
        'ductrun_rejections_total{reason="overloaded"} 1.0',
        "ductrun_requests_in_flight 4.0",
        f'ductrun_build_info{{tables="{TABLES.hash}",version="{__version__}"}} 1.0',
    ):
        assert line in told.splitlines()


@pytest.mark.live
def test_the_figures_of_several_workers_are_told_together() -> None:
    body = json.dumps(EXAMPLES["fill"]).encode()
    with started(options=["--workers", "2"]) as (address, _):
        for _ in range(40):
            asked = urllib.request.Request(f"{address}/v1/fill", body, {"Content-Type": "application/json"})
            urllib.request.urlopen(asked).close()
        deadline = time.monotonic() + 60
        while time.monotonic() < deadline:
            told = urllib.request.urlopen(f"{address}/metrics").read().decode()
            found = re.search(r'ductrun_requests_total\{operation="fill",status="200"\} (\S+)', told)
            if found and float(found[1]) == 40:
                break
            time.sleep(0.1)
        assert found is not None
        assert float(found[1]) == 40
        assert re.search(r"ductrun_requests_in_flight \d", told)
        assert "ductrun_build_info" in told


def test_there_is_one_set_of_figures_whoever_asks_first(monkeypatch: Any) -> None:
    both = threading.Event()
    made: list[Any] = []

    class Slow:
        def __init__(self) -> None:
            made.append(self)
            if len(made) > 1:
                both.set()
            both.wait(0.2)  # in which the other asks too

    monkeypatch.setattr("ductrun.http.metrics.Metrics", Slow)
    monkeypatch.setattr("ductrun.http.metrics._metrics", cache(Slow))
    with ThreadPoolExecutor(2) as pool:
        first, second = [asked.result() for asked in [pool.submit(metrics) for _ in range(2)]]
    assert first is second
    assert made == [first]


def test_the_figures_are_made_beside_the_loop(monkeypatch: Any) -> None:
    loops: list[bool] = []

    def asked() -> Any:
        loops.append(threading.current_thread() is threading.main_thread())
        return MagicMock(written=lambda: b"")

    monkeypatch.setattr("ductrun.http.app.metrics", asked)
    assert reply("GET", "/metrics").status == 200
    assert loops == [False]
