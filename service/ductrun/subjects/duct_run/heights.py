"""The profile of a run: ground and line over the stations, and the sections of a stretch laid along it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import Any, NamedTuple

from ductrun.engineering import alignment as engineering
from ductrun.engineering.alignment import Line, nearest, plan_length
from ductrun.engineering.bank import Envelope
from ductrun.engineering.pulling import HorizontalBend, Section, Straight
from ductrun.engineering.rounding import over
from ductrun.engineering.trench import plumb
from ductrun.kit.wording import text_of, without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.choices import ProfileReference
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.laid import LaidSection, LaidStretch
from ductrun.subjects.duct_run.settings import DirectBuriedSetting, EncasedSetting
from ductrun.subjects.ground.filling import Aslant, EarthCover, Slope
from ductrun.subjects.parts.choices import BendMade

_SAME_GRADE = 1e-7  # rad
_SAME_LENGTH = 1e-3  # of the run: a drawing gives stations to so many digits


def above_ducts(envelope: Envelope) -> float:
    """Give the concrete above the ducts [m]."""
    return 0.0 if envelope.concrete is None else envelope.concrete.top


class Heights(NamedTuple):
    """Ground and line of a profile over the stations [m], what the line is, and the sheet of the profile."""

    ground: Line
    line: Line
    reference: ProfileReference
    sheet: Worksheet

    def over(self, bank: RunBank, envelope: Envelope, station: float, grade: float = 0.0) -> float:
        """Give the earth over an envelope at a station [m] where its ducts lie at a grade [rad], plumb."""
        above = 0.0
        if self.reference is not ProfileReference.TOP_OF_ENVELOPE:
            above += above_ducts(envelope)
        if self.reference is ProfileReference.DUCT_INVERT:
            above += envelope.bank.height - bank.wall_below
        return self.ground.height(station) - self.line.height(station) - above / math.cos(grade)


def heights_of(request: DuctRunRequest, sheet: Worksheet) -> Heights | None:
    """Give the profile of a run, if it has one; refuses stations that do not rise from its start."""
    profile = request.profile
    if profile is None:
        return None
    place = sheet.within("profile")
    stations = tuple(point.station.si for point in profile.points)
    faults = [
        place.fault(f"points/{index}/station/value", "out_of_order", "A station lies beyond the one before it.")
        for index in range(1, len(stations))
        if stations[index] <= stations[index - 1]
    ]
    if stations[0] > 0.0:
        words = "The first station is the start of the run."
        faults.append(place.fault("points/0/station/value", "not_from_start_to_end", words))
    if faults:
        raise UnanswerableError(*faults)
    ground = Line(stations, tuple(point.ground.si for point in profile.points))
    line = Line(stations, tuple(point.line.si for point in profile.points))
    return Heights(ground, line, profile.reference, place)


def refuse_other_length(heights: Heights, length: float) -> None:
    """Refuse a profile that does not end where the run does."""
    last = heights.line.stations[-1]
    if not over(abs(last - length), _SAME_LENGTH * length):
        return
    place = heights.sheet
    index = len(heights.line.stations) - 1
    told: Any = place.tell.distance(length)
    words = f"The run is {without_noise(told.value):.7g} {told.unit} long in plan: the profile ends there."
    raise UnanswerableError(
        place.fault(f"points/{index}/station/value", "not_from_start_to_end", words, minimum=told, maximum=told)
    )


def along_profile(laid: Sequence[LaidSection], line: engineering.Line, station: float) -> list[LaidSection]:
    """Give the sections of a stretch the grades of a line of heights; `station` [m] is where the stretch begins.

    A straight is cut where the line breaks, and a bend that is laid on a curve: the ducts follow it by their joints.
    """
    found = []
    for one in laid:
        element = one.element
        parts: Sequence[Section] = [element]
        if isinstance(element, Straight):
            parts = engineering.straights_along(line, station, station + element.length)
        elif isinstance(element, HorizontalBend):
            follows = one.made is BendMade.LAID_ON_CURVE
            parts = engineering.bends_along(line, station, element, follows=follows)
        for part in parts:
            beyond = f", beyond station {text_of(one.sheet.tell.distance(station))}" if part is not parts[0] else ""
            found.append(one._replace(element=part, name=f"{one.name}{beyond}"))
            station += engineering.plan_length(part)
    return found


def earth_of(
    setting: EncasedSetting | DirectBuriedSetting,
    bank: RunBank,
    envelope: Envelope,
    laid: LaidStretch,
    heights: Heights | None,
    place: Worksheet,
) -> EarthCover:
    """Give the earth over the envelope of a stretch."""
    start, length = laid.station, laid.plan_length
    if heights is None:
        if setting.cover is None:
            raise UnanswerableError(place.fault("cover", "missing", "Give the cover, or a profile of the run."))
        cover = setting.cover.si
        along, aslant = ((0.0, cover), (length, cover)), _aslant(cover, laid)
        return EarthCover(cover, cover, along, place.within("cover"), aslant=aslant)
    if setting.cover is not None:
        raise UnanswerableError(
            place.fault("cover", "given_by_the_profile", "The profile gives the cover: leave it out.")
        )
    slopes = _slopes_of(heights, bank, envelope, start, start + length)
    points = [point for slope in slopes for point in slope.covers]
    points = [point for index, point in enumerate(points) if point != points[index - 1]]
    covers = [cover for _, cover in points]
    if min(covers) < 0.0:
        at = points[covers.index(min(covers))][0]
        where = heights.sheet.tell.distance(start + at)
        raise UnanswerableError(
            heights.sheet.fault(
                "points",
                "above_the_ground",
                f"{without_noise(where.value):g} {where.unit} from the start, what is buried stands above the ground.",
            )
        )
    tops = [(start + at, heights.ground.height(start + at) - cover) for at, cover in points]
    shortest, pieces = nearest(tops, heights.ground), _pieces(slopes, heights.ground, start)
    farthest = max(shortest, *(deep * math.cos(grade) for deep, grade in pieces))
    steepest = max(*(abs(slope.grade) for slope in slopes), *(abs(grade) for _, grade in pieces))
    aslant = Aslant(laid.duct_length, tuple(slopes), shortest, farthest, steepest)
    return EarthCover(min(covers), max(covers), tuple(points), heights.sheet.within("points"), aslant=aslant)


def _slopes_of(heights: Heights, bank: RunBank, envelope: Envelope, start: float, end: float) -> list[Slope]:
    """Give the parts of a profile from a station to another [m], each at one slope of the line, from the first on."""
    line = heights.line
    found: list[Slope] = []
    for near, far in pairwise(sorted({*line.between(start, end), *heights.ground.between(start, end)})):
        grade = math.atan2(line.height(far) - line.height(near), far - near)
        begins, ends = ((at - start, heights.over(bank, envelope, at, grade)) for at in (near, far))
        if found and math.isclose(grade, found[-1].grade, abs_tol=_SAME_GRADE):
            found[-1] = found[-1]._replace(covers=(*found[-1].covers, ends))
        else:
            found.append(Slope((begins, ends), grade))
    return found


def _pieces(slopes: Sequence[Slope], ground: engineering.Line, start: float) -> list[tuple[float, float]]:
    """Give the greatest earth of each piece, plumb [m], with the grade of the ground over it [rad]."""
    return [
        (max(cover, beyond), math.atan2(ground.height(start + far) - ground.height(start + near), far - near))
        for slope in slopes
        for (near, cover), (far, beyond) in pairwise(slope.covers)
    ]


def _aslant(cover: float, laid: LaidStretch) -> Aslant | None:
    """Say how ducts lie under an even cover [m], which is measured square to the ground; None where they lie level."""
    at, slopes = 0.0, []
    for one in laid.sections:
        plan = plan_length(one.element)
        if not plan:
            continue
        grade = 0.0 if one.rises else math.acos(min(1.0, plan / one.element.developed_length))
        deep = plumb(cover, grade, math.tan(grade) * plan)
        slopes.append(Slope(((at, deep), (at + plan, deep)), grade))
        at += plan
    if all(slope.grade < _SAME_GRADE for slope in slopes):
        return None
    return Aslant(laid.duct_length, tuple(slopes), cover, cover, max(slope.grade for slope in slopes))
