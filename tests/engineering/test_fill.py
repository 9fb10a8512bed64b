"""The fill rules at their edges."""

from __future__ import annotations

from decimal import Decimal

import pytest
from ductrun.engineering.fill import (
    Group,
    Rule,
    assess,
    circle_area,
    limit_rule,
    maximum_count,
    measured_bore,
    whole_conductors,
)


def group(diameter: str, count: int) -> Group:
    return Group(circle_area(Decimal(diameter)), Decimal(diameter), count)


@pytest.mark.parametrize(
    ("quotient", "whole"), [("3.79999", 3), ("3.8", 4), ("3.81", 4), ("3.0", 3), ("0.8", 1), ("0.7999", 0)]
)
def test_eight_tenths_and_more_count_as_one(quotient: str, whole: int) -> None:
    assert whole_conductors(Decimal(quotient)) == whole


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
    assert assess([group("3", 4), group("2", 1)], bore, nipple=False, round_single=False).within
    assert not assess([group("3", 4), group("2.000001", 1)], bore, nipple=False, round_single=False).within


def test_two_that_40_percent_would_hold_are_tested_at_31() -> None:
    bore = measured_bore(Decimal(10))
    area = circle_area(Decimal("4.4"))  # 40 percent holds 2.07, 31 percent 1.60
    assert maximum_count(bore, area, nipple=False)[:2] == (1, Rule.ONE)


def test_a_single_one_rounds_up_only_when_asked() -> None:
    bore = measured_bore(Decimal(10))
    single = [group("7.8", 1)]  # 53 percent holds 0.871
    assert not assess(single, bore, nipple=False, round_single=False).within
    rounded = assess(single, bore, nipple=False, round_single=True)
    assert rounded.within
    assert rounded.rounded_up


def test_rounding_never_helps_unequal_conductors() -> None:
    bore = measured_bore(Decimal(10))
    equal = assess([group("3.2", 4)], bore, nipple=False, round_single=False)  # 40.96 percent, quotient 3.906
    assert equal.within
    assert equal.rounded_up
    unequal = assess([group("3.2", 3), group("3.2000001", 1)], bore, nipple=False, round_single=False)
    assert not unequal.within


def test_lines_of_the_same_conductor_count_together() -> None:
    bore = measured_bore(Decimal(10))
    assert assess([group("3.2", 3), group("3.2", 1)], bore, nipple=False, round_single=False).within


def test_a_nipple_holds_60_percent_whatever_the_number() -> None:
    bore = measured_bore(Decimal(10))
    assert maximum_count(bore, circle_area(Decimal(4)), nipple=True) == (3, Rule.NIPPLE, Decimal("3.75"))
    assert assess([group("7.7", 1)], bore, nipple=True, round_single=False).within
    assert not assess([group("7.8", 1)], bore, nipple=True, round_single=False).within
