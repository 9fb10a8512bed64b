"""Lengths, joints and elbows of ducts."""

from __future__ import annotations

from ductrun.engineering.rounding import round_up


def developed_length(radius: float, angle: float, tangent: float) -> float:
    """Give the length of an elbow along its center line [m]: R theta + 2 t; radius, tangent [m], angle [rad]."""
    return radius * angle + 2 * tangent


def sticks(length: float, lay: float) -> int:
    """Give the sticks that lay a length [m], each laying `lay` [m] once joined."""
    return round_up(length / lay) if length > 0.0 else 0


def couplings(sticks_per_duct: int, elbows: int) -> int:
    """Give the separate couplings of one duct of plain-ended pieces: one between any two of them."""
    return max(0, sticks_per_duct + elbows - 1)


def sockets(sticks_per_duct: int, elbows: int, *, belled: bool) -> int:
    """Give the cemented sockets of one duct: one a joint with bells, two a coupling with plain ends."""
    joints = couplings(sticks_per_duct, elbows)
    return joints if belled else 2 * joints
