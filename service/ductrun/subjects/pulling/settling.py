"""A pull settled before any tension is carried: loads, limits, friction, and what a brake reckons with."""

from __future__ import annotations

import math

from ductrun.engineering.cable_sets import Lie
from ductrun.engineering.pull_search import Limits, Load
from ductrun.engineering.pulling import friction_of_feed, steepest
from ductrun.kit.backing import GIVEN
from ductrun.kit.defaults import quantity
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_set import CableSet, lie_in, settle_arrangement, settle_cables
from ductrun.subjects.parts.route import GradeBreak, PlacedRoute, grade_breaks, place_route, report_breaks, unjudged
from ductrun.subjects.pulling.bend_radii import check_radii
from ductrun.subjects.pulling.choices import WeightCorrectionUse
from ductrun.subjects.pulling.friction import lowest_published, report_friction
from ductrun.subjects.pulling.limits import (
    DEVICE_GIVEN,
    GRIP_GIVEN,
    Allowed,
    conductors_limit,
    gear_limits,
    sidewall_limit,
)
from ductrun.subjects.pulling.practice import (
    ATTACHMENT,
    FEED_LENGTH,
    FRICTION,
    WEIGHT_CORRECTION_IN,
    PullInputs,
    PullPractice,
)
from ductrun.subjects.pulling.settled import Contact, Pulling
from ductrun.subjects.pulling.vertical_supports import NONE_NEEDED, check_vertical_supports
from ductrun.units import Angle

BEND_TOTAL_LIMIT = quantity("pulling.bend_total_limit", Angle)


def settle_request(request: PullInputs, sheet: Worksheet) -> Pulling:
    """Settle the parts of a request, and the pull made of them; refuses what cannot be pulled at all."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        cables = settle_cables(request.cables, sheet.within("cables"))
    with faults:
        route = place_route(request.sections, request.conduit, sheet.within("sections"), sheet.within("conduit"))
    if faults.faults:
        with faults:
            _feed_length(request, sheet)
        faults.stop()
    return settle(request, cables, route, sheet)


def settle(practice: PullPractice, cables: CableSet, route: PlacedRoute, sheet: Worksheet) -> Pulling:
    """Settle all that a pull of cables through a route needs; refuses what cannot be pulled, with every fault."""
    faults = Gathering()
    with faults:
        feed_length = _feed_length(practice, sheet)
    with faults:
        lies = _lies(practice, cables, route, sheet)
    with faults:
        allowed, judged = _allowed(practice, cables, sheet)
    pressure_limit, pressure_rule = sidewall_limit(cables, practice.allowable_sidewall_pressure, sheet)
    with faults:
        radii = check_radii(route, cables)
    faults.stop()
    use = sheet.settle("weight_correction_in", practice.weight_correction_in, WEIGHT_CORRECTION_IN)
    coefficient = sheet.settle("friction_coefficient", practice.friction_coefficient, FRICTION)
    report_friction(coefficient, route, sheet)
    slope = steepest(route.sections)
    breaks: list[GradeBreak] = []
    supports = NONE_NEEDED
    if slope > 0.0:  # what hills ask is not asked of a level route
        supports = check_vertical_supports(route, cables)
        breaks = grade_breaks(route.sections)
        report_breaks(route, breaks)
    sheet.cite("exact-bend")
    pulling = Pulling(
        route=route,
        contacts=_contacts(route, lies, bends_too=use is WeightCorrectionUse.STRAIGHTS_AND_BENDS),
        cables=cables,
        lies=list(lies.values()),
        coefficient=coefficient,
        braking_coefficient=None,
        feed_length=feed_length,
        load=_load(practice, cables.weight, coefficient, feed_length),
        limits=_limits(practice, allowed.limit, pressure_limit.si),
        tension_rule=allowed.rule,
        tension_judged=judged,
        given_tension=practice.allowable_tension,
        pressure_limit=pressure_limit,
        pressure_rule=pressure_rule,
        lost_bends=unjudged(breaks),
        forbidden_bend=radii.forbidden,
        radii_judged=radii.judged,
        supports=supports,
    )
    if slope == 0.0:
        return pulling
    return pulling._replace(braking_coefficient=_braking(practice, pulling, sheet))


def _load(practice: PullPractice, weight: float, coefficient: float, feed_length: float | None) -> Load:
    """Give what every pull has: the incoming tension as given, which the reel holds, or the friction of the feed."""
    if feed_length is not None:
        return Load(weight, friction_of_feed(coefficient, weight, feed_length), 0.0)
    incoming = 0.0 if practice.incoming_tension is None else practice.incoming_tension.si
    return Load(weight, incoming, incoming)


def _limits(practice: PullPractice, tension: float, pressure: float) -> Limits:
    brake = None if practice.brake_limit is None else practice.brake_limit.si
    return Limits(tension, pressure, BEND_TOTAL_LIMIT.value.si, brake)


def _lies(practice: PullPractice, cables: CableSet, route: PlacedRoute, sheet: Worksheet) -> dict[float, Lie]:
    """Give how the set lies in each bore there is, from the least one on: what passes that passes all."""
    arrangement = settle_arrangement(cables, practice.arrangement, sheet)
    return {
        bore: lie_in(
            cables,
            bore,
            arrangement,
            practice.weight_correction_factor,
            sheet,
            route.conduit_at(route.bores.index(bore)),
        )
        for bore in sorted(set(route.bores))
    }


def _contacts(route: PlacedRoute, lies: dict[float, Lie], *, bends_too: bool) -> list[Contact]:
    """Give how cable and conduit touch in every section; those that touch alike share one record."""
    straights, bends = {}, {}
    for bore, (_, _, factor, least, share, _, _) in lies.items():
        straights[bore] = Contact(None, factor, factor, share, least)
        bends[bore] = straights[bore] if bends_too else Contact(None, 1.0, factor, share, 1.0)
    contacts = []
    for given, bore in zip(route.given, route.bores, strict=True):
        contact = straights[bore] if given.kind == "straight" else bends[bore]
        own = given.friction_coefficient
        contacts.append(contact if own is None else contact._replace(own=own))
    return contacts


def _feed_length(practice: PullPractice, sheet: Worksheet) -> float | None:
    """Give the length of cable [m] whose friction is the incoming tension; None where that is given."""
    if practice.incoming_tension is None:
        return sheet.settle("feed_length", practice.feed_length, FEED_LENGTH).si
    if practice.feed_length is not None:
        raise UnanswerableError(
            sheet.fault(
                "feed_length",
                "one_of_two",
                "Give either the incoming tension or the feed length whose friction it is.",
            )
        )
    return None


def _allowed(practice: PullPractice, cables: CableSet, sheet: Worksheet) -> tuple[Allowed, bool]:
    """Give the tension that is allowed, and whether it was judged: the gear alone does not judge a cable."""
    if practice.allowable_tension is not None:
        limits = [Allowed(practice.allowable_tension.si, GIVEN)]
        for backing, gear in ((DEVICE_GIVEN, practice.device_limit), (GRIP_GIVEN, practice.grip_limit)):
            if gear is not None:  # of what is given nothing is passed over
                limits.append(Allowed(gear.si, backing))
        return min(limits), True
    attachment = sheet.settle("attachment", practice.attachment, ATTACHMENT)
    limits = gear_limits(cables, attachment, practice.device_limit, practice.grip_limit, sheet)
    conductors = conductors_limit(cables, practice.conductor_counting, sheet)
    if conductors is not None:
        limits.append(conductors)
    return min(limits), conductors is not None


def _braking(practice: PullPractice, pulling: Pulling, sheet: Worksheet) -> float | None:
    """Give the low coefficient a brake must reckon with; None where even with that the route cannot run away.

    A default is told only where it acts: where the route can run away, and where it is below what the cable is pulled
    with.
    """
    given = practice.braking_friction_coefficient
    default = lowest_published(pulling.route.conduits, pulling.cables)
    coefficients = [pulling.coefficient if contact.own is None else contact.own for contact in pulling.contacts]
    highest = max(coefficients)
    if given is not None and given > highest:
        raise UnanswerableError(
            sheet.fault(
                "braking_friction_coefficient",
                "above_pulling_friction",
                f"The low friction a brake reckons with cannot be above that of the pull, {highest:g}.",
                maximum=highest,
            )
        )
    low = min(default.value if given is None else given, highest)
    if not any(
        steepest([section]) > math.atan(contact.braking_correction * min(low, coefficient))
        for section, contact, coefficient in zip(pulling.sections, pulling.contacts, coefficients, strict=True)
    ):
        return None
    if given is None and low < highest:
        sheet.settle("braking_friction_coefficient", None, default)
    return low
