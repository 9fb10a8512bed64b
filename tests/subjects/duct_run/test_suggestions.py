"""What would make a run comply: each suggestion by hand, and applied to its request and sent again."""

from __future__ import annotations

import copy
import json
from collections.abc import Callable
from random import Random
from typing import Any

import pytest
from ductrun.http.problems import ProblemRaised
from ductrun.subjects.duct_run.suggesting.cutting import Cut, Divided
from hypothesis import given, settings
from tools.asking import post

from tests.asking import EXAMPLES, ask, codes, problem, quantity
from tests.properties.requests import RANDOMS
from tests.subjects.duct_run.patched import patched
from tests.subjects.duct_run.runs import (
    BORE,
    BRIDGE,
    MANHOLES,
    POLE,
    buried,
    level_bend,
    listed,
    straight,
    upright_bend,
)


def altered(run: dict[str, Any], change: Callable[[dict[str, Any]], Any]) -> dict[str, Any]:
    run = copy.deepcopy(run)
    change(run)
    return run


def unloaded(run: dict[str, Any]) -> None:
    """Leave out what no suggestion changes: loads of circuits and of earth, of which some is not judged."""
    del run["earth_load"]
    for circuit in run["circuits"]:
        circuit.pop("load", None)


LANDING: dict[str, Any] = altered(EXAMPLES["duct-run"], unloaded)


def suggested(run: dict[str, Any]) -> dict[str, Any]:
    told: dict[str, Any] = ask("duct-run", run, "suggestions=true")["suggestions"]
    check_applied(run, told)
    return told


def by_kind(run: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {one["change"]: one for one in suggested(run)["suggestions"]}


def violations(answer: dict[str, Any]) -> list[tuple[str, str]]:
    return [(one["code"], one["pointer"]) for one in answer["findings"] if one["severity"] == "violation"]


def check_applied(run: dict[str, Any], told: dict[str, Any]) -> None:
    """Send every changed run: what is told of it must be what it answers."""
    before = violations(ask("duct-run", run))
    for one in told["suggestions"]:
        after = ask("duct-run", patched(run, one["patch"]))
        assert after["verdict"] == one["verdict"], one["message"]
        assert len(violations(after)) == one["remaining_violation_count"], one["message"]
        removed = [(each["code"], each["pointer"]) for each in one["removed"]]
        assert removed, one["message"]
        assert set(removed) <= set(before), one["message"]
        assert {code for code, _ in violations(after)} <= {code for code, _ in before}, one["message"]
        if len({code for code, _ in before}) == 1:
            assert one["remaining_violation_count"] < len(before), one["message"]


def test_a_run_that_breaks_no_limit_gets_none_and_tries_none() -> None:
    for run in (LANDING, POLE):
        assert suggested(run) == {"suggestions": [], "trial_count": 0, "bound_met": False}


def test_suggestions_come_only_where_they_are_asked_for() -> None:
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12)))
    plain, asked = ask("duct-run", shallow), ask("duct-run", shallow, "suggestions=true")
    assert "suggestions" not in plain
    assert asked.pop("suggestions")["suggestions"]
    assert asked == plain, "nothing else of the answer changes"
    assert ask("duct-run", shallow, "suggestions=false") == plain


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
        assert one["patch"] == [{"op": "replace", "path": "/stretches/0/setting/cover", "value": deeper}]
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
    assert [each["path"] for each in one["patch"]] == [f"/stretches/{at}/setting/cover" for at in (0, 1)]
    assert one["message"] == "Lay yard, lawn with 18 in of cover instead of 12 in."


def test_with_a_profile_the_whole_line_goes_deeper() -> None:
    # derived: 6 in over an envelope whose concrete is 4 in thick make 10 in over the ducts, 14 less than the 24 asked
    def raised(run: dict[str, Any]) -> None:
        for point in run["profile"]["points"]:
            point["line"] = quantity(point["ground"]["value"] - 0.5, "ft")

    one = by_kind(altered(MANHOLES, raised))["cover"]
    assert one["message"] == "Lay the whole run 14 in deeper."
    [operation] = one["patch"]
    assert operation["path"] == "/profile"
    # 13.7 ft less 1.16667 ft is 12.5333 ft, to the hundredth below it
    assert operation["value"]["points"][0]["line"] == quantity(12.53, "ft")
    assert operation["value"]["points"][0]["ground"] == quantity(14.2, "ft")


def test_a_conduit_too_full_takes_the_first_trade_size_that_holds_its_cables() -> None:
    # derived: 30 conductors 10 AWG THWN-2 of 0.0211 in2 are 0.633 in2. 40 percent of 1-1/4 in Schedule 40 (1.453 in2)
    # are 0.581, of 1-1/2 in (1.986 in2) 0.794: the second size up is the first that holds them
    full = altered(POLE, lambda run: run["circuits"][0]["cables"][0].update(count=30))
    one = by_kind(full)["trade_size"]
    assert one["patch"] == [{"op": "replace", "path": "/bank/conduit", "value": listed("1-1/2")}]
    assert one["removed"] == [{"code": "fill_exceeded", "pointer": "#/circuits/0/cables"}]
    assert one["message"] == "Take trade size 1-1/2 for Circuit 1."


def test_a_tight_bend_takes_the_first_radius_on_file_that_keeps_the_limit() -> None:
    # sweeps of 4 in are on file at 16, 24, 30 in and wider. Derived: 388.85 lbf/ft at 16 in are more than the 300
    # allowed; pressure goes with 1 / R, 388.85 x 16 / 24 = 259 lbf/ft: 24 in keeps it
    tight = altered(LANDING, lambda run: run["stretches"][1]["sections"][1].update(radius=quantity(16, "in")))
    found = by_kind(tight)
    assert found["radius"]["patch"] == [
        {"op": "replace", "path": "/stretches/1/sections/1/radius", "value": quantity(24, "in")}
    ]
    assert found["radius"]["verdict"] == "complies"
    assert found["radius"]["message"] == "Give section 2 of across the field a radius of 24 in instead of 16 in."
    assert list(found) == ["radius", "pull_point"], "of those that comply the cheapest to build comes first"


def test_where_conduit_may_be_damaged_schedule_80_is_taken_in_that_stretch() -> None:
    bare = altered(LANDING, lambda run: run["stretches"][2].pop("conduit_type"))
    told = suggested(bare)
    [one] = told["suggestions"]
    schedule_80 = bare["stretches"][2] | {"conduit_type": "pvc_schedule_80"}
    assert one["patch"] == [{"op": "replace", "path": "/stretches/2", "value": schedule_80}]
    assert (one["change"], one["verdict"]) == ("conduit_type", "complies")
    assert one["message"] == "Take Schedule 80 PVC in up the wall."
    assert (told["trial_count"], told["bound_met"]) == (1, False)


def test_risers_of_duct_for_concrete_come_up_in_schedule_80_both_at_once() -> None:
    def encased(run: dict[str, Any]) -> None:
        run["bank"]["conduit"] = listed("4", "pvc_type_eb")
        run["stretches"][0]["setting"]["kind"] = "encased"

    run = altered(POLE, encased)
    one = by_kind(run)["riser_conduit_type"]
    assert one["patch"] == [
        {"op": "replace", "path": f"/{end}", "value": run[end] | {"riser_conduit_type": "pvc_schedule_80"}}
        for end in ("start", "end")
    ]
    assert one["remaining_violation_count"] == 0


def test_a_joint_of_the_structure_takes_a_fitting_of_more_travel() -> None:
    # 90 percent of 2 in are 1.8 in, of 4 in 3.6 in: the joint moves 2 in
    short = altered(BRIDGE, lambda run: run["stretches"][1]["setting"].update(fitting_travel=quantity(2, "in")))
    one = by_kind(short)["fitting_travel"]
    assert one["patch"] == [
        {"op": "replace", "path": "/stretches/1/setting/fitting_travel", "value": quantity(4, "in")}
    ]


def test_practice_beyond_a_limit_is_set_to_the_limit() -> None:
    # 10 percent of pigment are allowed; straps stand within 3 ft of a termination
    for practice, patch in (
        (
            {"concrete": {"pigment_percent": 11, "cement_content": quantity(564, "lb/yd3")}},
            {
                "op": "replace",
                "path": "/concrete",
                "value": {"pigment_percent": 10, "cement_content": quantity(564, "lb/yd3")},
            },
        ),
        (
            {"movement": {"end_distance": quantity(5, "ft")}},
            {"op": "replace", "path": "/movement/end_distance", "value": quantity(3, "ft")},
        ),
    ):
        [one] = suggested(LANDING | practice)["suggestions"]
        assert one["patch"] == [patch]
        assert one["verdict"] == "complies"


def test_a_field_bend_too_tight_is_widened_to_what_its_size_needs() -> None:
    # 4 in bent in the field needs 24 in, and with it the pressure of 518.47 lbf/ft at 12 in halves to 259
    def bent(run: dict[str, Any]) -> None:
        run["stretches"][1]["sections"][1] |= {"made": "field_bend", "radius": quantity(12, "in")}

    first, *others = suggested(altered(LANDING, bent))["suggestions"]
    assert first["patch"][0]["value"] == quantity(24, "in")
    assert [one["code"] for one in first["removed"]] == ["field_bend_too_tight", "sidewall_pressure_exceeded"]
    assert all(one["remaining_violation_count"] == 1 for one in others), "those that leave a violation come behind"


def test_duct_for_concrete_that_lies_in_earth_is_taken_for_another_everywhere() -> None:
    def in_earth(run: dict[str, Any]) -> None:
        run["bank"]["conduit"] = listed("4", "pvc_type_eb")
        run["start"], run["end"] = {"kind": "handhole"}, {"kind": "handhole", "name": "far end"}
        run["stretches"] = [{"setting": buried(30), "length": quantity(100, "ft")} for _ in range(2)]

    one = by_kind(altered(POLE, in_earth))["conduit_type"]
    assert one["message"] == "Take Schedule 40 PVC for all ducts."
    assert one["patch"] == [{"op": "replace", "path": "/bank/conduit", "value": listed("4")}]
    assert one["verdict"] == "complies"


def test_a_weak_brake_is_made_strong_enough() -> None:
    # from either end the cable runs away down 40 degrees, and a brake of 1 lbf holds nothing
    def hilly(run: dict[str, Any]) -> None:
        valley = upright_bend(40, 300, made="laid_on_curve")
        run["stretches"] = [{"setting": buried(36), "sections": [straight(200, -40), valley, straight(200)]}]
        run["pulling"] = {"brake_limit": quantity(1, "lbf")}
        run["end"] = {"kind": "handhole"}

    run = altered(BORE, hilly)
    answer = ask("duct-run", run)
    assert "brake_exceeded" in codes(answer, "violation")
    needed = next(one["actual"]["value"] for one in answer["findings"] if one["code"] == "brake_exceeded")
    one = by_kind(run)["brake_limit"]
    [operation] = one["patch"]
    assert operation["path"] == "/pulling/brake_limit"
    assert 0 <= operation["value"]["value"] - needed < 50, "rounded up to 50 lbf"


def test_a_pull_too_long_is_divided_at_the_end_of_a_straight() -> None:
    def long(run: dict[str, Any]) -> None:
        run["stretches"][1]["sections"][0]["length"] = quantity(900, "ft")
        run["stretches"][1]["sections"][2]["length"] = quantity(800, "ft")

    run = altered(LANDING, long)
    one = by_kind(run)["pull_point"]
    assert one["verdict"] == "complies"
    # derived: 900 ft and a bend of 36 in by 45 degrees, 3 x 0.7854 = 2.356 ft: 902 ft 4 in
    assert one["message"] == "Put a handhole 902 ft 4 in along the pull from HH-2, in across the field."
    field = run["stretches"][1]
    assert one["patch"] == [
        {
            "op": "replace",
            "path": "/stretches/1",
            "value": field
            | {
                "sections": field["sections"][:2],
                "pull_point": {"kind": "handhole", "name": "added pull point 1"},
            },
        },
        {
            "op": "add",
            "path": "/stretches/2",
            "value": field | {"name": "across the field, continued", "sections": field["sections"][2:]},
        },
    ]
    lengths = [ask("duct-run", each)["result"]["length"]["value"] for each in (run, patched(run, one["patch"]))]
    assert lengths[1] == pytest.approx(lengths[0]), "a pull point makes no run longer"


def test_a_straight_too_long_for_one_pull_is_divided_into_equal_parts() -> None:
    # derived: three parts of 3,000 ft are 1,000 ft each, or what is near a whole foot
    def straight_on(run: dict[str, Any]) -> None:
        run["start"], run["end"] = {"kind": "handhole", "name": "HH-1"}, {"kind": "handhole", "name": "HH-2"}
        run["stretches"] = [{"setting": buried(24), "length": quantity(3_000, "ft")}]
        run["circuits"][0]["cables"] = [{"count": 3, "cable": MANHOLES["circuits"][0]["cables"][0]["cable"]}]
        run["bank"]["conduit"] = listed("4")
        run["pulling"] = {"incoming_tension": quantity(0, "lbf")}

    run = altered(POLE, straight_on)
    told = ask("duct-run", run)["result"]["circuits"][0]["pulls"][0]["pull"]
    # on the level tension goes with length
    parts = -(-told["tension"]["value"] // told["allowable_tension"]["value"])
    assert parts >= 2
    one = by_kind(run)["pull_point"]
    assert len(one["patch"]) == parts
    pieces = [each["length"]["value"] for each in patched(run, one["patch"])["stretches"]]
    assert sum(pieces) == pytest.approx(3_000)
    assert pieces == pytest.approx([3_000 / parts] * int(parts), abs=1)
    assert all(each["setting"] == run["stretches"][0]["setting"] for each in patched(run, one["patch"])["stretches"])


def test_dimensioned_to_intersections_a_run_keeps_its_length_when_it_is_divided() -> None:
    def longer(run: dict[str, Any]) -> None:
        del run["profile"]
        run["stretches"][0]["setting"]["cover"] = quantity(30, "in")
        for section, feet in ((0, 1600), (2, 1200), (4, 1400)):
            run["stretches"][0]["sections"][section]["length"] = quantity(feet, "ft")

    run = altered(MANHOLES, longer)
    one = by_kind(run)["pull_point"]
    assert one["remaining_violation_count"] == 0
    lengths = [ask("duct-run", each)["result"]["length"]["value"] for each in (run, patched(run, one["patch"]))]
    assert lengths[1] == pytest.approx(lengths[0])
    assert one["message"].count("a manhole") == 2


def test_a_divided_run_keeps_its_grades() -> None:
    def sloped(run: dict[str, Any]) -> None:
        run["stretches"] = [
            {"setting": buried(36), "sections": [straight(1500, 5), level_bend(20, 25, made="laid_on_curve")]},
            {"setting": buried(36), "sections": [level_bend(20, 25, made="laid_on_curve"), straight(1500)]},
        ]

    run = altered(BORE, sloped)
    one = by_kind(run)["pull_point"]
    given = ask("duct-run", run)["result"]
    changed = ask("duct-run", patched(run, one["patch"]))["result"]
    assert changed["plan_length"]["value"] == pytest.approx(given["plan_length"]["value"])
    assert any(each["path"].endswith("/grade") or "grade" in str(each["value"]) for each in one["patch"])


def test_pointers_of_a_divided_run_are_led_back_to_the_run_given() -> None:
    # stretch 1 divided before its section 3 and along its section 5; stretch 2 not
    origin = Divided([Cut(1, 5, 40.0, 0.0), Cut(1, 3, None, 0.0), Cut(0, None, None, 0.0)])
    for pointer, given_ in (
        ("#/circuits/0", "#/circuits/0"),
        ("#/stretches/0/setting", "#/stretches/0/setting"),
        ("#/stretches/1/sections/2", "#/stretches/1/sections/2"),
        ("#/stretches/2/sections/0", "#/stretches/1/sections/3"),
        ("#/stretches/2/sections/2/radius", "#/stretches/1/sections/5/radius"),
        ("#/stretches/3/sections/0", "#/stretches/1/sections/5"),
        ("#/stretches/3/sections/1", "#/stretches/1/sections/6"),
        ("#/stretches/4", "#/stretches/2"),
        ("#/stretches/5/sections/4", "#/stretches/3/sections/4"),
    ):
        assert origin(pointer) == given_


def test_no_more_than_fifty_runs_are_tried_and_the_answer_says_so() -> None:
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

    told = suggested(altered(POLE, hopeless))
    assert (told["trial_count"], told["bound_met"]) == (50, True)
    assert suggested(altered(POLE, hopeless)) == told, "the same request gets the same suggestions"


def test_a_run_and_what_holds_runs_may_be_asked_for_suggestions_and_nothing_else() -> None:
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12)))
    alone = ask("duct-run", shallow, "suggestions=true")["suggestions"]["suggestions"]
    answer = post("/v1/duct-run?suggestions=true", json.dumps(shallow).encode())
    assert answer["suggestions"]["suggestions"] == alone
    assert "cover" in [one["change"] for one in alone]
    for path, example in (("fill", EXAMPLES["fill"]), ("duct-run/compare", EXAMPLES["duct-run/compare"])):
        refused = post(f"/v1/{path}?suggestions=true", json.dumps(example).encode())
        assert [(one["parameter"], one["code"]) for one in refused["errors"]] == [("suggestions", "unknown_parameter")]
    items = [
        {"id": "run", "operation": "duct_run", "request": shallow},
        {"id": "fill", "operation": "fill", "request": EXAMPLES["fill"]},
        {"id": "both", "operation": "duct_run_compare", "request": EXAMPLES["duct-run/compare"]},
    ]
    answers = post("/v1/batch?suggestions=true", json.dumps({"items": items}).encode())["items"]
    assert answers[0]["answer"]["suggestions"]["suggestions"] == alone
    assert [("suggestions" in one["answer"], one["status"]) for one in answers[1:]] == [(False, 200)] * 2
    assert problem("duct-run", POLE, "suggestions=yes").kind.status == 422


def test_a_run_with_marks_of_inches_in_its_name_gets_its_suggestions_too() -> None:
    shallow = altered(POLE, lambda run: run["stretches"][0].update(setting=buried(12), name='2" along the \\ wall'))
    assert by_kind(shallow)["cover"]["message"].startswith('Lay 2" along the \\ wall with 18 in of cover')


def test_a_text_that_reads_like_a_null_is_a_text() -> None:
    named = altered(POLE, lambda run: run.update(name="a:null"))
    assert ask("duct-run", named)["result"]["name"] == "a:null"


@settings(max_examples=25, deadline=None)
@given(random=RANDOMS)
def test_a_suggestion_applied_and_sent_again_removes_what_it_says(random: Random) -> None:
    run = altered(random.choice([LANDING, POLE, MANHOLES, BORE, BRIDGE]), lambda run: _worsen(run, random))
    try:
        suggested(run)
    except ProblemRaised:
        return


def _worsen(run: dict[str, Any], random: Random) -> None:
    """Make covers shallower, straights longer, bends tighter and cables more, here and there."""
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
