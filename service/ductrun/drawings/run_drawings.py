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
from ductrun.drawings.trench_view import Ground, ground_of
from ductrun.kit.telling import Telling
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
    alike: dict[tuple[object, Ground], list[AssessedStretch]] = {}
    for stretch in run.stretches:
        if stretch.burial is not None:
            key = (stretch.burial.envelope, ground_of(stretch.burial.trench))
            alike.setdefault(key, []).append(stretch)
    return [_section(stretches, run, telling) for stretches in alike.values()]


def _section(stretches: Sequence[AssessedStretch], run: DuctRun, telling: Telling) -> str:
    first = stretches[0]
    burial = first.burial
    assert burial is not None  # noqa: S101  (only buried ones come here)
    circuits = {
        first.bank.ducts[duct].name: circuit.placed.name for circuit in run.circuits for duct in circuit.placed.ducts
    }
    name = ", ".join([stretch.laid.name for stretch in stretches])
    return bank_section(burial.envelope, telling, ground_of(burial.trench), name=name, circuits=circuits)


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
        *heat_drawings(run, telling),
        *box_drawings(run, telling),
        *wall_drawings(run, telling),
        *[pull_drawing(one, telling) for one in alike_pulls(run)[:MOST_PULLS_DRAWN]],
    ]
