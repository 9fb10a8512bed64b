"""POST /v1/pull-box: how large must a box be for what enters it."""

from __future__ import annotations

from collections import Counter
from typing import Annotated

from pydantic import Field

from ductrun.kit.forms import Edition, between
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.boxes.boxing import Boxing
from ductrun.subjects.boxes.entries import Circuits, Entries
from ductrun.subjects.boxes.placing import enter
from ductrun.subjects.boxes.pull_box_told import PullBoxResult, tell
from ductrun.subjects.boxes.sizing import Sized, cover_of, size_box, sized_by_cable
from ductrun.units import Voltage

CircuitVoltage = Annotated[Voltage, between(Voltage, 1, 800_000, "V")]


class PullBoxRequest(Boxing):
    """What enters a box."""

    voltage: CircuitVoltage = Field(
        description="Highest voltage between conductors in it: over the threshold of the edition the cables size it.",
        examples=[{"value": 480, "unit": "V"}],
    )
    entries: Entries = Field(description="Every raceway that enters it.")
    circuits: Circuits = Field(description="The circuits in them, each in the entries by which it goes in and out.")
    code_edition: Edition = None


def assess(request: PullBoxRequest, sheet: Worksheet) -> Sized:
    """Size the box of a request."""
    sheet.follow_edition(request.code_edition)
    by_cable, cover = sized_by_cable(request.voltage.si, sheet), cover_of(request, sheet)
    places = sheet.within("entries"), sheet.within("circuits")
    entered = enter(request.entries, request.circuits, by_cable, cover, *places)
    return size_box(request, entered, cover, sheet)


def steps(request: PullBoxRequest) -> float:
    """Bound the work by the pulls, one between every two entries of a circuit, held against every box."""
    entries = Counter(name for entry in request.entries for name in entry.circuits)
    pulls = sum(count * (count - 1) // 2 for count in entries.values())
    boxes = len(request.box_sizes or ()) + (request.box is not None)
    cables = sum(len(circuit.cables or ()) for circuit in request.circuits)
    return 20.0 + 10.0 * pulls + 5.0 * len(request.entries) + 60.0 * boxes + 5.0 * cables


def _duct(size: str) -> dict[str, object]:
    return {"kind": "listed", "type": "pvc_schedule_40", "trade_size": size}


def _inches(value: float) -> dict[str, object]:
    return {"value": value, "unit": "in"}


def _wire(size: str) -> list[dict[str, object]]:
    return [{"count": 3, "cable": {"kind": "listed", "insulation": "THWN-2", "size": size}}]


OPERATION = Operation(
    name="pull-box",
    operation_id="calculate_pull_box",
    summary="Size of a pull box",
    description="Gives the least length, width and depth of a box, handhole or manhole by what enters it, with the "
    "rule and the entries that decided each: straight, angle and U pulls and splices, by raceways or above the "
    "threshold voltage by cables; the distance of entries, the volume of small conductors, the wall for racks; holds "
    "a box against them, and names the smallest of those that can be had.",
    request=PullBoxRequest,
    result=PullBoxResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "structure": "pull_box",
        "voltage": {"value": 480, "unit": "V"},
        "removable_cover": "front",
        "entries": [
            {
                "wall": "left",
                "row": 1,
                "position": _inches(19),
                "offset": _inches(3),
                "conduit": _duct("3"),
                "circuits": ["feeder 1"],
            },
            {
                "wall": "bottom",
                "row": 1,
                "position": _inches(19),
                "offset": _inches(3),
                "conduit": _duct("3"),
                "circuits": ["feeder 1"],
            },
        ],
        "circuits": [{"name": "feeder 1", "cables": _wire("350 kcmil"), "spliced": False}],
        "box": {"length": _inches(24), "width": _inches(24), "depth": _inches(8)},
        "box_sizes": [
            {"length": _inches(18), "width": _inches(18), "depth": _inches(6)},
            {"length": _inches(24), "width": _inches(24), "depth": _inches(8)},
        ],
        "code_edition": "2023",
    },
)
