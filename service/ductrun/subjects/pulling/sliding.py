"""A cable that lies on a slope when its pull is done: what draws it down when the rope or the reel lets go."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import over
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.pulling.direction import Direction
from ductrun.subjects.pulling.settled import Pulling
from ductrun.units import Force

HELD_BY_HAND = quantity("pulling.held_by_hand", Force)
_FELT = 1.0  # [N] of what draws less nothing is said


class Sliding(NamedTuple):
    """What draws on either end of the cable when its pull is done [N], 0 where friction or a hand holds it: into the
    duct at the `pulled` end, where the rope is let go, and at the `fed` end, where the brake is.
    """

    pulled: float
    fed: float


_HELD = Sliding(0.0, 0.0)


def sliding_of(way: Direction, pulling: Pulling) -> Sliding:
    """Give what draws on the ends of a cable that has been pulled one way.

    It is what a reel there would have to hold back, were the cable pulled down from that end at the low friction.
    """
    return _beyond_a_hand(_drawn(way, pulling))


def _beyond_a_hand(drawn: Sliding) -> Sliding:
    return Sliding(*[force if over(force, HELD_BY_HAND.value.si) else 0.0 for force in drawn])


_BEYOND = " Cable that goes on through a pull point without a splice draws there with that of the pull beyond it too."


def _drawn(way: Direction, pulling: Pulling) -> Sliding:
    """Give what draws on the ends of a cable, whoever may hold it."""
    if way.braking is None:
        return _HELD
    weight, route = pulling.load.weight, way.braking.sections
    return Sliding(*[engineering.least_entry(one, weight, 0.0) for one in (engineering.reverse(route), route)])


def report_sliding(way: Direction, pulling: Pulling, sheet: Worksheet, where: str = "") -> None:
    """Caution of a cable that slides down the slope when the rope or the reel brake is let go.

    `where` begins the sentence where a plan has several pulls.
    """
    drawn = _drawn(way, pulling)
    if max(drawn) <= _FELT:
        return
    found = _beyond_a_hand(drawn)
    friction, tell = pulling.braking_coefficient, sheet.tell.force
    beyond = _BEYOND if where else ""
    by_hand, backing = sheet.tell.given(HELD_BY_HAND.value), HELD_BY_HAND.backing
    if found.pulled:
        sheet.find(
            Severity.CAUTION,
            "cable_slides_back",
            f"{where}Once pulled, the cable slides down the slope when it is let go at the pulling end: at the lowest "
            f"friction, {friction:g}, it draws there with {text_of(tell(found.pulled))}. Make it fast there, at the "
            f"top, before the rope is released; nobody below it.{beyond}",
            backing,
            tell(found.pulled),
            by_hand,
            member="",
        )
    if found.fed:
        sheet.find(
            Severity.CAUTION,
            "cable_slides_on",
            f"{where}Once pulled, the cable slides down the slope when it is let go at the feeding end: at the lowest "
            f"friction, {friction:g}, it draws there with {text_of(tell(found.fed))}. Make it fast there, at the "
            f"top, before the reel brake is released; nobody below it.{beyond}",
            backing,
            tell(found.fed),
            by_hand,
            member="",
        )
    for end, force, is_told in zip(("pulling", "feeding"), drawn, found, strict=True):
        if force > _FELT and not is_told:
            sheet.find(
                Severity.NOTE,
                "held_by_hand",
                f"{where}Once pulled, the cable draws with {text_of(tell(force))} at the {end} end when it is let go, "
                f"at the lowest friction, {friction:g}: up to {text_of(by_hand)} is taken as what one person holds.",
                backing,
                tell(force),
                by_hand,
                member="",
            )
