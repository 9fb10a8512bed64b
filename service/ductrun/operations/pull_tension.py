"""POST /v1/pull-tension: can this cable be pulled through this run without damage, and from which end."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import pulling as engineering
from ductrun.engineering.cables import OVALITY
from ductrun.operations import answers
from ductrun.operations.cable_set import DEVICE_LIMIT, CableSet, allowable_tension, lie_of
from ductrun.operations.choices import (
    Attachment,
    CableArrangement,
    CodeEdition,
    PullDirection,
    Severity,
)
from ductrun.operations.conduits import Conduit, inside_diameter
from ductrun.operations.defaults import choice, number, quantity
from ductrun.operations.inputs import Form, Omissible, SidewallLimit, Tension, TensionLimit
from ductrun.operations.operation import Operation
from ductrun.operations.pull_direction import (
    Direction,
    SectionTension,
    hold_against_limits,
    report_route,
    show_working,
)
from ductrun.operations.route import Route, sections_of
from ductrun.operations.worksheet import Gathering, Worksheet, text_of
from ductrun.units import Force, ForcePerLength, LengthUnit, VolumeUnit

FRICTION = number("pulling.friction_coefficient")
INCOMING = quantity("pulling.incoming_tension", Force)
ATTACHMENT = choice("pulling.attachment", Attachment)
SIDEWALL_LIMIT = quantity("pulling.sidewall_limit", ForcePerLength)
_LUBRICANT = number("pulling.lubricant_per_length")  # US gallons for each foot and inch
_FILM = _LUBRICANT.value * VolumeUnit.GAL_US.scale / (LengthUnit.FT.scale * LengthUnit.INCH.scale)


class PullTensionRequest(Form):
    """Cables, conduit, and the route in the order of the pull."""

    conduit: Conduit = Field(description="The conduit.")
    cables: CableSet = Field(description="The cables pulled together.")
    friction_coefficient: Omissible[Annotated[float, Field(ge=0.01, le=2)]] = Field(
        default=None, description="Coefficient of friction of one cable against the conduit.", examples=[0.35]
    )
    incoming_tension: Omissible[Tension] = Field(
        default=None,
        description="Tension at the entry, from the reel.",
        examples=[{"value": 50, "unit": "lbf"}],
    )
    attachment: Omissible[Attachment] = Field(
        default=None, description="How the rope holds the cable.", examples=["pulling_eye"]
    )
    allowable_tension: Omissible[TensionLimit] = Field(
        default=None,
        description="Limit of the cable's maker, in place of the one computed.",
        examples=[{"value": 10000, "unit": "lbf"}],
    )
    allowable_sidewall_pressure: Omissible[SidewallLimit] = Field(
        default=None,
        description="Limit of the cable's maker, in place of the general one.",
        examples=[{"value": 500, "unit": "lbf/ft"}],
    )
    sections: Route = Field(description="The route, in the order of the pull, every bend and elbow included.")
    code_edition: Omissible[CodeEdition] = Field(
        default=None, description="Edition of NFPA 70 to follow.", examples=["2023"]
    )


class ReversedPull(Struct, frozen=True, gc=False):
    """The same pull from the other end."""

    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    within_limits: Annotated[bool, Meta(description="Whether tension and sidewall pressure keep their limits.")]
    sections: Annotated[
        list[SectionTension],
        Meta(description="The sections in the order of this pull: the route from its last section to its first."),
    ]
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET


class PullTensionResult(Struct, frozen=True, gc=False):
    """The pull from the first section to the last, and from the other end."""

    arrangement: Annotated[CableArrangement, Meta(description="How the cables lie.")]
    weight_correction_factor: Annotated[float, Meta(description="Factor on friction for that arrangement.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension anywhere along the pull.")]
    allowable_tension: Annotated[answers.Force, Meta(description="What conductors, grip and gear allow.")]
    allowable_sidewall_pressure: Annotated[answers.ForcePerLength, Meta(description="What the cable allows in a bend.")]
    within_limits: Annotated[bool, Meta(description="Whether tension and sidewall pressure keep their limits.")]
    sections: Annotated[list[SectionTension], Meta(description="The sections in the order of the pull.")]
    reversed: Annotated[ReversedPull, Meta(description="The same pull from the other end.")]
    better_direction: Annotated[PullDirection, Meta(description="Direction that uses less of the limits.")]
    bend_total: Annotated[answers.Angle, Meta(description="All bends of the route together.")]
    lubricant_volume: Annotated[answers.Volume, Meta(description="Pulling lubricant for the run.")]
    jam_ratio: Annotated[float | UnsetType, Meta(description="Conduit over cable diameter; for three cables only.")] = (
        UNSET
    )
    jam_ratio_with_ovality: Annotated[
        float | UnsetType,
        Meta(description="The same times 1.05, the handbook allowance for ovality in bends."),
    ] = UNSET
    clearance: Annotated[
        answers.Length | UnsetType, Meta(description="Free height above the cables; up to four cables.")
    ] = UNSET
    sidewall_pressure: Annotated[
        answers.ForcePerLength | UnsetType, Meta(description="Highest sidewall pressure, if there is a bend.")
    ] = UNSET


def compute(request: PullTensionRequest, sheet: Worksheet) -> PullTensionResult:
    """Carry the tension through the route in both directions and hold it against the limits."""
    tell = sheet.tell
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        bore = inside_diameter(request.conduit, sheet)
    with faults:
        route = sections_of(request.sections, sheet)
    faults.stop()
    lie = lie_of(request.cables, bore, sheet)
    coefficient = sheet.settle("#/friction_coefficient", request.friction_coefficient, FRICTION)
    incoming = sheet.settle("#/incoming_tension", request.incoming_tension, INCOMING).si
    attachment = sheet.settle("#/attachment", request.attachment, ATTACHMENT)
    if request.allowable_tension is None:
        allowed, rule = allowable_tension(request.cables, attachment, sheet)
        told_allowed = tell.force(allowed)
        sheet.assume("#/allowable_tension", told_allowed, f"computed from {rule}", DEVICE_LIMIT.source_id)
    else:
        allowed, rule = request.allowable_tension.si, "the limit given"
        told_allowed = _force(request.allowable_tension, sheet)
    pressure_limit = sheet.settle("#/allowable_sidewall_pressure", request.allowable_sidewall_pressure, SIDEWALL_LIMIT)
    allowed_pressure = pressure_limit.si
    friction = coefficient * lie.weight_correction
    sheet.cite("exact-bend")
    forward = Direction(route, lie, friction, incoming, sheet)
    backward = Direction(engineering.reverse(route), lie, friction, incoming, sheet)
    use, use_backward = (way.use_of(allowed, allowed_pressure) for way in (forward, backward))
    total = engineering.bend_total(route)

    pressure_rule = "the limit given" if request.allowable_sidewall_pressure is not None else SIDEWALL_LIMIT.source
    hold_against_limits(forward, allowed, rule, pressure_limit, pressure_rule, sheet)
    report_route(request.conduit, forward, total, sheet)
    better = PullDirection.REVERSED if use_backward < use * (1 - 1e-9) else PullDirection.FORWARD
    if better is PullDirection.REVERSED:
        told = tell.force(backward.final)
        sheet.find(
            Severity.NOTE,
            "pull_from_the_other_end",
            f"From the other end the pull ends at {text_of(told)} instead of {text_of(tell.force(forward.final))} and "
            f"uses {use_backward * 100:.0f} percent of its limits instead of {use * 100:.0f}.",
            "derived",
            told,
            tell.force(forward.final),
        )
    if sheet.working is not None:
        show_working(route, forward.pulled, lie, coefficient, friction, sheet)
    told_pressure_limit = pressure_limit.in_system(tell.system)
    three = request.cables.count == 3
    return PullTensionResult(
        arrangement=CableArrangement(lie.arrangement),
        weight_correction_factor=lie.weight_correction,
        tension=tell.force(forward.final),
        highest_tension=tell.force(forward.highest),
        allowable_tension=told_allowed,
        allowable_sidewall_pressure=answers.ForcePerLength(told_pressure_limit.value, told_pressure_limit.unit.value),
        within_limits=use <= 1.0 + 1e-9,
        sections=forward.sections,
        reversed=ReversedPull(
            tension=tell.force(backward.final),
            within_limits=use_backward <= 1.0 + 1e-9,
            sections=backward.sections,
            sidewall_pressure=UNSET if backward.pressure is None else tell.force_per_length(backward.pressure),
        ),
        better_direction=better,
        bend_total=tell.angle(total),
        lubricant_volume=tell.liquid_volume(
            engineering.lubricant_volume(engineering.developed_length(route), bore, _FILM)
        ),
        jam_ratio=lie.ratio if three else UNSET,
        jam_ratio_with_ovality=lie.ratio * OVALITY if three else UNSET,
        clearance=UNSET if lie.clearance is None else tell.size(lie.clearance),
        sidewall_pressure=UNSET if forward.pressure is None else tell.force_per_length(forward.pressure),
    )


def _force(given: Force, sheet: Worksheet) -> answers.Force:
    told = given.in_system(sheet.tell.system)
    return answers.Force(told.value, told.unit.value)


OPERATION = Operation(
    name="pull-tension",
    operation_id="calculate_pull_tension",
    summary="Pulling tension",
    description="Carries the tension of a cable pull through straights at any grade, level and vertical bends, in "
    "both directions, and holds tension, sidewall pressure, bends, jam ratio and clearance against their limits.",
    request=PullTensionRequest,
    result=PullTensionResult,
    compute=compute,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "5"},
        "cables": {
            "count": 3,
            "diameter": {"value": 1.42, "unit": "in"},
            "mass_per_length": {"value": 2.6, "unit": "lb/ft"},
            "conductor": {"material": "copper", "size": "500 kcmil", "count": 1},
            "arrangement": "cradled",
        },
        "friction_coefficient": 0.35,
        "incoming_tension": {"value": 0, "unit": "lbf"},
        "attachment": "pulling_eye",
        "allowable_sidewall_pressure": {"value": 500, "unit": "lbf/ft"},
        "sections": [
            {
                "kind": "straight",
                "length": {"value": 150, "unit": "ft"},
                "grade": {"value": 0, "unit": "deg"},
            },
            {
                "kind": "horizontal_bend",
                "radius": {"value": 3, "unit": "ft"},
                "angle": {"value": 90, "unit": "deg"},
            },
            {
                "kind": "straight",
                "length": {"value": 220, "unit": "ft"},
                "grade": {"value": 0, "unit": "deg"},
            },
            {
                "kind": "horizontal_bend",
                "radius": {"value": 3, "unit": "ft"},
                "angle": {"value": 90, "unit": "deg"},
            },
            {"kind": "straight", "length": {"value": 90, "unit": "ft"}, "grade": {"value": 0, "unit": "deg"}},
        ],
        "code_edition": "2023",
    },
)
