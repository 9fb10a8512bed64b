"""A whole run assessed: its places, its line, every stretch, every circuit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AssessedCircuit, AssessedStretch, CircuitPull, DuctRun, FilledConduit
from ductrun.subjects.duct_run.banks import RunBank, banks_of
from ductrun.subjects.duct_run.boxes import boxes_of
from ductrun.subjects.duct_run.circuits import PlacedCircuit, place_circuits
from ductrun.subjects.duct_run.cost import check_joined
from ductrun.subjects.duct_run.crossings import caution_places, find_crossings
from ductrun.subjects.duct_run.feeders import feeders_of, length_of
from ductrun.subjects.duct_run.fills import fills_of
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.groundwater import settle_groundwater
from ductrun.subjects.duct_run.heights import Heights, heights_of
from ductrun.subjects.duct_run.laying import lay, outlines_of, refuse_alike
from ductrun.subjects.duct_run.names import Names
from ductrun.subjects.duct_run.practice import find_untold, settle_shared
from ductrun.subjects.duct_run.pulls import check_pulls, pulls_of
from ductrun.subjects.duct_run.rated_stretches import rate_stretches
from ductrun.subjects.duct_run.site import Site, site_of
from ductrun.subjects.duct_run.stops import Stop, ends_of, spans_of, stops_of
from ductrun.subjects.duct_run.stretches import assess_stretches
from ductrun.subjects.duct_run.takeoff.rates import check_rates, find_idle_rates
from ductrun.subjects.duct_run.takeoff.takeoff import entries_of


class _Settled(NamedTuple):
    """What stands before anything is laid: stops, the stretches between them, banks, profile and site."""

    stops: list[Stop]
    spans: list[range]
    banks: list[RunBank]
    heights: Heights | None
    site: Site


def assess(request: DuctRunRequest, sheet: Worksheet) -> DuctRun:
    """Assess a run; faults of a stage come all at once."""
    sheet.follow_edition(request.code_edition)
    settle_groundwater(request, sheet)
    asked = Asked(request, sheet, Names(sheet.book))
    settled = _settle(asked)
    stops, spans, banks, heights, site = settled
    outlines = outlines_of(asked, ends_of(stops, spans), banks, heights)
    laid = lay(outlines, heights)
    faults = Gathering()
    circuits: list[PlacedCircuit] = []
    with faults:
        circuits = place_circuits(request.circuits or (), banks[0], stops, spans, sheet)
    check_pulls(circuits, banks, laid, spans, sheet)
    stretches: list[AssessedStretch] = []
    with faults:  # without circuits that are refused: faults of stretches come beside theirs
        stretches = assess_stretches(outlines, laid, circuits, heights, site, asked)
    faults.stop()
    find_crossings(stretches, asked.names)
    run = _with_circuits(circuits, stretches, settled, asked)
    _settle_shared(run, asked)
    if request.rates:
        run = run._replace(entries=list(entries_of(run, sheet.tell)))
        find_idle_rates(request.rates, run.entries or (), sheet)
    return run._replace(apart=asked.names.write())


def _settle(asked: Asked) -> _Settled:
    """Settle what the run is made of before it is laid; all faults of it at once."""
    request, sheet = asked.request, asked.sheet
    faults = Gathering()
    stops, banks = [], []
    heights, site = None, None
    with faults:
        stops = stops_of(request, sheet)
    with faults:
        refuse_alike(request.stretches, sheet)
    with faults, asked.names.about("The bank"):
        banks = banks_of(request, sheet)
    with faults:
        check_rates(request.rates or (), sheet)
    with faults:
        heights = heights_of(request, sheet)
    with faults:
        site = site_of(request, sheet)
    faults.stop()
    assert site is not None  # noqa: S101  (else there was a fault)
    check_joined(request.stretches, banks, sheet)
    return _Settled(stops, spans_of(request.stretches), banks, heights, site)


def _with_circuits(
    circuits: Sequence[PlacedCircuit], stretches: list[AssessedStretch], settled: _Settled, asked: Asked
) -> DuctRun:
    """Give the run with what its circuits ask: fills and pulls, loads, boxes."""
    stops, spans, _, heights, site = settled
    assessed = _assess_circuits(circuits, stretches, stops, spans, asked)
    feeders = feeders_of(circuits, stretches, asked)
    rated = rate_stretches(feeders, circuits, stretches, asked)
    stretches = [one._replace(ampacity=found) for one, found in zip(stretches, rated, strict=True)]
    for feeder in feeders:
        assessed[feeder.at] = assessed[feeder.at]._replace(drop=feeder.drop)
    boxes = boxes_of(circuits, stretches, stops, spans, asked)
    caution_places(stretches, stops, asked.sheet)
    stations = [*(stretches[span[0]].laid.station for span in spans), stretches[-1].laid.end]
    ground = None if heights is None else heights.ground
    return DuctRun(asked.request, stops, spans, stations, boxes, stretches, assessed, ground, site.openings)


def _settle_shared(run: DuctRun, asked: Asked) -> None:
    """Say where the defaults stand that parts took, and of each that stands nowhere what it is, with its part."""
    stretches = {one.laid.sheet.place: one.laid for one in run.stretches}
    stops = {one.sheet.place: (f"the riser at {one.name}", at) for one, at in zip(run.stops, run.stations, strict=True)}
    for one in settle_shared(asked.sheet.book):
        place = one.part.about or ""
        laid = stretches.get(place)
        name, station = stops.get(place, ("", 0.0)) if laid is None else (laid.name, laid.station)
        with asked.names.about(name, station):
            find_untold(one)


def _assess_circuits(
    circuits: Sequence[PlacedCircuit],
    stretches: Sequence[AssessedStretch],
    stops: Sequence[Stop],
    spans: Sequence[range],
    asked: Asked,
) -> list[AssessedCircuit]:
    """Fill and pull every circuit."""
    faults = Gathering()
    fills: list[list[FilledConduit]] = [[] for _ in circuits]
    pulls: list[list[CircuitPull]] = []
    for index, circuit in enumerate(circuits):
        with faults:
            fills[index] = fills_of(circuit, circuit.passed(stretches), asked)
    with faults:
        pulls = pulls_of(circuits, stretches, stops, spans, asked)
    faults.stop()
    return [
        AssessedCircuit(circuit, filled, pulled, length_of(circuit.passed(stretches)), drop=None)
        for circuit, filled, pulled in zip(circuits, fills, pulls, strict=True)
    ]
