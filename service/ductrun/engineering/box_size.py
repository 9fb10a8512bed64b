"""Room in boxes and manholes: lengths by trade size or cable diameter, racking, and the volume of conductors."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.roots import falling_root
from ductrun.engineering.rounding import over

_AT_THE_CORNER = 1e-9  # [m] as near as a point of no size comes


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


def gap_between(one: Vector, other: Vector, faces: tuple[int, int], radii: tuple[float, float]) -> float:
    """Give the distance [m] of the near edges of two round openings in walls of a box, as a tape shows it.

    In one wall that of their centers less both radii, and beside what two facing walls are apart; around a corner see
    gap_around_corner.
    Parameters: one center, other center, faces (index), the axes that their walls stand across, radii of both [m].
    Source: derived.

    Openings of 2 and 4 in, 10 in between their centers in one wall, leave 7 in, and in walls 24 in apart 25 in:

    >>> gap_between(Vector(0, 0, 3), Vector(0, 10, 3), (0, 0), (1, 2))
    7.0
    >>> gap_between(Vector(0, 0, 3), Vector(24, 10, 3), (0, 0), (1, 2))
    25.0
    """
    between = tuple(abs(b - a) for a, b in zip(one, other, strict=True))
    if faces[0] != faces[1]:
        along = next(axis for axis in range(3) if axis not in faces)
        return gap_around_corner((between[faces[1]], between[faces[0]]), between[along], radii)
    aside = math.hypot(*(step for axis, step in enumerate(between) if axis != faces[0]))
    reach = radii[0] + radii[1]
    return math.hypot(between[faces[0]], aside - reach if over(aside, reach) else 0.0)


def gap_around_corner(away: tuple[float, float], along: float, radii: tuple[float, float]) -> float:
    """Give the distance [m] of the near edges of two round openings in walls that meet in a corner.

    The line between the nearest points is square to both edges. They stand at the angles a and b from what of each
    opening is next to the corner: y tan a = s - r2 sin b and x tan b = s - r1 sin a. Openings lie within their walls,
    so that no center counts as nearer to the corner than its radius.
    Parameters: away [m], how far the center of each is from the corner, y and x; along [m], how far they are apart
    along it, s; radii r1 and r2 [m].
    Source: derived.

    As far along as each other the near edges are those toward the corner: openings of 4 and 2 in, 5 and 5 in from it.

    >>> gap_around_corner((5.0, 5.0), 0.0, (2.0, 1.0))
    5.0
    """
    one, other = (max(place, radius, _AT_THE_CORNER) for place, radius in zip(away, radii, strict=True))
    near, far = radii

    def sines(tangent: float) -> tuple[float, float]:
        second = tangent / math.sqrt(1 + tangent * tangent)
        first = (along - far * second) / one
        return first / math.sqrt(1 + first * first), second

    def left(tangent: float) -> float:
        return along - near * sines(tangent)[0] - other * tangent

    a, b = sines(falling_root(left, 0.0, along / other, 0.0) or 0.0)
    steps = (one - near * math.sqrt(1 - a * a), other - far * math.sqrt(1 - b * b), along - near * a - far * b)
    return math.hypot(*steps)


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
