"""What is known of a whole run when it has been assessed: in SI, to be told, drawn, compared and taken off."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.alignment import Line
from ductrun.engineering.bank import Envelope
from ductrun.subjects.bank.encasing import Encasement
from ductrun.subjects.bank.floating import Flotation
from ductrun.subjects.bank.spacing import Spacers
from ductrun.subjects.boxes.sizing import Sized
from ductrun.subjects.conduit.choices import RunEnd
from ductrun.subjects.conduit.joining import Joined
from ductrun.subjects.conduit.permitted_use import Judged
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.circuits import PlacedCircuit
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.laid import LaidSection, LaidStretch
from ductrun.subjects.duct_run.names import Apart
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.duct_run.takeoff.entries import Entry
from ductrun.subjects.feeder.dropping import Drop
from ductrun.subjects.feeder.rating import Ampacity
from ductrun.subjects.fill.fill import Filled
from ductrun.subjects.ground.cover import Cover
from ductrun.subjects.ground.digging import Trench
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.ground.under_load import UnderLoad
from ductrun.subjects.movement.moving import Movement
from ductrun.subjects.movement.strapping import Supported
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.pulling.assessment import PlanAssessment, PullAssessment
from ductrun.subjects.pulling.cable_order import OrderedLine
from ductrun.subjects.pulling.stop_tension import Stop as PullStop
from ductrun.units import Length, Temperature


class JudgedType(NamedTuple):
    """The uses that a type of conduit is put to in a stretch; its conduit, and whether it is that of a riser."""

    conduit_type: ConduitType
    judged: Judged


class Piece(NamedTuple):
    """Ducts of one conduit in one stretch: how many, their sections, and what joining them takes.

    `joined` is None where nothing is on file of how the conduit is joined; `riser` names the stop it comes up to;
    `ducts` are their indexes, `ends` how they finish at either, and where in words that is.
    """

    conduit: ListedConduit | MeasuredConduit
    duct_count: int
    sections: list[LaidSection]
    joined: Joined | None
    riser: Stop | None
    ducts: Sequence[int] = ()
    ends: Sequence[tuple[RunEnd, str]] = ()

    @property
    def length(self) -> float:
        """Length of one duct [m]."""
        return sum([one.element.developed_length for one in self.sections])


class Burial(NamedTuple):
    """What a stretch in earth takes: its envelope, the earth over it, and what is dug, poured and held apart.

    None where that does not belong to its setting, or was not asked.
    """

    envelope: Envelope
    earth: EarthCover
    trench: Trench
    spacers: Spacers | None
    encasement: Encasement | None
    flotation: Flotation | None
    in_groundwater: Flotation | None


class StructureGap(NamedTuple):
    """A joint of the structure in a stretch: where it is [m], and by how much it moves [m]; the travel of the fitting
    of each duct over it, and how far that is opened [m] by the temperature of the structure, where that is known.
    """

    position: float
    movement: float
    travel: Length
    openings: Sequence[tuple[Temperature, float]]


class AboveGround(NamedTuple):
    """How a stretch above ground moves and is supported: one layout for each straight between bends.

    `movement` is None where the temperatures are not known, `supported` where no rule of supports is.
    """

    runs: list[float]
    movement: Movement | None
    supported: list[Supported]
    hung: bool
    gaps: list[StructureGap]


class RiserAbove(NamedTuple):
    """The part of a riser above grade: what stands above it, how it moves, and its straps, as far as known."""

    stop: Stop
    movement: Movement | None
    supported: Supported | None


class AssessedStretch(NamedTuple):
    """One stretch: laid out, with its bank, and all that was asked of it; how hard its ducts float in the fluid of a
    bore [N/m], and the cord left at each end of a duct [m]; `earth_loads` by their cover where earth and traffic were
    asked, `ampacity` where circuits with a load pass.
    """

    laid: LaidStretch
    bank: RunBank
    uses: list[JudgedType]
    cover: Cover | None
    burial: Burial | None
    above: AboveGround | None
    risers: list[RiserAbove]
    pieces: list[Piece]
    bore_uplift: float | None
    cord_tail: float
    earth_loads: list[UnderLoad]
    ampacity: Ampacity | None = None


class FilledConduit(NamedTuple):
    """A circuit in one conduit along its way, and the names of the stretches where it is that."""

    stretches: list[str]
    filled: Filled


class RunPull(NamedTuple):
    """One pull of a circuit between two stops: their indexes, the pull carried both ways, when to stop
    at the pulling end where that is known, the pull points that would help where it does not comply, and the cable to
    order.
    """

    start: int
    end: int
    pulled: PullAssessment
    stop: PullStop | None
    plan: PlanAssessment | None
    order: list[OrderedLine]


class CircuitPull(NamedTuple):
    """A pull of a circuit, alike in so many of its ducts, by their indexes."""

    ducts: list[int]
    pull: RunPull


class AssessedCircuit(NamedTuple):
    """One circuit: where it lies, how full it makes every conduit on its way, its pulls, its length [m] along the
    center line, and what a load loses on that.
    """

    placed: PlacedCircuit
    fills: list[FilledConduit]
    pulls: list[CircuitPull]
    length: float
    drop: Drop | None


class DuctRun(NamedTuple):
    """A whole run: as asked, its stops from start to end, stretches and circuits, and its ground, if that is known.

    `spans` are the stretches from every stop to the next, by their indexes; `stations` those of the stops [m] in plan;
    `boxes` what they must measure, None where that is not asked or not known; `openings` the temperatures of the
    opening table; `entries` what it takes, where rates were held against that;
    `apart` what was found of each place alone.
    """

    given: DuctRunRequest
    stops: list[Stop]
    spans: list[range]
    stations: list[float]
    boxes: list[Sized | None]
    stretches: list[AssessedStretch]
    circuits: list[AssessedCircuit]
    ground: Line | None
    openings: list[Temperature]
    entries: list[Entry] | None = None
    apart: Sequence[Apart] = ()

    @property
    def length(self) -> float:
        """Length of a duct from end to end [m]."""
        return sum([stretch.laid.length for stretch in self.stretches])

    @property
    def plan_length(self) -> float:
        """Length in plan [m]."""
        return sum([stretch.laid.plan_length for stretch in self.stretches])
