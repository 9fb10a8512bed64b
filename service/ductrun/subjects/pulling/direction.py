"""One direction of a pull in numbers: carried at both frictions, each from its own least brake, against the limits."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import pulling as engineering
from ductrun.engineering.pull_search import Case, Load, Use, carried, held_against
from ductrun.engineering.rounding import over
from ductrun.kit.worksheet import UnanswerableError
from ductrun.subjects.pulling.settled import Pulling

BEYOND_ANY_ROPE = 1e9  # N


class Carried(NamedTuple):
    """A route carried from one end at one friction: what every section has, what limits are held against, the `brake`
    [N] it needs, None where the incoming tension is enough, and the sections, from 0, in which tension and pressure are
    highest; `pressure_at` is None without a bend.
    """

    sections: Sequence[engineering.Section]
    pulled: list[engineering.SectionPull]
    case: Case
    brake: float | None
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

    @property
    def braked(self) -> bool:
        """Whether any friction needs more at the entry than the incoming tension."""
        return self.pulling.brake is not None or (self.braking is not None and self.braking.brake is not None)


def direction_of(
    route: Sequence[engineering.Section],
    braking: Sequence[engineering.Section] | None,
    bends: float,
    pulling: Pulling,
) -> Direction:
    """Carry a pull through a route with bends of so much in all [rad]; refuses one that no rope could pull."""
    load = pulling.load
    try:
        pulled = _carried(route, load, can_run_away=braking is not None)
        held = None if braking is None else _carried(braking, load.unfed, can_run_away=True)
        if not max(pulled.case.highest, 0.0 if held is None else held.case.highest) < BEYOND_ANY_ROPE:
            raise beyond_any_rope(pulling)
        overbraked = None
        if held is not None and over(held.case.entering, pulled.case.entering):
            overbraked = carried(route, load.weight, held.case.entering)
    except OverflowError:
        raise beyond_any_rope(pulling) from None
    use = held_against(pulled.case, None if held is None else held.case, bends, load, pulling.limits)
    return Direction(pulled, held, overbraked, use)


def _carried(route: Sequence[engineering.Section], load: Load, *, can_run_away: bool) -> Carried:
    entering = engineering.least_entry(route, load.weight, load.incoming) if can_run_away else load.incoming
    pulled = engineering.pull(route, load.weight, entering)
    tensions = [step.highest for step in pulled]
    highest = max(tensions)
    pressures = [-1.0 if step.pressure is None else step.pressure for step in pulled]  # below that of any bend
    pressure = max(pressures)
    case = Case(entering, pulled[-1].tension_out, highest, max(pressure, 0.0))
    brake = entering if over(entering, load.incoming) else None
    pressure_at = None if pressure < 0.0 else pressures.index(pressure)
    return Carried(route, pulled, case, brake, tensions.index(highest), pressure_at)


def beyond_any_rope(pulling: Pulling) -> UnanswerableError:
    """Say that no rope could pull this."""
    return UnanswerableError(
        pulling.route.sheet.fault(
            "",
            "tension_beyond_any_rope",
            "Friction and bends multiply the tension beyond any rope (1e9 N): check the friction coefficient and the "
            "bends, or divide the route by pull points.",
        )
    )


def verdict_of(use: Use, pulling: Pulling) -> bool | None:
    """Say whether a pull keeps its limits; None where something that decides was not judged."""
    bent = pulling.forbidden_bend is not None or over(use.bend_total, pulling.limits.bend_total)
    if bent or over(use.share, 1.0):
        return False
    return True if use.judged and pulling.judged else None
