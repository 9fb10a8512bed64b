"""Browsers of other origins: kept out unless a deployment allows them, then answered from the preflight on."""

from __future__ import annotations

import json
import socket

import pytest
from ductrun.http.app import create_app
from ductrun.settings import Settings
from tools.live import started

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, Reply, at_work, reply

APP = "https://app.example.org"
BODY = json.dumps(EXAMPLES["fill"]).encode()
ASKS = [("access-control-request-method", "POST"), ("access-control-request-headers", "content-type")]


def asked(origin: str, *allowed: str, method: str = "POST", path: str = "/v1/fill") -> Reply:
    headers = [("origin", origin), *(ASKS if method == "OPTIONS" else JSON_TYPE)]
    body = BODY if method == "POST" else b""
    return reply(method, path, body, headers, application=create_app(Settings(cors_origins=allowed)))


def cors(found: Reply) -> dict[str, str]:
    return {name: value for name, value in found.headers.items() if name.startswith("access-control")}


def test_it_is_off_unless_it_is_set() -> None:
    assert Settings().cors_origins == ()
    assert asked(APP).status == 200
    assert asked(APP, method="OPTIONS").status == 405
    assert cors(asked(APP)) == cors(asked(APP, method="OPTIONS")) == {}
    assert asked(APP).headers["vary"] == "accept"


def test_a_preflight_of_an_allowed_origin_is_answered() -> None:
    found = asked(APP, "https://other.example.org", APP, method="OPTIONS")
    assert (found.status, found.body) == (204, b"")
    assert found.headers["access-control-allow-origin"] == APP
    assert "POST" in found.headers["access-control-allow-methods"]
    assert "Content-Type" in found.headers["access-control-allow-headers"]
    assert "access-control-allow-credentials" not in found.headers
    assert "Origin" in found.headers["vary"]


def test_every_answer_to_an_allowed_origin_may_be_read_problems_too() -> None:
    for path, status in (("/v1/fill", 200), ("/v1/spacers", 422), ("/nowhere", 404)):
        found = asked(APP, APP, path=path)
        assert found.status == status
        assert found.headers["access-control-allow-origin"] == APP
        assert {"ETag", "X-Request-ID"} <= set(found.headers["access-control-expose-headers"].split(", "))
        assert found.headers["vary"] == "Origin"


def test_any_other_origin_is_answered_as_if_nothing_were_set() -> None:
    for origin in ("https://evil.example.org", f"{APP}.evil.org", "null", "http://app.example.org"):
        assert cors(asked(origin, APP)) == {}
        assert asked(origin, APP, method="OPTIONS").status == 405


def test_a_star_allows_every_origin_and_depends_on_none() -> None:
    found = asked("null", "*")
    assert found.headers["access-control-allow-origin"] == "*"
    assert found.headers["vary"] == "accept"
    assert asked("null", "*", method="OPTIONS").headers["access-control-allow-origin"] == "*"


def test_a_refusal_for_a_key_may_be_read_and_a_preflight_needs_none() -> None:
    application = create_app(Settings(cors_origins=(APP,), key_hashes=("0" * 64,)))
    for sent, status in ((), 401), ((("authorization", "Bearer no"),), 403):
        for path in ("/v1/fill", "/v1/duct-run/compare"):
            found = reply("POST", path, BODY, [("origin", APP), *JSON_TYPE, *sent], application=application)
            assert (found.status, found.headers["access-control-allow-origin"]) == (status, APP)
    found = reply("OPTIONS", "/v1/fill", headers=[("origin", APP), *ASKS], application=application)
    assert found.status == 204
    assert "Authorization" in found.headers["access-control-allow-headers"]


@pytest.mark.live
def test_what_the_server_itself_refuses_may_be_read_as_well() -> None:
    with started(environment={"DUCTRUN_CORS_ORIGINS": APP, "DUCTRUN_MAX_CONCURRENT": "1"}) as (address, _):
        port = int(address.rpartition(":")[2])
        head = f"POST /v1/fill HTTP/1.1\r\nHost: a\r\nOrigin: {APP}\r\nContent-Type: application/json\r\n".encode()
        with at_work(port, head):
            busy = told(port, head + b"Content-Length: 2\r\n\r\n{}")
        wrong = told(port, head + b"Content-Length: two\r\n\r\n{}")
    for status, found in ((b"503", busy), (b"400", wrong)):
        assert found.split()[1] == status
        assert b"access-control-allow-origin: " + APP.encode() in found.lower()
    assert b"retry-after: 1" in busy.lower()


def told(port: int, sent: bytes) -> bytes:
    with socket.create_connection(("127.0.0.1", port), timeout=50) as connection:
        connection.sendall(sent)
        return connection.recv(65_536)


def test_a_request_of_no_origin_is_answered_as_ever() -> None:
    application = create_app(Settings(cors_origins=(APP,)))
    found = reply("POST", "/v1/fill", BODY, JSON_TYPE, application=application)
    assert (found.status, cors(found)) == (200, {})
    assert reply("OPTIONS", "/v1/fill", headers=[("origin", APP)], application=application).status == 405


@pytest.mark.parametrize(
    ("text", "origins"),
    [(APP, (APP,)), (f"{APP}, http://127.0.0.1:3000", (APP, "http://127.0.0.1:3000")), ("*", ("*",)), (" ", ())],
)
def test_origins_are_set_in_the_environment(
    monkeypatch: pytest.MonkeyPatch, text: str, origins: tuple[str, ...]
) -> None:
    monkeypatch.setenv("DUCTRUN_CORS_ORIGINS", text)
    assert Settings.from_environment().cors_origins == origins


@pytest.mark.parametrize("text", ["app.example.org", f"{APP}/", "ftp://a", "https://a b", "https://user@a"])
def test_what_is_no_origin_stops_the_start(monkeypatch: pytest.MonkeyPatch, text: str) -> None:
    monkeypatch.setenv("DUCTRUN_CORS_ORIGINS", text)
    with pytest.raises(ValueError, match="DUCTRUN_CORS_ORIGINS"):
        Settings.from_environment()


@pytest.mark.parametrize(
    ("origin", "words"),
    [
        ("https://*.example.org", "Name each, or give * alone for all."),
        ("https://App.Example.org", "Give https://app.example.org."),
        ("https://app.example.org:443", "Give https://app.example.org."),
        ("http://app.example.org:80", "Give http://app.example.org."),
        ('https://"x"', "is no origin as a browser sends it."),
        ("https://app.example.org:", "is no origin as a browser sends it."),
        ("https://b\u00fccher.example", "is no origin as a browser sends it."),
    ],
)
def test_an_origin_that_no_browser_sends_is_refused_with_what_to_give(
    monkeypatch: pytest.MonkeyPatch, origin: str, words: str
) -> None:
    monkeypatch.setenv("DUCTRUN_CORS_ORIGINS", f"{APP},{origin}")
    with pytest.raises(ValueError, match="DUCTRUN_CORS_ORIGINS") as raised:
        Settings.from_environment()
    assert origin in str(raised.value)
    assert words in str(raised.value)


@pytest.mark.parametrize("origin", ["http://localhost:5173", "https://app.example.org:80", "http://[::1]:8080", "*"])
def test_an_origin_as_a_browser_sends_it_is_taken(monkeypatch: pytest.MonkeyPatch, origin: str) -> None:
    monkeypatch.setenv("DUCTRUN_CORS_ORIGINS", origin)
    assert Settings.from_environment().cors_origins == (origin,)
