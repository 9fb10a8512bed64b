"""The answer of POST /v1/duct-run: every part told as its own operation tells it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.telling import Telling
from ductrun.subjects.boxes import pull_box_told
from ductrun.subjects.boxes.pull_box_told import PullBoxResult
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import PlaceKind
from ductrun.subjects.duct_run.form import MOST_CIRCUITS, MOST_DUCTS, MOST_STRETCHES
from ductrun.subjects.duct_run.mandrels import mandrels_of
from ductrun.subjects.duct_run.telling import StopName, told_if_known
from ductrun.subjects.duct_run.told_circuits import RunCircuit, told_circuit
from ductrun.subjects.duct_run.told_stretches import RunStretch, told_stretch
from ductrun.subjects.parts.takeoff import Takeoff

MOST_STOPS = MOST_STRETCHES + 1


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
    outside_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="Outside diameter, where it is known.")
    ] = UNSET
    signal: Annotated[bool | UnsetType, Meta(description="Whether it is for signals.")] = UNSET


class RunStop(Struct, frozen=True, gc=False):
    """An end of the run or a pull point."""

    name: Annotated[StopName, Meta(description="What the request calls it, or its place.")]
    kind: Annotated[PlaceKind, Meta(description="What stands there.")]
    station: Annotated[answers.Length, Meta(description="Distance in plan from the start.")]
    box: Annotated[
        PullBoxResult | UnsetType, Meta(description="What it must measure for the circuits that pass it, where known.")
    ] = UNSET


class DuctRunResult(Struct, frozen=True, gc=False, kw_only=True):
    """The run from end to end."""

    name: Annotated[StopName | UnsetType, Meta(description="What the request calls the run.")] = UNSET
    note: Annotated[
        Annotated[str, Meta(max_length=1000)] | UnsetType, Meta(description="The remark of the request.")
    ] = UNSET
    plan_length: Annotated[answers.Length, Meta(description="Length in plan.")]
    length: Annotated[answers.Length, Meta(description="Length of a duct from end to end along its center line.")]
    duct_count: Annotated[int, Meta(description="Ducts side by side and above each other.")]
    spare_count: Annotated[int, Meta(description="Ducts in which no circuit lies.")]
    mandrel_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="One mandrel for the whole run, if all its ducts take the same.")
    ] = UNSET
    stops: Annotated[list[RunStop], Meta(description="Ends and pull points in order.", max_length=MOST_STOPS)]
    ducts: Annotated[list[RunDuct], Meta(description="The ducts of the first stretch.", max_length=MOST_DUCTS)]
    stretches: Annotated[list[RunStretch], Meta(description="In order.", max_length=MOST_STRETCHES)]
    circuits: Annotated[list[RunCircuit], Meta(description="In the order given.", max_length=MOST_CIRCUITS)]
    takeoff: Annotated[Takeoff, Meta(description="What is ordered, dug and done.")]


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
            RunStop(
                stop.name,
                stop.given.kind,
                telling.distance(station),
                told_if_known(box, pull_box_told.tell, telling),
            )
            for stop, station, box in zip(run.stops, run.stations, run.boxes, strict=True)
        ],
        ducts=_ducts(bank, run, mandrels, telling),
        stretches=[told_stretch(one, telling) for one in run.stretches],
        circuits=[told_circuit(one, run, telling) for one in run.circuits],
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
