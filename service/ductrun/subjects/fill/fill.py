"""POST /v1/fill: do these conductors fit this conduit."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.engineering.cables import OVALITY
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.forms import Form
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.fill.choices import FillLimitRule
from ductrun.subjects.fill.rules import (
    REASONS,
    Edition,
    NippleLength,
    SingleCableRounding,
    caution_jam,
    caution_pair,
    is_nipple,
    percent_of,
    rounds_single,
    smallest_complying,
    told_area,
)
from ductrun.subjects.parts.choices import TradeSize
from ductrun.subjects.parts.conductors import Conductors, check_bore, groups_of
from ductrun.subjects.parts.conduit import Conduit, find_bore


class FillRequest(Form):
    """What goes into which conduit."""

    conduit: Conduit = Field(description="The conduit.")
    conductors: Conductors = Field(description="Everything in the conduit, grounding and bonding conductors included.")
    nipple_length: NippleLength = None
    single_cable_rounding: SingleCableRounding = None
    code_edition: Edition = None


class FillResult(Struct, frozen=True, gc=False):
    """How full the conduit is, and against which limit."""

    conductor_count: Annotated[int, Meta(description="Conductors and cables counted.")]
    conductor_area: Annotated[answers.Area, Meta(description="Their area together.")]
    conduit_area: Annotated[answers.Area, Meta(description="Inside area of the conduit, as printed if listed.")]
    fill_percent: Annotated[float, Meta(description="Conductor area in percent of conduit area.")]
    limit_percent: Annotated[float, Meta(description="Percentage of Table 1 that applies.")]
    limit_area: Annotated[answers.Area, Meta(description="Area this percentage allows, as printed if listed.")]
    within_limit: Annotated[bool, Meta(description="Whether the set complies, by the sum or by Note 7.")]
    limit_rule: Annotated[FillLimitRule, Meta(description="Which line of Table 1 applies.")]
    limit_reason: Annotated[str, Meta(description="Why that line applies, in a sentence.")]
    rounding_decided: Annotated[bool, Meta(description="Whether it complies only by the 0.8 rule of Note 7.")]
    spare_area: Annotated[answers.Area, Meta(description="Limit area less conductor area; negative when over.")]
    jam_ratio: Annotated[
        float | UnsetType,
        Meta(description="Conduit over cable diameter; for three conductors or cables only."),
    ] = UNSET
    jam_ratio_with_ovality: Annotated[
        float | UnsetType,
        Meta(description="The same times 1.05, the handbook allowance for ovality in bends."),
    ] = UNSET
    smallest_trade_size: Annotated[
        TradeSize | UnsetType,
        Meta(description="Smallest trade size of the same type that complies; listed only."),
    ] = UNSET


def compute(request: FillRequest, sheet: Worksheet) -> FillResult:
    """Hold the conductors against the limit of Chapter 9, Table 1."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        bore = find_bore(request.conduit, sheet.within("conduit"))
    with faults:
        groups = groups_of(request.conductors, sheet)
    faults.stop()
    check_bore(groups, bore, request.conductors, sheet)
    nipple = is_nipple(request.nipple_length, sheet)
    round_single = rounds_single(request.conductors, request.single_cable_rounding)
    fill = engineering.assess(groups, bore, nipple=nipple, round_single=round_single)
    area = float(fill.area)
    percent = float(fill.area / bore.area * 100)
    limit_percent = percent_of(fill.rule)
    rule = sheet.rule("fill")
    _report(fill, percent, limit_percent, rule, sheet)
    if fill.rule is engineering.Rule.TWO and not fill.within:
        caution_pair(groups, bore, "this conduit", sheet)
    jam = caution_jam(groups, bore, request.conduit, sheet, nipple=nipple)
    smallest = None
    if request.conduit.kind == "listed":
        kind = request.conduit.type
        smallest = smallest_complying(kind, groups, nipple=nipple, round_single=round_single)
        if smallest is None:
            sheet.find(
                Severity.CAUTION,
                "no_size_complies",
                f"No trade size of {kind} in the tables holds this set: divide it over several conduits.",
                rule,
            )
    else:
        sheet.find(
            Severity.NOTE,
            "measured_bore",
            f"The inside diameter of {request.conduit.inside_diameter} is the caller's: it must come from the maker of "
            "the conduit or be measured.",
            sheet.rule("fill_actual"),
        )
    sheet.show(
        "A",
        "sum of count x area of one",
        " + ".join(f"{group.count} x {float(group.area):.4f}" for group in groups) + " in2",
        told_area(fill.area, sheet),
    )
    sheet.show("fill_percent", "100 A / A_conduit", f"100 x {area:.4f} / {float(bore.area):.4f}", percent)
    if fill.quotient is not None:
        sheet.show(
            "n",
            "percentage x pi/4 x ID^2 / area of one",
            f"{limit_percent / 100:g} x pi/4 x {float(bore.diameter):g}^2 / {float(groups[0].area):.4f}",
            float(fill.quotient),
        )
    return FillResult(
        conductor_count=fill.count,
        conductor_area=told_area(fill.area, sheet),
        conduit_area=told_area(bore.area, sheet),
        fill_percent=percent,
        limit_percent=limit_percent,
        limit_area=told_area(fill.limit_area, sheet),
        within_limit=fill.within,
        limit_rule=FillLimitRule(fill.rule),
        limit_reason=REASONS[fill.rule],
        rounding_decided=fill.rounded_up,
        spare_area=told_area(fill.limit_area - fill.area, sheet),
        jam_ratio=UNSET if jam is None else jam,
        jam_ratio_with_ovality=UNSET if jam is None else jam * OVALITY,
        smallest_trade_size=UNSET if smallest is None else smallest,
    )


def _report(fill: engineering.Fill, percent: float, limit_percent: float, rule: str, sheet: Worksheet) -> None:
    if not fill.within:
        if fill.quotient is not None and fill.count > 1:
            detail = f": the conduit holds {float(fill.quotient):.2f} of them by {limit_percent:g} percent"
        else:
            detail = f", {percent - limit_percent:.2f} percent over"
        sheet.find(
            Severity.VIOLATION,
            "fill_exceeded",
            f"The conductors fill {percent:.2f} percent of the conduit; the limit is {limit_percent:g}{detail}. It is "
            "the limit of a complete run, not of a short length that only protects exposed wiring (Note 2).",
            rule,
            percent,
            limit_percent,
        )
    elif fill.rounded_up:
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"{fill.count} equal conductors comply by rounding {float(fill.quotient or Decimal(0)):.3f} up (0.8 or "
            f"more), though their area is {percent:.2f} percent against {limit_percent:g}.",
            sheet.rule("fill_rounding"),
            percent,
            limit_percent,
        )


OPERATION = Operation(
    name="fill",
    operation_id="calculate_fill",
    summary="Conduit fill",
    description="Holds conductors and cables in a conduit against the limits of NFPA 70, Chapter 9, Table 1: the "
    "percentage that applies, the 0.8 rule for equal conductors, the nipple, the jam ratio, the smallest size.",
    request=FillRequest,
    result=FillResult,
    compute=compute,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "3"},
        "conductors": [
            {"kind": "listed", "insulation": "THHN", "size": "500 kcmil", "count": 3},
            {"kind": "listed", "insulation": "THHN", "size": "250 kcmil", "count": 1},
            {"kind": "listed", "insulation": "THHN", "size": "3 AWG", "count": 1},
        ],
        "code_edition": "2023",
    },
)
