"""Heat between the ducts of a bank in earth and concrete, by the images of the ducts above the surface."""

from __future__ import annotations

import math
from typing import NamedTuple


class Place(NamedTuple):
    """The center of a duct: `x` [m] to the right of any zero, `depth` [m] below grade."""

    x: float
    depth: float


class Surround(NamedTuple):
    """What surrounds the ducts: `resistivity` [K.m/W] right around them, and `correction` [K.m/W] that the heat of
    every duct takes more, or less, beyond the concrete.

    `valid` says whether the form of the envelope is within what the geometric factor is for.
    """

    resistivity: float
    correction: float
    valid: bool


MOST_SIDES = 3.0  # long side over short side of an envelope that the geometric factor is for


def image_ratio(one: Place, other: Place) -> float:
    """Give d'/d (ratio): the distance to the image of another duct above the surface over that to the duct itself.

    Parameters: one duct, other duct.
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772.
    """
    across = one.x - other.x
    return math.hypot(across, one.depth + other.depth) / math.hypot(across, one.depth - other.depth)


def mutual_resistance(resistivity: float, ratio: float) -> float:
    """Give what the heat of one duct takes at another [K.m/W]: rho / (2 pi) ln(d'/d). It is the same both ways.

    Parameters: resistivity rho [K.m/W], ratio d'/d (ratio).
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772.

    A worked sheet prints 2.41 for a duct at u = 18.75, 0.577 by itself, with five neighbors:

    >>> round(0.577 + sum(mutual_resistance(1.0, ratio) for ratio in (5.51, 9.42, 9.42, 14.32, 14.32)), 2)
    2.41
    """
    return resistivity / (2.0 * math.pi) * math.log(ratio)


def envelope_radius(short: float, long: float) -> float:
    """Give the radius [m] of the circle that stands for a rectangle of concrete.

    ln rb = (1/2) (x/y) (4/pi - x/y) ln(1 + y^2/x^2) + ln(x/2). For sides within 3 to 1.
    Parameters: short side x [m], long side y [m].
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.

    A worked sheet prints 401 mm for a square of 730 mm:

    >>> round(envelope_radius(730.0, 730.0))
    401
    """
    share = short / long
    return short / 2.0 * math.exp(0.5 * share * (4.0 / math.pi - share) * math.log(1.0 + 1.0 / (share * share)))


def geometric_factor(depth: float, radius: float) -> float:
    """Give the geometric factor of an envelope (ratio): ln(u + sqrt(u^2 - 1)), u = LG/rb, valid above 1.

    Gb of the source is its log10.
    Parameters: depth LG of the center of the envelope [m], radius rb [m].
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.

    A worked sheet prints 1.753 for six cables in concrete of 1 K.m/W in earth of 2, the center 1290 mm down:

    >>> round(6 / (2 * math.pi) * (2.0 - 1.0) * geometric_factor(1290.0, 401.25), 3)
    1.753
    """
    return math.acosh(depth / radius)


def surround_of(width: float, height: float, depth: float, concrete: float, earth: float) -> Surround:
    """Give what surrounds the ducts of an encased bank: concrete, and the correction [K.m/W] for the earth beyond it.

    Outside its validity the nearest form that asks less of the cables is taken: a flat or tall envelope as one of 3 to
    1, within it where earth is the better barrier and around it where concrete is; one at the surface as if all were
    of the worse of the two.
    Parameters: width [m], height [m] of the envelope, depth of its center [m], concrete [K.m/W], earth [K.m/W], their
    resistivities.
    Source: derived.
    """
    short, long = min(width, height), max(width, height)
    valid = long <= MOST_SIDES * short
    if not valid:
        short, long = (short, MOST_SIDES * short) if earth >= concrete else (long / MOST_SIDES, long)
    radius = envelope_radius(short, long)
    if depth <= radius:
        return Surround(max(concrete, earth), 0.0, False)
    correction = (earth - concrete) / (2.0 * math.pi) * geometric_factor(depth, radius)
    return Surround(concrete, correction, valid)
