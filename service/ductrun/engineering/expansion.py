"""Length change of conduit with temperature, and the fittings that take it up.

Sources: NFPA 70-2023, 352.44 and 355.44 (coefficient, the 1/4 in trigger of a straight run between securely mounted
items); conduit maker's catalogue page on compensation for linear expansion (count and piston opening).
"""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.rounding import round_up, under


def length_change(coefficient: float, length: float, difference: float) -> float:
    """Give the change of length [m]: a L dT.

    Parameters: coefficient [1/K], length [m] of one straight run, difference [K]. Valid for conduit free to move;
    buried or encased conduit is held by the ground. Source: NFPA 70-2023, 352.44(A).
    """
    return coefficient * length * difference


def fitting_required(change: float, trigger: float) -> bool:
    """Say whether a straight run needs an expansion fitting: change [m] at or over the trigger [m] (1/4 in)."""
    return not under(change, trigger)


def fitting_count(change: float, travel: float, usable: float) -> int:
    """Give the number of fittings that share the change: change [m] / (travel [m] x usable share), rounded up.

    The 1/4 in is only the trigger, never the travel of a fitting. `usable` is the share of the travel that may be used
    [1]; the rest is kept for what temperatures and lengths turn out to be.
    """
    return max(1, round_up(change / (travel * usable)))


def longest_run(coefficient: float, difference: float, trigger: float) -> float:
    """Give the length [m] at which a fitting becomes required: trigger / (a dT). Shorter runs need none."""
    return trigger / (coefficient * difference)


def largest_difference(coefficient: float, length: float, trigger: float) -> float:
    """Give the temperature difference [K] at which a fitting becomes required: trigger / (a L)."""
    return trigger / (coefficient * length)


def piston_opening(travel: float, lowest: float, highest: float, installation: float) -> float:
    """Give how far the piston stands open [m] when the fitting is set, measured from fully closed.

    travel x (T_highest - T_installation) / (T_highest - T_lowest), the catalogue convention: at the highest
    temperature the fitting is closed, at the lowest fully open. Parameters: travel [m]; temperatures of the conduit
    [K], with lowest <= installation <= highest and lowest < highest. Keeps the piston within its travel whenever the
    change a fitting takes is at most the travel.
    """
    return travel * (highest - installation) / (highest - lowest)


def centered_opening(travel: float, change: float, lowest: float, highest: float, installation: float) -> float:
    """Give how far the piston stands open [m] when it is to use the middle of its travel.

    change x (T_highest - T_installation) / (T_highest - T_lowest) + (travel - change) / 2: half of the travel that is
    not used stays free at either end. Parameters as for `piston_opening`; change [m] is what one fitting takes over the
    whole range, at most the travel. Source: derived; the two conventions agree when the change is the travel.
    """
    return change * (highest - installation) / (highest - lowest) + (travel - change) / 2


class Piece(NamedTuple):
    """The share of a run [m] that one fitting takes up, from the fixed point that holds its barrel to the other.

    That is an anchor between two pieces, or else an end of the run.
    """

    barrel: float
    far: float
    to_anchor: bool

    def at(self, distance: float) -> float:
        """Give the place along the run [m] that lies so far from the barrel's fixed point."""
        return self.barrel + distance if self.far > self.barrel else self.barrel - distance


def pieces(length: float, count: int) -> list[Piece]:
    """Give the equal pieces of a run between fixed points, one fitting in each.

    The barrel stands at one fixed end, so that the whole piece moves into it: with the barrel clamped anywhere else,
    what lies between it and the nearer fixed end could go nowhere. Barrels stand back to back at every second anchor;
    that of the last piece of an odd number stands at the end of the run, in a riser the top.
    """
    points = [length * index / count for index in range(count + 1)]
    return [
        Piece(points[index], points[index + 1], index < count - 1)
        if index % 2
        else Piece(points[index + 1], points[index], index > 0)
        for index in range(count)
    ]


def anchor_positions(length: float, count: int) -> list[float]:
    """Give where the run is anchored between pieces [m]; its ends are fixed already."""
    return [length * index / count for index in range(1, count)]


def barrel_clamp(travel: float, engagement: float) -> float:
    """Give how far from its fixed point a barrel is clamped [m]: in its middle, (travel + engagement) / 2.

    The barrel takes in the piston over its travel and holds its engagement at all times. Source: derived.
    """
    return (travel + engagement) / 2


def piston_reach(travel: float, engagement: float) -> float:
    """Give how far from its fixed point a fitting reaches when fully open [m]: 2 travel + engagement.

    Barrel (travel + engagement) and open piston (travel); up to here nothing but the clamp of the barrel may hold it.
    Source: derived.
    """
    return 2 * travel + engagement
