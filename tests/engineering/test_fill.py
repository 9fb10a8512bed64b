"""The fill rules at their edges."""

from __future__ import annotations

from decimal import Decimal

import pytest
from ductrun.engineering.fill import (
    Group,
    Limits,
    Rule,
    assess,
    circle_area,
    limit_rule,
    maximum_count,
    measured_bore,
    quotient,
    whole_conductors,
)

LIMITS = Limits(
    {
        Rule.ONE: Decimal("0.53"),
        Rule.TWO: Decimal("0.31"),
        Rule.OVER_TWO: Decimal("0.40"),
        Rule.NIPPLE: Decimal("0.60"),
    },
    Decimal("0.8"),
)


def group(diameter: str, count: int) -> Group:
    return Group(circle_area(Decimal(diameter)), Decimal(diameter), count)


@pytest.mark.parametrize(
    ("quotient", "whole"), [("3.79999", 3), ("3.8", 4), ("3.81", 4), ("3.0", 3), ("0.8", 1), ("0.7999", 0)]
)
def test_eight_tenths_and_more_count_as_one(quotient: str, whole: int) -> None:
    assert whole_conductors(Decimal(quotient), LIMITS) == whole


def test_the_percentage_follows_the_number_and_the_nipple() -> None:
    assert [limit_rule(count, nipple=False) for count in (1, 2, 3, 40)] == [
        Rule.ONE,
        Rule.TWO,
        Rule.OVER_TWO,
        Rule.OVER_TWO,
    ]
    assert {limit_rule(count, nipple=True) for count in (1, 2, 3)} == {Rule.NIPPLE}


def test_a_sum_that_equals_the_limit_complies() -> None:
    bore = measured_bore(Decimal(10))
    # 0.40 x 10^2 = 4 x 3^2 + 2^2 to the last digit
    assert assess([group("3", 4), group("2", 1)], bore, LIMITS, nipple=False, round_single=False).within
    assert not assess([group("3", 4), group("2.000001", 1)], bore, LIMITS, nipple=False, round_single=False).within


def test_two_that_40_percent_would_hold_are_tested_at_31() -> None:
    bore = measured_bore(Decimal(10))
    area = circle_area(Decimal("4.4"))  # 40 percent holds 2.07, 31 percent 1.60
    assert maximum_count(bore, area, LIMITS, nipple=False, round_single=True)[:2] == (1, Rule.ONE)


def test_a_single_one_rounds_up_only_when_asked() -> None:
    bore = measured_bore(Decimal(10))
    single = [group("7.8", 1)]  # 53 percent holds 0.871
    assert not assess(single, bore, LIMITS, nipple=False, round_single=False).within
    rounded = assess(single, bore, LIMITS, nipple=False, round_single=True)
    assert rounded.within
    assert rounded.rounded_up


def test_rounding_never_helps_unequal_conductors() -> None:
    bore = measured_bore(Decimal(10))
    equal = assess([group("3.2", 4)], bore, LIMITS, nipple=False, round_single=False)  # 40.96 percent, quotient 3.906
    assert equal.within
    assert equal.rounded_up
    unequal = assess([group("3.2", 3), group("3.2000001", 1)], bore, LIMITS, nipple=False, round_single=False)
    assert not unequal.within


def test_lines_of_the_same_conductor_count_together() -> None:
    bore = measured_bore(Decimal(10))
    assert assess([group("3.2", 3), group("3.2", 1)], bore, LIMITS, nipple=False, round_single=False).within


def test_a_nipple_holds_60_percent_whatever_the_number() -> None:
    bore = measured_bore(Decimal(10))
    assert maximum_count(bore, circle_area(Decimal(4)), LIMITS, nipple=True, round_single=True) == (
        3,
        Rule.NIPPLE,
        Decimal("3.75"),
    )
    assert assess([group("7.7", 1)], bore, LIMITS, nipple=True, round_single=False).within
    assert not assess([group("7.8", 1)], bore, LIMITS, nipple=True, round_single=False).within


def test_a_single_one_is_counted_only_as_it_is_rounded() -> None:
    bore = measured_bore(Decimal(10))
    area = circle_area(Decimal("7.8"))  # 53 percent holds 0.871, 60 percent 0.986
    for nipple in (False, True):
        assert maximum_count(bore, area, LIMITS, nipple=nipple, round_single=True)[0] == 1
        assert maximum_count(bore, area, LIMITS, nipple=nipple, round_single=False)[0] == 0


def test_forty_percent_decides_from_three_on() -> None:
    bore = measured_bore(Decimal(10))
    for diameter, count, rule in (("3.65", 3, Rule.OVER_TWO), ("3.9", 2, Rule.TWO), ("4.1", 2, Rule.TWO)):
        assert maximum_count(bore, circle_area(Decimal(diameter)), LIMITS, nipple=False, round_single=True)[:2] == (
            count,
            rule,
        )


def test_a_quotient_of_exactly_eight_tenths_is_not_lost_to_the_digits_of_pi() -> None:
    bore = measured_bore(Decimal(10))
    area = circle_area(Decimal(10)) * Decimal("0.4") / Decimal("3.8")
    assert quotient(bore, Rule.OVER_TWO, area, LIMITS) == Decimal("3.8")
    assert maximum_count(bore, area, LIMITS, nipple=False, round_single=True)[0] == 4


def test_the_fill_reports_the_sum_the_limit_and_the_quotient() -> None:
    bore = measured_bore(Decimal(10))
    mixed = assess([group("2", 2), group("1", 3)], bore, LIMITS, nipple=False, round_single=False)
    assert (mixed.count, mixed.rule, mixed.quotient) == (5, Rule.OVER_TWO, None)
    assert mixed.area == 2 * circle_area(Decimal(2)) + 3 * circle_area(Decimal(1))
    assert mixed.limit_area == Decimal("0.40") * bore.area
    equal = assess([group("2", 5)], bore, LIMITS, nipple=False, round_single=False)
    assert equal.quotient == Decimal(10)
    assert not equal.rounded_up


def test_two_round_up_without_the_option_for_a_single_one() -> None:
    bore = measured_bore(Decimal(10))
    pair = [group("4.1", 2)]  # 31 percent holds 1.844
    rounded = assess(pair, bore, LIMITS, nipple=False, round_single=False)
    assert rounded.within
    assert rounded.rounded_up
    assert maximum_count(bore, circle_area(Decimal("5.7")), LIMITS, nipple=True, round_single=False)[0] == 2  # 1.847


def test_a_set_that_fits_exactly_was_not_rounded() -> None:
    bore = measured_bore(Decimal(10))
    exact = assess([group("2", 10)], bore, LIMITS, nipple=False, round_single=True)
    assert exact.quotient == Decimal(10)
    assert exact.within
    assert not exact.rounded_up
    mixed = assess([group("3", 4), group("2", 1)], bore, LIMITS, nipple=False, round_single=True)
    assert mixed.within
    assert not mixed.rounded_up
