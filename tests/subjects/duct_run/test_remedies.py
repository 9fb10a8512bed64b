"""What would make a run comply: each remedy by hand, and the run it gives sent again."""

from __future__ import annotations

import copy
import json
from random import Random
from typing import Any

import pytest
from ductrun.http.problems import ProblemRaised
from ductrun.kit.answering import Chosen
from ductrun.subjects.duct_run import cost
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.remedies import trials
from hypothesis import given, settings
from tools.asking import post

from tests.asking import EXAMPLES, ask, problem, quantity
from tests.http.wire import ANSWERS
from tests.properties.requests import RANDOMS
from tests.subjects.duct_run.remedied import LANDING, altered, by_kind, remedied, set_in
from tests.subjects.duct_run.runs import (
    BORE,
    BRIDGE,
    KILN,
    MANHOLES,
    POLE,
    buried,
    level_bend,
    listed,
    straight,
)


def test_a_run_that_breaks_no_limit_gets_none_and_tries_none() -> None:
    for run in (LANDING, POLE):
        assert remedied(run) == {"found": [], "not_found": [], "trial_count": 0, "cut_short": False}


def test_remedies_come_only_where_they_are_asked_for() -> None:
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12)))
    plain, asked = ask("duct-run", shallow), ask("duct-run", shallow, "remedies=true")
    assert "remedies" not in plain
    assert asked.pop("remedies")["found"]
    assert asked == plain, "nothing else of the answer changes"
    assert ask("duct-run", shallow, "remedies=false") == plain


def test_what_lies_too_shallow_goes_as_deep_as_the_table_asks_in_the_unit_given() -> None:
    # 18 in for PVC to 1,000 V; 1 ft 6 in; 45.72 cm, and one digs 46
    for cover, deeper in (
        (quantity(12, "in"), quantity(18, "in")),
        (quantity(1, "ft"), quantity(1.5, "ft")),
        (quantity(30, "cm"), quantity(46, "cm")),
    ):
        run = copy.deepcopy(POLE)
        run["stretches"][0]["setting"]["cover"] = cover
        one = by_kind(run)["cover"]
        assert set_in(one) == {"#/stretches/0/setting/cover": deeper}
        assert one["removed"] == [{"code": "too_shallow", "pointer": "#/stretches/0"}]
        assert one["remaining_violation_count"] == 0
        assert one["verdict"] == ask("duct-run", POLE)["verdict"] == "not_judged", "temperatures are not given"
    assert one["message"] == "Lay stretch 1 with 46 cm of cover instead of 30 cm."


def test_several_stretches_that_are_too_shallow_go_deeper_together() -> None:
    def two(run: dict[str, Any]) -> None:
        run["stretches"] = [
            {"name": name, "setting": buried(12), "length": quantity(100, "ft")} for name in ("yard", "lawn")
        ]

    one = by_kind(altered(POLE, two))["cover"]
    assert one["changed"] == [f"#/stretches/{at}/setting/cover" for at in (0, 1)]
    assert one["message"] == "Lay yard, lawn with 18 in of cover instead of 12 in."


def test_with_a_profile_the_whole_line_goes_deeper() -> None:
    # derived: 6 in over an envelope whose concrete is 4 in thick make 10 in over the ducts plumb, 14 less than the 24
    # asked; the ground falls 1.2 ft in 259, so that by the shortest way these 14 in are not quite enough: 15 are
    def raised(run: dict[str, Any]) -> None:
        for point in run["profile"]["points"]:
            point["line"] = quantity(point["ground"]["value"] - 0.5, "ft")
        run["site"]["groundwater_depth"] = quantity(20, "ft")

    one = by_kind(altered(MANHOLES, raised))["cover"]
    assert one["message"] == "Lay the whole run 15 in deeper."
    assert one["changed"] == ["#/profile/points"]
    # 13.7 ft less 1.25 ft
    first = one["run"]["profile"]["points"][0]
    assert first["line"] == quantity(12.45, "ft")
    assert first["ground"] == quantity(14.2, "ft")


def test_a_conduit_too_full_takes_the_first_trade_size_that_holds_its_cables() -> None:
    # derived: 30 conductors 10 AWG THWN-2 of 0.0211 in2 are 0.633 in2. 40 percent of 1-1/4 in Schedule 40 (1.453 in2)
    # are 0.581, of 1-1/2 in (1.986 in2) 0.794: the second size up is the first that holds them
    full = altered(POLE, lambda run: run["circuits"][0]["cables"][0].update(count=30))
    one = by_kind(full)["trade_size"]
    assert set_in(one) == {"#/bank/conduit/trade_size": "1-1/2"}
    assert one["removed"] == [{"code": "fill_exceeded", "pointer": "#/circuits/0/cables"}]
    assert one["message"] == "Take trade size 1-1/2 for Circuit 1."


def test_where_conduit_may_be_damaged_schedule_80_is_taken_in_that_stretch() -> None:
    bare = altered(LANDING, lambda run: run["stretches"][2].pop("conduit_type"))
    told = remedied(bare)
    [one] = told["found"]
    assert set_in(one) == {"#/stretches/2/conduit_type": "pvc_schedule_80"}
    assert (one["change"], one["verdict"]) == ("conduit_type", "complies")
    assert one["message"] == "Take Schedule 80 PVC in up the wall."
    assert (told["trial_count"], told["cut_short"]) == (1, False)


def test_risers_of_duct_for_concrete_come_up_in_schedule_80_both_at_once() -> None:
    def encased(run: dict[str, Any]) -> None:
        run["bank"]["conduit"] = listed("4", "pvc_type_eb")
        run["stretches"][0]["setting"]["kind"] = "encased"

    run = altered(POLE, encased)
    one = by_kind(run)["riser_conduit_type"]
    assert set_in(one) == {f"#/{end}/riser_conduit_type": "pvc_schedule_80" for end in ("start", "end")}
    assert one["remaining_violation_count"] == 0


def test_a_joint_of_the_structure_takes_a_fitting_of_more_travel() -> None:
    # 90 percent of 2 in are 1.8 in, of 4 in 3.6 in: the joint moves 2 in
    short = altered(BRIDGE, lambda run: run["stretches"][1]["setting"].update(fitting_travel=quantity(2, "in")))
    one = by_kind(short)["fitting_travel"]
    assert set_in(one) == {"#/stretches/1/setting/fitting_travel": quantity(4, "in")}


def test_practice_beyond_a_limit_is_set_to_the_limit() -> None:
    # 10 percent of pigment are allowed; straps stand within 3 ft of a termination
    for practice, changed in (
        (
            {"concrete": {"pigment_percent": 11, "cement_content": quantity(564, "lb/yd3")}},
            {"#/concrete/pigment_percent": 10},
        ),
        ({"movement": {"end_distance": quantity(5, "ft")}}, {"#/movement/end_distance": quantity(3, "ft")}),
    ):
        [one] = remedied(LANDING | practice)["found"]
        assert set_in(one) == changed
        assert one["verdict"] == "complies"


def test_duct_for_concrete_that_lies_in_earth_is_taken_for_another_everywhere() -> None:
    def in_earth(run: dict[str, Any]) -> None:
        run["bank"]["conduit"] = listed("4", "pvc_type_eb")
        run["start"], run["end"] = {"kind": "handhole"}, {"kind": "handhole", "name": "far end"}
        run["stretches"] = [{"setting": buried(30), "length": quantity(100, "ft")} for _ in range(2)]

    one = by_kind(altered(POLE, in_earth))["conduit_type"]
    assert one["message"] == "Take Schedule 40 PVC for all ducts."
    assert set_in(one) == {"#/bank/conduit": listed("4")}
    assert one["verdict"] == "complies"


def test_no_more_than_fifty_runs_are_tried_and_the_answer_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    # five pulls, each of seven straights with six bends, of which nothing keeps 1 lbf/ft of sidewall pressure
    def hopeless(run: dict[str, Any]) -> None:
        bend = level_bend(30, 3)
        sections = [one for _ in range(6) for one in (straight(100), bend)] + [straight(100)]
        run["bank"]["conduit"] = listed("4")
        run["circuits"][0]["cables"] = MANHOLES["circuits"][0]["cables"]
        run["start"], run["end"] = {"kind": "handhole"}, {"kind": "handhole", "name": "far end"}
        run["stretches"] = [
            {"setting": buried(24), "sections": sections, "pull_point": {"kind": "handhole"}} for _ in range(5)
        ]
        del run["stretches"][-1]["pull_point"]
        run["pulling"] = {"allowable_sidewall_pressure": quantity(1, "lbf/ft")}

    told = remedied(altered(POLE, hopeless))
    assert (told["trial_count"], told["cut_short"]) == (50, True)
    assert remedied(altered(POLE, hopeless)) == told, "the same request gets the same remedies"
    monkeypatch.setattr(
        cost, "MOST_TRIAL_STEPS", 3.5 * cost.steps(DuctRunRequest.model_validate(altered(POLE, hopeless)))
    )
    assert remedied(altered(POLE, hopeless))["trial_count"] == 3, "a run that takes long is tried less often"


def test_a_run_and_what_holds_runs_may_be_asked_for_remedies_and_nothing_else() -> None:
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12)))
    alone = ask("duct-run", shallow, "remedies=true")["remedies"]["found"]
    answer = post("/v1/duct-run?remedies=true", json.dumps(shallow).encode())
    assert answer["remedies"]["found"] == alone
    assert "cover" in [one["change"] for one in alone]
    for path, example in (("fill", EXAMPLES["fill"]), ("duct-run/compare", EXAMPLES["duct-run/compare"])):
        refused = post(f"/v1/{path}?remedies=true", json.dumps(example).encode())
        assert [(one["parameter"], one["code"]) for one in refused["errors"]] == [("remedies", "unknown_parameter")]
    items = [
        {"id": "run", "operation": "duct_run", "request": shallow},
        {"id": "fill", "operation": "fill", "request": EXAMPLES["fill"]},
        {"id": "both", "operation": "duct_run_compare", "request": EXAMPLES["duct-run/compare"]},
    ]
    answers = post("/v1/batch?remedies=true", json.dumps({"items": items}).encode())["items"]
    assert answers[0]["answer"]["remedies"]["found"] == alone
    assert [("remedies" in one["answer"], one["status"]) for one in answers[1:]] == [(False, 200)] * 2
    assert problem("duct-run", POLE, "remedies=yes").kind.status == 422


def test_a_run_with_marks_of_inches_in_its_name_gets_its_remedies_too() -> None:
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12), name='2" along the \\ wall'))
    assert by_kind(shallow)["cover"]["message"].startswith('Lay 2" along the \\ wall with 18 in of cover')


def test_a_text_that_reads_like_a_null_is_a_text() -> None:
    named = altered(POLE, lambda run: run.update(name="a:null"))
    assert ask("duct-run", named)["result"]["name"] == "a:null"


@settings(max_examples=25, deadline=None)
@given(random=RANDOMS)
def test_a_remedy_sent_again_removes_what_it_says(random: Random) -> None:
    run = altered(random.choice([LANDING, POLE, MANHOLES, BORE, BRIDGE, KILN]), lambda run: _worsen(run, random))
    try:
        remedied(run)
    except ProblemRaised:
        return


def _worsen(run: dict[str, Any], random: Random) -> None:
    """Make covers shallower, straights longer, bends tighter, cables more and loads larger, here and there."""
    for stretch in run["stretches"]:
        cover = stretch["setting"].get("cover")
        if cover is not None and random.random() < 0.3:
            stretch["setting"]["cover"] = quantity(cover["value"] * random.choice([0.2, 0.5]), cover["unit"])
        for section in stretch.get("sections", ()):
            if section["kind"] == "straight" and "profile" not in run:
                section["length"] = quantity(section["length"]["value"] * random.choice([1, 3, 8]), "ft")
            elif "radius" in section and "profile" not in run and random.random() < 0.4:
                section["radius"] = quantity(section["radius"]["value"] * 0.4, section["radius"]["unit"])
    for circuit in run.get("circuits", ()):
        for line in circuit.get("cables", ()):
            line["count"] = min(30, line["count"] * random.choice([1, 1, 2, 5]))
        if "load" in circuit:
            circuit["load"] |= {"current": quantity(random.choice([400, 620, 770]), "A"), "limit_percent": 1.4}


def test_a_fault_of_our_own_in_a_trial_is_not_taken_for_a_change_that_does_not_help(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def broken(*_asked: Any) -> None:
        raise KeyError("a table without a row")

    monkeypatch.setattr(trials, "assess", broken)
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12)))
    with pytest.raises(KeyError, match="without a row"):
        ANSWERS["duct-run"](json.dumps(shallow).encode(), Chosen(remedies=True))
