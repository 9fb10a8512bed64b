"""What ducts are made of, and what lies in them, where a wrong answer would be on the unsafe side."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, codes, faults, quantity
from tests.subjects.feeder.banks import DUCT, bank, circuit, singles


def typed(kind: str, *circuits: dict[str, Any], count: int = 1, **more: Any) -> dict[str, Any]:
    """Give a bank of measured ducts of a stated type."""
    asked = bank([count], *circuits, **more)
    return asked | {"bank": asked["bank"] | {"conduit": DUCT | {"type": kind}}}


@pytest.mark.parametrize("kind", ["rmc", "imc", "emt"])
def test_a_measured_duct_is_made_of_what_its_type_says(kind: str) -> None:
    answer = ask("ampacity", typed(kind, circuit("1-1", amperes=300)))
    assert answer["verdict"] == answer["result"]["circuits"][0]["verdict"] == "not_judged"
    assert "steel_conduit_not_judged" in codes(answer)
    assert answer["result"]["ducts"][0]["wall_resistance"]["value"] == 0


def test_steel_ducts_among_others_are_known_by_their_type() -> None:
    asked = bank([2], circuit("1-2", amperes=300))
    mixed = {"tier_ducts": [[{"count": 1}, {"count": 1, "conduit": DUCT | {"type": "rmc"}}]]}
    asked["bank"] = {name: one for name, one in asked["bank"].items() if name != "tiers"} | mixed
    assert "steel_conduit_not_judged" in codes(ask("ampacity", asked))


def test_a_material_beside_a_type_is_refused() -> None:
    [fault] = faults("ampacity", typed("rmc", circuit("1-1"), duct_material="pvc"))
    assert (fault["pointer"], fault["code"]) == ("#/duct_material", "contradiction")


def test_conductors_of_a_set_lie_together_in_steel() -> None:
    apart = circuit("1-1", "1-2", "1-3", amperes=200, cables=singles(count=1))
    answer = ask("ampacity", typed("rmc", apart, count=3))
    assert answer["verdict"] == answer["result"]["circuits"][0]["verdict"] == "violates"
    [found] = [one for one in answer["findings"] if one["code"] == "set_split_in_steel"]
    assert (found["pointer"], found["actual"]["value"]) == ("#/circuits/0/ducts", 1)
    direct: dict[str, Any] = {"system": "direct_current", "cables": singles(count=1), "current": quantity(200, "A")}
    assert ask("ampacity", typed("rmc", circuit("1-1", "1-2", **direct), count=2))["verdict"] == "complies"
    assert "set_split_in_steel" not in codes(ask("ampacity", bank([3], apart)))


def test_sets_in_parallel_are_counted_in_each_duct() -> None:
    """Every phase lies in every duct: four of one size in each of three ducts are three sets and their neutrals."""
    four: dict[str, Any] = {"cables": singles(count=4)}
    [fault] = faults("ampacity", bank([3], circuit("1-1", "1-2", "1-3", **four)))
    assert (fault["pointer"], fault["code"]) == ("#/circuits/0/loaded_conductor_count", "conductors_make_no_sets")
    asked = circuit("1-1", "1-2", "1-3", amperes=600, **four, loaded_conductor_count=3)
    [told] = ask("ampacity", bank([3], asked))["result"]["circuits"]
    assert told["parallel_count"] == 3
    assert told["conductor_current"]["value"] == pytest.approx(200)


def test_phases_that_each_have_ducts_of_their_own_are_told_by_their_count() -> None:
    """One of each phase in a duct is a set over three ducts; two in a duct are no pair of phases unless it is said."""
    one = circuit("1-1", "1-2", "1-3", amperes=200, cables=singles(count=1))
    assert ask("ampacity", bank([3], one))["result"]["circuits"][0]["parallel_count"] == 1
    two: dict[str, Any] = {"amperes": 200, "cables": singles(count=2)}
    [fault] = faults("ampacity", bank([3], circuit("1-1", "1-2", "1-3", **two)))
    assert fault["code"] == "conductors_make_no_sets"
    assert "loaded_conductor_count 2" in fault["message"]
    said = circuit("1-1", "1-2", "1-3", **two, loaded_conductor_count=2)
    assert ask("ampacity", bank([3], said))["result"]["circuits"][0]["parallel_count"] == 2


def test_a_neutral_that_counts_gives_heat_and_makes_no_set() -> None:
    """Four conductors in a raceway: 80 percent of 380 A x 1.11; a fourth heat as large as a phase's."""
    four = circuit("1-1", amperes=300, cables=singles(count=4), loaded_neutral_count=1)
    answer = ask("ampacity", bank([1], four))
    [told], [duct] = answer["result"]["circuits"], answer["result"]["ducts"]
    assert told["parallel_count"] == 1
    assert told["conductor_current"]["value"] == pytest.approx(300)
    assert told["adjusted_table_ampacity"]["value"] == pytest.approx(380 * 1.11 * 0.8)
    assert duct["heat"]["value"] == pytest.approx(4 * duct["conductor_loss"]["value"])
    plain = ask("ampacity", bank([1], circuit("1-1", amperes=300)))
    assert told["ampacity"]["value"] < plain["result"]["circuits"][0]["ampacity"]["value"]


def test_a_neutral_that_counts_is_as_large_as_the_phases() -> None:
    smaller = [*singles(), *singles("4/0 AWG", count=1)]
    asked = circuit("1-1", cables=smaller, loaded_conductor_count=4, loaded_neutral_count=1)
    [fault] = faults("ampacity", bank([1], asked))
    assert (fault["pointer"], fault["code"]) == ("#/circuits/0/loaded_conductor_count", "more_than_in_the_duct")
    assert "as large as the phases" in fault["message"]
    [none_left] = faults("ampacity", bank([1], circuit("1-1", loaded_neutral_count=3)))
    assert none_left["code"] == "conductors_make_no_sets"


@pytest.mark.parametrize(
    ("beside", "line"),
    [
        (singles("2 AWG"), 1),
        ([*singles("4/0 AWG", count=1), *singles("2 AWG", count=1), *singles("12 AWG", count=1)], 3),
        (
            [
                {
                    "count": 1,
                    "cable": {
                        "kind": "multiconductor",
                        "diameter": quantity(0.6, "in"),
                        "conductor": {"material": "copper", "size": "12 AWG", "count": 2},
                    },
                }
            ],
            1,
        ),
    ],
)
def test_a_second_circuit_in_a_duct_is_not_told_as_complying(beside: list[dict[str, Any]], line: int) -> None:
    answer = ask("ampacity", bank([1], circuit("1-1", amperes=150, cables=[*singles(), *beside])))
    assert answer["verdict"] == answer["result"]["circuits"][0]["verdict"] == "not_judged"
    [found] = [one for one in answer["findings"] if one["code"] == "other_conductors_not_judged"]
    assert found["pointer"] == f"#/circuits/0/cables/{line}"


def test_a_neutral_and_a_ground_for_each_set_are_no_second_circuit() -> None:
    one = circuit("1-1", amperes=150, cables=[*singles(count=4), *singles("3 AWG", count=1)], loaded_conductor_count=3)
    assert ask("ampacity", bank([1], one))["verdict"] == "complies"
    two = [*singles("1/0 AWG", count=6), *singles("2 AWG", count=2), *singles("6 AWG", count=2)]
    assert ask("ampacity", bank([1], circuit("1-1", amperes=150, cables=two)))["verdict"] == "complies"


def test_a_duct_given_to_two_circuits_says_that_each_needs_its_own() -> None:
    [fault] = faults("ampacity", bank([2], circuit("1-1"), circuit("1-1")))
    assert "give each its own" in fault["message"]
