"""Conductor count: which percentage decides, and what is counted as none."""

from __future__ import annotations

import math

import pytest

from tests.asking import codes, problem, quantity
from tests.subjects.fill.sets import cable, count, fill, listed, pvc


def test_a_single_table_conductor_is_counted_as_annex_c_counts_it() -> None:
    answer = count(pvc("1/2"), listed("THHN", "1/0 AWG"))
    assert answer["result"]["maximum_count"] == 1
    assert answer["result"]["rounding_decided"]
    assert answer["result"]["limit_percent"] == 53
    assert fill(pvc("1/2"), listed("THHN", "1/0 AWG", 1))["verdict"] == "complies"


def test_a_count_says_which_percentage_decided() -> None:
    two = count({"kind": "listed", "type": "emt", "trade_size": "1-1/4"}, listed("RHH", "1/0 AWG"))
    assert (two["result"]["maximum_count"], two["result"]["limit_percent"]) == (1, 53)
    assert "stricter_percentage" in codes(two, "note")
    none = count(pvc("1/2"), listed("THHN", "500 kcmil"))
    assert none["result"]["maximum_count"] == 0
    assert "not_even_one" in codes(none, "violation")
    nipple = count(pvc("2"), listed("THHN", "12 AWG"), nipple_length=quantity(600, "mm"))
    assert nipple["result"]["limit_percent"] == 60
    assert nipple["result"]["maximum_count"] > count(pvc("2"), listed("THHN", "12 AWG"))["result"]["maximum_count"]


def test_a_cable_wider_than_the_bore_is_counted_as_none() -> None:
    assert count(pvc("1/2"), cable(0.7))["result"]["maximum_count"] == 0


def test_all_faults_of_a_count_come_at_once() -> None:
    raised = problem(
        "conductor-count",
        {"conduit": {"kind": "listed", "type": "ent", "trade_size": "4"}, "cable": listed("THHN", "2000 kcmil")},
    )
    assert raised.errors is not None
    assert {error.pointer for error in raised.errors} == {"#/conduit/trade_size", "#/cable/size"}


def test_a_count_of_none_violates_and_any_other_complies() -> None:
    none, one = (count(pvc(trade_size), listed("THHN", "500 kcmil")) for trade_size in ("1/2", "2"))
    assert (none["verdict"], none["result"]["maximum_count"]) == ("violates", 0)
    assert (one["verdict"], one["result"]["maximum_count"]) == ("complies", 1)
    [violation] = [finding for finding in none["findings"] if finding["severity"] == "violation"]
    assert (violation["code"], violation["pointer"]) == ("not_even_one", "#/cable")
    assert violation["actual"]["value"] < 1
    assert violation["limit"] == quantity(1, "1")


def test_a_cable_is_rounded_up_only_if_asked_and_its_verdict_follows() -> None:
    """A 1.5 in cable in a 2 inch: the percentage holds 0.987 of it."""
    assert count(pvc("2"), cable(1.5))["verdict"] == "violates"
    assert count(pvc("2"), cable(1.5), single_cable_rounding=True)["verdict"] == "complies"


def test_the_exact_count_is_the_share_of_the_circle_over_one_conductor() -> None:
    """NFPA 70, Chapter 9: 40 percent of a circle of 1.049 in over 0.0133 in2 is 25.99, and Annex C prints 26."""
    found = count({"kind": "listed", "type": "emt", "trade_size": "1"}, listed("THHN", "12 AWG"))["result"]
    assert found["exact_count"] == pytest.approx(0.4 * math.pi / 4 * 1.049**2 / 0.0133, abs=1e-9)
    assert (found["maximum_count"], found["rounding_decided"]) == (26, True)
