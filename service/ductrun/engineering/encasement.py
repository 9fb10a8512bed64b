"""Concrete to order.

The envelope and the ducts in it are geometry (`bank`): ducts are deducted by their outside diameter, never by the bore
or the trade size; couplings and spacers displace about one percent more and are left in, on the safe side.
"""

from __future__ import annotations

from ductrun.engineering.rounding import round_up


def order_volume(net: float, waste_percent: float, increment: float) -> float:
    """Give the volume to order [m3]: V (1 + waste / 100), up to the next step in which the plant sells.

    Parameters: net volume V in place [m3], waste_percent on it [percent], increment of the plant [m3].
    Source: College lecture CTC-415, exam key and trade press on concrete waste.

    31.25 ft3 are printed to be bought as 32:

    >>> order_volume(31.25, 0.0, 1.0)
    32.0
    """
    return round_up(net * (1 + waste_percent / 100) / increment) * increment


def loads(volume: float, capacity: float) -> int:
    """Give the truck loads, or the bags (count), that bring a volume: V / capacity, rounded up.

    Of concrete that comes by truck V is what is ordered, not what is in place.
    Parameters: volume V [m3], capacity of one [m3].
    Source: derived.
    """
    return round_up(volume / capacity)
