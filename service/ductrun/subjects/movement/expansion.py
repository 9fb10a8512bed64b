"""POST /v1/expansion: how far straight runs move, and the fittings that take it up."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering import expansion as engineering
from ductrun.kit import answers
from ductrun.kit.choices import CodeEdition
from ductrun.kit.defaults import choice, quantity
from ductrun.kit.forms import ConduitTemperature, Expansivity, FittingTravel, Form, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import ConduitMaterial, PistonConvention, RunSetting
from ductrun.subjects.movement.findings import (
    TRIGGER,
    coefficient_of,
    find_movement,
    held_by_the_ground,
    report_situation,
    rule_of,
)
from ductrun.subjects.movement.temperatures import Span, Temperatures, span_of
from ductrun.tables import TABLES
from ductrun.units import Length, Temperature

FITTING_TRAVEL = quantity("expansion.fitting_travel", Length)
CONVENTION = choice("expansion.piston_convention", PistonConvention)
SETTING = choice("expansion.setting", RunSetting)
_SOLD = [Length.parse(row.travel_in, "in") for row in TABLES["fitting_travels"]]


class ExpansionRequest(Form):
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
    straight_runs: Omissible[Annotated[list[RunLength], Field(min_length=1, max_length=200)]] = Field(
        default=None,
        description="Lengths of several straight runs, each judged on its own; this or length.",
        examples=[[{"value": 40, "unit": "ft"}, {"value": 3, "unit": "ft"}]],
    )
    temperatures: Temperatures = Field(description="The temperatures of the conduit.")
    setting: Omissible[RunSetting] = Field(default=None, description="Where the runs lie.", examples=["above_ground"])
    fitting_travel: Omissible[FittingTravel] = Field(
        default=None, description="Travel of one expansion fitting.", examples=[{"value": 6, "unit": "in"}]
    )
    piston_convention: Omissible[PistonConvention] = Field(
        default=None, description="How far to open the fittings.", examples=["full_travel"]
    )
    setting_temperatures: Omissible[Annotated[list[ConduitTemperature], Field(min_length=1, max_length=50)]] = Field(
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
    code_edition: Omissible[CodeEdition] = Field(
        default=None, description="Edition of NFPA 70 to follow.", examples=["2023"]
    )


class PistonSetting(Struct, frozen=True, gc=False):
    """One line of the table the crew carries."""

    temperature: Annotated[answers.Temperature, Meta(description="Temperature of the conduit.")]
    opening: Annotated[answers.Length, Meta(description="Opening of the piston, measured from fully closed.")]


class TravelOption(Struct, frozen=True, gc=False):
    """What fittings of one travel that is sold would mean."""

    fitting_travel: answers.Length
    fitting_count: int


class RunMovement(Struct, frozen=True, gc=False):
    """One straight run."""

    length: Annotated[answers.Length, Meta(description="Length of the run.")]
    length_change: Annotated[answers.Length, Meta(description="Change over the whole span of temperature.")]
    fitting_required: Annotated[bool, Meta(description="Whether the change reaches the 1/4 in trigger.")]
    fitting_count: Annotated[int, Meta(description="Fittings that share the change; 0 if none is required.")]
    fitting_positions: Annotated[list[answers.Length], Meta(description="Where they stand along the run.")]
    anchor_positions: Annotated[
        list[answers.Length], Meta(description="Where the run is anchored between them; its ends are fixed.")
    ]
    piston_settings: Annotated[
        list[PistonSetting], Meta(description="Openings at the temperatures asked for, the installation first.")
    ]


class ExpansionResult(Struct, frozen=True, gc=False):
    """How far the runs move and what takes it up; runs held by the ground have no movement to show."""

    temperature_difference: Annotated[
        answers.TemperatureDifference, Meta(description="Highest less lowest temperature, sun allowance included.")
    ]
    fitting_required: Annotated[bool, Meta(description="Whether any run reaches the 1/4 in trigger.")]
    fitting_count: Annotated[int, Meta(description="Expansion fittings of all runs together.")]
    runs: Annotated[list[RunMovement], Meta(description="Each straight run; none if they are buried or encased.")]
    travel_options: Annotated[
        list[TravelOption], Meta(description="How many fittings of each travel that is sold would be needed.")
    ]
    length_change: Annotated[
        answers.Length | UnsetType, Meta(description="Change of the run; of several, of the one that moves most.")
    ] = UNSET
    longest_run_without_fitting: Annotated[
        answers.Length | UnsetType,
        Meta(description="At this length a fitting becomes required; shorter runs need none."),
    ] = UNSET
    largest_difference_without_fitting: Annotated[
        answers.TemperatureDifference | UnsetType,
        Meta(description="At this difference the longest run needs a fitting; at less, none does."),
    ] = UNSET
    travel_needed: Annotated[
        answers.Length | UnsetType, Meta(description="Travel with which one fitting would do for the longest run.")
    ] = UNSET
    fitting_spacing: Annotated[
        answers.Length | UnsetType, Meta(description="Length of run to each fitting, for one run that needs any.")
    ] = UNSET
    piston_opening: Annotated[
        answers.Length | UnsetType,
        Meta(description="Opening at the installation temperature, measured from fully closed, for one run."),
    ] = UNSET


def _lengths(request: ExpansionRequest) -> list[Length]:
    if (request.length is None) == (request.straight_runs is None):
        both = request.length is not None
        raise UnanswerableError(
            Fault(
                "#/straight_runs" if both else "#/length",
                "one_of_two",
                "Give either length or straight_runs, not both." if both else "Give either length or straight_runs.",
            )
        )
    return [request.length] if request.length is not None else list(request.straight_runs or ())


def _settings(
    request: ExpansionRequest, span: Span | None, travel: float, change: float, sheet: Worksheet
) -> list[PistonSetting]:
    """Give the openings of a fitting that takes `change` [m], for the installation and every temperature asked for."""
    temperatures = request.temperatures
    if span is None or temperatures.kind != "range":
        return []
    asked: list[Temperature] = [temperatures.installation] if temperatures.installation is not None else []
    asked += request.setting_temperatures or []
    if not asked:
        return []
    centered = sheet.settle("#/piston_convention", request.piston_convention, CONVENTION)
    settings = []
    for temperature in asked:
        if centered is PistonConvention.CENTERED:
            opening = engineering.centered_opening(travel, change, span.lowest, span.highest, temperature.si)
        else:
            opening = engineering.piston_opening(travel, span.lowest, span.highest, temperature.si)
        told = temperature.in_system(sheet.tell.system)
        settings.append(PistonSetting(answers.Temperature(told.value, told.unit.value), sheet.tell.size(opening)))
    return settings


def _run(
    request: ExpansionRequest, length: float, change: float, span: Span | None, travel: float, sheet: Worksheet
) -> RunMovement:
    tell = sheet.tell
    required = engineering.fitting_required(change, TRIGGER.value.si)
    count = engineering.fitting_count(change, travel) if required else 0
    return RunMovement(
        length=tell.distance(length),
        length_change=tell.size(change),
        fitting_required=required,
        fitting_count=count,
        fitting_positions=[tell.distance(place) for place in engineering.fitting_positions(length, count)],
        anchor_positions=[tell.distance(place) for place in engineering.anchor_positions(length, count)],
        piston_settings=_settings(request, span, travel, change / count, sheet) if count else [],
    )


def compute(request: ExpansionRequest, sheet: Worksheet) -> ExpansionResult:
    """Give the movement of each straight run, whether it needs fittings, how many, where, and how far open."""
    sheet.follow_edition(request.code_edition)
    coefficient, source = coefficient_of(request.material, request.coefficient, sheet)
    lengths = _lengths(request)
    tell, temperatures = sheet.tell, request.temperatures
    span = span_of(temperatures, sheet) if temperatures.kind == "range" else None
    for index, temperature in enumerate(request.setting_temperatures or ()):
        if span is None:
            raise UnanswerableError(
                Fault(
                    "#/setting_temperatures", "needs_a_range", "Openings follow from a range of temperatures: give one."
                )
            )
        span.refuse_outside(temperature, f"#/setting_temperatures/{index}/value")
    given = temperatures.difference if span is None else span.difference  # type: ignore[union-attr]
    told = given.in_system(tell.system)
    difference = answers.TemperatureDifference(told.value, told.unit.value)
    setting = sheet.settle("#/setting", request.setting, SETTING)
    rule = rule_of(request.material, sheet)
    report_situation(
        request.material, setting, request.emerges_from_grade, request.crosses_structural_joint, rule, sheet
    )
    if setting is not RunSetting.ABOVE_GROUND:
        held_by_the_ground(setting, rule, sheet)
        return ExpansionResult(
            temperature_difference=difference, fitting_required=False, fitting_count=0, runs=[], travel_options=[]
        )
    travel = sheet.settle("#/fitting_travel", request.fitting_travel, FITTING_TRAVEL)
    runs = []
    for index, length in enumerate(lengths):
        change = engineering.length_change(coefficient, length.si, given.si)
        sheet.show(
            f"dL{index + 1}",
            "a x L x dT",
            f"{coefficient:.6g} /K x {length.si:.6g} m x {given.si:.6g} K",
            tell.size(change),
        )
        run = _run(request, length.si, change, span, travel.si, sheet)
        runs.append(run)
        if run.fitting_required:
            find_movement(
                index, len(lengths), run.length_change, run.fitting_count, length, travel, rule, source, sheet
            )
    longest = max(length.si for length in lengths)
    most = engineering.length_change(coefficient, longest, given.si)
    only = runs[0] if len(runs) == 1 and runs[0].fitting_count else None
    installed = temperatures.kind == "range" and temperatures.installation is not None
    changes = [engineering.length_change(coefficient, length.si, given.si) for length in lengths]
    moving = [change for change in changes if engineering.fitting_required(change, TRIGGER.value.si)]
    sheet.cite("sun-allowance-catalogue")
    return ExpansionResult(
        temperature_difference=difference,
        length_change=tell.size(most),
        fitting_required=bool(moving),
        fitting_count=sum(run.fitting_count for run in runs),
        runs=runs,
        travel_options=[
            TravelOption(
                _told_length(sold, sheet), sum(engineering.fitting_count(change, sold.si) for change in moving)
            )
            for sold in _SOLD
        ],
        longest_run_without_fitting=tell.distance(engineering.longest_run(coefficient, given.si, TRIGGER.value.si)),
        largest_difference_without_fitting=tell.difference(
            engineering.largest_difference(coefficient, longest, TRIGGER.value.si)
        ),
        travel_needed=tell.size(most) if moving else UNSET,
        fitting_spacing=tell.distance(longest / only.fitting_count) if only else UNSET,
        piston_opening=only.piston_settings[0].opening if only and installed else UNSET,
    )


def _told_length(length: Length, sheet: Worksheet) -> answers.Length:
    told = length.in_system(sheet.tell.system)
    return answers.Length(told.value, told.unit.value)


OPERATION = Operation(
    name="expansion",
    operation_id="calculate_expansion",
    summary="Thermal expansion",
    description="Gives the length change of straight runs with temperature, each held against the 1/4 in that calls "
    "for an expansion fitting, how many fittings and where, and how far open to set each, by either convention.",
    request=ExpansionRequest,
    result=ExpansionResult,
    compute=compute,
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
        "setting_temperatures": [{"value": 40, "unit": "degF"}, {"value": 120, "unit": "degF"}],
        "emerges_from_grade": False,
        "crosses_structural_joint": False,
        "code_edition": "2023",
    },
)
