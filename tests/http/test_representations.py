"""What an answer is given as: by the Accept header, JSON to whoever does not say, a problem where nothing fits."""

from __future__ import annotations

import json
from typing import Any
from xml.etree import ElementTree

import pytest
from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.svg import STYLE_HASH
from ductrun.http.accepting import preferred, weight_of
from ductrun.subjects import OPERATIONS

from tests.asking import EXAMPLES
from tests.http.wire import ANSWERS, JSON_TYPE, Reply, reply

SVG, JSON, PROBLEM = "image/svg+xml", "application/json", "application/problem+json"
HTML = "text/html; charset=utf-8"
WITHOUT = [operation.name for operation in OPERATIONS if operation.name not in DRAWINGS]


def ask_as(operation: str, *accepted: str, query: str = "", body: Any = None) -> Reply:
    headers = [*JSON_TYPE, *(("accept", one) for one in accepted)]
    sent = json.dumps(EXAMPLES[operation] if body is None else body).encode()
    return reply("POST", f"/v1/{operation}{query}", sent, headers)


@pytest.mark.parametrize("operation", DRAWINGS)
def test_an_operation_that_can_be_seen_answers_with_its_drawing(operation: str) -> None:
    found = ask_as(operation, SVG)
    assert (found.status, found.headers["content-type"]) == (200, SVG)
    root = ElementTree.fromstring(found.body)  # noqa: S314  (our own)
    assert root.tag.endswith("svg")
    assert found.headers["vary"] == "accept"
    assert found.headers["content-security-policy"] == f"default-src 'none'; style-src '{STYLE_HASH}'"
    assert found.headers["content-length"] == str(len(found.body))
    assert found.headers["x-content-type-options"] == "nosniff"


def test_every_drawing_is_of_an_operation() -> None:
    assert set(DRAWINGS) < set(EXAMPLES)
    assert WITHOUT


@pytest.mark.parametrize(
    "accepted",
    [
        [],
        [""],
        ["*/*"],
        ["application/json"],
        ["application/*"],
        ["application/json, text/plain, */*"],
        ["image/svg+xml, application/json"],
        ["image/svg+xml;q=0.5, application/json;q=0.6"],
        ["image/*;q=0.5, */*"],
        ["image/svg+xml;q=0, */*;q=0.1"],
        ["application/xhtml+xml,image/avif,*/*;q=0.8"],
        ["APPLICATION/JSON; charset=utf-8"],
        ["text/plain", "*/*;q=0.1"],
    ],
)
def test_json_is_given_to_whoever_does_not_prefer_another(accepted: list[str]) -> None:
    found = ask_as("fill", *accepted)
    assert (found.status, found.headers["content-type"]) == (200, JSON)
    assert found.body == ask_as("fill").body
    assert found.headers["vary"] == "accept"


@pytest.mark.parametrize(
    "accepted",
    [
        ["image/svg+xml"],
        ["image/*"],
        ["image/svg+xml, */*;q=0.1"],
        ["application/json;q=0.5, image/svg+xml;q=0.6"],
        ["application/json;q=0, */*"],
        ["Image/SVG+XML;q=1.000"],
        ["application/json;q=0.2", "image/svg+xml"],
        ["text/plain,image/svg+xml;q=0.9,application/json;q=0.8"],
    ],
)
def test_a_drawing_is_given_to_whoever_prefers_it(accepted: list[str]) -> None:
    assert ask_as("fill", *accepted).headers["content-type"] == SVG


@pytest.mark.parametrize(
    "accepted",
    [
        ["text/html"],
        ["text/*;q=1"],
        ["text/html,application/xhtml+xml,image/avif,*/*;q=0.8"],
        ["text/html", "*/*;q=0.1"],
        ["text/html,image/svg+xml;q=0.9,application/json;q=0.8"],
    ],
)
def test_a_browser_gets_the_calculation_sheet(accepted: list[str]) -> None:
    assert ask_as("fill", *accepted).headers["content-type"] == HTML


@pytest.mark.parametrize(
    "accepted", ["text/csv", "image/png", "application/json;q=0", "image/svg+xml;q=2", "nonsense", "audio/*;q=1", ","]
)
def test_what_there_is_not_is_refused_with_what_there_is(accepted: str) -> None:
    found = ask_as("fill", accepted)
    assert (found.status, found.headers["content-type"]) == (406, PROBLEM)
    assert found.json["type"] == "/problems/not_acceptable"
    assert f"{JSON} or {SVG} or text/html:" in found.json["detail"]
    assert found.headers["vary"] == "accept"


@pytest.mark.parametrize("operation", WITHOUT)
def test_an_operation_without_a_drawing_names_what_it_has(operation: str) -> None:
    found = ask_as(operation, SVG)
    assert found.status == 406
    assert found.json["detail"].startswith(f"The answer is given as {JSON} or text/html:")


def test_a_problem_stays_a_problem_whatever_was_asked_for() -> None:
    found = ask_as("fill", SVG, body={"cables": []})
    assert (found.status, found.headers["content-type"]) == (422, PROBLEM)
    assert [error["pointer"] for error in found.json["errors"]] == ["#/conduit", "#/cables"]
    wide = {**EXAMPLES["fill"], "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "1/2"}}
    assert ask_as("fill", SVG, body=wide).json["type"] == "/problems/unanswerable"
    assert reply("POST", "/v1/fill", b"{", [*JSON_TYPE, ("accept", SVG)]).status == 400


def test_a_drawing_is_in_the_units_asked_for() -> None:
    assert b"mm duct" in ask_as("encasement", SVG, query="?units=metric").body.replace("\u00a0".encode(), b" ")
    assert b"in duct" in ask_as("encasement", SVG, query="?units=us").body.replace("\u00a0".encode(), b" ")


def test_a_drawing_can_refuse_to_rest_on_assumptions() -> None:
    body = {name: EXAMPLES["encasement"][name] for name in ("length", "bank")}
    assert ask_as("encasement", SVG, body=body).status == 200
    refused = ask_as("encasement", SVG, query="?assumptions=refuse", body=body)
    assert (refused.status, refused.json["type"]) == (422, "/problems/assumptions_refused")
    needed = [error["pointer"] for error in refused.json["errors"]]
    assert needed == [
        error["pointer"] for error in ask_as("encasement", query="?assumptions=refuse", body=body).json["errors"]
    ]


@pytest.mark.parametrize("query", ["?working=true", "?request=completed"])
def test_what_a_drawing_cannot_show_is_refused_and_not_passed_over(query: str) -> None:
    found = ask_as("fill", SVG, query=query)
    assert (found.status, found.json["type"]) == (422, "/problems/invalid_query")
    assert found.json["errors"][0]["allowed_values"] == ["units", "assumptions"]
    assert ask_as("fill", query=query).status == 200


def test_json_is_the_bytes_of_the_operation_itself() -> None:
    for operation, example in EXAMPLES.items():
        from ductrun.kit.answering import Chosen

        assert ask_as(operation).body == ANSWERS[operation](json.dumps(example).encode(), Chosen())


def test_a_weight_is_that_of_the_nearest_range() -> None:
    header = "text/*;q=0.3, text/html;q=0.7, */*;q=0.5, image/svg+xml;q=0"
    weights = {"text/html": 0.7, "text/csv": 0.3, "image/png": 0.5, "image/svg+xml": 0.0}
    assert {media_type: weight_of(header, media_type) for media_type in weights} == weights
    assert weight_of("text/html;q=high", "text/html") == 0.0


def test_headers_of_any_length_are_weighed_alike() -> None:
    offered = (JSON, SVG)
    padded = ", ".join(["text/plain;q=0.1"] * 200)
    assert preferred(f"{padded}, {SVG}", offered) == SVG
    assert preferred(padded, offered) is None
    assert preferred(f"{SVG};q=0.2, {JSON};q=0.2", offered) == JSON
