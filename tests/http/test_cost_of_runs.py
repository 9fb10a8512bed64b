"""What runs, comparisons, suggestions and documents may cost: known before it is worked on, bounded, and put off."""

from __future__ import annotations

import copy
import json
import time
from typing import Any

import pytest
from ductrun.http.representations import HTML, representations_of
from ductrun.http.stopping import STOPPING
from ductrun.kit.answering import DRAWN_UP_STEPS, STEPS_ON_THE_LOOP, Chosen, PutOffError, answer_to
from ductrun.kit.reading import reader_of
from ductrun.subjects import OPERATIONS
from ductrun.subjects.duct_run.cost import MOST_COMPARED_STEPS, MOST_TRIAL_STEPS, steps
from ductrun.subjects.duct_run.suggesting.suggestions import MOST_TRIALS

from tests.asking import EXAMPLES, codes, quantity
from tests.http.wire import JSON_TYPE, post, reply

BY_NAME = {operation.name: operation for operation in OPERATIONS}
RUN = EXAMPLES["duct-run"]


def run_of(stretches: int, sections: int, circuits: int, *, pulled_apart: bool = True) -> dict[str, Any]:
    """Give a run of so many stretches of so many sections, with so many alike circuits in a bank of 40 beside."""
    run = {name: copy.deepcopy(RUN[name]) for name in ("bank", "start", "pulling", "site", "digging")}
    run["bank"]["tiers"] = [40] * max(1, -(-circuits // 40))
    first = {"name": "C1", "cables": RUN["circuits"][0]["cables"]}
    run["circuits"] = [first, *({"name": f"C{number}", "same_as": "C1"} for number in range(2, circuits + 1))]
    straight = {"kind": "straight", "length": quantity(10, "ft")}
    bend = {"kind": "horizontal_bend", "angle": quantity(5, "deg"), "radius": quantity(36, "in")}
    bends = [bend | {"turn": turn} for turn in ("left", "right")]
    line = [bends[at // 2 % 2] if at % 2 else straight for at in range(sections)]
    setting = {"kind": "direct_buried", "cover": quantity(30, "in"), "location": "not_otherwise_specified"}
    run["stretches"] = [{"setting": setting, "sections": line} for _ in range(stretches)]
    for number, stretch in enumerate(run["stretches"][:-1] if pulled_apart else ()):
        stretch["pull_point"] = {"kind": "handhole", "name": f"H{number}"}
    return run | {"end": {"kind": "vault", "name": "V-2"}}


def steps_of(run: dict[str, Any]) -> float:
    return steps(reader_of(BY_NAME["duct-run"].request)(json.dumps(run).encode()))


def put_off(name: str, request: dict[str, Any], chosen: Chosen = Chosen()) -> float:  # noqa: B008
    with pytest.raises(PutOffError) as raised:
        answer_to(BY_NAME[name], puts_off=True)(json.dumps(request).encode(), chosen)
    return raised.value.steps


def test_a_usual_run_stays_on_the_loop_and_a_long_one_does_not() -> None:
    assert steps_of(RUN) < STEPS_ON_THE_LOOP
    # 5 for each of 10 sections that each of 200 circuits passes, and 30 for each of its pulls (derived)
    assert put_off("duct-run", run_of(1, 10, 200)) >= 200 * (10 * 5 + 30)


def test_suggestions_cost_the_runs_that_are_tried() -> None:
    usual = steps_of(RUN)
    assert put_off("duct-run", RUN, Chosen(suggestions=True)) == pytest.approx(usual * (1 + MOST_TRIALS))
    large = run_of(1, 100, 199)
    assert steps_of(large) < put_off("duct-run", large, Chosen(suggestions=True)) <= steps_of(large) + MOST_TRIAL_STEPS


def test_a_comparison_costs_its_runs() -> None:
    nine = {"runs": [{"name": f"run {number}", "run": RUN} for number in range(9)]}
    assert put_off("duct-run/compare", nine) == pytest.approx(9 * steps_of(RUN))


@pytest.mark.parametrize("name", ["duct-run", "encasement", "pull-tension"])
def test_every_document_is_drawn_up_beside_the_loop(name: str) -> None:
    operation = BY_NAME[name]
    body = json.dumps(operation.example).encode()
    for one in representations_of(operation, answer_to(operation, puts_off=True))[1:]:
        with pytest.raises(PutOffError) as raised:
            one.answer(body, one.usual)
        assert raised.value.steps >= DRAWN_UP_STEPS > STEPS_ON_THE_LOOP
        page = reply("POST", f"/v1/{name}", body, [*JSON_TYPE, ("accept", one.media_type)])
        assert (page.status, page.headers["content-type"]) == (200, one.content_type.decode())


def test_a_document_of_a_request_that_cannot_be_used_is_refused_as_ever() -> None:
    found = reply("POST", "/v1/encasement", b"{}", [*JSON_TYPE, ("accept", HTML)])
    assert (found.status, found.headers["content-type"]) == (422, "application/problem+json")


def test_a_run_whose_circuits_pass_too_many_sections_is_refused() -> None:
    began = time.perf_counter()
    found = post("duct-run", run_of(50, 10, 41))
    assert time.perf_counter() - began < 2
    [error] = found.json["errors"]
    # 41 circuits through 50 times 10 sections: 20,500 (derived)
    assert (found.status, error["code"], error["pointer"]) == (422, "too_many_pulled_sections", "#/circuits")
    assert error["message"].startswith("That makes 20,500 sections of pulls")
    assert error["maximum"] == {"value": 20_000, "unit": "1"}


def test_ducts_of_too_many_kinds_in_too_many_sections_are_refused() -> None:
    run = run_of(3, 9, 1, pulled_apart=False)
    del run["circuits"]
    conduit = {
        "kind": "measured",
        "type": "pvc_schedule_40",
        "trade_size": "4",
        "outside_diameter": quantity(4.5, "in"),
    }
    ducts = [{"count": 1, "conduit": conduit | {"inside_diameter": quantity(3.9, "in")}} for _ in range(38)]
    run["bank"] = {"conduit": conduit | {"inside_diameter": quantity(3.9, "in")}, "tier_ducts": [ducts] * 20}
    [error] = post("duct-run", run).json["errors"]
    # 20 tiers of 38 ducts, each of its own, in 3 times 9 sections: 20,520 (derived)
    assert (error["code"], error["pointer"]) == ("too_many_joined_sections", "#/stretches")
    assert error["message"].startswith("That makes 20,520 sections of ducts")


def test_runs_that_take_too_long_together_are_refused() -> None:
    run = run_of(10, 10, 60)
    assert steps_of(run) < MOST_COMPARED_STEPS < 9 * steps_of(run)
    found = post("duct-run/compare", {"runs": [{"name": f"run {number}", "run": run} for number in range(9)]})
    assert [(error["code"], error["pointer"]) for error in found.json["errors"]] == [("too_much_to_compare", "#/runs")]


def test_of_a_run_that_takes_long_fewer_changes_are_tried_and_it_says_so() -> None:
    run = run_of(1, 100, 100)
    told = post("duct-run", run, "?suggestions=true").json
    assert told["verdict"] == "violates"
    most = int(MOST_TRIAL_STEPS / steps_of(run))
    assert 1 <= most < MOST_TRIALS
    assert told["suggestions"]["trial_count"] == most
    assert told["suggestions"]["bound_met"] is True


def test_where_too_many_places_are_to_be_searched_a_note_says_that_they_were_not() -> None:
    # 3 times 200 sections without a pull point between: over 400 places
    told = post("duct-run", run_of(3, 200, 1, pulled_apart=False)).json
    assert told["verdict"] == "violates"
    assert "pull_points_not_searched" in codes(told)
    assert "plan" not in told["result"]["circuits"][0]["pulls"][0]
    assert "pull_points_not_searched" not in codes(post("duct-run", run_of(1, 20, 1)).json)


def test_the_largest_rating_of_ducts_is_put_off_and_the_usual_one_is_not() -> None:
    usual = EXAMPLES["ampacity"]
    assert BY_NAME["ampacity"].steps is not None
    request = copy.deepcopy(usual)
    request["bank"]["tiers"] = [6] * 8
    request["circuits"][0]["ducts"] = [f"{tier}-{place}" for tier in range(1, 9) for place in range(1, 7)]
    assert put_off("ampacity", request) > 20_000  # 48 ducts, each warming each, with four studies
    assert answer_to(BY_NAME["ampacity"], puts_off=True)(json.dumps(usual).encode(), Chosen())


def test_a_batch_of_what_takes_long_is_answered_item_by_item() -> None:
    asked = [("duct_run", run_of(1, 10, 60)), ("duct_run_compare", EXAMPLES["duct-run/compare"]), ("duct_run", RUN)]
    items = [{"id": str(at), "operation": name, "request": body} for at, (name, body) in enumerate(asked)]
    items.append({"id": "3", "operation": "duct_run", "request": run_of(50, 10, 41)})
    found = reply("POST", "/v1/batch?suggestions=true", json.dumps({"items": items}).encode(), JSON_TYPE).json
    assert [one["status"] for one in found["items"]] == [200, 200, 200, 422]
    [error] = found["items"][3]["problem"]["errors"]
    assert error["pointer"] == "#/items/3/request/circuits"


def test_beyond_its_share_of_work_the_items_of_a_batch_are_refused_one_by_one(monkeypatch: Any) -> None:
    long = run_of(1, 10, 60)
    monkeypatch.setattr("ductrun.http.batch.MOST_STEPS", 1.5 * steps_of(long))
    asked = [("a", "duct_run", long), ("b", "duct_run", long), ("c", "fill", EXAMPLES["fill"])]
    items = [{"id": name, "operation": operation, "request": body} for name, operation, body in asked]
    found = reply("POST", "/v1/batch", json.dumps({"items": items}).encode(), JSON_TYPE).json
    assert [one["status"] for one in found["items"]] == [200, 422, 200]
    assert found["failed_count"] == 1
    refused = found["items"][1]
    assert (refused["id"], refused["operation"], refused["problem"]["type"]) == (
        "b",
        "duct_run",
        "/problems/too_costly",
    )


def test_in_a_stop_a_batch_ends_with_what_it_has(monkeypatch: Any) -> None:
    monkeypatch.setattr(STOPPING, "stopped", True)
    asked = [("a", "duct_run", run_of(1, 10, 60)), ("b", "fill", EXAMPLES["fill"])]
    items = [{"id": name, "operation": operation, "request": body} for name, operation, body in asked]
    found = reply("POST", "/v1/batch", json.dumps({"items": items}).encode(), JSON_TYPE).json
    assert [one["status"] for one in found["items"]] == [503, 200]
    assert (found["items"][0]["id"], found["items"][0]["problem"]["type"]) == ("a", "/problems/overloaded")
