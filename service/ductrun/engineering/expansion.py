"""Length change of conduit with temperature, and the fittings that take it up.

Sources: NFPA 70-2023, 352.44 and 355.44 (coefficient, the 1/4 in trigger of a straight run between securely mounted
items); conduit maker's catalogue page on compensation for linear expansion (count and piston opening).
"""

from __future__ import annotations

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


def fitting_count(change: float, travel: float) -> int:
    """Give the number of fittings that share the change: the quotient of change [m] and travel [m], rounded up.

    The 1/4 in is only the trigger, never the travel of a fitting.
    """
    return max(1, round_up(change / travel))


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


def fitting_positions(length: float, count: int) -> list[float]:
    """Give where fittings stand along a run [m]: in the middle of as many equal pieces of it."""
    return [length * (2 * index + 1) / (2 * count) for index in range(count)]


def anchor_positions(length: float, count: int) -> list[float]:
    """Give where the run is anchored between fittings [m]; its ends are fixed already."""
    return [length * index / count for index in range(1, count)]
