"""Movement and support above ground: several runs, both conventions, the crew's table, straps."""

from __future__ import annotations

import copy
from itertools import pairwise
from typing import Any

import pytest
from ductrun.engineering.expansion import centered_opening, piston_opening
from ductrun.engineering.supports import support_positions
from ductrun.tables import TABLES
from hypothesis import given
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, codes, problem, quantity

RANGE = {
    "kind": "range",
    "lowest": quantity(0, "degF"),
    "highest": quantity(140, "degF"),
    "installation": quantity(60, "degF"),
    "direct_sun": False,
}


def move(**changes: Any) -> dict[str, Any]:
    request: dict[str, Any] = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE} | changes
    for field in [field for field, value in request.items() if value is None]:
        del request[field]
    return ask("expansion", request)


def test_each_straight_run_is_judged_on_its_own() -> None:
    """Forty feet need a fitting, three do not, though ten of three together are thirty."""
    runs = [quantity(40, "ft"), *[quantity(3, "ft")] * 10]
    found = move(length=None, straight_runs=runs)["result"]
    assert [run["fitting_required"] for run in found["runs"]] == [True] + [False] * 10
    assert found["fitting_count"] == 1
    assert found["length_change"] == found["runs"][0]["length_change"]
    assert "fitting_spacing" not in found
    assert "piston_opening" not in found
    assert found["runs"][0]["piston_settings"]
    messages = [finding["message"] for finding in move(length=None, straight_runs=runs)["findings"]]
    assert any(message.startswith("Run 1 moves") for message in messages)


def test_a_run_is_given_one_way_or_the_other() -> None:
    for changes, pointer in (
        ({"straight_runs": [quantity(3, "ft")]}, "#/straight_runs"),
        ({"length": None}, "#/length"),
    ):
        request = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE} | changes
        raised = problem("expansion", {field: value for field, value in request.items() if value is not None})
        assert raised.errors is not None
        assert raised.errors[0].pointer == pointer


def test_fittings_stand_in_the_middle_of_equal_pieces_anchored_between() -> None:
    [run] = move(length=quantity(380, "ft"))["result"]["runs"]
    assert run["fitting_count"] == 4
    assert [place["value"] for place in run["fitting_positions"]] == pytest.approx([47.5, 142.5, 237.5, 332.5])
    assert [place["value"] for place in run["anchor_positions"]] == pytest.approx([95, 190, 285])


def test_the_crew_carries_a_table_of_openings() -> None:
    asked = [quantity(degrees, "degF") for degrees in (0, 40, 100, 140)]
    [run] = move(setting_temperatures=asked)["result"]["runs"]
    openings = [line["opening"]["value"] for line in run["piston_settings"]]
    assert [line["temperature"] for line in run["piston_settings"]] == [quantity(60, "degF"), *asked]
    assert openings == pytest.approx([6 * 80 / 140, 6, 6 * 100 / 140, 6 * 40 / 140, 0], abs=1e-9)


def test_both_conventions_are_given_and_the_default_is_stated() -> None:
    stated = move()
    assumed = {place: assumption for assumption in stated["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/piston_convention"]["value"] == "full_travel"
    assert "closed at the highest" in assumed["#/piston_convention"]["source"]
    assert stated["result"]["piston_opening"]["value"] == pytest.approx(6 * 80 / 140)
    change = 3.38e-5 * 12 * 200 * 140 / 2
    centered = move(piston_convention="centered")["result"]["piston_opening"]["value"]
    assert centered == pytest.approx(change * 80 / 140 + (6 - change) / 2)


def test_the_default_convention_is_stated_once_for_many_runs() -> None:
    answer = move(length=None, straight_runs=[quantity(90, "ft"), quantity(80, "ft")])
    assert [place for assumption in answer["assumptions"] for place in assumption["pointers"]].count(
        "#/piston_convention"
    ) == 1


def test_a_setting_temperature_outside_of_the_range_is_refused() -> None:
    request = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE}
    raised = problem("expansion", request | {"setting_temperatures": [quantity(60, "degF"), quantity(61, "degC")]})
    assert raised.errors is not None
    assert raised.errors[0].pointer == "#/setting_temperatures/1/value"
    spread = {"kind": "difference", "difference": quantity(100, "delta_degF")}
    raised = problem("expansion", request | {"temperatures": spread, "setting_temperatures": [quantity(60, "degF")]})
    assert raised.errors is not None
    assert raised.errors[0].code == "needs_a_range"


def test_the_travels_that_are_sold_are_compared() -> None:
    found = move(length=quantity(380, "ft"))["result"]  # 21.58 in
    assert [(option["fitting_travel"]["value"], option["fitting_count"]) for option in found["travel_options"]] == [
        (2, 11),
        (4, 6),
        (6, 4),
        (8, 3),
    ]
    assert found["travel_needed"]["value"] == pytest.approx(21.578, abs=0.001)
    assert "travel_needed" not in move(length=quantity(3, "ft"))["result"]


@pytest.mark.parametrize("setting", ["buried", "encased"])
def test_a_run_held_by_the_ground_is_explained_not_computed(setting: str) -> None:
    answer = move(setting=setting)
    assert f"{setting}_run_is_held" in codes(answer, "note")
    assert answer["result"]["runs"] == []
    assert "length_change" not in answer["result"]
    assert not answer["result"]["fitting_required"]
    assert "free_to_move" not in codes(answer)


def test_emergence_and_structural_joints_are_found() -> None:
    answer = move(emerges_from_grade=True, crosses_structural_joint=True)
    sources = {finding["code"]: finding["source"] for finding in answer["findings"]}
    assert sources["emerges_from_grade"] == "NFPA 70-2023, 300.5(J)"
    assert sources["crosses_structural_joint"] == "NFPA 70-2023, 300.4(H)"
    quiet = codes(move(emerges_from_grade=False))
    assert not {"emerges_from_grade", "crosses_structural_joint"} & set(quiet)


def test_the_section_follows_the_edition() -> None:
    for edition, section in (("2020", "352.44"), ("2023", "352.44(A)")):
        found = next(finding for finding in move(code_edition=edition)["findings"] if finding["code"] == "free_to_move")
        assert found["source"] == f"NFPA 70-{edition}, {section}"


TEMPERATURES = st.tuples(
    st.floats(min_value=200, max_value=300), st.floats(min_value=1, max_value=120), st.floats(min_value=0, max_value=1)
)


@given(span=TEMPERATURES, travel=st.floats(min_value=0.02, max_value=0.3), share=st.floats(min_value=0.01, max_value=1))
def test_either_setting_keeps_the_piston_within_its_travel(
    span: tuple[float, float, float], travel: float, share: float
) -> None:
    """Set at any temperature of the range, the piston neither bottoms out when hottest nor pulls out when coldest."""
    lowest, wide, where = span
    highest, change = lowest + wide, travel * share
    installed = lowest + wide * where
    rate = change / wide
    for opening in (
        piston_opening(travel, lowest, highest, installed),
        centered_opening(travel, change, lowest, highest, installed),
    ):
        hottest = opening - rate * (highest - installed)
        coldest = opening + rate * (installed - lowest)
        assert -1e-9 <= hottest <= travel + 1e-9
        assert -1e-9 <= coldest <= travel + 1e-9


@given(span=TEMPERATURES, travel=st.floats(min_value=0.02, max_value=0.3))
def test_the_conventions_agree_when_the_whole_travel_is_used(span: tuple[float, float, float], travel: float) -> None:
    lowest, wide, where = span
    given_at = (lowest, lowest + wide, lowest + wide * where)
    assert centered_opening(travel, travel, *given_at) == pytest.approx(piston_opening(travel, *given_at))


def straps(**changes: Any) -> dict[str, Any]:
    return ask("supports", copy.deepcopy(EXAMPLES["supports"]) | changes)


def listed(kind: str, size: str) -> dict[str, str]:
    return {"kind": "listed", "type": kind, "trade_size": size}


@pytest.mark.parametrize("row", TABLES["support_spacing"], ids=lambda row: f"{row.type} {row.trade_size_from}")
def test_every_row_of_the_support_tables_is_answered(row: Any) -> None:
    kind = {"pvc": "pvc_schedule_80"}.get(row.type, row.type)
    for size in (row.trade_size_from, row.trade_size_to):
        found = straps(conduit=listed(kind, size))["result"]
        assert found["support_spacing"] == quantity(row.maximum_spacing_ft, "ft")


def test_a_hundred_feet_of_2_inch_pvc_needs_twenty_straps() -> None:
    found = straps()["result"]
    assert found["support_count"] == 20  # 94 ft between end straps in 19 gaps of at most 5 ft
    assert found["positions"][0] == quantity(3.0, "ft")
    assert found["positions"][-1]["value"] == pytest.approx(97)
    assert found["actual_spacing"]["value"] == pytest.approx(94 / 19)


def test_a_short_run_needs_one_strap_in_its_middle() -> None:
    found = straps(length=quantity(6, "ft"))["result"]
    assert found["support_count"] == 1
    assert found["positions"] == [quantity(3.0, "ft")]
    assert "actual_spacing" not in found


def test_a_run_that_goes_on_is_strapped_up_to_where_the_next_one_falls() -> None:
    found = straps(length=quantity(20, "ft"), termination_count=1)["result"]
    assert [place["value"] for place in found["positions"]] == pytest.approx([3, 8, 13, 18])


def test_small_conduit_has_its_end_strap_no_farther_than_its_spacing() -> None:
    found = straps(conduit=listed("pvc_schedule_40", "1/2"), length=quantity(10, "ft"))["result"]
    assert [place["value"] for place in found["positions"]] == pytest.approx([3, 5, 7])


def test_an_end_strap_beyond_3_ft_is_a_violation() -> None:
    answer = straps(end_distance=quantity(4, "ft"))
    assert "end_support_too_far" in codes(answer, "violation")


def test_a_size_without_a_row_is_answered_with_those_there_are() -> None:
    raised = problem("supports", EXAMPLES["supports"] | {"conduit": listed("rmc", "3/8")})
    assert raised.errors is not None
    assert raised.errors[0].allowed[0] == "1/2"
    long = problem("supports", EXAMPLES["supports"] | {"length": quantity(90_000, "ft")})
    assert long.errors is not None
    assert long.errors[0].pointer == "#/length/value"


@given(
    length=st.floats(min_value=0.01, max_value=500),
    spacing=st.sampled_from([3.0, 5.0, 6.0, 7.0, 8.0, 10.0, 20.0]),
    end=st.floats(min_value=0, max_value=3),
    terminations=st.sampled_from([1, 2]),
)
def test_no_gap_is_wider_than_allowed_and_no_strap_is_wasted(
    length: float, spacing: float, end: float, terminations: int
) -> None:
    places = support_positions(length, spacing, end, terminations)
    assert all(0 <= place <= length + 1e-9 for place in places)
    assert places[0] <= max(end, length / 2) + 1e-9
    assert all(other - one <= spacing * (1 + 1e-8) for one, other in pairwise(places))
    if terminations == 2:
        assert length - places[-1] <= max(end, length / 2) + 1e-9
        if len(places) > 2:
            assert (places[-1] - places[0]) / (len(places) - 2) > spacing * (1 - 1e-8), "one strap fewer would do"
    else:
        assert length - places[-1] <= spacing * (1 + 1e-8)
