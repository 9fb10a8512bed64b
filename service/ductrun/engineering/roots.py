"""Where a falling function crosses zero, in few bounded steps."""

from __future__ import annotations

from collections.abc import Callable

MOST_STEPS = 60


def falling_root(function: Callable[[float], float], low: float, high: float, within: float) -> float | None:
    """Give where a function that falls crosses zero [any], from its upper side: None where it is below zero throughout.

    `high` where it is above zero throughout. Illinois steps of false position, which need some eight calls; the end
    that is kept has the function at zero or above, so that what is told still holds.
    Parameters: function [any] that falls, low [any], high [any] of what it takes, within [any] of which it is enough.
    Source: derived.

    >>> round(falling_root(lambda x: 2.0 - x * x, 0.0, 2.0, 1e-12), 9)
    1.414213562
    """
    above, below = function(low), function(high)
    if above < 0.0:
        return None
    if below >= 0.0:
        return high
    side = 0
    for _ in range(MOST_STEPS):
        if high - low <= within:
            break
        middle = (low * below - high * above) / (below - above)
        if not low < middle < high:
            middle = (low + high) / 2.0
        value = function(middle)
        if value >= 0.0:
            low, above = middle, value
            if side > 0:
                below /= 2.0
            side = 1
        else:
            high, below = middle, value
            if side < 0:
                above /= 2.0
            side = -1
        if abs(value) < 1e-12 and value >= 0.0:
            break
    return low
