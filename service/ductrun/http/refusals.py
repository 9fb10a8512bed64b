"""What the kit refuses, as the problem that a caller over HTTP is told."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from ductrun.http.faults import SENTENCES, errors_of, errors_of_faults, is_told_before
from ductrun.http.problems import MOST_ERRORS, Fault, ProblemRaised, RefusedAssumption
from ductrun.kit.answering import AssumptionsRefusedError, InvalidRequestError
from ductrun.kit.answers import Assumption
from ductrun.kit.bounding import TooCostlyError, TooManyValuesError
from ductrun.kit.strict_json import NotStrictError
from ductrun.kit.worksheet import UnanswerableError
from ductrun.units import AnyQuantity

_FEW: Final = 20  # faults that are told at once
_A_FAULT, _A_FAULT_TOLD, _FIRST = 0.5, 3.0, 30_000.0  # steps


def steps_to_tell(refusal: Exception) -> float:
    """Bound the steps of telling a refusal of many faults, or the first of its form, which take long enough to delay
    others; 0 if it is neither.
    """
    count, first = 0, 0.0
    if isinstance(refusal, InvalidRequestError):
        count = refusal.error.error_count()
        first = 0.0 if is_told_before(refusal.form) else _FIRST
    elif isinstance(refusal, UnanswerableError):
        count = len(refusal.faults)
    return first + (_A_FAULT * count + _A_FAULT_TOLD * min(count, MOST_ERRORS) if count > _FEW else 0.0)


def problem_of(refusal: Exception) -> ProblemRaised:
    """Give the problem of one of the kit's refusals."""
    if isinstance(refusal, UnanswerableError):
        return ProblemRaised("unanswerable", str(refusal)[:2000], errors_of_faults(refusal.faults))
    if isinstance(refusal, InvalidRequestError):
        return ProblemRaised("invalid_request", str(refusal), errors_of(refusal.error, refusal.form))
    if isinstance(refusal, AssumptionsRefusedError):
        return ProblemRaised("assumptions_refused", str(refusal), list(_needed(refusal.assumptions)))
    if isinstance(refusal, TooManyValuesError):
        error = Fault("too_many", SENTENCES["too_many"], "#", maximum=AnyQuantity(refusal.most, "1"))
        return ProblemRaised("invalid_request", str(refusal), [error])
    if isinstance(refusal, TooCostlyError):
        return ProblemRaised("too_costly", str(refusal))
    if isinstance(refusal, NotStrictError):
        return ProblemRaised(refusal.rule, str(refusal))
    raise refusal


def _needed(assumptions: Sequence[Assumption]) -> Iterator[Fault]:
    for assumption in assumptions:
        refused = RefusedAssumption(
            assumption.text, assumption.citation, assumption.standing, assumption.source_id, assumption.quantity
        )
        message = f"Give this member; without it {assumption.text} would be assumed: {assumption.citation}."[:2000]
        for pointer in assumption.pointers:
            yield Fault("assumption_needed", message, pointer, assumption=refused)
