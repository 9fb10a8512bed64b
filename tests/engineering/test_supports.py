"""Straps along a run: none too far, none too many."""

from __future__ import annotations

from itertools import pairwise

import pytest
from ductrun.engineering.supports import support_positions
from hypothesis import given
from hypothesis import strategies as st


@given(
    length=st.floats(min_value=0.01, max_value=500),
    spacing=st.sampled_from([3.0, 5.0, 6.0, 7.0, 8.0, 10.0, 20.0]),
    end=st.floats(min_value=0, max_value=3),
    terminations=st.sampled_from([1, 2]),
)
def test_no_gap_is_wider_than_allowed_and_no_strap_is_wasted(
    length: float, spacing: float, end: float, terminations: int
) -> None:
    places = support_positions(length, spacing, end, terminations)
    assert all(0 <= place <= length + 1e-9 for place in places)
    assert places[0] <= max(end, length / 2) + 1e-9
    assert all(other - one <= spacing * (1 + 1e-8) for one, other in pairwise(places))
    if terminations == 2:
        assert length - places[-1] <= max(end, length / 2) + 1e-9
        if len(places) > 2:
            assert (places[-1] - places[0]) / (len(places) - 2) > spacing * (1 - 1e-8), "one strap fewer would do"
    else:
        assert length - places[-1] <= spacing * (1 + 1e-8)


@pytest.mark.parametrize(
    ("length", "spacing", "end", "terminations", "places"),
    [
        (20.0, 5.0, 3.0, 2, [3.0, 3 + 14 / 3, 3 + 28 / 3, 17.0]),
        (8.0, 5.0, 3.0, 2, [3.0, 5.0]),
        (7.0, 5.0, 3.0, 2, [3.0, 4.0]),
        (6.0, 5.0, 3.0, 2, [3.0]),
        (20.0, 5.0, 3.0, 1, [3.0, 8.0, 13.0, 18.0]),
        (3.0, 5.0, 3.0, 1, [3.0]),
        (0.5, 0.8, 0.8, 1, [0.25]),
    ],
)
def test_straps_by_hand(length: float, spacing: float, end: float, terminations: int, places: list[float]) -> None:
    """Derived: 3 from a termination, what is between shared in spans of 5 at most; on from the last strap by 5."""
    assert support_positions(length, spacing, end, terminations) == pytest.approx(places)
