"""Excavation and backfill of a trench. Volumes in the bank, loose and compacted are named as such.

The conversion factors of soils are inputs with their own sources.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from ductrun.engineering.rounding import round_up, under

Profile = Sequence[tuple[float, float]]  # (position [m], depth [m]), positions rising


def section_area(width: float, depth: float, slope: float) -> float:
    """Give the area [m2] of a trench section: (B + z d) d.

    Parameters: width B of the bottom [m], depth d [m], slope z of the sides (ratio), horizontal to 1.
    Source: derived.

    A trench of 5 in by 4.5 ft over 2000 ft is printed with 138.89 yd3:

    >>> round(section_area(5 / 12, 4.5, 0.0) * 2000 / 27, 2)
    138.89
    """
    return (width + slope * depth) * depth


def excavation(width: float, slope: float, profile: Profile) -> float:
    """Give the volume in the bank [m3] of a trench of varying depth, by prismoids between stations.

    L/6 (A1 + 4 Am + A2), exact where the depth changes evenly; the mean of the end areas would overstate a sloped
    one.
    Parameters: width of the bottom [m], slope z of the sides (ratio), profile of positions [m] and depths [m],
    positions rising.
    Source: derived.
    """
    volume = 0.0
    for (start, one), (end, other) in pairwise(profile):
        middle = section_area(width, (one + other) / 2, slope)
        ends = section_area(width, one, slope) + section_area(width, other, slope)
        volume += (end - start) / 6 * (ends + 4 * middle)
    return volume


def layer(width: float, slope: float, bottom: float, thickness: float, length: float) -> float:
    """Give the volume [m3] of a layer of a trench, before what lies in it: (A(bottom + t) - A(bottom)) L.

    Parameters: width of the floor [m], slope z of the sides (ratio), bottom of the layer above the floor [m],
    thickness t [m], length L [m].
    Source: derived.
    """
    upper, lower = section_area(width, bottom + thickness, slope), section_area(width, bottom, slope)
    return (upper - lower) * length


def capped(profile: Profile, most: float) -> list[tuple[float, float]]:
    """Give a profile nowhere deeper than `most` [m], with a station more wherever it reaches that depth.

    Parameters: profile of positions [m] and depths [m], most of the depth [m].
    Source: derived.
    """
    found = [(profile[0][0], min(profile[0][1], most))]
    for (start, one), (end, other) in pairwise(profile):
        if (one - most) * (other - most) < 0:
            found.append((start + (end - start) * (most - one) / (other - one), most))
        found.append((end, min(other, most)))
    return found


def deepened(profile: Profile, more: float) -> list[tuple[float, float]]:
    """Give a profile of positions and depths [m] deeper by so much everywhere.

    Parameters: profile of positions [m] and depths [m], more of depth [m].
    Source: derived.
    """
    return [(position, depth + more) for position, depth in profile]


def plumb(height: float, grade: float, rise: float) -> float:
    """Give a height measured square to a slope as it is measured plumb [m]: h / cos phi, on a slope too steep and short
    for that h and what the slope rises.

    Parameters: height h [m] square to the slope, grade phi of it from level [rad], rise from one end of it to the
    other [m].
    Source: derived.

    On a slope of 3 to 4 what is 20 in thick measures 25 in:

    >>> round(plumb(20.0, math.atan(0.75), 75.0), 9)
    25.0
    """
    level = math.cos(grade)
    steep = height + abs(rise)
    return min(height / level, steep) if level > 0.0 else steep


def open_area(width: float, slope: float, profile: Profile) -> float:
    """Give the area of the opening at grade [m2]: the width at each depth, B + 2 z d, over the length.

    Parameters: width B of the bottom [m], slope z of the sides (ratio), profile of positions [m] and depths [m].
    Source: derived.
    """
    return sum((end - start) * (width + slope * (one + other)) for (start, one), (end, other) in pairwise(profile))


def edge_length(slope: float, profile: Profile) -> float:
    """Give the length of both edges of the opening at grade [m], aslant where the depth changes and the sides lean.

    Parameters: slope of the sides (ratio), profile of positions [m] and depths [m].
    Source: derived.
    """
    return sum(2 * math.hypot(end - start, slope * (other - one)) for (start, one), (end, other) in pairwise(profile))


def face_area(profile: Profile, least: float) -> float:
    """Give the upright area of both sides of a trench [m2] where it is as deep as `least` [m] or deeper.

    The whole height of the side counts there, and the ends of the trench do not.
    Parameters: profile of positions [m] and depths [m], least depth that counts [m].
    Source: derived.
    """
    area = 0.0
    for (start, one), (end, other) in pairwise(profile):
        deepest, shallowest = max(one, other), min(one, other)
        if under(deepest, least):
            continue
        lower = min(deepest, max(shallowest, least))
        share = 1.0 if deepest == shallowest else (deepest - lower) / (deepest - shallowest)
        area += (end - start) * share * (deepest + lower)
    return area


def shallower(profile: Profile, least: float) -> list[tuple[float, float]]:
    """Give the parts of a run, from and to [m], where a profile is less than `least` [m] deep, in order.

    Parameters: profile of positions [m] and depths [m], least depth [m].
    Source: derived.
    """
    found: list[tuple[float, float]] = []
    for (start, one), (end, other) in pairwise(profile):
        if not under(min(one, other), least):
            continue
        meets = start if one == other else start + (end - start) * (least - one) / (other - one)
        begin, stop = start if under(one, least) else meets, end if under(other, least) else meets
        if found and found[-1][1] == begin:
            begin = found.pop()[0]
        found.append((begin, stop))
    return found


def tape_depth(cover: float, paved: float, wanted: float, above: float) -> float:
    """Give how deep a warning tape lies [m]: as wanted where that leaves `above` over the bank.

    Else so far above the bank, until it would come nearer to the underside of the pavement, or to grade, than to the
    bank: then in the middle between the two.
    Parameters: cover over the bank [m], paved thickness of the surface [m], 0 without any, wanted depth [m], above
    distance of the tape over the bank [m].
    Source: derived.
    """
    return min(wanted, max(cover - above, (paved + cover) / 2))


def loads(volume: float, capacity: float) -> int:
    """Give the truck loads (count) that take a loose volume: V / capacity, rounded up.

    Parameters: volume V as loose as it is hauled [m3], capacity of a truck [m3].
    Source: derived.
    """
    return round_up(volume / capacity)


def spoil(excavated: float, backfill: float, loose_per_bank: float, compacted_per_bank: float) -> float:
    """Give the loose volume [m3] to haul away: what was dug less what the compacted backfill takes of it, swollen.

    (V - backfill / compacted_per_bank) x loose_per_bank; negative where fill must be brought.
    Parameters: excavated V in the bank [m3], backfill compacted of native soil [m3], loose_per_bank of the soil
    (ratio), compacted_per_bank of the soil (ratio).
    Source: Estimating textbook, chapter 9, examples 9-2 and 9-3.

    500 yd3 compacted at a factor of 0.95 are printed to take 526 in the bank:

    >>> round(-spoil(0.0, 500.0, 1.0, 0.95))
    526
    """
    return (excavated - backfill / compacted_per_bank) * loose_per_bank
