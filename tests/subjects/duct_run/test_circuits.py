"""Which circuits lie in which ducts from where to where, and whose cables they have."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, quantity
from tests.properties.test_requests import check_given_back
from tests.subjects.duct_run.remedied import altered
from tests.subjects.duct_run.runs import buried, single
from tests.subjects.duct_run.test_runs_of_several_conduits import run, stretch

CABLES = single(0.5, 0.5, "4/0 AWG")
HANDHOLE = {"kind": "handhole", "name": "HH"}


def circuit(name: str, **more: Any) -> dict[str, Any]:
    given = {} if "same_as" in more else {"cables": CABLES, "voltage": quantity(480, "V")}
    return {"name": name, **given, **more}


def with_circuits(*circuits: dict[str, Any]) -> dict[str, Any]:
    return run(stretch(buried(), pull_point=HANDHOLE), stretch(buried()), circuits=list(circuits))


def test_where_one_circuit_ends_another_may_begin_in_the_same_duct() -> None:
    first = circuit("F", ducts=["1-2"], end="HH")
    answer = ask("duct-run", with_circuits(first, circuit("G", ducts=["1-2"], start="HH")))
    assert [one["ducts"] for one in answer["result"]["circuits"]] == [["1-2"], ["1-2"]]
    assert [duct["circuits"] for duct in answer["result"]["ducts"]] == [[], ["F", "G"]]
    found = faults("duct-run", with_circuits(first, circuit("G", ducts=["1-2"])))
    assert [(one["pointer"], one["code"]) for one in found] == [("#/circuits/1/ducts/0", "duct_taken")]
    assert found[0]["allowed_values"] == ["1-1"]


def test_a_duct_that_is_free_on_the_way_is_found() -> None:
    ends, begins = circuit("F", duct_count=2, end="HH"), circuit("G", duct_count=2, start="HH")
    answer = ask("duct-run", with_circuits(ends, begins))
    assert [one["ducts"] for one in answer["result"]["circuits"]] == [["1-1", "1-2"], ["1-1", "1-2"]]
    assert answer["result"]["spare_count"] == 0
    found = faults("duct-run", with_circuits(ends, circuit("G", duct_count=1)))
    assert [(one["pointer"], one["code"]) for one in found] == [("#/circuits/1/duct_count", "no_free_duct")]


def test_cables_and_voltage_are_followed_from_circuit_to_circuit() -> None:
    one, other = circuit("F"), circuit("G", same_as="F")
    answer = ask("duct-run", with_circuits(circuit("H", same_as="G", end="HH"), one | {"start": "HH"}, other))
    assert "cover_not_judged" not in codes(answer), "the voltage is that of F"
    tensions = [circuit["pulls"][-1]["pull"]["tension"] for circuit in answer["result"]["circuits"]]
    assert tensions[0] == tensions[2]


def test_what_is_assumed_of_circuits_pulled_alike_is_assumed_of_each_and_can_be_given_back() -> None:
    # two power circuits have their cables in common; for the jacket of the telephone cable another friction is on file
    run = altered(EXAMPLES["duct-run"], lambda run: run.pop("pulling"))
    run["circuits"][2]["cables"][0]["cable"]["jacket"] = "pvc"
    answer = ask("duct-run", run)
    member = "pulling/braking_friction_coefficient"
    assumed = [one["pointers"] for one in answer["assumptions"] if one["pointers"][0].endswith(member)]
    assert assumed == [[f"#/circuits/0/{member}", f"#/circuits/1/{member}"], [f"#/circuits/2/{member}"]]
    check_given_back("duct-run", run, answer)


def entering(answer: dict[str, Any]) -> dict[str, float]:
    return {one["name"]: one["pulls"][0]["pull"]["incoming_tension"]["value"] for one in answer["result"]["circuits"]}


def test_a_circuit_with_one_of_incoming_tension_and_feed_length_does_without_the_other_of_the_run() -> None:
    # three cables of 0.5 lb/ft at a friction of 0.35: 100 ft before the duct are 0.35 x 1.5 x 100 = 52.5 lbf
    tension, feed = {"incoming_tension": quantity(50, "lbf")}, {"feed_length": quantity(100, "ft")}
    for of_run, own, expected in ((feed, tension, (52.5, 50)), (tension, feed, (50, 52.5))):
        asked = with_circuits(circuit("A"), circuit("B", pulling=own))
        asked["pulling"] = {"friction_coefficient": 0.35, **of_run}
        assert entering(ask("duct-run", asked)) == pytest.approx(dict(zip("AB", expected, strict=True)))
    both = with_circuits(circuit("A", pulling=tension | feed))
    [fault] = faults("duct-run", both)
    assert (fault["pointer"], fault["code"]) == ("#/circuits/0/pulling/feed_length", "one_of_two")


def test_a_run_of_which_one_circuit_has_an_incoming_tension_is_completed_and_gives_the_same() -> None:
    asked = with_circuits(circuit("A"), circuit("B", pulling={"incoming_tension": quantity(50, "lbf")}))
    asked["pulling"] = {"friction_coefficient": 0.35}
    answer = ask("duct-run", asked, "request=completed")
    assert "feed_length" in answer["request"]["pulling"]
    assert "feed_length" not in answer["request"]["circuits"][1]["pulling"]
    again = ask("duct-run", answer["request"])
    # of A the friction of 20 m, as practice has it: 0.35 x 1.5 lb/ft x 65.617 ft; of B what it was given
    assert entering(again) == pytest.approx({"A": 34.449, "B": 50}, rel=1e-4)
    assert entering(again) == entering(answer)
