"""What fresh concrete does to its forms."""

from __future__ import annotations

from ductrun.engineering.flotation import GRAVITY


def form_pressure(density: float, height: float) -> float:
    """Give the greatest pressure [N/m2] of fresh concrete on its forms, at their foot: rho g h.

    The head of the whole pour, as if all of it were liquid: the most it can be where it is filled from above. Formulas
    with the rate of placing and the temperature have a floor of 600 psf, which is the head of 4 ft of ordinary
    concrete, so that for the height of a duct bank they give no less.
    Parameters: density rho of the fresh concrete [kg/m3], height h of the pour [m].
    Source: Concrete Construction magazine, question on form pressure; from memory for the floor.

    8 ft of concrete of 150 lb/ft3 are printed to press with 1200 psf:

    >>> round(form_pressure(150 * 16.018463, 8 * 0.3048) / 47.880259)
    1200
    """
    return density * GRAVITY * height
