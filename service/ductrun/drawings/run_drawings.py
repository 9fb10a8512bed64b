"""The drawings of a whole run: plan and profile, the section of every kind of stretch, walls, and its pulls."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, NamedTuple

from ductrun.drawings.bank_heat import bank_heat
from ductrun.drawings.bank_section import bank_section
from ductrun.drawings.box_view import box_view
from ductrun.drawings.pull_diagram import Pull, pull_diagram
from ductrun.drawings.registry import DRAWINGS, limits_of, movement
from ductrun.drawings.run_route import run_route
from ductrun.drawings.steel import steel_words
from ductrun.drawings.trench_view import Ground, ground_of
from ductrun.engineering.bank import bare
from ductrun.engineering.rounding import over
from ductrun.kit.telling import Telling
from ductrun.subjects.bank.reinforcing import Bars
from ductrun.subjects.duct_run.assessment import AssessedStretch, DuctRun, RunPull
from ductrun.subjects.feeder.rating import Ampacity
from ductrun.subjects.pulling.choices import PullDirection

MOST_PULLS_DRAWN: Final = 12
MOST_BOXES_DRAWN: Final = 12


class AlikePulls(NamedTuple):
    """A pull between two stops, and the circuits that are pulled alike."""

    circuits: list[str]
    start: str
    end: str
    pull: RunPull

    @property
    def name(self) -> str:
        """What it is called."""
        return f"{', '.join(self.circuits)}: {self.start} to {self.end}"


def section_drawings(run: DuctRun, telling: Telling) -> list[str]:
    """Draw the section of every buried stretch with its duct names; alike ones once, under all their names."""
    alike: dict[tuple[object, Ground, str], list[AssessedStretch]] = {}
    for stretch in run.stretches:
        if stretch.burial is not None:
            bars = _bars(stretch)
            steel = "" if bars is None else steel_words(bars, telling)
            key = (stretch.burial.envelope, ground_of(stretch.burial.trench), steel)
            alike.setdefault(key, []).append(stretch)
    return [_section(stretches, run, telling) for stretches in alike.values()]


def _section(stretches: Sequence[AssessedStretch], run: DuctRun, telling: Telling) -> str:
    first = stretches[0]
    burial = first.burial
    assert burial is not None  # noqa: S101  (only buried ones come here)
    circuits = _circuits(first, run)
    name = ", ".join([stretch.laid.name for stretch in stretches])
    ground, varies = ground_of(burial.trench), over(burial.earth.greatest, burial.earth.least)
    bars = _bars(first)
    return bank_section(burial.envelope, telling, ground, name=name, circuits=circuits, bars=bars, deepest=varies)


def rack_drawings(run: DuctRun, telling: Telling) -> list[str]:
    """Draw how the ducts of every stretch above ground lie, by their names, but where a section in earth shows them so;
    alike ones once, under all their names.
    """
    shown = {tuple(one.burial.envelope.bank.counts) for one in run.stretches if one.burial is not None}
    alike: dict[tuple[int, ...], list[AssessedStretch]] = {}
    for stretch in run.stretches:
        ducts = stretch.bank.placed
        if stretch.above is not None and ducts is not None and len(ducts.ducts) > 1:
            alike.setdefault(tuple(ducts.counts), []).append(stretch)
    alike = {counts: stretches for counts, stretches in alike.items() if counts not in shown}
    return [_rack(stretches, run, telling) for stretches in alike.values()]


def _rack(stretches: Sequence[AssessedStretch], run: DuctRun, telling: Telling) -> str:
    name = ", ".join([stretch.laid.name for stretch in stretches])
    ducts = bare(stretches[0].bank.in_its_place)
    return bank_section(ducts, telling, name=name, circuits=_circuits(stretches[0], run), to_scale=False)


def _circuits(stretch: AssessedStretch, run: DuctRun) -> dict[str, str]:
    """Give the circuits by the names of their ducts."""
    names = [duct.name for duct in stretch.bank.ducts]
    return {names[duct]: circuit.placed.name for circuit in run.circuits for duct in circuit.placed.ducts}


def _bars(stretch: AssessedStretch) -> Bars | None:
    pour = None if stretch.burial is None else stretch.burial.encasement
    return None if pour is None else pour.bars


def heat_drawings(run: DuctRun, telling: Telling) -> list[str]:
    """Draw the temperatures of every bank whose circuits have a load; alike ones once, under all their names."""
    alike: dict[int, tuple[Ampacity, list[str]]] = {}
    for stretch in run.stretches:
        if stretch.ampacity is not None:
            alike.setdefault(id(stretch.ampacity), (stretch.ampacity, []))[1].append(stretch.laid.name)
    return [bank_heat(found, telling, name=", ".join(names)) for found, names in alike.values()]


def box_drawings(run: DuctRun, telling: Telling) -> list[str]:
    """Draw every box whose least size is told; no more than MOST_BOXES_DRAWN."""
    sized = [(stop.name, box) for stop, box in zip(run.stops, run.boxes, strict=True) if box is not None]
    return [box_view(box, telling, name=name) for name, box in sized[:MOST_BOXES_DRAWN]]


def wall_drawings(run: DuctRun, telling: Telling) -> list[str]:
    """Draw what is above ground: its movement where that is known, else its straps."""
    drawn = []
    for stretch in run.stretches:
        above = stretch.above
        if above is not None and above.movement is not None:
            drawn.append(movement(above.movement, telling, [gap.position for gap in above.gaps]))
        elif above is not None:
            drawn += [DRAWINGS["supports"](supported, telling) for supported in above.supported]
    return drawn


def alike_pulls(run: DuctRun) -> list[AlikePulls]:
    """Give every pull once, with the circuits that are pulled alike between the same stops."""
    found: dict[object, AlikePulls] = {}
    for circuit in run.circuits:
        for one in circuit.pulls:
            pull = one.pull
            ends = run.stops[pull.start].name, run.stops[pull.end].name
            alike = found.setdefault(_figures(pull), AlikePulls([], *ends, pull))
            if circuit.placed.name not in alike.circuits:
                alike.circuits.append(circuit.placed.name)
    return list(found.values())


def _figures(pull: RunPull) -> object:
    """Give what is the same of pulls that are alike: where they are, and what every section has in both directions."""
    ways = (pull.pulled.forward.pulling.pulled, pull.pulled.backward.pulling.pulled)
    return pull.start, pull.end, pull.stop, *map(tuple, ways)


def pull_drawing(alike: AlikePulls, telling: Telling) -> str:
    """Draw a pull both ways against its limits."""
    found = alike.pull.pulled
    backward = found.better is PullDirection.REVERSED
    pull = Pull(0.0, found.pulling.sections, found.forward, found.backward, backward)
    limits = limits_of(found.pulling, telling)
    return pull_diagram([pull], found.pulling.load.weight, limits, telling, name=alike.name)


def run_drawings(run: DuctRun, telling: Telling) -> list[str]:
    """Give the drawings of a run in the order of a submittal; of pulls and boxes no more than the most drawn."""
    return [
        run_route(run, telling),
        *section_drawings(run, telling),
        *rack_drawings(run, telling),
        *heat_drawings(run, telling),
        *box_drawings(run, telling),
        *wall_drawings(run, telling),
        *[pull_drawing(one, telling) for one in alike_pulls(run)[:MOST_PULLS_DRAWN]],
    ]
