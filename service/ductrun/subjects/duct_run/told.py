"""The answer of POST /v1/duct-run: every part told as its own operation tells it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import SimpleNamespace
from typing import Annotated, TypeVar

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.bank import encasement, flotation, spacers
from ductrun.subjects.bank.encasement import EncasementResult
from ductrun.subjects.bank.flotation import FlotationResult
from ductrun.subjects.bank.spacers import SpacersResult
from ductrun.subjects.boxes import pull_box_told
from ductrun.subjects.boxes.pull_box_told import PullBoxResult
from ductrun.subjects.conduit import joints
from ductrun.subjects.conduit.joints import JointsResult
from ductrun.subjects.conduit.permitted_use import MOST_USES, JudgedUse
from ductrun.subjects.duct_run.alignment import MOST_RUN_SECTIONS
from ductrun.subjects.duct_run.assessment import (
    AssessedCircuit,
    AssessedStretch,
    CircuitPull,
    DuctRun,
    FilledConduit,
    JudgedType,
    Piece,
    RiserAbove,
)
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import Service
from ductrun.subjects.duct_run.form import MOST_CIRCUITS, MOST_DUCTS, MOST_STRETCHES
from ductrun.subjects.duct_run.mandrels import mandrels_of
from ductrun.subjects.feeder import ampacity_told, voltage_drop
from ductrun.subjects.feeder.ampacity_told import AmpacityResult, Asked
from ductrun.subjects.feeder.studies import Studied
from ductrun.subjects.feeder.voltage_drop import VoltageDropResult
from ductrun.subjects.fill import fill
from ductrun.subjects.fill.fill import FillResult
from ductrun.subjects.ground import cover, earth_load_told, trench
from ductrun.subjects.ground.cover import CoverResult
from ductrun.subjects.ground.earth_load_told import EarthLoadResult
from ductrun.subjects.ground.trench import TrenchResult
from ductrun.subjects.movement import expansion_told, supports
from ductrun.subjects.movement.expansion_told import ExpansionResult
from ductrun.subjects.movement.supports import SupportsResult
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.takeoff import Takeoff
from ductrun.subjects.pulling import pull_plan_told, pull_tension_told
from ductrun.subjects.pulling.cable_order import OrderedCable, told_order
from ductrun.subjects.pulling.choices import PullDirection, StopBasis
from ductrun.subjects.pulling.pull_plan_told import PullPlanResult
from ductrun.subjects.pulling.pull_tension_told import PullTensionResult

P = TypeVar("P")
R = TypeVar("R")
_NOT_BURIED = SimpleNamespace(
    **dict.fromkeys(("trench", "spacers", "encasement", "flotation", "in_groundwater")),
)
StopName = Annotated[str, Meta(max_length=MOST_NAME)]
MOST_STOPS = MOST_STRETCHES + 1
MOST_PIECES = 3 * 40
MOST_STRAIGHTS = MOST_RUN_SECTIONS + 101


class RunDuct(Struct, frozen=True, gc=False):
    """One duct of the run, from the lower left corner of the bank without its cover.

    It has no place where the first stretch takes no room and an outside diameter is not known.
    """

    name: Annotated[str, Meta(description="Tier-position: tier 1 the bottom, position 1 the left.", max_length=5)]
    circuits: Annotated[
        list[StopName],
        Meta(description="Names of the circuits that lie in it; none in a spare.", max_length=MOST_CIRCUITS),
    ]
    mandrel_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="Mandrel of the smallest bore along it, as far as that is known.")
    ] = UNSET
    x: Annotated[answers.Length | UnsetType, Meta(description="Distance of its center to the right.")] = UNSET
    y: Annotated[answers.Length | UnsetType, Meta(description="Distance of its center upward.")] = UNSET
    outside_diameter: answers.Length | UnsetType = UNSET
    signal: Annotated[bool | UnsetType, Meta(description="Whether it is for signals.")] = UNSET


class RunStop(Struct, frozen=True, gc=False):
    """An end of the run or a pull point."""

    name: StopName
    kind: str
    station: Annotated[answers.Length, Meta(description="Distance in plan from the start.")]
    box: Annotated[
        PullBoxResult | UnsetType, Meta(description="What it must measure for the circuits that pass it, where known.")
    ] = UNSET


class StretchUse(Struct, frozen=True, gc=False):
    """The uses of one type of conduit in a stretch."""

    conduit_type: ConduitType
    verdict: Verdict
    uses: Annotated[list[JudgedUse], Meta(max_length=MOST_USES)]


class StretchJoints(Struct, frozen=True, gc=False):
    """Ducts of one conduit in a stretch, or in a riser of it."""

    duct_count: int
    length: Annotated[answers.Length, Meta(description="Of one duct along its center line.")]
    conduit_type: ConduitType | UnsetType = UNSET
    trade_size: TradeSize | UnsetType = UNSET
    riser: Annotated[StopName | UnsetType, Meta(description="Where it comes up, if it is a riser.")] = UNSET
    stick_length: Annotated[
        answers.Length | UnsetType, Meta(description="Length of its sticks, if it is on file how it is joined.")
    ] = UNSET
    joints: Annotated[JointsResult | UnsetType, Meta(description="If it is on file how it is joined.")] = UNSET


class StretchRiser(Struct, frozen=True, gc=False):
    """The part of a riser above grade."""

    name: Annotated[str, Meta(description="What stands above it.", max_length=MOST_NAME)]
    expansion: Annotated[ExpansionResult | UnsetType, Meta(description="If temperatures are given.")] = UNSET
    supports: Annotated[SupportsResult | UnsetType, Meta(description="If a rule is on file.")] = UNSET


class RunStretch(Struct, frozen=True, gc=False, kw_only=True):
    """One stretch of the run, each part as its own operation tells it."""

    name: Annotated[str, Meta(max_length=MOST_NAME)]
    setting: str
    station: Annotated[answers.Length, Meta(description="Where it begins, in plan from the start.")]
    plan_length: Annotated[answers.Length, Meta(description="Length in plan, that of its trench.")]
    length: Annotated[answers.Length, Meta(description="Length of a duct along its center line, risers included.")]
    permitted_uses: Annotated[list[StretchUse], Meta(max_length=MOST_PIECES)]
    cover: CoverResult | UnsetType = UNSET
    trench: TrenchResult | UnsetType = UNSET
    spacers: SpacersResult | UnsetType = UNSET
    encasement: EncasementResult | UnsetType = UNSET
    flotation: Annotated[FlotationResult | UnsetType, Meta(description="While its concrete is poured.")] = UNSET
    groundwater_flotation: Annotated[
        FlotationResult | UnsetType, Meta(description="Finished and empty, where it lies under the groundwater.")
    ] = UNSET
    bore_uplift_per_length: Annotated[
        answers.ForcePerLength | UnsetType,
        Meta(description="Of all ducts together in the fluid of the bore; negative if they sink."),
    ] = UNSET
    ampacity: Annotated[
        AmpacityResult | UnsetType,
        Meta(description="What its circuits may carry where it lies deepest, if they have a load."),
    ] = UNSET
    earth_loads: Annotated[
        Annotated[list[EarthLoadResult], Meta(max_length=2)] | UnsetType,
        Meta(description="If asked: under its least cover and, where that is another, under its greatest."),
    ] = UNSET
    expansion: Annotated[ExpansionResult | UnsetType, Meta(description="Of its straights above ground.")] = UNSET
    supports: Annotated[
        Annotated[list[SupportsResult], Meta(max_length=MOST_STRAIGHTS)] | UnsetType,
        Meta(description="Of each straight above ground."),
    ] = UNSET
    risers: Annotated[list[StretchRiser], Meta(max_length=2)]
    ducts: Annotated[
        list[StretchJoints], Meta(description="Its ducts by conduit, risers of another apart.", max_length=MOST_PIECES)
    ]


class CircuitFill(Struct, frozen=True, gc=False):
    """A circuit in one conduit of its way."""

    places: Annotated[
        list[Annotated[str, Meta(max_length=MOST_NAME + 20)]],
        Meta(description="The stretches and risers where it lies in such conduit.", max_length=3 * MOST_STRETCHES),
    ]
    fill: FillResult
    conduit_type: ConduitType | UnsetType = UNSET
    trade_size: TradeSize | UnsetType = UNSET


class CircuitPulls(Struct, frozen=True, gc=False, kw_only=True):
    """One pull of a circuit between two stops."""

    start: Annotated[str, Meta(description="Stop nearer the start of the run.", max_length=MOST_NAME)]
    end: Annotated[str, Meta(description="Stop nearer the end of the run.", max_length=MOST_NAME)]
    ducts: Annotated[list[Annotated[str, Meta(max_length=5)]], Meta(max_length=MOST_DUCTS)]
    verdict: Annotated[Verdict, Meta(description="Of the pull in its better direction.")]
    direction: Annotated[PullDirection, Meta(description="The better direction: forward pulls toward the end.")]
    feed_from: Annotated[str, Meta(description="Stop where the reel stands.", max_length=MOST_NAME)]
    pull_to: Annotated[str, Meta(description="Stop where the rope is pulled.", max_length=MOST_NAME)]
    length: Annotated[answers.Length, Meta(description="Along the center line.")]
    stop_tension: Annotated[
        answers.Force,
        Meta(
            description="At the pulling end: stop there. What cable, grip and device bear, or less, where a bend has "
            "its sidewall limit before, as stop_basis says."
        ),
    ]
    stop_basis: Annotated[
        StopBasis,
        Meta(
            description="any_friction: with less no bend is beyond its limit, whatever the friction. friction_assumed: "
            "that would stop the pull below what it is expected to need, so the limits are carried on at the friction "
            "it is pulled with."
        ),
    ]
    tension_safe_at_any_friction: Annotated[
        answers.Force,
        Meta(description="At the pulling end: with less no bend is beyond its limit, whatever the friction."),
    ]
    pull: Annotated[PullTensionResult, Meta(description="The pull both ways; its sections from the start of the run.")]
    plan: Annotated[
        PullPlanResult | UnsetType, Meta(description="Where pull points would help, if it does not comply.")
    ] = UNSET
    cables_to_order: Annotated[list[OrderedCable], Meta(description="For one duct.", max_length=20)]


class RunCircuit(Struct, frozen=True, gc=False):
    """One circuit."""

    name: Annotated[str, Meta(max_length=MOST_NAME)]
    service: Service
    start: Annotated[str, Meta(max_length=MOST_NAME)]
    end: Annotated[str, Meta(max_length=MOST_NAME)]
    ducts: Annotated[list[Annotated[str, Meta(max_length=5)]], Meta(max_length=MOST_DUCTS)]
    fills: Annotated[list[CircuitFill], Meta(description="In every conduit on its way.", max_length=3 * MOST_STRETCHES)]
    pulls: Annotated[list[CircuitPulls], Meta(description="From stop to stop.", max_length=MOST_DUCTS)]
    length: Annotated[answers.Length, Meta(description="From its start to its end along the center line.")]
    voltage_drop: Annotated[
        VoltageDropResult | UnsetType, Meta(description="Over that length, if a current or a power is given.")
    ] = UNSET


class DuctRunResult(Struct, frozen=True, gc=False, kw_only=True):
    """The run from end to end."""

    name: StopName | UnsetType = UNSET
    note: Annotated[str, Meta(max_length=1000)] | UnsetType = UNSET
    plan_length: Annotated[answers.Length, Meta(description="Length in plan.")]
    length: Annotated[answers.Length, Meta(description="Length of a duct from end to end along its center line.")]
    duct_count: int
    spare_count: Annotated[int, Meta(description="Ducts in which no circuit lies.")]
    mandrel_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="One mandrel for the whole run, if all its ducts take the same.")
    ] = UNSET
    stops: Annotated[list[RunStop], Meta(description="Ends and pull points in order.", max_length=MOST_STOPS)]
    ducts: Annotated[list[RunDuct], Meta(description="The ducts of the first stretch.", max_length=MOST_DUCTS)]
    stretches: Annotated[list[RunStretch], Meta(description="In order.", max_length=MOST_STRETCHES)]
    circuits: Annotated[list[RunCircuit], Meta(description="In the order given.", max_length=MOST_CIRCUITS)]
    takeoff: Takeoff


def told_run(run: DuctRun, takeoff: Takeoff, telling: Telling) -> DuctRunResult:
    """Put a run into the caller's units."""
    given, bank = run.given, run.stretches[0].bank
    taken = [circuit.placed for circuit in run.circuits]
    spares = sum(all(duct not in one.ducts for one in taken) for duct in range(len(bank.ducts)))
    mandrels = mandrels_of(run.stretches)
    alike = len(set(mandrels.values())) == 1
    return DuctRunResult(
        name=UNSET if given.name is None else given.name,
        note=UNSET if given.note is None else given.note,
        plan_length=telling.distance(run.plan_length),
        length=telling.distance(run.length),
        duct_count=len(bank.ducts),
        spare_count=spares,
        mandrel_diameter=telling.size(next(iter(mandrels.values()))) if alike else UNSET,
        stops=[
            RunStop(stop.name, str(stop.given.kind), telling.distance(station), _told(box, pull_box_told.tell, telling))
            for stop, station, box in zip(run.stops, run.stations, run.boxes, strict=True)
        ],
        ducts=_ducts(bank, run, mandrels, telling),
        stretches=[_stretch(one, telling) for one in run.stretches],
        circuits=[_circuit(one, run, telling) for one in run.circuits],
        takeoff=takeoff,
    )


def _ducts(bank: RunBank, run: DuctRun, mandrels: Mapping[int, float], telling: Telling) -> list[RunDuct]:
    size = telling.size
    lying: list[list[str]] = [[] for _ in bank.ducts]
    for one in run.circuits:
        for index in one.placed.ducts:
            lying[index].append(one.placed.name)
    ducts = bank.placed.ducts if bank.placed is not None else [None] * len(lying)
    return [
        RunDuct(
            name=named.name,
            circuits=lying[index],
            mandrel_diameter=size(mandrels[index]) if index in mandrels else UNSET,
            x=UNSET if duct is None else size(duct.x),
            y=UNSET if duct is None else size(duct.y),
            outside_diameter=UNSET if duct is None else size(duct.diameter),
            signal=UNSET if duct is None else duct.signal,
        )
        for index, (named, duct) in enumerate(zip(bank.ducts, ducts, strict=True))
    ]


def _told(part: P | None, tell: Callable[[P, Telling], R], telling: Telling) -> R | UnsetType:
    """Tell a part as its own operation does, if there is one."""
    return UNSET if part is None else tell(part, telling)


def _stretch(one: AssessedStretch, telling: Telling) -> RunStretch:
    laid, above = one.laid, one.above
    burial = one.burial or _NOT_BURIED
    return RunStretch(
        name=laid.name,
        setting=laid.given.setting.kind,
        station=telling.distance(laid.station),
        plan_length=telling.distance(laid.plan_length),
        length=telling.distance(laid.length),
        permitted_uses=[_use(use) for use in one.uses],
        cover=_told(one.cover, cover.tell, telling),
        trench=_told(burial.trench, trench.tell, telling),
        spacers=_told(burial.spacers, spacers.tell, telling),
        encasement=_told(burial.encasement, encasement.tell, telling),
        flotation=_told(burial.flotation, flotation.tell, telling),
        groundwater_flotation=_told(burial.in_groundwater, flotation.tell, telling),
        bore_uplift_per_length=UNSET if one.bore_uplift is None else telling.force_per_length(one.bore_uplift),
        ampacity=UNSET if one.ampacity is None else ampacity_told.tell(Asked(one.ampacity, Studied()), telling),
        earth_loads=[earth_load_told.tell(found, telling) for found in one.earth_loads] or UNSET,
        expansion=UNSET if above is None else _told(above.movement, expansion_told.tell, telling),
        supports=UNSET if above is None else [supports.tell(strapped, telling) for strapped in above.supported],
        risers=[_riser(riser, telling) for riser in one.risers],
        ducts=[_piece(piece, telling) for piece in one.pieces],
    )


def _use(use: JudgedType) -> StretchUse:
    return StretchUse(use.conduit_type, Verdict.of(use.judged.within), use.judged.uses)


def _riser(riser: RiserAbove, telling: Telling) -> StretchRiser:
    return StretchRiser(
        riser.stop.name,
        _told(riser.movement, expansion_told.tell, telling),
        _told(riser.supported, supports.tell, telling),
    )


def _piece(piece: Piece, telling: Telling) -> StretchJoints:
    conduit = piece.conduit
    return StretchJoints(
        piece.duct_count,
        telling.distance(piece.length),
        UNSET if conduit.type is None else conduit.type,
        UNSET if conduit.trade_size is None else conduit.trade_size,
        UNSET if piece.riser is None else piece.riser.name,
        UNSET if piece.joined is None else telling.given(piece.joined.stick_length),
        _told(piece.joined, joints.tell, telling),
    )


def _circuit(one: AssessedCircuit, run: DuctRun, telling: Telling) -> RunCircuit:
    placed = one.placed
    names = [duct.name for duct in run.stretches[0].bank.ducts]
    return RunCircuit(
        placed.name,
        placed.service,
        run.stops[placed.start].name,
        run.stops[placed.end].name,
        [names[duct] for duct in placed.ducts],
        [_fill(filled, telling) for filled in one.fills],
        [_pull(pull, names, run, telling) for pull in one.pulls],
        telling.distance(one.length),
        _told(one.drop, voltage_drop.tell, telling),
    )


def _fill(filled: FilledConduit, telling: Telling) -> CircuitFill:
    conduit = filled.filled.conduit.given
    return CircuitFill(
        filled.stretches,
        fill.tell(filled.filled, telling),
        UNSET if conduit.type is None else conduit.type,
        UNSET if conduit.trade_size is None else conduit.trade_size,
    )


def _pull(one: CircuitPull, names: list[str], run: DuctRun, telling: Telling) -> CircuitPulls:
    pull = one.pull
    pulled = pull.pulled
    turned = pulled.better is PullDirection.REVERSED
    ends = [run.stops[pull.start].name, run.stops[pull.end].name]
    length = sum([section.developed_length for section in pulled.pulling.sections])
    order = told_order(pull.order, telling)
    return CircuitPulls(
        start=ends[0],
        end=ends[1],
        ducts=[names[duct] for duct in one.ducts],
        verdict=Verdict.of(pulled.within_backward if turned else pulled.within),
        direction=pulled.better,
        feed_from=ends[1] if turned else ends[0],
        pull_to=ends[0] if turned else ends[1],
        length=telling.distance(length),
        stop_tension=telling.force(pull.stop.tension),
        stop_basis=pull.stop.basis,
        tension_safe_at_any_friction=telling.force(pull.stop.safe),
        pull=pull_tension_told.tell(pulled, telling),
        plan=UNSET if pull.plan is None else pull_plan_told.tell(pull.plan, telling),
        cables_to_order=order or [],
    )
