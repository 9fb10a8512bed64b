"""Conduit fill by NFPA 70, Chapter 9, Table 1 and its notes.

Areas are in square inches and decimal: the inch columns of the code decide, and a sum of printed areas may tie with a
printed limit, where binary fractions would choose at random. Two bases stand side by side, as in the code's own
tables: the number of equal conductors comes from the unrounded circle of the inside diameter (this reproduces Annex
C), while a mixed set is held against the percentage column as it is printed.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Final

from ductrun.engineering.rounding import TIE

PI: Final = Decimal("3.1415926535897932384626433833")
_TIE: Final = Decimal(repr(TIE))  # in2: a measured area is not known better than this, so a tie is a tie


class Rule(StrEnum):
    """Which line of Table 1 sets the limit."""

    ONE = "one_conductor"
    TWO = "two_conductors"
    OVER_TWO = "over_two_conductors"
    NIPPLE = "nipple"


@dataclass(frozen=True, slots=True)
class Limits:
    """What Table 1 and its notes allow: the share of the area by rule, and the decimal from which one more counts."""

    shares: Mapping[Rule, Decimal]
    one_more_from: Decimal


@dataclass(frozen=True, slots=True)
class Group:
    """So many equal conductors: `area` of one [in2], `diameter` of one [in], `count`."""

    area: Decimal
    diameter: Decimal
    count: int


@dataclass(frozen=True, slots=True)
class Bore:
    """The inside of a conduit: `diameter` [in], `area` [in2], and what rules allow as `printed` [in2], if it is."""

    diameter: Decimal
    area: Decimal
    printed: Mapping[Rule, Decimal]


@dataclass(frozen=True, slots=True)
class Fill:
    """What a set of conductors takes of a bore; see `assess`."""

    count: int
    area: Decimal
    rule: Rule
    limit_area: Decimal
    within: bool
    rounded_up: bool
    quotient: Decimal | None


def circle_area(diameter: Decimal) -> Decimal:
    """Give the area of a circle [in2]: pi d^2 / 4.

    Parameters: diameter [in], above 0. Valid for a cable too: an elliptical one counts as the circle of its larger
    diameter (Chapter 9, Table 1, Note 9).
    """
    return PI * diameter * diameter / 4


def measured_bore(diameter: Decimal) -> Bore:
    """Give the bore of a conduit that has no row in Table 4, from its measured inside diameter [in]."""
    return Bore(diameter, circle_area(diameter), {})


def limit_area(bore: Bore, rule: Rule, limits: Limits) -> Decimal:
    """Give the area [in2] a rule allows: as Table 4 prints it, else the share of the area of the bore."""
    printed = bore.printed.get(rule)
    return limits.shares[rule] * bore.area if printed is None else printed


def limit_rule(count: int, *, nipple: bool) -> Rule:
    """Say which percentage of Table 1 applies to `count` conductors or cables; a nipple has its own (Note 4)."""
    if nipple:
        return Rule.NIPPLE
    return (Rule.ONE, Rule.TWO)[count - 1] if count <= 2 else Rule.OVER_TWO


def quotient(bore: Bore, rule: Rule, area: Decimal, limits: Limits) -> Decimal:
    """Give how many conductors of `area` [in2] the percentage of `rule` holds, with its decimals.

    share x pi/4 x ID^2 / area, with the inside diameter in inches and the circle not rounded: of the bases tried, this
    one reproduces the counts of Annex C (one miss in 723 read cells, a likely misprint).
    """
    # twelve decimals: the digits of pi beyond them must not decide whether 0.8 is reached
    return round(limits.shares[rule] * circle_area(bore.diameter) / area, 12)


def whole_conductors(decimal_count: Decimal, limits: Limits) -> int:
    """Round a quotient to conductors: up from 0.8, else down (Chapter 9, Table 1, Note 7; equal areas only)."""
    whole = int(decimal_count)
    return whole + 1 if decimal_count - whole >= limits.one_more_from else whole


def maximum_count(
    bore: Bore, area: Decimal, limits: Limits, *, nipple: bool, round_single: bool
) -> tuple[int, Rule, Decimal]:
    """Give the largest number of equal conductors, the rule that decided and its quotient.

    Three or more by 40 percent, else two by 31, else one by 53, each with the 0.8 rule, in that order: where 40
    percent would hold two, two are still tested at 31. A nipple has 60 percent whatever the number. `round_single`
    lets 0.8 or more stand for one (the last sentence of Note 7).
    """
    if nipple:
        decimal_count = quotient(bore, Rule.NIPPLE, area, limits)
        count = whole_conductors(decimal_count, limits)
        return (count if count > 1 or round_single else int(decimal_count)), Rule.NIPPLE, decimal_count
    for rule, least in ((Rule.OVER_TWO, 3), (Rule.TWO, 2)):
        decimal_count = quotient(bore, rule, area, limits)
        count = whole_conductors(decimal_count, limits)
        if count >= least:
            # at 31 percent this is two: where it would be three, 40 percent has held them already
            return count, rule, decimal_count
    decimal_count = quotient(bore, Rule.ONE, area, limits)
    count = whole_conductors(decimal_count, limits) if round_single else int(decimal_count)
    return min(count, 1), Rule.ONE, decimal_count


def assess(groups: Sequence[Group], bore: Bore, limits: Limits, *, nipple: bool, round_single: bool) -> Fill:
    """Hold a set of conductors against the limit of Table 1.

    Equal areas (Note 7): the set complies when the rounded quotient reaches its number, even where the sum of the
    areas then exceeds the percentage. Unequal areas: the sum of the printed areas against the printed limit; a tie
    complies. `round_single` lets 0.8 or more stand for one (the last sentence of Note 7).
    """
    count = sum(group.count for group in groups)
    total = sum((group.area * group.count for group in groups), Decimal(0))
    rule = limit_rule(count, nipple=nipple)
    limit = limit_area(bore, rule, limits)
    if len({group.area for group in groups}) > 1:
        return Fill(count, total, rule, limit, total <= limit + _TIE, rounded_up=False, quotient=None)
    decimal_count = quotient(bore, rule, groups[0].area, limits)
    plain = decimal_count + _TIE >= count
    rounded = whole_conductors(decimal_count, limits) >= count and (count > 1 or round_single)
    return Fill(count, total, rule, limit, plain or rounded, rounded and not plain, decimal_count)
