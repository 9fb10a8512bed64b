"""What every request is made of: a closed form, quantities within physical bounds, fields that may be left out.

A request is a form an estimator could fill in. Bounds are physical, and are checked in SI whatever the unit; the
contract states them with each field.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Annotated, Any, TypeVar

from pydantic import BaseModel, ConfigDict, Field, GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import PydanticCustomError, core_schema

from ductrun.kit.choices import CodeEdition
from ductrun.kit.defaults import CODE_EDITION
from ductrun.units import (
    Angle,
    ConductorArea,
    Density,
    ExpansionCoefficient,
    Force,
    ForcePerLength,
    Grade,
    Length,
    Mass,
    MassPerLength,
    Pressure,
    Quantity,
    Temperature,
    TemperatureDifference,
    Volume,
)

T = TypeVar("T")


class Form(BaseModel):
    """A closed request object: unknown fields, texts for numbers and non-finite numbers are refused."""

    model_config = ConfigDict(extra="forbid", strict=True, frozen=True, allow_inf_nan=False)


class MayBeAbsent:
    """Marks a field that may be left out but not be null: the validator is that of the bare type."""

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        """Unwrap the validator of a type or nothing."""
        nullable: Any = handler(source)
        bare: core_schema.CoreSchema = nullable["schema"]
        return bare


Omissible = Annotated[T | None, MayBeAbsent()]


class Between:
    """Bounds of a quantity, both included, each with its unit."""

    def __init__(self, low: Quantity, high: Quantity) -> None:
        """Set the least and the greatest quantity."""
        self.low = low
        self.high = high

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        """Add the bounds behind the validation of the quantity itself."""
        return core_schema.no_info_after_validator_function(self._hold(), handler(source))

    def __get_pydantic_json_schema__(self, core: Any, handler: GetJsonSchemaHandler) -> dict[str, Any]:
        """State the bounds in the contract; a schema has no words for a bound that depends on the unit."""
        schema = handler(core)
        schema["x-minimum"] = {"value": self.low.value, "unit": self.low.unit.text}
        schema["x-maximum"] = {"value": self.high.value, "unit": self.high.unit.text}
        return schema

    def _hold(self) -> Callable[[Quantity], Quantity]:
        low, high = self.low.si, self.high.si
        text = f"{self.low} to {self.high}"

        def hold(quantity: Quantity) -> Quantity:
            if low <= quantity.si <= high:
                return quantity
            raise PydanticCustomError("quantity_out_of_range", "The value must lie in {allowed}.", {"allowed": text})

        return hold


def between(dimension: type[Quantity], low: float, high: float, unit: str) -> Between:
    """Give bounds of a quantity, both in one unit."""
    return Between(dimension.parse(low, unit), dimension.parse(high, unit))


def _feet(low: float, high: float) -> Between:
    return between(Length, low, high, "ft")


def _inches(low: float, high: float) -> Between:
    return between(Length, low, high, "in")


RUN_LENGTH = _feet(0.01, 100_000)
RunLength = Annotated[Length, RUN_LENGTH]
BendRadius = Annotated[Length, _inches(0.5, 120_000)]
Diameter = Annotated[Length, _inches(0.01, 60)]
Clearance = Annotated[Length, _inches(0, 240)]
Offset = Annotated[Length, _feet(0, 1_000)]
RoutePosition = Annotated[Length, _feet(0, 10_000_000)]
Interval = Annotated[Length, _feet(0.25, 1_000)]
TrenchWidth = Annotated[Length, _inches(1, 1_200)]
FittingTravel = Annotated[Length, _inches(0.25, 60)]
BendAngle = Annotated[Angle, between(Angle, 0.1, 360, "deg")]
RunGrade = Annotated[Grade, between(Grade, -90, 90, "deg")]
CableMass = Annotated[MassPerLength, between(MassPerLength, 0.0001, 1_000, "lb/ft")]
Tension = Annotated[Force, between(Force, 0, 1_000_000, "lbf")]
TensionLimit = Annotated[Force, between(Force, 1, 1_000_000, "lbf")]
SidewallLimit = Annotated[ForcePerLength, between(ForcePerLength, 1, 100_000, "lbf/ft")]
PullingStress = Annotated[Pressure, between(Pressure, 1, 1_000, "MPa")]
MetalArea = Annotated[ConductorArea, between(ConductorArea, 0.1, 10_000, "kcmil")]
ConduitTemperature = Annotated[Temperature, between(Temperature, -100, 400, "degF")]
TemperatureSpan = Annotated[
    TemperatureDifference,
    between(TemperatureDifference, 0.1, 500, "delta_degF"),
]
SunAllowance = Annotated[
    TemperatureDifference,
    between(TemperatureDifference, 0, 100, "delta_degF"),
]
Expansivity = Annotated[
    ExpansionCoefficient,
    between(ExpansionCoefficient, 1e-7, 1e-3, "1/degF"),
]
CableTail = Annotated[Length, _feet(0, 1_000)]
ReelLength = Annotated[Length, _feet(1, 100_000)]
PullAnchor = Annotated[Force, between(Force, 1, 1_000_000, "lbf")]
FluidDensity = Annotated[Density, between(Density, 20, 300, "lb/ft3")]
CementContent = Annotated[Density, between(Density, 1, 100, "lb/ft3")]
DuctMass = Annotated[MassPerLength, between(MassPerLength, 0, 1_000, "lb/ft")]
Depth = Annotated[Length, _inches(0, 1_200)]
AmbientTemperature = Annotated[Temperature, between(Temperature, -100, 300, "degF")]
TruckVolume = Annotated[Volume, between(Volume, 0.1, 100, "yd3")]
BatchVolume = Annotated[Volume, between(Volume, 0.001, 100, "yd3")]
JointCement = Annotated[Volume, between(Volume, 0.00001, 4, "qt_us")]
BagMass = Annotated[Mass, between(Mass, 1, 5_000, "lb")]
ConcreteDensity = Annotated[Density, between(Density, 50, 300, "lb/ft3")]

FRICTION_BOUNDS = (0.01, 2.0)
FrictionCoefficient = Annotated[float, Field(ge=FRICTION_BOUNDS[0], le=FRICTION_BOUNDS[1])]
SideSlope = Annotated[float, Field(ge=0, le=10)]
Percent = Annotated[float, Field(ge=0, le=100)]
Count = Annotated[int, Field(ge=1, le=100_000)]
Edition = Annotated[
    Omissible[CodeEdition],
    Field(description="Edition of NFPA 70 to follow.", examples=["2023"], json_schema_extra=CODE_EDITION.stated),
]
