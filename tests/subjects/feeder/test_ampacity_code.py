"""What the code says of a circuit beside its heat, where it was told as complying."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, codes, quantity
from tests.subjects.feeder.banks import GROUND, bank, circuit, singles


def broken(code: str, *circuits: dict[str, Any], tiers: int = 1) -> dict[str, Any]:
    """Give the violation that decides the verdict of the answer and of its first circuit."""
    answer = ask("ampacity", bank([tiers], *circuits))
    assert answer["verdict"] == answer["result"]["circuits"][0]["verdict"] == "violates"
    [found] = [one for one in answer["findings"] if one["code"] == code]
    assert found["severity"] == "violation"
    return dict(found)


def test_building_wire_is_not_for_medium_voltage() -> None:
    found = broken("voltage_over_insulation", circuit("1-1", amperes=300, voltage=quantity(15, "kV")))
    assert found["pointer"] == "#/circuits/0/voltage"
    assert found["limit"] == {"value": 600, "unit": "V"}


def test_sets_in_parallel_are_of_1_0_at_least() -> None:
    small = circuit("1-1", "1-2", amperes=60, cables=singles("4 AWG"))
    assert broken("too_small_in_parallel", small, tiers=2)["pointer"] == "#/circuits/0/cables/0/cable"
    enough = circuit("1-1", "1-2", amperes=60, cables=singles("1/0 AWG"))
    assert ask("ampacity", bank([2], enough))["verdict"] == "complies"


def test_no_grounding_conductor_in_plastic_duct_is_a_violation() -> None:
    """Table 250.122: 3 AWG of copper to 400 A."""
    device = quantity(400, "A")
    small = circuit("1-1", amperes=300, overcurrent_device=device, cables=[*singles(), *singles("14 AWG", count=1)])
    found = broken("no_grounding_conductor", small)
    assert "3 AWG" in found["message"]
    assert "raceway" not in found["message"]
    enough = circuit("1-1", amperes=300, overcurrent_device=device, cables=[*singles(), *singles("3 AWG", count=1)])
    assert ask("ampacity", bank([1], enough))["verdict"] == "complies"
    fifth = circuit("1-1", amperes=300, overcurrent_device=device, cables=singles(count=5), loaded_conductor_count=3)
    assert "no_grounding_conductor" not in codes(ask("ampacity", bank([1], fifth))), "a neutral, and one to ground"
    metal = bank([1], circuit("1-1", amperes=300, overcurrent_device=device), duct_material="aluminum")
    assert "no_grounding_conductor" in codes(ask("ampacity", metal), "caution")


def test_a_device_protects_the_conductors_behind_it() -> None:
    """380 A of terminals at 75 degC: 400 A is the next standard device; above 800 A there is none."""
    grounded = [*singles(), GROUND]
    found = broken(
        "device_over_ampacity", circuit("1-1", amperes=300, overcurrent_device=quantity(1200, "A"), cables=grounded)
    )
    assert found["pointer"] == "#/circuits/0/overcurrent_device"
    assert found["limit"] == {"value": 400, "unit": "A"}
    largest = circuit("1-1", amperes=300, overcurrent_device=quantity(400, "A"), cables=grounded)
    assert ask("ampacity", bank([1], largest))["verdict"] == "complies"
    three = circuit(
        "1-1", "1-2", "1-3", amperes=900, overcurrent_device=quantity(1200, "A"), cables=[*singles("600 kcmil"), GROUND]
    )
    assert broken("device_over_ampacity", three, tiers=3)["limit"]["value"] < 1200, (
        "no standard device above 800 A is rounded up to"
    )


def test_small_conductors_have_the_smallest_devices() -> None:
    """14 AWG is protected at 15 A, though terminals at 75 degC would let it carry 20 A."""
    small = circuit(
        "1-1",
        amperes=10,
        cables=singles("14 AWG", count=4),
        loaded_conductor_count=3,
        terminal_rating="75_degc",
        overcurrent_device=quantity(20, "A"),
    )
    assert broken("device_over_ampacity", small)["limit"]["value"] == 15


def test_a_load_over_its_device_is_a_violation() -> None:
    over = circuit("1-1", amperes=370, overcurrent_device=quantity(200, "A"), cables=[*singles(), GROUND])
    found = broken("load_over_device", over)
    assert (found["pointer"], found["limit"]) == ("#/circuits/0/current", {"value": 200, "unit": "A"})
    assert found["actual"]["value"] == pytest.approx(370)


@pytest.mark.parametrize(
    ("asked", "size"),
    [
        (circuit("1-1", amperes=300), "350 kcmil"),  # 310 A at 75 degC; 300 kcmil has 285
        (circuit("1-1", "1-2", amperes=60), "1/0 AWG"),  # in parallel
        (circuit("1-1", amperes=5), "14 AWG"),
        (circuit("1-1", amperes=5, overcurrent_device=quantity(20, "A")), "12 AWG"),
        (
            circuit("1-1", amperes=250, overcurrent_device=quantity(400, "A")),
            "500 kcmil",
        ),  # 400 kcmil: 335 A, behind 350
    ],
)
def test_the_smallest_size_is_one_that_the_code_allows(asked: dict[str, Any], size: str) -> None:
    """Behind 400 A 400 kcmil is not enough: its 335 A are protected by 350 A."""
    assert ask("ampacity", bank([2], asked, studies=["smallest_size"]))["result"]["smallest_size"] == size
    cables = [*singles(size), GROUND]
    assert "violates" not in ask("ampacity", bank([2], asked | {"cables": cables})).values()


def test_the_smallest_size_passes_its_duct() -> None:
    """Three of 1000 kcmil, 1.275 in, need 2.75 in: in 2.5 in nothing that passes carries 520 A."""
    conduit = {"kind": "measured", "inside_diameter": quantity(2.5, "in"), "outside_diameter": quantity(4.5, "in")}
    asked = bank([1], circuit("1-1", amperes=520), studies=["smallest_size"]) | {
        "bank": {"conduit": conduit, "tiers": [1]}
    }
    answer = ask("ampacity", asked)
    assert "smallest_size" not in answer["result"]
    assert "no_size_carries_it" in codes(answer)
