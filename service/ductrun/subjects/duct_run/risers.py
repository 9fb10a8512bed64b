"""Risers: the elbow and the leg by which the ducts of a buried stretch come up to a stop."""

from __future__ import annotations

import math
from typing import NamedTuple

from ductrun.engineering.pulling import Straight, VerticalBend
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.conduit.elbows import standard_radius
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.laid import LaidSection
from ductrun.subjects.duct_run.practice import MemberSheet
from ductrun.subjects.duct_run.settings import BURIED
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.units import Length

UPRIGHT = math.pi / 2


class Riser(NamedTuple):
    """An elbow by which ducts come up to a stop: what stands there, and its radius [m]."""

    stop: Stop
    radius: float


def conduit_of_riser(stop: Stop, conduit: ListedConduit | MeasuredConduit) -> ListedConduit | MeasuredConduit:
    """Give the conduit of a riser: that of the stretch, in the type asked for."""
    kind = stop.given.riser_conduit_type
    if kind is None or kind is conduit.type:
        return conduit
    size = conduit.trade_size
    if size is None:
        raise UnanswerableError(
            stop.sheet.fault(
                "riser_conduit_type", "trade_size_not_listed", "The duct has no trade size to keep in its riser."
            )
        )
    return ListedConduit(kind="listed", type=kind, trade_size=size)


def riser_sheet(stop: Stop, conduit_sheet: Worksheet) -> Worksheet:
    """Give the sheet of the conduit of a riser, beside that of the duct that comes up in it."""
    return conduit_sheet if stop.given.riser_conduit_type is None else MemberSheet(stop.sheet, "riser_conduit_type")


def riser_of(stop: Stop | None, bank: RunBank, stretch: Stretch) -> Riser | None:
    """Give the elbow at an end of a stretch, None where the ducts do not come up there."""
    if stop is None or stop.given.height is None:
        return None
    if stretch.setting.kind not in BURIED:
        raise UnanswerableError(
            stop.sheet.fault(
                "height",
                "no_riser_here",
                "Ducts come up out of a buried stretch alone: leave the height out, and give the way up as sections.",
            )
        )
    conduit = conduit_of_riser(stop, bank.ducts[0].conduit)
    return Riser(stop, standard_radius(stop.given.riser_radius, conduit, stop.sheet, "riser_radius"))


def leg_of(riser: Riser, above: float, bank: RunBank) -> float:
    """Give the straight leg of a riser [m]; `above` is what lies over the top of the ducts there [m]."""
    height = riser.stop.given.height
    assert height is not None  # noqa: S101  (else there is no riser)
    leg = above + bank.below_the_top + height.si - riser.radius
    if leg <= 0.0:
        least = Length(without_noise(height.unit.from_si(height.si - leg)), height.unit)
        raise UnanswerableError(
            riser.stop.sheet.fault(
                "height/value",
                "elbow_stands_out",
                "The elbow alone is higher than that: come up higher, lie deeper, or take a tighter elbow.",
                minimum=least,
            )
        )
    return leg


def climb(riser: Riser, leg: float, *, down: bool, grade: float) -> list[LaidSection]:
    """Give elbow and leg [m] of a riser as they are met from the start of the run: down from it, or up to it."""
    sheet, name = riser.stop.sheet.within("height"), f"The riser at {riser.stop.name}"
    upright = -UPRIGHT if down else UPRIGHT
    straight = LaidSection(Straight(leg, upright), None, None, name, sheet, riser.stop)
    bend = VerticalBend(riser.radius, upright, grade) if down else VerticalBend(riser.radius, grade, upright)
    elbow = LaidSection(bend, BendMade.FACTORY_ELBOW, None, name, sheet, riser.stop)
    return [straight, elbow] if down else [elbow, straight]
