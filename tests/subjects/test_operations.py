"""What an answer says: assumptions, findings, working, basis, and how a question without an answer is refused."""

from __future__ import annotations

import copy
import json
from itertools import product
from typing import Any

import pytest
from ductrun.subjects import OPERATIONS
from ductrun.subjects.fill.choices import FillLimitRule
from ductrun.subjects.movement.choices import ConduitMaterial
from ductrun.subjects.parts.choices import CableArrangement, ConductorSize, ConduitType, Insulation, TradeSize
from ductrun.tables import CONDUCTOR_SIZES, TABLES, TRADE_SIZES

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result, value_of
from tests.properties.requests import shortest

NAMES = [operation.name for operation in OPERATIONS]
RUNS = ("duct-run", "duct-run/compare")


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def without(name: str, *fields: str) -> dict[str, Any]:
    return {key: value for key, value in example(name).items() if key not in fields}


def pointers(name: str, request: Any, query: str = "") -> dict[str, str]:
    raised = problem(name, request, query)
    assert raised.errors is not None
    return {str(error.pointer): error.code for error in raised.errors}


@pytest.mark.parametrize("name", NAMES)
def test_a_complete_example_leaves_nothing_to_assume(name: str) -> None:
    # the example of a run shows how little is to be said; completed it leaves nothing to assume either
    example = ask(name, EXAMPLES[name], "request=completed")["request"] if name in RUNS else EXAMPLES[name]
    answer = ask(name, example, "working=true")
    assert answer["assumptions"] == []
    assert answer["working"]
    follows = '"code_edition"' in json.dumps(EXAMPLES[name])
    assert answer["basis"].get("code_edition") == ("NFPA 70-2023" if follows else None)
    assert answer["basis"]["tables_version"] == TABLES.hash
    assert set(answer["basis"]["source_ids"]) <= {source.id for source in TABLES["sources"]}


@pytest.mark.parametrize("name", NAMES)
def test_the_same_body_gives_the_same_bytes(name: str) -> None:
    assert json.dumps(ask(name, EXAMPLES[name])) == json.dumps(ask(name, EXAMPLES[name]))
    assert "working" not in ask(name, EXAMPLES[name])


def test_examples_are_not_changed_by_asking() -> None:
    before = copy.deepcopy(EXAMPLES)
    for name, example in EXAMPLES.items():
        result(name, example, "working=true")
    assert before == EXAMPLES


def test_what_is_left_out_comes_back_with_value_and_source() -> None:
    answer = ask("pull-tension", without("pull-tension", "friction_coefficient", "attachment", "code_edition"))
    assumed = {place: assumption for assumption in answer["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/friction_coefficient"]["quantity"] == quantity(0.5, "1")
    assert "IEWC" in assumed["#/friction_coefficient"]["citation"]
    assert assumed["#/attachment"]["text"] == "pulling_eye"
    assert assumed["#/attachment"]["citation"].startswith("common practice, no source")
    assert assumed["#/code_edition"]["text"] == "2023"
    standings = [assumed[place]["standing"] for place in ("#/friction_coefficient", "#/attachment")]
    assert standings == ["published", "practice"]


@pytest.mark.parametrize("name", NAMES)
def test_refusing_assumptions_lists_every_field_that_is_missing(name: str) -> None:
    request = shortest(name)
    assumed = {
        place: value_of(assumption)
        for assumption in ask(name, request)["assumptions"]
        for place in assumption["pointers"]
    }
    raised = problem(name, request, "assumptions=refuse")
    assert raised.kind.name == "assumptions_refused"
    assert raised.errors is not None
    assert {error.pointer for error in raised.errors} == set(assumed)
    assert len(assumed) >= 1


def test_a_default_in_the_other_system_is_converted() -> None:
    answer = ask("encasement", {"length": quantity(10, "m"), "bank": example("encasement")["bank"]}, "units=metric")
    assumed = {place: value_of(assumption) for assumption in answer["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/concrete_cover/top"] == quantity(76.19999999999999, "mm") or assumed["#/concrete_cover/top"][
        "value"
    ] == (pytest.approx(76.2))
    assert assumed["#/concrete_density"]["unit"] == "kg/m3"


def test_a_limit_given_in_the_unit_of_the_answer_comes_back_bit_for_bit() -> None:
    limit = quantity(512.3000000000001, "lbf/ft")
    answer = ask("pull-tension", example("pull-tension", allowable_sidewall_pressure=limit))
    assert answer["result"]["allowable_sidewall_pressure"] == limit
    [broken] = [finding for finding in answer["findings"] if finding["severity"] == "violation"]
    assert broken["limit"] == limit


def test_the_enums_of_the_contract_are_those_of_the_tables() -> None:
    assert tuple(TradeSize) == TRADE_SIZES
    assert tuple(ConductorSize) == CONDUCTOR_SIZES
    assert set(ConduitType) == {row.type for row in TABLES["conduits"]} | {"rtrc"}
    assert set(ConduitMaterial) == {row.material for row in TABLES["expansion_coefficients"]}
    assert set(Insulation) | {"bare"} == {name for row in TABLES["conductors"] for name in row.insulations}


def test_the_answer_follows_the_edition_named() -> None:
    nipple = {"nipple_length": quantity(18, "in")}
    older = ask("fill", example("fill", code_edition="2017") | nipple)
    newer = ask("fill", example("fill", code_edition="2023") | nipple)
    assert "310.15(B)(3)(a)" in older["findings"][0]["citation"]
    assert "310.15(C)(1)" in newer["findings"][0]["citation"]
    assert older["basis"]["code_edition"] == "NFPA 70-2017"
    assert "connectors" not in older["findings"][0]["message"]
    assert "connectors" in newer["findings"][0]["message"]
    assert older["result"]["limit_rule"] == FillLimitRule.NIPPLE
    bends = [{"kind": "horizontal_bend", "radius": quantity(3, "ft"), "angle": quantity(95, "deg")}] * 4
    conduits = (("pvc_schedule_40", "352"), ("emt", "358"), ("imc", "342"), ("hdpe_schedule_40", "353"))
    for (kind, article), (edition, suffix) in product(conduits, (("2020", "26"), ("2023", "24(B)"))):
        section = f"{article}.{suffix}"
        changes = {"conduit": {"kind": "listed", "type": kind, "trade_size": "4"}, "code_edition": edition}
        answer = ask("pull-tension", example("pull-tension", sections=bends, **changes))
        [found] = [finding for finding in answer["findings"] if finding["code"] == "too_many_bends"]
        assert found["citation"] == f"NFPA 70-{edition}, {section}"


@pytest.mark.parametrize(
    ("name", "request_", "expected"),
    [
        (
            "spacers",
            {"interval": {"kind": "per_stick", "count": 2, "stick_length": quantity(10, "ft")}},
            {"#/end_offset": "not_with_per_stick"},
        ),
        ("encasement", {"trench_width": quantity(20, "in")}, {"#/trench_width/value": "narrower_than_the_bank"}),
        (
            "encasement",
            {"bank": {"conduit": {"kind": "measured", "inside_diameter": quantity(4, "in")}, "tiers": [1]}},
            {"#/bank/conduit/outside_diameter": "missing"},
        ),
        (
            "encasement",
            {"bank": {"conduit": {"kind": "listed", "type": "fmc", "trade_size": "4"}, "tiers": [1]}},
            {"#/bank/conduit/type": "outside_diameter_not_listed"},
        ),
        (
            "pull-tension",
            {"conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "3"}},
            {"#/cables/0/cable/diameter/value": "cables_do_not_pass"},
        ),
        (
            "pull-tension",
            {
                "sections": [
                    {
                        "kind": "vertical_bend",
                        "radius": quantity(3, "ft"),
                        "entry_grade": quantity(5, "deg"),
                        "exit_grade": quantity(5, "deg"),
                    }
                ],
                "conduit": {"kind": "listed", "type": "pvc_eb_20", "trade_size": "4"},
            },
            {"#/conduit/type": "inside_diameter_not_listed", "#/sections/0/exit_grade": "bend_without_angle"},
        ),
        (
            "pull-tension",
            {
                "friction_coefficient": 2.0,
                "sections": [{"kind": "horizontal_bend", "radius": quantity(3, "ft"), "angle": quantity(360, "deg")}]
                * 500,
            },
            {"#/sections": "tension_beyond_any_rope"},
        ),
    ],
)
def test_a_question_without_an_answer_names_the_field(
    name: str, request_: dict[str, Any], expected: dict[str, str]
) -> None:
    assert pointers(name, example(name, **request_)) == expected


def test_an_arrangement_must_suit_the_number_of_cables() -> None:
    request = example("pull-tension")
    request["arrangement"] = "diamond"
    raised = problem("pull-tension", request)
    assert raised.errors is not None
    assert raised.errors[0].allowed_values == ["triangular", "cradled", "triplexed", "worst_case"]


def test_a_conductor_is_given_by_size_or_by_area() -> None:
    request = example("pull-tension")
    conductor = request["cables"][0]["cable"]["conductor"]
    conductor["area"] = quantity(240, "mm2")
    assert pointers("pull-tension", request) == {"#/cables/0/cable/conductor/area": "one_of_two"}
    del conductor["size"]
    pounds = result("pull-tension", request)["allowable_tension"]["value"]
    assert pounds == pytest.approx(0.008 * 2 * 240 * 1973.525, rel=1e-5)
    del conductor["area"]
    assert pointers("pull-tension", request) == {"#/cables/0/cable/conductor/size": "one_of_two"}


@pytest.mark.parametrize(
    ("cables", "conductor", "attachment", "allowed"),
    [
        (1, {"material": "copper", "size": "500 kcmil", "count": 1}, "pulling_eye", 4000.0),
        (3, {"material": "aluminum", "size": "4/0 AWG", "count": 1}, "pulling_eye", 0.003 * 211600 * 2),
        (1, {"material": "copper", "size": "12 AWG", "count": 4}, "pulling_eye", 0.008 * 6530 * 4 * 0.6),
        (3, {"material": "copper", "size": "500 kcmil", "count": 1}, "pulling_eye", 8000.0),
        (3, {"material": "copper", "size": "750 kcmil", "count": 1}, "pulling_eye", 10000.0),
        (1, {"material": "copper", "size": "500 kcmil", "count": 1}, "basket_grip", 1000.0),
        (1, None, "pulling_eye", None),
    ],
)
def test_the_allowable_tension_is_the_least_of_its_limits(
    cables: int, conductor: dict[str, Any] | None, attachment: str, allowed: float | None
) -> None:
    request = example("pull-tension", attachment=attachment)
    [line] = request["cables"]
    line["count"] = cables
    line["cable"]["conductor"] = conductor
    del request["arrangement"]
    if conductor is None:
        del line["cable"]["conductor"]
    answer = ask("pull-tension", request)
    assert ("tension_not_judged" in codes(answer)) is (conductor is None)
    if allowed is None:
        assert answer["verdict"] == "not_judged"
        assert "allowable_tension" not in answer["result"]
    else:
        assert answer["result"]["allowable_tension"]["value"] == pytest.approx(allowed, rel=1e-9)


def test_five_cables_take_a_flat_weight_correction_under_the_assumptions() -> None:
    request = example("pull-tension")
    request["cables"][0]["count"] = 5
    del request["arrangement"]
    answer = ask("pull-tension", request)
    assert answer["result"]["arrangement"] == CableArrangement.MANY
    assert answer["result"]["weight_correction_factor"] == 1.4
    assumed = {place: value_of(assumption) for assumption in answer["assumptions"] for place in assumption["pointers"]}
    assert assumed["#/weight_correction_factor"] == 1.4
    request["weight_correction_factor"] = 1.6
    assert ask("pull-tension", request)["result"]["weight_correction_factor"] == 1.6
    assert "clearance" not in answer["result"]


def test_a_route_that_runs_away_is_held_back() -> None:
    sections = [{"kind": "straight", "length": quantity(300, "ft"), "grade": quantity(-40, "deg")}]
    answer = ask("pull-tension", example("pull-tension", sections=sections))
    assert "brake_not_judged" in codes(answer, "caution")
    assert answer["result"]["tension"]["value"] == pytest.approx(0, abs=1e-9)
    assert answer["result"]["brake_tension"] == answer["result"]["sections"][0]["tension_in"]
    assert answer["verdict"] == "not_judged"
    assert "sidewall_pressure" not in answer["result"]


def test_a_pull_over_its_tension_is_a_violation() -> None:
    answer = ask("pull-tension", example("pull-tension", allowable_tension=quantity(3000, "lbf")))
    assert {"tension_exceeded", "sidewall_pressure_exceeded"} == set(codes(answer, "violation"))
    assert answer["verdict"] == "violates"
    assert answer["result"]["allowable_tension"] == quantity(3000.0, "lbf")


def test_little_clearance_is_a_caution() -> None:
    request = example("pull-tension")
    del request["arrangement"]
    request["cables"][0]["count"] = 1
    request["cables"][0]["cable"]["diameter"] = quantity(4.9, "in")
    assert "little_clearance" in codes(ask("pull-tension", request), "caution")


def test_the_grade_of_a_straight_may_be_in_percent() -> None:
    def tension(grade: dict[str, Any] | None) -> dict[str, Any]:
        section = {"kind": "straight", "length": quantity(100, "ft")} | ({"grade": grade} if grade else {})
        return ask("pull-tension", example("pull-tension", sections=[section]))

    assert tension(quantity(100, "percent"))["result"]["tension"]["value"] == pytest.approx(
        tension(quantity(45, "deg"))["result"]["tension"]["value"]
    )
    level = tension(None)
    assert "#/sections/0/grade" in [place for assumption in level["assumptions"] for place in assumption["pointers"]]
    assert level["result"]["tension"] == tension(quantity(0, "deg"))["result"]["tension"]
