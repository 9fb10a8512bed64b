"""Earth and traffic on a buried duct: vertical pressures at its top."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from ductrun.engineering.flotation import GRAVITY
from ductrun.engineering.rounding import over


class Wheel(NamedTuple):
    """One of the two wheels of an axle: its `load` [N], the tire print with its `width` [m] along the axle and its
    `length` [m] in the direction of travel, and the distance `apart` [m] of the two wheels between centers.
    """

    load: float
    width: float
    length: float
    apart: float


def prism_pressure(cover: float, density: float) -> float:
    """Give the pressure [N/m2] of the prism of earth above a duct: rho g H.

    What the load on a flexible duct tends to in the long term, so that no lag is added to it.
    Parameters: cover H [m], density rho [kg/m3] of the earth.
    Source: Moser, Buried Pipe Design (McGraw-Hill).

    A design sheet prints 2.1 psi for 30 in of earth of 120 lb/ft3:

    >>> round(prism_pressure(0.762, 120 * 16.01846337) / 6894.757293, 1)
    2.1
    """
    return density * GRAVITY * cover


def load_coefficient(cover: float, trench_width: float, friction: float) -> float:
    """Give the load coefficient of a trench (ratio): Cd = (1 - exp(-2 K mu H / B)) / (2 K mu).

    Parameters: cover H [m], trench_width B [m] at the top of the duct, friction K mu (ratio) of the fill on its walls.
    Source: Moser, Buried Pipe Design (McGraw-Hill).

    The source reads 1.4 off a chart for 5.0 ft in a trench of 2.54 ft, its formula gives 3 percent more:

    >>> round(load_coefficient(1.524, 0.774192, 0.165), 2)
    1.45
    """
    return (1 - math.exp(-2 * friction * cover / trench_width)) / (2 * friction)


def trench_pressure(cover: float, trench_width: float, friction: float, density: float) -> float:
    """Give the pressure [N/m2] of earth that arches on the walls of its trench: Cd rho g B, for a flexible duct.

    Parameters: cover H [m], trench_width B [m] at the top of the duct, friction K mu (ratio), density rho [kg/m3].
    Source: Moser, Buried Pipe Design (McGraw-Hill).
    """
    return load_coefficient(cover, trench_width, friction) * density * GRAVITY * trench_width


def stepped(at: float, rows: Sequence[tuple[float, float]]) -> float:
    """Give the figure (ratio) of the first row that reaches up to a cover; a cover on the edge of two takes the row it
    ends.

    Parameters: at that cover [m], rows of upper edge [m] and factor, the last one open upward.
    Source: derived.
    """
    for edge, factor in rows[:-1]:
        if not over(at, edge):
            return factor
    return rows[-1][1]


def between_rows(at: float, rows: Sequence[tuple[float, float]]) -> float | None:
    """Give the pressure [N/m2] of a table between its rows, in a straight line; none beyond its last row, and None
    above its first.

    Parameters: at the cover [m], rows of cover [m] and pressure, in falling order of pressure.
    Source: derived.
    """
    if at < rows[0][0] and over(rows[0][0], at):
        return None
    if at <= rows[0][0]:
        return rows[0][1]
    for (low, more), (high, less) in pairwise(rows):
        if at <= high:
            return more + (less - more) * (at - low) / (high - low)
    return rows[-1][1] if not over(at, rows[-1][0]) else 0.0


def corner_share(width: float, length: float, depth: float) -> float:
    """Give the share (ratio) of a uniform pressure on a rectangle that arrives at a depth below one of its corners.

    Newmark's integral of Boussinesq's point load: with m = B/z, n = L/z and V = m2 + n2 + 1,
    (2 m n sqrt V / (V + m2 n2) (V + 1)/V + atan2(2 m n sqrt V, V - m2 n2)) / 4 pi.
    Parameters: width B [m], length L [m] of the rectangle, depth z [m] below it.
    Source: derived.
    """
    m, n = width / depth, length / depth
    square, product = m * m + n * n + 1, m * m * n * n
    root = 2 * m * n * math.sqrt(square)
    return (root / (square + product) * (square + 1) / square + math.atan2(root, square - product)) / (4 * math.pi)


def boussinesq_pressure(wheel: Wheel, cover: float, impact: float) -> float:
    """Give the pressure [N/m2] under the center of a wheel, of it and of the other one of its axle, with impact.

    Both tire prints are uniform pressures on an elastic half space.
    Parameters: wheel, cover H [m] above 0, impact factor (ratio).
    Source: Moser, Buried Pipe Design (McGraw-Hill); derived.

    Two wheels of 16,000 lb on 18 by 20 in, 72 in apart, below 2 ft of cover: 2,050 psf with the factor of 1.35.

    >>> h20 = Wheel(16000 * 4.4482216153, 20 * 0.0254, 18 * 0.0254, 72 * 0.0254)
    >>> round(boussinesq_pressure(h20, 0.6096, 1.35) / 47.88025898, -1)
    2050.0
    """
    pressure = wheel.load / (wheel.width * wheel.length)
    half = wheel.width / 2
    own = 4 * corner_share(half, wheel.length / 2, cover)
    far = corner_share(wheel.apart + half, wheel.length / 2, cover)
    near = corner_share(wheel.apart - half, wheel.length / 2, cover)
    return pressure * (own + 2 * (far - near)) * impact


def dynamic_allowance(cover: float, most: float, vanishes: float) -> float:
    """Give the dynamic allowance (ratio) of a wheel below earth: most (1 - H / Hv), and none deeper than Hv.

    Parameters: cover H [m], most at the surface (ratio), vanishes at a cover Hv [m].
    Source: from memory.
    """
    return most * max(0.0, 1 - cover / vanishes)


def spread_pressure(wheel: Wheel, cover: float, spread: float, multiple_presence: float, allowance: float) -> float:
    """Give the pressure [N/m2] of a wheel load that spreads through the earth: P (1 + IM) m / (w + s H) (l + s H).

    Where the loads of both wheels of the axle meet, both spread over one area. Cover under 2 ft lies outside of what
    the method was written for.
    Parameters: wheel, cover H [m], spread s of the sides with depth (ratio), multiple_presence m (ratio),
    allowance IM for its dynamics (ratio).
    Source: from memory.
    """
    width, length = wheel.width + spread * cover, wheel.length + spread * cover
    load = wheel.load
    if width > wheel.apart:
        load, width = 2 * load, width + wheel.apart
    return load * (1 + allowance) * multiple_presence / (width * length)


def lane_pressure(load: float, width: float, cover: float, spread: float, multiple_presence: float) -> float:
    """Give the pressure [N/m2] of the load of a lane that spreads through the earth: q m / (w + s H).

    Parameters: load q of the lane along it [N/m], width w of the lane [m], cover H [m], spread s of both sides
    (ratio), multiple_presence m (ratio).
    Source: from memory.
    """
    return load * multiple_presence / (width + spread * cover)
