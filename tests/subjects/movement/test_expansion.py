"""Expansion: several runs, both conventions, the crew's table, the sun."""

from __future__ import annotations

import copy
import re
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity

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


def test_a_barrel_stands_at_a_fixed_end_of_each_piece_back_to_back_at_every_second_anchor() -> None:
    """Derived: clamped (6 + 6) / 2 = 6 in from its fixed point, the open piston 2 x 6 + 6 = 18 in from it."""
    [run] = move(length=quantity(380, "ft"))["result"]["runs"]
    assert run["fitting_count"] == 4
    told = {name: [place["value"] for place in run[name]] for name in run if name.endswith(("positions", "reaches"))}
    assert told == {
        "fitting_positions": pytest.approx([94.5, 95.5, 284.5, 285.5]),
        "piston_reaches": pytest.approx([93.5, 96.5, 283.5, 286.5]),
        "anchor_positions": pytest.approx([95, 190, 285]),
        "holding_strap_positions": pytest.approx([94.5, 95.5, 190, 284.5, 285.5]),
    }


def test_one_fitting_stands_at_the_end_of_its_run() -> None:
    [run] = move(length=quantity(24, "ft"))["result"]["runs"]
    assert run["fitting_positions"] == [quantity(23.5, "ft")]
    assert run["piston_reaches"] == [quantity(22.5, "ft")]
    assert run["anchor_positions"] == []
    [found] = [one for one in move(length=quantity(24, "ft"))["findings"] if one["severity"] == "caution"][:1]
    assert "one to each" not in found["message"]


def test_fittings_that_use_99_6_percent_of_their_travel_are_one_too_few() -> None:
    """Derived: 420.8 ft x 12 x 3.38e-5 x 140 = 23.895 in is 99.6 percent of 4 x 6 in; of 5, 79.7 percent."""
    capped = move(length=quantity(420.8, "ft"))
    [run] = capped["result"]["runs"]
    assert run["fitting_count"] == 5
    assert run["travel_used_percent"] == pytest.approx(79.65, abs=0.01)
    assumed = {place: one["text"] for one in capped["assumptions"] for place in one["pointers"]}
    assert assumed["#/usable_travel_percent"] == "90"
    [whole] = move(length=quantity(420.8, "ft"), usable_travel_percent=100)["result"]["runs"]
    assert whole["fitting_count"] == 4
    assert whole["travel_used_percent"] == pytest.approx(99.56, abs=0.01)


@pytest.mark.parametrize(("percent", "least"), [(90, 0.25 / 0.9), (50, 0.5)])
def test_a_travel_that_does_not_take_one_movement_is_refused_with_the_least_that_does(
    percent: float, least: float
) -> None:
    request = {
        "material": "pvc",
        "length": quantity(200, "ft"),
        "temperatures": RANGE,
        "usable_travel_percent": percent,
    }
    [error] = faults("expansion", request | {"fitting_travel": quantity(0.25, "in")})
    assert (error["pointer"], error["code"]) == ("#/fitting_travel/value", "travel_below_one_movement")
    assert error["minimum"]["value"] == pytest.approx(least)
    ask("expansion", request | {"fitting_travel": quantity(least, "in")})


def test_a_run_of_more_fittings_than_a_list_holds_is_refused_with_the_longest_that_is_taken() -> None:
    request = {"material": "hdpe", "length": quantity(100_000, "ft"), "temperatures": RANGE}
    [error] = faults("expansion", request)
    assert (error["pointer"], error["code"]) == ("#/length/value", "too_long_for_one_list")
    longest = ask("expansion", request | {"length": error["maximum"]})["result"]
    assert longest["fitting_count"] == 2_000


def test_a_run_shorter_than_its_fitting_is_not_laid_out() -> None:
    """Derived: 16 in of PVC move 0.27 in over 500 degF, and a 6 in fitting is 18 in long when open."""
    answer = move(
        length=quantity(16, "in"), temperatures={"kind": "difference", "difference": quantity(500, "delta_degF")}
    )
    assert "no_room_for_fittings" in codes(answer, "caution")
    [run] = answer["result"]["runs"]
    assert run["fitting_count"] == 1
    assert run["fitting_positions"] == run["holding_strap_positions"] == []


def test_the_crew_carries_a_table_of_openings() -> None:
    asked = [quantity(degrees, "degF") for degrees in (0, 40, 100, 140)]
    [run] = move(opening_temperatures=asked)["result"]["runs"]
    openings = [line["opening"]["value"] for line in run["piston_openings"]]
    assert [line["temperature"] for line in run["piston_openings"]] == [
        quantity(degrees, "degF") for degrees in (0, 40, 60, 100, 140)
    ]
    assert openings == pytest.approx([6, 6 * 100 / 140, 6 * 80 / 140, 6 * 40 / 140, 0], abs=1e-9)
    assert openings[-1] == 0, "closed, not by what a conversion leaves of it"


def test_the_temperature_of_the_installation_stands_once_in_the_table() -> None:
    asked = [quantity(degrees, "degF") for degrees in (100, 60)]
    [run] = move(opening_temperatures=asked)["result"]["runs"]
    assert [line["temperature"]["value"] for line in run["piston_openings"]] == [60, 100]


def test_both_conventions_are_given_and_the_default_is_stated() -> None:
    stated = move()
    assumed = {place: assumption for assumption in stated["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/piston_convention"]["text"] == "full_travel"
    assert "closed at the highest" in assumed["#/piston_convention"]["citation"]
    assert stated["result"]["piston_opening"]["value"] == pytest.approx(6 * 80 / 140)
    change = 3.38e-5 * 12 * 200 * 140 / 3  # 11.36 in, a fitting each 5.4 in
    centered = move(piston_convention="centered")["result"]["piston_opening"]["value"]
    assert centered == pytest.approx(change * 80 / 140 + (6 - change) / 2)


def test_the_default_convention_is_stated_once_for_many_runs() -> None:
    answer = move(length=None, straight_runs=[quantity(90, "ft"), quantity(80, "ft")])
    assert [place for assumption in answer["assumptions"] for place in assumption["pointers"]].count(
        "#/piston_convention"
    ) == 1


def test_a_setting_temperature_outside_of_the_range_is_refused() -> None:
    request = {"material": "pvc", "length": quantity(200, "ft"), "temperatures": RANGE}
    below = quantity(-1, "degF")
    asked = [below, quantity(60, "degF"), quantity(61, "degC")]
    raised = problem("expansion", request | {"opening_temperatures": asked, "fitting_travel": quantity(0.25, "in")})
    assert raised.errors is not None
    assert {str(error.pointer): error.code for error in raised.errors} == {
        "#/opening_temperatures/0/value": "installation_outside_range",
        "#/opening_temperatures/2/value": "installation_outside_range",
        "#/fitting_travel/value": "travel_below_one_movement",
    }, "all at once"
    long = [quantity(90_000, "ft"), quantity(100, "ft"), quantity(95_000, "ft")]
    runs = {name: one for name, one in request.items() if name != "length"} | {
        "straight_runs": long,
        "fitting_travel": quantity(2, "in"),
    }
    assert {str(error.pointer) for error in problem("expansion", runs).errors or ()} == {
        "#/straight_runs/0/value",
        "#/straight_runs/2/value",
    }
    spread = {"kind": "difference", "difference": quantity(100, "delta_degF")}
    raised = problem("expansion", request | {"temperatures": spread, "opening_temperatures": [quantity(60, "degF")]})
    assert raised.errors is not None
    assert raised.errors[0].code == "needs_a_range"


def test_the_travels_that_are_sold_are_compared() -> None:
    found = move(length=quantity(380, "ft"))["result"]  # 21.58 in
    assert [(option["fitting_travel"]["value"], option["fitting_count"]) for option in found["travel_options"]] == [
        (2, 12),  # 11.99
        (4, 6),
        (6, 4),
        (8, 3),
    ]
    assert found["travel_needed"]["value"] == pytest.approx(21.578 / 0.9, abs=0.001)
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

    assert difference() == 110
    assert difference(direct_sun=False) == 80
    assert difference(direct_sun=True) == 110
    assert difference(direct_sun=True, sun_allowance=quantity(20, "delta_degF")) == 100
    assert difference(sun_allowance=quantity(20, "delta_degF")) == 100


@pytest.mark.parametrize(
    ("setting", "sun", "difference"),
    [("above_ground", True, 110), ("direct_buried", False, 80), ("encased", False, 80)],
)
def test_a_run_above_ground_lies_in_the_sun_unless_told_otherwise(setting: str, sun: bool, difference: float) -> None:
    temperatures = {"kind": "range", "lowest": quantity(20, "degF"), "highest": quantity(100, "degF")}
    answer = move(setting=setting, temperatures=temperatures)
    told = {place: one["text"] for one in answer["assumptions"] for place in one["pointers"]}
    assert told["#/temperatures/direct_sun"] == str(sun).lower()
    assert answer["result"]["temperature_difference"]["value"] == difference


HEAT = {"kind": "range", "lowest": quantity(20, "degF")}


@pytest.mark.parametrize("material", ["pvc", "hdpe", "rtrc"])
@pytest.mark.parametrize(
    ("highest", "more", "verdict"),
    [
        (200, {}, "violates"),
        (200, {"direct_sun": False}, "violates"),  # 170 degF of it is not the sun's
        (123, {}, "violates"),  # of the air, the sun to be added
        (122, {}, "complies"),
        (122, {"direct_sun": False}, "complies"),
        (140, {"direct_sun": False}, "not_judged"),  # 110 degF and the sun, or 140 degF of air
        (152, {"direct_sun": False}, "not_judged"),
        (153, {"direct_sun": False}, "violates"),
    ],
)
def test_plastic_is_permitted_in_air_of_122_degf(
    material: str, highest: float, more: dict[str, Any], verdict: str
) -> None:
    answer = move(material=material, temperatures=HEAT | {"highest": quantity(highest, "degF")} | more)
    assert answer["verdict"] == verdict
    found = {one["code"]: one for one in answer["findings"]}
    assert ("over_service_temperature" in found) is (verdict == "violates")
    assert ("service_temperature_not_judged" in found) is (verdict == "not_judged")
    if verdict == "violates":
        told = found["over_service_temperature"]
        assert told["pointer"] == "#/temperatures/highest"
        assert (told["actual"], told["limit"]) == (quantity(highest, "degF"), quantity(122, "degF"))
        section = {"pvc": "352.12(D)", "hdpe": "353.12(4)", "rtrc": "355.12(D)"}[material]
        assert told["citation"] == f"NFPA 70-2023, {section}"
        assert told["standing"] == "published"


def test_heat_is_judged_by_what_the_conduit_is_listed_for_where_that_is_given() -> None:
    hot = HEAT | {"highest": quantity(200, "degF")}
    assert move(temperatures=hot, service_temperature=quantity(200, "degF"))["verdict"] == "complies"
    answer = move(material="steel", temperatures=hot, service_temperature=quantity(190, "degF"))
    [found] = [one for one in answer["findings"] if one["severity"] == "violation"]
    assert found["standing"] == "caller"


def test_a_difference_leaves_the_heat_of_plastic_open_and_metal_has_no_limit() -> None:
    spread = {"kind": "difference", "difference": quantity(100, "delta_degF")}
    assert move(temperatures=spread)["verdict"] == "not_judged"
    assert "verdict" not in move(material="steel", temperatures=spread)
    assert "verdict" not in move(material="aluminum", temperatures=HEAT | {"highest": quantity(300, "degF")})
    given = {"material": None, "coefficient": quantity(3e-5, "1/degF"), "temperatures": spread}
    assert "verdict" not in move(**given)


@pytest.mark.parametrize("setting", ["direct_buried", "encased"])
def test_heat_around_a_run_that_is_held_is_no_heat_of_the_sun(setting: str) -> None:
    answer = move(setting=setting, temperatures=HEAT | {"highest": quantity(130, "degF")})
    assert answer["verdict"] == "violates"


def test_polyethylene_moves_by_the_high_end_of_what_is_quoted() -> None:
    """Derived: 1.2e-4 x 1200 in x 140 = 20.16 in for 100 ft."""
    answer = move(material="hdpe", length=quantity(100, "ft"))["result"]
    assert answer["coefficient"] == quantity(1.2e-4, "1/degF")
    assert answer["length_change"]["value"] == pytest.approx(20.16)
    assert move(material="hdpe")["verdict"] == "not_judged"


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
                    "installation": quantity(131, "degF"),
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
        ({}, True),
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


def test_two_fittings_stand_back_to_back_at_the_one_anchor_between_them() -> None:
    def told(feet: float) -> str:
        answer = ask("expansion", copy.deepcopy(EXAMPLES["expansion"]) | {"length": quantity(feet, "ft")})
        [found] = [one for one in answer["findings"] if one["code"] == "expansion_fitting_required"]
        assert f"provide {answer['result']['fitting_count']} expansion fittings" in found["message"]
        return str(found["message"])

    # 140 degF x 3.38e-5 x 2,160 in = 10.22 in, 5.11 in each of 6 x 0.9; 380 ft take four
    assert "Anchor the run in its middle and clamp both barrels there, back to back;" in told(180)
    assert "back to back at every second anchor" in told(380)
