"""A profile gives its slope to all that lies on it, bends too; all of it derived."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import ask, codes, quantity
from tests.subjects.duct_run.runs import level_bend, listed, single, straight

FEET, POUND_FORCE = 0.3048, 4.4482216152605


def falling(made: str = "laid_on_curve", *points: tuple[float, float, float]) -> dict[str, Any]:
    """Make a run of 500 ft in plan with a curve of 300 ft radius, 3 ft below a ground that falls by 35 ft."""
    arc = 300 * math.radians(60)
    given = points or ((0, 53, 50), (500, 18, 15))
    return {
        "bank": {"conduit": listed("4"), "tiers": [1]},
        "circuits": [{"name": "C", "voltage": quantity(480, "V"), "cables": single(1.42, 2.6, "500 kcmil")}],
        "start": {"kind": "handhole", "name": "A"},
        "stretches": [
            {
                "name": "hill",
                "setting": {"kind": "direct_buried", "location": "not_otherwise_specified"},
                "sections": [straight(100), level_bend(60, 300, made=made), straight(400 - arc)],
            }
        ],
        "end": {"kind": "handhole", "name": "B"},
        "profile": {
            "reference": "top_of_envelope",
            "points": [
                {"station": quantity(at, "ft"), "ground": quantity(ground, "ft"), "line": quantity(line, "ft")}
                for at, ground, line in given
            ],
        },
        "pulling": {"friction_coefficient": 0.5, "incoming_tension": quantity(100, "lbf")},
    }


def pulled_by_steps(friction: float, weight: float, slope: float, *, backward: bool) -> float:
    """Carry 100 lbf over the hill in 50,000 short chords, by the forces across and along each: no closed form."""
    arc = 300 * math.radians(60)
    tension, steps, station = 100.0, 50_000, 0.0
    step = 500 / steps
    along, up = step / math.cos(slope), math.sin(-slope if backward else slope)
    for _ in range(steps):
        in_curve = (400 - arc if backward else 100) < station + step / 2 < (400 if backward else 100 + arc)
        turned = step / 300 * math.cos(slope) if in_curve else 0.0
        across = math.hypot(tension * turned, weight * math.cos(slope) * along)
        tension += friction * across + weight * up * along
        station += step
    return tension


def test_a_curve_on_a_slope_is_as_long_and_falls_as_far_as_the_slope() -> None:
    answer = ask("duct-run", falling())
    # 500 ft in plan and 35 ft down
    assert answer["result"]["length"]["value"] == pytest.approx(math.hypot(500, 35), rel=1e-9)
    assert math.hypot(500, 35) == pytest.approx(501.224, abs=5e-4)
    [pull] = answer["result"]["circuits"][0]["pulls"]
    slope = math.atan(-35 / 500)
    weight = 3 * 2.6  # lbf/ft
    friction = 0.5 * pull["pull"]["weight_correction_factor"]
    forward = pulled_by_steps(friction, weight, slope, backward=False)
    assert pull["pull"]["tension"]["value"] == pytest.approx(forward, rel=1e-4)
    backward = pulled_by_steps(friction, weight, slope, backward=True)
    assert pull["pull"]["reversed"]["tension"]["value"] == pytest.approx(backward, rel=1e-4)
    assert not {"grade_breaks", "bend_left_out"} & set(codes(answer))


def test_a_bend_that_is_bought_stays_one_bend_on_the_mean_slope() -> None:
    # it breaks in the middle of the curve, by a degree
    bent = ((0, 53, 50), (250, 35.5, 32.5), (500, 22, 19))
    answer = ask("duct-run", falling("field_bend", *bent))
    [line] = [one for one in answer["result"]["takeoff"]["lines"] if one["item"] == "field_bend"]
    assert line["exact_quantity"]["value"] == 1
    before, after = math.hypot(100, 7), (400 - 300 * math.radians(60)) * math.hypot(250, 13.5) / 250
    arc = 300 * math.radians(60)
    fall = 150 * 0.07 + (arc - 150) * 13.5 / 250
    expected = before + math.hypot(arc, fall) + after
    assert answer["result"]["length"]["value"] == pytest.approx(expected, rel=1e-9)


def test_a_break_of_the_profile_is_told_at_its_station() -> None:
    steep = ((0, 53, 50), (50, 53, 50), (500, 18, 15))
    answer = ask("duct-run", falling("laid_on_curve", *steep))
    [found] = [one for one in answer["findings"] if one["code"] == "grade_breaks"]
    assert "section 1 of hill and section 1 of hill, beyond station 50 ft the grade breaks" in found["message"]


def test_a_slope_both_ways_is_pulled_as_steep_as_it_is() -> None:
    plain = copy.deepcopy(falling())
    level = falling("laid_on_curve", (0, 53, 50), (500, 53, 50))
    tensions = [ask("duct-run", one)["result"]["circuits"][0]["pulls"][0]["pull"] for one in (plain, level)]
    assert (
        tensions[0]["tension"]["value"] < tensions[1]["tension"]["value"] < tensions[0]["reversed"]["tension"]["value"]
    )
