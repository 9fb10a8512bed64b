"""POST /v1/duct-run/compare: whole runs side by side, only what differs, ranked by what the caller names."""

from __future__ import annotations

import copy
from typing import Any

from ductrun.kit.operation import Operation
from ductrun.subjects.duct_run.comparing.comparison import assess
from ductrun.subjects.duct_run.comparing.form import DuctRunComparisonRequest
from ductrun.subjects.duct_run.comparing.told import DuctRunComparisonResult, tell
from ductrun.subjects.duct_run.cost import steps as steps_of_run
from ductrun.subjects.duct_run.example import EXAMPLE


def _in_concrete() -> dict[str, Any]:
    """Give the run with its field in concrete as well, less deep."""
    run = copy.deepcopy(EXAMPLE)
    run["stretches"][1]["setting"] |= {"kind": "encased", "cover": {"value": 24, "unit": "in"}}
    return run


def steps(request: DuctRunComparisonRequest) -> float:
    """Bound a comparison by its runs."""
    return sum(steps_of_run(one.run) for one in request.runs)


OPERATION = Operation(
    name="duct-run/compare",
    operation_id="compare_duct_runs",
    summary="Whole runs side by side",
    description="Assesses up to nine whole runs, each complete by itself, and holds them against the first: lines of "
    "the takeoff, lengths, pulls, the highest use of pulling limits, price and labor hours in quantity and percent, "
    "only where they differ; findings gained and lost. Ranks them by one measure: those that comply first, those that "
    "do not last, and none of which the measure has gaps.",
    request=DuctRunComparisonRequest,
    result=DuctRunComparisonResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "rank_by": "excavation",
        "runs": [{"name": "as drawn", "run": EXAMPLE}, {"name": "field in concrete", "run": _in_concrete()}],
    },
)
