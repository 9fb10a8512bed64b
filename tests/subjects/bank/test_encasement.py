"""Concrete around a bank: stepped and mixed banks, bars, color, aggregate."""

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


def test_a_stepped_pour_takes_less_than_its_rectangle() -> None:
    stepped = result("encasement", banked("encasement", {"tiers": [3, 3, 1]}, pour_shape="stepped"))
    rectangle = result("encasement", banked("encasement", {"tiers": [3, 3, 1]}))
    assert stepped["gross_volume"]["value"] < rectangle["gross_volume"]["value"]
    assert stepped["duct_volume"] == rectangle["duct_volume"]
    equal = result("encasement", example("encasement", pour_shape="stepped"))["net_volume"]["value"]
    assert equal == pytest.approx(result("encasement", example("encasement"))["net_volume"]["value"])
    trench = example("encasement", pour_shape="stepped", trench_width=quantity(36, "in"))
    assert refused("encasement", trench) == {"#/pour_shape": "not_with_a_trench_form"}


def test_mixed_conduits_and_signal_ducts_widen_the_envelope() -> None:
    small = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"}
    large = EXAMPLES["encasement"]["bank"]["conduit"]
    tiers = [[{"count": 3, "conduit": conduit}] for conduit in (large, large, small)]
    request = banked("encasement", {"tier_ducts": tiers})
    del request["bank"]["tiers"]
    found = result("encasement", request)
    assert found["envelope_height"]["value"] == pytest.approx(3 + 4.5 + 2 + 4.5 + 2 + 2.375 + 3)
    assert [duct["outside_diameter"]["value"] for duct in found["ducts"]] == pytest.approx([4.5] * 6 + [2.375] * 3)
    signals = banked(
        "encasement", {"signal_ducts": [0, 0, 1], "power_signal_separation": quantity(12, "in"), "alignment": "left"}
    )
    assert result("encasement", signals)["envelope_width"]["value"] == pytest.approx(23.5 + 10)


def test_reinforcing_by_hand() -> None:
    bars = {
        "bar_count": 4,
        "bar_size": "no_4",
        "lap_length": quantity(20, "in"),
        "stock_length": quantity(20, "ft"),
        "tie_size": "no_3",
        "tie_spacing": quantity(1, "ft"),
        "edge_cover": quantity(3, "in"),
    }
    found = result("encasement", example("encasement", length=quantity(100, "ft"), reinforcing=bars))[
        "reinforcing_takeoff"
    ]
    # (100 - 1.667) / (20 - 1.667) = 5.36: six bars, five laps, in each of four lines
    assert (found["bar_count"], found["bar_size"], found["tie_size"]) == (4, "no_4", "no_3")
    assert (found["tie_spacing"], found["edge_cover"]) == (quantity(1, "ft"), quantity(3, "in"))
    assert found["lap_count"] == 20
    assert found["longitudinal_length"]["value"] == pytest.approx(400 + 20 * 20 / 12)
    assert found["tie_count"] == 101
    # ties of 17.5 in each way, with two hooks of 4.25 in
    assert found["tie_length"]["value"] == pytest.approx(101 * (4 * 17.5 + 2 * 4.25) / 12)
    assert found["mass"]["value"] == pytest.approx(
        (400 + 400 / 12) * 0.668 + 101 * 78.5 / 12 * 0.376  # ASTM A615, from memory
    )
    short = ask("encasement", example("encasement", reinforcing={"bar_count": 4, "bar_size": "no_4"}))
    assumed = {place: value_of(assumption) for assumption in short["assumptions"] for place in assumption["pointers"]}
    assert "#/reinforcing/lap_length" not in assumed
    assert assumed["#/reinforcing/lap_diameter_ratio"] == 40
    assert short["result"]["reinforcing_takeoff"]["lap_length"] == {"value": pytest.approx(20), "unit": "in"}
    longer = {"bar_count": 4, "bar_size": "no_4", "lap_diameter_ratio": 60}
    found = result("encasement", example("encasement", reinforcing=longer))["reinforcing_takeoff"]
    assert found["lap_length"] == {"value": pytest.approx(30), "unit": "in"}
    assert refused("encasement", example("encasement", reinforcing=bars | {"edge_cover": quantity(12, "in")})) == {
        "#/reinforcing/edge_cover": "does_not_fit"
    }


def test_red_color_is_dosed_on_the_cement_and_capped() -> None:
    def colored(percent: float) -> dict[str, Any]:
        cement = quantity(564, "lb/yd3")
        return ask("encasement", example("encasement", pigment_percent=percent, cement_content=cement))

    net = result("encasement", example("encasement"))["net_volume"]["value"]
    assert colored(5)["result"]["pigment_mass"]["value"] == pytest.approx(net * 564 * 0.05)
    assert "pigment_dose" in codes(colored(11), "violation")
    assert "pigment_dose" in codes(colored(0.5), "caution")
    assert "pigment_dose" not in codes(colored(5))


def test_aggregate_must_pass_three_quarters_of_the_gap() -> None:
    assert "aggregate_too_large" not in codes(
        ask("encasement", example("encasement", maximum_aggregate_size=quantity(1.5, "in")))
    )
    assert "aggregate_too_large" in codes(
        ask("encasement", example("encasement", maximum_aggregate_size=quantity(1.6, "in"))), "caution"
    )


def test_a_trench_that_is_the_form_sets_the_width_and_the_waste() -> None:
    request = {"length": quantity(100, "ft"), "bank": example("encasement")["bank"]}
    formed, trench = ask("encasement", request), ask("encasement", request | {"trench_width": quantity(30, "in")})
    assert trench["result"]["envelope_width"]["value"] == pytest.approx(30)
    assert trench["result"]["gross_volume"]["value"] > formed["result"]["gross_volume"]["value"]
    waste = [
        next(
            value_of(assumption) for assumption in answer["assumptions"] if "#/waste_percent" in assumption["pointers"]
        )
        for answer in (formed, trench)
    ]
    assert waste == [5, 10]


def test_thin_cover_is_a_caution() -> None:
    cover = {side: quantity(1.5, "in") for side in ("top", "bottom", "side")}
    answer = ask("encasement", example("encasement", concrete_cover=cover))
    assert codes(answer).count("thin_envelope") == 3


def test_a_lap_as_long_as_a_bar_is_refused() -> None:
    bars = {"bar_count": 4, "bar_size": "no_4", "lap_length": quantity(20, "ft"), "stock_length": quantity(20, "ft")}
    assert refused("encasement", example("encasement", reinforcing=bars)) == {
        "#/reinforcing/lap_length": "does_not_fit"
    }


def test_wet_concrete_and_floating_ducts_are_always_cautioned() -> None:
    assert {"wet_concrete", "empty_ducts_float"} <= set(codes(ask("encasement", example("encasement")), "caution"))


def test_more_bags_than_an_answer_can_count_are_refused() -> None:
    huge = banked("encasement", {"tiers": [40]}, length=quantity(100_000, "ft"), bag_mass=quantity(1, "lb"))
    sides = {side: quantity(240, "in") for side in ("top", "bottom", "side")}
    assert refused("encasement", huge | {"concrete_cover": sides}) == {"#/bag_mass": "too_many_bags"}


def test_a_bank_of_three_by_three_by_hand() -> None:
    """Derived: 23.5 in square over 323 ft less nine ducts of 4.5 in, at 150 lb/ft3; trucks of 10 yd3."""
    found = result("encasement", example("encasement"))
    gross = (23.5 / 12) ** 2 * 323 / 27
    net = gross - 9 * math.pi / 4 * (4.5 / 12) ** 2 * 323 / 27
    assert found["gross_volume"]["value"] == pytest.approx(gross)
    assert found["net_volume"]["value"] == pytest.approx(net)
    assert found["concrete_mass"] == {"value": pytest.approx(net * 27 * 150), "unit": "lb"}
    assert found["order_volume"]["value"] == pytest.approx(35.75), "35.69 and up to the next quarter yard"
    assert found["truck_load_count"] == 4
    assert found["bag_count"] == 1606, "35.687 yd3 x 27 / 0.6 ft3: bags come without the step of a plant"


def test_trucks_bring_what_is_ordered_and_not_what_is_in_place() -> None:
    """Derived: 33.99 yd3 in place are four loads of 8.75, the 35.75 that are ordered are five."""
    found = result("encasement", example("encasement", truck_capacity=quantity(8.75, "yd3")))
    assert found["net_volume"]["value"] < 4 * 8.75 < found["order_volume"]["value"]
    assert found["truck_load_count"] == 5


def test_a_trench_wider_than_the_bank_is_filled_by_its_pour() -> None:
    """Derived: 36 in by 23.5 in over 323 ft, where the bank with its concrete is 23.5 in wide."""
    found = result("encasement", example("encasement", trench_width=quantity(36, "in")))
    assert found["envelope_width"]["value"] == pytest.approx(36)
    assert found["envelope_height"]["value"] == pytest.approx(23.5)
    assert found["gross_volume"]["value"] == pytest.approx(3 * 23.5 / 12 * 323 / 27)
    assert found["duct_volume"] == result("encasement", example("encasement"))["duct_volume"]


def test_every_duct_is_told_with_its_tier_from_the_bottom() -> None:
    """Derived: trade 4 in 2 in of separation stands at 2.25 in and every 6.5 in; a tier of two in the middle."""
    ducts = result("encasement", banked("encasement", {"tiers": [3, 2]}))["ducts"]
    assert [duct["tier"] for duct in ducts] == [1, 1, 1, 2, 2]
    assert [duct["x"]["value"] for duct in ducts] == pytest.approx([2.25, 8.75, 15.25, 5.5, 12.0])
    assert [duct["y"]["value"] for duct in ducts] == pytest.approx([2.25] * 3 + [8.75] * 2)


def test_a_cage_that_meets_the_ducts_says_what_concrete_it_needs() -> None:
    """Derived: 3 in of edge, a No. 3 tie of 0.375 in and a No. 5 bar of 0.625 in reach 4 in deep."""
    cage = {"bar_size": "no_5", "bar_count": 4, "tie_size": "no_3", "edge_cover": quantity(3, "in")}
    request = example("encasement", reinforcing=cage)
    [found] = [one for one in ask("encasement", request)["findings"] if one["code"] == "cage_meets_ducts"]
    assert (found["pointer"], found["limit"]["value"]) == ("#/reinforcing/edge_cover", pytest.approx(4.0))
    assert found["actual"]["value"] == pytest.approx(3)
    sides = {side: quantity(4, "in") for side in ("top", "bottom", "side")}
    assert "cage_meets_ducts" not in codes(ask("encasement", request | {"concrete_cover": sides}))


def usual(answer: dict[str, Any], code: str) -> dict[str, Any]:
    [found] = [one for one in answer["cautions"] if one["code"] == code]
    return dict(found)


def test_forms_carry_the_head_of_the_whole_pour() -> None:
    """Derived: 23.5 in of concrete of 150 lb/ft3 press with 150 x 23.5 / 12 = 293.75 psf, under 600."""
    answer = ask("encasement", example("encasement"), "working=true")
    assert answer["result"]["form_pressure"] == {"value": pytest.approx(293.75), "unit": "psf"}
    caution = usual(answer, "form_pressure")
    assert caution["message"].startswith("The head of the whole pour governs the pressure at the foot of the forms: ")
    assert "begin at 600 psf and give no less" in caution["message"]
    assert "ACI 347-04" in caution["citation"]
    assert [line["quantity"]["value"] for line in answer["working"] if line["symbol"] == "p"] == pytest.approx([293.75])
    metric = result("encasement", example("encasement"), "units=metric")["form_pressure"]
    assert metric == {"value": pytest.approx(14.065, abs=5e-4), "unit": "kPa"}, "293.75 x 0.0478803"


def test_of_a_high_pour_it_is_said_that_no_rate_of_placing_is_taken() -> None:
    """Derived: eight tiers of 4.5 in with seven gaps of 2 in and 6 in of concrete are 56 in: 150 x 56 / 12 = 700."""
    answer = ask("encasement", banked("encasement", {"tiers": [3] * 8}))
    assert answer["result"]["form_pressure"]["value"] == pytest.approx(700)
    assert "no rate of placing is given that would make it less" in usual(answer, "form_pressure")["message"]


def test_a_pour_against_earth_has_no_forms_to_press_on() -> None:
    answer = ask("encasement", example("encasement", trench_width=quantity(36, "in")))
    assert "form_pressure" not in answer["result"]
    assert "form_pressure" not in codes(answer)


def test_the_ground_of_a_bank_is_counted_with_its_ends_and_waste() -> None:
    """Derived: two conductors of 323 ft and twice 10 ft are 686 ft; with 10 percent 754.6 ft."""
    asked = {"size": "4/0 AWG", "conductor_count": 2, "end_length": quantity(10, "ft"), "waste_percent": 10}
    takeoff = result("encasement", example("encasement", bank_ground=asked))["bank_ground_takeoff"]
    assert takeoff == {
        "size": "4/0 AWG",
        "conductor_length": {"value": pytest.approx(686), "unit": "ft"},
        "order_length": {"value": pytest.approx(754.6), "unit": "ft"},
    }
    assert "bank_ground_takeoff" not in result("encasement", example("encasement"))


def test_a_ground_of_one_conductor_is_assumed_where_only_its_size_is_given() -> None:
    """Derived: 323 ft and twice 5 ft; with 5 percent 349.65 ft."""
    answer = ask("encasement", example("encasement", bank_ground={"size": "4/0 AWG"}))
    assert answer["result"]["bank_ground_takeoff"]["order_length"]["value"] == pytest.approx(349.65)
    assumed = {place for assumption in answer["assumptions"] for place in assumption["pointers"]}
    assert {f"#/bank_ground/{name}" for name in ("conductor_count", "end_length", "waste_percent")} <= assumed


def test_a_dose_of_color_that_reads_like_the_most_is_told_to_the_digit_that_parts_them() -> None:
    answer = ask("encasement", example("encasement", pigment_percent=10.00001))
    [found] = [one for one in answer["findings"] if one["code"] == "pigment_dose"]
    assert found["message"] == "A dose of 10.00001 percent of cement is over the 10 percent that is allowed."
