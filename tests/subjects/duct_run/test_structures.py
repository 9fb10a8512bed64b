"""Conduit on a structure that moves itself; all of it worked by hand."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, codes, quantity
from tests.subjects.duct_run.runs import BRIDGE, listed


def on_a_deck(kind: str, feet: float, coefficient: float, **temperatures: Any) -> dict[str, Any]:
    """Make a run of so many feet along a structure, from 0 to 100 degF, in the sun unless told otherwise."""
    seen = {"kind": "range", "lowest": quantity(0, "degF"), "highest": quantity(100, "degF")}
    return {
        "bank": {"conduit": listed("4", kind), "tiers": [1]},
        "start": {"kind": "pull_box"},
        "end": {"kind": "pull_box"},
        "site": {"temperatures": seen | temperatures},
        "movement": {"usable_travel_percent": 100, "fitting_travel": quantity(6, "in")},
        "stretches": [
            {
                "setting": {"kind": "above_ground", "structure_coefficient": quantity(coefficient, "1/degF")},
                "length": quantity(feet, "ft"),
            }
        ],
    }


def moved(run: dict[str, Any]) -> Any:
    found = ask("duct-run", run)["result"]["stretches"][0]["expansion"]
    return found["length_change"]["value"], found["fitting_count"]


def test_the_sun_heats_the_conduit_and_not_the_structure_behind_it() -> None:
    # 410 ft are 4,920 in. PVC of 3.38e-5 sees 100 and 30 degF of sun, its structure of 6e-6 the 100:
    # 4,920 x (3.38e-5 x 130 - 6e-6 x 100) = 18.666 in, over three times the 6 in of a fitting
    assert moved(on_a_deck("pvc_schedule_40", 410, 6e-6)) == (pytest.approx(18.66648), 4)
    # steel of 6.5e-6: 4,920 x (6.5e-6 x 130 - 6e-6 x 100) = 1.2054 in
    assert moved(on_a_deck("rmc", 410, 6e-6)) == (pytest.approx(1.2054), 1)


def test_out_of_the_sun_only_the_difference_of_the_two_moves_the_conduit() -> None:
    # 4,920 x (3.38e-5 - 6e-6) x 100 = 13.678 in
    shade = on_a_deck("pvc_schedule_40", 410, 6e-6, direct_sun=False)
    assert moved(shade) == (pytest.approx(13.6776), 3)
    assert "sun_on_the_conduit_alone" not in codes(ask("duct-run", shade))
    assert "sun_on_the_conduit_alone" in codes(ask("duct-run", on_a_deck("pvc_schedule_40", 410, 6e-6)))


def test_a_structure_that_moves_more_than_the_conduit_has_it_move_by_sun_and_shade() -> None:
    # steel of 6.5e-6 on 12e-6: in the shade 4,920 x 5.5e-6 x 100 = 2.706 in one way, in the sun 4,920 x 6.5e-6 x 30 =
    # 0.9594 in back
    assert moved(on_a_deck("rmc", 410, 12e-6)) == (pytest.approx(2.706 + 0.9594), 1)


def test_of_a_difference_the_allowance_for_sun_is_taken_to_be_in_it() -> None:
    run = on_a_deck("pvc_schedule_40", 410, 6e-6)
    run["site"]["temperatures"] = {"kind": "difference", "difference": quantity(130, "delta_degF")}
    assert moved(run) == (pytest.approx(18.66648), 4)
    [note] = [one for one in ask("duct-run", run)["findings"] if one["code"] == "sun_on_the_conduit_alone"]
    assert note["pointer"] == "#/stretches/0/setting/structure_coefficient"
    assert "30 delta_degF" in note["message"]


def test_half_a_bridge_in_the_sun_moves_more_than_one_fitting_of_its_travel_takes() -> None:
    # RTRC of 15e-6 from -20 to 100 degF and 30 of sun, a deck of 6.5e-6: 1,800 in x (15e-6 x 150 - 6.5e-6 x 120) =
    # 2.646 in; 2.6 in of travel are less
    run = BRIDGE | {"site": {"temperatures": BRIDGE["site"]["temperatures"] | {"direct_sun": True}}}
    run["movement"] = {"usable_travel_percent": 100}
    run["stretches"] = [
        BRIDGE["stretches"][0],
        BRIDGE["stretches"][1] | {"setting": dict(BRIDGE["stretches"][1]["setting"])},
    ]
    run["stretches"][1]["setting"]["fitting_travel"] = quantity(2.6, "in")
    runs = ask("duct-run", run)["result"]["stretches"][1]["expansion"]["runs"]
    assert [one["length_change"]["value"] for one in runs] == pytest.approx([2.646, 2.646])
    assert [one["fitting_count"] for one in runs] == [2, 2]


def test_every_joint_of_the_structure_is_told_with_its_fitting_and_how_far_to_open_it() -> None:
    told = ask("duct-run", BRIDGE)["result"]["stretches"][1]["structure_joints"]
    assert [(one["position"], one["movement"]) for one in told] == [
        (quantity(0, "ft"), quantity(1, "in")),
        (quantity(150, "ft"), quantity(2, "in")),
    ]
    for one in told:
        assert one["fitting_travel"] == quantity(8, "in")
        opened = {line["temperature"]["value"]: line["opening"]["value"] for line in one["piston_openings"]}
        # from -20 to 100 degF: open at the lowest, closed at the highest, at 40 half way
        assert (opened[-20], opened[40], opened[100]) == pytest.approx((8, 4, 0))


def test_the_sun_is_not_taken_to_open_a_joint_of_the_structure_either() -> None:
    run = BRIDGE | {"site": {"temperatures": BRIDGE["site"]["temperatures"] | {"direct_sun": True}}}
    [first, _] = ask("duct-run", run)["result"]["stretches"][1]["structure_joints"]
    assert max(line["temperature"]["value"] for line in first["piston_openings"]) == 100
    centered = run | {"movement": {"piston_convention": "centered"}}
    [first, _] = ask("duct-run", centered)["result"]["stretches"][1]["structure_joints"]
    # of 8 in 1 moves: at the middle, 40 degF, half open, and half an inch more at the lowest
    opened = {line["temperature"]["value"]: line["opening"]["value"] for line in first["piston_openings"]}
    assert (opened[-20], opened[40], opened[100]) == pytest.approx((4.5, 4, 3.5))


def test_without_a_range_a_joint_is_told_without_openings() -> None:
    run = BRIDGE | {"site": {}}
    [first, _] = ask("duct-run", run)["result"]["stretches"][1]["structure_joints"]
    assert first["piston_openings"] == []


def opened(run: dict[str, Any]) -> dict[float, float]:
    [moving] = ask("duct-run", run)["result"]["stretches"][0]["expansion"]["runs"]
    return {line["temperature"]["value"]: line["opening"]["value"] for line in moving["piston_openings"]}


def set_at(run: dict[str, Any], *degrees: float, **practice: Any) -> dict[str, Any]:
    at = [quantity(one, "degF") for one in degrees]
    return run | {"movement": run["movement"] | {"opening_temperatures": at} | practice}


def test_a_structure_that_shrinks_more_than_the_conduit_closes_its_fitting_in_the_cold() -> None:
    # steel of 6.5e-6 on 13e-6, 380 ft or 4,560 in, 0 to 100 degF: the structure outgrows the conduit by 2.964 in, from
    # closed at 0 to the whole 3 in at 100; at 90 nine tenths of that
    run = on_a_deck("rmc", 380, 13e-6, direct_sun=False, installation=quantity(90, "degF"))
    travel = {"fitting_travel": quantity(3, "in")}
    assert opened(set_at(run, 0, 100, **travel)) == pytest.approx({0: 0, 90: 2.7, 100: 3})
    assert ask("duct-run", set_at(run, **travel))["result"]["stretches"][0]["expansion"]["piston_opening"] == {
        "value": pytest.approx(2.7),
        "unit": "in",
    }
    assert "structure_moves_more" in codes(ask("duct-run", run), "note")
    # centered, of 3 in 0.036 is left, half of it at either end: 0.018 + 0.9 x 2.964
    centered = opened(set_at(run, 0, 100, piston_convention="centered", **travel))
    assert centered == pytest.approx({0: 0.018, 90: 2.6856, 100: 2.982})


def test_where_structure_and_sun_work_against_each_other_both_extremes_stay_within_the_travel() -> None:
    # steel of 6.5e-6 on 12e-6, 4,920 in, 0 to 100 and 30 degF of sun: the structure opens the fitting by 2.706 in, the
    # sun closes it by 0.9594 in, together 3.6654 of 6 in. Cold in the shade the sun is still to come, so that
    # 6 x 0.9594 / 3.6654 = 1.5705 in stay open for it; hot in the shade nothing opens it more; hot in the sun it closes
    # by the 0.9594 again
    run = on_a_deck("rmc", 410, 12e-6)
    left = 6 * 0.9594 / 3.6654
    assert opened(set_at(run, 0, 100, 130)) == pytest.approx({0: left, 100: 6, 130: 6 - left})


def test_a_structure_that_moves_less_leaves_the_sun_its_share_of_the_travel() -> None:
    # PVC of 3.38e-5 on 6e-6, 4,920 in: 13.6776 in by the air and 4.98888 by 30 degF of sun, together 18.66648: at
    # 100 degF in the shade the sun's share of each fitting of 6 in is still to come
    run = on_a_deck("pvc_schedule_40", 410, 6e-6)
    assert opened(set_at(run, 0, 100, 130)) == pytest.approx({0: 6, 100: 6 * 4.98888 / 18.66648, 130: 0})
