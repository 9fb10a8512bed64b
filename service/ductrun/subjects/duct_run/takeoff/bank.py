"""What the bank of a stretch takes: spacers, tie-downs, concrete, forms, bars and the ground in it."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.subjects.bank.spacing import Pieces
from ductrun.subjects.duct_run.assessment import AssessedStretch
from ductrun.subjects.duct_run.takeoff.entries import Entry
from ductrun.subjects.parts.takeoff import TakeoffItem


def bank_entries(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    """Give spacers, tie-downs, bars, forms, concrete and the ground of a bank."""
    burial, at = stretch.burial, f"stretches/{index}"
    if burial is None:
        return
    if burial.spacers is not None:
        yield from _spacers(index, stretch, tell)
    ties = burial.flotation
    if ties is not None and ties.all_tie_downs is not None:
        spacing = text_of(tell.distance(ties.station_spacing))
        words = f"{ties.tie_downs} at each station, stations {spacing} apart"
        place = f"{at}/flotation/total_tie_down_count"
        yield Entry(TakeoffItem.TIE_DOWN, ties.all_tie_downs, index, place, words, ordered=True)
    pour = burial.encasement
    if pour is None:
        return
    at = f"{at}/encasement"
    net, gross = tell.bulk_volume(pour.net), tell.bulk_volume(pour.gross)
    words = f"{text_of(gross)} less {text_of(tell.bulk_volume(pour.displaced))} of ducts"
    yield Entry(
        TakeoffItem.CONCRETE,
        pour.net,
        index,
        f"{at}/net_volume",
        words if net != gross else text_of(net),
        waste=pour.waste_percent,
        order=pour.order,
        package="truck load",
        package_count=pour.load_count,
    )
    form = pour.envelope.form * pour.length
    words = f"{text_of(tell.size(pour.envelope.height))} high, both sides"
    yield Entry(TakeoffItem.FORM, form, index, f"{at}/form_area", words)
    if pour.bars is not None:
        bars, at = pour.bars, f"{at}/reinforcing_takeoff"
        words = f"{bars.lap_count} laps of {text_of(tell.size(bars.lap))} in it"
        for item, length, member, size, how in (
            (TakeoffItem.REINFORCING_BAR, bars.longitudinal, "longitudinal_length", bars.size, words),
            (TakeoffItem.TIE_BAR, bars.ties, "tie_length", bars.tie_size, f"{bars.tie_count} ties"),
        ):
            yield Entry(item, length, index, f"{at}/{member}", how, size=str(size), ordered=True)
    if pour.grounding is not None:
        ground = pour.grounding
        yield Entry(
            TakeoffItem.BANK_GROUND,
            ground.length,
            index,
            f"stretches/{index}/encasement/bank_ground_takeoff/conductor_length",
            "all conductors with both ends",
            size=str(ground.size),
            waste=(ground.order / ground.length - 1) * 100 if ground.length else 0.0,
            ordered=True,
        )


def _spacers(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    burial = stretch.burial
    assert burial is not None and burial.spacers is not None  # noqa: S101, PT018  (looked at before)
    spacers = burial.spacers
    sizes: list[tuple[str | None, Pieces]] = [
        (_size_of(stretch, outside, tell), pieces) for outside, pieces in spacers.sizes
    ]
    for size, pieces in sizes or [(None, spacers.pieces)]:
        for item, count, member in (
            (TakeoffItem.BASE_SPACER, pieces.base, "base_spacer_count"),
            (TakeoffItem.INTERMEDIATE_SPACER, pieces.intermediate, "intermediate_spacer_count"),
            (TakeoffItem.TOP_SPACER, pieces.top, "top_piece_count"),
        ):
            yield Entry(
                item,
                count,
                index,
                f"stretches/{index}/spacers/{member}",
                f"{spacers.stations.own} stations",
                size=size,
                waste=spacers.waste_percent,
                ordered=True,
            )


def _size_of(stretch: AssessedStretch, outside: float, tell: Telling) -> str:
    """Give the trade size of the ducts of an outside diameter [m], or that diameter, said so."""
    for duct, placed in zip(stretch.bank.ducts, stretch.bank.in_its_place.ducts, strict=True):
        if placed.diameter == outside and duct.conduit.trade_size is not None:
            return str(duct.conduit.trade_size)
    return f"{text_of(tell.size(outside))} outside"
