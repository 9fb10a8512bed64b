"""One direction of a pull in numbers: carried at both frictions, each from its own least brake, against the limits."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import pulling as engineering
from ductrun.engineering.pull_search import Case, Load, Use, carried, held_against
from ductrun.operations.pulling import Pulling
from ductrun.operations.worksheet import Fault, UnanswerableError

BEYOND_ANY_ROPE = 1e9  # N


class Carried(NamedTuple):
    """A route carried from one end at one friction: what every section has, what limits are held against, and the
    sections, from 0, in which tension and pressure are highest; `pressure_at` is None without a bend.
    """

    sections: Sequence[engineering.Section]
    pulled: list[engineering.SectionPull]
    case: Case
    tension_at: int
    pressure_at: int | None


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
        enters = self.load.held if one is self.braking else self.load.incoming
        if one is None or one.case.entering <= enters * (1 + 1e-9):
            return None
        return one.case.entering


def direction_of(
    route: Sequence[engineering.Section], braking: Sequence[engineering.Section] | None, pulling: Pulling
) -> Direction:
    """Carry a pull through a route; refuses one that no rope could pull."""
    load = pulling.load
    try:
        pulled = _carried(route, load, can_run_away=braking is not None)
        held = None if braking is None else _carried(braking, load.unfed, can_run_away=True)
        overbraked = None
        if held is not None and held.case.entering > pulled.case.entering * (1 + 1e-9):
            overbraked = carried(route, load.weight, held.case.entering)
    except OverflowError:
        raise beyond_any_rope() from None
    bends = engineering.bend_total(route)
    use = held_against(pulled.case, None if held is None else held.case, bends, load, pulling.limits)
    return Direction(pulled, held, overbraked, use, load)


def _carried(route: Sequence[engineering.Section], load: Load, *, can_run_away: bool) -> Carried:
    entering = engineering.least_entry(route, load.weight, load.incoming) if can_run_away else load.incoming
    pulled = engineering.pull(route, load.weight, entering)
    highest, highest_at = entering, 0
    pressure, pressure_at = 0.0, None
    for index, (_, _, top, pressed) in enumerate(pulled):
        if top > highest:
            highest, highest_at = top, index
        if pressed is not None and (pressure_at is None or pressed > pressure):
            pressure, pressure_at = pressed, index
    if not highest < BEYOND_ANY_ROPE:
        raise beyond_any_rope()
    case = Case(entering, pulled[-1].tension_out, highest, pressure)
    return Carried(route, pulled, case, highest_at, pressure_at)


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


def verdict_of(use: Use, pulling: Pulling) -> bool | None:
    """Say whether a pull keeps its limits; None where something that decides was not judged."""
    bent = pulling.forbidden_bend is not None or use.bend_total > pulling.limits.bend_total * (1 + 1e-9)
    if bent or use.share > 1 + 1e-9:
        return False
    return True if use.judged and pulling.judged else None
