"""Length change of conduit with temperature, and the fittings that take it up.

The 1/4 in at which a straight run between securely mounted items needs a fitting is an input, as is the coefficient.
"""

from __future__ import annotations

from ductrun.engineering.rounding import round_up, under


def length_change(coefficient: float, length: float, difference: float) -> float:
    """Give the change of length [m]: a L dT.

    Valid for conduit free to move; buried or encased conduit is held by the ground.
    Parameters: coefficient a [1/K], length L of one straight run [m], difference dT of its temperatures [K].
    Source: NFPA 70-2023, Table 352.44(A), coefficient in its heading and every cell; NFPA 70-2023, Table 355.44,
    coefficient in its heading and every cell.

    100 ft of PVC and 100 degF are printed with 4.06 in:

    >>> round(length_change(3.38e-5 * 9 / 5, 100 * 12, 100 * 5 / 9), 2)
    4.06
    """
    return coefficient * length * difference


def fitting_required(change: float, trigger: float) -> bool:
    """Say whether a straight run needs an expansion fitting: a change at or over the trigger.

    Parameters: change of length [m], trigger of the code [m], 1/4 in.
    Source: NFPA 70-2023, Table 352.44(A), coefficient in its heading and every cell; NFPA 70-2023, Table 355.44,
    coefficient in its heading and every cell.
    """
    return not under(change, trigger)


def fitting_count(change: float, travel: float) -> int:
    """Give the number of fittings (count) that share the change: change / travel, rounded up.

    The 1/4 in is only the trigger, never the travel of a fitting.
    Parameters: change of length [m], travel of one fitting [m].
    Source: Conduit maker catalogue, compensation for linear expansion: number and opening of expansion fittings;
    from memory for the results of its example.

    In that example 22 in and fittings of 6 in are 3.67, so four:

    >>> fitting_count(22.0, 6.0)
    4
    """
    return max(1, round_up(change / travel))


def longest_run(coefficient: float, difference: float, trigger: float) -> float:
    """Give the length [m] at which a fitting becomes required: trigger / (a dT). Shorter runs need none.

    Parameters: coefficient a [1/K], difference dT [K], above 0, trigger of the code [m].
    Source: derived.
    """
    return trigger / (coefficient * difference)


def largest_difference(coefficient: float, length: float, trigger: float) -> float:
    """Give the temperature difference [K] at which a fitting becomes required: trigger / (a L).

    Parameters: coefficient a [1/K], length L [m], above 0, trigger of the code [m].
    Source: derived.
    """
    return trigger / (coefficient * length)


def piston_opening(travel: float, lowest: float, highest: float, installation: float) -> float:
    """Give how far the piston stands open [m] when the fitting is set, measured from fully closed.

    travel x (T_highest - T_installation) / (T_highest - T_lowest), the catalogue convention: at the highest
    temperature the fitting is closed, at the lowest fully open. Keeps the piston within its travel whenever the
    change a fitting takes is at most the travel.
    Parameters: travel of a fitting [m]; lowest temperature of the conduit [K], highest one [K], installation one
    [K], with lowest <= installation <= highest and lowest < highest.
    Source: Conduit maker catalogue, compensation for linear expansion: number and opening of expansion fittings;
    from memory for the results of its example.

    In that example 6 in of travel set at 90 degF, for 0 to 140 degF, stand 2.1 in open:

    >>> round(piston_opening(6.0, 0.0, 140.0, 90.0), 1)
    2.1
    """
    return travel * (highest - installation) / (highest - lowest)


def centered_opening(travel: float, change: float, lowest: float, highest: float, installation: float) -> float:
    """Give how far the piston stands open [m] when it is to use the middle of its travel.

    change x (T_highest - T_installation) / (T_highest - T_lowest) + (travel - change) / 2: half of the travel that
    is not used stays free at either end. Agrees with `piston_opening` when the change is the travel.
    Parameters: travel of a fitting [m], change that one fitting takes over the whole range [m], at most the travel,
    lowest temperature of the conduit [K], highest one [K], installation one [K].
    Source: derived.
    """
    return change * (highest - installation) / (highest - lowest) + (travel - change) / 2


def fitting_positions(length: float, count: int) -> list[float]:
    """Give where fittings stand along a run [m]: in the middle of as many equal pieces of it, L (2 i + 1) / (2 n).

    Parameters: length L [m], count n of fittings (count).
    Source: derived.
    """
    return [length * (2 * index + 1) / (2 * count) for index in range(count)]


def anchor_positions(length: float, count: int) -> list[float]:
    """Give where the run is anchored between fittings [m]: L i / n; its ends are fixed already.

    Parameters: length L [m], count n of fittings (count).
    Source: derived.
    """
    return [length * index / count for index in range(1, count)]
