"""What a flexible duct does under the earth: its stiffness, deflection, wall, buckling, and whether it stays down."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from ductrun.engineering.flotation import GRAVITY

_RING = 6.7  # pipe stiffness at 5 percent deflection, as a multiple of E I / r3
_SERVICE = 0.149  # its inverse, as the deflection formula is printed
_CROWN = 0.1073  # of D2: the earth beside the upper half of a circle that lies below its crown


def pipe_stiffness(modulus: float, outside: float, wall: float) -> float:
    """Give the stiffness of a solid-wall pipe [N/m2] at 5 percent deflection: 4.47 E / (OD/t - 1)^3.

    Parameters: modulus E [N/m2], outside diameter OD [m], wall t [m].
    Source: Uni-Bell, Handbook of PVC Pipe.

    The source prints 46 psi for a diameter of 35 walls, with 400,000 psi it is half a pound less:

    >>> round(pipe_stiffness(400_000.0, 35.0, 1.0), 1)
    45.5
    """
    return 4.47 * modulus / (outside / wall - 1) ** 3


def bedding_constant(angle: float, rows: Sequence[tuple[float, float]]) -> float:
    """Give the bedding constant (ratio) of an angle of support, in a straight line between the rows of a table.

    Parameters: angle [rad], rows of angle [rad] and constant, in rising order of angle from none to half a circle.
    Source: Moser, Buried Pipe Design (McGraw-Hill); derived.
    """
    for (low, more), (high, less) in pairwise(rows):
        if angle <= high:
            return more + (less - more) * (angle - low) / (high - low)
    return rows[-1][1]


def deflection(earth: float, live: float, lag: float, bedding: float, stiffness: float, soil_modulus: float) -> float:
    """Give the change of the vertical diameter [percent]: 100 (DL K P + K W) / (0.149 PS + 0.061 E').

    The modified Iowa formula. The lag is on the earth alone. Its predictions lie within some two points of the
    diameter of what is measured.
    Parameters: earth P [N/m2], live load W at the top [N/m2], lag DL (ratio), bedding constant K (ratio), stiffness
    PS [N/m2] at 5 percent, soil_modulus E' [N/m2].
    Source: ASCE, Inspecting Pipeline Installation; Moser, Buried Pipe Design (McGraw-Hill).

    A design sheet prints 1.35 percent for 5.711 psi on a pipe of 110,000 psi and 17 walls in earth of 400 psi:

    >>> round(deflection(5.711, 0.0, 1.0, 0.1, pipe_stiffness(110_000.0, 17.0, 1.0), 400.0), 2)
    1.35
    """
    return 100 * (lag * bedding * earth + bedding * live) / (_SERVICE * stiffness + 0.061 * soil_modulus)


def wall_thrust(pressure: float, outside: float) -> float:
    """Give the thrust in the wall of a ring [N/m]: P D / 2.

    Parameters: pressure P at the top [N/m2], outside diameter D [m].
    Source: USDA-NRCS Utah, design aid UT210-14-01.

    The sheet prints 349.54 lb/ft for 5.711 psi on 10.2 in:

    >>> round(wall_thrust(5.711, 10.2) * 12, 1)
    349.5
    """
    return pressure * outside / 2


def ring_pressure(stiffness: float, poisson: float) -> float:
    """Give the outside pressure [N/m2] at which a free ring buckles: 3 E I / (R3 (1 - nu2)) = 3 PS / (6.7 (1 - nu2)).

    Parameters: stiffness PS [N/m2] with the modulus of as long as the pressure lasts, poisson ratio nu (ratio).
    Source: Moser, Buried Pipe Design (McGraw-Hill).
    """
    return 3 * stiffness / (_RING * (1 - poisson * poisson))


def elastic_support(cover: float, outside: float) -> float:
    """Give the coefficient of elastic support (ratio): B' = 4 (h2 + D h) / (1.5 (2 h + D)2).

    Parameters: cover h [m], outside diameter D [m].
    Source: Moser, Buried Pipe Design (McGraw-Hill).
    """
    return 4 * (cover * cover + outside * cover) / (1.5 * (2 * cover + outside) ** 2)


def buoyancy_share(cover: float, water: float) -> float:
    """Give the share of the earth's weight left by water in it (ratio): Rw = 1 - 0.33 hw / h.

    Parameters: cover h [m] above 0, water hw over the top of the duct [m], at most the cover.
    Source: Moser, Buried Pipe Design (McGraw-Hill).
    """
    return 1 - 0.33 * water / cover


def buckling_pressure(stiffness: float, soil_modulus: float, support: float, buoyancy: float) -> float:
    """Give the pressure [N/m2] at which a duct buckles in earth: sqrt(32 Rw B' E' E I / D3), without a safety factor.

    Parameters: stiffness PS = 53.6 E I / D3 [N/m2] with the modulus of the long term, soil_modulus E' [N/m2], support
    B' (ratio), buoyancy Rw (ratio).
    Source: Moser, Buried Pipe Design (McGraw-Hill).
    """
    return math.sqrt(32 * buoyancy * support * soil_modulus * stiffness / (8 * _RING))


def earth_on_duct(outside: float, dry: float, wet: float, density: float, submerged: float, crown: bool) -> float:
    """Give the weight of earth per length [N/m] that holds a duct down: (rho Hd + rho' (Hw + 0.1073 D)) D g.

    Parameters: outside diameter D [m], dry Hd [m], wet Hw [m], the cover above and below the water, density rho
    [kg/m3] of the earth, submerged density rho' [kg/m3], that of what is saturated less that of water, crown, whether
    the earth below the crown is counted.
    Source: ADS, technical note TN 5.05.
    """
    beside = _CROWN * outside if crown else 0.0
    return (density * dry + submerged * (wet + beside)) * outside * GRAVITY


def stiffness_for_deflection(
    earth: float, live: float, lag: float, bedding: float, soil_modulus: float, limit: float
) -> float:
    """Give the least stiffness [N/m2] that keeps a limit of deflection, the modified Iowa formula solved for it.

    Below zero where the soil alone keeps it.
    Parameters: earth P [N/m2], live load W at the top [N/m2], lag DL (ratio), bedding constant K (ratio), soil_modulus
    E' [N/m2], limit [percent] above 0.
    Source: derived.
    """
    return (100 * (lag * bedding * earth + bedding * live) / limit - 0.061 * soil_modulus) / _SERVICE


def stiffness_for_buckling(pressure: float, soil_modulus: float, support: float, buoyancy: float) -> float:
    """Give the least stiffness [N/m2] that bears a pressure in earth: 53.6 p2 / (32 Rw B' E').

    Infinite without support.

    Parameters: pressure p with its safety factor [N/m2], soil_modulus E' [N/m2], support B' (ratio), buoyancy Rw
    (ratio).
    Source: derived.
    """
    held = 32 * buoyancy * support * soil_modulus
    return 8 * _RING * pressure * pressure / held if held > 0.0 else math.inf


def stiffness_for_ring(pressure: float, poisson: float) -> float:
    """Give the least stiffness [N/m2] at which a free ring bears a pressure: 6.7 (1 - nu2) p / 3.

    Parameters: pressure p with its safety factor [N/m2], poisson ratio nu (ratio).
    Source: derived.
    """
    return _RING * (1 - poisson * poisson) * pressure / 3
