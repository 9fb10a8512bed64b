"""The circuits of a run: what they fill, how they are pulled, what they lose on their way."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.duct_run.assessment import AssessedCircuit, CircuitPull, DuctRun, FilledConduit
from ductrun.subjects.duct_run.choices import Service
from ductrun.subjects.duct_run.form import MOST_DUCTS, MOST_STRETCHES
from ductrun.subjects.duct_run.telling import told_if_known
from ductrun.subjects.feeder import voltage_drop
from ductrun.subjects.feeder.voltage_drop import VoltageDropResult
from ductrun.subjects.fill import fill
from ductrun.subjects.fill.fill import FillResult
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.pulling import pull_plan_told, pull_tension_told
from ductrun.subjects.pulling.cable_order import OrderedCable, told_order
from ductrun.subjects.pulling.choices import PullDirection, StopBasis
from ductrun.subjects.pulling.pull_plan_told import PullPlanResult
from ductrun.subjects.pulling.pull_tension_told import PullTensionResult


class CircuitFill(Struct, frozen=True, gc=False):
    """A circuit in one conduit of its way."""

    places: Annotated[
        list[Annotated[str, Meta(max_length=MOST_NAME + 20)]],
        Meta(description="The stretches and risers where it lies in such conduit.", max_length=3 * MOST_STRETCHES),
    ]
    fill: Annotated[FillResult, Meta(description="The fill of the conduit.")]
    conduit_type: Annotated[ConduitType | UnsetType, Meta(description="Its type, where it is given.")] = UNSET
    trade_size: Annotated[TradeSize | UnsetType, Meta(description="Trade size, where it is given.")] = UNSET


class CircuitPulls(Struct, frozen=True, gc=False, kw_only=True):
    """One pull of a circuit between two stops."""

    start: Annotated[str, Meta(description="Stop nearer the start of the run.", max_length=MOST_NAME)]
    end: Annotated[str, Meta(description="Stop nearer the end of the run.", max_length=MOST_NAME)]
    ducts: Annotated[
        list[Annotated[str, Meta(max_length=5)]],
        Meta(description="Names of the ducts pulled alike, as tier-position.", max_length=MOST_DUCTS),
    ]
    verdict: Annotated[Verdict, Meta(description="Of the pull in its better direction.")]
    direction: Annotated[PullDirection, Meta(description="The better direction: forward pulls toward the end.")]
    feed_from: Annotated[str, Meta(description="Stop where the reel stands.", max_length=MOST_NAME)]
    pull_to: Annotated[str, Meta(description="Stop where the rope is pulled.", max_length=MOST_NAME)]
    length: Annotated[answers.Length, Meta(description="Along the center line.")]
    stop_tension: Annotated[
        answers.Force | UnsetType,
        Meta(
            description="At the pulling end: stop there. What cable, grip and device bear, or less, where a bend has "
            "its sidewall limit before, as stop_basis says. Absent where what the cable bears, or a bend, is not known."
        ),
    ] = UNSET
    stop_basis: Annotated[
        StopBasis | UnsetType,
        Meta(
            description="any_friction: with less no bend is beyond its limit, whatever the friction, none too. "
            "friction_assumed: that would stop the pull below what it is expected to need, so the limits are carried "
            "on at the friction it is pulled with. Absent without a stop tension."
        ),
    ] = UNSET
    tension_safe_at_any_friction: Annotated[
        answers.Force | UnsetType,
        Meta(
            description="At the pulling end: with less no bend is beyond its limit, whatever the friction, none too. "
            "Absent without a stop tension."
        ),
    ] = UNSET
    pull: Annotated[PullTensionResult, Meta(description="The pull both ways; its sections from the start of the run.")]
    plan: Annotated[
        PullPlanResult | UnsetType, Meta(description="Where pull points would help, if it does not comply.")
    ] = UNSET
    cables_to_order: Annotated[list[OrderedCable], Meta(description="For one duct.", max_length=20)]


class RunCircuit(Struct, frozen=True, gc=False):
    """One circuit."""

    name: Annotated[str, Meta(description="What the request calls it, or its place.", max_length=MOST_NAME)]
    service: Annotated[Service, Meta(description="What it carries.")]
    start: Annotated[str, Meta(description="Stop where it enters, nearer the start of the run.", max_length=MOST_NAME)]
    end: Annotated[str, Meta(description="Stop where it leaves, nearer the end of the run.", max_length=MOST_NAME)]
    ducts: Annotated[
        list[Annotated[str, Meta(max_length=5)]],
        Meta(description="Names of its ducts, as tier-position.", max_length=MOST_DUCTS),
    ]
    fills: Annotated[list[CircuitFill], Meta(description="In every conduit on its way.", max_length=3 * MOST_STRETCHES)]
    pulls: Annotated[list[CircuitPulls], Meta(description="From stop to stop.", max_length=MOST_DUCTS)]
    length: Annotated[answers.Length, Meta(description="From its start to its end along the center line.")]
    voltage_drop: Annotated[
        VoltageDropResult | UnsetType, Meta(description="Over that length, if a current or a power is given.")
    ] = UNSET


def told_circuit(one: AssessedCircuit, run: DuctRun, telling: Telling) -> RunCircuit:
    """Put a circuit of a run into the caller's units."""
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
        told_if_known(one.drop, voltage_drop.tell, telling),
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
    pulled, stop = pull.pulled, pull.stop
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
        stop_tension=UNSET if stop is None else telling.force(stop.tension),
        stop_basis=UNSET if stop is None else stop.basis,
        tension_safe_at_any_friction=UNSET if stop is None else telling.force(stop.safe),
        pull=pull_tension_told.tell(pulled, telling),
        plan=UNSET if pull.plan is None else pull_plan_told.tell(pull.plan, telling),
        cables_to_order=order or [],
    )
