"""What goes into the ground: cover, spacers, concrete, flotation and trench."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def banked(name: str, bank: dict[str, Any], **changes: Any) -> dict[str, Any]:
    request = example(name, **changes)
    request["bank"] |= bank
    return request


def refused(name: str, request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem(name, request).errors or ()}


# NFPA 70, Table 300.5 and Table 300.50 / 305.15, in inches: the columns of the two tables in print order
COVER_TO_1000_V = {
    "not_otherwise_specified": (24, 6, 18, 12, 6),
    "trench_below_2_in_concrete": (18, 6, 12, 6, 6),
    "under_building": (0, 0, 0, 0, 0),
    "under_4_in_exterior_slab_no_vehicles": (18, 4, 4, 6, 6),
    "street_road_driveway_parking_lot": (24, 24, 24, 24, 24),
    "dwelling_driveway": (18, 18, 18, 12, 18),
    "airport_runway": (18, 18, 18, 18, 18),
}
METHODS = ("direct_buried_cable", "rmc_imc", "nonmetallic_raceway", "gfci_residential", "low_voltage_control")
COVER_ABOVE = {
    "over_1_kv_to_22_kv": (30, 6, 18),
    "over_22_kv_to_40_kv": (36, 6, 24),
    "over_40_kv": (42, 6, 30),
}


@pytest.mark.parametrize("location", COVER_TO_1000_V)
@pytest.mark.parametrize("column", range(5))
def test_every_cell_of_the_cover_table_to_1000_volts(location: str, column: int) -> None:
    request = example("cover", location=location, wiring_method=METHODS[column])
    assert result("cover", request)["minimum_cover"] == quantity(COVER_TO_1000_V[location][column], "in")


@pytest.mark.parametrize("voltage", COVER_ABOVE)
@pytest.mark.parametrize("column", range(3))
def test_every_cell_of_the_cover_table_above_1000_volts(voltage: str, column: int) -> None:
    def cover(location: str) -> float:
        request = example("cover", voltage=voltage, location=location, wiring_method=METHODS[column])
        found: float = result("cover", request)["minimum_cover"]["value"]
        return found

    general = COVER_ABOVE[voltage][column]
    assert cover("not_otherwise_specified") == cover("trench_below_2_in_concrete") == general
    assert cover("under_building") == (general if column == 0 else 4)
    assert (cover("airport_runway"), cover("street_road_driveway_parking_lot")) == (18, 24)


def test_above_1000_volts_a_cable_under_a_building_needs_a_raceway() -> None:
    request = example("cover", voltage="over_40_kv", location="under_building", wiring_method="direct_buried_cable")
    assert "only_in_a_raceway" in codes(ask("cover", request), "caution")
    assert refused("cover", request | {"wiring_method": "low_voltage_control"}) == {
        "#/wiring_method": "not_above_1000_v"
    }


def test_a_run_too_shallow_is_a_violation_with_both_figures() -> None:
    request = example("cover", location="not_otherwise_specified", cover=quantity(12, "in"))
    [shallow] = [found for found in ask("cover", request)["findings"] if found["severity"] == "violation"]
    assert (shallow["code"], shallow["actual"], shallow["limit"]) == (
        "too_shallow",
        quantity(12, "in"),
        quantity(18, "in"),
    )
    assert "too_shallow" not in codes(ask("cover", request | {"cover": quantity(18, "in")}))
    assert "too_shallow" not in codes(ask("cover", request | {"cover": quantity(457.2, "mm")}))


def test_a_raceway_not_listed_for_direct_burial_needs_its_concrete() -> None:
    request = example("cover", listed_for_direct_burial=False, encased=False)
    assert "needs_concrete" in codes(ask("cover", request), "violation")
    encased = ask("cover", request | {"encased": True})
    assert "needs_concrete" in codes(encased, "note")
    assert "encasement_does_not_reduce" in codes(encased)
    assert encased["result"]["concrete_required"] == quantity(2, "in")


def test_cover_is_told_in_the_system_asked_for() -> None:
    request = example("cover", location="not_otherwise_specified")
    assert result("cover", request, "units=metric")["minimum_cover"] == {"value": pytest.approx(457.2), "unit": "mm"}


def test_two_readings_of_a_specification_differ_by_one_station() -> None:
    by_distance = result("spacers", example("spacers"))
    request = example("spacers", interval={"kind": "per_stick", "count": 2, "stick_length": quantity(10, "ft")})
    del request["end_offset"]
    assert by_distance["station_count"] == result("spacers", request)["station_count"] + 1


def test_a_segment_that_shares_an_end_leaves_that_station_to_its_neighbor() -> None:
    whole = result("spacers", example("spacers"))["station_count"]
    parts = [
        result("spacers", example("spacers", length=quantity(length, "ft"), shared_end_count=shared))["station_count"]
        for length, shared in ((100, 0), (150, 1), (50, 1))
    ]
    assert sum(parts) == whole


def test_a_preset_is_the_interval_of_its_specification() -> None:
    request = example("spacers", interval={"kind": "preset", "preset": "cegs_4ft"})
    answer = ask("spacers", request)
    assert answer["result"]["station_count"] == 76
    [note] = [found for found in answer["findings"] if found["code"] == "preset_interval"]
    assert "CEGS-16526A" in note["source"]
    practice = ask("spacers", request | {"interval": {"kind": "preset", "preset": "trade_6ft"}})
    [note] = [found for found in practice["findings"] if found["code"] == "preset_interval"]
    assert "common practice" in note["source"]
    request = example("spacers", interval={"kind": "preset", "preset": "trade_two_per_10ft"})
    del request["end_offset"]
    assert result("spacers", request)["station_count"] == 60


def test_whole_tier_and_whole_bank_pieces() -> None:
    request = example("spacers", top_closure="cap")
    del request["ducts_per_spacer"]
    tier = ask("spacers", request | {"piece_system": "whole_tier"})
    stations = tier["result"]["station_count"]
    assert [tier["result"][f"{kind}_count"] for kind in ("base_spacer", "intermediate_spacer", "top_piece")] == [
        stations,
        2 * stations,
        stations,
    ]
    assert "tiers_not_staggered" in codes(tier)
    whole = result("spacers", request | {"piece_system": "whole_bank"})
    assert whole["total_count"] == 2 * stations


def test_stations_on_the_joints_are_a_caution() -> None:
    assert "stations_on_joints" in codes(ask("spacers", example("spacers", stick_length=quantity(20, "ft"))))
    clear = example("spacers", stick_length=quantity(20, "ft"), end_offset=quantity(2.5, "ft"))
    assert "stations_on_joints" not in codes(ask("spacers", clear))


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
    found = result("encasement", banked("encasement", {"tier_conduits": [large, large, small]}))
    assert found["envelope_height"]["value"] == pytest.approx(3 + 4.5 + 2 + 4.5 + 2 + 2.375 + 3)
    assert [duct["outside_diameter"]["value"] for duct in found["ducts"]] == pytest.approx([4.5] * 6 + [2.375] * 3)
    signals = banked(
        "encasement", {"signal_ducts": [0, 0, 1], "power_signal_separation": quantity(12, "in"), "alignment": "left"}
    )
    assert result("encasement", signals)["envelope_width"]["value"] == pytest.approx(23.5 + 10)


@pytest.mark.parametrize(
    ("bank", "expected"),
    [
        ({"signal_ducts": [0, 1]}, {"#/bank/signal_ducts": "one_for_each_tier"}),
        ({"signal_ducts": [0, 1, 4]}, {"#/bank/signal_ducts/2": "more_than_the_tier"}),
        (
            {"separation_measure": "center_to_center", "horizontal_separation": quantity(4, "in")},
            {"#/bank/horizontal_separation": "ducts_overlap"},
        ),
        (
            {"tier_conduits": [EXAMPLES["encasement"]["bank"]["conduit"]]},
            {"#/bank/tier_conduits": "one_for_each_tier"},
        ),
    ],
)
@pytest.mark.parametrize("name", ["encasement", "flotation", "trench"])
def test_a_bank_that_cannot_be_placed_is_refused(name: str, bank: dict[str, Any], expected: dict[str, str]) -> None:
    assert refused(name, banked(name, {"tiers": [3, 3, 3]} | bank)) == expected


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
    found = result("encasement", example("encasement", length=quantity(100, "ft"), reinforcing=bars))["reinforcing"]
    # (100 - 1.667) / (20 - 1.667) = 5.36: six bars, five laps, in each of four lines
    assert found["lap_count"] == 20
    assert found["longitudinal_length"]["value"] == pytest.approx(400 + 20 * 20 / 12)
    assert found["tie_count"] == 101
    assert found["tie_length"]["value"] == pytest.approx(101 * 2 * (23.5 + 23.5 - 12) / 12)
    assert found["mass"]["value"] == pytest.approx(
        (400 + 400 / 12) * 0.668 + 101 * 2 * 35 / 12 * 0.376  # ASTM A615, from memory
    )
    short = ask("encasement", example("encasement", reinforcing={"bar_count": 4, "bar_size": "no_4"}))
    assumed = {place: assumption["value"] for assumption in short["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/reinforcing/lap_length"] == {"value": pytest.approx(20), "unit": "in"}
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
        ask("encasement", example("encasement", maximum_aggregate=quantity(1.5, "in")))
    )
    assert "aggregate_too_large" in codes(
        ask("encasement", example("encasement", maximum_aggregate=quantity(1.6, "in"))), "caution"
    )


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
    assert sum(tier["uplift"]["value"] for tier in found["tiers"]) == pytest.approx(
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


def test_the_mass_of_a_duct_comes_from_its_wall_and_is_told() -> None:
    request = example("flotation")
    del request["duct_mass_per_length"]
    assumed = {place: one["value"] for one in ask("flotation", request)["assumptions"] for place in one["pointers"]}
    # Schedule 40 trade 4: 0.237 in wall; pi x 4.263 x 0.237 in2 of PVC at 87.4 lb/ft3
    assert assumed["#/duct_mass_per_length"]["value"] == pytest.approx(math.pi * 4.263 * 0.237 / 144 * 87.4)
    measured = {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.5, "in")}
    request["bank"]["conduit"] = measured
    assumed = {place: one["value"] for one in ask("flotation", request)["assumptions"] for place in one["pointers"]}
    assert assumed["#/duct_mass_per_length"]["value"] == pytest.approx(math.pi * 4.25 * 0.25 / 144 * 87.4)
    del request["anchor_capacity"]
    assert result("flotation", request)["tie_down_count"] == 2


def test_water_in_a_duct_without_a_bore_on_file_is_refused_or_known() -> None:
    request = banked("flotation", {"conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}})
    assert result("flotation", request | {"contents": "water"})["uplift_per_length"]["value"] > 0


def test_a_trench_by_hand() -> None:
    """Derived: 36 in wide, 30 + 17 in deep, 300 ft; a bank of 3 by 2 trade 4 in 3 in of concrete."""
    found = result("trench", example("trench"))
    assert found["depth"]["value"] == pytest.approx(47)
    assert found["excavation_volume"]["value"] == pytest.approx(3 * 47 / 12 * 300 / 27)
    envelope = 23.5 / 12 * 17 / 12 * 300 / 27
    assert found["envelope_volume"]["value"] == pytest.approx(envelope)
    assert found["backfill_volume"]["value"] == pytest.approx(3 * 47 / 12 * 300 / 27 - envelope)
    assert found["spoil_volume"]["value"] == pytest.approx(
        (found["excavation_volume"]["value"] - found["backfill_volume"]["value"] / 0.9) * 1.25
    )


def test_bedding_envelope_select_fill_and_backfill_are_the_excavation() -> None:
    for slope in (0, 1):
        request = example("trench", select_fill=quantity(6, "in"), bedding=quantity(3, "in"), side_slope=slope)
        found = result("trench", request)
        parts = [found[f"{name}_volume"]["value"] for name in ("bedding", "envelope", "select_fill", "backfill")]
        assert min(parts) > 0
        assert sum(parts) == pytest.approx(found["excavation_volume"]["value"])


def test_the_width_follows_the_practice() -> None:
    request = example("trench")
    del request["width"]
    assert result("trench", request)["width"]["value"] == pytest.approx(23.5 + 12)
    assert result("trench", request | {"practice": "trench_formed"})["width"]["value"] == pytest.approx(23.5)
    del request["concrete_cover"]
    direct = request | {"practice": "direct_buried"}
    assert result("trench", direct)["width"]["value"] == pytest.approx(17.5 + 6)
    assert refused("trench", example("trench", practice="direct_buried")) == {"#/concrete_cover": "contradiction"}
    assert refused("trench", example("trench", width=quantity(20, "in"))) == {"#/width/value": "narrower_than_the_bank"}


def test_a_trench_of_varying_depth_runs_from_start_to_end() -> None:
    def station(feet: float, inches: float) -> dict[str, Any]:
        return {"position": quantity(feet, "ft"), "cover": quantity(inches, "in")}

    level = result("trench", example("trench"))["excavation_volume"]["value"]
    varying = example("trench", stations=[station(0, 30), station(150, 42), station(300, 30)])
    found = result("trench", varying)
    assert found["depth"]["value"] == pytest.approx(59)
    assert found["excavation_volume"]["value"] == pytest.approx(level + 3 * 0.5 * 300 / 27)
    for stations in (
        [station(0, 30), station(200, 30)],
        [station(10, 30), station(300, 30)],
        [station(0, 30), station(0, 36), station(300, 30)],
    ):
        assert refused("trench", example("trench", stations=stations)) == {"#/stations": "not_from_start_to_end"}


def test_a_deep_trench_brings_the_cautions_of_its_depth() -> None:
    def at(inches: float, **changes: Any) -> list[str]:
        return codes(ask("trench", example("trench", cover=quantity(inches, "in"), **changes)), "caution")

    assert at(30) == ["excavation_safety"]
    assert at(31) == ["needs_egress", "excavation_safety"]
    assert "needs_protection" in at(43)
    assert "needs_protection" not in at(43, side_slope=1.5)
    assert "needs_protection" not in at(43, soil_type="stable_rock")
    assert "needs_an_engineer" in at(223)


def test_tape_and_neighbors_are_watched() -> None:
    shallow = ask("trench", example("trench", cover=quantity(18, "in")))
    assert "tape_close_to_the_bank" in codes(shallow, "caution")
    assert shallow["result"]["warning_tape_depth"]["value"] == pytest.approx(9)
    near = ask("trench", example("trench", nearest_utility=quantity(6, "in")))
    assert "close_to_another_utility" in codes(near, "caution")
    assert "close_to_another_utility" not in codes(ask("trench", example("trench", nearest_utility=quantity(12, "in"))))


def test_wet_concrete_and_excavation_are_always_cautioned() -> None:
    assert "wet_concrete" in codes(ask("encasement", example("encasement")), "caution")
    assert "excavation_safety" in codes(ask("trench", example("trench")), "caution")
    assert "excavation_safety" in codes(ask("cover", example("cover")), "caution")


def test_no_default_in_the_ground_is_silent() -> None:
    def assumed(name: str, *left_out: str) -> dict[str, Any]:
        request = {key: value for key, value in example(name).items() if key not in left_out}
        return {place: one["value"] for one in ask(name, request)["assumptions"] for place in one["pointers"]}

    assert assumed("flotation", "bottom_cover") == {"#/bottom_cover": quantity(3, "in")}
    assert assumed("trench", "warning_tape_depth") == {"#/warning_tape_depth": quantity(12, "in")}


def test_the_tape_follows_what_is_given() -> None:
    deep = ask("trench", example("trench", warning_tape_depth=quantity(18, "in")))
    assert deep["result"]["warning_tape_depth"]["value"] == pytest.approx(18)
    assert "tape_close_to_the_bank" not in codes(deep)
    assert "tape_close_to_the_bank" in codes(
        ask("trench", example("trench", warning_tape_depth=quantity(20, "in"))), "caution"
    )
