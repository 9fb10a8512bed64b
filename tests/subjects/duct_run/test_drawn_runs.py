"""Runs as a drawing has them, each worked by hand; all of it derived."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import ask, codes, faults, quantity
from tests.subjects.duct_run.runs import BORE, BRIDGE, MANHOLES, POLE, buried, listed, straight, upright_bend


def run_of(request: dict[str, Any], query: str = "") -> dict[str, Any]:
    found: dict[str, Any] = ask("duct-run", request, query)["result"]
    return found


def line_of(result: dict[str, Any], item: str) -> dict[str, Any]:
    line: dict[str, Any]
    [line] = [one for one in result["takeoff"]["lines"] if one["item"] == item]
    return line


def test_lengths_to_intersections_lose_the_tangents_of_their_bends() -> None:
    # each 30 deg sweep of 25 ft takes 25 tan 15 deg = 6.699 ft of either side, and is 13.090 ft long itself
    tangent, arc = 25 * math.tan(math.radians(15)), 25 * math.radians(30)
    plan = 160 + 120 + 140 - 4 * tangent + 2 * arc
    found = run_of(MANHOLES)
    assert plan == pytest.approx(419.385, abs=5e-4)
    assert found["plan_length"]["value"] == pytest.approx(plan)
    as_tangents = run_of({**MANHOLES, "straight_lengths": "tangent", "profile": _stretched(420 + 2 * arc)})
    assert as_tangents["plan_length"]["value"] == pytest.approx(420 + 2 * arc)


def _stretched(length: float) -> dict[str, Any]:
    profile: dict[str, Any] = copy.deepcopy(MANHOLES["profile"])
    profile["points"][-1]["station"] = quantity(length, "ft")
    return profile


def test_a_profile_gives_grades_and_cover() -> None:
    found = run_of(MANHOLES)
    [stretch] = found["stretches"]
    # 14.2 - 11.0, 13.1 - 10.2 and 11.9 - 8.9 ft of earth: 2.9 ft is the least plumb, and square to the envelope, which
    # falls 1.3 ft in the last 259.385, the least of all; 13.8 kV in a street asks for 24 in, and 4 in of concrete count
    square = 2.9 * 12 * math.cos(math.atan(1.3 / 259.385))
    assert stretch["cover"]["margin"]["value"] == pytest.approx(square + 4 - 24)
    # four tiers of 5.563 in, two 3 in apart and the top one 4 in above power, with 4 in above and below
    height = 4 * 5.563 + 2 * 3 + 4 + 8
    # plumb, on the fall of 0.8 ft in the 160 where it is deepest
    plumb = height / math.cos(math.atan(0.8 / 160))
    assert stretch["trench"]["depth"]["value"] == pytest.approx(3.2 * 12 + plumb)
    # along the slope of 0.8 in 160 ft and of 1.3 ft in the rest, but for the two level bends
    first, rest = 160 - 25 * math.tan(math.radians(15)), 419.385 - 160
    assert found["length"]["value"] - found["plan_length"]["value"] == pytest.approx(
        first * (0.8 / 160) ** 2 / 2 + rest * (1.3 / 259.385) ** 2 / 2, rel=0.15
    )
    assert stretch["groundwater_flotation"]["concrete_weight_per_length"]["value"] > 0


def test_alike_cables_are_pulled_once_and_told_of_every_circuit() -> None:
    found = run_of(MANHOLES)
    tensions = {circuit["pulls"][0]["pull"]["tension"]["value"] for circuit in found["circuits"]}
    assert len(found["circuits"]) == 3
    assert len(tensions) == 1
    # 3 x (419.39 + 60) ft each, up to 480 ft
    assert line_of(found, "cable")["order_quantity"]["value"] == 3 * 3 * 480


def test_a_bore_is_as_long_as_its_curves_and_lies_lower_at_its_end() -> None:
    along = 75 + 300 * math.radians(12) + 115 + 300 * math.radians(10) + 75
    plan = 75 * math.cos(math.radians(12)) + 300 * math.sin(math.radians(12)) + 115
    plan += 300 * math.sin(math.radians(10)) + 75 * math.cos(math.radians(10))
    assert along == pytest.approx(380.19, abs=5e-3)
    assert plan == pytest.approx(376.69, abs=5e-3)
    answer = ask("duct-run", BORE)
    bore = answer["result"]["stretches"][1]
    assert (bore["length"]["value"], bore["plan_length"]["value"]) == (pytest.approx(along), pytest.approx(plan))
    assert line_of(answer["result"], "bore")["exact_quantity"]["value"] == pytest.approx(along)  # as it is drilled
    assert line_of(answer["result"], "bore_pit")["exact_quantity"]["value"] == 2
    # in 75 lb/ft3 of fluid: what 3 ducts of 6.625 in displace, less their walls of 0.280 in at 59.3 lb/ft3 and water of
    # 62.4 lb/ft3 in bores of 6.031 in
    outer, inner, bored = (math.pi / 4 * (diameter / 12) ** 2 for diameter in (6.625, 6.065, 6.031))
    uplift = 3 * (75 * outer - 59.3 * (outer - inner) - 62.4 * bored)
    assert bore["bore_uplift_per_length"] == {"value": pytest.approx(uplift), "unit": "lbf/ft"}
    [floats] = [one for one in answer["findings"] if one["code"] == "ducts_float_in_fluid"]
    assert "station" not in floats["message"]
    assert "tie_downs_not_counted" not in codes(answer), "nothing is tied down in a bore"
    assert not [place for one in answer["assumptions"] for place in one["pointers"] if "station" in place]
    assert answer["verdict"] == "not_judged"
    assert "drawing_in_not_judged" in codes(answer)
    assert "bore_is_tight" not in codes(answer), "22 in is 1.54 times 14.3 in"
    tight = copy.deepcopy(BORE)
    tight["stretches"][1]["setting"]["bore_diameter"] = quantity(21.4, "in")
    assert "bore_is_tight" in codes(ask("duct-run", tight))


@pytest.mark.parametrize(
    ("bundle", "bore", "member", "code", "bound"),
    [
        (22.5, 22, "bundle_diameter", "bundle_wider_than_bore", {"maximum": 22}),
        # no circle holds three ducts of 6.625 in that does not hold two of them side by side
        (13.2, 22, "bundle_diameter", "narrower_than_the_ducts", {"minimum": 2 * 6.625}),
        (None, 13.2, "bore_diameter", "narrower_than_the_ducts", {"minimum": 2 * 6.625}),
    ],
)
def test_what_no_bore_can_hold_is_refused(
    bundle: float | None, bore: float, member: str, code: str, bound: dict[str, float]
) -> None:
    request = copy.deepcopy(BORE)
    setting = request["stretches"][1]["setting"]
    setting["bore_diameter"] = quantity(bore, "in")
    del setting["bundle_diameter"]
    if bundle is not None:
        setting["bundle_diameter"] = quantity(bundle, "in")
    [found] = faults("duct-run", request)
    assert (found["pointer"], found["code"]) == (f"#/stretches/1/setting/{member}/value", code)
    [(name, value)] = bound.items()
    assert found[name] == {"value": pytest.approx(value), "unit": "in"}


def test_a_bore_without_its_curve_is_found() -> None:
    sharp = copy.deepcopy(BORE)
    sharp["stretches"][0]["sections"] = [straight(60)]
    sharp["stretches"][1]["sections"][0]["grade"] = quantity(-12, "deg")
    assert "meets_bore_without_curve" in codes(ask("duct-run", sharp))
    assert "meets_bore_without_curve" not in codes(ask("duct-run", BORE))


def test_conduit_on_a_bridge_moves_by_the_difference_to_the_deck() -> None:
    # RTRC at 1.5e-5 less 6.5e-6 a degF over 120 degF: of 150 ft on either side of the joint
    answer = ask("duct-run", BRIDGE)
    bridge = answer["result"]["stretches"][1]
    moved = [run["length_change"]["value"] for run in bridge["expansion"]["runs"]]
    assert moved == pytest.approx([(1.5e-5 - 6.5e-6) * 120 * 150 * 12] * 2, rel=1e-6)
    assert bridge["expansion"]["fitting_count"] == 2
    # 6 ducts with those and one at each joint of the structure; hangers carry all ducts
    assert line_of(answer["result"], "expansion_fitting")["exact_quantity"]["value"] == 6 * (2 + 2)
    straps = sum(one["support_count"] for one in bridge["supports"])
    assert line_of(answer["result"], "hanger")["exact_quantity"]["value"] == straps
    assert {"crosses_structural_joint", "ducts_change_place", "joints_not_counted"} <= set(codes(answer))


def test_a_joint_of_the_structure_that_moves_beyond_its_fitting_is_a_violation() -> None:
    wide = copy.deepcopy(BRIDGE)
    wide["stretches"][1]["setting"]["structure_joints"][1]["movement"] = quantity(7.3, "in")
    answer = ask("duct-run", wide)
    [found] = [one for one in answer["findings"] if one["code"] == "joint_moves_beyond_travel"]
    assert found["pointer"] == "#/stretches/1/setting/structure_joints/1"
    assert (found["actual"]["value"], found["limit"]["value"]) == (7.3, pytest.approx(0.9 * 8))
    assert answer["verdict"] == "violates"


def test_a_light_pole_takes_a_dozen_lines_and_every_line_of_its_takeoff_is_right() -> None:
    # 24 in to the duct of 1.315 in; elbows of 5.75 in; legs up to 4 and 2 ft above grade
    depth = 24 + 1.315 / 2
    legs = [(depth + height * 12 - 5.75) / 12 for height in (4, 2)]
    straight_length = 140 - 2 * 5.75 / 12 + sum(legs)
    elbow = 5.75 / 12 * math.pi / 2
    found = run_of(POLE)
    assert found["length"]["value"] == pytest.approx(straight_length + 2 * elbow)
    assert found["plan_length"]["value"] == pytest.approx(140)
    bank = 12 / 12 * (24 + 1.315 + 3) / 12 * 140 / 27
    bedding = 12 / 12 * 3 / 12 * 140 / 27
    backfill = bank - bedding - math.pi / 4 * (1.315 / 12) ** 2 * 140 / 27
    spoil = 1.25 * (bank - backfill / 0.9)
    cable = straight_length + 2 * elbow + 20
    by_hand = {
        "excavation": (bank, None),
        "conduit": (straight_length, 160),  # with 3 percent 152.6 ft: 8 sticks
        "elbow": (2, 2),
        "terminal_adapter": (1, 1),
        "end_bell": (1, 1),
        "joint": (8 + 2 - 1 + 2, None),
        "solvent_cement": (11 / 125, 1),
        "bedding": (bedding, 2),
        "native_backfill": (backfill, None),
        "warning_tape": (147, 147),
        "spoil": (spoil, None),
        "haul_load": (spoil / 10, 1),
        "strap": (2, 2),
        "mandrel_pass": (1, None),
        "pull_cord": (cable, 170),
        "lubricant": (0.0015 * 1.029 * (cable - 20), 1),
        "cable": (3 * cable, 3 * 170),
        "pulling_eye": (1, 1),
    }
    lines = {one["item"]: one for one in found["takeoff"]["lines"]}
    assert list(lines) == list(by_hand)
    for item, (exact, order) in by_hand.items():
        assert lines[item]["exact_quantity"]["value"] == pytest.approx(exact, rel=2e-3), item
        assert lines[item].get("order_quantity", {}).get("value") == order, item


def test_risers_are_told_apart_and_may_be_of_other_conduit() -> None:
    request = copy.deepcopy(POLE)
    request["start"] |= {"riser_conduit_type": "pvc_schedule_80", "name": "panel"}
    request["site"] = {"temperatures": BRIDGE["site"]["temperatures"] | {"direct_sun": True}}
    answer = ask("duct-run", request)
    [stretch] = answer["result"]["stretches"]
    kinds = [(one.get("riser"), one["conduit_type"], one["duct_count"]) for one in stretch["conduits"]]
    assert kinds == [("panel", "pvc_schedule_80", 1), (None, "pvc_schedule_40", 1)]
    # the joint between the two is counted once, with the line
    assert [one["joints"]["joint_count"] for one in stretch["conduits"]] == [1 + 1, 1 + 8 - 1 + 1 + 1]
    assert [one["name"] for one in stretch["risers"]] == ["panel", "end"]
    assert [one["supports"]["support_count"] for one in stretch["risers"]] == [1, 1]
    # 4 ft over 120 + 30 degF
    [moved] = [run["length_change"]["value"] for run in stretch["risers"][0]["expansion"]["runs"]]
    assert moved == pytest.approx(3.38e-5 * 150 * 48, rel=1e-6)
    found = [one for one in answer["findings"] if one["code"] == "emerges_from_grade"]
    assert found[0]["message"].startswith("The riser at panel, the riser at end: ")


def test_without_temperatures_or_voltage_nothing_is_told_as_complying() -> None:
    answer = ask("duct-run", POLE)
    assert answer["verdict"] == "not_judged"
    assert "movement_not_judged" in codes(answer)
    request = copy.deepcopy(POLE)
    del request["circuits"][0]["voltage"]
    assert "cover_not_judged" in codes(ask("duct-run", request))


def test_ducts_that_miss_each_other_at_a_change_of_setting_are_found() -> None:
    request = copy.deepcopy(BRIDGE)
    request["stretches"] = [
        {"name": "earth", "setting": buried(30), "length": quantity(50, "ft")},
        {
            "name": "concrete",
            "setting": {"kind": "encased", "cover": quantity(30, "in")},
            "length": quantity(50, "ft"),
        },
    ]
    answer = ask("duct-run", request)
    [found] = [one for one in answer["findings"] if one["code"] == "ducts_miss_each_other"]
    assert found["actual"]["value"] == pytest.approx(3)
    assert found["message"].startswith("Earth to concrete: ")
    request["stretches"][1]["setting"]["cover"] = quantity(27, "in")
    assert "ducts_miss_each_other" not in codes(ask("duct-run", request))


def test_ducts_that_leave_the_ground_in_the_conduit_they_lie_in_are_found() -> None:
    request = copy.deepcopy(BRIDGE)
    request["stretches"] = [
        {"setting": buried(30), "sections": [straight(50), upright_bend(90, 3)]},
        {"setting": {"kind": "above_ground"}, "sections": [straight(10)]},
    ]
    assert "emerges_in_the_same_conduit" in codes(ask("duct-run", request))
    request["stretches"][1]["conduit_type"] = "pvc_schedule_80"
    assert "emerges_in_the_same_conduit" not in codes(ask("duct-run", request))


def test_practice_of_a_stretch_is_laid_over_that_of_the_run() -> None:
    request = copy.deepcopy(MANHOLES)
    request["digging"] = {"soil": "clay", "tape_overlap_percent": 10}
    request["stretches"][0]["digging"] = {"soil": "sand"}
    [stretch] = run_of(request)["stretches"]
    plain = run_of({**MANHOLES, "digging": {"soil": "sand"}})["stretches"][0]
    assert stretch["trench"]["spoil_volume"] == plain["trench"]["spoil_volume"]
    tapes = [one["trench"]["warning_tape_length"]["value"] for one in (stretch, plain)]
    assert tapes[0] / tapes[1] == pytest.approx(1.10 / 1.05)


def test_a_pull_that_breaks_a_limit_says_where_a_pull_point_would_help() -> None:
    request = {
        "bank": {"conduit": listed("4"), "tiers": [1]},
        "circuits": [{"name": "C", "voltage": quantity(480, "V"), "cables": BORE["circuits"][0]["cables"]}],
        "start": {"kind": "handhole", "name": "A"},
        "stretches": [{"setting": buried(30), "sections": [straight(900), *_turns(3), straight(900)]}],
        "end": {"kind": "handhole", "name": "B"},
    }
    answer = ask("duct-run", request)
    [pull] = answer["result"]["circuits"][0]["pulls"]
    assert pull["verdict"] == "violates"
    assert pull["plan"]["box_count"] >= 1
    assert {"pull_point_would_help", "no_plan"} & set(codes(answer))


def _turns(count: int) -> list[dict[str, Any]]:
    bends = [
        {"kind": "horizontal_bend", "angle": quantity(90, "deg"), "radius": quantity(10, "ft")} for _ in range(count)
    ]
    return [one for bend in bends for one in (bend, straight(20))]


def test_metric_answers_tell_the_takeoff_in_metric_units() -> None:
    found = run_of(POLE, "units=metric")
    assert line_of(found, "excavation")["exact_quantity"]["unit"] == "m3"
    assert line_of(found, "conduit")["exact_quantity"]["unit"] == "m"
    assert line_of(found, "solvent_cement")["exact_quantity"]["unit"] == "L"
    us = line_of(run_of(POLE), "excavation")["exact_quantity"]["value"]
    assert line_of(found, "excavation")["exact_quantity"]["value"] == pytest.approx(us * 0.9144**3)


def test_ducts_that_are_there_already_take_cable_cord_and_proofing_alone() -> None:
    request = copy.deepcopy(POLE)
    request["start"] = request["end"] = {"kind": "handhole"}
    request["start"] = {"kind": "handhole", "name": "A"}
    request["end"] = {"kind": "handhole", "name": "B"}
    request["stretches"][0]["setting"] = {"kind": "existing"}
    answer = ask("duct-run", request)
    items = {one["item"] for one in answer["result"]["takeoff"]["lines"]}
    assert items == {"mandrel_pass", "pull_cord", "lubricant", "cable", "pulling_eye"}
    assert "occupied_ducts" in [one["code"] for one in answer["cautions"]]
