"""POST /v1/conductor-count: how many equal conductors or cables may this conduit hold."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.engineering.fill import SCALE, WHOLE
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.forms import Edition
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import in_percent
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.fill.choices import FillLimitRule
from ductrun.subjects.fill.rules import (
    LIMITS,
    ONE_MORE,
    PERCENT,
    REASONS,
    TOLD_RULES,
    Filling,
    Practice,
    practice_of,
    told_area,
)
from ductrun.subjects.parts.cables import Cable
from ductrun.subjects.parts.conductors import PlacedCable, place_cable
from ductrun.subjects.parts.conduit import Conduit, PlacedConduit, place_conduit


class ConductorCountRequest(Filling):
    """One cable, and the conduit to be filled with it."""

    conduit: Conduit = Field(description="The conduit.")
    cable: Cable = Field(description="The conductor or cable, all of one kind.")
    code_edition: Edition = None


class ConductorCountResult(Struct, frozen=True, gc=False):
    """How many may be in the conduit, and what decided."""

    maximum_count: Annotated[int, Meta(description="Most conductors that comply; 0 if not even one does.")]
    limit_rule: Annotated[FillLimitRule, Meta(description="Which line of Table 1 decided.")]
    limit_percent: Annotated[float, Meta(description="Percentage of the line of Table 1 that decided.")]
    limit_reason: Annotated[str, Meta(description="What the line of Table 1 that decided says, in a sentence.")]
    exact_count: Annotated[float, Meta(description="Percentage of the unrounded conduit area over one conductor's.")]
    rounding_decided: Annotated[bool, Meta(description=f"Whether the count was rounded up, from {ONE_MORE} (Note 7).")]
    conductor_area: Annotated[answers.Area, Meta(description="Area of one conductor.")]
    conduit_area: Annotated[answers.Area, Meta(description="Inside area of the conduit, as printed if listed.")]
    fill_percent: Annotated[float, Meta(description="What maximum_count conductors fill, in percent of conduit area.")]


class Counted(NamedTuple):
    """How many of one cable a conduit holds; `exact` is the quotient of the rule, `rounded_up` if it was."""

    conduit: PlacedConduit
    cable: PlacedCable
    practice: Practice
    maximum_count: int
    rule: engineering.Rule
    exact: float
    rounded_up: bool

    @property
    def percent(self) -> float:
        """What they fill, in percent of the area of the bore."""
        return 100 * self.cable.measures.area * self.maximum_count / self.conduit.bore.area


def count(given: Filling, conduit: PlacedConduit, cable: PlacedCable, sheet: Worksheet) -> Counted:
    """Give the largest number of equal conductors, as the tables of Annex C count it; 0 of one wider than the bore."""
    bore, (area, diameter) = conduit.bore, cable.measures
    practice = practice_of(given, cable.given.kind, sheet)
    number, rule, quotient = engineering.maximum_count(
        bore, area, LIMITS, nipple=practice.nipple, round_single=practice.round_single
    )
    most = 0 if diameter >= bore.diameter else number
    counted = Counted(conduit, cable, practice, most, rule, quotient / WHOLE, most * WHOLE > quotient)
    if sheet.working is not None:
        sheet.show(
            "n",
            "percentage x pi/4 x ID^2 / area of one",
            f"{PERCENT[rule] / 100:g} x pi/4 x {bore.diameter / SCALE:g}^2 / {area / SCALE:.4f}",
            counted.exact,
        )
    sheet.judge(counted.maximum_count > 0)
    _report(counted, cable.sheet)
    sheet.cite("nfpa70-ch9-t1")
    return counted


def _report(counted: Counted, sheet: Worksheet) -> None:
    rule, exact, share = counted.rule, counted.exact, PERCENT[counted.rule]
    if counted.rounded_up:
        percent = counted.percent
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"{exact:.3f} was rounded up to {counted.maximum_count} ({ONE_MORE} or more); they fill "
            f"{percent:.2f} percent.",
            sheet.rule("fill_rounding"),
            in_percent(percent),
            in_percent(share),
            member="",
        )
    if counted.maximum_count == 0:
        sheet.find(
            Severity.VIOLATION,
            "not_even_one",
            f"Not even one complies: {share:g} percent holds {exact:.3f} of it.",
            sheet.rule("fill"),
            exact,
            1.0,
            member="",
        )
    elif rule is engineering.Rule.TWO or rule is engineering.Rule.ONE:
        sheet.find(
            Severity.NOTE,
            "stricter_percentage",
            f"{REASONS[rule]} It decides because the percentage of the next number holds too few.",
            sheet.rule("fill"),
            member="",
        )


def assess(request: ConductorCountRequest, sheet: Worksheet) -> Counted:
    """Count how many of the cable of a request its conduit holds."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        conduit = place_conduit(request.conduit, sheet.within("conduit"))
    with faults:
        cable = place_cable(request.cable, sheet.within("cable"))
    faults.stop()
    return count(request, conduit, cable, sheet)


def tell(counted: Counted, telling: Telling) -> ConductorCountResult:
    """Tell how many may be in the conduit, and what decided."""
    return ConductorCountResult(
        maximum_count=counted.maximum_count,
        limit_rule=TOLD_RULES[counted.rule],
        limit_percent=PERCENT[counted.rule],
        limit_reason=REASONS[counted.rule],
        exact_count=counted.exact,
        rounding_decided=counted.rounded_up,
        conductor_area=told_area(counted.cable.measures.area, telling),
        conduit_area=told_area(counted.conduit.bore.area, telling),
        fill_percent=counted.percent,
    )


OPERATION = Operation(
    name="conductor-count",
    operation_id="calculate_conductor_count",
    summary="Conductor count",
    description="Gives the largest number of equal conductors or cables that a conduit may hold, as the tables of NFPA "
    f"70, Annex C count them: {PERCENT[engineering.Rule.OVER_TWO]:g} percent for three or more, else "
    f"{PERCENT[engineering.Rule.TWO]:g} for two, else {PERCENT[engineering.Rule.ONE]:g} for one, each with the "
    f"{ONE_MORE} rule.",
    request=ConductorCountRequest,
    result=ConductorCountResult,
    assess=assess,
    tell=tell,
    example={
        "conduit": {"kind": "listed", "type": "emt", "trade_size": "1"},
        "cable": {"kind": "listed", "insulation": "THHN", "size": "12 AWG"},
        "code_edition": "2023",
    },
)
