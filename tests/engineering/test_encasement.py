"""Concrete to order by hand."""

from __future__ import annotations

import pytest
from ductrun.engineering import encasement


def test_an_order_rises_to_the_next_step() -> None:
    assert encasement.order_volume(9.9, 0, 0.25) == pytest.approx(10.0)
    assert encasement.order_volume(10.0, 0, 0.25) == pytest.approx(10.0)
    assert encasement.order_volume(10.0, 5, 0.5) == pytest.approx(10.5)
    assert encasement.order_volume(1_000.0, 5, 0.25) == pytest.approx(1_050.0)
    assert encasement.loads(10.0, 10.0) == 1
    assert encasement.loads(10.1, 10.0) == 2
