"""Room in boxes: distances against what a tape would show, racks against the geometry of their bends."""

from __future__ import annotations

import math
from itertools import product

import pytest
from ductrun.engineering import box_size
from ductrun.engineering.box_size import Vector
from hypothesis import given, settings
from hypothesis import strategies as st

PLACES = st.floats(min_value=3.0, max_value=60.0)
RADII = st.floats(min_value=0.2, max_value=2.9)


def rim(center: Vector, face: int, radius: float, parts: int = 48) -> list[Vector]:
    """Give points on the edge of an opening in a wall that stands across an axis."""
    along, across = (axis for axis in range(3) if axis != face)
    points = []
    for part in range(parts):
        at = list(center)
        at[along] += radius * math.cos(2 * math.pi * part / parts)
        at[across] += radius * math.sin(2 * math.pi * part / parts)
        points.append(Vector(*at))
    return points


@given(a=PLACES, b=PLACES, c=PLACES, d=PLACES, one=RADII, other=RADII)
def test_a_gap_is_never_more_than_a_tape_shows(
    a: float, b: float, c: float, d: float, one: float, other: float
) -> None:
    left, bottom, right = Vector(0.0, a, b), Vector(c, 0.0, d), Vector(70.0, c, d)
    for first, second, faces in ((left, bottom, (0, 1)), (left, right, (0, 0)), (left, Vector(0.0, c, d), (0, 0))):
        told = box_size.gap_between(first, second, faces, (one, other))
        shown = min(math.dist(p, q) for p, q in product(rim(first, faces[0], one), rim(second, faces[1], other)))
        assert told <= shown + 1e-9


def taped(away: tuple[float, float], along: float, radii: tuple[float, float]) -> float:
    """Move both ends of a tape along the edges around a corner, in ever smaller steps, while it gets shorter."""

    def length(ends: tuple[float, float]) -> float:
        off = [
            place - math.sqrt(max(0.0, radius * radius - end * end))
            for place, radius, end in zip(away, radii, ends, strict=True)
        ]
        return math.hypot(*off, along - sum(ends))

    ends, step = (0.0, 0.0), max(radii)
    while step > 1e-9:
        near = [(ends[0] + i * step, ends[1] + j * step) for i, j in product((-1, 0, 1), repeat=2)]
        within = [(max(-radii[0], min(radii[0], a)), max(-radii[1], min(radii[1], b))) for a, b in near]
        best = min(within, key=length)
        if length(best) < length(ends):
            ends = best
        else:
            step /= 2
    return length(ends)


@settings(max_examples=50)
@given(y=PLACES, x=PLACES, along=st.floats(min_value=0.0, max_value=12.0), one=RADII, other=RADII)
def test_a_gap_around_a_corner_is_the_shortest_tape(y: float, x: float, along: float, one: float, other: float) -> None:
    told = box_size.gap_between(Vector(0.0, y, 20.0), Vector(x, 0.0, 20.0 + along), (0, 1), (one, other))
    assert told == pytest.approx(taped((y, x), along, (one, other)), rel=1e-7)


def test_a_gap_between_facing_walls_is_exact() -> None:
    """Openings of 4 and 3 in in walls 24 in apart, their centers 13.5 in aside: 10 in and 24 in make 26: derived."""
    centers = Vector(0.0, 5.0, 3.0), Vector(24.0, 18.5, 3.0)
    assert box_size.gap_between(*centers, (0, 0), (2.0, 1.5)) == pytest.approx(26)
    assert box_size.gap_between(*centers, (0, 0), (8.0, 6.0)) == 24, "straight across, where one lies before the other"


def test_openings_that_touch_in_one_wall_are_no_way_apart() -> None:
    """Also where their diameters in metres leave a rest: 3.5 and 1.66 in."""
    for diameter in (3.5, 1.66, 4.5, 1.315):
        radius = diameter * 0.0254 / 2
        centers = Vector(0.0, radius, 3.0), Vector(0.0, diameter * 0.0254 + radius, 3.0)
        assert box_size.gap_between(*centers, (0, 0), (radius, radius)) == 0.0


@given(a=PLACES, b=PLACES, one=RADII, other=RADII)
def test_in_one_wall_a_gap_is_what_lies_between_the_edges(a: float, b: float, one: float, other: float) -> None:
    told = box_size.gap_between(Vector(a, 0.0, 3.0), Vector(b, 0.0, 3.0), (1, 1), (one, other))
    assert told == pytest.approx(max(0.0, abs(a - b) - one - other))


def test_a_gap_around_a_corner_is_that_of_the_near_edges_where_both_lie_as_far_from_it() -> None:
    """Openings of 4.5 in at 20 in from the corner: (20 - 2.25) x sqrt 2 = 25.10 in: derived."""
    told = box_size.gap_between(Vector(0.0, 20.0, 3.0), Vector(20.0, 0.0, 3.0), (0, 1), (2.25, 2.25))
    assert told == pytest.approx(17.75 * math.sqrt(2))
    assert box_size.gap_between(Vector(1.0, 1.0, 1.0), Vector(1.0, 1.0, 1.0), (0, 1), (2.0, 2.0)) == 0.0


@given(radius=st.floats(min_value=1.0, max_value=60.0), share=st.floats(min_value=0.0, max_value=1.999))
def test_two_equal_reverse_bends_end_as_far_aside_as_asked(radius: float, share: float) -> None:
    """Each bend turns by the angle whose versine is half of the offset over the radius."""
    offset = share * radius
    angle = math.acos(1 - offset / (2 * radius))
    assert box_size.offset_length(radius, offset) == pytest.approx(2 * radius * math.sin(angle), abs=1e-6 * radius)


def test_an_offset_of_more_than_two_radii_takes_two_quarter_bends() -> None:
    assert box_size.offset_length(18.0, 36.0) == box_size.offset_length(18.0, 60.0) == 36.0


@given(sizes=st.lists(st.tuples(st.floats(0.5, 6.0), st.sampled_from([24.0, 36.0])), min_size=1, max_size=8))
def test_the_opposite_wall_is_as_far_as_the_worst_choice_of_the_largest(sizes: list[tuple[float, float]]) -> None:
    worst = 0.0
    for index, (size, multiple) in enumerate(sizes):
        others = [other for at, (other, _) in enumerate(sizes) if at != index]
        worst = max(worst, multiple * size + sum(others))
    assert box_size.opposite_distance(sizes) == pytest.approx(worst)
    assert box_size.opposite_distance([*sizes, (0.75, 24.0)]) > box_size.opposite_distance(sizes)
