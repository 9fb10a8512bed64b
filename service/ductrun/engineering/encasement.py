"""Concrete around a duct bank: envelope, volumes, and what to order.

The envelope is the bounding rectangle of the bank and its cover; ducts are deducted by their outside diameter, never
by the bore or the trade size. Couplings and spacers displace about one percent more and are left in, on the safe side.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from ductrun.engineering.spacing import round_up


def envelope_width(tiers: Sequence[int], diameter: float, separation: float, side_cover: float) -> float:
    """Give the width of the envelope [m]: 2 side + C OD + (C - 1) separation, C ducts in the widest tier.

    Parameters [m]: diameter (outside) of a duct, clear horizontal separation, side_cover.
    """
    widest = max(tiers)
    return 2 * side_cover + widest * diameter + (widest - 1) * separation


def envelope_height(
    tier_count: int, diameter: float, separation: float, top_cover: float, bottom_cover: float
) -> float:
    """Give the height of the envelope [m]: bottom + top + R OD + (R - 1) separation, R tiers.

    Parameters [m]: diameter (outside) of a duct, clear vertical separation, top_cover, bottom_cover.
    """
    return top_cover + bottom_cover + tier_count * diameter + (tier_count - 1) * separation


def prism_volume(width: float, height: float, length: float) -> float:
    """Give the volume [m3] of a rectangular prism, all [m]."""
    return width * height * length


def duct_volume(ducts: int, diameter: float, length: float) -> float:
    """Give the volume [m3] that ducts of outside diameter [m] displace over a length [m]: n pi/4 OD^2 L."""
    return ducts * math.pi / 4 * diameter * diameter * length


def order_volume(net: float, waste_percent: float, increment: float) -> float:
    """Give the volume to order [m3]: net with waste [percent], up to the next increment [m3] the plant delivers."""
    return round_up(net * (1 + waste_percent / 100) / increment) * increment


def loads(volume: float, capacity: float) -> int:
    """Give the truck loads, or the bags, of one capacity [m3] that bring a volume [m3]."""
    return round_up(volume / capacity)
