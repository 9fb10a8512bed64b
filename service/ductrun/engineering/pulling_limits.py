"""What a cable and its pulling gear may bear.

Allowed tension is the least of what the conductors, the grip and the pulling device allow; sidewall pressure has its
own limit. The limits of the cable's maker govern.
"""

from __future__ import annotations


def counted_conductors(count: int, three_counted: float, more_than_three_factor: float) -> float:
    """Give how many of N conductors are taken to share the pull (count): all of one or two, some of three, a share
    above.

    Southwire counts all of three and 0.8 N above; EC&M two of three and 0.6 N.
    Parameters: count N of conductors (count), three_counted of three (count), more_than_three_factor on N (ratio).
    Source: Southwire, technical page Wire and Cable Pulling Tensions, Table 1; EC&M, sidebar to MV Cable Pulling.
    """
    if count < 3:
        return float(count)
    return three_counted if count == 3 else count * more_than_three_factor


def conductor_limit(stress: float, area: float, counted: float) -> float:
    """Give the pull [N] that the conductors bear: S x N x A.

    Shields, armor and concentric neutrals are not counted; conductors of mixed sizes should not be pulled together.
    Parameters: stress S [N/m2], area A of one conductor [m2], counted conductors N of `counted_conductors` (count).
    Source: Southwire, technical page Wire and Cable Pulling Tensions, Table 1; GB 50217-2007, annex H (1994: annex
    F), for the stress of the example.

    One conductor of 400 mm2 at 68.6 N/mm2 is printed with 27440 N:

    >>> round(conductor_limit(68.6e6, 400e-6, 1.0))
    27440
    """
    return stress * area * counted


def sidewall_pressure(tension_out: float, radius: float, factor: float) -> float:
    """Give the sidewall pressure [N/m] on the worst cable in a bend: factor x T2 / R.

    The cable itself runs at a slightly smaller radius on the inner wall, so the center line reads a few percent low
    on tight elbows.
    Parameters: tension_out T2 leaving the bend [N], radius R of the center line [m], factor of
    `cables.sidewall_factor` (ratio).
    Source: Saudi Electricity Company, Transmission Engineering Standard TES-P-104.05 Rev. 0 (18 Feb 2007), pages 8
    to 12, with factor 1; General Cable, Maximum Sidewall Pressure sheet, January 2011.

    600 lbf around 2 ft are printed with 300 lbf/ft:

    >>> sidewall_pressure(600.0, 2.0, 1.0)
    300.0
    """
    return factor * tension_out / radius
