"""The pulls of a run: every circuit from stop to stop, through the conduit that its duct is there."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, NamedTuple, cast

from ductrun.engineering import pulling as engineering
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.wording import listing, text_of
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.assessment import AssessedStretch, CircuitPull, RunPull
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.cost import SearchBudget, check_pulled
from ductrun.subjects.duct_run.laid import LaidSection, LaidStretch
from ductrun.subjects.duct_run.practice import LayeredSheet
from ductrun.subjects.duct_run.risers import conduit_of_riser, riser_sheet
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit, inside_diameter
from ductrun.subjects.parts.route import PlacedRoute, RouteSection, SectionPlace
from ductrun.subjects.pulling.assessment import PlanAssessment, PullAssessment
from ductrun.subjects.pulling.cable_order import CableOrder, OrderedLine, cables_to_order
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.cuts import MOST_POSITIONS, most_places
from ductrun.subjects.pulling.practice import PullPractice
from ductrun.subjects.pulling.pull_plan import plan
from ductrun.subjects.pulling.pull_tension import pull_from_better_end
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.settling import settle
from ductrun.subjects.pulling.stop_tension import report_stop, stop_of


class _Given(NamedTuple):
    """What a pull reads of a section as given."""

    kind: str
    made: BendMade | None
    friction_coefficient: float | None
    conduit: None = None


class _Way(NamedTuple):
    """The way between two stops: their indexes, and every stretch on it."""

    start: int
    end: int
    stretches: list[AssessedStretch]


_ORDERING = CableOrder()
_KINDS = {engineering.Straight: "straight", engineering.HorizontalBend: "horizontal_bend"}
_Conduit = ListedConduit | MeasuredConduit


def check_pulls(
    circuits: Sequence[PlacedCircuit],
    banks: Sequence[RunBank],
    laid: Sequence[LaidStretch],
    spans: Sequence[range],
    sheet: Worksheet,
) -> None:
    """Refuse a run of too many pulls as soon as its circuits are placed: what comes then takes long for nothing."""
    lengths = [sum(len(laid[index].sections) for index in span) for span in spans]
    pulls = sections = 0
    for circuit in circuits:
        for at in range(circuit.start, circuit.end):
            count = len(_alike(spans[at], banks, circuit.ducts))
            pulls += count
            sections += count * lengths[at]
    check_pulled(pulls, sections, sheet)


def pulls_of(
    circuits: Sequence[PlacedCircuit],
    stretches: Sequence[AssessedStretch],
    stops: Sequence[Stop],
    spans: Sequence[range],
    asked: Asked,
) -> list[list[CircuitPull]]:
    """Pull every circuit from stop to stop; alike cables through alike ducts are pulled once."""
    faults = Gathering()
    known: dict[tuple[object, ...], tuple[RunPull, range, LayeredSheet]] = {}
    routes: dict[tuple[object, ...], PlacedRoute] = {}
    ways = [_Way(at, at + 1, [stretches[index] for index in span]) for at, span in enumerate(spans)]
    banks = [stretch.bank for stretch in stretches]
    budget = SearchBudget()
    found = []
    for circuit in circuits:
        pulls = []
        for way in ways[circuit.start : circuit.end]:
            alike = _alike(spans[way.start], banks, circuit.ducts)
            between = f"{stops[way.start].name} to {stops[way.end].name}"
            station = way.stretches[0].laid.station
            for conduits, ducts in alike.items():
                key = (circuit.cables.key, id(circuit.given.pulling), *conduits)
                with faults, asked.names.about(circuit.name, station, between):
                    if conduits not in routes:
                        routes[conduits] = _route(way, ducts[0], asked.sheet)
                    given, practice = asked.pulling(circuit.given, circuit.sheet)
                    if key in known:
                        asked.names.repeat(known[key][1])
                        practice.repeat(known[key][2])
                    else:
                        before = asked.names.count
                        pulled = _pull(circuit, (given, practice), way, routes[conduits], stops, asked, budget)
                        known[key] = pulled, range(before, asked.names.count), practice
                    pulls.append(CircuitPull(ducts, known[key][0]))
        found.append(pulls)
    faults.stop()
    return found


def _key(conduit: _Conduit) -> object:
    return (conduit.type, conduit.trade_size) if conduit.kind == "listed" else id(conduit)


def _alike(span: range, banks: Sequence[RunBank], ducts: Sequence[int]) -> dict[tuple[object, ...], list[int]]:
    """Give the ducts of a circuit, those together that are of the same conduit in a span of stretches, by that way."""
    groups: dict[tuple[object, ...], list[int]] = {}
    for duct in ducts:
        conduits = (span.start, *[_key(banks[index].ducts[duct].conduit) for index in span])
        groups.setdefault(conduits, []).append(duct)
    return groups


def _route(way: _Way, duct_index: int, sheet: Worksheet) -> PlacedRoute:
    """Put the way of circuits together with its bores, in the conduit that one of their ducts is in every stretch."""
    sections: list[LaidSection] = []
    given: list[_Given] = []
    conduits: list[_Conduit] = []
    places: list[SectionPlace] = []
    for stretch in way.stretches:
        duct = stretch.bank.ducts[duct_index]
        friction = stretch.laid.given.friction_coefficient
        for one in stretch.laid.sections:
            conduit, place = duct.conduit, duct.sheet
            if one.riser is not None:
                place = riser_sheet(one.riser, place)
                conduit = conduit_of_riser(one.riser, conduit)
            kind = _KINDS.get(type(one.element), "vertical_bend")
            given.append(_Given(kind, one.made, friction))
            conduits.append(conduit)
            sections.append(one)
            places.append(SectionPlace(f"{one.name[0].upper()}{one.name[1:]}", one.sheet, place))
    elements = [one.element for one in sections]
    route = PlacedRoute(elements, cast(Sequence[RouteSection], given), conduits, [], sheet, sheet, places)
    return route._replace(bores=_bores(route))


def _bores(route: PlacedRoute) -> list[float]:
    faults = Gathering()
    known: dict[object, float] = {}
    keys = [_key(conduit) for conduit in route.conduits]
    for key, conduit, place in zip(keys, route.conduits, route.places or (), strict=True):
        if key not in known:
            with faults:
                known[key] = inside_diameter(conduit, place.conduit_sheet)
    faults.stop()
    return [known[key] for key in keys]


def _pull(
    circuit: PlacedCircuit,
    practised: tuple[PullPractice, LayeredSheet],
    way: _Way,
    route: PlacedRoute,
    stops: Sequence[Stop],
    asked: Asked,
    budget: SearchBudget,
) -> RunPull:
    place = circuit.sheet.within("", about=circuit.sheet.place)
    route = route._replace(sheet=place, conduit_sheet=place)
    given, practice = practised
    pulling = settle(given, circuit.cables.pulled, route, practice)
    pulled = pull_from_better_end(pulling, practice)
    turned = pulled.better is PullDirection.REVERSED
    within, better = (pulled.within_backward, pulled.backward) if turned else (pulled.within, pulled.forward)
    stop = stop_of(better, pulling, turned=turned)
    report_stop(stop, better, pulling, practice, turned=turned)
    return RunPull(
        way.start,
        way.end,
        pulled,
        stop,
        _help(pulling, stops[way.start].name, practice, budget) if within is False else None,
        _order(pulled, (stops[way.start], stops[way.end]), asked),
    )


def _help(pulling: Pulling, start: str, sheet: Worksheet, budget: SearchBudget) -> PlanAssessment | None:
    """Say where pull points would help, at the ends of straights, and nothing else of them; None where the run has too
    many places for all of its searches.
    """
    lengths = [one.length if isinstance(one, engineering.Straight) else None for one in pulling.route.sections]
    places = most_places(lengths, None)
    if places > MOST_POSITIONS or not budget.takes(places * (places + len(lengths))):
        sheet.find(
            Severity.NOTE,
            "pull_points_not_searched",
            f"Where a pull point would help was not searched: with {len(lengths)} sections on this pull the run has "
            "too many places. Put a pull point near its middle and ask again.",
            WORKED_OUT,
            float(len(lengths)),
        )
        return None
    findings = sheet.book.findings
    before = len(findings)
    found = plan(None, pulling, sheet)
    told = [one for one in findings[before:] if one.code == "no_plan"]
    findings[before:] = told
    if len(found.spans) > 1:
        at = [text_of(sheet.tell.distance(span.start)) for span in found.spans[1:]]
        sheet.find(
            Severity.NOTE,
            "pull_point_would_help",
            f"{'Pull points' if len(at) > 1 else 'A pull point'} at {listing(at)} along the pull from {start} would "
            "keep the limits.",
            WORKED_OUT,
            float(len(at)),
        )
    return found


def _order(pulled: PullAssessment, ends: tuple[Stop, Stop], asked: Asked) -> list[OrderedLine]:
    given: Any = asked.request.ordering or _ORDERING
    length = engineering.developed_length(pulled.pulling.sections)
    allowances = [stop.given.cable_allowance for stop in ends]
    return cables_to_order(given, pulled.pulling.cables, length, asked.sheet.within("ordering"), allowances)
