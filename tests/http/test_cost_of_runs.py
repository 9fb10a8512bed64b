"""What runs, comparisons, remedies and documents may cost: known before it is worked on, bounded, and put off."""

from __future__ import annotations

import copy
import json
import threading
import time
from collections.abc import Callable
from importlib import import_module
from typing import Any

import pytest
from ductrun.http.api import Dispatch, Endpoint
from ductrun.http.aside import MOST_WAITING
from ductrun.http.batch import Batch
from ductrun.http.gate import Gate
from ductrun.http.items import Items
from ductrun.http.representations import HTML, representations_of
from ductrun.http.stopping import STOPPING
from ductrun.kit.answering import DRAWN_UP_STEPS, STEPS_ON_THE_LOOP, Chosen, PutOffError, answer_to
from ductrun.kit.bounding import LARGE
from ductrun.kit.reading import reader_of
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.subjects.duct_run.cost import MOST_COMPARED_STEPS, MOST_TRIAL_STEPS, steps
from ductrun.subjects.duct_run.remedies.remedies import MOST_TRIALS
from tools.costly_requests import bare_run, breaking, run_of, under_earth

from tests.asking import EXAMPLES, codes, quantity
from tests.http.test_stream_flow import thread_at_work
from tests.http.wire import ANSWERS, JSON_TYPE, post, reply

BY_NAME = {operation.name: operation for operation in OPERATIONS}
RUN = EXAMPLES["duct-run"]
CIRCUITS = run_of(1, 1, 80, unlike=True)["circuits"]


def steps_of(run: dict[str, Any]) -> float:
    return steps(reader_of(BY_NAME["duct-run"].request)(json.dumps(run).encode()))


def put_off(name: str, request: dict[str, Any], chosen: Chosen = Chosen()) -> float:  # noqa: B008
    with pytest.raises(PutOffError) as raised:
        answer_to(BY_NAME[name], puts_off=True)(json.dumps(request).encode(), chosen)
    return raised.value.steps


def test_a_usual_run_stays_on_the_loop_and_a_long_one_does_not() -> None:
    usual = copy.deepcopy(RUN)
    del usual["circuits"][0]["load"], usual["earth_load"]
    assert steps_of(usual) < STEPS_ON_THE_LOOP
    # 5 for each of 10 sections that each of 200 circuits passes, and 45 for each of its pulls (derived)
    assert put_off("duct-run", run_of(1, 10, 200, unlike=True)) >= 200 * (10 * 5 + 45)
    # 1 and 12 where all but the first are like another (derived)
    assert 199 * (10 * 1 + 12) <= put_off("duct-run", run_of(1, 10, 200)) < 200 * (10 * 5 + 45)


def test_loads_boxes_and_earth_of_a_run_are_reckoned() -> None:
    run = run_of(4, 4, 12)
    plain = steps_of(run)
    load = {"voltage": quantity(480, "V"), "load": {"current": quantity(90, "A"), "power_factor": 0.85}}
    with_load = copy.deepcopy(run)
    with_load["circuits"][0] |= load
    # 12 circuits in 4 banks, each of whose ducts is warmed by 12: 48 times 60 + 1.5 x 12 (derived)
    assert steps_of(with_load) - plain >= 48 * (60 + 1.5 * 12)
    with_boxes = copy.deepcopy(run)
    sizes = [dict.fromkeys(("length", "width", "depth"), quantity(9, "ft"))]
    with_boxes["stretches"][0]["pull_point"]["box_sizes"] = sizes
    assert steps_of(with_boxes) > plain
    # 4 stretches of 40 ducts, at one cover each or, along a profile, at three where groundwater may stand between the
    # least and the greatest: 120 and 3 for each duct, and for each cover 80, 90 for the kind of duct and 4.5 for each
    # (derived)
    settled, a_cover = 120 + 3 * 40, 80 + 90 + 4.5 * 40
    assert steps_of(run | {"earth_load": RUN["earth_load"]}) - plain == pytest.approx(4 * (settled + a_cover))
    along = under_earth(copy.deepcopy(run))
    wet = steps_of(along)
    del along["site"]["groundwater_depth"]
    dry = steps_of(along)
    del along["earth_load"]
    assert wet - steps_of(along) == pytest.approx(4 * (settled + 3 * a_cover))
    assert dry - steps_of(along) == pytest.approx(4 * (settled + 2 * a_cover))


def test_the_places_that_circuits_look_for_their_ducts_in_are_reckoned() -> None:
    run = run_of(1, 1, 200)
    large = run | {"bank": RUN["bank"] | {"tiers": [40] * 30}}
    # 1,000 ducts more: 0.5 in the stretch, 1.2 in the bank and 0.06 for each of 200 circuits (derived)
    assert steps_of(large) - steps_of(run) == pytest.approx(1_000 * (0.5 + 1.2 + 0.06 * 200))


def test_two_runs_under_earth_may_wait_at_once() -> None:
    assert 2 * steps_of(bare_run(under_earth(run_of(8, 4, 0)))) <= MOST_WAITING


def test_what_is_asked_in_few_words_of_a_box_an_earth_load_a_pull_and_many_cables_is_put_off() -> None:
    bank = EXAMPLES["encasement"]["bank"] | {"tiers": [40] * 30}
    earth = {name: value for name, value in EXAMPLES["earth-load"].items() if name != "conduit"} | {"bank": bank}
    box = copy.deepcopy(EXAMPLES["pull-box"])
    box["entries"] = [box["entries"][0]] * 25
    straight = {"kind": "straight", "length": quantity(20, "ft")}
    pull = EXAMPLES["pull-tension"] | {"sections": [straight] * 100, "find_largest": True}
    cables = EXAMPLES["conduit-size"] | {"cables": EXAMPLES["conduit-size"]["cables"][:1] * 200}
    for name, request in (("earth-load", earth), ("pull-box", box), ("pull-tension", pull), ("conduit-size", cables)):
        assert put_off(name, request) > STEPS_ON_THE_LOOP
        assert answer_to(BY_NAME[name], puts_off=True)(json.dumps(EXAMPLES[name]).encode(), Chosen())


def test_a_large_body_is_put_off_again_by_what_it_asks_for() -> None:
    body = json.dumps(run_of(1, 10, 200, unlike=True)).encode() + b" " * LARGE
    with pytest.raises(PutOffError) as raised:
        answer_to(BY_NAME["duct-run"], puts_off=True)(body, Chosen())
    assert raised.value.steps == pytest.approx(len(body) / 40)
    with pytest.raises(PutOffError) as again:
        raised.value.finish()
    assert again.value.steps == pytest.approx(steps_of(run_of(1, 10, 200, unlike=True)))
    assert reply("POST", "/v1/duct-run", body, JSON_TYPE).status == 200


@pytest.mark.parametrize(
    ("asked", "query", "accept", "advice"),
    [
        (bare_run(under_earth(run_of(30, 4, 0))), "", HTML, "or ask for application/json."),
        (bare_run(under_earth(run_of(30, 4, 0))), "?remedies=true", "*/*", "or ask without remedies."),
        (bare_run(under_earth(run_of(50, 4, 0)), circuits=CIRCUITS), "", "*/*", "divide it, and ask for each part."),
    ],
)
def test_what_takes_more_than_ten_seconds_is_refused_with_what_to_ask_instead(
    asked: Any, query: str, accept: str, advice: str
) -> None:
    began = time.process_time()
    found = reply("POST", f"/v1/duct-run{query}", json.dumps(asked).encode(), [*JSON_TYPE, ("accept", accept)])
    assert time.process_time() - began < 2
    assert (found.status, found.json["type"]) == (422, "/problems/too_costly")
    assert found.json["detail"].endswith(advice)


def test_a_run_of_too_many_pulls_is_refused() -> None:
    [error] = post("duct-run", run_of(41, 1, 100)).json["errors"]
    # 100 circuits from stop to stop 41 times: 4,100 (derived)
    assert (error["code"], error["pointer"], error["maximum"]["value"]) == ("too_many_pulls", "#/circuits", 4_000)
    assert error["message"].startswith("That makes 4,100 pulls")


def test_suggestions_cost_the_runs_that_are_tried() -> None:
    usual = steps_of(RUN)
    assert put_off("duct-run", RUN, Chosen(remedies=True)) == pytest.approx(usual * (1 + MOST_TRIALS))
    large = run_of(1, 100, 199)
    assert steps_of(large) < put_off("duct-run", large, Chosen(remedies=True)) <= steps_of(large) + MOST_TRIAL_STEPS


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
    began = time.process_time()
    found = post("duct-run", run_of(50, 10, 41))
    assert time.process_time() - began < 2
    [error] = found.json["errors"]
    # 41 circuits through 50 times 10 sections: 20,500 (derived)
    assert (found.status, error["code"], error["pointer"]) == (422, "too_many_pulled_sections", "#/circuits")
    assert error["message"].startswith("That makes 20,500 sections of pulls")
    assert error["maximum"] == {"value": 20_000, "unit": "1"}


def test_ducts_of_too_many_kinds_in_too_many_sections_are_refused() -> None:
    run = run_of(3, 9, 1, apart=False)
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
    run = run_of(10, 10, 40, unlike=True)
    assert steps_of(run) < MOST_COMPARED_STEPS < 9 * steps_of(run)
    found = post("duct-run/compare", {"runs": [{"name": f"run {number}", "run": run} for number in range(9)]})
    assert [(error["code"], error["pointer"]) for error in found.json["errors"]] == [("too_much_to_compare", "#/runs")]


def test_of_a_run_that_takes_long_fewer_changes_are_tried_and_it_says_so() -> None:
    run = breaking(run_of(1, 100, 30, unlike=True))
    told = post("duct-run", run, "?remedies=true").json
    assert told["verdict"] == "violates"
    most = int(MOST_TRIAL_STEPS / steps_of(run))
    assert 1 <= most < MOST_TRIALS
    assert told["remedies"]["trial_count"] == most
    assert told["remedies"]["cut_short"] is True


def test_where_too_many_places_are_to_be_searched_a_note_says_that_they_were_not() -> None:
    # 3 times 200 sections without a pull point between: over 400 places
    told = post("duct-run", run_of(3, 200, 1, apart=False)).json
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
    found = reply("POST", "/v1/batch?remedies=true", json.dumps({"items": items}).encode(), JSON_TYPE).json
    assert [one["status"] for one in found["items"]] == [200, 200, 200, 422]
    [error] = found["items"][3]["problem"]["errors"]
    assert error["pointer"] == "#/request/circuits"


def test_beyond_its_share_of_work_the_items_of_a_batch_are_refused_one_by_one(monkeypatch: Any) -> None:
    long = run_of(1, 10, 60, unlike=True)
    monkeypatch.setattr("ductrun.http.batch.MOST_BATCH_STEPS", 1.5 * steps_of(long))
    monkeypatch.setattr("ductrun.http.batch.STEPS_A_SECOND", 1e9)  # as if each took long
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


def test_telling_faults_is_reckoned_at_what_it_takes_and_counts_against_the_share_of_a_batch(monkeypatch: Any) -> None:
    faulty = copy.deepcopy(RUN)
    cable = {"count": 1, "cable": {"kind": "listed", "insulation": "THWN-2", "size": "4 kcmull"}}
    faulty["circuits"] = [{"name": f"C{number}", "cables": [cable] * 20} for number in range(20)]
    size = len(json.dumps(faulty))
    assert 4_096 < size < LARGE
    assert put_off("duct-run", faulty) == size / 5  # 5 bytes a step: 2 microseconds a byte
    assert post("duct-run", {}).status == 422  # the first fault of a form takes longer
    monkeypatch.setattr("ductrun.http.batch.MOST_BATCH_STEPS", 1.5 * size / 5)
    monkeypatch.setattr("ductrun.http.batch.STEPS_A_SECOND", 1e9)  # as if each took long
    items = [{"id": name, "operation": "duct_run", "request": faulty} for name in "ab"]
    found = reply("POST", "/v1/batch", json.dumps({"items": items}).encode(), JSON_TYPE).json
    kinds = [one["problem"]["type"] for one in found["items"]]
    assert kinds == ["/problems/invalid_request", "/problems/too_costly"]


def test_an_item_that_took_less_than_reckoned_leaves_room_for_those_after_it(monkeypatch: Any) -> None:
    long = run_of(1, 10, 60, unlike=True)
    monkeypatch.setattr("ductrun.http.batch.MOST_BATCH_STEPS", 1.5 * steps_of(long))
    monkeypatch.setattr("ductrun.http.batch.STEPS_A_SECOND", 1)  # as if each took no time
    items = [{"id": name, "operation": "duct_run", "request": long} for name in "abc"]
    found = reply("POST", "/v1/batch", json.dumps({"items": items}).encode(), JSON_TYPE).json
    assert [one["status"] for one in found["items"]] == [200, 200, 200]


def test_what_an_item_waits_for_others_is_no_work_of_its_batch(monkeypatch: Any) -> None:
    monkeypatch.setattr("ductrun.http.batch.MOST_BATCH_STEPS", 1_500.0)

    def work() -> bytes:
        time.sleep(0.05)  # 5,000 steps by the clock on the wall
        return b"{}"

    assert statuses_of_three(work) == [200, 200, 200]


def statuses_of_three(work: Callable[[], bytes]) -> list[int]:
    """Give what becomes of the items of a batch that put off so much work each."""

    def answer(_body: bytes, _chosen: Chosen) -> bytes:
        raise PutOffError(work, 1_000.0)

    endpoint = Batch(Items(ANSWERS | dict.fromkeys(["cover"], answer)), 1_000_000, 1_000_000)
    application = Gate(Dispatch([Endpoint("POST", "/v1/batch", endpoint)], endpoint), Settings())
    items = [{"id": name, "operation": "cover", "request": {}} for name in "abc"]
    found = reply("POST", "/v1/batch", json.dumps({"items": items}).encode(), JSON_TYPE, application=application)
    return [one["status"] for one in found.json["items"]]


def test_in_a_stop_an_item_that_waits_for_the_thread_is_told_to_ask_again(monkeypatch: Any) -> None:
    done: list[int] = []

    def work() -> bytes:
        done.append(1)
        return b"{}"

    with thread_at_work():
        stop = threading.Timer(0.05, monkeypatch.setattr, (STOPPING, "stopped", True))
        stop.start()
        assert statuses_of_three(work) == [503, 503, 503]
        stop.join()
    assert done == []


def test_in_a_stop_a_batch_ends_with_what_it_has_and_a_503_for_each_item_that_was_not_begun(monkeypatch: Any) -> None:
    monkeypatch.setattr(STOPPING, "stopped", True)
    asked = [("a", "duct_run", run_of(1, 10, 60, unlike=True)), ("b", "fill", EXAMPLES["fill"])]
    items = [{"id": name, "operation": operation, "request": body} for name, operation, body in asked]
    found = reply("POST", "/v1/batch", json.dumps({"items": items}).encode(), JSON_TYPE).json
    assert [one["status"] for one in found["items"]] == [503, 503]
    for item, (name, operation, _) in zip(found["items"], asked, strict=True):
        assert (item["id"], item["operation"], item["problem"]["type"]) == (name, operation, "/problems/overloaded")


def test_a_run_of_too_many_pulls_is_refused_before_its_stretches_are_assessed(monkeypatch: Any) -> None:
    def assessed(*_: Any) -> Any:
        raise AssertionError

    monkeypatch.setattr(import_module("ductrun.subjects.duct_run.assess"), "assess_stretches", assessed)
    [error] = post("duct-run", run_of(41, 1, 100)).json["errors"]
    assert error["code"] == "too_many_pulls"


def test_a_long_answer_is_written_in_parts_as_it_is_in_one() -> None:
    body = json.dumps(run_of(3, 4, 30, unlike=True)).encode()
    with pytest.raises(PutOffError) as raised:
        answer_to(BY_NAME["duct-run"], puts_off=True)(body, Chosen())
    assert raised.value.finish() == answer_to(BY_NAME["duct-run"])(body, Chosen())
