"""When a crew stops a pull, worked by hand; all of it derived.

One cable of 5 lb/ft through an elbow of 2 ft radius beside the reel, then a level straight, with 100 lbf at the reel.
300 lbf/ft in the elbow are 300 x 2 = 600 lbf behind it. Without friction a level straight adds nothing to them, and a
climb the weight of the cable times its rise.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from tests.asking import ask, quantity
from tests.subjects.duct_run.runs import buried, level_bend, single, straight, upright_bend
from tests.subjects.duct_run.test_runs_of_several_conduits import run


def pull(length: float, friction: float = 0.35, incoming: float = 100) -> tuple[dict[str, Any], list[dict[str, Any]]]:
    """Give the pull, and the cautions of when to stop it."""
    return pulled([level_bend(90, 2), straight(length)], friction, incoming)


def pulled(
    sections: list[dict[str, Any]], friction: float = 0.35, incoming: float = 100, **changes: Any
) -> tuple[dict[str, Any], list[dict[str, Any]]]:
    """Give the pull through sections, and the cautions of when to stop it."""
    bent = {"setting": changes.pop("setting", buried()), "sections": sections}
    cables = changes.pop("cables", single(1.5, 5, "750 kcmil", 1))
    practice = {"friction_coefficient": friction, "incoming_tension": quantity(incoming, "lbf"), **changes}
    circuit = {"name": "F", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": cables}
    answer = ask("duct-run", run(bent, circuits=[circuit], pulling=practice))
    told = [one for one in answer["findings"] if one["code"] == "stop_rests_on_friction"]
    [found] = answer["result"]["circuits"][0]["pulls"]
    return found, told


def test_a_pull_within_its_limits_can_be_finished_and_its_caution_says_what_that_rests_on() -> None:
    # 600 lbf behind the elbow and 0.35 x 5 x 1,000; without friction the 600 of the elbow are those at the end
    found, told = pull(1000)
    assert (found["verdict"], found["direction"], found["stop_basis"]) == ("complies", "forward", "friction_assumed")
    assert found["stop_tension"] == {"value": pytest.approx(600 + 1_750), "unit": "lbf"}
    assert found["tension_safe_at_any_friction"] == {"value": pytest.approx(600), "unit": "lbf"}
    assert 600 < found["pull"]["tension"]["value"] < 2_350
    [caution] = told
    assert caution["severity"] == "caution"
    assert caution["actual"]["value"] == pytest.approx(2_350)
    assert caution["limit"]["value"] == pytest.approx(600)
    assert caution["message"].startswith("F, A to B: Section 1 of stretch 1: to stop the pull at 2,350 lbf")
    assert "From 600 lbf on the bend may be over its sidewall limit unseen" in caution["message"]


def test_where_what_is_safe_at_any_friction_is_enough_the_crew_stops_there() -> None:
    # 100 lbf grow to some 174 behind the elbow: 174 + 0.35 x 5 x 200 = 524 are expected, 600 safe
    found, told = pull(200)
    assert found["stop_basis"] == "any_friction"
    assert found["stop_tension"]["value"] == pytest.approx(600)
    assert found["tension_safe_at_any_friction"] == found["stop_tension"]
    assert found["pull"]["tension"]["value"] == pytest.approx(174 + 350, rel=0.01)
    assert told == []


def test_a_pull_beyond_its_limits_is_stopped_at_what_is_safe_at_any_friction() -> None:
    # 600 lbf at the reel are more than the 600 behind the elbow from either end: nothing to finish
    found, told = pull(1000, incoming=600)
    assert (found["verdict"], found["stop_basis"], told) == ("violates", "any_friction", [])
    assert found["stop_tension"] == found["tension_safe_at_any_friction"]
    assert found["pull"]["tension"]["value"] > found["stop_tension"]["value"]


@pytest.mark.parametrize("length", [100, 300, 600, 900, 1_100])
def test_no_pull_within_its_limits_is_stopped_before_it_is_where_it_is_expected(length: float) -> None:
    found, _ = pull(length)
    assert found["verdict"] == "complies"
    assert found["pull"]["tension"]["value"] <= found["stop_tension"]["value"]
    assert found["tension_safe_at_any_friction"]["value"] <= found["stop_tension"]["value"]


def test_what_is_safe_at_any_friction_falls_with_the_line_toward_the_pulling_end() -> None:
    # the line falls 500 sin 1 deg = 8.73 ft behind the elbow, too little to run away at any friction published: were
    # there none at all, 5 x 8.73 = 43.6 lbf less would stand at the end than behind the elbow. The bend into the fall
    # drops 100 (1 - cos 1 deg) = 0.015 ft more.
    falling = [level_bend(90, 2), upright_bend(-1, 100), straight(500)]
    found, _ = pulled(falling, incoming=20)
    assert found["direction"] == "forward"
    fall = 500 * math.sin(math.radians(1)) + 100 * (1 - math.cos(math.radians(1)))
    assert found["tension_safe_at_any_friction"]["value"] == pytest.approx(600 - 5 * fall)


def test_over_a_crest_nothing_is_over_what_the_cable_bears_where_neither_end_of_the_bend_stands() -> None:
    # from 45 degrees up to 45 down on 20 ft: the top lies 20 (1 - cos 45 deg) = 5.86 ft over both ends of the bend, so
    # that 5 x 5.86 = 29.3 lbf less than its 300 x 20 = 6,000 may stand there without friction; 100 ft of fall and
    # the turn into the level, 70.7 + 5.86 ft, take 5 lbf each
    over_a_hill = [
        straight(20, 0),
        upright_bend(45, 20),
        straight(100),
        upright_bend(-45, 20),
        straight(100),
        upright_bend(0, 20),
        straight(20),
    ]
    found, _ = pulled(over_a_hill)
    rise = 20 * (1 - math.cos(math.radians(45)))
    fall = 100 * math.sin(math.radians(45)) + rise
    assert found["tension_safe_at_any_friction"]["value"] == pytest.approx(6_000 - 5 * rise - 5 * fall)


_POUNDS = quantity(600, "lbf")
STOPPING = ("stop_tension", "stop_basis", "tension_safe_at_any_friction")


def test_a_cable_of_which_nobody_knows_what_it_bears_has_no_tension_to_stop_at() -> None:
    # the gear holds thousands of pounds; what is said of the cable alone lets it be stopped
    cables = single(0.5, 0.09, "750 kcmil", 1)
    del cables[0]["cable"]["conductor"]
    found, _ = pulled([straight(400), level_bend(90, 3), straight(200)], cables=cables)
    assert found["verdict"] == "not_judged"
    assert [name for name in STOPPING if name in found] == []
    known, _ = pulled([straight(400), level_bend(90, 3), straight(200)], cables=cables, allowable_tension=_POUNDS)
    assert known["stop_tension"] == _POUNDS


def test_no_tension_is_safe_at_any_friction_over_a_bend_that_was_left_out() -> None:
    # 300 lbf/ft bring an elbow of 3 ft to its limit at 900 lbf; of a break of 20 degrees nobody knows the radius
    broken, given = [straight(100, 0), straight(100, 20)], [straight(100, 0), upright_bend(20, 3), straight(100, 20)]
    found, _ = pulled(broken)
    assert found["verdict"] == "not_judged"
    assert [name for name in STOPPING if name in found] == []
    whole, _ = pulled(given)
    climb = 5 * 100 * math.sin(math.radians(20))
    assert whole["tension_safe_at_any_friction"]["value"] == pytest.approx(900 + climb)


def _highest_and_last(start: float, radius: float, down: float) -> tuple[float, float]:
    """Walk 5 lbf/ft up 100 ft, over half a circle and down, in small steps, at a friction of 0.2: on top of a crest
    the weight and the turn of the tension press the same way.
    """
    steps = 5_000
    tension = highest = start + 5 * 100
    for step in range(steps):
        slope = math.pi / 2 - math.pi * (step + 0.5) / steps
        length = math.pi * radius / steps
        pressed = 5 * length * math.cos(slope) + tension * math.pi / steps
        tension += 5 * length * math.sin(slope) + 0.2 * pressed
        highest = max(highest, tension)
    return highest, tension - 5 * down


def test_a_pull_stopped_where_it_rests_on_friction_has_been_over_its_limit_nowhere_on_a_crest() -> None:
    over_the_top = [straight(100, 90), upright_bend(-90, 150), straight(300)]
    found, [told] = pulled(
        over_the_top,
        friction=0.2,
        incoming=0,
        cables=single(1.5, 5, "750 kcmil", 1),
        setting={"kind": "above_ground"},
        braking_friction_coefficient=0.15,
        brake_limit=quantity(100_000, "lbf"),
        allowable_tension=quantity(2_500, "lbf"),
        allowable_sidewall_pressure=quantity(5_000, "lbf/ft"),
    )
    assert found["stop_basis"] == "friction_assumed"
    low, high = 0.0, 2_000.0  # held back by so much at the beginning
    for _ in range(30):
        middle = (low + high) / 2
        low, high = (middle, high) if _highest_and_last(middle, 150, 300)[0] < 2_500 else (low, middle)
    assert found["stop_tension"]["value"] == pytest.approx(_highest_and_last(low, 150, 300)[1], rel=1e-3)
    assert found["tension_safe_at_any_friction"]["value"] == pytest.approx(2_500 - 5 * 450)
    assert "the cable may bear more than it is allowed" in told["message"]


def test_a_crest_that_its_own_weight_brings_over_its_limit_leaves_no_tension_that_is_safe() -> None:
    over_the_top = [straight(100, 90), upright_bend(-90, 150), straight(300)]
    limits = {"allowable_tension": quantity(1_000, "lbf"), "allowable_sidewall_pressure": quantity(5_000, "lbf/ft")}
    found, _ = pulled(over_the_top, 0.2, 0, setting={"kind": "above_ground"}, **limits)
    assert found["verdict"] != "complies"
    assert found["tension_safe_at_any_friction"]["value"] == 0
