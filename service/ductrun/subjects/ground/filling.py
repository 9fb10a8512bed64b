"""What is dug out of a trench and what fills it again: earth in the bank, bedding, envelope, select fill, backfill."""

from __future__ import annotations

import math
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


class Slope(NamedTuple):
    """A part of a run at one slope: earth over it by position, both [m], measured plumb; its grade [rad]."""

    covers: tuple[tuple[float, float], ...]
    grade: float

    def profile(self, envelope: Envelope, bedding: float) -> engineering.Profile:
        """Give the depth of the trench by position [m], plumb: the envelope lies aslant on its bedding [m]."""
        plan = self.covers[-1][0] - self.covers[0][0]
        height = engineering.plumb(envelope.height, self.grade, math.tan(self.grade) * plan)
        return engineering.deepened(self.covers, height + bedding)


class Aslant(NamedTuple):
    """Ducts that do not lie level: their own length [m], their slopes from start to end, the least and the greatest
    earth over their envelope by the shortest way [m], and how steep they or the ground are at most [rad].
    """

    length: float
    slopes: tuple[Slope, ...]
    shortest: float
    farthest: float
    steepest: float


class EarthCover(NamedTuple):
    """Earth over the envelope along a run [m]: the least, the greatest, all by (position, cover) from start to end.

    `deepest` is the sheet of the place where the greatest was given; `fall` [m] that of the ducts, if it is given;
    `aslant` how they lie where they climb with the ground.
    """

    least: float
    greatest: float
    along: tuple[tuple[float, float], ...]
    deepest: Worksheet
    fall: float | None = None
    aslant: Aslant | None = None

    @property
    def shortest(self) -> float:
        """The least earth by the shortest way [m], as the rules measure cover."""
        return self.least if self.aslant is None else self.aslant.shortest

    @property
    def farthest(self) -> float:
        """The greatest earth by the shortest way [m]: what lies on the ducts, foot by foot of their own length."""
        return self.greatest if self.aslant is None else self.aslant.farthest

    @property
    def steepest(self) -> float:
        """How steep the ducts or the ground over them are at most [rad]."""
        return 0.0 if self.aslant is None else self.aslant.steepest

    @property
    def slopes(self) -> tuple[Slope, ...]:
        """Its parts, each at one slope."""
        return (Slope(self.along, 0.0),) if self.aslant is None else self.aslant.slopes

    def duct_length(self, plan: float) -> float:
        """Give the length of the ducts [m] themselves over a length in plan [m]."""
        return plan if self.aslant is None else self.aslant.length


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
    section: Section, envelope: Envelope, earth: EarthCover, length: float, select_fill: Length | None, paved: float
) -> Volumes:
    """Give the volumes of a trench over a length in plan [m], below a pavement of a thickness [m]."""
    width, slope, bedding = section
    excavated = filled = 0.0
    for part in earth.slopes:
        below = part.profile(envelope, bedding)
        top = below[0][1] - part.covers[0][1]
        below = engineering.deepened(below, -paved) if paved else below
        excavated += engineering.excavation(width, slope, below)
        if select_fill is not None:
            filled += engineering.excavation(width, slope, engineering.capped(below, top + select_fill.si))
    bed = engineering.layer(width, slope, 0.0, bedding, length)
    taken = envelope.area * earth.duct_length(length)
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
