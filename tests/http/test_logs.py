"""The log: a line a record, and nobody who logs waits for whoever reads, or does not."""

from __future__ import annotations

import json
import logging
import signal
import socket
import subprocess
import sys
import threading
import time
from typing import Any

import pytest
from ductrun.http.logs import MOST_WAITING, Log, line_of, log_config
from tools.live import started


def test_a_log_record_is_one_line_of_json() -> None:
    try:
        raise ValueError("one\ntwo")
    except ValueError:
        record = logging.LogRecord("ductrun", logging.ERROR, "", 0, "request %s failed", ("r",), sys.exc_info())
    line = line_of(record)
    told = json.loads(line)
    assert (line.count(b"\n"), line[-1:]) == (1, b"\n")
    assert (told["level"], told["event"], told["message"]) == ("error", "ductrun", "request r failed")
    assert "ValueError: one\ntwo" in told["exception"]


@pytest.mark.parametrize("logger", ["ductrun", "uvicorn"])
def test_what_is_logged_is_set(logger: str) -> None:
    assert log_config("failures")["loggers"][logger]["level"] == "WARNING"
    assert log_config("requests")["loggers"][logger]["level"] == "INFO"


class Reader:
    """Takes what is written, once it reads."""

    def __init__(self) -> None:
        self.reads, self.asked = threading.Event(), threading.Event()
        self.pieces: list[bytes] = []
        self.gone = False

    def write(self, written: bytes) -> None:
        self.asked.set()
        assert self.reads.wait(10)
        if self.gone:
            raise BrokenPipeError
        self.pieces.append(written)

    @property
    def lines(self) -> list[bytes]:
        return b"".join(self.pieces).splitlines()


def test_nobody_waits_for_a_reader_who_does_not_read_and_what_finds_no_room_is_counted() -> None:
    reader = Reader()
    log = Log(reader.write)
    line = b"x" * 99_999 + b"\n"
    log.add([b"first\n"])
    assert reader.asked.wait(10)
    for _ in range(MOST_WAITING // len(line) + 7):
        log.add([line])
    log.flush(0.01)
    assert reader.pieces == []
    reader.reads.set()
    log.flush(10)
    first, *kept, last = reader.lines
    assert (first, len(kept)) == (b"first", MOST_WAITING // len(line))
    assert json.loads(last)["message"] == "7 line(s) were dropped: the log was not read"


def test_a_reader_who_has_gone_does_not_end_the_log() -> None:
    reader = Reader()
    reader.reads.set()
    reader.gone = True
    log = Log(reader.write)
    log.add([b"one\n", b"two\n"])
    log.flush(10)
    reader.gone = False
    log.add([b"three\n"])
    log.flush(10)
    assert reader.lines[0] == b"three"
    assert json.loads(reader.lines[1])["message"].startswith("2 line(s) were dropped")
    assert len(reader.lines) == 2


def test_lines_leave_in_pieces_that_a_pipe_takes_whole() -> None:
    reader = Reader()
    log = Log(reader.write)
    lines = [b"%d %b\n" % (number, b"x" * 300) for number in range(100)]
    log.add([*lines, b"y" * 10_000 + b"\n"])
    reader.reads.set()
    log.flush(10)
    assert b"".join(reader.pieces) == b"".join(lines) + b"y" * 10_000 + b"\n"
    assert max(map(len, reader.pieces[:-1])) <= 4_096 < len(reader.pieces[-1])
    assert all(piece.endswith(b"\n") for piece in reader.pieces)
    assert len(reader.pieces) < 20


def test_what_is_logged_at_the_end_is_waited_for() -> None:
    reader = Reader()
    reader.reads.set()
    log = Log(reader.write)
    log.add([b"before\n"])
    log.end()
    assert reader.lines == [b"before"]
    log.add([b"after\n"])
    assert reader.lines == [b"before", b"after"]


def refused(port: int) -> bytes:
    """Ask what the event loop itself logs: what is no HTTP."""
    with socket.create_connection(("127.0.0.1", port), timeout=10) as connection:
        connection.sendall(b"zanzibar\r\n\r\n")
        return b"".join(iter(lambda: connection.recv(65_536), b""))


@pytest.mark.live
def test_a_service_whose_log_nobody_reads_answers_and_ends() -> None:
    fcntl = pytest.importorskip("fcntl")
    if not hasattr(fcntl, "F_SETPIPE_SZ"):
        pytest.skip("a pipe cannot be made small here")
    told: list[Any] = []
    short = {"DUCTRUN_LOG": "requests", "DUCTRUN_STOP_SECONDS": "1"}
    with started(environment=short, errors=subprocess.PIPE) as (address, process):
        assert process.stderr is not None
        fcntl.fcntl(process.stderr, fcntl.F_SETPIPE_SZ, 4_096)
        for _ in range(100):  # 200 lines of more than 100 bytes
            assert refused(int(address.rpartition(":")[2])).startswith(b"HTTP/1.1 400 ")
        began = time.monotonic()
        process.send_signal(signal.SIGTERM)
        process.wait(15)
        told = process.stderr.read().splitlines()
    assert time.monotonic() - began < 15
    assert 10 < len(told) < 150  # what fitted into the pipe, and no more


@pytest.mark.live
def test_the_last_lines_of_a_service_are_written() -> None:
    with started(environment={"DUCTRUN_LOG": "requests"}, errors=subprocess.PIPE) as (address, process):
        assert process.stderr is not None
        refused(int(address.rpartition(":")[2]))
        process.send_signal(signal.SIGTERM)
        settings, *lines = process.stderr.read().splitlines()
    assert settings.startswith(b"ductrun: DUCTRUN_MAX_BODY_BYTES=")
    told = [json.loads(line) for line in lines]
    assert [one["event"] for one in told].count("request") >= 2  # the probe, and what was refused
    assert told[-1]["message"].startswith("Finished server process")
