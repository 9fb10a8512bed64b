"""POST /v1/expansion: how far straight runs move, and the fittings that take it up."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import expansion as engineering
from ductrun.kit.defaults import choice, quantity
from ductrun.kit.forms import ConduitTemperature, Edition, Expansivity, FittingTravel, Form, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import ConduitMaterial, PistonConvention, RunSetting
from ductrun.subjects.movement.expansion_told import ExpansionResult, tell
from ductrun.subjects.movement.findings import (
    SOLD,
    TRIGGER,
    Coefficient,
    MovingRun,
    coefficient_of,
    find_movement,
    report_borrowed_trigger,
    report_crossings,
    report_setting,
    rule_of,
)
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.temperatures import Seen, Temperatures, seen_by
from ductrun.units import Length, Temperature

FITTING_TRAVEL = quantity("expansion.fitting_travel", Length)
CONVENTION = choice("expansion.piston_convention", PistonConvention)
SETTING = choice("expansion.setting", RunSetting)


class Moving(Form):
    """Where straight runs lie, and what takes up their movement."""

    setting: Omissible[RunSetting] = Field(
        default=None,
        description="Where the runs lie.",
        examples=["above_ground"],
        json_schema_extra=SETTING.stated,
    )
    fitting_travel: Omissible[FittingTravel] = Field(
        default=None,
        description="Travel of one expansion fitting.",
        examples=[{"value": 6, "unit": "in"}],
        json_schema_extra=FITTING_TRAVEL.stated,
    )
    piston_convention: Omissible[PistonConvention] = Field(
        default=None,
        description="How far to open the fittings.",
        examples=["full_travel"],
        json_schema_extra=CONVENTION.stated,
    )
    opening_temperatures: Omissible[Annotated[list[ConduitTemperature], Field(max_length=50)]] = Field(
        default=None,
        description="Temperatures for which to give the opening, as a table the crew carries.",
        examples=[[{"value": 40, "unit": "degF"}, {"value": 60, "unit": "degF"}]],
    )
    emerges_from_grade: Omissible[bool] = Field(
        default=None, description="Whether a run comes up out of the ground.", examples=[False]
    )
    crosses_structural_joint: Omissible[bool] = Field(
        default=None, description="Whether a run crosses a joint of the structure.", examples=[False]
    )


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
    straight_runs: Omissible[Annotated[list[RunLength], Field(max_length=200)]] = Field(
        default=None,
        description="Lengths of several straight runs, each judged on its own; this or length.",
        examples=[[{"value": 40, "unit": "ft"}, {"value": 3, "unit": "ft"}]],
    )
    temperatures: Temperatures = Field(description="The temperatures of the conduit.")
    code_edition: Edition = None


class FreeMovement(NamedTuple):
    """Runs that are free to move; `change` is that of the longest [m].

    A run of `longest_without_fitting` [m], or the longest run at `largest_difference_without_fitting` [K], needs one.
    `counts_by_travel` holds how many fittings of each travel that is sold all runs would take.
    """

    travel: Length
    runs: list[MovingRun]
    change: float
    longest_without_fitting: float
    largest_difference_without_fitting: float
    counts_by_travel: list[int]


class Movement(NamedTuple):
    """What straight runs do with temperature: they move freely, or the ground holds them."""

    coefficient: Coefficient
    seen: Seen
    setting: RunSetting
    free: FreeMovement | None


def move(
    given: Moving, coefficient: Coefficient, runs: Sequence[StraightRun], seen: Seen, sheet: Worksheet
) -> Movement:
    """Give the movement of each straight run, whether it needs fittings, how many, where, and how far open."""
    _refuse_openings(given, seen, sheet)
    setting = sheet.settle("setting", given.setting, SETTING)
    rule = rule_of(coefficient.material, sheet)
    report_borrowed_trigger(coefficient, rule)
    report_crossings(given.emerges_from_grade, given.crosses_structural_joint, sheet)
    report_setting(setting, rule, sheet)
    if setting is not RunSetting.ABOVE_GROUND:
        return Movement(coefficient, seen, setting, None)
    travel = sheet.settle("fitting_travel", given.fitting_travel, FITTING_TRAVEL)
    moved = [_moved(given, coefficient, run.length, seen, travel.si, sheet) for run in runs]
    for index, (run, one) in enumerate(zip(runs, moved, strict=True)):
        if sheet.working is not None:
            run.place.show(
                f"dL{index + 1}",
                "a x L x dT",
                f"{coefficient.per_kelvin:.6g} /K x {run.length:.6g} m x {seen.difference.si:.6g} K",
                sheet.tell.size(one.change),
            )
        if one.fitting_count:
            which = "The run" if len(runs) == 1 else f"Run {index + 1}"
            find_movement(which, run.place, one, travel, rule.beside(coefficient.backing.of("coefficient")))
    return Movement(coefficient, seen, setting, _free(coefficient, moved, seen.difference.si, travel, sheet))


def _refuse_openings(given: Moving, seen: Seen, sheet: Worksheet) -> None:
    """Refuse openings at temperatures that the range does not reach, or without a range."""
    if not given.opening_temperatures:
        return
    if seen.span is None:
        raise UnanswerableError(
            sheet.fault(
                "opening_temperatures", "needs_a_range", "Openings follow from a range of temperatures: give one."
            )
        )
    for index, temperature in enumerate(given.opening_temperatures):
        seen.span.refuse_outside(temperature, f"opening_temperatures/{index}/value", sheet)


def _moved(
    given: Moving, coefficient: Coefficient, length: float, seen: Seen, travel: float, sheet: Worksheet
) -> MovingRun:
    change = engineering.length_change(coefficient.per_kelvin, length, seen.difference.si)
    if not engineering.fitting_required(change, TRIGGER.si):
        return MovingRun(length, change, 0, [], [], [])
    count = engineering.fitting_count(change, travel)
    return MovingRun(
        length,
        change,
        count,
        engineering.fitting_positions(length, count),
        engineering.anchor_positions(length, count),
        _openings(given, seen, travel, change / count, sheet),
    )


def _openings(
    given: Moving, seen: Seen, travel: float, change: float, sheet: Worksheet
) -> list[tuple[Temperature, float]]:
    """Give the openings of a fitting that takes `change` [m], for the installation and every temperature asked for."""
    if seen.span is None:
        return []
    asked = [] if seen.installation is None else [seen.installation]
    asked += given.opening_temperatures or []
    if not asked:
        return []
    lowest, highest = seen.span
    if sheet.settle("piston_convention", given.piston_convention, CONVENTION) is PistonConvention.CENTERED:
        return [(at, engineering.centered_opening(travel, change, lowest, highest, at.si)) for at in asked]
    return [(at, engineering.piston_opening(travel, lowest, highest, at.si)) for at in asked]


def _free(
    coefficient: Coefficient, runs: list[MovingRun], difference: float, travel: Length, sheet: Worksheet
) -> FreeMovement:
    longest = max(runs, key=lambda run: run.length)
    moving = [run.change for run in runs if run.fitting_count]
    if moving:
        sheet.cite("expansion-fitting-catalogue")
    return FreeMovement(
        travel,
        runs,
        longest.change,
        engineering.longest_run(coefficient.per_kelvin, difference, TRIGGER.si),
        engineering.largest_difference(coefficient.per_kelvin, longest.length, TRIGGER.si),
        [sum([engineering.fitting_count(change, sold.si) for change in moving]) for sold in SOLD],
    )


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


def assess(request: ExpansionRequest, sheet: Worksheet) -> Movement:
    """Give the movement of the runs of a request; all faults at once."""
    sheet.follow_edition(request.code_edition)
    faults = Gathering()
    with faults:
        coefficient = coefficient_of(request.material, request.coefficient, sheet)
    with faults:
        runs = _runs(request, sheet)
    with faults:
        seen = seen_by(request.temperatures, sheet.within("temperatures"))
    faults.stop()
    return move(request, coefficient, runs, seen, sheet)


OPERATION = Operation(
    name="expansion",
    operation_id="calculate_expansion",
    summary="Thermal expansion",
    description="Gives the length change of straight runs with temperature, each held against what calls for an "
    "expansion fitting, how many fittings and where, and how far open to set each, by either convention.",
    request=ExpansionRequest,
    result=ExpansionResult,
    assess=assess,
    tell=tell,
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
        "piston_convention": "full_travel",
        "opening_temperatures": [{"value": 40, "unit": "degF"}, {"value": 120, "unit": "degF"}],
        "emerges_from_grade": False,
        "crosses_structural_joint": False,
        "code_edition": "2023",
    },
)
