"""Tension of cable pulled through conduit, section by section, with the weight of the cable in every form.

Symbols of the sources: T1, T2 tension entering and leaving [N]; w weight of all cables per length [N/m]; K effective
friction, the weight correction factor times the coefficient of friction; R centre-line radius [m]; theta angle of a
bend [rad]; phi slope from level [rad], positive when the cable climbs in the direction of the pull.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import NamedTuple


class Friction(NamedTuple):
    """Effective friction K of one cable set: weight correction times the coefficient, in straights and in bends.

    The two differ only for documents that put the weight correction on straights alone.
    """

    straights: float
    bends: float


class Straight(NamedTuple):
    """A straight section: `length` [m] at a slope `grade` [rad]."""

    length: float
    grade: float

    def carry(self, tension: float, weight: float, friction: Friction) -> float:
        """Give the tension [N] at its end; see `straight`."""
        return straight(tension, weight, friction.straights, self.length, self.grade)

    def reversed(self) -> Straight:
        """Give the section met from its other end."""
        return Straight(self.length, -self.grade)

    @property
    def angle(self) -> float:
        """The change of direction [rad]: none."""
        return 0.0

    @property
    def developed_length(self) -> float:
        """The length along the centre line [m]."""
        return self.length


class HorizontalBend(NamedTuple):
    """A bend in a level plane: centre-line `radius` [m], `angle` [rad]."""

    radius: float
    angle: float

    def carry(self, tension: float, weight: float, friction: Friction) -> float:
        """Give the tension [N] at its end; see `horizontal_bend`."""
        return horizontal_bend(tension, weight, friction.bends, self.radius, self.angle)

    def reversed(self) -> HorizontalBend:
        """Give the section met from its other end: the same."""
        return self

    @property
    def developed_length(self) -> float:
        """The length along the centre line [m]."""
        return self.radius * self.angle


class VerticalBend(NamedTuple):
    """A bend in a vertical plane: centre-line `radius` [m] from slope `entry_grade` to `exit_grade` [rad]."""

    radius: float
    entry_grade: float
    exit_grade: float

    def carry(self, tension: float, weight: float, friction: Friction) -> float:
        """Give the tension [N] at its end; see `vertical_bend`."""
        return vertical_bend(tension, weight, friction.bends, self.radius, self.entry_grade, self.exit_grade)

    def reversed(self) -> VerticalBend:
        """Give the section met from its other end: slopes swap and change sign."""
        return VerticalBend(self.radius, -self.exit_grade, -self.entry_grade)

    @property
    def angle(self) -> float:
        """The change of direction [rad]."""
        return abs(self.exit_grade - self.entry_grade)

    @property
    def developed_length(self) -> float:
        """The length along the centre line [m]."""
        return self.radius * self.angle


Section = Straight | HorizontalBend | VerticalBend


class SectionPull(NamedTuple):
    """Tension [N] into and out of a section and the force [N] with which the reel must hold back."""

    tension_in: float
    tension_out: float
    hold_back: float


def straight(tension: float, weight: float, friction: float, length: float, grade: float) -> float:
    """Give the tension [N] after a straight section: T1 + w L (K cos phi + sin phi).

    Parameters: tension T1 [N], weight w [N/m], friction K, length L [m], grade phi [rad] in [-pi/2, pi/2]. The gravity
    term is never multiplied by the weight correction factor. Negative where the cable runs away down a slope: the
    caller carries zero then (`pull`). Source: GB 50168-92, appendix 2; SEC TES-P-104.05, page 8 (level).
    """
    return tension + weight * length * (friction * math.cos(grade) + math.sin(grade))


def capstan(tension: float, friction: float, angle: float) -> float:
    """Give the tension [N] after a bend when the weight of the cable is neglected: T1 e^(K theta).

    Good to one percent where w R is below a fifth of T1; always at or below the exact level form.
    """
    return tension * math.exp(friction * angle)


def horizontal_bend(tension: float, weight: float, friction: float, radius: float, angle: float) -> float:
    """Give the tension [N] after a level bend, cable weight included.

    T1 cosh(K theta) + sinh(K theta) sqrt(T1^2 + (w R)^2). Parameters: tension T1 [N] >= 0, weight w [N/m], friction K,
    radius R [m], angle theta [rad]. Source: AIEE 1953 form, also printed as an equivalent length in a worked sheet
    based on GB 50217-2007.
    """
    turn = friction * angle
    return tension * math.cosh(turn) + math.sinh(turn) * math.hypot(tension, weight * radius)


def _crest(tension: float, side: float, friction: float, entry: float, leave: float) -> float:
    """Closed form of a crest; `side` is w R [N]. The weight presses the cable on the inner wall."""

    def particular(slope: float) -> float:
        bracket = (1.0 - friction * friction) * math.cos(slope) - 2.0 * friction * math.sin(slope)
        return side * bracket / (1.0 + friction * friction)

    return particular(leave) + (tension - particular(entry)) * math.exp(friction * (entry - leave))


def _sag(tension: float, side: float, friction: float, entry: float, leave: float) -> float:
    """Closed form of a sag on the inner wall; a negative `friction` gives the form on the lower wall."""

    def particular(slope: float) -> float:
        bracket = (1.0 - friction * friction) * math.cos(slope) + 2.0 * friction * math.sin(slope)
        return -side * bracket / (1.0 + friction * friction)

    return particular(leave) + (tension - particular(entry)) * math.exp(friction * (leave - entry))


def _sag_crossing(tension: float, side: float, friction: float, entry: float, leave: float) -> float:
    """Slope at which the cable changes walls between two slopes of one sign, by bisection to the last digit."""
    low, high = entry, leave
    above = tension >= side * math.cos(entry)
    while True:
        middle = (low + high) / 2.0
        if middle in (low, high):
            return middle
        if (_sag(tension, side, friction, entry, middle) >= side * math.cos(middle)) == above:
            low = middle
        else:
            high = middle


def _sag_piece(tension: float, side: float, friction: float, entry: float, leave: float) -> float:
    """Tension after part of a sag whose slopes have one sign, changing walls at most once on the way."""
    lift = tension - side * math.cos(entry)
    on_inner_wall = lift > 0.0 or (lift == 0.0 and entry >= 0.0)
    signed = friction if on_inner_wall else -friction
    after = _sag(tension, side, signed, entry, leave)
    changes = (after < side * math.cos(leave)) if on_inner_wall else (after > side * math.cos(leave) and entry >= 0.0)
    if not changes:
        return after
    crossing = _sag_crossing(tension, side, signed, entry, leave)
    return _sag(side * math.cos(crossing), side, -signed, crossing, leave)


def vertical_bend(
    tension: float, weight: float, friction: float, radius: float, entry_grade: float, exit_grade: float
) -> float:
    """Give the tension [N] after a bend in a vertical plane, from any slope to any slope, cable weight included.

    dT/dphi = K |T -+ w R cos phi| + w R sin phi, solved in closed form piece by piece. On a crest (the slope falls) the
    weight presses the cable on the inner wall and one form holds throughout. In a sag (the slope rises) the cable
    stays on the inner wall only while T >= w R cos phi; below that it lies on the lower wall, where friction adds. It
    can leave the inner wall only on the way down and return to it only on the way up, so each half of the bend changes
    walls at most once; the slope of the change is found to the last digit.

    Parameters: tension T1 [N] >= 0, weight w [N/m], friction K, radius R [m], grades [rad] in [-pi/2, pi/2]. May be
    negative on the way down: the caller carries zero then (`pull`). Source: derived; the forms with one end vertical
    agree with GB 50168-92, appendix 2.
    """
    side = weight * radius
    if exit_grade <= entry_grade:
        return _crest(tension, side, friction, entry_grade, exit_grade)
    if entry_grade < 0.0 < exit_grade:
        at_the_bottom = _sag_piece(tension, side, friction, entry_grade, 0.0)
        return _sag_piece(at_the_bottom, side, friction, 0.0, exit_grade)
    return _sag_piece(tension, side, friction, entry_grade, exit_grade)


def pull(sections: Iterable[Section], weight: float, friction: Friction, incoming: float) -> list[SectionPull]:
    """Carry the tension through a route; below zero the reel holds back and zero goes on.

    Parameters: sections in the order of the pull, weight w [N/m] of all cables, friction K, incoming tension [N].
    Never feeds a negative tension into the next section.
    """
    pulled: list[SectionPull] = []
    tension = incoming
    for section in sections:
        after = section.carry(tension, weight, friction)
        leaving = after if after > 0.0 else 0.0
        pulled.append(SectionPull(tension, leaving, leaving - after))
        tension = leaving
    return pulled


def reverse(sections: Sequence[Section]) -> list[Section]:
    """Give the same route pulled from the other end: order turned round, slopes change sign."""
    return [section.reversed() for section in reversed(sections)]


def bend_total(sections: Iterable[Section]) -> float:
    """Give the sum of the angles of all bends [rad], horizontal and vertical."""
    return sum(section.angle for section in sections)


def developed_length(sections: Iterable[Section]) -> float:
    """Give the length of a route along its centre line [m], bends included."""
    return sum(section.developed_length for section in sections)


def lubricant_volume(length: float, conduit_diameter: float, film: float) -> float:
    """Give the lubricant [m3] for a run: film x L x D.

    Parameters: length [m], conduit_diameter (inside) [m], film, volume per length and diameter [m3/m2]. Source:
    lubricant maker's Technical Talk, volume XVII: 0.0015 US gallon for each foot and inch. More for bends, corrugated
    duct and a high fill.
    """
    return film * length * conduit_diameter
