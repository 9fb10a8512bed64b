"""A trench by hand: its volumes, its width by practice, and what its depth asks for."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity, result, value_of


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def varying(stations: list[dict[str, Any]], **changes: Any) -> dict[str, Any]:
    """Give the example with stations in place of one cover."""
    request = example("trench", stations=stations, **changes)
    del request["cover"]
    return request


def refused(name: str, request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem(name, request).errors or ()}


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


def test_faults_of_width_and_stations_come_together() -> None:
    short = [{"station": quantity(at, "ft"), "cover": quantity(30, "in")} for at in (0, 20)]
    assert refused("trench", varying(short, width=quantity(5, "in"))) == {
        "#/width/value": "narrower_than_the_bank",
        "#/stations/1/station/value": "not_from_start_to_end",
    }


def test_stations_may_be_given_in_another_unit_than_the_length() -> None:
    places = [{"station": quantity(at, "ft"), "cover": quantity(30, "in")} for at in (0, 984.252)]
    found = result("trench", varying(places, length=quantity(300, "m")))
    assert found["depth"]["value"] == pytest.approx(47)


def test_bedding_envelope_select_fill_and_backfill_are_the_excavation() -> None:
    for slope in (0, 1):
        request = example("trench", select_fill=quantity(6, "in"), bedding=quantity(3, "in"), side_slope_ratio=slope)
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
        return {"station": quantity(feet, "ft"), "cover": quantity(inches, "in")}

    level = result("trench", example("trench"))["excavation_volume"]["value"]
    found = result("trench", varying([station(0, 30), station(150, 42), station(300, 30)]))
    assert found["depth"]["value"] == pytest.approx(59)
    assert found["excavation_volume"]["value"] == pytest.approx(level + 3 * 0.5 * 300 / 27)

    def at(index: int) -> str:
        return f"#/stations/{index}/station/value"

    for stations, found_at in (
        ([station(0, 30), station(200, 30)], {at(1): "not_from_start_to_end"}),
        ([station(10, 30), station(300, 30)], {at(0): "not_from_start_to_end"}),
        ([station(0, 30), station(0, 36), station(300, 30)], {at(1): "out_of_order"}),
        (
            [station(0, 30), station(200, 36), station(100, 36), station(310, 30)],
            {at(2): "out_of_order", at(3): "past_the_end"},
        ),
        ([station(0, 30)], {at(0): "not_from_start_to_end"}),
    ):
        assert refused("trench", varying(stations)) == found_at


def test_a_station_out_of_place_is_told_where_it_may_lie() -> None:
    places = [{"station": quantity(at, "ft"), "cover": quantity(30, "in")} for at in (0, 200, 100, 301)]
    back, past = faults("trench", varying(places))
    assert (back["minimum"], back["maximum"]) == (quantity(200, "ft"), quantity(300, "ft"))
    assert (past["minimum"], past["maximum"]) == (quantity(100, "ft"), quantity(300, "ft"))


def test_a_deep_trench_brings_the_cautions_of_its_depth() -> None:
    def at(inches: float, **changes: Any) -> list[str]:
        return codes(ask("trench", example("trench", cover=quantity(inches, "in"), **changes)), "caution")

    assert at(30) == ["ducts_drain", "excavation_safety"]
    assert at(31) == ["needs_egress", "ducts_drain", "excavation_safety"]
    assert "needs_protection" in at(43)
    assert "needs_protection" not in at(43, side_slope_ratio=1.5)
    assert "needs_protection" not in at(43, soil_type="stable_rock")
    assert "needs_an_engineer" in at(223)


def test_tape_and_neighbors_are_watched() -> None:
    shallow = ask("trench", example("trench", cover=quantity(18, "in")))
    assert "tape_close_to_the_bank" in codes(shallow, "caution")
    assert shallow["result"]["warning_tape_depth"]["value"] == pytest.approx(9)
    near = ask("trench", example("trench", nearest_utility=quantity(6, "in")))
    assert "close_to_another_utility" in codes(near, "caution")
    assert "close_to_another_utility" not in codes(ask("trench", example("trench", nearest_utility=quantity(12, "in"))))
    deep = ask("trench", example("trench", warning_tape_depth=quantity(18, "in")))
    assert deep["result"]["warning_tape_depth"]["value"] == pytest.approx(18)
    assert "tape_close_to_the_bank" not in codes(deep)
    assert "tape_close_to_the_bank" in codes(
        ask("trench", example("trench", warning_tape_depth=quantity(20, "in"))), "caution"
    )


def test_an_excavation_is_always_cautioned_once() -> None:
    assert codes(ask("trench", example("trench")), "caution").count("excavation_safety") == 1


def assumed(request: dict[str, Any]) -> dict[str, Any]:
    return {place: value_of(one) for one in ask("trench", request)["assumptions"] for place in one["pointers"]}


def test_the_tape_depth_is_assumed() -> None:
    request = example("trench")
    del request["warning_tape_depth"]
    assert assumed(request) == {"#/warning_tape_depth": quantity(12, "in")}


@pytest.mark.parametrize(
    ("practice", "rows"),
    [
        ("formed", {"#/working_space": quantity(6, "in")}),
        ("trench_formed", {}),
        ("direct_buried", {"#/working_space": quantity(3, "in"), "#/least_width": quantity(12, "in")}),
    ],
)
def test_a_width_by_practice_assumes_the_room_beside_the_bank_and_not_the_width(
    practice: str, rows: dict[str, Any]
) -> None:
    request = example("trench", practice=practice)
    del request["width"]
    if practice == "direct_buried":
        del request["concrete_cover"]
    assert assumed(request) == rows


def test_the_room_beside_the_bank_and_the_least_width_may_be_given() -> None:
    request = example("trench", working_space=quantity(9, "in"))
    assert result("trench", request)["width"]["value"] == pytest.approx(36)
    del request["width"]
    assert result("trench", request)["width"]["value"] == pytest.approx(23.5 + 18)
    del request["concrete_cover"]
    narrow = request | {"practice": "direct_buried", "working_space": quantity(0, "in")}
    assert result("trench", narrow | {"least_width": quantity(1, "in")})["width"]["value"] == pytest.approx(17.5)
    assert result("trench", narrow | {"least_width": quantity(24, "in")})["width"]["value"] == pytest.approx(24)


def test_a_stepped_pour_takes_the_same_ground_as_its_concrete() -> None:
    """Derived: trade 4, tiers of 3 and 1 in 3 in of concrete over 323 ft: 23.5 in x 10.5 in and 10.5 in x 6.5 in."""
    bank = example("trench")["bank"] | {"tiers": [3, 1]}
    common = {"length": quantity(323, "ft"), "bank": bank, "concrete_cover": example("trench")["concrete_cover"]}
    poured = result("encasement", common | {"pour_shape": "stepped"})
    dug = result("trench", common | {"pour_shape": "stepped", "cover": quantity(30, "in")})
    by_hand = (23.5 * 10.5 + 10.5 * 6.5) / 144 * 323 / 27
    assert poured["gross_volume"]["value"] == pytest.approx(by_hand)
    assert dug["envelope_volume"]["value"] == pytest.approx(by_hand)
    parts = [dug[f"{name}_volume"]["value"] for name in ("bedding", "envelope", "select_fill", "backfill")]
    assert sum(parts) == pytest.approx(dug["excavation_volume"]["value"])


def test_only_a_formed_pour_steps_with_the_tiers() -> None:
    stepped = example("trench", pour_shape="stepped")
    assert refused("trench", stepped | {"practice": "trench_formed"}) == {"#/pour_shape": "not_with_a_trench_form"}
    assert refused("trench", stepped | {"practice": "direct_buried"}) == {
        "#/pour_shape": "contradiction",
        "#/concrete_cover": "contradiction",
    }


def test_what_a_depth_asks_for_is_told_with_the_depth_it_begins_at() -> None:
    findings = ask("trench", example("trench", cover=quantity(31, "in")))["findings"]
    [egress] = [found for found in findings if found["code"] == "needs_egress"]
    assert (egress["actual"]["value"], egress["limit"]) == (pytest.approx(48), quantity(4, "ft"))
    assert egress["pointer"] == "#/cover"
    assert "within 25 ft" in egress["message"]
    assert "29 CFR 1926 Subpart P" in egress["citation"]


def test_what_a_depth_asks_for_is_about_the_deepest_station() -> None:
    places = [
        {"station": quantity(at, "ft"), "cover": quantity(deep, "in")} for at, deep in ((0, 30), (150, 43), (300, 30))
    ]
    findings = ask("trench", varying(places))["findings"]
    assert [one["pointer"] for one in findings if one["code"] == "needs_egress"] == ["#/stations/1/cover"]


def test_a_trench_has_one_cover_or_stations_and_never_both() -> None:
    places = [{"station": quantity(at, "ft"), "cover": quantity(30, "in")} for at in (0, 300)]
    assert refused("trench", example("trench", stations=places)) == {"#/stations": "one_of_two"}
    assert refused("trench", varying([])) == {"#/cover": "one_of_two"}
    assert ask("trench", example("trench", stations=[])) == ask("trench", example("trench"))
    even, one = result("trench", varying(places)), result("trench", example("trench"))
    assert even == one


def test_the_tape_lies_above_the_bank_where_the_cover_is_least() -> None:
    places = [{"station": quantity(at, "ft"), "cover": quantity(deep, "in")} for at, deep in ((0, 40), (300, 18))]
    answer = ask("trench", varying(places))
    assert "tape_close_to_the_bank" in codes(answer, "caution")
    assert answer["result"]["least_warning_tape_depth"]["value"] == pytest.approx(9)
    assert answer["result"]["warning_tape_depth"]["value"] == pytest.approx(12)


def test_the_tape_lies_deep_but_where_the_cover_is_less() -> None:
    """Derived: from 6 in at 0 to 40 in at 10 ft the cover is 24 in at 18 / 34 x 10 = 5.294 ft, or 5 ft 3-1/2 in."""
    places = [(0, 6), (10, 40), (300, 40)]
    answer = ask(
        "trench",
        varying([{"station": quantity(at, "ft"), "cover": quantity(deep, "in")} for at, deep in places]),
    )
    assert answer["result"]["warning_tape_depth"]["value"] == pytest.approx(12)
    assert answer["result"]["least_warning_tape_depth"]["value"] == pytest.approx(3)
    [found] = [one for one in answer["findings"] if one["code"] == "tape_close_to_the_bank"]
    assert found["message"] == (
        "With 6 in of cover at the least, and less than 24 in from 0 ft to 5 ft 3-1/2 in, the tape cannot lie both "
        "12 in below grade and 12 in above the bank: lay it 3 in below grade and 3 in above the bank there, and deeper "
        "as the cover grows, to 12 in."
    )
    assert (found["actual"]["value"], found["limit"]["value"]) == (pytest.approx(6), pytest.approx(24))


def test_every_place_with_little_cover_is_told_up_to_three() -> None:
    """Derived: cover between 36 in and 12 in every 10 ft is less than 24 in for the half beside the low ones."""
    places = [{"station": quantity(10 * at, "ft"), "cover": quantity((12, 36)[at % 2], "in")} for at in range(11)]
    answer = ask("trench", varying(places, length=quantity(100, "ft")))
    [found] = [one for one in answer["findings"] if one["code"] == "tape_close_to_the_bank"]
    assert "from 0 ft to 5 ft, from 15 ft to 25 ft, from 35 ft to 45 ft and 3 more, the tape" in found["message"]


def test_the_tape_lies_under_a_pavement_and_never_in_it() -> None:
    def paved(cover: float, thick: float) -> dict[str, Any]:
        pavement = {"kind": "concrete", "thickness": quantity(thick, "in")}
        return ask("trench", example("trench", cover=quantity(cover, "in"), pavement=pavement))

    deep = paved(36, 16)  # 20 in under it to the bank
    assert deep["result"]["warning_tape_depth"]["value"] == pytest.approx(16)
    [found] = [one for one in deep["findings"] if one["code"] == "tape_under_the_pavement"]
    assert "The pavement is 16 in thick: the tape lies right under it, not 12 in below grade." in found["message"]
    assert "tape_close_to_the_bank" not in codes(deep)
    shallow = paved(24, 16)  # 8 in of earth: as far above the bank as can be
    assert shallow["result"]["warning_tape_depth"]["value"] == pytest.approx(16)
    [close] = [one for one in shallow["findings"] if one["code"] == "tape_close_to_the_bank"]
    assert "lay it 16 in below grade and 8 in above the bank." in close["message"]
    assert "tape_under_the_pavement" not in codes(paved(36, 12))


def test_where_no_earth_lies_over_the_bank_no_tape_is_laid_in_it() -> None:
    answer = ask("trench", example("trench", cover=quantity(0, "in")))
    [found] = [one for one in answer["findings"] if one["code"] == "tape_close_to_the_bank"]
    assert "no earth lies over the bank to put it in. Mark the bank by other means." in found["message"]
    assert answer["result"]["warning_tape_depth"]["value"] == 0


def test_pavement_taken_up_is_told_apart_from_the_truck_loads_of_earth() -> None:
    """Derived: 36 + 24 = 60 in wide, 300 ft long and 16 in thick is 5 x 300 x 4 / 3 / 27 = 74.07 yd3."""
    pavement = {"kind": "concrete", "thickness": quantity(16, "in"), "cut_back": quantity(12, "in")}
    answer = ask("trench", example("trench", cover=quantity(36, "in"), pavement=pavement))
    [found] = [one for one in answer["findings"] if one["code"] == "pavement_hauled_apart"]
    assert found["actual"] == {"value": pytest.approx(5 * 300 * 4 / 3 / 27), "unit": "yd3"}
    assert found["message"].startswith("74.074 yd3 of pavement, in place, is taken up and hauled apart")
    assert found["pointer"] == "#/pavement"


@pytest.mark.parametrize(("type_", "verdict"), [("pvc_db_60", "not_judged"), ("pvc_schedule_40", None)])
def test_burial_duct_in_earth_is_cautioned_with_its_condition(type_: str, verdict: str | None) -> None:
    request = example("trench", practice="direct_buried")
    request["bank"]["conduit"] = {"kind": "listed", "type": type_, "trade_size": "4"}
    for left_out in ("concrete_cover", "pour_shape"):
        del request[left_out]
    answer = ask("trench", request)
    assert answer.get("verdict") == verdict
    alone = ask("permitted-use", {"conduit_type": type_, "uses": ["direct_burial"]})
    words = [one["message"] for one in alone["findings"] if one["code"] == "use_under_condition"]
    told = [one for one in answer["findings"] if one["code"] == "use_under_condition"]
    assert [one["message"] for one in told] == words
    assert [one["pointer"] for one in told] == ["#/bank/conduit"] * len(words)


def test_earth_is_hauled_away_or_brought_and_neither_is_negative() -> None:
    away = result("trench", example("trench"))
    assert (away["spoil_volume"]["value"] > 0, away["import_volume"]["value"]) == (True, 0)
    shrunk = example("trench", compacted_volume_factor=0.5, loose_volume_factor=1.5)
    brought = result("trench", shrunk)
    assert brought["spoil_volume"]["value"] == 0
    excavated, backfill = (brought[f"{name}_volume"]["value"] for name in ("excavation", "backfill"))
    assert brought["import_volume"]["value"] == pytest.approx((backfill / 0.5 - excavated) * 1.5)
    assert brought["loose_excavation_volume"]["value"] == pytest.approx(excavated * 1.5)


@pytest.mark.parametrize(
    ("soil_type", "words"),
    [("type_c", "the most for Type C soil:"), ("unclassified", "the most for soil that is not classified:")],
)
def test_soil_types_are_written_as_the_rules_print_them(soil_type: str, words: str) -> None:
    request = example("trench", cover=quantity(60, "in"), soil_type=soil_type)
    [found] = [one for one in ask("trench", request)["findings"] if one["code"] == "needs_protection"]
    assert words in found["message"]


def test_the_way_out_of_a_trench_is_told_in_the_units_of_the_answer() -> None:
    findings = ask("trench", example("trench", cover=quantity(60, "in")), "units=metric")["findings"]
    [egress] = [one for one in findings if one["code"] == "needs_egress"]
    assert "within 7.62 m of everybody" in egress["message"]


def test_ducts_approved_only_when_encased_are_not_buried_without_concrete() -> None:
    def buried(kind: str) -> dict[str, Any]:
        request = example("trench", practice="direct_buried")
        del request["concrete_cover"]
        request["bank"]["conduit"] = {"kind": "listed", "type": kind, "trade_size": "4"}
        return ask("trench", request)

    bare = buried("pvc_eb_20")
    [found] = [one for one in bare["findings"] if one["code"] == "needs_concrete"]
    assert (found["severity"], found["pointer"], found["limit"]) == (
        "violation",
        "#/bank/conduit",
        quantity(2, "in"),
    )
    assert bare["verdict"] == "violates"
    assert "verdict" not in buried("pvc_schedule_40")
    assert buried("pvc_db_120")["verdict"] == "not_judged"


def test_a_pour_against_the_earth_of_a_wider_trench_fills_it() -> None:
    """Derived: 36 in wide; 17 in of concrete and 30 in of earth over it, 300 ft."""
    found = result("trench", example("trench", practice="trench_formed"))
    assert found["width"]["value"] == pytest.approx(36)
    assert found["envelope_volume"]["value"] == pytest.approx(3 * 17 / 12 * 300 / 27)
    assert found["backfill_volume"]["value"] == pytest.approx(3 * 30 / 12 * 300 / 27)


def test_select_fill_lies_beside_and_over_the_bank() -> None:
    """Derived: 36 in wide up to 6 in over 17 in of bank, less the bank of 23.5 in; native fill for the 24 in above."""
    found = result("trench", example("trench", select_fill=quantity(6, "in")))
    bank = 23.5 / 12 * 17 / 12 * 300 / 27
    assert found["select_fill_volume"]["value"] == pytest.approx(3 * 23 / 12 * 300 / 27 - bank)
    assert found["backfill_volume"]["value"] == pytest.approx(3 * 24 / 12 * 300 / 27)


@pytest.mark.parametrize(("overlap", "feet"), [(0, 300), (5, 315), (12, 336)])
def test_warning_tape_runs_the_length_and_its_overlap(overlap: float, feet: float) -> None:
    found = result("trench", example("trench", tape_overlap_percent=overlap))
    assert found["warning_tape_length"] == {"value": pytest.approx(feet), "unit": "ft"}


def fall(percent: float, **more: Any) -> dict[str, Any]:
    return {"grade": quantity(percent, "percent")} | more


def test_ducts_that_fall_to_one_end_are_dug_deeper_there() -> None:
    """Derived: 0.5 percent of 300 ft are 18 in, so that 47 in of depth become 65; on average 56, 36 in wide."""
    answer = ask("trench", example("trench", fall=fall(0.5)), "working=true")
    found = answer["result"]
    assert found["fall_height"] == {"value": pytest.approx(18), "unit": "in"}
    assert found["depth"]["value"] == pytest.approx(65)
    assert found["least_cover_over_ducts"]["value"] == pytest.approx(33), "30 in and 3 in of concrete, as without fall"
    assert found["excavation_volume"]["value"] == pytest.approx(3 * 56 / 12 * 300 / 27)
    assert "needs_egress" in codes(answer), "65 in are more than 4 ft"
    assert "fall_too_flat" not in codes(answer)
    assert [line["quantity"]["value"] for line in answer["working"] if line["symbol"] == "fall"] == pytest.approx([18])


def test_ducts_that_fall_are_dug_as_with_the_stations_of_their_cover() -> None:
    places = [{"station": quantity(at, "ft"), "cover": quantity(cover, "in")} for at, cover in ((0, 30), (300, 48))]
    falling, by_station = (
        result("trench", example("trench", fall=fall(0.5), side_slope_ratio=1)),
        result("trench", varying(places, side_slope_ratio=1)),
    )
    assert falling.pop("fall_height")["value"] == pytest.approx(18)
    assert falling.keys() == by_station.keys()
    for name, value in by_station.items():
        if isinstance(value, dict):
            assert falling[name]["value"] == pytest.approx(value["value"]), name


def test_ducts_that_fall_from_the_middle_fall_half_as_far() -> None:
    """Derived: 0.5 percent of 150 ft are 9 in; the mean depth is 47 + 4.5 in."""
    found = result("trench", example("trench", fall=fall(0.5, drains_to="both_ends")))
    assert found["fall_height"]["value"] == pytest.approx(9)
    assert found["depth"]["value"] == pytest.approx(56)
    assert found["excavation_volume"]["value"] == pytest.approx(3 * 51.5 / 12 * 300 / 27)


def test_a_fall_too_small_to_drain_is_a_caution() -> None:
    """Derived: 4 in in 100 ft are a third of a percent."""
    flat = ask("trench", example("trench", fall=fall(0.25)))
    [found] = [one for one in flat["findings"] if one["code"] == "fall_too_flat"]
    assert found["severity"] == "caution"
    assert (found["pointer"], found["actual"]["value"]) == ("#/fall/grade", pytest.approx(0.25))
    assert found["limit"] == {"value": pytest.approx(1 / 3), "unit": "percent"}
    assert found["message"] == (
        "The ducts fall 0.25 percent, too little to drain: lay them with a fall of at least 4 in in 100 ft."
    )
    assert "CEGS-16526A" in found["citation"]
    assert "3 in" in found["citation"], "the spread is told"


def test_ducts_without_a_fall_are_told_to_hold_water() -> None:
    def usual(answer: dict[str, Any]) -> dict[str, str]:
        return {one["code"]: one["message"] for one in answer["cautions"]}

    assert "4 in in 100 ft" in usual(ask("trench", example("trench")))["ducts_drain"]
    assert "101.6 mm in 30.48 m" in usual(ask("trench", example("trench"), "units=metric"))["ducts_drain"]
    assert "ducts_drain" not in usual(ask("trench", example("trench", fall=fall(0.5))))
    assert "fall_height" not in result("trench", example("trench"))


def test_a_fall_is_not_given_beside_stations_nor_deeper_than_any_trench() -> None:
    places = [{"station": quantity(at, "ft"), "cover": quantity(30, "in")} for at in (0, 300)]
    assert refused("trench", varying(places, fall=fall(0.5))) == {"#/fall": "not_with_stations"}
    [deep] = faults("trench", example("trench", fall=fall(30), length=quantity(900, "ft")))
    assert (deep["pointer"], deep["code"]) == ("#/fall/grade/value", "too_deep")
    assert deep["maximum"] == {"value": pytest.approx((1200 - 30) / 12 / 900 * 100), "unit": "percent"}
