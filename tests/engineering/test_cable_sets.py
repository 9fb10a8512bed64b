"""Sets of cables, equal and mixed: whether they pass, how they may lie, and the worst that follows."""

from __future__ import annotations

import math

import pytest
from ductrun.engineering.cable_sets import (
    acts_as_three,
    around_three,
    jam_ratio,
    least_ratio,
    lie_of,
    passes,
    possible_arrangements,
)
from ductrun.engineering.cables import Arrangement, clearance, sidewall_factor, weight_correction_factor

CRADLED_FROM = 2.5
MANY = 1.4


def test_the_least_ratio_is_that_of_packed_circles() -> None:
    assert least_ratio(2) == 2.0
    assert least_ratio(3) == pytest.approx(1 + 2 / math.sqrt(3), abs=1e-4)
    assert least_ratio(4) == pytest.approx(1 + math.sqrt(2), abs=1e-4)
    assert least_ratio(7) == 3.0
    assert least_ratio(19) == pytest.approx(1 + math.sqrt(2) + math.sqrt(6), abs=1e-3)
    assert [least_ratio(count) for count in range(1, 100)] == sorted(least_ratio(count) for count in range(1, 100))


def test_a_hundred_cables_do_not_fill_a_conduit_like_water() -> None:
    assert not passes([0.1] * 100, 1.0), "their areas fill the bore, but circles leave gaps"
    assert not passes([0.095] * 100, 1.0)
    assert passes([0.09] * 100, 1.0)


def test_the_circle_around_three_is_that_of_the_larger_two_until_the_third_sticks_out() -> None:
    assert around_three(1.0, 1.0, 1.0) == pytest.approx(1 + 2 / math.sqrt(3))
    assert around_three(1.0, 1.0, 0.5) == 2.0
    assert around_three(1.0, 1.0, 2 / 3) == pytest.approx(2.0), "two thirds just finds room beside two"
    assert around_three(1.0, 1.0, 0.8) > 2.0


def test_a_mixed_set_passes_only_if_its_larger_ones_do() -> None:
    assert passes([2.0, 1.9], 4.0)
    assert not passes([2.2, 1.9], 4.0)
    assert passes([1.8, 1.8, 1.0], 4.0)
    assert not passes([1.8, 1.8, 1.8, 0.3], 3.8), "three of them need 2.155 diameters"


def test_three_cables_lie_triangular_below_two_and_a_half_and_above_each_check_takes_the_worse() -> None:
    tight = lie_of([1.0] * 3, 2.4, None, None, MANY, CRADLED_FROM)
    assert tight.arrangement is Arrangement.TRIANGULAR
    for ratio in (2.6, 3.2, 4.5):
        lie = lie_of([1.0] * 3, ratio, None, None, MANY, CRADLED_FROM)
        both = [(way, weight_correction_factor(way, ratio)) for way in (Arrangement.TRIANGULAR, Arrangement.CRADLED)]
        assert lie.weight_correction == max(factor for _, factor in both)
        assert lie.sidewall_factor == max(sidewall_factor(way, factor) for way, factor in both)
        assert lie.clearance == min(clearance(way, ratio, 1.0) or 0.0 for way, _ in both)
    triangular = sidewall_factor(Arrangement.TRIANGULAR, weight_correction_factor(Arrangement.TRIANGULAR, 4.5))
    assert lie.sidewall_factor == triangular, "above 3.5 the triangle presses more"
    assert lie.arrangement is Arrangement.CRADLED


def test_a_given_factor_never_lowers_the_share_on_the_worst_cable() -> None:
    geometric = lie_of([1.0] * 3, 2.6, Arrangement.CRADLED, None, MANY, CRADLED_FROM)
    low = lie_of([1.0] * 3, 2.6, Arrangement.CRADLED, 1.0, MANY, CRADLED_FROM)
    high = lie_of([1.0] * 3, 2.6, Arrangement.CRADLED, 2.0, MANY, CRADLED_FROM)
    assert low.weight_correction == 1.0
    assert low.sidewall_factor == geometric.sidewall_factor
    assert high.sidewall_factor > geometric.sidewall_factor


def test_a_small_ground_lies_in_a_gap_and_the_larger_three_govern() -> None:
    ground = lie_of([1.0, 1.0, 1.0, 0.4], 3.0, None, None, MANY, CRADLED_FROM)
    three = lie_of([1.0] * 3, 3.0, None, None, MANY, CRADLED_FROM)
    assert acts_as_three([1.0, 1.0, 1.0, 0.4])
    assert ground.weight_correction == three.weight_correction
    assert ground.sidewall_factor == three.sidewall_factor


def test_a_ground_as_large_as_the_phases_makes_a_diamond() -> None:
    nearly, four = (
        lie_of([1.0] * 3 + [0.9999], 3.2, None, None, MANY, CRADLED_FROM),
        lie_of([1.0] * 4, 3.2, None, None, MANY, CRADLED_FROM),
    )
    assert nearly.weight_correction == pytest.approx(four.weight_correction, rel=1e-3)
    assert four.arrangement is Arrangement.DIAMOND


def test_cables_of_different_sizes_may_leave_the_tension_to_the_largest() -> None:
    assert lie_of([1.5, 0.5], 4.0, None, None, MANY, CRADLED_FROM).sidewall_factor == 1.0
    assert lie_of([1.5, 1.0, 0.5], 4.0, None, None, MANY, CRADLED_FROM).sidewall_factor == 1.0
    assert lie_of([1.0] * 5, 4.0, None, None, MANY, CRADLED_FROM).sidewall_factor == 1.0


def test_more_than_four_take_the_flat_factor_or_that_of_their_larger_three() -> None:
    assert lie_of([1.0] * 5, 4.0, None, None, MANY, CRADLED_FROM).weight_correction == MANY
    mixed = lie_of([1.0] * 3 + [0.2, 0.2], 2.6, None, None, MANY, CRADLED_FROM)
    assert mixed.weight_correction == weight_correction_factor(Arrangement.CRADLED, 2.6) > MANY


def test_an_arrangement_suits_its_number_of_cables() -> None:
    assert possible_arrangements([1.0]) == (Arrangement.SINGLE,)
    assert Arrangement.TRIPLEXED in possible_arrangements([1.0] * 3)
    assert possible_arrangements([1.0] * 4) == (Arrangement.DIAMOND,)
    assert Arrangement.CRADLED in possible_arrangements([1.0, 1.0, 1.0, 0.4])
    assert possible_arrangements([1.0] * 9) == (Arrangement.MANY,)


def test_the_jam_ratio_is_the_conduit_over_the_three_cables_that_govern() -> None:
    assert jam_ratio([1.342] * 3, 4.026) == pytest.approx(3.0)
    assert jam_ratio([1.4, 1.3, 1.2, 0.4, 0.4], 3.9) == pytest.approx(3.0), "a ground lies in the gap"
    assert jam_ratio([1.342] * 4, 4.026) is None
    assert jam_ratio([1.342] * 2, 4.026) is None
