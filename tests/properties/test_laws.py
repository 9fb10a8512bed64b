"""Laws that hold for every input."""

from __future__ import annotations

import copy
import json
from typing import Any

import pytest
from ductrun.units import UNIT_CODES, Length, LengthUnit
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, judged, quantity, result

LENGTHS = st.floats(min_value=1, max_value=2_000)
ANGLES = st.floats(min_value=4, max_value=120)
RADII = st.floats(min_value=1, max_value=50)
FRICTIONS = st.floats(min_value=0.1, max_value=0.7)


def straight(length: float, grade: float = 0.0) -> dict[str, Any]:
    return {"kind": "straight", "length": quantity(length, "ft"), "grade": quantity(grade, "deg")}


def bend(radius: float, angle: float) -> dict[str, Any]:
    return {"kind": "horizontal_bend", "radius": quantity(radius, "ft"), "angle": quantity(angle, "deg")}


LEVEL_SECTIONS = st.one_of(st.builds(straight, LENGTHS), st.builds(bend, RADII, ANGLES))
SECTIONS = st.one_of(LEVEL_SECTIONS, st.builds(straight, LENGTHS, st.floats(min_value=-60, max_value=60)))


def pull(sections: list[dict[str, Any]], friction: float = 0.35, **changes: Any) -> dict[str, Any]:
    request = copy.deepcopy(EXAMPLES["pull-tension"]) | {"sections": sections, "friction_coefficient": friction}
    return result("pull-tension", request | changes)


@given(sections=st.lists(LEVEL_SECTIONS, min_size=1, max_size=6), friction=FRICTIONS)
def test_tension_rises_with_friction_and_length(sections: list[dict[str, Any]], friction: float) -> None:
    once = pull(sections, friction)["tension"]["value"]
    assert pull(sections, friction * 1.1)["tension"]["value"] > once
    assert pull([*sections, straight(10)], friction)["tension"]["value"] > once


@given(lengths=st.lists(LENGTHS, min_size=1, max_size=6), friction=FRICTIONS)
def test_a_level_route_of_straights_is_the_same_from_both_ends(lengths: list[float], friction: float) -> None:
    found = pull([straight(length) for length in lengths], friction)
    assert found["reversed"]["tension"]["value"] == pytest.approx(found["tension"]["value"])


@given(angles=st.lists(ANGLES, min_size=1, max_size=4), friction=FRICTIONS)
def test_without_weight_the_order_of_bends_does_not_matter(angles: list[float], friction: float) -> None:
    light = copy.deepcopy(EXAMPLES["pull-tension"]["cables"])
    light[0]["cable"]["mass_per_length"] = quantity(0.0001, "lb/ft")
    incoming = quantity(5_000, "lbf")
    found = pull([bend(1, angle) for angle in angles], friction, cables=light, incoming_tension=incoming)
    assert found["reversed"]["tension"]["value"] == pytest.approx(found["tension"]["value"], rel=1e-6)


@given(sections=st.lists(SECTIONS, min_size=1, max_size=6))
def test_a_route_given_backwards_is_its_reverse(sections: list[dict[str, Any]]) -> None:
    backwards = []
    for section in reversed(copy.deepcopy(sections)):
        if section["kind"] == "straight":
            section["grade"]["value"] *= -1
        backwards.append(section)
    found, turned = pull(sections), pull(backwards)
    assert found["reversed"]["sections"] == turned["sections"]
    assert found["sections"] == turned["reversed"]["sections"]


@given(length=LENGTHS, share=st.floats(min_value=0.05, max_value=0.95), grade=st.floats(min_value=0, max_value=60))
def test_a_straight_cut_in_two_is_one_straight(length: float, share: float, grade: float) -> None:
    whole = pull([straight(length, grade)])["tension"]["value"]
    cut = pull([straight(length * share, grade), straight(length * (1 - share), grade)])["tension"]["value"]
    assert cut == pytest.approx(whole)


@given(radius=RADII, angle=ANGLES, share=st.floats(min_value=0.05, max_value=0.95), incoming=LENGTHS)
def test_a_bend_cut_in_two_is_one_bend(radius: float, angle: float, share: float, incoming: float) -> None:
    tension = quantity(incoming, "lbf")
    parts = [bend(radius, angle * share), bend(radius, angle * (1 - share))]
    whole = pull([bend(radius, angle)], incoming_tension=tension)["tension"]["value"]
    cut = pull(parts, incoming_tension=tension)["tension"]["value"]
    assert cut == pytest.approx(whole)


CABLES = st.lists(
    st.builds(
        lambda insulation, size, count: {
            "count": count,
            "cable": {"kind": "listed", "insulation": insulation, "size": size},
        },
        st.sampled_from(["THHN", "XHHW-2", "THW", "RHH"]),
        st.sampled_from(["14 AWG", "12 AWG", "8 AWG", "2 AWG", "4/0 AWG", "500 kcmil"]),
        st.integers(min_value=1, max_value=8),
    ),
    min_size=1,
    max_size=6,
)


def fill(cables: list[dict[str, Any]], query: str = "") -> dict[str, Any]:
    conduit = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "6"}
    return result("fill", {"conduit": conduit, "cables": cables}, query)


@given(cables=CABLES, data=st.data())
def test_fill_does_not_depend_on_the_order_of_the_lines(cables: list[dict[str, Any]], data: st.DataObject) -> None:
    assert fill(data.draw(st.permutations(cables))) == fill(cables)


@given(cables=CABLES)
def test_the_smallest_size_complies_and_the_set_fills_less_of_a_larger_one(cables: list[dict[str, Any]]) -> None:
    found = fill(cables)
    assume("smallest_trade_size" in found)
    smallest = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": found["smallest_trade_size"]}
    there_verdict, there = judged("fill", {"conduit": smallest, "cables": cables})
    assert there_verdict == "complies"
    assert there["fill_percent"] >= found["fill_percent"]


@given(length=LENGTHS, share=st.floats(min_value=0.1, max_value=0.9))
def test_concrete_volumes_add_up_along_the_run(length: float, share: float) -> None:
    def volumes(feet: float) -> list[float]:
        found = result("encasement", copy.deepcopy(EXAMPLES["encasement"]) | {"length": quantity(feet, "ft")})
        return [found[name]["value"] for name in ("gross_volume", "duct_volume", "net_volume")]

    parts = [one + other for one, other in zip(volumes(length * share), volumes(length * (1 - share)), strict=True)]
    assert parts == pytest.approx(volumes(length))


@given(length=LENGTHS, tiers=st.lists(st.integers(min_value=1, max_value=8), min_size=1, max_size=5))
def test_gross_is_ducts_and_net_and_an_order_is_never_short(length: float, tiers: list[int]) -> None:
    request = copy.deepcopy(EXAMPLES["encasement"]) | {"length": quantity(length, "ft")}
    request["bank"]["tiers"] = tiers
    found = result("encasement", request)
    gross, ducts, net = (found[name]["value"] for name in ("gross_volume", "duct_volume", "net_volume"))
    assert gross == pytest.approx(ducts + net)
    assert found["order_volume"]["value"] >= net * 1.05 * (1 - 1e-9)
    assert found["order_volume"]["value"] - net * 1.05 <= 0.25 + 1e-6


@given(tenths=st.integers(min_value=2, max_value=20_000), cut=st.floats(min_value=0.01, max_value=0.99))
def test_a_run_cut_at_a_station_shares_exactly_that_station(tenths: int, cut: float) -> None:
    def stations(feet: float) -> int:
        request = copy.deepcopy(EXAMPLES["spacers"]) | {"length": quantity(feet, "ft")}
        return int(result("spacers", request)["station_count"])

    at = max(1, int(tenths / 10 / 5 * cut)) * 5
    assume(tenths / 10 - at > 0.01)
    assert stations(at) + stations(tenths / 10 - at) == stations(tenths / 10) + 1


@given(length=LENGTHS, difference=st.floats(min_value=1, max_value=200), factor=st.floats(min_value=1.01, max_value=5))
def test_movement_is_proportional_to_length_and_difference(length: float, difference: float, factor: float) -> None:
    def moved(feet: float, degrees: float) -> float:
        temperatures = {"kind": "difference", "difference": quantity(degrees, "delta_degF")}
        request = {"material": "pvc", "length": quantity(feet, "ft"), "temperatures": temperatures}
        return float(result("expansion", request)["length_change"]["value"])

    once = moved(length, difference)
    assert moved(length * factor, difference) == pytest.approx(once * factor)
    assert moved(length, difference * min(factor, 2)) == pytest.approx(once * min(factor, 2))


OTHER_UNIT = {unit.value: unit.counterpart.value for units in UNIT_CODES.values() for unit in units}
DIMENSION = {unit.value: dimension for dimension, units in UNIT_CODES.items() for unit in units}


def in_other_units(node: Any) -> Any:
    """Turn every quantity of a request into its counterpart in the other unit system."""
    if isinstance(node, list):
        return [in_other_units(item) for item in node]
    if not isinstance(node, dict):
        return node
    if set(node) == {"value", "unit"}:
        given_quantity = DIMENSION[node["unit"]].parse(node["value"], node["unit"])
        other = given_quantity.unit.counterpart
        return quantity(given_quantity.in_unit(other), other.value)
    return {key: in_other_units(value) for key, value in node.items()}


PROSE = {
    "better_reason",
    "message",
    "price_gap",
    "labor_hours_gap",
    "not_ranked_because",
}  # sentences, with figures in the units of the answer


def figures(node: Any) -> list[Any]:
    """List every figure of an answer in SI, so that two unit systems can be compared."""
    if isinstance(node, list):
        return [figure for item in node for figure in figures(item)]
    if isinstance(node, dict):
        if set(node) == {"value", "unit"}:
            return [DIMENSION[node["unit"]].parse(node["value"], node["unit"]).si]
        return [figure for key, value in sorted(node.items()) if key not in PROSE for figure in figures(value)]
    return [node]


def drop_what_is_bought(result: dict[str, Any]) -> None:
    """Leave out what is rounded up to whole units of the system, and what the rates for one of those come to."""
    for name in ("takeoff", "lines"):
        result.pop(name, None)
    for run in result["runs"] if "findings_gained" in result.get("runs", [{}])[0] else ():
        for name in ("price", "labor_hours", "item_quantity"):
            run.pop(name, None)


@pytest.mark.parametrize("name", EXAMPLES)
@given(scale=st.floats(min_value=0.3, max_value=3))
def test_the_unit_system_never_changes_a_verdict(name: str, scale: float) -> None:
    request = copy.deepcopy(EXAMPLES[name])
    if "length" in request:
        request["length"]["value"] *= scale
    if "sections" in request:
        request["sections"][0]["length"]["value"] *= scale
    mine = ask(name, request)
    for other in (ask(name, in_other_units(request), "units=metric"), ask(name, request, "units=metric")):
        assert [finding["code"] for finding in other["findings"]] == [f["code"] for f in mine["findings"]]
        for answer in (mine, other):
            drop_what_is_bought(answer["result"])
        for one, two in zip(figures(mine["result"]), figures(other["result"]), strict=True):
            assert two == (pytest.approx(one, rel=1e-9, abs=1e-12) if isinstance(one, float) else one)


@given(value=st.floats(min_value=0.02, max_value=90_000), unit=st.sampled_from(list(LengthUnit)))
def test_no_answer_holds_a_null_or_a_number_that_is_not_finite(value: float, unit: LengthUnit) -> None:
    assume(0.02 < Length(value, unit).si / 0.3048 < 99_000)
    for name in ("spacers", "encasement", "expansion"):
        request = copy.deepcopy(EXAMPLES[name]) | {"length": quantity(value, unit.value)}
        written = json.dumps(ask(name, request, "working=true"), allow_nan=False)
        assert "null" not in written
