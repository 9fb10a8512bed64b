"""Cover: every cell of its tables, and what is said of a run that lies too shallow."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


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


def test_an_excavation_is_always_cautioned() -> None:
    assert "excavation_safety" in codes(ask("cover", example("cover")), "caution")


def test_every_finding_of_a_cover_says_where() -> None:
    request = example(
        "cover",
        voltage="over_40_kv",
        location="under_building",
        wiring_method="direct_buried_cable",
        cover=quantity(6, "in"),
    )
    found = {finding["code"]: finding.get("pointer") for finding in ask("cover", request)["findings"]}
    assert found == {
        "table_note": "#/voltage",
        "only_in_a_raceway": "#/wiring_method",
        "encasement_does_not_reduce": "#/encased",
        "too_shallow": "#/cover",
    }
