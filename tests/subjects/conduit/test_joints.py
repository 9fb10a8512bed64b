"""Joints: sticks, elbows, cement and what goes with them, by hand."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result, value_of


def joints(**changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES["joints"]) | changes


def refused(request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem("joints", request).errors or ()}


def test_joints_of_nine_ducts_by_hand() -> None:
    """Derived: 323 ft less two elbows of 36 in and 90 deg with 6 in ends leave 311.6 ft: 16 sticks of 20 ft."""
    found = result("joints", joints())
    assert found["straight_length"]["value"] == pytest.approx(323 - 2 * (3 * math.pi / 2 + 1))
    assert found["stick_count"] == 16 * 9
    assert found["joint_count"] == (17 + 2) * 9
    assert found["cement_quart_count"] == math.ceil(171 / 50)
    assert (found["end_bell_count"], found["plug_count"], found["elbow_count"]) == (18, 4, 18)
    assert found["pull_cord_length"]["value"] == pytest.approx((323 + 20) * 9)


def test_shared_offcuts_and_bell_loss_change_the_sticks() -> None:
    shared = result("joints", joints(offcuts_shared=True))
    assert shared["stick_count"] == math.ceil(9 * shared["straight_length"]["value"] / 20)
    request = joints(bell_loss=quantity(6, "in"))
    del request["elbows"]
    assert result("joints", request)["stick_count"] == math.ceil(323 / 19.5) * 9


def test_plain_ends_take_couplings_with_two_sockets() -> None:
    plain, belled = (result("joints", joints(ends=ends)) for ends in ("plain", "belled"))
    assert (plain["coupling_count"], belled["coupling_count"]) == (17 * 9, 0)
    assert plain["joint_count"] == (2 * 17 + 2) * 9


@pytest.mark.parametrize(("degrees", "minutes"), [(70, 60), (60, 240), (50, 240), (40, 720), (20, 720)])
def test_cold_joints_set_for_longer(degrees: float, minutes: float) -> None:
    found = result("joints", joints(temperature=quantity(degrees, "degF")))
    assert found["set_time"] == {"value": pytest.approx(minutes), "unit": "min"}


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"temperature": quantity(120, "degF")}, {"#/temperature/value": "no_set_time"}),
        ({"spare_duct_count": 10}, {"#/spare_duct_count": "more_than_the_ducts"}),
        ({"bell_loss": quantity(10, "ft")}, {"#/bell_loss/value": "more_than_half_a_stick"}),
        ({"length": quantity(10, "ft")}, {"#/elbows": "longer_than_the_run"}),
        (
            {"conduit": {"kind": "listed", "type": "rtrc", "trade_size": "4"}},
            {"#/conduit/type": "dimensions_not_listed"},
        ),
    ],
)
def test_joints_without_an_answer_name_the_field(changes: dict[str, Any], expected: dict[str, str]) -> None:
    assert refused(joints(**changes)) == expected


def test_solvent_vapor_is_always_cautioned() -> None:
    assert "solvent_vapor" in codes(ask("joints", joints()), "caution")


def test_cord_and_mandrel_follow_what_is_given_and_no_default_of_them_is_silent() -> None:
    given = joints(cord_tail=quantity(5, "ft"), mandrel_clearance=quantity(0.5, "in"))
    found = result("joints", given)
    assert found["pull_cord_length"]["value"] == pytest.approx((323 + 10) * 9)
    assert found["mandrel_diameter"]["value"] == pytest.approx(3.998 - 0.5)
    assert refused(given | {"mandrel_clearance": quantity(4, "in")}) == {"#/mandrel_clearance/value": "no_mandrel_left"}
    left_out = {key: value for key, value in joints().items() if key not in ("cord_tail", "mandrel_clearance")}
    assumed = {place: value_of(one) for one in ask("joints", left_out)["assumptions"] for place in one["pointers"]}
    assert assumed == {"#/cord_tail": quantity(10, "ft"), "#/mandrel_clearance": quantity(0.25, "in")}


def elbow(**more: Any) -> dict[str, Any]:
    return {"angle": quantity(90, "deg"), "tangent": quantity(0, "in"), "count": 1} | more


def test_an_elbow_of_pvc_without_a_radius_is_the_standard_one_of_its_size() -> None:
    answer = ask("joints", joints(elbows=[elbow()]))
    assert answer["result"]["elbow_length"]["value"] == pytest.approx(16 / 12 * math.pi / 2)
    [assumed] = answer["assumptions"]
    assert (assumed["pointers"], assumed["quantity"]) == (["#/elbows/0/radius"], quantity(16, "in"))
    assert assumed["citation"].startswith("from memory: UL 651 elbows")


def test_an_elbow_without_a_standard_one_on_file_needs_its_radius() -> None:
    steel = {"kind": "listed", "type": "rmc", "trade_size": "4"}
    bare = {"ends": "plain", "start": "none", "end": "none"}
    assert refused(joints(conduit=steel, elbows=[elbow(radius=quantity(36, "in")), elbow()], **bare)) == {
        "#/elbows/1/radius": "missing"
    }


@pytest.mark.parametrize(
    ("radius", "on_file"),
    [(quantity(16, "in"), True), (quantity(3, "ft"), True), (quantity(914.4, "mm"), True), (quantity(37, "in"), False)],
)
def test_a_radius_nobody_sells_is_noted(radius: dict[str, Any], on_file: bool) -> None:
    answer = ask("joints", joints(elbows=[elbow(radius=radius)]))
    noted = [finding for finding in answer["findings"] if finding["code"] == "elbow_radius_not_on_file"]
    assert bool(noted) is not on_file
    for one in noted:
        assert one["severity"] == "note"
        assert one["pointer"] == "#/elbows/0/radius"
        assert "16, 24, 30, 36, 48, 60, 72 in" in one["message"]


def test_a_cold_day_outside_of_the_table_is_told_with_its_ends() -> None:
    raised = problem("joints", joints(temperature=quantity(-20, "degC")))
    assert raised.errors is not None
    assert str(raised.errors[0].minimum) == "0 degF"
    assert str(raised.errors[0].maximum) == "100 degF"


def test_no_elbows_are_the_same_as_none_given() -> None:
    given = joints(elbows=[])
    left_out = {name: value for name, value in joints().items() if name != "elbows"}
    assert ask("joints", given) == ask("joints", left_out)
    assert result("joints", given)["elbow_count"] == 0


def test_joints_are_held_against_no_limit_and_have_no_verdict() -> None:
    assert "verdict" not in ask("joints", joints())


def test_faults_of_duct_and_elbows_come_at_once() -> None:
    steel = {"kind": "listed", "type": "rmc", "trade_size": "3/8"}
    assert refused(joints(conduit=steel, elbows=[elbow()])) == {
        "#/conduit/trade_size": "trade_size_not_listed",
        "#/elbows/0/radius": "missing",
    }


def plain(type_: str, **changes: Any) -> dict[str, Any]:
    """A run of 100 ft, 4 ducts of trade size 4, with nothing said of sticks and ends."""
    conduit = {"kind": "listed", "type": type_, "trade_size": "4"}
    return {"conduit": conduit, "length": quantity(100, "ft"), "duct_count": 4} | changes


@pytest.mark.parametrize(
    ("type_", "method", "sticks", "joints_", "couplings"),
    [  # derived: 10 lengths of steel of 10 ft and 9 couplings between them, 5 of HDPE of 20 ft fused 4 times, a duct
        ("rmc", "threaded", 40, 36, 36),
        ("imc", "threaded", 40, 36, 36),
        ("emt", "coupled", 40, 36, 36),
        ("hdpe_schedule_40", "fused", 20, 16, 0),
        ("pvc_schedule_40", "cemented", 20, 24, 0),
    ],
)
def test_only_what_is_cemented_takes_cement(type_: str, method: str, sticks: int, joints_: int, couplings: int) -> None:
    answer = ask("joints", plain(type_))
    found = answer["result"]
    assert (found["method"], found["stick_count"]) == (method, sticks)
    assert (found["joint_count"], found["coupling_count"]) == (joints_, couplings)
    assert ({"cement_volume", "cement_quart_count", "set_time"} <= set(found)) is (method == "cemented")
    assert ("solvent_vapor" in codes(answer, "caution")) is (method == "cemented")


def test_a_bell_on_steel_and_coils_are_refused() -> None:
    assert refused(plain("rmc", ends="belled")) == {"#/ends": "no_bell_fits"}
    assert refused(plain("rmc", start="end_bell")) == {"#/start": "no_bell_fits"}
    assert refused(plain("rmc", start="end_bell", end="end_bell", ends="belled")) == {
        "#/start": "no_bell_fits",
        "#/end": "no_bell_fits",
        "#/ends": "no_bell_fits",
    }, "all at once"
    errors = problem("joints", plain("emt", end="end_bell")).errors or []
    assert errors[0].allowed_values == ["coupling", "adapter", "elbow", "none"]
    assert refused(plain("lfmc")) == {"#/conduit/type": "not_in_lengths"}


def test_an_end_counts_what_finishes_it() -> None:
    """Derived: 5 sticks a duct, 4 sockets between them and one at each end that is joined, 4 ducts."""
    nothing = result("joints", plain("pvc_schedule_40", start="none", end="none"))
    assert (nothing["joint_count"], nothing["end_bell_count"], nothing["adapter_count"]) == (16, 0, 0)
    found = result("joints", plain("pvc_schedule_40", start="adapter", end="coupling"))
    assert (found["joint_count"], found["adapter_count"], found["coupling_count"]) == (24, 4, 4)
    assert found["end_bell_count"] == 0
    riser = result("joints", plain("pvc_schedule_40", start="elbow", end="none"))
    assert (riser["joint_count"], riser["elbow_count"], riser["end_bell_count"]) == (20, 0, 0)


def test_cement_is_ordered_by_the_fewest_joints_a_quart_is_published_to_make() -> None:
    """24 sockets of 4 in: 30 to a quart in deep sockets of pipe, 50 by the conduit table."""
    answer = ask("joints", plain("pvc_schedule_40"))
    assert answer["result"]["cement_volume"]["value"] == pytest.approx(24 / 30 / 4), "in gallons"
    [told] = [one for one in answer["assumptions"] if "#/joints_per_quart" in one["pointers"]]
    assert "the conduit table says 50" in told["citation"]
    given = result("joints", plain("pvc_schedule_40", joints_per_quart=50))
    assert given["cement_volume"]["value"] == pytest.approx(24 / 50 / 4)


def test_sticks_are_ordered_with_waste() -> None:
    assert result("joints", plain("pvc_schedule_40"))["order_stick_count"] == 21, "3 percent of 20"
    assert result("joints", plain("pvc_schedule_40", waste_percent=0))["order_stick_count"] == 20
    assert result("joints", plain("pvc_schedule_40", waste_percent=10))["order_stick_count"] == 22
