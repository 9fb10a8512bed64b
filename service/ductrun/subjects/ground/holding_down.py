"""Whether ducts stay down in groundwater, bare or in their concrete, and whether they bear the pour around them."""

from __future__ import annotations

import math
from typing import NamedTuple

from ductrun.engineering.bank import Bank, Envelope
from ductrun.engineering.flexible_duct import earth_on_duct, ring_pressure
from ductrun.engineering.flotation import GRAVITY, uplift
from ductrun.engineering.rounding import over, under
from ductrun.subjects.ground.earth_ground import RING_FACTOR, WATER_DENSITY, Ground, water_over
from ductrun.subjects.ground.loaded_ducts import LoadedDuct

_WATER = WATER_DENSITY.value.si


class Laid(NamedTuple):
    """Ducts as they lie: the bank, the duct of every tier, and the concrete around them, None where they are bare."""

    bank: Bank
    ducts: list[LoadedDuct]
    concrete: Envelope | None

    @property
    def height(self) -> float:
        """Height [m] of all that is buried."""
        return self.bank.height if self.concrete is None else self.concrete.height


class Floating(NamedTuple):
    """Uplift in groundwater, and what holds down [N/m]; `factor` is None where nothing lifts."""

    uplift: float
    hold_down: float
    factor: float | None


class PourLoad(NamedTuple):
    """A tier in wet concrete: the head over its bottom [m], its pressure and what the duct bears [Pa], None where its
    stiffness is not on file.
    """

    head: float
    pressure: float
    bears: float | None
    duct: LoadedDuct

    @property
    def holds(self) -> bool | None:
        """Whether the duct bears the pour; None where that cannot be judged."""
        return None if self.bears is None else not over(self.pressure, self.bears)


def float_in_water(laid: Laid, ground: Ground, cover: float, concrete_density: float) -> Floating:
    """Give what groundwater lifts and what holds it down, below a cover [m] of earth."""
    concrete, bank = laid.concrete, laid.bank
    if concrete is None:
        lifts = sum(uplift(duct.diameter, _WATER, 0.0) for duct in bank.ducts)
        width, weight = bank.width, _mass(laid) * GRAVITY + _beside_crowns(laid, ground)
    else:
        lifts = _WATER * GRAVITY * concrete.area
        width = concrete.top_width
        weight = (_mass(laid) + concrete_density * (concrete.area - concrete.duct_area)) * GRAVITY
    wet = water_over(ground, cover)
    weight += earth_on_duct(width, cover - wet, wet, ground.density, _submerged(ground), False)
    if not over(cover + laid.height, ground.water_depth):
        return Floating(0.0, weight, None)
    return Floating(lifts, weight, weight / lifts)


def stays_down(found: Floating, ground: Ground) -> bool:
    """Say whether what holds ducts down is as many times their uplift as it must be."""
    return found.factor is None or not under(found.factor, ground.flotation_factor)


def pour_around(laid: Laid, concrete: Envelope, density: float, lift: float | None) -> list[PourLoad]:
    """Give what wet concrete presses with on every tier, of a depth that is liquid at once [m], None for all of it."""
    below = 0.0 if concrete.concrete is None else concrete.concrete.bottom
    found = []
    for bottom, duct in zip(laid.bank.tier_bottoms, laid.ducts, strict=True):
        head = min(concrete.height - below - bottom, math.inf if lift is None else lift)
        bears = None
        if duct.stiffness is not None:
            bears = ring_pressure(duct.stiffness, duct.poisson) / RING_FACTOR.value
        found.append(PourLoad(head, density * GRAVITY * head, bears, duct))
    return found


def _mass(laid: Laid) -> float:
    return sum(laid.ducts[duct.tier].mass for duct in laid.bank.ducts)


def _submerged(ground: Ground) -> float:
    return max(0.0, ground.saturated - _WATER)


def _beside_crowns(laid: Laid, ground: Ground) -> float:
    """Give the weight per length [N/m] of the earth beside the crowns of the top tier."""
    top = len(laid.bank.tier_tops) - 1
    return sum(
        earth_on_duct(duct.diameter, 0.0, 0.0, ground.density, _submerged(ground), True)
        for duct in laid.bank.ducts
        if duct.tier == top
    )
