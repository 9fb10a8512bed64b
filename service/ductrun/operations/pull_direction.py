"""One direction of a pull in numbers: carried at both frictions, each from its own least brake, against the limits."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import pulling as engineering
from ductrun.engineering.pull_search import Case, Load, Use, carried, held_against
from ductrun.operations.pulling import Pulling
from ductrun.operations.worksheet import Fault, UnanswerableError

_BEYOND_ANY_ROPE = 1e9  # N


class Place(NamedTuple):
    """A figure and the section, from 0, where it is highest."""

    value: float
    section: int


class Carried(NamedTuple):
    """A route carried from one end at one friction: what every section has, and the highest of it."""

    sections: Sequence[engineering.Section]
    pulled: list[engineering.SectionPull]
    tension: Place
    pressure: Place | None

    @property
    def entering(self) -> float:
        """The tension [N] at the entry: the incoming one, or the brake."""
        return self.pulled[0].tension_in

    @property
    def final(self) -> float:
        """The tension [N] at the pulling end."""
        return self.pulled[-1].tension_out

    @property
    def case(self) -> Case:
        """What limits are held against."""
        return Case(
            self.entering, self.final, self.tension.value, 0.0 if self.pressure is None else self.pressure.value
        )


class Direction(NamedTuple):
    """One direction of a pull: with the pulling friction, with the low one where it can run away, and its use.

    `overbraked` is the pull held back with the brake of the low friction and pulled with the high one.
    """

    pulling: Carried
    braking: Carried | None
    overbraked: Case | None
    use: Use
    load: Load

    @property
    def braked(self) -> bool:
        """Whether any friction needs more at the entry than the incoming tension."""
        return any(self.brake_of(one) is not None for one in (self.pulling, self.braking))

    def brake_of(self, one: Carried | None) -> float | None:
        """Give the brake [N] that a carried pull needs; None where the incoming tension is enough."""
        if one is None or one.entering <= self.load.incoming * (1 + 1e-9):
            return None
        return one.entering


def direction_of(
    route: Sequence[engineering.Section], braking: Sequence[engineering.Section] | None, pulling: Pulling
) -> Direction:
    """Carry a pull through a route; refuses one that no rope could pull."""
    load = pulling.load
    try:
        pulled = _carried(route, load, can_run_away=braking is not None)
        held = None if braking is None else _carried(braking, load, can_run_away=True)
        overbraked = None
        if held is not None and held.entering > pulled.entering * (1 + 1e-9):
            overbraked = carried(route, load.weight, held.entering)
    except OverflowError:
        raise beyond_any_rope() from None
    use = held_against(pulled.case, None if held is None else held.case, 0.0, load, pulling.limits)
    return Direction(pulled, held, overbraked, use, load)


def _carried(route: Sequence[engineering.Section], load: Load, *, can_run_away: bool) -> Carried:
    entering = engineering.least_entry(route, load.weight, load.incoming) if can_run_away else load.incoming
    pulled = engineering.pull(route, load.weight, entering)
    highest, highest_at = entering, 0
    pressure: Place | None = None
    for index, (_, _, top, pressed) in enumerate(pulled):
        if top > highest:
            highest, highest_at = top, index
        if pressed is not None and (pressure is None or pressed > pressure.value):
            pressure = Place(pressed, index)
    if not highest < _BEYOND_ANY_ROPE:
        raise beyond_any_rope()
    return Carried(route, pulled, Place(highest, highest_at), pressure)


def beyond_any_rope() -> UnanswerableError:
    """Say that no rope could pull this."""
    return UnanswerableError(
        Fault(
            "#/sections",
            "tension_beyond_any_rope",
            "Friction and bends multiply the tension beyond any rope (1e9 N): check the friction coefficient and the "
            "bends, or divide the route by pull points.",
        )
    )


def verdict_of(way: Direction, pulling: Pulling, *, violated: bool) -> bool | None:
    """Say whether a direction keeps its limits; None where something that decides was not judged.

    `violated` says that the route breaks a rule whichever way it is pulled.
    """
    if violated or way.use.share > 1 + 1e-9:
        return False
    if not way.use.judged or not pulling.tension_judged or pulling.lost_bends:
        return None
    return True
