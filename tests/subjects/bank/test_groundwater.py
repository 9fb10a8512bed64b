"""Ducts in groundwater by hand: what they displace, and the concrete and the earth that hold them."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result


def refused(request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem("flotation", request).errors or ()}


def in_groundwater(**changes: Any) -> dict[str, Any]:
    request = copy.deepcopy(EXAMPLES["flotation"]) | {"medium": "groundwater"} | changes
    for member in ("lift_height", "fluid_density"):
        request.pop(member, None)
    return request


def test_in_groundwater_concrete_and_earth_hold_by_what_they_weigh_in_it() -> None:
    """Derived: nine ducts of 4.5 in push with 9 (6.892 - 2) lb/ft; concrete of 23.5 in each way, at 140 less 62.4.

    Earth 23.5 in wide and 12 in high at 100 less 62.4 lb/ft3.
    """
    ducts = 9 * math.pi / 4 * (4.5 / 12) ** 2
    uplift = ducts * 62.4 - 18
    concrete = ((23.5 / 12) ** 2 - ducts) * (140 - 62.4)
    earth = 23.5 / 12 * (100 - 62.4)
    covered = in_groundwater(concrete_cover={"top": quantity(3, "in")}, cover=quantity(12, "in"))
    answer = ask("flotation", covered)
    found = answer["result"]
    assert found["full_uplift_per_length"]["value"] == pytest.approx(uplift)
    assert found["concrete_weight_per_length"]["value"] == pytest.approx(concrete)
    assert found["earth_weight_per_length"]["value"] == pytest.approx(earth)
    assert (
        found["uplift_per_length"]["value"] == found["hold_down_per_station"]["value"] == found["tie_down_count"] == 0
    )
    assert "bank_floats" not in codes(answer)
    assert "verdict" not in answer, "whether the ground bears it was not judged"
    alone = result("flotation", in_groundwater(cover=quantity(6, "in")))
    only_earth = 17.5 / 12 * 0.5 * (100 - 62.4)
    assert alone["uplift_per_length"]["value"] == pytest.approx(uplift - only_earth)
    assert alone["hold_down_per_station"]["value"] == pytest.approx(5 * (1.5 * uplift - only_earth))
    assert "concrete_weight_per_length" not in alone


def test_weight_that_holds_the_uplift_but_not_its_factor_is_found() -> None:
    """Derived: nine ducts push with 44.0 lbf/ft, with the factor 66.0; 12 in of earth 17.5 in wide hold 54.8."""
    answer = ask("flotation", in_groundwater(cover=quantity(12, "in")))
    found = answer["result"]
    assert found["uplift_per_length"]["value"] == 0
    assert found["hold_down_per_station"]["value"] == pytest.approx(5 * (66.04 - 54.83), abs=0.1)
    assert found["tie_down_count"] == 1
    [caution] = [one for one in answer["findings"] if one["code"] == "bank_floats"]
    assert "push up with 44.027 lbf/ft against 54.833 lbf/ft of earth, weighed in the water" in caution["message"]
    assert "(no concrete was counted)" in caution["message"]


def test_lifts_are_for_pours_and_weight_for_groundwater() -> None:
    assert refused(in_groundwater() | {"lift_height": quantity(12, "in")}) == {"#/lift_height": "only_in_a_pour"}
    poured = in_groundwater(medium="concrete", cover=quantity(24, "in"), concrete_cover={})
    assert refused(poured) == {
        "#/concrete_cover": "only_in_groundwater",
        "#/cover": "only_in_groundwater",
    }


@pytest.mark.parametrize(("medium", "advised"), [("concrete", True), ("slurry", False), ("groundwater", False)])
def test_lifts_are_advised_for_concrete_alone(medium: str, advised: bool) -> None:
    request = in_groundwater(medium=medium)
    [caution] = [one for one in ask("flotation", request)["findings"] if one["code"] == "bank_floats"]
    assert ("Pour in lifts" in caution["message"]) is advised


def test_what_is_assumed_in_groundwater_can_be_given_back() -> None:
    small = {"kind": "measured", "inside_diameter": quantity(2, "in"), "outside_diameter": quantity(2.4, "in")}
    request = in_groundwater(concrete_cover={}, cover=quantity(2, "ft"))
    request["bank"]["tier_ducts"] = [[{"count": 2}, {"count": 1, "conduit": small}], [{"count": 3}]]
    del request["bank"]["tiers"]
    for member in ("duct_mass_per_length", "contents", "station_spacing"):
        del request[member]
    answer = ask("flotation", request)
    told = {pointer for one in answer["assumptions"] for pointer in one["pointers"]}
    assert {"#/concrete_density", "#/saturated_soil_density", "#/duct_material", "#/concrete_cover/side"} <= told
    completed = ask("flotation", request, "request=completed")["request"]
    again = ask("flotation", completed, "assumptions=refuse")
    assert (again["result"], again["assumptions"]) == (answer["result"], [])
