"""Cautions of an open trench: its protection and its neighbors."""

from __future__ import annotations

from ductrun.engineering import trench as engineering
from ductrun.engineering.rounding import under
from ductrun.kit.backing import published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, quantity
from ductrun.kit.wording import apart, depth_text, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.choices import ExcavationSoilType
from ductrun.subjects.parts.excavation import EXCAVATION_SAFETY
from ductrun.tables import TABLES
from ductrun.units import Length

UTILITY_SEPARATION = quantity("trench.utility_separation", Length)
EGRESS_DEPTH = quantity("excavation.egress_depth", Length)
EGRESS_DISTANCE = quantity("excavation.egress_distance", Length)
PROTECTION_DEPTH = quantity("excavation.protection_depth", Length)
ENGINEERED_DEPTH = quantity("excavation.engineered_depth", Length)
_SLOPES = {row.soil_type: row for row in TABLES["side_slopes"]}
_SOILS = {
    ExcavationSoilType.STABLE_ROCK: "stable rock",
    ExcavationSoilType.TYPE_A: "Type A soil",
    ExcavationSoilType.TYPE_B: "Type B soil",
    ExcavationSoilType.TYPE_C: "Type C soil",
    ExcavationSoilType.UNCLASSIFIED: "soil that is not classified",
}
_RULES = {row.soil_type: published(row.source) for row in TABLES["side_slopes"]}


def needs_protection(soil_type: ExcavationSoilType, depth: float, slope: float) -> bool:
    """Say whether the sides of an excavation [m] stand too steep for its depth; `slope` is horizontal to 1."""
    return not under(depth, PROTECTION_DEPTH.value.si) and under(slope, _SLOPES[soil_type].horizontal_per_vertical)


def shoring_area(soil_type: ExcavationSoilType, depth: float, profile: engineering.Profile, slope: float) -> float:
    """Give the area of both sides that is to be held [m2], where they are so deep and steep.

    `depth` [m] is the greatest of the profile, the depth by position.
    """
    if not needs_protection(soil_type, depth, slope):
        return 0.0
    return engineering.face_area(profile, PROTECTION_DEPTH.value.si)


def caution_slope(soil_type: ExcavationSoilType, depth: float, slope: float, sheet: Worksheet) -> None:
    """Caution against sides of an excavation [m] that stand too steep; never a design of its protection.

    `slope` is horizontal to 1.
    """
    most, rules = _SLOPES[soil_type].horizontal_per_vertical, _RULES[soil_type]
    sheet.cite(rules.source_id)
    if needs_protection(soil_type, depth, slope):
        sheet.find(
            Severity.CAUTION,
            "needs_protection",
            f"The trench is {depth_text(sheet.tell.size(depth))} deep and its sides stand steeper than {most:g} to 1, "
            f"the most for {_SOILS[soil_type]}: shore, shield or slope it as the competent person decides.",
            rules,
            slope,
            most,
            member="side_slope_ratio",
        )
    sheet.caution("excavation_safety", EXCAVATION_SAFETY, rules)


def caution_depth(depth: float, place: Worksheet) -> None:
    """Say what the depth of an excavation [m] asks for; `place` is the sheet of what makes it so deep."""
    if under(depth, EGRESS_DEPTH.value.si):
        return
    within = text_of(place.tell.given(EGRESS_DISTANCE.value))
    _need(EGRESS_DEPTH, "needs_egress", f"a ladder or ramp within {within} of everybody in it", depth, place)
    if not under(depth, ENGINEERED_DEPTH.value.si):
        words = "a protective system designed by a registered engineer"
        _need(ENGINEERED_DEPTH, "needs_an_engineer", words, depth, place)


def _need(least: Default[Length], code: str, words: str, depth: float, place: Worksheet) -> None:
    told = place.tell.size(depth)
    place.find(
        Severity.CAUTION,
        code,
        f"The trench is {depth_text(told)} deep: it needs {words}.",
        least.backing,
        told,
        place.tell.given(least.value),
        member="",
    )


def caution_utility(near: Length | None, sheet: Worksheet) -> None:
    """Caution against a clear distance to another utility that owners would not accept."""
    asked = UTILITY_SEPARATION.value
    if near is not None and under(near.si, asked.si):
        told, least = sheet.tell.size(near.si), sheet.tell.size(asked.si)
        is_away, is_asked = apart(told, least)
        sheet.find(
            Severity.CAUTION,
            "close_to_another_utility",
            f"The nearest utility is {is_away} away; owners ask for {is_asked} or more, and for far more "
            "from fuel and steam.",
            UTILITY_SEPARATION.backing,
            told,
            least,
            member="nearest_utility",
        )
