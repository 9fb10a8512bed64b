"""Straps along a run: none too far, none too many."""

from __future__ import annotations

from itertools import pairwise

import pytest
from ductrun.engineering import expansion
from ductrun.engineering.supports import hanging_supports, sliding_positions, support_positions
from hypothesis import assume, given
from hypothesis import strategies as st

CLEARANCE = 0.5


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


@given(
    length=st.floats(min_value=1, max_value=500),
    count=st.integers(min_value=1, max_value=12),
    travel=st.sampled_from([2 / 12, 4 / 12, 6 / 12, 8 / 12]),
    engagement=st.floats(min_value=0, max_value=1),
    spacing=st.sampled_from([3.0, 5.0, 6.0, 7.0, 8.0, 10.0, 20.0]),
    end=st.floats(min_value=0, max_value=3),
)
def test_pistons_and_straps_never_collide(
    length: float, count: int, travel: float, engagement: float, spacing: float, end: float
) -> None:
    clamp, reach = expansion.barrel_clamp(travel, engagement), expansion.piston_reach(travel, engagement)
    assume(reach <= length / count)
    pieces = expansion.pieces(length, count)
    sliding = [place for piece in pieces for place in sliding_positions(piece, clamp, reach, spacing, end, CLEARANCE)]
    rest = length / count - reach
    clear = reach + min(CLEARANCE, rest / 2, clamp + spacing - reach)
    fixed = [piece.at(clamp) for piece in pieces] + expansion.anchor_positions(length, count)[1::2]
    straps = sorted(sliding + fixed)
    for piece in pieces:
        low, high = sorted([piece.at(clamp), piece.at(reach)])
        assert not [place for place in straps if low + 1e-6 < place < high - 1e-6], "a strap on a piston"
        assert all(abs(place - piece.barrel) > reach - 1e-6 for place in sliding), "a guide on a barrel"
        own = [place for place in sliding if min(piece.barrel, piece.far) <= place <= max(piece.barrel, piece.far)]
        assert all(abs(place - piece.barrel) > clear - 1e-6 for place in own), "a guide too near a piston"
    assert all(other - one <= spacing * (1 + 1e-8) for one, other in pairwise(straps))
    far = max(end, clamp, reach)
    assert straps[0] <= far + 1e-9
    assert length - straps[-1] <= far + 1e-9


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


@pytest.mark.parametrize(("rise", "count"), [(50.1, 2), (100.0, 2), (100.1, 3), (224.3, 5)])
def test_cable_hangs_nowhere_longer_than_its_spacing_below_the_support_at_its_top(rise: float, count: int) -> None:
    # NFPA 70, 300.19(A): one at the top, and below it as many as keep each supported length to 50
    assert hanging_supports(rise, 50.0) == count
    assert rise / count <= 50.0
