"""The request of a comparison: whole runs side by side, the first the base."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule
from ductrun.kit.forms import Form, Omissible
from ductrun.kit.texts import Name
from ductrun.subjects.duct_run.form import DuctRunRequest
from ductrun.subjects.parts.takeoff import TakeoffItem
from ductrun.units import Code

MOST_RUNS = 9
FIGURES = ("price", "labor_hours", "pull_count", "highest_utilization")
RankMeasure = Code(  # type: ignore[call-arg]
    "RankMeasure", {name.upper(): name for name in (*FIGURES, *[item.value for item in TakeoffItem])}
)
RankMeasure.__doc__ = "What runs are ranked by, least first: a figure of the whole run, or an item of its takeoff."


class NamedRun(Form):
    """One whole run with the name it is compared under."""

    name: Name = Field(description="What it is called here.", examples=["deeper, in PVC"])
    run: DuctRunRequest = Field(description="The run, complete by itself.")


class DuctRunComparisonRequest(Form):
    """Whole runs to compare with the first of them."""

    runs: Annotated[list[NamedRun], Field(min_length=2, max_length=MOST_RUNS)] = Field(
        description="The runs; the first is the base that the others are held against."
    )
    rank_by: Omissible[RankMeasure] = Field(  # type: ignore[valid-type]
        default=None,
        description="What they are ranked by, least first; of an item what is ordered of it, else what is done.",
        examples=["price"],
        json_schema_extra=by_rule("they are not ranked"),
    )
