"""What is asked of a run, as its parts take it: the request, its sheet, and by what names its findings are told."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.encasing import Encasing
from ductrun.subjects.bank.flotation_practice import Floating
from ductrun.subjects.bank.spacing_practice import Spacing
from ductrun.subjects.duct_run.form import Circuit, DuctRunRequest, RunJoining, Stretch
from ductrun.subjects.duct_run.names import Names
from ductrun.subjects.duct_run.practice import LayeredSheet, practice_for_all, practice_of
from ductrun.subjects.ground.digging import Digging
from ductrun.subjects.pulling.practice import INCOMING, PullPractice


class Asked(NamedTuple):
    """A request with its sheet and its names; what it says of all its parts lies under what a part has of its own."""

    request: DuctRunRequest
    sheet: Worksheet
    names: Names

    def digging(self, stretch: Stretch, here: Worksheet) -> tuple[Digging, Worksheet]:
        """Give how a stretch is dug."""
        return practice_of(Digging, "digging", self.request.digging, stretch.digging, self.sheet, here)

    def concrete(self, stretch: Stretch, here: Worksheet) -> tuple[Encasing, Worksheet]:
        """Give how its concrete is mixed and bought."""
        return practice_of(Encasing, "concrete", self.request.concrete, stretch.concrete, self.sheet, here)

    def spacing(self, stretch: Stretch, here: Worksheet) -> tuple[Spacing, Worksheet]:
        """Give how its ducts are held apart."""
        return practice_of(Spacing, "spacing", self.request.spacing, stretch.spacing, self.sheet, here)

    def floating(self, here: Worksheet) -> tuple[Floating, Worksheet]:
        """Give how ducts are held down in a pour."""
        return practice_for_all(Floating, "flotation", self.request.flotation, self.sheet, here)

    def joining(self, stretch: Stretch, here: Worksheet) -> tuple[RunJoining, Worksheet]:
        """Give how its ducts are joined."""
        return practice_of(RunJoining, "joining", self.request.joining, stretch.joining, self.sheet, here)

    def pulling(self, circuit: Circuit, here: Worksheet) -> tuple[PullPractice, LayeredSheet]:
        """Give how a circuit is pulled."""
        shared, own = self.request.pulling, circuit.pulling
        return practice_of(PullPractice, "pulling", shared, own, self.sheet, here, INCOMING)
