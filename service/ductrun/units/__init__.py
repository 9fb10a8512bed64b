"""Dimensions, the unit codes each allows, the quantities made of them, and the factors between them.

SI is the meeting point: m, m2, m3, kg, kg/m, N, N/m, Pa, kg/m3, K, 1/K, rad. The foot is the international foot
(0.3048 m exactly); the US survey foot differs by two parts in a million.
"""

from typing import Final

from ductrun.units.codes import (
    AngleUnit,
    AreaUnit,
    Code,
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
from ductrun.units.factors import DEFINITIONS
from ductrun.units.quantities import (
    UNIT_CODES,
    Angle,
    Area,
    ConductorArea,
    Density,
    Duration,
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

STANDARD_GRAVITY: Final = 9.80665  # m/s2, exact by definition (ISO 80000-3); turns a mass per length into a weight

__all__ = [
    "Angle",
    "AngleUnit",
    "Area",
    "AreaUnit",
    "Code",
    "ConductorArea",
    "ConductorAreaUnit",
    "DEFINITIONS",
    "Density",
    "DensityUnit",
    "Duration",
    "DurationUnit",
    "ExpansionCoefficient",
    "ExpansionCoefficientUnit",
    "Force",
    "ForcePerLength",
    "ForcePerLengthUnit",
    "ForceUnit",
    "Grade",
    "GradeUnit",
    "Length",
    "LengthUnit",
    "Mass",
    "MassPerLength",
    "MassPerLengthUnit",
    "MassUnit",
    "Pressure",
    "PressureUnit",
    "Quantity",
    "STANDARD_GRAVITY",
    "Temperature",
    "TemperatureDifference",
    "TemperatureDifferenceUnit",
    "TemperatureUnit",
    "UNIT_CODES",
    "UnitCode",
    "Volume",
    "VolumeUnit",
]
