"""What would comply: the least and the greatest cover, the least stiffness and class, and the least compaction."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import NamedTuple

from ductrun.engineering import flexible_duct
from ductrun.engineering.rounding import over
from ductrun.subjects.ground.choices import Compaction
from ductrun.subjects.ground.earth_findings import covered
from ductrun.subjects.ground.earth_ground import (
    RING_FACTOR,
    Ground,
    TierLoad,
    bends_no_more,
    buckling_factor,
    load_tier,
    modulus_of,
    ring_holds,
    wall_holds,
    water_over,
)
from ductrun.subjects.ground.earth_loading import LEAST_STIFFNESS, MOST_STIFFNESS, EarthLoading
from ductrun.subjects.ground.holding_down import Stack, float_in_water, stacks_of, stays_down, stays_under_water
from ductrun.subjects.ground.laid_ducts import Laid
from ductrun.subjects.ground.loaded_ducts import BURIAL_CLASSES, LoadedDuct, in_class
from ductrun.subjects.parts.choices import ConduitType
from ductrun.units import Length, LengthUnit, Pressure

_INCH = LengthUnit.INCH.scale
_LEAST_STIFFNESS, _MOST_STIFFNESS = (Pressure.parse(psi, "psi").si for psi in (LEAST_STIFFNESS, MOST_STIFFNESS))
# looked at in inches: every foot where earth and traffic cross, wide steps where only the earth still grows
_FEET = [12 * foot for foot in (*range(13), 15, 20, 30, 50, 100)]
_EVERY_FOOT = [12 * foot for foot in range(101)]
_DEEPEST = _FEET[-1]
_PARTS = 8  # of a duct that dips into the water


class Complying(NamedTuple):
    """What would comply with all else as it is [Pa]: None where nothing does, or where no greatest cover is met.

    All covers between the least and the greatest comply.
    """

    least_cover: Length | None
    greatest_cover: Length | None
    stiffness: float | None
    least_class: ConduitType | None
    compaction: Compaction | None


def tier_loads(laid: Laid, ground: Ground, cover: float) -> list[TierLoad]:
    """Give the figures of every kind of duct in every tier, the bottom one first."""
    return [load_tier(ground, kind, cover) for kind in laid.kinds]


def keeps(laid: Laid, ground: Ground, cover: float, stacks: Sequence[Stack]) -> bool:
    """Say whether every duct keeps every limit under a cover [m]; what cannot be judged does not."""
    if not covered(ground, cover):
        return False
    for tier in tier_loads(laid, ground, cover):
        if not (bends_no_more(ground, tier) and wall_holds(tier) and ring_holds(tier)):
            return False
    return stays_down(float_in_water(laid, ground, cover, 0.0, stacks), ground)


def complying(
    given: EarthLoading, laid: Laid, ground: Ground, tiers: list[TierLoad], cover: float, stacks: Sequence[Stack]
) -> Complying:
    """Look for what would comply; `tiers` are the figures under the cover [m] that was asked."""

    def inch(inches: int) -> bool:
        return keeps(laid, ground, inches * _INCH, stacks)

    afloat = _afloat(laid, ground, stacks)
    covers = _covers(inch, sorted({*_FEET, *afloat}))
    if covers is None:  # what complies may lie between two of them
        covers = _covers(inch, sorted({*_EVERY_FOOT, *afloat}))
    least, greatest = (None, None) if covers is None else covers
    return Complying(
        None if least is None else Length.parse(least, "in"),
        None if greatest is None else Length.parse(greatest, "in"),
        _least_stiffness(laid, ground, tiers, cover, stacks),
        _least_class(given, laid, ground, cover),
        _least_compaction(laid, ground, cover, stacks),
    )


def _afloat(laid: Laid, ground: Ground, stacks: Sequence[Stack]) -> set[int]:
    """Give the covers in whole inches at which ducts float, of those at which the top ones dip into the water from
    their bottoms to their tops: somewhere there it lifts them most for the earth that lies on them.
    """
    dips: set[int] = set()
    for top, height in {(one.deeper, one.top_height) for one in stacks}:
        dip = math.floor((ground.water_depth - top) / _INCH)
        dips |= {dip + 1, *(dip - round(height * part / _PARTS / _INCH) for part in range(_PARTS + 1))}
    dips = {inches for inches in dips if 0 < inches < _DEEPEST}
    if not dips or stays_under_water(ground, min(dips) * _INCH, stacks):
        return set()
    return {one for one in dips if not stays_down(float_in_water(laid, ground, one * _INCH, 0.0, stacks), ground)}


def _covers(holds: Callable[[int], bool], looked_at: Sequence[int]) -> tuple[int, int | None] | None:
    """Give the least and the greatest cover in whole inches of the deepest ones that all hold; no greatest where the
    last one looked at still holds, and None where none does.
    """
    last = next((at for at in reversed(looked_at) if holds(at)), None)
    if last is None:
        return None
    deeper = [at for at in looked_at if at > last]
    greatest = _edge(holds, last, deeper[0]) if deeper else None
    first = last
    for at in reversed([at for at in looked_at if at < last]):
        if not holds(at):
            return _edge(holds, first, at), greatest
        first = at
    return first, greatest


def _edge(holds: Callable[[int], bool], good: int, bad: int) -> int:
    """Give the last whole inch that holds on the way from one that does to one that does not."""
    while abs(bad - good) > 1:
        middle = (good + bad) // 2
        if holds(middle):
            good = middle
        else:
            bad = middle
    return good


def _least_stiffness(
    laid: Laid, ground: Ground, tiers: list[TierLoad], cover: float, stacks: Sequence[Stack]
) -> float | None:
    """Give the least stiffness [Pa] that keeps every limit; None where the load is not known, or where stiffness alone
    does not do it: no stiffness holds a duct down or thickens its wall.
    """
    if any(tier.demand is None for tier in tiers):
        return None
    least = max(_LEAST_STIFFNESS, *(_stiffness_of(ground, tier) for tier in tiers))
    if over(least, _MOST_STIFFNESS):
        return None
    ducts = [
        kind.duct._replace(stiffness=least, long_term_stiffness=least * kind.duct.long_term_share)
        for kind in laid.kinds
    ]
    return least if keeps(_of(laid, ducts), ground, cover, stacks) else None


def _of(laid: Laid, ducts: Sequence[LoadedDuct]) -> Laid:
    """Give the same bank of other ducts, one for every kind in it."""
    kinds = [kind._replace(duct=duct) for kind, duct in zip(laid.kinds, ducts, strict=True)]
    return laid._replace(kinds=kinds)


def _least_class(given: EarthLoading, laid: Laid, ground: Ground, cover: float) -> ConduitType | None:
    """Give the least class of direct-burial duct of the same trade sizes that keeps every limit; None where a stiffness
    was given, which it would not change, or where a trade size is not known.
    """
    if given.pipe_stiffness is not None:
        return None
    for kind in BURIAL_CLASSES:
        ducts = [in_class(one.duct, kind, given) for one in laid.kinds]
        known = [one for one in ducts if one is not None]
        if len(known) < len(ducts):
            continue
        classed = _of(laid, known)
        if keeps(classed, ground, cover, stacks_of(classed, ground)):
            return kind
    return None


def _stiffness_of(ground: Ground, tier: TierLoad) -> float:
    live = 0.0 if tier.live is None else tier.live.pressure
    demand = tier.demand or 0.0
    duct = tier.duct
    bending = flexible_duct.stiffness_for_deflection(
        tier.earth, live, ground.lag, ground.bedding, ground.soil_modulus, ground.deflection_limit
    )
    ring = flexible_duct.stiffness_for_ring(demand * RING_FACTOR.value, duct.poisson)
    if tier.cover > 0.0:
        support = flexible_duct.elastic_support(tier.cover, duct.outside)
        share = flexible_duct.buoyancy_share(tier.cover, water_over(ground, tier.cover))
        factor = buckling_factor(duct, tier.cover)
        ring = min(ring, flexible_duct.stiffness_for_buckling(demand * factor, ground.soil_modulus, support, share))
    return max(bending, ring / duct.long_term_share)


def _least_compaction(laid: Laid, ground: Ground, cover: float, stacks: Sequence[Stack]) -> Compaction | None:
    """Give the least compaction of the embedment that complies; None where its modulus was given, or none does."""
    if ground.embedment is None:
        return None
    for one in Compaction:
        if keeps(laid, ground._replace(soil_modulus=modulus_of(ground.embedment, one)), cover, stacks):
            return one
    return None
