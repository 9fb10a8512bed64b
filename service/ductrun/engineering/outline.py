"""The outline of a pour of concrete around a bank, as it would be drawn, and of the trench around it."""

from __future__ import annotations

from itertools import pairwise
from typing import NamedTuple

from ductrun.engineering.bank import Envelope
from ductrun.engineering.rounding import under


class Slab(NamedTuple):
    """A part of a pour from `low` to `high` [m] above its bottom, from `left` to `right` [m] of the bank."""

    low: float
    high: float
    left: float
    right: float


def stepped(envelope: Envelope) -> bool:
    """Say whether a pour steps with its tiers: a formed one that takes less than its bounding rectangle.

    Parameters: envelope, as placed.
    Source: derived.
    """
    formed = envelope.concrete is not None and not envelope.trench_formed
    return formed and under(envelope.area, envelope.width * envelope.height)


def slabs(envelope: Envelope) -> list[Slab]:
    """Give the slabs of a formed pour [m], the lowest first: one, or those that step with the tiers.

    At each height the pour is as wide as the widest tier whose cover reaches it; between tiers that stand farther
    apart than that, as wide as the narrower neighbor. The widths and heights are those whose area the envelope has.
    Parameters: envelope, formed, with concrete.
    Source: derived.
    """
    bank, concrete = envelope.bank, envelope.concrete
    if concrete is None or not stepped(envelope):
        side = 0.0 if concrete is None else concrete.side
        return [Slab(0.0, envelope.height, -side, bank.width + side)]
    reach = []
    for tier, (bottom, top) in enumerate(zip(bank.tier_bottoms, bank.tier_tops, strict=True)):
        row = [duct for duct in bank.ducts if duct.tier == tier]
        left = min([duct.x - duct.diameter / 2 for duct in row]) - concrete.side
        right = max([duct.x + duct.diameter / 2 for duct in row]) + concrete.side
        reach.append(Slab(bottom, top + concrete.top + concrete.bottom, left, right))
    levels = sorted({level for slab in reach for level in (slab.low, slab.high)})
    found = []
    for low, high in pairwise(levels):
        middle = (low + high) / 2
        over_it = [slab for slab in reach if slab.low <= middle <= slab.high]
        widest = max(over_it, key=_width) if over_it else min(reach, key=_width)
        found.append(Slab(low, high, widest.left, widest.right))
    return found


def _width(slab: Slab) -> float:
    return slab.right - slab.left
