"""Writing figures and lists in a sentence."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from ductrun.units import AnyQuantity


def text_of(told: AnyQuantity) -> str:
    """Write a told quantity in a sentence: feet with their inches, all else to five digits at most.

    The figure itself is never rounded.
    """
    if told.unit == "ft":
        return _feet_and_inches(told.value)
    return f"{told.value:,.5g} {told.unit}" if abs(told.value) < 1e5 else f"{told.value:,.0f} {told.unit}"


def _feet_and_inches(feet: float) -> str:
    """Write a length as a tape shows it: to the inch from 20 ft on, below that to the eighth."""
    parts = 1 if abs(feet) >= 20.0 else 8
    whole, rest = divmod(round(abs(feet) * 12 * parts), 12 * parts)
    inches, eighths = divmod(rest, parts)
    fraction = str(Fraction(eighths, parts)) if eighths else ""
    words = "-".join(word for word in (str(inches) if inches else "", fraction) if word)
    told = [f"{whole:,} ft"] if whole or not words else []
    if words:
        told.append(f"{words} in")
    return ("-" if feet < 0 else "") + " ".join(told)


def in_percent(value: float) -> AnyQuantity:
    """Give a figure in percent."""
    return AnyQuantity(value, "percent")


def listing(items: Sequence[str]) -> str:
    """Write a list in a sentence."""
    return ", ".join(items)
