"""What the service does beside calculating: request ids, headers, readiness, settings, the command."""

from __future__ import annotations

import asyncio
import dataclasses
import json
import socket
import subprocess
import sys
import threading
from typing import Any

import pytest
from ductrun import __version__
from ductrun.http.app import create_api
from ductrun.http.gate import Gate
from ductrun.kit.answering import Chosen, answer_to
from ductrun.kit.operation import Operation
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from msgspec.structs import replace

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, post, reply


def test_a_safe_request_id_is_kept_and_another_is_replaced() -> None:
    kept = reply("GET", "/livez", headers=[("x-request-id", "bid-2026.11_A")])
    assert kept.headers["x-request-id"] == "bid-2026.11_A"
    for unsafe in ("a b", "x" * 65, "", "é"):
        found = reply("GET", "/livez", headers=[("x-request-id", unsafe)]).headers["x-request-id"]
        assert len(found) == 32
        assert found != unsafe


def test_every_answer_carries_safe_headers() -> None:
    found = post("fill", EXAMPLES["fill"]).headers
    assert found["x-content-type-options"] == "nosniff"
    assert found["cache-control"] == "no-store"
    assert found["content-type"] == "application/json"


def test_a_started_service_is_ready_until_it_stops() -> None:
    api = create_api(Settings())

    async def run() -> list[int]:
        statuses = []
        async with api.router.lifespan_context(api):
            statuses.append(reply_in_loop(Gate(api)))
        statuses.append(reply_in_loop(Gate(api)))
        return statuses

    def reply_in_loop(application: object) -> int:
        found: list[int] = []
        thread = threading.Thread(target=lambda: found.append(reply("GET", "/readyz", application=application).status))
        thread.start()
        thread.join()
        return found[0]

    assert asyncio.run(run()) == [200, 503]


def test_the_same_operation_answers_behind_a_prefix() -> None:
    api = create_api(Settings())

    async def mounted(scope: dict[str, object], receive: object, send: object) -> None:
        await api({**scope, "root_path": "/duct", "ductrun.request_id": "x"}, receive, send)  # type: ignore[arg-type]

    body = json.dumps(EXAMPLES["fill"]).encode()
    assert reply("POST", "/duct/v1/fill", body, JSON_TYPE, application=mounted).status == 200


def test_a_result_that_is_not_finite_never_leaves_the_service() -> None:
    real = next(operation for operation in OPERATIONS if operation.name == "expansion")

    def overflowing(assessed: Any, telling: Any) -> Any:
        told = real.tell(assessed, telling)
        return replace(told, length_change=type(told.length_change)(float("nan"), "in"))

    broken: Operation[Any, Any, Any] = dataclasses.replace(real, tell=overflowing)
    with pytest.raises(ArithmeticError, match="not finite"):
        answer_to(broken)(json.dumps(real.example).encode(), Chosen())


@pytest.mark.parametrize(("text", "expected"), [("", 1_048_576), ("2048", 2048)])
def test_the_body_limit_may_be_set(monkeypatch: pytest.MonkeyPatch, text: str, expected: int) -> None:
    monkeypatch.setenv("DUCTRUN_MAX_BODY_BYTES", text)
    monkeypatch.setenv("DUCTRUN_MAX_BATCH_BYTES", "2000000")
    assert Settings.from_environment() == Settings(max_body_bytes=expected, max_batch_bytes=2_000_000)


@pytest.mark.parametrize("name", ["DUCTRUN_MAX_BODY_BYTES", "DUCTRUN_MAX_BATCH_BYTES"])
@pytest.mark.parametrize("text", ["0", "-1", "1e6", "many"])
def test_a_body_limit_that_is_none_is_refused(monkeypatch: pytest.MonkeyPatch, name: str, text: str) -> None:
    monkeypatch.setenv(name, text)
    with pytest.raises(ValueError, match=name):
        Settings.from_environment()


def command(*arguments: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "ductrun", *arguments], capture_output=True, text=True, timeout=60, check=False
    )


def test_the_command_tells_its_version() -> None:
    assert command("version").stdout == f"{__version__}\n"


def test_a_taken_port_is_told_with_what_to_do() -> None:
    with socket.socket() as holder:
        holder.bind(("127.0.0.1", 0))
        holder.listen()
        port = holder.getsockname()[1]
        done = command("serve", "--port", str(port))
    assert done.returncode == 1
    assert done.stderr == (
        f"ductrun: port {port} on 127.0.0.1 is taken. Stop what uses it, or choose another: "
        f"make serve PORT={port + 1}\n"
    )


def test_a_port_beyond_the_last_is_refused() -> None:
    assert command("serve", "--port", "70000").returncode == 2


def test_an_address_that_is_not_ours_is_told(monkeypatch: Any) -> None:
    refused = command("serve", "--host", "192.0.2.1", "--port", "8123")
    assert refused.returncode == 1
    assert "DUCTRUN_OPEN_BEHIND_GATEWAY=true" in refused.stderr
    monkeypatch.setenv("DUCTRUN_OPEN_BEHIND_GATEWAY", "true")
    done = command("serve", "--host", "192.0.2.1", "--port", "8123")
    assert done.returncode == 1
    assert "cannot listen on 192.0.2.1" in done.stderr
