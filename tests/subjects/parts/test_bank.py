"""The bank several operations ask for: what cannot be placed, and what lies closer than published."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, problem, quantity


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def banked(name: str, bank: dict[str, Any], **changes: Any) -> dict[str, Any]:
    request = example(name, **changes)
    request["bank"] |= bank
    return request


def refused(name: str, request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem(name, request).errors or ()}


@pytest.mark.parametrize(
    ("bank", "expected"),
    [
        ({"signal_ducts": [0, 1]}, {"#/bank/signal_ducts": "one_for_each_tier"}),
        ({"signal_ducts": [0, 1, 4]}, {"#/bank/signal_ducts/2": "more_than_the_tier"}),
        (
            {"separation_measure": "center_to_center", "horizontal_separation": quantity(4, "in")},
            {"#/bank/horizontal_separation": "ducts_overlap", "#/bank/vertical_separation": "ducts_overlap"},
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


def closer(bank: dict[str, Any]) -> dict[str, dict[str, Any]]:
    findings = ask("encasement", banked("encasement", bank))["findings"]
    return {found["pointer"]: found for found in findings if found["code"] == "closer_than_published"}


def test_ducts_closer_than_any_published_separation_are_cautioned() -> None:
    assert closer({}) == {}
    assert closer({"horizontal_separation": quantity(1, "in"), "vertical_separation": quantity(1, "in")}) == {}
    found = closer({"horizontal_separation": quantity(0.9, "in"), "vertical_separation": quantity(0.8, "in")})
    assert {place: (one["actual"]["value"], one["limit"]) for place, one in found.items()} == {
        "#/bank/horizontal_separation": (pytest.approx(0.9), quantity(1, "in")),
        "#/bank/vertical_separation": (pytest.approx(0.8), quantity(1, "in")),
    }
    between_centers = {
        "separation_measure": "center_to_center",
        "horizontal_separation": quantity(5.2, "in"),
        "vertical_separation": quantity(7.5, "in"),
    }
    centers = closer(between_centers)
    assert centers["#/bank/horizontal_separation"]["actual"]["value"] == pytest.approx(0.7)


def test_signals_closer_to_power_than_published_are_cautioned() -> None:
    beside = {"signal_ducts": [1, 1, 1], "power_signal_separation": quantity(2.5, "in")}
    above = {"signal_ducts": [0, 0, 3], "power_signal_separation": quantity(2.5, "in")}
    for bank in (beside, above):
        [(place, found)] = closer(bank).items()
        assert place == "#/bank/power_signal_separation"
        assert (found["actual"]["value"], found["limit"]) == (pytest.approx(2.5), quantity(3, "in"))
        assert closer(bank | {"power_signal_separation": quantity(3, "in")}) == {}


def test_the_published_spread_is_told_with_a_separation_that_is_assumed() -> None:
    request = banked("encasement", {"signal_ducts": [1, 1, 1]})
    for member in ("horizontal_separation", "vertical_separation"):
        del request["bank"][member]
    told = {place: one["citation"] for one in ask("encasement", request)["assumptions"] for place in one["pointers"]}
    assert told["#/bank/horizontal_separation"].endswith("published from 1 to 2 in")
    assert told["#/bank/power_signal_separation"].endswith("published from 3 to 4 in")


def test_an_overhanging_tier_is_named_in_the_bank() -> None:
    findings = ask("encasement", banked("encasement", {"tiers": [2, 2, 3]}))["findings"]
    assert [found["pointer"] for found in findings if found["code"] == "tier_overhangs"] == ["#/bank/tiers/2"]


@pytest.mark.parametrize("name", ["encasement", "flotation", "trench"])
def test_lists_of_no_item_are_taken_as_none(name: str) -> None:
    asked = ask(name, banked(name, {"tier_conduits": [], "signal_ducts": []}))
    assert asked == ask(name, example(name))
