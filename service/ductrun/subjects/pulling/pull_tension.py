"""POST /v1/pull-tension: can this cable be pulled through this run without damage, and from which end."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import pulling as engineering
from ductrun.engineering.cables import OVALITY
from ductrun.engineering.rounding import under
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.forms import Interval, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Worksheet, text_of
from ductrun.subjects.parts.choices import CableArrangement
from ductrun.subjects.pulling.cable_order import CableOrder, OrderedCable, cables_to_order
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.direction import Direction, direction_of, verdict_of
from ductrun.subjects.pulling.findings import (
    caution_rope,
    report_bend_total,
    report_burning_rope,
    report_direction,
    report_other_end,
    show_working,
)
from ductrun.subjects.pulling.inputs import PullInputs, settle
from ductrun.subjects.pulling.settled import Pulling
from ductrun.subjects.pulling.studies import (
    FrictionCase,
    FrictionRange,
    LargestComplying,
    ProfilePoint,
    friction_cases,
    largest_complying,
    profile,
)
from ductrun.subjects.pulling.telling import (
    BrakingCase,
    ReversedPull,
    SectionTension,
    told_brake,
    told_braking_case,
    told_pressure,
    told_reversed,
    told_sections,
)
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
    cable_order: Omissible[CableOrder] = Field(default=None, description="Gives the cable to order as well.")


class PullTensionResult(Struct, frozen=True, gc=False):
    """The pull from the first section to the last, and from the other end."""

    arrangement: Annotated[CableArrangement, Meta(description="How the cables lie, or the way with most friction.")]
    weight_correction_factor: Annotated[float, Meta(description="Factor on friction for that arrangement.")]
    incoming_tension: Annotated[answers.Force, Meta(description="Tension at the entry without a brake.")]
    tension: Annotated[answers.Force, Meta(description="Tension at the pulling end.")]
    highest_tension: Annotated[answers.Force, Meta(description="Highest tension anywhere along the pull.")]
    allowable_sidewall_pressure: Annotated[answers.ForcePerLength, Meta(description="What the cable allows in a bend.")]
    utilization_percent: Annotated[
        float, Meta(description="The largest share of tension, sidewall pressure and brake that is used.")
    ]
    sections: Annotated[list[SectionTension], Meta(description="The sections in the order of the pull.")]
    reversed: Annotated[ReversedPull, Meta(description="The same pull from the other end.")]
    better_direction: Annotated[
        PullDirection, Meta(description="Direction that complies, or was judged, or uses less of the limits.")
    ]
    better_reason: Annotated[str, Meta(description="Why that end, in a sentence.")]
    bend_total: Annotated[answers.Angle, Meta(description="All bends of the route together.")]
    lubricant_volume: Annotated[answers.Volume, Meta(description="Pulling lubricant for the run.")]
    within_limits: Annotated[
        bool | UnsetType,
        Meta(description="Whether cable, bends and brake keep their limits; absent where that was not judged."),
    ] = UNSET
    allowable_tension: Annotated[
        answers.Force | UnsetType,
        Meta(description="What conductors, grip and gear allow; absent where the conductors are not known."),
    ] = UNSET
    brake_tension: Annotated[
        answers.Force | UnsetType, Meta(description="Force with which the reel must hold back, if it must.")
    ] = UNSET
    braking_case: Annotated[
        BrakingCase | UnsetType, Meta(description="The pull at the low friction, where the route can run away.")
    ] = UNSET
    jam_ratio: Annotated[
        float | UnsetType, Meta(description="Conduit over cable diameter, where three cables govern.")
    ] = UNSET
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
    cables_to_order: Annotated[
        list[OrderedCable] | UnsetType, Meta(description="The cable to order, a line of cables each, if asked.")
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
    route, braking = pulling.route_at(pulling.coefficient), pulling.braking_at(pulling.coefficient)
    total = engineering.bend_total(route)
    forward = direction_of(route, braking, total, pulling)
    turned = None if braking is None else engineering.reverse(braking)
    backward = direction_of(engineering.reverse(route), turned, total, pulling)
    length = engineering.developed_length(route)
    report_bend_total([given.conduit or request.conduit for given in request.sections], total, sheet)
    within, within_backward = verdict_of(forward.use, pulling), verdict_of(backward.use, pulling)
    report_direction(forward, pulling, sheet)
    report_other_end(backward, sheet)
    report_burning_rope(request, length, range(len(route)), sheet)
    caution_rope(sheet, braked=forward.braked or backward.braked)
    better, reason = _better_end(forward, backward, within, within_backward, sheet)
    if sheet.working is not None:
        show_working(forward, pulling, sheet)
    lie = pulling.worst_lie
    jam_ratio = pulling.jam_ratio
    sheet.cite("lubricant-technical-talk-17")
    return PullTensionResult(
        arrangement=CableArrangement(lie.arrangement),
        weight_correction_factor=lie.weight_correction,
        incoming_tension=tell.force(pulling.load.incoming),
        tension=tell.force(forward.pulling.case.final),
        highest_tension=tell.force(forward.pulling.case.highest),
        allowable_sidewall_pressure=_told_pressure(pulling.pressure_limit, sheet),
        utilization_percent=forward.use.share * 100,
        sections=told_sections(forward.pulling, sheet),
        reversed=told_reversed(backward, within_backward, pulling, sheet),
        better_direction=better,
        better_reason=reason,
        bend_total=tell.angle(total),
        lubricant_volume=tell.liquid_volume(_lubricant(pulling, length)),
        within_limits=UNSET if within is None else within,
        allowable_tension=_allowable(request.allowable_tension, pulling, sheet),
        brake_tension=told_brake(forward.pulling, sheet),
        braking_case=told_braking_case(forward, pulling, sheet),
        jam_ratio=UNSET if jam_ratio is None else jam_ratio,
        jam_ratio_with_ovality=UNSET if jam_ratio is None else jam_ratio * OVALITY,
        clearance=UNSET if lie.clearance is None else tell.size(lie.clearance),
        handbook_clearance=UNSET if lie.handbook_clearance is None else tell.size(lie.handbook_clearance),
        sidewall_pressure=told_pressure(forward.pulling, sheet),
        friction_cases=(
            UNSET if request.friction_range is None else friction_cases(request.friction_range, pulling, sheet)
        ),
        largest=largest_complying(pulling, sheet) if request.find_largest else UNSET,
        profile=(
            UNSET
            if request.profile_spacing is None
            else profile(pulling, forward.pulling.case.entering, request.profile_spacing.si, sheet)
        ),
        cables_to_order=(
            UNSET
            if request.cable_order is None
            else cables_to_order(request.cable_order, pulling.cables, length, sheet)
        ),
    )


def _lubricant(pulling: Pulling, length: float) -> float:
    """Give the lubricant [m3] of all sections, each by its bore."""
    if len(pulling.lies) == 1:
        return engineering.lubricant_volume(length, pulling.bores[0], _FILM)
    return sum(
        engineering.lubricant_volume(section.developed_length, bore, _FILM)
        for section, bore in zip(pulling.sections, pulling.bores, strict=True)
    )


def _told_pressure(limit: ForcePerLength, sheet: Worksheet) -> answers.ForcePerLength:
    told = limit.in_system(sheet.tell.system)
    return answers.ForcePerLength(told.value, told.unit)


def _allowable(given: Force | None, pulling: Pulling, sheet: Worksheet) -> answers.Force | UnsetType:
    if given is not None and not under(pulling.limits.tension, given.si):
        told = given.in_system(sheet.tell.system)
        return answers.Force(told.value, told.unit)
    return sheet.tell.force(pulling.limits.tension) if pulling.tension_judged else UNSET


_RANK = {True: 0, None: 1, False: 2}  # of a verdict
_WORDS = {True: "keeps its limits", None: "was not judged", False: "breaks a limit"}


def _better_end(
    forward: Direction, backward: Direction, within: bool | None, within_backward: bool | None, sheet: Worksheet
) -> tuple[PullDirection, str]:
    """Recommend the end that complies, or was judged, or uses less of the limits; say so where it is not the one asked.

    A pull that needs no brake comes before one that does where neither can be told better; where both ends break a
    limit, neither is recommended.
    """
    shares = (
        f"{forward.use.share * 100:.0f} percent of the limits is used as given, {backward.use.share * 100:.0f} from "
        "the other end"
    )
    if within is not within_backward:
        shares = f"as given the pull {_WORDS[within]}, from the other end it {_WORDS[within_backward]}; {shares}"
    elif within is False:
        shares = f"from neither end the pull keeps its limits; {shares}"
    elif within is None and forward.use.judged != backward.use.judged:
        shares = f"only one end needs no brake that is not known; {shares}"
    ranks = [
        (_RANK[verdict], verdict is None and not way.use.judged)
        for way, verdict in ((forward, within), (backward, within_backward))
    ]
    turn = ranks[1] < ranks[0] or (ranks[1] == ranks[0] and under(backward.use.share, forward.use.share))
    if within is within_backward is False:
        return PullDirection.REVERSED if turn else PullDirection.FORWARD, f"{shares[0].upper()}{shares[1:]}."
    if not turn:
        return PullDirection.FORWARD, f"Pull as given: {shares}."
    ends, other = sheet.tell.force(forward.pulling.case.final), sheet.tell.force(backward.pulling.case.final)
    reason = f"Pull from the other end: {shares}; the pull ends at {text_of(other)} instead of {text_of(ends)}."
    sheet.find(Severity.NOTE, "pull_from_the_other_end", reason, "derived", other, ends)
    return PullDirection.REVERSED, reason


OPERATION = Operation(
    name="pull-tension",
    operation_id="calculate_pull_tension",
    summary="Pulling tension",
    description="Carries the tension of a cable pull through straights at any grade, level and vertical bends, in "
    "both directions, with the least reel brake that keeps the cable taut downhill, and holds tension, sidewall "
    "pressure, brake, bends, jam ratio and clearance against their limits.",
    request=PullTensionRequest,
    result=PullTensionResult,
    compute=compute,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "5"},
        "cables": [
            {
                "count": 3,
                "cable": {
                    "kind": "measured",
                    "diameter": {"value": 1.42, "unit": "in"},
                    "mass_per_length": {"value": 2.6, "unit": "lb/ft"},
                    "conductor": {"material": "copper", "size": "500 kcmil", "temper": "soft", "count": 1},
                    "cable_type": "power_shielded_5_to_15_kv",
                    "shielding": "shielded",
                },
            }
        ],
        "arrangement": "cradled",
        "friction_coefficient": 0.35,
        "weight_correction_in": "straights_and_bends",
        "incoming_tension": {"value": 0, "unit": "lbf"},
        "attachment": "pulling_eye",
        "conductor_counting": "two_of_three",
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
                "made": "factory_elbow",
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
                "made": "factory_elbow",
            },
            {"kind": "straight", "length": {"value": 90, "unit": "ft"}, "grade": {"value": 0, "unit": "deg"}},
        ],
        "code_edition": "2023",
    },
)
