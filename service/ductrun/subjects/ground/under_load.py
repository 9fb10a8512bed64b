"""Ducts under earth and traffic: what they bear, judged; bare in the ground, or in their concrete."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.kit.backing import WORKED_OUT, published
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.complying import Complying, complying, tier_loads
from ductrun.subjects.ground.earth_findings import find_cover, judge_envelope, judge_flotation, judge_pour, judge_tiers
from ductrun.subjects.ground.earth_ground import Ground, TierLoad, settle_ground
from ductrun.subjects.ground.earth_loading import CONCRETE_DENSITY, EarthAndWater
from ductrun.subjects.ground.earth_working import show_load
from ductrun.subjects.ground.holding_down import Floating, PourLoad, float_in_water, pour_around, stacks_of
from ductrun.subjects.ground.laid_ducts import Laid
from ductrun.subjects.parts.excavation import EXCAVATION_SAFETY

_EXCAVATION_RULES = published("osha-1926-subpart-p")


class UnderLoad(NamedTuple):
    """Ducts under a cover [m] of earth: the figures of every kind in every tier, or of its pour where they are encased;
    whether they stay down; and what would comply, None where that was not looked for. `ground` is None of ducts that
    need concrete and have none: they are not loaded at all.
    """

    cover: float
    laid: Laid | None
    ground: Ground | None
    tiers: list[TierLoad]
    pours: list[PourLoad]
    floating: Floating | None
    complying: Complying | None


def unloaded(cover: float, sheet: Worksheet) -> UnderLoad:
    """Give ducts that may not lie in earth at all, which was found of them: no load is put on them."""
    sheet.caution("excavation_safety", EXCAVATION_SAFETY, _EXCAVATION_RULES)
    return UnderLoad(cover, None, None, [], [], None, None)


def bear(given: EarthAndWater, laid: Laid, cover: float, place: Worksheet, sheet: Worksheet) -> UnderLoad:
    """Load ducts with the earth over them and the traffic that passes; `place` is the sheet of the cover [m]."""
    ground = settle_ground(given, laid.bank.width, sheet, encased=laid.concrete is not None)
    sheet.caution("excavation_safety", EXCAVATION_SAFETY, _EXCAVATION_RULES)
    find_cover(ground, cover + laid.concrete_above, cover, place)
    if laid.concrete is not None:
        return _in_concrete(given, laid, ground, cover, place, sheet)
    tiers = tier_loads(laid, ground, cover)
    judge_tiers(ground, tiers, sheet, place)
    stacks = stacks_of(laid, ground)
    floating = float_in_water(laid, ground, cover, 0.0, stacks)
    judge_flotation(floating, ground, sheet, place)
    found = UnderLoad(cover, laid, ground, tiers, [], floating, complying(given, laid, ground, tiers, cover, stacks))
    if sheet.working is not None:
        show_load(found.tiers, floating, ground, sheet)
    return found


def _in_concrete(
    given: EarthAndWater, laid: Laid, ground: Ground, cover: float, place: Worksheet, sheet: Worksheet
) -> UnderLoad:
    """Judge ducts in their concrete by its pour, and the whole by whether it stays down."""
    density = sheet.settle("concrete_density", given.concrete_density, CONCRETE_DENSITY).si
    lift = None if given.lift_height is None else given.lift_height.si
    assert laid.concrete is not None  # noqa: S101  (it is why this is asked)
    pours = pour_around(laid, laid.concrete, density, lift)
    judge_pour(pours, sheet)
    floating = float_in_water(laid, ground, cover, density, [])
    judge_flotation(floating, ground, sheet, place)
    sheet.find(
        Severity.NOTE,
        "encased_ducts_do_not_deflect",
        "The ducts were held against the head of the wet concrete and the bank against flotation; neither deflection "
        "nor buckling was asked, and whether the envelope bears the earth is a structural engineer's.",
        WORKED_OUT,
    )
    judge_envelope(ground, place, sheet)
    if sheet.working is not None:
        for pour in pours:
            tell = sheet.tell
            sheet.show("p", "rho g h", f"h = {pour.head:.5g} m", tell.pressure(pour.pressure))
    return UnderLoad(cover, laid, ground, [], pours, floating, None)
