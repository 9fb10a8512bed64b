"""Flotation by hand: what pushes, what of it at once, and what holds it."""

from __future__ import annotations

import pytest
from ductrun.engineering import flotation


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
    assert flotation.governing_lift(tiers, 0.3) == 90, "a lift may start anywhere"
    assert flotation.governing_lift(tiers[::-1], 0.3) == 90
    assert flotation.governing_lift(tiers, 0.2) == 50
    assert flotation.governing_lift([(0.1, -5.0)], 1.0) == 0


def test_a_duct_at_the_top_of_a_lift_counts_in_the_next_one() -> None:
    for tenths in range(1, 200):
        assert flotation.governing_lift([(0.0, 1.0), (tenths * 0.1 * 0.3048, 1.0)], tenths * 0.1 * 0.3048) == 1


def test_anchors_round_up_and_none_holds_what_sinks() -> None:
    assert flotation.tie_downs(1000, 1.5, 500) == 3
    assert flotation.tie_downs(1000.1, 1.5, 500) == 4
    assert flotation.tie_downs(0.5, 1.5, 500) == 1
    assert flotation.tie_downs(-5, 1.5, 500) == 0
