"""What the code says beside a calculated ampacity: the tables with their corrections, terminals, grounding."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.rounding import over
from ductrun.kit.defaults import quantity
from ductrun.subjects.feeder.choices import TerminalRating
from ductrun.subjects.feeder.circuits import IN_A_SET, TERMINAL_RATING, CircuitLoad, usual_limit
from ductrun.subjects.feeder.loaded_cable import ZERO_CELSIUS, cores_of
from ductrun.subjects.feeder.table_ampacities import (
    COLUMNS,
    TABLE_VOLTAGE,
    column_of,
    degrees_by_size,
    table_ampacity,
    too_small_in_parallel,
    unmarked_degrees,
)
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.cables import Cable
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize
from ductrun.tables import TABLES
from ductrun.tables.feeder_rows import GroundingConductor
from ductrun.units import Voltage

TERMINAL_VOLTAGE = 1000.0  # the scope of the rule of terminals
_SMALLEST = {ConductorSize.AWG_14, ConductorSize.AWG_12, ConductorSize.AWG_10}
WIRE_VOLTAGE = quantity("feeder.wire_voltage", Voltage)
_NEUTRAL_AND_GROUND = 2
_DEGREES = {TerminalRating.DEGC_60: 60, TerminalRating.DEGC_75: 75, TerminalRating.DEGC_90: 90}


class Checked(NamedTuple):
    """What stands beside a circuit, all its sets together; None where the code has no row for it.

    `table` ampacity at the temperature of its `column` [degC] and `adjusted` to the earth and the count in a duct [A];
    the `terminals` rating [degC], that of the `insulation` [degC] by its column, and what the lower of both allows,
    `terminal_ampacity` [A]; the least `grounding` conductor, and
    whether the duct holds one; the line (index) of conductors in its ducts that belong to no circuit given.
    """

    column: int | None
    table: float | None
    adjusted: float | None
    terminals: int | None
    insulation: int
    terminal_ampacity: float | None
    grounding: GroundingConductor | None
    is_grounded: bool
    stray: int | None


def check(load: CircuitLoad, ambient: float) -> Checked:
    """Give what the code says beside a circuit in earth of a temperature [K]."""
    size = load.cable.size
    column = table = adjusted = terminals = terminal_ampacity = None
    if size is not None and not over(load.voltage, TABLE_VOLTAGE):
        column = column_of(load.limit)
        table = None if column is None else _table(load, size, column)
        if table is not None and column is not None:
            factor = _ambient_factor(ambient, column)
            adjusted = None if factor is None else table * factor * _adjustment(load.cable.conductors)
        terminals, terminal_ampacity = _terminals(load, size)
        if terminal_ampacity is not None:
            load.sheet.settle("terminal_rating", load.given.terminal_rating, TERMINAL_RATING)
    grounding = _grounding(load)
    return Checked(
        column=column,
        table=table,
        adjusted=adjusted,
        terminals=terminals,
        insulation=_insulation(load),
        terminal_ampacity=terminal_ampacity,
        grounding=grounding,
        is_grounded=grounding is None or _holds(load, grounding),
        stray=_stray(load),
    )


def sets_in_a_duct(load: CircuitLoad) -> int:
    """Count the sets in a duct, at least one."""
    return max(load.phases_in_a_duct // IN_A_SET[load.system], 1)


def largest_device(load: CircuitLoad, ampacity: float) -> float:
    """Give the largest overcurrent device [A] that protects conductors which all together carry so much [A].

    The next standard rating to 800 A, the ampacity itself above; of 14, 12 and 10 AWG of one set the column of 60 degC.
    """
    size = load.cable.size
    if size in _SMALLEST:
        ampacity = min(ampacity, _table(load, size, 60) or ampacity)
    return next((row.rating_a for row in TABLES["overcurrent_devices"] if not over(ampacity, row.rating_a)), ampacity)


def over_wire_voltage(load: CircuitLoad) -> bool:
    """Say whether building wire is at a voltage it is not made for."""
    return load.cable.marking is not None and over(load.voltage, WIRE_VOLTAGE.value.si)


def _stray(load: CircuitLoad) -> int | None:
    """Give the line of insulated conductors in a duct that are neither loaded nor, for each set there, a neutral and a
    ground on a line each: they may be another circuit, whose heat is not known.
    """
    sets = sets_in_a_duct(load)
    taken, loaded, beside = 0, load.cable.conductors, 0
    for index, line in enumerate(load.lines):
        cable = line.cable
        spare = 0 if cable.kind == "bare" else line.count * cores_of(cable)
        if cable == load.cable.given:
            carrying = min(loaded - taken, spare)
            taken, spare = taken + carrying, spare - carrying
        if not spare:
            continue
        beside += 1
        if spare > sets or beside > _NEUTRAL_AND_GROUND:
            return index
    return None


def _terminals(load: CircuitLoad, size: ConductorSize) -> tuple[int | None, float | None]:
    """Give what terminals are taken for [degC], and what they and the insulation allow all sets [A]; none above the
    scope of the rule.
    """
    if over(load.voltage, TERMINAL_VOLTAGE):
        return None, None
    given = load.given.terminal_rating
    degrees = _unmarked(load, size) if given is None or given is TerminalRating.UNMARKED else _DEGREES[given]
    return degrees, _table(load, size, min(degrees, _insulation(load)))


def _unmarked(load: CircuitLoad, size: ConductorSize) -> int:
    device = load.given.overcurrent_device
    rated = load.current if device is None else device.si
    return degrees_by_size(size) if rated is None else unmarked_degrees(rated)


def _insulation(load: CircuitLoad) -> int:
    """Give the column [degC] of the insulation of a conductor in the ground: by its marking, else by its limit."""
    marking = load.cable.marking
    limit = load.limit if marking is None else usual_limit(marking).value.si
    return column_of(limit) or COLUMNS[0]


def allowed_by_code(load: CircuitLoad) -> bool:
    """Say whether the code allows the conductors of a circuit for its current and device, its heat apart."""
    size, device = load.cable.size, load.given.overcurrent_device
    if too_small_in_parallel(load.sets, load.cable.area):
        return False
    allowed = None if size is None else _terminals(load, size)[1]
    if allowed is None:
        return True
    return not over(load.current or 0.0, allowed) and (
        device is None or not over(device.si, largest_device(load, allowed))
    )


def _table(load: CircuitLoad, size: ConductorSize, column: int) -> float | None:
    """Give the table ampacity of all sets [A]."""
    value = table_ampacity(load.cable.material, size, column)
    return None if value is None else value * load.sets


def _ambient_factor(ambient: float, column: int) -> float | None:
    for row in TABLES["ampacity_ambient_factors"]:
        if ambient - ZERO_CELSIUS <= row.to_degc + 1e-6:
            factor: float | None = getattr(row, f"factor_{column}")
            return factor
    return None


def _adjustment(conductors: int) -> float:
    for row in TABLES["ampacity_adjustments"]:
        if conductors >= row.count_from and (row.count_to is None or conductors <= row.count_to):
            return float(row.percent) / 100.0
    return 1.0


def _grounding(load: CircuitLoad) -> GroundingConductor | None:
    device = load.given.overcurrent_device
    if device is None:
        return None
    found: GroundingConductor = next(
        row for row in TABLES["equipment_grounding"] if not over(device.si, row.device_to_a)
    )
    return found


def _holds(load: CircuitLoad, least: GroundingConductor) -> bool:
    """Say whether a duct of the circuit holds a conductor beside the loaded ones that is large enough to ground it.

    Of those like the loaded ones, one for each set is the neutral.
    """
    sets, alike = sets_in_a_duct(load), -load.cable.conductors
    for line in load.lines:
        cable = line.cable
        if cable == load.cable.given:
            alike += line.count * cores_of(cable)
        elif _grounds(cable, least):
            return True
    return alike > sets and _grounds(load.cable.given, least)


def _grounds(cable: Cable, least: GroundingConductor) -> bool:
    if cable.kind == "multiconductor":
        return False
    if cable.kind != "measured":
        material, size = cable.material, cable.size
    elif cable.conductor is None or cable.conductor.size is None:
        return False
    else:
        material, size = cable.conductor.material, cable.conductor.size
    needed = least.copper if material is ConductorMaterial.COPPER else least.aluminum
    return not METAL_AREAS[size] < METAL_AREAS[needed]
