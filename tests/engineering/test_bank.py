"""One geometry of a duct bank, checked by hand and against polygons counted on a grid."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from ductrun.engineering import bank
from ductrun.engineering.bank import Alignment, Tier
from hypothesis import given
from hypothesis import strategies as st

COUNTS = st.lists(st.integers(min_value=1, max_value=8), min_size=1, max_size=6)
GAPS = st.floats(min_value=0.5, max_value=6)
COVERS = st.floats(min_value=2, max_value=12)


def alike(ducts: int, diameter: float, signal: int = 0) -> Tier:
    return Tier((diameter,) * ducts, signal)


def placed(
    tiers: list[Tier],
    horizontal: float = 2.0,
    vertical: float = 2.0,
    alignment: Alignment = Alignment.CENTERED,
    *,
    center_to_center: bool = False,
) -> bank.Bank:
    return bank.place(tiers, horizontal, vertical, 4.0, alignment, center_to_center=center_to_center)


def test_two_tiers_of_three_trade_4_ducts_by_hand() -> None:
    found = placed([alike(3, 4.5), alike(2, 4.5)])
    assert (found.width, found.height) == (17.5, 11.0)
    assert [(duct.x, duct.y) for duct in found.ducts] == [
        (2.25, 2.25),
        (8.75, 2.25),
        (15.25, 2.25),
        (5.5, 8.75),
        (12.0, 8.75),
    ]
    assert found.counts == [3, 2]
    assert bank.duct_area(found) == pytest.approx(5 * math.pi / 4 * 4.5**2)
    assert bank.smallest_gap(found) == 2.0


@pytest.mark.parametrize(("alignment", "first"), [("left", 2.25), ("right", 8.75), ("centered", 5.5)])
def test_a_narrow_tier_stands_left_right_or_in_the_middle(alignment: str, first: float) -> None:
    found = placed([alike(3, 4.5), alike(2, 4.5)], alignment=Alignment(alignment))
    assert found.ducts[3].x == first


def test_distances_between_centers_give_the_same_bank() -> None:
    tiers = [alike(3, 4.5), alike(2, 4.5)]
    assert placed(tiers, 6.5, 6.5, center_to_center=True) == placed(tiers, 2.0, 2.0)


def test_a_signal_duct_stands_off_the_power_ducts() -> None:
    found = placed([alike(3, 4.5, 1)])
    assert [duct.signal for duct in found.ducts] == [False, False, True]
    assert found.width == 3 * 4.5 + 2.0 + 4.0


@pytest.mark.parametrize(
    ("below", "above", "gap"),
    [
        ((2, 0), (2, 2), 4.0),
        ((2, 0), (2, 1), 4.0),
        ((2, 1), (2, 2), 4.0),
        ((3, 1), (2, 1), 4.0),
        ((2, 1), (2, 1), 2.0),
        ((3, 3), (2, 2), 2.0),
        ((3, 0), (2, 0), 2.0),
    ],
)
def test_a_tier_stands_off_the_one_below_unless_like_lies_on_like(
    below: tuple[int, int], above: tuple[int, int], gap: float
) -> None:
    tiers = [alike(ducts, 4.5, signal) for ducts, signal in (below, above)]
    assert placed(tiers).height == 2 * 4.5 + gap


def test_tiers_of_different_conduit_keep_their_own_diameters() -> None:
    found = placed([alike(3, 4.5), alike(4, 2.375)])
    assert found.tier_widths == (17.5, 15.5)
    assert found.height == 4.5 + 2.0 + 2.375
    assert found.ducts[3].x == 1.0 + 2.375 / 2


def test_a_stepped_pour_of_three_over_one_by_hand() -> None:
    found = placed([alike(3, 4.0), alike(1, 4.0)])
    # 3 in of cover: 22 in wide up to 7 + 3 above the bottom of the pour, then 10 in wide for 6 in more
    assert bank.stepped_area(found, 3, 3, 3) == pytest.approx(22 * 10 + 10 * 6)
    assert bank.rectangle_area(found, 3, 3, 3) == pytest.approx(22 * 16)


@given(count=st.integers(1, 8), tiers=st.integers(1, 6), gap=GAPS, cover=COVERS)
def test_a_stepped_bank_of_equal_tiers_is_its_rectangle(count: int, tiers: int, gap: float, cover: float) -> None:
    found = placed([alike(count, 4.5)] * tiers, gap, gap)
    assert bank.stepped_area(found, cover, cover, cover) == pytest.approx(
        bank.rectangle_area(found, cover, cover, cover)
    )


@given(counts=COUNTS, gap=GAPS, cover=COVERS)
def test_a_stepped_pour_holds_its_ducts_and_fits_its_rectangle(counts: list[int], gap: float, cover: float) -> None:
    found = placed([alike(count, 3.5) for count in counts], gap, gap)
    stepped = bank.stepped_area(found, cover, cover, cover)
    assert bank.duct_area(found) < stepped <= bank.rectangle_area(found, cover, cover, cover) * (1 + 1e-9)


@given(counts=COUNTS, gap=GAPS, alignment=st.sampled_from(Alignment))
def test_ducts_never_overlap_and_lie_within_the_bank(counts: list[int], gap: float, alignment: Alignment) -> None:
    found = placed([alike(count, 3.5) for count in counts], gap, gap, alignment)
    for index, one in enumerate(found.ducts):
        assert one.diameter / 2 - 1e-9 <= one.x <= found.width - one.diameter / 2 + 1e-9
        for other in found.ducts[index + 1 :]:
            assert math.hypot(one.x - other.x, one.y - other.y) >= one.diameter + gap - 1e-9


def test_a_single_duct_has_no_neighbor() -> None:
    assert bank.smallest_gap(placed([alike(1, 4.5)])) == math.inf


@pytest.mark.parametrize(("horizontal", "vertical", "smallest"), [(1.5, 3.0, 1.5), (3.0, 1.25, 1.25)])
def test_the_smallest_gap_is_looked_for_both_ways(horizontal: float, vertical: float, smallest: float) -> None:
    found = placed([alike(3, 4.5), alike(2, 4.5), alike(2, 4.5)], horizontal, vertical)
    assert bank.smallest_gap(found) == pytest.approx(smallest)


def gaps_looked_for(found: bank.Bank) -> tuple[float, float, float]:
    """Look for the gaps in the ducts as they were placed."""
    across, between, mixed = [math.inf], [math.inf], [math.inf]
    for one, other in pairwise(found.ducts):
        if one.tier == other.tier:
            gap = other.x - one.x - (one.diameter + other.diameter) / 2
            (across if one.signal == other.signal else mixed).append(gap)
    tiers = [[duct for duct in found.ducts if duct.tier == tier] for tier in range(len(found.counts))]
    for number, (below, above) in enumerate(pairwise(tiers)):
        gap = found.tier_bottoms[number + 1] - found.tier_tops[number]
        signals = {duct.signal for duct in (*below, *above)}
        same = [(duct.diameter, duct.signal) for duct in below] == [(duct.diameter, duct.signal) for duct in above]
        (between if same or len(signals) == 1 else mixed).append(gap)
    return min(across), min(between), min(mixed)


TIERS = st.lists(
    st.tuples(st.integers(1, 6), st.sampled_from([2.375, 4.5]), st.integers(0, 6)).map(
        lambda tier: alike(tier[0], tier[1], min(tier[0], tier[2]))
    ),
    min_size=1,
    max_size=6,
)


@given(tiers=TIERS, across=GAPS, between=GAPS, centers=st.booleans())
def test_the_gaps_told_are_those_between_the_ducts_as_placed(
    tiers: list[Tier], across: float, between: float, centers: bool
) -> None:
    found = placed(tiers, across + 4.5 * centers, between + 4.5 * centers, center_to_center=centers)
    assert found.gaps == pytest.approx(gaps_looked_for(found), abs=1e-9)


def test_ducts_of_two_sizes_in_a_tier_stand_on_one_level() -> None:
    """Derived: 4.5 + 2 + 4.5 + 2 + 2.375 in wide, as high as the large ones; the tier above stands 2 in over those."""
    found = placed([Tier((4.5, 4.5, 2.375)), Tier((2.375,))])
    assert found.width == pytest.approx(15.375)
    assert [(duct.x, duct.y) for duct in found.ducts[:3]] == [(2.25, 2.25), (8.75, 2.25), (14.1875, 1.1875)]
    assert (found.tier_bottoms, found.tier_tops) == ((0.0, 6.5), (4.5, 8.875))
    assert found.gaps == (2.0, 2.0, math.inf)


def test_centers_of_ducts_of_two_sizes_leave_the_clear_gap_between_them() -> None:
    """Derived: 7 in between centers less half of 4.5 and of 2.375 in are 3.5625 in; between two of 4.5 in 2.5 in."""
    found = placed([Tier((4.5, 4.5, 2.375))], 7.0, 7.0, center_to_center=True)
    assert found.gaps.across == pytest.approx(2.5)
    assert found.width == pytest.approx(4.5 + 2.5 + 4.5 + 3.5625 + 2.375)


def test_the_same_mix_in_other_sizes_does_not_lie_like_on_like() -> None:
    assert placed([alike(2, 4.5, 1), alike(2, 2.375, 1)]).tier_bottoms[1] == 4.5 + 4.0


def test_envelopes_of_three_over_one_by_hand() -> None:
    found = placed([alike(3, 4.0), alike(1, 4.0)])
    concrete = bank.Concrete(3, 2, 3)
    formed, stepped = (bank.encased(found, concrete, stepped=stepped) for stepped in (False, True))
    assert (formed.width, formed.height, formed.area) == (22, 15, 22 * 15)
    assert stepped.area == pytest.approx(22 * 9 + 10 * 6)
    assert (stepped.width, stepped.height) == (22, 15)
    in_trench = bank.trench_formed(found, concrete, 30)
    assert (in_trench.width, in_trench.height, in_trench.area, in_trench.trench_formed) == (30, 15, 450, True)
    alone = bank.bare(found)
    assert (alone.width, alone.height, alone.concrete) == (16, 10, None)
    assert alone.area == alone.duct_area == formed.duct_area == pytest.approx(4 * math.pi / 4 * 16)
