"""Writing figures and lists in a sentence."""

from __future__ import annotations

import math
from collections.abc import Sequence
from fractions import Fraction

from ductrun.units import UNIT_CODES, AnyQuantity

_EIGHTHS = ["", *[str(Fraction(eighths, 8)) for eighths in range(1, 8)]]
_MOST_DIGITS = 17  # of a double: with as many, two that differ are written apart


_SAID = {"gal_us": "US gal", "qt_us": "US qt"}


def text_of(told: AnyQuantity) -> str:
    """Write a told quantity in a sentence: feet with their inches, all else to five digits at most, what is small to
    three or two.

    The figure itself is never rounded.
    """
    if told.unit == "ft":
        return _feet_and_inches(told.value)
    size, unit = abs(told.value), _SAID.get(told.unit, told.unit)
    if size >= 1e5:
        return f"{told.value:,.0f} {unit}"
    digits = 5 if size >= 0.1 else 3 if size >= 0.001 else 2  # of 0.085074 in the last two are nothing one measures
    return f"{told.value:,.{digits}g} {unit}"


def depth_text(told: AnyQuantity) -> str:
    """Write a depth as one says it: in feet and inches from a foot on."""
    if told.unit == "in" and abs(told.value) >= 12:
        return _feet_and_inches(told.value / 12)
    return text_of(told)


def apart(figure: AnyQuantity, limit: AnyQuantity) -> tuple[str, str]:
    """Write a figure and the limit it is held against; where they would read alike, to the digit that parts them.

    Figures that are the same read the same.
    """
    same = figure if figure.unit == limit.unit else _in_unit_of(figure, limit)
    if text_of(same) != text_of(limit) or same.value == limit.value:
        return text_of(figure), text_of(limit)
    for digits in range(6, _MOST_DIGITS + 1):
        one, other = (f"{value:,.{digits}g}" for value in (same.value, limit.value))
        if one != other:
            break
    return f"{one} {limit.unit}", f"{other} {limit.unit}"


def _in_unit_of(figure: AnyQuantity, limit: AnyQuantity) -> AnyQuantity:
    """Give a told figure in the unit of another of its dimension."""
    for codes in UNIT_CODES.values():
        units = {code.text: code for code in codes}
        if figure.unit in units and limit.unit in units:
            return AnyQuantity(units[limit.unit].from_si(units[figure.unit].to_si(figure.value)), limit.unit)
    return figure


def enough_text(least: AnyQuantity) -> str:
    """Write a least figure to four digits, rounded up: what one reads is enough."""
    if not least.value > 0:
        return text_of(least)
    step = 10.0 ** (math.floor(math.log10(least.value)) - 3)
    rounded = math.ceil(least.value / step - 1e-6) * step
    return f"{rounded:,.4g} {least.unit}" if rounded < 1e4 else f"{rounded:,.0f} {least.unit}"


def without_noise(value: float) -> float:
    """Give a figure without what a conversion leaves in its last digits: 17 for 16.999999999999996."""
    return float(f"{value:.12g}")


def _feet_and_inches(feet: float) -> str:
    """Write a length as a tape shows it: to the inch from 20 ft on, below that to the eighth."""
    parts = 1 if abs(feet) >= 20.0 else 8
    whole, rest = divmod(round(abs(feet) * 12 * parts), 12 * parts)
    sign = "-" if feet < 0 else ""
    if not rest:
        return f"{sign}{whole:,} ft"
    inches, eighths = divmod(rest, parts)
    words = f"{inches}-{_EIGHTHS[eighths]}" if inches and eighths else _EIGHTHS[eighths] or str(inches)
    return f"{sign}{whole:,} ft {words} in" if whole else f"{sign}{words} in"


def in_percent(value: float) -> AnyQuantity:
    """Give a figure in percent."""
    return AnyQuantity(value, "percent")


def listing(items: Sequence[str]) -> str:
    """Write a list in a sentence."""
    return ", ".join(items)
