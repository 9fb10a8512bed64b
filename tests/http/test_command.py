"""The commands beside the server: answering files, and looking whether all is well."""

from __future__ import annotations

import io
import json
import multiprocessing
import os
import socket
import subprocess
import sys
import time
from ctypes import c_int
from multiprocessing.sharedctypes import RawValue
from typing import Any

import pytest
from ductrun import doctor, lines
from ductrun.__main__ import main
from ductrun.kit.bounding import LARGE
from tools.live import REPOSITORY

from tests.asking import EXAMPLES
from tests.http.wire import reply

LIMIT = 1_048_576
SPACERS = EXAMPLES["spacers"]


def line(number: int, **changes: Any) -> bytes:
    request = SPACERS | {"length": {"value": number, "unit": "ft"}} | changes
    return json.dumps({"id": f"run {number}", "operation": "spacers", "request": request}).encode()


MIXED = b"\n".join([line(100), b"", b"not JSON", line(200, tiers=[]), line(300) + b" " * LARGE, b"x" * (LIMIT + 1)])


def answered(source: bytes, workers: int = 1) -> list[Any]:
    target = io.BytesIO()
    lines.answer(io.BytesIO(source), target, b"", workers, LIMIT)
    return [json.loads(one) for one in target.getvalue().splitlines()]


def test_lines_are_answered_as_a_stream_answers_them() -> None:
    found = answered(MIXED)
    served = reply("POST", "/v1/batch/stream", MIXED, [("content-type", "application/jsonl")])
    expected = [json.loads(one) for one in served.body.splitlines()]
    for one in found + expected:
        one.get("problem", {}).pop("request_id", None)
    assert found == expected
    assert [one["status"] for one in found[1:-1]] == [200, 400, 422, 200, 413]
    assert found[-1] == {"type": "summary", "item_count": 5, "failed_count": 3}


def test_several_processes_keep_the_order() -> None:
    source = b"\n".join(map(line, range(1, 4_001)))
    found = answered(source, workers=2)
    assert found == answered(source)
    assert [one["id"] for one in found[1:-1]] == [f"run {number}" for number in range(1, 4_001)]
    assert found[40]["answer"]["result"]["station_count"] == 9  # 40 ft, stations 5 ft apart and one at either end


def command(*arguments: str, source: bytes = b"", **environment: str) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run(
        [sys.executable, "-m", "ductrun", *arguments],
        cwd=REPOSITORY,
        env=dict(os.environ) | environment,
        input=source,
        capture_output=True,
        check=False,
    )


def test_the_command_answers_a_file_as_it_is_asked() -> None:
    done = command("answer", "--query", "units=metric", source=line(100))
    assert done.returncode == 0
    _, found, summary = map(json.loads, done.stdout.splitlines())
    assert found["answer"]["result"]["actual_spacing"]["unit"] == "m"
    assert summary == {"type": "summary", "item_count": 1, "failed_count": 0}
    refused = command("answer", "--query", "units=imperial")
    assert (refused.returncode, refused.stdout) == (1, b"")
    assert b"units does not take this value" in refused.stderr


@pytest.mark.parametrize("port", ["abc", "0", "70000", "1_0", "9" * 5_000])
def test_a_port_that_is_none_is_told_as_that(capsys: Any, port: str) -> None:
    with pytest.raises(SystemExit):
        main(["serve", "--port", port])
    assert capsys.readouterr().err.endswith("argument --port: a port lies in 1 to 65535\n")


def test_where_nobody_takes_the_answers_no_more_are_made(monkeypatch: Any) -> None:
    made = RawValue(c_int, 0)

    def slow(_items: Any, number: int, *_more: Any) -> tuple[int, bytes]:
        if number > 100:
            made.value += 1
            time.sleep(0.5)
        return 200, b"{}"

    class Gone(io.BytesIO):
        """Takes the basis and no more."""

        def write(self, written: Any, /) -> int:
            if b'"basis"' not in written:
                raise BrokenPipeError
            return len(written)

    monkeypatch.setattr(lines, "_settled", slow)
    monkeypatch.setattr(lines, "_CHUNK", 100)
    with pytest.raises(BrokenPipeError):
        lines.answer(io.BytesIO(b"1\n" * 5_000), Gone(), b"", 2, LIMIT)
    assert made.value < 50  # of parts of 50 lines, several of which wait


def test_a_process_that_is_killed_leaves_no_summary() -> None:
    class Deadly(io.BytesIO):
        """Kills a process at the third part."""

        reads = 0

        def read(self, size: int | None = -1, /) -> bytes:
            self.reads += 1
            if self.reads == 3:
                multiprocessing.active_children()[0].kill()
            return super().read(size)

    target = io.BytesIO()
    with pytest.raises(lines.BrokenProcessPool):
        lines.answer(Deadly(b"\n".join(map(line, range(1, 12_001)))), target, b"", 2, LIMIT)
    assert b'"type":"summary"' not in target.getvalue()


def test_a_process_that_is_killed_is_told(monkeypatch: Any, capsys: Any) -> None:
    def broken(*_asked: Any) -> None:
        raise lines.BrokenProcessPool

    monkeypatch.setattr(lines, "answer", broken)
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO()))
    assert main(["answer"]) == 1
    assert "Run it again" in capsys.readouterr().err


def test_all_is_well_where_the_service_can_start(capsys: Any) -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    assert main(["doctor", "--port", str(port)]) == 0
    told = capsys.readouterr().out.splitlines()
    assert [one.split()[0] for one in told] == ["well"] * 4
    assert "66 stations" in told[-1]


def test_what_is_wrong_is_told_and_the_rest_is_looked_at(monkeypatch: Any, capsys: Any) -> None:
    monkeypatch.setenv("DUCTRUN_MAX_CONCURENT", "5")
    monkeypatch.setattr(doctor, "_ANSWER", 65)
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        assert main(["doctor", "--port", str(taken.getsockname()[1])]) == 1
    told = capsys.readouterr().out
    assert "well   tables: in agreement" in told
    assert "WRONG  settings: DUCTRUN_MAX_CONCURENT is no setting" in told
    assert "WRONG  address: port" in told
    assert "WRONG  answer: 66 stations on 323 ft, where 65 are right" in told


def test_a_failure_of_the_doctor_itself_is_told(monkeypatch: Any) -> None:
    def broken() -> str:
        raise ZeroDivisionError("of all things")

    monkeypatch.setattr(doctor, "_tables", broken)
    found = dict(zip(["tables"], doctor.examine("127.0.0.1", 1), strict=False))
    assert found["tables"] == (False, "tables: ZeroDivisionError: of all things")
