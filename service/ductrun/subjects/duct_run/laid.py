"""A run laid out: its sections and stretches in SI."""

from __future__ import annotations

import math
from typing import NamedTuple

from ductrun.engineering.alignment import plan_length
from ductrun.engineering.pulling import Section, Straight
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.duct_run.choices import Turn
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.route import MADE

_UPRIGHT = math.radians(89)


class LaidSection(NamedTuple):
    """A section laid out: the element in SI, how a bend is made, if that was given, to which side it turns, what the
    section is called, the sheet of its place, and the stop it comes up to, if it is of a riser.
    """

    element: Section
    made: BendMade | None
    turn: Turn | None
    name: str
    sheet: Worksheet
    riser: Stop | None

    @property
    def rises(self) -> bool:
        """Whether it stands upright, or bends up to what does."""
        steepest = max(abs(self.element.entry_grade), abs(self.element.exit_grade))
        return self.riser is not None or steepest > _UPRIGHT

    @property
    def is_elbow(self) -> bool:
        """Whether it is bought as an elbow."""
        return not isinstance(self.element, Straight) and (self.made or MADE.value) is BendMade.FACTORY_ELBOW


class LaidStretch(NamedTuple):
    """A stretch laid out: its sections in order, where it begins in plan [m], and its lengths [m] in plan and along
    the conduit, risers left out of the plan of the trench alone where they stand in it.
    """

    given: Stretch
    name: str
    sheet: Worksheet
    sections: list[LaidSection]
    station: float
    plan_length: float
    length: float

    @property
    def duct_length(self) -> float:
        """Length along the ducts in the trench [m]; what rises upright out of it counts as it stands in plan."""
        return sum([plan_length(one.element) if one.rises else one.element.developed_length for one in self.sections])

    @property
    def end(self) -> float:
        """Where it ends in plan [m]."""
        return self.station + self.plan_length
