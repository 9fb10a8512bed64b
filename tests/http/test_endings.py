"""An operation that is to end says so: in the contract, with its answers and with its problems."""

from __future__ import annotations

import dataclasses
import json
from datetime import UTC, datetime
from typing import Any

import pytest
from ductrun.http import app
from ductrun.http.api import Api
from ductrun.http.app import create_api
from ductrun.http.gate import Gate
from ductrun.kit.operation import Ending
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS

from tests.asking import EXAMPLES
from tests.http.wire import JSON_TYPE, reply

ENDING = Ending(datetime(2030, 1, 2, tzinfo=UTC), datetime(2030, 7, 2, 12, tzinfo=UTC), "fill")
TOLD = {
    "deprecation": "@1893542400",  # seconds from 1970 to 2030-01-02, which are 21,916 days of 86,400
    "sunset": "Tue, 02 Jul 2030 12:00:00 GMT",
    "link": '</v1/fill>; rel="successor-version"',
}
BODY = json.dumps(EXAMPLES["spacers"]).encode()


@pytest.fixture
def ending(monkeypatch: pytest.MonkeyPatch) -> Api:
    """The service with an operation beside the others that is to end."""
    spacers = next(operation for operation in OPERATIONS if operation.name == "spacers")
    old = dataclasses.replace(spacers, name="old-spacers", operation_id="calculate_old_spacers", ending=ENDING)
    monkeypatch.setattr(app, "OPERATIONS", (*OPERATIONS, old))
    return create_api(Settings())


@pytest.mark.parametrize(
    ("target", "body", "headers", "status"),
    [
        ("", BODY, JSON_TYPE, 200),
        ("", b"{}", JSON_TYPE, 422),
        ("", b"{", JSON_TYPE, 400),
        ("?units=imperial", BODY, JSON_TYPE, 422),
        ("", BODY, [], 415),
    ],
)
def test_it_says_so_with_every_answer_and_every_problem(
    ending: Api, target: str, body: bytes, headers: Any, status: int
) -> None:
    found = reply("POST", f"/v1/old-spacers{target}", body, headers, application=Gate(ending))
    assert found.status == status
    assert {name: found.headers[name] for name in TOLD} == TOLD
    lasting = reply("POST", f"/v1/spacers{target}", body, headers, application=Gate(ending))
    assert lasting.status == status
    assert not set(TOLD) & set(lasting.headers)


def test_the_contract_says_so_and_what_to_ask_instead(ending: Api) -> None:
    described = {endpoint.path: endpoint.described for endpoint in ending.endpoints}
    old = described["/v1/old-spacers"]
    assert old
    assert old["deprecated"] is True
    assert old["description"].endswith("ends on 2030-07-02 at the earliest. Ask `POST /v1/fill` instead.")
    assert set(old["responses"]["200"]["headers"]) == {"Deprecation", "Sunset", "Link"}
    assert "content" in old["responses"]["200"]
    spacers = described["/v1/spacers"]
    assert spacers
    assert not {"deprecated"} & set(spacers)
    assert all(operation.ending is None for operation in OPERATIONS)
