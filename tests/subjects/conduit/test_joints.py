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


def listed(kind: str, size: str) -> dict[str, str]:
    return {"kind": "listed", "type": kind, "trade_size": size}


def test_joints_of_nine_ducts_by_hand() -> None:
    """Derived: 323 ft less two elbows of 36 in and 90 deg with 6 in ends leave 311.6 ft: 16 sticks of 20 ft."""
    found = result("joints", joints())
    assert found["straight_length"]["value"] == pytest.approx(323 - 2 * (3 * math.pi / 2 + 1))
    assert found["stick_count"] == 16 * 9
    assert found["joint_count"] == (17 + 2) * 9
    assert found["cement_order_volume"] == quantity(math.ceil(171 / 50) / 4, "gal_us")
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


@pytest.mark.parametrize(("kind", "size", "inches"), [("rmc", "4", 16), ("imc", "2", 9.5), ("emt", "3/4", 4.5)])
def test_a_metal_elbow_without_a_radius_is_bent_as_by_the_one_shot_column(kind: str, size: str, inches: float) -> None:
    """NFPA 70, Chapter 9, Table 2."""
    answer = ask("joints", plain(kind, elbows=[elbow()]) | {"conduit": listed(kind, size)})
    assert answer["result"]["elbow_length"]["value"] == pytest.approx(inches / 12 * math.pi / 2)
    [assumed] = [one for one in answer["assumptions"] if one["pointers"] == ["#/elbows/0/radius"]]
    assert (assumed["quantity"], assumed["standing"]) == (quantity(inches, "in"), "derived")
    assert "NFPA 70-2023, Chapter 9, Table 2" in assumed["citation"]


def test_an_elbow_without_a_standard_one_on_file_needs_its_radius() -> None:
    elbows = [elbow(radius=quantity(36, "in")), elbow()]
    assert refused(plain("hdpe_schedule_40", elbows=elbows)) == {"#/elbows/1/radius": "missing"}


def test_elbows_whose_straight_ends_are_not_known_are_told_as_arcs_alone() -> None:
    bare = {"angle": quantity(90, "deg"), "count": 1}
    answer = ask("joints", joints(elbows=[bare]))
    assert answer["result"]["elbow_length"]["value"] == pytest.approx(16 / 12 * math.pi / 2)
    [found] = [one for one in answer["findings"] if one["code"] == "elbows_without_tangents"]
    assert found["pointer"] == "#/elbows"
    assert "elbows_without_tangents" not in codes(ask("joints", joints()))


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
    assert refused(plain("rmc", elbows=[elbow()]) | {"conduit": listed("rmc", "3/8")}) == {
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
    assert ({"cement_volume", "cement_order_volume", "set_time"} <= set(found)) is (method == "cemented")
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
    assert errors[0].allowed_values == ["coupling", "adapter", "elbow", "conduit_body", "none"]
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
    [told] = [one for one in answer["assumptions"] if "#/cement_per_joint" in one["pointers"]]
    assert told["quantity"] == {"value": pytest.approx(1 / 30), "unit": "qt_us"}
    assert "30 joints a quart, where the conduit table says 50" in told["citation"]
    given = result("joints", plain("pvc_schedule_40", cement_per_joint=quantity(1 / 50, "qt_us")))
    assert given["cement_volume"]["value"] == pytest.approx(24 / 50 / 4)


def test_sticks_are_ordered_with_waste() -> None:
    assert result("joints", plain("pvc_schedule_40"))["order_stick_count"] == 21, "3 percent of 20"
    assert result("joints", plain("pvc_schedule_40", waste_percent=0))["order_stick_count"] == 20
    assert result("joints", plain("pvc_schedule_40", waste_percent=10))["order_stick_count"] == 22


def test_an_elbow_beside_plain_ends_takes_the_coupling_that_is_counted_here() -> None:
    """Derived: 20 lengths of 10 ft, 19 couplings between them and one to the elbow. Of PVC 200 ft less an arc of 2.09
    ft are 10 sticks, with an elbow 11 pieces, 10 couplings and 2 at the ends, each with two sockets.
    """
    steel = result("joints", plain("rmc", length=quantity(200, "ft"), duct_count=1, start="elbow"))
    assert (steel["joint_count"], steel["coupling_count"]) == (20, 20)
    ends = {"ends": "plain", "start": "elbow", "end": "elbow", "elbows": [elbow()]}
    plastic = result("joints", plain("pvc_schedule_40", length=quantity(200, "ft"), duct_count=1, **ends))
    assert (plastic["joint_count"], plastic["coupling_count"]) == (24, 12)
    belled = result("joints", plain("pvc_schedule_40", start="elbow", end="none"))
    assert (belled["coupling_count"], belled["order_coupling_count"]) == (0, 0)
    body = result("joints", plain("rmc", duct_count=1, start="conduit_body"))
    assert (body["joint_count"], body["coupling_count"]) == (10, 9), "its hub takes the thread"


def test_couplings_that_come_on_threaded_lengths_are_not_ordered_twice() -> None:
    """Derived: 10 lengths bring 10 couplings; with 3 elbows 13 pieces take 12 couplings, 2 to order, a duct."""
    answer = ask("joints", plain("rmc"))
    assert (answer["result"]["coupling_count"], answer["result"]["order_coupling_count"]) == (36, 0)
    [found] = [one for one in answer["findings"] if one["code"] == "couplings_come_with_lengths"]
    assert "of 36 couplings 36 come with the lengths, and none is to be ordered." in found["message"]
    bent = plain("imc", length=quantity(106, "ft"), elbows=[elbow(count=3)])  # 6.28 ft of arcs, 99.7 ft of straights
    found = result("joints", bent)
    assert (found["stick_count"], found["coupling_count"], found["order_coupling_count"]) == (40, 48, 8)
    tubing = ask("joints", plain("emt"))
    assert tubing["result"]["order_coupling_count"] == 36
    assert "couplings_come_with_lengths" not in codes(tubing)


@pytest.mark.parametrize("kind", ["rmc", "imc", "emt", "hdpe_schedule_40"])
def test_what_only_cement_takes_is_refused_of_other_joints(kind: str) -> None:
    assert refused(plain(kind, cement_per_joint=quantity(1 / 40, "qt_us"), temperature=quantity(90, "degF"))) == {
        "#/cement_per_joint": "contradiction",
        "#/temperature": "contradiction",
    }


@pytest.mark.parametrize(
    ("kind", "words"),
    [("rmc", "wrench-tight"), ("emt", "make every coupling tight"), ("hdpe_schedule_40", "let a joint cool")],
)
def test_every_kind_of_joint_is_told_how_it_is_made(kind: str, words: str) -> None:
    answer = ask("joints", plain(kind))
    [found] = [one for one in answer["findings"] if one["code"] == "make_the_joint"]
    assert words in found["message"]
    assert ("hot_fusion" in codes(answer, "caution")) is (kind == "hdpe_schedule_40")
