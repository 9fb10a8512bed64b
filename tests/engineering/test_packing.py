"""Circles packed in a circle: none over another, all within, and found where they are known to pass."""

from __future__ import annotations

import math
from itertools import combinations

import pytest
from ductrun.engineering.packing import MOST_PACKED, Circle, pack
from hypothesis import given, settings
from hypothesis import strategies as st

CLOSE = 1e-6  # of the bore


def assert_possible(laid: list[Circle], diameters: list[float], bore: float) -> None:
    assert [circle.radius * 2 for circle in laid] == pytest.approx(diameters)
    for circle in laid:
        assert math.hypot(circle.x, circle.y) + circle.radius <= bore / 2 * (1 + CLOSE)
    for one, other in combinations(laid, 2):
        apart = math.hypot(one.x - other.x, one.y - other.y)
        assert apart >= (one.radius + other.radius) - CLOSE * bore


@settings(max_examples=200, deadline=None)
@given(shares=st.lists(st.floats(0.01, 1.0), min_size=1, max_size=40), bore=st.floats(0.005, 0.3))
def test_no_circle_lies_over_another_or_beyond_the_bore(shares: list[float], bore: float) -> None:
    diameters = [share * bore for share in shares]
    laid = pack(diameters, bore)
    if laid is not None:
        assert_possible(laid, diameters, bore)
    else:
        assert len(shares) > 1


@settings(max_examples=200, deadline=None)
@given(
    kinds=st.lists(st.tuples(st.floats(0.02, 0.55), st.integers(1, 30)), min_size=1, max_size=6),
    bore=st.floats(0.01, 0.2),
)
def test_sets_of_few_sizes_filled_to_what_the_code_allows_are_laid(kinds: list[tuple[float, int]], bore: float) -> None:
    diameters = [share * bore for share, number in kinds for _ in range(number)][:MOST_PACKED]
    filled = sum(diameter**2 for diameter in diameters) / bore**2
    laid = pack(diameters, bore)
    if laid is not None:
        assert_possible(laid, diameters, bore)
    elif len(diameters) > 2:
        assert filled > 0.4  # of which three or more may fill


# least bore over diameter of so many alike circles, known packings, from memory
@pytest.mark.parametrize(
    ("number", "ratio"),
    [(1, 1.0), (2, 2.0), (3, 1 + 2 / math.sqrt(3)), (4, 1 + math.sqrt(2)), (5, 2.7013), (6, 3.0), (7, 3.0)],
)
def test_as_many_as_are_known_to_pass_are_laid_and_none_in_less(number: int, ratio: float) -> None:
    laid = pack([1.0] * number, ratio * 1.0001)
    assert laid is not None
    assert_possible(laid, [1.0] * number, ratio * 1.0001)
    assert pack([1.0] * number, ratio * 0.999) is None


def test_a_hundred_different_circles_are_laid() -> None:
    diameters = [0.5 + index / 200 for index in range(100)]
    laid = pack(diameters, 12.5)  # filled to 38 percent
    assert laid is not None
    assert_possible(laid, diameters, 12.5)


def test_more_than_can_be_told_apart_are_not_laid_and_none_are_nothing() -> None:
    assert pack([0.01] * (MOST_PACKED + 1), 10.0) is None
    assert pack([], 1.0) == []


def test_they_lie_low_and_in_the_middle() -> None:
    laid = pack([1.0, 1.0, 0.3], 4.0)
    assert laid is not None
    assert sum(one.x * one.radius**2 for one in laid) == pytest.approx(0.0, abs=1e-9)
    assert sum(one.y * one.radius**2 for one in laid) < 0.0
    assert pack([1.0], 4.0) == [Circle(0.0, -1.5, 0.5)]
