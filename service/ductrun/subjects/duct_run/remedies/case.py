"""A run that breaks limits, and how what is set in it is written."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from typing import Any, NamedTuple

from msgspec import UNSET

from ductrun.kit.answers import Finding
from ductrun.kit.telling import Telling
from ductrun.kit.wording import listing, text_of, without_noise
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.units import AnyQuantity, Length, Quantity

_STRETCH = re.compile(r"#/stretches/(\d+)(?:/.*)?")
_CIRCUIT = re.compile(r"#/circuits/(\d+)(?:/.*)?")
_STEPS = {"in": 1.0, "ft": 0.25, "yd": 0.25, "mm": 10.0, "cm": 1.0, "m": 0.05, "lbf": 50.0, "N": 200.0, "kN": 0.2}


class Case(NamedTuple):
    """A run that breaks limits: its request as JSON, the run assessed, how figures are told, and its violations."""

    body: Any
    run: DuctRun
    telling: Telling
    violations: Sequence[Finding]


def place_of(found: Finding) -> str:
    """Give the pointer of a finding, an empty one where it has none."""
    return "" if found.pointer is UNSET else found.pointer


def stretch_at(found: Finding) -> int | None:
    """Give the stretch that a finding is about."""
    place = _STRETCH.fullmatch(place_of(found))
    return None if place is None else int(place[1])


def stretches_of(found: Finding, case: Case) -> list[int]:
    """Give the stretches that a finding is about: alike ones are told once, and those of a bank at its place."""
    names = {
        name
        for one, about in case.run.apart
        if one.code == found.code and one.severity is found.severity and found.message.endswith(one.message)
        for name in (about.name, about.where)
    }
    named = [at for at, stretch in enumerate(case.run.stretches) if stretch.laid.name in names]
    return named or [at for at in [stretch_at(found)] if at is not None] or list(range(len(case.run.stretches)))


def circuits_of(found: Finding, case: Case) -> list[int]:
    """Give the circuits that a finding is about: alike ones are told once, at the first of them."""
    alike = (
        one
        for one, _ in case.run.apart
        if one.code == found.code and one.severity is found.severity and found.message.endswith(one.message)
    )
    return list(dict.fromkeys(at for one in alike if (at := circuit_at(one)) is not None))


def circuit_at(found: Finding) -> int | None:
    """Give the circuit that a finding is about."""
    place = _CIRCUIT.fullmatch(place_of(found))
    return None if place is None else int(place[1])


def names_of(stretches: Sequence[int], case: Case) -> str:
    """Name stretches in a sentence."""
    return listing([case.run.stretches[at].laid.name for at in stretches])


def si(told: AnyQuantity, dimension: type[Quantity]) -> float:
    """Give a told figure in SI."""
    return dimension.parse(told.value, told.unit).si


def at_least(value: float, unit: str, dimension: type[Quantity]) -> dict[str, Any]:
    """Write a figure in SI in a unit, rounded up to what one would build or buy."""
    step = _STEPS.get(unit, 1.0)
    steps = dimension.parse(1.0, unit).unit.from_si(value) / step
    return {"value": without_noise(math.ceil(steps - 1e-6) * step), "unit": unit}


def at_most(value: float, unit: str, dimension: type[Quantity]) -> dict[str, Any]:
    """Write a figure in SI in a unit, rounded down to what one would build, or to the thousandth where that is none."""
    step = _STEPS.get(unit, 1.0)
    whole = dimension.parse(1.0, unit).unit.from_si(value)
    built = without_noise(math.floor(whole / step + 1e-6) * step)
    return {"value": built or math.floor(whole * 1000) / 1000, "unit": unit}


def inches(value: float) -> float:
    """Give inches in m."""
    return Length.parse(value, "in").si


def written(given: dict[str, Any]) -> str:
    """Write a quantity as a request has it in a sentence."""
    return text_of(AnyQuantity(given["value"], given["unit"]))


def length_of(given: dict[str, Any]) -> float:
    """Give a length as a request has it [m]."""
    return Length.parse(given["value"], given["unit"]).si
