"""Plan and profile of a whole run."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final, Literal

from ductrun.drawings.alignment import PullPoint, RouteSection, aligned
from ductrun.drawings.depths import elevations_of
from ductrun.drawings.profile import Staked
from ductrun.drawings.route import route
from ductrun.kit.telling import Telling
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.choices import Turn

_SIDES: Final[Mapping[Turn, Literal["left", "right"]]] = {Turn.LEFT: "left", Turn.RIGHT: "right"}


def run_route(run: DuctRun, telling: Telling) -> str:
    """Draw plan and profile of a run with its stretches, bends and pull points, stations from its start."""
    sections: list[RouteSection] = []
    points: list[PullPoint] = []
    between = iter(run.stops[1:-1])
    for stretch in run.stretches:
        sections += [
            RouteSection(one.element, None if one.turn is None else _SIDES[one.turn], one.name)
            for one in stretch.laid.sections
        ]
        if stretch.laid.given.pull_point is not None:
            points.append(PullPoint(len(sections), next(between).name))
    staked = _staked(run, sections, points)
    return route(
        sections,
        telling,
        staked=staked,
        pull_points=points,
        name=run.given.name or "Run",
        start_name=run.stops[0].name,
        end_name=run.stops[-1].name,
    )


def _staked(run: DuctRun, sections: Sequence[RouteSection], points: Sequence[PullPoint]) -> Staked | None:
    """Give the ground of a profile, and the elevation of its line where the conduit first lies along it."""
    heights = elevations_of(run)
    laid = [one for stretch in run.stretches for one in stretch.laid.sections]
    if heights is None:
        return None
    along = [placed for placed, one in zip(aligned(sections, points), laid, strict=True) if one.riser is None]
    if not along:
        return None
    first = along[0].points[0]
    ground = tuple(zip(heights.ground.stations, heights.ground.heights, strict=True))
    return Staked(ground, heights.line.height(first.station) - first.z, heights.of_what)
