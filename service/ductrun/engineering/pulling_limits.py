"""What a cable and its pulling gear may bear.

Allowed tension is the least of what the conductors, the grip and the pulling device allow; sidewall pressure has its
own limit. The limits of the cable's maker govern.
"""

from __future__ import annotations


def conductor_limit(stress: float, area: float, count: int, more_than_three: float) -> float:
    """Give the pull [N] that the conductors bear: S x N x A, times a factor where more than three share it.

    Parameters: stress S [N/m2], area A of one conductor [m2], count N of all conductors, more_than_three (0.8).
    Shields, armor and concentric neutrals are not counted; conductors of mixed sizes should not be pulled together.
    Source: Southwire, technical page Wire and Cable Pulling Tensions.
    """
    return stress * area * count * (1.0 if count <= 3 else more_than_three)


def sidewall_pressure(tension_out: float, radius: float, factor: float) -> float:
    """Give the sidewall pressure [N/m] on the worst cable in a bend: factor x T2 / R.

    Parameters: tension_out T2 [N] leaving the bend, centre-line radius R [m], factor of the arrangement
    (`cables.sidewall_factor`). The cable itself runs at a slightly smaller radius on the inner wall, so the centre line
    reads a few percent low on tight elbows. Source: SEC TES-P-104.05 (factor 1); General Cable, Maximum Sidewall
    Pressure.
    """
    return factor * tension_out / radius
