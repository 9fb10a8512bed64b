"""Resistance of a conductor: its metal at a temperature, and what alternating current adds to it."""

from __future__ import annotations

import math

CIRCULAR_MIL_FOOT = math.pi / 4 * 0.0254e-3 * 0.0254e-3 / 0.3048  # [m] area of a circular mil over a foot
_MICROHM_PER_FOOT = 1e-6 / 0.3048


def resistance_of_area(resistivity: float, area: float) -> float:
    """Give the resistance to direct current [ohm/m] of a metal area: rho / A, 12.9/CI of copper in the source's units.

    12.9 and 21.2 ohm for a circular mil foot of copper and aluminum at 75 degC give every row of Table 8 within 3
    percent, the sizes from 8 AWG on within 1.
    Parameters: resistivity rho of the metal [ohm.m], area A [m2].
    Source: NFPA 70-2023, Chapter 9, Table 8; derived.

    500 kcmil of copper is printed with 0.0258 ohm for 1000 ft:

    >>> mil = math.pi / 4 * 0.0254e-3 ** 2
    >>> round(resistance_of_area(12.9 * CIRCULAR_MIL_FOOT, 500_000 * mil) * 304.8, 4)
    0.0258
    """
    return resistivity / area


def resistance_at(resistance: float, reference: float, zero: float, temperature: float) -> float:
    """Give the resistance [ohm/m] at a temperature: R (T - T0) / (T1 - T0), T0 where the line reaches zero.

    T0 is -234.5 degC for copper and -228.1 degC for aluminum.
    Parameters: resistance R [ohm/m] at T1, reference temperature T1 [K], zero T0 [K], temperature T [K].
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.
    """
    return resistance * (temperature - zero) / (reference - zero)


def table_resistance_at(resistance: float, coefficient: float, reference: float, temperature: float) -> float:
    """Give the resistance [ohm/m] at a temperature as Table 8 prints it: R (1 + a (T - T1)).

    Parameters: resistance R [ohm/m] at T1, coefficient a [1/K], reference temperature T1 [K], temperature T [K].
    Source: NFPA 70-2023, Chapter 9, Table 8.
    """
    return resistance * (1.0 + coefficient * (temperature - reference))


def skin_effect_neher_mcgrath(resistance: float, frequency: float) -> float:
    """Give what skin effect adds (ratio): 11.0 / (r + 4.0/r - 2.56/r^2)^2, r the resistance in microhm for a foot.

    Of round conductors; the closed form is for 60 Hz, another frequency is taken by its share of the resistance. It
    falls where r is under 2, an area above any on file.
    Parameters: resistance to direct current [ohm/m] at its temperature, frequency [Hz].
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; from memory.
    """
    if frequency <= 0.0:
        return 0.0
    r = max(resistance / _MICROHM_PER_FOOT * 60.0 / frequency, 2.0)
    return 11.0 / (r + 4.0 / r - 2.56 / (r * r)) ** 2


def skin_effect_iec(resistance: float, frequency: float, shape: float = 1.0) -> float:
    """Give what skin effect adds (ratio): xs^4 / (192 + 0.8 xs^4), xs^2 = 8 pi f 1e-7 ks / R.

    Valid to xs = 2.8; larger conductors are told a little low. With another `shape` it serves proximity.
    Parameters: resistance R to direct current [ohm/m] at its temperature, frequency f [Hz], shape ks of the conductor
    (ratio), 1 where it is round and stranded.
    Source: IEC 60287-1-1; from memory.
    """
    x4 = (8.0 * math.pi * frequency * 1e-7 * shape / resistance) ** 2
    return x4 / (192.0 + 0.8 * x4)


def proximity_effect(skin: float, diameter: float, spacing: float, conductors: int) -> float:
    """Give what the neighbors of a conductor add (ratio): F q (0.312 q + 1.18/(F + 0.27)) of three, 2.9 F q of two.

    q = (dc/s)^2. Of a conductor alone in its duct nothing is added.
    Parameters: skin F that skin effect adds (ratio), diameter dc of the conductor [m], spacing s of the axes [m],
    conductors beside each other (count).
    Source: IEC 60287-1-1; from memory.
    """
    if conductors < 2:
        return 0.0
    q = (diameter / spacing) ** 2
    if conductors == 2:
        return 2.9 * skin * q
    return skin * q * (0.312 * q + 1.18 / (skin + 0.27))
