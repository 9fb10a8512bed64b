"""Spacers along a run: their stations, and the pieces at each."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
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

Runs = Sequence[Sequence[int]]  # ducts of one size beside each other, in every tier


def runs_of(tiers: Iterable[Iterable[float]]) -> dict[float, Runs]:
    """Give ducts by their outside diameter [m], the largest first, from those of tiers; those beside each other
    together.
    """
    lines = [[(size, len(list(like))) for size, like in groupby(diameters)] for diameters in tiers]
    sizes = sorted({size for line in lines for size, _ in line}, reverse=True)
    return {size: [[ducts for one, ducts in line if one == size] for line in lines] for size in sizes}


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


def space(given: Spacing, ducts: Runs | dict[float, Runs], length: float, sheet: Worksheet) -> Spacers:
    """Count the stations of a run of a length [m], and the pieces at each for ducts of one size or by their size."""
    stations = stations_of(given, length, sheet)
    own = stations.own
    system = sheet.settle("piece_system", given.piece_system, PIECE_SYSTEM)
    wide = 1
    if system is PieceSystem.PIECES:
        wide = sheet.settle("duct_count_per_spacer", given.duct_count_per_spacer, DUCTS_PER_SPACER)
    closed = sheet.settle("top_closure", given.top_closure, TOP_CLOSURE) is not TopClosure.NONE
    waste = sheet.settle("waste_percent", given.waste_percent, WASTE_PERCENT)
    caution_spacing(stations.spacing, sheet)
    if given.stick_length is not None:
        caution_joints(given.stick_length, length, stations, sheet)
    sizes: tuple[tuple[float, Pieces], ...] = ()
    tiers = len(next(iter(ducts.values())) if isinstance(ducts, dict) else ducts)
    if system is not PieceSystem.PIECES:
        between = tiers - 1 if system is PieceSystem.WHOLE_TIER else 0
        pieces = _ordered(own, 1, between, int(closed), waste)
    elif not isinstance(ducts, dict):
        pieces = _single(ducts, own, wide, closed, waste)
    else:
        sizes = tuple([(size, _single(runs, own, wide, closed, waste)) for size, runs in ducts.items()])
        pieces = Pieces(*[sum(column) for column in zip(*[of_size for _, of_size in sizes], strict=True)])
    if sheet.working is not None:
        each = own or 1
        sheet.show("base", "stations x base pieces of one", f"{own} x {pieces.base // each}", pieces.base)
        between = pieces.intermediate
        sheet.show("intermediate", "stations x pieces between tiers", f"{own} x {between // each}", between)
    if system is not PieceSystem.PIECES and tiers > 1:
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
    by_size = list(ducts.values()) if isinstance(ducts, dict) else [ducts]
    counts = tuple([sum(map(sum, tier)) for tier in zip(*by_size, strict=True)])
    return Spacers(length, counts, stations, pieces, sizes, waste)


def _ordered(stations: int, base: int, intermediate: int, top: int, waste: float) -> Pieces:
    """Give the pieces of all stations, of those of one, and what to order of them."""
    order = engineering.with_waste(stations * (base + intermediate + top), waste)
    return Pieces(stations * base, stations * intermediate, stations * top, order)


def _single(runs: Runs, stations: int, wide: int, closed: bool, waste: float) -> Pieces:
    """Give the pieces that carry or close ducts of one size, which lie beside each other in runs of every tier."""
    return _ordered(
        stations,
        engineering.base_pieces(runs, wide),
        engineering.intermediate_pieces(runs, wide),
        engineering.top_pieces(runs, wide) if closed else 0,
        waste,
    )
