"""What a deployment adds to the application, keys, limits or figures of use, stands before everything it answers."""

from __future__ import annotations

import json
from typing import Any
from urllib.request import Request, urlopen

import pytest
from ductrun.http.app import create_api
from ductrun.http.gate import REQUEST_ID, Gate
from ductrun.http.problems import ProblemRaised
from ductrun.settings import Settings
from tools.live import started

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, reply

LINES_TYPE = [("content-type", "application/jsonl")]
FILL = json.dumps(EXAMPLES["fill"]).encode()
ITEM = {"id": "a", "operation": "fill", "request": EXAMPLES["fill"]}
ASKED: dict[str, tuple[str, bytes, list[tuple[str, str]], int]] = {
    "/v1/fill": ("POST", FILL, JSON_TYPE, 200),
    "/v1/batch": ("POST", json.dumps({"items": [ITEM]}).encode(), JSON_TYPE, 200),
    "/v1/batch/stream": ("POST", json.dumps(ITEM).encode(), LINES_TYPE, 200),
    "/v1/tables/units": ("GET", b"", [], 200),
    "/livez": ("GET", b"", [], 200),
    "/docs": ("GET", b"", [], 200),
    "/openapi.json": ("GET", b"", [], 200),
    "/problems/not_found": ("GET", b"", [], 200),
    "/docs/assets/page.css": ("GET", b"", [], 200),
    "/v1/cover": ("POST", b"{", JSON_TYPE, 400),
    "/v1/trench": ("DELETE", b"", [], 405),
    "/nowhere": ("GET", b"", [], 404),
}


class Counting:
    """A layer that keeps what passes it: the path, and the status of the answer."""

    def __init__(self, app: Any, seen: list[Any], name: str = "") -> None:
        self.app, self.seen, self.name = app, seen, name

    async def __call__(self, scope: Any, receive: Any, send: Any) -> None:
        async def send_on(message: Any) -> None:
            if message["type"] == "http.response.start":
                self.seen.append((self.name, scope["path"], message["status"]))
            await send(message)

        assert scope[REQUEST_ID]
        await self.app(scope, receive, send_on)


class Closed:
    """A layer that lets nobody in."""

    def __init__(self, app: Any) -> None:
        self.app = app

    async def __call__(self, *_asked: Any) -> None:
        raise ProblemRaised("not_ready", "Nobody is let in.")


class Stamping:
    """A layer that marks every answer."""

    def __init__(self, app: Any) -> None:
        self.app = app

    async def __call__(self, scope: Any, receive: Any, send: Any) -> None:
        async def send_on(message: Any) -> None:
            if message["type"] == "http.response.start":
                message["headers"] = [*message["headers"], (b"x-stamp", b"yes")]
            await send(message)

        await self.app(scope, receive, send_on)


def stamping_application() -> Gate:
    api = create_api(Settings())
    api.add_middleware(Stamping)
    return Gate(api)


@pytest.mark.live
def test_the_command_serves_an_application_with_layers() -> None:
    with started(options=["--application", f"{__name__}:stamping_application"]) as (address, _):
        asked = Request(f"{address}/v1/fill", FILL, {"Content-Type": "application/json"})
        for target in (asked, f"{address}/v1/tables/units"):
            with urlopen(target, timeout=10) as answer:
                assert answer.headers["x-stamp"] == "yes"


@pytest.mark.parametrize("path", ASKED)
def test_a_layer_that_is_added_sees_whatever_is_asked_and_what_became_of_it(path: str) -> None:
    method, body, headers, status = ASKED[path]
    seen: list[Any] = []
    api = create_api(Settings())
    api.add_middleware(Counting, seen)
    assert reply(method, path, body, headers, application=Gate(api)).status == status
    assert seen == [("", path, status)]


def test_the_layer_that_is_added_last_is_outermost() -> None:
    seen: list[Any] = []
    api = create_api(Settings())
    api.add_middleware(Counting, seen, name="inner")
    api.add_middleware(Counting, seen, name="outer")
    reply("POST", "/v1/fill", FILL, JSON_TYPE, application=Gate(api))
    assert [name for name, _, _ in seen] == ["inner", "outer"]  # an answer passes the inner one first


@pytest.mark.parametrize("path", ASKED)
def test_a_layer_that_lets_nobody_in_leaves_no_door_open(path: str) -> None:
    method, body, headers, _ = ASKED[path]
    api = create_api(Settings())
    api.add_middleware(Closed)
    found = reply(method, path, body, headers, application=Gate(api))
    assert (found.status, found.json["detail"]) == (503, "Nobody is let in.")
    assert found.json["request_id"] == found.headers["x-request-id"]


def test_a_layer_cannot_be_added_once_requests_are_answered() -> None:
    api = create_api(Settings())
    reply("GET", "/livez", application=Gate(api))
    with pytest.raises(RuntimeError, match="Cannot add middleware"):
        api.add_middleware(Closed)


def test_a_layer_of_fastapi_is_one_too() -> None:
    api = create_api(Settings())

    @api.middleware("http")
    async def marked(request: Any, call_next: Any) -> Any:
        answer = await call_next(request)
        answer.headers["x-marked"] = "yes"
        return answer

    assert reply("POST", "/v1/fill", FILL, JSON_TYPE, application=Gate(api)).headers["x-marked"] == "yes"


def test_a_route_that_is_added_is_answered_beside_those_of_the_service() -> None:
    api = create_api(Settings())
    api.add_api_route("/version/{part}", lambda part: {"part": part})
    assert reply("GET", "/version/7", application=Gate(api)).json == {"part": "7"}
    assert reply("POST", "/version/7", application=Gate(api)).headers["allow"] == "GET"
