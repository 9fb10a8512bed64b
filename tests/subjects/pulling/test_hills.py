"""Pulls over hills: the brake that keeps the cable taut, what hangs behind it, and what is not judged without it.

The figures of the drop were worked by hand: at the bottom bend the cable is in balance where tan phi = -K, and from
there the tension is followed up the drop, round the top bend and back to the reel.
"""

from __future__ import annotations

import copy
import math
import time
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity, result, verdict_of


def straight(feet: float, degrees: float | None = None) -> dict[str, Any]:
    made = {"kind": "straight", "length": quantity(feet, "ft")}
    return made if degrees is None else made | {"grade": quantity(degrees, "deg")}


def turn(feet: float, leave: float, entry: float | None = None) -> dict[str, Any]:
    made = {"kind": "vertical_bend", "radius": quantity(feet, "ft"), "exit_grade": quantity(leave, "deg")}
    return made if entry is None else made | {"entry_grade": quantity(entry, "deg")}


def level_bend(feet: float, degrees: float) -> dict[str, Any]:
    return {"kind": "horizontal_bend", "radius": quantity(feet, "ft"), "angle": quantity(degrees, "deg")}


def pull(
    sections: list[dict[str, Any]], /, operation: str = "pull-tension", query: str = "", **changes: Any
) -> dict[str, Any]:
    """Ask for three shielded cables of 500 kcmil, triangular in 5 in, with nothing incoming."""
    made = copy.deepcopy(EXAMPLES[operation]) | {"arrangement": "triangular", "sections": sections} | changes
    return ask(operation, {name: value for name, value in made.items() if value is not None}, query)


def one_cable(sections: list[dict[str, Any]], friction: float, incoming: float = 0.0, **changes: Any) -> dict[str, Any]:
    """Ask for one cable of 5 lb/ft whose tension is judged against 1e5 lbf and its pressure against 1e4 lbf/ft."""
    cable = {"kind": "measured", "diameter": quantity(1.5, "in"), "mass_per_length": quantity(5, "lb/ft")}
    request = {
        "conduit": {"kind": "measured", "inside_diameter": quantity(5, "in")},
        "cables": [{"count": 1, "cable": cable}],
        "friction_coefficient": friction,
        "braking_friction_coefficient": friction,
        "incoming_tension": quantity(incoming, "lbf"),
        "allowable_tension": quantity(1e5, "lbf"),
        "allowable_sidewall_pressure": quantity(1e4, "lbf/ft"),
        "brake_limit": quantity(1e5, "lbf"),
        "sections": sections,
    }
    return result("pull-tension", request | changes)


def drop(feet: float) -> list[dict[str, Any]]:
    return [straight(50, 0), turn(3, -90), straight(feet), turn(3, 0), straight(50)]


@pytest.mark.parametrize(
    ("feet", "hangs", "pressure", "brake", "brake_at_low_friction"),
    [(1_600, 12_496, 2_267, 6_729, 9_625), (1_000, 7_816, 1_418, 4_157, 6_004)],
)
def test_a_cable_down_a_shaft_hangs_at_its_top_and_the_reel_holds_it(
    feet: float, hangs: float, pressure: float, brake: float, brake_at_low_friction: float
) -> None:
    answer = pull(drop(feet))
    found = answer["result"]
    assert found["highest_tension"]["value"] == pytest.approx(hangs, abs=0.5)
    assert found["sections"][1]["sidewall_pressure"]["value"] == pytest.approx(pressure, abs=0.5)
    assert found["brake_tension"]["value"] == pytest.approx(brake, abs=0.5)
    assert found["braking_case"]["friction_coefficient"] == 0.15
    assert found["braking_case"]["brake_tension"]["value"] == pytest.approx(brake_at_low_friction, abs=0.5)
    assert found["sections"][0]["tension_in"] == found["brake_tension"]
    assert answer["verdict"] == "violates"
    assert {"sidewall_pressure_exceeded"} <= set(codes(answer, "violation"))
    assert ("tension_exceeded" in codes(answer, "violation")) is (hangs > 8_000)


def test_the_same_slope_in_pieces_needs_the_same_brake() -> None:
    whole = one_cable([straight(400, -45)], 0.35)
    parts = one_cable([straight(100, -45)] * 4, 0.35)
    due = 5 * 400 * (math.sin(math.pi / 4) - 0.35 * math.cos(math.pi / 4))
    assert whole["brake_tension"]["value"] == pytest.approx(due)
    assert parts["brake_tension"]["value"] == pytest.approx(due)


@pytest.mark.parametrize(
    ("radius", "entry", "leave", "friction", "brake", "leaves"),
    [(30, -90, 10, 0.5, 95.2, 29.72), (100, -45, 10, 0.35, 55.32, 63.83)],
)
def test_a_bend_in_which_the_cable_runs_away_leaves_with_what_lies_beyond_its_low_point(
    radius: float, entry: float, leave: float, friction: float, brake: float, leaves: float
) -> None:
    whole = one_cable([turn(radius, leave, entry)], friction)
    assert whole["brake_tension"]["value"] == pytest.approx(brake, abs=0.05)
    assert whole["tension"]["value"] == pytest.approx(leaves, abs=0.006)
    step = (leave - entry) / 12
    pieces = [turn(radius, entry + step * (at + 1), entry + step * at) for at in range(12)]
    assert one_cable(pieces, friction)["tension"]["value"] == pytest.approx(whole["tension"]["value"], rel=1e-9)


def test_the_highest_tension_may_stand_inside_a_crest() -> None:
    crest = turn(1_000, -20, 20)
    found = one_cable([crest], 0.15, allowable_tension=quantity(568, "lbf"))
    assert found["utilization_percent"] > 100
    assert found["tension"]["value"] == pytest.approx(563, abs=0.5)
    assert found["highest_tension"]["value"] == pytest.approx(646, abs=0.5)
    assert found["sections"][0]["highest_tension"] == found["highest_tension"]
    planned = copy.deepcopy(EXAMPLES["pull-plan"]) | {
        "cables": [
            {
                "count": 1,
                "cable": EXAMPLES["pull-plan"]["cables"][0]["cable"] | {"mass_per_length": quantity(5, "lb/ft")},
            }
        ],
        "friction_coefficient": 0.15,
        "allowable_tension": quantity(568, "lbf"),
        "sections": [crest],
    }
    del planned["arrangement"]
    assert verdict_of("pull-plan", planned) == "violates"


def test_sidewall_pressure_is_that_of_the_highest_tension_in_the_bend() -> None:
    found = one_cable([turn(300, -90, -60)], 0.35, incoming=2_000)
    assert found["sections"][0]["sidewall_pressure"]["value"] == pytest.approx(2_000 / 300)
    assert found["tension"]["value"] / 300 < 6


def test_a_grade_left_out_goes_on_from_the_section_before() -> None:
    given = pull([straight(50, 0), turn(3, 90), straight(200, 90)])
    left_out = pull([straight(50, 0), turn(3, 90), straight(200)])
    assert left_out["result"] == given["result"]
    assert [place for one in left_out["assumptions"] for place in one["pointers"]] == [
        place for one in given["assumptions"] for place in one["pointers"]
    ]
    through = pull([straight(50, 1), level_bend(3, 90), straight(200)])["result"]["sections"][2]
    assert through == pull([straight(50, 1), level_bend(3, 90), straight(200, 1)])["result"]["sections"][2]


def test_only_the_grade_a_route_begins_with_is_assumed() -> None:
    answer = pull([straight(50), turn(3, 45), turn(3, 0), straight(50)])
    fields = [place for assumption in answer["assumptions"] for place in assumption["pointers"]]
    assert [field for field in fields if "grade" in field] == ["#/sections/0/grade"]


@pytest.mark.parametrize(
    ("sections", "code", "where"),
    [
        ([straight(50, 0), straight(50, 2)], None, None),
        ([straight(50, 0), straight(50, 8)], "grade_breaks", "Between sections 1 and 2"),
        ([straight(50, 0), straight(50, 90)], "bend_left_out", "Between sections 1 and 2"),
        ([straight(50, 5), level_bend(3, 30), straight(50)], "grade_breaks", "Section 2 is a level bend"),
        ([straight(50, 30), level_bend(3, 30), straight(50)], "bend_left_out", "Section 2 is a level bend"),
        ([straight(50, 0), turn(3, 90, 45)], "bend_left_out", "Between sections 1 and 2"),
    ],
)
def test_a_break_of_grade_is_joint_deflection_a_caution_or_a_bend_left_out(
    sections: list[dict[str, Any]], code: str | None, where: str | None
) -> None:
    answer = pull(sections, allowable_sidewall_pressure=quantity(5_000, "lbf/ft"), brake_limit=quantity(5_000, "lbf"))
    breaks = [found for found in answer["findings"] if found["code"] in {"grade_breaks", "bend_left_out"}]
    assert [found["code"] for found in breaks] == ([code] if code else [])
    assert answer["verdict"] == ("not_judged" if code == "bend_left_out" else "complies")
    if where:
        assert breaks[0]["message"].startswith(where)
        assert breaks[0]["pointer"] == "#/sections/1"


def test_small_breaks_of_grade_that_add_up_to_a_bend_are_a_bend_left_out() -> None:
    limits: dict[str, Any] = {
        "allowable_sidewall_pressure": quantity(5_000, "lbf/ft"),
        "brake_limit": quantity(5_000, "lbf"),
    }
    twice = pull([straight(50, 0), straight(50, 4), straight(50, 8)], **limits)
    assert codes(twice).count("grade_breaks") == 2
    assert twice["verdict"] == "complies"
    thrice = pull([straight(50, 0), straight(50, 4), straight(50, 8), straight(50, 12)], **limits)
    [lost] = [found for found in thrice["findings"] if found["code"] == "bend_left_out"]
    assert lost["message"].startswith("Between sections 3 and 4 the grade breaks by 4 deg without a bend; with the")
    assert thrice["verdict"] == "not_judged"


def test_joints_that_deflect_again_and_again_are_a_bend() -> None:
    zigzag = [straight(20, 2 * (index % 2)) for index in range(60)]
    answer = pull(zigzag, brake_limit=quantity(5_000, "lbf"))
    assert answer["verdict"] == "not_judged"
    assert "bend_left_out" in codes(answer)
    gentle = pull(zigzag[:5], brake_limit=quantity(5_000, "lbf"))
    assert gentle["verdict"] == "complies"
    assert not {"bend_left_out", "grade_breaks"} & set(codes(gentle))


def test_how_the_lines_are_written_does_not_change_the_brake_of_four_cables() -> None:
    four = [{"count": 4, "cable": EXAMPLES["pull-tension"]["cables"][0]["cable"]}]
    nearly = copy.deepcopy([four[0] | {"count": 3}, four[0] | {"count": 1}])
    nearly[1]["cable"]["diameter"]["value"] -= 1e-4
    brakes = [
        pull(drop(300), cables=lines, arrangement=None)["result"]["braking_case"]["brake_tension"]["value"]
        for lines in (four, nearly)
    ]
    assert brakes[0] == pytest.approx(brakes[1], rel=1e-3)


def test_a_last_straight_after_a_bend_has_the_friction_of_the_route() -> None:
    slippery = level_bend(3, 90) | {"friction_coefficient": 0.1}
    limits: dict[str, Any] = {"allowable_sidewall_pressure": quantity(5_000, "lbf/ft")}
    longest = pull([straight(100, 0), slippery], find_largest=True, **limits)["result"]["largest"]["last_straight"]
    verdicts = [
        pull([straight(100, 0), slippery, straight(longest["value"] * share)], **limits)["verdict"]
        for share in (0.999, 1.001)
    ]
    assert verdicts == ["complies", "violates"]


def test_a_box_in_the_place_of_a_bend_is_named() -> None:
    answer = pull([straight(50, 0), straight(30, 60)], "pull-plan", brake_limit=quantity(5_000, "lbf"))
    [found] = [one for one in answer["findings"] if one["code"] == "pull_point_turns"]
    assert found["message"].startswith("The pull point at 50 ft, between sections 1 and 2,")


def test_where_both_ends_break_a_limit_neither_is_recommended() -> None:
    answer = pull([straight(5_000, 0), level_bend(3, 90), straight(4_000)])
    assert answer["verdict"] == answer["result"]["reversed"]["verdict"] == "violates"
    assert answer["result"]["better_reason"].startswith("From neither end the pull keeps its limits; ")
    assert "pull_from_the_other_end" not in codes(answer)


def test_a_plan_is_not_told_possible_over_a_bend_that_was_left_out() -> None:
    steep = [straight(50, 0), level_bend(3, 90), straight(30, 60)]
    listed = {"kind": "listed", "positions": [quantity(20, "ft")]}
    answer = pull(steep, "pull-plan", box_positions=listed, allowable_sidewall_pressure=quantity(5_000, "lbf/ft"))
    assert answer["verdict"] == "not_judged"
    assert answer["result"]["pulls"]
    at_the_break = pull([straight(50, 0), straight(30, 60)], "pull-plan")
    assert at_the_break["verdict"] == "complies"
    assert at_the_break["result"]["pull_count"] == 2, "at a pull point the grade may break"


DOWN = [straight(20, 0), turn(10, -45), straight(150), turn(10, 0), straight(20)]
VALLEY = [*DOWN, turn(10, 45), straight(150), turn(10, 0), straight(20)]


def test_without_a_brake_limit_a_braked_pull_is_not_judged() -> None:
    answer = pull(VALLEY)
    assert answer["verdict"] == "not_judged"
    assert answer["result"]["reversed"]["verdict"] == "not_judged"
    [found] = [one for one in answer["findings"] if one["code"] == "brake_not_judged"]
    assert found["pointer"] == "#/brake_limit"
    assert "must hold back with" in found["message"]
    assert any("Nobody stands below a cable that is held back" in one["message"] for one in answer["cautions"])


def test_the_brake_is_held_against_its_limit_at_the_low_friction() -> None:
    free = pull(VALLEY)["result"]
    low, high = free["brake_tension"]["value"], free["braking_case"]["brake_tension"]["value"]
    assert 0 < low < high
    between = pull(VALLEY, brake_limit=quantity((low + high) / 2, "lbf"))
    assert between["verdict"] == "violates"
    [found] = [one for one in between["findings"] if one["code"] == "brake_exceeded"]
    assert found["severity"] == "violation"
    assert found["actual"]["value"] == pytest.approx(high)
    enough = pull(VALLEY, brake_limit=quantity(high * 1.001, "lbf"))
    assert enough["verdict"] == "complies"
    assert "brake_needed" in codes(enough, "caution")


def test_a_brake_limit_below_the_incoming_tension_is_a_violation() -> None:
    answer = pull([straight(100, 0)], incoming_tension=quantity(200, "lbf"), brake_limit=quantity(100, "lbf"))
    assert "brake_exceeded" in codes(answer, "violation")
    assert answer["verdict"] == "violates"


@pytest.mark.parametrize(
    ("changes", "pointer"),
    [
        ({"brake_limit": quantity(0, "lbf")}, "#/brake_limit/value"),
        ({"sections": [straight(50, 91)]}, "#/sections/0/grade/value"),
        ({"sections": [turn(3, -91, 0)]}, "#/sections/0/exit_grade/value"),
        ({"sections": [straight(50, 0), turn(3, 0, 95)]}, "#/sections/1/entry_grade/value"),
    ],
)
def test_no_brake_at_all_and_grades_beyond_the_vertical_are_refused(changes: dict[str, Any], pointer: str) -> None:
    raised = problem("pull-tension", copy.deepcopy(EXAMPLES["pull-tension"]) | changes)
    assert raised.errors is not None
    assert [error.pointer for error in raised.errors] == [pointer]
    assert raised.errors[0].minimum
    assert raised.errors[0].maximum


def test_the_friction_of_the_feed_is_not_held_by_the_reel() -> None:
    answer = pull([straight(100, 0)], incoming_tension=None, brake_limit=quantity(50, "lbf"))
    assert answer["result"]["incoming_tension"]["value"] > 50
    assert answer["verdict"] == "complies"
    assert "brake_exceeded" not in codes(answer)
    largest = pull([straight(100, 0)], incoming_tension=None, brake_limit=quantity(50, "lbf"), find_largest=True)
    assert largest["result"]["largest"]["friction_coefficient"] > 0.35


def test_the_friction_of_the_feed_does_not_hold_a_cable_that_runs_away() -> None:
    riser = [straight(30, -90), turn(3, 0), straight(200)]
    answer = pull(riser, incoming_tension=None)
    assert answer["verdict"] == "not_judged"
    assert answer["result"]["braking_case"]["brake_tension"]["value"] > 30 * 7.8
    assert "brake_not_judged" in codes(answer)
    assert pull(riser, incoming_tension=None, brake_limit=quantity(100, "lbf"))["verdict"] == "violates"


def test_where_the_arrangement_is_not_sure_the_brake_reckons_with_the_least_friction() -> None:
    brakes = {
        way: pull([straight(300, -40)], arrangement=way)["result"]["braking_case"]["brake_tension"]["value"]
        for way in ("triangular", "cradled", "worst_case")
    }
    assert brakes["worst_case"] == brakes["triangular"] > brakes["cradled"]


def test_a_weight_correction_that_is_given_never_lessens_the_brake() -> None:
    brake = pull(drop(500))["result"]["braking_case"]["brake_tension"]["value"]
    given = pull(drop(500), weight_correction_factor=3)["result"]["braking_case"]["brake_tension"]["value"]
    assert given == pytest.approx(brake)


def test_a_last_straight_is_found_where_a_longer_one_would_need_a_brake_that_is_not_known() -> None:
    route = [straight(300, 0), turn(6, -45), straight(10)]
    answer = pull(route, find_largest=True)
    assert answer["verdict"] == "complies"
    last = answer["result"]["largest"]["last_straight"]["value"]
    assert pull([*route[:-1], straight(last)])["verdict"] == "complies"
    assert pull([*route[:-1], straight(last * 1.001)])["verdict"] == "not_judged"


def test_a_low_friction_above_that_of_the_pull_is_refused() -> None:
    made = copy.deepcopy(EXAMPLES["pull-tension"]) | {"sections": VALLEY, "braking_friction_coefficient": 0.5}
    [error] = faults("pull-tension", made)
    assert (error["pointer"], error["maximum"]) == ("#/braking_friction_coefficient", quantity(0.35, "1"))


def test_the_other_end_tells_why_it_was_not_judged() -> None:
    answer = pull([straight(20, 0), turn(10, 45), straight(150), turn(10, 0), straight(20)])
    assert answer["verdict"] == "complies"
    assert answer["result"]["reversed"]["verdict"] == "not_judged"
    [found] = [one for one in answer["findings"] if one["code"] == "other_end_not_judged"]
    assert found["actual"] == answer["result"]["reversed"]["braking_case"]["brake_tension"]


def test_a_plan_that_the_brake_forbids_says_so() -> None:
    sections = [straight(500, -45)]
    answer = pull(sections, "pull-plan", incoming_tension=quantity(200, "lbf"), brake_limit=quantity(100, "lbf"))
    [found] = [one for one in answer["findings"] if one["code"] == "no_plan"]
    assert "of reel brake from its better end; it holds" in found["message"]
    assert answer["verdict"] == "violates"


def test_a_gentle_stretch_parts_two_shafts() -> None:
    lines = copy.deepcopy(EXAMPLES["pull-tension"]["cables"])
    route = [straight(40, 90), turn(100, 10), turn(100, 90), straight(40)]
    answer = pull(route, cables=lines)
    supported = [one for one in answer["findings"] if one["code"] == "cable_needs_support"]
    assert [one["pointer"] for one in supported] == ["#/sections/0", "#/sections/2"]


def test_a_shaft_with_conductors_of_unknown_size_was_not_judged_for_support() -> None:
    lines = copy.deepcopy(EXAMPLES["pull-tension"]["cables"])
    del lines[0]["cable"]["conductor"]
    answer = pull([straight(100, 90)], cables=lines, allowable_tension=quantity(9_000, "lbf"))
    assert "cable_support_not_judged" in codes(answer, "caution")
    assert answer["verdict"] == "not_judged"
    known = pull([straight(100, 90)], allowable_tension=quantity(9_000, "lbf"))
    assert known["verdict"] == "complies"


def test_a_large_plan_of_left_out_bends_is_answered_without_delay() -> None:
    zigzag = [straight(20, 20 * (index % 2)) for index in range(398)]
    began = time.process_time()
    answer = pull(zigzag, "pull-plan", brake_limit=quantity(5_000, "lbf"))
    assert time.process_time() - began < 10
    assert answer["verdict"] == "complies"
    assert answer["result"]["pull_count"] == 398, "at every break of grade a pull point"


def test_an_end_that_needs_no_brake_comes_before_one_that_was_not_judged() -> None:
    downhill = [straight(100, 0), turn(10, -30), straight(200), turn(10, 0), straight(20)]
    answer = pull(downhill)
    assert answer["verdict"] == "not_judged"
    found = answer["result"]
    assert found["reversed"]["verdict"] == "complies"
    assert found["better_direction"] == "reversed"
    assert "was not judged" in found["better_reason"]


def test_a_plan_takes_the_direction_that_needs_no_brake_or_tells_what_it_holds() -> None:
    downhill = [straight(100, 0), turn(10, -30), straight(200), turn(10, 0), straight(20)]
    [planned] = pull(downhill, "pull-plan")["result"]["pulls"]
    assert planned["direction"] == "reversed"
    assert "brake_tension" not in planned
    ends_only = {"kind": "listed", "positions": [quantity(10, "ft")]}
    valley = pull(VALLEY, "pull-plan", box_positions=ends_only)
    assert valley["verdict"] == "not_judged"
    assert "brake_not_judged" in codes(valley)
    braked = pull(VALLEY, "pull-plan", box_positions=ends_only, brake_limit=quantity(5_000, "lbf"))
    assert braked["verdict"] == "complies"
    assert any("brake_tension" in one for one in braked["result"]["pulls"])
    assert any(one["message"].startswith("Pull 1: The cable runs away") for one in braked["findings"])


def test_a_plan_says_where_a_known_brake_would_save_a_pull_point() -> None:
    answer = pull(VALLEY, "pull-plan")
    assert answer["verdict"] == "complies"
    assert answer["result"]["pull_count"] == 2
    assert "fewer_pulls_with_more_known" in codes(answer, "note")
    assert pull(VALLEY, "pull-plan", brake_limit=quantity(5_000, "lbf"))["result"]["pull_count"] == 1


def test_the_brake_of_the_low_friction_kept_on_is_a_caution_where_it_breaks_a_limit() -> None:
    route = [straight(50, 0), turn(6, -60), straight(300), turn(6, 0), straight(300), level_bend(3, 90), straight(10)]
    free = pull(route, brake_limit=quantity(20_000, "lbf"), allowable_sidewall_pressure=quantity(5_000, "lbf/ft"))
    least = free["result"]["highest_tension"]["value"]
    held = free["result"]["braking_case"]["highest_tension"]["value"]
    allowed = quantity(max(least, held) * 1.0005, "lbf")
    answer = pull(
        route,
        brake_limit=quantity(20_000, "lbf"),
        allowable_tension=allowed,
        allowable_sidewall_pressure=quantity(5_000, "lbf/ft"),
    )
    assert answer["verdict"] == "complies"
    assert "brake_no_more_than_needed" in codes(answer, "caution")


def test_the_low_friction_is_that_of_the_conduit_and_of_a_known_jacket() -> None:
    def low(**cable: Any) -> float:
        lines = copy.deepcopy(EXAMPLES["pull-tension"]["cables"])
        lines[0]["cable"] |= cable
        answer = pull(VALLEY, cables=lines)
        assumed = {place: one for one in answer["assumptions"] for place in one["pointers"]}[
            "#/braking_friction_coefficient"
        ]
        assert "lowest published" in assumed["citation"]
        return float(assumed["quantity"]["value"])

    assert low() == 0.15
    assert low(jacket="pe") == 0.15
    assert low(jacket="pvc") == 0.25, "the lowest row of PVC jackets in duct"


def test_a_level_route_assumes_no_low_friction() -> None:
    answer = pull([straight(100, 0), level_bend(3, 90), straight(100, 1)])
    assert "#/braking_friction_coefficient" not in [place for one in answer["assumptions"] for place in one["pointers"]]
    assert "braking_case" not in answer["result"]


def test_a_slippery_pull_reckons_with_its_own_friction() -> None:
    answer = pull(VALLEY, friction_coefficient=0.12)
    assert answer["result"]["braking_case"]["brake_tension"] == answer["result"]["brake_tension"]
    assert answer["result"]["braking_case"]["friction_coefficient"] == 0.12
    assert "#/braking_friction_coefficient" not in [place for one in answer["assumptions"] for place in one["pointers"]]


def test_friction_cases_carry_their_own_brakes() -> None:
    found = pull(VALLEY, friction_range={"low": 0.2, "high": 0.5}, brake_limit=quantity(5_000, "lbf"))["result"]
    brakes = [case["brake_tension"]["value"] for case in found["friction_cases"]]
    assert brakes == sorted(brakes, reverse=True)
    assert brakes[1] == pytest.approx(found["brake_tension"]["value"])
    assert all(case["verdict"] == "complies" for case in found["friction_cases"])


def test_the_largest_values_over_hills_comply_and_a_little_more_does_not() -> None:
    limits: dict[str, Any] = {
        "brake_limit": quantity(2_500, "lbf"),
        "allowable_sidewall_pressure": quantity(400, "lbf/ft"),
    }
    largest = pull(VALLEY, find_largest=True, **limits)["result"]["largest"]

    def complies(**changes: Any) -> bool:
        return str(pull(changes.pop("sections", VALLEY), **limits, **changes)["verdict"]) == "complies"

    friction, incoming = largest["friction_coefficient"], largest["incoming_tension"]["value"]
    assert complies(friction_coefficient=friction)
    assert not complies(friction_coefficient=friction * 1.0001)
    assert complies(incoming_tension=quantity(incoming, "lbf"))
    assert not complies(incoming_tension=quantity(incoming * 1.0001, "lbf"))
    last = largest["last_straight"]["value"]
    assert complies(sections=[*VALLEY[:-1], straight(last)])
    assert not complies(sections=[*VALLEY[:-1], straight(last * 1.0001)])


def test_a_profile_begins_with_the_brake_and_is_never_slack() -> None:
    found = pull(VALLEY, profile_spacing=quantity(5, "ft"))["result"]
    tensions = [point["tension"]["value"] for point in found["profile"]]
    assert tensions[0] == found["brake_tension"]["value"]
    assert min(tensions) >= 0
    assert max(tensions) <= found["highest_tension"]["value"] * (1 + 1e-9)


@pytest.mark.parametrize(
    ("material", "feet", "found"),
    [("copper", 49, False), ("copper", 51, True), ("aluminum", 119, False), ("aluminum", 121, True)],
)
def test_cable_in_a_long_vertical_run_is_supported(material: str, feet: float, found: bool) -> None:
    """NFPA 70, Table 300.19(A): copper over 350 to 500 kcmil 50 ft, aluminum 120 ft."""
    lines = copy.deepcopy(EXAMPLES["pull-tension"]["cables"])
    lines[0]["cable"]["conductor"] = {"material": material, "size": "500 kcmil", "count": 1}
    answer = pull([straight(20, 0), turn(1, 90), straight(feet - 1)], cables=lines)
    assert ("cable_needs_support" in codes(answer, "caution")) is found
    if found:
        metric = pull([straight(20, 0), turn(1, 90), straight(feet - 1)], cables=lines, query="units=metric")
        [support] = [one for one in metric["findings"] if one["code"] == "cable_needs_support"]
        assert " ft" not in support["message"]
        [hung] = answer["result"]["cable_supports"]
        assert hung["place"] == "Section 2 to section 3"
        assert hung["rise"] == {"value": pytest.approx(feet, abs=0.5), "unit": "ft"}
        assert (hung["support_count"], hung["support_spacing"]["value"]) == (2, feet - 1)
    else:
        assert "cable_supports" not in answer["result"]
    climbing = [straight(feet - 1, 30)]
    assert "cable_needs_support" not in codes(pull(climbing, cables=lines)), "a slope is not a shaft"


def test_a_slope_is_climbed_from_one_end_and_held_back_from_the_other() -> None:
    """Derived: 100 ft of 5 lb/ft at 30 degrees: 500 (sin + K cos) lbf to climb, a brake of 500 (sin - K cos) down."""
    changes: dict[str, Any] = {"friction_range": {"low": 0.2, "high": 0.4}, "brake_limit": quantity(160, "lbf")}
    cases = one_cable([straight(100, 30)], 0.3, **changes)["friction_cases"]
    for case, friction in zip(cases, (0.2, 0.3, 0.4), strict=True):
        along, across = 500 * math.sin(math.radians(30)), 500 * friction * math.cos(math.radians(30))
        assert case["tension"]["value"] == pytest.approx(along + across)
        assert "brake_tension" not in case
        assert case["utilization_percent"] == pytest.approx((along + across) / 1e5 * 100)
        assert case["reversed_tension"]["value"] == pytest.approx(0, abs=1e-9)
        assert case["reversed_brake_tension"]["value"] == pytest.approx(along - across)
        assert case["verdict"] == "complies"
    # the brake of 163.4 lbf at the low friction is over its 160, those of 120 and 77 are within
    judged = [case["reversed_verdict"] for case in cases]
    assert judged == ["violates", "complies", "complies"]
    shares = [case["reversed_utilization_percent"] for case in cases]
    assert shares[0] == pytest.approx((250 - 100 * math.cos(math.radians(30))) / 160 * 100)


def slope(degrees: float) -> list[dict[str, Any]]:
    return [straight(400, degrees)]


LOOSE: dict[str, Any] = {
    "friction_coefficient": 0.35,
    "braking_friction_coefficient": 0.15,
    "cables": [
        {
            "count": 1,
            "cable": {
                "kind": "measured",
                "diameter": quantity(1.5, "in"),
                "mass_per_length": quantity(5, "lb/ft"),
                "conductor": {"material": "copper", "size": "500 kcmil", "count": 1},
            },
        }
    ],
    "arrangement": None,
    "brake_limit": quantity(2_000, "lbf"),
}


BACK, ON = ("cable_slides_back", "before the rope is released"), ("cable_slides_on", "before the reel brake is")


@pytest.mark.parametrize(
    ("operation", "degrees", "brake", "expected"),
    [
        ("pull-tension", 30, 2_000, BACK),
        ("pull-tension", -30, 2_000, ON),
        ("pull-plan", 30, 100, BACK),  # no brake holds it from the other end
        ("pull-plan", -30, 2_000, ON),
    ],
)
def test_a_cable_on_a_slope_is_made_fast_at_its_top_before_it_is_let_go(
    operation: str, degrees: float, brake: float, expected: tuple[str, str]
) -> None:
    # derived: 5 lb/ft x 400 ft x (sin 30 deg - 0.15 cos 30 deg) = 2,000 x (0.5 - 0.1299) = 740.2 lbf
    answer = pull(slope(degrees), operation, **LOOSE | {"brake_limit": quantity(brake, "lbf")})
    [found] = [one for one in answer["findings"] if one["code"].startswith("cable_slides")]
    code, end = expected
    assert (found["code"], found["severity"]) == (code, "caution")
    assert found["actual"] == {"value": pytest.approx(740.19, abs=0.01), "unit": "lbf"}
    assert "at the lowest friction, 0.15," in found["message"]
    assert f"at the top, {end}" in found["message"]
    beyond = (
        " Cable that goes on through a pull point without a splice draws there with that of the pull beyond it too."
    )
    assert found["message"].endswith(f"nobody below it.{beyond if operation == 'pull-plan' else ''}")
    assert found["limit"] == quantity(50, "lbf")
    assert (found["standing"], "NIOSH" in found["citation"]) == ("memory", True)


def test_what_friction_or_a_hand_holds_is_not_cautioned_of() -> None:
    # at 8 degrees tan = 0.14 is under 0.15; at 9 it is 0.158, and draws with 2,000 (0.1564 - 0.1482) = 16.5 lbf
    for degrees in (0, 8, 9):
        answer = pull(slope(degrees), **LOOSE)
        assert not [one for one in codes(answer) if one.startswith("cable_slides")], degrees
        held = [one for one in answer["findings"] if one["code"] == "held_by_hand"]
        assert len(held) == (degrees == 9)
    [note] = held
    assert (note["severity"], note["limit"], note["source_id"]) == ("note", quantity(50, "lbf"), "trade-practice")
    assert note["actual"]["value"] == pytest.approx(2_000 * (math.sin(math.pi / 20) - 0.15 * math.cos(math.pi / 20)))
    assert "is taken as what one person holds" in note["message"]
