"""One wall worked by hand, line by line: 220 ft of 2 in PVC along a warehouse, box to box, in the sun.

Derived: no figure here was printed by anybody; each is the arithmetic beside it.
"""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, quantity

WALL = quantity(220, "ft")
# air from 0 to 90 degF, and 30 degF of sun: the conduit sees 0 to 120 degF
TEMPERATURES = {
    "kind": "range",
    "lowest": quantity(0, "degF"),
    "highest": quantity(90, "degF"),
    "installation": quantity(70, "degF"),
}


def wall() -> tuple[dict[str, Any], dict[str, Any]]:
    moved = ask("expansion", {"material": "pvc", "length": WALL, "temperatures": TEMPERATURES})
    conduit = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"}
    fittings = {"fitting_count": moved["result"]["fitting_count"]}
    return moved, ask("supports", {"conduit": conduit, "length": WALL, "fittings": fittings})


def feet(places: list[dict[str, Any]]) -> list[float]:
    assert {place["unit"] for place in places} <= {"ft"}
    return [place["value"] for place in places]


def test_the_wall_moves_and_is_fitted_as_worked_by_hand() -> None:
    answer, _ = wall()
    found = answer["result"]
    # 120 degF x 3.38e-5 x 2,640 in
    assert found["temperature_difference"] == quantity(120, "delta_degF")
    assert found["length_change"]["value"] == pytest.approx(10.708, abs=0.001)
    # 10.708 / (6 x 0.9) = 1.98: two, each taking 5.354 in, 89.2 percent of its travel, one to each 110 ft
    assert found["fitting_count"] == 2
    assert found["fitting_spacing"] == {"value": pytest.approx(110), "unit": "ft"}
    [run] = found["runs"]
    assert run["travel_used_percent"] == pytest.approx(89.23, abs=0.01)
    # one anchor in the middle, both barrels at it: clamped 6 in from it, open pistons out to 18 in
    assert feet(run["anchor_positions"]) == pytest.approx([110])
    assert feet(run["fitting_positions"]) == pytest.approx([109.5, 110.5])
    assert feet(run["piston_reaches"]) == pytest.approx([108.5, 111.5])
    # set at 70 degF: 6 x (120 - 70) / 120
    assert found["piston_opening"]["value"] == pytest.approx(2.5)
    # 90 degF of air is within 122 degF
    assert answer["verdict"] == "complies"


def test_the_wall_is_strapped_as_worked_by_hand_around_the_same_fittings() -> None:
    moved, strapped = wall()
    [run], found = moved["result"]["runs"], strapped["result"]
    for member in ("fitting_positions", "piston_reaches", "anchor_positions", "holding_strap_positions"):
        assert found[member] == run[member]
    # of 2 in PVC 5 ft apart, 3 ft from a box: from 3 to 109.5 ft are 106.5 ft, 21.3 gaps, so 22 of 4.841 ft
    straps = [3 + 106.5 / 22 * gap for gap in range(23)]
    # the other half is its mirror image; 109.5 and 110.5 hold the barrels
    expected = straps + [220 - place for place in reversed(straps)]
    assert feet(found["positions"]) == pytest.approx(expected)
    assert found["support_count"] == 46
    assert feet(found["holding_strap_positions"]) == pytest.approx([109.5, 110.5])
    # the guide next to each barrel stands at 104.659 ft, 3.84 ft clear of the open piston at 108.5
    assert feet(found["positions"])[21] == pytest.approx(104.659, abs=0.001)
    assert found["actual_spacing"]["value"] == pytest.approx(4.841, abs=0.001)
    assert strapped["verdict"] == "complies"


def test_each_half_of_the_wall_can_move_all_of_its_way_into_its_fitting() -> None:
    """Each half is fixed at its box alone; 110 ft x 12 x 3.38e-5 x 120 = 5.354 in pass every strap but the barrel's."""
    _, strapped = wall()
    found = strapped["result"]
    sliding = [one for one in feet(found["positions"]) if one not in feet(found["holding_strap_positions"])]
    assert len(sliding) == 44
    assert not [place for place in sliding if 108.5 < place < 111.5]
