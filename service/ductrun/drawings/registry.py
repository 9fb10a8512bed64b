"""Which operations have a drawing, and how each is made of what was assessed: by the name of the operation."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from itertools import accumulate, pairwise
from typing import Any, Final

from ductrun.drawings.alignment import RouteSection
from ductrun.drawings.bank_heat import bank_heat
from ductrun.drawings.bank_section import bank_section
from ductrun.drawings.box_view import box_view
from ductrun.drawings.conduit_section import Conductors, Figures, conduit_section
from ductrun.drawings.naming import cable_words, conduit_words, sized_words
from ductrun.drawings.pull_diagram import Pull, PullLimits, pull_diagram
from ductrun.drawings.route import route
from ductrun.drawings.run_route import run_route
from ductrun.drawings.spacer_stations import spacer_stations
from ductrun.drawings.trench_view import ground_of
from ductrun.drawings.wall import Run, Travel, wall
from ductrun.engineering.bank import bare
from ductrun.engineering.fill import SCALE, Bore
from ductrun.engineering.pulling import reverse
from ductrun.kit.telling import Telling
from ductrun.subjects.bank.encasing import Encasement
from ductrun.subjects.bank.floating import Flotation
from ductrun.subjects.bank.spacing import Spacers
from ductrun.subjects.feeder.ampacity_told import Asked
from ductrun.subjects.fill.conduit_size import Sized
from ductrun.subjects.fill.fill import Filled
from ductrun.subjects.fill.rules import PERCENT, REASONS
from ductrun.subjects.ground.digging import Trench
from ductrun.subjects.movement.moving import Movement
from ductrun.subjects.movement.strapping import Supported
from ductrun.subjects.parts.conductors import ConductorSet
from ductrun.subjects.pulling.assessment import PlanAssessment, PlannedSpan, PullAssessment
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.subjects.pulling.settled import Pulling
from ductrun.units import LengthUnit

Draw = Callable[[Any, Telling], str]


def _encasement(found: Encasement, telling: Telling) -> str:
    return bank_section(found.envelope, telling, name="Encasement", bars=found.bars)


def _flotation(found: Flotation, telling: Telling) -> str:
    return bank_section(bare(found.bank), telling, name="Bank that is held down")


def _spacers(found: Spacers, telling: Telling) -> str:
    pieces = (
        ("base pieces", found.pieces.base),
        ("intermediate pieces", found.pieces.intermediate),
        ("top pieces", found.pieces.top),
        ("to order with waste", found.pieces.order),
    )
    return spacer_stations(found.length, found.tiers, found.stations[:3], pieces, telling)


def _trench(found: Trench, telling: Telling) -> str:
    return bank_section(found.envelope, telling, ground_of(found), name="Trench where it is deepest")


def conductors_of(conductors: ConductorSet, telling: Telling) -> list[Conductors]:
    """Give the conductors of a fill as a drawing takes them."""
    return [
        Conductors(cable_words(line.cable, telling), group.number, group.diameter / SCALE * LengthUnit.INCH.scale)
        for line, group in zip(conductors.given, conductors.groups, strict=True)
    ]


def _bore(bore: Bore) -> float:
    return bore.diameter / SCALE * LengthUnit.INCH.scale


def _fill(found: Filled, telling: Telling) -> str:
    rule = found.load.rule
    figures = Figures(found.percent, PERCENT[rule], REASONS[rule], found.fill.within, found.jam_ratio)
    return conduit_section(
        _bore(found.conduit.bore),
        conductors_of(found.conductors, telling),
        figures,
        telling,
        name=conduit_words(found.conduit.given, telling),
    )


def _conduit_size(found: Sized, telling: Telling) -> str:
    """Draw the size that complies, or the largest there is."""
    candidate = found.candidates[-1 if found.chosen is None else found.chosen]
    rule = found.load.rule
    figures = Figures(candidate.percent, PERCENT[rule], REASONS[rule], candidate.fill.within, candidate.jam_ratio)
    name = sized_words(found.conduit_type.type, candidate.trade_size)
    return conduit_section(
        _bore(candidate.bore),
        conductors_of(found.conductors, telling),
        figures,
        telling,
        name=name if found.chosen is not None else f"No size complies. The largest, {name}",
    )


def limits_of(pulling: Pulling, telling: Telling) -> PullLimits:
    """Give the limits of a pull as they are told; none of the tension where the conductors are not known."""
    tension = telling.force(pulling.limits.tension) if pulling.tension_judged else None
    return PullLimits(tension, telling.given(pulling.pressure_limit))


def _pull_tension(found: PullAssessment, telling: Telling) -> str:
    pulling = found.pulling
    backward = found.better is PullDirection.REVERSED
    pull = Pull(0.0, pulling.sections, found.forward, found.backward, backward)
    return pull_diagram([pull], pulling.load.weight, limits_of(pulling, telling), telling)


def _pull_plan(found: PlanAssessment, telling: Telling) -> str:
    """Draw the pulls of a plan; where none keeps the limits, the route they were looked for on."""
    pulling = found.pulling
    if not found.spans:
        sections = [RouteSection(section) for section in pulling.sections]
        return route(sections, telling, name="No plan keeps the limits. Route")
    pulls = [_planned(span) for span in found.spans]
    return pull_diagram(pulls, pulling.load.weight, limits_of(pulling, telling), telling, name="Plan of pulls")


def _planned(span: PlannedSpan) -> Pull:
    sections = span.way.pulling.sections
    if span.backward:
        return Pull(span.start, reverse(sections), None, span.way, chosen_backward=True)
    return Pull(span.start, sections, span.way, None)


_SAME_PLACE = 1e-6  # m


def _expansion(found: Movement, telling: Telling) -> str:
    return movement(found, telling)


def movement(found: Movement, telling: Telling, joints: Sequence[float] = ()) -> str:
    """Draw straight runs one behind the other and their fittings, those over `joints` of the structure [m] too."""
    if found.free is None:
        return wall([], telling, name="Held by the ground: nothing moves")
    travel = found.free.fitting.travel.si
    ends = [0.0, *accumulate([run.length for run in found.free.runs])]
    over_joint = [any(math.isclose(end, joint, abs_tol=_SAME_PLACE) for joint in joints) for end in ends]
    runs = [
        Run(
            run.length,
            run.layout,
            run.fitting_count,
            holding=() if run.layout is None else run.layout.holding,
            joints=between,
        )
        for run, between in zip(found.free.runs, pairwise(over_joint), strict=True)
    ]
    travels = [
        Travel(
            run.change,
            travel if run.fitting_count else None,
            [(telling.given(temperature), opening) for temperature, opening in run.openings],
        )
        for run in found.free.runs
    ]
    return wall(runs, telling, travels, name="Straight runs and what takes up their movement", joints=joints)


def _supports(found: Supported, telling: Telling) -> str:
    layout, places = found.layout, found.positions
    holding = set() if layout is None else set(layout.holding)
    sliding = [place for place in places if place not in holding]
    if layout is None:  # straps stand alike from either end of a run; one that goes on is drawn to its last strap
        length = places[0] + places[-1]
    else:
        length = max([max(piece.barrel, piece.far) for piece in layout.pieces])
    run = Run(length, layout, 0, sliding, sorted(holding), goes_on=found.termination_count == 1)
    return wall([run], telling, name="Straps of a straight run", spacing=found.spacing.most.si)


def _ampacity(found: Asked, telling: Telling) -> str:
    return bank_heat(found.found, telling)


DRAWINGS: Final[Mapping[str, Draw]] = {
    "duct-run": run_route,
    "ampacity": _ampacity,
    "conduit-size": _conduit_size,
    "fill": _fill,
    "trench": _trench,
    "spacers": _spacers,
    "encasement": _encasement,
    "flotation": _flotation,
    "expansion": _expansion,
    "supports": _supports,
    "pull-box": box_view,
    "pull-plan": _pull_plan,
    "pull-tension": _pull_tension,
}
