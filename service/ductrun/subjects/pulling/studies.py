"""What a question about a pull may ask beside the tension: a range of friction, what would still comply, a profile."""

from __future__ import annotations

from typing import NamedTuple

from pydantic import Field

from ductrun.engineering import pull_search
from ductrun.engineering import pulling as engineering
from ductrun.engineering.pull_search import Use
from ductrun.engineering.rounding import over, round_up
from ductrun.kit.forms import FRICTION_BOUNDS, RUN_LENGTH, Form, FrictionCoefficient
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.pulling.direction import BEYOND_ANY_ROPE, verdict_of
from ductrun.subjects.pulling.settled import Pulling

MOST_POINTS = 2_000
_SHORTEST = 1e-6  # m: a shorter one is none


class FrictionRange(Form):
    """A low and a high coefficient of friction beside the expected one."""

    low: FrictionCoefficient = Field(description="Low coefficient, lubricated.", examples=[0.2])
    high: FrictionCoefficient = Field(description="High coefficient, dry.", examples=[0.5])


class UseAtFriction(NamedTuple):
    """The pull at one coefficient of friction, from both ends: what it uses, its verdicts, and its brakes [N], None
    where none is needed.
    """

    coefficient: float
    forward: Use
    backward: Use
    within: bool | None
    within_backward: bool | None
    brake: float | None
    brake_backward: float | None


class Largest(NamedTuple):
    """The largest coefficient, incoming tension [N] and last straight [m] that comply; None where none does."""

    coefficient: float | None = None
    incoming: float | None = None
    last_straight: float | None = None


class Point(NamedTuple):
    """The tension [N] at a distance [m] along the run."""

    position: float
    tension: float


def _use_at(pulling: Pulling, coefficient: float, *, backward: bool = False) -> Use:
    """Give what the pull uses at another coefficient."""
    route, braking = pulling.route_at(coefficient), pulling.braking_at(coefficient)
    if backward:
        route = engineering.reverse(route)
        braking = None if braking is None else engineering.reverse(braking)
    return pull_search.use_of(route, braking, pulling.load_at(coefficient), pulling.limits)


def friction_cases(given: FrictionRange, pulling: Pulling, sheet: Worksheet) -> list[UseAtFriction]:
    """Give the pull at low, expected and high friction."""
    expected = pulling.coefficient
    message = f"The range {given.low:g} to {given.high:g} must hold the expected {expected:g}."
    faults = []
    if given.low > expected:
        faults.append(sheet.fault("low", "range_misses_expected", message, maximum=expected))
    if given.high < expected:
        faults.append(sheet.fault("high", "range_misses_expected", message, minimum=expected))
    if faults:
        raise UnanswerableError(*faults)
    return [_friction_case(coefficient, pulling, sheet) for coefficient in (given.low, pulling.coefficient, given.high)]


def _friction_case(coefficient: float, pulling: Pulling, sheet: Worksheet) -> UseAtFriction:
    use, other = (_use_at(pulling, coefficient, backward=backward) for backward in (False, True))
    if not max(use.highest, other.highest) < BEYOND_ANY_ROPE:
        raise UnanswerableError(
            sheet.fault(
                "high",
                "tension_beyond_any_rope",
                f"At a coefficient of {coefficient:g} the tension grows beyond any rope (1e9 N): lower it.",
            )
        )
    incoming = pulling.load_at(coefficient).incoming
    brakes = [one.pulling.entering if over(one.pulling.entering, incoming) else None for one in (use, other)]
    return UseAtFriction(
        coefficient, use, other, verdict_of(use, pulling), verdict_of(other, pulling), brakes[0], brakes[1]
    )


def find_largest(pulling: Pulling) -> Largest:
    """Find the largest friction, incoming tension and last straight with which the pull as given complies.

    Nothing complies where the route breaks a rule at any of them, or where the tension is not judged.
    """
    bends = engineering.bend_total(pulling.sections)
    if pulling.forbidden_bend is not None or over(bends, pulling.limits.bend_total) or not pulling.judged:
        return Largest()
    return Largest(_largest_friction(pulling), _largest_incoming(pulling), _largest_last_straight(pulling))


def _largest_friction(pulling: Pulling) -> float | None:
    """Give the largest coefficient that complies.

    What friction adds grows with it: carried from the incoming tension alone, as if slack cable needed no brake. What
    the brake adds shrinks with it. So the largest coefficient that complies without the brake complies with it, or
    none does.
    """

    def without_brake(coefficient: float) -> bool:
        try:
            case = pull_search.carried(
                pulling.route_at(coefficient), pulling.load.weight, pulling.load_at(coefficient).incoming
            )
        except OverflowError:
            return False
        return max(case.highest / pulling.limits.tension, case.pressure / pulling.limits.pressure) <= 1 + 1e-12

    largest = pull_search.largest_complying(without_brake, *FRICTION_BOUNDS)
    return largest if largest is not None and _use_at(pulling, largest).complies else None


def _largest_incoming(pulling: Pulling) -> float | None:
    """Give the largest incoming tension [N] that complies: with so much entering, no other brake is needed."""
    route, braking = pulling.route_at(pulling.coefficient), pulling.braking_at(pulling.coefficient)

    def use_at(tension: float) -> Use:
        load = pulling.load._replace(incoming=tension, held=tension)
        return pull_search.use_of(route, braking, load, pulling.limits)

    largest = pull_search.largest_complying(
        lambda tension: use_at(tension).share <= 1 + 1e-12, 0, pulling.limits.tension
    )
    return largest if largest is not None and use_at(largest).complies else None


def _largest_last_straight(pulling: Pulling) -> float | None:
    """Give the longest last straight [m] that complies; None where none does, and where none is too long."""
    route = pulling.route_at(pulling.coefficient)
    braking = pulling.braking_at(pulling.coefficient)

    low, contact = pulling.braking_coefficient, pulling.contacts[-1]
    frictions = (
        pulling.coefficient * contact.straight_correction,
        0.0 if low is None else min(low, pulling.coefficient) * contact.braking_correction,
    )

    def use_with(length: float) -> Use:
        ways = [
            None if way is None else _ending(way, length, friction)
            for way, friction in zip((route, braking), frictions, strict=True)
        ]
        assert ways[0] is not None  # noqa: S101  (the pulling route is always there)
        return pull_search.use_of(ways[0], ways[1], pulling.load, pulling.limits)

    largest = pull_search.largest_complying(lambda length: use_with(length).complies, 0.0, RUN_LENGTH.high.si)
    return largest if largest is not None and _SHORTEST < largest < RUN_LENGTH.high.si else None


def _ending(way: list[engineering.Section], length: float, friction: float) -> list[engineering.Section]:
    """Give a route whose last straight has another length, one more with the friction of the route where it ends with
    a bend.
    """
    last = way[-1]
    if isinstance(last, engineering.Straight):
        return [*way[:-1], last._replace(length=length)]
    return [*way, engineering.Straight(length, last.exit_grade, friction)]


def _part(section: engineering.Section, share: float) -> engineering.Section:
    """Give the first part of a section."""
    if isinstance(section, engineering.Straight):
        return section._replace(length=section.length * share)
    if isinstance(section, engineering.HorizontalBend):
        return section._replace(angle=section.angle * share)
    return section._replace(exit_grade=section.entry_grade + (section.exit_grade - section.entry_grade) * share)


def profile(pulling: Pulling, entering: float, spacing: float, sheet: Worksheet) -> list[Point]:
    """Give the tension along the run from `entering` [N], at joints and at points at most `spacing` [m] apart.

    The sheet is at the place of the spacing.
    """
    counts = [max(1, round_up(section.developed_length / spacing)) for section in pulling.sections]
    if sum(counts) >= MOST_POINTS:
        wider = sheet.tell.distance(2 * engineering.developed_length(pulling.sections) / MOST_POINTS)
        raise UnanswerableError(
            sheet.fault(
                "",
                "too_many_points",
                f"That makes {sum(counts) + 1} points; {MOST_POINTS} are the most. Take them farther apart.",
                minimum=wider,
            )
        )
    weight = pulling.load.weight
    tension, position = entering, 0.0
    points = [Point(position, tension)]
    for section, count in zip(pulling.route_at(pulling.coefficient), counts, strict=True):
        length = section.developed_length
        for step in range(1, count + 1):
            there = _part(section, step / count) if step < count else section
            carried = there.pulled(tension, weight).tension_out
            points.append(Point(position + length * step / count, carried))
        tension = carried
        position += length
    return points
