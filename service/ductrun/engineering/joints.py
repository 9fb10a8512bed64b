"""Lengths, joints and elbows of ducts."""

from __future__ import annotations

from ductrun.engineering.rounding import round_up


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
