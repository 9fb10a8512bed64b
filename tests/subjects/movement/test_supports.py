"""Supports: how far apart straps may stand, and where they go."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from ductrun.tables import TABLES

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity


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
    [error] = faults("supports", EXAMPLES["supports"] | {"conduit": listed("rmc", "3/8")})
    assert error["allowed_values"][0] == "1/2"
    long = problem("supports", EXAMPLES["supports"] | {"length": quantity(90_000, "ft")})
    assert long.errors is not None
    assert long.errors[0].pointer == "#/length/value"


def test_every_finding_says_which_member_it_is_about() -> None:
    answer = straps(end_distance=quantity(4, "ft"))
    assert {finding["code"]: finding["pointer"] for finding in answer["findings"]} == {
        "end_support_too_far": "#/end_distance",
        "straps_let_it_slide": "#/conduit",
    }


def test_the_end_straps_decide_the_verdict() -> None:
    assert straps(end_distance=quantity(3, "ft"))["verdict"] == "complies"
    assert straps(end_distance=quantity(37, "in"))["verdict"] == "violates"


def test_a_violation_is_told_in_the_units_of_the_answer() -> None:
    request = EXAMPLES["supports"] | {"end_distance": quantity(4, "ft")}
    [found] = [one for one in ask("supports", request, "units=metric")["findings"] if one["severity"] == "violation"]
    assert found["message"] == "The end straps stand 1.2192 m from the terminations; 0.9144 m is the most."
