"""Spacers along a run: their stations, and the pieces at each."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby
from typing import NamedTuple

from ductrun.engineering import spacing as engineering
from ductrun.engineering.bank import Tier
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

# like ducts beside each other in every tier: their outside diameter [m], None where it is not known, and their number
DuctSizes = Sequence[Sequence[tuple[float | None, int]]]


def sizes_of(tiers: Iterable[Tier]) -> DuctSizes:
    """Give the ducts of a bank by their outside diameter, those beside each other that are alike together."""
    return [[(size, len(list(like))) for size, like in groupby(tier.diameters)] for tier in tiers]


class Pieces(NamedTuple):
    """Pieces of a run: under the bottom tier, between tiers, above them, and what to order of them with waste."""

    base: int
    intermediate: int
    top: int
    order: int


class Spacers(NamedTuple):
    """Spacers of a run of a `length` [m] with ducts in `tiers` from the bottom: its stations, all its pieces, and those
    for ducts of each outside diameter [m], if known.
    """

    length: float
    tiers: tuple[int, ...]
    stations: Stations
    pieces: Pieces
    sizes: tuple[tuple[float, Pieces], ...]
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
    sizes: tuple[tuple[float, Pieces], ...] = ()
    if system is not PieceSystem.PIECES:
        between = len(tiers) - 1 if system is PieceSystem.WHOLE_TIER else 0
        pieces = _ordered(own, 1, between, int(closed), waste)
    elif tiers[0][0][0] is None:
        pieces = _single([[ducts for _, ducts in tier] for tier in tiers], own, wide, closed, waste)
    else:
        sizes = _by_size(tiers, own, wide, closed, waste)
        pieces = Pieces(*[sum(column) for column in zip(*[of_size for _, of_size in sizes], strict=True)])
    if sheet.working is not None:
        each = own or 1
        sheet.show("base", "stations x base pieces of one", f"{own} x {pieces.base // each}", pieces.base)
        between = pieces.intermediate
        sheet.show("intermediate", "stations x pieces between tiers", f"{own} x {between // each}", between)
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
    counts = tuple([sum([ducts for _, ducts in tier]) for tier in tiers])
    return Spacers(length, counts, stations, pieces, sizes, waste)


def _ordered(stations: int, base: int, intermediate: int, top: int, waste: float) -> Pieces:
    """Give the pieces of all stations, of those of one, and what to order of them."""
    order = engineering.with_waste(stations * (base + intermediate + top), waste)
    return Pieces(stations * base, stations * intermediate, stations * top, order)


def _single(runs: Sequence[Sequence[int]], stations: int, wide: int, closed: bool, waste: float) -> Pieces:
    """Give the pieces that carry or close ducts of one size, which lie beside each other in runs of every tier."""
    return _ordered(
        stations,
        engineering.base_pieces(runs, wide),
        engineering.intermediate_pieces(runs, wide),
        engineering.top_pieces(runs, wide) if closed else 0,
        waste,
    )


def _by_size(
    tiers: DuctSizes, stations: int, wide: int, closed: bool, waste: float
) -> tuple[tuple[float, Pieces], ...]:
    """Give the pieces by the size of the ducts they carry or close, the largest first."""
    sizes = sorted({size for tier in tiers for size, _ in tier if size is not None}, reverse=True)
    runs = {size: [[ducts for one, ducts in tier if one == size] for tier in tiers] for size in sizes}
    return tuple([(size, _single(runs[size], stations, wide, closed, waste)) for size in sizes])
