"""Flotation by hand: the push of a bank, its lifts, and what is known of the ducts and their anchors."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result, value_of


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def banked(name: str, bank: dict[str, Any], **changes: Any) -> dict[str, Any]:
    request = example(name, **changes)
    request["bank"] |= bank
    return request


def refused(name: str, request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem(name, request).errors or ()}


def test_nine_trade_4_ducts_push_746_pounds_less_their_own_mass_on_a_station() -> None:
    """Derived: 9 x 16.567 lb/ft x 5 ft less the ducts of 2 lb/ft."""
    request = example("flotation")
    del request["lift_height"]
    found = result("flotation", request)
    gross = math.pi / 4 * (4.5 / 12) ** 2 * 150
    assert found["uplift_per_station"]["value"] == pytest.approx(9 * 5 * (gross - 2))
    assert found["hold_down_per_station"]["value"] == pytest.approx(1.5 * 9 * 5 * (gross - 2))
    assert found["tie_down_count"] == math.ceil(1.5 * 45 * (gross - 2) / 500)
    assert found["total_tie_down_count"] == found["tie_down_count"] * 61
    assert sum(tier["uplift_per_length"]["value"] for tier in found["tier_uplifts"]) == pytest.approx(
        found["full_uplift_per_length"]["value"]
    )


def test_a_live_lift_of_12_inches_reaches_two_tiers() -> None:
    found = result("flotation", example("flotation"))
    assert found["uplift_per_length"]["value"] == pytest.approx(found["full_uplift_per_length"]["value"] * 2 / 3)


def test_what_is_in_the_ducts_holds_them_down() -> None:
    def uplift(**changes: Any) -> float:
        request = example("flotation", **changes)
        del request["lift_height"]
        found: float = result("flotation", request)["full_uplift_per_length"]["value"]
        return found

    empty, water, cable = (
        uplift(),
        uplift(contents="water"),
        uplift(contents="cable", cable_mass_per_length=quantity(30, "lb/ft")),
    )
    assert cable < 0 < water < empty
    assert empty - water == pytest.approx(9 * math.pi / 4 * (3.998 / 12) ** 2 * 62.4, rel=2e-3)
    assert uplift(fluid_density=quantity(62.4, "lb/ft3"), medium="groundwater") < empty / 2


def test_ducts_that_sink_need_no_anchor() -> None:
    heavy = example("flotation", contents="cable", cable_mass_per_length=quantity(30, "lb/ft"))
    answer = ask("flotation", heavy)
    assert answer["result"]["uplift_per_length"]["value"] == answer["result"]["tie_down_count"] == 0
    assert "bank_floats" not in codes(answer)
    del heavy["cable_mass_per_length"]
    assert refused("flotation", heavy) == {"#/cable_mass_per_length": "missing"}


def without_mass(**bank: Any) -> dict[str, Any]:
    request = banked("flotation", bank)
    del request["duct_mass_per_length"]
    return request


def assumed(request: dict[str, Any]) -> dict[str, Any]:
    return {place: value_of(one) for one in ask("flotation", request)["assumptions"] for place in one["pointers"]}


def masses(request: dict[str, Any]) -> list[float]:
    return [tier["mass_per_length"]["value"] for tier in result("flotation", request)["tier_uplifts"]]


def test_the_mass_of_a_duct_comes_from_its_wall_and_is_told() -> None:
    request = without_mass()
    assert assumed(request) == {"#/duct_density": quantity(87.4, "lb/ft3")}
    # Schedule 40 trade 4: 0.237 in wall; pi x 4.263 x 0.237 in2 of PVC at 87.4 lb/ft3
    by_hand = math.pi * 4.263 * 0.237 / 144 * 87.4
    assert masses(request) == pytest.approx([by_hand] * 3)
    measured = {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.5, "in")}
    assert masses(without_mass(conduit=measured)) == pytest.approx([math.pi * 4.25 * 0.25 / 144 * 59.3] * 3)
    assert masses(request | {"duct_density": quantity(174.8, "lb/ft3")}) == pytest.approx([2 * by_hand] * 3)


def test_hdpe_and_what_nobody_named_push_up_as_the_lightest_duct() -> None:
    hdpe = {"kind": "listed", "type": "hdpe_schedule_40", "trade_size": "4"}
    assert assumed(without_mass(conduit=hdpe)) == {"#/duct_density": quantity(59.3, "lb/ft3")}
    pvc = result("flotation", without_mass())["uplift_per_length"]["value"]
    assert result("flotation", without_mass(conduit=hdpe))["uplift_per_length"]["value"] > pvc


@pytest.mark.parametrize(("medium", "lifts"), [("concrete", True), ("slurry", False), ("groundwater", False)])
def test_lifts_are_for_concrete(medium: str, lifts: bool) -> None:
    request = {name: one for name, one in example("flotation", medium=medium).items() if name != "fluid_density"}
    [found] = [one for one in ask("flotation", request)["findings"] if one["code"] == "bank_floats"]
    assert ("Pour in lifts" in found["message"]) is lifts


def test_every_tier_has_the_mass_of_its_own_duct() -> None:
    conduits = [
        {"kind": "measured", "inside_diameter": quantity(inside, "in"), "outside_diameter": quantity(4.5, "in")}
        for inside in (4.1, 4.0, 3.9)
    ]
    low, middle, high = masses(without_mass(tier_conduits=conduits))
    assert low < middle < high
    assert masses(example("flotation")) == pytest.approx([2] * 3)


def test_a_duct_without_a_wall_on_file_is_taken_without_mass_and_said_so() -> None:
    duct = {"kind": "listed", "type": "pvc_db_100", "trade_size": "4"}
    request = without_mass(conduit=duct)
    assert assumed(request)["#/duct_mass_per_length"] == quantity(0, "lb/ft")
    assert masses(request) == [0] * 3
    assert "#/duct_density" not in assumed(request)
    assert refused("flotation", request | {"contents": "water"}) == {"#/bank/conduit": "inside_diameter_not_listed"}
    schedule_40 = EXAMPLES["flotation"]["bank"]["conduit"]
    mixed = without_mass(tier_conduits=[schedule_40, duct, schedule_40])
    assert [mass > 0 for mass in masses(mixed)] == [True, False, True]
    assert "duct_mass_left_out" in codes(ask("flotation", mixed), "note")
    assert refused("flotation", mixed | {"contents": "water"}) == {
        "#/bank/tier_conduits/1": "inside_diameter_not_listed"
    }


def test_anchors_are_not_counted_without_the_capacity_of_one() -> None:
    request = example("flotation")
    del request["tie_down_capacity"]
    answer = ask("flotation", request)
    assert not {"tie_down_count", "total_tie_down_count"} & set(answer["result"])
    [caution] = [found for found in answer["findings"] if found["code"] == "tie_downs_not_counted"]
    assert (caution["severity"], caution["pointer"]) == ("caution", "#/tie_down_capacity")
    assert caution["actual"] == answer["result"]["hold_down_per_station"]
    assert answer["assumptions"] == []
    sinking = request | {"contents": "cable", "cable_mass_per_length": quantity(30, "lb/ft")}
    assert "tie_downs_not_counted" not in codes(ask("flotation", sinking))
    assert result("flotation", sinking)["tie_down_count"] == 0, "what sinks needs none"


def test_a_duct_without_a_wall_on_file_has_no_mass_that_is_told() -> None:
    request = {"bank": {"conduit": {"kind": "listed", "type": "pvc_type_a", "trade_size": "3"}, "tiers": [3]}}
    assert "duct_mass_left_out" not in codes(ask("flotation", request)), "the assumption tells it"
    assert assumed(request)["#/duct_mass_per_length"] == quantity(0, "lb/ft")


def test_anchors_of_the_run_are_counted_where_its_length_is_given() -> None:
    request = example("flotation")
    del request["length"]
    found = result("flotation", request)
    assert "tie_down_count" in found
    assert "total_tie_down_count" not in found


def test_water_in_a_duct_without_a_bore_on_file_is_refused_or_known() -> None:
    request = banked("flotation", {"conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}})
    assert result("flotation", request | {"contents": "water"})["uplift_per_length"]["value"] > 0


def test_one_duct_pushes_with_what_it_displaces_less_its_own_mass() -> None:
    """Derived: 16.567 lb/ft of concrete less 2 lb/ft of duct, in each of three tiers of three."""
    tiers = result("flotation", example("flotation"))["tier_uplifts"]
    each = math.pi / 4 * (4.5 / 12) ** 2 * 150 - 2
    assert [(tier["tier"], tier["duct_count"]) for tier in tiers] == [(1, 3), (2, 3), (3, 3)]
    assert [tier["duct_uplift_per_length"]["value"] for tier in tiers] == pytest.approx([each] * 3)
    assert [tier["uplift_per_length"]["value"] for tier in tiers] == pytest.approx([3 * each] * 3)


@pytest.mark.parametrize("order", [("2", "4"), ("4", "2")])
def test_the_tier_of_large_ducts_governs_its_lift_wherever_it_lies(order: tuple[str, str]) -> None:
    """Derived: in lifts of 4 in each of two tiers is liquid alone, and three ducts of 4.5 in push most."""
    conduits = [{"kind": "listed", "type": "pvc_schedule_40", "trade_size": size} for size in order]
    request = banked("flotation", {"tiers": [3, 3], "tier_conduits": conduits}, lift_height=quantity(4, "in"))
    found = result("flotation", request)
    diameters = {"2": 2.375, "4": 4.5}
    by_hand = [math.pi / 4 * (diameters[size] / 12) ** 2 * 150 - 2 for size in order]
    assert [tier["duct_uplift_per_length"]["value"] for tier in found["tier_uplifts"]] == pytest.approx(by_hand)
    assert found["uplift_per_length"]["value"] == pytest.approx(3 * max(by_hand))
    assert found["full_uplift_per_length"]["value"] == pytest.approx(3 * sum(by_hand))
