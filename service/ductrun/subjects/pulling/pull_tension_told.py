"""The answer of POST /v1/pull-tension, and how an assessment is told in it."""

from __future__ import annotations

from typing import Annotated, Final

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.engineering.rounding import under
from ductrun.kit import answers
from ductrun.kit.telling import Telling
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.parts.cables import MOST_LINES
from ductrun.subjects.parts.choices import CableArrangement
from ductrun.subjects.parts.jam import OVALITY
from ductrun.subjects.parts.route import MOST_SECTIONS
from ductrun.subjects.pulling.assessment import PullAssessment
from ductrun.subjects.pulling.cable_order import OrderedCable, told_order
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.studies import MOST_POINTS
from ductrun.subjects.pulling.studies_told import (
    FrictionCase,
    LargestComplying,
    ProfilePoint,
    told_friction_cases,
    told_largest,
    told_profile,
)
from ductrun.subjects.pulling.telling import (
    BrakingCase,
    ReversedPull,
    SectionTension,
    told_brake,
    told_braking_case,
    told_pressure,
    told_reversed,
    told_sections,
)

MOST_PLACE: Final = 2 * MOST_NAME + 100  # two sections, each with the name of its stretch


class HangingCable(Struct, frozen=True, gc=False):
    """Cable that is supported over a rise."""

    place: Annotated[str, Meta(description="The sections it goes through.", max_length=MOST_PLACE)]
    rise: Annotated[answers.Length, Meta(description="How high it hangs.")]
    support_count: Annotated[int, Meta(description="Supports in one duct: at the top of the rise, and below it.")]
    support_spacing: Annotated[answers.Length, Meta(description="From the top down, the most between two of them.")]


class PullTensionResult(Struct, frozen=True, gc=False):
    """The pull from the first section to the last, and from the other end."""

    arrangement: Annotated[CableArrangement, Meta(description="How the cables lie, or the way with most friction.")]
    weight_correction_factor: Annotated[float, Meta(description="Factor on friction for that arrangement.")]
    incoming_tension: Annotated[answers.Force, Meta(description="Tension at the entry without a brake.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension anywhere along the pull.")]
    allowable_sidewall_pressure: Annotated[answers.ForcePerLength, Meta(description="What the cable allows in a bend.")]
    utilization_percent: Annotated[
        float, Meta(description="The largest share of tension, sidewall pressure and brake that is used.")
    ]
    sections: Annotated[
        list[SectionTension], Meta(description="The sections in the order of the pull.", max_length=MOST_SECTIONS)
    ]
    reversed: Annotated[ReversedPull, Meta(description="The same pull from the other end.")]
    better_direction: Annotated[
        PullDirection, Meta(description="Direction that complies, or was judged, or uses less of the limits.")
    ]
    better_reason: Annotated[str, Meta(description="Why that end, in a sentence.")]
    bend_total: Annotated[answers.Angle, Meta(description="All bends of the route together.")]
    lubricant_volume: Annotated[answers.Volume, Meta(description="Pulling lubricant for the run.")]
    allowable_tension: Annotated[
        answers.Force | UnsetType,
        Meta(description="What conductors, grip and gear allow; absent where the conductors are not known."),
    ] = UNSET
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    braking_case: Annotated[
        BrakingCase | UnsetType, Meta(description="The pull at the low friction, where the route can run away.")
    ] = UNSET
    jam_ratio: Annotated[
        float | UnsetType, Meta(description="Conduit over cable diameter, where three cables govern.")
    ] = UNSET
    jam_ratio_with_ovality: Annotated[
        float | UnsetType,
        Meta(description="Conduit over cable diameter times 1.05, the handbook allowance for ovality in bends."),
    ] = UNSET
    friction_cases: Annotated[
        Annotated[list[FrictionCase], Meta(max_length=3)] | UnsetType,
        Meta(description="The pull at low, expected and high friction, if asked."),
    ] = UNSET
    largest: Annotated[LargestComplying | UnsetType, Meta(description="What would still comply, if asked.")] = UNSET
    profile: Annotated[
        Annotated[list[ProfilePoint], Meta(max_length=MOST_POINTS)] | UnsetType,
        Meta(description="Tension along the run for plotting, if asked."),
    ] = UNSET
    cables_to_order: Annotated[
        Annotated[list[OrderedCable], Meta(max_length=MOST_LINES)] | UnsetType,
        Meta(description="The cable to order, a line of cables each, if asked."),
    ] = UNSET
    cable_supports: Annotated[
        Annotated[list[HangingCable], Meta(max_length=MOST_SECTIONS)] | UnsetType,
        Meta(description="Where the cable must be supported, if it hangs farther than its conductors may."),
    ] = UNSET
    handbook_clearance: Annotated[
        answers.Length | UnsetType, Meta(description="Clearance as handbooks print it; higher for the cradle.")
    ] = UNSET
    clearance: Annotated[
        answers.Length | UnsetType, Meta(description="Free height above the cables; up to four cables.")
    ] = UNSET
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET


def tell(found: PullAssessment, telling: Telling) -> PullTensionResult:
    """Tell a pull in the units of the answer."""
    pulling, forward = found.pulling, found.forward
    lie, jam_ratio = pulling.worst_lie, pulling.jam_ratio
    return PullTensionResult(
        arrangement=CableArrangement(lie.arrangement),
        weight_correction_factor=lie.weight_correction,
        incoming_tension=telling.force(pulling.load.incoming),
        tension=telling.force(forward.pulling.case.final),
        highest_tension=telling.force(forward.pulling.case.highest),
        allowable_sidewall_pressure=telling.given(pulling.pressure_limit),
        utilization_percent=forward.use.share * 100,
        sections=told_sections(forward.pulling, telling),
        reversed=told_reversed(found.backward, found.within_backward, pulling, telling),
        better_direction=found.better,
        better_reason=found.better_reason,
        bend_total=telling.angle(found.bend_total),
        lubricant_volume=telling.liquid_volume(found.lubricant_volume),
        allowable_tension=_allowable(pulling, telling),
        brake_tension=told_brake(forward.pulling, telling),
        braking_case=told_braking_case(forward, pulling, telling),
        jam_ratio=UNSET if jam_ratio is None else jam_ratio,
        jam_ratio_with_ovality=UNSET if jam_ratio is None else jam_ratio * OVALITY,
        clearance=UNSET if lie.clearance is None else telling.size(lie.clearance),
        handbook_clearance=UNSET if lie.handbook_clearance is None else telling.size(lie.handbook_clearance),
        sidewall_pressure=told_pressure(forward.pulling, telling),
        friction_cases=told_friction_cases(found.friction_cases, telling, bent=forward.pulling.pressure_at is not None),
        largest=told_largest(found.largest, telling),
        profile=told_profile(found.profile, telling),
        cables_to_order=told_order(found.cables_to_order, telling),
        cable_supports=_supports(pulling, telling),
    )


def _supports(pulling: Pulling, telling: Telling) -> list[HangingCable] | UnsetType:
    """Tell where the cable is supported."""
    return [
        HangingCable(one.place, telling.distance(one.rise), one.support_count, telling.given(one.spacing))
        for one in pulling.supports.hung
    ] or UNSET


def _allowable(pulling: Pulling, telling: Telling) -> answers.Force | UnsetType:
    """Tell the allowable tension, digit for digit where it is a limit the caller gave."""
    if not pulling.tension_judged:
        return UNSET
    given = pulling.given_tension
    if given is not None and not under(pulling.limits.tension, given.si):
        return telling.given(given)
    return telling.force(pulling.limits.tension)
