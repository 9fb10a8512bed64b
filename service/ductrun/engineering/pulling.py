"""Tension of cable pulled through conduit, section by section, with the weight of the cable in every form.

Symbols of the sources: T1, T2 tension entering and leaving [N]; w weight of all cables per length [N/m]; K effective
friction, the weight correction factor times the coefficient of friction; R center-line radius [m]; theta angle of a
bend [rad]; phi slope from level [rad], positive when the cable climbs in the direction of the pull.

Friction opposes motion, so the tension at a point depends on what lies before it alone, and rises with the tension
that enters. A cable cannot push: where the conduit falls more steeply than tan phi = -K the cable runs away, and the
reel must hold it back. The brake a pull needs is the least tension at its entry, not below the incoming one, that
leaves no point of the cable slack (`least_entry`): it is followed backwards from every low point.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import NamedTuple

from ductrun.engineering import sloped_bends, vertical_bends
from ductrun.engineering.tension import horizontal_bend, horizontal_bend_entry, straight


class SectionPull(NamedTuple):
    """A section pulled: `tension_in` and `tension_out` [N], the `highest` anywhere in it [N], and in a bend the
    highest `pressure` [N/m] on the worst cable.
    """

    tension_in: float
    tension_out: float
    highest: float
    pressure: float | None


class Straight(NamedTuple):
    """A straight section: `length` [m] at a slope `grade` [rad], with the effective `friction` K (ratio) in it."""

    length: float
    grade: float
    friction: float = 0.0

    def pulled(self, tension: float, weight: float) -> SectionPull:
        """Pull through it by `straight`, from a tension [N] and a weight [N/m]; zero leaves where the cable would
        run away.
        """
        leaving = straight(tension, weight, self.friction, self.length, self.grade)
        leaving = leaving if leaving > 0.0 else 0.0
        return SectionPull(tension, leaving, leaving if leaving > tension else tension, None)

    def entry(self, tension_out: float, weight: float) -> float:
        """Give the least tension [N] that must enter for `tension_out` [N] to leave, with no slack between, and a
        weight [N/m].
        """
        return max(0.0, tension_out - straight(0.0, weight, self.friction, self.length, self.grade))

    def laid(self, friction: float, share: float) -> Straight:  # noqa: ARG002  (as of a bend, where a share presses)
        """Give the section with its friction K (ratio); the share (ratio) presses in bends alone."""
        return Straight(self.length, self.grade, friction)

    def reversed(self) -> Straight:
        """Give the section met from its other end."""
        return Straight(self.length, -self.grade, self.friction) if self.grade else self

    @property
    def entry_grade(self) -> float:
        """The slope [rad] where the cable enters."""
        return self.grade

    @property
    def exit_grade(self) -> float:
        """The slope [rad] where the cable leaves."""
        return self.grade

    @property
    def angle(self) -> float:
        """The change of direction [rad]: none."""
        return 0.0

    @property
    def developed_length(self) -> float:
        """The length along the center line [m]."""
        return self.length


class HorizontalBend(NamedTuple):
    """A bend in plan: center-line `radius` [m], `angle` [rad], effective `friction` K (ratio), and the `share` (ratio)
    of T/R that presses on the worst cable. It lies in a level plane, or evenly on a slope `grade` [rad].
    """

    radius: float
    angle: float
    friction: float = 0.0
    share: float = 1.0
    grade: float = 0.0

    def pulled(self, tension: float, weight: float) -> SectionPull:
        """Pull through it by `horizontal_bend`, from a tension [N] and a weight [N/m]; on a slope by `sloped_bends`."""
        if self.grade:
            leaving = sloped_bends.carry(tension, weight * self.radius, self.friction, self.angle, self.grade)
            top = max(tension, leaving)
            return SectionPull(tension, leaving, top, self.share * sloped_bends.pressure(top, self.radius, self.grade))
        leaving = horizontal_bend(tension, weight, self.friction, self.radius, self.angle)
        return SectionPull(tension, leaving, leaving, self.share * leaving / self.radius)

    def entry(self, tension_out: float, weight: float) -> float:
        """Give the tension [N] that enters where `tension_out` [N] leaves, by `horizontal_bend_entry`; weight
        [N/m]; on a slope by `sloped_bends`.
        """
        if self.grade:
            return sloped_bends.entry(tension_out, weight * self.radius, self.friction, self.angle, self.grade)
        return horizontal_bend_entry(tension_out, weight, self.friction, self.radius, self.angle)

    def laid(self, friction: float, share: float) -> HorizontalBend:
        """Give the bend with its friction K (ratio) and the share (ratio) of T/R on the worst cable."""
        return HorizontalBend(self.radius, self.angle, friction, share, self.grade)

    def reversed(self) -> HorizontalBend:
        """Give the section met from its other end: the same, but for its slope."""
        return self._replace(grade=-self.grade) if self.grade else self

    @property
    def entry_grade(self) -> float:
        """The slope [rad] where the cable enters."""
        return self.grade

    @property
    def exit_grade(self) -> float:
        """The slope [rad] where the cable leaves."""
        return self.grade

    @property
    def developed_length(self) -> float:
        """The length along the center line [m]."""
        flat = self.radius * self.angle
        return flat / math.cos(self.grade) if self.grade else flat


class VerticalBend(NamedTuple):
    """A bend in a vertical plane: center-line `radius` [m] from slope `entry_grade` to `exit_grade` [rad], effective
    `friction` K (ratio), and the `share` (ratio) of T/R that presses on the worst cable.
    """

    radius: float
    entry_grade: float
    exit_grade: float
    friction: float = 0.0
    share: float = 1.0

    def pulled(self, tension: float, weight: float) -> SectionPull:
        """Pull through it by `vertical_bends`, from a tension [N] and a weight [N/m]; the highest may stand at
        neither end.
        """
        given = (weight * self.radius, self.friction, self.entry_grade, self.exit_grade)
        leaving = vertical_bends.carry(tension, *given)
        top = vertical_bends.highest(tension, leaving, *given)
        return SectionPull(tension, leaving, top, self.share * top / self.radius)

    def entry(self, tension_out: float, weight: float) -> float:
        """Give the tension [N] to enter for `tension_out` [N] to leave, by `vertical_bends.entry`; weight [N/m]."""
        return vertical_bends.entry(tension_out, weight * self.radius, self.friction, self.entry_grade, self.exit_grade)

    def laid(self, friction: float, share: float) -> VerticalBend:
        """Give the bend with its friction K (ratio) and the share (ratio) of T/R on the worst cable."""
        return VerticalBend(self.radius, self.entry_grade, self.exit_grade, friction, share)

    def reversed(self) -> VerticalBend:
        """Give the section met from its other end: slopes swap and change sign."""
        return VerticalBend(self.radius, -self.exit_grade, -self.entry_grade, self.friction, self.share)

    @property
    def angle(self) -> float:
        """The change of direction [rad]."""
        return abs(self.exit_grade - self.entry_grade)

    @property
    def developed_length(self) -> float:
        """The length along the center line [m]."""
        return self.radius * self.angle


Bend = HorizontalBend | VerticalBend
Section = Straight | Bend


def least_entry(sections: Sequence[Section], weight: float, incoming: float) -> float:
    """Give the least tension [N] at the entry that leaves no point of the cable slack, and is not below the incoming
    one.

    Followed backwards from every low point: what a fall needs it needs whatever climbs after it. Less than 1e-12 of
    the weight of all cable is the last digit of the arithmetic, and none.
    Parameters: sections in the order of the pull, weight w [N/m], incoming tension [N].
    Source: derived.
    """
    needed = 0.0
    for section in reversed(sections):
        needed = section.entry(needed, weight)
    return max(incoming, needed if needed > 1e-12 * weight * developed_length(sections) else 0.0)


def pull(sections: Iterable[Section], weight: float, entering: float) -> list[SectionPull]:
    """Carry the tension through a route from what enters it, the incoming one or the brake (`least_entry`).

    From less than the brake it gives what friction alone asks beyond the low points, as if the cable lay slack
    before them.
    Parameters: sections in the order of the pull, weight w [N/m], entering tension [N].
    Source: derived.
    """
    pulled: list[SectionPull] = []
    for section in sections:
        step = section.pulled(entering, weight)
        pulled.append(step)
        entering = step.tension_out
    return pulled


def friction_of_feed(coefficient: float, weight: float, length: float) -> float:
    """Give the tension [N] with which cable enters from the reel: mu w L, the friction of what lies before the
    conduit.

    The annex takes about 20 m, a worked sheet based on it 10 m.
    Parameters: coefficient of friction mu without weight correction (ratio), weight w of all cables [N/m], length L
    between reel and conduit [m].
    Source: GB 50217-2007, annex H (1994: annex F).
    """
    return coefficient * weight * length


def steepest(sections: Iterable[Section]) -> float:
    """Give the steepest slope [rad] anywhere, climbing or falling: what falls one way climbs the other.

    Parameters: sections of the route.
    Source: derived.
    """
    slopes = [section.grade for section in sections if section.__class__ is Straight]
    for section in sections:
        if section.__class__ is not Straight:
            slopes += (section.entry_grade, section.exit_grade)
    return max(*slopes, -min(slopes)) if slopes else 0.0


def steep_rises(sections: Sequence[Section], steeper_than: float) -> list[tuple[int, int, float]]:
    """Give the stretches steeper than a slope: their first (index) and last section (index) and their rise or fall
    [m].

    Of a vertical bend the part that is steeper counts: R |cos phi1 - cos phi2| between the slopes it has there.
    What climbs and what falls are stretches of their own.
    Parameters: sections in the order of the pull, steeper_than slope [rad].
    Source: derived.
    """
    stretches: list[tuple[int, int, float]] = []
    for index, section in enumerate(sections):
        steep = abs(section.entry_grade) > steeper_than
        for rise in _steep_parts(section, steeper_than):
            goes_on = steep and abs(sections[index - 1].exit_grade) > steeper_than if index else False
            if stretches and stretches[-1][1] == index - 1 and goes_on and stretches[-1][2] * rise > 0.0:
                first, _, before = stretches[-1]
                stretches[-1] = (first, index, before + rise)
            else:
                stretches.append((index, index, rise))
    return [(first, last, abs(rise)) for first, last, rise in stretches]


def _steep_parts(section: Section, steeper_than: float) -> list[float]:
    """Rise [m], negative where it falls, of each part of a section that is steeper than a slope."""
    if isinstance(section, Straight):
        return [section.length * math.sin(section.grade)] if abs(section.grade) > steeper_than else []
    if isinstance(section, HorizontalBend):
        steep = abs(section.grade) > steeper_than
        return [section.developed_length * math.sin(section.grade)] if steep else []
    entry, leave = section.entry_grade, section.exit_grade
    halves = [(entry, 0.0), (0.0, leave)] if entry * leave < 0.0 else [(entry, leave)]
    parts = []
    for half in halves:
        low, high = sorted(map(abs, half))
        if high > steeper_than:
            rise = section.radius * (math.cos(max(low, steeper_than)) - math.cos(high))
            parts.append(math.copysign(rise, sum(half)))
    return parts


def reverse(sections: Sequence[Section]) -> list[Section]:
    """Give the same route pulled from the other end: order turned round, slopes change sign.

    Parameters: sections in the order of the pull.
    Source: derived.
    """
    return [section.reversed() for section in reversed(sections)]


def bend_total(sections: Iterable[Section]) -> float:
    """Give the sum of the angles of all bends [rad], horizontal and vertical.

    Parameters: sections of the route.
    Source: derived.
    """
    return sum([section.angle for section in sections])


def developed_length(sections: Iterable[Section]) -> float:
    """Give the length of a route along its center line [m], bends included: sum of L and R theta.

    Parameters: sections of the route.
    Source: derived.
    """
    return sum([section.developed_length for section in sections])


def lubricant_volume(length: float, conduit_diameter: float, film: float) -> float:
    """Give the lubricant [m3] for a run: film x L x D. More for bends, corrugated duct and a high fill.

    Parameters: length L [m], conduit_diameter D inside [m], film as volume per length and diameter [m3/m2].
    Source: Lubricant maker, Technical Talk, volume XVII.

    0.0015 US gallon for each foot and inch is printed as 0.00073 litre for each metre and millimetre:

    >>> film = 0.0015 * 3.785411784e-3 / (0.3048 * 0.0254)
    >>> round(lubricant_volume(1.0, 1e-3, film) * 1000, 5)
    0.00073
    """
    return film * length * conduit_diameter
