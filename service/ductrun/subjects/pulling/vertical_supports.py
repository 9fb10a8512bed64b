"""Cable that hangs in a vertical run is supported where the rise is beyond what its size and metal may hang."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.pulling import steep_rises
from ductrun.engineering.rounding import over
from ductrun.engineering.supports import hanging_supports
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import text_of
from ductrun.subjects.parts.cable_set import CableSet, Line
from ductrun.subjects.parts.choices import ConductorSize
from ductrun.subjects.parts.route import PlacedRoute, inside
from ductrun.tables import TABLES
from ductrun.units import Angle, Length

VERTICAL = quantity("pulling.vertical_grade", Angle)
_ORDER = [size.value for size in ConductorSize]
_LIMITS: dict[tuple[str, str], Length] = {
    (material, size): Length.parse(feet, "ft")
    for row in TABLES["vertical_support"]
    for material, feet in (("copper", row.copper_ft), ("aluminum", row.aluminum_ft))
    for size in _ORDER[_ORDER.index(row.size_from) : _ORDER.index(row.size_to) + 1]
}
_LEAST = min(_LIMITS.values(), key=lambda limit: limit.si)


class Hung(NamedTuple):
    """Cable that is supported over a `rise` [m]: the sections it goes through, from 0, in words, and its supports, so
    far apart at most [m] from the top down.
    """

    first: int
    place: str
    rise: float
    spacing: Length
    support_count: int


class VerticalSupports(NamedTuple):
    """Where the cable is supported, and whether that is known of every rise."""

    hung: list[Hung]
    judged: bool


NONE_NEEDED = VerticalSupports([], judged=True)


def check_vertical_supports(route: PlacedRoute, cables: CableSet) -> VerticalSupports:
    """Caution at every run steeper than the vertical grade whose rise is beyond what a conductor may hang unsupported.

    A rise beyond the least of the table is cautioned of as not judged where size or metal of a conductor is not known.
    """
    hung: list[Hung] = []
    judged = True
    sheet = route.sheet
    limits = [limit for line in cables.lines if (limit := _limit_of(line)) is not None]
    unknown = [line for line in cables.lines if _limit_of(line) is None]
    least = min(limits, key=lambda limit: limit.si) if limits else None
    for first, last, rise in steep_rises(route.sections, VERTICAL.value.si):
        told = sheet.tell.distance(rise)
        where = route.named(first) if first == last else f"{route.named(first)} to {inside(route.named(last))}"
        if least is not None and over(rise, least.si):
            most, count = sheet.tell.given(least), hanging_supports(rise, least.si)
            hung.append(Hung(first, where, rise, least, count))
            route.at(first).find(
                Severity.CAUTION,
                "cable_needs_support",
                f"{where}: the cable hangs over a rise of {text_of(told)}; conductors of this size and metal are "
                f"supported at the top and at least every {text_of(most)}. Give each duct {count} cable supports "
                "there, those below the top in boxes with room to set them.",
                sheet.rule("vertical_support"),
                told,
                most,
                member="",
            )
        elif unknown and over(rise, _LEAST.si):
            judged = False
            unknown[0].sheet.find(
                Severity.CAUTION,
                "cable_support_not_judged",
                f"{where}: the cable hangs over a rise of {text_of(told)}; whether it must be supported was not "
                "judged. Give size and metal of its conductors.",
                sheet.rule("vertical_support"),
                told,
                sheet.tell.given(_LEAST),
                member="",
            )
    return VerticalSupports(hung, judged)


def _limit_of(line: Line) -> Length | None:
    """Give the greatest rise of a line's conductors without a support, None where size or metal is not known."""
    conductor = line.conductor
    if conductor is None or conductor.size is None:
        return None
    return _LIMITS[conductor.material.value, conductor.size.value]
