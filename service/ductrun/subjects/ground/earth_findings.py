"""What is found of ducts under earth and traffic: every limit, the worst tier for each."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import WORKED_OUT, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import apart, in_percent, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.earth_ground import (
    BUCKLING_DEEP,
    DEFLECTION_BAND,
    RING_FACTOR,
    Ground,
    TierLoad,
    bends_no_more,
    ring_holds,
    wall_holds,
)
from ductrun.subjects.ground.earth_loading import DEFLECTION_LIMIT, FLOTATION_FACTOR
from ductrun.subjects.ground.holding_down import Floating, PourLoad, stays_down
from ductrun.tables import TABLES
from ductrun.units import Length

SHALLOW = quantity("earth_load.shallow_cover", Length)
_IOWA = published("asce-pipeline-inspection")
_STREET = next(row for row in TABLES["cover_to_1000_v"] if row.location == "street_road_driveway_parking_lot")
_STREET_COVER = Length.parse(_STREET.nonmetallic_raceway_in, "in")


def covered(ground: Ground, cover: float) -> bool:
    """Say whether ducts under traffic have the least cover [m] of the code under a street."""
    return ground.traffic is None or not under(cover, _STREET_COVER.si)


def find_cover(ground: Ground, cover: float, earth: float, place: Worksheet) -> None:
    """Find ducts under traffic with less cover [m] than under a street, and caution where the earth over all that is
    buried [m] is so little that the methods part.
    """
    if ground.traffic is None:
        return
    place.judge(covered(ground, cover))
    if not covered(ground, cover):
        told, least = place.tell.size(cover), place.tell.given(_STREET_COVER)
        has, needs = apart(told, least)
        place.find(
            Severity.VIOLATION,
            "too_little_cover_under_traffic",
            f"The ducts lie under traffic with {has} of cover, and under a street the least is {needs}: lower them.",
            place.rule("cover_to_1000_v"),
            told,
            least,
            member="",
        )
    if earth > 0.0 and under(earth, SHALLOW.value.si):
        told, least = place.tell.size(earth), place.tell.size(SHALLOW.value.si)
        place.find(
            Severity.CAUTION,
            "shallow_under_traffic",
            f"With {text_of(told)} of earth the published loads of a wheel differ by two to three times; below "
            f"{text_of(least)} have a structural engineer look at it, or lower the ducts.",
            SHALLOW.backing,
            told,
            least,
            member="",
        )


def judge_tiers(ground: Ground, tiers: Sequence[TierLoad], sheet: Worksheet, place: Worksheet) -> None:
    """Hold every tier against its limits; `place` is the sheet of the cover."""
    if any(tier.demand is None for tier in tiers):
        sheet.judge(None)
        place.find(
            Severity.CAUTION,
            "live_load_not_judged",
            "No method asked gives the load of a wheel under so little cover: what traffic does to the ducts was not "
            "judged. Lower them.",
            SHALLOW.backing,
            member="",
        )
        return
    _judge(tiers, lambda tier: bends_no_more(ground, tier), _deflection_of, sheet, _find_deflection(ground))
    _judge(tiers, wall_holds, _stress_share_of, sheet, _find_wall)
    _judge(tiers, ring_holds, _ring_share_of, sheet, _find_ring)
    _find_unknown(tiers)
    _caution_band(ground, tiers, sheet)


def _judge(
    tiers: Sequence[TierLoad],
    holds: Callable[[TierLoad], bool | None],
    share: Callable[[TierLoad], float],
    sheet: Worksheet,
    find: Callable[[TierLoad], None],
) -> None:
    """Judge all tiers by one limit, and find the worst of those that break it."""
    kept = [holds(tier) for tier in tiers]
    broken = [tier for tier, held in zip(tiers, kept, strict=True) if held is False]
    sheet.judge(False if broken else None if None in kept else True)
    if broken:
        find(max(broken, key=share))


def _deflection_of(tier: TierLoad) -> float:
    return tier.deflection or 0.0


def _stress_share_of(tier: TierLoad) -> float:
    return (tier.stress or 0.0) / tier.duct.wall_stress


def _ring_share_of(tier: TierLoad) -> float:
    return (tier.demand or 0.0) / (tier.buckling or 1.0)


def _find_deflection(ground: Ground) -> Callable[[TierLoad], None]:
    def find(tier: TierLoad) -> None:
        told, limit = in_percent(_deflection_of(tier)), in_percent(ground.deflection_limit)
        has, most = apart(told, limit)
        tier.duct.place.find(
            Severity.VIOLATION,
            "deflection_exceeded",
            f"The ducts of tier {tier.number} flatten by {has} of their diameter, over the {most} they may. Compact "
            "the embedment better, take a stiffer duct, or change the cover.",
            DEFLECTION_LIMIT.backing,
            told,
            limit,
            member="",
        )

    return find


def _caution_band(ground: Ground, tiers: Sequence[TierLoad], sheet: Worksheet) -> None:
    """Caution where the deflection keeps its limit and the band of what may come does not."""
    worst = max(tiers, key=_deflection_of)
    most = _deflection_of(worst) + DEFLECTION_BAND.value
    if worst.deflection is None or not bends_no_more(ground, worst) or not over(most, ground.deflection_limit):
        return
    worst.duct.place.find(
        Severity.CAUTION,
        "deflection_near_limit",
        f"The formula gives the ducts of tier {worst.number} {worst.deflection:.3g} percent of deflection, and as "
        f"built it may be {DEFLECTION_BAND.value:g} points more, which is over {ground.deflection_limit:g} percent: "
        "pull a mandrel before the trench is closed for good.",
        DEFLECTION_BAND.backing,
        in_percent(most),
        in_percent(ground.deflection_limit),
        member="",
    )
    sheet.cite(_IOWA.source_id)


def _find_wall(tier: TierLoad) -> None:
    place = tier.duct.place
    told, limit = place.tell.pressure(tier.stress or 0.0), place.tell.pressure(tier.duct.wall_stress)
    has, most = apart(told, limit)
    place.find(
        Severity.VIOLATION,
        "wall_crushed",
        f"The wall of the ducts of tier {tier.number} is compressed with {has}, over the {most} it bears for long. "
        "Take a thicker wall.",
        WORKED_OUT,
        told,
        limit,
        member="",
    )


def _find_ring(tier: TierLoad) -> None:
    place = tier.duct.place
    told, limit = place.tell.pressure(tier.demand or 0.0), place.tell.pressure(tier.buckling or 0.0)
    has, most = apart(told, limit)
    place.find(
        Severity.VIOLATION,
        "duct_buckles",
        f"Earth, water and traffic press on the ducts of tier {tier.number} with {has}, over the {most} at which they "
        "may buckle, safety included. Take a stiffer duct, compact better, or lower the water.",
        BUCKLING_DEEP.backing,
        told,
        limit,
        member="",
    )


def _find_unknown(tiers: Sequence[TierLoad]) -> None:
    """Say what is not on file of a duct, once."""
    for tier in tiers:
        if tier.duct.wall is None:
            tier.duct.place.find(
                Severity.CAUTION,
                "wall_not_judged",
                "The wall of this duct is not on file: whether it is crushed was not judged. Give the conduit by its "
                "diameters.",
                WORKED_OUT,
                member="",
            )
            return


def judge_flotation(found: Floating, ground: Ground, sheet: Worksheet, place: Worksheet) -> None:
    """Hold what keeps ducts down in groundwater against their uplift."""
    down = stays_down(found, ground)
    sheet.judge(down)
    if found.factor is None or down:
        return
    lifts, holds = place.tell.force_per_length(found.uplift), place.tell.force_per_length(found.hold_down)
    place.find(
        Severity.VIOLATION,
        "floats_in_service",
        f"Groundwater lifts the ducts with {text_of(lifts)}, and earth and their own weight hold them down with "
        f"{text_of(holds)}, {found.factor:.3g} times as much where it is least: {ground.flotation_factor:g} times is "
        "needed. Lay them deeper, or hold them down.",
        FLOTATION_FACTOR.backing,
        found.factor,
        ground.flotation_factor,
        member="",
    )


def judge_envelope(ground: Ground, place: Worksheet, sheet: Worksheet) -> None:
    """Say that no rule on file tells whether an envelope bears traffic."""
    if ground.traffic is None:
        return
    sheet.judge(None)
    place.find(
        Severity.CAUTION,
        "envelope_under_traffic_not_judged",
        "Whether the concrete around the ducts bears the traffic over it was not judged: have a structural engineer "
        "look at it.",
        WORKED_OUT,
        member="",
    )


def judge_pour(pours: Sequence[PourLoad], sheet: Worksheet) -> None:
    """Hold the pressure of wet concrete on every tier against what a free ring bears."""
    kept = [pour.holds for pour in pours]
    sheet.judge(False if False in kept else None if None in kept else True)
    for pour, holds in zip(pours, kept, strict=True):
        if holds is False:
            place = pour.duct.place
            told, limit = place.tell.pressure(pour.pressure), place.tell.pressure(pour.bears or 0.0)
            has, most = apart(told, limit)
            place.find(
                Severity.VIOLATION,
                "duct_collapses_in_the_pour",
                f"Wet concrete presses on the ducts of tier {pour.number} with {has}, over the {most} that a free ring "
                "of them bears, safety included. Pour in lower lifts, or take a stiffer duct.",
                RING_FACTOR.backing,
                told,
                limit,
                member="",
            )
            return
    if None in kept:
        pours[kept.index(None)].duct.place.find(
            Severity.CAUTION,
            "stiffness_not_judged",
            "The stiffness of this duct is not on file: whether it bears wet concrete was not judged. Give "
            "pipe_stiffness of its maker.",
            WORKED_OUT,
            member="",
        )
