"""POST /v1/conduit-size: which trade size of a type do these cables need."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.engineering.fill import SCALE
from ductrun.kit import answers
from ductrun.kit.backing import GIVEN
from ductrun.kit.choices import Severity, Verdict
from ductrun.kit.defaults import number
from ductrun.kit.forms import Edition, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.wording import in_percent
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.fill.choices import ConductorChange, FillLimitRule
from ductrun.subjects.fill.rules import (
    LIMITS,
    ONE_MORE,
    PERCENT,
    REASONS,
    TOLD_RULES,
    Filling,
    Practice,
    caution_pair,
    governing_diameter,
    load_of,
    practice_of,
    smallest_complying,
    told_area,
)
from ductrun.subjects.parts.cables import MOST_KINDS, CableLines
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.conductors import ConductorSet, conductor_set, next_larger
from ductrun.subjects.parts.conduit import BORES, SIZES, PlacedType, refuse_without_bore, scaled
from ductrun.subjects.parts.jam import OVALITY, caution_in_jam_band, in_jam_band

SPARE_PERCENT = number("fill.spare_percent")
SOURCES = {
    kind: tuple(dict.fromkeys(SIZES[kind][trade_size].source for trade_size in bores)) for kind, bores in BORES.items()
}


class Sizing(Filling):
    """What a conduit is sized for, beside its cables."""

    spare_percent: Omissible[Annotated[float, Field(ge=0, le=90)]] = Field(
        default=None,
        description="Share of the permitted area to leave free, in percent.",
        examples=[20],
        json_schema_extra=SPARE_PERCENT.stated,
    )


class ConduitSizeRequest(Sizing):
    """What goes into a conduit whose size is asked for."""

    type: ConduitType = Field(description="Type of conduit.", examples=["pvc_schedule_40"])
    cables: CableLines = Field(description="Everything in the conduit, grounding and bonding conductors included.")
    code_edition: Edition = None


class SizeCandidate(Struct, frozen=True, gc=False):
    """One trade size of the type with what the set would take of it."""

    trade_size: Annotated[TradeSize, Meta(description="Trade size of the conduit.")]
    conduit_area: Annotated[answers.Area, Meta(description="Inside area, as printed.")]
    limit_area: Annotated[answers.Area, Meta(description="Area the percentage allows, as printed.")]
    fill_percent: Annotated[float, Meta(description="Conductor area in percent of conduit area.")]
    spare_area: Annotated[answers.Area, Meta(description="Limit area less conductor area; negative when over.")]
    passes_bore: Annotated[bool, Meta(description="Whether every conductor is narrower than the bore.")]
    verdict: Annotated[Verdict, Meta(description="Whether the set complies and leaves the spare asked for.")]
    rounding_decided: Annotated[bool, Meta(description=f"Whether it complies only by the {ONE_MORE} rule of Note 7.")]
    jam_ratio: Annotated[
        float | UnsetType, Meta(description="Conduit over cable diameter; for three conductors or cables only.")
    ] = UNSET
    jam_ratio_with_ovality: Annotated[
        float | UnsetType, Meta(description=f"Conduit over cable diameter times {OVALITY:g}.")
    ] = UNSET


class SizeChange(Struct, frozen=True, gc=False):
    """What one change of the set does to the size."""

    pointer: Annotated[str, Meta(description="Line of `cables` that changes, in the request.")]
    change: Annotated[ConductorChange, Meta(description="What changes on that line.")]
    trade_size: Annotated[
        TradeSize | UnsetType, Meta(description="Smallest size that complies with the change; absent if none does.")
    ] = UNSET


class ConduitSizeResult(Struct, frozen=True, gc=False):
    """The smallest size that complies, its neighbors, and what small changes would do."""

    conductor_count: Annotated[int, Meta(description="Conductors and cables counted.")]
    conductor_area: Annotated[answers.Area, Meta(description="Their area together.")]
    limit_percent: Annotated[float, Meta(description="Percentage of Table 1 that applies.")]
    limit_rule: Annotated[FillLimitRule, Meta(description="Which line of Table 1 applies.")]
    limit_reason: Annotated[str, Meta(description="Why that line applies, in a sentence.")]
    candidates: Annotated[
        list[SizeCandidate],
        Meta(description="Every trade size of the type, smallest first.", max_length=len(TradeSize)),
    ]
    changes: Annotated[
        list[SizeChange],
        Meta(
            description="For every line: one conductor more, and one conductor size larger.", max_length=2 * MOST_KINDS
        ),
    ]
    trade_size: Annotated[
        TradeSize | UnsetType, Meta(description="Smallest trade size that complies; absent if none does.")
    ] = UNSET
    next_trade_size: Annotated[TradeSize | UnsetType, Meta(description="The next size up, if the type has one.")] = (
        UNSET
    )


class Candidate(NamedTuple):
    """One trade size, and `percent` the set fills of it; `within` if that complies, passes and leaves the spare."""

    trade_size: TradeSize
    bore: engineering.Bore
    fill: engineering.Fill
    percent: float
    within: bool
    jam_ratio: float | None


class Sized(NamedTuple):
    """Every size of a type, smallest first, and the place of the first that complies.

    `changes` holds for each line, by its index, what changes and the smallest size that then complies.
    """

    conduit_type: PlacedType
    conductors: ConductorSet
    practice: Practice
    load: engineering.Load
    spare_percent: float
    candidates: list[Candidate]
    chosen: int | None
    changes: list[tuple[int, ConductorChange, TradeSize | None]]


def size(given: Sizing, conduit_type: PlacedType, conductors: ConductorSet, sheet: Worksheet) -> Sized:
    """Try every size of a type; refuses one without a bore on file."""
    refuse_without_bore(conduit_type)
    spare = sheet.settle("spare_percent", given.spare_percent, SPARE_PERCENT)
    reserve = scaled(Decimal(repr(float(spare)))) // 100
    practice = practice_of(given, conductors.given[0].cable.kind, sheet)
    type_, load = conduit_type.type, load_of(conductors.groups, practice, reserve)
    candidates = _candidates(type_, load, governing_diameter(conductors.groups))
    sheet.cite(*SOURCES[type_])
    chosen = next((place for place, candidate in enumerate(candidates) if candidate.within), None)
    sheet.judge(chosen is not None)
    if chosen is None:
        _report_none(type_, candidates, load, spare, conductors.sheet)
    else:
        _report(candidates, chosen, conductors.sheet)
    refused = candidates[(len(candidates) if chosen is None else chosen) - 1] if chosen != 0 else None
    if refused is not None and load.rule is engineering.Rule.TWO:
        caution_pair(load.area, conductors, refused.bore, f"trade size {refused.trade_size.value}")
    changes = _changes(type_, conductors, practice, reserve)
    return Sized(conduit_type, conductors, practice, load, spare, candidates, chosen, changes)


def _candidates(conduit_type: str, load: engineering.Load, governing: float | None) -> list[Candidate]:
    """Hold a set in every size of a type; `governing` is the diameter [in] of three that govern it."""
    candidates: list[Candidate] = []
    for trade_size, bore in BORES[conduit_type].items():
        fill, within = engineering.assess(load, bore, LIMITS), engineering.fits(load, bore, LIMITS)
        jam = None if governing is None else bore.diameter / SCALE / governing
        candidates.append(Candidate(trade_size, bore, fill, 100 * load.area / bore.area, within, jam))
    return candidates


def _report(candidates: Sequence[Candidate], chosen: int, sheet: Worksheet) -> None:
    found = candidates[chosen]
    sheet.rule("fill")  # cites it
    if found.jam_ratio is not None and in_jam_band(found.jam_ratio):
        wider = (one.trade_size for one in candidates[chosen + 1 :] if not in_jam_band(one.jam_ratio or 0.0))
        larger = next(wider, None)
        caution_in_jam_band(
            found.jam_ratio,
            sheet,
            f"Trade size {larger} is outside of it." if larger else "No larger size of the type is better.",
        )
    if sheet.working is not None:
        tried = (f"{one.trade_size.value}: {one.percent:.2f} %" for one in candidates[: chosen + 1])
        sheet.show("trade size", "the smallest whose limit holds the set", "; ".join(tried), in_percent(found.percent))
    if found.fill.rounded_up:
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"Trade size {found.trade_size.value} complies by the {ONE_MORE} rule: the set fills {found.percent:.2f} "
            "percent.",
            sheet.rule("fill_rounding"),
            in_percent(found.percent),
            member="",
        )


def _report_none(
    conduit_type: str, candidates: Sequence[Candidate], load: engineering.Load, spare: float, sheet: Worksheet
) -> None:
    """Say that no size complies: by the code, or by the spare that the caller asked for."""
    largest = candidates[-1]
    rule, limit = sheet.rule("fill"), PERCENT[load.rule]
    message = f"No trade size of {conduit_type} in the tables holds this set: divide it over several conduits."
    if largest.fill.within:
        rule, limit = GIVEN, limit * (1 - spare / 100)
        message = (
            f"No trade size of {conduit_type} in the tables leaves {spare:g} percent of the permitted area free: "
            "divide the set over several conduits, or keep less in reserve."
        )
    sheet.find(
        Severity.VIOLATION,
        "no_size_complies",
        message,
        rule,
        in_percent(largest.percent),
        in_percent(limit),
        member="",
    )


def _changes(
    conduit_type: str, conductors: ConductorSet, practice: Practice, reserve: int
) -> list[tuple[int, ConductorChange, TradeSize | None]]:
    """Size the set anew for each line with one more, and with the next larger conductor where there is one."""
    changes: list[tuple[int, ConductorChange, TradeSize | None]] = []
    changed = list(conductors.groups)
    for index, (line, group) in enumerate(zip(conductors.given, conductors.groups, strict=True)):
        variants = [(ConductorChange.ONE_MORE, group._replace(number=group.number + 1))]
        larger = next_larger(line.cable)
        if larger is not None:
            variants.append((ConductorChange.ONE_SIZE_LARGER, engineering.Group(*larger, group.number)))
        for change, variant in variants:
            changed[index] = variant
            load = load_of(changed, practice, reserve)
            changes.append((index, change, smallest_complying(conduit_type, load)))
        changed[index] = group
    return changes


def assess(request: ConduitSizeRequest, sheet: Worksheet) -> Sized:
    """Size the conduit of a request."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    conduit_type = PlacedType(request.type, sheet.within("type"))
    with faults:
        refuse_without_bore(conduit_type)
    with faults:
        conductors = conductor_set(request.cables, sheet.within("cables"))
    faults.stop()
    return size(request, conduit_type, conductors, sheet)


def tell(sized: Sized, telling: Telling) -> ConduitSizeResult:
    """Tell every size, the smallest that complies, and what small changes of the set would do."""
    candidates, chosen = sized.candidates, sized.chosen
    load = sized.load
    last = chosen is None or chosen + 1 == len(candidates)
    return ConduitSizeResult(
        conductor_count=load.number,
        conductor_area=told_area(load.area, telling),
        limit_percent=PERCENT[load.rule],
        limit_rule=TOLD_RULES[load.rule],
        limit_reason=REASONS[load.rule],
        candidates=[_told(candidate, load, telling) for candidate in candidates],
        changes=[
            SizeChange(sized.conductors.sheet.pointer(str(index)), change, UNSET if one is None else one)
            for index, change, one in sized.changes
        ],
        trade_size=UNSET if chosen is None else candidates[chosen].trade_size,
        next_trade_size=UNSET if chosen is None or last else candidates[chosen + 1].trade_size,
    )


def _told(candidate: Candidate, load: engineering.Load, telling: Telling) -> SizeCandidate:
    fill, jam = candidate.fill, candidate.jam_ratio
    return SizeCandidate(
        trade_size=candidate.trade_size,
        conduit_area=told_area(candidate.bore.area, telling),
        limit_area=told_area(fill.limit_area, telling),
        fill_percent=candidate.percent,
        spare_area=told_area(fill.limit_area - load.area, telling),
        passes_bore=load.widest < candidate.bore.diameter,
        verdict=Verdict.of(candidate.within),
        rounding_decided=candidate.within and fill.rounded_up,
        jam_ratio=UNSET if jam is None else jam,
        jam_ratio_with_ovality=UNSET if jam is None else jam * OVALITY,
    )


def steps(request: ConduitSizeRequest) -> float:
    """Bound the work by the kinds of cable, each tried a size larger."""
    return 20.0 + 15.0 * len(request.cables)


OPERATION = Operation(
    name="conduit-size",
    operation_id="calculate_conduit_size",
    summary="Conduit size",
    description="Gives the smallest trade size of a type that holds conductors and cables, every size with its fill, "
    "the next one up, and what one conductor more or one conductor size larger would do.",
    request=ConduitSizeRequest,
    result=ConduitSizeResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "type": "pvc_schedule_40",
        "cables": [
            {"count": 4, "cable": {"kind": "listed", "insulation": "THWN-2", "size": "3/0 AWG"}},
            {"count": 1, "cable": {"kind": "bare", "size": "6 AWG", "stranding": "stranded"}},
        ],
        "spare_percent": 0,
        "code_edition": "2023",
    },
)
