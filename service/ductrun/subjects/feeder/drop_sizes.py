"""The smallest size that keeps a voltage drop within its limit, and that the code allows for the current."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import voltage_drop as engineering
from ductrun.engineering.rounding import over
from ductrun.subjects.feeder.choices import CircuitConduit
from ductrun.subjects.feeder.impedances import Impedance, impedance_of, listed
from ductrun.subjects.feeder.power_factor import worst_of
from ductrun.subjects.feeder.table_ampacities import TABLE_VOLTAGE, table_ampacity, too_small_in_parallel
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize


class Wiring(NamedTuple):
    """What a circuit lies in, the `temperature` of its conductors [K], the frequency in `cycles` of that of the table
    (ratio), the `column` [degC] that terminals and insulation leave of the table, whether direct current flows, and the
    power factor of the load (ratio), None where each size is taken at the one at which it loses the most.
    """

    conduit: CircuitConduit
    temperature: float
    cycles: float
    column: int
    direct: bool
    power_factor: float | None


class Case(NamedTuple):
    """A circuit: `voltage` [V] and `current` of all `sets` (count) [A], the `loop` (ratio) of the drop, `length` [m]
    and `limit` [percent].
    """

    voltage: float
    loop: float
    current: float
    sets: int
    length: float
    limit: float


def voltage_at_load(
    voltage: float, loop: float, current: float, impedance: Impedance, length: float, power_factor: float
) -> float | None:
    """Give the voltage at the load [V], None where the source cannot drive the current."""
    through = loop * current * length
    return engineering.load_voltage(
        voltage, through * impedance.resistance, through * impedance.reactance, power_factor
    )


def longest_run(
    voltage: float, loop: float, current: float, impedance: Impedance, power_factor: float, limit: float
) -> float:
    """Give the longest run within a limit [m]."""
    least = voltage * (1.0 - limit / 100.0)
    through = loop * current
    return engineering.longest_length(
        voltage, least, through * impedance.resistance, through * impedance.reactance, power_factor
    )


def allowed_current(
    material: ConductorMaterial, size: ConductorSize | None, column: int, voltage: float, sets: int
) -> float | None:
    """Give what a column [degC] of the tables allows all sets of a circuit [A]; None where they do not know."""
    if size is None or over(voltage, TABLE_VOLTAGE):
        return None
    allowed = table_ampacity(material, size, column)
    return None if allowed is None else allowed * sets


def smallest(material: ConductorMaterial, wiring: Wiring, case: Case) -> ConductorSize | None:
    """Give the smallest size that keeps the limit, carries the current by the tables and may lie in parallel.

    Above the scope of the tables none is told: what carries the current is not known there.
    """
    if over(case.voltage, TABLE_VOLTAGE):
        return None
    current = case.current / case.sets
    for size in listed(material, wiring.conduit, direct=wiring.direct):
        allowed = table_ampacity(material, size, wiring.column)
        if allowed is None or over(current, allowed) or too_small_in_parallel(case.sets, METAL_AREAS[size]):
            continue
        printed = impedance_of(material, size, wiring.conduit, wiring.temperature, direct=wiring.direct)
        impedance = printed._replace(reactance=printed.reactance * wiring.cycles)
        power_factor = worst_of(impedance) if wiring.power_factor is None else wiring.power_factor
        left = voltage_at_load(case.voltage, case.loop, current, impedance, case.length, power_factor)
        if left is not None and not over((case.voltage - left) / case.voltage * 100.0, case.limit):
            return ConductorSize(size)
    return None
