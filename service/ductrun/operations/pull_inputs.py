"""What every question about a pull is made of, and what follows from it before any tension is carried."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Annotated

from pydantic import Field

from ductrun.engineering.cable_sets import Lie
from ductrun.engineering.pull_search import Limits, Load
from ductrun.engineering.pulling import friction_of_feed, steepest
from ductrun.operations.bend_radii import bends_of, check_radii
from ductrun.operations.cable_limits import Allowed, conductors_limit, gear_limits, sidewall_limit
from ductrun.operations.cable_set import CableSet, lie_in, settle_cables
from ductrun.operations.choices import (
    Attachment,
    CableArrangement,
    CodeEdition,
    ConductorCounting,
    WeightCorrectionUse,
)
from ductrun.operations.conduits import Conduit, ListedConduit, MeasuredConduit, inside_diameter
from ductrun.operations.defaults import choice, quantity
from ductrun.operations.friction import FRICTION, lowest_published, report_friction
from ductrun.operations.inputs import (
    Form,
    FrictionCoefficient,
    Offset,
    Omissible,
    SidewallLimit,
    Tension,
    TensionLimit,
)
from ductrun.operations.pulled_cables import CableLines
from ductrun.operations.pulling import Contact, Pulling
from ductrun.operations.route import GradeBreak, Route, grade_breaks, report_breaks, sections_of, unjudged
from ductrun.operations.vertical_supports import check_vertical_supports
from ductrun.operations.worksheet import Fault, Gathering, UnanswerableError, Worksheet
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
        description="Limit of the cable's maker, in place of the one computed from conductors, grip and device.",
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
    """Settle everything a pull needs; refuses what cannot be pulled at all."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    conduits = [given.conduit or request.conduit for given in request.sections]
    with faults:
        bores = _bores(request, sheet)
    with faults:
        cables = settle_cables(request.cables, sheet)
    with faults:
        sections = sections_of(request.sections, sheet)
    faults.stop()
    lies = _lies(request, cables, bores, sheet)
    use = sheet.settle("#/weight_correction_in", request.weight_correction_in, WEIGHT_CORRECTION_IN)
    bends_too = use is WeightCorrectionUse.STRAIGHTS_AND_BENDS
    contacts = [
        Contact(
            given.friction_coefficient,
            lies[bore].weight_correction if bends_too or given.kind == "straight" else 1.0,
            lies[bore].sidewall_factor,
        )
        for given, bore in zip(request.sections, bores, strict=True)
    ]
    coefficient = sheet.settle("#/friction_coefficient", request.friction_coefficient, FRICTION)
    report_friction(coefficient, request.friction_coefficient, conduits, sheet)
    feed_length = _feed_length(request, sheet)
    allowed, judged = _allowed(request, cables, sheet)
    pressure_limit, pressure_rule = sidewall_limit(cables, request.allowable_sidewall_pressure, sheet)
    forbidden_bend = check_radii(bends_of(sections, request.sections, bores, conduits), cables, sheet)
    slope = steepest(sections)
    breaks: list[GradeBreak] = []
    if slope > 0.0:  # what hills ask is not asked of a level route
        check_vertical_supports(sections, cables, sheet)
        breaks = grade_breaks(sections)
        report_breaks(sections, breaks, sheet)
    sheet.cite("exact-bend")
    brake = None if request.brake_limit is None else request.brake_limit.si
    if feed_length is not None:
        incoming = friction_of_feed(coefficient, cables.weight, feed_length)
    else:
        incoming = 0.0 if request.incoming_tension is None else request.incoming_tension.si
    pulling = Pulling(
        sections=sections,
        contacts=contacts,
        bores=bores,
        cables=cables,
        lies=list(lies.values()),
        coefficient=coefficient,
        braking_coefficient=None,
        feed_length=feed_length,
        load=Load(cables.weight, incoming),
        limits=Limits(allowed.limit, pressure_limit.si, BEND_TOTAL_LIMIT.value.si, brake),
        tension_rule=allowed.rule,
        tension_judged=judged,
        pressure_limit=pressure_limit,
        pressure_rule=pressure_rule,
        lost_bends=unjudged(breaks),
        forbidden_bend=forbidden_bend,
    )
    if slope == 0.0:
        return pulling
    return pulling._replace(braking_coefficient=_braking(request, pulling, conduits, sheet))


def _bores(request: PullInputs, sheet: Worksheet) -> list[float]:
    """Give the bore [m] of every section; a conduit that no section uses is not looked at."""
    faults = Gathering()
    bores: list[float] = []
    general: float | None = None
    for index, given in enumerate(request.sections):
        with faults:
            if given.conduit is not None:
                bores.append(inside_diameter(given.conduit, sheet, f"#/sections/{index}/conduit"))
                continue
            if general is None:
                general = inside_diameter(request.conduit, sheet)
            bores.append(general)
    faults.stop()
    return bores


def _lies(request: PullInputs, cables: CableSet, bores: Sequence[float], sheet: Worksheet) -> dict[float, Lie]:
    """Give how the set lies in each bore there is."""
    faults = Gathering()
    lies: dict[float, Lie] = {}
    for index, bore in enumerate(bores):
        if bore not in lies:
            own = request.sections[index].conduit is not None
            pointer = f"#/sections/{index}/conduit" if own else "#/conduit"
            with faults:
                lies[bore] = lie_in(cables, bore, request.arrangement, request.weight_correction_factor, sheet, pointer)
    faults.stop()
    return lies


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
        return Allowed(request.allowable_tension.si, "the limit given"), True
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
    low = default.value if given is None else given
    coefficients = [pulling.coefficient if own is None else own for own, _, _ in pulling.contacts]
    if not any(
        steepest([section]) > math.atan(contact.correction * min(low, coefficient))
        for section, contact, coefficient in zip(pulling.sections, pulling.contacts, coefficients, strict=True)
    ):
        return None
    if given is None and low < max(coefficients):
        sheet.settle("#/braking_friction_coefficient", None, default)
    return low
