"""Room in boxes and manholes: lengths by trade size or cable diameter, racking, and the volume of conductors."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple


class Vector(NamedTuple):
    """A place or a direction: `x` [m] along the length, `y` [m] along the width and `z` [m] along the depth."""

    x: float
    y: float
    z: float


def straight_length(multiple: float, largest: float) -> float:
    """Give the least length [m] of a box in which conductors pass straight through: the multiple of the largest.

    Parameters: multiple (ratio), largest trade size of a raceway or diameter of a cable [m].
    Source: NFPA 70-2023, 314.28; NFPA 70-2023, 314.71.

    A quiz has a 2 in raceway take a box 16 in long:

    >>> straight_length(8, 2)
    16
    """
    return multiple * largest


def opposite_distance(sizes: Sequence[tuple[float, float]]) -> float:
    """Give the least distance [m] from the entries of a row, or of a wall, to the wall opposite.

    The multiple of the largest, and the sum of all others; where multiples differ, of the one for which that is most.
    Parameters: sizes of all its raceways or cables [m], each with its multiple.
    Source: NFPA 70-2023, 314.28; NFPA 70-2023, 314.71.

    A 4 in raceway beside two of 2 in needs 28 in, one of 3 in beside 2 and 1 needs 21:

    >>> opposite_distance([(4, 6), (2, 6), (2, 6)]), opposite_distance([(3, 6), (2, 6), (1, 6)])
    (28, 21)
    """
    total = sum([size for size, _ in sizes])
    return max([multiple * size + total - size for size, multiple in sizes])


def entry_distance(multiple: float, larger: float) -> float:
    """Give the least distance [m] between the near edges of two entries of one conductor: multiple x the larger.

    Parameters: multiple (ratio), larger trade size [m] of the two raceways or the diameter of the cable.
    Source: NFPA 70-2023, 314.28; NFPA 70-2023, 314.71.
    """
    return multiple * larger


def wall_of_u_pull(one: float, apart: float, other: float) -> float:
    """Give the least length [m] of a wall through which a conductor enters and leaves: both raceways and what is
    between them.

    Parameters: one outside diameter [m], apart [m], the distance of the near edges, other outside diameter [m].
    Source: derived.
    """
    return one + apart + other


def gap_between(one: Vector, other: Vector, faces: tuple[int | None, int | None], radii: tuple[float, float]) -> float:
    """Give a distance [m] that the near edges of two round openings in walls of a box are apart at least.

    That of their centers, less what each reaches along the line between them within its wall: exact in one wall and in
    walls that face each other, and never more than what a tape shows.
    Parameters: one center, other center, faces (index), the axes that their walls stand across, radii of both [m].
    Source: derived.
    """
    between = tuple(b - a for a, b in zip(one, other, strict=True))
    apart = math.sqrt(sum([step * step for step in between]))
    if apart == 0.0:
        return 0.0
    reach = 0.0
    for face, radius in zip(faces, radii, strict=True):
        across = 0.0 if face is None else between[face] / apart
        reach += radius * math.sqrt(max(0.0, 1 - across * across))
    return max(0.0, apart - reach)


def offset_length(radius: float, offset: float) -> float:
    """Give the length [m] of two equal reverse bends that lead aside: sqrt(4 R S - S2), and 2 R from an offset of 2 R.

    Parameters: radius R of the center line [m], offset S [m].
    Source: derived.
    """
    return 2 * radius if offset >= 2 * radius else math.sqrt(4 * radius * offset - offset * offset)


def racking_length(straight: float, aside: float, splice: float) -> float:
    """Give the least length [m] of the wall on which cable is racked: 2 (straight + aside) + splice.

    Parameters: straight out of the duct at each end [m], aside [m], the length of the offset at each end, splice [m],
    the room in the middle.
    Source: derived.
    """
    return 2 * (straight + aside) + splice


def turning_room(radius: float, diameter: float) -> float:
    """Give the least distance [m] from an entry to the wall opposite in which a cable turns: R + D.

    Parameters: radius R of its inner side [m], diameter D [m].
    Source: derived.
    """
    return radius + diameter


def conductor_volume(counts: Sequence[tuple[int, float]]) -> float:
    """Give the least volume [m3] of a box for its conductors: the sum of count x allowance.

    Parameters: counts (count) of conductors, each with the allowance of its size [m3].
    Source: NFPA 70-2023, 314.16 and its tables.
    """
    return sum([count * allowance for count, allowance in counts])
