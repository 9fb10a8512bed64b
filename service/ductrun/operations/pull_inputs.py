"""What every question about a pull is made of, and what follows from it before any tension is carried."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering.pull_search import Limits, Load
from ductrun.engineering.pulling import Friction, Section
from ductrun.operations.bend_radii import check_radii
from ductrun.operations.cable_limits import allowable_tension, sidewall_limit
from ductrun.operations.cable_set import CableSet, Lie, lie_of
from ductrun.operations.choices import Attachment, CodeEdition, ConductorCounting, WeightCorrectionUse
from ductrun.operations.conduits import Conduit, inside_diameter
from ductrun.operations.defaults import choice, number, quantity
from ductrun.operations.inputs import Form, Omissible, SidewallLimit, Tension, TensionLimit
from ductrun.operations.route import Route, sections_of
from ductrun.operations.worksheet import Gathering, Worksheet
from ductrun.units import Angle, Force, ForcePerLength

FRICTION = number("pulling.friction_coefficient")
INCOMING = quantity("pulling.incoming_tension", Force)
ATTACHMENT = choice("pulling.attachment", Attachment)
WEIGHT_CORRECTION_IN = choice("pulling.weight_correction_in", WeightCorrectionUse)
BEND_TOTAL_LIMIT = quantity("pulling.bend_total_limit", Angle)

FrictionCoefficient = Annotated[float, Field(ge=0.01, le=2)]


class PullInputs(Form):
    """Cables, conduit, and the route in the order of the pull."""

    conduit: Conduit = Field(description="The conduit.")
    cables: CableSet = Field(description="The cables pulled together.")
    friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None, description="Coefficient of friction of one cable against the conduit.", examples=[0.35]
    )
    weight_correction_in: Omissible[WeightCorrectionUse] = Field(
        default=None,
        description="Where the weight correction factor multiplies friction.",
        examples=["straights_and_bends"],
    )
    incoming_tension: Omissible[Tension] = Field(
        default=None, description="Tension at the entry, from the reel.", examples=[{"value": 50, "unit": "lbf"}]
    )
    attachment: Omissible[Attachment] = Field(
        default=None, description="How the rope holds the cable.", examples=["pulling_eye"]
    )
    conductor_counting: Omissible[ConductorCounting] = Field(
        default=None, description="How many of several conductors share the pull.", examples=["all_counted"]
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


class Pulling(NamedTuple):
    """A pull in SI: route, how the cables lie, what every pull of them has, what one may use, and by which rules."""

    bore: float
    route: list[Section]
    lie: Lie
    coefficient: float
    load: Load
    limits: Limits
    tension_rule: str
    pressure_limit: ForcePerLength
    pressure_rule: str


def friction_of(lie: Lie, coefficient: float, use: WeightCorrectionUse) -> Friction:
    """Give the effective friction in straights and in bends."""
    corrected = lie.weight_correction * coefficient
    return Friction(corrected, coefficient if use is WeightCorrectionUse.STRAIGHTS_ONLY else corrected)


def settle(request: PullInputs, sheet: Worksheet) -> Pulling:
    """Settle everything a pull needs; refuses what cannot be pulled at all."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        bore = inside_diameter(request.conduit, sheet)
    with faults:
        route = sections_of(request.sections, sheet)
    faults.stop()
    lie = lie_of(request.cables, bore, sheet)
    coefficient = sheet.settle("#/friction_coefficient", request.friction_coefficient, FRICTION)
    use = sheet.settle("#/weight_correction_in", request.weight_correction_in, WEIGHT_CORRECTION_IN)
    incoming = sheet.settle("#/incoming_tension", request.incoming_tension, INCOMING).si
    if request.allowable_tension is None:
        attachment = sheet.settle("#/attachment", request.attachment, ATTACHMENT)
        allowed, rule = allowable_tension(
            request.cables, attachment, request.conductor_counting, request.device_limit, request.grip_limit, sheet
        )
    else:
        allowed, rule = request.allowable_tension.si, "the limit given"
    pressure_limit, pressure_rule = sidewall_limit(request.cables, request.allowable_sidewall_pressure, sheet)
    check_radii(route, request.cables, request.conduit, bore, sheet)
    sheet.cite("exact-bend")
    load = Load(lie.weight, friction_of(lie, coefficient, use), lie.sidewall_factor, incoming)
    limits = Limits(allowed, pressure_limit.si, BEND_TOTAL_LIMIT.value.si)
    return Pulling(bore, route, lie, coefficient, load, limits, rule, pressure_limit, pressure_rule)
