"""What stands above ground: expansion fittings, straps and hangers, and the joints of what is cut to fit there."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.engineering import joints as engineering
from ductrun.kit.telling import Telling
from ductrun.subjects.conduit.cement import QUART
from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.conduit.joining import Joined
from ductrun.subjects.duct_run.assessment import AssessedStretch, Piece
from ductrun.subjects.duct_run.takeoff.entries import Entry, ducts_in_words, sized
from ductrun.subjects.duct_run.transitions import called
from ductrun.subjects.movement.moving import Movement
from ductrun.subjects.parts.takeoff import TakeoffItem


def cement_entry(volume: float, index: int, pointer: str, basis: str) -> Entry:
    """Give cement [m3] of a stretch, which is bought in quarts."""
    return Entry(
        TakeoffItem.SOLVENT_CEMENT,
        volume,
        index,
        pointer,
        basis,
        package="quart",
        package_size=QUART.si,
        ordered=True,
    )


def sticks_of(stretch: AssessedStretch, piece: Piece, joined: Joined) -> int:
    """Count the sticks of all ducts: laid end to end; above ground cut between elbows, each duct from its own."""
    lengths = _straights(piece)
    if stretch.above is None or len(lengths) < 2:
        return joined.stick_count
    cut = piece.duct_count * engineering.sticks_to_cut(lengths, joined.stick_length.si)
    return max(joined.stick_count, cut)


def above_ground(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    """Give what a stretch takes above ground, and its risers."""
    above, at = stretch.above, f"stretches/{index}"
    lying = [piece for piece in stretch.pieces if piece.riser is None]
    if above is not None:
        straps = sum([len(one.positions) for one in above.supported])
        each = len(above.gaps) + _fittings(above.movement)
        for piece in lying:
            more = f", {len(above.gaps)} of them at joints of the structure" if above.gaps else ""
            words = f"{ducts_in_words(piece.duct_count)} x {each}{more}"
            yield _entry(TakeoffItem.EXPANSION_FITTING, each, index, f"{at}/expansion", words, piece, tell)
            yield from _joints(index, f"{at}/expansion", piece, each, _cuts(piece), tell)
            if not above.hung:
                words = f"{ducts_in_words(piece.duct_count)} x {straps}"
                yield _entry(TakeoffItem.STRAP, straps, index, f"{at}/supports", words, piece, tell)
        if above.hung and lying:
            size, words = sized(lying[0].conduit, tell), f"{straps} for all ducts"
            yield Entry(TakeoffItem.HANGER, straps, index, f"{at}/supports", words, *size, ordered=True)
    for number, riser in enumerate(stretch.risers):
        where, each = f"{at}/risers/{number}", _fittings(riser.movement)
        straps = 0 if riser.supported is None else len(riser.supported.positions)
        up = [piece for piece in stretch.pieces if piece.riser is riser.stop]
        standing = {duct for piece in up for duct in piece.ducts}
        for piece in [*up, *(one for one in lying if not standing.issuperset(one.ducts))]:
            for item, count in ((TakeoffItem.EXPANSION_FITTING, each), (TakeoffItem.STRAP, straps)):
                words = f"{ducts_in_words(piece.duct_count)} x {count} at {riser.stop.name}"
                yield _entry(item, count, index, where, words, piece, tell)
            yield from _joints(index, where, piece, each, 0, tell)


def _entry(item: TakeoffItem, each: int, index: int, where: str, words: str, piece: Piece, tell: Telling) -> Entry:
    """Give so many of an item for each duct of a piece."""
    size = sized(piece.conduit, tell)
    return Entry(item, each * piece.duct_count, index, where, words, *size, ordered=True)


def _fittings(movement: Movement | None) -> int:
    """Count the expansion fittings of one duct."""
    free = None if movement is None else movement.free
    return 0 if free is None else sum([run.fitting_count for run in free.runs])


def _cuts(piece: Piece) -> int:
    """Count the joints that one duct cut to fit between its elbows has beyond those of sticks end to end."""
    joined = piece.joined
    if joined is None:
        return 0
    stick = joined.stick_length.si
    cut = sum([engineering.sticks(length, stick) for length in _straights(piece)])
    return max(0, cut - engineering.sticks(joined.straight_length, stick))


def _joints(index: int, where: str, piece: Piece, fittings: int, cuts: int, tell: Telling) -> Iterator[Entry]:
    """Give the joints of so many expansion fittings of a duct, two sockets each, and of so many cuts; with their
    cement, and couplings where lengths have no bells.
    """
    joined = piece.joined
    if joined is None or not fittings + cuts:
        return
    size, count = sized(piece.conduit, tell), piece.duct_count
    fused, cemented = (joined.ducts.method is one for one in (JoiningMethod.FUSED, JoiningMethod.CEMENTED))
    coupled = joined.coupling_count > joined.ducts.finishes.count(RunEnd.COUPLING) * count
    parts = [f"2 x {fittings} at expansion fittings"] if fittings else []
    parts += [f"{cuts} more between cut pieces"] if cuts else []
    words = f"{count} x ({' + '.join(parts)})"
    number = (2 * fittings + (2 if coupled and cemented else 1) * cuts) * count
    yield Entry(TakeoffItem.FUSION_JOINT if fused else TakeoffItem.JOINT, number, index, where, words, *size)
    if coupled:
        yield Entry(TakeoffItem.COUPLING, cuts * count, index, where, words, *size, ordered=True)
    if joined.cement is not None and joined.joint_count:
        yield cement_entry(
            joined.cement.volume / joined.joint_count * number,
            index,
            where,
            f"{number} joints of {called(piece.conduit)}",
        )


def _straights(piece: Piece) -> list[float]:
    """Give the lengths of the straights of one duct between its elbows [m]."""
    lengths: list[float] = []
    joins = False
    for one in piece.sections:
        if one.is_elbow:
            joins = False
            continue
        length = one.element.developed_length
        if joins:
            lengths[-1] += length
        else:
            lengths.append(length)
        joins = True
    return lengths
