"""What is ordered says how much it is and why; all of it worked by hand."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, codes, quantity
from tests.subjects.duct_run.runs import buried, listed

_EB = {
    "kind": "measured",
    "type": "pvc_eb_35",
    "inside_diameter": quantity(5.25, "in"),
    "outside_diameter": quantity(5.563, "in"),
}


def of(conduit: dict[str, Any], feet: float = 200, ducts: int = 6) -> dict[str, Any]:
    return {
        "bank": {
            "conduit": conduit,
            "tiers": [ducts],
            "horizontal_separation": quantity(2, "in"),
            "separation_measure": "clear",
        },
        "start": {"kind": "handhole", "name": "A"},
        "stretches": [{"setting": buried(36) | {"kind": "encased"}, "length": quantity(feet, "ft")}],
        "end": {"kind": "handhole", "name": "B"},
    }


def lines_of(answer: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {line["item"]: line for line in answer["result"]["takeoff"]["lines"]}


def test_measured_conduit_that_is_cemented_takes_the_cement_of_the_size_that_is_as_large() -> None:
    answer = ask("duct-run", of(_EB))
    lines = lines_of(answer)
    # 200 ft are ten sticks of 20 ft: nine joints between them and an end bell at either end; trade size 5 is 5.563 in
    # outside and takes a quart for 10
    assert lines["joint"]["exact_quantity"]["value"] == 6 * (9 + 2)
    assert lines["solvent_cement"]["exact_quantity"]["value"] == pytest.approx(6 * 11 / 10)
    assert lines["solvent_cement"]["order_quantity"]["value"] == 7
    [said] = [one for one in answer["findings"] if one["code"] == "cement_by_diameter"]
    assert "trade size 5" in said["message"]
    named = ask("duct-run", of(_EB | {"trade_size": "5"}))
    assert lines_of(named)["solvent_cement"]["exact_quantity"] == lines["solvent_cement"]["exact_quantity"]
    assert "cement_by_diameter" not in codes(named)


def test_a_little_wider_than_one_size_it_takes_the_cement_of_the_next() -> None:
    wide = ask("duct-run", of(_EB | {"outside_diameter": quantity(5.6, "in")}))
    listed_six = ask("duct-run", of(listed("6")))
    cement = [lines_of(one)["solvent_cement"]["exact_quantity"]["value"] for one in (wide, listed_six)]
    assert cement[0] == cement[1]


def test_conduit_wider_than_any_on_file_says_that_its_cement_is_not_counted() -> None:
    large = _EB | {"inside_diameter": quantity(7.5, "in"), "outside_diameter": quantity(8.625, "in")}
    answer = ask("duct-run", of(large))
    assert "solvent_cement" not in lines_of(answer)
    [said] = [one for one in answer["findings"] if one["code"] == "cement_not_counted"]
    assert (said["severity"], said["pointer"]) == ("caution", "#/bank/conduit")


def test_sticks_of_which_most_is_left_over_are_said_in_the_basis() -> None:
    # six ducts of 8 ft take a stick of 20 ft each: 120 ft for 48, more than the 3 percent of waste
    short = lines_of(ask("duct-run", of(listed("4"), 8)))["conduit"]
    assert short["order_quantity"]["value"] == 120
    assert short["basis"].endswith("6 x 8 ft out of 6 sticks, for no offcut of one duct starts the next")
    # 6 x 119 ft take 36 sticks of 20 ft, 720 ft; with 3 percent of waste 714 ft are 735.42
    long = lines_of(ask("duct-run", of(listed("4"), 119)))["conduit"]
    assert "offcut" not in long["basis"]
