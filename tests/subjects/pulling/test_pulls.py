"""Pulling: limits with their sources, what would still comply, profiles, and plans."""

from __future__ import annotations

import copy
import time
from itertools import pairwise
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, judged, problem, quantity, result, value_of, verdict_of


def straight(feet: float, degrees: float = 0.0) -> dict[str, Any]:
    return {"kind": "straight", "length": quantity(feet, "ft"), "grade": quantity(degrees, "deg")}


def bend(feet: float, degrees: float) -> dict[str, Any]:
    return {"kind": "horizontal_bend", "radius": quantity(feet, "ft"), "angle": quantity(degrees, "deg")}


def request(operation: str = "pull-tension", cables: dict[str, Any] | None = None, **changes: Any) -> dict[str, Any]:
    """Change the example: `cables` changes its line of cables and how they lie; None leaves a member out."""
    made = copy.deepcopy(EXAMPLES[operation]) | changes
    [line] = made["cables"]
    for name, value in (cables or {}).items():
        whose = line if name == "count" else made if name in OF_THE_SET else line["cable"]
        whose[name] = value
    for whose in (made, line["cable"]):
        for field in [field for field, value in whose.items() if value is None]:
            del whose[field]
    return made


OF_THE_SET = {"arrangement", "weight_correction_factor"}


def assumed(answer: dict[str, Any]) -> dict[str, Any]:
    return {place: value_of(assumption) for assumption in answer["assumptions"] for place in assumption["pointers"]}


@pytest.mark.parametrize(
    ("cable_type", "limit"),
    [
        ("general", 300),
        ("instrumentation", 100),
        ("control_nonshielded_600_v", 300),
        ("control_shielded_600_v", 500),
        ("power_nonshielded_600_v", 500),
        ("power_shielded_5_to_15_kv", 500),
        ("power_shielded_25_to_46_kv", 300),
        ("interlocked_armor", 300),
        ("corrugated_armor", 500),
    ],
)
def test_the_sidewall_pressure_is_that_of_the_cable_type(cable_type: str, limit: float) -> None:
    answer = ask("pull-tension", request(cables={"cable_type": cable_type}, allowable_sidewall_pressure=None))
    assert answer["result"]["allowable_sidewall_pressure"] == quantity(limit, "lbf/ft")


def test_an_unknown_cable_is_held_to_the_conservative_limit() -> None:
    answer = ask("pull-tension", request(cables={"cable_type": None}, allowable_sidewall_pressure=None))
    assert assumed(answer)["#/cables/0/cable/cable_type"] == "general"
    assert answer["result"]["allowable_sidewall_pressure"] == quantity(300, "lbf/ft")


@pytest.mark.parametrize(
    ("conductor", "pounds"),
    [
        ({"material": "copper", "size": "500 kcmil", "count": 1}, 0.008 * 500e3),
        ({"material": "aluminum", "size": "500 kcmil", "count": 1}, 0.003 * 500e3),
        ({"material": "aluminum", "size": "500 kcmil", "count": 1, "temper": "aa_8000"}, 39.2 * 253.354 / 4.4482216),
        ({"material": "aluminum", "size": "500 kcmil", "count": 1, "temper": "hard"}, 0.008 * 500e3),
        ({"material": "aluminum", "size": "500 kcmil", "count": 1, "temper": "half_hard"}, 0.003 * 500e3),
        ({"material": "aluminum", "size": "500 kcmil", "count": 1, "temper": "soft"}, 0.002 * 500e3),
        (
            {"material": "copper", "area": quantity(400, "mm2"), "allowable_stress": quantity(68.6, "MPa"), "count": 1},
            27440 / 4.4482216152605,
        ),
    ],
)
def test_the_conductor_bears_what_its_temper_bears(conductor: dict[str, Any], pounds: float) -> None:
    answer = ask("pull-tension", request(cables={"count": 1, "arrangement": None, "conductor": conductor}))
    assert answer["result"]["allowable_tension"]["value"] == pytest.approx(pounds, rel=1e-5)


def test_a_temper_without_a_published_stress_is_refused_with_those_there_are() -> None:
    conductor = {"material": "copper", "size": "500 kcmil", "count": 1, "temper": "hard"}
    raised = problem("pull-tension", request(cables={"conductor": conductor}))
    assert raised.errors is not None
    assert (raised.errors[0].pointer, raised.errors[0].allowed_values) == (
        "#/cables/0/cable/conductor/temper",
        ["soft"],
    )


@pytest.mark.parametrize(
    ("rule", "cables", "counted"),
    [
        ("all_counted", 3, 3),
        ("two_of_three", 3, 2),
        ("all_counted", 4, 3.2),
        ("two_of_three", 4, 2.4),
        ("two_of_three", 2, 2),
    ],
)
def test_both_published_rules_count_conductors(rule: str, cables: int, counted: float) -> None:
    small = {"material": "copper", "size": "4/0 AWG", "count": 1}
    made = request(cables={"count": cables, "arrangement": None, "conductor": small}, conductor_counting=rule)
    found = result("pull-tension", made)["allowable_tension"]["value"]
    assert found == pytest.approx(0.008 * 211600 * counted)


def test_a_basket_grip_is_limited_by_what_it_holds() -> None:
    grip: dict[str, Any] = {"attachment": "basket_grip"}
    plain = ask("pull-tension", request(**grip))
    assert plain["result"]["allowable_tension"] == quantity(1000, "lbf")
    assert assumed(plain)["#/cables/0/cable/sheath"] == "nonmetallic"
    metal = result("pull-tension", request(cables={"sheath": "copper_or_aluminum"}, **grip), "units=metric")
    assert metal["allowable_tension"]["value"] == pytest.approx(4450)
    given = result("pull-tension", request(grip_limit=quantity(1500, "lbf"), **grip))
    assert given["allowable_tension"]["value"] == pytest.approx(1500)


def test_a_grip_limit_holds_without_an_attachment() -> None:
    verdict, found = judged("pull-tension", request(attachment=None, grip_limit=quantity(100, "lbf")))
    assert found["allowable_tension"]["value"] == pytest.approx(100)
    assert verdict == "violates"


def test_the_device_may_be_the_weakest() -> None:
    answer = ask("pull-tension", request(device_limit=quantity(2000, "lbf")))
    [broken] = [finding for finding in answer["findings"] if finding["code"] == "tension_exceeded"]
    assert broken["limit"]["value"] == pytest.approx(2000)
    assert "pulling device" in broken["citation"]


def test_a_bend_tighter_than_the_cable_bears_is_a_violation_above_1000_v() -> None:
    tight = [bend(1.5, 90), straight(100)]  # 18 in less half the bore is under 12 x 1.42 in
    medium = ask("pull-tension", request(sections=tight))
    [found] = [finding for finding in medium["findings"] if finding["code"] == "cable_bent_too_tightly"]
    assert found["severity"] == "violation"
    assert found["actual"]["value"] == pytest.approx(18 - 5.016 / 2)
    assert found["limit"]["value"] == pytest.approx(12 * 1.42)
    low = {"cable_type": "power_nonshielded_600_v", "shielding": None}
    assert "cable_bent_too_tightly" not in codes(ask("pull-tension", request(cables=low, sections=tight)))
    tighter = ask("pull-tension", request(cables=low, sections=[bend(1.1, 90)]))
    assert "bending_radius_not_judged" in codes(tighter, "caution"), "below 1000 V the maker's radius decides"
    assert tighter["verdict"] == "not_judged"
    assert ask("pull-plan", request(cables=low, sections=[bend(1.1, 90)]))["verdict"] == "not_judged"
    assert assumed(tighter)["#/cables/0/cable/shielding"] == "nonshielded"


@pytest.mark.parametrize(("inches", "within"), [(10, True), (11, False)])
def test_a_maker_s_bending_radius_decides(inches: float, within: bool) -> None:
    known = {"cable_type": "power_nonshielded_600_v", "bending_radius": quantity(inches, "in")}
    answer = ask("pull-tension", request(cables=known, sections=[bend(1.1, 90), straight(10)]))  # inner wall 10.69 in
    assert answer["verdict"] == ("complies" if within else "violates")
    assert ("cable_bent_too_tightly" in codes(answer, "violation")) is not within


def test_a_shielded_control_cable_is_held_to_the_radius_of_a_shielded_one() -> None:
    control = {"cable_type": "control_shielded_600_v", "shielding": None}
    answer = ask("pull-tension", request(cables=control, sections=[bend(1.5, 90), straight(10)]))
    assert assumed(answer)["#/cables/0/cable/shielding"] == "shielded"
    assert "bending_radius_not_judged" in codes(answer)


@pytest.mark.parametrize("gear", ["device_limit", "grip_limit"])
def test_a_limit_of_the_gear_holds_beside_that_of_the_maker(gear: str) -> None:
    limits: dict[str, Any] = {
        "device_limit": None,
        "allowable_tension": quantity(9_000, "lbf"),
        gear: quantity(300, "lbf"),
    }
    verdict, found = judged("pull-tension", request(**limits))
    assert found["allowable_tension"]["value"] == pytest.approx(300)
    assert verdict == "violates"


def test_an_individually_shielded_cable_follows_its_conductor() -> None:
    cable = {
        "count": 1,
        "arrangement": None,
        "diameter": quantity(3, "in"),
        "shielding": "individually_shielded",
        "shielded_conductor_diameter": quantity(1.3, "in"),
    }
    answer = ask("pull-tension", request(cables=cable, sections=[bend(1.5, 90)]))
    [found] = [finding for finding in answer["findings"] if finding["code"] == "cable_bent_too_tightly"]
    assert found["limit"]["value"] == pytest.approx(7 * 3)
    raised = problem("pull-tension", request(cables=cable | {"shielded_conductor_diameter": None}))
    assert raised.errors is not None
    assert raised.errors[0].pointer == "#/cables/0/cable/shielded_conductor_diameter"


@pytest.mark.parametrize(
    ("kind", "size", "made", "inches", "code"),
    [
        ("pvc_schedule_40", "5", "field_bend", 30, "field_bend_too_tight"),
        ("rmc", "5", "field_bend", 24, "field_bend_too_tight"),
        ("hdpe_schedule_40", "4", "field_bend", 60, "field_bend_too_tight"),
        ("pvc_schedule_40", "5", "factory_elbow", 24, "elbow_too_tight"),
        ("emt", "4", "factory_elbow", 16, "elbow_too_tight"),
    ],
)
def test_a_bend_is_held_against_the_radius_of_how_it_is_made(
    kind: str, size: str, made: str, inches: float, code: str
) -> None:
    conduit = {"kind": "listed", "type": kind, "trade_size": size}
    cable = {"count": 1, "arrangement": None}
    way = {"made": made}
    tight = ask("pull-tension", request(cables=cable, conduit=conduit, sections=[bend(inches / 12 - 0.01, 30) | way]))
    [found] = [finding for finding in tight["findings"] if finding["code"] == code]
    assert found["limit"] == quantity(inches, "in")
    assert found["pointer"] == "#/sections/0"
    assert found["severity"] == ("violation" if made == "field_bend" else "caution")
    wide = ask("pull-tension", request(cables=cable, conduit=conduit, sections=[bend(inches / 12, 30) | way]))
    assert code not in codes(wide)


def test_a_field_bend_below_the_code_radius_is_not_within_limits() -> None:
    answer = ask("pull-tension", request(sections=[straight(20), bend(2, 30) | {"made": "field_bend"}]))
    assert "field_bend_too_tight" in codes(answer, "violation")
    assert answer["verdict"] == "violates"
    assert answer["result"]["reversed"]["verdict"] == "violates"


@pytest.mark.parametrize(("kind", "made"), [("hdpe_schedule_40", "factory_elbow"), ("lfmc", "factory_elbow")])
def test_a_bend_without_a_row_says_so(kind: str, made: str) -> None:
    conduit = {"kind": "listed", "type": kind, "trade_size": "4"}
    sections = [straight(20), bend(6, 30) | {"made": made}]
    answer = ask("pull-tension", request(cables={"count": 1, "arrangement": None}, conduit=conduit, sections=sections))
    [found] = [finding for finding in answer["findings"] if finding["code"] == "bend_radius_not_on_file"]
    assert kind in found["message"]
    assert "section 2" in found["message"]


def test_weight_correction_on_straights_only_is_an_option() -> None:
    both = result("pull-tension", request())
    straights = result("pull-tension", request(weight_correction_in="straights_only"))
    assert straights["sections"][0] == both["sections"][0]
    assert straights["tension"]["value"] < both["tension"]["value"]


def test_the_working_shows_the_plain_figure_beside_each_bend() -> None:
    working = ask("pull-tension", request(), "working=true")["working"]
    symbols = [step["symbol"] for step in working]
    assert symbols.count("T2") == symbols.count("T2 plain") == symbols.count("T4 plain") == 1
    [plain] = [step for step in working if step["symbol"] == "T2 plain"]
    [exact] = [step for step in working if step["symbol"] == "T2"]
    assert plain["quantity"]["value"] == pytest.approx(960.940, abs=0.001)  # derived beside the exact form
    assert plain["quantity"]["value"] < exact["quantity"]["value"]
    assert "-0.04 percent" in plain["substituted"]


def test_a_vertical_bend_shows_its_working_too() -> None:
    sag = {
        "kind": "vertical_bend",
        "radius": quantity(3, "ft"),
        "entry_grade": quantity(-90, "deg"),
        "exit_grade": quantity(0, "deg"),
    }
    answer = ask("pull-tension", request(sections=[straight(30, -90), sag]), "working=true")
    assert any("dT/dphi" in step["formula"] for step in answer["working"])
    shown = {step["symbol"]: step["quantity"]["value"] for step in answer["working"]}
    assert shown["brake"] == pytest.approx(answer["result"]["brake_tension"]["value"])
    highest = max(shown["T1"], answer["result"]["sections"][1].get("highest_tension", quantity(0, "lbf"))["value"])
    assert shown["T/R 2"] == pytest.approx(highest / 3)
    assert shown["P2"] < shown["T/R 2"], "three cables share it"


def test_the_better_end_comes_with_its_reason() -> None:
    found = result("pull-tension", request())
    assert found["better_direction"] == "reversed"
    assert "91 from the other end" in found["better_reason"]
    turned = request(sections=list(reversed(request()["sections"])))
    reason = result("pull-tension", turned)["better_reason"]
    assert reason.startswith("Pull as given: as given the pull keeps its limits, from the other end it breaks a limit")


def test_both_clearances_are_given() -> None:
    found = result("pull-tension", request())
    assert found["clearance"]["value"] == pytest.approx(3.0353, abs=1e-4)
    assert found["handbook_clearance"]["value"] > found["clearance"]["value"]
    single = result("pull-tension", request(cables={"count": 1, "arrangement": None}))
    assert single["handbook_clearance"] == single["clearance"]


def test_a_range_of_friction_is_answered_in_one_call() -> None:
    found = result("pull-tension", request(friction_range={"low": 0.2, "high": 0.5}))
    low, expected, high = found["friction_cases"]
    assert [case["friction_coefficient"] for case in (low, expected, high)] == [0.2, 0.35, 0.5]
    assert expected["tension"]["value"] == pytest.approx(found["tension"]["value"])
    assert expected["reversed_tension"]["value"] == pytest.approx(found["reversed"]["tension"]["value"])
    assert expected["utilization_percent"] == pytest.approx(found["utilization_percent"])
    assert low["tension"]["value"] < expected["tension"]["value"] < high["tension"]["value"]
    alone = result("pull-tension", request(friction_coefficient=0.5))
    assert high["tension"]["value"] == pytest.approx(alone["tension"]["value"])
    assert low["verdict"] == "complies"
    assert high["verdict"] == "violates"
    assert expected["sidewall_pressure"] == found["sidewall_pressure"]
    along = request(sections=[straight(100)], friction_range={"low": 0.2, "high": 0.5})
    assert all("sidewall_pressure" not in case for case in result("pull-tension", along)["friction_cases"])


def test_a_range_must_hold_the_expected_friction() -> None:
    for low, high, member, bound in ((0.4, 0.5, "low", "maximum"), (0.1, 0.2, "high", "minimum")):
        [error] = faults("pull-tension", request(friction_range={"low": low, "high": high}))
        assert (error["code"], error["pointer"]) == ("range_misses_expected", f"#/friction_range/{member}")
        assert error[bound] == quantity(0.35, "1")


def test_a_high_friction_beyond_any_rope_is_refused_by_name() -> None:
    coil = [bend(3, 360)] * 200
    raised = problem(
        "pull-tension", request(friction_coefficient=0.01, friction_range={"low": 0.01, "high": 2.0}, sections=coil)
    )
    assert raised.errors is not None
    assert raised.errors[0].pointer == "#/friction_range/high"


def test_the_largest_values_comply_and_a_little_more_does_not() -> None:
    made = request(allowable_sidewall_pressure=quantity(1000, "lbf/ft"), find_largest=True)
    largest = result("pull-tension", made)["largest"]

    def complies(**changes: Any) -> bool:
        return verdict_of("pull-tension", made | changes) == "complies"

    friction = largest["friction_coefficient"]
    assert complies(friction_coefficient=friction)
    assert not complies(friction_coefficient=friction * 1.0001)
    incoming = largest["incoming_tension"]
    assert complies(incoming_tension=incoming)
    assert not complies(incoming_tension=quantity(incoming["value"] * 1.0001, "lbf"))
    sections = copy.deepcopy(made["sections"])
    sections[-1]["length"] = largest["last_straight"]
    assert complies(sections=sections)
    sections[-1]["length"] = quantity(largest["last_straight"]["value"] * 1.0001, "ft")
    assert not complies(sections=sections)


def test_a_straight_that_could_follow_a_last_bend() -> None:
    sections = [straight(100), bend(6, 90)]
    made = request(allowable_sidewall_pressure=quantity(1000, "lbf/ft"), find_largest=True, sections=sections)
    length = result("pull-tension", made)["largest"]["last_straight"]
    longer = made | {"sections": [*sections, straight(length["value"] * (1 - 1e-9))]}
    assert result("pull-tension", longer)["utilization_percent"] == pytest.approx(100, rel=1e-6)


def test_where_nothing_complies_nothing_is_largest() -> None:
    hopeless = request(incoming_tension=quantity(20000, "lbf"), find_largest=True)
    largest = result("pull-tension", hopeless)["largest"]
    assert "friction_coefficient" not in largest
    assert "last_straight" not in largest
    level = request(sections=[straight(10)], find_largest=True)
    assert result("pull-tension", level)["largest"]["friction_coefficient"] == 2.0
    downhill = request(sections=[straight(10, -60)], find_largest=True)
    assert "friction_coefficient" not in result("pull-tension", downhill)["largest"], "the brake is not known"
    braked = result("pull-tension", downhill | {"brake_limit": quantity(500, "lbf")})["largest"]
    assert braked["friction_coefficient"] == 2.0
    last = braked["last_straight"]["value"]
    longer = [straight(last * share, -60) for share in (1 - 1e-6, 1 + 1e-6)]
    verdicts = [
        verdict_of("pull-tension", downhill | {"brake_limit": quantity(500, "lbf"), "sections": [one]})
        for one in longer
    ]
    assert verdicts == ["complies", "violates"]


def test_a_profile_runs_from_the_entry_to_the_end() -> None:
    found = result("pull-tension", request(profile_spacing=quantity(10, "ft"), incoming_tension=quantity(50, "lbf")))
    points = found["profile"]
    assert points[0]["position"] == quantity(0.0, "ft")
    assert points[0]["tension"]["value"] == pytest.approx(50)
    assert points[-1]["tension"]["value"] == pytest.approx(found["tension"]["value"])
    positions = [point["position"]["value"] for point in points]
    assert positions == sorted(positions)
    assert max(b - a for a, b in pairwise(positions)) <= 10 + 1e-9
    joints = {round(section["tension_out"]["value"], 6) for section in found["sections"]}
    assert joints <= {round(point["tension"]["value"], 6) for point in points}


def test_a_profile_shows_the_inside_of_a_vertical_bend() -> None:
    crest = {
        "kind": "vertical_bend",
        "radius": quantity(30, "ft"),
        "entry_grade": quantity(20, "deg"),
        "exit_grade": quantity(-20, "deg"),
    }
    made = request(sections=[straight(50, 20), crest], profile_spacing=quantity(1, "ft"))
    found = result("pull-tension", made)
    assert len(found["profile"]) == 50 + 21 + 1
    assert found["profile"][-1]["tension"]["value"] == pytest.approx(found["tension"]["value"])


def test_a_profile_of_too_many_points_is_refused_with_a_spacing_that_works() -> None:
    made = request(sections=[straight(9_000)], profile_spacing=quantity(1, "ft"))
    [error] = faults("pull-tension", made)
    made["profile_spacing"] = error["minimum"]
    assert len(result("pull-tension", made)["profile"]) < 2000


def plan(sections: list[dict[str, Any]], positions: Any = None, **changes: Any) -> dict[str, Any]:
    made = request("pull-plan", sections=sections, box_positions=positions, **changes)
    return ask("pull-plan", made)


def test_a_run_too_long_for_one_pull_is_divided_once() -> None:
    answer = plan([straight(800), bend(3, 90), straight(800), bend(3, 90), straight(800)])
    found = answer["result"]
    assert answer["verdict"] == "complies"
    assert found["box_count"] == found["pull_count"] - 1 >= 1
    assert found["pulls"][0]["start_position"]["value"] == 0
    for one, other in pairwise(found["pulls"]):
        assert one["end_position"] == other["start_position"]
    assert found["highest_utilization_percent"] == max(pull["utilization_percent"] for pull in found["pulls"]) <= 100
    assert assumed(answer)["#/box_positions"] == "between_sections"


def test_a_pull_of_a_plan_is_the_pull_it_says() -> None:
    sections = [straight(300), bend(3, 90), straight(300), bend(3, 90), straight(300)]
    first, *_ = plan(sections)["result"]["pulls"]
    assert first["start_position"]["value"] == 0
    reached, index = 0.0, 0
    while reached < first["end_position"]["value"] - 1e-6:
        section = sections[index]
        reached += section["length"]["value"] if section["kind"] == "straight" else 3 * 3.141592653589793 / 2
        index += 1
    alone = result("pull-tension", request(sections=sections[:index]))
    way = alone if first["direction"] == "forward" else alone["reversed"]
    assert way["tension"]["value"] == pytest.approx(first["tension"]["value"])
    assert way["utilization_percent"] == pytest.approx(first["utilization_percent"])


def test_places_anywhere_on_straights_are_never_worse_than_their_ends() -> None:
    sections = [straight(2_000), bend(3, 90), straight(1_500)]
    ends = plan(sections)["result"]
    anywhere = plan(sections, {"kind": "anywhere", "spacing": quantity(25, "ft")})["result"]
    assert (anywhere["pull_count"], anywhere["highest_utilization_percent"]) <= (
        ends["pull_count"],
        ends["highest_utilization_percent"],
    )
    assert anywhere["pull_count"] >= 2


def test_listed_places_are_the_only_ones() -> None:
    places = {"kind": "listed", "positions": [quantity(1_000, "ft"), quantity(2_000, "ft")]}
    found = plan([straight(2_000), bend(3, 90), straight(1_500)], places)["result"]
    ends = {round(pull["end_position"]["value"], 6) for pull in found["pulls"][:-1]}
    assert ends <= {1_000.0, 2_000.0}
    assert ends


def test_a_place_in_a_bend_or_beyond_the_end_is_refused() -> None:
    places = {"kind": "listed", "positions": [quantity(102, "ft"), quantity(50, "ft"), quantity(900, "ft")]}
    raised = problem(
        "pull-plan", request("pull-plan", sections=[straight(100), bend(3, 90), straight(100)], box_positions=places)
    )
    assert raised.errors is not None
    assert [error.pointer for error in raised.errors] == [
        "#/box_positions/positions/0/value",
        "#/box_positions/positions/2/value",
    ]


def test_too_many_places_are_refused() -> None:
    made = request(
        "pull-plan", sections=[straight(5_000)], box_positions={"kind": "anywhere", "spacing": quantity(1, "ft")}
    )
    raised = problem("pull-plan", made)
    assert raised.errors is not None
    assert raised.errors[0].code == "too_many_positions"


def test_a_route_no_plan_can_save_names_the_bend() -> None:
    heavy = [straight(100), bend(3, 90), bend(3, 90), bend(3, 90), bend(3, 90), bend(3, 45), straight(100)]
    answer = plan(heavy)
    assert answer["verdict"] == "violates"
    assert answer["result"]["forbidding_pointer"] == "#/sections/1"
    [found] = [finding for finding in answer["findings"] if finding["code"] == "no_plan"]
    assert "bend in section 2" in found["message"]
    assert "405 deg of bends" in found["message"]


def test_a_straight_no_plan_can_save_is_named_too() -> None:
    answer = plan([straight(50_000)])
    assert answer["result"]["forbidding_pointer"] == "#/sections/0"
    assert any("straight in section 1" in finding["message"] for finding in answer["findings"])
    coil = plan([bend(3, 360), *[bend(3, 360)] * 99], friction_coefficient=2.0)
    assert any(
        "beyond any rope" in finding["message"] or "of bends" in finding["message"] for finding in coil["findings"]
    )


def test_two_hundred_sections_are_planned_without_delay() -> None:
    """Within tens of milliseconds of the processor: here against a bound ten times that, for a machine that is slow."""
    sections = [straight(40) if index % 2 == 0 else bend(5, 15) for index in range(200)]
    began = time.process_time()
    answer = plan(sections)
    assert time.process_time() - began < 1.0
    assert answer["verdict"] == "complies"
    found = answer["result"]
    assert found["pull_count"] >= 5


def test_a_long_plan_shows_each_pull_in_the_working() -> None:
    made = request("pull-plan", sections=[straight(2_000), bend(3, 90), straight(1_500)], box_positions=None)
    answer = ask("pull-plan", made, "working=true")
    shown = [step["symbol"] for step in answer["working"] if step["symbol"].startswith("pull ")]
    assert len(shown) == answer["result"]["pull_count"]
