"""What an answer says of its request: pointers that resolve, and assumptions that can be given back."""

from __future__ import annotations

import contextlib
import json
import os
import re
from random import Random
from typing import Any

import pytest
from ductrun.http.problems import ProblemRaised
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects import OPERATIONS
from hypothesis import given, settings

from tests.asking import ask
from tests.properties.requests import RANDOMS, SCHEMAS, figures, places, shortest, varied, written

NAMES = [operation.name for operation in OPERATIONS]
EVERY = pytest.mark.parametrize("operation", NAMES)
MANY = settings(max_examples=int(os.environ.get("DUCTRUN_FUZZ_EXAMPLES", "40")), deadline=None)


@EVERY
@MANY
@given(random=RANDOMS)
def test_every_pointer_told_names_a_member_of_the_request(operation: str, random: Random) -> None:
    body = varied(operation, random)
    schema = SCHEMAS[operation]
    try:
        answer = ask(operation, body)
    except ProblemRaised as problem:
        told = [str(error.pointer) for error in problem.errors or () if error.code != "unknown_field"]
    else:
        told = [place for one in answer["assumptions"] for place in one["pointers"]]
        told += [one["pointer"] for one in answer["findings"] if "pointer" in one]
    for pointer in told:
        assert places(schema, pointer), f"{pointer} is no member of the request: {written(body)}"


@EVERY
def test_the_shortest_request_can_be_completed_with_what_was_assumed(operation: str) -> None:
    check_given_back(operation, shortest(operation), ask(operation, shortest(operation)))


@EVERY
@MANY
@given(random=RANDOMS)
def test_what_was_assumed_can_be_given_back_and_gives_the_same_answer(operation: str, random: Random) -> None:
    body = varied(operation, random)
    try:
        answer = ask(operation, body)
    except ProblemRaised:
        return
    check_given_back(operation, body, answer)


@EVERY
def test_requests_varied_at_random_have_answers_with_assumptions(operation: str) -> None:
    answers = []
    for seed in range(60):
        with contextlib.suppress(ProblemRaised):
            answers.append(ask(operation, varied(operation, Random(seed))))  # noqa: S311  (no secret)
    assert len(answers) > 10
    assert sum(len(answer["assumptions"]) for answer in answers) > 10


def check_given_back(operation: str, body: Any, answer: dict[str, Any]) -> None:
    completed = ask(operation, body, "request=completed")["request"]
    again = ask(operation, completed, "assumptions=refuse")
    assert again["assumptions"] == []
    assert codes_of(again) == codes_of(answer), written(completed)
    mine, other = dict(figures(answer["result"])), dict(figures(again["result"]))
    assert list(other) == list(mine), written(completed)
    for path, figure in mine.items():
        assert other[path] == (pytest.approx(figure) if isinstance(figure, float) else figure), path


OPEN = {
    "bend_left_out",
    "use_under_condition",
    "thin_envelope",
    "only_in_a_raceway",
}  # beside the codes that say not judged
CITED = re.compile(r"NFPA|ASTM|IEEE|Chapter|from memory|common practice|Backing|derived")
LONG = re.compile(r"\d[.]\d{6}")


@EVERY
@MANY
@given(random=RANDOMS)
def test_verdict_findings_and_basis_say_the_same(operation: str, random: Random) -> None:
    body = varied(operation, random)
    try:
        answer = ask(operation, body, "working=true")
    except ProblemRaised:
        return
    found = answer["findings"]
    violated = any(one["severity"] == "violation" for one in found)
    assert (answer.get("verdict") == "violates") is violated, written(body)
    if answer.get("verdict") == "not_judged":
        assert any(one["code"].endswith("not_judged") or one["code"] in OPEN for one in found), written(body)
    sources = set(answer["basis"]["source_ids"])
    assert {one["source_id"] for one in [*found, *answer["assumptions"]] if "source_id" in one} <= sources
    for one in [*found, *answer["cautions"]]:
        assert not CITED.search(one["message"]), one["message"]
        assert not LONG.search(one["message"]), one["message"]
    for step in answer["working"]:
        assert places(SCHEMAS[operation], step["pointer"]), step["pointer"]


READERS = {operation.name: (reader_of(operation.request), operation.assess) for operation in OPERATIONS}


@EVERY
@MANY
@given(random=RANDOMS)
def test_the_contract_states_what_is_assumed_of_every_member(operation: str, random: Random) -> None:
    body = varied(operation, random)
    read, assess = READERS[operation]
    sheet = Worksheet(US)
    try:
        assess(read(json.dumps(body).encode()), sheet)
    except (*REFUSED, UnanswerableError):
        return
    for pointer, default in sheet.book.settled.items():
        stated = [node["x-default"] for node in places(SCHEMAS[operation], pointer) if "x-default" in node]
        assert stated, f"{pointer}: the contract does not say what is assumed"
        for one in stated:
            if "rule" not in one:
                assert one["value"] == default.given, pointer
                assert one["citation"] == default.backing.citation, pointer


def codes_of(answer: dict[str, Any]) -> list[tuple[str, str]]:
    return sorted((one["severity"], one["code"]) for one in answer["findings"])


def test_a_request_is_given_back_only_where_it_is_asked_for() -> None:
    body = shortest("trench")
    assert "request" not in ask("trench", body)
    completed = ask("trench", body, "request=completed&units=metric")["request"]
    assert completed["working_space"] == {"value": 6, "unit": "in"}, "in the unit of the table, whatever is told"
    assert completed["cover"] == body["cover"]
    with pytest.raises(ProblemRaised, match="cannot be used"):
        ask("trench", body, "request=back")
