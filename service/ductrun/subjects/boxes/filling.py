"""The volume that small conductors take in a box, and the standard box that has it."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import box_size as engineering
from ductrun.engineering.rounding import under
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.boxes.box_cables import ALLOWANCES
from ductrun.subjects.boxes.placing import Entered
from ductrun.tables import TABLES
from ductrun.tables.box_rows import StandardBox
from ductrun.units import Volume

_BOXES: list[tuple[float, StandardBox]] = sorted(
    ((Volume.parse(row.volume_in3, "in3").si, row) for row in TABLES["standard_boxes"]), key=lambda one: one[0]
)


class SmallConductors(NamedTuple):
    """Small conductors in a box: how many count, the volume they take [m3], and the least standard box, None where it
    holds larger conductors too or none is so large.
    """

    conductor_count: int
    volume: float
    standard_box: StandardBox | None


def volume_of(entered: Entered, sheet: Worksheet) -> SmallConductors | None:
    """Give the volume that the circuits of small conductors take; None without any, and above the threshold voltage.

    A conductor that passes through counts once, one that is spliced wherever it enters.
    """
    small = [] if entered.by_cable else [one for one in enumerate(entered.circuits) if not one[1].large]
    if not small:
        return None
    counts = []
    for number, circuit in small:
        ends = sum(number in entry.circuits for entry in entered.entries) if circuit.spliced else 1
        for cable in circuit.cables or ():
            assert cable.size is not None  # noqa: S101  (one that is not known is large)
            counts.append((cable.cable_count * cable.conductors * ends, ALLOWANCES[cable.size]))
    sheet.rule("box_fill")
    volume = engineering.conductor_volume(counts)
    fitting = [row for held, row in _BOXES if not under(held, volume)]
    alone = len(small) == len(entered.circuits)
    box = fitting[0] if alone and fitting else None
    return SmallConductors(sum(count for count, _ in counts), volume, box)
