"""Resistances to heat as Neher and McGrath give them, in K.m/W: 1 thermal ohm-foot is 0.3048 K.m/W.

Their 0.012 rho log10(x) is rho ln(x) / (2 pi): the exact constant is used, 0.2 percent above the printed one.
"""

from __future__ import annotations

import math
from typing import NamedTuple

_FOOT = 0.3048
_INCH = 0.0254


class AirConstants(NamedTuple):
    """Constants of the heat between cables and duct, as IEC writes them: `u` [K.m/W], `v` (ratio), `y` [1/K]."""

    u: float
    v: float
    y: float


def layer_resistance(resistivity: float, inner: float, outer: float) -> float:
    """Give the resistance of a round layer [K.m/W]: rho ln(Do/Di) / (2 pi), for the heat that crosses it.

    It is T1 and T3 of IEC 60287-2-1, and its duct wall.
    Parameters: resistivity rho [K.m/W], inner diameter [m], outer diameter [m].
    Source: IEC 60287-2-1; J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of
    cable systems, AIEE Transactions Part III, volume 76, 1957, pages 752 to 772.

    A worked sheet prints 0.2 for 4.5 mm on a conductor of 20.8 mm, and 0.109 for the jacket over 34.8 mm:

    >>> round(layer_resistance(3.5, 20.8, 20.8 + 9.0), 1)
    0.2
    >>> round(layer_resistance(6.0, 34.8, 34.8 + 4.2), 3)
    0.109
    """
    return resistivity / (2.0 * math.pi) * math.log(outer / inner)


def cores_resistance(
    resistivity: float, cores: int, conductor_diameter: float, core_diameter: float, inside: float
) -> float:
    """Give the resistance between each of several conductors and the jacket around all [K.m/W], for the heat of one.

    rho / (2 pi) ln((b^2n - a^2n) / (n a^(n-1) b^n r)), by the images of line sources in the inside of the jacket: a the
    radius of the circle through the axes, b that of the inside, r that of a conductor; fillers as the insulation.
    Thick conductors in thin walls give off more than line sources do: it is told up to two times high there, which asks
    less of the cable. Never less than half the wall of one core takes.
    Parameters: resistivity rho [K.m/W], cores n (count), conductor_diameter [m], core_diameter over the insulation of
    one [m], inside diameter of the jacket [m].
    Source: derived.
    """
    r, b = conductor_diameter / 2.0, inside / 2.0
    if cores == 1:
        return layer_resistance(resistivity, conductor_diameter, inside)
    a = core_diameter / 2.0 / math.sin(math.pi / cores)
    a = min(a, b - r)
    images = (b ** (2 * cores) - a ** (2 * cores)) / (cores * a ** (cores - 1) * b**cores * r)
    return resistivity / (2.0 * math.pi) * max(math.log(images), math.log(core_diameter / conductor_diameter) / 2.0)


def air_constants(a: float, b: float, c: float) -> AirConstants:
    """Give the constants of the heat between cables and duct in IEC's form: U = 0.3048 A', V = 10/25.4 B', Y so too.

    Parameters: a A' in thermal ohm-feet (ratio), b B' for an inch (ratio), c C' for an inch and a degree (ratio).
    Source: derived.

    Fiber duct in concrete has 17, 2.3 and 0.024, where IEC prints 5.2, 0.91 and 0.010 (0.0094 unrounded):

    >>> u, v, y = air_constants(17.0, 2.3, 0.024)
    >>> round(u, 1), round(v, 2), round(y, 4)
    (5.2, 0.91, 0.0094)
    """
    return AirConstants(a * _FOOT, b * 10.0 / 25.4, c * 10.0 / 25.4)


def duct_air_resistance(constants: AirConstants, bundle_diameter: float, air_temperature: float) -> float:
    """Give the resistance from the cables in a duct to its wall [K.m/W], for their heat: U / (1 + 0.1 (V + Y Tm) De).

    Neher and McGrath's A' / (1 + (B' + C' Tm) Ds') in other units; De in mm and Tm in degC.
    Parameters: constants of the duct, bundle_diameter De of all cables [m], air_temperature Tm as the mean of cable and
    duct [K].
    Source: IEC 60287-2-1; J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of
    cable systems, AIEE Transactions Part III, volume 76, 1957, pages 752 to 772.

    A worked sheet prints 0.361 for a bundle of 84 mm at 50 degC in plastic:

    >>> round(duct_air_resistance(AirConstants(1.87, 0.312, 0.0037), 0.084, 50.0 + 273.15), 3)
    0.361
    """
    u, v, y = constants
    return u / (1.0 + 100.0 * (v + y * (air_temperature - 273.15)) * bundle_diameter)


def bundle_diameter(cable_diameter: float, cables: int) -> float:
    """Give the diameter [m] that cables in one duct give off heat as: 1.00, 1.65, 2.15 and 2.50 times one.

    Of more than four, of whom no figure is on file, the circle of the same area, and not less than that of four.
    Parameters: cable_diameter [m], cables in the duct (count).
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory; derived.
    """
    if cables <= 4:
        return (1.00, 1.65, 2.15, 2.50)[cables - 1] * cable_diameter
    return max(2.50, math.sqrt(cables)) * cable_diameter


def duct_wall_resistance(resistivity: float, inner: float, outer: float) -> float:
    """Give the resistance of a duct wall [K.m/W] in the form for thin walls: 0.0104 rho t / (D - t) thermal ohm-feet.

    Parameters: resistivity rho [K.m/W], inner diameter [m], outer diameter D [m]; t is half their difference.
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.
    """
    wall = (outer - inner) / 2.0
    return 0.0104 * 100.0 * resistivity * wall / (outer - wall) * _FOOT


def loss_factor(load_factor: float) -> float:
    """Give the loss factor (ratio) of a daily load: 0.3 lf + 0.7 lf^2.

    Parameters: load_factor lf as mean load over peak (ratio).
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.

    >>> round(loss_factor(0.5), 3)
    0.325
    """
    return load_factor * (0.3 + 0.7 * load_factor)


def earth_resistance(
    resistivity: float, duct_diameter: float, depth: float, cycle_diameter: float, losses: float
) -> float:
    """Give the resistance of the earth around a duct [K.m/W] for the peak of its heat.

    rho / (2 pi) (ln(Dx/De) + LF ln(4 L/Dx)): within Dx the peak is felt in full, outside it the mean. Dx is held
    between De, where nothing would lie within, and 4 L, the image of the duct above ground.
    Parameters: resistivity rho [K.m/W], duct_diameter De outside [m], depth L of its center [m], cycle_diameter Dx [m],
    losses LF as the loss factor (ratio).
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.
    """
    within = min(max(cycle_diameter, duct_diameter), 4.0 * depth)
    return resistivity / (2.0 * math.pi) * (math.log(within / duct_diameter) + losses * math.log(4.0 * depth / within))
