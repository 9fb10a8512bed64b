"""What an operator sees: a line and the figures of each request, without a byte of what was asked."""

from __future__ import annotations

import json
import re
import time
import urllib.request
from typing import Any

import pytest
from ductrun import __version__
from ductrun.http.eyes import EYES, Eyes, Seen, traced
from ductrun.http.logs import JsonLines, log_config
from ductrun.http.metrics import Metrics, metrics
from ductrun.tables import TABLES
from tools.live import free_port, started

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, post, reply

TRACE, PARENT = "4bf92f3577b34da6a3ce929d0e0e4736", "00f067aa0ba902b7"  # the example of W3C Trace Context, section 3.2
SEEN = Seen(0.0, "r-1", "/v1/fill", 200, 0.0125, None, b"")


def written(monkeypatch: Any, capsys: Any, *seen: Seen, operations: tuple[str, ...] = ("/v1/fill",)) -> list[Any]:
    eyes = Eyes()
    eyes.name(operations)
    eyes._logs = True
    eyes.gathered.extend(seen)
    eyes.write()
    return [json.loads(line) for line in capsys.readouterr().err.splitlines()]


def test_a_request_is_one_line(monkeypatch: Any, capsys: Any) -> None:
    assert written(monkeypatch, capsys, SEEN) == [
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


def test_a_line_has_the_items_and_the_trace_where_there_are_any(monkeypatch: Any, capsys: Any) -> None:
    header = f"00-{TRACE}-{PARENT}-01".encode()
    [line] = written(monkeypatch, capsys, SEEN._replace(items=3, traceparent=header, path="/etc/passwd"))
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


def test_a_log_that_nobody_reads_ends_the_log_and_nothing_else(monkeypatch: Any) -> None:
    class Closed:
        def write(self, _text: str) -> None:
            raise BrokenPipeError

    eyes = Eyes()
    eyes._logs = True
    eyes.gathered.append(SEEN)
    monkeypatch.setattr("sys.stderr", Closed())
    eyes.write()
    assert eyes._logs is False
    assert not eyes.gathered


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


def test_a_log_record_is_one_line_of_json() -> None:
    import logging

    try:
        raise ValueError("one\ntwo")
    except ValueError:
        import sys

        record = logging.LogRecord("ductrun", logging.ERROR, "", 0, "request %s failed", ("r",), sys.exc_info())
    line = JsonLines().format(record)
    told = json.loads(line)
    assert "\n" not in line
    assert (told["level"], told["event"], told["message"]) == ("error", "ductrun", "request r failed")
    assert "ValueError: one\ntwo" in told["exception"]
    assert log_config("failures")["loggers"]["ductrun"]["level"] == "WARNING"


@pytest.mark.live
def test_the_figures_of_several_workers_are_told_together() -> None:
    port = free_port()
    command = ["ductrun", "serve", "--port", str(port), "--workers", "2"]
    body = json.dumps(EXAMPLES["fill"]).encode()
    with started(command, port) as (address, _):
        for _ in range(40):
            asked = urllib.request.Request(f"{address}/v1/fill", body, {"Content-Type": "application/json"})
            urllib.request.urlopen(asked).close()
        deadline = time.monotonic() + 10
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


def test_there_is_one_set_of_figures() -> None:
    assert metrics() is metrics()
