"""A set of cables, equal or not, in one bore: whether it passes, how it may lie, and the worst that follows.

D is the inside diameter of the conduit, d the outside diameter of a cable. In a set of different sizes the larger three
govern: the smaller ones lie in the gaps beside them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.cables import (
    Arrangement,
    clearance,
    handbook_clearance,
    sidewall_factor,
    weight_correction_factor,
)
from ductrun.engineering.rounding import TIE

# smallest D/d through which so many equal circles pass: proven or best known circle packings (from memory)
_LEAST_RATIOS = (
    *(1.0, 2.0, 2.1547, 2.4142, 2.7013, 3.0, 3.0, 3.3047, 3.6131, 3.8130),
    *(3.9238, 4.0296, 4.2360, 4.3284, 4.5213, 4.6154, 4.7920, 4.8637, 4.8637, 5.1223),
)
_DENSEST = 0.83  # no known packing of 21 to 200 equal circles fills more of its circle (from memory)
_SAME = 1e-6  # diameters that differ by less are equal


class Lie(NamedTuple):
    """How a set lies in a bore: the arrangement with the highest friction, `ratio` D/d (ratio) of the cables that
    govern, the `weight_correction` factor (ratio) and the `least_weight_correction` (ratio) it may be, with which a
    cable runs away most, the `sidewall_factor` (ratio), the share of T/R on the worst cable, and the least
    `clearance` by geometry and `handbook_clearance` as handbooks print it [m], None above four cables.
    """

    arrangement: Arrangement
    ratio: float
    weight_correction: float
    least_weight_correction: float
    sidewall_factor: float
    clearance: float | None
    handbook_clearance: float | None


def least_ratio(count: int) -> float:
    """Give the smallest D/d (ratio) that equal cables can pass, by the densest known packing of circles in a circle.

    Above twenty cables sqrt(N / 0.83), a share of the circle that no known packing of 21 to 200 exceeds.
    Parameters: count N (count), 1 or more.
    Source: from memory.
    """
    if count <= len(_LEAST_RATIOS):
        return _LEAST_RATIOS[count - 1]
    return max(_LEAST_RATIOS[-1], math.sqrt(count / _DENSEST))


def around_three(first: float, second: float, third: float) -> float:
    """Give the diameter [m] of the smallest circle around three circles.

    The larger two side by side where the third finds room beside them, else the outer circle that touches all
    three: k = k1 + k2 + k3 - 2 sqrt(k1 k2 + k2 k3 + k3 k1) with curvatures k (Descartes' theorem).
    Parameters: first [m], second [m], third diameter [m], in falling order.
    Source: derived.
    """
    side_by_side = first + second
    curvatures = [1.0 / first, 1.0 / second, 1.0 / third]
    if curvatures[2] >= curvatures[0] + curvatures[1] - 1.0 / side_by_side:
        return side_by_side
    one, two, three = curvatures
    return 1.0 / (2.0 * math.sqrt(one * two + two * three + three * one) - one - two - three)


def passes(diameters: Sequence[float], bore: float) -> bool:
    """Say whether cables can lie in a bore at all.

    What must hold: as many equal circles of the smallest of any larger ones pass, the larger two and three pass,
    and the areas together are within the bore. A set that fails one cannot be laid; one that keeps all may still be
    tight.
    Parameters: diameters in falling order [m], bore D [m].
    Source: derived.
    """
    room = bore * (1.0 + TIE)
    if diameters[0] == diameters[-1]:
        return diameters[0] * least_ratio(len(diameters)) <= room
    if any(diameter * least_ratio(count) > room for count, diameter in enumerate(diameters, start=1)):
        return False
    if len(diameters) > 1 and diameters[0] + diameters[1] > room:
        return False
    if len(diameters) > 2 and around_three(*diameters[:3]) > room * (
        1.0 + 1e-4
    ):  # the packing of three has five digits
        return False
    return sum(diameter * diameter for diameter in diameters) <= room * room


def possible_arrangements(diameters: Sequence[float]) -> tuple[Arrangement, ...]:
    """Give the arrangements in which cables can lie, by their number and by whether they are equal.

    Parameters: diameters in falling order [m], one or more.
    Source: from memory.
    """
    three = (Arrangement.TRIANGULAR, Arrangement.CRADLED, Arrangement.TRIPLEXED)
    match len(diameters):
        case 1:
            return (Arrangement.SINGLE,)
        case 2:
            return (Arrangement.TWO,)
        case 3:
            return three
        case 4:
            return (Arrangement.DIAMOND,) if _equal(diameters) else (*three, Arrangement.DIAMOND)
        case _:
            return (Arrangement.MANY,)


def acts_as_three(diameters: Sequence[float]) -> bool:
    """Say whether three cables govern a set: three of them, or three that are larger than all others.

    Parameters: diameters in falling order [m], of which the first four are enough.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes, informational note 2, for three; derived for a smaller
    fourth.
    """
    return len(diameters) == 3 or (len(diameters) > 3 and diameters[3] < diameters[2] * (1.0 - _SAME))


def mean_of_larger_three(diameters: Sequence[float]) -> float:
    """Give the mean diameter [m] of the larger three of a set, or of all of a smaller one.

    Unequal cables are taken at their mean diameter.
    Parameters: diameters in falling order [m].
    Source: from memory.
    """
    larger = diameters[:3]
    return sum(larger) / len(larger)


def jam_ratio(diameters: Sequence[float], bore: float) -> float | None:
    """Give the jam ratio D/d (ratio) where three cables govern a set, by their mean diameter; None for other sets.

    Three cables may wedge side by side in a bend where D/d is 2.8 to 3.2.
    Parameters: diameters in falling order [m], of which the first four are enough, bore D [m].
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes, informational note 2.
    """
    return bore / mean_of_larger_three(diameters) if acts_as_three(diameters) else None


def lie_of(
    diameters: Sequence[float],
    bore: float,
    arrangement: Arrangement | None,
    weight_correction: float | None,
    many_correction: float,
    cradle_ratio: float,
) -> Lie:
    """Give how a set lies; where that is not sure, the worst of every way for each check of its own.

    A factor given never lowers the share of T/R that geometry gives. Valid where the set passes (`passes`).
    Parameters: diameters in falling order [m], bore D [m], arrangement, if it is known, weight_correction factor
    (ratio), if the caller has one, many_correction taken for more than four cables (ratio), for which there is no
    closed form, cradle_ratio D/d from which three cables may lie cradled (ratio).
    Source: Arrangement of three cables by the ratio of conduit to cable diameter; derived.
    """
    lies = [
        _lie_in(way, diameter, diameters, bore, weight_correction, many_correction)
        for way, diameter in _ways(diameters, bore, arrangement, cradle_ratio)
    ]
    if arrangement is None and len(diameters) > 3:  # four may lie one on another as well, with less friction
        lies = [lie._replace(least_weight_correction=1.0) for lie in lies]
    if len(lies) == 1:
        return lies[0]
    worst = max(lies, key=lambda lie: lie.weight_correction)
    return worst._replace(
        least_weight_correction=min(lie.least_weight_correction for lie in lies),
        sidewall_factor=max(lie.sidewall_factor for lie in lies),
        clearance=_least(lie.clearance for lie in lies),
        handbook_clearance=_least(lie.handbook_clearance for lie in lies),
    )


def _ways(
    diameters: Sequence[float], bore: float, arrangement: Arrangement | None, cradle_ratio: float
) -> list[tuple[Arrangement, float]]:
    """Give every way the set may lie, with the diameter that governs it.

    Three cables lie triangular below some D/d; above, the triangle is still possible and the cradle has the higher
    friction (from memory). A fourth, smaller cable may find a gap or press like one of four.
    """
    larger = mean_of_larger_three(diameters)
    if arrangement is not None and arrangement is not Arrangement.DIAMOND:
        return [(arrangement, larger)]
    mean = sum(diameters) / len(diameters)
    if arrangement is not None:
        return [(arrangement, mean)]
    ways: list[tuple[Arrangement, float]] = []
    if acts_as_three(diameters):
        ways = [(Arrangement.TRIANGULAR, larger)]
        if bore / larger >= cradle_ratio:
            ways.append((Arrangement.CRADLED, larger))
    if len(diameters) != 3:
        ways.append((possible_arrangements(diameters)[-1], mean if len(diameters) == 4 else larger))
    return ways


def _lie_in(
    way: Arrangement,
    diameter: float,
    diameters: Sequence[float],
    bore: float,
    given: float | None,
    many_correction: float,
) -> Lie:
    ratio = bore / diameter
    geometric = many_correction if way is Arrangement.MANY else weight_correction_factor(way, ratio)
    taken = geometric if given is None else given
    share = sidewall_factor(way, geometric)
    if given is not None:
        share = max(share, sidewall_factor(way, given))
    if len(diameters) > 1 and not _equal(diameters[:3]):
        share = 1.0  # the larger cable may carry nearly all of the tension
    room = (bore, diameter)
    least = 1.0 if way is Arrangement.MANY else min(taken, geometric)  # the flat factor, as a given one, is a high one
    return Lie(way, ratio, taken, least, share, clearance(way, *room), handbook_clearance(way, *room))


def _equal(diameters: Sequence[float]) -> bool:
    return diameters[-1] >= diameters[0] * (1.0 - _SAME)


def _least(clearances: object) -> float | None:
    known = [one for one in clearances if one is not None]  # type: ignore[attr-defined]
    return min(known, default=None)
