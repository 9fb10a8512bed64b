"""A value with its unit, one class a dimension."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar, Final, Self

from ductrun.units.codes import (
    AngleUnit,
    AreaUnit,
    ConductorAreaUnit,
    DensityUnit,
    DurationUnit,
    ExpansionCoefficientUnit,
    ForcePerLengthUnit,
    ForceUnit,
    GradeUnit,
    LengthUnit,
    MassPerLengthUnit,
    MassUnit,
    PressureUnit,
    TemperatureDifferenceUnit,
    TemperatureUnit,
    UnitCode,
    VolumeUnit,
)


class _InSI:
    """Room for the value in SI: no field of the quantity, since it is not given but follows from those that are."""

    __slots__ = ("si",)

    si: float


@dataclass(frozen=True, slots=True)
class Quantity(_InSI):
    """A value and its unit, just as it was given or printed; `si` is the same in SI."""

    __pydantic_config__: ClassVar[dict[str, Any]] = {
        "extra": "forbid",
        "strict": True,
        "allow_inf_nan": False,
    }

    dimension: ClassVar[type[Quantity]]

    value: float
    unit: UnitCode

    def __init_subclass__(cls) -> None:
        """Note the dimension: what a conversion gives, also of a quantity with bounds of its own."""
        cls.dimension = cls

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: Callable[[Any], Any]) -> Any:
        """Take an object of value and unit wherever the quantity is taken; its value stays a number and no text."""
        schema = handler(source)
        (schema["schema"] if schema["type"] == "definitions" else schema)["strict"] = False
        return schema

    def __post_init__(self) -> None:
        """Convert once."""
        object.__setattr__(self, "si", self.unit.to_si(self.value))

    def in_unit(self, unit: UnitCode) -> float:
        """The value in another unit of the same dimension; untouched, bit for bit, when the unit is its own."""
        return self.value if unit is self.unit else unit.from_si(self.si)

    def in_system(self, system: str) -> Self:
        """The same quantity for a reader of one unit system: itself if its unit belongs there, else converted."""
        if self.unit.system in (system, "both"):
            return self
        other = self.unit.counterpart
        return self.dimension(self.in_unit(other), other)  # type: ignore[return-value]

    def __str__(self) -> str:
        """Write the quantity as a person would: `0.25 in`."""
        return f"{self.value:g} {self.unit.value}"

    @classmethod
    def parse(cls, value: float, unit: str) -> Self:
        """Make a quantity of this dimension from a printed value and unit code; an unknown code is a ValueError."""
        return cls(value, UNIT_CODES[cls](unit))


@dataclass(frozen=True, slots=True)
class Length(Quantity):
    """A length with its unit."""

    unit: LengthUnit


@dataclass(frozen=True, slots=True)
class Area(Quantity):
    """An area with its unit."""

    unit: AreaUnit


@dataclass(frozen=True, slots=True)
class ConductorArea(Quantity):
    """The metal area of a conductor with its unit."""

    unit: ConductorAreaUnit


@dataclass(frozen=True, slots=True)
class Volume(Quantity):
    """A volume with its unit."""

    unit: VolumeUnit


@dataclass(frozen=True, slots=True)
class Mass(Quantity):
    """A mass with its unit; a force is not a mass: see Force."""

    unit: MassUnit


@dataclass(frozen=True, slots=True)
class MassPerLength(Quantity):
    """A mass per length with its unit."""

    unit: MassPerLengthUnit


@dataclass(frozen=True, slots=True)
class Force(Quantity):
    """A force with its unit; tension is a force."""

    unit: ForceUnit


@dataclass(frozen=True, slots=True)
class ForcePerLength(Quantity):
    """A force per length with its unit; sidewall pressure is one."""

    unit: ForcePerLengthUnit


@dataclass(frozen=True, slots=True)
class Pressure(Quantity):
    """A pressure or stress with its unit."""

    unit: PressureUnit


@dataclass(frozen=True, slots=True)
class Density(Quantity):
    """A mass per volume with its unit."""

    unit: DensityUnit


@dataclass(frozen=True, slots=True)
class Temperature(Quantity):
    """A temperature with its unit."""

    unit: TemperatureUnit


@dataclass(frozen=True, slots=True)
class TemperatureDifference(Quantity):
    """A difference between two temperatures with its unit."""

    unit: TemperatureDifferenceUnit


@dataclass(frozen=True, slots=True)
class ExpansionCoefficient(Quantity):
    """A coefficient of linear thermal expansion with its unit."""

    unit: ExpansionCoefficientUnit


@dataclass(frozen=True, slots=True)
class Duration(Quantity):
    """A time with its unit."""

    unit: DurationUnit


@dataclass(frozen=True, slots=True)
class Angle(Quantity):
    """An angle with its unit."""

    unit: AngleUnit


@dataclass(frozen=True, slots=True)
class Grade(Quantity):
    """A grade with its unit; positive climbs in the direction of travel."""

    unit: GradeUnit


UNIT_CODES: Final[dict[type[Quantity], type[UnitCode]]] = {
    Length: LengthUnit,
    Area: AreaUnit,
    ConductorArea: ConductorAreaUnit,
    Volume: VolumeUnit,
    Mass: MassUnit,
    MassPerLength: MassPerLengthUnit,
    Force: ForceUnit,
    ForcePerLength: ForcePerLengthUnit,
    Pressure: PressureUnit,
    Density: DensityUnit,
    Temperature: TemperatureUnit,
    TemperatureDifference: TemperatureDifferenceUnit,
    ExpansionCoefficient: ExpansionCoefficientUnit,
    Duration: DurationUnit,
    Angle: AngleUnit,
    Grade: GradeUnit,
}
