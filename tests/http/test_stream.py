"""JSON Lines in and out: answers flow while questions arrive, every line keeps its own fault, memory stays bounded."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable, Iterable
from typing import Any

import pytest
from ductrun.http.app import create_app
from ductrun.http.exchange import Chosen
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items
from ductrun.http.stream import MEDIA_TYPES, Lines, Stream
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS

from tests.asking import EXAMPLES, ask
from tests.http.wire import send

LINES_TYPE = [("content-type", "application/jsonl"), ("x-request-id", "stream")]


def line(name: str, identity: str = "a", **changes: Any) -> bytes:
    return json.dumps({"id": identity, "operation": name, "request": EXAMPLES[name] | changes}).encode() + b"\n"


def stream(body: bytes | Iterable[bytes], query: str = "", application: Any = None) -> list[Any]:
    more = {} if application is None else {"application": application}
    found = send("POST", f"/v1/batch/stream{query}", body, LINES_TYPE, **more)
    assert found is not None
    assert found.status == 200
    assert found.body.endswith(b"\n")
    return [json.loads(text) for text in found.body.splitlines()]


def test_every_operation_answers_in_a_stream_as_by_itself() -> None:
    names = [operation.name for operation in OPERATIONS]
    *found, summary = stream(b"".join(line(name, f"run {name}") for name in names), "?units=metric&working=true")
    assert [one["id"] for one in found] == [f"run {name}" for name in names]
    assert [one["line"] for one in found] == list(range(1, len(names) + 1))
    for name, one in zip(names, found, strict=True):
        assert one["status"] == 200
        assert one["answer"] == ask(name, EXAMPLES[name], "units=metric&working=true")
    assert (summary["items"], summary["failed"]) == (len(names), 0)
    assert 0 < summary["seconds"] < 60


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
    assert cut[:-1] == whole[:-1]
    assert (cut[-1]["items"], cut[-1]["failed"]) == (4, 1)


@pytest.mark.parametrize("body", [b"", b"\n", b" \r\n\n\t"])
def test_an_empty_stream_has_only_its_summary(body: bytes) -> None:
    [summary] = stream(body)
    assert (summary["items"], summary["failed"]) == (0, 0)


@pytest.mark.parametrize(
    ("given", "status", "kind", "identity"),
    [
        (b"{", 400, "malformed_json", None),
        (b'{"id":"a"} {"id":"b"}', 400, "malformed_json", None),
        (b"\xff", 400, "invalid_utf8", None),
        (b'\xef\xbb\xbf{"id":"a"}', 400, "invalid_utf8", None),
        (b'{"id":"a","id":"b","operation":"fill","request":{}}', 400, "duplicate_member", None),
        (b'{"id":"a","operation":"fill","request":{"nipple_length":NaN}}', 400, "non_finite_number", None),
        (b'{"id":"a","operation":"fill","request":{"nipple_length":1e400}}', 400, "non_finite_number", "a"),
        (b"[" * 300 + b"]" * 300, 400, "too_deep", None),
        (b"7", 422, "invalid_request", None),
        (b'{"id":"a","operation":"dig","request":{}}', 422, "invalid_request", "a"),
        (b'{"id":"a","operation":"fill","request":{},"more":1}', 422, "invalid_request", "a"),
        (b'{"operation":"fill","request":{}}', 422, "invalid_request", None),
    ],
)
def test_a_fault_is_that_of_its_line_alone(given: bytes, status: int, kind: str, identity: str | None) -> None:
    before, fault, after, summary = stream(line("cover", "before") + given + b"\n" + line("cover", "after"))
    assert (before["status"], after["status"]) == (200, 200)
    assert before["answer"] == after["answer"]
    assert (fault["line"], fault["status"], fault.get("id")) == (2, status, identity)
    assert fault["problem"]["type"] == f"/problems/{kind}"
    assert fault["problem"]["status"] == status
    assert (summary["items"], summary["failed"]) == (3, 1)


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
    assert found[-1] | {"seconds": 0} == {"items": 4, "failed": 2, "seconds": 0}


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


class Caller:
    """A caller one can drive step by step: gives chunks, takes what is sent, reads slowly, goes away."""

    def __init__(self, items: Items | None = None) -> None:
        self.chunks: asyncio.Queue[Any] = asyncio.Queue()
        self.taken: asyncio.Queue[Any] = asyncio.Queue()
        self.reads = asyncio.Event()
        self.reads.set()
        self.asked = 0
        self.endpoint = Stream(items or Items(), 10_000)

    async def receive(self) -> Any:
        self.asked += 1
        return await self.chunks.get()

    async def send(self, message: Any) -> None:
        await self.reads.wait()
        if message["type"] == "http.response.body":
            self.taken.put_nowait(message["body"])

    def give(self, chunk: bytes, *, more: bool = True) -> None:
        self.chunks.put_nowait({"type": "http.request", "body": chunk, "more_body": more})

    def go(self) -> None:
        self.chunks.put_nowait({"type": "http.disconnect"})

    async def take(self) -> list[Any]:
        return [json.loads(text) for text in (await asyncio.wait_for(self.taken.get(), 5)).splitlines()]

    def start(self) -> asyncio.Task[None]:
        headers = [(b"content-type", b"application/jsonl")]
        scope = {"type": "http", "headers": headers, "query_string": b"", REQUEST_ID: "r"}
        return asyncio.create_task(self.endpoint.app(scope, self.receive, self.send))


def test_answers_flow_while_the_request_is_still_arriving() -> None:
    async def talk() -> None:
        caller = Caller()
        running = caller.start()
        for number in range(1, 4):
            caller.give(line("cover")[:50])
            caller.give(line("cover")[50:])
            [found] = await caller.take()
            assert (found["line"], found["status"]) == (number, 200)
        caller.give(b"", more=False)
        [summary] = await caller.take()
        assert (summary["items"], summary["failed"]) == (3, 0)
        await asyncio.wait_for(running, 5)

    asyncio.run(talk())


def counting(done: list[int], cost: Callable[[], None] = lambda: None) -> Items:
    items = Items()

    def answer(_body: bytes, _chosen: Chosen) -> bytes:
        done.append(1)
        cost()
        return b"{}"

    items.answers["cover"] = answer
    return items


def busy() -> None:
    for _ in range(20_000):
        pass


def test_a_caller_who_goes_away_stops_the_work_at_once() -> None:
    async def leave(at_the_end: bool) -> int:
        done: list[int] = []
        caller = Caller(counting(done, busy))
        running = caller.start()
        caller.give(line("cover") * 5000, more=not at_the_end)
        await caller.take()
        caller.go()
        await asyncio.wait_for(running, 5)
        return len(done)

    assert asyncio.run(leave(at_the_end=False)) < 500
    assert asyncio.run(leave(at_the_end=True)) < 500


def test_a_slow_reader_is_waited_for_and_nothing_piles_up() -> None:
    async def read_slowly() -> None:
        done: list[int] = []
        caller = Caller(counting(done, busy))
        running = caller.start()
        caller.give(line("cover"))
        await caller.take()
        caller.reads.clear()
        for _ in range(100):
            caller.give(line("cover") * 50)
        await asyncio.sleep(0.1)
        before = len(done)
        assert before < 60
        assert caller.asked <= 4
        await asyncio.sleep(0.1)
        assert len(done) == before
        caller.reads.set()
        caller.give(b"", more=False)
        await asyncio.wait_for(running, 30)
        assert len(done) == 5001

    asyncio.run(read_slowly())


def test_other_requests_get_their_turn_while_a_stream_is_at_work() -> None:
    async def both() -> None:
        caller = Caller(counting([], busy))
        running = caller.start()
        caller.give(line("cover") * 2000, more=False)
        turns = 0
        while not running.done():
            turns += 1
            await asyncio.sleep(0)
        assert turns > 100

    asyncio.run(both())


def test_a_failure_of_one_line_is_logged_and_spares_the_others(caplog: Any) -> None:
    async def fail() -> list[Any]:
        items = Items()

        def broken(_body: bytes, _chosen: Chosen) -> bytes:
            raise ZeroDivisionError

        items.answers["fill"] = broken
        caller = Caller(items)
        running = caller.start()
        caller.give(line("fill", "f") + line("cover"), more=False)
        await running
        return [found for _ in range(caller.taken.qsize()) for found in await caller.take()]

    failure, answer, _ = asyncio.run(fail())
    assert (failure["status"], failure["id"], answer["status"]) == (500, "f", 200)
    assert "ZeroDivisionError" in caplog.text
    assert '"line":1' in caplog.text
