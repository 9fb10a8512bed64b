"""Concrete to order.

The envelope and the ducts in it are geometry (`bank`): ducts are deducted by their outside diameter, never by the bore
or the trade size; couplings and spacers displace about one percent more and are left in, on the safe side.
"""

from __future__ import annotations

from ductrun.engineering.rounding import round_up


def order_volume(net: float, waste_percent: float, increment: float) -> float:
    """Give the volume to order [m3]: net with waste [percent], up to the next increment [m3] the plant delivers."""
    return round_up(net * (1 + waste_percent / 100) / increment) * increment


def loads(volume: float, capacity: float) -> int:
    """Give the truck loads, or the bags, of one capacity [m3] that bring a volume [m3]."""
    return round_up(volume / capacity)
