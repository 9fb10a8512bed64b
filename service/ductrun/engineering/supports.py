"""Supports of conduit above ground: the end straps near each termination, the rest no farther apart than allowed.

Along a run with expansion fittings some straps hold (barrels, anchors) and the others let the conduit slide.
"""

from __future__ import annotations

from ductrun.engineering.expansion import Piece
from ductrun.engineering.rounding import over, round_down, round_up, under


def support_positions(length: float, spacing: float, end_distance: float, terminations: int) -> list[float]:
    """Give where straps stand along a straight run [m].

    With a termination at both ends the first and last stand `end_distance` from them and the rest share what is
    between evenly, fence posts included; a run no longer than twice that distance needs one strap, in its middle.
    With one termination the first stands `end_distance` from it and the next follow every `spacing`, as the run
    goes on.
    Parameters: length of the run [m], spacing at most [m], end_distance at most [m], and no more than the spacing,
    terminations of the run (count), 1 or 2.
    Source: NFPA 70-2023, Table 352.30(B), and 352.30(A) and the like sections; derived for the count.
    """
    end = min(end_distance, spacing)
    if terminations == 1:
        beyond = max(0.0, length - end)
        return [min(end, length / 2) if length < end else end] + [
            end + spacing * step for step in range(1, round_down(beyond / spacing) + 1)
        ]
    if not over(length, 2 * end):
        return [length / 2]
    between = length - 2 * end
    gaps = max(1, round_up(between / spacing))
    return [end + between * step / gaps for step in range(gaps + 1)]


def hanging_supports(rise: float, spacing: float) -> int:
    """Count the supports of cable that hangs over a rise (count): one at its top, and below it one every spacing, so
    that nowhere a longer piece hangs.

    Parameters: rise of the cable [m], spacing at most [m].
    Source: NFPA 70-2023, Table 300.19(A); derived for the count.
    """
    return round_up(rise / spacing)


def sliding_positions(
    piece: Piece, clamp: float, reach: float, spacing: float, end_distance: float, clearance: float
) -> list[float]:
    """Give where the straps of one piece stand that let it slide [m], as places along the run.

    The barrel is clamped at `clamp` from its fixed point and the open piston ends at `reach`; between them no strap
    stands, and the first beyond keeps a clearance, or half of what is left of a short piece. The straps go on from
    there to the other fixed point: to `end_distance` from it where it is an end of the run, nearer to it where that
    would be too near the piston; to the anchor itself where it is one, whose strap holds and is not among these. They
    share the way from the clamp evenly; where that would set the first one too near the piston it goes as far as it
    may and the rest share what is left. Valid with reach no longer than the piece and reach - clamp no more than the
    spacing.
    Parameters: piece of the run, clamp from its fixed point [m], reach from its fixed point [m], spacing at most [m],
    end_distance at most [m], clearance of a strap from the open piston [m].
    Source: derived.
    """
    size = abs(piece.far - piece.barrel)
    clear = reach + min(clearance, (size - reach) / 2)
    last = size if piece.to_anchor else max(size - min(end_distance, spacing), clear)
    gaps = max(1, round_up((last - clamp) / spacing))
    places = _shared(clamp, last, gaps)
    first = min(clear, clamp + spacing)
    if under(places[0], first):
        places = [first, *_shared(first, last, round_up((last - first) / spacing))]
    if piece.to_anchor:
        places.pop()
    return [piece.at(place) for place in places]


def _shared(start: float, end: float, gaps: int) -> list[float]:
    """Give the ends of so many equal gaps between two places."""
    return [start + (end - start) * gap / gaps for gap in range(1, gaps + 1)]
