"""POST /v1/duct-run: a whole run from end to end."""

from __future__ import annotations

from functools import partial

from ductrun.kit.operation import Operation, Remedying
from ductrun.kit.telling import Telling
from ductrun.subjects.duct_run.assess import assess
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.cost import steps, trial_steps
from ductrun.subjects.duct_run.example import EXAMPLE
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.duct_run.remedies.remedies import MOST_TRIALS, Remedies
from ductrun.subjects.duct_run.remedies.trials import find_remedies
from ductrun.subjects.duct_run.takeoff.takeoff import takeoff_of_run
from ductrun.subjects.duct_run.told import DuctRunResult, told_run


def tell(run: DuctRun, telling: Telling) -> DuctRunResult:
    """Tell a run with its takeoff."""
    return told_run(run, takeoff_of_run(run, telling), telling)


OPERATION = Operation(
    name="duct-run",
    operation_id="assess_duct_run",
    summary="A whole run",
    description="Takes a conduit run as it stands on a drawing, from end to end, and answers for every stretch, "
    "circuit and pull what the single operations answer: is it allowed, how deep, what is dug, poured and ordered, "
    "how it moves, whether cable can be pulled; with one takeoff and one set of findings.",
    request=DuctRunRequest,
    result=DuctRunResult,
    assess=assess,
    tell=tell,
    example=EXAMPLE,
    remedying=Remedying(Remedies, find_remedies, partial(trial_steps, most=MOST_TRIALS)),
    steps=steps,
)
