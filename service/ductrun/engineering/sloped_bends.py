"""Tension of cable around a bend in plan that lies on a slope, as duct on a curve follows a fall of the ground.

It is a piece of a helix: R radius in plan [m], theta change of direction in plan [rad], phi slope [rad]. Along it
ds = R dtheta / cos phi, the cable turns by cos phi dtheta, and its weight has w cos phi across and w sin phi along it:
dT/dtheta = K sqrt((T cos phi)^2 + (w R)^2) + w R tan phi. On the level that is the equation of the level bend.

The other symbols are those of `pulling`.
"""

from __future__ import annotations

import math

_STEP = math.radians(5.0)  # of the integration; at K = 1 two of half the length part from it by less than 1e-7


def carry(tension: float, side: float, friction: float, angle: float, grade: float) -> float:
    """Give the tension [N] after the bend, zero where the cable would run away in it.

    Parameters: tension T1 entering [N], 0 or above, side w R [N], friction K (ratio), angle theta [rad], grade phi
    [rad], below a right angle either way.
    Source: derived.
    """
    return max(0.0, _integrated(tension, side, friction, angle, grade))


def entry(tension_out: float, side: float, friction: float, angle: float, grade: float) -> float:
    """Give the least tension [N] that must enter for T2 to leave, zero where even a slack cable leaves with more.

    Parameters: tension_out T2 leaving [N], side w R [N], friction K (ratio), angle theta [rad], grade phi [rad].
    Source: derived.
    """
    return max(0.0, _integrated(tension_out, side, friction, -angle, grade))


def pressure(tension: float, radius: float, grade: float) -> float:
    """Give what a tension [N] presses against the bend for each length [N/m]: T cos^2 phi / R.

    Parameters: tension T [N], radius R in plan [m], grade phi [rad].
    Source: derived.
    """
    return tension * math.cos(grade) ** 2 / radius


def _integrated(tension: float, side: float, friction: float, angle: float, grade: float) -> float:
    """Follow the tension [N] through an angle [rad], forward or back, by the classical method of fourth order."""
    turn, along = math.cos(grade), side * math.tan(grade)

    def rate(here: float) -> float:
        return friction * math.hypot(here * turn, side) + along

    steps = math.ceil(abs(angle) / _STEP)
    step = angle / steps
    for _ in range(steps):
        first = rate(tension)
        second = rate(tension + step / 2 * first)
        third = rate(tension + step / 2 * second)
        tension += step / 6 * (first + 2 * (second + third) + rate(tension + step * third))
    return tension
