"""Sticks, joints and elbows by hand."""

from __future__ import annotations

import math

import pytest
from ductrun.engineering import joints


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
