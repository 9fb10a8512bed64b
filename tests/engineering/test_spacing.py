"""Spacers by hand."""

from __future__ import annotations

import pytest
from ductrun.engineering import spacing


def test_fence_posts_stand_at_both_ends() -> None:
    assert spacing.stations_by_distance(100.0, 5.0, 0.0) == 21
    assert spacing.stations_by_distance(101.0, 5.0, 0.0) == 22
    assert spacing.stations_by_distance(100.0, 5.0, 2.5) == 20
    assert spacing.stations_by_distance(100.0, 5.0, 5.0) == 19
    assert spacing.stations_by_distance(3.0, 5.0, 1.5) == 1
    assert spacing.stations_by_distance(3.0, 5.0, 9.0) == 1
    assert spacing.stations_by_distance(10_000.0, 5.0, 5_000.0 - 1e-6) == 1, "what is left is the last digit"


def test_stations_by_stick_are_one_fewer_than_by_distance() -> None:
    for sticks in range(1, 40):
        by_stick = spacing.stations_by_stick(sticks * 10.0, 2, 10.0)
        assert by_stick == 2 * sticks
        assert spacing.stations_by_distance(sticks * 10.0, 5.0, 0.0) == by_stick + 1


def test_tenths_of_a_foot_never_add_a_station() -> None:
    for tenths in range(1, 3_000):
        for interval in (1, 3, 7, 50, 80):
            exact = -(-tenths // interval) + 1
            assert spacing.stations_by_distance(tenths * 0.1, interval * 0.1, 0.0) == exact
            assert spacing.stations_by_distance(tenths * 0.1 * 0.3048, interval * 0.1 * 0.3048, 0.0) == exact


def test_stations_on_joints_are_counted_but_the_one_at_the_start() -> None:
    assert spacing.stations_on_joints(13, 5.0, 0.0, 20.0, 0.5) == 2, "at 20 and 40; 60 is the far end"
    assert spacing.stations_on_joints(12, 5.0, 2.5, 20.0, 0.5) == 0
    assert spacing.stations_on_joints(3, 9.7, 10.0, 20.0, 0.5) == 1
    assert spacing.stations_on_joints(2, 20.0, 0.5, 20.0, 0.5) == 0, "at the clearance is not closer than it"


def test_pieces_of_a_stepped_bank() -> None:
    assert spacing.base_pieces([3, 3, 2], 1) == 3
    assert spacing.intermediate_pieces([3, 3, 2], 1) == 5
    assert spacing.top_pieces([3, 3, 2], 1) == 3
    assert (spacing.base_pieces([5, 4], 2), spacing.intermediate_pieces([5, 4], 2), spacing.top_pieces([5, 4], 2)) == (
        3,
        2,
        3,
    )


def test_a_rectangle_has_columns_times_tiers_less_one_intermediates() -> None:
    for columns in range(1, 7):
        for tiers in range(1, 6):
            bank = [columns] * tiers
            assert spacing.intermediate_pieces(bank, 1) == columns * (tiers - 1)
            assert spacing.top_pieces(bank, 1) == columns


def test_waste_rounds_up_to_whole_pieces() -> None:
    assert spacing.with_waste(488, 5) == 513
    assert spacing.with_waste(100, 10) == 110
    assert spacing.with_waste(10_000, 10) == 11_000
    assert spacing.with_waste(0, 50) == 0


def test_even_spacing_shares_the_run() -> None:
    assert spacing.spacing_by_distance(101.0, 22, 0.0) == pytest.approx(101 / 21)
    assert spacing.spacing_by_distance(3.0, 1, 1.5) == 0.0
