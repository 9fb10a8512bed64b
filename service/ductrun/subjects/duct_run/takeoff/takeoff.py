"""The takeoff of a run: what every part of it takes, gathered by item, and told line by line."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.kit.telling import Telling
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.takeoff.above_ground import above_ground
from ductrun.subjects.duct_run.takeoff.bank import bank_entries
from ductrun.subjects.duct_run.takeoff.cables import cable_entries
from ductrun.subjects.duct_run.takeoff.ducts import duct_entries
from ductrun.subjects.duct_run.takeoff.ends import ends_and_spans
from ductrun.subjects.duct_run.takeoff.entries import Entry
from ductrun.subjects.duct_run.takeoff.ground import ground_entries
from ductrun.subjects.duct_run.takeoff.lines import takeoff_of
from ductrun.subjects.parts.takeoff import Takeoff


def takeoff_of_run(run: DuctRun, tell: Telling) -> Takeoff:
    """Give the takeoff of a run, priced by the caller's rates."""
    entries = entries_of(run, tell) if run.entries is None else run.entries
    names = [stretch.laid.name for stretch in run.stretches]
    return takeoff_of(entries, names, run.given.rates, tell)


def entries_of(run: DuctRun, tell: Telling) -> Iterator[Entry]:
    """Give all that a run takes, part by part; `tell` writes the arithmetic."""
    for index, stretch in enumerate(run.stretches):
        yield from ground_entries(index, stretch, tell)
        yield from bank_entries(index, stretch, tell)
        for at, piece in enumerate(stretch.pieces):
            yield from duct_entries(index, at, stretch, piece, tell)
        yield from above_ground(index, stretch, tell)
    yield from ends_and_spans(run, tell)
    yield from cable_entries(run, tell)
