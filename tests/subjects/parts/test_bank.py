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
        ({"tier_ducts": [[{"count": 3}]]}, {"#/bank/tier_ducts": "one_of_two"}),
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
    [alike] = closer({"horizontal_separation": quantity(0.9999999, "in")}).values()
    assert alike["message"].startswith("Ducts lie 0.9999999 in clear of each other, less than the 1 in ")
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
    asked = ask(name, banked(name, {"tier_ducts": [], "signal_ducts": []}))
    assert asked == ask(name, example(name))


@pytest.mark.parametrize(
    ("tier_ducts", "expected"),
    [
        (None, {"#/bank/tiers": "one_of_two"}),
        ([], {"#/bank/tiers": "one_of_two"}),
        ([[{"count": 30}, {"count": 11}], [{"count": 3}]], {"#/bank/tier_ducts/0": "more_than_a_tier"}),
        (
            [[{"count": 2}, {"count": 1, "conduit": {"kind": "measured", "inside_diameter": quantity(2, "in")}}]],
            {"#/bank/tier_ducts/0/1/conduit/outside_diameter": "missing"},
        ),
    ],
)
@pytest.mark.parametrize("name", ["encasement", "flotation", "trench"])
def test_ducts_that_differ_are_refused_where_they_were_given(
    name: str, tier_ducts: list[Any] | None, expected: dict[str, str]
) -> None:
    request = banked(name, {} if tier_ducts is None else {"tier_ducts": tier_ducts})
    del request["bank"]["tiers"]
    assert refused(name, request) == expected


def test_ducts_of_two_sizes_lie_beside_each_other_in_a_tier() -> None:
    """Derived: 4.5 + 2 + 4.5 + 2 + 2.375 in of ducts and 2 x 3 in of concrete; the tier above has one large duct."""
    small = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"}
    request = banked("encasement", {"tier_ducts": [[{"count": 2}, {"count": 1, "conduit": small}], [{"count": 1}]]})
    del request["bank"]["tiers"]
    found = ask("encasement", request)["result"]
    assert found["envelope_width"]["value"] == pytest.approx(15.375 + 6)
    assert found["envelope_height"]["value"] == pytest.approx(4.5 + 2 + 4.5 + 6)
    assert [duct["outside_diameter"]["value"] for duct in found["ducts"]] == pytest.approx([4.5, 4.5, 2.375, 4.5])
    assert [duct["tier"] for duct in found["ducts"]] == [1, 1, 1, 2]


def test_a_bank_of_one_kind_is_answered_alike_however_its_ducts_are_written() -> None:
    tiers = [[{"count": 1}, {"count": 2}], [{"count": 3, "conduit": EXAMPLES["encasement"]["bank"]["conduit"]}]]
    written = banked("encasement", {"tier_ducts": tiers})
    del written["bank"]["tiers"]
    assert ask("encasement", written)["result"] == ask("encasement", banked("encasement", {"tiers": [3, 3]}))["result"]
