"""What an answer about ampacity says: one basis of figures, true reasons, no ceiling told as an answer."""

from __future__ import annotations

import pytest

from tests.asking import ask, assumed, codes, faults, quantity, result
from tests.subjects.feeder.banks import bank, buried, circuit, singles


def test_alone_and_in_the_bank_are_told_of_all_sets() -> None:
    """Two sets: the circuit, and what it would carry with each duct alone, are both twice that of a conductor."""
    found = result("ampacity", bank([2], circuit("1-1", "1-2")))
    assert found["single_duct_ratio"] == pytest.approx(
        found["ampacity"]["value"] / found["single_duct_ampacity"]["value"]
    )
    alone = result("ampacity", bank([2], circuit(found["governing_duct"])))
    assert found["single_duct_ampacity"]["value"] == pytest.approx(2 * alone["ampacity"]["value"])


def test_the_reason_why_a_lone_duct_carries_less_than_the_table_is_true() -> None:
    asked = bank(
        [1], circuit("1-1", cables=singles("1000 kcmil")), earth_thermal_resistivity=quantity(300, "degC.cm/W")
    )
    [note] = [one for one in ask("ampacity", asked)["findings"] if one["code"] == "table_ampacity"]
    assert note["actual"]["value"] < note["limit"]["value"]
    assert "warm each other" not in note["message"]
    assert "earth and duct" in note["message"]


def test_the_end_of_the_search_is_not_told_as_the_earth() -> None:
    answer = ask("ampacity", bank([1], circuit("1-1", amperes=20), studies=["largest_earth_resistivity"]))
    assert "largest_earth_resistivity" not in answer["result"]
    assert "any_earth_carries_it" in codes(answer, "note")


def test_an_envelope_beyond_the_method_says_how() -> None:
    """Six ducts of 4.5 in 3 in apart, 27 + 15 + 6 = 48 in and 10.5 in: 4.57 to 1, over 3 to 1."""
    [flat] = [
        one
        for one in ask("ampacity", bank([6], circuit("1-3")))["findings"]
        if one["code"] == "envelope_beyond_the_method"
    ]
    assert flat["actual"]["value"] == pytest.approx(48 / 10.5)
    assert flat["limit"]["value"] == 3
    assert flat["pointer"] == "#/circuits/0/ducts"
    shallow = ask("ampacity", bank([1], circuit("1-1"), cover=quantity(0, "in")))
    [near] = [one for one in shallow["findings"] if one["code"] == "envelope_beyond_the_method"]
    assert "surface" in near["message"]


def test_no_other_duct_adds_nothing() -> None:
    [duct] = result("ampacity", bank([1], circuit("1-1")))["ducts"]
    assert duct["mutual_rise"]["value"] == 0


def test_concrete_that_is_not_there_has_no_resistivity() -> None:
    asked = buried(circuit("1-1"), concrete_thermal_resistivity=quantity(85, "degC.cm/W"))
    [fault] = faults("ampacity", asked)
    assert (fault["pointer"], fault["code"]) == ("#/concrete_thermal_resistivity", "contradiction")


def test_what_is_assumed_names_the_section_of_the_edition() -> None:
    answer = ask("ampacity", bank([1], circuit("1-1"), code_edition="2017"))
    [method] = [one for one in answer["assumptions"] if one["pointers"] == ["#/method"]]
    assert "310.15(C) in 2017" in method["citation"]
    assert assumed(answer)["#/method"] == "neher_mcgrath"


def test_figures_that_nearly_meet_are_told_apart() -> None:
    answer = ask("ampacity", bank([1], circuit("1-1", amperes=380.0001, cables=[*singles()])))
    [found] = [one for one in answer["findings"] if one["code"] == "over_terminal_rating"]
    assert "380 A is over the 380 A" not in found["message"]
