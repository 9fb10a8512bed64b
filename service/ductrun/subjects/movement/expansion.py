"""POST /v1/expansion: how far straight runs move, and the fittings that take it up."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.forms import Edition, Expansivity, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import ConduitMaterial
from ductrun.subjects.movement.expansion_told import MOST_RUNS, ExpansionResult, tell
from ductrun.subjects.movement.findings import coefficient_of
from ductrun.subjects.movement.fittings import most_laid_out
from ductrun.subjects.movement.moving import Movement, Moving, move, setting_of
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.temperatures import Temperatures, seen_by

# steps, as measured with room to spare
_ALWAYS, _A_RUN, _AN_OPENING, _A_FITTING = 20.0, 5.0, 0.3, 0.7


class ExpansionRequest(Moving):
    """Straight runs between securely mounted items, and the temperatures they see."""

    material: Omissible[ConduitMaterial] = Field(
        default=None, description="Material of the conduit; give this or the coefficient.", examples=["pvc"]
    )
    coefficient: Omissible[Expansivity] = Field(
        default=None,
        description="Coefficient of linear expansion; give this or the material.",
        examples=[{"value": 3.38e-5, "unit": "1/degF"}],
    )
    length: Omissible[RunLength] = Field(
        default=None,
        description="Length of one straight run between boxes, elbows or other fixed points; this or straight_runs.",
        examples=[{"value": 380, "unit": "ft"}],
    )
    straight_runs: Omissible[Annotated[list[RunLength], Field(max_length=MOST_RUNS)]] = Field(
        default=None,
        description="Lengths of several straight runs, each judged on its own; this or length.",
        examples=[[{"value": 40, "unit": "ft"}, {"value": 3, "unit": "ft"}]],
    )
    temperatures: Temperatures = Field(description="The temperatures of the conduit.")
    code_edition: Edition = None


def _runs(request: ExpansionRequest, sheet: Worksheet) -> list[StraightRun]:
    several = request.straight_runs
    if request.length is not None and not several:
        return [StraightRun(request.length.si, sheet.within("length"))]
    if several and request.length is None:
        return [StraightRun(one.si, sheet.within(f"straight_runs/{index}")) for index, one in enumerate(several)]
    both = request.length is not None
    raise UnanswerableError(
        sheet.fault(
            "straight_runs" if both else "length",
            "one_of_two",
            "Give either length or straight_runs, not both." if both else "Give either length or straight_runs.",
        )
    )


def steps(request: ExpansionRequest) -> float:
    """Bound the work by the runs, with their opening tables, and by the fittings that have room in them."""
    lengths = request.straight_runs or ([] if request.length is None else [request.length])
    openings = 1 + len(request.opening_temperatures or ())
    length = sum([one.si for one in lengths])
    fittings = most_laid_out(length, request.fitting_travel, request.piston_engagement)
    return _ALWAYS + len(lengths) * (_A_RUN + _AN_OPENING * openings) + _A_FITTING * fittings


def assess(request: ExpansionRequest, sheet: Worksheet) -> Movement:
    """Give the movement of the runs of a request; all faults at once."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        coefficient = coefficient_of(request.material, request.coefficient, sheet)
    with faults:
        runs = _runs(request, sheet)
    with faults:
        seen = seen_by(request.temperatures, setting_of(request, sheet), sheet.within("temperatures"))
    faults.stop()
    return move(request, coefficient, runs, seen, sheet)


OPERATION = Operation(
    name="expansion",
    operation_id="calculate_expansion",
    summary="Thermal expansion",
    description="Gives the length change of straight runs with temperature, each held against what calls for an "
    "expansion fitting, how many fittings and where, what holds them, and how far open to set each, by either "
    "convention; and holds the heat against what the material is permitted in.",
    request=ExpansionRequest,
    result=ExpansionResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "material": "pvc",
        "length": {"value": 380, "unit": "ft"},
        "temperatures": {
            "kind": "range",
            "lowest": {"value": 0, "unit": "degF"},
            "highest": {"value": 110, "unit": "degF"},
            "installation": {"value": 90, "unit": "degF"},
            "direct_sun": True,
            "sun_allowance": {"value": 30, "unit": "delta_degF"},
        },
        "setting": "above_ground",
        "fitting_travel": {"value": 6, "unit": "in"},
        "piston_engagement": {"value": 6, "unit": "in"},
        "usable_travel_percent": 90,
        "piston_convention": "full_travel",
        "opening_temperatures": [{"value": 40, "unit": "degF"}, {"value": 120, "unit": "degF"}],
        "emerges_from_grade": False,
        "crosses_structural_joint": False,
        "service_temperature": {"value": 122, "unit": "degF"},
        "code_edition": "2023",
    },
)
