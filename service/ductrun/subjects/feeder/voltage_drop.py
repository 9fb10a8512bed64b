"""POST /v1/voltage-drop: what a circuit loses on its way to the load."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.rounding import over
from ductrun.kit import answers
from ductrun.kit.backing import GIVEN, PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.forms import Edition, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import apart, in_percent, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.feeder.choices import CircuitSystem
from ductrun.subjects.feeder.code_findings import find_small_in_parallel
from ductrun.subjects.feeder.dropping import TOTAL_LIMIT, Drop, Dropping, conductor_of, drop
from ductrun.subjects.feeder.power_factor import refuse_of_direct_current
from ductrun.subjects.feeder.table_ampacities import TABLE_VOLTAGE
from ductrun.subjects.parts.cables import Cable
from ductrun.subjects.parts.choices import ConductorSize


class VoltageDropRequest(Dropping):
    """A circuit and its length."""

    code_edition: Edition = None
    length: RunLength = Field(
        description="From the source to the load, one way.", examples=[{"value": 300, "unit": "ft"}]
    )
    cable: Cable = Field(description="One conductor of the circuit, or the cable that has them all.")


class VoltageDropResult(Struct, frozen=True, gc=False, kw_only=True):
    """What is lost, and what keeps within the limit."""

    current: Annotated[answers.Current, Meta(description="Of the circuit, all its sets together.")]
    drop: Annotated[answers.Voltage, Meta(description="Between lines, or between the two wires: exactly, by phasors.")]
    drop_percent: Annotated[float, Meta(description="Of the voltage at the source.")]
    load_voltage: Annotated[answers.Voltage, Meta(description="What is left at the load.")]
    table_drop: Annotated[
        answers.Voltage, Meta(description="As the tables have it: effective impedance times current and length.")
    ]
    table_drop_percent: Annotated[float, Meta(description="Of the voltage at the source.")]
    resistance: Annotated[answers.ResistancePerLength, Meta(description="Of one conductor.")]
    reactance: Annotated[answers.ResistancePerLength, Meta(description="Of one conductor to neutral.")]
    loss: Annotated[answers.Power, Meta(description="Heat of all conductors.")]
    energy_loss: Annotated[
        answers.Energy | UnsetType, Meta(description="In a year, if duration_per_year is given.")
    ] = UNSET
    limit_percent: Annotated[float, Meta(description="What it is held against.")]
    smallest_size: Annotated[
        ConductorSize | UnsetType,
        Meta(
            description="Within the limit, and carrying the current by the tables at unmarked terminals and with this "
            "insulation in a wet place. Where the power factor is the one at which the most is lost, each size is held "
            "to its own."
        ),
    ] = UNSET
    longest_length: Annotated[
        answers.Length | UnsetType,
        Meta(description="Within the limit, one way; absent where the longest run that may be given keeps it."),
    ] = UNSET


def assess(request: VoltageDropRequest, sheet: Worksheet) -> Drop:
    """Reckon the drop of a request."""
    sheet.follow_edition(request.code_edition)
    refuse_of_direct_current(request, request.system, sheet)
    conductor = conductor_of(request.cable, sheet.within("cable"))
    found = drop(request, conductor, request.length.si, sheet)
    report(request, found, sheet)
    if sheet.working is not None:
        _show(found, request.length.si, sheet)
    return found


def report(given: Dropping, found: Drop, sheet: Worksheet) -> None:
    """Hold a drop against the limit that was given, or tell the recommended one; caution of what is live."""
    percent, limit, limited = found.drop / found.voltage * 100.0, found.limit_percent, given.limit_percent is not None
    if limited:
        sheet.judge(not over(percent, limit))
    if over(percent, limit):
        larger = (
            "take more sets in parallel, or a higher voltage."
            if found.smallest is None
            else f"take larger conductors or more sets in parallel. {found.smallest.value} keeps it and carries the "
            "current."
        )
        lost, most = apart(in_percent(percent), in_percent(limit))
        sheet.find(
            Severity.VIOLATION if limited else Severity.CAUTION,
            "voltage_drop_over_limit",
            f"The circuit loses {text_of(sheet.tell.voltage(found.drop))} on its way, which is {lost} and over {most}: "
            f"{larger}",
            GIVEN if limited else sheet.rule("voltage_drop_notes"),
            in_percent(percent),
            in_percent(limit),
            member="limit_percent",
        )
    find_small_in_parallel(found.sets, found.area, found.conductor.sheet)
    _caution_ampacity(found, sheet)
    _note_size(given, found, sheet)
    sheet.caution(
        "drop_of_feeder_and_branch",
        f"The code recommends {TOTAL_LIMIT.value:g} percent for feeder and branch circuit together, for equipment that "
        "works well: add what the rest of the way loses. Ampacity is asked apart.",
        sheet.rule("voltage_drop_notes"),
    )


def _caution_ampacity(found: Drop, sheet: Worksheet) -> None:
    """Caution of a current that the tables do not allow the conductors, which no drop tells of."""
    allowed = found.table_ampacity
    if allowed is None or not over(found.current, allowed):
        return
    actual, limit = sheet.tell.current(found.current), sheet.tell.current(allowed)
    carried, most = apart(actual, limit)
    sheet.find(
        Severity.CAUTION,
        "over_table_ampacity",
        f"The current of {carried} is over the {most} that the tables allow these conductors at unmarked terminals and "
        "with their insulation in a wet place: take larger ones, or ask for their ampacity.",
        sheet.rule("terminations"),
        actual,
        limit,
        member="current",
    )


def _note_size(given: Dropping, found: Drop, sheet: Worksheet) -> None:
    """Say why no smallest size is told."""
    if found.smallest is not None or given.resistance is not None:
        return
    if over(found.voltage, TABLE_VOLTAGE):
        sheet.find(
            Severity.NOTE,
            "size_needs_ampacity",
            f"Above {text_of(sheet.tell.voltage(TABLE_VOLTAGE))} no table here says what a size carries: no smallest "
            "one is told. Ask for the ampacity of the cable.",
            PRACTICE,
            member="voltage",
        )
        return
    sheet.find(
        Severity.NOTE,
        "no_size_within_limit",
        f"No single size of the tables carries the current and keeps within {found.limit_percent:g} percent: take more "
        "sets in parallel, or a higher voltage.",
        PRACTICE,
        member="limit_percent",
    )


def _show(found: Drop, length: float, sheet: Worksheet) -> None:
    tell = sheet.tell
    resistance, reactance = found.impedance
    three = found.system is CircuitSystem.THREE_PHASE
    way = f"{found.current / found.sets:.6g} A, {resistance:.6g} and {reactance:.6g} ohm/m, {length:.6g} m"
    sheet.show(
        "Vr",
        "Vs^2 = (Vr pf + k I R)^2 + (Vr sin + k I X)^2",
        f"k = {'sqrt(3)' if three else '2'}, {way}, pf {found.power_factor:g}",
        tell.voltage(found.load_voltage),
    )
    sheet.show("VD", "k I L (R pf + X sin)", way, tell.voltage(found.table_drop))
    sheet.show("P", "n I^2 R L", way, tell.power(found.loss))


def tell(found: Drop, telling: Telling) -> VoltageDropResult:
    """Put a drop into the caller's units."""
    voltage, resistance = telling.voltage, telling.resistance_per_length
    return VoltageDropResult(
        current=telling.current(found.current),
        drop=voltage(found.drop),
        drop_percent=found.drop / found.voltage * 100.0,
        load_voltage=voltage(found.load_voltage),
        table_drop=voltage(found.table_drop),
        table_drop_percent=found.table_drop / found.voltage * 100.0,
        resistance=resistance(found.impedance.resistance),
        reactance=resistance(found.impedance.reactance),
        loss=telling.power(found.loss),
        energy_loss=UNSET if found.energy is None else telling.energy(found.energy),
        limit_percent=found.limit_percent,
        smallest_size=UNSET if found.smallest is None else found.smallest,
        longest_length=UNSET if found.longest is None else telling.distance(found.longest),
    )


OPERATION = Operation(
    name="voltage-drop",
    operation_id="calculate_voltage_drop",
    summary="Voltage drop of a circuit",
    description="Gives the voltage a circuit loses on its way to the load, by phasors and as the tables have it, what "
    "is left at the load, the heat of the conductors, and the smallest size and the longest run within a limit.",
    request=VoltageDropRequest,
    result=VoltageDropResult,
    assess=assess,
    tell=tell,
    example={
        "system": "three_phase",
        "voltage": {"value": 480, "unit": "V"},
        "current": {"value": 340, "unit": "A"},
        "power_factor": 0.85,
        "length": {"value": 300, "unit": "ft"},
        "cable": {"kind": "listed", "insulation": "XHHW-2", "size": "500 kcmil", "material": "copper"},
        "parallel_count": 1,
        "conduit_material": "pvc",
        "conductor_temperature": {"value": 75, "unit": "degC"},
        "limit_percent": 3,
        "code_edition": "2023",
        "frequency": {"value": 60, "unit": "Hz"},
        "duration_per_year": {"value": 4000, "unit": "h"},
    },
)
