"""Flotation by hand: what pushes, what of it at once, and what holds it."""

from __future__ import annotations

import math

import pytest
from ductrun.engineering import flotation


def test_one_foot_of_trade_4_duct_displaces_16_57_pounds_of_concrete() -> None:
    """Derived: pi/4 (4.5/12)^2 ft2 x 150 lb/ft3 = 16.567 lb; nine ducts over 5 ft: 745.5 lb."""
    each = flotation.uplift(4.5 * 0.0254, 150 * 16.01846337396014, 0.0) / (4.4482216152605 / 0.3048)
    assert each == pytest.approx(16.567, abs=5e-4)
    assert each * 9 * 5 == pytest.approx(745.5, abs=0.05)


def test_a_duct_heavier_than_what_it_displaces_sinks() -> None:
    assert flotation.uplift(0.1, 1000, 10) < 0 < flotation.uplift(0.1, 1000, 5)


def test_what_lies_above_the_water_and_below_it_make_a_whole_duct() -> None:
    for tenths in range(-3, 14):
        below, above = (flotation.submerged_area(1.0, part) for part in (tenths / 10, 1.0 - tenths / 10))
        assert below + above == pytest.approx(math.pi / 4)
    assert flotation.submerged_area(1.0, 0.25) == pytest.approx(0.153546, abs=1e-6), "pi/12 - sqrt(3)/16: derived"


def test_the_wall_weighs_what_is_left_of_the_full_circle() -> None:
    wall = flotation.wall_mass(0.1143, 0.006, 1400)
    full, bore = (flotation.contents_mass(size, 1400) for size in (0.1143, 0.1023))
    assert wall == pytest.approx(full - bore)


def test_only_the_ducts_in_one_live_lift_push_at_once() -> None:
    tiers = [(0.1, 50.0), (0.3, 40.0), (0.5, 30.0)]
    assert flotation.governing_lift(tiers, 1.0) == 120
    assert flotation.governing_lift(tiers, 0.4) == 90
    assert flotation.governing_lift(tiers, 0.3) == 90, "a lift that starts below the first reaches the second"
    assert flotation.governing_lift(tiers, 0.2) == 50
    assert flotation.governing_lift([(0.1, -5.0)], 1.0) == 0


def test_the_worst_lift_is_looked_for_wherever_it_starts_and_while_it_rises() -> None:
    """Derived: bottoms 6.5 in apart; 12 in of a lift reach two tiers, 14 in all three, and sinking ones do not help."""
    tiers = [(3.0, 10.0), (9.5, 30.0), (16.0, 30.0)]
    assert flotation.governing_lift(tiers, 12.0) == 60
    assert flotation.governing_lift(tiers, 14.0) == 70
    assert flotation.governing_lift([(0.0, -40.0), (1.0, 30.0), (2.0, -5.0)], 5.0) == 30


def test_what_lies_on_ducts_counts_less_the_water_it_displaces() -> None:
    """Derived: 0.5 m2 of 2,400 kg/m3 in water of 1,000 are 700 kg/m; what is lighter than the water holds nothing."""
    assert flotation.buoyant_weight(0.5, 2400, 1000) == pytest.approx(700 * 9.80665)
    assert flotation.buoyant_weight(0.5, 900, 1000) == 0


def test_the_factor_is_on_the_uplift_and_not_on_the_weight() -> None:
    assert flotation.hold_down(100, 1.5, 0) == 150
    assert flotation.hold_down(100, 1.5, 120) == pytest.approx(30)
    assert flotation.hold_down(100, 1.5, 151) == 0


def test_a_duct_at_the_top_of_a_lift_counts_in_the_next_one() -> None:
    for tenths in range(1, 200):
        assert flotation.governing_lift([(0.0, 1.0), (tenths * 0.1 * 0.3048, 1.0)], tenths * 0.1 * 0.3048) == 1


def test_anchors_round_up_and_none_holds_what_sinks() -> None:
    assert flotation.tie_downs(1500, 500) == 3
    assert flotation.tie_downs(1500.1, 500) == 4
    assert flotation.tie_downs(0.5, 500) == 1
    assert flotation.tie_downs(0, 500) == flotation.tie_downs(-5, 500) == 0
