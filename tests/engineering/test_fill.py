"""The fill rules at their edges."""

from __future__ import annotations

from fractions import Fraction
from math import pi

import pytest
from ductrun.engineering.fill import (
    SCALE,
    WHOLE,
    Bore,
    Fill,
    Group,
    Limits,
    Load,
    Rule,
    assess,
    bore_of,
    circle_area,
    fits,
    limit_area,
    limit_rule,
    load_of,
    maximum_count,
    measured_bore,
    quotient,
    whole_conductors,
)


def exact(written: str, one: int = SCALE) -> int:
    """Give a decimal in the whole numbers of fill."""
    number = Fraction(written) * one
    assert number.denominator == 1
    return number.numerator


def count(written: str) -> int:
    return exact(written, WHOLE)


LIMITS = Limits(
    {Rule.ONE: count("0.53"), Rule.TWO: count("0.31"), Rule.OVER_TWO: count("0.40"), Rule.NIPPLE: count("0.60")},
    count("0.8"),
)
TEN = measured_bore(exact("10"))


def group(diameter: str, number: int) -> Group:
    return Group(circle_area(exact(diameter)), exact(diameter), number)


def of_area(area: str, number: int) -> Group:
    return Group(exact(area), exact("0.1"), number)


def load(*groups: Group, nipple: bool = False, round_single: bool = False, reserve: str = "0") -> Load:
    return load_of(groups, LIMITS, nipple=nipple, round_single=round_single, reserve=exact(reserve))


def held(*groups: Group, bore: Bore = TEN, nipple: bool = False, round_single: bool = False) -> Fill:
    return assess(load(*groups, nipple=nipple, round_single=round_single), bore, LIMITS)


def most(area: int, bore: Bore = TEN, *, nipple: bool = False, round_single: bool = True) -> tuple[int, Rule, int]:
    return maximum_count(bore, area, LIMITS, nipple=nipple, round_single=round_single)


def test_a_circle_is_exact_beyond_the_digits_of_a_double() -> None:
    assert circle_area(exact("2")) == 3141592653589793238462643383300
    assert circle_area(exact("1")) == 785398163397448309615660845825
    assert circle_area(exact("0.111")) / SCALE == pytest.approx(pi * 0.111**2 / 4, rel=1e-15)


@pytest.mark.parametrize(
    ("decimals", "whole"),
    [("3.799999999999", 3), ("3.8", 4), ("3.81", 4), ("3.0", 3), ("2.999999999999", 3), ("0.8", 1), ("0.7999", 0)],
)
def test_eight_tenths_and_more_count_as_one(decimals: str, whole: int) -> None:
    assert whole_conductors(count(decimals), LIMITS) == whole


def test_the_percentage_follows_the_number_and_the_nipple() -> None:
    assert [limit_rule(number, nipple=False) for number in (1, 2, 3, 40)] == [
        Rule.ONE,
        Rule.TWO,
        Rule.OVER_TWO,
        Rule.OVER_TWO,
    ]
    assert {limit_rule(number, nipple=True) for number in (1, 2, 3)} == {Rule.NIPPLE}


def test_a_printed_limit_stands_before_the_share_of_the_area() -> None:
    bore = bore_of(exact("1.029"), exact("0.832"), {Rule.OVER_TWO: exact("0.333")})
    assert bore.circle == circle_area(exact("1.029")) != bore.area
    assert limit_area(bore, Rule.OVER_TWO, LIMITS) == exact("0.333")
    assert limit_area(bore, Rule.ONE, LIMITS) == exact("0.44096")


def test_a_sum_that_equals_the_limit_complies() -> None:
    # 0.40 x 10^2 = 4 x 3^2 + 2^2 to the last digit
    assert held(group("3", 4), group("2", 1)).within
    assert not held(group("3", 4), group("2.000001", 1)).within


def test_a_sum_of_printed_areas_ties_with_the_printed_column_and_the_next_digit_is_over() -> None:
    bore = bore_of(exact("1.029"), exact("0.832"), {Rule.OVER_TWO: exact("0.333")})
    assert held(of_area("0.1158", 2), of_area("0.0507", 2), bore=bore) == Fill(
        exact("0.333"), within=True, rounded_up=False
    )
    assert not held(of_area("0.1158", 2), of_area("0.0507", 1), of_area("0.0508", 1), bore=bore).within


@pytest.mark.parametrize(("over", "within"), [("0.000000001", True), ("0.0000000011", False)])
def test_a_sum_over_the_limit_by_no_more_than_the_tolerance_ties(over: str, within: bool) -> None:
    bore = bore_of(exact("1.029"), exact("0.832"), {Rule.OVER_TWO: exact("0.333")})
    last = Group(exact("0.133") + exact(over), exact("0.1"), 1)
    assert held(of_area("0.1", 2), last, bore=bore).within is within


@pytest.mark.parametrize(("short", "plain"), [("0.000000001", True), ("0.0000000011", False)])
def test_a_quotient_short_of_the_number_by_no_more_than_the_tolerance_is_not_rounded(short: str, plain: bool) -> None:
    area = LIMITS.shares[Rule.ONE] * TEN.circle // (WHOLE - exact(short, 10**13) // 10)
    single = Group(area, exact("0.1"), 1)
    assert held(single).within is plain
    assert held(single, round_single=True).rounded_up is not plain


def test_two_that_40_percent_would_hold_are_tested_at_31() -> None:
    area = circle_area(exact("4.4"))  # 40 percent holds 2.07, 31 percent 1.60
    assert most(area)[:2] == (1, Rule.ONE)


def test_a_single_one_rounds_up_only_when_asked() -> None:
    single = group("7.8", 1)  # 53 percent holds 0.871
    assert not held(single).within
    assert not held(single).rounded_up
    rounded = held(single, round_single=True)
    assert rounded.within
    assert rounded.rounded_up


def test_rounding_never_helps_unequal_conductors() -> None:
    equal = held(group("3.2", 4))  # 40.96 percent, quotient 3.906
    assert equal.within
    assert equal.rounded_up
    assert not held(group("3.2", 3), group("3.2000001", 1)).within


def test_lines_of_the_same_conductor_count_together() -> None:
    assert held(group("3.2", 3), group("3.2", 1)).within


def test_one_line_that_differs_makes_a_set_unequal_wherever_it_stands() -> None:
    same, other = group("3.2", 1), group("3.1", 1)
    for lines in ((other, same, same), (same, other, same), (same, same, other)):
        assert not load(*lines).equal
    assert load(same, same, same).equal


def test_a_nipple_holds_60_percent_whatever_the_number() -> None:
    assert most(circle_area(exact("4")), nipple=True) == (3, Rule.NIPPLE, count("3.75"))
    assert held(group("7.7", 1), nipple=True).within
    assert not held(group("7.8", 1), nipple=True).within


def test_a_single_one_is_counted_only_as_it_is_rounded() -> None:
    area = circle_area(exact("7.8"))  # 53 percent holds 0.871, 60 percent 0.986
    for nipple in (False, True):
        assert most(area, nipple=nipple)[0] == 1
        assert most(area, nipple=nipple, round_single=False)[0] == 0


def test_no_more_than_one_is_counted_by_the_percentage_of_one() -> None:
    area = TEN.circle * 10 // 42  # 53 percent holds 2.23, 31 percent 1.30, 40 percent 1.68
    assert most(area)[:2] == (1, Rule.ONE)
    assert most(area, round_single=False)[:2] == (1, Rule.ONE)


def test_forty_percent_decides_from_three_on() -> None:
    for diameter, number, rule in (("3.65", 3, Rule.OVER_TWO), ("3.9", 2, Rule.TWO), ("4.1", 2, Rule.TWO)):
        assert most(circle_area(exact(diameter)))[:2] == (number, rule)


@pytest.mark.parametrize(("rule", "number"), [(Rule.OVER_TWO, 4), (Rule.OVER_TWO, 3), (Rule.TWO, 2), (Rule.ONE, 1)])
@pytest.mark.parametrize(("more", "reached"), [(-1, True), (0, True), (1, True), (10**20, False)])
def test_eight_tenths_are_met_to_the_twelfth_decimal_and_not_beyond(
    rule: Rule, number: int, more: int, reached: bool
) -> None:
    """Areas of which a limit holds so many and eight tenths, but for what no decimal holds; counted and held alike."""
    area = TEN.circle * LIMITS.shares[rule] * 10 // (WHOLE * (10 * number - 2)) + more
    assert (quotient(TEN, rule, area, LIMITS) == count(f"{number - 1}.8")) is reached
    fill = held(Group(area, exact("0.1"), number), round_single=True)
    assert (fill.within, fill.rounded_up) == (reached, reached)
    assert (most(area)[:2] == (number, rule)) is reached


def test_a_tie_of_the_quotient_is_that_of_its_rounded_decimals() -> None:
    """Half a unit of the twelfth decimal below eight tenths still rounds to them; a hair less does not."""
    bore = Bore(exact("1"), exact("1"), (2 * count("2.8") - 1) * 10**15, {})
    one_more = Limits({Rule.OVER_TWO: WHOLE}, LIMITS.one_more_from)
    area = 2 * 10**15 * WHOLE
    for circle, reached in ((bore.circle, True), (bore.circle - 1, False)):
        tried = bore._replace(circle=circle)
        assert (quotient(tried, Rule.OVER_TWO, area, one_more) == count("2.8")) is reached
        asked = load_of([Group(area, 1, 3)], one_more, nipple=False, round_single=False, reserve=0)
        assert assess(asked, tried, one_more).within is reached


def test_the_load_has_the_number_the_sum_the_widest_and_the_rule() -> None:
    mixed = load(group("2", 2), group("3", 1), group("1", 3))
    assert (mixed.number, mixed.rule, mixed.equal) == (6, Rule.OVER_TWO, False)
    assert mixed.area == 2 * circle_area(exact("2")) + circle_area(exact("3")) + 3 * circle_area(exact("1"))
    assert mixed.widest == exact("3")
    assert assess(mixed, TEN, LIMITS).limit_area * WHOLE == count("0.40") * TEN.area


def test_two_round_up_without_the_option_for_a_single_one() -> None:
    rounded = held(group("4.1", 2))  # 31 percent holds 1.844
    assert rounded.within
    assert rounded.rounded_up
    assert most(circle_area(exact("5.7")), nipple=True, round_single=False)[0] == 2  # 1.847


def test_a_set_that_fits_exactly_was_not_rounded() -> None:
    ten = group("2", 10)
    assert quotient(TEN, Rule.OVER_TWO, ten.area, LIMITS) == count("10")
    assert held(ten, round_single=True) == Fill(limit_area(TEN, Rule.OVER_TWO, LIMITS), within=True, rounded_up=False)
    mixed = held(group("3", 4), group("2", 1), round_single=True)
    assert mixed.within
    assert not mixed.rounded_up


TWO_INCH = bore_of(exact("2.067"), exact("3.356"), {Rule.ONE: exact("1.778"), Rule.OVER_TWO: exact("1.342")})


def fitting(*lines: Group, **more: str | bool) -> bool:
    return fits(load(*lines, **more), TWO_INCH, LIMITS)  # type: ignore[arg-type]


def test_a_set_fits_where_it_keeps_the_limit_and_is_narrower_than_the_bore() -> None:
    assert fitting(of_area("0.5", 2), of_area("0.342", 1))
    assert not fitting(of_area("0.5", 2), of_area("0.3421", 1))
    wide = Group(exact("0.342"), exact("2.067"), 1)
    assert not fitting(of_area("0.5", 2), wide)
    assert fitting(of_area("0.5", 2), wide._replace(diameter=exact("2.066999999999")))


def test_equal_conductors_fit_by_the_circle_and_not_by_the_printed_column() -> None:
    """40 percent of the circle of 2.067 in is 1.34225 in2, printed as 1.342; 3.8 times 0.3532 is 1.34216."""
    assert fitting(of_area("0.3532", 4))
    assert not fitting(of_area("0.3533", 4))


def test_the_reserve_is_a_share_of_the_limit_and_a_tie_leaves_it() -> None:
    """A quarter of 1.342 kept free leaves 1.0065."""
    assert fitting(of_area("0.3", 3), of_area("0.1065", 1), reserve="0.25")
    assert not fitting(of_area("0.3", 3), of_area("0.1066", 1), reserve="0.25")
    assert fitting(of_area("0.3", 3), of_area("0.1066", 1))


def test_the_reserve_is_not_left_by_rounding_up() -> None:
    assert fitting(of_area("0.3532", 4))
    assert not fitting(of_area("0.3532", 4), reserve="0.000000000001")
    assert fitting(of_area("0.3355", 4), reserve="0.000000000001") is False
    assert fitting(of_area("0.3354", 4), reserve="0.000000000001")


def test_the_least_that_equal_conductors_ask_for_is_enough_and_a_hair_less_is_not() -> None:
    equal = load(group("3.2", 4))
    for circle, within, rounded_up in (
        (equal.least_circle, True, True),
        (equal.least_circle - 1, False, False),
        (equal.plain_circle, True, False),
        (equal.plain_circle - 1, True, True),
    ):
        bore = TEN._replace(circle=circle)
        assert assess(equal, bore, LIMITS)[1:] == (within, rounded_up)
        assert fits(equal, bore, LIMITS) is within
        assert (quotient(bore, Rule.OVER_TWO, group("3.2", 1).area, LIMITS) >= count("3.8")) is within


def test_the_least_that_unequal_conductors_ask_for_is_enough_and_a_hair_less_is_not() -> None:
    plain, reserved = (load(group("3", 4), group("2", 1), reserve=reserve) for reserve in ("0", "0.25"))
    assert (reserved.room - 1) * 3 < reserved.area * 4 <= reserved.room * 3
    for asked, limit in ((plain, plain.least_limit), (reserved, reserved.room)):
        for printed, enough in ((limit, True), (limit - 1, False)):
            assert fits(asked, TEN._replace(printed={Rule.OVER_TWO: printed}), LIMITS) is enough
    for printed, enough in ((plain.least_limit, True), (plain.least_limit - 1, False)):
        assert assess(plain, TEN._replace(printed={Rule.OVER_TWO: printed}), LIMITS).within is enough
