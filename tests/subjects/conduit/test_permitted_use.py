"""Permitted uses: the verdict on every use of every conduit, and the temperature around it."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from ductrun.subjects.conduit.choices import ConduitUse
from ductrun.subjects.parts.choices import ConduitType

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result


@pytest.mark.parametrize(
    ("type_", "use", "verdict"),
    [
        ("pvc_eb_20", "direct_burial", "violates"),
        ("pvc_type_eb", "above_ground", "violates"),
        ("pvc_eb_35", "concrete_encasement", "complies"),
        ("pvc_db_60", "above_ground", "violates"),
        ("pvc_db_120", "sunlight", "violates"),
        ("pvc_db_100", "direct_burial", "not_judged"),
        ("pvc_schedule_40", "physical_damage", "violates"),
        ("pvc_schedule_80", "physical_damage", "complies"),
        ("pvc_schedule_80", "emerging_from_grade", "complies"),
        ("pvc_schedule_40", "emerging_from_grade", "not_judged"),
        ("rmc", "physical_damage", "complies"),
        ("hdpe_schedule_40", "above_ground", "not_judged"),
        ("pvc_type_a", "direct_burial", "violates"),
        ("pvc_eb_20", "under_building", "violates"),
        ("pvc_db_60", "concrete_encasement", "not_judged"),
        ("hdpe_schedule_40", "under_building", "not_judged"),
        ("hdpe_schedule_40", "within_building", "violates"),
        ("rtrc", "above_ground", "not_judged"),
        ("ent", "sunlight", "not_judged"),
        ("lfnc_b", "emerging_from_grade", "not_judged"),
        ("lfmc", "sunlight", "complies"),
        ("emt", "physical_damage", "not_judged"),
        ("emt", "severe_physical_damage", "violates"),
        ("imc", "direct_burial", "not_judged"),
        ("fmc", "wet_location", "violates"),
        ("pvc_schedule_40", "severe_physical_damage", "violates"),
    ],
)
def test_the_verdict_on_a_use(type_: str, use: str, verdict: str) -> None:
    answer = ask("permitted-use", {"conduit_type": type_, "uses": [use]})
    assert [judged["verdict"] for judged in answer["result"]["uses"]] == [verdict]
    assert answer["verdict"] == verdict
    assert ("use_not_permitted" in codes(answer, "violation")) is (verdict == "violates")


@pytest.mark.parametrize("type_", list(ConduitType))
def test_every_conduit_has_a_verdict_on_every_use(type_: str) -> None:
    found = result("permitted-use", {"conduit_type": type_, "uses": [use.value for use in ConduitUse]})
    assert [judged["use"] for judged in found["uses"]] == [use.value for use in ConduitUse]
    assert all(judged["citation"] for judged in found["uses"])


def test_pvc_is_too_hot_above_50_degrees() -> None:
    def asked(degrees: float, unit: str, type_: str = "pvc_schedule_40") -> dict[str, Any]:
        changes = {"conduit_type": type_, "ambient_temperature": quantity(degrees, unit)}
        return ask("permitted-use", copy.deepcopy(EXAMPLES["permitted-use"]) | changes)

    assert "ambient_exceeded" in codes(asked(51, "degC"), "violation")
    assert asked(123, "degF")["verdict"] == "violates"
    assert "ambient_exceeded" not in codes(asked(50, "degC")) + codes(asked(122, "degF"))
    assert "ambient_exceeded" not in codes(asked(60, "degC", "rmc"))
    [alike] = [one for one in asked(122.00001, "degF")["findings"] if one["code"] == "ambient_exceeded"]
    assert "an ambient of 122 degF unless listed for more; 122.00001 degF is over it" in alike["message"]


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_the_ambient_of_pvc_is_held_against_its_section(edition: str) -> None:
    hot = {"ambient_temperature": quantity(140, "degF"), "code_edition": edition}
    answer = ask("permitted-use", copy.deepcopy(EXAMPLES["permitted-use"]) | hot, "units=metric")
    [found] = [finding for finding in answer["findings"] if finding["code"] == "ambient_exceeded"]
    assert found["citation"] == f"NFPA 70-{edition}, 352.12(D)"
    assert "limited to an ambient of 50 degC" in found["message"]
    assert found["limit"] == quantity(50, "degC")


def test_every_finding_says_which_member_it_is_about() -> None:
    request = {"conduit_type": "pvc_schedule_40", "uses": ["sunlight", "physical_damage", "emerging_from_grade"]}
    answer = ask("permitted-use", request | {"ambient_temperature": quantity(60, "degC")})
    assert {finding["code"]: finding["pointer"] for finding in answer["findings"]} == {
        "use_permitted": "#/uses/0",
        "use_not_permitted": "#/uses/1",
        "use_under_condition": "#/uses/2",
        "ambient_exceeded": "#/ambient_temperature",
        "listing_decides": "#/conduit_type",
    }


def test_a_use_under_a_condition_is_not_judged_and_says_what_it_hangs_on() -> None:
    answer = ask("permitted-use", {"conduit_type": "pvc_schedule_40", "uses": ["direct_burial", "emerging_from_grade"]})
    assert answer["verdict"] == "not_judged"
    plain, hanging = answer["result"]["uses"]
    assert (plain["verdict"], hanging["verdict"]) == ("complies", "not_judged")
    assert "condition" not in plain
    assert hanging["condition"].startswith("where exposed to physical damage Schedule 80")
    [caution] = [finding for finding in answer["findings"] if finding["code"] == "use_under_condition"]
    assert hanging["condition"] in caution["message"]


def test_a_use_that_is_on_file_nowhere_is_not_judged() -> None:
    unnamed = ask("permitted-use", {"conduit_type": "ent", "uses": ["cinder_fill"]})
    assert unnamed["verdict"] == "not_judged"
    assert "condition" not in unnamed["result"]["uses"][0]
    [found] = [finding for finding in unnamed["findings"] if finding["code"] == "use_not_judged"]
    assert found["pointer"] == "#/uses/0"


def test_the_note_of_a_permission_is_told() -> None:
    answer = ask("permitted-use", {"conduit_type": "rtrc", "uses": ["direct_burial"]})
    assert answer["verdict"] == "complies"
    [found] = [finding for finding in answer["findings"] if finding["code"] == "use_permitted"]
    assert "where listed for burial without concrete" in found["message"]


def test_one_forbidden_use_decides_over_any_condition() -> None:
    uses = ["emerging_from_grade", "physical_damage", "direct_burial"]
    answer = ask("permitted-use", {"conduit_type": "pvc_schedule_40", "uses": uses})
    assert answer["verdict"] == "violates"
    assert [use["verdict"] for use in answer["result"]["uses"]] == ["not_judged", "violates", "complies"]


@pytest.mark.parametrize(
    ("type_", "verdict"),
    [
        ("pvc_schedule_80", "complies"),
        ("rmc", "complies"),
        ("rtrc", "complies"),
        ("lfmc", "not_judged"),
        ("ent", "complies"),
    ],
)
def test_an_ambient_that_is_held_against_nothing_is_not_told_as_borne(type_: str, verdict: str) -> None:
    use = "concrete_encasement" if type_ in {"ent", "rtrc"} else "above_ground"
    cool = {"conduit_type": type_, "uses": [use], "ambient_temperature": quantity(100, "degF")}
    answer = ask("permitted-use", cool)
    assert answer["verdict"] == verdict
    assert [one["verdict"] for one in answer["result"]["uses"]] == ["complies"]
    open_ = [finding["pointer"] for finding in answer["findings"] if finding["code"] == "ambient_not_judged"]
    assert open_ == (["#/ambient_temperature"] if verdict == "not_judged" else [])
    assert ask("permitted-use", cool | {"uses": ["directional_bore", "physical_damage"]})["verdict"] != "complies"


def test_no_use_is_no_question() -> None:
    raised = problem("permitted-use", {"conduit_type": "rmc", "uses": []})
    assert [str(error.pointer) for error in raised.errors or ()] == ["#/uses"]


@pytest.mark.parametrize("type_", ["rmc", "imc"])
def test_severe_damage_is_permitted_from_2020_on_and_not_judged_before(type_: str) -> None:
    def asked(edition: str) -> dict[str, Any]:
        return ask(
            "permitted-use", {"conduit_type": type_, "uses": ["severe_physical_damage"], "code_edition": edition}
        )

    article = {"rmc": "344.10", "imc": "342.10"}[type_]
    for edition in ("2020", "2023"):
        assert asked(edition)["verdict"] == "complies"
        assert asked(edition)["result"]["uses"][0]["citation"] == f"NFPA 70-{edition}, {article}"
    before = asked("2017")
    assert before["verdict"] == "not_judged"
    [found] = [one for one in before["findings"] if one["code"] == "use_not_judged"]
    assert "came in 2020" in found["message"]
    assert f"NFPA 70-2017, {article}" in found["citation"]
    assert "2023" not in found["citation"] + before["result"]["uses"][0]["citation"]
    assert "condition" not in before["result"]["uses"][0]  # there is none that could be met


def test_each_edition_speaks_its_own_words_of_emt() -> None:
    def condition(use: str, edition: str) -> str:
        answer = ask("permitted-use", {"conduit_type": "emt", "uses": [use], "code_edition": edition})
        assert answer["verdict"] == "not_judged"
        assert f"NFPA 70-{edition}, 358.10" in answer["result"]["uses"][0]["citation"]
        return str(answer["result"]["uses"][0].get("condition", ""))

    assert condition("physical_damage", "2017") == ""
    assert "steel and stainless" in condition("physical_damage", "2020")
    assert "fittings" not in condition("direct_burial", "2017") + condition("direct_burial", "2020")
    assert "corrosion protection" in condition("direct_burial", "2017")
    assert "fittings identified for direct burial" in condition("direct_burial", "2023")


@pytest.mark.parametrize("edition", ["2017", "2020"])
def test_an_earlier_edition_is_never_cited_as_2023(edition: str) -> None:
    for type_ in ConduitType:
        asked = {"conduit_type": type_.value, "uses": [use.value for use in ConduitUse], "code_edition": edition}
        answer = ask("permitted-use", asked)
        told = [one["citation"] for one in answer["result"]["uses"]] + [one["citation"] for one in answer["findings"]]
        assert not [citation for citation in told if "70-2023" in citation]
