"""Circuits with a load, and the voltage that each loses on its way."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, NamedTuple

from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.defaults import Default
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AssessedStretch
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.load import RunLoad
from ductrun.subjects.duct_run.practice import LayeredSheet, laid_over
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.duct_run.transitions import called
from ductrun.subjects.feeder.choices import CircuitConduit, CircuitSystem
from ductrun.subjects.feeder.circuits import SYSTEM, CircuitLoad, load_of, sets_of, usual_limit
from ductrun.subjects.feeder.dropping import Drop, conductor_in, drop
from ductrun.subjects.feeder.loaded_cable import LoadedLine, loaded_line
from ductrun.subjects.feeder.power_factor import refuse_of_direct_current
from ductrun.subjects.feeder.voltage_drop import report as report_drop
from ductrun.subjects.parts.cables import CableLine
from ductrun.subjects.parts.choices import ConduitType

_STEEL = {
    ConduitType.RMC,
    ConduitType.IMC,
    ConduitType.EMT,
    ConduitType.FMC,
    ConduitType.LFMC,
}


class Feeder(NamedTuple):
    """A circuit with a load, `at` its index: the load and its cables, each with the sheet of its place.

    `load` is how it warms its ducts, None where no buried stretch asks or the layers of its cable are not given; `drop`
    what it loses on its way, None where no current is given.
    """

    at: int
    circuit: PlacedCircuit
    given: RunLoad
    sheet: Worksheet
    lines: Sequence[CableLine]
    cables_sheet: Worksheet
    load: CircuitLoad | None
    drop: Drop | None


def feeders_of(circuits: Sequence[PlacedCircuit], stretches: Sequence[AssessedStretch], asked: Asked) -> list[Feeder]:
    """Give the circuits that have a load, with what each loses on its way; all faults at once."""
    faults = Gathering()
    found = []
    for index, circuit in enumerate(circuits):
        loaded = _load_of(circuit, asked)
        if loaded is None:
            continue
        passed = circuit.passed(stretches)
        with faults, asked.names.about(circuit.name, passed[0].laid.station):
            found.append(_feeder(index, circuit, loaded, passed, asked))
    faults.stop()
    return found


def _load_of(circuit: PlacedCircuit, asked: Asked) -> tuple[RunLoad, Worksheet] | None:
    """Give the load of a circuit with its sheet: its own, or that of the circuit whose cables it has."""
    if circuit.given.load is not None:
        return circuit.given.load, circuit.sheet.within("load")
    source = circuit.cables.key
    load = (asked.request.circuits or [])[source].load
    if load is None:
        return None
    return load, asked.sheet.within(f"circuits/{source}/load", about=circuit.sheet.place)


def _feeder(
    index: int,
    circuit: PlacedCircuit,
    loaded: tuple[RunLoad, Worksheet],
    passed: Sequence[AssessedStretch],
    asked: Asked,
) -> Feeder:
    given, place = loaded
    refuse_of_direct_current(given, given.system, place)
    source = circuit.cables.key
    lines: Sequence[CableLine] = (asked.request.circuits or [])[source].cables or []
    cables = asked.sheet.within(f"circuits/{source}/cables")
    line = loaded_line(lines, given.loaded_conductor_count, cables, place.within("loaded_conductor_count"))
    laid, given_at = _practice(circuit, given, cables, asked)
    load = None
    if any(stretch.burial is not None for stretch in passed) and _has_layers(lines[line.at]):
        layered = LayeredSheet(place, place, given_at, place.about)
        load = load_of(laid, circuit.name, circuit.ducts, circuit.sheet.within("ducts"), lines, cables, layered)
    found = None
    if any(one is not None for one in (given.current, given.power, given.apparent_power)):
        layered = LayeredSheet(place, place, given_at, circuit.sheet.place)
        wired = laid_over(laid, {"conduit_material": _conduit(circuit, given, passed, place)})
        found = _drop(circuit, wired, line, lines, passed, (layered, cables))
    if load is not None and found is not None:
        load = load._replace(current=found.current)
    return Feeder(index, circuit, given, place, lines, cables, load, found)


def _practice(circuit: PlacedCircuit, given: RunLoad, cables: Worksheet, asked: Asked) -> tuple[Any, dict[str, str]]:
    """Give a load at the voltage of its circuit and the frequency of the run, with the pointers of these two."""
    if circuit.voltage is None:
        words = "Give the voltage: what a load loses on its way is a share of it, and insulation is made for one."
        own_load = circuit.given.load is not None
        where = circuit.sheet if own_load else asked.sheet.within(f"circuits/{circuit.cables.key}")
        raise UnanswerableError(where.fault("voltage", "missing", words))
    own = circuit.given.voltage is not None
    redirected = {
        "voltage": circuit.sheet.pointer("voltage") if own else cables.place.removesuffix("cables") + "voltage",
        "frequency": asked.sheet.pointer("rating/frequency"),
    }
    rating = asked.request.rating
    frequency = None if rating is None else rating.frequency
    return laid_over(given, {"voltage": circuit.voltage, "frequency": frequency}), redirected


def _has_layers(line: CableLine) -> bool:
    """Say whether it is known what the heat of a cable has to cross."""
    cable = line.cable
    measured = cable.kind == "measured" or cable.kind == "multiconductor"  # noqa: PLR1714  (each narrows the type)
    return not measured or getattr(cable, "layers", None) is not None


def _drop(
    circuit: PlacedCircuit,
    given: Any,
    line: LoadedLine,
    lines: Sequence[CableLine],
    passed: Sequence[AssessedStretch],
    sheets: tuple[Worksheet, Worksheet],
) -> Drop:
    """Give what a circuit loses from where it begins to where it ends, along the center line."""
    place, cables = sheets
    system = place.settle("system", given.system, SYSTEM)
    phases = line.conductors - (given.loaded_neutral_count or 0)
    cable = lines[line.at].cable
    marking = getattr(cable, "insulation", None)
    dropping: Any = laid_over(
        given,
        {
            "parallel_count": sets_of(
                system, len(circuit.ducts), phases, place, counted=given.loaded_conductor_count is not None
            ),
            "conductor_temperature": place.settle("temperature_limit", given.temperature_limit, usual_limit(marking)),
        },
    )
    found = drop(dropping, conductor_in(lines, cables), length_of(passed), place, given.overcurrent_device)
    report_drop(dropping, found, place)
    return found


def length_of(passed: Sequence[AssessedStretch]) -> float:
    """Give the length [m] of stretches along the center line, risers included."""
    return sum([stretch.laid.length for stretch in passed])


def _conduit(
    circuit: PlacedCircuit, given: RunLoad, passed: Sequence[AssessedStretch], place: Worksheet
) -> CircuitConduit | None:
    """Give the conduit on the way of a circuit in which it loses the most, None where no table is read by it."""
    if given.conduit_material is not None:
        return given.conduit_material
    no_table = given.resistance is not None and given.reactance is not None
    if no_table or given.system is CircuitSystem.DIRECT_CURRENT:
        return None
    return place.settle("conduit_material", None, _most_losing(circuit, passed))


def _most_losing(circuit: PlacedCircuit, passed: Sequence[AssessedStretch]) -> Default[CircuitConduit]:
    """Give the conduit that a circuit loses the most in, with where on its way that lies."""
    for stretch in passed:
        for index in circuit.ducts:
            conduit = stretch.bank.ducts[index].conduit
            ways = [(conduit, stretch.laid.name)]
            ways += [(conduit_of_riser(one.stop, conduit), f"the riser at {one.stop.name}") for one in stretch.risers]
            for one, where in ways:
                if one.type is None or one.type in _STEEL:
                    what = "of no type given" if one.type is None else called(one)
                    return Default(CircuitConduit.STEEL, WORKED_OUT.noting(f": {where} is {what}, taken as steel"))
    return Default(CircuitConduit.PVC, WORKED_OUT.noting(": all conduit on its way is plastic"))
