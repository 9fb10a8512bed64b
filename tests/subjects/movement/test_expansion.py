"""Expansion: several runs, both conventions, the crew's table, the sun."""

from __future__ import annotations

import copy
import re
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, problem, quantity

RANGE = {
    "kind": "range",
    "lowest": quantity(0, "degF"),
    "highest": quantity(140, "degF"),
    "installation": quantity(60, "degF"),
    "direct_sun": False,
}


def move(**changes: Any) -> dict[str, Any]:
    request: dict[str, Any] = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE} | changes
    for field in [field for field, value in request.items() if value is None]:
        del request[field]
    return ask("expansion", request)


def asked(**changes: Any) -> dict[str, Any]:
    return ask("expansion", copy.deepcopy(EXAMPLES["expansion"]) | changes)


def without(*fields: str) -> dict[str, Any]:
    return {key: value for key, value in copy.deepcopy(EXAMPLES["expansion"]).items() if key not in fields}


def test_each_straight_run_is_judged_on_its_own() -> None:
    """Forty feet need a fitting, three do not, though ten of three together are thirty."""
    runs = [quantity(40, "ft"), *[quantity(3, "ft")] * 10]
    found = move(length=None, straight_runs=runs)["result"]
    assert [run["fitting_required"] for run in found["runs"]] == [True] + [False] * 10
    assert found["fitting_count"] == 1
    assert found["length_change"] == found["runs"][0]["length_change"]
    assert "fitting_spacing" not in found
    assert "piston_opening" not in found
    assert found["runs"][0]["piston_openings"]
    messages = [finding["message"] for finding in move(length=None, straight_runs=runs)["findings"]]
    assert any(message.startswith("Run 1 moves") for message in messages)


def test_a_run_is_given_one_way_or_the_other() -> None:
    for changes, pointer in (
        ({"straight_runs": [quantity(3, "ft")]}, "#/straight_runs"),
        ({"length": None}, "#/length"),
    ):
        request = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE} | changes
        raised = problem("expansion", {field: value for field, value in request.items() if value is not None})
        assert raised.errors is not None
        assert raised.errors[0].pointer == pointer


def test_fittings_stand_in_the_middle_of_equal_pieces_anchored_between() -> None:
    [run] = move(length=quantity(380, "ft"))["result"]["runs"]
    assert run["fitting_count"] == 4
    assert [place["value"] for place in run["fitting_positions"]] == pytest.approx([47.5, 142.5, 237.5, 332.5])
    assert [place["value"] for place in run["anchor_positions"]] == pytest.approx([95, 190, 285])


def test_the_crew_carries_a_table_of_openings() -> None:
    asked = [quantity(degrees, "degF") for degrees in (0, 40, 100, 140)]
    [run] = move(opening_temperatures=asked)["result"]["runs"]
    openings = [line["opening"]["value"] for line in run["piston_openings"]]
    assert [line["temperature"] for line in run["piston_openings"]] == [quantity(60, "degF"), *asked]
    assert openings == pytest.approx([6 * 80 / 140, 6, 6 * 100 / 140, 6 * 40 / 140, 0], abs=1e-9)


def test_both_conventions_are_given_and_the_default_is_stated() -> None:
    stated = move()
    assumed = {place: assumption for assumption in stated["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/piston_convention"]["text"] == "full_travel"
    assert "closed at the highest" in assumed["#/piston_convention"]["citation"]
    assert stated["result"]["piston_opening"]["value"] == pytest.approx(6 * 80 / 140)
    change = 3.38e-5 * 12 * 200 * 140 / 2
    centered = move(piston_convention="centered")["result"]["piston_opening"]["value"]
    assert centered == pytest.approx(change * 80 / 140 + (6 - change) / 2)


def test_the_default_convention_is_stated_once_for_many_runs() -> None:
    answer = move(length=None, straight_runs=[quantity(90, "ft"), quantity(80, "ft")])
    assert [place for assumption in answer["assumptions"] for place in assumption["pointers"]].count(
        "#/piston_convention"
    ) == 1


def test_a_setting_temperature_outside_of_the_range_is_refused() -> None:
    request = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE}
    raised = problem("expansion", request | {"opening_temperatures": [quantity(60, "degF"), quantity(61, "degC")]})
    assert raised.errors is not None
    assert raised.errors[0].pointer == "#/opening_temperatures/1/value"
    spread = {"kind": "difference", "difference": quantity(100, "delta_degF")}
    raised = problem("expansion", request | {"temperatures": spread, "opening_temperatures": [quantity(60, "degF")]})
    assert raised.errors is not None
    assert raised.errors[0].code == "needs_a_range"


def test_the_travels_that_are_sold_are_compared() -> None:
    found = move(length=quantity(380, "ft"))["result"]  # 21.58 in
    assert [(option["fitting_travel"]["value"], option["fitting_count"]) for option in found["travel_options"]] == [
        (2, 11),
        (4, 6),
        (6, 4),
        (8, 3),
    ]
    assert found["travel_needed"]["value"] == pytest.approx(21.578, abs=0.001)
    assert "travel_needed" not in move(length=quantity(3, "ft"))["result"]


@pytest.mark.parametrize("setting", ["direct_buried", "encased"])
def test_a_run_held_by_the_ground_is_explained_not_computed(setting: str) -> None:
    answer = move(setting=setting)
    assert f"{setting}_run_is_held" in codes(answer, "note")
    assert answer["result"]["runs"] == []
    assert "length_change" not in answer["result"]
    assert not answer["result"]["fitting_required"]
    assert "free_to_move" not in codes(answer)


def test_emergence_and_structural_joints_are_found() -> None:
    answer = move(emerges_from_grade=True, crosses_structural_joint=True)
    sources = {finding["code"]: finding["citation"] for finding in answer["findings"]}
    assert sources["emerges_from_grade"] == "NFPA 70-2023, 300.5(J)"
    assert sources["crosses_structural_joint"] == "NFPA 70-2023, 300.4(H)"
    quiet = codes(move(emerges_from_grade=False))
    assert not {"emerges_from_grade", "crosses_structural_joint"} & set(quiet)


def test_the_section_follows_the_edition() -> None:
    for edition, section in (("2020", "352.44"), ("2023", "352.44(A)")):
        found = next(finding for finding in move(code_edition=edition)["findings"] if finding["code"] == "free_to_move")
        assert found["citation"] == f"NFPA 70-{edition}, {section}"


def test_the_sun_allowance_is_added_once() -> None:
    def difference(**more: Any) -> float:
        temperatures = {"kind": "range", "lowest": quantity(20, "degF"), "highest": quantity(100, "degF")} | more
        request = without("opening_temperatures") | {"temperatures": temperatures}
        found = ask("expansion", request)["result"]
        return float(found["temperature_difference"]["value"])

    assert difference() == 80
    assert difference(direct_sun=False) == 80
    assert difference(direct_sun=True) == 110
    assert difference(direct_sun=True, sun_allowance=quantity(20, "delta_degF")) == 100
    assert difference(sun_allowance=quantity(20, "delta_degF")) == 100


def test_a_short_run_needs_no_fitting() -> None:
    answer = asked(length=quantity(4, "ft"))
    assert not answer["result"]["fitting_required"]
    assert answer["result"]["fitting_count"] == 0
    assert "piston_opening" not in answer["result"]
    assert "fitting_spacing" not in answer["result"]


def test_steel_borrows_the_trigger_and_says_so() -> None:
    answer = asked(material="steel")
    assert "trigger_borrowed" in codes(answer, "note")
    coefficient = without("material") | {"coefficient": quantity(6.5e-6, "1/degF")}
    assert ask("expansion", coefficient)["result"]["length_change"] == answer["result"]["length_change"]


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"coefficient": quantity(3e-5, "1/degF")}, {"#/coefficient": "one_of_two"}),
        (
            {"temperatures": {"kind": "range", "lowest": quantity(90, "degF"), "highest": quantity(30, "degC")}},
            {"#/temperatures/highest/value": "highest_not_above_lowest"},
        ),
        (
            {
                "temperatures": {
                    "kind": "range",
                    "lowest": quantity(0, "degF"),
                    "highest": quantity(100, "degF"),
                    "installation": quantity(101, "degF"),
                }
            },
            {"#/temperatures/installation/value": "installation_outside_range"},
        ),
        (
            {
                "temperatures": {
                    "kind": "range",
                    "lowest": quantity(0, "degF"),
                    "highest": quantity(100, "degF"),
                    "direct_sun": False,
                    "sun_allowance": quantity(30, "delta_degF"),
                }
            },
            {"#/temperatures/sun_allowance": "contradiction"},
        ),
    ],
)
def test_a_movement_without_an_answer_names_the_member(changes: dict[str, Any], expected: dict[str, str]) -> None:
    raised = problem("expansion", copy.deepcopy(EXAMPLES["expansion"]) | changes)
    assert {str(error.pointer): error.code for error in raised.errors or ()} == expected


def test_all_faults_of_a_movement_come_at_once() -> None:
    spread = {"kind": "range", "lowest": quantity(90, "degF"), "highest": quantity(30, "degC")}
    raised = problem("expansion", {"temperatures": spread})
    assert {error.pointer for error in raised.errors or ()} == {
        "#/material",
        "#/length",
        "#/temperatures/highest/value",
    }


def test_every_finding_says_which_member_it_is_about() -> None:
    answer = move(
        length=None,
        straight_runs=[quantity(3, "ft"), quantity(90, "ft")],
        material="steel",
        emerges_from_grade=True,
        crosses_structural_joint=True,
    )
    assert {finding["code"]: finding["pointer"] for finding in answer["findings"]} == {
        "trigger_borrowed": "#/material",
        "emerges_from_grade": "#/emerges_from_grade",
        "crosses_structural_joint": "#/crosses_structural_joint",
        "free_to_move": "#/setting",
        "expansion_fitting_required": "#/straight_runs/1",
    }
    [one] = [found for found in move()["findings"] if found["code"] == "expansion_fitting_required"]
    assert one["pointer"] == "#/length"


@pytest.mark.parametrize(
    ("sun", "cited"),
    [
        ({}, False),
        ({"direct_sun": False}, False),
        ({"sun_allowance": quantity(20, "delta_degF")}, False),
        ({"direct_sun": True}, True),
    ],
)
def test_the_sun_allowance_is_cited_where_it_is_used(sun: dict[str, Any], cited: bool) -> None:
    seen = {field: value for field, value in RANGE.items() if field != "direct_sun"}
    assert ("sun-allowance-catalogue" in move(temperatures=seen | sun)["basis"]["source_ids"]) is cited
    spread = {"kind": "difference", "difference": quantity(100, "delta_degF")}
    assert "sun-allowance-catalogue" not in move(temperatures=spread)["basis"]["source_ids"]


def test_sentences_follow_the_units_of_the_answer() -> None:
    request = {"material": "steel", "length": quantity(100, "m"), "temperatures": RANGE}
    words = [found["message"] for found in ask("expansion", request, "units=metric")["findings"]]
    assert "over the 6.35 mm that calls" in " ".join(words)
    assert "trigger of 6.35 mm" in " ".join(words)
    assert "of 152.4 mm travel" in " ".join(words)
    assert not re.search(r"\d (in|ft)\b", " ".join(words))


def test_the_coefficient_is_told_as_printed_or_given() -> None:
    assert move()["result"]["coefficient"] == quantity(3.38e-5, "1/degF")
    assert move(setting="encased")["result"]["coefficient"] == quantity(3.38e-5, "1/degF")
    given = move(material=None, coefficient=quantity(4e-5, "1/degF"))
    assert given["result"]["coefficient"] == quantity(4e-5, "1/degF")


def test_an_empty_list_is_taken_as_none() -> None:
    assert move(straight_runs=[], opening_temperatures=[]) == move()
    raised = problem("expansion", {"material": "pvc", "temperatures": RANGE, "straight_runs": []})
    assert [(error.pointer, error.code) for error in raised.errors or ()] == [("#/length", "one_of_two")]


def test_the_longest_run_without_a_fitting_by_hand() -> None:
    """Derived: 0.25 in over 3.38e-5 for each degree of 140 and the 12 inches of a foot."""
    found = move()["result"]
    assert found["longest_run_without_fitting"] == {"value": pytest.approx(0.25 / (3.38e-5 * 140 * 12)), "unit": "ft"}
    assert found["largest_difference_without_fitting"]["value"] == pytest.approx(0.25 / (3.38e-5 * 200 * 12))
