"""POST /v1/conductor-count: how many equal conductors may this conduit hold."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import fill as engineering
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
    is_nipple,
    percent_of,
    told_area,
)
from ductrun.subjects.parts.conductors import LISTED_KINDS, OneConductor, measures_of
from ductrun.subjects.parts.conduit import Conduit, find_bore


class ConductorCountRequest(Form):
    """One conductor or cable, and the conduit to be filled with it."""

    conduit: Conduit = Field(description="The conduit.")
    conductor: OneConductor = Field(description="The conductor or cable, all of one kind.")
    nipple_length: NippleLength = None
    single_cable_rounding: SingleCableRounding = None
    code_edition: Edition = None


class ConductorCountResult(Struct, frozen=True, gc=False):
    """How many may be in the conduit, and what decided."""

    maximum_count: Annotated[int, Meta(description="Most conductors that comply; 0 if not even one does.")]
    limit_rule: Annotated[FillLimitRule, Meta(description="Which line of Table 1 decided.")]
    limit_percent: Annotated[float, Meta(description="Percentage of that line.")]
    limit_reason: Annotated[str, Meta(description="What that line says, in a sentence.")]
    exact_count: Annotated[float, Meta(description="Percentage of the unrounded conduit area over one conductor's.")]
    rounding_decided: Annotated[bool, Meta(description="Whether the count was rounded up, from 0.8 (Note 7).")]
    conductor_area: Annotated[answers.Area, Meta(description="Area of one.")]
    conduit_area: Annotated[answers.Area, Meta(description="Inside area of the conduit, as printed if listed.")]
    fill_percent: Annotated[float, Meta(description="What that many fill, in percent of conduit area.")]


def compute(request: ConductorCountRequest, sheet: Worksheet) -> ConductorCountResult:
    """Give the largest number of equal conductors, as the tables of Annex C count it."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        bore = find_bore(request.conduit, sheet.within("conduit"))
    with faults:
        area, diameter = measures_of(request.conductor, sheet.within("conductor"))
    faults.stop()
    nipple = is_nipple(request.nipple_length, sheet)
    round_single = request.conductor.kind in LISTED_KINDS or bool(request.single_cable_rounding)
    count, rule, exact = engineering.maximum_count(bore, area, nipple=nipple, round_single=round_single)
    if diameter >= bore.diameter:
        count = 0
    percent = float(area * count / bore.area * 100)
    share = percent_of(rule)
    sheet.show(
        "n",
        "percentage x pi/4 x ID^2 / area of one",
        f"{share / 100:g} x pi/4 x {float(bore.diameter):g}^2 / {float(area):.4f}",
        float(exact),
    )
    rounded = count > exact
    if rounded:
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"{float(exact):.3f} was rounded up to {count} (0.8 or more); they fill {percent:.2f} percent.",
            sheet.rule("fill_rounding"),
            percent,
            share,
        )
    if count == 0:
        sheet.find(
            Severity.VIOLATION,
            "not_even_one",
            f"Not even one complies: {share:g} percent holds {float(exact):.3f} of it.",
            sheet.rule("fill"),
            float(exact),
            1.0,
        )
    elif rule is engineering.Rule.TWO or (rule is engineering.Rule.ONE and not nipple):
        sheet.find(
            Severity.NOTE,
            "stricter_percentage",
            f"{REASONS[rule]} It decides because the percentage of the next number holds too few.",
            sheet.rule("fill"),
        )
    sheet.cite("nfpa70-ch9-t1")
    return ConductorCountResult(
        maximum_count=count,
        limit_rule=FillLimitRule(rule),
        limit_percent=share,
        limit_reason=REASONS[rule],
        exact_count=float(exact),
        rounding_decided=rounded,
        conductor_area=told_area(area, sheet),
        conduit_area=told_area(bore.area, sheet),
        fill_percent=percent,
    )


OPERATION = Operation(
    name="conductor-count",
    operation_id="calculate_conductor_count",
    summary="Conductor count",
    description="Gives the largest number of equal conductors or cables that a conduit may hold, as the tables of NFPA "
    "70, Annex C count them: 40 percent for three or more, else 31 for two, else 53 for one, each with the 0.8 rule.",
    request=ConductorCountRequest,
    result=ConductorCountResult,
    compute=compute,
    example={
        "conduit": {"kind": "listed", "type": "emt", "trade_size": "1"},
        "conductor": {"kind": "listed", "insulation": "THHN", "size": "12 AWG"},
        "code_edition": "2023",
    },
)
