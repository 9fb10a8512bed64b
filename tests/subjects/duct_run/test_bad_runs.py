"""What no run can be: each refused at its place, all of a stage at once."""

from __future__ import annotations

import copy
from collections.abc import Callable
from typing import Any

import pytest

from tests.asking import ask, faults, quantity
from tests.subjects.duct_run.runs import BORE, BRIDGE, MANHOLES, POLE, buried, listed, straight

Change = Callable[[dict[str, Any]], None]


def setting(**members: Any) -> Change:
    def change(run: dict[str, Any]) -> None:
        run["stretches"][0]["setting"] |= members

    return change


def stretch(index: int = 0, **members: Any) -> Change:
    def change(run: dict[str, Any]) -> None:
        run["stretches"][index] |= members

    return change


def circuit(**members: Any) -> Change:
    def change(run: dict[str, Any]) -> None:
        run["circuits"][0] |= members

    return change


def whole(**members: Any) -> Change:
    return lambda run: run.update(members)


def without(*path: Any) -> Change:
    def change(run: Any) -> None:
        for step in path[:-1]:
            run = run[step]
        del run[path[-1]]

    return change


@pytest.mark.parametrize(
    ("run", "change", "pointer", "code"),
    [
        (POLE, circuit(ducts=["2-1"]), "#/circuits/0/ducts/0", "no_such_duct"),
        (POLE, circuit(ducts=["one"]), "#/circuits/0/ducts/0", "no_such_duct"),
        (POLE, circuit(ducts=["1-1", "1-1"]), "#/circuits/0/ducts/1", "duct_taken"),
        (POLE, circuit(duct_count=2), "#/circuits/0/duct_count", "no_free_duct"),
        (POLE, circuit(ducts=["1-1"], duct_count=1), "#/circuits/0/duct_count", "one_of_two"),
        (POLE, circuit(same_as="F-9"), "#/circuits/0/same_as", "one_of_two"),
        (MANHOLES, lambda run: run["circuits"][1].update(same_as="F-9"), "#/circuits/1/same_as", "no_such_circuit"),
        (MANHOLES, lambda run: run["circuits"][1].update(name="F-21"), "#/circuits/1/name", "name_given_twice"),
        (
            MANHOLES,
            lambda run: (run["circuits"][0].pop("cables"), run["circuits"][0].update(same_as="F-22")),
            "#/circuits/0/same_as",
            "no_such_circuit",
        ),
        (BORE, stretch(2, name="bore"), "#/stretches/2/name", "name_given_twice"),
        (POLE, circuit(start="nowhere"), "#/circuits/0/start", "no_such_place"),
        (POLE, whole(end={"kind": "capped"}), "#/circuits/0/end", "capped"),
        (POLE, without("stretches", 0, "length"), "#/stretches/0/length", "one_of_two"),
        (POLE, stretch(sections=[straight(5)]), "#/stretches/0/sections", "one_of_two"),
        (POLE, stretch(length=quantity(0.5, "ft")), "#/stretches/0/length/value", "shorter_than_its_elbows"),
        (POLE, without("stretches", 0, "setting", "cover"), "#/stretches/0/setting/cover", "missing"),
        (POLE, whole(bank=None), "#/bank", "missing"),
        (POLE, stretch(tiers=[2]), "#/stretches/0/tiers", "other_number_of_ducts"),
        (POLE, stretch(conduit_type="rtrc"), "#/stretches/0/conduit_type", "trade_size_not_listed"),
        (
            POLE,
            stretch(conduit_type="rmc", conduit=listed("1", "rmc")),
            "#/stretches/0/conduit_type",
            "one_of_two",
        ),
        (POLE, stretch(pull_point={"kind": "handhole"}), "#/stretches/0/pull_point", "contradiction"),
        (
            POLE,
            whole(start={"kind": "equipment", "name": "A"}, end={"kind": "pole_base", "name": "A"}),
            "#/end/name",
            "name_given_twice",
        ),
        (
            POLE,
            whole(start={"kind": "equipment", "height": quantity(0, "ft"), "riser_radius": quantity(4, "ft")}),
            "#/start/height/value",
            "elbow_stands_out",
        ),
        (
            POLE,
            whole(start={"kind": "equipment", "height": quantity(4, "ft"), "riser_conduit_type": "fmc"}),
            "#/start/riser_radius",
            "missing",
        ),
        (BRIDGE, whole(end={"kind": "equipment", "height": quantity(4, "ft")}), "#/end/height", "no_riser_here"),
        (MANHOLES, setting(cover=quantity(30, "in")), "#/stretches/0/setting/cover", "given_by_the_profile"),
        (
            MANHOLES,
            lambda run: run["stretches"][0]["sections"][0].update(grade=quantity(1, "deg")),
            "#/stretches/0/sections/0/grade",
            "given_by_the_profile",
        ),
        (
            MANHOLES,
            lambda run: run["profile"]["points"][1].update(station=quantity(0, "ft")),
            "#/profile/points/1/station/value",
            "out_of_order",
        ),
        (
            MANHOLES,
            lambda run: run["profile"]["points"][2].update(station=quantity(446.18, "ft")),
            "#/profile/points/2/station/value",
            "not_from_start_to_end",
        ),
        (
            MANHOLES,
            lambda run: run["profile"]["points"][1].update(line=quantity(13.2, "ft")),
            "#/profile/points",
            "above_the_ground",
        ),
        (
            MANHOLES,
            lambda run: run["stretches"][0]["sections"][2].update(length=quantity(13, "ft")),
            "#/stretches/0/sections/2/length/value",
            "shorter_than_its_bends",
        ),
        (
            BORE,
            lambda run: run["stretches"][0]["sections"][1].pop("radius"),
            "#/stretches/0/sections/1/radius",
            "missing",
        ),
        (
            BRIDGE,
            lambda run: run["stretches"][1]["setting"]["structure_joints"][1].update(position=quantity(301, "ft")),
            "#/stretches/1/setting/structure_joints/1/position/value",
            "past_the_end",
        ),
    ],
    ids=lambda one: one if isinstance(one, str) else "",
)
def test_what_no_run_can_be_is_refused_at_its_place(
    run: dict[str, Any], change: Change, pointer: str, code: str
) -> None:
    asked = copy.deepcopy(run)
    change(asked)
    if asked.get("bank", 1) is None:
        del asked["bank"]
    assert (pointer, code) in [(one["pointer"], one["code"]) for one in faults("duct-run", asked)]


@pytest.mark.parametrize(
    ("members", "pointer"),
    [
        ({"load": {"amperes": quantity(420, "A")}}, "#/circuits/0/load/amperes"),
        ({"name": "a\u0007b"}, "#/circuits/0/name"),
    ],
)
def test_what_is_not_known_here_is_refused_and_never_ignored(members: dict[str, Any], pointer: str) -> None:
    asked = copy.deepcopy(POLE)
    asked["circuits"][0] |= members
    assert [one["pointer"] for one in faults("duct-run", asked)] == [pointer]


def test_too_many_stretches_and_rates_for_nothing_are_refused() -> None:
    asked = copy.deepcopy(POLE)
    asked["stretches"] = [{"setting": buried(30), "length": quantity(10, "ft")}] * 200
    assert [one["pointer"] for one in faults("duct-run", asked)] == ["#/stretches"]
    asked = POLE | {"rates": [{"item": "gold_plating", "unit_price": 1}]}
    assert [one["pointer"] for one in faults("duct-run", asked)] == ["#/rates/0/item"]


def test_faults_of_several_stretches_come_at_once() -> None:
    asked = copy.deepcopy(BORE)
    for index in (0, 2):
        del asked["stretches"][index]["sections"]
    assert {one["pointer"] for one in faults("duct-run", asked)} == {"#/stretches/0/length", "#/stretches/2/length"}


def test_a_fault_that_many_parts_meet_is_told_once() -> None:
    run = copy.deepcopy(POLE)
    run["bank"]["conduit"] = listed("2", "pvc_db_60")  # its bore is not in the tables
    sections = [straight(10), straight(20), straight(30)]
    run["stretches"] = [{"setting": buried(24), "sections": sections}, {"setting": buried(30), "sections": sections}]
    run["start"], run["end"] = {"kind": "vault", "name": "A"}, {"kind": "vault", "name": "B"}
    run["bank"]["tiers"] = [2]
    run["circuits"].append({"voltage": quantity(277, "V"), "cables": run["circuits"][0]["cables"]})
    [fault] = faults("duct-run", run)
    assert (fault["pointer"], fault["code"]) == ("#/bank/conduit/type", "inside_diameter_not_listed")


@pytest.mark.parametrize("text", ["=1+1", "@SUM(A1)", "<script>alert(1)</script>", "\u202fnarrow", "naïve ✓ 管路"])
def test_text_stays_text(text: str) -> None:
    asked = POLE | {"name": text, "note": text}
    answer = ask("duct-run", asked)["result"]
    assert (answer["name"], answer["note"]) == (text, text)
