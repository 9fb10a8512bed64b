"""A pull told: its sections, the pull at the low friction, and the pull from the other end."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.parts.route import MOST_SECTIONS
from ductrun.subjects.pulling.direction import Carried, Direction
from ductrun.subjects.pulling.settled import Pulling


class SectionTension(Struct, frozen=True, gc=False):
    """One section of the pull."""

    tension_in: Annotated[answers.Force, Meta(description="Tension entering the section.")]
    tension_out: Annotated[answers.Force, Meta(description="Tension leaving the section.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension in it, at its ends or inside a bend.")]
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest pressure on the worst cable; bends only.")
    ] = UNSET


class BrakingCase(Struct, frozen=True, gc=False):
    """The pull at the low friction, at which the cable runs away most, from its own least brake."""

    friction_coefficient: Annotated[float, Meta(description="The low coefficient.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension anywhere along the pull.")]
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET


class ReversedPull(Struct, frozen=True, gc=False):
    """The same pull from the other end."""

    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension anywhere along the pull.")]
    verdict: Annotated[Verdict, Meta(description="Whether it keeps its limits, or was not judged.")]
    utilization_percent: Annotated[float, Meta(description="The largest share of the limits that is used.")]
    sections: Annotated[
        list[SectionTension],
        Meta(
            description="The sections in the order of this pull: the route from its last section to its first.",
            max_length=MOST_SECTIONS,
        ),
    ]
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    braking_case: Annotated[
        BrakingCase | UnsetType, Meta(description="The pull at the low friction, where the route can run away.")
    ] = UNSET
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET


def told_sections(carried: Carried, telling: Telling) -> list[SectionTension]:
    """Tell every section; what leaves one enters the next."""
    force, per_length = telling.force, telling.force_per_length
    told = []
    entering = force(carried.case.entering)
    for tension_in, tension_out, highest, pressure in carried.pulled:
        leaving = force(tension_out)
        top = entering if highest == tension_in else leaving if highest == tension_out else force(highest)
        told.append(SectionTension(entering, leaving, top, UNSET if pressure is None else per_length(pressure)))
        entering = leaving
    return told


def told_reversed(way: Direction, within: bool | None, pulling: Pulling, telling: Telling) -> ReversedPull:
    """Tell the pull from the other end."""
    return ReversedPull(
        tension=telling.force(way.pulling.case.final),
        highest_tension=telling.force(way.pulling.case.highest),
        utilization_percent=way.use.share * 100,
        sections=told_sections(way.pulling, telling),
        verdict=Verdict.of(within),
        brake_tension=told_brake(way.pulling, telling),
        braking_case=told_braking_case(way, pulling, telling),
        sidewall_pressure=told_pressure(way.pulling, telling),
    )


def told_brake(carried: Carried, telling: Telling) -> answers.Force | UnsetType:
    """Tell the brake a carried pull needs, if it needs one."""
    return UNSET if carried.brake is None else telling.force(carried.brake)


def told_pressure(carried: Carried, telling: Telling) -> answers.ForcePerLength | UnsetType:
    """Tell the highest sidewall pressure, if there is a bend."""
    return UNSET if carried.pressure_at is None else telling.force_per_length(carried.case.pressure)


def told_braking_case(way: Direction, pulling: Pulling, telling: Telling) -> BrakingCase | UnsetType:
    """Tell the pull at the low friction, where the route can run away."""
    if way.braking is None or pulling.braking_coefficient is None:
        return UNSET
    return BrakingCase(
        friction_coefficient=pulling.braking_coefficient,
        tension=telling.force(way.braking.case.final),
        highest_tension=telling.force(way.braking.case.highest),
        brake_tension=told_brake(way.braking, telling),
        sidewall_pressure=told_pressure(way.braking, telling),
    )
