"""Equal cables side by side in a conduit: what their arrangement does to friction, pressure and room.

D is the inside diameter of the conduit, d the outside diameter of one cable, s = d / (D - d). The factors follow from
the wall reactions of smooth equal cylinders: weight correction = sum of the wall forces / weight. The triangular form
was read in SEC TES-P-104.05 Rev. 0 (2007), page 10; the others are derived here and known from memory.
"""

from __future__ import annotations

import math
from enum import StrEnum


class Arrangement(StrEnum):
    """How the cables lie in the conduit."""

    SINGLE = "single"
    TWO = "two"
    TRIANGULAR = "triangular"
    TRIPLEXED = "triplexed"
    CRADLED = "cradled"
    DIAMOND = "diamond"
    MANY = "many"


def _s(ratio: float) -> float:
    return 1.0 / (ratio - 1.0)


def weight_correction_factor(arrangement: Arrangement, ratio: float) -> float:
    """Give the factor on friction (ratio), 1 or above, for an arrangement and the ratio D/d.

    Single 1; two, triangular and triplexed 1 / sqrt(1 - s^2); cradled 1 + 4/3 s^2; diamond 1 + 2 s^2. Valid where
    the cables pass the bore (`cable_sets.passes`). More than four have no closed form: a ValueError, the caller
    must know the factor. At the tightest fit of two cables, which wedge, it is cut at 100.
    Parameters: arrangement of the cables, ratio D/d (ratio).
    Source: Weight correction factors from the wall reactions of smooth equal cylinders; triangular form read in SEC
    TES-P-104.05 page 10; derived and from memory for the other forms.

    Three cables of 41.3 mm in 154 mm are printed with 1.07:

    >>> round(weight_correction_factor(Arrangement.TRIANGULAR, 154 / 41.3), 2)
    1.07
    """
    s = _s(ratio) if ratio > 1.0 else 0.0
    match arrangement:
        case Arrangement.SINGLE:
            return 1.0
        case Arrangement.TWO | Arrangement.TRIANGULAR | Arrangement.TRIPLEXED:
            # at the tightest fit of two cables s reaches 1: they wedge, and the factor has no bound
            return 1.0 / math.sqrt(max(1.0 - s * s, 1e-4))
        case Arrangement.CRADLED:
            return 1.0 + 4.0 / 3.0 * s * s
        case Arrangement.DIAMOND:
            return 1.0 + 2.0 * s * s
        case Arrangement.MANY:
            raise ValueError("no closed form gives the weight correction of more than four cables")


def sidewall_factor(arrangement: Arrangement, weight_correction: float) -> float:
    """Give the share (ratio) of T/R that presses on the worst cable in a bend.

    Single 1; two and triangular wc / 2; cradled (3 wc - 2) / 3, the center cable; diamond the larger of wc - 1, the
    bottom cable, and 1/2, a side cable; more than four 1, on the safe side. SEC TES-P-104.05 uses 1 throughout.
    Parameters: arrangement of the cables, weight_correction factor wc (ratio).
    Source: from memory; derived.
    """
    match arrangement:
        case Arrangement.SINGLE | Arrangement.MANY:
            return 1.0
        case Arrangement.TWO | Arrangement.TRIANGULAR | Arrangement.TRIPLEXED:
            return weight_correction / 2.0
        case Arrangement.CRADLED:
            return (3.0 * weight_correction - 2.0) / 3.0
        case Arrangement.DIAMOND:
            return max(weight_correction - 1.0, 0.5)


def clearance(arrangement: Arrangement, conduit_diameter: float, cable_diameter: float) -> float | None:
    """Give the free height [m] between the cables and the crown of the conduit, by geometry; None above four cables.

    Single D - d; two D/2 - d/2 + (D - d)/2 sqrt(1 - s^2); triangular D/2 - 1.366 d + (D - d)/2 sqrt(1 - s^2), 1.366
    of the source being (1 + sqrt 3) / 2; cradled D - d - d^2/(D - d); diamond D - d - 2 d^2/(D - d).
    Parameters: arrangement of the cables, conduit_diameter D inside [m], cable_diameter d [m].
    Source: Saudi Electricity Company, Transmission Engineering Standard TES-P-104.05 Rev. 0 (18 Feb 2007), pages 8
    to 12, for one and for the triangle; derived.
    """
    gap = conduit_diameter - cable_diameter
    if gap <= 0.0:
        return 0.0
    s = cable_diameter / gap
    drop = gap / 2.0 * math.sqrt(max(1.0 - s * s, 0.0))
    match arrangement:
        case Arrangement.SINGLE:
            return gap
        case Arrangement.TWO:
            return conduit_diameter / 2.0 - cable_diameter / 2.0 + drop
        case Arrangement.TRIANGULAR | Arrangement.TRIPLEXED:
            # 1.366 of the source is (1 + sqrt 3) / 2
            return conduit_diameter / 2.0 - (1.0 + math.sqrt(3.0)) / 2.0 * cable_diameter + drop
        case Arrangement.CRADLED:
            return gap - cable_diameter * s
        case Arrangement.DIAMOND:
            return gap - 2.0 * cable_diameter * s
        case Arrangement.MANY:
            return None


def handbook_clearance(arrangement: Arrangement, conduit_diameter: float, cable_diameter: float) -> float | None:
    """Give the clearance [m] as handbooks print it: for the cradle D/2 - d/2 + (D - d)/2 sqrt(1 - (s/2)^2), else by
    geometry.

    The handbook form reads higher than the geometry of the cradle (D 4, d 1: 2.98 against 2.67).
    Parameters: arrangement of the cables, conduit_diameter D inside [m], cable_diameter d [m].
    Source: from memory.
    """
    if arrangement is not Arrangement.CRADLED:
        return clearance(arrangement, conduit_diameter, cable_diameter)
    gap = conduit_diameter - cable_diameter
    s = cable_diameter / gap
    return conduit_diameter / 2.0 - cable_diameter / 2.0 + gap / 2.0 * math.sqrt(1.0 - s * s / 4.0)
