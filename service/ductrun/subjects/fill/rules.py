"""What the fill operations share: the limit that applies and why, the nipple, room kept in reserve, jamming."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Annotated

from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.engineering.rounding import over
from ductrun.kit import answers
from ductrun.kit.choices import CodeEdition, Severity
from ductrun.kit.forms import Offset, Omissible
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.conductors import LISTED_KINDS, Conductor
from ductrun.subjects.parts.conduit import SIZES, ListedConduit, MeasuredConduit, bore_of_row
from ductrun.subjects.parts.jam import caution_in_jam_band, in_jam_band
from ductrun.units import Area, AreaUnit, Length

NippleLength = Annotated[
    Omissible[Offset],
    Field(
        description="Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent.",
        examples=[{"value": 18, "unit": "in"}],
    ),
]
SingleCableRounding = Annotated[
    Omissible[bool],
    Field(
        description="Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence "
        "speaks of a conductor, and a jacketed cable over 53 percent is often refused in the field. A single "
        "conductor of Tables 5, 5A and 8 is always rounded, as the counts of Annex C are.",
        examples=[False],
    ),
]
Edition = Annotated[Omissible[CodeEdition], Field(description="Edition of NFPA 70 to follow.", examples=["2023"])]
NIPPLE_LONGEST = Length.parse(24, "in")  # Chapter 9, Table 1, Note 4
REASONS = {
    engineering.Rule.ONE: "One conductor or cable: 53 percent.",
    engineering.Rule.TWO: "Two conductors or cables: 31 percent.",
    engineering.Rule.OVER_TWO: "More than two conductors or cables: 40 percent.",
    engineering.Rule.NIPPLE: "A nipple of 24 in or less: 60 percent, whatever the number.",
}


def told_area(square_inches: Decimal, sheet: Worksheet) -> answers.Area:
    """Tell an area of the inch tables: as printed in US units, converted in metric ones."""
    told = Area(float(square_inches), AreaUnit.IN2).in_system(sheet.tell.system)
    return answers.Area(told.value, told.unit.value)


def percent_of(rule: engineering.Rule) -> float:
    """Give the percentage of a rule."""
    return float(engineering.SHARE[rule] * 100)


def rounds_single(conductors: Sequence[Conductor], option: bool | None) -> bool:
    """Say whether 0.8 or more stands for one: for a table conductor as Annex C counts, for a cable if asked."""
    return conductors[0].kind in LISTED_KINDS or bool(option)


def is_nipple(nipple_length: Length | None, sheet: Worksheet) -> bool:
    """Say whether the 60 percent of Note 4 applies, and note a nipple that is too long for it."""
    if nipple_length is None:
        return False
    if not over(nipple_length.si, NIPPLE_LONGEST.si):
        measured = " The connectors are not counted in it." if sheet.edition == "2023" else ""
        sheet.find(
            Severity.NOTE,
            "nipple_limit",
            f"A nipple of {nipple_length} may be filled to 60 percent, up to 24 in between boxes.{measured} Ampacity "
            f"need not be adjusted for the number of conductors in it ({sheet.rule('nipple_ampacity')}).",
            sheet.rule("fill_nipple"),
        )
        return True
    sheet.find(
        Severity.CAUTION,
        "too_long_for_a_nipple",
        f"At {nipple_length} this is over 24 in and counts as a complete run, not as a nipple.",
        sheet.rule("fill_nipple"),
        sheet.tell.given(nipple_length),
        sheet.tell.given(NIPPLE_LONGEST),
    )
    return False


def complies(
    groups: Sequence[engineering.Group],
    bore: engineering.Bore,
    *,
    nipple: bool,
    round_single: bool,
    reserve: Decimal = Decimal(0),
) -> tuple[engineering.Fill, bool]:
    """Give the fill of a bore, and whether it complies, passes, and leaves the reserve (a share of the limit)."""
    fill = engineering.assess(groups, bore, nipple=nipple, round_single=round_single)
    passes = all(group.diameter < bore.diameter for group in groups)
    room = not reserve or fill.area <= fill.limit_area * (1 - reserve)
    return fill, fill.within and passes and room


def smallest_complying(
    conduit_type: ConduitType,
    groups: Sequence[engineering.Group],
    *,
    nipple: bool,
    round_single: bool,
    reserve: Decimal = Decimal(0),
) -> TradeSize | None:
    """Give the smallest trade size of a type in which the set complies."""
    for size, row in SIZES[conduit_type].items():
        bore = bore_of_row(row)
        if bore is None:
            continue
        if complies(groups, bore, nipple=nipple, round_single=round_single, reserve=reserve)[1]:
            return TradeSize(size)
    return None


def caution_pair(groups: Sequence[engineering.Group], bore: engineering.Bore, where: str, sheet: Worksheet) -> None:
    """Caution where two are refused at 31 percent though a third could be added under 40."""
    area = sum((group.area * group.count for group in groups), Decimal(0))
    if bore.limits[engineering.Rule.TWO] < area <= bore.limits[engineering.Rule.OVER_TWO]:
        percent = float(area / bore.area * 100)
        sheet.find(
            Severity.CAUTION,
            "third_would_pass",
            f"The two fill {percent:.2f} percent of {where} and are refused at 31, yet with a third, small enough, the "
            "set would be let in at 40: the percentages do not rise evenly with the number.",
            sheet.rule("fill"),
            percent,
            percent_of(engineering.Rule.TWO),
        )


def jam_ratio_of(groups: Sequence[engineering.Group], bore: engineering.Bore) -> float | None:
    """Give the plain jam ratio of exactly three conductors or cables, by their mean diameter; else None."""
    count = sum(group.count for group in groups)
    if count != 3:
        return None
    mean = sum(float(group.diameter) * group.count for group in groups) / count
    return engineering.jam_ratio(float(bore.diameter), mean)


def caution_jam(
    groups: Sequence[engineering.Group],
    bore: engineering.Bore,
    conduit: ListedConduit | MeasuredConduit,
    sheet: Worksheet,
    *,
    nipple: bool,
) -> float | None:
    """Give the jam ratio; inside the band, name the nearest sizes of the same type outside of it."""
    ratio = jam_ratio_of(groups, bore)
    if ratio is None or not in_jam_band(ratio):
        return ratio
    remedy = "Take another conduit size."
    if conduit.kind == "listed":
        outside = _sizes_outside_the_band(groups, conduit, nipple=nipple)
        remedy = f"Outside of it: trade size {' or '.join(outside)}." if outside else "No size of the type is better."
    caution_in_jam_band(ratio, sheet, remedy)
    return ratio


def _sizes_outside_the_band(groups: Sequence[engineering.Group], conduit: ListedConduit, *, nipple: bool) -> list[str]:
    """Give the nearest complying size below and above whose ratio lies outside the jam band."""
    below: list[str] = []
    above: list[str] = []
    smaller = True
    for size, row in SIZES[conduit.type].items():
        if size == conduit.trade_size:
            smaller = False
            continue
        bore = bore_of_row(row)
        if bore is None or not complies(groups, bore, nipple=nipple, round_single=False)[1]:
            continue
        ratio = jam_ratio_of(groups, bore)
        if ratio is not None and not in_jam_band(ratio):
            (below if smaller else above).append(size)
    return below[-1:] + above[:1]
