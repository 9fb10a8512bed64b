"""The earth over an envelope along a run: one cover, covers by station, or a cover and the fall of the ducts."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Annotated

from pydantic import Field

from ductrun.engineering.rounding import over, under
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, quantity
from ductrun.kit.forms import Depth, Form, Omissible, RoutePosition, between
from ductrun.kit.telling import TELLINGS
from ductrun.kit.wording import apart, text_of, without_noise
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import DrainsTo
from ductrun.subjects.ground.filling import EarthCover
from ductrun.units import Grade, Length

DRAINS_TO = choice("trench.drains_to", DrainsTo)
LEAST_FALL = quantity("trench.least_fall", Length)
_HUNDRED_FEET = Length.parse(100, "ft")
_LEAST_GRADE = math.atan(LEAST_FALL.value.si / _HUNDRED_FEET.si)
DEEPEST = Length.parse(1_200, "in")  # of a cover that is given
_SAME_LENGTH = 1e-6  # of a length written in two units, with as many digits as one writes
_LEVEL = {
    system: "Ducts that lie level hold water: lay them with a fall of at least "
    f"{text_of(telling.given(LEAST_FALL.value))} in {text_of(telling.given(_HUNDRED_FEET))} toward a structure."
    for system, telling in TELLINGS.items()
}


class Station(Form):
    """Depth of cover at one place of the run."""

    station: RoutePosition = Field(description="Distance from the start.", examples=[{"value": 0, "unit": "ft"}])
    cover: Depth = Field(description="Cover over the bank there.", examples=[{"value": 30, "unit": "in"}])


class Fall(Form):
    """The fall of ducts that drain, below level ground."""

    grade: Annotated[Grade, between(Grade, 0, 30, "percent")] = Field(
        description="How steeply the ducts fall.", examples=[{"value": 0.35, "unit": "percent"}]
    )
    drains_to: Omissible[DrainsTo] = Field(
        default=None,
        description="Whether the ducts fall from one end to the other, or from the middle to both.",
        examples=["end"],
        json_schema_extra=DRAINS_TO.stated,
    )


Stations = Annotated[list[Station], Field(max_length=500)]


def earth_over(
    cover: Length | None, stations: Sequence[Station] | None, fall: Fall | None, length: Length, sheet: Worksheet
) -> EarthCover:
    """Give the earth over the envelope along a run of a length; refuses what does not say it once."""
    if cover is not None and not stations:
        return _even(cover.si, length.si, sheet) if fall is None else _falling(cover, fall, length.si, sheet)
    if not stations or cover is not None:
        raise UnanswerableError(_one_of_two(cover is not None, sheet))
    along = tuple((one.station.si, one.cover.si) for one in stations)
    faults = _out_of_place(along, length, sheet)
    if fall is not None:
        words = "Stations say how the cover changes as the ducts fall: give cover and fall, or stations."
        faults.append(sheet.fault("fall", "not_with_stations", words))
    if faults:
        raise UnanswerableError(*faults)
    _caution_level(sheet)
    covers = [cover for _, cover in along]
    least, greatest = min(covers), max(covers)
    return EarthCover(least, greatest, along, sheet.within(f"stations/{covers.index(greatest)}/cover"))


def _even(cover: float, length: float, sheet: Worksheet) -> EarthCover:
    _caution_level(sheet)
    return EarthCover(cover, cover, ((0.0, cover), (length, cover)), sheet.within("cover"))


def _caution_level(sheet: Worksheet) -> None:
    sheet.caution("ducts_drain", _LEVEL[sheet.tell.system], LEAST_FALL.backing)


def _falling(cover: Length, fall: Fall, length: float, sheet: Worksheet) -> EarthCover:
    """Give the earth over ducts that fall below level ground from where their cover is given, the least of it."""
    place = sheet.within("fall")
    from_middle = place.settle("drains_to", fall.drains_to, DRAINS_TO) is DrainsTo.BOTH_ENDS
    run = length / 2 if from_middle else length
    drop = run * math.tan(fall.grade.si)
    least, greatest = cover.si, cover.si + drop
    if over(greatest, DEEPEST.si):
        most = max(0.0, (DEEPEST.si - least) / run)
        raise UnanswerableError(
            place.fault(
                "grade/value",
                "too_deep",
                f"So steep the ducts get deeper than {text_of(sheet.tell.given(DEEPEST))} of cover.",
                maximum=Grade(without_noise(fall.grade.unit.from_si(math.atan(most))), fall.grade.unit),
            )
        )
    _find_flat(fall.grade, place)
    along = ((0.0, greatest), (run, least), (length, greatest)) if from_middle else ((0.0, least), (length, greatest))
    if sheet.working is not None:
        words = f"{run:.6g} m x {math.tan(fall.grade.si):.6g}"
        place.show("fall", "length of the fall x grade", words, sheet.tell.size(drop))
    return EarthCover(least, greatest, along, place, drop)


def _find_flat(grade: Grade, place: Worksheet) -> None:
    """Find a fall too small to drain."""
    if not under(grade.si, _LEAST_GRADE):
        return
    told, least = place.tell.grade(grade.si), place.tell.grade(_LEAST_GRADE)
    falls, _ = apart(told, least)
    tell = place.tell.given
    place.find(
        Severity.CAUTION,
        "fall_too_flat",
        f"The ducts fall {falls}, too little to drain: lay them with a fall of at least "
        f"{text_of(tell(LEAST_FALL.value))} in {text_of(tell(_HUNDRED_FEET))}.",
        LEAST_FALL.backing,
        told,
        least,
        member="grade",
    )


def _out_of_place(along: Sequence[tuple[float, float]], length: Length, sheet: Worksheet) -> list[Fault]:
    """Find every station that does not lie beyond the one before it, from the start of the trench to its end."""

    def fault(index: int, code: str, message: str, least: float, most: float) -> Fault:
        low, high = (Length(without_noise(length.unit.from_si(at)), length.unit) for at in (least, most))
        return sheet.fault(f"stations/{index}/station/value", code, message, minimum=low, maximum=high)

    faults, end = [], length.si
    for index, (position, _) in enumerate(along):
        before = along[index - 1][0] if index else 0.0
        if position > end + _SAME_LENGTH * end:
            faults.append(fault(index, "past_the_end", "The trench ends before this station.", min(before, end), end))
        elif index and position <= before:
            faults.append(
                fault(index, "out_of_order", "A station lies beyond the one before it.", min(before, end), end)
            )
    if along[0][0] > 0.0:
        faults.append(fault(0, "not_from_start_to_end", "The first station is the start of the trench.", 0.0, 0.0))
    last = len(along) - 1
    if not faults and (not last or end - along[-1][0] > _SAME_LENGTH * end):
        words = "The last station is the end of the trench: give the cover there too."
        faults.append(fault(last, "not_from_start_to_end", words, end, end))
    return faults


def _one_of_two(both: bool, sheet: Worksheet) -> Fault:
    return sheet.fault(
        "stations" if both else "cover",
        "one_of_two",
        "Give either cover or stations, not both." if both else "Give either cover or stations.",
    )
