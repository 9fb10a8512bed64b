"""The voltage a circuit loses on its way: practice, and the core that reckons it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import voltage_drop as engineering
from ductrun.kit.defaults import by_rule, count, number
from ductrun.kit.forms import RUN_LENGTH, Between, Form, Omissible, between
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.choices import CircuitConduit, CircuitSystem
from ductrun.subjects.feeder.circuits import SYSTEM, CircuitCurrent, usual_limit
from ductrun.subjects.feeder.drop_impedance import CONDUIT_MATERIAL, settled_impedance
from ductrun.subjects.feeder.drop_sizes import Case, Wiring, allowed_current, longest_run, smallest, voltage_at_load
from ductrun.subjects.feeder.impedances import TEMPERATURE, Impedance
from ductrun.subjects.feeder.loaded_cable import largest_line
from ductrun.subjects.feeder.power_factor import STATED, settled_power_factor, worst_of
from ductrun.subjects.feeder.rating import FREQUENCY, SystemFrequency
from ductrun.subjects.feeder.table_ampacities import column_of, unmarked_degrees
from ductrun.subjects.parts.cable_layers import MetalResistance
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.cables import Cable, CableLine
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize, Insulation
from ductrun.units import ApparentPower, Current, Duration, Power, ResistancePerLength, Temperature, Voltage

PARALLEL_COUNT = count("feeder.parallel_count")
LIMIT = number("feeder.drop_limit_percent")
TOTAL_LIMIT = number("feeder.total_drop_limit_percent")
_JUST_MORE = 1.01
_LONGEST = RUN_LENGTH.high.si
LOOPS = {CircuitSystem.THREE_PHASE: math.sqrt(3.0), CircuitSystem.SINGLE_PHASE: 2.0, CircuitSystem.DIRECT_CURRENT: 2.0}
WIRES = {CircuitSystem.THREE_PHASE: 3, CircuitSystem.SINGLE_PHASE: 2, CircuitSystem.DIRECT_CURRENT: 2}

DropVoltage = Annotated[Voltage, Between(Voltage.parse(1, "V"), Voltage.parse(50, "kV"))]
LoadPower = Annotated[Power, Between(Power.parse(0.01, "W"), Power.parse(1_000_000, "kW"))]
LoadApparentPower = Annotated[
    ApparentPower, Between(ApparentPower.parse(0.00001, "kVA"), ApparentPower.parse(1_000_000, "kVA"))
]
MetalTemperature = Annotated[Temperature, Between(Temperature.parse(-40, "degC"), Temperature.parse(250, "degC"))]
Reactance = Annotated[
    ResistancePerLength,
    Between(ResistancePerLength.parse(0, "ohm/1000ft"), ResistancePerLength.parse(1_000, "ohm/1000ft")),
]


class DroppedLoad(Form):
    """What a circuit carries, and what its conductors are to that."""

    power: Omissible[LoadPower] = Field(
        default=None,
        description="Power of the load at the voltage of the source; this, current or apparent_power.",
        examples=[{"value": 225, "unit": "kW"}],
    )
    apparent_power: Omissible[LoadApparentPower] = Field(
        default=None,
        description="Apparent power of the load at the voltage of the source; this, current or power.",
        examples=[{"value": 283, "unit": "kVA"}],
    )
    power_factor: Omissible[Annotated[float, Field(ge=0.05, le=1)]] = Field(
        default=None,
        description="Of the load, which lags; of direct current there is none.",
        examples=[0.85],
        json_schema_extra=STATED,
    )
    resistance: Omissible[MetalResistance] = Field(
        default=None,
        description="Of one conductor at its temperature, in place of the table's.",
        examples=[{"value": 0.027, "unit": "ohm/1000ft"}],
        json_schema_extra=by_rule("that of its size"),
    )
    reactance: Omissible[Reactance] = Field(
        default=None,
        description="Of one conductor to neutral, in place of the table's.",
        examples=[{"value": 0.039, "unit": "ohm/1000ft"}],
        json_schema_extra=by_rule("that of its size"),
    )
    limit_percent: Omissible[Annotated[float, Field(ge=0.01, le=50)]] = Field(
        default=None,
        description="Most that may be lost.",
        examples=[3],
        json_schema_extra=by_rule(f"the {LIMIT.value:g} that the code recommends, which is told and not judged"),
    )
    duration_per_year: Omissible[Annotated[Duration, between(Duration, 0, 8784, "h")]] = Field(
        default=None,
        description="At this load, to tell what is lost in a year.",
        examples=[{"value": 4000, "unit": "h"}],
    )


class Dropping(DroppedLoad):
    """What a circuit carries, and what it is wired with."""

    system: Omissible[CircuitSystem] = Field(
        default=None,
        description="Three phases between lines, or two wires.",
        examples=["three_phase"],
        json_schema_extra=SYSTEM.stated,
    )
    voltage: DropVoltage = Field(
        description="At the source: between lines, or between the two wires.", examples=[{"value": 480, "unit": "V"}]
    )
    current: Omissible[CircuitCurrent] = Field(
        default=None,
        description="Current of the circuit, all its sets together; this, power or apparent_power.",
        examples=[{"value": 340, "unit": "A"}],
    )
    parallel_count: Omissible[Annotated[int, Field(ge=1, le=100)]] = Field(
        default=None, description="Sets in parallel.", examples=[1], json_schema_extra=PARALLEL_COUNT.stated
    )
    conduit_material: Omissible[CircuitConduit] = Field(
        default=None,
        description="Conduit the circuit lies in, as Table 9 tells them apart.",
        examples=["pvc"],
        json_schema_extra=CONDUIT_MATERIAL.stated,
    )
    conductor_temperature: Omissible[MetalTemperature] = Field(
        default=None,
        description="Temperature of the conductors under load.",
        examples=[{"value": 75, "unit": "degC"}],
        json_schema_extra=TEMPERATURE.stated,
    )
    frequency: Omissible[SystemFrequency] = Field(
        default=None,
        description="Of the alternating current; the printed reactance is for 60 Hz and goes with it.",
        examples=[{"value": 60, "unit": "Hz"}],
        json_schema_extra=FREQUENCY.stated,
    )


class DroppedConductor(NamedTuple):
    """What the current flows in: metal and size of one conductor, of so many `cores` (count) in a cable, 1 of a single
    one, its metal `area` [m2] where that is given, the `marking` of its insulation if it has one, and the `sheet` at
    the place of its cable.
    """

    material: ConductorMaterial
    size: ConductorSize | None
    sheet: Worksheet
    area: float | None
    cores: int = 1
    marking: Insulation | None = None


class Drop(NamedTuple):
    """What a circuit loses over a length: voltages [V], `current` of all sets [A], `loss` in all conductors [W].

    `impedance` of one conductor; the drop exactly and as the tables have it, None where the source cannot drive the
    current; `longest` length within the limit [m], None where that is longer than any request; the `smallest` size
    within it that the code allows for the current, None where none is; the `table_ampacity` that unmarked terminals and
    the insulation in a wet place allow all sets [A], to 2000 V; the `conductor`.
    """

    system: CircuitSystem
    voltage: float
    current: float
    power_factor: float
    sets: int
    impedance: Impedance
    load_voltage: float
    table_drop: float
    loss: float
    energy: float | None
    limit_percent: float
    longest: float | None
    smallest: ConductorSize | None
    table_ampacity: float | None
    conductor: DroppedConductor

    @property
    def area(self) -> float:
        """Metal of one conductor [m2]; of one that is not known so much that nothing is too small."""
        if self.conductor.size is not None:
            return METAL_AREAS[self.conductor.size]
        return math.inf if self.conductor.area is None else self.conductor.area

    @property
    def drop(self) -> float:
        """What is lost between lines, or between the two wires [V]."""
        return self.voltage - self.load_voltage


def conductor_of(cable: Cable, sheet: Worksheet) -> DroppedConductor:
    """Give the conductor of a cable that carries the current."""
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each narrows the type)
        held = cable.conductor
        if held is None:
            raise UnanswerableError(sheet.fault("conductor", "missing", "Give the conductor that carries the current."))
        cores = held.count if cable.kind == "multiconductor" else 1
        area = None if held.area is None else held.area.si
        return DroppedConductor(held.material, held.size, sheet.within("conductor"), area, cores)
    if cable.material is None:
        raise UnanswerableError(
            sheet.fault("material", "missing", "Give the metal: aluminum loses more than copper of the same size.")
        )
    marking = None if cable.kind == "bare" else cable.insulation
    return DroppedConductor(cable.material, cable.size, sheet, None, marking=marking)


def conductor_in(lines: Sequence[CableLine], sheet: Worksheet) -> DroppedConductor:
    """Give the conductor that carries the current among all cables of a duct, on the sheet of their list."""
    at = largest_line(lines, sheet)
    return conductor_of(lines[at].cable, sheet.within(f"{at}/cable"))


def drop(
    given: Dropping, conductor: DroppedConductor, length: float, sheet: Worksheet, device: Current | None = None
) -> Drop:
    """Give what a circuit loses over a length, one way [m], with the overcurrent device ahead if that is known."""
    system = sheet.settle("system", given.system, SYSTEM)
    _refuse_few_cores(conductor, system)
    direct = system is CircuitSystem.DIRECT_CURRENT
    sets = sheet.settle("parallel_count", given.parallel_count, PARALLEL_COUNT)
    impedance = settled_impedance(given, conductor, system, sheet)
    power_factor = 1.0 if direct else settled_power_factor(given, impedance, sheet)
    current = _current(given, system, power_factor, sheet)
    voltage, loop = given.voltage.si, LOOPS[system]
    at_load = voltage_at_load(voltage, loop, current / sets, impedance, length, power_factor)
    limit = LIMIT.value if given.limit_percent is None else given.limit_percent
    longest = longest_run(voltage, loop, current / sets, impedance, power_factor, limit)
    if at_load is None:
        drawn = loop * current / sets * length * math.hypot(*impedance)
        grows = 1.0 if given.current is not None else 0.5  # a load of given power draws less of a higher voltage
        least = sheet.tell.voltage(voltage * (_JUST_MORE * drawn / voltage) ** grows)
        raise UnanswerableError(
            sheet.fault(
                "voltage/value",
                "cannot_drive_the_current",
                f"This voltage does not drive the current over the length: {text_of(least)} would, with little left "
                f"at the load, and {text_of(sheet.tell.distance(longest))} keeps within {limit:g} percent. Raise it, "
                "shorten the run, or take larger conductors.",
                minimum=least,
            )
        )
    effective = engineering.effective_impedance(*impedance, power_factor)
    loss = engineering.loss(WIRES[system] * sets, current / sets, impedance.resistance, length)
    lasting = given.duration_per_year
    wiring = Wiring(
        given.conduit_material or CONDUIT_MATERIAL.value,
        (given.conductor_temperature or TEMPERATURE.value).si,
        1.0 if given.frequency is None else given.frequency.si / FREQUENCY.value.si,
        _column(conductor, current if device is None else device.si),
        direct=direct,
        # told or taken, that of the most loss is that of every size: a request completed is answered as it was
        power_factor=None
        if not direct and given.power is None and power_factor == worst_of(impedance)
        else power_factor,
    )
    return Drop(
        system=system,
        voltage=voltage,
        current=current,
        power_factor=power_factor,
        sets=sets,
        impedance=impedance,
        load_voltage=at_load,
        table_drop=engineering.table_drop(loop, current / sets, effective, length),
        loss=loss,
        energy=None if lasting is None else loss * lasting.si,
        limit_percent=limit,
        longest=None if longest > _LONGEST else longest,
        smallest=None
        if given.resistance is not None
        else smallest(conductor.material, wiring, Case(voltage, loop, current, sets, length, limit)),
        table_ampacity=allowed_current(conductor.material, conductor.size, wiring.column, voltage, sets),
        conductor=conductor,
    )


def _column(conductor: DroppedConductor, rated: float) -> int:
    """Give the column [degC] that unmarked terminals of a circuit of a rating [A], and insulation, leave of the table.

    The place may be a wet one, as every raceway in the ground is.
    """
    terminals = unmarked_degrees(rated)
    return min(terminals, column_of(usual_limit(conductor.marking).value.si) or terminals)


def _refuse_few_cores(conductor: DroppedConductor, system: CircuitSystem) -> None:
    """Refuse a cable of several conductors that has too few for a circuit."""
    needed = WIRES[system]
    if 1 < conductor.cores < needed:
        raise UnanswerableError(
            conductor.sheet.fault(
                "count",
                "too_few_conductors",
                f"A cable of {conductor.cores} conductors carries no circuit that needs {needed}: give the cable that "
                "has them all, or the system it serves.",
                minimum=needed,
            )
        )


def _current(given: Dropping, system: CircuitSystem, power_factor: float, sheet: Worksheet) -> float:
    """Give the current of a circuit [A], from what is given of its load."""
    told = [one for one in (given.current, given.power, given.apparent_power) if one is not None]
    if len(told) != 1:
        code = "contradiction" if told else "missing"
        raise UnanswerableError(
            sheet.fault("current", code, "Give current, power or apparent_power: one of the three.")
        )
    if given.current is not None:
        return given.current.si
    phases = math.sqrt(3.0) if system is CircuitSystem.THREE_PHASE else 1.0
    if given.power is not None:
        return engineering.current_of_power(given.power.si, given.voltage.si, phases, power_factor)
    return engineering.current_of_power(told[0].si, given.voltage.si, phases, 1.0)
