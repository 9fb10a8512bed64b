"""What might remove a violation: for each code the changes that act on it, from the smallest to the largest."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator
from typing import Any, NamedTuple

from msgspec import UNSET

from ductrun.engineering.pulling import Straight
from ductrun.engineering.rounding import over
from ductrun.kit.answers import Finding
from ductrun.kit.telling import Telling
from ductrun.kit.wording import listing, text_of, without_noise
from ductrun.subjects.conduit.elbows import sold_radii
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.laid import LaidSection
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.duct_run.suggesting.changes import Change, Edit, Ladder, member, setting
from ductrun.subjects.duct_run.suggesting.conduits import riser_types, stretch_types, trade_sizes
from ductrun.subjects.duct_run.suggesting.pull_points import pull_point_changes
from ductrun.subjects.duct_run.suggesting.suggestions import ChangeKind, PatchOp
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.tables import TABLES
from ductrun.units import AnyQuantity, Force, Length, Quantity

_STRETCH = re.compile(r"#/stretches/(\d+)(?:/.*)?")
_STEPS = {"in": 1.0, "ft": 0.25, "yd": 0.25, "mm": 10.0, "cm": 1.0, "m": 0.05, "lbf": 50.0, "N": 200.0, "kN": 0.2}
_MORE_CONCRETE = 4  # inches that are tried
_OF_A_PULL = frozenset(
    {"tension_exceeded", "sidewall_pressure_exceeded", "brake_exceeded", "too_many_bends", "no_plan"}
)


class Case(NamedTuple):
    """A run that breaks limits: its request as JSON, the run assessed, and how figures are told."""

    body: Any
    run: DuctRun
    telling: Telling


def ladders_of(violations: list[Finding], case: Case) -> list[Ladder]:
    """Give all that might remove violations, the cheapest to build first, alike ones once."""
    found = [
        Ladder(frozenset({one.code}), None if one.pointer is UNSET else one.pointer, rungs)
        for one in violations
        for remedy in _REMEDIES.get(one.code, ())
        if (rungs := remedy(one, case))
    ]
    if any(one.code in _OF_A_PULL for one in violations):
        found += [Ladder(_OF_A_PULL, None, rungs) for rungs in _pull_points(case)]
    order = {kind: place for place, kind in enumerate(ChangeKind)}
    return sorted(found, key=lambda ladder: order[ladder.rungs[0].kind])


def _pull_points(case: Case) -> Iterator[list[Change]]:
    for pull in {id(one.pull): one.pull for circuit in case.run.circuits for one in circuit.pulls}.values():
        pulled = pull.pulled
        turned = pulled.better is PullDirection.REVERSED
        if (pulled.within_backward if turned else pulled.within) is False:
            rungs = pull_point_changes(case.body, case.run, pull, case.telling)
            if rungs:
                yield rungs


def _stretch_at(found: Finding) -> int | None:
    place = None if found.pointer is UNSET else _STRETCH.fullmatch(found.pointer)
    return None if place is None else int(place[1])


def _name(case: Case, stretch: int) -> str:
    return case.run.stretches[stretch].laid.name


def _si(told: AnyQuantity, dimension: type[Quantity]) -> float:
    return dimension.parse(told.value, told.unit).si


def _at_least(si: float, unit: str, dimension: type[Quantity]) -> dict[str, Any]:
    """Write a figure in a unit, rounded up to what one would build or buy."""
    step = _STEPS.get(unit, 1.0)
    value = dimension.parse(1.0, unit).unit.from_si(si) / step
    return {"value": without_noise(math.ceil(value - 1e-6) * step), "unit": unit}


def _told(given: dict[str, Any]) -> str:
    return text_of(AnyQuantity(given["value"], given["unit"]))


def _deeper(found: Finding, case: Case) -> list[Change]:
    """Lie as deep as the code asks for, in the caller's unit: the stretch, or all that are too shallow; with a profile
    the whole line.
    """
    index = _stretch_at(found)
    if index is None or found.limit is UNSET or found.actual is UNSET:
        return []
    least = _si(found.limit, Length)
    if member(case.body, f"/stretches/{index}/setting/cover") is None:
        return _lower_line(least - _si(found.actual, Length), case)
    given = {at: member(case.body, f"/stretches/{at}/setting/cover") for at in range(len(case.run.stretches))}
    shallow = [at for at, one in given.items() if one and over(least, Length.parse(one["value"], one["unit"]).si)]
    groups = [[index], shallow] if len(shallow) > 1 else [[index]]
    return [_covered(group, {at: given[at] for at in group}, least, case) for group in groups]


def _covered(group: list[int], given: dict[int, Any], least: float, case: Case) -> Change:
    covers = {at: _at_least(least, one["unit"], Length) for at, one in given.items()}
    names = listing([_name(case, at) for at in group])
    message = f"Lay {names} with {_told(covers[group[0]])} of cover instead of {_told(given[group[0]])}."
    patch = [Edit(PatchOp.REPLACE, f"/stretches/{at}/setting/cover", one) for at, one in covers.items()]
    return Change(ChangeKind.COVER, message, patch)


def _lower_line(short: float, case: Case) -> list[Change]:
    points = member(case.body, "/profile/points")
    if points is None:
        return []
    lower = _at_least(short, "in" if points[0]["line"]["unit"] in {"ft", "in", "yd"} else "cm", Length)
    by = Length.parse(lower["value"], lower["unit"]).si
    lowered = [point | {"line": _less(point["line"], by)} for point in points]
    message = f"Lay the whole run {_told(lower)} deeper."
    return [Change(ChangeKind.COVER, message, [Edit(PatchOp.REPLACE, "/profile/points", lowered)])]


def _less(elevation: dict[str, Any], by: float) -> dict[str, Any]:
    """Give an elevation that is lower by a depth [m], to the hundredth."""
    unit = Length.parse(1.0, elevation["unit"]).unit
    return elevation | {"value": math.floor((elevation["value"] - unit.from_si(by)) * 100 + 1e-6) / 100}


def _wider(found: Finding, case: Case) -> list[Change]:
    """Widen the bend that breaks a limit: to the radii it is sold in, else by what is missing."""
    bend = _bend_at(found, case)
    if bend is None:
        return []
    laid, conduit, radius = bend
    path = f"{laid.sheet.place[1:]}/radius"
    if laid.riser is not None:
        path, conduit = f"{laid.riser.sheet.place[1:]}/riser_radius", conduit_of_riser(laid.riser, conduit)
    given = member(case.body, path)
    sold = sold_radii(conduit.type, conduit.trade_size) if laid.is_elbow else []
    wide = [{"value": one.value, "unit": str(one.unit)} for one in sold if over(one.si, radius)]
    if not sold and found.actual is not UNSET and found.limit is not UNSET:
        unit = "ft" if given is None else given["unit"]
        wide = [_at_least(_needed(found, radius) * more, unit, Length) for more in (1.0, 1.1, 1.25, 1.5)]
    was = text_of(case.telling.size(radius)) if given is None else _told(given)
    name = f"{laid.name[0].lower()}{laid.name[1:]}"
    return [
        Change(
            ChangeKind.RADIUS,
            f"Give {name} a radius of {_told(one)} instead of {was}.",
            [setting(case.body, path, one)],
        )
        for one in wide
    ]


def _needed(found: Finding, radius: float) -> float:
    """Give the radius [m] with which a bend would keep a limit: of pressure in proportion, of a radius by the lack."""
    actual, limit = found.actual, found.limit
    assert actual is not UNSET and limit is not UNSET  # noqa: S101, PT018  (looked at before)
    if found.code == "sidewall_pressure_exceeded":
        return radius * actual.value / limit.value
    return radius + _si(limit, Length) - _si(actual, Length)


def _bend_at(found: Finding, case: Case) -> tuple[LaidSection, ListedConduit | MeasuredConduit, float] | None:
    """Give the bend that a finding is about, the conduit of its stretch, and its radius [m]."""
    for stretch in case.run.stretches:
        for one in stretch.laid.sections:
            if one.sheet.place == found.pointer and not isinstance(one.element, Straight):
                return one, stretch.bank.ducts[0].conduit, one.element.radius
    return None


def _stronger_brake(found: Finding, case: Case) -> list[Change]:
    """Take a brake that holds what a circuit needs: its own, or that of all."""
    if found.pointer is UNSET or found.actual is UNSET:
        return []
    changes = []
    for path in (f"{found.pointer[1:]}/pulling/brake_limit", "/pulling/brake_limit"):
        given = member(case.body, path)
        if given is not None:
            holds = _at_least(_si(found.actual, Force), given["unit"], Force)
            message = f"Take a reel brake that holds {_told(holds)} instead of {_told(given)}."
            changes.append(Change(ChangeKind.BRAKE_LIMIT, message, [Edit(PatchOp.REPLACE, path, holds)]))
    return changes


def _more_travel(found: Finding, case: Case) -> list[Change]:
    """Take a fitting of more travel in the stretch, of those on file."""
    index = _stretch_at(found)
    if index is None:
        return []
    path = f"/stretches/{index}/setting/fitting_travel"
    return [
        Change(
            ChangeKind.FITTING_TRAVEL,
            f"Take expansion fittings of {float(row.travel_in):g} in of travel in {_name(case, index)}.",
            [setting(case.body, path, {"value": float(row.travel_in), "unit": "in"})],
        )
        for row in TABLES["fitting_travels"]
    ]


def _nearer_straps(found: Finding, case: Case) -> list[Change]:
    path = "/movement/end_distance"
    if found.limit is UNSET or member(case.body, path) is None:
        return []
    near = {"value": found.limit.value, "unit": found.limit.unit}
    message = f"Set the end straps {_told(near)} from the terminations."
    return [Change(ChangeKind.END_DISTANCE, message, [setting(case.body, path, near)])]


def _less_pigment(found: Finding, case: Case) -> list[Change]:
    """Take the highest dose that is allowed, at every place that gives one."""
    if found.limit is UNSET:
        return []
    places = ["/concrete", *(f"/stretches/{index}/concrete" for index in range(len(case.body["stretches"])))]
    given = [path for place in places if member(case.body, path := f"{place}/pigment_percent") is not None]
    patch = [Edit(PatchOp.REPLACE, path, found.limit.value) for path in given]
    return (
        [Change(ChangeKind.PIGMENT_PERCENT, f"Take {found.limit.value:g} percent of pigment.", patch)] if patch else []
    )


def _more_concrete(found: Finding, case: Case) -> list[Change]:
    """Make the concrete around the ducts of a stretch, or of all that are encased, thicker, inch by inch."""
    index = _stretch_at(found)
    encased = [at for at, one in enumerate(case.run.stretches) if one.burial and one.burial.envelope.concrete]
    if index is None or index not in encased:
        return []
    groups = [[index], encased] if len(encased) > 1 else [[index]]
    return [_thicker(group, more, case) for more in range(1, _MORE_CONCRETE + 1) for group in groups]


def _thicker(group: list[int], more: int, case: Case) -> Change:
    patch = []
    for at in group:
        burial = case.run.stretches[at].burial
        assert burial is not None  # noqa: S101  (what is encased is buried)
        sides = {
            side: _at_least(getattr(burial.envelope.concrete, side) + Length.parse(more, "in").si, "in", Length)
            for side in ("top", "side", "bottom")
        }
        patch.append(setting(case.body, f"/stretches/{at}/setting/concrete_cover", sides))
    names = listing([_name(case, at) for at in group])
    return Change(ChangeKind.CONCRETE_COVER, f"Pour {more} in more of concrete around the ducts in {names}.", patch)


def _encase(found: Finding, case: Case) -> list[Change]:
    """Encase the stretch, or each of those that lie in earth, or all of them."""
    earth = [at for at, one in enumerate(case.body["stretches"]) if one["setting"]["kind"] == "direct_buried"]
    index = _stretch_at(found)
    groups = [[at] for at in earth if index in {None, at}] + ([earth] if len(earth) > 1 else [])
    return [
        Change(
            ChangeKind.ENCASEMENT,
            f"Encase {listing([_name(case, at) for at in group])} in concrete.",
            [Edit(PatchOp.REPLACE, f"/stretches/{at}/setting/kind", "encased") for at in group],
        )
        for group in groups
    ]


def _other_type(found: Finding, case: Case) -> list[Change]:
    pointer = "" if found.pointer is UNSET else found.pointer
    if pointer.endswith("/height"):
        return riser_types(pointer.removesuffix("/height")[1:], case.body, case.run)
    return stretch_types(_stretch_at(found), case.body, case.run)


def _larger(found: Finding, case: Case) -> list[Change]:
    place = re.fullmatch(r"#/circuits/(\d+)(?:/.*)?", "" if found.pointer is UNSET else found.pointer)
    return [] if place is None else trade_sizes(int(place[1]), case.body, case.run)


_Remedy = Callable[[Finding, Case], list[Change]]
_REMEDIES: dict[str, tuple[_Remedy, ...]] = {
    "too_shallow": (_deeper, _other_type, _encase),
    "needs_concrete": (_more_concrete, _encase, _other_type),
    "use_not_permitted": (_other_type, _encase),
    "ambient_exceeded": (_other_type,),
    "over_service_temperature": (_other_type,),
    "cage_meets_ducts": (_more_concrete,),
    "pigment_dose": (_less_pigment,),
    "fill_exceeded": (_larger,),
    "sidewall_pressure_exceeded": (_wider,),
    "cable_bent_too_tightly": (_wider,),
    "field_bend_too_tight": (_wider,),
    "brake_exceeded": (_stronger_brake,),
    "joint_moves_beyond_travel": (_more_travel,),
    "end_support_too_far": (_nearer_straps,),
}
