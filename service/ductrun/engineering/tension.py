"""Tension of cable after a straight section and after a bend in a level plane; `vertical_bends` has the others.

The symbols are those of `pulling`.
"""

from __future__ import annotations

import math


def straight(tension: float, weight: float, friction: float, length: float, grade: float) -> float:
    """Give the tension [N] after a straight section: T1 + w L (K cos phi + sin phi).

    The gravity term is never multiplied by the weight correction factor. Negative where less than the cable's pull
    downhill enters: the cable is slack then.
    Parameters: tension T1 [N], weight w [N/m], friction K (ratio), length L [m], grade phi from -pi/2 to pi/2
    [rad].
    Source: GB 50168-92, appendix 2, table 2.1 (scanned copy); Saudi Electricity Company, Transmission Engineering
    Standard TES-P-104.05 Rev. 0 (18 Feb 2007), pages 8 to 12, for the level one.

    Three cables of 3.15 kg/m and 1 percent are printed with 1501 N after 30 m:

    >>> round(straight(0.0, 3 * 3.15 * 1.01 * 9.8, 0.5 * 1.07, 30.0, 0.0))
    1501
    """
    return tension + weight * length * (friction * math.cos(grade) + math.sin(grade))


def capstan(tension: float, friction: float, angle: float) -> float:
    """Give the tension [N] after a bend when the weight of the cable is neglected: T1 e^(K theta).

    Good to one percent where w R is below a fifth of T1; always at or below the exact level form.
    Parameters: tension T1 [N], friction K (ratio), angle theta [rad].
    Source: CommScope, ConQuest Conduit Applications and Construction Manual, pages 8.11 to 8.14; Saudi Electricity
    Company, Transmission Engineering Standard TES-P-104.05 Rev. 0 (18 Feb 2007), pages 8 to 12.

    The multipliers of 45 and 90 degrees at 0.5 are printed with two decimals:

    >>> [round(capstan(1.0, 0.5, math.radians(angle)), 2) for angle in (45, 90)]
    [1.48, 2.19]
    """
    return tension * math.exp(friction * angle)


def horizontal_bend(tension: float, weight: float, friction: float, radius: float, angle: float) -> float:
    """Give the tension [N] after a level bend, cable weight included.

    T1 cosh(K theta) + sinh(K theta) sqrt(T1^2 + (w R)^2). The technical note prints its bracket misplaced: the root
    covers both squares. The worked sheet has the same as an equivalent length.
    Parameters: tension T1 [N], 0 or above, weight w [N/m], friction K (ratio), radius R [m], angle theta [rad].
    Source: Horizontal bend with cable weight, AIEE 1953; the vertical form derived from the same equilibrium;
    Technical note, Horizontal Bend Analysis in Directionally Bored Ducts; GB 50217-2007, annex H (1994: annex F),
    in a worked sheet based on it.

    That sheet pulls 8.995 kg/m over 10 m and around 12 m with 139 kgf:

    >>> round(horizontal_bend(0.45 * 8.995 * 10, 8.995, 0.45, 12.0, math.pi / 2))
    139
    """
    turn = friction * angle
    return tension * math.cosh(turn) + math.sinh(turn) * math.hypot(tension, weight * radius)


def horizontal_bend_entry(tension_out: float, weight: float, friction: float, radius: float, angle: float) -> float:
    """Give the tension [N] that enters a level bend and leaves with T2, zero where even a slack cable leaves with
    more.

    With T = w R sinh u the bend adds K theta to u: T1 = w R sinh(asinh(T2 / (w R)) - K theta). The inverse of
    `horizontal_bend`; the cable must have weight.
    Parameters: tension_out T2 [N], weight w [N/m], friction K (ratio), radius R [m], angle theta [rad].
    Source: derived.
    """
    side = weight * radius
    return max(0.0, side * math.sinh(math.asinh(tension_out / side) - friction * angle))
