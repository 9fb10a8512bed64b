"""Loads on buried ducts: against sums over the loaded area, and as they change with the depth."""

from __future__ import annotations

import math

import pytest
from ductrun.engineering import earth_load, flexible_duct
from ductrun.engineering.earth_load import Wheel
from hypothesis import given
from hypothesis import strategies as st

H_20 = Wheel(16_000.0, 20 / 12, 1.5, 6.0)  # in pounds and feet
COVERS = st.floats(min_value=0.05, max_value=40.0)


def summed(depth: float, across: float, parts: int = 120) -> float:
    """Add up Boussinesq's point loads over the tire print of a wheel whose center lies so far aside."""
    total = 0.0
    for i in range(parts):
        for j in range(parts):
            x = across + ((i + 0.5) / parts - 0.5) * H_20.width
            y = ((j + 0.5) / parts - 0.5) * H_20.length
            total += 3 * depth**3 / (2 * math.pi * (x * x + y * y + depth * depth) ** 2.5)
    return H_20.load * total / parts**2


@pytest.mark.parametrize("depth", [0.5, 1.0, 2.5, 5.0, 12.0])
def test_the_closed_form_is_the_sum_of_point_loads(depth: float) -> None:
    expected = summed(depth, 0.0) + summed(depth, H_20.apart)
    assert earth_load.boussinesq_pressure(H_20, depth, 1.0) == pytest.approx(expected, rel=2e-4)


@given(cover=COVERS, deeper=st.floats(min_value=0.01, max_value=5.0), spread=st.floats(min_value=0.0, max_value=2.0))
def test_no_load_of_traffic_rises_with_cover(cover: float, deeper: float, spread: float) -> None:
    def spread_out(at: float) -> float:
        allowance = earth_load.dynamic_allowance(at, 0.33, 8.0)
        wheels = earth_load.spread_pressure(H_20, at, spread, 1.2, allowance)
        return wheels + earth_load.lane_pressure(640.0, 10.0, at, spread, 1.2)

    steps = [(1.0, 1.5), (2.0, 1.35), (3.0, 1.15), (0.0, 1.0)]

    def boussinesq(at: float) -> float:
        return earth_load.boussinesq_pressure(H_20, at, earth_load.stepped(at, steps))

    assert spread_out(cover + deeper) <= spread_out(cover) * (1 + 1e-12)
    assert boussinesq(cover + deeper) <= boussinesq(cover) * (1 + 1e-9)


def test_the_two_wheels_spread_into_each_other_without_a_step() -> None:
    """At 1.0 to 1 the prints of 20 in meet at 72 - 20 = 52 in of cover: derived."""
    meet = 52 / 12
    before = earth_load.spread_pressure(H_20, meet - 1e-9, 1.0, 1.0, 0.0)
    after = earth_load.spread_pressure(H_20, meet + 1e-9, 1.0, 1.0, 0.0)
    assert before == pytest.approx(16_000 / (6 * (1.5 + meet)), rel=1e-6)
    assert after == pytest.approx(before, rel=1e-6)


def test_a_table_is_read_between_its_rows_and_not_above_its_first() -> None:
    rows = [(1.0, 1800.0), (2.0, 800.0), (8.0, 100.0)]
    read = [earth_load.between_rows(at, rows) for at in (0.9, 1.0, 1.25, 2.0, 5.0, 8.0, 8.1)]
    assert read == [None, 1800.0, 1550.0, 800.0, 450.0, 100.0, 0.0]


def test_an_edge_takes_the_row_it_ends() -> None:
    rows = [(1.0, 1.5), (2.0, 1.35), (0.0, 1.0)]
    assert [earth_load.stepped(at, rows) for at in (0.5, 1.0, 1.01, 2.0, 2.01, 90.0)] == [
        1.5,
        1.5,
        1.35,
        1.35,
        1.0,
        1.0,
    ]


@given(cover=COVERS, width=st.floats(min_value=0.5, max_value=20.0), friction=st.floats(min_value=0.1, max_value=0.2))
def test_arching_never_adds_to_the_prism(cover: float, width: float, friction: float) -> None:
    arched = earth_load.trench_pressure(cover, width, friction, 1900.0)
    assert 0 < arched <= earth_load.prism_pressure(cover, 1900.0) * (1 + 1e-12)


@given(
    stiffness=st.floats(min_value=1, max_value=1e4),
    more=st.floats(min_value=1, max_value=1e4),
    modulus=st.floats(min_value=0, max_value=3000),
)
def test_stiffer_never_deflects_more_and_the_least_stiffness_meets_the_limit(
    stiffness: float, more: float, modulus: float
) -> None:
    def bends(by: float) -> float:
        return flexible_duct.deflection(5.0, 9.0, 1.0, 0.11, by, modulus)

    assert bends(stiffness + more) <= bends(stiffness)
    least = flexible_duct.stiffness_for_deflection(5.0, 9.0, 1.0, 0.11, modulus, 5.0)
    if least > 0:
        assert bends(least) == pytest.approx(5.0)
    else:
        assert bends(1e-9) <= 5.0


def test_the_least_stiffness_for_buckling_bears_just_the_pressure() -> None:
    needed = flexible_duct.stiffness_for_buckling(35.0, 400.0, 0.66, 0.8)
    assert flexible_duct.buckling_pressure(needed, 400.0, 0.66, 0.8) == pytest.approx(35.0)
    ring = flexible_duct.stiffness_for_ring(35.0, 0.38)
    assert flexible_duct.ring_pressure(ring, 0.38) == pytest.approx(35.0)
    assert flexible_duct.stiffness_for_buckling(35.0, 0.0, 0.66, 0.8) == math.inf


def test_the_stiffness_of_a_ring_and_its_dimensions_are_one_formula() -> None:
    """6.7 E I / r3 with I = t3/12 and r = (OD - t)/2 is 4.467 E / (OD/t - 1)3: derived; printed as 4.47."""
    modulus, outside, wall = 400_000.0, 4.5, 0.237
    by_ring = 6.7 * modulus * wall**3 / 12 / ((outside - wall) / 2) ** 3
    assert flexible_duct.pipe_stiffness(modulus, outside, wall) == pytest.approx(by_ring, rel=1e-3)
    assert by_ring == pytest.approx(307, abs=0.5)
