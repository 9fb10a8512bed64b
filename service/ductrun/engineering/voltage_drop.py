"""Voltage lost on the way to a load: exactly, by phasors, and as the tables have it."""

from __future__ import annotations

import math


def effective_impedance(resistance: float, reactance: float, power_factor: float) -> float:
    """Give the effective impedance [ohm/m]: R pf + XL sin(arccos pf).

    Parameters: resistance R [ohm/m], reactance XL [ohm/m], power_factor pf of a load that lags (ratio).
    Source: NFPA 70-2023, Chapter 9, Table 9.

    350 kcmil of copper in PVC, 0.038 and 0.040 ohm for 1000 ft, is printed with 0.053 at 0.85:

    >>> round(effective_impedance(0.038, 0.040, 0.85), 3)
    0.053
    """
    return resistance * power_factor + reactance * math.sin(math.acos(power_factor))


def worst_power_factor(resistance: float, reactance: float, least: float) -> float:
    """Give the power factor of a load that lags at which a current loses the most (ratio), from the least to 1.

    R cos + XL sin is highest where tan = XL / R, there Z itself: pf = R / sqrt(R^2 + XL^2), or the least above that.
    Parameters: resistance R [ohm/m], reactance XL [ohm/m], least power factor (ratio).
    Source: derived.

    Of 4 ohm and 3 it is 0.8, at which all of their 5 ohm are lost:

    >>> worst_power_factor(4.0, 3.0, 0.5), effective_impedance(4.0, 3.0, 0.8)
    (0.8, 5.0)
    """
    impedance = math.hypot(resistance, reactance)
    return least if impedance <= 0.0 else max(least, resistance / impedance)


def table_drop(loop: float, current: float, impedance: float, length: float) -> float:
    """Give the voltage drop [V] as the tables have it: loop x I x Z x L, the part in quadrature left out.

    Parameters: loop as sqrt 3 of three phases between lines and 2 of two wires (ratio), current I [A], impedance Z
    [ohm/m], the effective one, length one way [m].
    Source: UFC 3-520-01 (10 June 2002), B-2.1: voltage drop.
    """
    return loop * current * impedance * length


def load_voltage(source: float, resistance_drop: float, reactance_drop: float, power_factor: float) -> float | None:
    """Give the voltage at a load that draws a given current [V], None where the source cannot drive it.

    Vs = sqrt((Vr cos + I R)^2 + (Vr sin + I X)^2) solved for Vr; all between the same two points.
    Parameters: source voltage Vs [V], resistance_drop I R [V], reactance_drop I X [V], power_factor cos of a load that
    lags (ratio).
    Source: UFC 3-520-01 (10 June 2002), B-2.1: voltage drop; derived.

    100 V less a drop in phase of 3 V leaves 97 V:

    >>> load_voltage(100.0, 3.0, 0.0, 1.0)
    97.0
    """
    sine = math.sin(math.acos(power_factor))
    along = resistance_drop * power_factor + reactance_drop * sine
    across = reactance_drop * power_factor - resistance_drop * sine
    rest = source * source - across * across
    if rest < 0.0:
        return None
    voltage = math.sqrt(rest) - along
    return voltage if voltage > 0.0 else None


def longest_length(source: float, least: float, resistance: float, reactance: float, power_factor: float) -> float:
    """Give the length [m] at which the voltage at the load has fallen to the least one, infinite where nothing is lost.

    (Vr cos + a L)^2 + (Vr sin + b L)^2 = Vs^2 solved for L; all between the same two points.
    Parameters: source voltage Vs [V], least voltage Vr [V], resistance a that drops volts along a metre [V/m],
    reactance b likewise [V/m], power_factor cos of a load that lags (ratio).
    Source: UFC 3-520-01 (10 June 2002), B-2.1: voltage drop; derived.

    3 V of 100 in phase, at 0.03 V for a metre, is 100 m:

    >>> round(longest_length(100.0, 97.0, 0.03, 0.0, 1.0), 9)
    100.0
    """
    square = resistance * resistance + reactance * reactance
    if square <= 0.0:
        return math.inf
    half = least * effective_impedance(resistance, reactance, power_factor)
    return (math.sqrt(half * half + square * (source * source - least * least)) - half) / square


def current_of_power(power: float, voltage: float, phases: float, power_factor: float) -> float:
    """Give the current of a load [A]: P / (k V pf), k sqrt(3) of three phases and 1 of two wires.

    Parameters: power P [W], voltage V [V] between lines, phases k (ratio), power_factor pf (ratio).
    Source: derived.

    83,138 W of three phases at 480 V and a power factor of 1 is 100 A:

    >>> round(current_of_power(math.sqrt(3) * 480 * 100, 480.0, math.sqrt(3), 1.0), 6)
    100.0
    """
    return power / (phases * voltage * power_factor)


def loss(conductors: int, current: float, resistance: float, length: float) -> float:
    """Give the heat of the conductors that carry a current [W]: n I^2 R L.

    Parameters: conductors n (count), current I in each [A], resistance R [ohm/m], length [m].
    Source: derived.
    """
    return conductors * current * current * resistance * length
