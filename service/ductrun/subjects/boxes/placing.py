"""Entries and circuits of a request as assessed parts: what enters where, and how every circuit goes through."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import combinations
from typing import NamedTuple

from ductrun.engineering.rounding import over
from ductrun.kit.worksheet import Fault, Gathering, UnanswerableError, Worksheet
from ductrun.subjects.boxes.box_cables import BoxCable, settle_box_cables
from ductrun.subjects.boxes.choices import BoxWall, PullKind
from ductrun.subjects.boxes.entries import MOST_SPLICED, ROW, SPLICED, BoxCircuit, BoxEntry
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.conduit import SIZES, ListedConduit, MeasuredConduit, find_row, outside_diameter
from ductrun.units import Length

AXES = {
    BoxWall.LEFT: 0,
    BoxWall.RIGHT: 0,
    BoxWall.TOP: 1,
    BoxWall.BOTTOM: 1,
    BoxWall.BACK: 2,
    BoxWall.FRONT: 2,
}
OPPOSITE = {
    BoxWall.LEFT: BoxWall.RIGHT,
    BoxWall.RIGHT: BoxWall.LEFT,
    BoxWall.TOP: BoxWall.BOTTOM,
    BoxWall.BOTTOM: BoxWall.TOP,
    BoxWall.BACK: BoxWall.FRONT,
    BoxWall.FRONT: BoxWall.BACK,
}
# the axis along the rows of the walls across an axis, and the one across their rows
ALONG, ACROSS = (1, 0, 0), (2, 2, 1)
_TRADE_SIZES = [Length.parse(float(sum(Fraction(part) for part in size.value.split("-"))), "in") for size in TradeSize]
_IRON_PIPE = SIZES[ConduitType.PVC_SCHEDULE_40]
_BY_NAME = dict(zip(TradeSize, _TRADE_SIZES, strict=True))


class Entry(NamedTuple):
    """A raceway as it enters: its wall and row, its center in the wall [m] where that was given, its trade size and
    outside diameter [m], None where none was given; the circuits in it by their index, and the `sheet` of its place.
    """

    wall: BoxWall
    row: int
    position: float | None
    offset: float | None
    size: float | None
    outside: float | None
    circuits: tuple[int, ...]
    sheet: Worksheet

    @property
    def axis(self) -> int:
        """The axis across which its wall stands."""
        return AXES[self.wall]


class Circuit(NamedTuple):
    """A circuit by its name: its cables, None where they were not given, whether it is spliced, and its `sheet`."""

    name: str
    cables: list[BoxCable] | None
    spliced: bool
    sheet: Worksheet

    @property
    def large(self) -> bool:
        """Whether it has a conductor of 4 AWG or larger, or none that is known to be smaller."""
        return self.cables is None or any(cable.large for cable in self.cables)


class Pull(NamedTuple):
    """A circuit, the two entries it goes through, all by their index, and how it goes; in a run the duct it lies in."""

    circuit: int
    one: int
    other: int
    kind: PullKind
    duct: str | None = None

    @property
    def entries(self) -> str:
        """The two entries in words."""
        return f"entries {self.one + 1} and {self.other + 1}" if self.duct is None else f"both ends of duct {self.duct}"


class Entered(NamedTuple):
    """All that enters a box, and how it goes through; `by_cable` is whether its cables size the box and not its
    raceways.
    """

    entries: list[Entry]
    circuits: list[Circuit]
    pulls: list[Pull]
    by_cable: bool


def enter(
    entries: Sequence[BoxEntry],
    circuits: Sequence[BoxCircuit],
    by_cable: bool,
    removable: BoxWall,
    entries_sheet: Worksheet,
    circuits_sheet: Worksheet,
) -> Entered:
    """Settle what enters a box, and pair the entries by circuit; all faults at once."""
    faults = Gathering()
    settled = []
    for index, circuit in enumerate(circuits):
        with faults:
            settled.append(_circuit(circuit, by_cable, circuits_sheet.within(str(index))))
    names = _names(circuits, circuits_sheet, faults)
    placed = []
    for index, entry in enumerate(entries):
        with faults:
            placed.append(_entry(entry, names, by_cable, removable, entries_sheet.within(str(index))))
    faults.stop()
    faults.faults += _unpaired(placed, settled)
    faults.stop()
    return Entered(placed, settled, pulls_of(placed, settled), by_cable)


def kind_of(one: BoxWall, other: BoxWall) -> PullKind:
    """Say how a conductor goes from one wall to another."""
    if one is other:
        return PullKind.U_PULL
    return PullKind.STRAIGHT if OPPOSITE[one] is other else PullKind.ANGLE


def pulls_of(entries: Sequence[Entry], circuits: Sequence[Circuit]) -> list[Pull]:
    """Give every pair of entries that hold the same circuit."""
    return [
        Pull(number, one, other, kind_of(entries[one].wall, entries[other].wall))
        for number in range(len(circuits))
        for one, other in combinations([i for i, entry in enumerate(entries) if number in entry.circuits], 2)
    ]


def _circuit(circuit: BoxCircuit, by_cable: bool, sheet: Worksheet) -> Circuit:
    cables = None
    if circuit.cables is not None:
        cables = settle_box_cables(circuit.cables, by_cable, sheet.within("cables"))
    elif by_cable:
        raise UnanswerableError(
            sheet.fault("cables", "missing", "At this voltage the diameters of the cables size the box: give them.")
        )
    return Circuit(circuit.name, cables, sheet.settle("spliced", circuit.spliced, SPLICED), sheet)


def _names(circuits: Sequence[BoxCircuit], sheet: Worksheet, faults: Gathering) -> dict[str, int]:
    names: dict[str, int] = {}
    for index, circuit in enumerate(circuits):
        if circuit.name in names:
            faults.faults.append(
                sheet.fault(f"{index}/name", "name_given_twice", "Another circuit has this name: give each its own.")
            )
        names.setdefault(circuit.name, index)
    return names


def _entry(entry: BoxEntry, names: dict[str, int], by_cable: bool, removable: BoxWall, sheet: Worksheet) -> Entry:
    faults = Gathering()
    if entry.wall is removable:
        allowed = [wall.value for wall in BoxWall if wall is not removable]
        faults.faults.append(
            sheet.fault("wall", "entry_in_the_cover", "This side is the removable cover: enter by another.", allowed)
        )
    held: list[int] = []
    for index, name in enumerate(entry.circuits):
        if name not in names or names[name] in held:
            twice = name in names
            faults.faults.append(
                sheet.fault(
                    f"circuits/{index}",
                    "name_given_twice" if twice else "no_such_circuit",
                    "It is named once before." if twice else "No circuit has this name: list it under circuits.",
                )
            )
        else:
            held.append(names[name])
    size = outside = None
    with faults:
        size, outside = _raceway(entry, by_cable, sheet)
    faults.stop()
    row = sheet.settle("row", entry.row, ROW)
    position, offset = (None if place is None else place.si for place in (entry.position, entry.offset))
    return Entry(entry.wall, row, position, offset, size, outside, tuple(held), sheet)


def _raceway(entry: BoxEntry, by_cable: bool, sheet: Worksheet) -> tuple[float | None, float | None]:
    """Give trade size and outside diameter [m] of the raceway of an entry."""
    if entry.conduit is None:
        if by_cable:
            return None, None
        raise UnanswerableError(
            sheet.fault("conduit", "missing", "At this voltage the raceway sizes the box: give its type and size.")
        )
    return raceway_of(entry.conduit, sheet.within("conduit"))


def raceway_of(conduit: ListedConduit | MeasuredConduit, place: Worksheet) -> tuple[float, float]:
    """Give trade size and outside diameter [m] of a raceway, on the sheet of its conduit."""
    if conduit.kind == "measured":
        outside = outside_diameter(conduit, place)
        return nominal_size(outside), outside
    return _BY_NAME[conduit.trade_size].si, _listed_outside(conduit, place)


def _listed_outside(conduit: ListedConduit | MeasuredConduit, place: Worksheet) -> float:
    """Give the outside diameter of a listed conduit [m], but no less than that of iron-pipe size.

    Connectors of one trade size go through one hole, whatever the raceway.
    """
    assert conduit.kind == "listed"  # noqa: S101  (the other kind has been measured)
    row, pipe = find_row(conduit, place), _IRON_PIPE.get(conduit.trade_size) or _IRON_PIPE[TradeSize.SIZE_1_2]
    widest = max((row, pipe), key=lambda one: 0.0 if one.outside_diameter is None else one.outside_diameter.si)
    place.cite(widest.wall_source)
    return 0.0 if widest.outside_diameter is None else widest.outside_diameter.si


def nominal_size(outside: float) -> float:
    """Give the trade size [m] of a raceway by its outside diameter [m]: the largest that is not wider than it is.

    No raceway is narrower than its trade size, so this is never too small; beyond the largest the diameter itself.
    """
    largest = _TRADE_SIZES[-1].si
    if over(outside, 1.125 * largest):
        return outside
    fitting = [size.si for size in _TRADE_SIZES if not over(size.si, outside)]
    return fitting[-1] if fitting else _TRADE_SIZES[0].si


def _unpaired(entries: Sequence[Entry], circuits: Sequence[Circuit]) -> list[Fault]:
    """Say which circuits do not leave again, are in no entry, or are in more than they can pass unspliced."""
    found = []
    for number, circuit in enumerate(circuits):
        held = [entry for entry in entries if number in entry.circuits]
        if not held:
            words = "No entry holds this circuit: name it where it enters and where it leaves."
            found.append(circuit.sheet.fault("name", "enters_nowhere", words))
        elif len(held) == 1:
            place = held[0].circuits.index(number)
            words = "This circuit enters here and never leaves: name it at the entry by which it does."
            found.append(held[0].sheet.fault(f"circuits/{place}", "never_leaves", words))
        elif len(held) > 2 and not circuit.spliced:
            words = (
                f"Conductors that are not spliced pass two entries, and this circuit is in {len(held)}: say that it is "
                "spliced, or list each set of its conductors as a circuit."
            )
            found.append(circuit.sheet.fault("spliced", "more_than_two_entries", words, ["true"]))
        elif len(held) > MOST_SPLICED:
            words = f"This circuit is in {len(held)} entries: list what is spliced apart as several circuits."
            found.append(circuit.sheet.fault("spliced", "too_many_entries", words, maximum=MOST_SPLICED))
    return found
