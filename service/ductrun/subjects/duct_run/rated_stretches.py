"""The buried stretches of a run, rated for the circuits with a load that pass them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from ductrun.engineering.bank import bare, encased
from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AssessedStretch
from ductrun.subjects.duct_run.choices import Service
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.feeders import Feeder
from ductrun.subjects.duct_run.names import Names
from ductrun.subjects.duct_run.practice import LayeredSheet, laid_over, members_of
from ductrun.subjects.feeder.findings import alike_but_for_heat, report_bank, report_circuit
from ductrun.subjects.feeder.rating import Ampacity, RatingPractice, rate
from ductrun.subjects.feeder.walls import walls_of
from ductrun.subjects.feeder.working import show

MOST_RATED = 480  # loaded ducts of a run, over all banks: every one warms every other of its bank
_EARTH = ("earth_thermal_resistivity", "earth_temperature")
_NO_PRACTICE = RatingPractice()


def rate_stretches(
    feeders: Sequence[Feeder],
    circuits: Sequence[PlacedCircuit],
    stretches: Sequence[AssessedStretch],
    asked: Asked,
) -> list[Ampacity | None]:
    """Rate every buried stretch where its earth is deepest, with the circuits that pass it; alike ones once."""
    faults = Gathering()
    known: dict[tuple[object, ...], tuple[Ampacity, range]] = {}
    found: list[Ampacity | None] = []
    for index, stretch in enumerate(stretches):
        passing = [feeder for feeder in feeders if index in feeder.circuit.passes]
        rated = None
        with faults, asked.names.about(stretch.laid.name, stretch.laid.station):
            if passing and _is_rated(passing, stretch):
                rated = _rate(passing, stretch, asked, known)
                _report(passing, rated, stretch, asked.names)
        found.append(rated)
    faults.stop()
    if feeders:
        _caution_idle(circuits, feeders, asked.names)
    return found


def _is_rated(passing: Sequence[Feeder], stretch: AssessedStretch) -> bool:
    """Say whether the circuits in a stretch can be rated, and what stands against it where they cannot."""
    lacking = [feeder.circuit.name for feeder in passing if feeder.load is None]
    if stretch.burial is not None and not lacking:
        return True
    kind = stretch.laid.given.setting.kind
    if stretch.burial is not None:
        what = f"the layers of the cables of {listing(lacking)} are not given"
    elif kind == "above_ground":
        what = "it lies in air; take the table of the code, corrected for the air there"
    elif kind == "bored":
        what = "how its ducts lie in the bore is not known"
    else:
        what = "how the ducts that are there lie in the earth is not known"
    here = stretch.laid.sheet
    here.judge(None)
    here.find(
        Severity.CAUTION,
        "ampacity_not_judged",
        f"What the circuits may carry was not judged, for {what}.",
        PRACTICE,
        member="",
    )
    return False


def _rate(
    passing: Sequence[Feeder],
    stretch: AssessedStretch,
    asked: Asked,
    known: dict[tuple[object, ...], tuple[Ampacity, range]],
) -> Ampacity:
    burial, bank, own = stretch.burial, stretch.bank, stretch.laid.given.rating
    assert burial is not None  # noqa: S101  (only what is buried is rated)
    given, place = _practice(stretch, asked)
    concrete = burial.envelope.concrete
    key = (id(bank), concrete, burial.earth.greatest, id(own), *[feeder.at for feeder in passing])
    if own is None and key in known:
        asked.names.repeat(known[key][1])
        return known[key][0]
    _refuse_many(passing, known.values(), asked.sheet)
    placed = bank.in_its_place
    envelope = bare(placed) if concrete is None else encased(placed, concrete, stepped=False)
    loads = [feeder.load for feeder in passing if feeder.load is not None]
    walls = walls_of(bank.given, placed, bank.sheet)
    before = asked.names.count
    rated = rate(given, envelope, walls, burial.earth.greatest, loads, place)
    known[key] = rated, range(before, asked.names.count)
    return rated


def _refuse_many(passing: Sequence[Feeder], known: Iterable[tuple[Ampacity, range]], sheet: Worksheet) -> None:
    """Refuse more loaded ducts, over all banks that are not alike, than are carried in one answer."""
    here = sum(len(feeder.circuit.ducts) for feeder in passing)
    before = sum(len(found.solved.balance.ducts) for found, _ in known)
    if here + before > MOST_RATED:
        words = (
            f"More than {MOST_RATED} loaded ducts in banks that are not alike: give loads where they are highest, or "
            "ask in several runs."
        )
        raise UnanswerableError(sheet.fault("circuits", "too_many_loaded_ducts", words, maximum=MOST_RATED))


def _practice(stretch: AssessedStretch, asked: Asked) -> tuple[Any, Worksheet]:
    """Give how a stretch is rated and its sheet: the run's practice, the earth of the site, and its own over them."""
    here, request, sheet = stretch.laid.sheet, asked.request, asked.sheet
    common, mine = sheet.within("rating"), here.within("rating")
    own = members_of(stretch.laid.given.rating)
    redirected = {member: mine.pointer(member) for member in own}
    for member in _EARTH:
        if member not in own:
            own[member] = getattr(request.site, member, None)
            redirected[member] = sheet.pointer(f"site/{member}")
    return laid_over(request.rating or _NO_PRACTICE, own), LayeredSheet(common, mine, redirected, here.place)


def _report(passing: Sequence[Feeder], found: Ampacity, stretch: AssessedStretch, names: Names) -> None:
    station = stretch.laid.station
    for feeder, rated, alike in zip(passing, found.circuits, alike_but_for_heat(found.circuits), strict=True):
        with names.about(feeder.circuit.name, station, stretch.laid.name):
            report_circuit(rated, found, alike)
    here = stretch.laid.sheet.within("", about=stretch.laid.sheet.place)
    report_bank(found, here)
    if here.working is not None:
        show(found, here)


def _caution_idle(circuits: Sequence[PlacedCircuit], feeders: Sequence[Feeder], names: Names) -> None:
    """Caution of power circuits that were taken to carry nothing, beside others that have a load."""
    loaded = {feeder.at for feeder in feeders}
    for index, circuit in enumerate(circuits):
        if index in loaded or circuit.service is not Service.POWER:
            continue
        beside = [one for one in feeders if one.circuit.start < circuit.end and circuit.start < one.circuit.end]
        if not beside:
            continue
        with names.about(circuit.name):
            circuit.sheet.judge(None)
            circuit.sheet.find(
                Severity.CAUTION,
                "load_not_given",
                "No load is given: it was taken to warm no other circuit, and its own current was not judged. Give its "
                "load.",
                PRACTICE,
                member="",
            )
