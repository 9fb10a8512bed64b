"""The cables of every pull: lengths, reels, pulling eyes and lubricant."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.subjects.duct_run.assessment import DuctRun, RunPull
from ductrun.subjects.duct_run.takeoff.entries import Entry, ducts_in_words, sized
from ductrun.subjects.parts.takeoff import TakeoffItem
from ductrun.subjects.pulling.cable_order import OrderedLine
from ductrun.subjects.pulling.choices import Attachment
from ductrun.subjects.pulling.practice import ATTACHMENT


def cable_entries(run: DuctRun, tell: Telling) -> Iterator[Entry]:
    """Give cable, reels, eyes and lubricant of every pull."""
    for number, circuit in enumerate(run.circuits):
        eyes = _attachment(run, number) is Attachment.PULLING_EYE
        sizes = [_cable_size(line.given, tell) for line in circuit.placed.cables.pulled.lines]
        for at, (ducts, pull) in enumerate(circuit.pulls):
            index, place, count = run.spans[pull.start][0], f"circuits/{number}/pulls/{at}", len(ducts)
            way = f"{circuit.placed.name}, {run.stops[pull.start].name} to {run.stops[pull.end].name}"
            volume = pull.pulled.lubricant_volume
            yield Entry(
                TakeoffItem.LUBRICANT,
                volume * count,
                index,
                f"{place}/pull/lubricant_volume",
                f"{count} x {text_of(tell.liquid_volume(volume))}, {way}",
                ordered=True,
            )
            if eyes:
                yield Entry(TakeoffItem.PULLING_EYE, count, index, place, way, ordered=True)
            yield from _supports(run, pull, count, f"{place}/pull/cable_supports", way, tell)
            for line, size in zip(pull.order, sizes, strict=True):
                yield from _line(line, size, count, index, f"{place}/cables_to_order", way, tell)


def _supports(run: DuctRun, pull: RunPull, ducts: int, place: str, way: str, tell: Telling) -> Iterator[Entry]:
    """Give the supports of cable that hangs, by the stretch and the conduit it hangs in."""
    pulling = pull.pulled.pulling
    indexes = [index for index in run.spans[pull.start] for _ in run.stretches[index].laid.sections]
    for one in pulling.supports.hung:
        apart = text_of(tell.given(one.spacing))
        yield Entry(
            TakeoffItem.CABLE_SUPPORT,
            one.support_count * ducts,
            indexes[one.first],
            place,
            f"{ducts_in_words(ducts)} x {one.support_count}, at the top and every {apart} below it, "
            f"there in boxes that are not in this list, over a rise of {text_of(tell.distance(one.rise))}, {way}",
            *sized(pulling.route.conduits[one.first], tell),
            ordered=True,
        )


def _line(line: OrderedLine, size: str, ducts: int, index: int, place: str, way: str, tell: Telling) -> Iterator[Entry]:
    """Give alike cables of a pull in so many ducts, and their reels."""
    count = line.cable_count * ducts
    yield Entry(
        TakeoffItem.CABLE,
        line.exact_length * count,
        index,
        place,
        f"{count} x {text_of(tell.given(line.order_length))}, {way}",
        size=size,
        waste=line.waste_percent,
        order=line.order_length.si * count,
    )
    if line.reel_count is not None:
        yield Entry(TakeoffItem.CABLE_REEL, line.reel_count * ducts, index, place, way, size=size, ordered=True)


def _attachment(run: DuctRun, number: int) -> Attachment:
    own, shared = run.circuits[number].placed.given.pulling, run.given.pulling
    for practice in (own, shared):
        if practice is not None and practice.attachment is not None:
            return practice.attachment
    return ATTACHMENT.value


def _cable_size(cable: object, tell: Telling) -> str:
    """Say what a cable is, as it is ordered."""
    size = getattr(cable, "size", None)
    words = [str(word) for word in (size, getattr(cable, "insulation", None), getattr(cable, "material", None)) if word]
    if size is None:
        conductor = getattr(cable, "conductor", None)
        if conductor is not None and conductor.size is not None:
            words.append(f"{conductor.size} {conductor.material}")
        words.append(f"{text_of(tell.given(cable.diameter))} diameter")  # type: ignore[attr-defined]  # a measured one
    return " ".join(words)
