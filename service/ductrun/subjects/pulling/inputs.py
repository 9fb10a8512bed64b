"""What every question about a pull is made of, and what follows from it before any tension is carried."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Annotated

from pydantic import Field

from ductrun.engineering.cable_sets import Lie
from ductrun.engineering.pull_search import Limits, Load
from ductrun.engineering.pulling import friction_of_feed, steepest
from ductrun.kit.choices import CodeEdition
from ductrun.kit.defaults import choice, quantity
from ductrun.kit.forms import (
    Form,
    FrictionCoefficient,
    Offset,
    Omissible,
    SidewallLimit,
    Tension,
    TensionLimit,
)
from ductrun.kit.worksheet import Fault, Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_set import CableSet, lie_in, settle_arrangement, settle_cables
from ductrun.subjects.parts.cables import CableLines
from ductrun.subjects.parts.choices import CableArrangement
from ductrun.subjects.parts.conduit import Conduit, ListedConduit, MeasuredConduit, inside_diameter
from ductrun.subjects.parts.route import GradeBreak, Route, grade_breaks, report_breaks, sections_of, unjudged
from ductrun.subjects.pulling.bend_radii import bends_of, check_radii
from ductrun.subjects.pulling.choices import Attachment, ConductorCounting, WeightCorrectionUse
from ductrun.subjects.pulling.friction import FRICTION, lowest_published, report_friction
from ductrun.subjects.pulling.limits import Allowed, conductors_limit, gear_limits, sidewall_limit
from ductrun.subjects.pulling.settled import Contact, Pulling
from ductrun.subjects.pulling.vertical_supports import check_vertical_supports
from ductrun.units import Angle, Length

FEED_LENGTH = quantity("pulling.feed_length", Length)
ATTACHMENT = choice("pulling.attachment", Attachment)
WEIGHT_CORRECTION_IN = choice("pulling.weight_correction_in", WeightCorrectionUse)
BEND_TOTAL_LIMIT = quantity("pulling.bend_total_limit", Angle)


class PullInputs(Form):
    """Cables, conduit, and the route in the order of the pull."""

    conduit: Conduit = Field(description="The conduit.")
    cables: CableLines = Field(description="The cables pulled together, one line for each kind.")
    arrangement: Omissible[CableArrangement] = Field(
        default=None,
        description="How the cables lie, where it is sure; else each check takes the worst way they may lie.",
        examples=["triplexed"],
    )
    weight_correction_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None,
        description="Factor on friction for cables side by side, in place of the one of their arrangement.",
        examples=[1.4],
    )
    friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None, description="Coefficient of friction of one cable against the conduit.", examples=[0.35]
    )
    braking_friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None,
        description="Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons "
        "with it.",
        examples=[0.15],
    )
    weight_correction_in: Omissible[WeightCorrectionUse] = Field(
        default=None,
        description="Where the weight correction factor multiplies friction.",
        examples=["straights_and_bends"],
    )
    incoming_tension: Omissible[Tension] = Field(
        default=None,
        description="Tension at the entry without a brake, from the reel.",
        examples=[{"value": 50, "unit": "lbf"}],
    )
    feed_length: Omissible[Offset] = Field(
        default=None,
        description="Cable between reel and conduit whose friction is the incoming tension, where that is not given.",
        examples=[{"value": 20, "unit": "m"}],
    )
    brake_limit: Omissible[TensionLimit] = Field(
        default=None,
        description="Force with which the reel brake can hold back.",
        examples=[{"value": 2000, "unit": "lbf"}],
    )
    attachment: Omissible[Attachment] = Field(
        default=None, description="How the rope holds the cable.", examples=["pulling_eye"]
    )
    conductor_counting: Omissible[ConductorCounting] = Field(
        default=None, description="How many of several conductors share the pull.", examples=["two_of_three"]
    )
    device_limit: Omissible[TensionLimit] = Field(
        default=None, description="Rating of the pulling device.", examples=[{"value": 6000, "unit": "lbf"}]
    )
    grip_limit: Omissible[TensionLimit] = Field(
        default=None, description="Limit of the basket grip.", examples=[{"value": 1000, "unit": "lbf"}]
    )
    allowable_tension: Omissible[TensionLimit] = Field(
        default=None,
        description="Limit of the cable's maker, in place of the one computed from conductors; limits of device and "
        "grip hold beside it where they are given.",
        examples=[{"value": 10000, "unit": "lbf"}],
    )
    allowable_sidewall_pressure: Omissible[SidewallLimit] = Field(
        default=None,
        description="Limit of the cable's maker, in place of the one of the cable type.",
        examples=[{"value": 500, "unit": "lbf/ft"}],
    )
    sections: Route = Field(description="The route, in the order of the pull, every bend and elbow included.")
    code_edition: Omissible[CodeEdition] = Field(
        default=None, description="Edition of NFPA 70 to follow.", examples=["2023"]
    )


def settle(request: PullInputs, sheet: Worksheet) -> Pulling:
    """Settle everything a pull needs; refuses what cannot be pulled at all, with every fault."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    conduits = [given.conduit or request.conduit for given in request.sections]
    with faults:
        bores = _bores(request, sheet)
    with faults:
        cables = settle_cables(request.cables, sheet)
    with faults:
        sections = sections_of(request.sections, sheet)
    with faults:
        feed_length = _feed_length(request, sheet)
    faults.stop()
    with faults:
        lies = _lies(request, cables, bores, sheet)
    with faults:
        allowed, judged = _allowed(request, cables, sheet)
    pressure_limit, pressure_rule = sidewall_limit(cables, request.allowable_sidewall_pressure, sheet)
    with faults:
        radii = check_radii(bends_of(sections, request.sections, bores, conduits), cables, sheet)
    faults.stop()
    use = sheet.settle("#/weight_correction_in", request.weight_correction_in, WEIGHT_CORRECTION_IN)
    coefficient = sheet.settle("#/friction_coefficient", request.friction_coefficient, FRICTION)
    report_friction(coefficient, request.sections, conduits, sheet)
    slope = steepest(sections)
    breaks: list[GradeBreak] = []
    if slope > 0.0:  # what hills ask is not asked of a level route
        check_vertical_supports(sections, cables, sheet)
        breaks = grade_breaks(sections)
        report_breaks(sections, breaks, sheet)
    sheet.cite("exact-bend")
    pulling = Pulling(
        sections=sections,
        contacts=_contacts(request, bores, lies, bends_too=use is WeightCorrectionUse.STRAIGHTS_AND_BENDS),
        bores=bores,
        cables=cables,
        lies=list(lies.values()),
        coefficient=coefficient,
        braking_coefficient=None,
        feed_length=feed_length,
        load=_load(request, cables.weight, coefficient, feed_length),
        limits=_limits(request, allowed.limit, pressure_limit.si),
        tension_rule=allowed.rule,
        tension_judged=judged,
        pressure_limit=pressure_limit,
        pressure_rule=pressure_rule,
        lost_bends=unjudged(breaks),
        forbidden_bend=radii.forbidden,
        radii_judged=radii.judged,
    )
    if slope == 0.0:
        return pulling
    return pulling._replace(braking_coefficient=_braking(request, pulling, conduits, sheet))


def _load(request: PullInputs, weight: float, coefficient: float, feed_length: float | None) -> Load:
    """Give what every pull has: the incoming tension as given, which the reel holds, or the friction of the feed."""
    if feed_length is not None:
        return Load(weight, friction_of_feed(coefficient, weight, feed_length), 0.0)
    incoming = 0.0 if request.incoming_tension is None else request.incoming_tension.si
    return Load(weight, incoming, incoming)


def _limits(request: PullInputs, tension: float, pressure: float) -> Limits:
    brake = None if request.brake_limit is None else request.brake_limit.si
    return Limits(tension, pressure, BEND_TOTAL_LIMIT.value.si, brake)


def _bores(request: PullInputs, sheet: Worksheet) -> list[float]:
    """Give the bore [m] of every section; a conduit that no section uses is not looked at."""
    own = {index: given.conduit for index, given in enumerate(request.sections) if given.conduit is not None}
    faults = Gathering()
    general = 0.0
    if len(own) < len(request.sections):
        with faults:
            general = inside_diameter(request.conduit, sheet.within("conduit"))
    bores = [general] * len(request.sections)
    for index, conduit in own.items():
        with faults:
            bores[index] = inside_diameter(conduit, sheet.within(f"sections/{index}/conduit"))
    faults.stop()
    return bores


def _lies(request: PullInputs, cables: CableSet, bores: Sequence[float], sheet: Worksheet) -> dict[float, Lie]:
    """Give how the set lies in each bore there is, from the least one on: what passes that passes all."""
    arrangement = settle_arrangement(cables, request.arrangement, sheet)
    lies: dict[float, Lie] = {}
    for bore in sorted(set(bores)):
        index = bores.index(bore)
        own = request.sections[index].conduit is not None
        where = f"#/sections/{index}/conduit" if own else "#/conduit"
        lies[bore] = lie_in(cables, bore, arrangement, request.weight_correction_factor, sheet, where)
    return lies


def _contacts(request: PullInputs, bores: Sequence[float], lies: dict[float, Lie], *, bends_too: bool) -> list[Contact]:
    """Give how cable and conduit touch in every section; those that touch alike share one record."""
    straights, bends = {}, {}
    for bore, (_, _, factor, least, share, _, _) in lies.items():
        straights[bore] = Contact(None, factor, factor, share, least)
        bends[bore] = straights[bore] if bends_too else Contact(None, 1.0, factor, share, 1.0)
    contacts = []
    for given, bore in zip(request.sections, bores, strict=True):
        contact = straights[bore] if given.kind == "straight" else bends[bore]
        own = given.friction_coefficient
        contacts.append(contact if own is None else contact._replace(own=own))
    return contacts


def _feed_length(request: PullInputs, sheet: Worksheet) -> float | None:
    """Give the length of cable [m] whose friction is the incoming tension; None where that is given."""
    if request.incoming_tension is None:
        return sheet.settle("#/feed_length", request.feed_length, FEED_LENGTH).si
    if request.feed_length is not None:
        raise UnanswerableError(
            Fault(
                "#/feed_length",
                "one_of_two",
                "Give either the incoming tension or the feed length whose friction it is.",
            )
        )
    return None


def _allowed(request: PullInputs, cables: CableSet, sheet: Worksheet) -> tuple[Allowed, bool]:
    """Give the tension that is allowed, and whether it was judged: the gear alone does not judge a cable."""
    if request.allowable_tension is not None:
        limits = [Allowed(request.allowable_tension.si, "the limit given")]
        for name, gear in (("pulling device", request.device_limit), ("basket grip", request.grip_limit)):
            if gear is not None:  # of what is given nothing is passed over
                limits.append(Allowed(gear.si, f"{name}, the limit given"))
        return min(limits), True
    attachment = sheet.settle("#/attachment", request.attachment, ATTACHMENT)
    limits = gear_limits(cables, attachment, request.device_limit, request.grip_limit, sheet)
    conductors = conductors_limit(cables, request.conductor_counting, sheet)
    if conductors is not None:
        limits.append(conductors)
    return min(limits), conductors is not None


def _braking(
    request: PullInputs, pulling: Pulling, conduits: Sequence[ListedConduit | MeasuredConduit], sheet: Worksheet
) -> float | None:
    """Give the low coefficient a brake must reckon with; None where even with that the route cannot run away.

    A default is told only where it acts: where the route can run away, and where it is below what the cable is pulled
    with.
    """
    given = request.braking_friction_coefficient
    default = lowest_published(conduits, pulling.cables)
    coefficients = [pulling.coefficient if contact.own is None else contact.own for contact in pulling.contacts]
    highest = max(coefficients)
    if given is not None and given > highest:
        raise UnanswerableError(
            Fault(
                "#/braking_friction_coefficient",
                "above_pulling_friction",
                f"The low friction a brake reckons with cannot be above that of the pull, {highest:g}.",
                {"maximum": highest},
            )
        )
    low = min(default.value if given is None else given, highest)
    if not any(
        steepest([section]) > math.atan(contact.braking_correction * min(low, coefficient))
        for section, contact, coefficient in zip(pulling.sections, pulling.contacts, coefficients, strict=True)
    ):
        return None
    if given is None and low < highest:
        sheet.settle("#/braking_friction_coefficient", None, default)
    return low
