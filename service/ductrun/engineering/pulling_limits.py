"""What a cable and its pulling gear may bear.

Allowed tension is the least of what the conductors, the grip and the pulling device allow; sidewall pressure has its
own limit. The limits of the cable's maker govern.
"""

from __future__ import annotations


def counted_conductors(count: int, three_counted: float, more_than_three_factor: float) -> float:
    """Give how many of N conductors are taken to share the pull: all of one or two, `three_counted` of three, and N
    times the factor above three.

    Source: Southwire, technical page Wire and Cable Pulling Tensions (3 and 0.8); EC&M, sidebar to MV Cable Pulling (2
    and 0.6).
    """
    if count < 3:
        return float(count)
    return three_counted if count == 3 else count * more_than_three_factor


def conductor_limit(stress: float, area: float, counted: float) -> float:
    """Give the pull [N] that the conductors bear: S x N x A.

    Parameters: stress S [N/m2], area A of one conductor [m2], counted N of all conductors (`counted_conductors`).
    Shields, armor and concentric neutrals are not counted; conductors of mixed sizes should not be pulled together.
    Source: Southwire, technical page Wire and Cable Pulling Tensions.
    """
    return stress * area * counted


def sidewall_pressure(tension_out: float, radius: float, factor: float) -> float:
    """Give the sidewall pressure [N/m] on the worst cable in a bend: factor x T2 / R.

    Parameters: tension_out T2 [N] leaving the bend, centre-line radius R [m], factor of the arrangement
    (`cables.sidewall_factor`). The cable itself runs at a slightly smaller radius on the inner wall, so the centre line
    reads a few percent low on tight elbows. Source: SEC TES-P-104.05 (factor 1); General Cable, Maximum Sidewall
    Pressure.
    """
    return factor * tension_out / radius
