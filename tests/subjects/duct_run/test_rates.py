"""The caller's rates: what they are for, what they come to, and what gaps they leave; all of it derived."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import ask, codes, faults, quantity
from tests.subjects.duct_run.runs import buried, listed

# two ducts of 100 ft: 206 ft with 3 percent are 11 sticks of 20 ft; 4 joints between the 5 sticks of each and a bell at
# either end are 12 joints, 30 a quart; the cord is 2 x (100 + 2 x 10) ft
RUN: dict[str, Any] = {
    "bank": {"conduit": listed("4"), "tiers": [2]},
    "start": {"kind": "handhole", "name": "A"},
    "stretches": [{"name": "field", "setting": buried(), "length": quantity(100, "ft")}],
    "end": {"kind": "handhole", "name": "B"},
}


def by_rates(*rates: dict[str, Any], query: str = "") -> dict[str, Any]:
    answer: dict[str, Any] = ask("duct-run", RUN | {"rates": list(rates)}, query)
    return answer


def line(answer: dict[str, Any], item: str) -> dict[str, Any]:
    found: dict[str, Any]
    [found] = [one for one in answer["result"]["takeoff"]["lines"] if one["item"] == item]
    return found


def every_item() -> list[str]:
    return [one["item"] for one in ask("duct-run", RUN)["result"]["takeoff"]["lines"]]


def test_a_total_is_complete_when_every_line_has_a_price_work_too() -> None:
    rates = [{"item": item, "unit_price": 1} for item in every_item()]
    total = by_rates(*rates)["result"]["takeoff"]["total"]
    assert (total["complete"], total["unpriced_lines"]) == (True, [])
    answer = by_rates(*[rate for rate in rates if rate["item"] != "mandrel_pass"])
    total = answer["result"]["takeoff"]["total"]
    assert (total["complete"], total["unpriced_lines"]) == (False, [line(answer, "mandrel_pass")["line"]])


def test_in_what_units_an_answer_is_told_changes_no_price() -> None:
    rates = [{"item": item, "unit_price": 3, "unit_labor_hours": 0.1} for item in every_item()]
    us, metric = by_rates(*rates), by_rates(*rates, query="units=metric")
    assert line(us, "conduit")["price"] == 3 * 220
    assert line(us, "pull_cord")["labor_hours"] == pytest.approx(0.1 * 240)
    for one, other in zip(us["result"]["takeoff"]["lines"], metric["result"]["takeoff"]["lines"], strict=True):
        assert (one["price"], one["labor_hours"]) == (other["price"], other["labor_hours"]), one["item"]
        paid = other.get("order_quantity", other["exact_quantity"])["value"]
        assert other["unit_price"] * paid == pytest.approx(other["price"], abs=0.006), one["item"]
    conduit = line(metric, "conduit")
    assert conduit["order_quantity"] == {"value": pytest.approx(67.056), "unit": "m"}
    assert conduit["unit_price"] == pytest.approx(3 / 0.3048)
    assert us["result"]["takeoff"]["total"] == metric["result"]["takeoff"]["total"]


def test_a_rate_may_be_for_another_unit_of_its_dimension() -> None:
    answer = by_rates({"item": "conduit", "unit": "m", "unit_price": 10, "unit_labor_hours": 0.5})
    conduit = line(answer, "conduit")
    assert conduit["price"] == 670.56  # 220 ft are 67.056 m
    assert conduit["unit_price"] == pytest.approx(3.048), "for one ft, the unit of the line"
    assert conduit["labor_hours"] == 30.48  # 200 ft are 60.96 m
    assert conduit["exact_quantity"] == {"value": 200, "unit": "ft"}


@pytest.mark.parametrize(
    ("rate", "pointer", "code"),
    [
        ({"item": "conduit", "unit": "each", "unit_price": 1}, "#/rates/1/unit", "other_dimension"),
        ({"item": "conduit", "unit": "yd3", "unit_price": 1}, "#/rates/1/unit", "other_dimension"),
        ({"item": "duct_plug", "unit": "ft", "unit_price": 1}, "#/rates/1/unit", "other_dimension"),
        ({"item": "conduit"}, "#/rates/1/unit_price", "missing"),
    ],
)
def test_a_rate_that_says_nothing_or_is_for_another_dimension_is_refused(
    rate: dict[str, Any], pointer: str, code: str
) -> None:
    asked = RUN | {"rates": [{"item": "cable", "unit_price": 1}, rate]}
    assert [(one["pointer"], one["code"]) for one in faults("duct-run", asked)] == [(pointer, code)]


def test_a_rate_that_fits_no_line_is_noted() -> None:
    fits = {"item": "conduit", "conduit_type": "pvc_schedule_40", "size": "4", "unit_price": 1}
    answer = by_rates(fits, fits | {"size": "5"}, {"item": "cable", "unit_price": 1})
    found = [one for one in answer["findings"] if one["code"] == "rate_fits_no_line"]
    assert [one["pointer"] for one in found] == ["#/rates/1", "#/rates/2"]
    assert found[0]["severity"] == "note"
    assert "rate_fits_no_line" not in codes(by_rates(fits))


def test_cement_is_ordered_in_quarts_whatever_units_are_told() -> None:
    # 2 x 100 ft take 12 joints; of 8 tiers of 2 ducts 96 joints and 3.2 quarts: 4 of 0.946352946 L
    large = copy.deepcopy(RUN)
    large["bank"]["tiers"] = [2] * 8
    cement = line(ask("duct-run", large, "units=metric"), "solvent_cement")
    assert cement["exact_quantity"] == {"value": pytest.approx(96 / 30 * 0.946352946), "unit": "L"}
    assert cement["order_quantity"] == {"value": pytest.approx(4 * 0.946352946), "unit": "L"}
    assert (cement["package"], cement["package_count"]) == ("quart", 4)
