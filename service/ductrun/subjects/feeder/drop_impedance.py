"""The impedance a circuit is reckoned with: as given, or of the tables at its temperature and frequency."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ductrun.engineering.rounding import over
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice
from ductrun.kit.wording import listing, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.checks import WIRE_VOLTAGE
from ductrun.subjects.feeder.choices import CircuitConduit, CircuitSystem
from ductrun.subjects.feeder.impedances import TEMPERATURE, Impedance, impedance_of, listed
from ductrun.subjects.feeder.rating import FREQUENCY
from ductrun.units import Voltage

if TYPE_CHECKING:
    from ductrun.subjects.feeder.dropping import DroppedConductor, Dropping

CONDUIT_MATERIAL = choice("feeder.conduit_material", CircuitConduit)


def settled_impedance(
    given: Dropping, conductor: DroppedConductor, system: CircuitSystem, sheet: Worksheet
) -> Impedance:
    """Give the impedance of one conductor, as given or of the tables."""
    direct = system is CircuitSystem.DIRECT_CURRENT
    conduit = CONDUIT_MATERIAL.value
    if not direct and (given.resistance is None or given.reactance is None):
        conduit = sheet.settle("conduit_material", given.conduit_material, CONDUIT_MATERIAL)
    resistance = reactance = 0.0
    if given.resistance is None or (given.reactance is None and not direct):
        temperature = TEMPERATURE.value.si
        if given.resistance is None:
            temperature = sheet.settle("conductor_temperature", given.conductor_temperature, TEMPERATURE).si
        resistance, reactance = _table_impedance(conductor, conduit, temperature, direct=direct)
        sheet.rule("resistance_table" if direct else "impedance_table")
        if not direct:
            reactance *= _cycles(given, sheet)
            _caution_printed(given.voltage, sheet)
    return Impedance(
        resistance if given.resistance is None else given.resistance.si,
        0.0 if direct else reactance if given.reactance is None else given.reactance.si,
    )


def _cycles(given: Dropping, sheet: Worksheet) -> float:
    """Give the frequency over that of the table (ratio); refuse one that its resistance does not hold for."""
    frequency = sheet.settle("frequency", given.frequency, FREQUENCY).si
    if given.resistance is None and over(frequency, FREQUENCY.value.si):
        raise UnanswerableError(
            sheet.fault(
                "frequency/value",
                "frequency_over_table",
                f"Table 9 is printed for {FREQUENCY.value}, and the resistance grows above it: give resistance and "
                "reactance.",
                maximum=sheet.tell.given(FREQUENCY.value),
            )
        )
    return frequency / FREQUENCY.value.si


def _caution_printed(voltage: Voltage, sheet: Worksheet) -> None:
    """Caution of an impedance printed for building wire at a voltage that takes another cable."""
    if over(voltage.si, WIRE_VOLTAGE.value.si):
        sheet.find(
            Severity.CAUTION,
            "impedance_of_building_wire",
            f"Table 9 is printed for wire of {text_of(sheet.tell.given(WIRE_VOLTAGE.value))}: cable for "
            f"{text_of(sheet.tell.given(voltage))} has thicker walls and more reactance. Give resistance and reactance "
            "of its maker.",
            sheet.rule("impedance_table"),
            member="reactance",
        )


def _table_impedance(
    conductor: DroppedConductor, conduit: CircuitConduit, temperature: float, *, direct: bool
) -> Impedance:
    """Give the impedance of Table 9, or the resistance to direct current of Table 8, at a temperature [K]."""
    known = list(listed(conductor.material, conduit, direct=direct))
    if conductor.size not in known:
        raise UnanswerableError(
            conductor.sheet.fault(
                "size",
                "impedance_not_listed",
                f"Table {8 if direct else 9} has no {conductor.material.value} of this size: give resistance and "
                f"reactance. It has {listing(known)}.",
                known,
            )
        )
    return impedance_of(conductor.material, conductor.size, conduit, temperature, direct=direct)
