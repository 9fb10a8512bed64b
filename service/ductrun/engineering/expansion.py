"""Length change of conduit with temperature, and the fittings that take it up.

The 1/4 in at which a straight run between securely mounted items needs a fitting is an input, as is the coefficient.
"""

from __future__ import annotations

from typing import NamedTuple

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


def fitting_count(change: float, travel: float, usable: float) -> int:
    """Give the number of fittings that share the change: change [m] / (travel [m] x usable share), rounded up.

    The 1/4 in is only the trigger, never the travel of a fitting. `usable` is the share of the travel that may be used
    (ratio); the rest is kept for what temperatures and lengths turn out to be.
    Parameters: change of length [m], travel of one fitting [m], usable share (ratio).
    Source: Conduit maker catalogue, compensation for linear expansion: number and opening of expansion fittings;
    from memory for the results of its example.

    In that example 22 in and fittings of 6 in are 3.67, so four:

    >>> fitting_count(22.0, 6.0, 1.0)
    4
    """
    return max(1, round_up(change / (travel * usable)))


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


def acting_temperature(at: float, lowest: float, warmest: float, sun: float, own: float, structure: float) -> float:
    """Give the temperature [K] at which conduit on a structure that stands still would be pushed as far as it is here.

    Conduit and structure are equally warm up to the warmest the structure gets; above that the sun heats the conduit
    alone. Pushed least and most are the lowest and the highest temperature of the conduit in the sun, so that
    openings follow from it as they do from the temperature of a conduit alone. A structure that moves more than its
    conduit pulls the fitting open in the heat: then it is pushed least at the warmest out of the sun, and most at the
    lowest in the sun.
    Parameters: at which temperature the conduit is [K], lowest one [K], warmest one without sun [K], sun on it [K], own
    coefficient [1/K], structure's coefficient [1/K], another than its own.
    Source: derived.

    Steel of 6.5 on 13 millionths, 0 to 100 degF without sun, acts at 90 as it would by itself at 10:

    >>> round(acting_temperature(90.0, 0.0, 100.0, 0.0, 6.5, 13.0), 6)
    10.0
    """
    apart, spread = own - structure, warmest - lowest
    pushed = apart * (min(at, warmest) - lowest) + own * max(at - warmest, 0.0)
    least = min(apart, 0.0) * spread
    share = (pushed - least) / (abs(apart) * spread + own * sun)
    return lowest + share * (spread + sun)


class Piece(NamedTuple):
    """The share of a run that one fitting takes up, from the fixed point that holds its `barrel` [m] to the `far` [m].

    That is an anchor between two pieces where it is `to_anchor`, or else an end of the run.
    """

    barrel: float
    far: float
    to_anchor: bool

    def at(self, distance: float) -> float:
        """Give the place along the run [m] that lies so far from the barrel's fixed point.

        Parameters: distance [m].
        """
        return self.barrel + distance if self.far > self.barrel else self.barrel - distance


def pieces(length: float, count: int) -> list[Piece]:
    """Give the equal pieces of a run between fixed points, one fitting in each.

    The barrel stands at one fixed end, so that the whole piece moves into it: with the barrel clamped anywhere else,
    what lies between it and the nearer fixed end could go nowhere. Barrels stand back to back at every second anchor;
    that of the last piece of an odd number stands at the end of the run, in a riser the top.
    Parameters: length of the run [m], count of fittings (count).
    Source: derived.
    """
    points = [length * index / count for index in range(count + 1)]
    return [
        Piece(points[index], points[index + 1], index < count - 1)
        if index % 2
        else Piece(points[index + 1], points[index], index > 0)
        for index in range(count)
    ]


def anchor_positions(length: float, count: int) -> list[float]:
    """Give where the run is anchored between pieces [m]: L i / n; its ends are fixed already.

    Parameters: length L [m], count n of fittings (count).
    Source: derived.
    """
    return [length * index / count for index in range(1, count)]


def barrel_clamp(travel: float, engagement: float) -> float:
    """Give how far from its fixed point a barrel is clamped [m]: in its middle, (travel + engagement) / 2.

    The barrel takes in the piston over its travel and holds its engagement at all times.
    Parameters: travel [m], engagement [m].
    Source: derived.
    """
    return (travel + engagement) / 2


def piston_reach(travel: float, engagement: float) -> float:
    """Give how far from its fixed point a fitting reaches when fully open [m]: 2 travel + engagement.

    Barrel (travel + engagement) and open piston (travel); up to here nothing but the clamp of the barrel may hold it.
    Parameters: travel [m], engagement [m].
    Source: derived.
    """
    return 2 * travel + engagement
