"""Figures in a sentence read as they are measured."""

from __future__ import annotations

import pytest
from ductrun.kit.wording import apart, depth_text, enough_text, text_of, without_noise
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


@pytest.mark.parametrize(
    ("value", "told"),
    [
        (0.123456, "0.12346 in"),
        (0.085074, "0.0851 in"),
        (-0.085074, "-0.0851 in"),
        (0.0099996, "0.01 in"),
        (0.00512349, "0.00512 in"),
        (0.00051234, "0.00051 in"),
        (0.0, "0 in"),
    ],
)
def test_a_small_figure_has_no_more_digits_than_one_measures(value: float, told: str) -> None:
    assert text_of(AnyQuantity(value, "in")) == told


@pytest.mark.parametrize(
    ("figure", "limit", "told"),
    [
        ((24, "in"), (18, "in"), ("24 in", "18 in")),
        ((15.9999999, "in"), (16, "in"), ("15.9999999 in", "16 in")),
        ((16.000000000000004, "in"), (16, "in"), ("16.000000000000004 in", "16 in")),
        ((812.00049, "lbf/ft"), (812.0001, "lbf/ft"), ("812.0005 lbf/ft", "812.0001 lbf/ft")),
        ((2.0001, "ft"), (2, "ft"), ("2.0001 ft", "2 ft")),
        ((1.99999, "ft"), (24, "in"), ("23.9999 in", "24 in")),
        ((16, "in"), (16, "in"), ("16 in", "16 in")),
        ((0.085074, "in"), (0.0851, "in"), ("0.085074 in", "0.0851 in")),
        ((0.09998, "in"), (0.1, "in"), ("0.09998 in", "0.1 in")),
        ((0.08507, "in"), (0.5, "in"), ("0.0851 in", "0.5 in")),
    ],
)
def test_a_figure_and_its_limit_are_told_to_the_digit_that_parts_them(
    figure: tuple[float, str], limit: tuple[float, str], told: tuple[str, str]
) -> None:
    assert apart(AnyQuantity(*figure), AnyQuantity(*limit)) == told


@pytest.mark.parametrize(
    ("inches", "told"), [(63.5, "5 ft 3-1/2 in"), (60, "5 ft"), (18, "1 ft 6 in"), (9.5, "9.5 in"), (11.99, "11.99 in")]
)
def test_a_depth_reads_in_feet_and_inches(inches: float, told: str) -> None:
    assert depth_text(AnyQuantity(inches, "in")) == told


def test_a_metric_depth_reads_as_it_is() -> None:
    assert depth_text(AnyQuantity(1612.9, "mm")) == "1,612.9 mm"


@pytest.mark.parametrize(
    ("least", "told"),
    [(23.4521, "23.46 in"), (23.5, "23.5 in"), (16.999999999999996, "17 in"), (0.98761, "0.9877 in"), (0, "0 in")],
)
def test_a_least_figure_is_rounded_up_so_that_what_one_reads_is_enough(least: float, told: str) -> None:
    assert enough_text(AnyQuantity(least, "in")) == told


def test_a_figure_loses_what_a_conversion_left_in_its_last_digits() -> None:
    assert (without_noise(16.999999999999996), without_noise(23.4521)) == (17, 23.4521)
