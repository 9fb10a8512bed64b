"""What goes into the ground: permitted uses and joints."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest
from ductrun.subjects.conduit.choices import ConduitUse
from ductrun.subjects.parts.choices import ConduitType

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def refused(name: str, request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem(name, request).errors or ()}


@pytest.mark.parametrize(
    ("type_", "use", "verdict"),
    [
        ("pvc_eb_20", "direct_burial", "no"),
        ("pvc_type_eb", "above_ground", "no"),
        ("pvc_eb_35", "concrete_encasement", "yes"),
        ("pvc_db_60", "above_ground", "no"),
        ("pvc_db_120", "sunlight", "no"),
        ("pvc_db_100", "direct_burial", "yes"),
        ("pvc_schedule_40", "physical_damage", "no"),
        ("pvc_schedule_80", "physical_damage", "yes"),
        ("pvc_schedule_80", "emerging_from_grade", "yes"),
        ("pvc_schedule_40", "emerging_from_grade", "caution"),
        ("rmc", "physical_damage", "yes"),
        ("hdpe_schedule_40", "above_ground", "no"),
        ("pvc_type_a", "direct_burial", "no"),
    ],
)
def test_the_verdict_on_a_use(type_: str, use: str, verdict: str) -> None:
    answer = ask("permitted-use", {"type": type_, "uses": [use]})
    assert [judged["verdict"] for judged in answer["result"]["uses"]] == [verdict]
    assert answer["result"]["permitted"] is (verdict != "no")
    assert ("use_not_permitted" in codes(answer, "violation")) is (verdict == "no")


@pytest.mark.parametrize("type_", list(ConduitType))
def test_every_conduit_has_a_verdict_on_every_use(type_: str) -> None:
    found = result("permitted-use", {"type": type_, "uses": [use.value for use in ConduitUse]})
    assert [judged["use"] for judged in found["uses"]] == [use.value for use in ConduitUse]
    assert all(judged["source"] for judged in found["uses"])


def test_pvc_is_too_hot_above_50_degrees() -> None:
    def asked(degrees: float, unit: str, type_: str = "pvc_schedule_40") -> dict[str, Any]:
        return ask("permitted-use", example("permitted-use", type=type_, ambient_temperature=quantity(degrees, unit)))

    assert "too_hot_for_pvc" in codes(asked(51, "degC"), "violation")
    assert not asked(123, "degF")["result"]["permitted"]
    assert "too_hot_for_pvc" not in codes(asked(50, "degC")) + codes(asked(122, "degF"))
    assert "too_hot_for_pvc" not in codes(asked(60, "degC", "rmc"))


def test_joints_of_nine_ducts_by_hand() -> None:
    """Derived: 323 ft less two elbows of 36 in and 90 deg with 6 in ends leave 311.6 ft: 16 sticks of 20 ft."""
    found = result("joints", example("joints"))
    assert found["straight_length"]["value"] == pytest.approx(323 - 2 * (3 * math.pi / 2 + 1))
    assert found["stick_count"] == 16 * 9
    assert found["joint_count"] == (17 + 2) * 9
    assert found["cement_quart_count"] == math.ceil(171 / 50)
    assert (found["end_bell_count"], found["plug_count"], found["elbow_count"]) == (18, 4, 18)
    assert found["pull_cord_length"]["value"] == pytest.approx((323 + 20) * 9)


def test_shared_offcuts_and_bell_loss_change_the_sticks() -> None:
    shared = result("joints", example("joints", offcuts_shared=True))
    assert shared["stick_count"] == math.ceil(9 * shared["straight_length"]["value"] / 20)
    request = example("joints", bell_loss=quantity(6, "in"))
    del request["elbows"]
    assert result("joints", request)["stick_count"] == math.ceil(323 / 19.5) * 9


def test_plain_ends_take_couplings_with_two_sockets() -> None:
    plain, belled = (result("joints", example("joints", ends=ends)) for ends in ("plain", "belled"))
    assert (plain["coupling_count"], belled["coupling_count"]) == (17 * 9, 0)
    assert plain["joint_count"] == (2 * 17 + 2) * 9


@pytest.mark.parametrize(("degrees", "minutes"), [(70, 60), (50, 240), (20, 720)])
def test_cold_joints_set_for_longer(degrees: float, minutes: float) -> None:
    found = result("joints", example("joints", temperature=quantity(degrees, "degF")))
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
    assert refused("joints", example("joints", **changes)) == expected


def test_solvent_vapor_is_always_cautioned() -> None:
    assert "solvent_vapor" in codes(ask("joints", example("joints")), "caution")


def test_no_default_of_joints_is_silent() -> None:
    def assumed(name: str, *left_out: str) -> dict[str, Any]:
        request = {key: value for key, value in example(name).items() if key not in left_out}
        return {place: one["value"] for one in ask(name, request)["assumptions"] for place in one["pointers"]}

    assert assumed("joints", "cord_tail", "mandrel_clearance") == {
        "#/cord_tail": quantity(10, "ft"),
        "#/mandrel_clearance": quantity(0.25, "in"),
    }


def test_cord_and_mandrel_follow_what_is_given() -> None:
    given = example("joints", cord_tail=quantity(5, "ft"), mandrel_clearance=quantity(0.5, "in"))
    found = result("joints", given)
    assert found["pull_cord_length"]["value"] == pytest.approx((323 + 10) * 9)
    assert found["mandrel_diameter"]["value"] == pytest.approx(3.998 - 0.5)
    assert refused("joints", given | {"mandrel_clearance": quantity(4, "in")}) == {
        "#/mandrel_clearance/value": "no_mandrel_left"
    }
