"""Heat in the shields and in the insulation of a cable."""

from __future__ import annotations

import math


def shield_reactance(spacing: float, shield_diameter: float, frequency: float) -> float:
    """Give the reactance of a shield [ohm/m]: 2 w 1e-7 ln(2 s / dm).

    Parameters: spacing s of the axes [m], shield_diameter dm as its mean [m], frequency [Hz].
    Source: IEC 60287-1-1; from memory.
    """
    return 4.0e-7 * math.pi * frequency * math.log(2.0 * spacing / shield_diameter)


def shield_loss_factor(conductor: float, shield: float, reactance: float) -> float:
    """Give the heat of a shield that is grounded at both ends over that of its conductor (ratio).

    lambda1 = (Rs/R) / (1 + (Rs/X)^2), R of the conductor to alternating current. Of three single cables in a triangle;
    where they lie in a row it differs by place. A shield grounded at one point carries no such current.
    Parameters: conductor resistance R [ohm/m], shield resistance Rs [ohm/m], reactance X [ohm/m] of the shield.
    Source: IEC 60287-1-1; from memory.
    """
    if reactance <= 0.0:
        return 0.0
    return shield / conductor / (1.0 + (shield / reactance) ** 2)


def dielectric_loss(
    voltage: float, frequency: float, permittivity: float, loss_factor: float, inner: float, outer: float
) -> float:
    """Give the heat of an insulation under voltage [W/m]: w C U0^2 tan d, C = er / (18e9 ln(Di/dc)) F/m.

    Parameters: voltage U0 to ground [V], frequency [Hz], permittivity er (ratio), loss_factor tan d (ratio), inner
    diameter dc [m], outer diameter Di [m] of the insulation.
    Source: IEC 60287-1-1; from memory.
    """
    capacitance = permittivity / (18e9 * math.log(outer / inner))
    return 2.0 * math.pi * frequency * capacitance * voltage * voltage * loss_factor
