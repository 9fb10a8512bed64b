"""The profile of a run: ground and line over the stations, and the sections of a stretch laid along it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, NamedTuple

from ductrun.engineering import alignment as engineering
from ductrun.engineering.alignment import Line
from ductrun.engineering.bank import Envelope
from ductrun.engineering.pulling import HorizontalBend, Section, Straight
from ductrun.engineering.rounding import over
from ductrun.kit.wording import text_of, without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.duct_run.choices import ProfileReference
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.laid import LaidSection
from ductrun.subjects.duct_run.settings import DirectBuriedSetting, EncasedSetting
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.parts.choices import BendMade

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

    def over(self, envelope: Envelope, station: float) -> float:
        """Give the earth over an envelope at a station [m]; the invert is taken as the bottom of the lowest duct."""
        top = self.line.height(station)
        if self.reference is not ProfileReference.TOP_OF_ENVELOPE:
            top += above_ducts(envelope)
        if self.reference is ProfileReference.DUCT_INVERT:
            top += envelope.bank.height
        return self.ground.height(station) - top


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
    envelope: Envelope,
    start: float,
    length: float,
    heights: Heights | None,
    place: Worksheet,
) -> EarthCover:
    """Give the earth over the envelope of a stretch from a station on [m], over a length in plan [m]."""
    if heights is None:
        if setting.cover is None:
            raise UnanswerableError(place.fault("cover", "missing", "Give the cover, or a profile of the run."))
        cover = setting.cover.si
        return EarthCover(cover, cover, ((0.0, cover), (length, cover)), place.within("cover"))
    if setting.cover is not None:
        raise UnanswerableError(
            place.fault("cover", "given_by_the_profile", "The profile gives the cover: leave it out.")
        )
    stations = sorted({*heights.line.between(start, start + length), *heights.ground.between(start, start + length)})
    along = tuple((at - start, heights.over(envelope, at)) for at in stations)
    covers = [cover for _, cover in along]
    if min(covers) < 0.0:
        at = stations[covers.index(min(covers))]
        where = heights.sheet.tell.distance(at)
        raise UnanswerableError(
            heights.sheet.fault(
                "points",
                "above_the_ground",
                f"{without_noise(where.value):g} {where.unit} from the start, what is buried stands above the ground.",
            )
        )
    return EarthCover(min(covers), max(covers), along, heights.sheet.within("points"))
