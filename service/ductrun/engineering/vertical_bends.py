"""Tension of cable drawn through a bend in a vertical plane, cable weight included: crests and sags.

Symbols: T tension [N]; w R weight of all cables per length times the center-line radius, called `side` [N]; K effective
friction; phi slope from level [rad], positive when the cable climbs in the direction of the pull. On a crest the slope
falls, in a sag it rises. Along the bend

    dT = K |T + w R cos phi| + w R sin phi      for each radian of a crest,
    dT = K |T - w R cos phi| + w R sin phi      for each radian of a sag,

solved in closed form piece by piece: T - w R P(phi) grows with e^(K theta), where

    P = ((1 - K^2) cos phi - 2 K sin phi) / (1 + K^2)       on a crest,
    P = -((1 - K^2) cos phi + 2 K sin phi) / (1 + K^2)      in a sag on its inner wall, with -K on the lower one.

A cable cannot push. Where its tension would fall below zero it lies slack and nothing is carried on; `carry` therefore
gives the tension of a cable that is nowhere below zero, and `entry` the least tension that must enter for that. In a
sag the tension can touch zero and rise again only where tan phi = -K: there weight and friction are in balance.
"""

from __future__ import annotations

import math
from collections.abc import Callable


def carry(tension: float, side: float, friction: float, entry_grade: float, exit_grade: float) -> float:
    """Give the tension [N] leaving a vertical bend, never below zero anywhere in it: the closed forms above.

    Valid from any slope to any slope. Departs from its source in taking the lower wall where the cable does not
    lift off it; where it does throughout, and one end is vertical, the forms agree.
    Parameters: tension T1 entering [N], 0 or above, side w R [N], friction K (ratio), entry_grade phi1 [rad],
    exit_grade phi2 [rad], both from -pi/2 to pi/2.
    Source: GB 50168-92, appendix 2, table 2.1 (scanned copy); Horizontal bend with cable weight, AIEE 1953; the
    vertical form derived from the same equilibrium.
    """
    if exit_grade <= entry_grade:
        return max(0.0, _crest(tension, side, friction, entry_grade, exit_grade))
    balance = -math.atan(friction)
    if entry_grade < balance < exit_grade:
        tension = max(0.0, _sag(tension, side, friction, entry_grade, balance))
        entry_grade = balance
    return max(0.0, _sag(tension, side, friction, entry_grade, exit_grade))


def entry(tension_out: float, side: float, friction: float, entry_grade: float, exit_grade: float) -> float:
    """Give the least tension [N] that must enter so that the cable is nowhere slack and leaves with a given one.

    The inverse of `carry`, followed from the end of the bend to its start.
    Parameters: tension_out T2 leaving [N], side w R [N], friction K (ratio), entry_grade phi1 [rad], exit_grade
    phi2 [rad], both from -pi/2 to pi/2.
    Source: derived.
    """
    if exit_grade <= entry_grade:
        return max(0.0, _crest(tension_out, side, friction, exit_grade, entry_grade))
    balance = -math.atan(friction)
    if entry_grade < balance < exit_grade:
        tension_out = max(0.0, _sag(tension_out, side, friction, exit_grade, balance))
        exit_grade = balance
    return max(0.0, _sag(tension_out, side, friction, exit_grade, entry_grade))


def highest(
    tension_in: float, tension_out: float, side: float, friction: float, entry_grade: float, exit_grade: float
) -> float:
    """Give the highest tension [N] anywhere in a vertical bend, both ends included.

    Over a crest the cable may be taut at its top and slacken on the far side, where K (T + w R cos phi) + w R sin
    phi = 0; entering a sag steeply downhill it may be held back first. Elsewhere the highest tension stands at an
    end.
    Parameters: tension_in T1 entering [N], tension_out T2 of `carry` [N], side w R [N], friction K (ratio),
    entry_grade phi1 [rad], exit_grade phi2 [rad], both from -pi/2 to pi/2.
    Source: derived.
    """
    ends = max(tension_in, tension_out)
    if exit_grade <= entry_grade:
        return max(ends, _top_of_crest(tension_in, side, friction, entry_grade, exit_grade))
    if entry_grade < math.atan(friction) - math.pi / 2.0:
        return max(ends, _top_of_steep_sag(tension_in, side, friction, entry_grade, exit_grade))
    return ends


def _crest(tension: float, side: float, friction: float, start: float, end: float) -> float:
    """Closed form of a crest between two slopes, in either direction along it."""

    def particular(slope: float) -> float:
        bracket = (1.0 - friction * friction) * math.cos(slope) - 2.0 * friction * math.sin(slope)
        return side * bracket / (1.0 + friction * friction)

    return particular(end) + (tension - particular(start)) * math.exp(friction * (start - end))


def _on_one_wall(tension: float, side: float, friction: float, start: float, end: float) -> float:
    """Closed form of a sag on its inner wall, in either direction; a negative `friction` gives the lower wall."""

    def particular(slope: float) -> float:
        bracket = (1.0 - friction * friction) * math.cos(slope) + 2.0 * friction * math.sin(slope)
        return -side * bracket / (1.0 + friction * friction)

    return particular(end) + (tension - particular(start)) * math.exp(friction * (end - start))


def _sag(tension: float, side: float, friction: float, start: float, end: float) -> float:
    """Tension after a sag from one slope to another, in either direction along it, cut where the cable is level."""
    if start * end < 0.0:
        tension = _half_sag(tension, side, friction, start, 0.0)
        start = 0.0
    return _half_sag(tension, side, friction, start, end)


def _half_sag(tension: float, side: float, friction: float, start: float, end: float) -> float:
    """Tension after part of a sag whose slopes have one sign.

    The cable lies on the inner wall where T > w R cos phi, else on the lower one. It can only sink toward the level
    and only rise away from it, so it changes walls at most once.
    """
    away = abs(end) > abs(start)
    lift = tension - side * math.cos(start)
    on_inner_wall = lift > 0.0 or (lift == 0.0 and away)
    signed = friction if on_inner_wall else -friction
    after = _on_one_wall(tension, side, signed, start, end)
    lift_after = after - side * math.cos(end)
    changes = (lift_after < 0.0 and not away) if on_inner_wall else (lift_after > 0.0 and away)
    if not changes:
        return after

    def lifted(slope: float) -> tuple[float, float]:
        height = _on_one_wall(tension, side, signed, start, slope) - side * math.cos(slope)
        return height, signed * height + 2.0 * side * math.sin(slope)

    crossing = _change_of_sign(lifted, start, end)
    return _on_one_wall(side * math.cos(crossing), side, -signed, crossing, end)


def _top_of_crest(tension: float, side: float, friction: float, entry_grade: float, exit_grade: float) -> float:
    """Tension where it stops rising on a crest: K (T + w R cos phi) + w R sin phi = 0; that entering if it never does.

    Once it falls it falls to the end, so there is one such place at most.
    """

    def rate(turned: float) -> tuple[float, float]:
        slope = entry_grade - turned
        here = _crest(tension, side, friction, entry_grade, slope)
        rise = friction * (here + side * math.cos(slope)) + side * math.sin(slope)
        return rise, friction * rise + side * (friction * math.sin(slope) - math.cos(slope))

    angle = entry_grade - exit_grade
    if rate(0.0)[0] <= 0.0 or rate(angle)[0] >= 0.0:
        return tension
    return _crest(tension, side, friction, entry_grade, entry_grade - _change_of_sign(rate, 0.0, angle))


def _top_of_steep_sag(tension: float, side: float, friction: float, entry_grade: float, exit_grade: float) -> float:
    """Tension where it stops rising in a sag entered more steeply than tan phi = -1/K; that entering if it never does.

    There the cable is on the inner wall, and gentler slopes have no such place.
    """

    def rate(slope: float) -> tuple[float, float]:
        lift = _on_one_wall(tension, side, friction, entry_grade, slope) - side * math.cos(slope)
        rise = friction * lift + side * math.sin(slope)
        return rise, friction * rise + side * (friction * math.sin(slope) + math.cos(slope))

    end = min(exit_grade, math.atan(friction) - math.pi / 2.0)
    if rate(entry_grade)[0] <= 0.0 or rate(end)[0] >= 0.0:
        return tension
    top = _change_of_sign(rate, entry_grade, end)
    return _on_one_wall(tension, side, friction, entry_grade, top)


def _change_of_sign(curve: Callable[[float], tuple[float, float]], start: float, end: float) -> float:
    """Place between two where a value changes its sign, by Newton's steps kept between places of either sign.

    `curve` gives the value and its slope there.
    """
    negative_at_end = curve(end)[0] < 0.0
    at = (start + end) / 2.0
    while True:
        value, slope = curve(at)
        if (value < 0.0) == negative_at_end:
            end = at
        else:
            start = at
        after = at - value / slope if slope else math.nan
        if not min(start, end) < after < max(start, end):
            after = (start + end) / 2.0
        if abs(after - at) <= 1e-15:
            return after
        at = after
