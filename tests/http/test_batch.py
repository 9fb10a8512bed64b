"""Many questions at once: each keeps its place, its id and its own fault."""

from __future__ import annotations

import asyncio
import json
from typing import Any

import pytest
from ductrun.http.app import create_app
from ductrun.http.batch import MOST_ITEMS, Batch
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items, in_an_item
from ductrun.kit.answering import Chosen
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS

from tests.asking import EXAMPLES, ask
from tests.http.wire import ANSWERS, JSON_TYPE, reply, send


def batch(items: Any, query: str = "", application: Any = None) -> Any:
    body = json.dumps({"items": items}).encode()
    more = {} if application is None else {"application": application}
    found = send("POST", f"/v1/batch{query}", body, JSON_TYPE, **more)
    assert found is not None
    return found


def item(name: str, identity: str = "a", **changes: Any) -> dict[str, Any]:
    return {"id": identity, "operation": in_an_item(name), "request": EXAMPLES[name] | changes}


def test_every_operation_answers_in_a_batch_as_by_itself() -> None:
    names = [operation.name for operation in OPERATIONS]
    found = batch([item(name, f"run {name}") for name in names], "?units=metric&working=true")
    assert found.status == 200
    assert found.headers["content-type"] == "application/json"
    assert [one["id"] for one in found.json["items"]] == [f"run {name}" for name in names]
    assert (found.json["item_count"], found.json["failed_count"]) == (len(names), 0)
    for name, one in zip(names, found.json["items"], strict=True):
        assert (one["type"], one["operation"], one["status"]) == ("answer", in_an_item(name), 200)
        assert one["answer"] == ask(name, EXAMPLES[name], "units=metric&working=true")


def test_the_name_of_an_operation_has_no_hyphen() -> None:
    [hyphened] = batch([item("pull-plan") | {"operation": "pull-plan"}]).json["items"]
    assert hyphened["problem"]["errors"][0]["pointer"] == "#/operation"
    assert "operation" not in hyphened


def test_the_same_batch_gives_the_same_bytes() -> None:
    body = json.dumps({"items": [item("pull-tension"), item("fill"), {"id": "b"}, item("trench")]}).encode()
    headers = [*JSON_TYPE, ("x-request-id", "the-same")]
    once, again = (reply("POST", "/v1/batch", body, headers) for _ in range(2))
    assert once.body == again.body
    assert (once.json["item_count"], once.json["failed_count"]) == (4, 1)


def test_a_thousand_items_keep_their_order() -> None:
    items = [item("spacers", str(index), length={"value": index + 1, "unit": "ft"}) for index in range(MOST_ITEMS)]
    found = batch(items).json["items"]
    assert [one["id"] for one in found] == [str(index) for index in range(MOST_ITEMS)]
    assert [one["answer"]["result"]["station_count"] for one in found] == [
        -(-(index + 1) // 5) + 1 for index in range(MOST_ITEMS)
    ]


def test_a_fault_is_that_of_its_item_alone() -> None:
    wide = item("encasement", "wide", trench_width={"value": 20, "unit": "in"})
    unasked = item("fill", "unasked", conduit={"kind": "listed", "type": "emt"})
    found = batch([item("cover", "first"), wide, unasked, item("cover", "last")]).json["items"]
    assert [one["status"] for one in found] == [200, 422, 422, 200]
    assert found[1]["problem"]["type"] == "/problems/unanswerable"
    assert found[1]["problem"]["errors"][0]["pointer"] == "#/request/trench_width/value"
    assert found[2]["problem"]["errors"][0]["pointer"] == "#/request/conduit/trade_size"
    assert [one["type"] for one in found] == ["answer", "problem", "problem", "answer"]
    assert [one["operation"] for one in found] == ["cover", "encasement", "fill", "cover"]
    assert found[0]["answer"] == found[3]["answer"]
    refused = batch([item("cover"), {"id": "b", "operation": "fill", "request": {}}], "?assumptions=refuse")
    assert [one["status"] for one in refused.json["items"]] == [200, 422]
    assert (refused.json["item_count"], refused.json["failed_count"]) == (2, 1)


@pytest.mark.parametrize(
    ("given", "told", "pointer", "code"),
    [
        (7, "", "#", "wrong_type"),
        ({"operation": "fill", "request": {}}, "operation", "#/id", "missing"),
        ({"id": 5, "operation": "fill", "request": {}}, "operation", "#/id", "wrong_type"),
        ({"id": "x" * 201, "operation": "fill", "request": {}}, "operation", "#/id", "too_long"),
        ({"id": "b", "operation": 5, "request": {}}, "id", "#/operation", "wrong_type"),
        ({"id": "b", "operation": "dig", "request": {}}, "id", "#/operation", "not_allowed"),
        ({"id": "b", "operation": "fill"}, "id operation", "#/request", "missing"),
        (item("fill", "b") | {"more": 1}, "id operation", "#/more", "unknown_member"),
        ({"id": "b", "operation": "fill", "request": [1]}, "id operation", "#/request", "wrong_type"),
    ],
)
def test_an_item_without_form_is_told_what_is_wrong(given: Any, told: str, pointer: str, code: str) -> None:
    [found] = batch([given]).json["items"]
    assert (found["type"], found["status"]) == ("problem", 422)
    assert set(found) == {"type", "status", "problem", *told.split()}
    assert (found.get("id", "b"), found.get("operation", "fill")) == ("b", "fill")
    assert (found["problem"]["errors"][0]["pointer"], found["problem"]["errors"][0]["code"]) == (pointer, code)


@pytest.mark.parametrize(
    ("body", "status", "kind"),
    [
        (b"", 400, "malformed_json"),
        (b'{"items":[1],"items":[1]}', 400, "duplicate_member"),
        (b'{"items":[1],"\\u0069tems":[1]}', 400, "duplicate_member"),
        (b'{"items":[1]', 400, "malformed_json"),
        (b'{"items":[NaN]}', 400, "non_finite_number"),
        (b'{"items":[' + b"[" * 50_000 + b"]" * 50_000 + b"]}", 400, "too_deep"),
        (b"[]", 422, "invalid_request"),
        (b"{}", 422, "invalid_request"),
        (b'{"items":[]}', 422, "invalid_request"),
        (b'{"items":[1],"more":1}', 422, "invalid_request"),
        (b'{"items":[' + b"1," * MOST_ITEMS + b"1]}", 422, "invalid_request"),
    ],
)
def test_a_fault_of_the_batch_is_an_ordinary_problem(body: bytes, status: int, kind: str) -> None:
    found = send("POST", "/v1/batch", body, JSON_TYPE)
    assert found is not None
    assert (found.status, found.json["type"]) == (status, f"/problems/{kind}")
    assert found.headers["content-type"] == "application/problem+json"


@pytest.mark.parametrize(
    "given",
    [
        b'{"id":"a","id":"b","operation":"fill","request":{}}',
        b'{"id":"b","operation":"fill","operation":"fill","request":{}}',
        b'{"id":"a:b","operation":"fill","request":{"x":1},"request":{}}',
        b'{"id":"b","id":"\\u003a","operation":"fill","request":{}}',
        b'{"id":"b","\\u0069d":"a","operation":"fill","request":{}}',
        b'{"id":"b","operation":"fill","request":{"conduit":1,"conduit":1}}',
        b'{"id":"a","id":"b"}',
    ],
)
def test_a_member_given_twice_is_the_fault_of_its_item_alone(given: bytes) -> None:
    good = json.dumps(item("cover", "with \\ and : in it")).encode()
    found = send("POST", "/v1/batch", b'{"items":[' + good + b"," + given + b"," + good + b"]}", JSON_TYPE)
    assert found is not None
    assert [one["status"] for one in found.json["items"]] == [200, 400, 200]
    assert found.json["items"][1]["problem"]["type"] == "/problems/duplicate_member"
    assert found.json["items"][0]["id"] == "with \\ and : in it"


def test_a_number_beyond_double_precision_is_refused_in_its_item() -> None:
    body = b'{"items":[{"id":"a","operation":"fill","request":{"conduit":1e400}}]}'
    found = send("POST", "/v1/batch", body, JSON_TYPE)
    assert found is not None
    assert found.json["items"][0]["problem"]["type"] == "/problems/non_finite_number"


def test_a_query_that_is_wrong_and_a_body_too_large_are_problems_of_the_batch() -> None:
    assert batch([item("fill")], "?units=imperial").json["type"] == "/problems/invalid_query"
    small = create_app(Settings(max_batch_bytes=100))
    assert batch([item("fill")], application=small).status == 413
    assert batch([1], application=small).status == 200


def test_a_failure_of_one_item_is_logged_and_spares_the_others(monkeypatch: Any, caplog: Any) -> None:
    def broken(_body: bytes, _chosen: Chosen) -> bytes:
        raise ZeroDivisionError

    endpoint = Batch(Items(ANSWERS), 1_000, 1_000_000)
    monkeypatch.setitem(endpoint.items.answers, "fill", broken)
    raw = json.dumps({"items": [item("fill"), item("cover")]}).encode()
    sent: list[Any] = []

    async def run() -> None:
        async def receive() -> Any:
            return {"type": "http.request", "body": raw, "more_body": False}

        async def keep(message: Any) -> None:
            sent.append(message)

        endpoint.max_body_bytes = len(raw)
        scope = {"type": "http", "headers": [(b"content-type", b"application/json")], "query_string": b""}
        await endpoint(scope | {REQUEST_ID: "r"}, receive, keep)

    asyncio.run(run())
    found = json.loads(sent[1]["body"])["items"]
    assert [one["status"] for one in found] == [500, 200]
    assert found[0]["problem"]["type"] == "/problems/internal_error"
    assert "ZeroDivisionError" in caplog.text
    assert "ZeroDivisionError" not in sent[1]["body"].decode()


def test_other_requests_are_answered_while_a_batch_is_at_work() -> None:
    application = create_app(Settings())
    order: list[str] = []

    async def asked(path: str, body: bytes) -> None:
        scope = {
            "type": "http",
            "method": "POST",
            "path": path,
            "raw_path": path.encode(),
            "root_path": "",
            "query_string": b"",
            "headers": [(b"content-type", b"application/json")],
            "state": {},
        }

        async def receive() -> Any:
            return {"type": "http.request", "body": body, "more_body": False}

        async def keep(message: Any) -> None:
            if message["type"] == "http.response.start":
                order.append(path)

        await application(scope, receive, keep)

    async def both() -> None:
        many = json.dumps({"items": [item("pull-tension")] * MOST_ITEMS}).encode()
        first = asyncio.create_task(asked("/v1/batch", many))
        await asyncio.sleep(0)
        await asyncio.gather(first, asked("/v1/fill", json.dumps(EXAMPLES["fill"]).encode()))

    asyncio.run(both())
    assert order == ["/v1/fill", "/v1/batch"]
