"""The heat of loaded ducts by itself: bounded rounds, runaway, and forms at the edges of their validity."""

from __future__ import annotations

import math

import pytest
from ductrun.engineering.buried_heat import MOST_SIDES, envelope_radius, surround_of
from ductrun.engineering.heat_balance import Ground, Load, Metal, Path, RunawayError, balance
from ductrun.engineering.neher_mcgrath import (
    AirConstants,
    bundle_diameter,
    cores_resistance,
    earth_resistance,
    layer_resistance,
)
from ductrun.engineering.roots import falling_root
from ductrun.engineering.shields import shield_loss_factor

METAL = Metal(1e-4, 348.15, 38.65, 0.02, 0.025, 1, 0.0, False)
PATH = Path(1, 1, METAL, None, 0.5, 0.0, AirConstants(1.0, 0.0, 0.0), 0.025, 330.0, 0.1, 0.0, 363.15)
GROUND = Ground([[1.0]], [[1.0]], 293.15)


def test_the_square_that_is_looked_for_brings_the_conductor_to_its_limit() -> None:
    """70 K over (0.5 + 1.0 + 0.1 + 1.0) K.m/W is 26.923 W/m; R at 90 degC is 1e-4 x 324.5/309.5 ohm/m."""
    found = balance([PATH], [Load(0.0, 1.0)], GROUND)
    assert found.square == pytest.approx(70 / 2.6 / (1e-4 * 324.5 / 309.5))
    assert found.ducts[0].conductor == pytest.approx(363.15)
    assert found.ducts[0].heat == pytest.approx(70 / 2.6)
    assert found.ducts[0].outside == pytest.approx(293.15 + 70 / 2.6)


def test_a_direct_current_warms_as_the_line_of_its_resistance_says() -> None:
    """T = Ta + a I^2 R (T - T0)/(T1 - T0) solved for T: linear, and without end at the current where the slope is 1."""
    slope = 2.6 * 1e-4 / 309.5
    square = 0.5 / slope
    found = balance([PATH], [Load(square, 0.0)], GROUND)
    assert found.ducts[0].conductor == pytest.approx((293.15 - 0.5 * 38.65) / 0.5)
    with pytest.raises(RunawayError):
        balance([PATH], [Load(1.01 / slope, 0.0)], GROUND)


def test_what_is_fixed_may_leave_nothing() -> None:
    ground = Ground([[1.0, 0.5], [0.5, 1.0]], [[1.0, 0.5], [0.5, 1.0]], 293.15)
    found = balance([PATH, PATH], [Load(600.0**2, 0.0), Load(0.0, 1.0)], ground)
    assert found.square == 0.0
    assert found.governing == 0
    assert found.ducts[1].heat == 0.0


def test_ducts_without_any_current_lie_at_the_earths_temperature() -> None:
    found = balance([PATH], [Load(0.0, 0.0)], GROUND)
    assert found.square == 0.0
    assert found.ducts[0].conductor == pytest.approx(293.15)


def test_an_envelope_longer_than_three_to_one_is_taken_as_the_one_that_allows_less() -> None:
    """1 by 6 m, 5 m down: where earth is the better barrier as one of 1 by 3, else as one of 2 by 6."""
    assert MOST_SIDES == 3
    worse_earth = surround_of(6.0, 1.0, 5.0, 0.6, 0.9)
    assert not worse_earth.valid
    assert worse_earth.correction == pytest.approx(0.3 / (2 * math.pi) * math.acosh(5.0 / envelope_radius(1.0, 3.0)))
    worse_concrete = surround_of(1.0, 6.0, 5.0, 0.9, 0.6)
    assert worse_concrete.correction == pytest.approx(
        -0.3 / (2 * math.pi) * math.acosh(5.0 / envelope_radius(2.0, 6.0))
    )
    at_the_surface = surround_of(1.0, 1.0, 0.5, 0.6, 0.9)
    assert at_the_surface == (0.9, 0.0, False)
    assert surround_of(1.0, 3.0, 5.0, 0.6, 0.9).valid


def test_the_daily_cycle_is_held_between_the_duct_and_its_image() -> None:
    """Within Dx the whole loss counts; where the duct is wider than Dx, or lies nearer the surface, all or none is."""
    rho = 0.9 / (2 * math.pi)
    assert earth_resistance(0.9, 0.1, 1.0, 0.2, 0.5) == pytest.approx(rho * (math.log(2) + 0.5 * math.log(20)))
    assert earth_resistance(0.9, 0.3, 1.0, 0.2, 0.5) == pytest.approx(rho * 0.5 * math.log(4 / 0.3))
    assert earth_resistance(0.9, 0.05, 0.04, 0.2, 0.5) == pytest.approx(rho * math.log(0.16 / 0.05))


def test_many_cables_give_off_heat_as_the_circle_of_their_area() -> None:
    assert [bundle_diameter(1.0, count) for count in (1, 2, 3, 4)] == [1.0, 1.65, 2.15, 2.5]
    assert bundle_diameter(1.0, 6) == 2.5
    assert bundle_diameter(1.0, 9) == 3.0


def test_one_core_in_a_jacket_is_a_layer_and_thin_walls_keep_half_of_theirs() -> None:
    assert cores_resistance(5.0, 1, 0.01, 0.012, 0.014) == layer_resistance(5.0, 0.01, 0.014)
    tight = cores_resistance(5.0, 3, 0.0100, 0.0102, 0.0102 * (1 + 2 / math.sqrt(3)))
    assert tight >= 5.0 / (2 * math.pi) * math.log(1.02) / 2


def test_a_shield_without_reactance_carries_nothing() -> None:
    assert shield_loss_factor(1e-4, 1e-3, 0.0) == 0.0


def test_a_root_is_looked_for_in_bounded_steps_and_told_from_the_side_that_holds() -> None:
    assert falling_root(lambda x: -1.0 - x, 0.0, 1.0, 1e-9) is None
    assert falling_root(lambda x: 1.0 - x / 2, 0.0, 1.0, 1e-9) == 1.0
    steep = falling_root(lambda x: 1.0 if x < 0.3 else -1000.0, 0.0, 1.0, 1e-9)
    assert steep is not None
    assert steep == pytest.approx(0.3, abs=1e-3)
    assert steep < 0.3
    calls: list[float] = []

    def falling(x: float) -> float:
        calls.append(x)
        return 10.0 / x - 3.0

    assert falling_root(falling, 0.2, 10.0, 1e-9) == pytest.approx(10 / 3)
    assert len(calls) < 30
