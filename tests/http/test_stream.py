"""JSON Lines in and out: every line keeps its place, its id and its own fault, however the bytes are cut."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

import pytest
from ductrun import __version__
from ductrun.http.app import create_app
from ductrun.http.items import in_an_item
from ductrun.http.stream import MEDIA_TYPES, Lines
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.tables import TABLES

from tests.asking import EXAMPLES, ask
from tests.http.wire import reply, send

BASIS = {"type": "basis", "service_version": __version__, "tables_version": TABLES.hash}
LINES_TYPE = [("content-type", "application/jsonl"), ("x-request-id", "stream")]


def line(name: str, identity: str = "a", **changes: Any) -> bytes:
    operation = in_an_item(name)
    return json.dumps({"id": identity, "operation": operation, "request": EXAMPLES[name] | changes}).encode() + b"\n"


def stream(body: bytes | Iterable[bytes], query: str = "", application: Any = None) -> list[Any]:
    """Give the lines of an answer without the first, which is the same in all."""
    more = {} if application is None else {"application": application}
    found = send("POST", f"/v1/batch/stream{query}", body, LINES_TYPE, **more)
    assert found is not None
    assert found.status == 200
    assert found.body.endswith(b"\n")
    basis, *lines = [json.loads(text) for text in found.body.splitlines()]
    assert basis == BASIS
    return lines


def test_every_operation_answers_in_a_stream_as_by_itself() -> None:
    names = [operation.name for operation in OPERATIONS]
    *found, summary = stream(b"".join(line(name, f"run {name}") for name in names), "?units=metric&working=true")
    assert [one["id"] for one in found] == [f"run {name}" for name in names]
    assert [one["line"] for one in found] == list(range(1, len(names) + 1))
    for name, one in zip(names, found, strict=True):
        assert (one["type"], one["operation"], one["status"]) == ("answer", in_an_item(name), 200)
        assert one["answer"] == ask(name, EXAMPLES[name], "units=metric&working=true")
    assert summary == summary_of(len(names), 0)


def summary_of(item_count: int, failed_count: int) -> dict[str, Any]:
    return {"type": "summary", "item_count": item_count, "failed_count": failed_count}


def test_the_same_stream_gives_the_same_bytes() -> None:
    body = line("pull-tension") + b"{\n" + line("fill", "b") + line("fill", conduit={})
    once, again = (reply("POST", "/v1/batch/stream", body, LINES_TYPE) for _ in range(2))
    assert once.body == again.body
    assert once.body.count(b"\n") == 6


@pytest.mark.parametrize("size", [1, 2, 7, 1000, 100_000])
def test_it_does_not_matter_how_the_bytes_are_cut(size: int) -> None:
    body = (
        line("cover", "first")
        + b"\r\n  \n"
        + line("fill", "b\u00e9nd").replace(b"\n", b"\r\n")
        + b"{\n"
        + line("cover")[:-1]
    )
    whole = stream(body)
    assert [one.get("line") for one in whole] == [1, 4, 5, 6, None]
    assert [one.get("status") for one in whole] == [200, 200, 400, 200, None]
    cut = stream([body[start : start + size] for start in range(0, len(body), size)])
    assert cut == whole
    assert cut[-1] == summary_of(4, 1)


@pytest.mark.parametrize("body", [b"", b"\n", b" \r\n\n\t"])
def test_an_empty_stream_has_only_its_basis_and_summary(body: bytes) -> None:
    assert stream(body) == [summary_of(0, 0)]


@pytest.mark.parametrize(
    ("given", "status", "kind", "told"),
    [
        (b"{", 400, "malformed_json", ""),
        (b'{"id":"a"} {"id":"b"}', 400, "malformed_json", ""),
        (b"\xff", 400, "invalid_utf8", ""),
        (b'\xef\xbb\xbf{"id":"a"}', 400, "invalid_utf8", ""),
        (b'{"id":"a","id":"b","operation":"fill","request":{}}', 400, "duplicate_member", ""),
        (b'{"id":"a","operation":"fill","request":{"nipple_length":NaN}}', 400, "non_finite_number", ""),
        (b'{"id":"a","operation":"fill","request":{"conduit":1e400}}', 400, "non_finite_number", "id operation"),
        (b"[" * 300 + b"]" * 300, 400, "too_deep", ""),
        (b"7", 422, "invalid_request", ""),
        (b'{"id":"a","operation":"dig","request":{}}', 422, "invalid_request", "id"),
        (b'{"id":"a","operation":"fill","request":{},"more":1}', 422, "invalid_request", "id operation"),
        (b'{"operation":"fill","request":{}}', 422, "invalid_request", "operation"),
    ],
)
def test_a_fault_is_that_of_its_line_alone(given: bytes, status: int, kind: str, told: str) -> None:
    before, fault, after, summary = stream(line("cover", "before") + given + b"\n" + line("cover", "after"))
    assert (before["status"], after["status"]) == (200, 200)
    assert before["answer"] == after["answer"]
    assert (fault["type"], fault["line"], fault["status"]) == ("problem", 2, status)
    assert set(fault) == {"type", "line", "status", "problem", *told.split()}
    assert (fault.get("id", "a"), fault.get("operation", "fill")) == ("a", "fill")
    assert fault["problem"]["type"] == f"/problems/{kind}"
    assert fault["problem"]["status"] == status
    assert summary == summary_of(3, 1)


def test_a_pointer_starts_at_its_line() -> None:
    wide = line("encasement", trench_width={"value": 20, "unit": "in"})
    unanswerable, unformed, _ = stream(wide + line("fill", conduit={"kind": "listed", "type": "emt"}))
    assert unanswerable["problem"]["errors"][0]["pointer"] == "#/request/trench_width/value"
    assert unformed["problem"]["errors"][0]["pointer"] == "#/request/conduit/trade_size"
    [nameless, _] = stream(b'{"operation":"fill","request":{}}')
    assert nameless["problem"]["errors"][0]["pointer"] == "#/id"


@pytest.mark.parametrize("size", [50, 1 << 20])
def test_a_line_beyond_its_bound_is_refused_and_the_next_is_answered(size: int) -> None:
    small = create_app(Settings(max_body_bytes=300))
    good = line("cover")
    assert len(good) <= 301
    body = good + b'{"id":"' + b"x" * 5000 + b'"}\n' + good + b"y" * 301
    found = stream([body[start : start + size] for start in range(0, len(body), size)], application=small)
    assert [one.get("status") for one in found] == [200, 413, 200, 413, None]
    assert [one.get("line") for one in found] == [1, 2, 3, 4, None]
    assert "300 bytes" in found[1]["problem"]["detail"]
    assert found[-1] == summary_of(4, 2)
    assert found[1] == {"type": "problem", "line": 2, "status": 413, "problem": found[1]["problem"]}


def test_of_a_line_beyond_its_bound_nothing_is_kept() -> None:
    lines = Lines(1000)
    for _ in range(50):
        assert list(lines.cut(b"x" * 900, last=False)) == []
        assert len(lines._rest) <= 1000
    assert list(lines.cut(b"\nab", last=True)) == [(1, None), (2, b"ab")]


@pytest.mark.parametrize("media_type", [*MEDIA_TYPES, "Application/JSONL; charset=utf-8"])
def test_the_answer_has_the_media_type_of_the_question(media_type: str) -> None:
    found = send("POST", "/v1/batch/stream", line("cover"), [("content-type", media_type)])
    assert found is not None
    assert found.status == 200
    assert found.headers["content-type"] == media_type.lower().split(";")[0]
    assert found.headers["cache-control"] == "no-store"
    assert "content-length" not in found.headers
    assert found.headers["x-request-id"]


@pytest.mark.parametrize(
    ("query", "headers", "status", "kind"),
    [
        ("", [("content-type", "application/json")], 415, "unsupported_media_type"),
        ("", [], 415, "unsupported_media_type"),
        ("", [("content-type", "application/jsonl; charset=latin-1")], 415, "unsupported_media_type"),
        ("?units=imperial", LINES_TYPE, 422, "invalid_query"),
    ],
)
def test_a_stream_that_cannot_begin_is_an_ordinary_problem(query: str, headers: Any, status: int, kind: str) -> None:
    found = send("POST", f"/v1/batch/stream{query}", line("cover"), headers)
    assert found is not None
    assert (found.status, found.json["type"]) == (status, f"/problems/{kind}")
    assert found.headers["content-type"] == "application/problem+json"
    assert found.headers.get("accept-post") == (", ".join(MEDIA_TYPES) if status == 415 else None)


def test_a_get_is_told_what_is_allowed() -> None:
    found = send("GET", "/v1/batch/stream")
    assert found is not None
    assert (found.status, found.headers["allow"]) == (405, "POST")
