"""Questions about a bank that have no answer: each with its place and what would do."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, codes, faults, quantity
from tests.subjects.feeder.banks import MEDIUM_VOLTAGE, WIRE, bank, buried, circuit, singles

LOSSY = [
    {"count": 3, "cable": MEDIUM_VOLTAGE | {"layers": MEDIUM_VOLTAGE["layers"] | {"insulation": {"material": "pvc"}}}}
]


def refused(request: dict[str, Any]) -> dict[str, str]:
    return {fault["pointer"]: fault["code"] for fault in faults("ampacity", request)}


def cabled(cable: dict[str, Any], **more: Any) -> dict[str, Any]:
    return bank([1], circuit("1-1", cables=[{"count": 3, "cable": cable}], **more))


def layered(**layers: Any) -> dict[str, Any]:
    return cabled(MEDIUM_VOLTAGE | {"layers": MEDIUM_VOLTAGE["layers"] | layers})


@pytest.mark.parametrize(
    ("request_", "pointer", "code"),
    [
        (bank([1]), "#/circuits", "too_few"),
        (bank([2], circuit("1-1"), circuit("1-1")), "#/circuits/1/ducts/0", "duct_loaded_twice"),
        (bank([2], circuit("1-1", "1-1")), "#/circuits/0/ducts/1", "duct_loaded_twice"),
        (bank([2], circuit("2-1")), "#/circuits/0/ducts/0", "no_such_duct"),
        (bank([1], circuit("1-1"), cover=quantity(1, "in"), depth=quantity(40, "in")), "#/depth", "contradiction"),
        (buried(circuit("1-1")) | {"depth": quantity(2, "in")}, "#/depth/value", "bank_above_grade"),
        (
            bank([1], circuit("1-1", temperature_limit=quantity(15, "degC"))),
            "#/circuits/0/temperature_limit",
            "limit_below_the_earth",
        ),
        (bank([1], circuit("1-1", amperes=2000)), "#/circuits/0/current/value", "no_steady_temperature"),
        (
            bank([2], circuit("1-1", cables=singles(count=2))),
            "#/circuits/0/loaded_conductor_count",
            "conductors_make_no_sets",
        ),
        (
            bank([1], circuit("1-1", loaded_conductor_count=6)),
            "#/circuits/0/loaded_conductor_count",
            "more_than_in_the_duct",
        ),
        (
            cabled({name: one for name, one in WIRE.items() if name != "material"}),
            "#/circuits/0/cables/0/cable/material",
            "missing",
        ),
        (
            cabled({name: one for name, one in MEDIUM_VOLTAGE.items() if name != "layers"}),
            "#/circuits/0/cables/0/cable/layers",
            "missing",
        ),
        (
            cabled({name: one for name, one in MEDIUM_VOLTAGE.items() if name != "conductor"}),
            "#/circuits/0/cables/0/cable/conductor",
            "missing",
        ),
        (
            cabled(MEDIUM_VOLTAGE | {"conductor": {"material": "copper", "count": 1}}),
            "#/circuits/0/cables/0/cable/conductor",
            "missing",
        ),
        (
            cabled(MEDIUM_VOLTAGE | {"conductor": {"material": "copper", "area": quantity(107, "mm2"), "count": 1}}),
            "#/circuits/0/cables/0/cable/layers/conductor_diameter",
            "missing",
        ),
        (
            layered(insulation={"material": "xlpe", "thickness": quantity(0.4, "in")}),
            "#/circuits/0/cables/0/cable/layers/insulation/thickness/value",
            "no_room_for_insulation",
        ),
        (
            layered(insulation={"material": "xlpe"}, conductor_diameter=quantity(1.2, "in")),
            "#/circuits/0/cables/0/cable/layers/conductor_diameter",
            "no_room_for_insulation",
        ),
        (layered(shield={}), "#/circuits/0/cables/0/cable/layers/shield", "missing"),
        (
            cabled({"kind": "bare", "size": "1/0 AWG", "material": "copper"}),
            "#/circuits/0/cables",
            "no_insulated_conductor",
        ),
        (
            bank([1], circuit("1-1", cables=[*singles(count=2), *singles(count=1, material="aluminum")])),
            "#/circuits/0/cables/1/cable",
            "loaded_conductors_differ",
        ),
        (
            cabled(MEDIUM_VOLTAGE | {"diameter": quantity(4.2, "in")}),
            "#/circuits/0/cables/0/cable",
            "wider_than_bore",
        ),
        (
            bank([1], circuit("1-1"), duct_material="steel")
            | {"bank": {"conduit": {"kind": "listed", "type": "hdpe_schedule_40", "trade_size": "5"}, "tiers": [1]}},
            "#/duct_material",
            "contradiction",
        ),
        (
            bank([1], circuit("1-1", cables=LOSSY, voltage=quantity(500, "kV"), amperes=1)),
            "#/circuits/0/voltage/value",
            "no_steady_temperature",
        ),
        (bank([1], circuit("1-1"), studies=["smallest_size"]), "#/circuits/0/current", "missing"),
        (
            bank(
                [20, 20, 20], *(circuit(f"{tier}-{at}") for tier in (1, 2, 3) for at in range(1, 17)), circuit("1-18")
            ),
            "#/circuits",
            "too_many",
        ),
        (
            bank([30, 30], circuit(*(f"1-{at}" for at in range(1, 31))), circuit(*(f"2-{at}" for at in range(1, 31)))),
            "#/circuits/1/ducts",
            "too_many_loaded_ducts",
        ),
    ],
)
def test_a_question_without_an_answer_is_refused_at_its_place(
    request_: dict[str, Any], pointer: str, code: str
) -> None:
    assert refused(request_)[pointer] == code


def test_a_bank_without_cover_and_depth_asks_for_one() -> None:
    asked = bank([1], circuit("1-1"))
    del asked["cover"]
    assert refused(asked) == {"#/cover": "missing"}


def test_currents_without_a_steady_temperature_are_told_the_most_that_has_one() -> None:
    [fault] = faults("ampacity", bank([1], circuit("1-1", amperes=2000)))
    assert fault["maximum"]["unit"] == "A"
    assert 400 < fault["maximum"]["value"] < 500


def test_a_depth_that_lifts_the_bank_out_of_the_earth_is_told_the_least_one() -> None:
    """A duct of 4.5 in stands out of the earth where its center is less than 2.25 in down."""
    [fault] = faults("ampacity", buried(circuit("1-1")) | {"depth": quantity(2, "in")})
    assert fault["minimum"] == {"value": pytest.approx(2.25), "unit": "in"}


def test_all_faults_of_all_circuits_come_at_once() -> None:
    asked = bank([2], circuit("3-1"), circuit("1-1", cables=singles(count=2)))
    del asked["cover"]
    assert set(refused(asked)) == {"#/cover", "#/circuits/0/ducts/0", "#/circuits/1/loaded_conductor_count"}


def test_a_set_that_does_not_pass_its_duct_is_refused() -> None:
    """Three equal cables pass a bore of 2.155 times one; three of 1.3 in need 2.8 in."""
    [fault] = faults("ampacity", bank([1], circuit("1-1", cables=singles("1000 kcmil"))) | _bored(2))
    assert (fault["pointer"], fault["code"]) == ("#/circuits/0/cables", "cables_do_not_pass")
    assert fault["maximum"]["value"] == pytest.approx(2 / 2.1547, rel=1e-3)
    with_others = [*singles("1000 kcmil"), *singles("500 kcmil", count=6)]
    [fault] = faults("ampacity", bank([1], circuit("1-1", cables=with_others)) | _bored(3))
    assert fault["code"] == "cables_do_not_pass"


def _bored(inches: float) -> dict[str, Any]:
    conduit = {"kind": "measured", "inside_diameter": quantity(inches, "in"), "outside_diameter": quantity(4.5, "in")}
    return {"bank": {"conduit": conduit, "tiers": [1]}}


def test_a_shield_within_its_insulation_is_refused() -> None:
    """4/0 is .528 in, and .968 in with its walls of .22 in."""
    shield = {"metal_area": quantity(16, "mm2"), "mean_diameter": quantity(0.5, "in")}
    [fault] = faults("ampacity", layered(shield=shield))
    assert fault["pointer"] == "#/circuits/0/cables/0/cable/layers/shield/mean_diameter/value"
    assert fault["minimum"]["value"] == pytest.approx(0.968)


def test_what_would_do_is_taken_when_it_is_given() -> None:
    cold = bank([1], circuit("1-1", temperature_limit=quantity(68, "degF")))
    [fault] = faults("ampacity", cold)
    warm = circuit("1-1", temperature_limit=fault["minimum"])
    assert ask("ampacity", bank([1], warm))["result"]["ampacity"]["value"] > 0
    high = buried(circuit("1-1")) | {"depth": quantity(2, "in")}
    [fault] = faults("ampacity", high)
    assert "less than 2.25 in" in fault["message"]
    assert ask("ampacity", high | {"depth": fault["minimum"]})["result"]["ampacity"]["value"] > 0


def test_a_duct_wider_than_the_daily_cycle_is_a_caution() -> None:
    wide = {"kind": "measured", "inside_diameter": quantity(10, "in"), "outside_diameter": quantity(10.5, "in")}
    asked = bank([1], circuit("1-1", load_factor_percent=30)) | {"bank": {"conduit": wide, "tiers": [1]}}
    [found] = [one for one in ask("ampacity", asked)["findings"] if one["code"] == "duct_beyond_the_cycle"]
    assert found["limit"] == quantity(8.3, "in")
    assert found["actual"]["value"] == pytest.approx(10.5)
    steady = asked | {"circuits": [circuit("1-1")]}
    assert "duct_beyond_the_cycle" not in codes(ask("ampacity", steady))
