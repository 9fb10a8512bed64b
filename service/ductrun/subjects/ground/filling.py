"""What is dug out of a trench and what fills it again: earth in the bank, bedding, envelope, select fill, backfill."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import trench as engineering
from ductrun.engineering.bank import Envelope
from ductrun.engineering.rounding import over
from ductrun.kit.answers import MOST_COUNTED
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.wording import apart, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.units import Length, Volume


class EarthCover(NamedTuple):
    """Earth over the envelope along a run [m]: the least, the greatest, all by (position, cover) from start to end.

    `deepest` is the sheet of the place where the greatest was given; `fall` [m] that of the ducts, if it is given.
    """

    least: float
    greatest: float
    along: tuple[tuple[float, float], ...]
    deepest: Worksheet
    fall: float | None = None


class Section(NamedTuple):
    """The section of a trench: width of its floor [m], slope of its sides horizontal to 1, bedding on its floor [m]."""

    width: float
    side_slope: float
    bedding: float


class Volumes(NamedTuple):
    """What is dug in the bank, and what fills it again [m3]: bedding, envelope, select fill and native backfill."""

    excavated: float
    bedding: float
    envelope: float
    select_fill: float
    backfill: float


def fill(
    section: Section, envelope: Envelope, profile: engineering.Profile, select_fill: Length | None, paved: float
) -> Volumes:
    """Give the volumes of a trench by its depth along the run [m], below a pavement of a thickness [m]."""
    width, slope, bedding = section
    length, top = profile[-1][0] - profile[0][0], bedding + envelope.height
    below = engineering.deepened(profile, -paved) if paved else profile
    excavated = engineering.excavation(width, slope, below)
    bed = engineering.layer(width, slope, 0.0, bedding, length)
    taken = envelope.area * length
    select = 0.0
    if select_fill is not None:
        filled = engineering.excavation(width, slope, engineering.capped(below, top + select_fill.si))
        select = max(0.0, filled - bed - taken)
    return Volumes(excavated, bed, taken, select, max(0.0, excavated - bed - taken - select))


def find_select_fill(given: Length | None, earth: EarthCover, paved: float, sheet: Worksheet) -> None:
    """Say so where select fill does not fit under grade, or under the pavement."""
    room = earth.least - paved
    if given is not None and over(given.si, room):
        told, left = sheet.tell.given(given), sheet.tell.size(room)
        fills, fits = apart(told, left)
        sheet.find(
            Severity.CAUTION,
            "select_fill_above_grade",
            f"Select fill of {fills} does not fit everywhere over the bank: where the cover is least there is room for "
            f"{fits}, and it is counted up to there.",
            WORKED_OUT,
            told,
            left,
            member="select_fill",
        )


def find_import(spoil: float, sheet: Worksheet) -> None:
    """Say so where the backfill takes more than was dug: `spoil`, loose [m3], is negative then."""
    if spoil < 0:
        wanted = sheet.tell.bulk_volume(-spoil)
        sheet.find(
            Severity.NOTE,
            "fill_must_be_brought",
            f"Compacted, the backfill takes more than was dug: bring {text_of(wanted)} of earth, loose. Nothing is "
            "hauled away.",
            WORKED_OUT,
            wanted,
            member="soil",
        )


def loads_of(volume: float, capacity: Volume, sheet: Worksheet) -> int:
    """Count the truck loads of a loose volume [m3]; refuses more than an answer can count."""
    loads = engineering.loads(volume, capacity.si)
    if loads > MOST_COUNTED:
        raise UnanswerableError(
            sheet.fault("haul_capacity", "too_many_loads", f"That makes {loads:.3g} loads: give the run in parts.")
        )
    return loads
