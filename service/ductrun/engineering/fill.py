"""Conduit fill by NFPA 70, Chapter 9, Table 1 and its notes, exact in whole numbers.

The inch columns of the code decide, and a sum of printed areas may tie with a printed limit, where binary fractions
would choose at random. So lengths and areas are whole numbers of which `SCALE` make an inch or a square inch, shares
and quotients whole numbers of which `WHOLE` make one, and ratios are compared by multiplying crosswise. Two bases stand
side by side, as in the code's own tables: the number of equal conductors comes from the unrounded circle of the inside
diameter (this reproduces Annex C), while a mixed set is held against the percentage column as it is printed.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from enum import StrEnum
from typing import Final, NamedTuple

from ductrun.engineering.rounding import TIE

SCALE: Final = 10**30  # fine enough to hold what is printed and what a caller writes, and a circle beyond any double
WHOLE: Final = 10**12  # a quotient has twelve decimals: the digits of pi beyond them must not decide whether 0.8 is met
_PI: Final = 3_1415926535_8979323846_26433833
_PI_ONE: Final = 10**28  # of which that is pi
# a measured area is not known better than the tolerance of the house, so a tie is a tie
_TIE_AREA: Final = SCALE // round(1 / TIE)
_TIE_COUNT: Final = WHOLE // round(1 / TIE)


class Rule(StrEnum):
    """Which line of Table 1 sets the limit."""

    ONE = "one_conductor"
    TWO = "two_conductors"
    OVER_TWO = "over_two_conductors"
    NIPPLE = "nipple"


class Limits(NamedTuple):
    """What Table 1 and its notes allow: `shares` of the area by rule [1/WHOLE], and the decimal from which one more
    counts, `one_more_from` [1/WHOLE].
    """

    shares: Mapping[Rule, int]
    one_more_from: int


class Group(NamedTuple):
    """So many equal conductors: `area` of one [in2/SCALE], `diameter` of one [in/SCALE], their `number` (count)."""

    area: int
    diameter: int
    number: int


class Bore(NamedTuple):
    """The inside of a conduit: `diameter` [in/SCALE], `area` as printed and the `circle` of the diameter [in2/SCALE],
    and what rules allow as `printed` [in2/SCALE], if it is.
    """

    diameter: int
    area: int
    circle: int
    printed: Mapping[Rule, int]


class Load(NamedTuple):
    """What a set of conductors comes to, and the least bore it asks for; see `load_of`.

    Its `number` (count) and `area` [in2/SCALE], the diameter of the `widest` [in/SCALE]. If all are `equal` it
    complies from `least_circle` [in2/SCALE] on, and from `plain_circle` [in2/SCALE] on without rounding up; if they
    are not, from `least_limit` [in2/SCALE] on. `room` [in2/SCALE] is the limit that leaves the reserve too.
    """

    number: int
    area: int
    widest: int
    rule: Rule
    least_circle: int
    plain_circle: int
    least_limit: int
    room: int
    equal: bool


class Fill(NamedTuple):
    """How a bore takes a set of conductors; see `assess`. `limit_area` is in [in2/SCALE]."""

    limit_area: int
    within: bool
    rounded_up: bool


def circle_area(diameter: int) -> int:
    """Give the area of a circle [in2/SCALE]: pi d^2 / 4.

    Valid for a cable too: an elliptical one counts as the circle of its larger diameter (Note 9).
    Parameters: diameter d [in/SCALE], above 0.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes.
    """
    return _divided(_PI * diameter * diameter, 4 * _PI_ONE * SCALE)


def bore_of(diameter: int, area: int, printed: Mapping[Rule, int]) -> Bore:
    """Give the bore of a row of Table 4, as its columns are printed.

    Parameters: diameter [in/SCALE], area [in2/SCALE], printed limits by rule [in2/SCALE].
    Source: NFPA 70-2023, Chapter 9, Table 4.
    """
    return Bore(diameter, area, circle_area(diameter), printed)


def measured_bore(diameter: int) -> Bore:
    """Give the bore of a conduit that has no row in Table 4, from its measured inside diameter.

    Parameters: diameter [in/SCALE].
    Source: derived.
    """
    circle = circle_area(diameter)
    return Bore(diameter, circle, circle, {})


def limit_area(bore: Bore, rule: Rule, limits: Limits) -> int:
    """Give the area [in2/SCALE] that a rule allows: as Table 4 prints it, else share x A of the bore.

    Parameters: bore, rule, limits.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes; NFPA 70-2023, Chapter 9, Table 4.
    """
    printed = bore.printed.get(rule)
    return _divided(limits.shares[rule] * bore.area, WHOLE) if printed is None else printed


def limit_rule(count: int, *, nipple: bool) -> Rule:
    """Say which percentage of Table 1 applies; a nipple has its own (Note 4).

    Parameters: count of conductors or cables (count), from 1 on, nipple, whether it is one.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes.
    """
    if nipple:
        return Rule.NIPPLE
    return (Rule.ONE, Rule.TWO)[count - 1] if count <= 2 else Rule.OVER_TWO


def quotient(bore: Bore, rule: Rule, area: int, limits: Limits) -> int:
    """Give how many conductors of an area the percentage of a rule holds, with its decimals [1/WHOLE].

    share x pi/4 x ID^2 / area, with the inside diameter in inches and the circle not rounded: of the bases tried,
    this one reproduces the counts of Annex C (one miss in 723 read cells, a likely misprint). Valid for equal
    areas.
    Parameters: bore, rule, area of one [in2/SCALE], limits.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes, Note 7.
    """
    return _divided(limits.shares[rule] * bore.circle, area)


def whole_conductors(decimal_count: int, limits: Limits) -> int:
    """Round a quotient to conductors (count): up from 0.8, else down. Valid for equal areas only.

    Parameters: decimal_count [1/WHOLE], limits.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes, Note 7.
    """
    whole, rest = divmod(decimal_count, WHOLE)
    return whole + 1 if rest >= limits.one_more_from else whole


def maximum_count(bore: Bore, area: int, limits: Limits, *, nipple: bool, round_single: bool) -> tuple[int, Rule, int]:
    """Give the largest number of equal conductors (count), the rule that decided and its quotient [1/WHOLE].

    Three or more by 40 percent, else two by 31, else one by 53, each with the 0.8 rule, in that order: where 40
    percent would hold two, two are still tested at 31. A nipple has 60 percent whatever the number.
    Parameters: bore, area of one [in2/SCALE], limits, nipple, whether it is one, round_single, whether 0.8 or more
    may stand for one (the last sentence of Note 7).
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes, Notes 4 and 7.

    Annex C prints 26 of 12 AWG THHN in a trade 1 EMT:

    >>> bore = measured_bore(1049 * SCALE // 1000)
    >>> limits = Limits({Rule.OVER_TWO: 40 * WHOLE // 100}, 8 * WHOLE // 10)
    >>> maximum_count(bore, 133 * SCALE // 10000, limits, nipple=False, round_single=False)[0]
    26
    """
    if nipple:
        decimal_count = quotient(bore, Rule.NIPPLE, area, limits)
        count = whole_conductors(decimal_count, limits)
        return (count if count > 1 or round_single else decimal_count // WHOLE), Rule.NIPPLE, decimal_count
    for rule, least in ((Rule.OVER_TWO, 3), (Rule.TWO, 2)):
        decimal_count = quotient(bore, rule, area, limits)
        count = whole_conductors(decimal_count, limits)
        if count >= least:
            # at 31 percent this is two: where it would be three, 40 percent has held them already
            return count, rule, decimal_count
    decimal_count = quotient(bore, Rule.ONE, area, limits)
    count = whole_conductors(decimal_count, limits) if round_single else decimal_count // WHOLE
    return min(count, 1), Rule.ONE, decimal_count


def load_of(groups: Sequence[Group], limits: Limits, *, nipple: bool, round_single: bool, reserve: int) -> Load:
    """Give what a set of conductors comes to, and what a bore must have for it by Table 1.

    Equal areas (Note 7): the set complies when the rounded quotient reaches its number, even where the sum of the
    areas then exceeds the percentage. Unequal areas: the sum of the printed areas against the printed limit; a tie
    complies.
    Parameters: groups, limits, nipple, whether it is one, round_single, whether 0.8 or more may stand for one (the
    last sentence of Note 7), reserve of the limit to leave free [1/SCALE], below 1.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes, Notes 4 and 7.
    """
    number = area = widest = 0
    each, equal = groups[0].area, True
    for of_one, diameter, count in groups:
        number += count
        area += of_one * count
        equal = equal and of_one == each
        if diameter > widest:  # noqa: PLR1730  (a call of max for every line takes longer)
            widest = diameter
    rule = limit_rule(number, nipple=nipple)
    room = _divided_up(area * SCALE, SCALE - reserve) if reserve else 0
    if not equal:
        return Load(number, area, widest, rule, 0, 0, area - _TIE_AREA, room, equal=False)
    whole = number * WHOLE
    plain = least = _least_circle(rule, each, whole - _TIE_COUNT, limits)
    if number > 1 or round_single:
        least = _least_circle(rule, each, whole - WHOLE + limits.one_more_from, limits)
    return Load(number, area, widest, rule, least, plain, 0, room, equal=True)


def assess(load: Load, bore: Bore, limits: Limits) -> Fill:
    """Hold a set of conductors against the limit of Table 1 in a bore.

    Whether it passes, and leaves the reserve, is another question (`fits`).
    Parameters: load, bore, limits.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes.
    """
    limit = limit_area(bore, load.rule, limits)
    within = bore.circle >= load.least_circle and limit >= load.least_limit
    return Fill(limit, within, within and bore.circle < load.plain_circle)


def fits(load: Load, bore: Bore, limits: Limits) -> bool:
    """Say whether a set keeps the limit of Table 1, leaves the reserve, and has no conductor as wide as the bore.

    Parameters: load, bore, limits.
    Source: NFPA 70-2023, Chapter 9, Table 1 and its notes; derived for the reserve, which is the caller's.
    """
    if bore.circle < load.least_circle or bore.diameter <= load.widest:
        return False
    limit = limit_area(bore, load.rule, limits)
    return limit >= load.least_limit and limit >= load.room


def _least_circle(rule: Rule, area: int, decimal_count: int, limits: Limits) -> int:
    """Give the least circle [in2/SCALE] whose quotient, rounded to its last decimal, reaches a number [1/WHOLE]."""
    return _divided_up(area * (2 * decimal_count - 1), 2 * limits.shares[rule])


def _divided(number: int, divisor: int) -> int:
    """Divide to the nearest whole number."""
    return (2 * number + divisor) // (2 * divisor)


def _divided_up(number: int, divisor: int) -> int:
    """Divide to the next whole number."""
    return -(-number // divisor)
