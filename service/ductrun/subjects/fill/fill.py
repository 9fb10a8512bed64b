"""POST /v1/fill: do these cables fit this conduit."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType
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
    caution_jam,
    caution_pair,
    load_of,
    practice_of,
    smallest_complying,
    told_area,
)
from ductrun.subjects.parts.cables import CableLines
from ductrun.subjects.parts.choices import TradeSize
from ductrun.subjects.parts.conductors import ConductorSet, conductor_set, wider_than
from ductrun.subjects.parts.conduit import Conduit, PlacedConduit, place_conduit
from ductrun.subjects.parts.jam import OVALITY


class FillRequest(Filling):
    """What goes into which conduit."""

    conduit: Conduit = Field(description="The conduit.")
    cables: CableLines = Field(description="Everything in the conduit, grounding and bonding conductors included.")
    code_edition: Edition = None


class FillResult(Struct, frozen=True, gc=False):
    """How full the conduit is, and against which limit."""

    conductor_count: Annotated[int, Meta(description="Conductors and cables counted.")]
    conductor_area: Annotated[answers.Area, Meta(description="Their area together.")]
    conduit_area: Annotated[answers.Area, Meta(description="Inside area of the conduit, as printed if listed.")]
    fill_percent: Annotated[float, Meta(description="Conductor area in percent of conduit area.")]
    limit_percent: Annotated[float, Meta(description="Percentage of Table 1 that applies.")]
    limit_area: Annotated[answers.Area, Meta(description="Area this percentage allows, as printed if listed.")]
    limit_rule: Annotated[FillLimitRule, Meta(description="Which line of Table 1 applies.")]
    limit_reason: Annotated[str, Meta(description="Why that line applies, in a sentence.")]
    rounding_decided: Annotated[bool, Meta(description=f"Whether it complies only by the {ONE_MORE} rule of Note 7.")]
    spare_area: Annotated[answers.Area, Meta(description="Limit area less conductor area; negative when over.")]
    jam_ratio: Annotated[
        float | UnsetType,
        Meta(description="Conduit over cable diameter; for three conductors or cables only."),
    ] = UNSET
    jam_ratio_with_ovality: Annotated[
        float | UnsetType,
        Meta(
            description=f"Conduit over cable diameter times {OVALITY:g}, the handbook allowance for ovality in bends."
        ),
    ] = UNSET
    smallest_trade_size: Annotated[
        TradeSize | UnsetType,
        Meta(description="Smallest trade size of the same type that complies; listed only."),
    ] = UNSET


class Filled(NamedTuple):
    """Conductors in a conduit, held against Table 1; lengths and areas are in the whole numbers of fill.

    `percent` is their area in percent of that of the bore, `jam_ratio` that of three, `smallest` the smallest trade
    size of the same type that complies.
    """

    conductors: ConductorSet
    conduit: PlacedConduit
    practice: Practice
    load: engineering.Load
    fill: engineering.Fill
    percent: float
    jam_ratio: float | None
    smallest: TradeSize | None


def hold(
    given: Filling, conduit: PlacedConduit, conductors: ConductorSet, sheet: Worksheet, *, triplexed: bool = False
) -> Filled:
    """Hold conductors in a conduit against the limit of Chapter 9, Table 1; refuses one that is wider than the bore."""
    bore = conduit.bore
    practice = practice_of(given, conductors.given[0].cable.kind, sheet)
    load = load_of(conductors.groups, practice)
    if load.widest > bore.diameter:
        raise wider_than(bore, conductors)
    fill = engineering.assess(load, bore, LIMITS)
    percent = 100 * load.area / bore.area
    sheet.judge(fill.within)
    smallest = _smallest(conduit, conductors, load)
    _report(load, fill, conduit, percent, smallest, conductors.sheet)
    if load.rule is engineering.Rule.TWO and not fill.within:
        caution_pair(load.area, conductors, bore, "this conduit")
    jam = caution_jam(conductors, load, conduit, triplexed=triplexed)
    filled = Filled(conductors, conduit, practice, load, fill, percent, jam, smallest)
    if sheet.working is not None:
        _show(filled, sheet)
    return filled


def _smallest(conduit: PlacedConduit, conductors: ConductorSet, load: engineering.Load) -> TradeSize | None:
    """Give the smallest size of the same type that complies; a measured conduit has no other sizes."""
    given = conduit.given
    if given.kind == "measured":
        sheet = conduit.sheet
        sheet.find(
            Severity.NOTE,
            "measured_bore",
            f"The inside diameter of {given.inside_diameter} is the caller's: it must come from the maker of "
            "the conduit or be measured.",
            sheet.rule("fill_actual"),
            member="inside_diameter",
        )
        return None
    smallest = smallest_complying(given.type, load)
    if smallest is None:
        sheet = conductors.sheet
        sheet.find(
            Severity.CAUTION,
            "no_size_complies",
            f"No trade size of {given.type} in the tables holds this set: divide it over several conduits.",
            sheet.rule("fill"),
            member="",
        )
    return smallest


def _report(
    load: engineering.Load,
    fill: engineering.Fill,
    conduit: PlacedConduit,
    percent: float,
    smallest: TradeSize | None,
    sheet: Worksheet,
) -> None:
    limit, bore = PERCENT[load.rule], conduit.bore
    rule = sheet.rule("fill")
    if not fill.within:
        if load.equal and load.number > 1:
            nipple = load.rule is engineering.Rule.NIPPLE
            one = load.area // load.number
            most, _, _ = engineering.maximum_count(bore, one, LIMITS, nipple=nipple, round_single=False)
            detail = f": the conduit holds {most or 'none'} of them"
        else:
            detail = ""
        do = f"Take trade size {smallest}" if smallest else "Take a larger conduit or fewer conductors"
        sheet.find(
            Severity.VIOLATION,
            "fill_exceeded",
            f"The conductors fill {percent:.2f} percent of the conduit, {_named(conduit)}; the limit is "
            f"{limit:g}{detail}. {do}. It is the limit of a complete run, not of a short length that only protects "
            "exposed wiring.",
            rule.beside(sheet.rule("fill_complete")),
            in_percent(percent),
            in_percent(limit),
            member="",
        )
    elif fill.rounded_up:
        sheet.find(
            Severity.NOTE,
            "rounded_up",
            f"{load.number} equal conductors comply by rounding {_quotient(load, bore):.3f} up "
            f"({ONE_MORE} or more), though their area is {percent:.2f} percent against {limit:g}.",
            sheet.rule("fill_rounding"),
            in_percent(percent),
            in_percent(limit),
            member="",
        )


def _named(conduit: PlacedConduit) -> str:
    """Say in words which conduit it is."""
    given = conduit.given
    if given.kind == "measured" and given.trade_size is None:
        return f"{given.inside_diameter} inside"
    kind = "" if given.type is None else f" {given.type.replace('_', ' ')}"
    return f"{given.trade_size} in{kind}"


def _quotient(load: engineering.Load, bore: engineering.Bore) -> float:
    """Give how many of the equal conductors of a set the percentage holds."""
    return engineering.quotient(bore, load.rule, load.area // load.number, LIMITS) / WHOLE


def _show(filled: Filled, sheet: Worksheet) -> None:
    groups, bore, load = filled.conductors.groups, filled.conduit.bore, filled.load
    sheet.show(
        "A",
        "sum of count x area of one",
        " + ".join(f"{group.number} x {group.area / SCALE:.4f}" for group in groups) + " in2",
        told_area(load.area, sheet.tell),
    )
    sheet.show(
        "fill_percent",
        "100 A / A_conduit",
        f"100 x {load.area / SCALE:.4f} / {bore.area / SCALE:.4f}",
        in_percent(filled.percent),
    )
    if load.equal:
        sheet.show(
            "n",
            "percentage x pi/4 x ID^2 / area of one",
            f"{PERCENT[load.rule] / 100:g} x pi/4 x {bore.diameter / SCALE:g}^2 / {groups[0].area / SCALE:.4f}",
            _quotient(load, bore),
        )


def assess(request: FillRequest, sheet: Worksheet) -> Filled:
    """Hold the conductors of a request in its conduit."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        conduit = place_conduit(request.conduit, sheet.within("conduit"))
    with faults:
        conductors = conductor_set(request.cables, sheet.within("cables"))
    faults.stop()
    return hold(request, conduit, conductors, sheet)


def tell(filled: Filled, telling: Telling) -> FillResult:
    """Tell how full the conduit is."""
    load, fill, jam = filled.load, filled.fill, filled.jam_ratio
    return FillResult(
        conductor_count=load.number,
        conductor_area=told_area(load.area, telling),
        conduit_area=told_area(filled.conduit.bore.area, telling),
        fill_percent=filled.percent,
        limit_percent=PERCENT[load.rule],
        limit_area=told_area(fill.limit_area, telling),
        limit_rule=TOLD_RULES[load.rule],
        limit_reason=REASONS[load.rule],
        rounding_decided=fill.rounded_up,
        spare_area=told_area(fill.limit_area - load.area, telling),
        jam_ratio=UNSET if jam is None else jam,
        jam_ratio_with_ovality=UNSET if jam is None else jam * OVALITY,
        smallest_trade_size=UNSET if filled.smallest is None else filled.smallest,
    )


OPERATION = Operation(
    name="fill",
    operation_id="calculate_fill",
    summary="Conduit fill",
    description="Holds conductors and cables in a conduit against the limits of NFPA 70, Chapter 9, Table 1: the "
    f"percentage that applies, the {ONE_MORE} rule for equal conductors, the nipple, the jam ratio, the smallest "
    "size.",
    request=FillRequest,
    result=FillResult,
    assess=assess,
    tell=tell,
    example={
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "3"},
        "cables": [
            {"count": 3, "cable": {"kind": "listed", "insulation": "THHN", "size": "500 kcmil"}},
            {"count": 1, "cable": {"kind": "listed", "insulation": "THHN", "size": "250 kcmil"}},
            {"count": 1, "cable": {"kind": "listed", "insulation": "THHN", "size": "3 AWG"}},
        ],
        "code_edition": "2023",
    },
)
