"""POST /v1/conductor-count: how many equal conductors may this conduit hold."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import in_percent
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.fill.choices import FillLimitRule
from ductrun.subjects.fill.rules import LIMITS, PERCENT, REASONS, Edition, Filling, Practice, practice_of, told_area
from ductrun.subjects.parts.conductors import OneConductor, measures_of
from ductrun.subjects.parts.conduit import Conduit, find_bore


class ConductorCountRequest(Filling):
    """One conductor or cable, and the conduit to be filled with it."""

    conduit: Conduit = Field(description="The conduit.")
    conductor: OneConductor = Field(description="The conductor or cable, all of one kind.")
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


class Counted(NamedTuple):
    """How many of one conductor a bore holds; `area` is that of one [in2], `exact` the quotient of the rule."""

    bore: engineering.Bore
    area: Decimal
    practice: Practice
    maximum_count: int
    rule: engineering.Rule
    exact: Decimal

    @property
    def percent(self) -> float:
        """What they fill, in percent of the area of the bore."""
        return float(self.area * self.maximum_count / self.bore.area * 100)


def count(
    given: Filling, bore: engineering.Bore, area: Decimal, diameter: Decimal, kind: str, sheet: Worksheet
) -> Counted:
    """Give the largest number of equal conductors, as the tables of Annex C count it.

    Parameters: area [in2] and diameter [in] of one, and the kind it was given by.
    """
    practice = practice_of(given, kind, sheet)
    number, rule, exact = engineering.maximum_count(
        bore, area, LIMITS, nipple=practice.nipple, round_single=practice.round_single
    )
    counted = Counted(bore, area, practice, 0 if diameter >= bore.diameter else number, rule, exact)
    if sheet.working is not None:
        sheet.show(
            "n",
            "percentage x pi/4 x ID^2 / area of one",
            f"{PERCENT[rule] / 100:g} x pi/4 x {float(bore.diameter):g}^2 / {float(area):.4f}",
            float(exact),
        )
    sheet.judge(counted.maximum_count > 0)
    _report(counted, sheet)
    sheet.cite("nfpa70-ch9-t1")
    return counted


def _report(counted: Counted, sheet: Worksheet) -> None:
    rule, exact, share = counted.rule, counted.exact, PERCENT[counted.rule]
    if counted.maximum_count > exact:
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"{float(exact):.3f} was rounded up to {counted.maximum_count} (0.8 or more); they fill "
            f"{counted.percent:.2f} percent.",
            sheet.rule("fill_rounding"),
            in_percent(counted.percent),
            in_percent(share),
            member="conductor",
        )
    if counted.maximum_count == 0:
        sheet.find(
            Severity.VIOLATION,
            "not_even_one",
            f"Not even one complies: {share:g} percent holds {float(exact):.3f} of it.",
            sheet.rule("fill"),
            float(exact),
            1.0,
            member="conductor",
        )
    elif rule is engineering.Rule.TWO or rule is engineering.Rule.ONE:
        sheet.find(
            Severity.NOTE,
            "stricter_percentage",
            f"{REASONS[rule]} It decides because the percentage of the next number holds too few.",
            sheet.rule("fill"),
            member="conductor",
        )


def assess(request: ConductorCountRequest, sheet: Worksheet) -> Counted:
    """Count the conductors of a request in its conduit."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        bore = find_bore(request.conduit, sheet.within("conduit"))
    with faults:
        area, diameter = measures_of(request.conductor, sheet.within("conductor"))
    faults.stop()
    return count(request, bore, area, diameter, request.conductor.kind, sheet)


def tell(counted: Counted, telling: Telling) -> ConductorCountResult:
    """Tell how many may be in the conduit, and what decided."""
    return ConductorCountResult(
        maximum_count=counted.maximum_count,
        limit_rule=FillLimitRule(counted.rule),
        limit_percent=PERCENT[counted.rule],
        limit_reason=REASONS[counted.rule],
        exact_count=float(counted.exact),
        rounding_decided=counted.maximum_count > counted.exact,
        conductor_area=told_area(counted.area, telling),
        conduit_area=told_area(counted.bore.area, telling),
        fill_percent=counted.percent,
    )


OPERATION = Operation(
    name="conductor-count",
    operation_id="calculate_conductor_count",
    summary="Conductor count",
    description="Gives the largest number of equal conductors or cables that a conduit may hold, as the tables of NFPA "
    "70, Annex C count them: 40 percent for three or more, else 31 for two, else 53 for one, each with the 0.8 rule.",
    request=ConductorCountRequest,
    result=ConductorCountResult,
    assess=assess,
    tell=tell,
    example={
        "conduit": {"kind": "listed", "type": "emt", "trade_size": "1"},
        "conductor": {"kind": "listed", "insulation": "THHN", "size": "12 AWG"},
        "code_edition": "2023",
    },
)
