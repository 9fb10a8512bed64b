"""Pressure on forms by hand."""

from __future__ import annotations

import pytest
from ductrun.engineering.formwork import form_pressure

PSF = 47.88025898033584
PCF = 16.01846337396014


def test_a_bank_three_feet_high_presses_with_its_head() -> None:
    """Derived: 150 lb/ft3 x 3 ft are 450 psf, under the 600 psf at which formulas for walls begin."""
    assert form_pressure(150 * PCF, 3 * 0.3048) / PSF == pytest.approx(450)


def test_the_pressure_rises_with_head_and_density() -> None:
    assert form_pressure(2400, 2.0) == 2 * form_pressure(2400, 1.0) == 2 * 2400 * 9.80665
    assert form_pressure(2400, 0.0) == 0
