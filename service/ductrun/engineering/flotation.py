"""Uplift of ducts in fresh concrete, slurry or groundwater, and what holds them down."""

from __future__ import annotations

import math
from collections.abc import Sequence

from ductrun.engineering.rounding import round_down, round_up

GRAVITY = 9.80665  # m/s2


def uplift(diameter: float, fluid_density: float, mass_per_length: float) -> float:
    """Give the net uplift of one duct per length [N/m]: (pi/4 OD^2 rho - m) g; negative if it sinks.

    Parameters: diameter OD [m], fluid_density rho [kg/m3], mass_per_length m [kg/m] of the duct with its contents. The
    full head acts only while all the fluid is liquid. Source: volume of one foot of outside diameter times the weight
    of concrete; for groundwater concrete pipe association DD-22.
    """
    return (math.pi / 4 * diameter * diameter * fluid_density - mass_per_length) * GRAVITY


def wall_mass(diameter: float, wall: float, density: float) -> float:
    """Give the mass per length [kg/m] of a duct from outside diameter [m], wall [m] and density [kg/m3]."""
    inside = diameter - 2 * wall
    return math.pi / 4 * (diameter * diameter - inside * inside) * density


def contents_mass(inside: float, density: float) -> float:
    """Give the mass per length [kg/m] of a fluid that fills an inside diameter [m]."""
    return math.pi / 4 * inside * inside * density


def governing_lift(uplifts: Sequence[tuple[float, float]], lift: float) -> float:
    """Give the largest uplift per length [N/m] of the ducts in any one live lift of fluid.

    Parameters: (bottom of a duct above the bottom of the pour [m], its uplift [N/m]) of every duct; lift [m], the depth
    that is liquid at once. A duct counts in the lift that reaches its bottom.
    """
    live: dict[int, float] = {}
    for bottom, force in uplifts:
        number = round_down(bottom / lift)
        live[number] = live.get(number, 0.0) + force
    return max(0.0, *live.values())


def tie_downs(force: float, factor: float, capacity: float) -> int:
    """Give the anchors for a force [N] with a safety factor, each of a capacity [N]; none if nothing lifts."""
    return round_up(force * factor / capacity) if force > 0.0 else 0
