"""Lengths, joints and elbows of ducts."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering.rounding import over, round_up


def developed_length(radius: float, angle: float, tangent: float) -> float:
    """Give the length of an elbow along its center line [m]: R theta + 2 t.

    Parameters: radius R of the center line [m], angle theta [rad], tangent t of straight conduit at either end [m].
    Source: derived.
    """
    return radius * angle + 2 * tangent


def sticks(length: float, lay: float) -> int:
    """Give the sticks (count) that lay a length: L / lay, rounded up.

    Parameters: length L [m], lay that one stick adds once joined [m].
    Source: derived.
    """
    return round_up(length / lay) if length > 0.0 else 0


def sticks_to_cut(lengths: Sequence[float], stick: float) -> int:
    """Give the sticks (count) from which straights are cut, each of whole sticks and a rest: what is left of one stick
    serves for the longest rest that fits.

    Parameters: lengths of the straights [m], stick [m].
    Source: derived.
    """
    whole, rests = 0, []
    for length in lengths:
        count = sticks(length, stick)
        if count:
            whole += count - 1
            rests.append(length - (count - 1) * stick)
    left: list[float] = []
    for rest in sorted(rests, reverse=True):
        fitting = next((at for at, one in enumerate(left) if not over(rest, one)), None)
        if fitting is None:
            left.append(stick - rest)
        else:
            left[fitting] -= rest
    return whole + len(left)


def couplings(sticks_per_duct: int, elbows: int) -> int:
    """Give the separate couplings (count) of one duct of plain-ended pieces: one between any two of them.

    Parameters: sticks_per_duct (count), elbows in it (count).
    Source: derived.
    """
    return max(0, sticks_per_duct + elbows - 1)


def sockets(sticks_per_duct: int, elbows: int, *, belled: bool) -> int:
    """Give the cemented sockets (count) of one duct: one a joint with bells, two a coupling with plain ends.

    Parameters: sticks_per_duct (count), elbows in it (count), belled, whether a stick brings its own socket.
    Source: derived.
    """
    joints = couplings(sticks_per_duct, elbows)
    return joints if belled else 2 * joints
