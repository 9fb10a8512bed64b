"""The answer of POST /v1/duct-run/compare: runs side by side, and of them only what differs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.answers import MOST_COUNTED
from ductrun.kit.choices import Severity, Verdict
from ductrun.kit.telling import Telling
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.duct_run.comparing import ranking
from ductrun.subjects.duct_run.comparing.comparison import ComparedAssessment, Comparison
from ductrun.subjects.duct_run.comparing.findings import ComparedFinding, findings_apart
from ductrun.subjects.duct_run.comparing.form import FIGURES, MOST_RUNS, RankMeasure
from ductrun.subjects.duct_run.comparing.lines import (
    ComparedLine,
    ComparedNumber,
    ComparedQuantity,
    beside,
    beside_quantity,
    compared_lines,
    differ,
    percent_of,
)
from ductrun.subjects.duct_run.takeoff.takeoff import takeoff_of_run
from ductrun.subjects.parts.takeoff import MOST_TAKEOFF_LINES, Takeoff, TakeoffItem, TakeoffQuantity

_RunName = Annotated[str, Meta(description="Name of the run, as given.", max_length=MOST_NAME)]
_Difference = Annotated[
    Annotated[int, Meta(ge=-MOST_COUNTED, le=MOST_COUNTED)] | UnsetType,
    Meta(description="Less that of the base, where it differs."),
]
_Percent = Annotated[float | UnsetType, Meta(description="The difference in percent of the base.")]


class ComparedCount(Struct, frozen=True, gc=False):
    """A count of a run beside that of the base."""

    value: Annotated[int, Meta(description="The count of this run.")]
    difference: _Difference = UNSET
    difference_percent: _Percent = UNSET


class ComparedLength(Struct, frozen=True, gc=False):
    """A length of a run beside that of the base."""

    length: Annotated[answers.Length, Meta(description="The length of this run.")]
    difference: Annotated[answers.Length | UnsetType, Meta(description="Less that of the base, where it differs.")] = (
        UNSET
    )
    difference_percent: _Percent = UNSET


class ComparedRun(Struct, frozen=True, gc=False, kw_only=True):
    """One run: what it says of its limits, its place, its figures beside those of the base, its findings."""

    name: _RunName
    verdict: Annotated[Verdict | UnsetType, Meta(description="What this run says of its limits.")] = UNSET
    violation_count: Annotated[int, Meta(description="How many limits it breaks.")]
    rank: Annotated[
        Annotated[int, Meta(ge=1)] | UnsetType,
        Meta(
            description="Its place from 1, if ranked: those that comply first, those that do not last, least first; "
            "alike figures share a place."
        ),
    ] = UNSET
    not_ranked_because: Annotated[
        str | UnsetType, Meta(description="Why it has no place: what gap its measure has.")
    ] = UNSET
    plan_length: Annotated[ComparedLength, Meta(description="Length in plan.")]
    length: Annotated[ComparedLength, Meta(description="Length of a duct from end to end along its center line.")]
    pull_count: Annotated[ComparedCount, Meta(description="Pulls, one a duct of a circuit from stop to stop.")]
    unjudged_pull_count: Annotated[int, Meta(description="How many of the pulls were not judged.")]
    highest_utilization_percent: Annotated[
        ComparedNumber | UnsetType,
        Meta(
            description="The most that a pull uses of its limits from its better end, in percent; no difference where "
            "a pull was not judged."
        ),
    ] = UNSET
    price: Annotated[
        ComparedNumber | UnsetType, Meta(description="By the rates of the run; no difference where one has gaps.")
    ] = UNSET
    price_gap: Annotated[str | UnsetType, Meta(description="What the price leaves out, if rates are given.")] = UNSET
    labor_hours: Annotated[
        ComparedNumber | UnsetType, Meta(description="By the rates of the run; no difference where one has gaps.")
    ] = UNSET
    labor_hours_gap: Annotated[
        str | UnsetType, Meta(description="What the labor hours leave out, if rates are given.")
    ] = UNSET
    item_quantity: Annotated[
        ComparedQuantity | UnsetType, Meta(description="What it takes of the item it is ranked by.")
    ] = UNSET
    findings_gained: Annotated[
        list[ComparedFinding], Meta(description="Findings that the base has not.", max_length=10_000)
    ]
    findings_lost: Annotated[
        list[ComparedFinding], Meta(description="Findings that the base alone has.", max_length=10_000)
    ]


class DuctRunComparisonResult(Struct, frozen=True, gc=False, kw_only=True):
    """Runs side by side; the first is the base."""

    runs: Annotated[list[ComparedRun], Meta(description="The runs as they were given.", max_length=MOST_RUNS)]
    lines: Annotated[
        list[ComparedLine],
        Meta(description="Lines of the takeoffs in which a run differs.", max_length=MOST_RUNS * MOST_TAKEOFF_LINES),
    ]
    alike_line_count: Annotated[int, Meta(description="Lines that are the same in all runs, and not shown.")]
    rank_by: Annotated[
        RankMeasure | UnsetType,  # type: ignore[valid-type]
        Meta(description="What they are ranked by, as asked."),
    ] = UNSET


class _Taken(NamedTuple):
    """A run with its takeoff, and the figure it is ranked by."""

    one: ComparedAssessment
    takeoff: Takeoff
    ranked: ranking.Ranked | None


def tell(comparison: Comparison, telling: Telling) -> DuctRunComparisonResult:
    """Put a comparison into the caller's units."""
    measure = comparison.rank_by
    taken = []
    for one in comparison.runs:
        takeoff = takeoff_of_run(one.run, telling)
        ranked = None if measure is None else ranking.ranked_by(measure, one.run, takeoff)
        taken.append(_Taken(one, takeoff, ranked))
    lines, alike = compared_lines([one.takeoff for one in taken], [one.one.name for one in taken])
    return DuctRunComparisonResult(
        runs=[_run(one, taken[0], rank, measure, telling) for one, rank in zip(taken, _ranks(taken), strict=True)],
        lines=lines,
        alike_line_count=alike,
        rank_by=UNSET if measure is None else measure,
    )


def _ranks(taken: Sequence[_Taken]) -> list[int | None]:
    ranked = [one.ranked or ranking.Ranked(None, None) for one in taken]
    return ranking.ranks_of(ranked, [one.one.book.verdict for one in taken])


def _run(taken: _Taken, base: _Taken, rank: int | None, measure: str | None, telling: Telling) -> ComparedRun:
    book, run, other = taken.one.book, taken.one.run, base.one.run
    is_base = taken is base
    gained, lost = ([], []) if is_base else findings_apart(run, other)
    gap = None if taken.ranked is None else taken.ranked.gap
    return ComparedRun(
        name=taken.one.name,
        verdict=UNSET if book.verdict is None else book.verdict,
        violation_count=sum(found.severity is Severity.VIOLATION for found in book.findings),
        rank=UNSET if rank is None else rank,
        not_ranked_because=UNSET if gap is None else gap,
        plan_length=_length(run.plan_length, other.plan_length, telling),
        length=_length(run.length, other.length, telling),
        pull_count=_count(ranking.pull_count(run), ranking.pull_count(other)),
        unjudged_pull_count=ranking.unjudged_pulls(run),
        highest_utilization_percent=_number(
            ranking.highest_utilization(run),
            ranking.highest_utilization(other),
            known=_are_whole("highest_utilization", taken, base),
        ),
        price=_total("price", taken, base),
        price_gap=_gap("price", taken),
        labor_hours=_total("labor_hours", taken, base),
        labor_hours_gap=_gap("labor_hours", taken),
        item_quantity=_item(measure, taken, base),
        findings_gained=gained,
        findings_lost=lost,
    )


def _length(value: float, base: float, telling: Telling) -> ComparedLength:
    told = telling.distance(value)
    if not differ(value, base):
        return ComparedLength(told)
    return ComparedLength(told, telling.distance(value - base), percent_of(value, base))


def _count(value: int, base: int) -> ComparedCount:
    return ComparedCount(value) if value == base else ComparedCount(value, value - base, percent_of(value, base))


def _number(value: float | None, base: float | None, *, known: bool) -> ComparedNumber | UnsetType:
    if value is None:
        return UNSET
    return beside(value, base) if known and base is not None else ComparedNumber(value)


def _total(name: str, taken: _Taken, base: _Taken) -> ComparedNumber | UnsetType:
    """Tell a total by the caller's rates; gaps in it, or in that of the base, leave no difference."""
    totals = [one.takeoff.total for one in (taken, base)]
    values = [None if total is UNSET else getattr(total, name) for total in totals]
    value, other = (None if one is UNSET else one for one in values)
    return _number(value, other, known=_are_whole(name, taken, base))


def _are_whole(name: str, *taken: _Taken) -> bool:
    """Say whether a figure has no gap in any of some runs: what is left of two would be no difference."""
    return all(ranking.ranked_by(name, one.one.run, one.takeoff).gap is None for one in taken)


def _gap(name: str, taken: _Taken) -> str | UnsetType:
    """Say what a total by the caller's rates leaves out, if there is one."""
    if taken.takeoff.total is UNSET:
        return UNSET
    gap = ranking.ranked_by(name, taken.one.run, taken.takeoff).gap
    return UNSET if gap is None else gap


def _item(measure: str | None, taken: _Taken, base: _Taken) -> ComparedQuantity | UnsetType:
    if measure is None or measure in FIGURES:
        return UNSET
    totals = [ranking.total_of(TakeoffItem(measure), one.takeoff) for one in (taken, base)]
    known = next((total for total in totals if total is not None), None)
    if known is None:
        return UNSET
    value, other = (0.0 if total is None else total.value for total in totals)
    return beside_quantity(TakeoffQuantity(value, known.unit), other)
