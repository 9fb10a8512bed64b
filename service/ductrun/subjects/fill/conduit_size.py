"""POST /v1/conduit-size: which trade size of a type do these conductors need."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.engineering.cables import OVALITY
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.forms import Form, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.fill.choices import ConductorChange, FillLimitRule
from ductrun.subjects.fill.rules import (
    REASONS,
    Edition,
    NippleLength,
    SingleCableRounding,
    caution_pair,
    complies,
    is_nipple,
    jam_ratio_of,
    percent_of,
    rounds_single,
    smallest_complying,
    told_area,
)
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.conductors import Conductors, groups_of, next_larger
from ductrun.subjects.parts.conduit import SIZES, bore_of_row, refuse_without_bore

SPARE_PERCENT = number("fill.spare_percent")


class ConduitSizeRequest(Form):
    """What goes into a conduit whose size is asked for."""

    type: ConduitType = Field(description="Type of conduit.", examples=["pvc_schedule_40"])
    conductors: Conductors = Field(description="Everything in the conduit, grounding and bonding conductors included.")
    spare_percent: Omissible[Annotated[float, Field(ge=0, le=90)]] = Field(
        default=None, description="Share of the permitted area to leave free, in percent.", examples=[20]
    )
    nipple_length: NippleLength = None
    single_cable_rounding: SingleCableRounding = None
    code_edition: Edition = None


class SizeCandidate(Struct, frozen=True, gc=False):
    """One trade size of the type with what the set would take of it."""

    trade_size: TradeSize
    conduit_area: Annotated[answers.Area, Meta(description="Inside area, as printed.")]
    limit_area: Annotated[answers.Area, Meta(description="Area the percentage allows, as printed.")]
    fill_percent: Annotated[float, Meta(description="Conductor area in percent of conduit area.")]
    spare_area: Annotated[answers.Area, Meta(description="Limit area less conductor area; negative when over.")]
    passes_bore: Annotated[bool, Meta(description="Whether every conductor is narrower than the bore.")]
    within_limit: Annotated[bool, Meta(description="Whether the set complies and leaves the spare asked for.")]
    rounding_decided: Annotated[bool, Meta(description="Whether it complies only by the 0.8 rule of Note 7.")]
    jam_ratio: Annotated[
        float | UnsetType, Meta(description="Conduit over cable diameter; for three conductors or cables only.")
    ] = UNSET
    jam_ratio_with_ovality: Annotated[float | UnsetType, Meta(description="The same times 1.05.")] = UNSET


class SizeChange(Struct, frozen=True, gc=False):
    """What one change of the set does to the size."""

    conductor_index: Annotated[int, Meta(description="Line of the request that changes, from 0.")]
    change: Annotated[ConductorChange, Meta(description="What changes on that line.")]
    trade_size: Annotated[
        TradeSize | UnsetType, Meta(description="Smallest size that then complies; absent if none does.")
    ] = UNSET


class ConduitSizeResult(Struct, frozen=True, gc=False):
    """The smallest size that complies, its neighbors, and what small changes would do."""

    conductor_count: Annotated[int, Meta(description="Conductors and cables counted.")]
    conductor_area: Annotated[answers.Area, Meta(description="Their area together.")]
    limit_percent: Annotated[float, Meta(description="Percentage of Table 1 that applies.")]
    limit_rule: Annotated[FillLimitRule, Meta(description="Which line of Table 1 applies.")]
    limit_reason: Annotated[str, Meta(description="Why that line applies, in a sentence.")]
    candidates: Annotated[list[SizeCandidate], Meta(description="Every trade size of the type, smallest first.")]
    changes: Annotated[
        list[SizeChange], Meta(description="For every line: one conductor more, and one conductor size larger.")
    ]
    trade_size: Annotated[
        TradeSize | UnsetType, Meta(description="Smallest trade size that complies; absent if none does.")
    ] = UNSET
    next_trade_size: Annotated[TradeSize | UnsetType, Meta(description="The next size up, if the type has one.")] = (
        UNSET
    )


def _changes(
    request: ConduitSizeRequest,
    groups: Sequence[engineering.Group],
    sheet: Worksheet,
    *,
    nipple: bool,
    reserve: Decimal,
) -> list[SizeChange]:
    """Size the set anew for each line with one more, and with the next larger conductor where there is one."""
    changes: list[SizeChange] = []
    for index, (conductor, group) in enumerate(zip(request.conductors, groups, strict=True)):
        one_more = engineering.Group(group.area, group.diameter, group.count + 1)
        larger = next_larger(conductor)
        variants = [(ConductorChange.ONE_MORE, one_more)]
        if larger is not None:
            quiet = Worksheet(sheet.tell, working=False)  # what is found about a set nobody asked for is not told
            variants.append((ConductorChange.ONE_SIZE_LARGER, groups_of([larger], quiet)[0]))
        for change, variant in variants:
            size = smallest_complying(
                request.type,
                [*groups[:index], variant, *groups[index + 1 :]],
                nipple=nipple,
                round_single=rounds_single(request.conductors, request.single_cable_rounding),
                reserve=reserve,
            )
            changes.append(SizeChange(index, change, UNSET if size is None else size))
    return changes


def compute(request: ConduitSizeRequest, sheet: Worksheet) -> ConduitSizeResult:
    """Try every size of the type."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        refuse_without_bore(request.type, sheet)
    with faults:
        groups = groups_of(request.conductors, sheet)
    faults.stop()
    spare = sheet.settle("#/spare_percent", request.spare_percent, SPARE_PERCENT)
    reserve = Decimal(repr(float(spare))) / 100
    nipple = is_nipple(request.nipple_length, sheet)
    round_single = rounds_single(request.conductors, request.single_cable_rounding)
    candidates: list[SizeCandidate] = []
    chosen: int | None = None
    refused: engineering.Bore | None = None
    for size, row in SIZES[request.type].items():
        bore = bore_of_row(row)
        if bore is None:
            continue
        fill, within = complies(groups, bore, nipple=nipple, round_single=round_single, reserve=reserve)
        jam = jam_ratio_of(groups, bore)
        if within and chosen is None:
            chosen = len(candidates)
        elif chosen is None:
            refused = bore
        candidates.append(
            SizeCandidate(
                trade_size=TradeSize(size),
                conduit_area=told_area(bore.area, sheet),
                limit_area=told_area(fill.limit_area, sheet),
                fill_percent=float(fill.area / bore.area * 100),
                spare_area=told_area(fill.limit_area - fill.area, sheet),
                passes_bore=all(group.diameter < bore.diameter for group in groups),
                within_limit=within,
                rounding_decided=within and fill.rounded_up,
                jam_ratio=UNSET if jam is None else jam,
                jam_ratio_with_ovality=UNSET if jam is None else jam * OVALITY,
            )
        )
        sheet.cite(row.source)
    _report(request, candidates, chosen, sheet)
    if refused is not None and fill.rule is engineering.Rule.TWO:
        size = candidates[(len(candidates) if chosen is None else chosen) - 1].trade_size
        caution_pair(groups, refused, f"trade size {size.value}", sheet)
    changes = _changes(request, groups, sheet, nipple=nipple, reserve=reserve)
    following = None if chosen is None or chosen + 1 == len(candidates) else candidates[chosen + 1].trade_size
    return ConduitSizeResult(
        conductor_count=fill.count,
        conductor_area=told_area(fill.area, sheet),
        limit_percent=percent_of(fill.rule),
        limit_rule=FillLimitRule(fill.rule),
        limit_reason=REASONS[fill.rule],
        candidates=candidates,
        changes=changes,
        trade_size=UNSET if chosen is None else candidates[chosen].trade_size,
        next_trade_size=UNSET if following is None else following,
    )


def _report(
    request: ConduitSizeRequest, candidates: Sequence[SizeCandidate], chosen: int | None, sheet: Worksheet
) -> None:
    rule = sheet.rule("fill")
    if chosen is None:
        sheet.find(
            Severity.VIOLATION,
            "no_size_complies",
            f"No trade size of {request.type.value} in the tables holds this set: divide it over several conduits.",
            rule,
        )
        return
    found = candidates[chosen]
    sheet.show(
        "trade size",
        "the smallest whose limit holds the set",
        "; ".join(f"{one.trade_size.value}: {one.fill_percent:.2f} %" for one in candidates[: chosen + 1]),
        found.fill_percent,
    )
    if found.rounding_decided:
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"Trade size {found.trade_size.value} complies by the 0.8 rule: the set fills {found.fill_percent:.2f} "
            "percent.",
            sheet.rule("fill_rounding"),
            found.fill_percent,
        )


OPERATION = Operation(
    name="conduit-size",
    operation_id="calculate_conduit_size",
    summary="Conduit size",
    description="Gives the smallest trade size of a type that holds conductors and cables, every size with its fill, "
    "the next one up, and what one conductor more or one conductor size larger would do.",
    request=ConduitSizeRequest,
    result=ConduitSizeResult,
    compute=compute,
    example={
        "type": "pvc_schedule_40",
        "conductors": [
            {"kind": "listed", "insulation": "THWN-2", "size": "3/0 AWG", "count": 4},
            {"kind": "bare", "size": "6 AWG", "stranding": "stranded", "count": 1},
        ],
        "spare_percent": 0,
        "code_edition": "2023",
    },
)
