"""Whether ducts stay down in groundwater, bare or in their concrete, and whether they bear the pour around them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.bank import Duct, Envelope
from ductrun.engineering.flexible_duct import earth_on_duct, ring_pressure
from ductrun.engineering.flotation import GRAVITY, submerged_area, uplift
from ductrun.engineering.rounding import over, under
from ductrun.subjects.ground.earth_ground import RING_FACTOR, WATER_DENSITY, Ground, water_over
from ductrun.subjects.ground.laid_ducts import Laid
from ductrun.subjects.ground.loaded_ducts import LoadedDuct

_WATER = WATER_DENSITY.value.si

Lying = tuple[Duct, float]  # a duct of the bank and its mass [kg/m]


class Floating(NamedTuple):
    """Uplift in groundwater, and what holds down [N/m], of all together; `factor` is the least of any ducts that lie
    over each other, None where nothing lifts.
    """

    uplift: float
    hold_down: float
    factor: float | None


class PourLoad(NamedTuple):
    """Like ducts of a tier by its `number` from 1 at the bottom, in wet concrete: the head over their bottom [m], its
    pressure and what they bear [Pa], None where their stiffness is not on file.
    """

    number: int
    head: float
    pressure: float
    bears: float | None
    duct: LoadedDuct

    @property
    def holds(self) -> bool | None:
        """Whether the duct bears the pour; None where that cannot be judged."""
        return None if self.bears is None else not over(self.pressure, self.bears)


class Stack(NamedTuple):
    """Ducts in earth that lie over each other, apart from all others: each with how much deeper than the top of the
    bank its bottom lies [m], what lifts them when all are under water and what they weigh with the earth beside their
    crowns [N/m], the width they take [m], how much deeper than the bank they begin [m], and how high the top ones
    are [m].
    """

    ducts: Sequence[tuple[Duct, float]]
    full_uplift: float
    weight: float
    width: float
    deeper: float
    top_height: float


def stacks_of(laid: Laid, ground: Ground) -> list[Stack]:
    """Give the ducts of a bank in earth by what lies over each other; none where concrete holds them together."""
    if laid.concrete is not None:
        return []
    stacks: list[list[Lying]] = []
    right = -math.inf
    masses = [kind.duct.mass for kind in laid.kinds]
    lying = [(duct, masses[kind]) for duct, kind in zip(laid.bank.ducts, laid.kind_of, strict=True)]
    for duct, mass in sorted(lying, key=lambda one: one[0].x - one[0].diameter / 2):
        if not stacks or not under(duct.x - duct.diameter / 2, right):
            stacks.append([])
        stacks[-1].append((duct, mass))
        right = max(right, duct.x + duct.diameter / 2)
    return [_stack(ducts, laid, ground) for ducts in stacks]


def _stack(lying: Sequence[Lying], laid: Laid, ground: Ground) -> Stack:
    ducts = [duct for duct, _ in lying]
    left = min(duct.x - duct.diameter / 2 for duct in ducts)
    right = max(duct.x + duct.diameter / 2 for duct in ducts)
    top = max(duct.y + duct.diameter / 2 for duct in ducts)
    highest = max(duct.tier for duct in ducts)
    crowns = sum(
        earth_on_duct(duct.diameter, 0.0, 0.0, ground.density, _submerged(ground), True)
        for duct in ducts
        if duct.tier == highest
    )
    own = sum(mass for _, mass in lying) * GRAVITY
    lifts = sum(uplift(duct.diameter, _WATER, 0.0) for duct in ducts)
    bottoms = [(duct, laid.bank.height - duct.y + duct.diameter / 2) for duct in ducts]
    height = max(duct.diameter for duct in ducts if duct.tier == highest)
    return Stack(bottoms, lifts, own + crowns, right - left, max(0.0, laid.bank.height - top), height)


def float_in_water(
    laid: Laid, ground: Ground, cover: float, concrete_density: float, stacks: Sequence[Stack]
) -> Floating:
    """Give what groundwater lifts and what holds it down, below a cover [m] of earth.

    It lifts what lies below it. Earth holds down what lies under it: in the gaps between bare ducts it does not.
    """
    dry = ground.water_depth - cover
    if laid.concrete is not None:
        concrete = laid.concrete
        weight = (_mass(laid) + concrete_density * (concrete.area - concrete.duct_area)) * GRAVITY
        weight += _earth(ground, concrete.top_width, cover)
        below = min(concrete.height, concrete.height - dry) if over(concrete.height, dry) else 0.0
        lift = _WATER * GRAVITY * concrete.area * below / concrete.height
        return Floating(lift, weight, weight / lift if lift else None)
    held = [one.weight + _earth(ground, one.width, cover + one.deeper) for one in stacks]
    lifts = [_lift(one, dry) for one in stacks]
    factors = [weight / lift for weight, lift in zip(held, lifts, strict=True) if lift]
    return Floating(sum(lifts), sum(held), min(factors, default=None))


def stays_under_water(ground: Ground, cover: float, stacks: Sequence[Stack]) -> bool:
    """Say whether ducts would stay down below a cover [m] with all of them under water, its earth as it is."""
    return all(
        not under(one.weight + _earth(ground, one.width, cover + one.deeper), ground.flotation_factor * one.full_uplift)
        for one in stacks
    )


def _lift(stack: Stack, dry: float) -> float:
    """Give the uplift [N/m] of ducts over each other, the water so much deeper [m] than the top of the bank."""
    if dry <= stack.deeper:
        return stack.full_uplift
    below = [submerged_area(duct.diameter, bottom - dry) for duct, bottom in stack.ducts if over(bottom, dry)]
    return _WATER * GRAVITY * sum(below)


def _earth(ground: Ground, width: float, cover: float) -> float:
    """Give the weight per length [N/m] of the earth over a width."""
    wet = water_over(ground, cover)
    return earth_on_duct(width, cover - wet, wet, ground.density, _submerged(ground), False)


def stays_down(found: Floating, ground: Ground) -> bool:
    """Say whether what holds ducts down is as many times their uplift as it must be."""
    return found.factor is None or not under(found.factor, ground.flotation_factor)


def pour_around(laid: Laid, concrete: Envelope, density: float, lift: float | None) -> list[PourLoad]:
    """Give what wet concrete presses with on the ducts of every tier, of a depth that is liquid at once [m], None for
    all of it.
    """
    below = 0.0 if concrete.concrete is None else concrete.concrete.bottom
    found = []
    for tier, duct, _, bottom in laid.kinds:
        head = min(concrete.height - below - bottom, math.inf if lift is None else lift)
        bears = None
        if duct.stiffness is not None:
            bears = ring_pressure(duct.stiffness, duct.poisson) / RING_FACTOR.value
        found.append(PourLoad(tier + 1, head, density * GRAVITY * head, bears, duct))
    return found


def _mass(laid: Laid) -> float:
    return sum(laid.kinds[kind].duct.mass for kind in laid.kind_of)


def _submerged(ground: Ground) -> float:
    return max(0.0, ground.saturated - _WATER)
