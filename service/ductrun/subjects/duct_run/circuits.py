"""The circuits of a run: in which ducts each lies, from which stop to which, and what cables it has."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import PlaceKind, Service
from ductrun.subjects.duct_run.form import SERVICE, Circuit
from ductrun.subjects.duct_run.places import Stop
from ductrun.subjects.parts.cable_set import CableSet, settle_cables
from ductrun.subjects.parts.conductors import ConductorSet, conductor_set
from ductrun.units import Voltage

_DUCT = re.compile(r"([1-9]\d?)-([1-9]\d?)", re.ASCII)
NO_CABLE = {PlaceKind.CAPPED}


class Carried(NamedTuple):
    """The cables in each duct of a circuit, as a pull and as a fill take them; `key` is alike for alike cables."""

    key: int
    pulled: CableSet
    filling: ConductorSet


class PlacedCircuit(NamedTuple):
    """A circuit: as given, its name and sheet, the indexes of its ducts, its cables, the stops between which it runs,
    and its voltage, if that is known.
    """

    given: Circuit
    name: str
    sheet: Worksheet
    ducts: list[int]
    cables: Carried
    start: int
    end: int
    service: Service
    voltage: Voltage | None


def place_circuits(
    given: Sequence[Circuit], bank: RunBank, stops: Sequence[Stop], sheet: Worksheet
) -> list[PlacedCircuit]:
    """Place the circuits of a run; all faults of all of them at once."""
    faults = Gathering()
    with faults:
        _refuse_twice(given, sheet)
    ducts: list[list[int]] = []
    with faults:
        ducts = _ducts_of(given, bank, sheet)
    cables: dict[int, Carried] = {}
    placed = []
    for index, one in enumerate(given):
        here = sheet.within(f"circuits/{index}")
        with faults:
            source = _source(given, index, here)
            if source not in cables:
                cables[source] = _carried(given[source], source, sheet)
            start, end = _ends(one, stops, here)
            name = one.name or f"Circuit {index + 1}"
            service = here.settle("service", one.service, SERVICE)
            voltage = one.voltage or given[source].voltage
            if ducts:
                placed.append(
                    PlacedCircuit(one, name, here, ducts[index], cables[source], start, end, service, voltage)
                )
    faults.stop()
    return placed


def _refuse_twice(given: Sequence[Circuit], sheet: Worksheet) -> None:
    seen: set[str] = set()
    faults = []
    for index, one in enumerate(given):
        if one.name is not None and one.name in seen:
            faults.append(
                sheet.fault(f"circuits/{index}/name", "name_given_twice", "Another circuit has it: give its own.")
            )
        seen.add(one.name or "")
    if faults:
        raise UnanswerableError(*faults)


def _source(given: Sequence[Circuit], index: int, here: Worksheet) -> int:
    """Give the index of the circuit whose cables one has."""
    one = given[index]
    if (one.cables is None) == (one.same_as is None):
        both = one.cables is not None
        words = "Give either cables or same_as, not both." if both else "Give either cables or same_as."
        raise UnanswerableError(here.fault("same_as" if both else "cables", "one_of_two", words))
    if one.same_as is None:
        return index
    having = {other.name: at for at, other in enumerate(given) if other.name is not None and other.cables is not None}
    if one.same_as not in having:
        raise UnanswerableError(
            here.fault("same_as", "no_such_circuit", "No circuit of that name has cables of its own.", list(having))
        )
    return having[one.same_as]


def _carried(circuit: Circuit, index: int, sheet: Worksheet) -> Carried:
    place = sheet.within(f"circuits/{index}/cables")
    lines = circuit.cables or []
    faults = Gathering()
    with faults:
        pulled = settle_cables(lines, place)
    with faults:
        filling = conductor_set(lines, place)
    faults.stop()
    return Carried(index, pulled, filling)


def _ducts_of(given: Sequence[Circuit], bank: RunBank, sheet: Worksheet) -> list[list[int]]:
    """Give the ducts of every circuit: those it names, else the first that are free, from the bottom left."""
    at = {duct.name: index for index, duct in enumerate(bank.ducts)}
    taken: dict[int, int] = {}
    faults = Gathering()
    for index, one in enumerate(given):
        for position, name in enumerate(one.ducts or ()):
            with faults:
                place = sheet.within(f"circuits/{index}")
                taken[_named(name, f"ducts/{position}", at, taken, place)] = index
    for index, one in enumerate(given):
        if one.ducts is None:
            with faults:
                _take_free(one, index, len(bank.ducts), taken, sheet.within(f"circuits/{index}"))
        elif one.duct_count is not None:
            with faults:
                place = sheet.within(f"circuits/{index}")
                raise UnanswerableError(place.fault("duct_count", "one_of_two", "Give either ducts or duct_count."))
    faults.stop()
    return [[duct for duct, circuit in sorted(taken.items()) if circuit == index] for index in range(len(given))]


def _named(name: str, member: str, at: dict[str, int], taken: dict[int, int], place: Worksheet) -> int:
    if not _DUCT.fullmatch(name) or name not in at:
        words = "The bank has no such duct: they are named tier-position, tier 1 the bottom and position 1 the left."
        raise UnanswerableError(place.fault(member, "no_such_duct", words, list(at)))
    if at[name] in taken:
        free = [one for one, index in at.items() if index not in taken]
        raise UnanswerableError(place.fault(member, "duct_taken", "Another circuit lies in this duct.", free))
    return at[name]


def _take_free(one: Circuit, index: int, count: int, taken: dict[int, int], place: Worksheet) -> None:
    wanted = one.duct_count or 1
    free = [duct for duct in range(count) if duct not in taken]
    if len(free) < wanted:
        raise UnanswerableError(
            place.fault("duct_count", "no_free_duct", f"{len(free)} ducts of the bank are free.", maximum=len(free))
        )
    for duct in free[:wanted]:
        taken[duct] = index


def _ends(one: Circuit, stops: Sequence[Stop], here: Worksheet) -> tuple[int, int]:
    """Give the stops between which a circuit runs."""
    names = {stop.name: index for index, stop in enumerate(stops)}
    faults = Gathering()
    start, end = 0, len(stops) - 1
    with faults:
        start = _stop(one.start, names, "start", start, here)
    with faults:
        end = _stop(one.end, names, "end", end, here)
    faults.stop()
    if start >= end:
        words = "A circuit runs toward the end of the run: it ends beyond where it begins."
        raise UnanswerableError(here.fault("end", "ends_before_it_begins", words, list(names)[start + 1 :]))
    for index, member in ((start, "start"), (end, "end")):
        if stops[index].given.kind in NO_CABLE:
            words = f"{stops[index].name} is capped: no cable ends there. Leave it out, or say what stands there."
            raise UnanswerableError(here.fault(member, "capped", words))
    return start, end


def _stop(name: str | None, names: dict[str, int], member: str, default: int, here: Worksheet) -> int:
    if name is None:
        return default
    if name not in names:
        raise UnanswerableError(
            here.fault(member, "no_such_place", "No end or pull point of the run has that name.", list(names))
        )
    return names[name]
