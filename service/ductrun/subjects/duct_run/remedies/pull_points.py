"""Pull points that may stand along a pull: at the ends of straights, and along straights that are long."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import Any, NamedTuple

from ductrun.engineering.alignment import tangent_length
from ductrun.engineering.pulling import Section, Straight
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.subjects.duct_run.assessment import DuctRun, RunPull
from ductrun.subjects.duct_run.choices import PlaceKind, StraightLengths
from ductrun.subjects.duct_run.remedies.changes import Change, Edit
from ductrun.subjects.duct_run.remedies.cutting import Cut, Divided, edits_of
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.units import Length

_PLACE = re.compile(r"#/stretches/(\d+)/(?:sections/(\d+)|length)")
_OPEN = {"encased", "direct_buried", "above_ground"}
_KINDS = {"encased": PlaceKind.MANHOLE, "above_ground": PlaceKind.PULL_BOX}
_SAME_PLACE = 1e-6  # m
_FROM_A_BEND = 0.5  # m: as far from a bend as a pull point stands at least, where a stretch cannot end at one
_MOST_SINGLE = 12
_MOST_PARTS = 6


class _Part(NamedTuple):
    """A section of a pull as it was given: its stretch and section, None where it has no place to be divided; where it
    begins and ends along the pull [m], what lies there, and, of a straight, what its given length has before it [m].
    """

    stretch: int | None
    section: int | None
    start: float
    end: float
    element: Section
    before: float


def pull_point_changes(body: Any, run: DuctRun, pull: RunPull, telling: Telling) -> list[Change]:
    """Give what would divide a pull: as its plan has it, then at one end of a straight after the other, from the middle
    on, then into so many equal parts.
    """
    parts = _parts(body, pull)
    joints = [cut for before, after in pairwise(parts) for cut in _joint(before, after, body)]
    length = parts[-1].end
    planned = [] if pull.plan is None else [span.start for span in pull.plan.spans[1:]]
    at_plan = [cut for cut in joints if any(abs(_joint_at(cut, parts) - start) <= _SAME_PLACE for start in planned)]
    rungs = [at_plan] if planned and len(at_plan) == len(planned) else []
    single = sorted(joints, key=lambda cut: (round(abs(cut.at - length / 2), 6), cut.at))[:_MOST_SINGLE]
    rungs += [[cut] for cut in single if [cut] not in rungs]
    for count in range(2, _MOST_PARTS + 1):
        even = [_along(length * part / count, parts, body) for part in range(1, count)]
        rungs.append([cut for cut in even if cut is not None])
    return [_change(cuts, body, run, pull, telling) for cuts in rungs if cuts]


def _parts(body: Any, pull: RunPull) -> list[_Part]:
    """Give the sections of a pull as they were given, what a profile cut of one together."""
    route = pull.pulled.pulling.route
    to_intersections = body.get("straight_lengths") == StraightLengths.TO_INTERSECTIONS
    parts: list[_Part] = []
    places: list[str] = []
    at = 0.0
    for place, element in zip(route.places or (), route.sections, strict=True):
        where, end = place.sheet.place, at + element.developed_length
        found = _PLACE.fullmatch(where)
        if places and places[-1] == where and found is not None:
            parts[-1] = parts[-1]._replace(end=end)
        else:
            stretch = None if found is None else int(found[1])
            section = None if found is None or found[2] is None else int(found[2])
            parts.append(_Part(stretch, section, at, end, element, _before(parts, stretch, section, to_intersections)))
            places.append(where)
        at = end
    return parts


def _before(parts: Sequence[_Part], stretch: int | None, section: int | None, to_intersections: bool) -> float:
    """Give what of the length of a straight, as given, lies in the bend or the riser before it [m]."""
    if not parts or stretch is None:
        return 0.0
    last = parts[-1].element
    measured = section is None or (to_intersections and parts[-1].stretch in {None, stretch})
    if not measured or isinstance(last, Straight):
        return 0.0
    return tangent_length(last.radius, last.angle)


def _joint(before: _Part, after: _Part, body: Any) -> list[Cut]:
    """Give the cut between two sections, if one of them is a straight and a pull point can be built there."""
    straights = [isinstance(one.element, Straight) for one in (before, after)]
    if before.stretch is None or after.stretch is None or not any(straights):
        return []
    if before.stretch != after.stretch:
        kinds = {_kind(body, before.stretch), _kind(body, after.stretch)}
        return [Cut(before.stretch, None, None, after.start)] if kinds & _OPEN else []
    if not _is_open(body, before.stretch):
        return []
    if body.get("straight_lengths") != StraightLengths.TO_INTERSECTIONS:
        return [Cut(after.stretch, after.section, None, after.start)]
    # dimensioned to intersections, no stretch can begin or end at a bend: the pull point stands just off it
    straight = after if straights[1] else before
    cut = _cut_of(straight, _FROM_A_BEND if straights[1] else straight.end - straight.start - _FROM_A_BEND, body)
    return [] if cut is None else [cut]


def _joint_at(cut: Cut, parts: Sequence[_Part]) -> float:
    """Give the end of the straight that a cut stands at or just off [m]."""
    if cut.near is None:
        return cut.at
    ends = [end for one in parts for end in (one.start, one.end)]
    return min(ends, key=lambda end: abs(end - cut.at))


def _along(at: float, parts: Sequence[_Part], body: Any) -> Cut | None:
    """Give the cut nearest to a place along the pull [m] in a straight, None where that cannot be divided."""
    part = next((one for one in parts if one.start <= at <= one.end), parts[-1])
    if part.stretch is None or not isinstance(part.element, Straight) or not _is_open(body, part.stretch):
        return None
    return _cut_of(part, at - part.start, body)


def _cut_of(part: _Part, along: float, body: Any) -> Cut | None:
    """Cut a straight so far along [m], at a whole number of its unit if it is long enough."""
    assert part.stretch is not None  # noqa: S101  (looked at before)
    stretch = body["stretches"][part.stretch]
    given = stretch["length"] if part.section is None else stretch["sections"][part.section]["length"]
    unit = Length.parse(1.0, given["unit"]).unit
    near = unit.from_si(along + part.before)
    whole = float(round(near))
    if unit.from_si(part.before) < whole < given["value"]:
        near = whole
    at = part.start + unit.to_si(near) - part.before
    if not part.start + _SAME_PLACE < at < part.end - _SAME_PLACE:
        return None
    return Cut(part.stretch, part.section, near, at)


def _kind(body: Any, stretch: int) -> str:
    kind: str = body["stretches"][stretch]["setting"]["kind"]
    return kind


def _is_open(body: Any, stretch: int) -> bool:
    """Say whether a pull point can be built in a stretch; joints of a structure are placed from its start."""
    given = body["stretches"][stretch]["setting"]
    return given["kind"] in _OPEN and "structure_joints" not in given


def _change(cuts: Sequence[Cut], body: Any, run: DuctRun, pull: RunPull, telling: Telling) -> Change:
    points = [_point(cut, body, name) for cut, name in zip(cuts, _free_names(len(cuts), run), strict=True)]
    edits: list[Edit] = []
    for stretch in sorted({cut.stretch for cut in cuts}, reverse=True):
        here = [(cut, point) for cut, point in zip(cuts, points, strict=True) if cut.stretch == stretch]
        edits += edits_of(stretch, here, body, run)
    told = [
        f"a {point['kind'].replace('_', ' ')} {text_of(telling.distance(cut.at))} along the pull from "
        f"{run.stops[pull.start].name}, {'in' if cut.divides else 'at the end of'} {_name(cut, run)}"
        for cut, point in zip(cuts, points, strict=True)
    ]
    return Change(ChangeKind.PULL_POINT, f"Put {' and '.join(told)}.", edits, Divided(cuts))


def _name(cut: Cut, run: DuctRun) -> str:
    return run.stretches[cut.stretch].laid.name


def _point(cut: Cut, body: Any, name: str) -> dict[str, Any]:
    return {"kind": str(_KINDS.get(_kind(body, cut.stretch), PlaceKind.HANDHOLE)), "name": name}


def _free_names(count: int, run: DuctRun) -> list[str]:
    taken = {stop.name for stop in run.stops}
    names = (name for number in range(1, count + len(taken) + 1) if (name := f"added pull point {number}") not in taken)
    return [next(names) for _ in range(count)]
