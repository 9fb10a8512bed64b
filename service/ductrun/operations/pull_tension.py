"""POST /v1/pull-tension: can this cable be pulled through this run without damage, and from which end."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import pulling as engineering
from ductrun.engineering.cables import OVALITY
from ductrun.operations import answers
from ductrun.operations.choices import CableArrangement, PullDirection, Severity
from ductrun.operations.defaults import number
from ductrun.operations.inputs import Interval, Omissible
from ductrun.operations.operation import Operation
from ductrun.operations.pull_direction import Direction, SectionTension, hold_against_limits, report_route, show_working
from ductrun.operations.pull_inputs import PullInputs, settle
from ductrun.operations.pull_studies import (
    FrictionCase,
    FrictionRange,
    LargestComplying,
    ProfilePoint,
    friction_cases,
    largest_complying,
    profile,
)
from ductrun.operations.worksheet import Worksheet, text_of
from ductrun.units import Force, ForcePerLength, LengthUnit, VolumeUnit

_LUBRICANT = number("pulling.lubricant_per_length")  # US gallons for each foot and inch
_FILM = _LUBRICANT.value * VolumeUnit.GAL_US.scale / (LengthUnit.FT.scale * LengthUnit.INCH.scale)


class PullTensionRequest(PullInputs):
    """Cables, conduit, and the route in the order of the pull; and what to find beside the tension."""

    friction_range: Omissible[FrictionRange] = Field(
        default=None, description="Gives the pull at a low and a high friction as well."
    )
    find_largest: Omissible[bool] = Field(
        default=None,
        description="Whether to find the largest friction, incoming tension and last straight that still comply.",
        examples=[True],
    )
    profile_spacing: Omissible[Interval] = Field(
        default=None,
        description="Gives the tension along the run at points this far apart, for plotting.",
        examples=[{"value": 10, "unit": "ft"}],
    )


class ReversedPull(Struct, frozen=True, gc=False):
    """The same pull from the other end."""

    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    within_limits: Annotated[bool, Meta(description="Whether tension and sidewall pressure keep their limits.")]
    utilization_percent: Annotated[float, Meta(description="The larger share of the two limits that is used.")]
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
    utilization_percent: Annotated[float, Meta(description="The larger share of the two limits that is used.")]
    sections: Annotated[list[SectionTension], Meta(description="The sections in the order of the pull.")]
    reversed: Annotated[ReversedPull, Meta(description="The same pull from the other end.")]
    better_direction: Annotated[PullDirection, Meta(description="Direction that uses less of the limits.")]
    better_reason: Annotated[str, Meta(description="Why that end, in a sentence.")]
    bend_total: Annotated[answers.Angle, Meta(description="All bends of the route together.")]
    lubricant_volume: Annotated[answers.Volume, Meta(description="Pulling lubricant for the run.")]
    jam_ratio: Annotated[float | UnsetType, Meta(description="Conduit over cable diameter; for three cables only.")] = (
        UNSET
    )
    jam_ratio_with_ovality: Annotated[
        float | UnsetType,
        Meta(description="The same times 1.05, the handbook allowance for ovality in bends."),
    ] = UNSET
    friction_cases: Annotated[
        list[FrictionCase] | UnsetType, Meta(description="The pull at low, expected and high friction, if asked.")
    ] = UNSET
    largest: Annotated[LargestComplying | UnsetType, Meta(description="What would still comply, if asked.")] = UNSET
    profile: Annotated[
        list[ProfilePoint] | UnsetType, Meta(description="Tension along the run for plotting, if asked.")
    ] = UNSET
    handbook_clearance: Annotated[
        answers.Length | UnsetType, Meta(description="Clearance as handbooks print it; higher for the cradle.")
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
    pulling = settle(request, sheet)
    route, lie, limits = pulling.route, pulling.lie, pulling.limits
    forward = Direction(route, pulling.load, sheet)
    backward = Direction(engineering.reverse(route), pulling.load, sheet)
    use, use_backward = (way.use_of(limits.tension, limits.pressure) for way in (forward, backward))
    total = engineering.bend_total(route)
    hold_against_limits(forward, pulling, sheet)
    report_route(request.conduit, forward, total, sheet)
    better, reason = _better_end(forward, backward, use, use_backward, sheet)
    if sheet.working is not None:
        show_working(forward, pulling, sheet)
    three = request.cables.count == 3
    length = engineering.developed_length(route)
    sheet.cite("lubricant-technical-talk-17")
    return PullTensionResult(
        arrangement=CableArrangement(lie.arrangement),
        weight_correction_factor=lie.weight_correction,
        tension=tell.force(forward.final),
        highest_tension=tell.force(forward.highest),
        allowable_tension=_allowable(request.allowable_tension, limits.tension, sheet),
        allowable_sidewall_pressure=_told_pressure(pulling.pressure_limit, sheet),
        within_limits=use <= 1.0 + 1e-9,
        utilization_percent=use * 100,
        sections=forward.sections,
        reversed=ReversedPull(
            tension=tell.force(backward.final),
            within_limits=use_backward <= 1.0 + 1e-9,
            utilization_percent=use_backward * 100,
            sections=backward.sections,
            sidewall_pressure=UNSET if backward.pressure is None else tell.force_per_length(backward.pressure),
        ),
        better_direction=better,
        better_reason=reason,
        bend_total=tell.angle(total),
        lubricant_volume=tell.liquid_volume(engineering.lubricant_volume(length, pulling.bore, _FILM)),
        jam_ratio=lie.ratio if three else UNSET,
        jam_ratio_with_ovality=lie.ratio * OVALITY if three else UNSET,
        clearance=UNSET if lie.clearance is None else tell.size(lie.clearance),
        handbook_clearance=UNSET if lie.handbook_clearance is None else tell.size(lie.handbook_clearance),
        sidewall_pressure=UNSET if forward.pressure is None else tell.force_per_length(forward.pressure),
        friction_cases=(
            UNSET if request.friction_range is None else friction_cases(request.friction_range, pulling, sheet)
        ),
        largest=largest_complying(pulling, sheet) if request.find_largest else UNSET,
        profile=(UNSET if request.profile_spacing is None else profile(pulling, request.profile_spacing.si, sheet)),
    )


def _told_pressure(limit: ForcePerLength, sheet: Worksheet) -> answers.ForcePerLength:
    told = limit.in_system(sheet.tell.system)
    return answers.ForcePerLength(told.value, told.unit)


def _allowable(given: Force | None, computed: float, sheet: Worksheet) -> answers.Force:
    if given is None:
        return sheet.tell.force(computed)
    told = given.in_system(sheet.tell.system)
    return answers.Force(told.value, told.unit)


def _better_end(
    forward: Direction, backward: Direction, use: float, use_backward: float, sheet: Worksheet
) -> tuple[PullDirection, str]:
    """Recommend the end that uses less of the limits, and say so where it is not the one asked about."""
    ends, other = sheet.tell.force(forward.final), sheet.tell.force(backward.final)
    shares = f"{use * 100:.0f} percent of the limits is used as given, {use_backward * 100:.0f} from the other end"
    if use_backward < use * (1 - 1e-9):
        reason = f"Pull from the other end: {shares}; the pull ends at {text_of(other)} instead of {text_of(ends)}."
        sheet.find(Severity.NOTE, "pull_from_the_other_end", reason, "derived", other, ends)
        return PullDirection.REVERSED, reason
    return PullDirection.FORWARD, f"Pull as given: {shares}."


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
            "conductor": {"material": "copper", "size": "500 kcmil", "temper": "soft", "count": 1},
            "arrangement": "cradled",
            "cable_type": "power_shielded_5_to_35_kv",
            "shielding": "shielded",
        },
        "friction_coefficient": 0.35,
        "weight_correction_in": "straights_and_bends",
        "incoming_tension": {"value": 0, "unit": "lbf"},
        "attachment": "pulling_eye",
        "conductor_counting": "all_counted",
        "device_limit": {"value": 10000, "unit": "lbf"},
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
