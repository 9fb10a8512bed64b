"""What is over a limit, and how a figure is rounded to what one can buy: the one tolerance of the house.

Inputs in tenths of a foot are not exact in binary. Two figures that differ by a billionth are the same, so that a tie
with a limit keeps it and a quotient that is whole is not rounded up.
"""

from __future__ import annotations

import math
from typing import Final

TIE: Final = 1e-9


def over(value: float, limit: float) -> bool:
    """Say whether a value is over a limit by more than the tolerance, a billionth of the limit.

    Parameters: value [any], limit [any], both in one unit.
    Source: derived.
    """
    return value > limit and value > limit + TIE * abs(limit)


def under(value: float, limit: float) -> bool:
    """Say whether a value is under a limit by more than the tolerance, a billionth of the limit.

    Parameters: value [any], limit [any], both in one unit.
    Source: derived.
    """
    return value < limit and value < limit - TIE * abs(limit)


def round_up(quotient: float) -> int:
    """Round up to a whole number (count), unless it is one but for the tolerance, a billionth of it or of one.

    Parameters: quotient (ratio).
    Source: derived.
    """
    return math.ceil(quotient - TIE * max(1.0, abs(quotient)))


def round_down(quotient: float) -> int:
    """Round down to a whole number (count), unless it is one but for the tolerance, a billionth of it or of one.

    Parameters: quotient (ratio).
    Source: derived.
    """
    return math.floor(quotient + TIE * max(1.0, abs(quotient)))
