"""POST /v1/expansion: how far a straight run moves, and the fittings that take it up."""

from __future__ import annotations

from typing import Annotated, Literal

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import expansion as engineering
from ductrun.operations import answers
from ductrun.operations.choices import CodeEdition, ConduitMaterial, Severity
from ductrun.operations.defaults import flag, quantity, standing_of
from ductrun.operations.inputs import (
    ConduitTemperature,
    Expansivity,
    FittingTravel,
    Form,
    Omissible,
    RunLength,
    SunAllowance,
    TemperatureSpan,
)
from ductrun.operations.operation import Operation
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.tables import TABLES
from ductrun.units import (
    ExpansionCoefficient,
    Length,
    Temperature,
    TemperatureDifference,
    TemperatureDifferenceUnit,
    TemperatureUnit,
)

_COEFFICIENTS = {row.material: row for row in TABLES["expansion_coefficients"]}
_RULES = {ConduitMaterial.PVC: "expansion_pvc", ConduitMaterial.RTRC: "expansion_rtrc"}
DIRECT_SUN = flag("expansion.direct_sun")
SUN_ALLOWANCE = quantity("expansion.sun_allowance", TemperatureDifference)
_TIE = 1e-9  # K
TRIGGER = quantity("expansion.trigger", Length)
FITTING_TRAVEL = quantity("expansion.fitting_travel", Length)


class TemperatureRange(Form):
    """The lowest and highest temperature of the conduit itself, which in the sun is not that of the air."""

    kind: Literal["range"] = Field(description="Fixed text that says: by lowest and highest.")
    lowest: ConduitTemperature = Field(description="Lowest temperature.", examples=[{"value": 0, "unit": "degF"}])
    highest: ConduitTemperature = Field(description="Highest temperature.", examples=[{"value": 110, "unit": "degF"}])
    installation: Omissible[ConduitTemperature] = Field(
        default=None,
        description="Temperature of the conduit when the fitting is set; needed for the piston opening.",
        examples=[{"value": 60, "unit": "degF"}],
    )
    direct_sun: Omissible[bool] = Field(
        default=None,
        description="Whether the run lies in direct sun and the highest temperature does not include that yet.",
        examples=[True],
    )
    sun_allowance: Omissible[SunAllowance] = Field(
        default=None,
        description="What direct sun adds to the highest temperature.",
        examples=[{"value": 30, "unit": "delta_degF"}],
    )


class TemperatureSpread(Form):
    """The difference between the highest and lowest temperature of the conduit, sun included."""

    kind: Literal["difference"] = Field(description="Fixed text that says: by the difference.")
    difference: TemperatureSpan = Field(
        description="Highest less lowest temperature.", examples=[{"value": 100, "unit": "delta_degF"}]
    )


Temperatures = TypeAliasType(
    "Temperatures", Annotated[TemperatureRange | TemperatureSpread, Field(discriminator="kind")]
)


class ExpansionRequest(Form):
    """One straight run between securely mounted items, and the temperatures it sees."""

    material: Omissible[ConduitMaterial] = Field(
        default=None, description="Material of the conduit; give this or the coefficient.", examples=["pvc"]
    )
    coefficient: Omissible[Expansivity] = Field(
        default=None,
        description="Coefficient of linear expansion; give this or the material.",
        examples=[{"value": 3.38e-5, "unit": "1/degF"}],
    )
    length: RunLength = Field(
        description="Length of the straight run between boxes, elbows or other fixed points.",
        examples=[{"value": 380, "unit": "ft"}],
    )
    temperatures: Temperatures = Field(description="The temperatures of the conduit.")
    fitting_travel: Omissible[FittingTravel] = Field(
        default=None, description="Travel of one expansion fitting.", examples=[{"value": 6, "unit": "in"}]
    )
    code_edition: Omissible[CodeEdition] = Field(
        default=None, description="Edition of NFPA 70 to follow.", examples=["2023"]
    )


class ExpansionResult(Struct, frozen=True, gc=False):
    """How far the run moves and what takes it up."""

    temperature_difference: Annotated[
        answers.TemperatureDifference,
        Meta(description="Highest less lowest temperature, sun allowance included."),
    ]
    length_change: Annotated[answers.Length, Meta(description="Change of length over that difference.")]
    fitting_required: Annotated[bool, Meta(description="Whether the change reaches the 1/4 in trigger.")]
    fitting_count: Annotated[int, Meta(description="Expansion fittings that share the change; 0 if none is required.")]
    longest_run_without_fitting: Annotated[
        answers.Length, Meta(description="At this length a fitting becomes required; shorter runs need none.")
    ]
    largest_difference_without_fitting: Annotated[
        answers.TemperatureDifference, Meta(description="At this difference a fitting becomes required.")
    ]
    fitting_spacing: Annotated[
        answers.Length | UnsetType, Meta(description="Length of run to each fitting, if any is required.")
    ] = UNSET
    piston_opening: Annotated[
        answers.Length | UnsetType,
        Meta(description="Opening at the installation temperature, measured from fully closed, if it was given."),
    ] = UNSET


def _coefficient(request: ExpansionRequest, sheet: Worksheet) -> tuple[float, str]:
    """Give the coefficient [1/K] and the words of its source."""
    if (request.material is None) == (request.coefficient is None):
        both = request.material is not None
        raise UnanswerableError(
            Fault(
                "#/coefficient" if both else "#/material",
                "one_of_two",
                "Give either material or coefficient, not both." if both else "Give either material or coefficient.",
                [material.value for material in ConduitMaterial],
            )
        )
    if request.coefficient is not None:
        return request.coefficient.si, "the coefficient given"
    assert request.material is not None  # noqa: S101  (one of the two is there)
    row = _COEFFICIENTS[request.material.value]
    sheet.cite(row.source)
    return ExpansionCoefficient.parse(row.coefficient, row.unit).si, standing_of(row)


def _span(temperatures: TemperatureRange, sheet: Worksheet) -> tuple[float, float, TemperatureDifference]:
    """Give the lowest and highest temperature [K], the sun allowance added once, and their difference.

    The difference is taken in the unit of the lowest temperature, so that whole degrees stay whole.
    """
    lowest, highest = temperatures.lowest.si, temperatures.highest.si
    if temperatures.sun_allowance is not None and temperatures.direct_sun is False:
        raise UnanswerableError(
            Fault(
                "#/temperatures/sun_allowance",
                "contradiction",
                "A sun allowance contradicts direct_sun false.",
            )
        )
    in_sun = temperatures.sun_allowance is not None or sheet.settle(
        "#/temperatures/direct_sun", temperatures.direct_sun, DIRECT_SUN
    )
    unit = temperatures.lowest.unit
    degrees = (
        TemperatureDifferenceUnit.DELTA_DEG_F
        if unit is TemperatureUnit.DEG_F
        else TemperatureDifferenceUnit.DELTA_DEG_C
    )
    difference = temperatures.highest.in_unit(unit) - temperatures.lowest.value
    if in_sun:
        allowance = sheet.settle("#/temperatures/sun_allowance", temperatures.sun_allowance, SUN_ALLOWANCE)
        highest += allowance.si
        difference += allowance.in_unit(degrees)
    if lowest >= highest:
        raise UnanswerableError(
            Fault(
                "#/temperatures/highest/value",
                "highest_not_above_lowest",
                f"The highest temperature must be above the lowest, {temperatures.lowest}.",
                {"above": {"value": temperatures.lowest.value, "unit": temperatures.lowest.unit.value}},
            )
        )
    installation = temperatures.installation
    if installation is not None and not lowest - _TIE <= installation.si <= highest + _TIE:
        unit = installation.unit
        allowed = {"minimum": unit.from_si(lowest), "maximum": unit.from_si(highest), "unit": unit.value}
        raise UnanswerableError(
            Fault(
                "#/temperatures/installation/value",
                "installation_outside_range",
                "The installation temperature of the conduit must lie between the lowest and the highest: "
                f"{allowed['minimum']:g} to {allowed['maximum']:g} {unit.value}.",
                allowed,
            )
        )
    return lowest, highest, TemperatureDifference(difference, degrees)


def compute(request: ExpansionRequest, sheet: Worksheet) -> ExpansionResult:
    """Give the movement of one straight run, whether it needs fittings, how many and how far open."""
    sheet.follow_edition(request.code_edition)
    coefficient, source = _coefficient(request, sheet)
    tell = sheet.tell
    temperatures = request.temperatures
    lowest = highest = 0.0
    installation: Temperature | None = None
    if isinstance(temperatures, TemperatureRange):
        lowest, highest, given = _span(temperatures, sheet)
        installation = temperatures.installation
    else:
        given = temperatures.difference
    difference = given.si
    told_difference = given.in_system(tell.system)
    travel = sheet.settle("#/fitting_travel", request.fitting_travel, FITTING_TRAVEL)
    length = request.length.si
    change = engineering.length_change(coefficient, length, difference)
    required = engineering.fitting_required(change, TRIGGER.value.si)
    count = engineering.fitting_count(change, travel.si) if required else 0
    told_change = tell.size(change)
    sheet.show(
        "dL",
        "a x L x dT",
        f"{coefficient:.6g} /K x {length:.6g} m x {difference:.6g} K",
        told_change,
    )
    rule = sheet.rule(_RULES.get(request.material, "expansion_other") if request.material else "expansion_other")
    if required:
        sheet.show("n", "dL / travel, rounded up", f"{change:.6g} m / {travel.si:.6g} m", count)
        fittings = "1 expansion fitting" if count == 1 else f"{count} expansion fittings"
        sheet.find(
            Severity.CAUTION,
            "expansion_fitting_required",
            f"The run moves {text_of(told_change)}, at or over the 1/4 in that calls for an expansion fitting: provide "
            f"{fittings} of {travel} travel, one to each {text_of(tell.distance(length / count))}, each piece anchored "
            "between them.",
            f"{rule}; coefficient: {source}",
            told_change,
            tell.given(TRIGGER.value),
        )
    _notes(request, sheet, rule)
    opening: answers.Length | UnsetType = UNSET
    if required and installation is not None:
        opening = tell.size(engineering.piston_opening(travel.si, lowest, highest, installation.si))
        sheet.show(
            "opening",
            "travel x (T_highest - T_installation) / (T_highest - T_lowest)",
            f"{travel.si:.6g} m x {highest - installation.si:.6g} K / {difference:.6g} K",
            opening,
        )
        sheet.cite("sun-allowance-catalogue")
    return ExpansionResult(
        temperature_difference=answers.TemperatureDifference(told_difference.value, told_difference.unit.value),
        length_change=told_change,
        fitting_required=required,
        fitting_count=count,
        longest_run_without_fitting=tell.distance(engineering.longest_run(coefficient, difference, TRIGGER.value.si)),
        largest_difference_without_fitting=tell.difference(
            engineering.largest_difference(coefficient, length, TRIGGER.value.si)
        ),
        fitting_spacing=tell.distance(length / count) if count else UNSET,
        piston_opening=opening,
    )


def _notes(request: ExpansionRequest, sheet: Worksheet, rule: str) -> None:
    if request.material is None or request.material not in _RULES:
        sheet.find(
            Severity.NOTE,
            "trigger_borrowed",
            "The code sets the 1/4 in trigger for PVC and RTRC; for this run it is used as a planning figure, and "
            "fittings are due where the movement needs them.",
            rule,
        )
    sheet.find(
        Severity.NOTE,
        "free_to_move",
        "The movement is that of conduit free to slide above ground, at the temperature of the conduit itself; buried "
        "or encased conduit is held and moves little.",
        rule,
    )


OPERATION = Operation(
    name="expansion",
    operation_id="calculate_expansion",
    summary="Thermal expansion",
    description="Gives the length change of a straight run with temperature, whether it reaches the 1/4 in that calls "
    "for an expansion fitting, how many fittings, and how far open to set the piston.",
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
        "fitting_travel": {"value": 6, "unit": "in"},
        "code_edition": "2023",
    },
)
