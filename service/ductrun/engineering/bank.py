"""One geometry of a duct bank: ducts placed by tiers, from which spacers, concrete, flotation and trench are read.

The origin is the lower left corner of the bank without its cover; x runs to the right, y upward, all [m]. A tier stands
on the one below it with the vertical separation between them; tiers of different width are centered or justified.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import StrEnum
from itertools import pairwise, repeat
from typing import NamedTuple

from ductrun.engineering.trench import section_area


class Alignment(StrEnum):
    """How tiers of different width stand on each other."""

    CENTERED = "centered"
    LEFT = "left"
    RIGHT = "right"


class Duct(NamedTuple):
    """A duct of the bank: its center at `x` [m] from the left and `y` [m] from the bottom, outside `diameter` [m], its
    `tier` (index) from the bottom, and whether it carries signals.
    """

    x: float
    y: float
    diameter: float
    tier: int
    signal: bool


class Tier(NamedTuple):
    """One tier to place: the outside `diameters` [m] of its ducts from the left, the last `signal` (count) for signals.

    Its ducts stand on one level, so that it is as high as its largest duct.
    """

    diameters: tuple[float, ...]
    signal: int = 0

    @property
    def height(self) -> float:
        """Height [m] of the tier."""
        return max(self.diameters)


class Gaps(NamedTuple):
    """Smallest clear gaps of a bank, infinite where there is none.

    `across` [m] between like ducts beside each other, `between` [m] like tiers, and `power_signal` [m] between a
    power and a signal duct either way.
    """

    across: float
    between: float
    power_signal: float


class Bank(NamedTuple):
    """A placed bank without its cover.

    Its ducts, `width` and `height` [m], `tier_bottoms`, `tier_tops` and `tier_widths` [m] of every tier from the
    bottom one up, and its gaps.
    """

    ducts: tuple[Duct, ...]
    width: float
    height: float
    tier_bottoms: tuple[float, ...]
    tier_tops: tuple[float, ...]
    tier_widths: tuple[float, ...]
    gaps: Gaps

    @property
    def counts(self) -> list[int]:
        """Ducts (count) in each tier, the bottom tier first."""
        return [sum(duct.tier == tier for duct in self.ducts) for tier in range(len(self.tier_tops))]


class Concrete(NamedTuple):
    """Concrete outside the ducts: `top` [m] above the top tier, `bottom` [m] below the bottom one, `side` [m] beside
    the widest one on each side.
    """

    top: float
    bottom: float
    side: float


class Envelope(NamedTuple):
    """What a bank takes of its trench, per length: its concrete with the ducts in it, or the ducts alone.

    `width` and `height` [m], `area` of the section and `duct_area` of the ducts in it [m2]. `concrete` is None where
    the ducts are buried directly; `trench_formed` where the concrete fills the width of the trench, whose sides lean by
    `side_slope` (ratio), horizontal to 1. The width is the greatest of a pour against forms, and that of the bottom of
    one against earth, so that bars which keep within it lie within the concrete at every height. `form` is the face of
    forms per length [m].
    """

    bank: Bank
    concrete: Concrete | None
    trench_formed: bool
    width: float
    height: float
    area: float
    duct_area: float
    side_slope: float = 0.0
    form: float = 0.0

    @property
    def top_width(self) -> float:
        """Width at the top [m] of a pour against earth: wider than its bottom where the sides lean."""
        return self.width + 2 * self.side_slope * self.height


def clear_gap(separation: float, center_to_center: bool, one: float, other: float) -> float:
    """Give the clear gap [m] between two ducts: the separation, less half of both diameters where it is between
    centers.

    Parameters: separation [m], center_to_center, whether it is measured so, one [m] and the other outside diameter,
    other [m].
    Source: derived.

    Trade 4 ducts at the 7.5 in centers of the code's figures lie 3 in clear:

    >>> clear_gap(7.5, True, 4.5, 4.5)
    3.0
    """
    return separation - (one + other) / 2 if center_to_center else separation


def _like(below: Tier, above: Tier) -> bool:
    """Say whether every duct of a tier lies above its like: all power, all signal, or the same ducts in both."""
    if below.signal == above.signal == 0 or below == above:
        return True
    return below.signal == len(below.diameters) and above.signal == len(above.diameters)


def place(
    tiers: Sequence[Tier],
    horizontal: float,
    vertical: float,
    power_signal: float,
    alignment: Alignment,
    *,
    center_to_center: bool,
) -> Bank:
    """Place the ducts of a bank: beside each other in a tier, tier on tier.

    A tier whose ducts are not like those below stands off by the separation of power and signal ducts. All
    separations are clear, or all between centers.
    Ducts of a tier stand on one level; between centers, tiers are measured at the largest duct of each.
    Parameters: tiers, the bottom one first; horizontal separation of like ducts [m], vertical separation of like
    tiers [m], power_signal separation of a power and a signal duct [m], in a tier or one above the other; alignment
    of narrow tiers, center_to_center, whether separations are measured so.
    Source: derived.
    """
    kinds = {tier: _row(tier, horizontal, power_signal, center_to_center) for tier in set(tiers)}
    rows = [kinds[tier] for tier in tiers]
    width = max([row.width for row in rows])
    between, mixed = math.inf, min([row.mixed for row in rows])
    ducts: list[Duct] = []
    bottoms, y = [], 0.0
    for number, (tier, row) in enumerate(zip(tiers, rows, strict=True)):
        if number:
            below = tiers[number - 1]
            alike = _like(below, tier)
            gap = clear_gap(vertical if alike else power_signal, center_to_center, rows[number - 1].height, row.height)
            if alike:
                between = min(between, gap)
            else:
                mixed = min(mixed, gap)
            y += gap
        shift = _shift(alignment, width - row.width)
        across = [shift + center for center in row.centers]
        up = [y + diameter / 2 for diameter in tier.diameters]
        ducts += map(Duct, across, up, tier.diameters, repeat(number), row.signals)
        bottoms.append(y)
        y += row.height
    tops = [bottom + row.height for bottom, row in zip(bottoms, rows, strict=True)]
    gaps = Gaps(min([row.across for row in rows]), between, mixed)
    return Bank(tuple(ducts), width, y, tuple(bottoms), tuple(tops), tuple([row.width for row in rows]), gaps)


class _Row(NamedTuple):
    """A tier by itself [m]: centers from its left edge, width and height, smallest gaps of like and of unlike ducts.

    `signals` says of each duct whether it carries signals.
    """

    centers: list[float]
    signals: list[bool]
    width: float
    height: float
    across: float
    mixed: float


def _row(tier: Tier, horizontal: float, power_signal: float, center_to_center: bool) -> _Row:
    """Place the ducts of a tier beside each other, those for signals to the right."""
    first_signal = len(tier.diameters) - tier.signal
    across = mixed = math.inf
    at, centers, before = 0.0, [], 0.0
    for index, diameter in enumerate(tier.diameters):
        if index == first_signal and index:
            mixed = clear_gap(power_signal, center_to_center, before, diameter)
            at += mixed
        elif index:
            gap = clear_gap(horizontal, center_to_center, before, diameter)
            across = min(across, gap)
            at += gap
        centers.append(at + diameter / 2)
        at += diameter
        before = diameter
    signals = [False] * first_signal + [True] * tier.signal
    return _Row(centers, signals, at, tier.height, across, mixed)


def _shift(alignment: Alignment, spare: float) -> float:
    """Give how far a tier stands to the right [m] where so much is to spare beside it."""
    if alignment is Alignment.CENTERED:
        return spare / 2
    return 0.0 if alignment is Alignment.LEFT else spare


def duct_area(bank: Bank) -> float:
    """Give the area [m2] of all ducts by their outside diameter: sum of pi/4 OD^2.

    Parameters: bank, as placed.
    Source: derived.

    An exam question has nine ducts of 4.5 in displace 11.89 yd3 over 323 ft:

    >>> nine = place([Tier((4.5,) * 3)] * 3, 2.0, 2.0, 2.0, Alignment.CENTERED, center_to_center=False)
    >>> round(duct_area(nine) / 144 * 323 / 27, 2)
    11.89
    """
    return sum([math.pi / 4 * duct.diameter * duct.diameter for duct in bank.ducts])


def rectangle_area(bank: Bank, top: float, bottom: float, side: float) -> float:
    """Give the area [m2] of the bounding rectangle of a bank and its cover: (W + 2 side) (H + top + bottom).

    Parameters: bank, as placed; top [m], bottom [m], side [m] of the cover.
    Source: derived.
    """
    return (bank.width + 2 * side) * (bank.height + top + bottom)


def stepped_area(bank: Bank, top: float, bottom: float, side: float) -> float:
    """Give the area [m2] of a pour that steps with the tiers, each with its full cover on all sides.

    At each height the pour is as wide as the widest tier whose cover reaches it. Equal tiers give the rectangle.
    Parameters: bank, as placed; top [m], bottom [m], side [m] of the cover.
    Source: derived.
    """
    return sum(thickness * width for thickness, width in _slabs(bank, top, bottom, side))


def form_face(bank: Bank, top: float, bottom: float, side: float, *, stepped: bool) -> float:
    """Give the face of the forms of a pour per length [m]: both sides, and what overhangs where it widens upward.

    The ends of the pour are not counted: it ends at the faces of structures.
    Parameters: bank, as placed; top [m], bottom [m], side [m] of the cover, stepped, whether it steps with the tiers.
    Source: derived.
    """
    face = 2 * (bank.height + top + bottom)
    if not stepped:
        return face
    widths = [width for _, width in _slabs(bank, top, bottom, side)]
    return face + sum(max(0.0, above - below) for below, above in pairwise(widths))


def _slabs(bank: Bank, top: float, bottom: float, side: float) -> list[tuple[float, float]]:
    """Give thickness and width [m] of every slab of a stepped pour, the lowest first."""
    slabs = [
        (low - bottom, high + top, width + 2 * side)
        for low, high, width in zip(bank.tier_bottoms, bank.tier_tops, bank.tier_widths, strict=True)
    ]
    levels = sorted({level for low, high, _ in slabs for level in (low, high)})
    found = []
    for low, high in pairwise(levels):
        middle = (low + high) / 2
        # between tiers with more clearance than cover the pour is as wide as the narrower neighbor
        widths = [width for start, end, width in slabs if start <= middle <= end] or [min(w for _, _, w in slabs)]
        found.append((high - low, max(widths)))
    return found


def bare(bank: Bank) -> Envelope:
    """Give the envelope of ducts buried directly: the bounding box of the bank, the area of its ducts alone.

    Parameters: bank, as placed.
    Source: derived.
    """
    area = duct_area(bank)
    return Envelope(bank, None, False, bank.width, bank.height, area, area)


def encased(bank: Bank, concrete: Concrete, *, stepped: bool) -> Envelope:
    """Give the envelope of a formed pour around a bank: its bounding rectangle, or stepped with the tiers.

    Parameters: bank, as placed; concrete around it, stepped, whether the pour steps with the tiers.
    Source: derived.
    """
    area = (stepped_area if stepped else rectangle_area)(bank, *concrete)
    height = bank.height + concrete.top + concrete.bottom
    width, form = bank.width + 2 * concrete.side, form_face(bank, *concrete, stepped=stepped)
    return Envelope(bank, concrete, False, width, height, area, duct_area(bank), form=form)


def trench_formed(bank: Bank, concrete: Concrete, width: float, side_slope: float = 0.0) -> Envelope:
    """Give the envelope of a pour that fills its trench: a trapezoid on the bottom of the trench.

    Parameters: bank, as placed; concrete around it, width of the bottom of the trench [m], side_slope of its sides
    (ratio), horizontal to one vertical. Valid where the trench is no narrower than bank and concrete.
    Source: derived.
    """
    height = bank.height + concrete.top + concrete.bottom
    area = section_area(width, height, side_slope)
    return Envelope(bank, concrete, True, width, height, area, duct_area(bank), side_slope)


def smallest_gap(bank: Bank) -> float:
    """Give the smallest clear gap [m] between neighbors of a tier and between tiers; infinite for a single duct.

    Parameters: bank, as placed.
    Source: derived.
    """
    return min(bank.gaps)
