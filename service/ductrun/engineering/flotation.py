"""Uplift of ducts in fresh concrete, slurry or groundwater, and what holds them down."""

from __future__ import annotations

import math
from collections.abc import Sequence

from ductrun.engineering.rounding import round_up, under

GRAVITY = 9.80665  # m/s2


def uplift(diameter: float, fluid_density: float, mass_per_length: float) -> float:
    """Give the net uplift of one duct per length [N/m]: (pi/4 OD^2 rho - m) g; negative if it sinks.

    The volume of outside diameter times the weight of the fluid; its full head acts only while all of it is liquid.
    Parameters: diameter OD [m], fluid_density rho [kg/m3], mass_per_length m of the duct with its contents [kg/m].
    Source: Concrete pipe association, DD-22, flotation, for groundwater; derived for concrete.
    """
    return (math.pi / 4 * diameter * diameter * fluid_density - mass_per_length) * GRAVITY


def wall_mass(diameter: float, wall: float, density: float) -> float:
    """Give the mass per length [kg/m] of a duct: pi/4 (OD^2 - (OD - 2 t)^2) rho.

    Parameters: diameter OD [m], wall t [m], density rho of its material [kg/m3].
    Source: derived.
    """
    inside = diameter - 2 * wall
    return math.pi / 4 * (diameter * diameter - inside * inside) * density


def contents_mass(inside: float, density: float) -> float:
    """Give the mass per length [kg/m] of a fluid that fills a duct: pi/4 ID^2 rho.

    Parameters: inside diameter ID [m], density rho of the fluid [kg/m3].
    Source: derived.
    """
    return math.pi / 4 * inside * inside * density


def governing_lift(uplifts: Sequence[tuple[float, float]], lift: float) -> float:
    """Give the largest uplift per length [N/m] of the ducts in any one live lift of fluid; never below zero.

    A duct pushes with all of its uplift while its bottom lies in what is liquid. Where lifts start is the crew's to
    choose, so the worst window of the height of one counts, wherever it starts.
    Parameters: uplifts of every duct as the height of its bottom [m] and its uplift [N/m], lift that is liquid at
    once [m].
    Source: derived.
    """
    rising = sorted(uplifts)
    worst, live, first = 0.0, 0.0, 0
    for bottom, force in rising:
        while not under(bottom - rising[first][0], lift):
            live -= rising[first][1]
            first += 1
        live += force
        worst = max(worst, live)
    return worst


def tie_downs(force: float, factor: float, capacity: float) -> int:
    """Give the anchors (count) that hold a force: F x factor / capacity, rounded up; none if nothing lifts.

    Parameters: force F [N], factor of safety (ratio), capacity of one anchor [N].
    Source: derived.
    """
    return round_up(force * factor / capacity) if force > 0.0 else 0
