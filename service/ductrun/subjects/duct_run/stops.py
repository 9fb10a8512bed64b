"""The stops of a run, its ends and pull points in order, and the stretches between them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.conduit.choices import RunEnd
from ductrun.subjects.duct_run.choices import PlaceKind
from ductrun.subjects.duct_run.form import DuctRunRequest, Stretch
from ductrun.subjects.duct_run.places import RunPlace

_BELL = {PlaceKind.MANHOLE, PlaceKind.VAULT, PlaceKind.HANDHOLE, PlaceKind.PAD, PlaceKind.POLE_BASE}
_ADAPTER = {PlaceKind.PULL_BOX, PlaceKind.EQUIPMENT}
_FINISHES = {
    **dict.fromkeys(_BELL, RunEnd.END_BELL),
    **dict.fromkeys(_ADAPTER, RunEnd.ADAPTER),
    PlaceKind.CONDUIT_BODY: RunEnd.CONDUIT_BODY,
    PlaceKind.EXISTING_DUCT: RunEnd.COUPLING,
    PlaceKind.STUB_UP: RunEnd.NONE,
    PlaceKind.CAPPED: RunEnd.NONE,
}


class Stop(NamedTuple):
    """An end or a pull point: as given, its name, and the sheet of its place."""

    given: RunPlace
    name: str
    sheet: Worksheet

    def finish(self, *, belled: bool) -> RunEnd:
        """Give how ducts finish here: as given, else by what stands here and whether bells fit them."""
        if self.given.finish is not None:
            return self.given.finish
        usual = _FINISHES[self.given.kind]
        return RunEnd.NONE if usual is RunEnd.END_BELL and not belled else usual


Ends = tuple[Stop | None, Stop | None]


def stops_of(request: DuctRunRequest, sheet: Worksheet) -> list[Stop]:
    """Give the ends and pull points of a run in order, each with a name of its own."""
    stops = [Stop(request.start, request.start.name or "start", sheet.within("start"))]
    for index, stretch in enumerate(request.stretches):
        if stretch.pull_point is not None:
            name = stretch.pull_point.name or f"pull point {len(stops)}"
            stops.append(Stop(stretch.pull_point, name, sheet.within(f"stretches/{index}/pull_point")))
    last = request.stretches[-1].pull_point
    faults: list[Fault] = []
    if last is not None:
        words = "What stands at the end of the run is given as its end."
        faults.append(stops.pop().sheet.fault("", "contradiction", words))
    stops.append(Stop(request.end, request.end.name or "end", sheet.within("end")))
    seen: set[str] = set()
    for stop in stops:
        if stop.name in seen:
            faults.append(stop.sheet.fault("name", "name_given_twice", "Another place has it: give its own."))
        seen.add(stop.name)
    if faults:
        raise UnanswerableError(*faults)
    return stops


def spans_of(stretches: Sequence[Stretch]) -> list[range]:
    """Give the stretches from every stop to the next, by their indexes."""
    last = len(stretches) - 1
    ends = [index + 1 for index, one in enumerate(stretches) if one.pull_point is not None or index == last]
    return [range(start, end) for start, end in zip([0, *ends], ends, strict=False)]


def ends_of(stops: Sequence[Stop], spans: Sequence[range]) -> list[Ends]:
    """Give the stops at the ends of every stretch, None where it goes on from the one before or in the next."""
    return [
        (before if index == span[0] else None, after if index == span[-1] else None)
        for span, before, after in zip(spans, stops, stops[1:], strict=False)
        for index in span
    ]
