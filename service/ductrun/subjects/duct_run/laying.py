"""The line of a run: every stretch outlined, then laid one after another with its risers, along the profile."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.alignment import plan_length
from ductrun.engineering.bank import Envelope
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.asked import Asked
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.burying import envelope_of
from ductrun.subjects.duct_run.choices import StraightLengths
from ductrun.subjects.duct_run.form import STRAIGHT_LENGTHS, Stretch
from ductrun.subjects.duct_run.heights import Heights, above_ducts, along_profile, refuse_other_length
from ductrun.subjects.duct_run.laid import LaidSection, LaidStretch
from ductrun.subjects.duct_run.risers import Riser, climb, leg_of, riser_of
from ductrun.subjects.duct_run.sections import LEVEL_RADIANS, Laying, lay_sections
from ductrun.subjects.duct_run.settings import BURIED
from ductrun.subjects.duct_run.stops import Ends
from ductrun.units import Length


class Outline(NamedTuple):
    """A stretch on its way to be laid: its name, sheet, bank, envelope if it is buried, its stops and its risers, and
    its sections without both these and the profile.
    """

    stretch: Stretch
    name: str
    sheet: Worksheet
    bank: RunBank
    envelope: Envelope | None
    ends: Ends
    risers: tuple[Riser | None, Riser | None]
    sections: list[LaidSection]


def refuse_alike(stretches: Sequence[Stretch], sheet: Worksheet) -> None:
    """Refuse stretches of one name: shares of the takeoff and findings are told by it."""
    seen: set[str] = set()
    faults = []
    for index, stretch in enumerate(stretches):
        name = _name(stretch, index)
        if name in seen:
            words = "Another stretch has it: give its own."
            faults.append(sheet.fault(f"stretches/{index}/name", "name_given_twice", words))
        seen.add(name)
    if faults:
        raise UnanswerableError(*faults)


def _name(stretch: Stretch, index: int) -> str:
    return stretch.name or f"stretch {index + 1}"


def outlines_of(asked: Asked, ends: Sequence[Ends], banks: Sequence[RunBank], heights: Heights | None) -> list[Outline]:
    """Outline every stretch: all of it but the way up in its risers and along the profile."""
    request, sheet = asked.request, asked.sheet
    to = sheet.settle("straight_lengths", request.straight_lengths, STRAIGHT_LENGTHS)
    line = None if heights is None else heights.line
    how = Laying(to is StraightLengths.TO_INTERSECTIONS, line, LEVEL_RADIANS, bored=False)
    faults = Gathering()
    outlines = []
    for index, (stretch, bank, stops) in enumerate(zip(request.stretches, banks, ends, strict=True)):
        here, name = sheet.within(f"stretches/{index}"), _name(stretch, index)
        begins = how._replace(bored=stretch.setting.kind == "bored")
        how = how._replace(grade=math.nan)  # of what goes on from a stretch that is refused
        with faults, asked.names.about(name):
            envelope = envelope_of(stretch, bank, here, asked) if stretch.setting.kind in BURIED else None
            risers = riser_of(stops[0], bank, stretch), riser_of(stops[1], bank, stretch)
            sections = lay_sections(stretch, name, here, bank, risers, begins)
            outlines.append(Outline(stretch, name, here, bank, envelope, stops, risers, sections))
            level = stretch.pull_point is not None
            how = how._replace(grade=LEVEL_RADIANS if level else sections[-1].element.exit_grade)
    faults.stop()
    return outlines


def lay(outlines: Sequence[Outline], heights: Heights | None) -> list[LaidStretch]:
    """Lay the stretches one after another, along the profile and with their risers."""
    faults = Gathering()
    laid = []
    station = 0.0
    for outline in outlines:
        with faults:
            one = _lay(outline, station, heights)
            laid.append(one)
            station = one.end
    faults.stop()
    if heights is not None:
        refuse_other_length(heights, station)
    return laid


def _lay(outline: Outline, station: float, heights: Heights | None) -> LaidStretch:
    start, end = outline.risers
    length = sum([plan_length(one.element) for one in outline.sections])
    whole = length + sum(riser.radius for riser in outline.risers if riser is not None)
    sections = outline.sections
    if heights is not None:
        sections = along_profile(sections, heights.line, station + (0.0 if start is None else start.radius))
    laid = list(sections)
    if start is not None:
        leg = leg_of(start, _above(outline, station, heights), outline.bank)
        laid = [*climb(start, leg, down=True, grade=sections[0].element.entry_grade), *laid]
    if end is not None:
        leg = leg_of(end, _above(outline, station + whole, heights), outline.bank)
        laid += climb(end, leg, down=False, grade=sections[-1].element.exit_grade)
    along = sum([one.element.developed_length for one in laid])
    return LaidStretch(outline.stretch, outline.name, outline.sheet, laid, station, whole, along)


def _above(outline: Outline, station: float, heights: Heights | None) -> float:
    """Give what lies over the top of the ducts of a stretch at a station [m]."""
    envelope, setting = outline.envelope, outline.stretch.setting
    assert envelope is not None  # noqa: S101  (only what is buried has risers)
    if heights is not None:
        return heights.over(outline.bank, envelope, station) + above_ducts(envelope)
    cover: Length | None = setting.cover  # type: ignore[union-attr]  # of what is buried
    if cover is None:
        words = "Give the cover, or a profile of the run."
        raise UnanswerableError(outline.sheet.within("setting").fault("cover", "missing", words))
    return cover.si + above_ducts(envelope)
