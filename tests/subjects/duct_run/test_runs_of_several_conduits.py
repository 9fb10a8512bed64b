"""Runs whose ducts are of one conduit here and of another there, worked by hand; all of it derived."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import ask, faults, quantity
from tests.properties.test_requests import check_given_back
from tests.subjects.duct_run.runs import buried, level_bend, listed, straight

BANK = {"conduit": listed("4"), "tiers": [2]}
ABOVE = {"kind": "above_ground"}


def stretch(setting: dict[str, Any], length: float = 100, **more: Any) -> dict[str, Any]:
    return {"setting": setting, "length": quantity(length, "ft"), **more}


def run(*stretches: dict[str, Any], **more: Any) -> dict[str, Any]:
    ends = {"start": {"kind": "handhole", "name": "A"}, "end": {"kind": "handhole", "name": "B"}}
    return copy.deepcopy({"bank": BANK, "stretches": list(stretches), **ends, **more})


def lines_of(answer: dict[str, Any], item: str) -> list[dict[str, Any]]:
    return [one for one in answer["result"]["takeoff"]["lines"] if one["item"] == item]


def exact(answer: dict[str, Any], item: str) -> dict[tuple[Any, Any], float]:
    return {
        (one.get("conduit_type"), one.get("size")): one["exact_quantity"]["value"] for one in lines_of(answer, item)
    }


@pytest.mark.parametrize("kind", ["rmc", "imc", "emt", "fmc"])
def test_what_takes_no_room_needs_no_outside_diameter(kind: str) -> None:
    answer = ask("duct-run", run(stretch(buried()), stretch(ABOVE, conduit_type=kind)))
    assert answer["result"]["stretches"][1]["conduits"][0]["conduit_type"] == kind
    own = ask("duct-run", run(stretch(ABOVE), bank={"conduit": listed("4", kind), "tiers": [2]}))
    ducts = own["result"]["ducts"]
    assert [duct["name"] for duct in ducts] == ["1-1", "1-2"]
    assert [set(duct) & {"x", "y", "outside_diameter", "signal"} for duct in ducts] == [
        set() if kind == "fmc" else {"x", "y", "outside_diameter", "signal"}
    ] * 2


def test_buried_steel_takes_the_room_of_its_outside_diameter() -> None:
    # 30 in of cover, 4.500 in, 3 in of bedding; imc is 4.466 in
    for kind, outside in (("rmc", 4.5), ("imc", 4.466)):
        [found] = ask("duct-run", run(stretch(buried(), conduit_type=kind)))["result"]["stretches"]
        assert found["trench"]["depth"]["value"] == pytest.approx(30 + outside + 3)


@pytest.mark.parametrize(("kind", "code"), [("fmc", "outside_diameter_not_listed"), ("rtrc", "trade_size_not_listed")])
def test_a_type_that_cannot_be_placed_is_refused_where_it_was_named(kind: str, code: str) -> None:
    found = faults("duct-run", run(stretch(buried()), stretch(buried(), conduit_type=kind)))
    assert [(one["pointer"], one["code"]) for one in found] == [("#/stretches/1/conduit_type", code)]


def test_conduit_in_other_sticks_is_a_line_of_its_own() -> None:
    # 200 ft and 3 percent are 206 ft: 11 sticks of 20 ft, and 21 of 10 ft
    answer = ask("duct-run", run(stretch(buried()), stretch(buried(), joining={"stick_length": quantity(10, "ft")})))
    told = {
        one["package"]: (one["package_count"], one["order_quantity"]["value"]) for one in lines_of(answer, "conduit")
    }
    assert told == {"stick of 20 ft": (11, 220), "stick of 10 ft": (21, 210)}
    assert [stretch["conduits"][0]["stick_length"]["value"] for stretch in answer["result"]["stretches"]] == [20, 10]


RISEN = {"kind": "pole_base", "name": "C", "height": quantity(4, "ft"), "riser_radius": quantity(3, "ft")}
SMALL = [[{"count": 1}, {"count": 1, "conduit": listed("2")}]]


@pytest.mark.parametrize("riser", ["rmc", "pvc_schedule_80", "hdpe_schedule_40"])
@pytest.mark.parametrize("other", [None, "rmc", "hdpe_schedule_40"])
@pytest.mark.parametrize("mixed", [True, False])
def test_a_run_of_several_conduits_is_completed_and_gives_the_same(riser: str, other: str | None, mixed: bool) -> None:
    request = run(stretch(buried()), stretch(ABOVE, 12), stretch(buried()))
    request["start"] = RISEN | {"name": "A", "riser_conduit_type": riser}
    request["end"] = RISEN | {"name": "B", "riser_conduit_type": "rmc"}
    request["site"] = {"temperatures": {"kind": "difference", "difference": quantity(100, "delta_degF")}}
    if other is not None:
        request["stretches"][1]["conduit_type"] = request["stretches"][2]["conduit_type"] = other
    if mixed:
        request["bank"] = {"conduit": listed("4"), "tier_ducts": SMALL}
    check_given_back("duct-run", request, ask("duct-run", request))


def test_sticks_of_steel_and_plastic_are_each_what_they_are_sold_in() -> None:
    request = run(stretch(buried()), start=RISEN | {"name": "A", "riser_conduit_type": "rmc"})
    answer = ask("duct-run", request)
    pieces = answer["result"]["stretches"][0]["conduits"]
    assert [(one["conduit_type"], one["stick_length"]["value"]) for one in pieces] == [
        ("rmc", 10),
        ("pvc_schedule_40", 20),
    ]
    told = [place for one in answer["assumptions"] for place in one["pointers"]]
    assert not [place for place in told if place.endswith("stick_length")], "one member cannot say both"
    belled = ask("duct-run", request | {"joining": {"ends": "belled"}})
    assert belled["result"]["stretches"][0]["conduits"] == pieces, "bells are of what is cemented"
    alone = run(stretch(buried(), conduit_type="rmc", joining={"ends": "belled"}))
    assert [one["pointer"] for one in faults("duct-run", alone)] == ["#/stretches/0/joining/ends"]


def test_each_duct_is_proved_by_the_mandrel_of_the_smallest_bore_along_it() -> None:
    # 0.25 in less than 3.998 and 2.047 in; the first duct goes on in Schedule 80 with 3.786 in
    narrower = {"conduit": listed("4", "pvc_schedule_80"), "tier_ducts": SMALL}
    request = run(
        stretch(buried()), stretch(buried(), bank=narrower), bank={"conduit": listed("4"), "tier_ducts": SMALL}
    )
    answer = ask("duct-run", request)
    ducts = answer["result"]["ducts"]
    assert [duct["mandrel_diameter"]["value"] for duct in ducts] == pytest.approx([3.786 - 0.25, 2.047 - 0.25])
    assert "mandrel_diameter" not in answer["result"], "no one mandrel goes through all"
    assert exact(answer, "mandrel_pass") == {(None, "3.536 in"): 1, (None, "1.797 in"): 1}


def test_the_arithmetic_of_a_line_is_that_of_all_its_parts() -> None:
    # 100 ft of 4 in and of 2 in: 5 sticks with 4 joints between and a bell at either end, 30 and 70 joints a quart
    several = [[{"count": 1}, {"count": 1, "conduit": listed("2")}, {"count": 1, "conduit": listed("3")}]]
    bends = [straight(49), level_bend(30, 3), straight(49)]
    request = run(
        {"name": "field", "setting": buried(), "sections": bends}, bank={"conduit": listed("4"), "tier_ducts": several}
    )
    answer = ask("duct-run", request)
    [cement] = lines_of(answer, "solvent_cement")
    parts = [f"field: 7 joints of {size} in pvc schedule 40" for size in ("4", "2", "3")]
    assert cement["basis"] == "; ".join(parts)
    [elbow] = [one for one in lines_of(answer, "elbow") if one["size"] == "4"]
    assert (elbow["angle"], elbow["radius"]) == ({"value": 30, "unit": "deg"}, {"value": 36, "unit": "in"})
    assert elbow["basis"] == "field: 1 duct, one in each at section 2 of field"
    # the ducts of a bank that go on each in its own way are parts of one line
    own = {"conduit": listed("4"), "tier_ducts": [[{"count": 1}, {"count": 1, "conduit": listed("4", "rmc")}]]}
    apart = ask("duct-run", run({**stretch(buried()), "name": "near"}, stretch(buried(), bank=own)))
    [conduit] = [one for one in lines_of(apart, "conduit") if one["conduit_type"] == "pvc_schedule_40"]
    assert conduit["basis"] == "near: 2 x (1 x 100 ft); stretch 2: 1 x 100 ft"
