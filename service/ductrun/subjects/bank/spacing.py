"""Spacers along a run: their stations, and the pieces at each."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from typing import NamedTuple

from ductrun.engineering import spacing as engineering
from ductrun.kit.backing import WORKED_OUT, published
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.choices import PieceSystem, TopClosure
from ductrun.subjects.bank.spacing_practice import (
    DUCTS_PER_SPACER,
    PIECE_SYSTEM,
    TOP_CLOSURE,
    WASTE_PERCENT,
    Spacing,
)
from ductrun.subjects.bank.stations import Stations, caution_joints, caution_spacing, stations_of

DuctSizes = Sequence[Sequence[float | None]]  # outside diameter of every duct of every tier [m]; None where not asked


class Pieces(NamedTuple):
    """Pieces of a run for ducts of one outside diameter [m], None where that is not known: before and with waste."""

    diameter: float | None
    base: int
    intermediate: int
    top: int
    order: int

    @property
    def all(self) -> int:
        """All of them, before waste."""
        return self.base + self.intermediate + self.top


class Spacers(NamedTuple):
    """Spacers of a run: its stations, those of its own that it does not leave to a neighbor, the pieces by size."""

    stations: Stations
    pieces: tuple[Pieces, ...]
    waste_percent: float


def space(given: Spacing, tiers: DuctSizes, length: float, sheet: Worksheet) -> Spacers:
    """Count the stations of a run of a length [m], and the pieces at each for the ducts of tiers from the bottom."""
    stations = stations_of(given, length, sheet)
    own = stations.own
    system = sheet.settle("piece_system", given.piece_system, PIECE_SYSTEM)
    wide = 1
    if system is PieceSystem.PIECES:
        wide = sheet.settle("duct_count_per_spacer", given.duct_count_per_spacer, DUCTS_PER_SPACER)
    closed = sheet.settle("top_closure", given.top_closure, TOP_CLOSURE) is not TopClosure.NONE
    waste = sheet.settle("waste_percent", given.waste_percent, WASTE_PERCENT)
    caution_spacing(stations.spacing, sheet)
    caution_joints(given, length, stations, sheet)
    at_each = _single(tiers, wide, closed) if system is PieceSystem.PIECES else [_whole(system, len(tiers), closed)]
    pieces = tuple([_along(one, own, waste) for one in at_each])
    if sheet.working is not None:
        base, between = (sum([one[index] or 0 for one in at_each]) for index in (1, 2))
        sheet.show("base", "stations x base pieces of one", f"{own} x {base}", own * base)
        sheet.show("intermediate", "stations x pieces between tiers", f"{own} x {between}", own * between)
    if system is not PieceSystem.PIECES and len(tiers) > 1:
        sheet.find(
            Severity.NOTE,
            "tiers_not_staggered",
            "Pieces that carry whole tiers keep all tiers at one station: spacers of successive tiers cannot be "
            "staggered with them.",
            published("cegs-16526a"),
            member="piece_system",
        )
    sheet.find(
        Severity.NOTE,
        "one_station_apart",
        "The two readings of a specification differ by one station a run: a greatest distance counts both ends (fence "
        "posts), so many a stick does not. Runs that meet at a manhole share no station.",
        WORKED_OUT,
        member="interval",
    )
    return Spacers(stations, pieces, waste)


class _Station(NamedTuple):
    """Pieces of one station for ducts of one size."""

    diameter: float | None
    base: int
    intermediate: int
    top: int


def _along(at_each: _Station, stations: int, waste: float) -> Pieces:
    """Count the pieces of one size along a run, and what to order of them."""
    diameter, *counts = at_each
    base, intermediate, top = (stations * pieces for pieces in counts)
    return Pieces(diameter, base, intermediate, top, engineering.with_waste(base + intermediate + top, waste))


def _whole(system: PieceSystem, tiers: int, closed: bool) -> _Station:
    """Give the pieces of a station that carry a whole tier or the whole bank, whatever the size of its ducts."""
    return _Station(None, 1, tiers - 1 if system is PieceSystem.WHOLE_TIER else 0, int(closed))


def _single(tiers: DuctSizes, wide: int, closed: bool) -> list[_Station]:
    """Give the pieces of a station by the size of the ducts they carry or close, the largest first."""
    rows = [[(size, len(list(like))) for size, like in groupby(tier)] for tier in tiers]
    found = []
    for size in sorted({size for row in rows for size, _ in row}, key=lambda one: -(one or 0.0)):
        runs = [[ducts for one, ducts in row if one == size] for row in rows]
        found.append(
            _Station(
                size,
                engineering.base_pieces(runs, wide),
                engineering.intermediate_pieces(runs, wide),
                engineering.top_pieces(runs, wide) if closed else 0,
            )
        )
    return found
