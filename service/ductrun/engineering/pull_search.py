"""Where a pull ends: the largest friction, tension or length that still complies, and where pull points must be.

Every limit here grows with what is searched, so bisection finds the largest value that complies; the search for pull
points is exact over the positions it is given.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import NamedTuple

from ductrun.engineering.pulling import Friction, Section, Straight
from ductrun.engineering.pulling_limits import sidewall_pressure


class Limits(NamedTuple):
    """What one pull may use: `tension` [N], `pressure` [N/m] on the worst cable, `bend_total` [rad]."""

    tension: float
    pressure: float
    bend_total: float


class Load(NamedTuple):
    """What every pull of a set of cables has: `weight` [N/m], `friction`, `sidewall_factor`, `incoming` [N]."""

    weight: float
    friction: Friction
    sidewall_factor: float
    incoming: float


class Use(NamedTuple):
    """What a pull uses: final and highest tension [N], pressure [N/m], bend_total [rad], share of its limits."""

    tension: float
    highest: float
    pressure: float
    bend_total: float
    share: float


class Span(NamedTuple):
    """One pull between two positions (indices between elements), from either end, and what it uses."""

    start: int
    end: int
    backward: bool
    use: Use


def largest_complying(complies: Callable[[float], bool], low: float, high: float) -> float | None:
    """Give the largest value between two bounds that complies, to a part in 1e12; None if not even the lower one does.

    Valid where what complies at a value complies at every smaller one.
    """
    if not complies(low):
        return None
    if complies(high):
        return high
    while high - low > 1e-12 * high:
        middle = (low + high) / 2.0
        if complies(middle):
            low = middle
        else:
            high = middle
    return low


def use_of(sections: Sequence[Section], load: Load, limits: Limits) -> Use:
    """Give what a pull through sections uses of its limits; a tension beyond numbers uses infinitely much."""
    use = start_of(load)
    try:
        for section in sections:
            use = after(use, section, load, limits)
    except OverflowError:
        return Use(math.inf, math.inf, math.inf, use.bend_total, math.inf)
    return use


def start_of(load: Load) -> Use:
    """Give the use before the first section."""
    return Use(load.incoming, load.incoming, 0.0, 0.0, 0.0)


def after(use: Use, section: Section, load: Load, limits: Limits) -> Use:
    """Give the use after one more section."""
    tension = section.carry(use.tension, load.weight, load.friction)
    tension = max(tension, 0.0)
    highest = tension if tension > use.highest else use.highest
    pressure, bend_total = use.pressure, use.bend_total
    if not isinstance(section, Straight):
        pressure = max(pressure, sidewall_pressure(tension, section.radius, load.sidewall_factor))
        bend_total += section.angle
    share = max(highest / limits.tension, pressure / limits.pressure)
    return Use(tension, highest, pressure, bend_total, share)


def longest_last_straight(tension: float, weight: float, friction: float, grade: float, allowed: float) -> float | None:
    """Give the length [m] of a straight at which the tension reaches what is allowed; None where it never does.

    (T_allowed - T1) / (w (K cos phi + sin phi)). Parameters: tension T1 [N] entering it, weight w [N/m], friction K,
    grade phi [rad], allowed [N]. Source: IEWC, technical guide, with the tension that enters.
    """
    rate = weight * (friction * math.cos(grade) + math.sin(grade))
    if rate <= 0.0:
        return None
    return max(0.0, (allowed - tension) / rate)


def spans(
    elements: Sequence[Section], reversed_elements: Sequence[Section], stops: Sequence[int], load: Load, limits: Limits
) -> dict[tuple[int, int], Span]:
    """Give every pull between two stops that keeps its limits, from the better end.

    From each stop the tension is carried on, once in each direction, until a limit is broken: what a pull uses never
    falls on the way, so no longer one can comply. Cost: one step a stop and element reached, the square of their number
    at most. `reversed_elements` are the elements turned round, in the order of the elements.
    """
    found: dict[tuple[int, int], Span] = {}
    at = set(stops)
    for stop in stops:
        for backward in (False, True):
            use, here = start_of(load), stop
            while here > 0 if backward else here < len(elements):
                section = reversed_elements[here - 1] if backward else elements[here]
                here += -1 if backward else 1
                try:
                    use = after(use, section, load, limits)
                except OverflowError:
                    break
                if use.share > 1.0 + 1e-9 or use.bend_total > limits.bend_total * (1.0 + 1e-9):
                    break
                if here in at:
                    key = (here, stop) if backward else (stop, here)
                    known = found.get(key)
                    if known is None or use.share < known.use.share * (1.0 - 1e-9):
                        found[key] = Span(key[0], key[1], backward, use)
    return found


def fewest_pulls(found: dict[tuple[int, int], Span], stops: Sequence[int]) -> list[Span] | None:
    """Give the fewest pulls that cover all stops, and with that number the ones whose worst share is lowest.

    Exact: dynamic programming over the stops in order, on the pair (number of pulls, worst share). The fewest pulls to
    a stop end in one from a stop reached by the fewest, so keeping the best pair of each stop loses nothing. None if no
    chain of complying pulls reaches the last stop.
    """
    by_end: dict[int, list[Span]] = {}
    for span in found.values():
        by_end.setdefault(span.end, []).append(span)
    best: dict[int, tuple[int, float, Span | None]] = {stops[0]: (0, 0.0, None)}
    for stop in stops[1:]:
        for span in by_end.get(stop, ()):
            before = best.get(span.start)
            if before is None:
                continue
            pair = (before[0] + 1, max(before[1], span.use.share))
            if stop not in best or pair < best[stop][:2]:
                best[stop] = (*pair, span)
    if stops[-1] not in best:
        return None
    chain: list[Span] = []
    step = best[stops[-1]][2]
    while step is not None:
        chain.append(step)
        step = best[step.start][2]
    chain.reverse()
    return chain
