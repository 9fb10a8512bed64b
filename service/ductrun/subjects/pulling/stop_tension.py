"""The tension at the pulling end at which a pull is stopped: beyond it something may be damaged that nobody sees."""

from __future__ import annotations

import math

from ductrun.engineering import pulling as engineering
from ductrun.subjects.pulling.friction import lowest_published
from ductrun.subjects.pulling.settled import Pulling


def stop_tension(pulling: Pulling, *, turned: bool) -> float:
    """Give the tension at the pulling end [N] at which to stop.

    Nowhere on the way may the tension be above what cable, grip and device bear, nor in a bend above what brings it to
    its sidewall limit. What is borne is carried on to the pulling end with the lowest published friction, which adds
    the least: with less than that at the end, no place before it has more than it bears. `turned` says that the pull is
    from the other end.
    """
    route = _at_lowest_friction(pulling)
    if turned:
        route = engineering.reverse(route)
    weight, borne = pulling.load.weight, pulling.limits.tension
    for section in route:
        here = min(pulling.limits.tension, _borne_in(section, pulling.limits.pressure))
        borne = min(section.pulled(min(borne, here), weight).tension_out, here)
    return borne


def _borne_in(section: engineering.Section, pressure: float) -> float:
    """Give the tension [N] that brings a bend to a sidewall pressure [N/m]; of a straight there is none."""
    if isinstance(section, engineering.Straight) or not section.share:
        return math.inf
    return pressure * section.radius / section.share


def _at_lowest_friction(pulling: Pulling) -> list[engineering.Section]:
    low = pulling.braking_coefficient
    if low is None:
        low = lowest_published(pulling.route.conduits, pulling.cables).value
    return [
        section.laid(
            contact.braking_correction * min(low, pulling.coefficient if contact.own is None else contact.own),
            contact.share,
        )
        for section, contact in zip(pulling.sections, pulling.contacts, strict=True)
    ]
