"""The one tolerance: a billionth is a tie, and a hair more is not."""

from __future__ import annotations

import pytest
from ductrun.engineering.rounding import TIE, over, round_down, round_up, under


@pytest.mark.parametrize("limit", [1e-3, 1.0, 640.0, 1e6, -2.5])
def test_a_billionth_of_a_limit_is_a_tie_either_way(limit: float) -> None:
    hair = abs(limit) * TIE
    assert not over(limit, limit)
    assert not under(limit, limit)
    assert not over(limit + 0.9 * hair, limit)
    assert over(limit + 1.1 * hair, limit)
    assert not under(limit - 0.9 * hair, limit)
    assert under(limit - 1.1 * hair, limit)


def test_a_limit_of_none_at_all_has_no_tolerance() -> None:
    assert over(1e-300, 0.0)
    assert under(-1e-300, 0.0)


@pytest.mark.parametrize(("quotient", "up", "down"), [(3.0, 3, 3), (3.2, 4, 3), (0.0, 0, 0), (-1.5, -1, -2)])
def test_a_count_is_rounded_to_the_next_whole_number(quotient: float, up: int, down: int) -> None:
    assert (round_up(quotient), round_down(quotient)) == (up, down)


def test_a_whole_number_is_one_within_a_billionth_of_it_or_of_one() -> None:
    for whole, hair in ((0, TIE), (1, TIE), (4_000, 4_000 * TIE)):
        assert round_up(whole + 0.9 * hair) == round_down(whole - 0.9 * hair) == whole
        assert round_up(whole + 1.1 * hair) == whole + 1
        assert round_down(whole - 1.1 * hair) == whole - 1
