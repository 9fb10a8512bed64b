"""Excavation and backfill of a trench. Volumes in the bank, loose and compacted are named as such.

Source of the relations: estimating practice; conversion factors are inputs with their own sources.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise


def section_area(width: float, depth: float, slope: float) -> float:
    """Give the area [m2] of a trench section: (B + z d) d, bottom width B [m], depth d [m], z horizontal to 1."""
    return (width + slope * depth) * depth


def excavation(width: float, slope: float, profile: Sequence[tuple[float, float]]) -> float:
    """Give the volume in the bank [m3] of a trench of varying depth, by prismoids between stations.

    L/6 (A1 + 4 Am + A2), exact where the depth changes evenly; the mean of the end areas would overstate a sloped one.
    Parameters: width of the bottom [m], slope z, profile of (position [m], depth [m]), positions rising.
    """
    volume = 0.0
    for (start, one), (end, other) in pairwise(profile):
        middle = section_area(width, (one + other) / 2, slope)
        ends = section_area(width, one, slope) + section_area(width, other, slope)
        volume += (end - start) / 6 * (ends + 4 * middle)
    return volume


def layer(width: float, slope: float, bottom: float, thickness: float, length: float) -> float:
    """Give the volume [m3] of a layer from `bottom` [m] above the floor of a trench, before what lies in it."""
    upper, lower = section_area(width, bottom + thickness, slope), section_area(width, bottom, slope)
    return (upper - lower) * length


def spoil(excavated: float, backfill: float, loose_per_bank: float, compacted_per_bank: float) -> float:
    """Give the loose volume [m3] to haul away: what was dug less what the compacted backfill takes of it, swollen.

    (V - backfill / compacted_per_bank) x loose_per_bank; negative where fill must be brought. Parameters: excavated
    [m3] in the bank, native backfill [m3] compacted, the two factors of the soil.
    """
    return (excavated - backfill / compacted_per_bank) * loose_per_bank
