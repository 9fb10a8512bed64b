"""The heat of loaded ducts in balance: every conductor's temperature, and the current that brings the hottest to its
limit.

Temperatures are linear in the squares of the currents but for the resistance of the metal and the air in the ducts,
which follow them: a few rounds settle both. Every loop is bounded.
"""

from __future__ import annotations

from collections.abc import Sequence
from operator import mul
from typing import NamedTuple

from ductrun.engineering.conductor_resistance import (
    proximity_effect,
    resistance_at,
    skin_effect_iec,
    skin_effect_neher_mcgrath,
)
from ductrun.engineering.neher_mcgrath import AirConstants, duct_air_resistance
from ductrun.engineering.shields import shield_loss_factor

MOST_ROUNDS = 400
SETTLED = 1e-9  # [K] what a temperature still moves
RUNAWAY = 1273.15  # [K] above it nothing of a cable is left: the metal gains resistance faster than it sheds heat


class Metal(NamedTuple):
    """A loaded conductor: `resistance` to direct current [ohm/m] at `reference` [K], `zero` [K] where the line of its
    resistance reaches zero, its `diameter` [m], the `spacing` [m] of so many `neighbors` (count) in its group, itself
    counted; `frequency` [Hz]; whether skin effect is that of IEC (`iec`).
    """

    resistance: float
    reference: float
    zero: float
    diameter: float
    spacing: float
    neighbors: int
    frequency: float
    iec: bool


class Shield(NamedTuple):
    """A shield that is grounded at both ends: `resistance` [ohm/m] at `reference` [K], `zero` [K], `reactance` [ohm/m],
    and how far it is taken to be `below` its conductor [K].
    """

    resistance: float
    reference: float
    zero: float
    reactance: float
    below: float


class Path(NamedTuple):
    """A loaded duct: its `conductors` (count) that carry current, all alike, in so many `cables` (count).

    The way of the heat: `insulation` [K.m/W] for the heat of one conductor, `jacket` [K.m/W] for that of one cable, the
    air around a bundle of `bundle` [m] with its constants and, where that is set, its `air_temperature` [K], the duct
    `wall` [K.m/W]. `dielectric` [W/m] heats every conductor's insulation. `limit` [K] of the conductor.
    """

    conductors: int
    cables: int
    metal: Metal
    shield: Shield | None
    insulation: float
    jacket: float
    air: AirConstants
    bundle: float
    air_temperature: float | None
    wall: float
    dielectric: float
    limit: float


class Load(NamedTuple):
    """The squared current of a conductor: `fixed` [A2], and its `weight` (ratio) on the square that is looked for."""

    fixed: float
    weight: float


class Ground(NamedTuple):
    """What the heat of every duct does at a duct, a row a duct: `cyclic` [K.m/W] as its load goes, `steady` [K.m/W] of
    one that never falls; `ambient` [K] is the earth's temperature.
    """

    cyclic: Sequence[Sequence[float]]
    steady: Sequence[Sequence[float]]
    ambient: float


class Duct(NamedTuple):
    """A duct in balance.

    Temperatures `conductor`, `cable` at its surface, `air` in the duct, `inside` and `outside` of its wall [K];
    `resistance` to alternating current [ohm/m]; heat per conductor: `conductor_loss`, `shield_loss`, `dielectric_loss`,
    and `heat` of the duct [W/m]; `air_resistance` [K.m/W].
    """

    conductor: float
    cable: float
    air: float
    inside: float
    outside: float
    resistance: float
    conductor_loss: float
    shield_loss: float
    dielectric_loss: float
    heat: float
    air_resistance: float


class Balance(NamedTuple):
    """Loaded ducts in balance, with the `square` [A2] of the current that was looked for and the `governing` duct
    (index), whose conductor is nearest to its limit.
    """

    ducts: tuple[Duct, ...]
    square: float
    governing: int


class RunawayError(ValueError):
    """Currents without a steady temperature."""


def ac_resistance(metal: Metal, temperature: float) -> float:
    """Give the resistance of a conductor to alternating current [ohm/m]: Rdc (1 + Ycs + Ycp).

    Parameters: metal, temperature [K].
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; IEC 60287-1-1.
    """
    direct = resistance_at(metal.resistance, metal.reference, metal.zero, temperature)
    if metal.frequency <= 0.0:
        return direct
    skin = (skin_effect_iec if metal.iec else skin_effect_neher_mcgrath)(direct, metal.frequency)
    return direct * (1.0 + skin + proximity_effect(skin, metal.diameter, metal.spacing, metal.neighbors))


def _shield_factor(path: Path, resistance: float, temperature: float) -> float:
    shield = path.shield
    if shield is None:
        return 0.0
    own = resistance_at(shield.resistance, shield.reference, shield.zero, temperature - shield.below)
    return shield_loss_factor(resistance, own, shield.reactance)


class _Round(NamedTuple):
    """What a round takes of every duct at the temperatures of the last one, for a square ampere in each conductor."""

    resistance: float
    shield_factor: float
    heat: float
    inner: float
    air: float


def _round(path: Path, temperature: float, air: float) -> _Round:
    resistance = ac_resistance(path.metal, temperature)
    factor = _shield_factor(path, resistance, temperature)
    of_one = resistance * (1.0 + factor)
    heat = path.conductors * of_one
    air_resistance = duct_air_resistance(path.air, path.bundle, air)
    inner = path.insulation * resistance + path.jacket * heat / path.cables + (air_resistance + path.wall) * heat
    return _Round(resistance, factor, heat, inner, air_resistance)


def balance(paths: Sequence[Path], loads: Sequence[Load], ground: Ground) -> Balance:
    """Give the temperatures of loaded ducts, and the square [A2] that brings the hottest conductor to its limit.

    T = Ta + (heat of its own on its way out) + sum of the heat of every duct x what it does there. Where no load has a
    weight the square is 0; it is 0 too where what is fixed leaves nothing. Currents without a steady temperature are a
    RunawayError.
    Parameters: paths of the loaded ducts; loads of each; ground between them.
    Source: J. H. Neher and M. H. McGrath, The calculation of the temperature rise and load capability of cable systems,
    AIEE Transactions Part III, volume 76, 1957, pages 752 to 772; IEC 60287-1-1; derived.
    """
    count = range(len(paths))
    follow = [i for i in count if paths[i].air_temperature is None]
    wanted = any(load.weight for load in loads)
    temperatures = [path.limit if wanted else min(path.limit, 330.0) for path in paths]
    airs = [
        (ground.ambient + path.limit) / 2.0 if path.air_temperature is None else path.air_temperature for path in paths
    ]
    idle = [path.conductors * path.dielectric for path in paths]
    steady = [sum(map(mul, row, idle)) for row in ground.steady] if any(idle) else [0.0] * len(paths)
    fixed, weights = [load.fixed for load in loads], [load.weight for load in loads]
    for _ in range(MOST_ROUNDS):
        rounds = [_round(path, at, air) for path, at, air in zip(paths, temperatures, airs, strict=True)]
        unit = [one.heat for one in rounds]
        given, sought = list(map(mul, unit, fixed)), list(map(mul, unit, weights))
        base = [
            ground.ambient
            + steady[i]
            + _idle_rise(paths[i], rounds[i])
            + rounds[i].inner * fixed[i]
            + sum(map(mul, ground.cyclic[i], given))
            for i in count
        ]
        slope = [rounds[i].inner * weights[i] + sum(map(mul, ground.cyclic[i], sought)) for i in count]
        square = max(0.0, min([(paths[i].limit - base[i]) / slope[i] for i in count])) if wanted else 0.0
        found = [base[i] + slope[i] * square for i in count]
        if max(found) > RUNAWAY:
            raise RunawayError("currents without a steady temperature")
        moved = max([abs(new - old) for new, old in zip(found, temperatures, strict=True)])
        temperatures = found
        for i in follow:
            air = _air(paths[i], rounds[i], fixed[i] + weights[i] * square, found[i])
            moved = max(moved, abs(airs[i] - air))
            airs[i] = air
        if moved < SETTLED:
            break
    else:
        raise RunawayError("currents without a steady temperature")
    governing = min(count, key=lambda i: paths[i].limit - temperatures[i])
    ducts = [_duct(paths[i], rounds[i], fixed[i] + weights[i] * square, temperatures[i]) for i in count]
    return Balance(tuple(ducts), square, governing)


def _idle_rise(path: Path, at: _Round) -> float:
    """Give what the loss of the insulation does within its own duct [K]."""
    if not path.dielectric:
        return 0.0
    cable = path.conductors * path.dielectric / path.cables
    return (
        path.insulation * path.dielectric / 2.0
        + path.jacket * cable
        + (at.air + path.wall) * path.conductors * path.dielectric
    )


def _air(path: Path, at: _Round, square: float, temperature: float) -> float:
    """Give the temperature of the air in a duct [K], the mean of its cables and its wall."""
    conductor, idle = at.resistance * square, path.dielectric
    heat = path.conductors * (conductor * (1.0 + at.shield_factor) + idle)
    cable = temperature - path.insulation * (conductor + idle / 2.0) - path.jacket * heat / path.cables
    return cable - at.air * heat / 2.0


def _duct(path: Path, at: _Round, square: float, temperature: float) -> Duct:
    """Give a duct at the squared current of its conductors, from the conductor outward."""
    conductor, idle = at.resistance * square, path.dielectric
    shield = at.shield_factor * conductor
    heat = path.conductors * (conductor + shield + idle)
    cable = temperature - path.insulation * (conductor + idle / 2.0) - path.jacket * heat / path.cables
    inside = cable - at.air * heat
    air = (cable + inside) / 2.0
    return Duct(
        temperature, cable, air, inside, inside - path.wall * heat, at.resistance, conductor, shield, idle, heat, at.air
    )
