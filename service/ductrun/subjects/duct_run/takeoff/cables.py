"""The cables of every pull: lengths, reels, pulling eyes and lubricant."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.takeoff.entries import Entry
from ductrun.subjects.parts.takeoff import TakeoffItem
from ductrun.subjects.pulling.choices import Attachment
from ductrun.subjects.pulling.practice import ATTACHMENT


def cable_entries(run: DuctRun, tell: Telling) -> Iterator[Entry]:
    """Give cable, reels, eyes and lubricant of every pull."""
    for number, circuit in enumerate(run.circuits):
        for at, (ducts, pull) in enumerate(circuit.pulls):
            index, place = run.spans[pull.start][0], f"circuits/{number}/pulls/{at}"
            way = f"{circuit.placed.name}, {run.stops[pull.start].name} to {run.stops[pull.end].name}"
            yield Entry(
                TakeoffItem.LUBRICANT,
                pull.pulled.lubricant_volume * len(ducts),
                index,
                f"{place}/pull/lubricant_volume",
                f"{len(ducts)} x {text_of(tell.liquid_volume(pull.pulled.lubricant_volume))}, {way}",
                ordered=True,
            )
            held = _attachment(run, number)
            if held is Attachment.PULLING_EYE:
                yield Entry(TakeoffItem.PULLING_EYE, len(ducts), index, place, way, ordered=True)
            for line, cable in zip(pull.order, pull.pulled.pulling.cables.lines, strict=True):
                number_of = line.cable_count * len(ducts)
                size = _cable_size(cable.given, tell)
                each = text_of(tell.given(line.order_length))
                yield Entry(
                    TakeoffItem.CABLE,
                    line.exact_length * number_of,
                    index,
                    f"{place}/cables_to_order",
                    f"{number_of} x {each}, {way}",
                    size=size,
                    waste=line.waste_percent,
                    order=line.order_length.si * number_of,
                )
                if line.reel_count is not None:
                    reels = line.reel_count * len(ducts)
                    yield Entry(
                        TakeoffItem.CABLE_REEL,
                        reels,
                        index,
                        f"{place}/cables_to_order",
                        way,
                        size=size,
                        ordered=True,
                    )


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
