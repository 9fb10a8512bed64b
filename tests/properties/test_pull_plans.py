"""A plan against every plan there is, on routes over hills small enough to try them all."""

from __future__ import annotations

import copy
import itertools
from typing import Any

import pytest
from hypothesis import event, given, settings
from hypothesis import strategies as st

from tests.asking import EXAMPLES, judged, quantity

FAR = float("inf")


@st.composite
def hilly_routes(draw: st.DrawFn) -> list[dict[str, Any]]:
    """Make a short route whose grades meet; every grade is given, so that any part of it is the same route."""
    sections: list[dict[str, Any]] = []
    grade = draw(st.sampled_from([0.0, 0.0, -30.0, 20.0]))
    for _ in range(draw(st.integers(min_value=1, max_value=6))):
        kind = draw(st.sampled_from(["straight", "straight", "level", "vertical"]))
        radius = quantity(draw(st.floats(min_value=2, max_value=20)), "ft")
        if kind == "vertical":
            leave = draw(st.sampled_from([-90.0, -30.0, 0.0, 20.0, 90.0]))
            if leave != grade:
                grades = {"entry_grade": quantity(grade, "deg"), "exit_grade": quantity(leave, "deg")}
                sections.append({"kind": "vertical_bend", "radius": radius} | grades)
                grade = leave
        elif kind == "level" and grade == 0.0:
            angle = quantity(draw(st.floats(min_value=10, max_value=90)), "deg")
            sections.append({"kind": "horizontal_bend", "radius": radius, "angle": angle})
        else:
            length = quantity(draw(st.floats(min_value=20, max_value=1_500)), "ft")
            sections.append({"kind": "straight", "length": length, "grade": quantity(grade, "deg")})
    return sections or [{"kind": "straight", "length": quantity(50, "ft"), "grade": quantity(0, "deg")}]


def ends_of(request: dict[str, Any], sections: list[dict[str, Any]]) -> list[tuple[str, float]]:
    """Give verdict and use of one pull from both ends."""
    verdict, found = judged("pull-tension", request | {"sections": sections})
    turned = found["reversed"]
    return [(verdict, found["utilization_percent"]), (turned["verdict"], turned["utilization_percent"])]


@settings(max_examples=120, deadline=None)
@given(sections=hilly_routes(), brake=st.sampled_from([None, None, 40.0, 1_000.0]))
def test_a_plan_is_the_best_of_all_plans(sections: list[dict[str, Any]], brake: float | None) -> None:
    joints = [
        index
        for index in range(1, len(sections))
        if "straight" in (sections[index - 1]["kind"], sections[index]["kind"])
    ]
    request = copy.deepcopy(EXAMPLES["pull-tension"])
    plan = copy.deepcopy(EXAMPLES["pull-plan"]) | {"sections": sections}
    if brake is not None:
        request["brake_limit"] = plan["brake_limit"] = quantity(brake, "lbf")
    plans, perhaps = [], False
    for count in range(len(joints) + 1):
        for boxes in itertools.combinations(joints, count):
            stops = itertools.pairwise([0, *boxes, len(sections)])
            pulls = [ends_of(request, sections[start:end]) for start, end in stops]
            perhaps = perhaps or all(any(verdict != "violates" for verdict, _ in ends) for ends in pulls)
            worst = max(min((use for verdict, use in ends if verdict == "complies"), default=FAR) for ends in pulls)
            if worst < FAR:
                plans.append((count + 1, worst))
    told, found = judged("pull-plan", plan)
    event(f"{told}; braked: {any('brake_tension' in pull for pull in found['pulls'])}")
    assert told == ("complies" if plans else "not_judged" if perhaps else "violates")
    if plans:
        best = min(plans)
        assert found["pull_count"] == best[0]
        assert found["highest_utilization_percent"] == pytest.approx(best[1], rel=1e-9)
