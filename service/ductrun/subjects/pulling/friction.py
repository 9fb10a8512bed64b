"""The friction of a pull beyond what the caller gives: the low coefficient a brake must reckon with, and cautions."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from ductrun.kit.backing import backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, number
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.parts.cable_set import CableSet
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.parts.route import PlacedRoute
from ductrun.subjects.pulling.practice import FRICTION
from ductrun.tables import TABLES

LOWEST_FRICTION = number("pulling.lowest_friction")
_DRY_PVC = max(
    (row for row in TABLES["friction_coefficients"] if row.jacket == "PVC" and "pvc" in row.families),
    key=lambda row: row.high,
)
_FAMILIES = {
    **dict.fromkeys((ConduitType.ENT, ConduitType.LFNC_A, ConduitType.LFNC_B), "pvc"),
    **dict.fromkeys((kind for kind in ConduitType if kind.value.startswith("pvc_")), "pvc"),
    ConduitType.HDPE_SCHEDULE_40: "hdpe",
    ConduitType.RTRC: "rtrc",
    **dict.fromkeys((ConduitType.EMT, ConduitType.IMC, ConduitType.RMC, ConduitType.FMC, ConduitType.LFMC), "steel"),
}


def family_of(conduit: ListedConduit | MeasuredConduit) -> str | None:
    """Give the family of materials whose friction a conduit has; None where it is not known."""
    return None if conduit.type is None else _FAMILIES[conduit.type]


@cache
def _lowest(families: frozenset[str], jackets: frozenset[str]) -> Default[float]:
    rows = [
        row
        for row in TABLES["friction_coefficients"]
        if families & set(row.families) and (not jackets or row.jacket == "any" or row.jacket.lower() in jackets)
    ]
    row = min(rows, key=lambda one: one.low)
    return Default(row.low, backing_of(row).of("the lowest published for this conduit"))


_EVERY_FAMILY = frozenset({"pvc", "hdpe", "rtrc", "steel"})


def lowest_published(conduits: Sequence[ListedConduit | MeasuredConduit], cables: CableSet) -> Default[float]:
    """Give the lowest published coefficient of any of these conduits, of the jackets if all are known.

    A jacket that is not known may be any, so then every row of the conduit counts.
    """
    families = {family_of(conduit) for conduit in conduits}
    jackets = {line.given.jacket for line in cables.lines}
    known = frozenset(family for family in families if family is not None)
    if None in families:
        known = _EVERY_FAMILY
    return _lowest(known, frozenset() if None in jackets else frozenset(jacket for jacket in jackets if jacket))


def report_friction(
    coefficient: float,
    route: PlacedRoute,
    sheet: Worksheet,
) -> None:
    """Caution against a friction below every published one, and tell how high a dry pull may go."""
    lowest, place = coefficient, sheet
    for index, section in enumerate(route.given):
        own = section.friction_coefficient
        if own is not None and own < lowest:
            lowest, place = own, route.at(index)
    if lowest < LOWEST_FRICTION.value:
        place.find(
            Severity.CAUTION,
            "friction_below_published",
            f"A coefficient of {lowest:g} is below every published one, {LOWEST_FRICTION.value:g} on rollers: "
            "take it only from a test of this cable, conduit and lubricant.",
            LOWEST_FRICTION.backing,
            lowest,
            LOWEST_FRICTION.value,
            member="friction_coefficient",
        )
    if coefficient == FRICTION.value and _rubs_on_pvc(route):  # another was chosen by somebody who knows the pull
        sheet.find(
            Severity.NOTE,
            "dry_friction_is_higher",
            f"PVC jackets on PVC conduit are published up to {_DRY_PVC.high:g} without lubricant: the {coefficient:g} "
            "taken is that of a lubricated pull.",
            backing_of(_DRY_PVC),
            coefficient,
            _DRY_PVC.high,
            member="friction_coefficient",
        )


def _rubs_on_pvc(route: PlacedRoute) -> bool:
    """Say whether the coefficient of the route holds in any PVC."""
    return any(
        given.friction_coefficient is None and family_of(conduit) == "pvc"
        for given, conduit in zip(route.given, route.conduits, strict=True)
    )
