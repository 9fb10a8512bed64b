"""Keys: asked for in the one door, of everything but the probes, and told nowhere."""

from __future__ import annotations

import hashlib
import json
from typing import Any

import pytest
from ductrun.__main__ import main
from ductrun.http.app import create_api, create_app
from ductrun.http.eyes import EYES
from ductrun.http.gate import Gate
from ductrun.settings import Settings

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, reply

OLD, NEW = "old-key", "new-key"
HASHES = tuple(hashlib.sha256(key.encode()).hexdigest() for key in (OLD, NEW))
SETTINGS = Settings(key_hashes=HASHES)
GUARDED = create_app(SETTINGS)
FILL = json.dumps(EXAMPLES["fill"]).encode()


def ask(path: str, authorization: str | None, method: str = "GET", body: bytes = b"") -> Any:
    more = [] if authorization is None else [("authorization", authorization)]
    return reply(method, path, body, [*JSON_TYPE, *more], application=GUARDED)


@pytest.mark.parametrize("key", [OLD, NEW])
def test_each_of_several_keys_is_taken(key: str) -> None:
    assert ask("/v1/fill", f"Bearer {key}", "POST", FILL).status == 200
    assert ask("/v1/tables/units", f"bearer  {key} ").status == 200


def test_a_long_key_is_taken_whole() -> None:
    key = "k" * 2_000
    guarded = create_app(Settings(key_hashes=(hashlib.sha256(key.encode()).hexdigest(),)))
    for given, status in ((key, 200), (key[:-1], 403)):
        headers = [("authorization", f"Bearer {given}")]
        assert reply("GET", "/v1/tables/units", headers=headers, application=guarded).status == status


@pytest.mark.parametrize("authorization", [None, "", "Basic b2xkLWtleQ==", "Bearer", "Bearer  ", OLD])
def test_without_a_key_the_answer_says_how_to_send_one(authorization: str | None) -> None:
    found = ask("/v1/fill", authorization, "POST", FILL)
    assert (found.status, found.json["type"]) == (401, "/problems/key_missing")
    assert found.headers["www-authenticate"] == 'Bearer realm="ductrun"'
    assert found.headers["cache-control"] == "no-store"
    assert found.json["request_id"] == found.headers["x-request-id"]


@pytest.mark.parametrize("key", ["old-ke", "old-key2", "OLD-KEY", HASHES[0], "x" * 100_000])
def test_a_key_that_is_not_known_is_refused(key: str) -> None:
    found = ask("/v1/fill", f"Bearer {key}", "POST", FILL)
    assert (found.status, found.json["type"]) == (403, "/problems/key_refused")
    assert key[:10] not in found.body.decode()


@pytest.mark.parametrize(
    "path",
    ["/", "/docs", "/openapi.json", "/metrics", "/v1/tables/units", "/nowhere", "/v1/fill", "/v1/duct-run/compare"],
)
def test_every_path_but_the_probes_asks_for_a_key(path: str) -> None:
    assert ask(path, None).status == 401


def test_the_probes_ask_for_none() -> None:
    assert ask("/livez", None).status == 200
    assert ask("/readyz", None).status == 503  # nothing has started this application


def test_without_hashes_no_key_is_asked_for() -> None:
    assert reply("GET", "/v1/tables/units", application=create_app(Settings())).status == 200


def test_an_application_with_layers_of_its_own_asks_as_well(monkeypatch: Any) -> None:
    monkeypatch.setenv("DUCTRUN_KEY_HASHES", HASHES[0])
    assert reply("GET", "/v1/tables/units", application=Gate(create_api(Settings()))).status == 401


def test_a_key_stands_in_no_record_of_a_request(monkeypatch: Any) -> None:
    monkeypatch.setattr(EYES, "open", True)
    EYES.gathered.clear()
    ask("/v1/fill", f"Bearer {OLD}", "POST", FILL)
    ask("/v1/fill", "Bearer wrong-key", "POST", FILL)
    lines = [EYES._line(one) for one in EYES.gathered]
    EYES.gathered.clear()
    assert [json.loads(line)["status"] for line in lines] == [200, 403]
    assert not any(part in line for line in lines for part in (OLD, "wrong-key", "earer"))


def test_a_key_is_made_with_the_hash_that_the_service_is_given(capsys: Any) -> None:
    assert main(["key"]) == 0
    first, second = capsys.readouterr().out.splitlines()
    key = first.rpartition(" ")[2]
    assert len(key) >= 43  # 32 bytes in base64
    assert second == f"DUCTRUN_KEY_HASHES={hashlib.sha256(key.encode()).hexdigest()}"
