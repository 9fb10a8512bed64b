"""Figures in a sentence read as they are measured."""

from __future__ import annotations

import pytest
from ductrun.kit.wording import text_of
from ductrun.units import AnyQuantity


@pytest.mark.parametrize(
    ("feet", "words"),
    [
        (0.0, "0 ft"),
        (0.25, "3 in"),
        (3.0, "3 ft"),
        (10.0 / 12.0, "10 in"),
        (5.5, "5 ft 6 in"),
        (5.53125, "5 ft 6-3/8 in"),
        (5.0 + 1 / 96, "5 ft 1/8 in"),
        (11.999, "12 ft"),
        (513.33, "513 ft 4 in"),
        (19.999, "20 ft"),
        (12_345.5, "12,345 ft 6 in"),
        (-2.5, "-2 ft 6 in"),
    ],
)
def test_feet_read_as_on_a_tape(feet: float, words: str) -> None:
    assert text_of(AnyQuantity(feet, "ft")) == words


def test_other_figures_have_five_digits_and_no_fraction_from_a_hundred_thousand_on() -> None:
    assert text_of(AnyQuantity(1234.5678, "lbf")) == "1,234.6 lbf"
    assert text_of(AnyQuantity(1234567.8, "N")) == "1,234,568 N"
    assert text_of(AnyQuantity(12.345678, "m")) == "12.346 m"
