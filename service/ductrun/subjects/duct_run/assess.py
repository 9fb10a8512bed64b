"""A whole run assessed: its places, its line, every stretch, every circuit."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any, NamedTuple

from ductrun.engineering.alignment import Line, plan_length
from ductrun.engineering.bank import Envelope
from ductrun.engineering.rounding import over
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import Fault, Gathering, UnanswerableError, Worksheet
from ductrun.subjects.conduit.joining import CORD_TAIL
from ductrun.subjects.duct_run.above import assess_above, assess_riser
from ductrun.subjects.duct_run.assessment import AssessedCircuit, AssessedStretch, DuctRun, FilledConduit, JudgedType
from ductrun.subjects.duct_run.banks import RunBank, bank_here, place_bank
from ductrun.subjects.duct_run.boring import find_bore, floated_in_fluid
from ductrun.subjects.duct_run.burying import (
    Heights,
    Practices,
    above_ducts,
    bury,
    earth_of,
    envelope_of,
    judged_cover,
    least_over,
)
from ductrun.subjects.duct_run.changes import Beside
from ductrun.subjects.duct_run.choices import StraightLengths
from ductrun.subjects.duct_run.circuits import PlacedCircuit, place_circuits
from ductrun.subjects.duct_run.cost import check_joined
from ductrun.subjects.duct_run.crossings import caution_places, find_crossings
from ductrun.subjects.duct_run.form import STRAIGHT_LENGTHS, DuctRunRequest, RunJoining, Stretch
from ductrun.subjects.duct_run.joined import Around, pieces_of
from ductrun.subjects.duct_run.laying import (
    BURIED,
    LEVEL_RADIANS,
    LaidSection,
    LaidStretch,
    Laying,
    Riser,
    along_profile,
    climb,
    conduit_of_riser,
    lay_line,
    leg_of,
    riser_of,
    riser_sheet,
)
from ductrun.subjects.duct_run.names import Names
from ductrun.subjects.duct_run.places import Stop
from ductrun.subjects.duct_run.practice import practice_of, settle_shared
from ductrun.subjects.duct_run.pulls import pulls_of, spans_of
from ductrun.subjects.duct_run.rates import check_rates, find_idle_rates
from ductrun.subjects.duct_run.site import Site, site_of
from ductrun.subjects.duct_run.takeoff import entries_of
from ductrun.subjects.duct_run.uses import judged_riser, judged_uses
from ductrun.subjects.fill.fill import hold
from ductrun.subjects.fill.rules import Filling
from ductrun.subjects.parts.conduit import PlacedConduit, place_conduit
from ductrun.units import Length

_FILLING = Filling()
_SAME_LENGTH = 1e-3  # of the run: a drawing gives stations to so many digits


class _Line(NamedTuple):
    """A stretch on its way to be laid: its name, sheet, bank, envelope if it is buried, risers, and its line."""

    stretch: Stretch
    name: str
    sheet: Worksheet
    bank: RunBank
    envelope: Envelope | None
    risers: tuple[Riser | None, Riser | None]
    sections: list[LaidSection]


def assess(request: DuctRunRequest, sheet: Worksheet) -> DuctRun:
    """Assess a run; faults of a stage come all at once."""
    sheet.follow_edition(request.code_edition)
    names = Names(sheet.book)
    practices = Practices(request, sheet)
    faults = Gathering()
    stops, banks = [], []
    heights, site = None, None
    with faults:
        stops = _stops(request, sheet)
    with faults:
        _refuse_alike(request, sheet)
    with faults, names.about("The bank"):
        banks = _banks(request, sheet)
    with faults:
        check_rates(request.rates or (), sheet)
    with faults:
        heights = _heights(request, sheet)
    with faults:
        site = site_of(request, sheet)
    faults.stop()
    assert site is not None  # noqa: S101  (else there was a fault)
    check_joined(request.stretches, banks, sheet)
    lines = _lines(request, stops, banks, heights, sheet, practices, names)
    laid = _laid(lines, heights, sheet)
    circuits: list[PlacedCircuit] = []
    with faults:
        circuits = place_circuits(request.circuits or (), banks[0], stops, sheet)
    stretches = []
    for index, (line, one) in enumerate(zip(lines, laid, strict=True)):
        with faults, names.about(line.name, one.station):
            here = [circuit for circuit in circuits if _passes(circuit, index, request)]
            around = _around(index, lines, _ends(index, request, stops))
            stretches.append(_stretch(line, one, around, here, heights, site, practices, names))
    faults.stop()
    find_crossings(stretches, names)
    assessed = _circuits(circuits, stretches, stops, request, sheet, names)
    caution_places(stretches, stops, sheet)
    settle_shared(sheet.book)
    stations = [0.0, *(_end(one) for one in laid if one.given.pull_point is not None), _end(laid[-1])]
    ground = None if heights is None else heights.ground
    run = DuctRun(request, stops, stations, stretches, assessed, ground, site.openings)
    if request.rates:
        run = run._replace(entries=list(entries_of(run, sheet.tell)))
        find_idle_rates(request.rates, run.entries or (), sheet)
    names.write()
    return run


def _end(laid: LaidStretch) -> float:
    return laid.station + laid.plan_length


def _stops(request: DuctRunRequest, sheet: Worksheet) -> list[Stop]:
    """Give the ends and pull points of a run in order, each with a name of its own."""
    stops = [Stop(request.start, request.start.name or "start", sheet.within("start"))]
    for index, stretch in enumerate(request.stretches):
        if stretch.pull_point is not None:
            name = stretch.pull_point.name or f"pull point {len(stops)}"
            stops.append(Stop(stretch.pull_point, name, sheet.within(f"stretches/{index}/pull_point")))
    last = request.stretches[-1].pull_point
    faults: list[Fault] = []
    if last is not None:
        words = "What stands at the end of the run is given as its end."
        faults.append(stops.pop().sheet.fault("", "contradiction", words))
    stops.append(Stop(request.end, request.end.name or "end", sheet.within("end")))
    seen: set[str] = set()
    for stop in stops:
        if stop.name in seen:
            faults.append(stop.sheet.fault("name", "name_given_twice", "Another place has it: give its own."))
        seen.add(stop.name)
    if faults:
        raise UnanswerableError(*faults)
    return stops


def _refuse_alike(request: DuctRunRequest, sheet: Worksheet) -> None:
    """Refuse stretches of one name: shares of the takeoff and findings are told by it."""
    seen: set[str] = set()
    faults = []
    for index, stretch in enumerate(request.stretches):
        name = _name(stretch, index)
        if name in seen:
            words = "Another stretch has it: give its own."
            faults.append(sheet.fault(f"stretches/{index}/name", "name_given_twice", words))
        seen.add(name)
    if faults:
        raise UnanswerableError(*faults)


def _name(stretch: Stretch, index: int) -> str:
    return stretch.name or f"stretch {index + 1}"


def _banks(request: DuctRunRequest, sheet: Worksheet) -> list[RunBank]:
    """Place the bank of every stretch, alike ones once; refuses stretches of another number of ducts."""
    faults = Gathering()
    known: dict[tuple[object, ...], RunBank] = {}
    banks = []
    for index, stretch in enumerate(request.stretches):
        room = _takes_room(stretch)
        key = (room, id(stretch.bank), id(stretch.conduit), stretch.conduit_type, tuple(stretch.tiers or ()))
        with faults:
            if key not in known:
                known[key] = place_bank(*bank_here(request, stretch, index, sheet), takes_room=room)
            banks.append(known[key])
            count = len(banks[0].ducts)
            if len(known[key].ducts) != count:
                words = f"The first stretch has {count} ducts, this one {len(known[key].ducts)}: give as many."
                raise UnanswerableError(sheet.fault(f"stretches/{index}/bank", "other_number_of_ducts", words))
    faults.stop()
    return banks


def _takes_room(stretch: Stretch) -> bool:
    """Say whether the outside of its ducts counts in a stretch: in what is dug, poured, or floats."""
    setting = stretch.setting
    return setting.kind in BURIED or (setting.kind == "bored" and setting.drilling_fluid_density is not None)


def _heights(request: DuctRunRequest, sheet: Worksheet) -> Heights | None:
    """Give the profile of a run, if it has one; refuses stations that do not rise from its start."""
    profile = request.profile
    if profile is None:
        return None
    place = sheet.within("profile")
    stations = tuple(point.station.si for point in profile.points)
    faults = [
        place.fault(f"points/{index}/station/value", "out_of_order", "A station lies beyond the one before it.")
        for index in range(1, len(stations))
        if stations[index] <= stations[index - 1]
    ]
    if stations[0] > 0.0:
        words = "The first station is the start of the run."
        faults.append(place.fault("points/0/station/value", "not_from_start_to_end", words))
    if faults:
        raise UnanswerableError(*faults)
    ground = Line(stations, tuple(point.ground.si for point in profile.points))
    line = Line(stations, tuple(point.line.si for point in profile.points))
    return Heights(ground, line, profile.reference, place)


def _ends(index: int, request: DuctRunRequest, stops: Sequence[Stop]) -> tuple[Stop | None, Stop | None]:
    """Give the stops at the ends of a stretch, None where it goes on from the one before or in the next."""
    points = [stretch.pull_point for stretch in request.stretches]
    passed = sum(point is not None for point in points[:index])
    start = stops[passed] if index == 0 or points[index - 1] is not None else None
    last = index == len(points) - 1
    end = stops[passed + 1] if last or points[index] is not None else None
    return start, end


def _passes(circuit: PlacedCircuit, index: int, request: DuctRunRequest) -> bool:
    passed = sum(stretch.pull_point is not None for stretch in request.stretches[:index])
    return circuit.start <= passed < circuit.end


def _around(index: int, lines: Sequence[_Line], ends: tuple[Stop | None, Stop | None]) -> Around:
    """Give what is at the ends of a stretch: a stop, or the stretch beside it."""
    start, end = ends
    return Around(
        _beside(lines[index - 1]) if start is None else start, _beside(lines[index + 1]) if end is None else end
    )


def _beside(line: _Line) -> Beside:
    return Beside(line.bank, line.stretch.setting.kind == "existing")


def _lines(
    request: DuctRunRequest,
    stops: Sequence[Stop],
    banks: Sequence[RunBank],
    heights: Heights | None,
    sheet: Worksheet,
    practices: Practices,
    names: Names,
) -> list[_Line]:
    """Lay out every stretch but for its risers and its profile."""
    to = sheet.settle("straight_lengths", request.straight_lengths, STRAIGHT_LENGTHS)
    how = Laying(
        to is StraightLengths.TO_INTERSECTIONS, None if heights is None else heights.line, LEVEL_RADIANS, False
    )
    faults = Gathering()
    lines = []
    for index, (stretch, bank) in enumerate(zip(request.stretches, banks, strict=True)):
        here = sheet.within(f"stretches/{index}")
        name = _name(stretch, index)
        begins = how._replace(bored=stretch.setting.kind == "bored")
        how = how._replace(grade=math.nan)  # of what goes on from a stretch that is refused
        with faults, names.about(name):
            envelope = None
            if stretch.setting.kind in BURIED:
                envelope = envelope_of(stretch, bank, here, practices)
            start, end = _ends(index, request, stops)
            risers = riser_of(start, bank, stretch), riser_of(end, bank, stretch)
            line = lay_line(stretch, name, here, bank, risers, begins)
            ends = LEVEL_RADIANS if stretch.pull_point is not None else line[-1].element.exit_grade
            how = how._replace(grade=ends)
            lines.append(_Line(stretch, name, here, bank, envelope, risers, line))
    faults.stop()
    return lines


def _laid(lines: Sequence[_Line], heights: Heights | None, sheet: Worksheet) -> list[LaidStretch]:
    """Lay the stretches one after another, along the profile and with their risers."""
    faults = Gathering()
    laid = []
    station = 0.0
    for line in lines:
        with faults:
            one = _lay(line, station, heights)
            laid.append(one)
            station = _end(one)
    faults.stop()
    if heights is not None:
        _refuse_other_length(heights, station, sheet)
    return laid


def _lay(line: _Line, station: float, heights: Heights | None) -> LaidStretch:
    start, end = line.risers
    length = sum([plan_length(one.element) for one in line.sections])
    begins = station + (0.0 if start is None else start.radius)
    sections = line.sections
    if heights is not None:
        sections = along_profile(sections, heights.line, begins)
    whole = length + sum(riser.radius for riser in line.risers if riser is not None)
    laid = list(sections)
    if start is not None:
        above = _above(line, station, heights)
        laid = [*climb(start, leg_of(start, above, line.bank), down=True, grade=_entry(sections)), *laid]
    if end is not None:
        above = _above(line, station + whole, heights)
        grade = sections[-1].element.exit_grade
        laid += climb(end, leg_of(end, above, line.bank), down=False, grade=grade)
    return LaidStretch(line.stretch, line.name, line.sheet, laid, station, whole)


def _entry(sections: Sequence[LaidSection]) -> float:
    return sections[0].element.entry_grade


def _above(line: _Line, station: float, heights: Heights | None) -> float:
    """Give what lies over the top of the ducts of a stretch at a station [m]."""
    envelope, setting = line.envelope, line.stretch.setting
    assert envelope is not None  # noqa: S101  (only what is buried has risers)
    if heights is not None:
        return heights.over(envelope, station) + above_ducts(envelope)
    cover: Length | None = setting.cover  # type: ignore[union-attr]  # of what is buried
    if cover is None:
        words = "Give the cover, or a profile of the run."
        raise UnanswerableError(line.sheet.within("setting").fault("cover", "missing", words))
    return cover.si + above_ducts(envelope)


def _refuse_other_length(heights: Heights, length: float, sheet: Worksheet) -> None:
    """Refuse a profile that does not end where the run does."""
    last = heights.line.stations[-1]
    if not over(abs(last - length), _SAME_LENGTH * length):
        return
    place = heights.sheet
    index = len(heights.line.stations) - 1
    told: Any = sheet.tell.distance(length)
    words = f"The run is {without_noise(told.value):.7g} {told.unit} long in plan: the profile ends there."
    raise UnanswerableError(
        place.fault(f"points/{index}/station/value", "not_from_start_to_end", words, minimum=told, maximum=told)
    )


def _stretch(
    line: _Line,
    laid: LaidStretch,
    around: Around,
    circuits: list[PlacedCircuit],
    heights: Heights | None,
    site: Site,
    practices: Practices,
    names: Names,
) -> AssessedStretch:
    """Assess one stretch in its setting."""
    stretch, bank, here, setting = line.stretch, line.bank, line.sheet, line.stretch.setting
    climbed = [riser.stop for riser in line.risers if riser is not None]
    uses: list[JudgedType] = judged_uses(stretch, bank, here)
    burial = cover = above = uplift = None
    if setting.kind in BURIED and line.envelope is not None:
        place = here.within("setting")
        earth = earth_of(setting, line.envelope, laid.station, laid.plan_length, heights, place)  # type: ignore[arg-type]
        burial = bury(stretch, bank, line.envelope, earth, laid.plan_length, here, practices)
        least = least_over(setting, earth)  # type: ignore[arg-type]
        cover = judged_cover(stretch, bank, line.envelope, least, circuits, here)
    elif setting.kind == "bored":
        cover = judged_cover(stretch, bank, None, setting.cover, circuits, here)
        find_bore(setting, bank, here)
        uplift = floated_in_fluid(setting, bank, here, practices)
    elif setting.kind == "above_ground":
        above = assess_above(setting, laid, bank, site)
    pieces = []
    given = practices.request.joining
    joining = practice_of(RunJoining, "joining", given, stretch.joining, practices.sheet, here)
    tail = joining[1].settle("cord_tail", joining[0].cord_tail, CORD_TAIL).si
    if setting.kind != "existing":
        pieces = pieces_of(laid, bank, around, joining)
    risers = []
    for stop in climbed:
        with names.about(f"the riser at {stop.name}", laid.station if stop is around.start else _end(laid)):
            uses += judged_riser(bank, stop)
            risers.append(assess_riser(stop, bank, site))
    return AssessedStretch(laid, bank, uses, cover, burial, above, risers, pieces, uplift, tail)


def _circuits(
    circuits: Sequence[PlacedCircuit],
    stretches: Sequence[AssessedStretch],
    stops: Sequence[Stop],
    request: DuctRunRequest,
    sheet: Worksheet,
    names: Names,
) -> list[AssessedCircuit]:
    """Fill and pull every circuit."""
    faults = Gathering()
    fills: list[list[FilledConduit]] = [[] for _ in circuits]
    pulls = []
    for index, circuit in enumerate(circuits):
        passed = [one for at, one in enumerate(stretches) if _passes(circuit, at, request)]
        with faults:
            fills[index] = _fills(circuit, passed, names)
    with faults:
        pulls = pulls_of(circuits, spans_of(stretches, stops), stops, request, sheet, names)
    faults.stop()
    return [AssessedCircuit(*one) for one in zip(circuits, fills, pulls, strict=True)]


def _fills(circuit: PlacedCircuit, passed: Sequence[AssessedStretch], names: Names) -> list[FilledConduit]:
    """Hold the cables of a circuit in every conduit on its way, each once."""
    found: dict[object, tuple[PlacedConduit, list[str]]] = {}
    faults = Gathering()
    for stretch in passed:
        for index in circuit.ducts:
            duct = stretch.bank.ducts[index]
            ways = [(duct.conduit, duct.sheet, stretch.laid.name)]
            for riser in stretch.risers:
                conduit = conduit_of_riser(riser.stop, duct.conduit)
                place = riser_sheet(riser.stop, duct.sheet)
                ways.append((conduit, place, f"the riser at {riser.stop.name}"))
            for conduit, place, where in ways:
                listed = conduit.kind == "listed"
                key: object = (conduit.type, conduit.trade_size) if listed else id(conduit)
                with faults:
                    if key not in found:
                        found[key] = (place_conduit(conduit, place), [])
                    if where not in found[key][1]:
                        found[key][1].append(where)
    faults.stop()
    filled = []
    for placed, stretches in found.values():
        with faults, names.about(circuit.name, passed[0].laid.station):
            sheet = circuit.sheet.within("", about=circuit.sheet.place)
            filled.append(FilledConduit(stretches, hold(_FILLING, placed, circuit.cables.filling, sheet)))
    faults.stop()
    return filled
