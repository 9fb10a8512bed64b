"""Distances on a slope, against points laid close beside each other and against what is plain by hand."""

from __future__ import annotations

import math
from itertools import pairwise
from random import Random

import pytest
from ductrun.engineering.alignment import Line, nearest
from ductrun.engineering.trench import plumb

Points = list[tuple[float, float]]


def close_points(line: Points, parts: int = 50) -> Points:
    return [
        (start + (end - start) * part / parts, low + (high - low) * part / parts)
        for (start, low), (end, high) in pairwise(line)
        for part in range(parts + 1)
    ]


@pytest.mark.parametrize("seed", range(12))
def test_the_shortest_way_between_two_lines_is_that_between_their_points(seed: int) -> None:
    random = Random(seed)  # noqa: S311  (no secret)
    stations = sorted({0.0, 10.0, *[random.uniform(0, 10) for _ in range(4)]})
    upper = [(at, random.uniform(0, 6)) for at in stations]
    lower = [(at, height - random.uniform(0.5, 5)) for at, height in upper]
    pairs = [math.dist(one, other) for one in close_points(lower) for other in close_points(upper)]
    found = nearest(lower, Line(tuple(stations), tuple(height for _, height in upper)))
    assert found <= min(pairs) + 1e-12
    assert found == pytest.approx(min(pairs), abs=0.05)


def test_a_peak_below_a_slope_is_nearest_square_to_the_slope() -> None:
    # the ground is 5 above the peak and rises 3 in 4: 5 x 0.8
    assert nearest([(0, -9), (5, 0), (10, -9)], Line((0, 10), (1.25, 8.75))) == pytest.approx(4)


def test_two_lines_that_step_apart_are_nearest_at_their_steps() -> None:
    # a trench line that steps up 1 at station 2, below ground that steps down 1 at station 5: 3 between them, 3 ahead
    lower, upper = [(0.0, 0.0), (2.0, 0.0), (2.0, 1.0), (9.0, 1.0)], Line((0, 5, 5.0001, 9), (5, 5, 4, 4))
    assert nearest(lower, upper) == pytest.approx(3)


def test_on_a_slope_as_steep_as_a_wall_a_height_is_no_more_than_itself_and_the_rise() -> None:
    assert plumb(2.0, 0.0, 0.0) == 2.0
    assert plumb(2.0, math.pi / 2, 10.0) == 12.0
    # 10 up in 0.1: 2 / cos would be 200
    assert plumb(2.0, math.atan(100), 10.0) == 12.0
