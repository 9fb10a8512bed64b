"""What the service does beside calculating: request ids, tables, caching, pages, settings, the command."""

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
from ductrun.http.calculations import answer_to
from ductrun.http.exchange import read_query
from ductrun.kit.operation import Operation
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import REFERENCE_TABLES
from ductrun.units import UNIT_CODES
from msgspec.structs import replace

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, post, reply

TABLES = [f"/v1/tables/{table.name}" for table in REFERENCE_TABLES]


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


@pytest.mark.parametrize("path", TABLES)
def test_a_table_is_cached_by_its_content(path: str) -> None:
    first = reply("GET", path)
    assert first.status == 200
    assert first.json["rows"]
    tag = first.headers["etag"]
    assert tag.startswith('"')
    assert "max-age" in first.headers["cache-control"]
    for known in (tag, f'"other", {tag}', f"W/{tag}", "*"):
        unchanged = reply("GET", path, headers=[("if-none-match", known)])
        assert (unchanged.status, unchanged.body, unchanged.headers["etag"]) == (304, b"", tag)
    assert reply("GET", path, headers=[("if-none-match", '"other"')]).status == 200
    head = reply("HEAD", path)
    assert (head.status, head.body, head.headers["etag"]) == (200, b"", tag)
    assert head.headers["content-length"] == first.headers["content-length"]


def test_the_units_table_holds_every_code_with_its_factor() -> None:
    rows = {(row["dimension"], row["unit"]): row for row in reply("GET", "/v1/tables/units").json["rows"]}
    assert rows["Length", "ft"]["si_factor"] == 0.3048
    assert rows["Length", "ft"]["ucum"] == "[ft_i]"
    assert rows["Temperature", "degF"]["si_offset"] == pytest.approx(255.37222)
    assert set(rows) == {(one.__name__, code.text) for one, codes in UNIT_CODES.items() for code in codes}


def test_rows_show_both_unit_systems_and_where_they_stand() -> None:
    rows = reply("GET", "/v1/tables/conduits").json["rows"]
    [four] = [row for row in rows if (row["type"], row["trade_size"]) == ("pvc_schedule_40", "4")]
    assert four["outside_diameter"] == {"value": 4.5, "unit": "in"}
    assert four["outside_diameter_metric"] == {"value": 114.3, "unit": "mm"}
    assert four["source"] == "nfpa70-ch9-t4"
    assert four["standing"] == "metric read, inch from memory"
    assert four["wall_standing"] == "read"
    sources = {row["id"] for row in reply("GET", "/v1/tables/sources").json["rows"]}
    for table in ("conduits", "conductors", "materials", "friction"):
        assert {row["source"] for row in reply("GET", f"/v1/tables/{table}").json["rows"]} <= sources


@pytest.mark.parametrize(
    ("path", "count"), [("conduits/pvc_schedule_40", 12), ("conductors/THHN", 42), ("conductors/RHW*", 28)]
)
def test_a_picker_turns_the_pages_of_one_choice(path: str, count: int) -> None:
    whole = reply("GET", f"/v1/tables/{path}?limit=100").json
    assert whole["total_count"] == len(whole["rows"]) == count
    assert "next_offset" not in whole
    rows, offset = [], 0
    while True:
        page = reply("GET", f"/v1/tables/{path}?limit=5&offset={offset}").json
        rows += page["rows"]
        if "next_offset" not in page:
            break
        offset = page["next_offset"]
    assert rows == whole["rows"]
    assert reply("GET", f"/v1/tables/{path}?offset=10000").json["rows"] == []


def test_a_page_has_its_own_entity_tag() -> None:
    first, second = (reply("GET", f"/v1/tables/conduits/emt?limit=2&offset={offset}") for offset in (0, 2))
    assert first.headers["etag"] != second.headers["etag"]
    again = reply("GET", "/v1/tables/conduits/emt?limit=2", headers=[("if-none-match", first.headers["etag"])])
    assert again.status == 304


def test_the_docs_page_needs_nothing_from_elsewhere() -> None:
    page = reply("GET", "/docs")
    assert page.status == 200
    assert "default-src 'none'" in page.headers["content-security-policy"]
    assert b"http" not in page.body.replace(b"http-equiv", b"")
    for asset in ("swagger-ui/swagger-ui.css", "swagger-ui/swagger-ui-bundle.js", "docs.js", "page.css", "icon.svg"):
        assert f"docs/assets/{asset}".encode() in page.body or asset == "page.css"
        assert reply("GET", f"/docs/assets/{asset}").status == 200
    assert reply("HEAD", "/docs").body == b""


def test_the_contract_is_served_as_it_is_written() -> None:
    assert reply("GET", "/openapi.json").json["info"]["version"] == __version__


def test_a_started_service_is_ready_until_it_stops() -> None:
    api = create_api(Settings())

    async def run() -> list[int]:
        statuses = []
        async with api.router.lifespan_context(api):
            statuses.append(reply_in_loop(api))
        statuses.append(reply_in_loop(api))
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
        answer_to(broken)(json.dumps(real.example).encode(), read_query(b""))


@pytest.mark.parametrize(("text", "expected"), [("", 1_048_576), ("2048", 2048)])
def test_the_body_limit_may_be_set(monkeypatch: pytest.MonkeyPatch, text: str, expected: int) -> None:
    monkeypatch.setenv("DUCTRUN_MAX_BODY_BYTES", text)
    monkeypatch.setenv("DUCTRUN_MAX_BATCH_BYTES", "4096")
    assert Settings.from_environment() == Settings(max_body_bytes=expected, max_batch_bytes=4096)


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


def test_an_address_that_is_not_ours_is_told() -> None:
    done = command("serve", "--host", "192.0.2.1", "--port", "8123")
    assert done.returncode == 1
    assert "cannot listen on 192.0.2.1" in done.stderr
