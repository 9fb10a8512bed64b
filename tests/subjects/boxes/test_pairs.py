"""Boxes of entries at random against plain arithmetic over all pairs of them, and as entries are added."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import quantity, result

SIZES = {"1/2": 0.5, "1": 1.0, "1-1/4": 1.25, "2": 2.0, "2-1/2": 2.5, "3": 3.0, "4": 4.0, "6": 6.0}
OUTSIDE = {"1/2": 0.84, "1": 1.315, "1-1/4": 1.66, "2": 2.375, "2-1/2": 2.875, "3": 3.5, "4": 4.5, "6": 6.625}
FACING = {"left": "right", "right": "left", "top": "bottom", "bottom": "top", "back": "front"}
AXIS = {"left": 0, "right": 0, "top": 1, "bottom": 1, "back": 2}
ALONG = {"left": 1, "right": 1, "top": 0, "bottom": 0, "back": 0}
ACROSS = {"left": 2, "right": 2, "top": 2, "bottom": 2, "back": 1}
PLACES = st.tuples(st.sampled_from(list(AXIS)), st.integers(1, 3), st.sampled_from(list(SIZES)))
PULLS = st.lists(st.tuples(PLACES, PLACES, st.booleans()), min_size=1, max_size=6)

Place = tuple[str, int, str]


def asked(pulls: list[tuple[Place, Place, bool]], **more: Any) -> dict[str, Any]:
    entries = [
        {
            "wall": wall,
            "row": row,
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": size},
            "circuits": [f"{number}"],
        }
        for number, (one, other, _) in enumerate(pulls)
        for wall, row, size in (one, other)
    ]
    circuits = [{"name": f"{number}", "spliced": spliced} for number, (_, _, spliced) in enumerate(pulls)]
    return {"voltage": quantity(480, "V"), "entries": entries, "circuits": circuits} | more


def told(request: dict[str, Any]) -> list[float]:
    found = result("pull-box", request)
    dimensions = [found.get(f"least_{name}") for name in ("length", "width", "depth")]
    return [one["least"]["value"] if one else 0.0 for one in dimensions]


def by_pairs(pulls: list[tuple[Place, Place, bool]]) -> list[float]:
    """Go through every two entries: those of one circuit, and those that share a wall and a row."""
    places = [(place, number) for number, (one, other, _) in enumerate(pulls) for place in (one, other)]
    least = [0.0, 0.0, 0.0]

    def raise_to(axis: int, value: float) -> None:
        least[axis] = max(least[axis], value)

    for ((wall, row, size), number), ((facing, line, other), same) in combinations(places, 2):
        if number != same:
            continue
        larger = max(SIZES[size], SIZES[other])
        if facing == FACING[wall] and not pulls[number][2]:
            raise_to(AXIS[wall], 8 * larger)
            continue
        if (wall, row) == (facing, line):
            raise_to(ALONG[wall], OUTSIDE[size] + 6 * larger + OUTSIDE[other])
        for near, level in ((wall, row), (facing, line)):
            beside = sorted(SIZES[one] for (on, at, one), _ in places if (on, at) == (near, level))
            raise_to(AXIS[near], 6 * beside[-1] + sum(beside[:-1]))
    for wall in AXIS:
        rows = [[OUTSIDE[one] for (on, at, one), _ in places if (on, at) == (wall, level)] for level in (1, 2, 3)]
        raise_to(ALONG[wall], max(sum(row) for row in rows))
        raise_to(ACROSS[wall], sum(max(row) for row in rows if row))
    return least


@settings(max_examples=300, deadline=None)
@given(pulls=PULLS)
def test_a_box_is_what_arithmetic_over_all_pairs_says(pulls: list[tuple[Place, Place, bool]]) -> None:
    assert told(asked(pulls)) == pytest.approx(by_pairs(pulls))


@settings(max_examples=150, deadline=None)
@given(pulls=PULLS, one=PLACES, other=PLACES)
def test_an_entry_more_never_shrinks_a_box(pulls: list[tuple[Place, Place, bool]], one: Place, other: Place) -> None:
    before, after = told(asked(pulls)), told(asked([*pulls, (one, other, False)]))
    assert all(more >= less - 1e-9 for less, more in zip(before, after, strict=True))


CABLES = st.tuples(
    st.sampled_from(list(AXIS)),
    st.sampled_from(list(AXIS)),
    st.integers(1, 3),
    st.floats(0.3, 4.0),
    st.sampled_from(["shielded", "nonshielded"]),
)
STRAIGHT, ANGLE = {"shielded": 48, "nonshielded": 32}, {"shielded": 36, "nonshielded": 24}
RADIUS = {"shielded": 12, "nonshielded": 8}


@settings(max_examples=200, deadline=None)
@given(lines=st.lists(CABLES, min_size=1, max_size=5))
def test_above_the_threshold_cables_are_added_up_by_wall(lines: list[tuple[str, str, int, float, str]]) -> None:
    """Entries without a raceway take the thickest of their cables of a wall, all in its one row."""
    entries = [{"wall": wall, "circuits": [f"{n}"]} for n, line in enumerate(lines) for wall in line[:2]]
    circuits = [
        {
            "name": f"{number}",
            "cables": [
                {
                    "count": count,
                    "cable": {"kind": "measured", "diameter": quantity(diameter, "in"), "shielding": shielding},
                }
            ],
        }
        for number, (_, _, count, diameter, shielding) in enumerate(lines)
    ]
    request = {"voltage": quantity(15, "kV"), "entries": entries, "circuits": circuits}
    least = [0.0, 0.0, 0.0]
    for wall, facing, _, diameter, shielding in lines:
        if facing == FACING[wall]:
            least[AXIS[wall]] = max(least[AXIS[wall]], STRAIGHT[shielding] * diameter)
            continue
        if wall == facing:
            least[ALONG[wall]] = max(least[ALONG[wall]], ANGLE[shielding] * diameter)
        for near in (wall, facing):
            through = [one[2:] for one in lines for on in one[:2] if on == near]
            total = sum(count * one for count, one, _ in through)
            needs = [ANGLE[made] * one + total - one for _, one, made in through]
            if near == "back":
                needs = [RADIUS[made] * one for _, one, made in through]
            least[AXIS[near]] = max(least[AXIS[near]], *needs)
    for wall in AXIS:
        takes = [diameter for *walls, _, diameter, _ in lines for on in walls if on == wall]
        least[ALONG[wall]] = max(least[ALONG[wall]], sum(takes))
        least[ACROSS[wall]] = max(least[ACROSS[wall]], *takes, 0.0)
    assert told(request) == pytest.approx(least)
