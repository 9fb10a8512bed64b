"""What a caller may take: no more than its share of time, connections and patience, and nothing is cut in a stop."""

from __future__ import annotations

import asyncio
import http.client
import json
import signal
import socket
import struct
import subprocess
import threading
import time
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

import pytest
from ductrun.http.eyes import CUT, EYES
from ductrun.http.gate import Gate
from ductrun.http.stopping import STOPPING, Stopping
from ductrun.settings import Settings
from tools.live import started

from tests.asking import EXAMPLES
from tests.http.wire import at_work

HEAD = b"POST /v1/fill HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
FILL = json.dumps(EXAMPLES["fill"]).encode()
WHOLE = HEAD + b"Content-Length: %d\r\n\r\n%b" % (len(FILL), FILL)
STREAM = (
    b"POST /v1/batch/stream HTTP/1.1\r\nHost: a\r\nContent-Type: application/jsonl\r\n"
    b"Transfer-Encoding: chunked\r\n\r\n3\r\n{}\n\r\n"
)
SHORT = {
    "DUCTRUN_SENDER_SECONDS": "1",
    "DUCTRUN_READER_SECONDS": "2",
    "DUCTRUN_STREAM_IDLE_SECONDS": "1",
}
SMALL = {"DUCTRUN_MAX_CONCURRENT": "3", "DUCTRUN_SENDER_SECONDS": "60", "DUCTRUN_KEEP_ALIVE_SECONDS": "1"}


@pytest.fixture(scope="module")
def server() -> Iterator[tuple[int, int]]:
    with started(environment=SHORT) as (address, process):
        yield int(address.rpartition(":")[2]), process.pid


@pytest.fixture(scope="module")
def small_port() -> Iterator[int]:
    with started(environment=SMALL) as (address, _):
        yield int(address.rpartition(":")[2])


def opened(port: int, sent: bytes) -> socket.socket:
    connection = socket.create_connection(("127.0.0.1", port), timeout=50)  # less than a connection is kept
    connection.sendall(sent)
    return connection


def told(connection: socket.socket) -> bytes:
    found = b""
    while more := connection.recv(65_536):
        found += more
    connection.close()
    return found


def until_answered(port: int, status: bytes) -> bytes:
    """Ask whether the service is ready until it answers so."""
    deadline = time.monotonic() + 50
    while time.monotonic() < deadline:
        found = told(opened(port, b"GET /readyz HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n"))
        if found.startswith(b"HTTP/1.1 %b " % status):
            return found
    raise AssertionError(found)


@pytest.mark.live
@pytest.mark.parametrize("begun", [HEAD, HEAD + b"Content-Length: 100\r\n\r\n{"], ids=["head", "body"])
def test_a_request_that_stops_coming_is_told_so(server: tuple[int, int], begun: bytes) -> None:
    began = time.monotonic()
    found = told(opened(server[0], begun))
    assert time.monotonic() - began > 0.9
    assert found.startswith(b"HTTP/1.1 408 ")
    assert b'"/problems/too_slow"' in found
    assert b"connection: close" in found


@pytest.mark.live
def test_a_byte_now_and_then_does_not_hold_a_connection(server: tuple[int, int]) -> None:
    connection = opened(server[0], HEAD + b"Content-Length: 1000\r\n\r\n{")
    connection.settimeout(0.2)
    found = b""
    for _ in range(100):
        connection.sendall(b" ")
        with suppress(TimeoutError):
            found = connection.recv(65_536)
            break
    connection.close()
    assert found.startswith(b"HTTP/1.1 408 ")


@pytest.mark.live
def test_a_connection_that_asks_nothing_is_closed(small_port: int) -> None:
    assert told(opened(small_port, b"")) == b""


@pytest.mark.live
def test_a_stream_whose_sender_pauses_for_too_long_ends_with_a_line_that_says_so(server: tuple[int, int]) -> None:
    found = told(opened(server[0], STREAM))  # to the end of the connection, which is not kept
    assert b'{"type":"stopped","reason":"idle","line":1,"item_count":1,"failed_count":1}\n\r\n0\r\n\r\n' in found


@pytest.mark.live
@pytest.mark.skipif(not Path("/proc/self/fd").exists(), reason="open connections are counted in /proc")
def test_a_reader_who_never_reads_is_left(server: tuple[int, int]) -> None:
    def connections() -> set[str]:
        found = set()
        for one in Path(f"/proc/{server[1]}/fd").iterdir():
            with suppress(FileNotFoundError):  # closed between the listing and the reading
                found.add(str(one.readlink()))
        return {name for name in found if name.startswith("socket:")}

    before = connections()  # of earlier callers some may be closing still
    connection = socket.socket()
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4_096)
    connection.connect(("127.0.0.1", server[0]))
    connection.sendall(b"GET /v1/tables/conductors HTTP/1.1\r\nHost: a\r\n\r\n" * 60)
    deadline = time.monotonic() + 50
    while not (held := connections() - before) and time.monotonic() < deadline:
        time.sleep(0.01)
    assert held
    while held & connections() and time.monotonic() < deadline:
        time.sleep(0.1)
    assert not held & connections()
    connection.close()


@pytest.mark.live
def test_beyond_the_limit_the_next_is_told_to_come_back_and_the_probe_answers(small_port: int) -> None:
    held = [at_work(small_port) for _ in range(3)]
    refused = opened(small_port, WHOLE + b"GET /livez HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")
    found = told(refused)
    for connection in held:
        connection.close()
    assert found.startswith(b"HTTP/1.1 503 ")
    assert b"retry-after: 1\r\n" in found
    assert b'"/problems/overloaded"' in found
    assert found.endswith(b'{"status":"alive"}')


@pytest.mark.parametrize("begun", [False, True])
def test_what_outlasts_a_stop_is_told_to_ask_again_or_is_logged_as_cut(
    begun: bool, monkeypatch: Any, caplog: Any
) -> None:
    sent: list[Any] = []

    async def send(message: Any) -> None:
        sent.append(message)

    async def receive() -> Any:
        await asyncio.sleep(60)

    async def endless(_scope: Any, _receive: Any, send_on: Any) -> None:
        if begun:
            await send_on({"type": "http.response.start", "status": 200, "headers": []})
            await send_on({"type": "http.response.body", "body": b"{", "more_body": True})
        await asyncio.sleep(60)

    async def run() -> None:
        scope = {"type": "http", "method": "POST", "path": "/v1/fill", "headers": [(b"x-request-id", b"late")]}
        task = asyncio.ensure_future(Gate(endless, Settings())(scope, receive, send))
        await asyncio.sleep(0)
        task.cancel()
        await task

    monkeypatch.setattr(STOPPING, "stopped", True)
    monkeypatch.setattr(EYES, "open", True)
    EYES.gathered.clear()
    asyncio.run(run())
    status = EYES.gathered.pop().status
    if begun:
        assert status == CUT
        assert [message.get("body") for message in sent] == [None, b"{"]
        assert [record.getMessage() for record in caplog.records] == [
            "request late was cut: the service stops and waited for it no longer"
        ]
        assert caplog.records[0].exc_info is None
        return
    assert status == 503
    assert (sent[0]["status"], dict(sent[0]["headers"])[b"retry-after"]) == (503, b"1")
    assert json.loads(sent[1]["body"])["type"] == "/problems/overloaded"
    assert not caplog.records


@pytest.mark.live
def test_a_request_that_outlasts_a_stop_gets_a_problem_before_the_process_ends() -> None:
    short = {"DUCTRUN_DRAIN_SECONDS": "0", "DUCTRUN_STOP_SECONDS": "1"}
    with started(environment=short) as (address, process):
        waiting = at_work(int(address.rpartition(":")[2]))
        process.send_signal(signal.SIGTERM)
        found = told(waiting)
        process.wait(50)
    assert found.startswith(b"HTTP/1.1 503 ")
    assert b"retry-after: 1\r\n" in found
    assert b"application/problem+json" in found


@pytest.mark.live
def test_a_stop_is_told_first_and_cuts_nothing() -> None:
    with started(environment={"DUCTRUN_DRAIN_SECONDS": "60"}) as (address, process):
        port = int(address.rpartition(":")[2])
        stream = opened(port, STREAM)
        ends: list[Any] = []
        begun = threading.Barrier(9)

        def ask_on() -> None:
            connection = http.client.HTTPConnection("127.0.0.1", port, timeout=50)
            answered = asked = 0
            closed = None
            while closed != "close":
                asked += 1
                connection.request("POST", "/v1/fill", FILL, {"Content-Type": "application/json"})
                found = connection.getresponse()
                answered += found.status == 200 and len(found.read()) > 0
                closed = found.headers["connection"]
                if asked == 1:
                    begun.wait(50)
                time.sleep(0.01)
            connection.close()
            ends.append((asked, answered))

        callers = [threading.Thread(target=ask_on) for _ in range(8)]
        for caller in callers:
            caller.start()
        begun.wait(50)
        process.send_signal(signal.SIGTERM)
        assert b'"/problems/not_ready"' in until_answered(port, b"503")
        for caller in callers:
            caller.join(50)
        assert len(ends) == 8
        assert all(asked == answered > 1 for asked, answered in ends)
        process.send_signal(signal.SIGTERM)  # the rest of the minute need not be waited for
        assert b'{"type":"stopped","reason":"stopping","line":1,"item_count":1,"failed_count":1}\n' in told(stream)
        process.wait(50)


def refuses(port: int) -> bool:
    try:
        socket.create_connection(("127.0.0.1", port), timeout=50).close()
    except ConnectionRefusedError:
        return True
    return False


@pytest.mark.live
def test_what_comes_behind_the_last_answer_of_a_stop_is_let_fall() -> None:
    with started(errors=subprocess.PIPE) as (address, process):
        assert process.stderr is not None
        port = int(address.rpartition(":")[2])
        answered, held = at_work(port), at_work(port)  # the second keeps the process
        process.send_signal(signal.SIGTERM)
        deadline = time.monotonic() + 50
        while not refuses(port) and time.monotonic() < deadline:
            time.sleep(0.01)
        body = b"{" + b" " * 98 + b"}"
        answered.sendall(body)
        found = b"".join(iter(lambda: answered.recv(65_536), b""))
        with suppress(OSError):  # the service waits for it no longer than a second
            answered.sendall(b"GET /livez HTTP/1.1\r\nHost: a\r\n\r\n")
            assert answered.recv(65_536) == b""
        answered.close()
        held.sendall(body)
        assert told(held).startswith(b"HTTP/1.1 422 ")
        process.wait(50)
        assert process.stderr.read() == b""
    assert (found.count(b"HTTP/1.1"), found[:13]) == (1, b"HTTP/1.1 422 ")


def items_of_streams(port: int) -> float:
    found = told(opened(port, b"GET /metrics HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")).decode()
    counts = [line for line in found.splitlines() if line.startswith('ductrun_items_total{operation="batch/stream"}')]
    return sum(float(line.rpartition(" ")[2]) for line in counts)


@pytest.mark.live
def test_a_stream_is_computed_no_further_for_a_caller_who_has_gone(server: tuple[int, int]) -> None:
    straight = {"kind": "straight", "length": {"value": 1_000, "unit": "ft"}}
    places = {"kind": "anywhere", "spacing": {"value": 42, "unit": "ft"}}
    asked = EXAMPLES["pull-plan"] | {"sections": [straight] * 2, "box_positions": places}  # some 30 ms
    line = json.dumps({"id": "a", "operation": "pull_plan", "request": asked}).encode() + b"\n"
    before = items_of_streams(server[0])
    head = STREAM.partition(b"Transfer")[0] + b"Content-Length: 100000000\r\n\r\n"
    connection = opened(server[0], head + line * (300_000 // len(line)))  # of which more than one chunk has come
    found = b""
    while b'"type":"answer"' not in found:
        found += (came := connection.recv(65_536))
        assert came
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
    connection.close()
    deadline = time.monotonic() + 100
    while (items := items_of_streams(server[0]) - before) == 0 and time.monotonic() < deadline:
        time.sleep(0.1)
    assert 0 < items < 50  # a chunk has more than that


@pytest.mark.live
def test_a_caller_who_leaves_a_stream_is_no_fault_in_the_log(tmp_path: Path) -> None:
    line = json.dumps({"id": "a", "operation": "fill", "request": EXAMPLES["fill"]}).encode() + b"\n"
    head = STREAM.partition(b"Transfer")[0] + b"Content-Length: 100000000\r\n\r\n"
    log = tmp_path / "log"
    with log.open("wb") as errors, started(errors=errors.fileno()) as (address, _):
        port = int(address.rpartition(":")[2])
        for reset in (0, 1, 0, 1):
            connection = opened(port, head + line * 600)
            assert connection.recv(1_000)
            connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", reset, 0))
            connection.close()
        deadline = time.monotonic() + 15
        while items_of_streams(port) == 0 and time.monotonic() < deadline:
            time.sleep(0.1)
        assert items_of_streams(port) > 0
    assert log.read_text(encoding="utf-8") == ""


def test_whoever_asks_is_told_once_that_the_process_stops() -> None:
    stopping, heard = Stopping(), []
    first, second = (lambda: heard.append("first")), (lambda: heard.append("second"))
    stopping.tell(first)
    stopping.tell(second)
    stopping.forget(second)
    stopping.drain()
    assert (stopping.draining, stopping.stopped, heard) == (True, False, [])
    stopping.stop()
    stopping.stop()
    stopping.tell(second)
    assert heard == ["first", "second"]


def test_a_second_term_does_not_wait() -> None:
    handled: list[float] = []
    before = signal.signal(signal.SIGTERM, lambda *_: handled.append(time.monotonic()))

    async def run() -> None:
        stopping = Stopping()
        stopping.wait_on_term(60)
        signal.raise_signal(signal.SIGTERM)
        await asyncio.sleep(0.05)
        assert (stopping.draining, handled) == (True, [])
        signal.raise_signal(signal.SIGTERM)
        await asyncio.sleep(0.05)

    try:
        asyncio.run(run())
    finally:
        signal.signal(signal.SIGTERM, before)
    assert len(handled) == 1
