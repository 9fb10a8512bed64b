"""A stretch above ground, and the legs of risers: how they move with temperature, and what holds them."""

from __future__ import annotations

from ductrun.engineering.pulling import Straight
from ductrun.engineering.rounding import over
from ductrun.kit.backing import GIVEN, PRACTICE, WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.duct_run.assessment import AboveGround, RiserAbove, StructureGap
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import SupportKind
from ductrun.subjects.duct_run.cost import HoldingBudget
from ductrun.subjects.duct_run.laid import LaidStretch
from ductrun.subjects.duct_run.moving_practice import RunMoving
from ductrun.subjects.duct_run.practice import LayeredSheet, laid_over
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.duct_run.settings import SUPPORTS, AboveGroundSetting
from ductrun.subjects.duct_run.site import Site
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.movement.choices import ConduitMaterial, SupportedConduitType
from ductrun.subjects.movement.findings import Apart, Coefficient, coefficient_of, report_crossings
from ductrun.subjects.movement.fittings import FITTING_TRAVEL
from ductrun.subjects.movement.moving import CONVENTION, USABLE_TRAVEL, Movement, move, opening_at
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.service_temperature import has_limit
from ductrun.subjects.movement.spacing import SupportedConduit, SupportSpacing, spacing_of
from ductrun.subjects.movement.strapping import Fittings, Supported, Supporting, support
from ductrun.subjects.movement.temperatures import Seen, Span
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.units import ExpansionCoefficient, Length, Temperature, TemperatureDifference, TemperatureDifferenceUnit

_COUPLED = {ConduitType.RMC, ConduitType.IMC}
_MATERIALS: dict[ConduitType, ConduitMaterial] = {
    **{kind: ConduitMaterial.PVC for kind in ConduitType if kind.startswith("pvc_")},
    **dict.fromkeys((ConduitType.EMT, *_COUPLED), ConduitMaterial.STEEL),
    ConduitType.HDPE_SCHEDULE_40: ConduitMaterial.HDPE,
    ConduitType.RTRC: ConduitMaterial.RTRC,
}
_MOVING_MOST = [ConduitType.HDPE_SCHEDULE_40, *[kind for kind in ConduitType if kind.startswith("pvc_")]]
_SUPPORTED = {kind.value for kind in SupportedConduitType}
_END = Default(Length.parse(3, "ft"), PRACTICE)  # of a conduit without a rule on file
_DEGREES = TemperatureDifferenceUnit.DELTA_DEG_F
_SET_BY = (
    " Openings are for a conduit in the shade, as warm as the structure; hotter than the structure gets, in the sun."
)
_STANDS_STILL = 1e-12  # 1/K: a structure that moves as its conduit does
_Conduit = ListedConduit | MeasuredConduit


def assess_above(setting: AboveGroundSetting, laid: LaidStretch, bank: RunBank, site: Site) -> AboveGround:
    """Say how a stretch above ground moves, and what holds it: one layout for each straight."""
    place = laid.sheet.within("setting", about=laid.sheet.place)
    own = {"fitting_travel": setting.fitting_travel}
    given, sheet = site.here(own, laid.sheet.within("setting"), laid.sheet.place)
    conduit = _governing(bank)
    gaps = _gaps(setting, laid, given, site, place, sheet)
    runs = _cut(_straights(laid), gaps)
    movement = None
    coefficient = _coefficient(conduit, site, place) if runs else None
    if coefficient is not None and site.seen is not None:
        _leave(coefficient, sheet)
        movement = move(given, _against_structure(setting, coefficient, site.seen, place), runs, site.seen, sheet)
        for run, moved in zip(runs, [] if movement.free is None else movement.free.runs, strict=False):
            site.budget.take(moved.fitting_count, run.place)
    spacing = _spacing(conduit, given, setting.support_spacing, sheet)
    supported = [] if spacing is None else _supported(given, spacing, runs, movement, site.budget, sheet)
    hung = place.settle("supports", setting.supports, SUPPORTS) is SupportKind.HANGER
    return AboveGround([run.length for run in runs], movement, supported, hung, gaps)


def assess_riser(stop: Stop, bank: RunBank, site: Site) -> RiserAbove:
    """Say how the part of a riser above grade moves, and place its straps."""
    height = stop.given.height
    if height is None or not height.si:
        return RiserAbove(stop, None, None)
    place = stop.sheet.within("height", about=stop.sheet.pointer("height"))
    conduit = conduit_of_riser(stop, _governing(bank))
    run = StraightRun(height.si, place)
    report_crossings(True, None, place)
    given, sheet = site.here({}, place, place.place)
    coefficient = _coefficient(conduit, site, place)
    movement = None
    if coefficient is not None and site.seen is not None:
        _leave(coefficient, sheet)
        movement = move(given, coefficient, [run], site.seen, sheet)
    spacing = _ruled(conduit, given, sheet)
    if spacing is None:
        return RiserAbove(stop, movement, None)
    ends = laid_over(Supporting(termination_count=1), {"end_distance": given.end_distance})
    return RiserAbove(stop, movement, support(ends, spacing, run, sheet))


def _governing(bank: RunBank) -> _Conduit:
    """Give the conduit that moves most, else the first."""
    kinds = {conduit.type: conduit for conduit in bank.conduits}
    return next((kinds[kind] for kind in _MOVING_MOST if kind in kinds), bank.ducts[0].conduit)


def _straights(laid: LaidStretch) -> list[StraightRun]:
    """Give the straights between bends; what a profile cut of one lies in one line."""
    runs: list[StraightRun] = []
    joins = False
    for one in laid.sections:
        straight = isinstance(one.element, Straight)
        if straight and joins:
            runs[-1] = StraightRun(runs[-1].length + one.element.developed_length, runs[-1].place)
        elif straight:
            place = one.sheet if one.name == laid.name else one.sheet.within("length")
            runs.append(StraightRun(one.element.developed_length, place))
        joins = straight
    return runs


def _gaps(
    setting: AboveGroundSetting,
    laid: LaidStretch,
    practice: RunMoving,
    site: Site,
    place: Worksheet,
    sheet: Worksheet,
) -> list[StructureGap]:
    """Give the joints of the structure; each needs a fitting that takes its movement."""
    given = setting.structure_joints
    if not given:
        return []
    percent = sheet.settle("usable_travel_percent", practice.usable_travel_percent, USABLE_TRAVEL)
    travel = sheet.settle("fitting_travel", practice.fitting_travel, FITTING_TRAVEL)
    usable = travel.si * percent / 100
    gaps = []
    for index, joint in enumerate(given):
        pointer = place.pointer(f"structure_joints/{index}")
        at = place.within(f"structure_joints/{index}", about=pointer)
        if over(joint.position.si, laid.length):
            most = at.tell.distance(laid.length)
            raise UnanswerableError(
                at.fault("position/value", "past_the_end", "The stretch ends before that.", maximum=most)
            )
        openings = _openings(joint.movement.si, travel.si, practice, site, sheet)
        gaps.append(StructureGap(joint.position.si, joint.movement.si, travel, openings))
        _judge_gap(joint.movement, usable, at)
    report_crossings(None, True, place)
    return gaps


def _openings(
    movement: float, travel: float, practice: RunMoving, site: Site, sheet: Worksheet
) -> list[tuple[Temperature, float]]:
    """Give how far a fitting [travel in m] over a joint [movement in m] is opened, from the coldest structure to the
    warmest, which the sun is not taken to heat; nothing without a range.
    """
    if site.seen is None or site.seen.span is None:
        return []
    coldest, hottest = site.seen.span
    span = Span(coldest, hottest - site.seen.sun)
    asked = [at for at in site.openings if not over(at.si, span.highest)]
    if not asked or not over(span.highest, coldest):
        return []
    convention = sheet.settle("piston_convention", practice.piston_convention, CONVENTION)
    return [(at, opening_at(at.si, travel, movement, span, convention)) for at in asked]


def _judge_gap(movement: Length, usable: float, at: Worksheet) -> None:
    """Hold the movement of a joint against what of the travel of a fitting may be used [m]."""
    too_wide = over(movement.si, usable)
    at.judge(not too_wide)
    if too_wide:
        told, most = at.tell.given(movement), at.tell.size(usable)
        at.find(
            Severity.VIOLATION,
            "joint_moves_beyond_travel",
            f"The joint of the structure moves {text_of(told)}; {text_of(most)} of the travel of a fitting may be "
            "used. Take a fitting of more travel there.",
            USABLE_TRAVEL.backing,
            told,
            most,
        )


def _cut(runs: list[StraightRun], gaps: list[StructureGap]) -> list[StraightRun]:
    """Cut the straights at the joints of the structure: on either side the conduit is held by its own part of it."""
    found = []
    start = 0.0
    for run in runs:
        end = start + run.length
        places = sorted({gap.position for gap in gaps if start < gap.position < end})
        for near, far in zip([start, *places], [*places, end], strict=True):
            found.append(StraightRun(far - near, run.place))
        start = end
    return found


def _coefficient(conduit: _Conduit, site: Site, place: Worksheet) -> Coefficient | None:
    """Give how a conduit moves; None where temperatures or material are not known, which is found."""
    material = None if conduit.type is None else _MATERIALS.get(conduit.type)
    if site.seen is not None and material is not None:
        return coefficient_of(material, None, place)
    what = "how this conduit moves: give its type" if material is None else "its temperatures: give them in site"
    place.find(
        Severity.CAUTION,
        "movement_not_judged",
        f"How far the conduit moves with temperature was not judged without {what}.",
        place.rule("expansion_pvc" if material is ConduitMaterial.PVC else "expansion_other"),
    )
    place.judge(None)
    return None


def _leave(coefficient: Coefficient, sheet: LayeredSheet) -> None:
    """Say that air has no limit around a material: the limit of another is none of it."""
    if coefficient.material is not None and not has_limit(coefficient.material):
        sheet.leave("service_temperature")


def _against_structure(
    setting: AboveGroundSetting, coefficient: Coefficient, seen: Seen, place: Worksheet
) -> Coefficient:
    """Give how conduit moves against a structure that moves too: by the difference of their coefficients, and with the
    sun, which heats the conduit alone, by its own.
    """
    structure = setting.structure_coefficient
    if structure is None:
        return coefficient
    unit, own, sun = coefficient.printed.unit, coefficient.printed.value, seen.sun / seen.difference.si
    theirs = unit.from_si(structure.si)
    at = place.within("structure_coefficient", about=place.pointer("structure_coefficient"))
    words = "; less that of the structure, as given"
    if over(theirs, own):
        _note_outgrown(at)
    if sun:
        words += ", but for the allowance for sun"
        _note_sun(seen, at)
    return coefficient._replace(
        printed=ExpansionCoefficient(max(abs(own - theirs) * (1 - sun) + own * sun, _STANDS_STILL), unit),
        backing=coefficient.backing.noting(words),
        place=at,
        apart=Apart(coefficient.per_kelvin, structure.si),
    )


def _note_outgrown(at: Worksheet) -> None:
    """Say why the openings run the other way than a crew is used to."""
    at.find(
        Severity.NOTE,
        "structure_moves_more",
        "The structure moves more with temperature than the conduit: fittings close in the cold and open in the heat.",
        WORKED_OUT,
        member="",
    )


def _note_sun(seen: Seen, at: Worksheet) -> None:
    """Say that the sun is not taken to heat the structure, and in what state of both the openings hold."""
    told = text_of(at.tell.given(TemperatureDifference(_DEGREES.from_si(seen.sun), _DEGREES)))
    held, set_by = f"The {told} for sun", _SET_BY
    if seen.span is None:
        held, set_by = f"The difference is taken to hold {told} for sun, which", ""
    at.find(
        Severity.NOTE,
        "sun_on_the_conduit_alone",
        f"{held} is reckoned for the conduit alone: the structure behind it is taken to be no warmer than the rest of "
        f"the range. Where there is no sun, give a range with direct_sun false.{set_by}",
        WORKED_OUT,
        member="",
    )


def _supported(
    practice: RunMoving,
    spacing: SupportSpacing,
    runs: list[StraightRun],
    movement: Movement | None,
    budget: HoldingBudget,
    sheet: Worksheet,
) -> list[Supported]:
    """Place the straps of every straight, around the fittings that its movement asks for."""
    free = None if movement is None else movement.free
    found = []
    for index, run in enumerate(runs):
        fittings = None
        if free is not None and free.runs[index].layout is not None:
            made = free.fitting
            fittings = laid_over(
                Fittings(fitting_count=free.runs[index].fitting_count),
                {"fitting_travel": made.travel, "piston_engagement": made.engagement},
            )
        given = {"end_distance": practice.end_distance, "fittings": fittings}
        found.append(support(laid_over(Supporting(termination_count=2), given), spacing, run, sheet))
        budget.take(len(found[-1].positions), run.place)
    return found


def _ruled(conduit: _Conduit, practice: RunMoving, sheet: Worksheet) -> SupportSpacing | None:
    """Give how far apart supports may stand by rule; None where none is on file for type and size."""
    kind, size = conduit.type, conduit.trade_size
    if kind is None or size is None or kind.value not in _SUPPORTED:
        return None
    supported = SupportedConduit(kind="listed", type=SupportedConduitType(kind.value), trade_size=size)
    own = {"coupling": practice.coupling} if kind in _COUPLED else {}
    return spacing_of(laid_over(supported, own), sheet)


def _spacing(conduit: _Conduit, practice: RunMoving, given: Length | None, sheet: Worksheet) -> SupportSpacing | None:
    """Give how far apart supports may stand: by rule, closer if asked; as given where no rule is on file."""
    ruled = _ruled(conduit, practice, sheet)
    if ruled is not None:
        return ruled if given is None or over(given.si, ruled.most.si) else ruled._replace(most=given)
    if given is not None:
        end = _END if _END.value.si <= given.si else Default(given, GIVEN)
        return SupportSpacing(given, end, GIVEN, "given", sheet)
    sheet.find(
        Severity.CAUTION,
        "supports_not_judged",
        "How far apart this conduit is supported is not on file by its size: give support_spacing from its maker.",
        PRACTICE,
    )
    sheet.judge(None)
    return None
