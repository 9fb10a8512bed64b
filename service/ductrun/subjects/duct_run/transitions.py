"""Where ducts go on in other conduit, or in ducts that are there already: the fitting between, and on which side it is
joined.
"""

from __future__ import annotations

from typing import NamedTuple

from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.conduit.joining import known_method
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit

Conduits = ListedConduit | MeasuredConduit
_STEEL = {JoiningMethod.THREADED, JoiningMethod.COUPLED}


class Beside(NamedTuple):
    """The bank in which a stretch goes on, and whether that is there already."""

    bank: RunBank
    exists: bool


class Transition(NamedTuple):
    """How one end of a duct is finished where it goes on, and what it changes to, None where it does not."""

    finish: RunEnd
    to: str | None = None


_GOES_ON = Transition(RunEnd.NONE)  # the part after it counts the joint
_JOINS = Transition(RunEnd.ELBOW)  # a joint to the part before it


def before_to_after(before: Conduits, after: Conduits) -> tuple[Transition, Transition]:
    """Say how two conduits are joined where one goes on in the other: how the one before ends, and the one after
    begins.

    PVC goes on in PVC of another wall by its own joint. PVC and steel meet in an adapter that is cemented to the PVC;
    all else in a coupling from one to the other, which counts with the side that is cemented, else with one that is not
    fused.
    """
    if _goes_on(before, after):
        return _GOES_ON, _JOINS
    methods = known_method(before.type), known_method(after.type)
    to = Transition(RunEnd.NONE, called(after)), Transition(RunEnd.NONE, called(before))
    at = _side(methods)
    if at is None:
        return to
    adapted = methods[at] is JoiningMethod.CEMENTED and methods[1 - at] in _STEEL
    fitted = to[at]._replace(finish=RunEnd.ADAPTER if adapted else RunEnd.COUPLING)
    return (fitted, to[1]) if at == 0 else (to[0], fitted)


def transition_to(beside: Beside | None, duct: int, conduit: Conduits, *, ahead: bool) -> Transition | None:
    """Say how a duct is finished toward the stretch beside it, which lies ahead or behind; None where there is none."""
    if beside is None:
        return None
    if beside.exists:
        return Transition(RunEnd.COUPLING, "the duct that is there")
    other = beside.bank.ducts[duct].conduit
    return before_to_after(conduit, other)[0] if ahead else before_to_after(other, conduit)[1]


def _goes_on(before: Conduits, after: Conduits) -> bool:
    """Say whether one conduit joins the other without a fitting."""
    if before is after:
        return True
    if before.trade_size is None or after.trade_size is None:
        alike = before.kind == "measured" and after.kind == "measured" and before.type == after.type
        return alike and before.inside_diameter.si == after.inside_diameter.si  # type: ignore[union-attr]
    if before.trade_size != after.trade_size:
        return False
    cemented = JoiningMethod.CEMENTED
    return before.type == after.type or known_method(before.type) is known_method(after.type) is cemented


def _side(methods: tuple[JoiningMethod | None, JoiningMethod | None]) -> int | None:
    """Give the side with which a fitting counts, None where neither is on file."""
    for fitting in ({JoiningMethod.CEMENTED}, _STEEL, {JoiningMethod.FUSED}):
        for side in (1, 0):
            if methods[side] in fitting:
                return side
    return None


def called(conduit: Conduits) -> str:
    """Say what a conduit is: its size and type."""
    kind = "another conduit" if conduit.type is None else conduit.type.replace("_", " ")
    return kind if conduit.trade_size is None else f"{conduit.trade_size} in {kind}"
