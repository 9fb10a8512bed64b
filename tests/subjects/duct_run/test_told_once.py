"""What is wrong with a run is told once, however many of its parts meet it."""

from __future__ import annotations

import math
from typing import Any

import pytest

from tests.asking import ask, codes, quantity
from tests.subjects.duct_run.runs import buried, level_bend, listed, straight


def wired(size: str, count: int = 3) -> dict[str, Any]:
    cable = {"kind": "listed", "insulation": "THWN-2", "size": size, "material": "copper"}
    return {"count": count, "cable": cable}


def laid(conduit: dict[str, Any], cables: list[dict[str, Any]], *sections: dict[str, Any], **more: Any) -> Any:
    return {
        "bank": {"conduit": conduit, "tiers": [1]},
        "circuits": [{"name": "L", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": cables}],
        "start": {"kind": "manhole", "name": "A"},
        "end": {"kind": "manhole", "name": "B"},
        "stretches": [{"name": "earth", "setting": buried(36), "sections": sections or [straight(90)]}],
        "pulling": {"friction_coefficient": 0.35},
    } | more


def told(run: Any, code: str) -> list[dict[str, Any]]:
    return [one for one in ask("duct-run", run)["findings"] if one["code"] == code]


@pytest.mark.parametrize("powered", [True, False])
def test_duct_for_concrete_in_earth_is_one_violation(powered: bool) -> None:
    duct = {
        "kind": "measured",
        "type": "pvc_type_eb",
        "trade_size": "4",
        "inside_diameter": quantity(4.2, "in"),
        "outside_diameter": quantity(4.5, "in"),
    }
    run = laid(duct, [wired("350 kcmil")])
    if not powered:  # no cover is judged then
        run["circuits"] = []
    answer = ask("duct-run", run)
    [found] = [one for one in answer["findings"] if one["severity"] == "violation"]
    assert (found["code"], found["pointer"]) == ("needs_concrete", "#/stretches/0")
    assert found["limit"] == quantity(2, "in")
    [uses] = answer["result"]["stretches"][0]["permitted_uses"]
    assert uses["uses"][0]["verdict"] == "violates", "what is permitted is told as before"


@pytest.mark.parametrize(("kind", "severity"), [("pvc_eb_35", "violation"), ("pvc_db_60", "caution")])
def test_concrete_too_thin_around_a_duct_is_told_side_by_side_and_not_again(kind: str, severity: str) -> None:
    duct = {"kind": "measured", "type": kind, "trade_size": "4"}
    run = laid(
        duct | {"inside_diameter": quantity(4.2, "in"), "outside_diameter": quantity(4.5, "in")}, [wired("4/0 AWG")]
    )
    sides = {"top": quantity(1, "in"), "bottom": quantity(3, "in"), "side": quantity(1.5, "in")}
    run["stretches"][0]["setting"] = {"kind": "encased", "cover": quantity(30, "in"), "concrete_cover": sides}
    answer = ask("duct-run", run)
    about_concrete = [one for one in answer["findings"] if one.get("limit") == quantity(2, "in")]
    assert [(one["severity"], one["code"], one["pointer"]) for one in about_concrete] == [
        (severity, "thin_envelope", f"#/stretches/0/setting/concrete_cover/{side}") for side in ("top", "side")
    ]
    assert answer["verdict"] == {"violation": "violates", "caution": "not_judged"}[severity]


def test_a_conduit_filled_too_far_is_told_by_its_fill_alone() -> None:
    answer = ask("duct-run", laid(listed("2", "pvc_schedule_80"), [wired("4/0 AWG", 4), wired("6 AWG", 1)]))
    assert codes(answer, "violation") == ["fill_exceeded"]
    assert "conduit_overfilled" not in codes(answer)


def test_cables_that_may_jam_are_told_once_with_the_sizes_that_do_not() -> None:
    run = laid(listed("2-1/2"), [wired("350 kcmil")], straight(100), level_bend(90, 2), straight(50))
    [found] = told(run, "jam_ratio_in_band")
    assert "Outside of it: trade size" in found["message"]


@pytest.mark.parametrize("of_all", [True, False])
def test_triplexed_cables_in_the_jam_band_are_a_note_and_no_caution(of_all: bool) -> None:
    run = laid(listed("2-1/2"), [wired("350 kcmil")], straight(100), level_bend(90, 2), straight(50))
    (run if of_all else run["circuits"][0]).setdefault("pulling", {})["arrangement"] = "triplexed"
    [found] = told(run, "triplexed_in_jam_band")
    assert found["severity"] == "note"
    assert told(run, "jam_ratio_in_band") == []


def test_a_cover_out_of_a_profile_is_told_in_the_unit_of_the_least() -> None:
    run = laid(listed("4"), [wired("350 kcmil")], straight(400))
    del run["stretches"][0]["setting"]["cover"]
    points = [(0, 100, 97), (150, 95, 93.75), (400, 96, 92)]
    run["profile"] = {
        "reference": "top_of_duct",
        "points": [
            {"station": quantity(at, "ft"), "ground": quantity(ground, "ft"), "line": quantity(line, "ft")}
            for at, ground, line in points
        ],
    }
    cover = ask("duct-run", run)["result"]["stretches"][0]["cover"]
    # derived: 95 - 93.75 = 1.25 ft over the ducts at their highest, and square to their fall of 3.25 ft in the 150
    # before that 15 in x cos(atan(3.25 / 150)) = 14.9965 in, under 18
    assert cover["minimum_cover"] == quantity(18, "in")
    assert cover["cover_over_raceway"] == {
        "value": pytest.approx(15 * math.cos(math.atan(3.25 / 150))),
        "unit": "in",
    }
    [found] = told(run, "too_shallow")
    assert "A cover of 14.996 in is less than the 18 in required" in found["message"]
    assert (found["actual"]["unit"], found["limit"]["unit"]) == ("in", "in")


def test_alike_circuits_that_are_too_hot_are_one_sentence_with_all_that_they_reach() -> None:
    ducts = [f"{tier}-{position}" for tier in (1, 2) for position in (1, 2, 3)]
    loaded = [
        {
            "name": f"H{number}",
            "ducts": [duct],
            "voltage": quantity(480, "V"),
            "cables": [wired("500 kcmil")],
            "load": {"current": quantity(400 if number < 6 else 390, "A")},
        }
        for number, duct in enumerate(ducts, 1)
    ]
    run = laid(listed("4"), []) | {"bank": {"conduit": listed("4"), "tiers": [3, 3]}, "circuits": loaded}
    answer = ask("duct-run", run)
    [first, last] = [one for one in answer["findings"] if one["code"] == "conductor_too_hot"]
    assert first["message"].startswith("H1, H2, H3, H4, H5, earth: At 400 A the conductors reach ")
    assert last["message"].startswith("H6, earth: At 390 A the conductors reach ")
    [stretch] = answer["result"]["stretches"]
    reached = [one["conductor_temperature"] for one in stretch["ampacity"]["circuits"]][:5]
    values = sorted(one["value"] for one in reached)
    assert first["actual"] == {"value": values[-1], "unit": "degF"}
    assert f"{values[0]:.5g} degF to {values[-1]:.5g} degF, over 194 degF" in first["message"]
    assert [one["message"].count("H") for one in (first, last)] == [5, 1]
