"""How deep is dug by station where a run has a profile, with the elevations that are staked out."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.readable import by_tape, words_of
from ductrun.drawings.stations import station_text
from ductrun.engineering.alignment import Line
from ductrun.kit.telling import Telling, UnitSystem
from ductrun.subjects.duct_run.assessment import AssessedStretch, Burial, DuctRun
from ductrun.subjects.duct_run.choices import ProfileReference


class Elevations(NamedTuple):
    """The elevations of a profile over its stations [m], and what its line is."""

    ground: Line
    line: Line
    reference: ProfileReference

    @property
    def of_what(self) -> str:
        """What the line is of, in words."""
        return words_of(self.reference)


def elevations_of(run: DuctRun) -> Elevations | None:
    """Give the elevations of a run as they were sent, if it has a profile."""
    profile = run.given.profile
    if profile is None:
        return None
    stations = tuple(point.station.si for point in profile.points)
    ground, line = (tuple(getattr(point, name).si for point in profile.points) for name in ("ground", "line"))
    return Elevations(Line(stations, ground), Line(stations, line), profile.reference)


def depth_table(run: DuctRun, telling: Telling) -> Markup:
    """Give depth, cover and elevations of every trench at every point of the profile, straight between them."""
    heights = elevations_of(run)
    if heights is None:
        return NOTHING
    rows = list(dict.fromkeys(row for stretch in run.stretches for row in _rows(stretch, heights, telling)))
    if not rows:
        return NOTHING
    several = len({row[0] for row in rows}) > 1
    header = (
        "Stretch",
        "Station",
        "Deep",
        "Cover on ducts",
        "Ground",
        "Underside of lowest ducts",
        "Floor of the trench",
    )
    shown = rows if several else [row[1:] for row in rows]
    told = table(header if several else header[1:], shown, kind="dense")
    about = "Elevations as in the profile that was sent, depth and cover plumb; between stations the floor is straight."
    return joined([told, element("p", about, kind="about")])


def _rows(stretch: AssessedStretch, heights: Elevations, telling: Telling) -> list[tuple[str, ...]]:
    burial = stretch.burial
    if burial is None:
        return []
    envelope, bedding = burial.envelope, burial.trench.bedding
    above, below = (0.0, 0.0) if envelope.concrete is None else (envelope.concrete.top, envelope.concrete.bottom)
    rows = []
    for position, (cover, deep) in _plumb(burial).items():
        at = stretch.laid.station + position
        aslant = (deep - cover - bedding) / envelope.height
        grade = heights.ground.height(at)
        floor = grade - deep
        sizes = [by_tape(telling.size(one)) for one in (deep, cover + aslant * above)]
        staked = [elevation_text(one, telling) for one in (grade, floor + bedding + aslant * below, floor)]
        rows.append((stretch.laid.name, station_text(at, telling), *sizes, *staked))
    return rows


def _plumb(burial: Burial) -> dict[float, tuple[float, float]]:
    """Give the cover on the envelope and the depth of the trench by position [m], plumb; where two slopes meet, those
    of the deeper trench.
    """
    found: dict[float, tuple[float, float]] = {}
    for part in burial.earth.slopes:
        deep = part.profile(burial.envelope, burial.trench.bedding)
        for (position, cover), (_, depth) in zip(part.covers, deep, strict=True):
            if depth > found.get(position, (0.0, 0.0))[1]:
                found[position] = cover, depth
    return found


def elevation_text(height: float, telling: Telling) -> str:
    """Write an elevation [m] as it is staked out: feet to the hundredth, meters to the millimeter."""
    told = telling.distance(height)
    digits = 2 if telling.system is UnitSystem.US else 3
    return f"{round(told.value, digits) + 0.0:,.{digits}f} {told.unit}"
