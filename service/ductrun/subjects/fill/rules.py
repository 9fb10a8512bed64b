"""What the fill operations share: the limit that applies and why, the nipple, room kept in reserve, jamming."""

from __future__ import annotations

from collections.abc import Sequence
from operator import attrgetter
from typing import NamedTuple

from pydantic import Field

from ductrun.engineering import fill as engineering
from ductrun.engineering.cable_sets import acts_as_three, mean_of_larger_three
from ductrun.engineering.fill import SCALE, WHOLE
from ductrun.engineering.rounding import over
from ductrun.kit import answers
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number, quantity
from ductrun.kit.forms import Form, Offset, Omissible
from ductrun.kit.telling import Telling, UnitSystem
from ductrun.kit.wording import in_percent
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.fill.choices import FillLimitRule
from ductrun.subjects.parts.choices import TradeSize
from ductrun.subjects.parts.conductors import LISTED_KINDS, ConductorSet
from ductrun.subjects.parts.conduit import BORES, ListedConduit, PlacedConduit
from ductrun.subjects.parts.jam import caution_in_jam_band, in_jam_band
from ductrun.units import AnyQuantity, AreaUnit, Length

PERCENT = {rule: number(f"fill.percent_{rule}").value for rule in engineering.Rule}
_ONE_MORE = number("fill.one_more_from").value
ONE_MORE = f"{_ONE_MORE:g}"
LIMITS = engineering.Limits(
    {rule: round(percent / 100 * WHOLE) for rule, percent in PERCENT.items()}, round(_ONE_MORE * WHOLE)
)
NIPPLE_LONGEST = quantity("fill.nipple_longest", Length).value
TOLD_RULES = {rule: FillLimitRule(rule) for rule in engineering.Rule}
REASONS = {
    engineering.Rule.ONE: f"One conductor or cable: {PERCENT[engineering.Rule.ONE]:g} percent.",
    engineering.Rule.TWO: f"Two conductors or cables: {PERCENT[engineering.Rule.TWO]:g} percent.",
    engineering.Rule.OVER_TWO: f"More than two conductors or cables: {PERCENT[engineering.Rule.OVER_TWO]:g} percent.",
    engineering.Rule.NIPPLE: f"A nipple of {NIPPLE_LONGEST} or less: {PERCENT[engineering.Rule.NIPPLE]:g} percent, "
    "whatever the number.",
}
_PRINTED = AreaUnit.IN2
_diameter = attrgetter("diameter")


class Filling(Form):
    """What conductors are held against in a conduit."""

    nipple_length: Omissible[Offset] = Field(
        default=None,
        description=f"Length between the boxes if this is a nipple: up to {NIPPLE_LONGEST} it may be filled to "
        f"{PERCENT[engineering.Rule.NIPPLE]:g} percent.",
        examples=[{"value": 18, "unit": "in"}],
    )
    single_cable_rounding: Omissible[bool] = Field(
        default=None,
        description=f"Let {ONE_MORE} or more stand for one cable (last sentence of Note 7). Off unless asked: the "
        f"sentence speaks of a conductor, and a jacketed cable over {PERCENT[engineering.Rule.ONE]:g} percent is often "
        "refused in the field. A single conductor of Tables 5, 5A and 8 is always rounded, as the counts of Annex C "
        "are.",
        examples=[False],
    )


class Practice(NamedTuple):
    """How Table 1 is read: whether the conduit is a nipple, and whether 0.8 or more stands for a single one."""

    nipple: bool
    round_single: bool


def told_area(area: int, telling: Telling) -> answers.Area:
    """Tell an area of the inch tables: as printed in US units, converted in metric ones."""
    square_inches, unit = area / SCALE, _PRINTED
    if telling.system is UnitSystem.METRIC:
        unit = _PRINTED.counterpart
        square_inches = unit.from_si(_PRINTED.to_si(square_inches))
    return AnyQuantity(square_inches, unit.text)  # type: ignore[return-value]


def load_of(groups: Sequence[engineering.Group], practice: Practice, reserve: int = 0) -> engineering.Load:
    """Give what a set comes to and asks of a bore, as Table 1 is read for it; the reserve is a share of the limit."""
    nipple, round_single = practice
    return engineering.load_of(groups, LIMITS, nipple=nipple, round_single=round_single, reserve=reserve)


def practice_of(given: Filling, kind: str, sheet: Worksheet) -> Practice:
    """Say how Table 1 is read for cables of a kind, the first of them deciding.

    0.8 or more stands for a single conductor of a table, as Annex C counts, and for a cable if asked.
    """
    return Practice(_is_nipple(given.nipple_length, sheet), kind in LISTED_KINDS or bool(given.single_cable_rounding))


def _is_nipple(nipple_length: Length | None, sheet: Worksheet) -> bool:
    """Say whether the 60 percent of Note 4 applies, and note a nipple that is too long for it."""
    if nipple_length is None:
        return False
    if not over(nipple_length.si, NIPPLE_LONGEST.si):
        measured = " The connectors are not counted in it." if sheet.edition == "2023" else ""
        sheet.find(
            Severity.NOTE,
            "nipple_limit",
            f"A nipple of {nipple_length} may be filled to {PERCENT[engineering.Rule.NIPPLE]:g} percent, up to "
            f"{NIPPLE_LONGEST} between boxes.{measured} Ampacity need not be adjusted for the number of conductors in "
            "it.",
            sheet.rule("fill_nipple").beside(sheet.rule("nipple_ampacity")),
            member="nipple_length",
        )
        return True
    sheet.find(
        Severity.CAUTION,
        "too_long_for_a_nipple",
        f"At {nipple_length} this is over {NIPPLE_LONGEST} and counts as a complete run, not as a nipple.",
        sheet.rule("fill_nipple"),
        sheet.tell.given(nipple_length),
        sheet.tell.given(NIPPLE_LONGEST),
        member="nipple_length",
    )
    return False


def smallest_complying(conduit_type: str, load: engineering.Load) -> TradeSize | None:
    """Give the smallest trade size of a type in which a set complies, passes, and leaves the reserve."""
    for size, bore in BORES[conduit_type].items():
        if engineering.fits(load, bore, LIMITS):
            return size
    return None


def caution_pair(area: int, conductors: ConductorSet, bore: engineering.Bore, where: str) -> None:
    """Caution where two are refused though a third could be added under the percentage of three."""
    two, three = engineering.Rule.TWO, engineering.Rule.OVER_TWO
    if engineering.limit_area(bore, two, LIMITS) < area <= engineering.limit_area(bore, three, LIMITS):
        percent, sheet = 100 * area / bore.area, conductors.sheet
        sheet.find(
            Severity.CAUTION,
            "third_would_pass",
            f"The two fill {percent:.2f} percent of {where} and are refused at {PERCENT[two]:g}, yet with a third, "
            f"small enough, the set would be let in at {PERCENT[three]:g}: the percentages do not rise evenly with "
            "the number.",
            sheet.rule("fill"),
            in_percent(percent),
            in_percent(PERCENT[two]),
            member="",
        )


def governing_diameter(groups: Sequence[engineering.Group]) -> float | None:
    """Give the mean diameter [in] of three conductors or cables where three govern the set; else None."""
    falling = sorted(groups, key=_diameter, reverse=True)
    largest = [group.diameter / SCALE for group in falling[:4] for _ in range(min(group.number, 4))]
    return mean_of_larger_three(largest) if acts_as_three(largest) else None


def caution_jam(
    conductors: ConductorSet, load: engineering.Load, conduit: PlacedConduit, *, triplexed: bool = False
) -> float | None:
    """Give the jam ratio; inside the band, name the nearest sizes of the same type outside of it."""
    governing, given = governing_diameter(conductors.groups), conduit.given
    if governing is None:
        return None
    ratio = conduit.bore.diameter / SCALE / governing
    if not in_jam_band(ratio):
        return ratio
    remedy = "Take another conduit size."
    if given.kind == "listed":
        outside = _sizes_outside_the_band(governing, load, given)
        remedy = f"Outside of it: trade size {' or '.join(outside)}." if outside else "No size of the type is better."
    caution_in_jam_band(ratio, conductors.sheet, remedy, triplexed=triplexed)
    return ratio


def _sizes_outside_the_band(governing: float, load: engineering.Load, conduit: ListedConduit) -> list[str]:
    """Give the nearest complying size below and above whose ratio lies outside the jam band."""
    below: list[str] = []
    above: list[str] = []
    smaller = True
    for size, bore in BORES[conduit.type].items():
        if size == conduit.trade_size:
            smaller = False
        elif engineering.fits(load, bore, LIMITS) and not in_jam_band(bore.diameter / SCALE / governing):
            (below if smaller else above).append(size)
    return below[-1:] + above[:1]
