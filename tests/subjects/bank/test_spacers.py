"""Spacers: stations by distance and by stick, pieces of stepped banks, what is cautioned."""

from __future__ import annotations

import copy
import re
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity, result


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def without(name: str, *fields: str) -> dict[str, Any]:
    return {key: value for key, value in example(name).items() if key not in fields}


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
    assert "CEGS-16526A" in note["citation"]
    practice = ask("spacers", request | {"interval": {"kind": "preset", "preset": "trade_6ft"}})
    [note] = [found for found in practice["findings"] if found["code"] == "preset_interval"]
    assert "common practice" in note["citation"]
    request = example("spacers", interval={"kind": "preset", "preset": "trade_two_per_10ft"})
    del request["end_offset"]
    assert result("spacers", request)["station_count"] == 60


def test_whole_tier_and_whole_bank_pieces() -> None:
    request = example("spacers", top_closure="cap")
    del request["duct_count_per_spacer"]
    tier = ask("spacers", request | {"piece_system": "whole_tier"})
    stations = tier["result"]["station_count"]
    assert [tier["result"][f"{kind}_count"] for kind in ("base_spacer", "intermediate_spacer", "top_piece")] == [
        stations,
        2 * stations,
        stations,
    ]
    assert "tiers_not_staggered" in codes(tier)
    whole = result("spacers", request | {"piece_system": "whole_bank"})
    assert whole["piece_count"] == 2 * stations


def on_joints(request: dict[str, Any]) -> dict[str, Any]:
    [found] = [one for one in ask("spacers", request)["findings"] if one["code"] == "stations_on_joints"]
    return dict(found)


def test_stations_on_the_joints_are_a_caution_that_names_an_offset_which_clears_them() -> None:
    """Derived: 300 ft at 5 ft, joints from 20 to 280 ft. Station k of 60 intervals stands at 5 k + e (1 - k / 30): that
    of the joint at 140 ft, e / 15 off it, not 6 in before 7.5 ft; from e = 2.5 ft on there are 59, all 2.5 ft off.
    """
    request = example("spacers", stick_length=quantity(20, "ft"))
    found = on_joints(request)
    assert (found["actual"]["value"], found["limit"]["value"]) == (14, 0)
    assert found["message"].startswith(
        "14 of 61 stations stand closer than 6 in to a joint every 20 ft. An end_offset of "
    )
    assert "of 30 in clears them all, with 60 stations." in found["message"]
    moved = ask("spacers", request | {"end_offset": quantity(30, "in")})
    assert "stations_on_joints" not in codes(moved)
    assert moved["result"]["station_count"] == 60


def test_the_stations_told_with_the_joints_are_those_of_the_answer() -> None:
    request = example("spacers", stick_length=quantity(20, "ft"), shared_end_count=1)
    assert on_joints(request)["message"].startswith("14 of 60 stations")
    assert result("spacers", request)["station_count"] == 60


def test_a_shared_end_has_its_station_at_the_end_itself() -> None:
    """100 ft at 5 ft are 21 stations, 20 of its own; with an offset none is at the end, and none can be shared."""
    request = example("spacers", length=quantity(100, "ft"), stick_length=quantity(20, "ft"), shared_end_count=1)
    assert result("spacers", request)["station_count"] == 20
    found = on_joints(request)
    assert found["message"].endswith("A run that shares a station at its end has no offset: move those off the bells.")
    [error] = faults("spacers", request | {"end_offset": quantity(30, "in")})
    assert (error["pointer"], error["code"], error["maximum"]["value"]) == ("#/shared_end_count", "contradiction", 0)
    alone = result("spacers", request | {"end_offset": quantity(30, "in"), "shared_end_count": 0})
    assert alone["station_count"] == 20


def test_stations_by_stick_share_no_end() -> None:
    request = without("spacers", "end_offset") | {"shared_end_count": 1}
    request["interval"] = {"kind": "per_stick", "count": 2, "stick_length": quantity(10, "ft")}
    [error] = faults("spacers", request)
    assert (error["pointer"], error["code"]) == ("#/shared_end_count", "not_with_per_stick")


def test_the_far_end_of_a_run_is_no_joint() -> None:
    request = example("spacers", length=quantity(20, "ft"), stick_length=quantity(20, "ft"))
    assert "stations_on_joints" not in codes(ask("spacers", request))


def test_where_no_offset_clears_the_joints_that_is_said() -> None:
    close = {"kind": "distance", "distance": quantity(9, "in")}
    request = example("spacers", interval=close, stick_length=quantity(20, "ft"))
    assert "No end_offset up to half an interval, in steps of 1 in, clears them all" in on_joints(request)["message"]
    request = without("spacers", "end_offset") | {"stick_length": quantity(10, "ft")}
    request["interval"] = {"kind": "per_stick", "count": 20, "stick_length": quantity(10, "ft")}
    assert "Stations by stick have no offset" in on_joints(request)["message"]
    assert "end_offset" not in on_joints(request)["message"], "they would be refused it"


@pytest.mark.parametrize(
    "interval",
    [
        {"kind": "per_stick", "count": 2, "stick_length": quantity(10, "ft")},
        {"kind": "preset", "preset": "trade_two_per_10ft"},
    ],
)
def test_sticks_have_one_length(interval: dict[str, Any]) -> None:
    request = example("spacers", interval=interval, stick_length=quantity(20, "ft"))
    found = {error["pointer"]: error for error in faults("spacers", request)}
    assert {where: error["code"] for where, error in found.items()} == {
        "#/end_offset": "not_with_per_stick",
        "#/stick_length": "contradiction",
    }
    assert found["#/stick_length"]["minimum"] == found["#/stick_length"]["maximum"] == quantity(10, "ft")
    del request["end_offset"]
    same = request | {"stick_length": quantity(120, "in")}
    assert result("spacers", same) == result("spacers", {k: v for k, v in request.items() if k != "stick_length"})


def test_of_very_many_stations_no_offset_is_looked_for() -> None:
    request = example("spacers", length=quantity(12_000, "ft"), stick_length=quantity(20, "ft"))
    assert on_joints(request)["message"].endswith("20 ft. Move those off the bells.")


def of_bank(**changes: Any) -> dict[str, Any]:
    small = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"}
    bank = {
        "conduit": EXAMPLES["encasement"]["bank"]["conduit"],
        "tier_ducts": [
            [{"count": 2}, {"count": 1, "conduit": small}],
            [{"count": 2}],
            [{"count": 2, "conduit": small}],
        ],
    }
    return without("spacers", "tiers") | {"bank": bank} | changes


def test_spacers_of_a_bank_are_counted_by_size() -> None:
    """Derived: 61 stations; of 4.5 in 2 base pieces, 2 between, and 2 that close as none lies above; of 2.375 in 1, 2
    and 1 + 2. With 5 percent 366 are 385 and 366 are 385.
    """
    found = result("spacers", of_bank(top_closure="cap"))
    assert [size["outside_diameter"]["value"] for size in found["sizes"]] == pytest.approx([4.5, 2.375])
    kinds = ("base_spacer_count", "intermediate_spacer_count", "top_piece_count")
    assert [[size[kind] for kind in kinds] for size in found["sizes"]] == [[122, 122, 122], [61, 122, 183]]
    assert [size["order_count"] for size in found["sizes"]] == [385, 385]
    assert (found["piece_count"], found["order_count"]) == (732, 770)
    assert (found["base_spacer_count"], found["intermediate_spacer_count"], found["top_piece_count"]) == (183, 244, 305)


def test_spacers_of_a_bank_of_one_size_are_those_of_its_tiers() -> None:
    bank = {"conduit": EXAMPLES["encasement"]["bank"]["conduit"], "tiers": [3, 3, 2]}
    found = result("spacers", without("spacers", "tiers") | {"bank": bank})
    [size] = found.pop("sizes")
    assert found == result("spacers", example("spacers"))
    assert size["order_count"] == found["order_count"]


def test_pieces_that_carry_a_tier_have_no_size() -> None:
    request = of_bank(piece_system="whole_tier")
    del request["duct_count_per_spacer"]
    found = result("spacers", request)
    assert "sizes" not in found
    assert found["piece_count"] == 3 * 61


def test_spacers_are_asked_for_tiers_or_for_a_bank() -> None:
    def refused(request: dict[str, Any]) -> dict[str, str]:
        return {str(error.pointer): error.code for error in problem("spacers", request).errors or ()}

    assert refused(of_bank(tiers=[3])) == {"#/bank": "one_of_two"}
    assert refused(without("spacers", "tiers")) == {"#/tiers": "one_of_two"}


@pytest.mark.parametrize("preset", ["trade_6ft", None])
def test_the_offset_is_looked_for_at_the_interval_that_was_asked(preset: str | None) -> None:
    request = example("spacers", stick_length=quantity(20, "ft"), length=quantity(323, "ft"))
    request["interval"] = {"kind": "preset", "preset": preset} if preset else None
    request = {name: one for name, one in request.items() if one is not None}
    for found in ask("spacers", request)["findings"]:
        named = re.search(r"An end_offset of ([\d.]+) in clears them all", found["message"])
        if named:
            moved = request | {"end_offset": quantity(float(named[1]), "in")}
            assert "stations_on_joints" not in codes(ask("spacers", moved))
            return
    raise AssertionError("an offset clears these joints")


def test_a_tier_wider_than_the_one_below_is_a_caution() -> None:
    assert "tier_overhangs" in codes(ask("spacers", example("spacers", tiers=[2, 3])), "caution")


def test_spacers_by_stick_need_no_end_offset() -> None:
    request = without("spacers", "end_offset")
    request["interval"] = {"kind": "per_stick", "count": 2, "stick_length": quantity(10, "ft")}
    answer = ask("spacers", request, "working=true")
    assert answer["result"]["station_count"] == 60
    assert answer["result"]["actual_spacing"]["value"] == pytest.approx(5)


def test_stations_far_apart_are_a_caution() -> None:
    interval = {"kind": "distance", "distance": quantity(12, "ft")}
    assert "spacing_beyond_published" in codes(ask("spacers", example("spacers", interval=interval)), "caution")


def test_a_single_station_has_no_spacing() -> None:
    found = result("spacers", example("spacers", length=quantity(1, "ft"), end_offset=quantity(0.5, "ft")))
    assert found["station_count"] == 1
    assert "actual_spacing" not in found


def test_top_pieces_close_the_stacks() -> None:
    closed = result("spacers", example("spacers", top_closure="cap"))
    assert closed["top_piece_count"] == 3 * closed["station_count"]
    assert closed["piece_count"] == 11 * closed["station_count"]


@pytest.mark.parametrize(
    ("preset", "query", "words"),
    [
        ("cegs_4ft", "", "Taken are stations at most 4 ft apart, as is published for encased ducts."),
        ("wsu_direct_5ft", "units=metric", "Taken are stations at most 1.524 m apart"),
        ("master_5_per_20ft", "", "Taken are 5 stations for each stick of 20 ft, as is published"),
        ("trade_6ft", "", "Taken are stations at most 6 ft apart, as is usual for encased ducts."),
    ],
)
def test_a_preset_says_what_was_taken_and_leaves_its_source_to_the_citation(
    preset: str, query: str, words: str
) -> None:
    request = without("spacers", "end_offset") | {"interval": {"kind": "preset", "preset": preset}}
    [note] = [found for found in ask("spacers", request, query)["findings"] if found["code"] == "preset_interval"]
    assert note["message"].startswith(words)
    assert note["citation"] not in note["message"]


def test_stations_far_apart_are_told_in_the_units_of_the_answer() -> None:
    request = example("spacers", interval={"kind": "distance", "distance": quantity(12, "ft")})
    findings = ask("spacers", request, "units=metric")["findings"]
    [found] = [one for one in findings if one["code"] == "spacing_beyond_published"]
    assert "(1.2192 m to 3.048 m)" in found["message"]


def test_a_stepped_bank_of_three_three_and_two_by_hand() -> None:
    """Derived: 300 ft at 5 ft are 61 stations; 3 base pieces and 3 + 2 above them at each; 488 and 5 percent is 513."""
    found = result("spacers", example("spacers"))
    assert found["station_count"] == 61
    assert found["base_spacer_count"] == 61 * 3
    assert found["intermediate_spacer_count"] == 61 * 5
    assert found["piece_count"] == 488
    assert found["order_count"] == 513


def test_a_spacing_that_reads_like_the_widest_is_told_to_the_digit_that_parts_them() -> None:
    interval = {"kind": "distance", "distance": quantity(10.0001, "ft")}
    request = example("spacers", interval=interval, length=quantity(300.003, "ft"))
    [found] = [one for one in ask("spacers", request)["findings"] if one["code"] == "spacing_beyond_published"]
    assert "Stations 10.0001 ft apart are wider than any specification on file (4 ft to 10 ft)" in found["message"]
