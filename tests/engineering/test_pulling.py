"""The pulling formulas against integration, against their own limits, and against each other."""

from __future__ import annotations

import itertools
import math

import pytest
from ductrun.engineering import pulling
from ductrun.engineering.cables import (
    Arrangement,
    clearance,
    handbook_clearance,
    sidewall_factor,
    weight_correction_factor,
)
from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend
from ductrun.engineering.tension import capstan, horizontal_bend
from ductrun.engineering.vertical_bends import carry


def integrated(tension: float, weight: float, friction: float, radius: float, entry: float, leave: float) -> float:
    """Integrate dT/dphi of a vertical bend by the classical Runge-Kutta rule, in many small steps."""
    steps = 20_000
    step = (leave - entry) / steps
    side = weight * radius
    rising = leave > entry

    def slope(phi: float, pull: float) -> float:
        wall = abs(pull - side * math.cos(phi)) if rising else abs(pull + side * math.cos(phi))
        gravity = side * math.sin(phi)
        return friction * wall + gravity if rising else -(friction * wall + gravity)

    phi = entry
    for _ in range(steps):
        k1 = slope(phi, tension)
        k2 = slope(phi + step / 2, tension + step / 2 * k1)
        k3 = slope(phi + step / 2, tension + step / 2 * k2)
        k4 = slope(phi + step, tension + step * k3)
        tension += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        phi += step
    return tension


def vertical_bend(tension: float, weight: float, friction: float, radius: float, entry: float, leave: float) -> float:
    return carry(tension, weight * radius, friction, entry, leave)


def vertical_bend_entry(
    tension_out: float, weight: float, friction: float, radius: float, entry: float, leave: float
) -> float:
    return VerticalBend(radius, entry, leave, friction).entry(tension_out, weight)


GRADES = [-90, -50, -20, -5, 0, 5, 20, 50, 90]
BENDS = [(entry, leave) for entry, leave in itertools.permutations(GRADES, 2)]


@pytest.mark.parametrize(("entry", "leave"), BENDS)
def test_a_vertical_bend_agrees_with_its_integral(entry: float, leave: float) -> None:
    for tension in (0.0, 20.0, 300.0, 5_000.0):
        given = (tension, 55.0, 0.35, 3.0, math.radians(entry), math.radians(leave))
        expected = integrated(*given)
        if vertical_bend_entry(0.0, *given[1:]) > tension:  # the cable runs away in it: hilly routes try those
            continue
        scale = max(expected, 55.0 * 3.0)
        assert vertical_bend(*given) == pytest.approx(expected, abs=1e-6 * scale)


def test_a_long_sag_where_the_cable_leaves_and_regains_the_inner_wall() -> None:
    given = (2_000.0, 40.0, 0.3, 60.0, math.radians(-80), math.radians(80))
    side = 40.0 * 60.0
    assert given[0] < side, "the cable lies on the lower wall at first"
    assert vertical_bend(*given) > side, "and is lifted at the end"
    assert vertical_bend(*given) == pytest.approx(integrated(*given), rel=1e-6)


@pytest.mark.parametrize("friction", [0.1, 0.35, 0.8])
def test_the_handbook_forms_with_one_end_vertical_are_special_cases(friction: float) -> None:
    """GB 50168-92, appendix 2: crest up from the vertical, and sag down from the vertical."""
    tension, weight, radius, angle = 10_000.0, 60.0, 2.0, math.radians(60)
    grown = math.exp(friction * angle)
    factor = weight * radius / (1 + friction**2)
    bracket = (1 - friction**2) * math.sin(angle) + 2 * friction * (grown - math.cos(angle))
    upright = math.pi / 2
    crest = vertical_bend(tension, weight, friction, radius, upright, upright - angle)
    sag = vertical_bend(tension, weight, friction, radius, -upright, -upright + angle)
    assert crest == pytest.approx(tension * grown + factor * bracket, rel=1e-12)
    assert sag == pytest.approx(tension * grown - factor * bracket, rel=1e-12)


def test_the_exact_level_bend_is_never_below_the_plain_one() -> None:
    for tension, angle in itertools.product((0.0, 1.0, 100.0, 10_000.0), (0.1, 0.8, 1.6, 3.1)):
        plain = capstan(tension, 0.4, angle)
        assert horizontal_bend(tension, 50.0, 0.4, 1.5, angle) >= plain
        assert horizontal_bend(tension, 0.0, 0.4, 1.5, angle) == pytest.approx(plain)


def test_a_bend_at_the_reel_is_not_free() -> None:
    assert horizontal_bend(0.0, 50.0, 0.4, 1.5, math.pi / 2) == pytest.approx(75.0 * math.sinh(0.2 * math.pi))


def test_a_steep_descent_needs_a_brake_of_what_the_slope_pulls_beyond_friction() -> None:
    route = [Straight(100.0, math.radians(-15), 0.2), Straight(10.0, 0.0, 0.2)]
    runaway = 100.0 * 100.0 * (math.sin(math.radians(15)) - 0.2 * math.cos(math.radians(15)))
    brake = pulling.least_entry(route, 100.0, 0.0)
    assert brake == pytest.approx(runaway)
    [steep, level] = pulling.pull(route, 100.0, brake)
    assert (steep.tension_in, steep.highest) == (brake, brake)
    assert steep.tension_out == pytest.approx(0.0, abs=1e-9)
    assert level.tension_out == pytest.approx(200.0)
    assert pulling.least_entry(route, 100.0, 3_000.0) == 3_000.0, "an incoming tension above the brake is enough"


def test_a_route_reversed_twice_is_itself() -> None:
    route: list[Section] = [
        Straight(10.0, 0.1),
        VerticalBend(3.0, 0.1, -0.4),
        HorizontalBend(2.0, 1.5),
        Straight(5.0, -0.4),
    ]
    turned = pulling.reverse(route)
    assert turned == [Straight(5.0, 0.4), HorizontalBend(2.0, 1.5), VerticalBend(3.0, 0.4, -0.1), Straight(10.0, -0.1)]
    assert pulling.reverse(turned) == route


def test_bends_and_lengths_add_up() -> None:
    route: list[Section] = [Straight(10.0, 0.0), VerticalBend(3.0, 0.0, -0.5), HorizontalBend(2.0, 1.5)]
    assert pulling.bend_total(route) == pytest.approx(2.0)
    assert pulling.developed_length(route) == pytest.approx(10.0 + 1.5 + 3.0)


def test_cradled_and_triangular_meet_at_the_tightest_fit() -> None:
    tightest = 1 + 2 / math.sqrt(3)
    assert weight_correction_factor(Arrangement.TRIANGULAR, tightest) == pytest.approx(2.0)
    assert weight_correction_factor(Arrangement.CRADLED, tightest) == pytest.approx(2.0)
    for ratio in (2.3, 2.8, 3.5, 6.0):
        cradled = weight_correction_factor(Arrangement.CRADLED, ratio)
        assert cradled >= weight_correction_factor(Arrangement.TRIANGULAR, ratio) > 1.0


def test_the_worst_cable_of_each_arrangement_carries_its_share() -> None:
    assert sidewall_factor(Arrangement.SINGLE, 1.0) == 1.0
    assert sidewall_factor(Arrangement.MANY, 1.4) == 1.0
    assert sidewall_factor(Arrangement.TRIANGULAR, 1.2) == pytest.approx(0.6)
    assert sidewall_factor(Arrangement.CRADLED, 1.2) == pytest.approx(1.6 / 3)
    assert sidewall_factor(Arrangement.DIAMOND, 1.8) == pytest.approx(0.8)
    assert sidewall_factor(Arrangement.DIAMOND, 1.3) == 0.5, "a side cable carries half"


def test_clearance_is_what_the_circles_leave() -> None:
    for diameter in (0.5, 1.0, 1.8):
        single = clearance(Arrangement.SINGLE, 4.0, diameter)
        two = clearance(Arrangement.TWO, 4.0, diameter)
        triangular = clearance(Arrangement.TRIANGULAR, 4.0, diameter)
        assert single == pytest.approx(4.0 - diameter)
        assert single is not None
        assert two is not None
        assert triangular is not None
        assert single > two > triangular > 0
    assert clearance(Arrangement.TWO, 4.0, 2.0) == pytest.approx(1.0), "side by side across the middle"
    assert clearance(Arrangement.TRIANGULAR, 1 + 2 / math.sqrt(3), 1.0) == pytest.approx(
        (1 + 2 / math.sqrt(3)) / 2 - 1 / math.sqrt(3) - 0.5
    )
    assert clearance(Arrangement.CRADLED, 4.0, 1.0) == pytest.approx(4 - 1 - 1 / 3)
    assert clearance(Arrangement.DIAMOND, 4.0, 1.0) == pytest.approx(4 - 1 - 2 / 3)
    assert clearance(Arrangement.MANY, 4.0, 0.5) is None
    assert clearance(Arrangement.SINGLE, 4.0, 4.0) == 0.0


def test_more_than_four_cables_have_no_closed_form() -> None:
    with pytest.raises(ValueError, match="no closed form"):
        weight_correction_factor(Arrangement.MANY, 5.0)


def test_the_last_digit_of_the_arithmetic_is_no_brake() -> None:
    slope = math.radians(20.287044494529223)
    balance = [Straight(87.06720044802292, -slope, math.tan(slope)), Straight(1.0, 0.0, math.tan(slope))]
    assert balance[0].entry(0.0, 70.0) > 0.0, "in exact numbers friction holds just what pulls down the slope"
    assert pulling.least_entry(balance, 70.0, 0.0) == 0.0
    slippery = [section.laid(math.tan(slope) * (1 - 1e-9), 1.0) for section in balance]
    assert pulling.least_entry(slippery, 70.0, 0.0) > 0.0


def test_four_cables_of_any_diameter_leave_what_their_circles_leave() -> None:
    """Derived from the centers: one at the bottom, two on it and on the wall, the fourth on those two."""
    for diameter in (0.8, 1.2, 1.5):
        around = (4.0 - diameter) / 2
        turned = 2 * math.asin(diameter / 2 / around)
        side, height = around * math.sin(turned), -around * math.cos(turned)
        top = height + math.sqrt(diameter**2 - side**2)
        assert clearance(Arrangement.DIAMOND, 4.0, diameter) == pytest.approx(2.0 - top - diameter / 2)
    assert clearance(Arrangement.DIAMOND, 4.0, 1.2) == pytest.approx(2.8 - 2 * 1.44 / 2.8)


def test_three_cables_in_a_cradle_of_any_diameter_leave_what_their_circles_leave() -> None:
    """Derived from the centers: one at the bottom and two beside it, all on the wall."""
    for diameter in (0.8, 1.2, 1.5):
        around = (4.0 - diameter) / 2
        height = -around * math.cos(2 * math.asin(diameter / 2 / around))
        assert clearance(Arrangement.CRADLED, 4.0, diameter) == pytest.approx(2.0 - height - diameter / 2)


def test_handbooks_print_more_room_over_a_cradle_than_there_is() -> None:
    """By hand, D 4 and d 1: s is 1/3, and 1.5 + 1.5 sqrt(1 - 1/36) is 2.979, where the circles leave 2.667."""
    assert handbook_clearance(Arrangement.CRADLED, 4.0, 1.0) == pytest.approx(2.979, abs=5e-4)
    assert handbook_clearance(Arrangement.CRADLED, 4.0, 1.2) == pytest.approx(
        1.4 + 1.4 * math.sqrt(1 - (1.2 / 5.6) ** 2)
    )
    assert handbook_clearance(Arrangement.DIAMOND, 4.0, 1.2) == clearance(Arrangement.DIAMOND, 4.0, 1.2)


def test_a_cable_as_wide_as_its_conduit_has_the_friction_of_one() -> None:
    assert weight_correction_factor(Arrangement.SINGLE, 1.0) == 1.0
