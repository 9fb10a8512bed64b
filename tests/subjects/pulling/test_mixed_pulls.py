"""Pulls of mixed cables, of wire out of the tables, through conduits that change, and what they are cautioned of."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import ask, codes, faults, problem, quantity, result, value_of, verdict_of

STRAIGHT = {"kind": "straight", "length": quantity(200, "ft"), "grade": quantity(0, "deg")}
ELBOW = {"kind": "horizontal_bend", "radius": quantity(3, "ft"), "angle": quantity(90, "deg")}
PHASE = {"kind": "listed", "insulation": "THWN-2", "size": "500 kcmil", "material": "copper"}
GROUND = {"kind": "listed", "insulation": "THWN-2", "size": "3 AWG", "material": "copper"}
FEEDER = [{"count": 3, "cable": PHASE}, {"count": 1, "cable": GROUND}]


def request(cables: list[dict[str, Any]], size: str = "4", **changes: Any) -> dict[str, Any]:
    made: dict[str, Any] = {
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": size},
        "cables": copy.deepcopy(cables),
        "friction_coefficient": 0.35,
        "incoming_tension": quantity(0, "lbf"),
        "sections": [STRAIGHT],
    }
    return made | changes


def assumed(answer: dict[str, Any]) -> dict[str, Any]:
    return {place: value_of(one) for one in answer["assumptions"] for place in one["pointers"]}


def test_three_phases_and_a_ground_are_one_pull() -> None:
    """By hand: the larger three of d 0.949 in, in D 3.998 in, in the cradle: s = d / (D - d), factor 1 + 4/3 s^2."""
    answer = ask("pull-tension", request(FEEDER))
    found = answer["result"]
    masses = {field: value["value"] for field, value in assumed(answer).items() if field.endswith("mass_per_length")}
    assert masses["#/cables/0/cable/mass_per_length"] == pytest.approx(1.70, abs=0.05)
    weight = 3 * masses["#/cables/0/cable/mass_per_length"] + masses["#/cables/1/cable/mass_per_length"]
    diameter = 0.949
    s = diameter / (3.998 - diameter)
    assert found["weight_correction_factor"] == pytest.approx(1 + 4 / 3 * s * s, rel=1e-9)
    assert found["tension"]["value"] == pytest.approx(200 * weight * 0.35 * (1 + 4 / 3 * s * s))
    assert found["allowable_tension"]["value"] == pytest.approx(0.008 * 500e3 * 2), "the ground adds nothing"
    assert found["jam_ratio"] == pytest.approx(3.998 / diameter)
    triangle = 3.998 / 2 - 1.366 * diameter + (3.998 - diameter) / 2 * math.sqrt(1 - s * s)
    assert found["clearance"]["value"] == pytest.approx(triangle, abs=1e-4), "less than over the cradle"


def test_a_maker_s_mass_takes_the_place_of_the_derived_one() -> None:
    lines = [{"count": 3, "cable": PHASE | {"mass_per_length": quantity(1.9, "lb/ft")}}]
    answer = ask("pull-tension", request(lines))
    assert "#/cables/0/cable/mass_per_length" not in assumed(answer)
    factor = answer["result"]["weight_correction_factor"]
    assert answer["result"]["tension"]["value"] == pytest.approx(200 * 5.7 * 0.35 * factor)


def test_a_factor_is_assumed_of_many_cables_only_where_it_is_the_one_that_counts() -> None:
    def bare(size: str, count: int, mass: float) -> dict[str, Any]:
        cable = {"kind": "bare", "size": size, "material": "copper", "mass_per_length": quantity(mass, "lb/ft")}
        return {"count": count, "cable": cable}

    power = {"kind": "measured", "diameter": quantity(1.52, "in"), "mass_per_length": quantity(1.61, "lb/ft")}
    lines = [bare("250 kcmil", 1, 2.5), {"count": 3, "cable": power}, bare("4/0 AWG", 4, 0.9)]
    tight = ask("pull-tension", request(lines, size="3-1/2"))
    assert tight["result"]["weight_correction_factor"] > 1.4
    assert "#/weight_correction_factor" not in assumed(tight)
    loose = ask("pull-tension", request(lines, size="5"))
    assert loose["result"]["weight_correction_factor"] == assumed(loose)["#/weight_correction_factor"] == 1.4


def test_of_mixed_metals_all_are_held_to_the_lowest_stress() -> None:
    """By hand: two coppers and an aluminum of 500 kcmil stretch alike; 39.2 N/mm2 x 253.35 mm2 x 2 of 3."""
    aluminum = PHASE | {"material": "aluminum"}
    answer = ask("pull-tension", request([{"count": 2, "cable": PHASE}, {"count": 1, "cable": aluminum}]))
    newtons = answer["result"]["allowable_tension"]["value"] * 4.4482216152605
    assert newtons == pytest.approx(39.2 * 500 * 0.50670748 * 2, rel=1e-6)


def test_compact_aluminum_wire_bears_the_lowest_published_stress_of_its_alloy() -> None:
    wire = {"kind": "compact", "insulation": "XHHW-2", "size": "500 kcmil", "material": "aluminum"}
    answer = ask("pull-tension", request([{"count": 1, "cable": wire}]))
    assert assumed(answer)["#/cables/0/cable/temper"] == "aa_8000"
    assert answer["result"]["allowable_tension"]["value"] == pytest.approx(39.2 * 253.354 / 4.4482216, rel=1e-5)
    [source] = [one["citation"] for one in answer["assumptions"] if one["pointers"][0].endswith("temper")]
    assert "building wire" in source


def test_a_bare_ground_has_a_mass_of_its_own() -> None:
    bare = {"kind": "bare", "size": "4/0 AWG", "material": "copper"}
    answer = ask("pull-tension", request([{"count": 1, "cable": bare}]))
    assert assumed(answer)["#/cables/0/cable/mass_per_length"]["value"] == pytest.approx(0.653, abs=0.001)


@pytest.mark.parametrize(
    ("cable", "pointer", "code"),
    [
        ({"kind": "listed", "insulation": "THWN-2", "size": "500 kcmil"}, "material", "missing"),
        (
            {"kind": "listed", "insulation": "THWN-2", "size": "2000 kcmil", "material": "copper"},
            "size",
            "conductor_not_listed",
        ),
        ({"kind": "measured", "diameter": quantity(1, "in")}, "mass_per_length", "missing"),
        ({"kind": "multiconductor", "diameter": quantity(1, "in")}, "mass_per_length", "missing"),
    ],
)
def test_a_cable_without_a_mass_and_without_a_row_is_refused_by_its_member(
    cable: dict[str, Any], pointer: str, code: str
) -> None:
    raised = problem("pull-tension", request([{"count": 1, "cable": cable}]))
    assert raised.errors is not None
    assert [(error.pointer, error.code) for error in raised.errors] == [(f"#/cables/0/cable/{pointer}", code)]


def test_a_mixed_set_that_does_not_pass_names_the_largest_that_would() -> None:
    cable = {"kind": "measured", "diameter": quantity(1.9, "in"), "mass_per_length": quantity(2, "lb/ft")}
    small = {"kind": "measured", "diameter": quantity(0.5, "in"), "mass_per_length": quantity(0.3, "lb/ft")}
    lines = [{"count": 1, "cable": small}, {"count": 3, "cable": cable}]
    [error] = faults("pull-tension", request(lines))
    assert (error["pointer"], error["code"]) == ("#/cables/1/cable/diameter/value", "cables_do_not_pass")
    largest = error["maximum"]
    assert largest["value"] == pytest.approx(3.998 / 2.1547, rel=1e-4)
    lines[1]["cable"] = cable | {"diameter": largest}
    assert ask("pull-tension", request(lines))["result"]["tension"]["value"] > 0


def test_a_hundred_cables_that_cannot_be_laid_are_refused() -> None:
    wire = {"kind": "listed", "insulation": "THWN-2", "size": "4 AWG", "material": "copper"}
    raised = problem("pull-tension", request([{"count": 100, "cable": wire}], size="3"))
    assert raised.errors is not None
    assert raised.errors[0].pointer == "#/cables/0/cable/size"
    many = problem("pull-tension", request([{"count": 60, "cable": wire}] * 2, size="6"))
    assert many.errors is not None
    assert many.errors[0].code == "too_many_cables"


def test_the_weakest_cable_sets_the_sidewall_pressure() -> None:
    lines = [
        {"count": 3, "cable": PHASE | {"cable_type": "power_nonshielded_600_v"}},
        {"count": 1, "cable": GROUND | {"cable_type": "instrumentation"}},
    ]
    assert result("pull-tension", request(lines))["allowable_sidewall_pressure"] == quantity(100, "lbf/ft")


def test_one_cable_of_unknown_conductor_leaves_the_tension_not_judged() -> None:
    fiber = {"kind": "multiconductor", "diameter": quantity(0.5, "in"), "mass_per_length": quantity(0.1, "lb/ft")}
    answer = ask("pull-tension", request([*FEEDER, {"count": 1, "cable": fiber}]))
    assert answer["verdict"] == "not_judged"
    [found] = [one for one in answer["findings"] if one["code"] == "tension_not_judged"]
    assert found["pointer"] == "#/cables/2/cable/conductor"
    given = request([*FEEDER, {"count": 1, "cable": fiber}], allowable_tension=quantity(5_000, "lbf"))
    assert verdict_of("pull-tension", given) == "complies"


def test_schedule_80_up_the_wall_has_its_own_bore_and_the_worst_governs() -> None:
    eighty = {"kind": "listed", "type": "pvc_schedule_80", "trade_size": "4"}
    riser = STRAIGHT | {"conduit": eighty}
    mixed = result("pull-tension", request(FEEDER, sections=[STRAIGHT, riser]))
    inside = result("pull-tension", request(FEEDER, conduit=eighty))
    outside = result("pull-tension", request(FEEDER))
    assert mixed["weight_correction_factor"] == inside["weight_correction_factor"] > outside["weight_correction_factor"]
    assert mixed["clearance"] == inside["clearance"]
    steps = [section["tension_out"]["value"] - section["tension_in"]["value"] for section in mixed["sections"]]
    assert steps == pytest.approx([outside["tension"]["value"], inside["tension"]["value"]])
    gallons = [found["lubricant_volume"]["value"] for found in (inside, outside)]
    assert mixed["lubricant_volume"]["value"] == pytest.approx(sum(gallons))


def test_a_bore_too_small_in_one_section_is_named_there() -> None:
    small = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "1-1/2"}
    raised = problem("pull-tension", request(FEEDER, sections=[STRAIGHT, STRAIGHT | {"conduit": small}]))
    assert raised.errors is not None
    [error] = raised.errors
    assert "inside diameter of section 2, 1.59 in" in error.message


def test_a_section_may_have_its_own_friction() -> None:
    plain = result("pull-tension", request(FEEDER, sections=[STRAIGHT, STRAIGHT]))
    rough = result("pull-tension", request(FEEDER, sections=[STRAIGHT, STRAIGHT | {"friction_coefficient": 0.7}]))
    assert rough["tension"]["value"] == pytest.approx(plain["tension"]["value"] * 1.5)


def test_a_section_s_own_friction_is_judged_too() -> None:
    answer = ask("pull-tension", request(FEEDER, sections=[STRAIGHT, STRAIGHT | {"friction_coefficient": 0.02}]))
    [found] = [one for one in answer["findings"] if one["code"] == "friction_below_published"]
    assert found["pointer"] == "#/sections/1/friction_coefficient"


def test_the_jam_ratio_is_that_of_the_three_that_govern() -> None:
    phase = {"kind": "measured", "diameter": quantity(1.4, "in"), "mass_per_length": quantity(2, "lb/ft")}
    ground = phase | {"diameter": quantity(1.2, "in")}
    answer = ask("pull-tension", request([{"count": 3, "cable": phase}, {"count": 1, "cable": ground}]))
    assert answer["result"]["jam_ratio"] == pytest.approx(3.998 / 1.4)
    [found] = [one for one in answer["findings"] if one["code"] == "jam_ratio_in_band"]
    assert found["actual"] == quantity(answer["result"]["jam_ratio"], "1")


def test_the_arrangement_that_is_not_sure_is_told_as_assumed_and_can_be_put_back() -> None:
    answer = ask("pull-tension", request(FEEDER))
    assert assumed(answer)["#/arrangement"] == "worst_case"
    back = ask("pull-tension", request(FEEDER, arrangement="worst_case"))
    assert back["result"] == answer["result"]
    assert "#/arrangement" not in assumed(back)


def test_every_fault_of_a_pull_comes_at_once() -> None:
    cable = {
        "kind": "measured",
        "diameter": quantity(1, "in"),
        "mass_per_length": quantity(1, "lb/ft"),
        "conductor": {"material": "copper", "size": "4/0 AWG", "temper": "hard", "count": 1},
        "shielding": "individually_shielded",
    }
    made = request([{"count": 3, "cable": cable}], arrangement="diamond", sections=[STRAIGHT, ELBOW])
    raised = problem("pull-tension", made)
    assert raised.errors is not None
    assert {error.pointer for error in raised.errors} == {
        "#/arrangement",
        "#/cables/0/cable/conductor/temper",
        "#/cables/0/cable/shielded_conductor_diameter",
    }


def test_the_feed_off_the_reel_is_twenty_metres_of_friction() -> None:
    """GB 50217-2007: the friction of about 20 m of cable stands at the entry."""
    made = request(FEEDER)
    del made["incoming_tension"]
    answer = ask("pull-tension", made)
    assert assumed(answer)["#/feed_length"]["value"] == pytest.approx(20 / 0.3048)
    weight = sum(
        count * assumed(answer)[f"#/cables/{line}/cable/mass_per_length"]["value"] for line, count in enumerate((3, 1))
    )
    assert answer["result"]["incoming_tension"]["value"] == pytest.approx(0.35 * weight * 20 / 0.3048)
    assert answer["result"]["sections"][0]["tension_in"] == answer["result"]["incoming_tension"]
    short = result("pull-tension", made | {"feed_length": quantity(10, "m")})["incoming_tension"]["value"]
    assert short == pytest.approx(answer["result"]["incoming_tension"]["value"] / 2)
    raised = problem("pull-tension", made | {"feed_length": quantity(1, "m"), "incoming_tension": quantity(1, "lbf")})
    assert raised.errors is not None
    assert raised.errors[0].pointer == "#/feed_length"


def test_triplexed_cables_in_the_jam_band_are_a_note() -> None:
    cable = {"kind": "measured", "diameter": quantity(1.35, "in"), "mass_per_length": quantity(2, "lb/ft")}
    loose = ask("pull-tension", request([{"count": 3, "cable": cable}]))
    assert "jam_ratio_in_band" in codes(loose, "caution")
    twisted = ask("pull-tension", request([{"count": 3, "cable": cable}], arrangement="triplexed"))
    assert "triplexed_in_jam_band" in codes(twisted, "note")
    assert "jam_ratio_in_band" not in codes(twisted)
    assert twisted["result"]["arrangement"] == "triplexed"


def test_two_cables_with_almost_no_room_wedge() -> None:
    cable = {"kind": "measured", "diameter": quantity(1.95, "in"), "mass_per_length": quantity(3, "lb/ft")}
    answer = ask("pull-tension", request([{"count": 2, "cable": cable}]))
    assert "two_cables_wedge" in codes(answer, "caution")
    assert answer["result"]["weight_correction_factor"] > 2


def test_friction_below_every_published_one_is_a_caution() -> None:
    assert "friction_below_published" in codes(ask("pull-tension", request(FEEDER, friction_coefficient=0.09)))
    assert "friction_below_published" not in codes(ask("pull-tension", request(FEEDER, friction_coefficient=0.1)))


def test_an_assumed_friction_tells_how_high_a_dry_pull_may_go() -> None:
    made = request(FEEDER)
    del made["friction_coefficient"]
    [found] = [one for one in ask("pull-tension", made)["findings"] if one["code"] == "dry_friction_is_higher"]
    assert found["limit"] == quantity(0.9, "1")
    assert "dry_friction_is_higher" not in codes(ask("pull-tension", request(FEEDER)))


@pytest.mark.parametrize(
    ("feet", "kind", "made", "found"),
    [
        (140, "pvc_schedule_40", "factory_elbow", False),
        (150, "pvc_schedule_40", "factory_elbow", True),
        (150, "pvc_schedule_40", "field_bend", False),
        (150, "rmc", "factory_elbow", False),
    ],
)
def test_the_rope_of_a_long_pull_may_cut_pvc_elbows(feet: float, kind: str, made: str, found: bool) -> None:
    sections = [STRAIGHT | {"length": quantity(feet, "ft")}, ELBOW | {"made": made}]
    conduit = {"kind": "listed", "type": kind, "trade_size": "4"}
    answer = ask("pull-tension", request(FEEDER, conduit=conduit, sections=sections))
    assert ("rope_may_cut_elbow" in codes(answer)) is found
    plan = ask("pull-plan", request(FEEDER, conduit=conduit, sections=sections))
    assert plan["result"]["pull_count"] == 1
    assert ("rope_may_cut_elbow" in codes(plan)) is found


def test_the_cable_to_order_is_route_tails_racking_splices_and_waste() -> None:
    order = {
        "tail": quantity(10, "ft"),
        "racking_length": quantity(12, "ft"),
        "splice": quantity(3, "ft"),
        "waste_percent": 2,
        "reel_length": quantity(1_000, "ft"),
    }
    phases, ground = result("pull-tension", request(FEEDER, ordering=order))["cables_to_order"]
    assert phases["length"]["value"] == pytest.approx((200 + 2 * 25) * 1.02)
    assert phases["order_length"] == quantity(255, "ft")
    assert phases["total_order_length"] == quantity(765, "ft")
    assert (phases["count"], phases["reel_count"]) == (3, 1)
    assert (ground["count"], ground["reel_count"]) == (1, 1)
    short = ask("pull-tension", request(FEEDER, ordering={"reel_length": quantity(200, "ft")}))
    assert "longer_than_a_reel" in codes(short, "caution")
    assert "reel_count" not in short["result"]["cables_to_order"][0]
    assert assumed(short)["#/ordering/tail"] == quantity(10, "ft")
