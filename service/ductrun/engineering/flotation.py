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


def submerged_area(diameter: float, depth: float) -> float:
    """Give the area [m2] of a round section that lies below the water: r2 acos((r - h)/r) - (r - h) sqrt(2 r h - h2).

    None of it above the water, all of it where the water stands over its top.
    Parameters: diameter 2 r [m], depth h [m] of its lowest point below the water, negative above it.
    Source: derived.

    Half of it where the water stands at its center: pi/8 of the square of its diameter.

    >>> round(submerged_area(2.0, 1.0), 4), round(submerged_area(2.0, 3.0), 4), submerged_area(2.0, -1.0)
    (1.5708, 3.1416, 0.0)
    """
    radius, below = diameter / 2, min(diameter, max(0.0, depth))
    above = radius - below
    return radius * radius * math.acos(above / radius) - above * math.sqrt(max(0.0, below * (diameter - below)))


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


def governing_lift(tiers: Sequence[tuple[float, float]], lift: float) -> float:
    """Give the largest uplift per length [N/m] of the tiers that a live lift can hold at once; never below zero.

    Wherever the lift starts, and while it rises: the worst of all neighboring tiers whose bottoms lie less than a lift
    apart. Each pushes with all of its uplift as soon as the fluid reaches its bottom.
    Parameters: tiers as the bottom [m] of each, the lowest first, and its uplift [N/m], lift that is liquid at once
    [m].
    Source: derived.
    """
    worst = 0.0
    for first, (start, _) in enumerate(tiers):
        live = 0.0
        for bottom, force in tiers[first:]:
            if not under(bottom - start, lift):
                break
            live += force
            worst = max(worst, live)
    return worst


def buoyant_weight(area: float, density: float, fluid_density: float) -> float:
    """Give the weight per length [N/m] of what lies in a fluid: A (rho - rho_f) g; never below zero.

    Parameters: area A [m2] of its section, density rho [kg/m3], fluid_density rho_f [kg/m3].
    Source: derived.
    """
    return max(0.0, area * (density - fluid_density) * GRAVITY)


def hold_down(uplift_of_ducts: float, factor: float, weight: float) -> float:
    """Give the force per length [N/m] that anchors have to hold: U x factor - W; never below zero.

    The factor is on the uplift alone, so that weight counts as it is.
    Parameters: uplift_of_ducts U [N/m], factor of safety (ratio), weight W [N/m] that lies on them.
    Source: derived.
    """
    return max(0.0, uplift_of_ducts * factor - weight)


def tie_downs(force: float, capacity: float) -> int:
    """Give the anchors (count) that hold a force: F / capacity, rounded up; none where there is nothing to hold.

    Parameters: force F [N] with its factor of safety, capacity of one anchor [N].
    Source: derived.
    """
    return round_up(force / capacity) if force > 0.0 else 0
