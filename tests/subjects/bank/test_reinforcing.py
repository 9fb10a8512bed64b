"""Bars in the envelope: whether the cage fits beside the ducts, and the hooks of its ties."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, quantity, value_of

CAGE: dict[str, Any] = {"bar_count": 4, "bar_size": "no_4"}


def caged(cover: dict[str, float] | None = None, cage: dict[str, Any] | None = None, **changes: Any) -> dict[str, Any]:
    request = copy.deepcopy(EXAMPLES["encasement"]) | {"reinforcing": CAGE | (cage or {})} | changes
    for side, inches in (cover or {}).items():
        request["concrete_cover"][side] = quantity(inches, "in")
    answer: dict[str, Any] = ask("encasement", request)
    return answer


def clash(answer: dict[str, Any]) -> dict[str, Any]:
    [found] = [one for one in answer["findings"] if one["code"] == "cage_meets_ducts"]
    return dict(found)


ALL_ROUND = {"top": 3.875, "bottom": 3.875, "side": 3.875}


def test_the_default_cage_clashes_with_the_ducts_of_the_default_envelope() -> None:
    """Derived: 3 in of edge cover, a tie of 3/8 in and a bar of 1/2 in are 3.875 in, where there are 3.

    The envelope of nine ducts, 17.5 + 6 = 23.5 in each way, must be 17.5 + 7.75 = 25.25 in.
    """
    answer = caged()
    found = clash(answer)
    assert (answer["verdict"], found["severity"], found["pointer"]) == (
        "violates",
        "violation",
        "#/reinforcing/edge_cover",
    )
    assert (found["actual"]["value"], found["limit"]["value"]) == (pytest.approx(3), pytest.approx(3.875))
    assert "(top, bottom, side)" in found["message"]
    assert "0.875 in too little" in found["message"]
    assert "an envelope of 25.25 in by 25.25 in" in found["message"]
    least = answer["result"]["reinforcing_takeoff"]["least_concrete_cover"]
    assert least == {"value": pytest.approx(3.875), "unit": "in"}


def test_the_envelope_that_the_cage_needs_holds_it() -> None:
    answer = caged(ALL_ROUND)
    assert answer["verdict"] == "complies"
    assert "cage_meets_ducts" not in codes(answer)
    assert answer["result"]["envelope_width"]["value"] == pytest.approx(25.25)


@pytest.mark.parametrize("side", ["top", "bottom", "side"])
def test_the_side_that_is_too_thin_is_named(side: str) -> None:
    found = clash(caged(ALL_ROUND | {side: 3.25}))
    assert f"({side})" in found["message"]
    assert found["actual"]["value"] == pytest.approx(3.25)


def test_bars_that_fit_only_in_the_corners_are_not_judged() -> None:
    """Derived: the tie takes 3.375 in of 3.5, a bar inside it 3.875."""
    answer = caged(ALL_ROUND | {"side": 3.5})
    [found] = [one for one in answer["findings"] if one["code"] == "bars_not_judged"]
    assert answer["verdict"] == "not_judged"
    assert "(side)" in found["message"]
    assert "an envelope of 25.25 in by 25.25 in" in found["message"]


def test_the_ties_of_a_stepped_pour_are_not_judged() -> None:
    stepped: dict[str, Any] = {"pour_shape": "stepped", "bank": EXAMPLES["encasement"]["bank"] | {"tiers": [3, 2]}}
    answer = caged(ALL_ROUND, **stepped)
    assert answer["verdict"] == "not_judged"
    assert "cage_not_judged" in codes(answer, "caution")
    assert caged(**stepped)["verdict"] == "violates"


def test_a_wide_trench_leaves_room_beside_the_ducts() -> None:
    """Derived: 17.5 in of ducts in a trench of 25.25 in leave 3.875 in on each side."""
    above = {"top": 3.875, "bottom": 3.875}
    assert caged(above, trench_width=quantity(25.25, "in"))["verdict"] == "complies"
    assert "(side)" in clash(caged(above, trench_width=quantity(24, "in")))["message"]


def test_a_smaller_edge_cover_gives_the_cage_its_room() -> None:
    """Derived: 2 in with a tie of 3/8 in and a bar of 5/8 in are the 3 in there are."""
    assert caged(cage={"edge_cover": quantity(2, "in"), "bar_size": "no_5"})["verdict"] == "complies"


def test_concrete_without_bars_has_no_verdict_of_a_cage() -> None:
    assert "verdict" not in ask("encasement", EXAMPLES["encasement"])


@pytest.mark.parametrize(("size", "hook"), [("no_3", 4.25), ("no_4", 4.5), ("no_5", 5.5), ("no_6", 8), ("no_8", 10.5)])
def test_every_tie_has_two_hooks_of_its_size(size: str, hook: float) -> None:
    """Derived: 101 ties over 100 ft, of 17.5 in each way inside 3 in of edge cover."""
    answer = caged(cage={"tie_size": size}, length=quantity(100, "ft"))
    told = {pointer: value_of(one) for one in answer["assumptions"] for pointer in one["pointers"]}
    assert told["#/reinforcing/tie_hook_length"] == quantity(hook, "in")
    ties = answer["result"]["reinforcing_takeoff"]["tie_length"]["value"]
    assert ties == pytest.approx(101 * (4 * 17.5 + 2 * hook) / 12)


def test_a_hook_may_be_given() -> None:
    closed = caged(cage={"tie_hook_length": quantity(0, "in")}, length=quantity(100, "ft"))
    assert closed["result"]["reinforcing_takeoff"]["tie_length"]["value"] == pytest.approx(101 * 70 / 12)
