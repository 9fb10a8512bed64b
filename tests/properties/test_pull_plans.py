"""A plan against every plan there is, on routes small enough to try them all."""

from __future__ import annotations

import copy
import itertools
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import EXAMPLES, quantity, result

SECTIONS = st.one_of(
    st.builds(
        lambda feet, degrees: {"kind": "straight", "length": quantity(feet, "ft"), "grade": quantity(degrees, "deg")},
        st.floats(min_value=50, max_value=900),
        st.sampled_from([0.0, 0.0, 10.0, -30.0]),
    ),
    st.builds(
        lambda feet, degrees: {
            "kind": "horizontal_bend",
            "radius": quantity(feet, "ft"),
            "angle": quantity(degrees, "deg"),
        },
        st.floats(min_value=2, max_value=10),
        st.floats(min_value=10, max_value=90),
    ),
)


def use(sections: list[dict[str, Any]]) -> float:
    """Give what the better end of one pull uses of its limits, infinite if it breaks one."""
    request = copy.deepcopy(EXAMPLES["pull-tension"]) | {"sections": sections}
    found = result("pull-tension", request)
    share = min(found["utilization_percent"], found["reversed"]["utilization_percent"])
    broken = share > 100 * (1 + 1e-9) or found["bend_total"]["value"] > 360 * (1 + 1e-9)
    return float("inf") if broken else float(share)


@settings(max_examples=40)
@given(sections=st.lists(SECTIONS, min_size=1, max_size=6))
def test_a_plan_is_the_best_of_all_plans(sections: list[dict[str, Any]]) -> None:
    joints = [
        index
        for index in range(1, len(sections))
        if "straight" in (sections[index - 1]["kind"], sections[index]["kind"])
    ]
    every = []
    for count in range(len(joints) + 1):
        for boxes in itertools.combinations(joints, count):
            ends = [0, *boxes, len(sections)]
            worst = max(use(sections[start:end]) for start, end in itertools.pairwise(ends))
            if worst < float("inf"):
                every.append((count + 1, worst))
    request = copy.deepcopy(EXAMPLES["pull-plan"]) | {"sections": sections}
    found = result("pull-plan", request)
    assert found["possible"] is bool(every)
    if every:
        best = min(every)
        assert found["pull_count"] == best[0]
        assert found["worst_utilization_percent"] == pytest.approx(best[1], rel=1e-9)
