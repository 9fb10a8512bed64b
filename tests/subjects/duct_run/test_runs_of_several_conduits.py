"""Runs whose ducts are of one conduit here and of another there, worked by hand; all of it derived."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import ask, faults, quantity
from tests.subjects.duct_run.runs import buried, listed

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
    assert answer["result"]["stretches"][1]["ducts"][0]["conduit_type"] == kind
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
