"""What IEC 60287-2-1 does otherwise than Neher and McGrath: a steady load, and the exact image of a duct."""

from __future__ import annotations

import math


def earth_resistance(resistivity: float, duct_diameter: float, depth: float) -> float:
    """Give the resistance of the earth around a duct [K.m/W]: rho / (2 pi) ln(u + sqrt(u^2 - 1)), u = 2 L/Do.

    Parameters: resistivity rho [K.m/W], duct_diameter Do outside [m], depth L of its center [m].
    Source: IEC 60287-2-1; from memory.

    A worked sheet prints u = 18.75 for a duct of 160 mm at 1500 mm, and ln(18.75 + 18.723) / (2 pi) is 0.577:

    >>> round(earth_resistance(1.0, 0.160, 1.5), 3)
    0.577
    """
    return resistivity / (2.0 * math.pi) * math.acosh(max(2.0 * depth / duct_diameter, 1.0))
