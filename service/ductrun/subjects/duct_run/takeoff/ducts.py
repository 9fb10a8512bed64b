"""The ducts of a stretch: conduit, bends, and what joins and finishes them."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.engineering.pulling import Straight
from ductrun.kit.telling import Telling
from ductrun.kit.wording import listing, text_of
from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.duct_run.assessment import AssessedStretch, Piece
from ductrun.subjects.duct_run.laid import LaidSection
from ductrun.subjects.duct_run.takeoff.above_ground import cement_entry, sticks_of
from ductrun.subjects.duct_run.takeoff.entries import Entry, SizeOfLine, sized
from ductrun.subjects.duct_run.transitions import called
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.route import inside
from ductrun.subjects.parts.takeoff import TakeoffItem

_FITTINGS = {TakeoffItem.TERMINAL_ADAPTER, TakeoffItem.COUPLING}


def duct_entries(index: int, at: int, stretch: AssessedStretch, piece: Piece, tell: Telling) -> Iterator[Entry]:
    """Give conduit, bends, and what joins and finishes them."""
    named, place, count = sized(piece.conduit, tell), f"stretches/{index}/ducts/{at}", piece.duct_count
    joined = piece.joined
    straight = piece.length if joined is None else joined.straight_length
    words = f"{count} x {text_of(tell.distance(straight))}"
    yield Entry(
        TakeoffItem.CONDUIT,
        straight * count,
        index,
        f"{place}/length",
        words,
        *named,
        waste=None if joined is None else joined.waste_percent,
        stick=None if joined is None else joined.stick_length.si,
        stick_count=0 if joined is None else sticks_of(stretch, piece, joined),
        package=None if joined is None else f"stick of {joined.stick_length}",
        ordered=True,
    )
    for one in piece.sections:
        yield from _bend(index, one, named, count, stretch)
    if joined is None:
        return
    ducts = f"{count} {'duct' if count == 1 else 'ducts'}"
    fitted = f"{ducts}, with the change to {listing(list(dict.fromkeys(piece.to)))}" if piece.to else ducts
    fused = joined.ducts.method is JoiningMethod.FUSED
    for item, number, member, bought in (
        (TakeoffItem.FUSION_JOINT if fused else TakeoffItem.JOINT, joined.joint_count, "joint_count", False),
        (TakeoffItem.COUPLING, joined.order_coupling_count, "order_coupling_count", True),
        (TakeoffItem.END_BELL, joined.finish_count(RunEnd.END_BELL), "end_bell_count", True),
        (TakeoffItem.TERMINAL_ADAPTER, joined.finish_count(RunEnd.ADAPTER), "adapter_count", True),
    ):
        words = ducts if item not in _FITTINGS else fitted
        yield Entry(item, number, index, f"{place}/joints/{member}", words, *named, ordered=bought)
    if joined.cement is not None:
        place, words = f"{place}/joints/cement_volume", f"{joined.joint_count} joints of {called(piece.conduit)}"
        yield cement_entry(joined.cement.volume, index, place, words)


def _bend(index: int, one: LaidSection, named: SizeOfLine, count: int, stretch: AssessedStretch) -> Iterator[Entry]:
    """Give a bend that is bought or bent; what is laid on a curve is conduit."""
    element = one.element
    if isinstance(element, Straight):
        return
    item = TakeoffItem.ELBOW if one.is_elbow else TakeoffItem.FIELD_BEND if one.made is BendMade.FIELD_BEND else None
    if item is None:
        return
    ducts = f"{count} {'duct' if count == 1 else 'ducts'}"
    yield Entry(
        item,
        count,
        index,
        f"stretches/{index}/length",
        f"{ducts}, one in each at {inside(one.name)}" if stretch.laid.given.sections else f"{ducts}, one in each",
        *named,
        angle=element.angle,
        radius=element.radius,
        ordered=item is TakeoffItem.ELBOW,
    )
