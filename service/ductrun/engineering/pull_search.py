"""What a pull uses of its limits, where it ends, and where pull points must be.

A pull is judged twice: with the friction it is pulled with, and with the low friction at which it runs away most, each
from the least tension at its entry that leaves no cable slack (`pulling.least_entry`). Everything that is searched here
grows with what a pull uses, so bisection finds the largest value that complies; the search for pull points is exact
over the positions it is given.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import NamedTuple

from ductrun.engineering.pulling import Section, least_entry
from ductrun.engineering.rounding import over, under


class Limits(NamedTuple):
    """What one pull may use: `tension` [N], `pressure` [N/m] on the worst cable, `bend_total` [rad], and `brake` [N]
    of the reel, None where it is not known.
    """

    tension: float
    pressure: float
    bend_total: float
    brake: float | None = None


class Load(NamedTuple):
    """What every pull of a set of cables has: `weight` w [N/m], `incoming` tension [N] without a brake, and what of it
    is `held` [N] by the reel: nothing where it is the friction of cable that lies before the conduit.
    """

    weight: float
    incoming: float
    held: float

    @property
    def unfed(self) -> Load:
        """The load where friction is low: cable that comes freely off the reel enters with what the reel holds."""
        return self._replace(incoming=self.held)


class Case(NamedTuple):
    """What a pull uses at one friction: tension `entering` it and `final` [N], `highest` tension [N] anywhere and
    `pressure` [N/m] on the worst cable.
    """

    entering: float
    final: float
    highest: float
    pressure: float


class Use(NamedTuple):
    """What a pull uses: the `pulling` case, the `braking` case where the route can run away, `bend_total` [rad], the
    larger `share` (ratio) of tension, pressure and brake, and whether its brakes were `judged`.
    """

    pulling: Case
    braking: Case | None
    bend_total: float
    share: float
    judged: bool

    @property
    def highest(self) -> float:
        """The highest tension [N] of both cases."""
        return self.pulling.highest if self.braking is None else max(self.pulling.highest, self.braking.highest)

    @property
    def pressure(self) -> float:
        """The highest sidewall pressure [N/m] of both cases."""
        return self.pulling.pressure if self.braking is None else max(self.pulling.pressure, self.braking.pressure)

    @property
    def complies(self) -> bool:
        """Say whether every limit was judged and is kept."""
        return self.judged and not over(self.share, 1.0)


class Span(NamedTuple):
    """One pull between two positions, from `start` (index) to `end` (index) between elements, from either end, and
    what it uses.
    """

    start: int
    end: int
    backward: bool
    use: Use


Sections = Sequence[Section]


def case_of(sections: Sections, load: Load) -> Case:
    """Give what a pull uses at the friction of its sections, from the least entry tension that leaves no slack.

    Parameters: sections in the order of the pull, load.
    Source: derived.
    """
    return carried(sections, load.weight, least_entry(sections, load.weight, load.incoming))


def carried(sections: Sections, weight: float, entering: float) -> Case:
    """Give what a pull uses from a given tension at its entry.

    Parameters: sections in the order of the pull, weight w [N/m], entering tension [N].
    Source: derived.
    """
    case = Case(entering, entering, entering, 0.0)
    for section in sections:
        case = after(case, section, weight)
    return case


def after(case: Case, section: Section, weight: float) -> Case:
    """Give the case after one more section.

    Parameters: case so far, section that follows, weight w [N/m].
    Source: derived.
    """
    step = section.pulled(case.final, weight)
    pressure = case.pressure if step.pressure is None else max(case.pressure, step.pressure)
    return Case(case.entering, step.tension_out, max(case.highest, step.highest), pressure)


def use_of(pulling: Sections, braking: Sections | None, load: Load, limits: Limits) -> Use:
    """Give what a pull uses of its limits; a tension beyond numbers uses infinitely much.

    Parameters: pulling sections at the friction they are pulled with, braking ones at the low friction, None where
    the route cannot run away, load, limits.
    Source: derived.
    """
    bends = sum(section.angle for section in pulling)
    try:
        cases = [case_of(pulling, load)] + ([] if braking is None else [case_of(braking, load.unfed)])
    except OverflowError:
        beyond = Case(math.inf, math.inf, math.inf, math.inf)
        return Use(beyond, None, bends, math.inf, judged=True)
    return held_against(cases[0], cases[1] if braking is not None else None, bends, load, limits)


def held_against(pulling: Case, braking: Case | None, bends: float, load: Load, limits: Limits) -> Use:
    """Hold both cases against the limits: tension, sidewall pressure, and the brake where one is needed.

    The share used is the largest of T / T_limit, p / p_limit and brake / brake_limit.
    Parameters: pulling case, braking case, None where there is none, bends in all [rad], load, limits.
    Source: derived.
    """
    share = max(pulling.highest / limits.tension, pulling.pressure / limits.pressure)
    entering = pulling.entering
    braked = over(entering, load.incoming)
    if braking is not None:
        share = max(share, braking.highest / limits.tension, braking.pressure / limits.pressure)
        braked = braked or over(braking.entering, load.held)
        entering = max(entering if over(entering, load.incoming) else load.held, braking.entering)
    if limits.brake is not None:
        held = entering if braked else load.held
        return Use(pulling, braking, bends, max(share, held / limits.brake), judged=True)
    return Use(pulling, braking, bends, share, judged=not braked)


def largest_complying(complies: Callable[[float], bool], low: float, high: float) -> float | None:
    """Give the largest value [any] between two bounds that complies, to 1e-12 of the upper one; None if the lower does
    not.

    By bisection. Valid where what complies at a value complies at every smaller one.
    Parameters: complies, which says whether a value does, low bound [any], high bound [any].
    Source: derived.
    """
    if not complies(low):
        return None
    if complies(high):
        return high
    near = 1e-12 * high
    while high - low > near:
        middle = (low + high) / 2.0
        if complies(middle):
            low = middle
        else:
            high = middle
    return low


class _Way:
    """One friction in one direction: elements in the order of the pull, and what is known of every low point.

    Starts are asked for from the last to the first.
    """

    def __init__(self, elements: Sections, weight: float) -> None:
        self.elements = elements
        self.weight = weight
        self.needs = [element.entry(0.0, weight) for element in elements]
        self._held: dict[int, tuple[int, Case]] = {}

    def held(self, start: int, index: int) -> Case:
        """Give the case of a pull from `start` that the low point in an element holds back.

        Between a start and the low point the tension is that which ends there at zero, whatever lies elsewhere: one
        walk back from the low point, gone on with from start to earlier start, serves them all.
        """
        need = self.needs[index]
        at, case = self._held.get(index) or (index, Case(need, need, need, 0.0))
        while at > start:
            at -= 1
            element = self.elements[at]
            step = element.pulled(element.entry(case.entering, self.weight), self.weight)
            pressure = case.pressure if step.pressure is None else max(case.pressure, step.pressure)
            case = Case(step.tension_in, need, max(case.highest, step.highest), pressure)
        self._held[index] = (at, case)
        return case

    def lengthened(self, case: Case, start: int, index: int) -> Case:
        """Give the case of the pull from `start` with one more element: where that needs a brake, a new one."""
        if self.needs[index] > case.final:
            held = self.held(start, index)
            if held.entering > case.entering:  # but for the last digit it is
                case = held
        return after(case, self.elements[index], self.weight)


def spans(
    pulling: Sections, braking: Sections | None, stops: Sequence[int], load: Load, limits: Limits
) -> dict[tuple[int, int], Span]:
    """Give every pull between two stops that keeps its limits as far as they are known, from the better end.

    Better is a pull whose brakes are judged, then one that uses less. From each stop the pull is lengthened, once
    in each direction, until a limit is broken: what a pull uses never falls on the way, so no longer one can
    comply. Cost: a few steps a stop and element reached, the square of their number at most. Each is found by its
    first and last stop (index).
    Parameters: pulling elements in order, braking ones at the low friction, None where the route cannot run away,
    stops between elements (index), load, limits.
    Source: derived.
    """
    found: dict[tuple[int, int], Span] = {}
    last = len(pulling)
    for backward in (False, True):
        ways = [
            _Way([section.reversed() for section in reversed(case)] if backward else case, load.weight)
            for case in (pulling, braking)
            if case is not None
        ]
        mine = sorted(last - stop for stop in stops) if backward else list(stops)
        for start, end, use in _reached(ways, mine, load, limits):
            key = (last - end, last - start) if backward else (start, end)
            known = found.get(key)
            if known is None or _better(use, known.use):
                found[key] = Span(*key, backward, use)
    return found


def _better(one: Use, other: Use) -> bool:
    if one.judged != other.judged:
        return one.judged
    return under(one.share, other.share)


def _reached(ways: Sequence[_Way], stops: Sequence[int], load: Load, limits: Limits) -> list[tuple[int, int, Use]]:
    """Give every pull from a stop to a later one that keeps its limits, as start, end and use."""
    found = []
    at = set(stops)
    elements = ways[0].elements
    for start in reversed(stops):
        cases = [Case(tension, tension, tension, 0.0) for tension in (load.incoming, load.held)[: len(ways)]]
        bends = 0.0
        for index in range(start, len(elements)):
            bends += elements[index].angle
            try:
                cases = [way.lengthened(case, start, index) for way, case in zip(ways, cases, strict=True)]
            except OverflowError:
                break
            use = held_against(cases[0], cases[1] if len(cases) > 1 else None, bends, load, limits)
            if over(use.share, 1.0) or over(bends, limits.bend_total):
                break
            if index + 1 in at:
                found.append((start, index + 1, use))
    return found


def fewest_pulls(found: dict[tuple[int, int], Span], stops: Sequence[int]) -> list[Span] | None:
    """Give the fewest pulls that cover all stops, and with that number the ones whose worst share is lowest.

    Exact: dynamic programming over the stops in order, on the pair (number of pulls, worst share). The fewest pulls
    to a stop end in one from a stop reached by the fewest, so keeping the best pair of each stop loses nothing.
    None if no chain of complying pulls reaches the last stop.
    Parameters: found pulls by their first and last stop (index), stops in order (index).
    Source: derived.
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
