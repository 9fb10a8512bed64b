"""The studies of a pull told: friction cases, what would still comply, the profile."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.pulling.studies import Largest, Point, UseAtFriction


class FrictionCase(Struct, frozen=True, gc=False):
    """The pull at one coefficient of friction, from both ends."""

    friction_coefficient: Annotated[float, Meta(description="The coefficient of friction.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    utilization_percent: Annotated[float, Meta(description="The largest share of the limits that is used.")]
    reversed_tension: Annotated[
        answers.Force, Meta(description="Tension at the pulling end, pulled from the other end.")
    ]
    reversed_utilization_percent: Annotated[
        float, Meta(description="The largest share of the limits that is used, pulled from the other end.")
    ]
    verdict: Annotated[Verdict, Meta(description="Whether the pull keeps its limits, or was not judged.")]
    reversed_verdict: Annotated[
        Verdict, Meta(description="Whether the pull from the other end keeps its limits, or was not judged.")
    ]
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    reversed_brake_tension: Annotated[
        answers.Force | UnsetType,
        Meta(description="Force with which the reel must hold back, pulled from the other end, if it must."),
    ] = UNSET


class LargestComplying(Struct, frozen=True, gc=False):
    """The largest values with which the pull as given would still comply; absent where none does."""

    friction_coefficient: Annotated[
        float | UnsetType, Meta(description="Highest coefficient of friction, up to 2; absent if none complies.")
    ] = UNSET
    incoming_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Largest tension at the entry; absent if none complies.")
    ] = UNSET
    last_straight: Annotated[
        answers.Length | UnsetType,
        Meta(
            description="Longest last straight: the last section if it is one, else one at the grade of its end that "
            "could follow. Absent if the pull before it does not comply, or if no length is too long."
        ),
    ] = UNSET


class ProfilePoint(Struct, frozen=True, gc=False):
    """Tension at one place of the run."""

    position: Annotated[answers.Length, Meta(description="Distance along the run from where the cable enters.")]
    tension: Annotated[answers.Force, Meta(description="Tension there.")]


def told_friction_cases(
    cases: list[UseAtFriction] | None, telling: Telling, *, bent: bool
) -> list[FrictionCase] | UnsetType:
    """Tell the pull at low, expected and high friction, if it was asked for; `bent` where the route has a bend."""
    if cases is None:
        return UNSET
    force = telling.force
    return [
        FrictionCase(
            friction_coefficient=case.coefficient,
            tension=force(case.forward.pulling.final),
            sidewall_pressure=telling.force_per_length(case.forward.pulling.pressure) if bent else UNSET,
            utilization_percent=case.forward.share * 100,
            reversed_tension=force(case.backward.pulling.final),
            reversed_utilization_percent=case.backward.share * 100,
            verdict=Verdict.of(case.within),
            reversed_verdict=Verdict.of(case.within_backward),
            brake_tension=UNSET if case.brake is None else force(case.brake),
            reversed_brake_tension=UNSET if case.brake_backward is None else force(case.brake_backward),
        )
        for case in cases
    ]


def told_largest(largest: Largest | None, telling: Telling) -> LargestComplying | UnsetType:
    """Tell what would still comply, if it was asked for."""
    if largest is None:
        return UNSET
    return LargestComplying(
        friction_coefficient=UNSET if largest.coefficient is None else largest.coefficient,
        incoming_tension=UNSET if largest.incoming is None else telling.force(largest.incoming),
        last_straight=UNSET if largest.last_straight is None else telling.distance(largest.last_straight),
    )


def told_profile(points: list[Point] | None, telling: Telling) -> list[ProfilePoint] | UnsetType:
    """Tell the tension along the run, if it was asked for."""
    if points is None:
        return UNSET
    return [ProfilePoint(telling.distance(point.position), telling.force(point.tension)) for point in points]
