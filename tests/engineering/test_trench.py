"""Trench, flotation and joints by hand and against numerical integration."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from ductrun.engineering import flotation, joints, trench
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


def test_one_foot_of_trade_4_duct_displaces_16_57_pounds_of_concrete() -> None:
    """Derived: pi/4 (4.5/12)^2 ft2 x 150 lb/ft3 = 16.567 lb; nine ducts over 5 ft: 745.5 lb."""
    each = flotation.uplift(4.5 * 0.0254, 150 * 16.01846337396014, 0.0) / (4.4482216152605 / 0.3048)
    assert each == pytest.approx(16.567, abs=5e-4)
    assert each * 9 * 5 == pytest.approx(745.5, abs=0.05)


def test_a_duct_heavier_than_what_it_displaces_sinks() -> None:
    assert flotation.uplift(0.1, 1000, 10) < 0 < flotation.uplift(0.1, 1000, 5)


def test_the_wall_weighs_what_is_left_of_the_full_circle() -> None:
    wall = flotation.wall_mass(0.1143, 0.006, 1400)
    full, bore = (flotation.contents_mass(size, 1400) for size in (0.1143, 0.1023))
    assert wall == pytest.approx(full - bore)


def test_only_the_ducts_in_one_live_lift_push_at_once() -> None:
    tiers = [(0.1, 50.0), (0.3, 40.0), (0.5, 30.0)]
    assert flotation.governing_lift(tiers, 1.0) == 120
    assert flotation.governing_lift(tiers, 0.4) == 90
    assert flotation.governing_lift(tiers, 0.3) == 70
    assert flotation.governing_lift(tiers, 0.2) == 50
    assert flotation.governing_lift([(0.1, -5.0)], 1.0) == 0


def test_a_duct_at_the_top_of_a_lift_counts_in_the_next_one() -> None:
    for tenths in range(1, 200):
        assert flotation.governing_lift([(0.0, 1.0), (tenths * 0.1 * 0.3048, 1.0)], tenths * 0.1 * 0.3048) == 1


def test_anchors_round_up_and_none_holds_what_sinks() -> None:
    assert flotation.tie_downs(1000, 1.5, 500) == 3
    assert flotation.tie_downs(1000.1, 1.5, 500) == 4
    assert flotation.tie_downs(-5, 1.5, 500) == 0


def test_a_36_inch_elbow_of_90_degrees_with_6_inch_ends() -> None:
    assert joints.developed_length(36, math.pi / 2, 6) == pytest.approx(36 * math.pi / 2 + 12)


def test_sticks_and_joints_of_a_hundred_feet() -> None:
    assert joints.sticks(100.0, 10.0) == 10
    assert joints.sticks(100.1, 10.0) == 11
    assert joints.sticks(0.0, 10.0) == 0
    assert joints.couplings(10, 2) == 11
    assert joints.couplings(0, 0) == 0
    assert (joints.sockets(10, 2, belled=True), joints.sockets(10, 2, belled=False)) == (11, 22)


def test_tenths_of_a_foot_never_add_a_stick() -> None:
    for tenths in range(1, 5_000):
        for lay in (99, 100, 195, 200):
            exact = -(-tenths // lay)
            assert joints.sticks(tenths * 0.1 * 0.3048, lay * 0.1 * 0.3048) == exact
            assert joints.sticks(tenths / 10, lay / 10) == exact
