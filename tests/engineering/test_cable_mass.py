"""Mass of wire by hand."""

from __future__ import annotations

import pytest
from ductrun.engineering.cable_mass import conductor_mass, covering_mass


def test_a_square_centimetre_of_copper_weighs_907_grams_a_metre() -> None:
    assert conductor_mass(1e-4, 8890.0, 1.02) == pytest.approx(0.90678)


def test_a_covering_weighs_what_lies_between_its_circles() -> None:
    assert covering_mass(3e-4, 1e-4, 1500.0) == pytest.approx(0.3)
