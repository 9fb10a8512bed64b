"""The answer of POST /v1/pull-plan, and how a plan is told in it."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.pulling.assessment import PlanAssessment, PlannedSpan
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.cuts import MOST_POSITIONS
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.telling import BrakingCase, told_brake, told_braking_case, told_pressure


class PlannedPull(Struct, frozen=True, gc=False):
    """One pull of the plan."""

    start_position: Annotated[
        answers.Length, Meta(description="Where the pull starts, along the route from its start.")
    ]
    end_position: Annotated[answers.Length, Meta(description="Where it ends.")]
    direction: Annotated[PullDirection, Meta(description="Forward toward the end of the route, or reversed.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension anywhere along the pull.")]
    bend_total: Annotated[answers.Angle, Meta(description="Bends of this pull together.")]
    verdict: Annotated[Verdict, Meta(description="Whether it keeps its limits, or was not judged.")]
    utilization_percent: Annotated[float, Meta(description="The largest share of its limits that it uses.")]
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    braking_case: Annotated[
        BrakingCase | UnsetType, Meta(description="The pull at the low friction, where the route can run away.")
    ] = UNSET


class PullPlanResult(Struct, frozen=True, gc=False):
    """The fewest pulls, or the bend that forbids any."""

    pulls: Annotated[
        list[PlannedPull],
        Meta(
            description="The pulls in the order of the route; none if no plan keeps the limits.",
            max_length=MOST_POSITIONS,
        ),
    ]
    pull_count: Annotated[int, Meta(description="Pulls of the plan.")]
    box_count: Annotated[int, Meta(description="Pull points between them.")]
    highest_utilization_percent: Annotated[
        float | UnsetType,
        Meta(
            description="Largest share of its limits that any pull uses; with so many judged pulls the lowest there is."
        ),
    ] = UNSET
    forbidding_pointer: Annotated[
        str | UnsetType, Meta(description="Section of the route, in the request, that forbids any plan.")
    ] = UNSET


def tell(plan: PlanAssessment, telling: Telling) -> PullPlanResult:
    """Tell a plan in the units of the answer."""
    section = plan.forbidding_section
    pulls = [_told(span, plan.pulling, telling) for span in plan.spans]
    return PullPlanResult(
        pulls=pulls,
        pull_count=len(pulls),
        box_count=max(0, len(pulls) - 1),
        highest_utilization_percent=max(pull.utilization_percent for pull in pulls) if pulls else UNSET,
        forbidding_pointer=UNSET if section is None else plan.pulling.route.at(section).place,
    )


def _told(span: PlannedSpan, pulling: Pulling, telling: Telling) -> PlannedPull:
    return PlannedPull(
        start_position=telling.distance(span.start),
        end_position=telling.distance(span.end),
        direction=PullDirection.REVERSED if span.backward else PullDirection.FORWARD,
        tension=telling.force(span.use.pulling.final),
        highest_tension=telling.force(span.use.pulling.highest),
        sidewall_pressure=told_pressure(span.way.pulling, telling),
        bend_total=telling.angle(span.use.bend_total),
        verdict=Verdict.of(span.within),
        utilization_percent=span.use.share * 100,
        brake_tension=told_brake(span.way.pulling, telling),
        braking_case=told_braking_case(span.way, pulling, telling),
    )
