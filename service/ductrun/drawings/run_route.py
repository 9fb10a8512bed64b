"""Plan and profile of a whole run."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final, Literal

from ductrun.drawings.alignment import PullPoint, RouteSection
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
    return route(
        sections,
        telling,
        pull_points=points,
        name=run.given.name or "Run",
        start_name=run.stops[0].name,
        end_name=run.stops[-1].name,
    )
