"""What a question about a pull may ask beside the tension: a range of friction, what would still comply, a profile."""

from __future__ import annotations

import math
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import pull_search
from ductrun.engineering import pulling as engineering
from ductrun.operations import answers
from ductrun.operations.inputs import Form
from ductrun.operations.pull_inputs import FrictionCoefficient, Pulling
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet

MOST_POINTS = 2_000
_FRICTION_BOUNDS = (0.01, 2.0)  # those of the request


class FrictionRange(Form):
    """A low and a high coefficient of friction beside the expected one."""

    low: FrictionCoefficient = Field(description="Low coefficient, lubricated.", examples=[0.2])
    high: FrictionCoefficient = Field(description="High coefficient, dry.", examples=[0.5])


class FrictionCase(Struct, frozen=True, gc=False):
    """The pull at one coefficient of friction, from both ends."""

    friction_coefficient: float
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    sidewall_pressure: Annotated[answers.ForcePerLength, Meta(description="Highest sidewall pressure.")]
    utilization_percent: Annotated[float, Meta(description="The larger share of the limits that is used.")]
    within_limits: bool
    reversed_tension: Annotated[answers.Force, Meta(description="Tension at the pulling end from the other end.")]
    reversed_utilization_percent: Annotated[float, Meta(description="The same from the other end.")]
    reversed_within_limits: bool


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
            description="Longest last straight: the last section if it is one, else a level one that could follow. "
            "Absent if the pull before it does not comply, or if no length is too long."
        ),
    ] = UNSET


class ProfilePoint(Struct, frozen=True, gc=False):
    """Tension at one place of the run."""

    position: Annotated[answers.Length, Meta(description="Distance along the run from where the cable enters.")]
    tension: Annotated[answers.Force, Meta(description="Tension there.")]


def _with_friction(pulling: Pulling, coefficient: float) -> pull_search.Load:
    """Give the load at another coefficient; both effective frictions are proportional to it."""
    scale = coefficient / pulling.coefficient
    straights, bends = pulling.load.friction
    return pulling.load._replace(friction=engineering.Friction(straights * scale, bends * scale))


def friction_cases(given: FrictionRange, pulling: Pulling, sheet: Worksheet) -> list[FrictionCase]:
    """Give the pull at low, expected and high friction."""
    if not given.low <= pulling.coefficient <= given.high:
        raise UnanswerableError(
            Fault(
                "#/friction_range",
                "range_misses_expected",
                f"The range {given.low:g} to {given.high:g} must hold the expected {pulling.coefficient:g}.",
                {"low": {"maximum": pulling.coefficient}, "high": {"minimum": pulling.coefficient}},
            )
        )
    backwards = engineering.reverse(pulling.route)
    tell = sheet.tell
    cases = []
    for coefficient in (given.low, pulling.coefficient, given.high):
        load = _with_friction(pulling, coefficient)
        use, other = (pull_search.use_of(way, load, pulling.limits) for way in (pulling.route, backwards))
        if not (math.isfinite(use.share) and math.isfinite(other.share)):
            raise UnanswerableError(
                Fault(
                    "#/friction_range/high",
                    "tension_beyond_any_rope",
                    f"At a coefficient of {coefficient:g} the tension grows beyond any rope: lower it.",
                )
            )
        cases.append(
            FrictionCase(
                friction_coefficient=coefficient,
                tension=tell.force(use.tension),
                sidewall_pressure=tell.force_per_length(use.pressure),
                utilization_percent=use.share * 100,
                within_limits=use.share <= 1 + 1e-9,
                reversed_tension=tell.force(other.tension),
                reversed_utilization_percent=other.share * 100,
                reversed_within_limits=other.share <= 1 + 1e-9,
            )
        )
    return cases


def largest_complying(pulling: Pulling, sheet: Worksheet) -> LargestComplying:
    """Find the largest friction, incoming tension and last straight with which the pull as given complies."""
    route, load, limits = pulling.route, pulling.load, pulling.limits

    def at_friction(coefficient: float) -> bool:
        return pull_search.use_of(route, _with_friction(pulling, coefficient), limits).share <= 1 + 1e-12

    def at_incoming(tension: float) -> bool:
        return pull_search.use_of(route, load._replace(incoming=tension), limits).share <= 1 + 1e-12

    friction = pull_search.largest_complying(at_friction, *_FRICTION_BOUNDS)
    incoming = pull_search.largest_complying(at_incoming, 0.0, limits.tension)
    last = route[-1]
    ends_straight = isinstance(last, engineering.Straight)
    before = pull_search.use_of(route[:-1] if ends_straight else route, load, limits)
    grade = last.grade if isinstance(last, engineering.Straight) else 0.0
    length = None
    if before.share <= 1 + 1e-12:
        length = pull_search.longest_last_straight(
            before.tension, load.weight, load.friction.straights, grade, limits.tension
        )
    return LargestComplying(
        friction_coefficient=UNSET if friction is None else friction,
        incoming_tension=UNSET if incoming is None else sheet.tell.force(incoming),
        last_straight=UNSET if length is None else sheet.tell.distance(length),
    )


def _part(section: engineering.Section, share: float) -> engineering.Section:
    """Give the first part of a section."""
    match section:
        case engineering.Straight(length, grade):
            return engineering.Straight(length * share, grade)
        case engineering.HorizontalBend(radius, angle):
            return engineering.HorizontalBend(radius, angle * share)
        case engineering.VerticalBend(radius, entry, leave):
            return engineering.VerticalBend(radius, entry, entry + (leave - entry) * share)


def profile(pulling: Pulling, spacing: float, sheet: Worksheet) -> list[ProfilePoint]:
    """Give the tension along the run, at every joint of sections and at points at most `spacing` [m] apart."""
    counts = [max(1, math.ceil(section.developed_length / spacing - 1e-9)) for section in pulling.route]
    if sum(counts) >= MOST_POINTS:
        wider = sheet.tell.distance(2 * engineering.developed_length(pulling.route) / MOST_POINTS)
        raise UnanswerableError(
            Fault(
                "#/profile_spacing",
                "too_many_points",
                f"That makes {sum(counts) + 1} points; {MOST_POINTS} are the most. Take them farther apart.",
                {"minimum": {"value": wider.value, "unit": wider.unit}},
            )
        )
    load, tell = pulling.load, sheet.tell
    tension, position = load.incoming, 0.0
    points = [ProfilePoint(tell.distance(0.0), tell.force(tension))]
    for section, count in zip(pulling.route, counts, strict=True):
        length = section.developed_length
        for step in range(1, count + 1):
            there = _part(section, step / count) if step < count else section
            carried = max(0.0, there.carry(tension, load.weight, load.friction))
            points.append(ProfilePoint(tell.distance(position + length * step / count), tell.force(carried)))
        tension = carried
        position += length
    return points
