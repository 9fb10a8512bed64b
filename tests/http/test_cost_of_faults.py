"""Telling faults is work too: bounded, put off where there are many, and counted against the share of a batch."""

from __future__ import annotations

import json
import time
from typing import Any

import pytest
from ductrun.http.items import Items
from ductrun.http.problems import MOST_ERRORS, MOST_TAKEN_VALUES
from ductrun.kit.answering import Chosen, PutOffError
from ductrun.kit.bounding import SMALL
from ductrun.lines import answer_part
from tools.costly_requests import WIRE, bare_run, run_of

from tests.http.wire import ANSWERS, JSON_TYPE, post, reply

FAULTY: Any = {"stretches": [{"sections": [{}] * 21} for _ in range(50)]}  # each section lacks its kind
WRITTEN = json.dumps({"id": "a", "operation": "duct_run", "request": FAULTY}, separators=(",", ":")).encode()


@pytest.fixture(autouse=True)
def told_before() -> None:
    """Have faults of both forms told before: the first of a form is beside the loop whatever it is."""
    assert post("duct-run", {}).status == post("cover", {}).status == 422


def test_the_first_fault_of_a_form_is_told_beside_the_loop(monkeypatch: Any) -> None:
    monkeypatch.setattr("ductrun.http.faults._SCHEMAS", {})
    items, faulty = Items(ANSWERS), b'{"id":"a","operation":"cover","request":{}}'
    with pytest.raises(PutOffError) as raised:
        items.settle(faulty, Chosen(), "r")
    assert raised.value.finish()[0] == 422
    assert items.settle(faulty, Chosen(), "r") == raised.value.finish()


def test_many_faults_of_a_small_item_are_told_beside_the_loop() -> None:
    assert len(WRITTEN) < SMALL
    items = Items(ANSWERS)
    with pytest.raises(PutOffError) as raised:
        items.settle(WRITTEN, Chosen(), "r")
    # 50 times 21 sections without a kind, 50 stretches without a setting and two ends that are missing, at half a step
    # each and three more for each of a thousand that are told (derived)
    assert raised.value.steps == pytest.approx(0.5 * 1_102 + 3 * MOST_ERRORS)
    status, told = raised.value.finish()
    errors = json.loads(told)["problem"]["errors"]
    assert (status, len(errors)) == (422, MOST_ERRORS)
    assert "#/request/stretches/0/sections/0/kind" in [error["pointer"] for error in errors]
    few = json.dumps({"id": "a", "operation": "cover", "request": {}}).encode()
    assert items.settle(few, Chosen(), "r")[0] == 422


def test_many_faults_of_a_single_request_are_told_beside_the_loop(monkeypatch: Any) -> None:
    aside: list[float] = []

    async def finish(put_off: PutOffError, _receive: Any) -> Any:
        aside.append(put_off.steps)
        return put_off.finish()

    monkeypatch.setattr("ductrun.http.calculations.ASIDE.finish_one", finish)
    found = post("duct-run", FAULTY)
    assert (found.status, len(found.json["errors"])) == (422, MOST_ERRORS)
    assert aside[-1] > 3 * MOST_ERRORS
    known = len(aside)
    assert post("cover", {}).status == 422
    assert len(aside) == known


def test_telling_many_faults_of_small_items_takes_of_the_share_of_a_batch(monkeypatch: Any) -> None:
    monkeypatch.setattr("ductrun.http.batch.MOST_BATCH_STEPS", 1.5 * 3 * MOST_ERRORS)
    monkeypatch.setattr("ductrun.http.batch.STEPS_A_SECOND", 1e9)  # as if each took long
    found = reply("POST", "/v1/batch", b'{"items":[%b,%b]}' % (WRITTEN, WRITTEN), JSON_TYPE).json
    kinds = [one["problem"]["type"] for one in found["items"]]
    assert kinds == ["/problems/invalid_request", "/problems/too_costly"]


def test_a_line_of_many_faults_is_answered_without_a_server_too() -> None:
    written, items, failed = answer_part([(1, WRITTEN + b" " * 70_000)], 1_048_576)
    assert (items, failed, len(json.loads(written)["problem"]["errors"])) == (1, 1, MOST_ERRORS)


def test_a_problem_tells_no_more_values_than_it_has_room_for() -> None:
    run = bare_run(run_of(1, 1, 0))
    circuit = {"cables": [{"count": 3, "cable": WIRE}], "ducts": ["99-1"] * 20}
    run["circuits"] = [circuit | {"name": f"C{number}"} for number in range(10)]
    errors = post("duct-run", run).json["errors"]
    # each fault tells the 1,200 ducts of the bank, so that eight of them have room in ten thousand (derived)
    told = [len(error.get("allowed_values", ())) for error in errors]
    assert told == [1_200] * 8 + [0] * 192
    assert sum(told) <= MOST_TAKEN_VALUES


def test_the_ducts_that_are_free_are_looked_for_once_for_each_circuit() -> None:
    run = bare_run(run_of(1, 1, 0))
    circuit = {"cables": [{"count": 3, "cable": WIRE}]}
    run["circuits"] = [circuit | {"name": f"C{number}", "ducts": ["1-1"] * 1_200} for number in range(4)]
    began = time.process_time()
    found = post("duct-run", run)
    assert time.process_time() - began < 1  # seven seconds where they are looked for at each of 4,799
    assert {error["code"] for error in found.json["errors"]} == {"duct_taken"}
    assert "1-1" not in found.json["errors"][0]["allowed_values"]
    assert found.json["errors"][0]["pointer"] == "#/circuits/0/ducts/1"
