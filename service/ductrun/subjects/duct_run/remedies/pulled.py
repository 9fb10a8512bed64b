"""A pull made easier where it is too hard: wider bends, a stronger brake, pull points."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import UNSET

from ductrun.engineering.pulling import Straight
from ductrun.engineering.rounding import over
from ductrun.kit.answers import Finding
from ductrun.kit.wording import text_of
from ductrun.subjects.conduit.elbows import sold_radii
from ductrun.subjects.duct_run.assessment import RunPull
from ductrun.subjects.duct_run.laid import LaidSection
from ductrun.subjects.duct_run.remedies.case import Case, at_least, si, written
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, Ladder, member
from ductrun.subjects.duct_run.remedies.pull_points import pull_point_changes
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.pulling.choices import PullDirection
from ductrun.units import Force, Length

OF_A_PULL = frozenset({"tension_exceeded", "sidewall_pressure_exceeded", "brake_exceeded", "too_many_bends", "no_plan"})
_BRAKE_MAKES = frozenset({"tension_exceeded", "sidewall_pressure_exceeded", "brake_exceeded", "no_plan"})


def of_pulls(case: Case) -> Iterator[Ladder]:
    """Give what acts on the pulls that break a limit, whichever it is: a stronger brake, pull points."""
    met: set[int] = set()
    for index, circuit in enumerate(case.run.circuits):
        for one in circuit.pulls:
            if id(one.pull) in met:  # like circuits share what was worked out
                continue
            met.add(id(one.pull))
            pulled = one.pull.pulled
            turned = pulled.better is PullDirection.REVERSED
            if (pulled.within_backward if turned else pulled.within) is not False:
                continue
            brakes = _stronger_brakes(index, one.pull, case)
            if brakes:
                yield Ladder(_BRAKE_MAKES, None, brakes)
            points = pull_point_changes(case.body, case.run, one.pull, case.telling)
            if points:
                yield Ladder(OF_A_PULL, None, points)


def _stronger_brakes(circuit: int, pull: RunPull, case: Case) -> list[Change]:
    """Take a brake that holds what a pull needs from either end, the lesser first: it may be weak at both, and then the
    pull is told from the end at which it breaks another limit.
    """
    ways = (pull.pulled.forward, pull.pulled.backward)
    needed = [one.case.entering for way in ways for one in (way.pulling, way.braking) if one is not None]
    changes = []
    for path in (f"/circuits/{circuit}/pulling/brake_limit", "/pulling/brake_limit"):
        given = member(case.body, path)
        if given is None:
            continue
        has = Force.parse(given["value"], given["unit"]).si
        for holds in sorted({one for one in needed if over(one, has)}):
            taken = at_least(holds, given["unit"], Force)
            message = f"Take a reel brake that holds {written(taken)} instead of {written(given)}."
            changes.append(Change(ChangeKind.BRAKE_LIMIT, message, [Edit(path, taken)]))
        break
    return changes


def wider(found: Finding, case: Case) -> list[Change]:
    """Widen the bend that breaks a limit: an elbow to the radii on file, what is bent on site by what is missing."""
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
    if not laid.is_elbow and found.actual is not UNSET and found.limit is not UNSET:
        unit = "ft" if given is None else given["unit"]
        wide = [at_least(_needed(found, radius) * more, unit, Length) for more in (1.0, 1.1, 1.25, 1.5)]
    was = text_of(case.telling.size(radius)) if given is None else written(given)
    name = f"{laid.name[0].lower()}{laid.name[1:]}"
    return [
        Change(ChangeKind.RADIUS, f"Give {name} a radius of {written(one)} instead of {was}.", [Edit(path, one)])
        for one in wide
    ]


def _needed(found: Finding, radius: float) -> float:
    """Give the radius [m] with which a bend would keep a limit: of pressure in proportion, of a radius by the lack."""
    actual, limit = found.actual, found.limit
    assert actual is not UNSET and limit is not UNSET  # noqa: S101, PT018  (looked at before)
    if found.code == "sidewall_pressure_exceeded":
        return radius * actual.value / limit.value
    return radius + si(limit, Length) - si(actual, Length)


def _bend_at(found: Finding, case: Case) -> tuple[LaidSection, ListedConduit | MeasuredConduit, float] | None:
    """Give the bend that a finding is about, the conduit of its stretch, and its radius [m]."""
    for stretch in case.run.stretches:
        for one in stretch.laid.sections:
            if one.sheet.place == found.pointer and not isinstance(one.element, Straight):
                return one, stretch.bank.ducts[0].conduit, one.element.radius
    return None
