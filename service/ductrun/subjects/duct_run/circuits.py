"""The circuits of a run: in which ducts each lies, from which stop to which, and what cables it has."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple, TypeVar

from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import PlaceKind, Service
from ductrun.subjects.duct_run.form import SERVICE, Circuit
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.cable_set import CableSet, settle_cables
from ductrun.subjects.parts.conductors import ConductorSet, conductor_set
from ductrun.units import Voltage

T = TypeVar("T")
NO_CABLE = {PlaceKind.CAPPED}


class Carried(NamedTuple):
    """The cables in each duct of a circuit, as a pull and as a fill take them; `key` is alike for alike cables."""

    key: int
    pulled: CableSet
    filling: ConductorSet


class PlacedCircuit(NamedTuple):
    """A circuit: as given, its name and sheet, the indexes of its ducts, its cables, the stops between which it runs,
    the indexes of the stretches that it passes, and its voltage, if that is known.
    """

    given: Circuit
    name: str
    sheet: Worksheet
    ducts: list[int]
    cables: Carried
    start: int
    end: int
    passes: range
    service: Service
    voltage: Voltage | None

    def passed(self, stretches: Sequence[T]) -> list[T]:
        """Give those of the stretches of the run that it passes."""
        return [stretches[index] for index in self.passes]


def place_circuits(
    given: Sequence[Circuit], bank: RunBank, stops: Sequence[Stop], spans: Sequence[range], sheet: Worksheet
) -> list[PlacedCircuit]:
    """Place the circuits of a run; all faults of all of them at once."""
    faults = Gathering()
    with faults:
        _refuse_twice(given, sheet)
    ends = []
    for index, one in enumerate(given):
        ends.append((0, len(stops) - 1))
        with faults:
            ends[-1] = _ends(one, stops, sheet.within(f"circuits/{index}"))
    ducts: list[list[int]] = []
    with faults:
        ducts = _ducts_of(given, ends, bank, sheet)
    cables: dict[int, Carried] = {}
    placed = []
    for index, one in enumerate(given):
        here = sheet.within(f"circuits/{index}")
        with faults:
            chain = _sources(given, index, here)
            source = chain[-1]
            if source not in cables:
                cables[source] = _carried(given[source], source, sheet)
            name = one.name or f"Circuit {index + 1}"
            service = here.settle("service", one.service, SERVICE)
            _refuse_mixed(one, given[source], service, here)
            voltage = next((given[at].voltage for at in chain if given[at].voltage is not None), None)
            if ducts:
                start, end = ends[index]
                passes = range(spans[start].start, spans[end - 1].stop)
                lying = ducts[index], cables[source], start, end, passes
                placed.append(PlacedCircuit(one, name, here, *lying, service, voltage))
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


def _sources(given: Sequence[Circuit], index: int, here: Worksheet) -> list[int]:
    """Give the index of a circuit and of those whose cables it has, the one with cables of its own last."""
    one = given[index]
    if (one.cables is None) == (one.same_as is None):
        both = one.cables is not None
        words = "Give either cables or same_as, not both." if both else "Give either cables or same_as."
        raise UnanswerableError(here.fault("same_as" if both else "cables", "one_of_two", words))
    named = {other.name: at for at, other in enumerate(given) if other.name is not None}
    chain = [index]
    while given[chain[-1]].cables is None:
        follows = named.get(given[chain[-1]].same_as or "")
        if follows is None or follows in chain:
            having = [other.name for other in given if other.name is not None and other.cables is not None]
            words = "No circuit of that name leads to cables."
            raise UnanswerableError(here.fault("same_as", "no_such_circuit", words, having))
        chain.append(follows)
    return chain


def _refuse_mixed(one: Circuit, source: Circuit, service: Service, here: Worksheet) -> None:
    """Refuse a signal circuit with a load, and one that would have the cables of a circuit that is none."""
    if service is Service.SIGNAL and one.load is not None:
        words = "A signal circuit has no load that is rated here: leave it out, or give the service of a power circuit."
        raise UnanswerableError(here.fault("load", "load_of_a_signal_circuit", words))
    if one is not source and service != (source.service or SERVICE.value):
        other = source.service or SERVICE.value
        words = f"{one.same_as} is a {other} circuit and this one a {service} circuit: give its own cables."
        raise UnanswerableError(here.fault("same_as", "service_differs", words))


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


class _Taken:
    """The ducts that circuits lie in, each from stop to stop: where one ends in a duct another may begin."""

    def __init__(self, count: int, ends: Sequence[tuple[int, int]]) -> None:
        self._ends = ends
        self._lying: list[list[int]] = [[] for _ in range(count)]

    def free(self, circuit: int) -> list[int]:
        """Give the ducts in which no other circuit lies anywhere on the way of one."""
        return [duct for duct, lying in enumerate(self._lying) if not lying or self.is_free(duct, circuit)]

    def is_free(self, duct: int, circuit: int) -> bool:
        """Say whether no other circuit lies in a duct anywhere on the way of one."""
        start, end = self._ends[circuit]
        others = [self._ends[one] for one in self._lying[duct]]
        return all(until <= start or end <= since for since, until in others)

    def take(self, duct: int, circuit: int) -> None:
        """Lay a circuit in a duct."""
        self._lying[duct].append(circuit)

    def ducts(self) -> list[list[int]]:
        """Give the ducts of every circuit."""
        found: list[list[int]] = [[] for _ in self._ends]
        for duct, lying in enumerate(self._lying):
            for circuit in lying:
                found[circuit].append(duct)
        return found


def _ducts_of(
    given: Sequence[Circuit], ends: Sequence[tuple[int, int]], bank: RunBank, sheet: Worksheet
) -> list[list[int]]:
    """Give the ducts of every circuit: those it names, else the first that are free, from the bottom left."""
    named = {duct.name: at for at, duct in enumerate(bank.ducts)}
    taken = _Taken(len(named), ends)
    faults = Gathering()
    for index, one in enumerate(given):
        with faults:
            _take_named(one.ducts or (), named, taken, index, sheet.within(f"circuits/{index}"))
    for index, one in enumerate(given):
        place = sheet.within(f"circuits/{index}")
        with faults:
            if one.ducts is None:
                _take_free(one, index, taken, place)
            elif one.duct_count is not None:
                raise UnanswerableError(place.fault("duct_count", "one_of_two", "Give either ducts or duct_count."))
    faults.stop()
    return taken.ducts()


def _take_named(wanted: Sequence[str], named: Mapping[str, int], taken: _Taken, circuit: int, place: Worksheet) -> None:
    """Lay a circuit in the ducts that it names; the ducts that are free are looked for once for all that are not."""
    names = list(named)
    unknown, refused = [], []
    for position, name in enumerate(wanted):
        duct = named.get(name)
        if duct is None:
            unknown.append(position)
        elif taken.is_free(duct, circuit):
            taken.take(duct, circuit)
        else:
            refused.append(position)
    words = "The bank has no such duct: they are named tier-position, tier 1 the bottom and position 1 the left."
    faults = [place.fault(f"ducts/{position}", "no_such_duct", words, names) for position in unknown]
    if refused:
        words, free = "Another circuit lies in this duct on the way.", [names[one] for one in taken.free(circuit)]
        faults += [place.fault(f"ducts/{position}", "duct_taken", words, free) for position in refused]
    if faults:
        raise UnanswerableError(*faults)


def _take_free(one: Circuit, circuit: int, taken: _Taken, place: Worksheet) -> None:
    wanted, free = one.duct_count or 1, taken.free(circuit)
    if len(free) < wanted:
        raise UnanswerableError(
            place.fault("duct_count", "no_free_duct", f"{len(free)} ducts of the bank are free.", maximum=len(free))
        )
    for duct in free[:wanted]:
        taken.take(duct, circuit)


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
