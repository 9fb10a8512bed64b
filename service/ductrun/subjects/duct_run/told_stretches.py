"""A stretch of a run, each part told as its own operation tells it."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.bank import encasement, flotation, spacers
from ductrun.subjects.bank.encasement import EncasementResult
from ductrun.subjects.bank.flotation import FlotationResult
from ductrun.subjects.bank.spacers import SpacersResult
from ductrun.subjects.conduit import joints
from ductrun.subjects.conduit.joints import JointsResult
from ductrun.subjects.conduit.permitted_use import MOST_USES, JudgedUse
from ductrun.subjects.duct_run.alignment import MOST_RUN_SECTIONS
from ductrun.subjects.duct_run.assessment import AssessedStretch, JudgedType, Piece, RiserAbove, StructureGap
from ductrun.subjects.duct_run.choices import SettingKind
from ductrun.subjects.duct_run.settings import MOST_STRUCTURE_JOINTS
from ductrun.subjects.duct_run.telling import StopName, told_if_known
from ductrun.subjects.feeder import ampacity_told
from ductrun.subjects.feeder.ampacity_told import AmpacityResult, Asked
from ductrun.subjects.feeder.studies import Studied
from ductrun.subjects.ground import cover, earth_load_told, trench
from ductrun.subjects.ground.cover import CoverResult
from ductrun.subjects.ground.earth_load_told import EarthLoadResult
from ductrun.subjects.ground.trench import TrenchResult
from ductrun.subjects.movement import expansion_told, supports
from ductrun.subjects.movement.expansion_told import ExpansionResult, PistonOpening
from ductrun.subjects.movement.moving import MOST_OPENINGS
from ductrun.subjects.movement.supports import SupportsResult
from ductrun.subjects.parts.choices import ConduitType, TradeSize

_NOT_BURIED = SimpleNamespace(
    **dict.fromkeys(("trench", "spacers", "encasement", "flotation", "in_groundwater")),
)
MOST_PIECES = 3 * 40
MOST_STRAIGHTS = MOST_RUN_SECTIONS + 101


class StretchUse(Struct, frozen=True, gc=False):
    """The uses of one type of conduit in a stretch."""

    conduit_type: Annotated[ConduitType, Meta(description="Type of the conduit.")]
    verdict: Annotated[Verdict, Meta(description="Of all its uses together.")]
    uses: Annotated[list[JudgedUse], Meta(description="What is said of each use.", max_length=MOST_USES)]


class StretchJoints(Struct, frozen=True, gc=False):
    """Ducts of one conduit in a stretch, or in a riser of it."""

    duct_count: Annotated[int, Meta(description="Ducts of this conduit.")]
    length: Annotated[answers.Length, Meta(description="Of one duct along its center line.")]
    conduit_type: Annotated[ConduitType | UnsetType, Meta(description="Its type, where it is given.")] = UNSET
    trade_size: Annotated[TradeSize | UnsetType, Meta(description="Trade size, where it is given.")] = UNSET
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


class JointFitting(Struct, frozen=True, gc=False):
    """A joint of the structure, and the expansion fitting that each duct has over it."""

    position: Annotated[answers.Length, Meta(description="Where it is, from the start of the stretch.")]
    movement: Annotated[answers.Length, Meta(description="By how much the joint opens and closes in all.")]
    fitting_travel: Annotated[answers.Length, Meta(description="Travel of the fitting.")]
    piston_openings: Annotated[
        list[PistonOpening],
        Meta(
            description="How far to open it by the temperature of the structure, from the lowest on; without a range, "
            "none.",
            max_length=MOST_OPENINGS + 1,
        ),
    ]


class RunStretch(Struct, frozen=True, gc=False, kw_only=True):
    """One stretch of the run, each part as its own operation tells it."""

    name: Annotated[str, Meta(description="What the request calls it, or its place.", max_length=MOST_NAME)]
    setting: Annotated[SettingKind, Meta(description="How it is laid.")]
    station: Annotated[answers.Length, Meta(description="Where it begins, in plan from the start.")]
    plan_length: Annotated[answers.Length, Meta(description="Length in plan, that of its trench.")]
    length: Annotated[answers.Length, Meta(description="Length of a duct along its center line, risers included.")]
    permitted_uses: Annotated[
        list[StretchUse],
        Meta(description="Whether each type of its conduit may be used as it is here.", max_length=MOST_PIECES),
    ]
    cover: Annotated[CoverResult | UnsetType, Meta(description="The cover it needs, where it is buried.")] = UNSET
    trench: Annotated[TrenchResult | UnsetType, Meta(description="The trench it lies in.")] = UNSET
    spacers: Annotated[SpacersResult | UnsetType, Meta(description="The spacers of its bank.")] = UNSET
    encasement: Annotated[EncasementResult | UnsetType, Meta(description="The concrete around its bank.")] = UNSET
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
        Annotated[list[EarthLoadResult], Meta(max_length=3)] | UnsetType,
        Meta(
            description="If asked: under its least cover, where that is another under its greatest, and between them "
            "where groundwater stands at the top of what is buried."
        ),
    ] = UNSET
    expansion: Annotated[ExpansionResult | UnsetType, Meta(description="Of its straights above ground.")] = UNSET
    structure_joints: Annotated[
        Annotated[list[JointFitting], Meta(max_length=MOST_STRUCTURE_JOINTS)] | UnsetType,
        Meta(description="Joints of the structure, each with one more fitting in every duct, if there are any."),
    ] = UNSET
    supports: Annotated[
        Annotated[list[SupportsResult], Meta(max_length=MOST_STRAIGHTS)] | UnsetType,
        Meta(description="Of each straight above ground."),
    ] = UNSET
    risers: Annotated[list[StretchRiser], Meta(description="The parts above grade at its ends.", max_length=2)]
    conduits: Annotated[
        list[StretchJoints], Meta(description="Its ducts by conduit, risers of another apart.", max_length=MOST_PIECES)
    ]


def told_stretch(one: AssessedStretch, telling: Telling) -> RunStretch:
    """Put a stretch into the caller's units."""
    laid, above = one.laid, one.above
    burial = one.burial or _NOT_BURIED
    return RunStretch(
        name=laid.name,
        setting=SettingKind(laid.given.setting.kind),
        station=telling.distance(laid.station),
        plan_length=telling.distance(laid.plan_length),
        length=telling.distance(laid.length),
        permitted_uses=[_use(use) for use in one.uses],
        cover=told_if_known(one.cover, cover.tell, telling),
        trench=told_if_known(burial.trench, trench.tell, telling),
        spacers=told_if_known(burial.spacers, spacers.tell, telling),
        encasement=told_if_known(burial.encasement, encasement.tell, telling),
        flotation=told_if_known(burial.flotation, flotation.tell, telling),
        groundwater_flotation=told_if_known(burial.in_groundwater, flotation.tell, telling),
        bore_uplift_per_length=UNSET if one.bore_uplift is None else telling.force_per_length(one.bore_uplift),
        ampacity=UNSET if one.ampacity is None else ampacity_told.tell(Asked(one.ampacity, Studied()), telling),
        earth_loads=[earth_load_told.tell(found, telling) for found in one.earth_loads] or UNSET,
        expansion=UNSET if above is None else told_if_known(above.movement, expansion_told.tell, telling),
        structure_joints=UNSET if above is None else [_over_joint(gap, telling) for gap in above.gaps] or UNSET,
        supports=UNSET if above is None else [supports.tell(strapped, telling) for strapped in above.supported],
        risers=[_riser(riser, telling) for riser in one.risers],
        conduits=[_piece(piece, telling) for piece in one.pieces],
    )


def _use(use: JudgedType) -> StretchUse:
    return StretchUse(use.conduit_type, Verdict.of(use.judged.within), use.judged.uses)


def _over_joint(gap: StructureGap, telling: Telling) -> JointFitting:
    return JointFitting(
        telling.distance(gap.position),
        telling.size(gap.movement),
        telling.given(gap.travel),
        [PistonOpening(telling.given(at), telling.size(opening)) for at, opening in gap.openings],
    )


def _riser(riser: RiserAbove, telling: Telling) -> StretchRiser:
    return StretchRiser(
        riser.stop.name,
        told_if_known(riser.movement, expansion_told.tell, telling),
        told_if_known(riser.supported, supports.tell, telling),
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
        told_if_known(piece.joined, joints.tell, telling),
    )
