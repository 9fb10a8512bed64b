"""Expansion fittings at their edges, and pistons within their travel."""

from __future__ import annotations

import pytest
from ductrun.engineering import expansion
from ductrun.engineering.expansion import centered_opening, piston_opening
from hypothesis import given
from hypothesis import strategies as st

TEMPERATURES = st.tuples(
    st.floats(min_value=200, max_value=300), st.floats(min_value=1, max_value=120), st.floats(min_value=0, max_value=1)
)


def test_a_change_that_meets_the_trigger_needs_a_fitting() -> None:
    assert expansion.fitting_required(0.25, 0.25)
    assert not expansion.fitting_required(0.2499, 0.25)
    assert expansion.fitting_count(0.3, 6.0, 1.0) == 1
    assert expansion.fitting_count(12.0, 6.0, 1.0) == 2
    assert expansion.fitting_count(12.1, 6.0, 1.0) == 3
    assert expansion.fitting_count(10.8, 6.0, 0.9) == 2
    assert expansion.fitting_count(10.9, 6.0, 0.9) == 3


def test_the_inverse_answers_meet_the_trigger_exactly() -> None:
    longest = expansion.longest_run(6e-5, 50.0, 0.00635)
    assert expansion.length_change(6e-5, longest, 50.0) == pytest.approx(0.00635)
    difference = expansion.largest_difference(6e-5, 30.0, 0.00635)
    assert expansion.length_change(6e-5, 30.0, difference) == pytest.approx(0.00635)


def test_the_piston_is_closed_when_hottest_and_open_when_coldest() -> None:
    assert expansion.piston_opening(0.15, 250.0, 320.0, 320.0) == 0.0
    assert expansion.piston_opening(0.15, 250.0, 320.0, 250.0) == pytest.approx(0.15)


@given(span=TEMPERATURES, travel=st.floats(min_value=0.02, max_value=0.3), share=st.floats(min_value=0.01, max_value=1))
def test_either_setting_keeps_the_piston_within_its_travel(
    span: tuple[float, float, float], travel: float, share: float
) -> None:
    """Set at any temperature of the range, the piston neither bottoms out when hottest nor pulls out when coldest."""
    lowest, wide, where = span
    highest, change = lowest + wide, travel * share
    installed = lowest + wide * where
    rate = change / wide
    for opening in (
        piston_opening(travel, lowest, highest, installed),
        centered_opening(travel, change, lowest, highest, installed),
    ):
        hottest = opening - rate * (highest - installed)
        coldest = opening + rate * (installed - lowest)
        assert -1e-9 <= hottest <= travel + 1e-9
        assert -1e-9 <= coldest <= travel + 1e-9


@given(span=TEMPERATURES, travel=st.floats(min_value=0.02, max_value=0.3))
def test_the_conventions_agree_when_the_whole_travel_is_used(span: tuple[float, float, float], travel: float) -> None:
    lowest, wide, where = span
    given_at = (lowest, lowest + wide, lowest + wide * where)
    assert centered_opening(travel, travel, *given_at) == pytest.approx(piston_opening(travel, *given_at))


@given(length=st.floats(min_value=0.1, max_value=2000), count=st.integers(min_value=1, max_value=40))
def test_pieces_are_equal_and_each_has_its_barrel_at_a_fixed_point(length: float, count: int) -> None:
    pieces = expansion.pieces(length, count)
    fixed = [0.0, *expansion.anchor_positions(length, count), length]
    for index, piece in enumerate(pieces):
        ends = sorted([piece.barrel, piece.far])
        assert ends == pytest.approx([fixed[index], fixed[index + 1]])
        assert piece.to_anchor is (0.0 < piece.far < length * (1 - 1e-12))
    for one, other in zip(pieces[0::2], pieces[1::2], strict=False):
        assert one.barrel == other.barrel, "back to back"
