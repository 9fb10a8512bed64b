"""What is found of the section of a bank and its earth: where the method ends, and where earth may dry."""

from __future__ import annotations

from ductrun.engineering.buried_heat import MOST_SIDES
from ductrun.engineering.rounding import over
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.feeder.choices import AmpacityMethod
from ductrun.subjects.feeder.rating import Ampacity
from ductrun.subjects.feeder.thermal import CYCLE_DIAMETER, surround
from ductrun.units import Temperature

DRY_OUT = quantity("feeder.dry_out_temperature", Temperature)


def caution_section(found: Ampacity, sheet: Worksheet) -> None:
    """Caution of an envelope and of ducts beyond the method, and of earth that would dry."""
    _caution_envelope(found)
    _caution_cycle(found)
    _caution_dry_earth(found, sheet)


def _caution_envelope(found: Ampacity) -> None:
    """Say which of the limits of the method an envelope is beyond, at the ducts that govern."""
    question = found.solved.question
    if surround(question).valid:
        return
    sheet, section = found.solved.governing[0].ducts_sheet, question.section
    short, long = sorted((section.width, section.height))
    size = sheet.tell.size
    if over(long, MOST_SIDES * short):
        what = f"{text_of(size(long))} by {text_of(size(short))}, longer than {MOST_SIDES:g} times its short side"
        figures: tuple[float | None, float | None] = (long / short, MOST_SIDES)
    else:
        what = f"too near the surface for its size, its center {text_of(size(section.center))} down"
        figures = (None, None)
    sheet.find(
        Severity.CAUTION,
        "envelope_beyond_the_method",
        f"The envelope around these ducts is {what}: the method has no figure for that, and the nearest one that "
        "allows less was taken. Have it calculated numerically.",
        WORKED_OUT,
        *figures,
        member="",
    )


def _caution_cycle(found: Ampacity) -> None:
    """Caution of a duct wider than the earth in which a daily cycle is felt in full, where loads have one."""
    question, cycle = found.solved.question, CYCLE_DIAMETER.value
    if question.method is AmpacityMethod.IEC_60287:
        return
    for load in question.loads:
        widest = max([question.section.walls[duct].outside for duct in load.ducts])
        if load.load_factor >= 1.0 or not over(widest, cycle.si):
            continue
        actual, limit = load.sheet.tell.size(widest), load.sheet.tell.given(cycle)
        load.ducts_sheet.find(
            Severity.CAUTION,
            "duct_beyond_the_cycle",
            f"A duct of {text_of(actual)} is wider than the {text_of(limit)} in which the method has a daily cycle "
            "felt in full: no more of it was counted than within the duct. Rate it at a load factor of 100 percent "
            "to be safe.",
            CYCLE_DIAMETER.backing,
            actual,
            limit,
            member="",
        )


def _caution_dry_earth(found: Ampacity, sheet: Worksheet) -> None:
    question = found.solved.question
    hottest = max([duct.outside for duct in found.solved.balance.ducts])
    if hottest > DRY_OUT.value.si and question.earth.concrete is None:
        told, limit = sheet.tell.temperature(hottest), sheet.tell.given(DRY_OUT.value)
        sheet.find(
            Severity.CAUTION,
            "earth_may_dry",
            f"The earth beside the ducts reaches {text_of(told)}: above {text_of(limit)} it loses its water and lets "
            "less heat through. Take a backfill whose resistivity is known when dry.",
            DRY_OUT.backing,
            told,
            limit,
            member="earth_thermal_resistivity",
        )
