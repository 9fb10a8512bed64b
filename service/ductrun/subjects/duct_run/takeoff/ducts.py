"""The ducts of a stretch: conduit, bends, and what joins and finishes them."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.engineering import joints as engineering
from ductrun.engineering.pulling import Straight
from ductrun.engineering.rounding import over
from ductrun.kit.telling import Telling
from ductrun.kit.wording import listing, text_of
from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.conduit.joining import Joined
from ductrun.subjects.duct_run.assessment import AssessedStretch, Piece
from ductrun.subjects.duct_run.takeoff.above_ground import cement_entry, sticks_of
from ductrun.subjects.duct_run.takeoff.entries import Entry, SizeOfLine, ducts_in_words, sized
from ductrun.subjects.duct_run.transitions import called
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.route import inside
from ductrun.subjects.parts.takeoff import TakeoffItem


def duct_entries(index: int, at: int, stretch: AssessedStretch, piece: Piece, tell: Telling) -> Iterator[Entry]:
    """Give conduit, bends, and what joins and finishes them."""
    named, place, count = sized(piece.conduit, tell), f"stretches/{index}/conduits/{at}", piece.duct_count
    joined = piece.joined
    straight = piece.length if joined is None else joined.straight_length
    words = f"{count} x {text_of(tell.distance(straight))}"
    sticks = 0 if joined is None else sticks_of(stretch, piece, joined)
    if joined is not None and _leaves_offcuts(joined, sticks, straight * count):
        words += f" out of {sticks} sticks, for no offcut of one duct starts the next"
    yield Entry(
        TakeoffItem.CONDUIT,
        straight * count,
        index,
        f"{place}/length",
        words,
        *named,
        waste=None if joined is None else joined.waste_percent,
        stick=None if joined is None else joined.stick_length.si,
        stick_count=sticks,
        package=None if joined is None else f"stick of {joined.stick_length}",
        ordered=True,
    )
    yield from _bends(index, piece, named, named_by_section=stretch.laid.given.sections is not None)
    if joined is not None:
        yield from _joints(index, place, piece, joined, named)


def _leaves_offcuts(joined: Joined, sticks: int, laid: float) -> bool:
    """Say whether ducts [m] take more sticks than end to end, and more than their waste covers."""
    stick = joined.stick_length.si
    more = over(sticks * stick, laid * (1 + joined.waste_percent / 100))
    return more and sticks > engineering.sticks(laid, stick)


def _joints(index: int, place: str, piece: Piece, joined: Joined, named: SizeOfLine) -> Iterator[Entry]:
    """Give what joins and finishes ducts."""
    ducts = ducts_in_words(piece.duct_count)
    fused = joined.ducts.method is JoiningMethod.FUSED
    coupled = _where(piece, RunEnd.COUPLING)
    for item, number, member, words in (
        (TakeoffItem.FUSION_JOINT if fused else TakeoffItem.JOINT, joined.joint_count, "joint_count", ducts),
        (
            TakeoffItem.COUPLING,
            joined.order_coupling_count,
            "order_coupling_count",
            f"{ducts}, with {coupled}" if coupled else ducts,
        ),
        (
            TakeoffItem.END_BELL,
            joined.finish_count(RunEnd.END_BELL),
            "end_bell_count",
            _where(piece, RunEnd.END_BELL),
        ),
        (
            TakeoffItem.TERMINAL_ADAPTER,
            joined.finish_count(RunEnd.ADAPTER),
            "adapter_count",
            _where(piece, RunEnd.ADAPTER),
        ),
    ):
        if number:
            bought = member != "joint_count"
            yield Entry(item, number, index, f"{place}/joints/{member}", words, *named, ordered=bought)
    if joined.cement is not None:
        place, words = f"{place}/joints/cement_volume", f"{joined.joint_count} joints of {called(piece.conduit)}"
        yield cement_entry(joined.cement.volume, index, place, words)


def _where(piece: Piece, finish: RunEnd) -> str:
    """Say how many ends of ducts finish so, and where."""
    return listing([f"{piece.duct_count} {where}" for finished, where in piece.ends if finished is finish])


def _bends(index: int, piece: Piece, named: SizeOfLine, *, named_by_section: bool) -> Iterator[Entry]:
    """Give the bends that are bought or bent; what is laid on a curve is conduit."""
    count, place = piece.duct_count, f"stretches/{index}/length"
    words = f"{ducts_in_words(count)}, one in each"
    for one in piece.sections:
        element = one.element
        if isinstance(element, Straight):
            continue
        bought = one.is_elbow
        if bought or one.made is BendMade.FIELD_BEND:
            yield Entry(
                TakeoffItem.ELBOW if bought else TakeoffItem.FIELD_BEND,
                count,
                index,
                place,
                f"{words} at {inside(one.name)}" if named_by_section else words,
                *named,
                angle=element.angle,
                radius=element.radius,
                ordered=bought,
            )
