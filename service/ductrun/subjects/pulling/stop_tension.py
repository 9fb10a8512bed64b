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
    weight, borne = pulling.load.weight, pulling.limits.tension
    pressure = pulling.limits.pressure
    if pulling.braking_coefficient is None and all(
        isinstance(section, engineering.Straight) or _borne_in(section.radius, contact.share, pressure) >= borne
        for section, contact in zip(pulling.sections, pulling.contacts, strict=True)
    ):
        return borne  # nothing runs away, so that the tension rises to the end
    route = _at_lowest_friction(pulling)
    if turned:
        route = engineering.reverse(route)
    for section in route:
        here = pulling.limits.tension
        if not isinstance(section, engineering.Straight):
            here = min(here, _borne_in(section.radius, section.share, pressure))
        borne = min(section.pulled(min(borne, here), weight).tension_out, here)
    return borne


def _borne_in(radius: float, share: float, pressure: float) -> float:
    """Give the tension [N] that brings a bend of a radius [m] to a sidewall pressure [N/m], by its share of T/R."""
    return pressure * radius / share if share else math.inf


def _at_lowest_friction(pulling: Pulling) -> list[engineering.Section]:
    braking = pulling.braking_at(pulling.coefficient)
    if braking is not None:
        return braking
    low = lowest_published(pulling.route.conduits, pulling.cables).value
    return pulling._replace(braking_coefficient=low).braking_at(pulling.coefficient) or []
