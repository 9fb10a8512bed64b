"""A trench by hand and against numerical integration."""

from __future__ import annotations

from itertools import pairwise

import pytest
from ductrun.engineering import trench
from hypothesis import given
from hypothesis import strategies as st

DEPTHS = st.lists(st.floats(min_value=0.3, max_value=5), min_size=2, max_size=8)


@given(depths=DEPTHS, width=st.floats(0.3, 3), slope=st.floats(0, 2))
def test_prismoids_are_the_integral_of_the_section(depths: list[float], width: float, slope: float) -> None:
    profile = [(10.0 * index, depth) for index, depth in enumerate(depths)]
    integral = 0.0
    for (start, one), (end, other) in pairwise(profile):
        for step in range(200):
            depth = one + (other - one) * (step + 0.5) / 200
            integral += (end - start) / 200 * (width + slope * depth) * depth
    assert trench.excavation(width, slope, profile) == pytest.approx(integral, rel=1e-4)


@given(width=st.floats(0.3, 3), slope=st.floats(0, 2), bottom=st.floats(0, 2), thickness=st.floats(0.01, 2))
def test_layers_stack_up_to_the_excavation(width: float, slope: float, bottom: float, thickness: float) -> None:
    layers = trench.layer(width, slope, 0, bottom, 7) + trench.layer(width, slope, bottom, thickness, 7)
    assert layers == pytest.approx(trench.excavation(width, slope, [(0, bottom + thickness), (7, bottom + thickness)]))


def test_spoil_is_what_is_left_swollen_and_may_be_missing() -> None:
    assert trench.spoil(100, 0, 1.25, 0.9) == 125
    assert trench.spoil(100, 90, 1.25, 0.9) == pytest.approx(0)
    assert trench.spoil(100, 99, 1.25, 0.9) == pytest.approx(-12.5)
