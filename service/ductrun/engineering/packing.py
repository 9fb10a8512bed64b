"""Circles packed in a circle: one way in which conductors can lie in a bore, found within a bound or not at all.

Each circle goes to the lowest place where it touches two others, or one and the bore: so cables lie. Where that finds
no place for all, they are laid along the bore first. A set that lies in no way tried may still pass the bore: the
search gives nothing then, and never an overlap.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from typing import Final, NamedTuple

MOST_PACKED: Final = 100  # circles: beyond that nobody could tell them apart
_MOST_WORK: Final = 60_000  # different sizes times circles squared, to which the time of a search grows
_CLOSE: Final = 1e-9  # of the bore, by which rounding may have circles overlap


class Circle(NamedTuple):
    """A circle: its center at `x` to the right and `y` upward of the center of the bore, and its `radius` [m]."""

    x: float
    y: float
    radius: float


_Rank = Callable[[Circle], tuple[float, float]]


def least_circle(diameters: Sequence[float]) -> float:
    """Give a diameter [m] below which no circle holds so many circles: that of the two largest side by side, and that
    of all their area together, sqrt(sum d^2).

    It is reached by one and two; more than two need more, three alike 2.155 times their diameter.
    Parameters: diameters of the circles [m].
    Source: derived.

    >>> round(least_circle([1.0, 1.0]), 3), round(least_circle([1.0] * 9), 3)
    (2.0, 3.0)
    """
    largest = sorted(diameters, reverse=True)[:2]
    return max(sum(largest), math.sqrt(sum([diameter**2 for diameter in diameters])))


def pack(diameters: Sequence[float], bore: float) -> list[Circle] | None:
    """Give where circles can lie in a bore [m], in the order of their diameters given; None where none was found.

    The bore is turned until the middle of all of them lies lowest: turning it lets none overlap.
    Parameters: diameters [m], each above 0, bore diameter [m].
    Source: derived.

    Three of 1 pass a bore of 2.155 and not one of 2.15:

    >>> [pack([1.0] * 3, bore) is not None for bore in (2.155, 2.15)]
    [True, False]
    """
    if not diameters or len(diameters) > MOST_PACKED:
        return [] if not diameters else None
    if sum([one * one for one in diameters]) > bore * bore or max(diameters) > bore:
        return None
    order = sorted(range(len(diameters)), key=lambda index: -diameters[index])
    rooms = _rooms([diameters[index] / 2 for index in order])
    for rank in (_lowest, _outermost):
        laid = _laid(rooms, bore / 2, rank)
        if laid is not None:
            found = dict(zip(order, _turned(laid), strict=True))
            return [Circle(found[index].x, found[index].y, diameter / 2) for index, diameter in enumerate(diameters)]
    return None


def _rooms(radii: Sequence[float]) -> list[float]:
    """Give the room that each of so many falling radii is given: its own, or where there are too many different ones
    that of a larger neighbor.
    """
    different = sorted(set(radii), reverse=True)
    most = max(1, _MOST_WORK // len(radii) ** 2)
    together = -(-len(different) // most)
    room = {radius: different[index // together * together] for index, radius in enumerate(different)}
    return [room[radius] for radius in radii]


def _lowest(circle: Circle) -> tuple[float, float]:
    return (circle.y, abs(circle.x))


def _outermost(circle: Circle) -> tuple[float, float]:
    return (-math.hypot(circle.x, circle.y) - circle.radius, circle.y)


def _laid(radii: Sequence[float], bore: float, rank: _Rank) -> list[Circle] | None:
    """Lay circles of falling radii one by one, each at the best free place; None where one has none."""
    close = _CLOSE * bore
    laid: list[Circle] = []
    places: list[Circle] = []
    radius = 0.0
    for wanted in radii:
        if wanted != radius:
            radius = wanted
            places = _all_places(laid, radius, bore, close)
        if not laid:
            laid.append(Circle(0.0, radius - bore, radius))
            places = _all_places(laid, radius, bore, close)
            continue
        if not places:
            return None
        best = min(places, key=rank)
        places = [one for one in places if not _overlap(one, best, close)]
        laid.append(best)
        places += _free([*_at_bore(best, radius, bore), *_between_new(best, laid, radius)], laid, bore, close)
    return laid


def _all_places(laid: Sequence[Circle], radius: float, bore: float, close: float) -> list[Circle]:
    """Give every free place of a radius that touches two of the circles laid, or one and the bore."""
    tried: list[Circle] = []
    for index, one in enumerate(laid):
        tried += _at_bore(one, radius, bore)
        tried += _between_new(one, laid[: index + 1], radius)
    return _free(tried, laid, bore, close)


def _free(tried: Sequence[Circle], laid: Sequence[Circle], bore: float, close: float) -> list[Circle]:
    return [
        place
        for place in tried
        if math.hypot(place.x, place.y) <= bore - place.radius + close
        and not any(_overlap(place, other, close) for other in laid)
    ]


def _overlap(one: Circle, other: Circle, close: float) -> bool:
    across, up, apart = one.x - other.x, one.y - other.y, one.radius + other.radius - close
    return across * across + up * up < apart * apart


def _between_new(newest: Circle, laid: Sequence[Circle], radius: float) -> list[Circle]:
    """Give the places of a radius that touch the newest circle and another."""
    found = []
    one = newest.radius + radius
    for other in laid:
        if other is not newest:
            found += _crossings(newest, one, other, other.radius + radius, radius)
    return found


def _at_bore(one: Circle, radius: float, bore: float) -> list[Circle]:
    """Give the places of a radius that touch a circle and the bore from inside."""
    return _crossings(one, one.radius + radius, Circle(0.0, 0.0, bore), bore - radius, radius)


def _crossings(one: Circle, near: float, other: Circle, far: float, radius: float) -> list[Circle]:
    """Give the two places of a radius so far from one center and from another, none where there is no such place."""
    across, up = other.x - one.x, other.y - one.y
    apart = math.hypot(across, up)
    if apart == 0.0 or apart > near + far or apart < abs(near - far):
        return []
    along = (apart * apart + near * near - far * far) / (2 * apart)
    aside = math.sqrt(max(0.0, near * near - along * along))
    x, y = one.x + along * across / apart, one.y + along * up / apart
    turn_x, turn_y = -up / apart * aside, across / apart * aside
    return [Circle(x + turn_x, y + turn_y, radius), Circle(x - turn_x, y - turn_y, radius)]


def _turned(laid: Sequence[Circle]) -> list[Circle]:
    """Turn all circles about the center of the bore until the middle of their areas lies straight below it."""
    x = sum([one.x * one.radius * one.radius for one in laid])
    y = sum([one.y * one.radius * one.radius for one in laid])
    away = math.hypot(x, y)
    if away <= _CLOSE * sum([one.radius**3 for one in laid]):
        return list(laid)
    cosine, sine = -y / away, -x / away
    return [Circle(one.x * cosine - one.y * sine, one.x * sine + one.y * cosine, one.radius) for one in laid]
