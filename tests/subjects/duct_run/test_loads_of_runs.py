"""Loads of a whole run: what of them is assumed, and what is refused as it is where it is asked alone."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, assumed, codes, faults, quantity
from tests.subjects.duct_run.runs import listed
from tests.subjects.duct_run.test_parts_of_runs import RUN, STEEL, found_in, run_with

COLUMN = "#/circuits/0/load/conduit_material"


def loaded(**load: Any) -> dict[str, Any]:
    return run_with(lambda run: run["circuits"][0]["load"].update(load))


def direct(**load: Any) -> dict[str, Any]:
    run = run_with()
    run["circuits"][0]["load"] = {"system": "direct_current", "loaded_conductor_count": 2, **load}
    return run


def test_the_conduit_that_a_drop_is_read_in_is_an_assumption_that_says_where_it_lies() -> None:
    plastic = ask("duct-run", RUN)
    assert assumed(plastic)[COLUMN] == "pvc"
    above = {"setting": {"kind": "above_ground"}, "conduit": STEEL, "length": quantity(1, "ft"), "name": "wall"}
    steel = run_with(lambda run: run["stretches"].append(above))
    [told] = [one for one in ask("duct-run", steel)["assumptions"] if one["pointers"] == [COLUMN]]
    assert told["text"] == "steel"
    assert "wall is of no type given" not in told["citation"]
    assert "wall is rmc, taken as steel" in told["citation"]
    assert COLUMN not in assumed(ask("duct-run", loaded(conduit_material="steel")))


def test_circuits_with_one_load_on_other_ways_are_each_told_their_conduit() -> None:
    above = {"setting": {"kind": "above_ground"}, "conduit": STEEL, "length": quantity(1, "ft"), "name": "wall"}
    run = run_with(lambda run: run["stretches"].append(above))
    run["stretches"][1]["pull_point"] = {"kind": "handhole", "name": "HH-9"}
    run["circuits"][1]["end"] = "HH-9"
    told = [one["text"] for one in ask("duct-run", run)["assumptions"] if COLUMN in one["pointers"]]
    assert sorted(told) == ["pvc", "steel"]


def test_no_column_is_assumed_where_none_is_read() -> None:
    given = {"resistance": quantity(0.1, "ohm/km"), "reactance": quantity(0.1, "ohm/km")}
    assert COLUMN not in assumed(ask("duct-run", loaded(**given)))
    assert COLUMN not in assumed(ask("duct-run", direct(current=quantity(100, "A"))))


def test_a_run_has_one_frequency() -> None:
    """Table 9: 0.039 ohm for 1000 ft at 60 Hz, 0.0325 at 50."""
    run = run_with(rating={"frequency": quantity(50, "Hz")})
    drop = ask("duct-run", run)["result"]["circuits"][0]["voltage_drop"]
    assert drop["reactance"]["value"] == pytest.approx(0.0325)
    run["stretches"][1]["rating"] = {"frequency": quantity(60, "Hz")}
    [fault] = faults("duct-run", run)
    assert (fault["pointer"], fault["code"]) == ("#/stretches/1/rating/frequency", "unknown_member")


@pytest.mark.parametrize("member", [{"power_factor": 0.9}, {"conduit_material": "pvc"}])
def test_what_direct_current_does_not_have_is_refused_once_in_a_run_too(member: dict[str, Any]) -> None:
    [fault] = faults("duct-run", direct(current=quantity(100, "A"), **member))
    [name] = member
    assert (fault["pointer"], fault["code"]) == (f"#/circuits/0/load/{name}", "not_of_direct_current")


def test_a_power_factor_that_is_not_given_is_the_worst_one() -> None:
    """Table 9: 500 kcmil in PVC 0.027 and 0.039 ohm: 0.569, under the least that is usual."""
    run = run_with(lambda run: run["circuits"][0]["load"].pop("power_factor"))
    assert assumed(ask("duct-run", run))["#/circuits/0/load/power_factor"] == 0.8


def test_a_signal_circuit_has_no_load() -> None:
    run = run_with(lambda run: run["circuits"][0].update(service="signal"))
    del run["circuits"][1]
    [fault] = faults("duct-run", run)
    assert (fault["pointer"], fault["code"]) == ("#/circuits/0/load", "load_of_a_signal_circuit")


@pytest.mark.parametrize("which", [0, 1])
def test_a_circuit_has_the_cables_of_one_of_its_own_service(which: int) -> None:
    run = run_with(lambda run: run["circuits"][which].update(service="signal"))
    del run["circuits"][0]["load"]
    [fault] = faults("duct-run", run)
    assert (fault["pointer"], fault["code"]) == ("#/circuits/1/same_as", "service_differs")
    assert ("A is a power circuit and this one a signal circuit" in fault["message"]) is (which == 1)


def test_conductors_that_make_no_sets_are_counted_in_words() -> None:
    run = run_with(lambda run: run["circuits"][0]["cables"][0].update(count=4))
    [fault] = faults("duct-run", run)
    assert fault["code"] == "conductors_make_no_sets"
    assert fault["message"].startswith("4 loaded phase conductors in the duct make no whole sets of 3: where one is")
    assert "loaded_conductor_count 3" in fault["message"]
    assert "loaded_neutral_count 1" in fault["message"]
    for members in ({"loaded_conductor_count": 3}, {"loaded_neutral_count": 1}):
        run["circuits"][0]["load"].update(members)
        assert ask("duct-run", run)["result"]["circuits"][0]["voltage_drop"]["drop_percent"] > 0
        run["circuits"][0]["load"] = {"current": quantity(100, "A")}


@pytest.mark.parametrize(
    ("system", "count", "ducts"), [("three_phase", 4, 3), ("single_phase", 3, 2), ("direct_current", 3, 2)]
)
def test_what_is_over_in_one_duct_makes_no_set_with_what_is_over_in_the_next(
    system: str, count: int, ducts: int
) -> None:
    """Four wires in each of three ducts are three sets with their neutrals, and no four sets of three."""
    names = ["1-1", "1-2", "2-1"][:ducts]

    def with_load(**load: Any) -> dict[str, Any]:
        run = run_with(lambda run: run["bank"].update(tiers=[2, 2]))
        del run["circuits"][1]
        run["circuits"][0].update(ducts=names, load={"system": system, "current": quantity(600, "A"), **load})
        run["circuits"][0]["cables"][0].update(count=count)
        return run

    [fault] = faults("duct-run", with_load())
    assert (fault["pointer"], fault["code"]) == (
        "#/circuits/0/load/loaded_conductor_count",
        "conductors_make_no_sets",
    )
    assert fault["message"].startswith(f"{count} loaded phase conductors in each of {ducts} ducts make no whole sets")
    assert "every phase lies in every duct" in fault["message"]
    answer = ask("duct-run", with_load(loaded_conductor_count=count - 1))
    [circuit] = answer["result"]["stretches"][0]["ampacity"]["circuits"]
    assert circuit["parallel_count"] == ducts
    assert circuit["conductor_current"]["value"] == pytest.approx(600 / ducts)
    if system != "direct_current":
        again = ask("duct-run", with_load(loaded_neutral_count=1))
        assert again["result"]["stretches"][0]["ampacity"]["circuits"][0]["parallel_count"] == ducts


def test_ducts_with_a_part_of_a_set_ask_for_all_ducts_of_their_circuit() -> None:
    run = run_with(lambda run: run["circuits"][0]["cables"][0].update(count=1))
    [fault] = faults("duct-run", run)
    assert fault["message"].startswith("1 loaded phase conductor in the duct makes no whole sets of 3: give all ducts")


def test_the_earth_load_of_a_stretch_says_what_passes_over_it() -> None:
    run = run_with(earth_load={"traffic": "none"})
    run["stretches"][1]["earth_load"] = {"compaction": "high"}
    [fault] = faults("duct-run", run)
    assert (fault["pointer"], fault["code"]) == ("#/stretches/1/earth_load/traffic", "missing")


def test_neutrals_are_spoken_of_where_one_may_lie_that_was_not_counted() -> None:
    def with_lines(*lines: tuple[int, str], **load: Any) -> list[str]:
        wire = RUN["circuits"][0]["cables"][0]["cable"]
        cables = [{"count": count, "cable": wire | {"size": size}} for count, size in lines]
        run = run_with(lambda run: run["circuits"][0].update(cables=cables))
        run["circuits"][0]["load"].update(load)
        return codes(ask("duct-run", run), "caution")

    code = "neutral_without_heat"
    assert code not in with_lines((3, "500 kcmil"))
    assert code not in with_lines((3, "500 kcmil"), (1, "2 AWG")), "that one grounds"
    assert code in with_lines((3, "500 kcmil"), (2, "2 AWG"))
    assert code in with_lines((4, "500 kcmil"), loaded_conductor_count=3)
    assert code not in with_lines((4, "500 kcmil"), loaded_conductor_count=3, loaded_neutral_count=0), "it was said"
    assert code not in with_lines((4, "500 kcmil"), (1, "2 AWG"), loaded_neutral_count=1)


def test_circuits_with_the_same_fault_are_all_named_in_one_finding() -> None:
    run = run_with(pulling={"allowable_tension": quantity(10, "lbf")})
    told = [one["message"] for one in found_in(ask("duct-run", run), "tension_exceeded")]
    assert told[0].startswith("A, B, V-1 to HH-2: ")


def test_a_conduit_that_is_too_full_is_named() -> None:
    run = run_with(lambda run: run["stretches"][1].update(conduit=listed("2")))
    run["circuits"][0]["cables"][0]["count"] = 3
    [told] = found_in(ask("duct-run", run), "fill_exceeded")
    assert told["message"].startswith("A, B: The conductors fill")
    assert "percent of the conduit, 2 in pvc schedule 40; the limit is 40" in told["message"]
