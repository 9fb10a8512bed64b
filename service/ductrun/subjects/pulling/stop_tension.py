"""The tension at the pulling end at which a pull is stopped: beyond it something may be damaged that nobody sees."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import pulling as engineering
from ductrun.engineering.roots import falling_root
from ductrun.engineering.rounding import over
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.pulling.choices import StopBasis
from ductrun.subjects.pulling.direction import Direction
from ductrun.subjects.pulling.settled import Pulling

_NOTHING = 1e-9


class Stop(NamedTuple):
    """When a pull is stopped: the `tension` [N] at the pulling end, what it rests on, and the tension `safe` [N] there
    at any friction, with the `section` of the pull, from 0, that bears the least of that.
    """

    tension: float
    basis: StopBasis
    safe: float
    section: int


def stop_of(way: Direction, pulling: Pulling, *, turned: bool) -> Stop | None:
    """Give the tension at the pulling end [N] at which to stop; None where nobody knows what the cable bears, or a bend
    was left out: what the gear holds, or the bends that are known allow, is no tension to stop at.

    Nowhere on the way may the tension be above what cable, grip and device bear, nor in a bend above what brings it to
    its sidewall limit. What is borne is carried on to the pulling end without any friction, which adds the least: with
    less than that at the end, no place before it has more than it bears, whatever the friction is.
    Where that is less than a pull within its limits needs at the friction it is pulled with, no crew could finish: then
    what is borne is carried on at that friction. `turned` says that the pull is from the other end.
    """
    if not pulling.tension_judged or pulling.lost_bends:
        return None
    most, pressure = pulling.limits.tension, pulling.limits.pressure
    if not engineering.steepest(pulling.sections) and all(
        isinstance(section, engineering.Straight) or _borne_in(section.radius, contact.share, pressure) >= most
        for section, contact in zip(pulling.sections, pulling.contacts, strict=True)
    ):
        return Stop(most, StopBasis.ANY_FRICTION, most, 0)  # on the level the tension is nowhere above that at the end
    route = [one.laid(0.0, contact.share) for one, contact in zip(pulling.sections, pulling.contacts, strict=True)]
    safe, section = _carried_on(engineering.reverse(route) if turned else route, pulling)
    if not safe or over(way.pulling.case.final, safe):
        assumed, _ = _carried_on(way.pulling.sections, pulling)
        if assumed and not over(way.pulling.case.final, assumed):
            return Stop(assumed, StopBasis.FRICTION_ASSUMED, safe, section)
    return Stop(safe, StopBasis.ANY_FRICTION, safe, section)


def report_stop(stop: Stop | None, way: Direction, pulling: Pulling, sheet: Worksheet, *, turned: bool) -> None:
    """Caution of a pull that can only be finished beyond what is safe at any friction."""
    if stop is None or stop.basis is StopBasis.ANY_FRICTION:
        return
    at = len(pulling.sections) - 1 - stop.section if turned else stop.section
    final = way.pulling.case.final
    final = final if final > _NOTHING * stop.tension else 0.0  # the last digit of a brake that balances
    told, safe, expected = [sheet.tell.force(one) for one in (stop.tension, stop.safe, final)]
    section, share = pulling.sections[at], pulling.contacts[at].share
    pressed = not isinstance(section, engineering.Straight) and (
        _borne_in(section.radius, share, pulling.limits.pressure) < pulling.limits.tension
    )
    what = "the bend may be over its sidewall limit" if pressed else "the cable may bear more than it is allowed"
    sheet.find(
        Severity.CAUTION,
        "stop_rests_on_friction",
        f"{pulling.route.named(at)}: to stop the pull at {text_of(told)} at its end takes the friction as assumed; "
        f"{text_of(expected)} is expected there. From {text_of(safe)} on {what} unseen, where friction is lower after "
        "it and higher before it than assumed: lubricate all the way, and stop where the tension rises faster than "
        "expected.",
        WORKED_OUT,
        told,
        safe,
        member="",
    )


def _carried_on(route: Sequence[engineering.Section], pulling: Pulling) -> tuple[float, int]:
    """Carry on to the pulling end what is borne on the way [N]; gives the last section too that bears the least."""
    weight, borne, least = pulling.load.weight, pulling.limits.tension, 0
    for index, section in enumerate(route):
        here = pulling.limits.tension
        if not isinstance(section, engineering.Straight):
            here = min(here, _borne_in(section.radius, section.share, pulling.limits.pressure))
        entering = min(borne, here)
        step = section.pulled(entering, weight)
        if here < max(borne, step.highest):
            least = index
        if step.highest > here:
            held = _held_to(section, here, entering, weight)
            if held is None:
                return 0.0, index
            step = held
        borne = max(0.0, min(step.tension_out, here))
    return borne, least


def _held_to(
    section: engineering.Section, most: float, entering: float, weight: float
) -> engineering.SectionPull | None:
    """Pull through a section from the tension [N], up to `entering`, that brings it nowhere above the `most` [N]: over
    a crest the highest stands at neither end. None where the weight [N/m] of the cable alone brings it above that.
    """
    held = falling_root(lambda tension: most - section.pulled(tension, weight).highest, 0.0, entering, 1e-12 * most)
    return None if held is None else section.pulled(held, weight)


def _borne_in(radius: float, share: float, pressure: float) -> float:
    """Give the tension [N] that brings a bend of a radius [m] to a sidewall pressure [N/m], by its share of T/R."""
    return pressure * radius / share if share else math.inf
