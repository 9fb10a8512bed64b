"""The outline of a pour has the area and the size that its envelope has."""

from __future__ import annotations

import pytest
from ductrun.engineering.bank import Alignment, Concrete, Envelope, Tier, bare, encased, place, trench_formed
from ductrun.engineering.outline import Slab, slabs, stepped
from hypothesis import given
from hypothesis import strategies as st

COVER = Concrete(3.0, 3.0, 3.0)


def poured(*tiers: int, step: bool, alignment: Alignment = Alignment.CENTERED) -> Envelope:
    placed = place([Tier((4.5,) * ducts) for ducts in tiers], 2.0, 2.0, 2.0, alignment, center_to_center=False)
    return encased(placed, COVER, stepped=step)


def test_only_a_formed_pour_that_leaves_something_out_steps() -> None:
    assert stepped(poured(3, 1, step=True))
    assert not stepped(poured(3, 3, step=True))
    assert not stepped(poured(3, 1, step=False))
    bank = poured(3, 1, step=False).bank
    assert not stepped(bare(bank))
    assert not stepped(trench_formed(bank, COVER, 40.0, 0.5))


def test_a_pour_that_does_not_step_is_one_slab() -> None:
    # width 3 x 4.5 + 2 x 2, height 2 x 4.5 + 2, and 3 in all round (derived)
    assert slabs(poured(3, 3, step=False)) == [Slab(0.0, 17.0, -3.0, 20.5)]
    assert slabs(bare(poured(3, 3, step=False).bank)) == [Slab(0.0, 11.0, 0.0, 17.5)]


def test_a_pour_steps_where_the_cover_of_the_wider_tier_ends() -> None:
    # the bottom tier ends at 3 + 4.5 and its cover 3 above that; the duct above stands at the left (derived)
    found = slabs(poured(3, 1, step=True, alignment=Alignment.LEFT))
    assert found[0][:3] == (0.0, 6.5, -3.0)
    assert found[0].right == 20.5
    assert found[-1] == Slab(10.5, 17.0, -3.0, 7.5)


@given(
    tiers=st.lists(st.tuples(st.integers(1, 9), st.sampled_from([2.0, 4.5, 6.6])), min_size=1, max_size=6),
    gaps=st.tuples(st.floats(0.0, 9.0), st.floats(0.0, 9.0)),
    cover=st.tuples(st.floats(0.5, 6.0), st.floats(0.5, 6.0), st.floats(0.0, 6.0)),
    alignment=st.sampled_from(list(Alignment)),
    step=st.booleans(),
)
def test_slabs_add_up_to_the_area_of_the_envelope(
    tiers: list[tuple[int, float]],
    gaps: tuple[float, float],
    cover: tuple[float, float, float],
    alignment: Alignment,
    step: bool,
) -> None:
    rows = [Tier((diameter,) * ducts) for ducts, diameter in tiers]
    envelope = encased(place(rows, *gaps, 4.0, alignment, center_to_center=False), Concrete(*cover), stepped=step)
    found = slabs(envelope)
    assert sum((one.high - one.low) * (one.right - one.left) for one in found) == pytest.approx(envelope.area)
    assert max(one.high for one in found) == pytest.approx(envelope.height)
    assert max(one.right for one in found) - min(one.left for one in found) == pytest.approx(envelope.width)
