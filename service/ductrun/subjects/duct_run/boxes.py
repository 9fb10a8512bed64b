"""The boxes, handholes and manholes of a run: what each must measure for the circuits that are pulled through it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import Any, NamedTuple

from ductrun.engineering.rounding import over
from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.boxes.box_cables import BoxCable, settle_box_cables
from ductrun.subjects.boxes.choices import BoxWall, Structure
from ductrun.subjects.boxes.entries import MOST_ENTRIES, SPLICED
from ductrun.subjects.boxes.placing import Circuit, Entered, Entry, Pull, kind_of, raceway_of
from ductrun.subjects.boxes.sizing import Sized, cover_of, size_box, sized_by_cable
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AssessedStretch
from ductrun.subjects.duct_run.choices import PlaceKind, Service
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.places import EXIT_WALL
from ductrun.subjects.duct_run.practice import laid_over
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.cables import CableLine
from ductrun.subjects.parts.choices import CableShielding

_STRUCTURES = {
    PlaceKind.PULL_BOX: Structure.PULL_BOX,
    PlaceKind.HANDHOLE: Structure.HANDHOLE,
    PlaceKind.MANHOLE: Structure.MANHOLE,
    PlaceKind.VAULT: Structure.MANHOLE,
}
_STEEP = math.pi / 4


class _Box(NamedTuple):
    """A place with the stretches on either side of it, the circuits that pass it, and those that end there;
    the names of all ducts.
    """

    stop: Stop
    before: AssessedStretch
    after: AssessedStretch
    passing: list[PlacedCircuit]
    ending: list[PlacedCircuit]
    names: list[str]


def boxes_of(
    circuits: Sequence[PlacedCircuit],
    stretches: Sequence[AssessedStretch],
    stops: Sequence[Stop],
    spans: Sequence[range],
    asked: Asked,
) -> list[Sized | None]:
    """Size the box at every stop that circuits pass; None where that is not asked or not known."""
    faults = Gathering()
    found: list[Sized | None] = [None]
    names = [duct.name for duct in stretches[0].bank.ducts]
    with faults, asked.names.about(stops[0].name):
        _at_an_end(stops[0])
    for index, (before, after) in enumerate(pairwise(spans), start=1):
        box = _Box(
            stops[index],
            stretches[before[-1]],
            stretches[after[0]],
            [circuit for circuit in circuits if circuit.start < index < circuit.end],
            [circuit for circuit in circuits if index in (circuit.start, circuit.end)],
            names,
        )
        sized = None
        with faults, asked.names.about(box.stop.name, box.after.laid.station):
            sized = _box(box, asked)
        found.append(sized)
    with faults, asked.names.about(stops[-1].name):
        _at_an_end(stops[-1])
    faults.stop()
    return [*found, None]


def _at_an_end(stop: Stop) -> None:
    if _is_asked(stop):
        _not_sized(stop, "what enters it from beyond the run is not known")


def _is_asked(stop: Stop) -> bool:
    """Say whether a box is given that is to be held against what it must measure."""
    return stop.given.box is not None or stop.given.box_sizes is not None


def _box(box: _Box, asked: Asked) -> Sized | None:
    stop = box.stop
    structure = _STRUCTURES.get(stop.given.kind)
    if structure is None:
        if _is_asked(stop):
            _not_sized(stop, f"there is no rule for what stands there, {stop.given.kind.value.replace('_', ' ')}")
        return None
    if not box.passing:
        if _is_asked(stop):
            _not_sized(stop, "no circuit passes it")
        return None
    why = _unknown(box, asked.request)
    if why is not None:
        _not_sized(stop, why)
        return None
    if box.ending:
        _caution_ending(box)
    return _sized(box, structure, asked)


def _not_sized(stop: Stop, why: str) -> None:
    """Say why no least size is told: a note, or where a box is given a caution that it was not judged."""
    if _is_asked(stop):
        stop.sheet.judge(None)
        words = f"Its box was not judged, for {why}. Size it by what enters each wall."
        stop.sheet.find(Severity.CAUTION, "box_not_judged", words, PRACTICE, member="")
        return
    words = f"Its least size was not looked for, since {why}. Size it by what enters each wall."
    stop.sheet.find(Severity.NOTE, "box_not_sized", words, PRACTICE, member="")


def _unknown(box: _Box, request: DuctRunRequest) -> str | None:
    """Say what must be known to size a box and is not."""
    lacking = [one.name for one in box.passing if one.voltage is None and one.service is Service.POWER]
    if lacking:
        return f"the voltage of {listing(lacking)} is not given"
    grades = box.before.laid.sections[-1].element.exit_grade, box.after.laid.sections[0].element.entry_grade
    if any(over(abs(grade), _STEEP) for grade in grades):
        return "ducts come up or down to it, and by which wall is not known"
    if 2 * sum(len(one.ducts) for one in box.passing) > MOST_ENTRIES:
        return f"more than {MOST_ENTRIES} raceways enter it"
    for circuit in box.passing:
        cables = [line.cable for line in _lines(circuit, request)]
        if any(
            cable.shielding is CableShielding.INDIVIDUALLY_SHIELDED
            and cable.shielded_conductor_diameter is None
            and cable.bending_radius is None
            for cable in cables
        ):
            return f"the diameter of one shielded conductor of {circuit.name} is not given"
    return None


def _lines(circuit: PlacedCircuit, request: DuctRunRequest) -> Sequence[CableLine]:
    return (request.circuits or [])[circuit.cables.key].cables or []


def _caution_ending(box: _Box) -> None:
    """Say which circuits were left out, for they go on by a way that is no part of the run."""
    stop = box.stop
    if _is_asked(stop):
        stop.sheet.judge(None)
    stop.sheet.find(
        Severity.CAUTION,
        "entries_left_out",
        f"{listing([one.name for one in box.ending])} begins or ends there and goes on by a way that is not known: "
        "its entries were not counted, and the box may have to be larger.",
        PRACTICE,
        member="",
    )


def _sized(box: _Box, structure: Structure, asked: Asked) -> Sized:
    stop, sheet = box.stop, box.stop.sheet
    given: Any = laid_over(stop.given, {"structure": structure})
    voltage = max([one.voltage.si for one in box.passing if one.voltage is not None], default=0.0)
    by_cable, removable = sized_by_cable(voltage, sheet), cover_of(given, sheet)
    spliced = sheet.settle("spliced", stop.given.spliced, SPLICED)
    out = sheet.settle("exit_wall", stop.given.exit_wall, EXIT_WALL)
    _refuse_cover(out, removable, sheet)
    cables: dict[int, list[BoxCable]] = {}
    raceways: dict[int, tuple[float, float]] = {}
    entries: list[Entry] = []
    circuits: list[Circuit] = []
    pulls: list[Pull] = []
    faults = Gathering()
    for circuit in box.passing:
        source = circuit.cables.key
        with faults:
            if source not in cables:
                place = asked.sheet.within(f"circuits/{source}/cables", about=sheet.place)
                cables[source] = settle_box_cables(_lines(circuit, asked.request), by_cable, place)
            for duct in circuit.ducts:
                ends = len(entries), len(entries) + 1
                pulls.append(Pull(len(circuits), *ends, kind_of(BoxWall.LEFT, out), box.names[duct]))
                for stretch, wall in ((box.before, BoxWall.LEFT), (box.after, out)):
                    entries.append(_entry(stretch, duct, wall, len(circuits), sheet, raceways))
                about = circuit.sheet.within("", about=sheet.place)
                circuits.append(Circuit(circuit.name, cables[source], spliced, about))
    faults.stop()
    return size_box(given, Entered(entries, circuits, pulls, by_cable), removable, sheet)


def _refuse_cover(out: BoxWall, removable: BoxWall, sheet: Worksheet) -> None:
    """Refuse ducts that enter through the side that comes off."""
    for wall, member in ((BoxWall.LEFT, "removable_cover"), (out, "exit_wall")):
        if wall is removable:
            words = "Ducts enter through this side, so that it does not come off: give another."
            allowed = [one.value for one in BoxWall if one is not wall]
            raise UnanswerableError(sheet.fault(member, "entry_in_the_cover", words, allowed))


def _entry(
    stretch: AssessedStretch,
    duct: int,
    wall: BoxWall,
    circuit: int,
    sheet: Worksheet,
    raceways: dict[int, tuple[float, float]],
) -> Entry:
    """Give a duct of a stretch as it enters, its tier as the row; its pointer is that of the stretch.

    `raceways` has trade size and outside diameter [m] of the conduits that entered before.
    """
    named = stretch.bank.ducts[duct]
    key = id(named.conduit)
    if key not in raceways:
        raceways[key] = raceway_of(named.conduit, named.sheet)
    place = stretch.laid.sheet.within("", about=sheet.place)
    return Entry(wall, named.tier + 1, None, None, *raceways[key], (circuit,), place)
