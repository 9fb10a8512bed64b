"""The place of a run, and how what lies above ground there is let move and held."""

from __future__ import annotations

import math
from typing import Any, NamedTuple

from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.duct_run.cost import HoldingBudget
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.moving_practice import RunMoving
from ductrun.subjects.duct_run.practice import LayeredSheet, laid_over
from ductrun.subjects.movement.choices import RunSetting
from ductrun.subjects.movement.temperatures import Seen, seen_by
from ductrun.units import Temperature, TemperatureUnit

_OPENING_STEP = 10  # degF, of the table a crew carries
_MOST_OPENINGS = 40


class Site(NamedTuple):
    """What conduit above ground sees, None where no temperatures were given; how it is let move and held, and the
    sheet of that; the openings to tell; and how much more of it may be held.
    """

    seen: Seen | None
    practice: RunMoving
    sheet: Worksheet
    openings: list[Temperature]
    budget: HoldingBudget

    def here(self, own: dict[str, Any], part: Worksheet, about: str) -> tuple[Any, LayeredSheet]:
        """Give the practice with what a part has of its own laid over it, and its sheet; `about` is a pointer."""
        given = {name: value for name, value in own.items() if value is not None}
        redirected = {name: part.pointer(name) for name in given}
        asked = {
            "emerges_from_grade": None,
            "crosses_structural_joint": None,
            "opening_temperatures": self.openings or None,
        }
        return laid_over(self.practice, given | asked), LayeredSheet(self.sheet, None, redirected, about)


def site_of(request: DuctRunRequest, sheet: Worksheet) -> Site:
    """Give what conduit above ground sees in this place, and the temperatures of its opening table."""
    practice, place = request.movement or RunMoving(), sheet.within("movement")
    if request.site is None or request.site.temperatures is None:
        return Site(None, practice, place, [], HoldingBudget())
    seen = seen_by(request.site.temperatures, RunSetting.ABOVE_GROUND, sheet.within("site/temperatures"))
    openings = practice.opening_temperatures or _opening_temperatures(seen)
    return Site(seen, practice, place, openings, HoldingBudget())


def _opening_temperatures(seen: Seen) -> list[Temperature]:
    """Give the lowest, every ten degF above it, and the highest."""
    if seen.span is None:
        return []
    low, high = (without_noise(round(TemperatureUnit.DEG_F.from_si(bound), 6)) for bound in seen.span)
    first = math.floor(low / _OPENING_STEP) * _OPENING_STEP + _OPENING_STEP
    steps = range(first, math.ceil(high), _OPENING_STEP)[: _MOST_OPENINGS - 2]
    return [Temperature(float(at), TemperatureUnit.DEG_F) for at in dict.fromkeys((low, *steps, high))]
