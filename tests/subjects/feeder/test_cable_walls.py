"""The walls of a cable by its layers: what its heat crosses, and what would do where they do not fit."""

from __future__ import annotations

import math
from typing import Any

import pytest

from tests.asking import ask, codes, faults, quantity
from tests.subjects.feeder.banks import bank, circuit


def layered(diameter: float, conductor: float, wall: float, jacket: float, **layers: Any) -> dict[str, Any]:
    """Ask for three cables of these diameters and walls [mm]."""
    cable = {
        "kind": "measured",
        "diameter": quantity(diameter, "mm"),
        "conductor": {"material": "copper", "area": quantity(300, "mm2"), "count": 1},
        "layers": {
            "insulation": {
                "material": "xlpe",
                "thickness": quantity(wall, "mm"),
                "thermal_resistivity": quantity(3.5, "K.m/W"),
            },
            "jacket": {"material": "pvc", "thickness": quantity(jacket, "mm")},
            "conductor_diameter": quantity(conductor, "mm"),
            **layers,
        },
    }
    return bank([1], circuit("1-1", cables=[{"count": 3, "cable": cable}]))


SHIELD = {"shield": {"metal_area": quantity(16, "mm2")}}


def test_a_given_wall_under_a_shield_is_what_the_heat_crosses() -> None:
    """A worked sheet prints 0.2 K.m/W for 4.5 mm on a conductor of 20.8 mm; 3.5/(2 pi) ln(29.8/20.8) = 0.200."""
    answer = ask("ampacity", layered(39.07, 20.8, 4.5, 2.1, **SHIELD), "units=metric")
    told = answer["result"]["ducts"][0]["insulation_resistance"]["value"]
    assert told == pytest.approx(3.5 / (2 * math.pi) * math.log(29.8 / 20.8))
    assert told == pytest.approx(0.2, abs=0.001)
    assert "layers_leave_a_gap" not in codes(answer)


def test_what_is_left_without_a_shield_is_taken_for_insulation_and_told() -> None:
    answer = ask("ampacity", layered(39.07, 20.8, 4.5, 2.1), "units=metric")
    told = answer["result"]["ducts"][0]["insulation_resistance"]["value"]
    assert told == pytest.approx(3.5 / (2 * math.pi) * math.log((39.07 - 4.2) / 20.8))
    [gap] = [one for one in answer["findings"] if one["code"] == "layers_leave_a_gap"]
    assert gap["actual"] == {"value": pytest.approx((39.07 - 4.2 - 29.8) / 2), "unit": "mm"}
    filled = ask("ampacity", layered(34.0, 20.8, 4.5, 2.1))
    assert "layers_leave_a_gap" not in codes(filled)


def test_more_left_under_a_shield_than_the_wall_takes_is_told() -> None:
    assert "layers_leave_a_gap" in codes(ask("ampacity", layered(39.07, 20.8, 1.3, 2.1, **SHIELD)), "caution")


def test_a_cable_too_thin_for_its_walls_is_told_the_least_diameter() -> None:
    """20.8 + 2 x 4.5 + 2 x 2.1 = 34 mm, which has no room left."""
    [fault] = faults("ampacity", layered(22, 20.8, 4.5, 2.1), "units=metric")
    assert fault["pointer"] == "#/circuits/0/cables/0/cable/diameter/value"
    assert fault["minimum"] == {"value": pytest.approx(34), "unit": "mm"}
    assert ask("ampacity", layered(34, 20.8, 4.5, 2.1))["result"]["ampacity"]["value"] > 0
    [thick] = faults("ampacity", layered(32, 20.8, 4.5, 2.1), "units=metric")
    assert thick["maximum"] == {"value": pytest.approx((32 - 4.2 - 20.8) / 2), "unit": "mm"}
