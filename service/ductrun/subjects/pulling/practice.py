"""What every question about a pull asks: the practice of pulling, and the cables, conduit and route it is asked of."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule, choice, number, quantity
from ductrun.kit.forms import (
    Edition,
    Form,
    FrictionCoefficient,
    Offset,
    Omissible,
    SidewallLimit,
    Tension,
    TensionLimit,
)
from ductrun.subjects.parts.cables import PulledLines
from ductrun.subjects.parts.choices import CableArrangement
from ductrun.subjects.parts.conduit import Conduit
from ductrun.subjects.parts.route import Route
from ductrun.subjects.pulling.choices import Attachment, ConductorCounting, WeightCorrectionUse
from ductrun.units import Force, Length

FRICTION = number("pulling.friction_coefficient")
WEIGHT_CORRECTION_IN = choice("pulling.weight_correction_in", WeightCorrectionUse)
FEED_LENGTH = quantity("pulling.feed_length", Length)
INCOMING = frozenset({"incoming_tension", "feed_length"})  # one alone: a length stands for its friction
ATTACHMENT = choice("pulling.attachment", Attachment)
COUNTING = choice("pulling.conductor_counting", ConductorCounting)
DEVICE_LIMIT = quantity("pulling.device_limit", Force)


class PullPractice(Form):
    """How cables are pulled: friction, gear, and what they may bear."""

    arrangement: Omissible[CableArrangement] = Field(
        default=None,
        description="How the cables lie, where it is sure; else each check takes the worst way they may lie.",
        examples=["triplexed"],
        json_schema_extra=by_rule("worst_case, where the cables may lie in several ways; else the one way there is"),
    )
    weight_correction_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None,
        description="Factor on friction for cables side by side, in place of the one of their arrangement.",
        examples=[1.4],
        json_schema_extra=by_rule("that of the arrangement; for many cables a figure of practice"),
    )
    friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None,
        description="Coefficient of friction of one cable against the conduit.",
        examples=[0.35],
        json_schema_extra=FRICTION.stated,
    )
    braking_friction_coefficient: Omissible[FrictionCoefficient] = Field(
        default=None,
        description="Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons "
        "with it.",
        examples=[0.15],
        json_schema_extra=by_rule("the lowest published for the conduits and jackets, where the route may run away"),
    )
    weight_correction_in: Omissible[WeightCorrectionUse] = Field(
        default=None,
        description="Where the weight correction factor multiplies friction.",
        examples=["straights_and_bends"],
        json_schema_extra=WEIGHT_CORRECTION_IN.stated,
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
        json_schema_extra=FEED_LENGTH.stated,
    )
    brake_limit: Omissible[TensionLimit] = Field(
        default=None,
        description="Force with which the reel brake can hold back.",
        examples=[{"value": 2000, "unit": "lbf"}],
    )
    attachment: Omissible[Attachment] = Field(
        default=None,
        description="How the rope holds the cable.",
        examples=["pulling_eye"],
        json_schema_extra=ATTACHMENT.stated,
    )
    conductor_counting: Omissible[ConductorCounting] = Field(
        default=None,
        description="How many of several conductors share the pull.",
        examples=["two_of_three"],
        json_schema_extra=COUNTING.stated,
    )
    device_limit: Omissible[TensionLimit] = Field(
        default=None,
        description="Rating of the pulling device.",
        examples=[{"value": 6000, "unit": "lbf"}],
        json_schema_extra=DEVICE_LIMIT.stated,
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


class PullInputs(PullPractice):
    """Cables, conduit, and the route in the order of the pull."""

    conduit: Conduit = Field(description="The conduit.")
    cables: PulledLines = Field(description="The cables pulled together, one line for each kind.")
    sections: Route = Field(description="The route, in the order of the pull, every bend and elbow included.")
    code_edition: Edition = None
