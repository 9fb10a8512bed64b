"""What a request may cost is known before it is worked on, and nothing is worked on for a caller who has gone."""

from __future__ import annotations

import asyncio
import gc
import http.client
import json
import threading
import time
from pathlib import Path
from typing import Any

import pytest
from ductrun.http import aside
from ductrun.http.app import create_app
from ductrun.http.aside import MOST_WAITING, Aside, ClientGone
from ductrun.http.batch import MOST_ITEMS, Batch
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items
from ductrun.http.problems import ProblemRaised
from ductrun.kit.answering import STEPS_ON_THE_LOOP, Chosen, PutOffError, answer_to
from ductrun.kit.bounding import LARGE, MOST_VALUES, TooManyValuesError, most_values
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.subjects.pulling.cuts import Cut
from tools.live import started

from tests.asking import EXAMPLES
from tests.http.wire import ANSWERS, JSON_TYPE, post, reply

BY_NAME = {operation.name: operation for operation in OPERATIONS}


def straights(count: int) -> dict[str, Any]:
    sections = [{"kind": "straight", "length": {"value": 20, "unit": "ft"}}] * count
    return EXAMPLES["pull-plan"] | {"sections": sections}


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda one: one.name)
def test_every_form_has_room_for_its_own_example(operation: Any) -> None:
    written = json.dumps(operation.example, separators=(",", ":")).encode()
    assert 0 < sum(map(written.count, (b"[", b"{", b","))) <= most_values(operation.request) <= MOST_VALUES


def test_the_most_a_form_can_hold_is_counted_member_by_member() -> None:
    # the opening of the object, a comma a member, and two marks for each quantity: its brace, and a comma a member of
    # its two, of which the first has none (derived; reckoned one too many rather than one too few)
    members = BY_NAME["cover"].request.model_fields
    quantities = sum("Length" in str(field.annotation) for field in members.values())
    assert most_values(BY_NAME["cover"].request) == 1 + len(members) + 2 * quantities


@pytest.mark.parametrize("filler", [b"[],", b'{"a":1},', b"0,"])
def test_a_body_with_more_values_than_its_form_can_hold_is_refused_unbuilt(filler: bytes) -> None:
    found = post("fill", b'{"cables":[' + filler * (900_000 // len(filler)) + b"0]}")
    assert (found.status, found.json["type"]) == (422, "/problems/invalid_request")
    [error] = found.json["errors"]
    assert (error["code"], error["pointer"]) == ("too_many", "#")
    assert error["maximum"] == {"value": most_values(BY_NAME["fill"].request), "unit": "1"}


def test_a_large_body_that_is_no_json_is_told_as_that() -> None:
    assert post("fill", b'{"cables":[' + b"[]," * 50_000 + b"}").json["type"] == "/problems/malformed_json"
    assert post("fill", b"[" * 200_000).json["type"] == "/problems/too_deep"


def test_a_large_body_that_is_good_is_answered_as_a_small_one() -> None:
    small = json.dumps(EXAMPLES["fill"]).encode()
    large = post("fill", small + b" " * LARGE)
    assert large.status == 200
    assert large.json == post("fill", small).json


@pytest.mark.parametrize(
    ("body", "code", "pointer"),
    [
        (b'{"items":[' + b"1," * 2_000_000 + b"1]}", "too_many", "#/items"),
        (b'{"items":[' + b"[]," * 2_100_000 + b"1]}", "too_many", "#"),
        (b'{"items":"' + b"x" * LARGE + b'"}', "wrong_type", "#/items"),
        (b'["' + b"x" * LARGE + b'"]', "wrong_type", "#"),
        (b'{"more":"' + b"x" * LARGE + b'"}', "missing", "#/items"),
        (b'{"items":[1],"more":"' + b"x" * LARGE + b'"}', "unknown_member", "#/more"),
    ],
)
def test_a_large_body_that_is_no_batch_is_told_what_a_small_one_is(body: bytes, code: str, pointer: str) -> None:
    found = reply("POST", "/v1/batch", body, JSON_TYPE)
    assert found.status == 422
    assert (code, pointer) in [(error["code"], error["pointer"]) for error in found.json["errors"]]


def test_an_item_has_the_size_limit_of_a_request() -> None:
    application = create_app(Settings(max_body_bytes=2_000))
    large = {"id": "a", "operation": "fill", "request": {"conduit": "x" * 2_000}}
    good = {"id": "b", "operation": "fill", "request": EXAMPLES["fill"]}
    body = json.dumps({"items": [large, good]}).encode()
    found = reply("POST", "/v1/batch", body, JSON_TYPE, application=application)
    assert [one["status"] for one in found.json["items"]] == [413, 200]
    assert found.json["items"][0]["problem"]["detail"] == "An item may have 2000 bytes."


def test_a_large_item_has_its_own_fault_and_its_own_answer() -> None:
    good = {"id": "b", "operation": "fill", "request": EXAMPLES["fill"]}
    padded = json.dumps(good).encode()[:-1] + b" " * LARGE + b"}"
    crowded = b'{"id":"c","operation":"fill","request":[' + b"[]," * 40_000 + b"0]}"
    wrong = b'{"id":"d","operation":"fill","request":{"conduit":"' + b"x" * LARGE + b'"}}'
    heavy = {"id": "e", "operation": "pull_plan", "request": straights(40)}
    items = b",".join([json.dumps(good).encode(), padded, crowded, wrong, json.dumps(heavy).encode()])
    found = reply("POST", "/v1/batch", b'{"items":[' + items + b"]}", JSON_TYPE).json["items"]
    assert [one["status"] for one in found] == [200, 200, 422, 422, 200]
    assert found[0] == found[1]
    assert found[2]["problem"]["errors"][0]["pointer"] == "#"
    assert "#/request/conduit" in [error["pointer"] for error in found[3]["problem"]["errors"]]
    assert (found[4]["id"], found[4]["operation"]) == ("e", "pull_plan")


def test_a_long_search_is_put_off_and_a_short_one_is_not() -> None:
    put_off = answer_to(BY_NAME["pull-plan"], puts_off=True)
    short, long = straights(5), straights(40)  # 1.25 times 6 places and 5 sections, 41 and 40: 83 and 4,151 steps
    assert BY_NAME["pull-plan"].steps is not None
    assert 83 < STEPS_ON_THE_LOOP < 4_151
    assert put_off(json.dumps(short).encode(), Chosen()).startswith(b"{")
    with pytest.raises(PutOffError) as raised:
        put_off(json.dumps(long).encode(), Chosen())
    assert raised.value.finish() == ANSWERS["pull-plan"](json.dumps(long).encode(), Chosen())


def test_places_are_counted_before_the_route_is_cut(monkeypatch: Any) -> None:
    def cut(*_asked: Any) -> None:
        raise AssertionError("it was cut")

    monkeypatch.setattr(Cut, "__init__", cut)
    request = EXAMPLES["pull-plan"] | {
        "sections": [{"kind": "straight", "length": {"value": 30_000, "unit": "ft"}}] * 20,
        "box_positions": {"kind": "anywhere", "spacing": {"value": 1, "unit": "ft"}},
    }
    found = post("pull-plan", request)
    assert "600001 places" in found.json["detail"]


def test_values_beyond_the_form_are_refused_in_process_too() -> None:
    with pytest.raises(TooManyValuesError):
        ANSWERS["cover"](b'{"cover":[' + b"0," * 50_000 + b"0]}", Chosen())


def test_work_that_waits_is_dropped_when_its_caller_goes() -> None:
    started_work, go_on = threading.Event(), threading.Event()
    done: list[str] = []

    def first() -> None:
        started_work.set()
        go_on.wait(10)
        done.append("first")

    async def run() -> None:
        one = Aside()
        busy = asyncio.create_task(one.finish(PutOffError(first, 1), lambda: False))
        await asyncio.to_thread(started_work.wait, 10)
        with pytest.raises(ClientGone):
            await one.finish(PutOffError(lambda: done.append("second"), 1), lambda: True)
        go_on.set()
        await busy
        assert one.waiting() is None

    asyncio.run(run())
    assert done == ["first"]


def test_what_is_at_work_refuses_nobody_and_stays_at_work_when_its_caller_goes() -> None:
    began, go_on = threading.Event(), threading.Event()
    most = 2.5 * MOST_WAITING

    def long() -> None:
        began.set()
        go_on.wait(10)

    async def run() -> Any:
        one = Aside()
        assert one.waiting() is None
        with pytest.raises(ClientGone):
            await one.finish(PutOffError(long, most), began.is_set, one._take)
        assert one.waiting() == 0
        with pytest.raises(ProblemRaised):  # it would wait, and nobody else could
            await one.finish(PutOffError(long, most), lambda: False, one._take)
        short = PutOffError(lambda: "answered", MOST_WAITING / 2)
        answers = [asyncio.create_task(one.finish(short, lambda: False, one._take)) for _ in range(2)]
        await asyncio.sleep(0)
        assert one.waiting() == MOST_WAITING
        with pytest.raises(ProblemRaised):
            await one.finish(short, lambda: False, one._take)
        go_on.set()
        return await asyncio.gather(*answers)

    assert asyncio.run(run()) == ["answered", "answered"]


def test_what_is_done_aside_is_done_without_the_garbage_collector() -> None:
    async def run() -> list[bool]:
        found = await Aside().finish(PutOffError(gc.isenabled, 1), lambda: False)
        return [found, gc.isenabled()]

    was = gc.isenabled()
    gc.enable()
    try:
        assert asyncio.run(run()) == [False, True]
    finally:
        if not was:
            gc.disable()


def test_a_single_request_is_refused_where_too_much_waits_for_the_thread(monkeypatch: Any) -> None:
    monkeypatch.setattr(aside.ASIDE, "waiting", lambda: MOST_WAITING)
    found = post("pull-plan", straights(40))
    assert (found.status, found.json["type"], found.headers["retry-after"]) == (503, "/problems/overloaded", "1")
    assert post("pull-plan", straights(5)).status == 200
    monkeypatch.setattr(aside.ASIDE, "waiting", lambda: 10 * MOST_WAITING)
    # nine times as much as may wait is 36 s of work, and 4,151 steps of its own are less than another (derived)
    later = post("pull-plan", straights(40))
    assert later.headers["retry-after"] == "37"
    assert later.json["detail"].endswith("Try again in 37 second(s).")
    with pytest.raises(ProblemRaised):
        asyncio.run(aside.ASIDE.finish_one(PutOffError(lambda: None, 1), None))  # type: ignore[arg-type]


def test_a_batch_ends_when_its_caller_goes() -> None:
    answered: list[int] = []

    def slow(_body: bytes, _chosen: Chosen) -> bytes:
        answered.append(1)
        time.sleep(0.002)
        return b"{}"

    endpoint = Batch(Items(ANSWERS | dict.fromkeys(["cover"], slow)), 1_000_000, 1_000_000)
    raw = json.dumps({"items": [{"id": "a", "operation": "cover", "request": {}}] * MOST_ITEMS}).encode()
    messages = [{"type": "http.request", "body": raw, "more_body": False}, {"type": "http.disconnect"}]

    async def receive() -> Any:
        return messages.pop(0)

    async def send(message: Any) -> None:
        raise AssertionError(message)

    async def run() -> None:
        scope = {"type": "http", "headers": [(b"content-type", b"application/json")], "query_string": b""}
        with pytest.raises(ClientGone):
            await endpoint(scope | {REQUEST_ID: "r"}, receive, send)

    asyncio.run(run())
    assert len(answered) == 1


def peak_of(process: int) -> float:
    found = Path(f"/proc/{process}/status").read_text(encoding="ascii")
    return int(found.split("VmHWM:")[1].split()[0]) / 1_024


@pytest.mark.live
@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="the peak of a process is read from /proc")
def test_no_body_that_is_allowed_takes_eight_times_its_size_nor_keeps_others_waiting() -> None:
    mebibyte = 1_048_576
    tension = EXAMPLES["pull-tension"] | {"sections": straights(200)["sections"]}
    working = json.dumps({"items": [{"id": "a", "operation": "pull_tension", "request": tension}] * 500}).encode()
    bodies = [
        ("/v1/batch", b'{"items":[' + b"1," * (8 * mebibyte - 20) + b"1]}"),
        ("/v1/batch", b'{"items":[[' + b"[]," * 5_000_000 + b"[]]]}"),
        ("/v1/batch", b'{"items":[' + b",".join([b"[" + b'{"a":1},' * 130_000 + b"0]"] * 14) + b"]}"),
        ("/v1/fill", b'{"conduit":"' + b'\\"' * (mebibyte // 2 - 20) + b'"}'),
        ("/v1/batch?working=true", working),
    ]
    with started() as (address, server):
        host, port = address.removeprefix("http://").split(":")
        for path, body in bodies:
            before = peak_of(server.pid)
            connection = http.client.HTTPConnection(host, int(port), timeout=120)
            connection.request("POST", path, body, {"content-type": "application/json"})
            assert connection.getresponse().read()
            connection.close()
            assert peak_of(server.pid) - before < 8 * len(body) / mebibyte + 2
