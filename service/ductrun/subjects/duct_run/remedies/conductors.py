"""Other conductors for a circuit: larger ones, other insulation, a ground; the device ahead; ducts farther apart."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from msgspec import UNSET

from ductrun.engineering.rounding import over
from ductrun.kit.answers import Finding
from ductrun.kit.wording import listing, without_noise
from ductrun.subjects.duct_run.remedies.case import Case, at_least, circuit_at, inches, length_of, si, written
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, member, together
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.choices import ConductorSize, Insulation
from ductrun.subjects.parts.separations import HORIZONTAL_SEPARATION, VERTICAL_SEPARATION
from ductrun.tables import TABLES
from ductrun.units import Current, Length, Temperature

_MOST_RUNGS = 6
_MOST_DEVICES = 2
_MOST_SETS = 2
_FOR_WET_PLACES = (Insulation.THWN_2, Insulation.XHHW_2)
_FARTHER = (1, 2, 4, 6)  # inches


def _source(found: Finding, case: Case) -> int | None:
    """Give the circuit whose cables those of the circuit found are."""
    index = circuit_at(found)
    return None if index is None else case.run.circuits[index].placed.cables.key


def _with_cables(source: int, case: Case) -> tuple[str, ...]:
    """Name the circuits that have the cables of one."""
    return tuple(one.placed.name for one in case.run.circuits if one.placed.cables.key == source)


def _wires(source: int, case: Case) -> dict[str, dict[str, Any]]:
    """Give the building wire of a circuit by its path, bare conductors too."""
    lines = member(case.body, f"/circuits/{source}/cables") or []
    return {
        f"/circuits/{source}/cables/{at}/cable": line["cable"]
        for at, line in enumerate(lines)
        if line["cable"]["kind"] in {"listed", "compact", "bare"}
    }


def _loaded(source: int, case: Case) -> ConductorSize | None:
    """Give the size of the conductors that carry the current of a circuit: the largest; None of cable by diameter."""
    wires = _wires(source, case)
    insulated = [one["size"] for one in wires.values() if one["kind"] != "bare"]
    if not insulated or len(wires) < len(member(case.body, f"/circuits/{source}/cables")):
        return None
    return ConductorSize(max(insulated, key=lambda size: METAL_AREAS[size]))


def larger_conductors(found: Finding, case: Case) -> list[Change]:
    """Take the next sizes for what carries the current, and what lies beside it larger in proportion; against a voltage
    drop from the size on that keeps it.
    """
    source = _source(found, case)
    loaded = None if source is None else _loaded(source, case)
    if source is None or loaded is None:
        return []
    sizes = list(ConductorSize)
    first = sizes.index(loaded) + 1
    drop = case.run.circuits[circuit_at(found) or 0].drop
    if found.code == "voltage_drop_over_limit" and drop is not None and drop.smallest is not None:
        first = max(first, sizes.index(drop.smallest))
    return [_of_size(source, loaded, size, case) for size in sizes[first : first + _MOST_RUNGS]]


def _of_size(source: int, loaded: ConductorSize, size: ConductorSize, case: Case) -> Change:
    edits: list[Edit] = []
    beside: dict[str, None] = {}
    for path, wire in _wires(source, case).items():
        taken: str = size
        if wire["size"] != loaded:
            least = METAL_AREAS[wire["size"]] * METAL_AREAS[size] / METAL_AREAS[loaded]
            taken = next((one for one in ConductorSize if not over(least, METAL_AREAS[one])), size)
            beside[f"{taken} instead of {wire['size']}"] = None
        edits.append(Edit(f"{path}/size", str(taken)))
    more = f", and beside them {listing(list(beside))}," if beside else ""
    message = f"Take conductors of {size} instead of {loaded}{more} for"
    return Change(ChangeKind.CONDUCTOR_SIZE, message, edits, alike=_with_cables(source, case))


def more_sets(found: Finding, case: Case) -> list[Change]:
    """Pull one more set into a duct that no circuit has, or two."""
    index = circuit_at(found)
    return [] if index is None else more_sets_for([index], case)


def more_sets_for(circuits: Sequence[int], case: Case) -> list[Change]:
    """Pull one more set of each circuit into a duct that no other has, or two; never into one for signals."""
    bank = case.run.stretches[0].bank
    taken = {duct for one in case.run.circuits for duct in one.placed.ducts}
    if bank.placed is not None:
        taken |= {at for at, duct in enumerate(bank.placed.ducts) if duct.signal}
    names = [duct.name for duct in bank.ducts]
    spare = [name for at, name in enumerate(names) if at not in taken]
    return [
        together(
            [_in_more(index, names, spare[at * more : (at + 1) * more], case) for at, index in enumerate(circuits)]
        )
        for more in range(1, min(len(spare) // len(circuits), _MOST_SETS) + 1)
    ]


def _in_more(index: int, names: Sequence[str], spare: Sequence[str], case: Case) -> Change:
    circuit = case.run.circuits[index].placed
    ducts = [*(names[at] for at in circuit.ducts), *spare]
    named = "duct_count" not in case.body["circuits"][index]
    edit = Edit(f"/circuits/{index}/ducts", ducts) if named else Edit(f"/circuits/{index}/duct_count", len(ducts))
    where = f": {listing(ducts)}" if named else ""
    message = f"Pull {circuit.name} in {len(ducts)} ducts instead of {len(circuit.ducts)}, a set in each{where}."
    return Change(ChangeKind.PARALLEL_SETS, message, [edit])


def other_insulation(found: Finding, case: Case) -> list[Change]:
    """Take conductors of the same size that are marked for wet places, and for all that they may be heated to."""
    source = _source(found, case)
    if source is None:
        return []
    given = {path: wire["insulation"] for path, wire in _wires(source, case).items() if "insulation" in wire}
    return [
        Change(
            ChangeKind.INSULATION,
            f"Take {marking} of the same size instead of {listing(sorted(set(given.values()) - {marking}))} for",
            [Edit(f"{path}/insulation", str(marking)) for path, was in given.items() if was != marking],
            alike=_with_cables(source, case),
        )
        for marking in _FOR_WET_PLACES
        if set(given.values()) - {marking}
    ]


def _of_load(name: str, found: Finding, case: Case) -> tuple[str, dict[str, Any] | None]:
    """Give the path of a member of the load of the circuit found, its own or that of the one whose cables it has, and
    the quantity given there.
    """
    index = circuit_at(found)
    if index is not None and "load" not in case.body["circuits"][index]:
        index = _source(found, case)
    path = f"/circuits/{index}/load/{name}"
    return path, None if index is None else member(case.body, path)


def rated_lower(found: Finding, case: Case) -> list[Change]:
    """Let conductors become no hotter than their marking bears."""
    path, given = _of_load("temperature_limit", found, case)
    if given is None or found.limit is UNSET:
        return []
    unit = Temperature.parse(given["value"], given["unit"]).unit
    most = given | {"value": without_noise(round(unit.from_si(si(found.limit, Temperature)), 6))}
    message = f"Rate the conductors for {written(most)} instead of {written(given)}."
    return [Change(ChangeKind.TEMPERATURE_LIMIT, message, [Edit(path, most)])]


def other_device(found: Finding, case: Case) -> list[Change]:
    """Take the largest device that protects the conductors."""
    path, given = _of_load("overcurrent_device", found, case)
    if given is None or found.limit is UNSET:
        return []
    unit = Current.parse(given["value"], given["unit"]).unit
    return [_device(path, given, without_noise(unit.from_si(si(found.limit, Current))))]


def larger_device(found: Finding, case: Case) -> list[Change]:
    """Take the next standard devices that bear the load; whether the conductors bear them too, the trial says."""
    path, given = _of_load("overcurrent_device", found, case)
    if given is None or found.actual is UNSET:
        return []
    load, unit = si(found.actual, Current), Current.parse(given["value"], given["unit"]).unit
    ratings = [row.rating_a for row in TABLES["overcurrent_devices"] if not over(load, row.rating_a)][:_MOST_DEVICES]
    return [_device(path, given, without_noise(unit.from_si(rating))) for rating in ratings]


def _device(path: str, given: dict[str, Any], value: float) -> Change:
    device = given | {"value": value}
    message = f"Take an overcurrent device of {written(device)} instead of {written(given)}."
    return Change(ChangeKind.OVERCURRENT_DEVICE, message, [Edit(path, device)])


def with_ground(found: Finding, case: Case) -> list[Change]:
    """Take a ground as large as the device ahead asks for: one more conductor, or in place of the smallest that lies
    beside those that carry the current.
    """
    source = _source(found, case)
    least = next(
        (
            rated.checked.grounding.copper
            for stretch in case.run.stretches
            if stretch.ampacity is not None
            for rated in stretch.ampacity.circuits
            if rated.checked.grounding is not None and rated.load.cable.sheet.place.startswith(f"#/circuits/{source}/")
        ),
        None,
    )
    loaded = None if source is None else _loaded(source, case)
    if source is None or loaded is None or least is None:
        return []
    wires, names = _wires(source, case), _with_cables(source, case)
    smaller = {path: wire for path, wire in wires.items() if wire["size"] != loaded}
    if smaller:
        path, given = min(smaller.items(), key=lambda one: METAL_AREAS[one[1]["size"]])
        ground = given | {"size": least, "material": "copper"}
        message = f"Take a ground of {least} copper instead of {given['size']} in every duct of"
        return [Change(ChangeKind.GROUNDING_CONDUCTOR, message, [Edit(path, ground)], alike=names)]
    like = next(wire for wire in wires.values() if wire["size"] == loaded and wire["kind"] != "bare")
    ground = {"kind": "listed", "insulation": like["insulation"], "size": least, "material": "copper"}
    at = f"/circuits/{source}/cables/{len(wires)}"
    message = f"Pull a ground of {least} copper into every duct of"
    edits = [Edit(at, {"count": 1, "cable": ground}, put_in=True)]
    return [Change(ChangeKind.GROUNDING_CONDUCTOR, message, edits, alike=names)]


def farther_apart(_: Finding, case: Case) -> list[Change]:
    """Lay the ducts of every bank farther apart, across and up."""
    banks = ["/bank", *(f"/stretches/{at}/bank" for at in range(len(case.body["stretches"])))]
    banks = [path for path in banks if member(case.body, path) is not None]
    if all(len(stretch.bank.ducts) == 1 for stretch in case.run.stretches):
        return []
    return [
        Change(
            ChangeKind.SEPARATION,
            f"Lay the ducts {more} in farther apart.",
            [edit for path in banks for edit in _apart(path, inches(more), case)],
        )
        for more in _FARTHER
    ]


def _apart(bank: str, more: float, case: Case) -> list[Edit]:
    edits = []
    for name, default in (
        ("horizontal_separation", HORIZONTAL_SEPARATION),
        ("vertical_separation", VERTICAL_SEPARATION),
    ):
        usual: dict[str, Any] = {"value": default.value.value, "unit": str(default.value.unit)}
        given = member(case.body, f"{bank}/{name}") or usual
        edits.append(Edit(f"{bank}/{name}", at_least(length_of(given) + more, given["unit"], Length)))
    return edits
