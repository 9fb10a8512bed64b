"""Cautions of an open trench: its protection, its neighbors and its warning tape."""

from __future__ import annotations

from ductrun.engineering.rounding import under
from ductrun.kit.backing import published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.choices import ExcavationSoilType
from ductrun.tables import TABLES
from ductrun.units import Length

TAPE_DEPTH = quantity("trench.tape_depth", Length)
UTILITY_SEPARATION = quantity("trench.utility_separation", Length)
EGRESS_DEPTH = quantity("excavation.egress_depth", Length)
EGRESS_DISTANCE = quantity("excavation.egress_distance", Length)
PROTECTION_DEPTH = quantity("excavation.protection_depth", Length)
ENGINEERED_DEPTH = quantity("excavation.engineered_depth", Length)
_SLOPES = {row.soil_type: row for row in TABLES["side_slopes"]}
_FURTHER = (
    (EGRESS_DEPTH, "needs_egress", f"a ladder or ramp within {EGRESS_DISTANCE.value} of everybody in it"),
    (ENGINEERED_DEPTH, "needs_an_engineer", "a protective system designed by a registered engineer"),
)


EXCAVATION_SAFETY = (
    "Have utilities located before digging, keep spoil back from the edge, and let nobody into an unprotected trench: "
    "a competent person and the adopted excavation rules decide on protection."
)


def tape_depth(given: Length | None, cover: float, sheet: Worksheet) -> float:
    """Give the depth of the tape [m] below grade, as far above the bank as it lies by default where there is room."""
    wanted, above = sheet.settle("warning_tape_depth", given, TAPE_DEPTH).si, TAPE_DEPTH.value.si
    if under(cover, wanted + above):
        sheet.find(
            Severity.CAUTION,
            "tape_close_to_the_bank",
            f"With {text_of(sheet.tell.size(cover))} of cover the tape cannot lie both "
            f"{text_of(sheet.tell.size(wanted))} below grade and {text_of(sheet.tell.size(above))} above the bank: "
            "lay it in the middle.",
            TAPE_DEPTH.backing,
            member="warning_tape_depth",
        )
        return cover / 2
    return wanted


def caution_excavation(soil_type: ExcavationSoilType, depth: float, slope: float, sheet: Worksheet) -> None:
    """Give the cautions of an excavation [m], of side `slope` horizontal to 1; never a design of its protection."""
    row = _SLOPES[soil_type]
    sheet.cite(row.source)
    told = sheet.tell.size(depth)
    if not under(depth, PROTECTION_DEPTH.value.si) and under(slope, row.horizontal_per_vertical):
        sheet.find(
            Severity.CAUTION,
            "needs_protection",
            f"The trench is {text_of(told)} deep and its sides stand steeper than "
            f"{row.horizontal_per_vertical:g} to 1, the most for {soil_type.replace('_', ' ')} soil: "
            "shore, shield or slope it as the competent person decides.",
            published(row.source),
            slope,
            row.horizontal_per_vertical,
            member="side_slope",
        )
    for least, code, words in _FURTHER:
        if not under(depth, least.value.si):
            sheet.find(
                Severity.CAUTION,
                code,
                f"The trench is {text_of(told)} deep: it needs {words}.",
                least.backing,
                told,
                sheet.tell.given(least.value),
                member="",
            )
    sheet.caution(
        "excavation_safety",
        EXCAVATION_SAFETY,
        published(row.source),
    )


def caution_utility(near: Length | None, sheet: Worksheet) -> None:
    """Caution against a clear distance to another utility that owners would not accept."""
    asked = UTILITY_SEPARATION.value
    if near is not None and under(near.si, asked.si):
        told, least = sheet.tell.size(near.si), sheet.tell.size(asked.si)
        sheet.find(
            Severity.CAUTION,
            "close_to_another_utility",
            f"The nearest utility is {text_of(told)} away; owners ask for {text_of(least)} or more, and for far more "
            "from fuel and steam.",
            UTILITY_SEPARATION.backing,
            told,
            least,
            member="nearest_utility",
        )
