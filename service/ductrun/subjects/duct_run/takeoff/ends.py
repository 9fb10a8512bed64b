"""What ducts take where they end and from stop to stop: plugs, caps, bodies, walls gone through, mandrel and cord."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.subjects.duct_run.assessment import AssessedStretch, DuctRun
from ductrun.subjects.duct_run.choices import PlaceKind
from ductrun.subjects.duct_run.mandrels import mandrels_of
from ductrun.subjects.duct_run.places import CONFINED
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.duct_run.takeoff.entries import Entry, SizeOfLine, sized
from ductrun.subjects.parts.takeoff import TakeoffItem

_CLOSED = {PlaceKind.CAPPED, PlaceKind.EXISTING_DUCT, PlaceKind.CONDUIT_BODY}  # nothing to plug there


class _End(NamedTuple):
    """The ducts of a stretch at one of its stops: the index of the stretch, the stop, and the ducts by conduit."""

    stretch: int
    stop: Stop
    alike: dict[SizeOfLine, list[int]]


def ends_and_spans(run: DuctRun, tell: Telling) -> Iterator[Entry]:
    """Give what every duct takes from stop to stop; at ends alone what is new."""
    body_before = False
    for number, indexes in enumerate(run.spans):
        taken = {
            duct for one in run.circuits if one.placed.start <= number < one.placed.end for duct in one.placed.ducts
        }
        sides = ((indexes[0], run.stops[number]), (indexes[-1], run.stops[number + 1]))
        ends = [_end(index, stop, run.stretches[index], tell) for index, stop in sides]
        for place, end in enumerate(ends):
            if end is None:
                continue
            yield from _at_end(end, taken)
            if end.stop.given.kind is PlaceKind.CONDUIT_BODY and not (body_before and place == 0):
                yield from _each(TakeoffItem.CONDUIT_BODY, end, ordered=True)
        body_before = ends[1] is not None
        yield from _through(run, number, indexes, tell)


def _end(index: int, stop: Stop, stretch: AssessedStretch, tell: Telling) -> _End | None:
    """Give the ducts of a stretch at a stop, None where they are there already."""
    if not stretch.pieces:
        return None
    rises = any(riser.stop is stop for riser in stretch.risers)
    alike: dict[SizeOfLine, list[int]] = {}
    lying = {
        id(conduit): alike.setdefault(sized(conduit_of_riser(stop, conduit) if rises else conduit, tell), [])
        for conduit in stretch.bank.conduits
    }
    for duct, place in enumerate(stretch.bank.ducts):
        lying[id(place.conduit)].append(duct)
    return _End(index, stop, alike)


def _each(item: TakeoffItem, end: _End, *, ordered: bool) -> Iterator[Entry]:
    """Give one of an item for every duct at an end."""
    for size, ducts in end.alike.items():
        where, words = f"stretches/{end.stretch}/length", f"{len(ducts)} at {end.stop.name}"
        yield Entry(item, len(ducts), end.stretch, where, words, *size, ordered=ordered)


def _at_end(end: _End, taken: set[int]) -> Iterator[Entry]:
    """Give what stands at one end of ducts: a cap on each, a plug in each spare that is open, the wall gone through."""
    kind = end.stop.given.kind
    if kind is PlaceKind.CAPPED:
        yield from _each(TakeoffItem.CAP, end, ordered=True)
    if kind in CONFINED:
        yield from _each(TakeoffItem.WALL_PENETRATION, end, ordered=False)
    if kind in _CLOSED:
        return
    for size, ducts in end.alike.items():
        spares = sum(duct not in taken for duct in ducts)
        words = f"{spares} {'spare' if spares == 1 else 'spares'} at {end.stop.name}"
        yield Entry(TakeoffItem.DUCT_PLUG, spares, end.stretch, "spare_count", words, *size, ordered=True)


def _through(run: DuctRun, number: int, indexes: range, tell: Telling) -> Iterator[Entry]:
    """Give what goes through every duct between two stops: the mandrel, and the cord."""
    stretches = [run.stretches[index] for index in indexes]
    count, at = len(stretches[0].bank.ducts), indexes[0]
    way = f"{run.stops[number].name} to {run.stops[number + 1].name}"
    sizes: dict[str | None, int] = {}
    mandrels = mandrels_of(stretches)
    known = {diameter: text_of(tell.size(diameter)) for diameter in set(mandrels.values())}
    for duct in range(count):
        size = known[mandrels[duct]] if duct in mandrels else None
        sizes[size] = sizes.get(size, 0) + 1
    for size, ducts in sizes.items():
        words = f"{ducts} {'duct' if ducts == 1 else 'ducts'}, {way}"
        yield Entry(TakeoffItem.MANDREL_PASS, ducts, at, "ducts", words, size=size)
    length = sum([stretch.laid.length for stretch in stretches])
    tail = max([stretch.cord_tail for stretch in stretches])
    words = f"{count} x ({text_of(tell.distance(length))} + 2 x {text_of(tell.distance(tail))})"
    cord = count * (length + 2 * tail)
    yield Entry(TakeoffItem.PULL_CORD, cord, at, f"stretches/{at}/length", words, ordered=True)
