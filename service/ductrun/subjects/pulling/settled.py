"""A pull settled: everything in SI before any tension is carried."""

from __future__ import annotations

import math
from typing import NamedTuple

from ductrun.engineering.cable_sets import Lie, jam_ratio
from ductrun.engineering.pull_search import Limits, Load
from ductrun.engineering.pulling import Section, friction_of_feed
from ductrun.kit.backing import Backing
from ductrun.subjects.parts.cable_set import CableSet
from ductrun.subjects.parts.jam import in_jam_band
from ductrun.subjects.parts.route import PlacedRoute
from ductrun.subjects.pulling.vertical_supports import VerticalSupports
from ductrun.units import Force, ForcePerLength


class Contact(NamedTuple):
    """How cable and conduit touch in a section: its coefficient of friction, if it has its own, the weight correction
    that multiplies it, that of a straight in the same bore, the share of T/R on the worst cable,
    and the least correction, with which a cable runs away most.
    """

    own: float | None
    correction: float
    straight_correction: float
    share: float
    braking_correction: float


class Pulling(NamedTuple):
    """A pull in SI before any tension is carried.

    The `route` is without friction; `contacts` give that, at any coefficient. `braking_coefficient` is None where the
    route cannot run away, `given_tension` a limit that the caller gave. `lost_bends` are the joints where a bend was
    left out, `forbidden_bend` a section whose bend breaks a rule; `radii_judged` says whether all bends were held
    against a radius of the cable, `supports` where the cable hangs and is held.
    """

    route: PlacedRoute
    contacts: list[Contact]
    cables: CableSet
    lies: list[Lie]
    coefficient: float
    braking_coefficient: float | None
    feed_length: float | None
    load: Load
    limits: Limits
    tension_rule: Backing
    tension_judged: bool
    given_tension: Force | None
    pressure_limit: ForcePerLength
    pressure_rule: Backing
    lost_bends: list[int]
    forbidden_bend: int | None
    radii_judged: bool
    supports: VerticalSupports

    @property
    def sections(self) -> list[Section]:
        """The sections of the route without friction."""
        return self.route.sections

    def route_at(self, coefficient: float) -> list[Section]:
        """Give the route with the friction of a coefficient, but for sections that have their own."""
        return [
            section.laid(correction * (coefficient if own is None else own), share)
            for section, (own, correction, _, share, _) in zip(self.sections, self.contacts, strict=True)
        ]

    def braking_at(self, coefficient: float) -> list[Section] | None:
        """Give the route with the low friction, nowhere above the pulling one; None where it cannot run away."""
        low = self.braking_coefficient
        if low is None:
            return None
        return [
            section.laid(least * min(low, coefficient if own is None else own), share)
            for section, (own, _, _, share, least) in zip(self.sections, self.contacts, strict=True)
        ]

    def load_at(self, coefficient: float) -> Load:
        """Give the load at a coefficient: the incoming tension follows it where it is the friction of the feed."""
        if self.feed_length is None:
            return self.load
        return self.load._replace(incoming=friction_of_feed(coefficient, self.load.weight, self.feed_length))

    @property
    def judged(self) -> bool:
        """Whether the limits of the cable are known, and every bend is given."""
        return self.cable_judged and not self.lost_bends

    @property
    def cable_judged(self) -> bool:
        """Whether the limits of the cable are known: its tension, its radius where a bend is tight, and how far it may
        hang.
        """
        return self.tension_judged and self.radii_judged and self.supports.judged

    @property
    def jam_ratio(self) -> float | None:
        """Bore over the mean diameter of three cables that govern, of the bore in the jam band if one is, else of the
        least; None for other sets.
        """
        ratios = [jam_ratio(self.cables.diameters, bore) for bore in sorted(set(self.route.bores))]
        return next((ratio for ratio in ratios if ratio is not None and in_jam_band(ratio)), ratios[0])

    @property
    def worst_lie(self) -> Lie:
        """The highest weight correction and share of T/R, and the least clearance, of any bore."""
        if len(self.lies) == 1:
            return self.lies[0]
        room = min(self.lies, key=lambda lie: math.inf if lie.clearance is None else lie.clearance)
        return max(self.lies, key=lambda lie: lie.weight_correction)._replace(
            sidewall_factor=max(lie.sidewall_factor for lie in self.lies),
            clearance=room.clearance,
            handbook_clearance=room.handbook_clearance,
        )
