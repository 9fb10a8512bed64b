"""When a crew stops a pull, worked by hand; all of it derived.

One cable of 5 lb/ft through an elbow of 2 ft radius beside the reel, then a level straight, with 100 lbf at the reel.
300 lbf/ft in the elbow are 300 x 2 = 600 lbf behind it. The lowest friction published for PVC duct is 0.15.
"""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, quantity
from tests.subjects.duct_run.runs import buried, level_bend, single, straight
from tests.subjects.duct_run.test_runs_of_several_conduits import run


def pull(length: float, friction: float = 0.35, incoming: float = 100) -> tuple[dict[str, Any], list[dict[str, Any]]]:
    """Give the pull, and the cautions of when to stop it."""
    bent = {"setting": buried(), "sections": [level_bend(90, 2), straight(length)]}
    cables = single(1.5, 5, "750 kcmil", 1)
    practice = {"friction_coefficient": friction, "incoming_tension": quantity(incoming, "lbf")}
    circuit = {"name": "F", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": cables}
    answer = ask("duct-run", run(bent, circuits=[circuit], pulling=practice))
    told = [one for one in answer["findings"] if one["code"] == "stop_rests_on_friction"]
    [found] = answer["result"]["circuits"][0]["pulls"]
    return found, told


def test_a_pull_within_its_limits_can_be_finished_and_its_caution_says_what_that_rests_on() -> None:
    # 600 lbf behind the elbow and 0.35 x 5 x 1,000; with 0.15 x 5 x 1,000 the elbow is safe at any friction
    found, told = pull(1000)
    assert (found["verdict"], found["direction"], found["stop_basis"]) == ("complies", "forward", "friction_assumed")
    assert found["stop_tension"] == {"value": pytest.approx(600 + 1_750), "unit": "lbf"}
    assert found["tension_safe_at_any_friction"] == {"value": pytest.approx(600 + 750), "unit": "lbf"}
    assert 1_350 < found["pull"]["tension"]["value"] < 2_350
    [caution] = told
    assert caution["severity"] == "caution"
    assert caution["actual"]["value"] == pytest.approx(2_350)
    assert caution["limit"]["value"] == pytest.approx(1_350)
    assert caution["message"].startswith("F, A to B: Section 1 of stretch 1: to stop the pull at 2,350 lbf")
    assert "From 1,350 lbf on the bend may be over its sidewall limit unseen" in caution["message"]


def test_where_what_is_safe_at_any_friction_is_enough_the_crew_stops_there() -> None:
    # 100 lbf grow to some 174 behind the elbow: 174 + 0.35 x 5 x 200 = 524 are expected, 600 + 0.15 x 5 x 200 safe
    found, told = pull(200)
    assert found["stop_basis"] == "any_friction"
    assert found["stop_tension"]["value"] == pytest.approx(600 + 150)
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
