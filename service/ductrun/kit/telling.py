"""Putting SI numbers into the units of the answer."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TypeVar

from ductrun.kit import answers
from ductrun.units import (
    AngleUnit,
    AreaUnit,
    Code,
    DurationUnit,
    ForcePerLengthUnit,
    ForceUnit,
    LengthUnit,
    MassPerLengthUnit,
    MassUnit,
    Quantity,
    TemperatureDifferenceUnit,
    UnitCode,
    VolumeUnit,
)

Q = TypeVar("Q", bound=answers.AnyQuantity)


class UnitSystem(Code):
    """Units of the answer: US customary or metric."""

    US = "us"
    METRIC = "metric"


def _scale(record: type[Q], unit: UnitCode) -> Callable[[float], Q]:
    factor, text = unit.scale, unit.value

    def tell(si: float) -> Q:
        return record(si / factor, text)

    return tell


@dataclass(frozen=True, slots=True)
class Telling:
    """One unit system of answers: each member takes an SI number and gives the record with value and unit."""

    system: UnitSystem
    distance: Callable[[float], answers.Length]
    size: Callable[[float], answers.Length]
    section_area: Callable[[float], answers.Area]
    concrete_volume: Callable[[float], answers.Volume]
    liquid_volume: Callable[[float], answers.Volume]
    mass: Callable[[float], answers.Mass]
    mass_per_length: Callable[[float], answers.MassPerLength]
    force: Callable[[float], answers.Force]
    force_per_length: Callable[[float], answers.ForcePerLength]
    difference: Callable[[float], answers.TemperatureDifference]
    angle: Callable[[float], answers.Angle]
    duration: Callable[[float], answers.Duration]

    def given(self, quantity: Quantity) -> answers.AnyQuantity:
        """Tell a given or printed quantity: bit for bit if its unit belongs to this system, else converted."""
        told = quantity.in_system(self.system)
        return answers.AnyQuantity(told.value, told.unit)


US = Telling(
    UnitSystem.US,
    distance=_scale(answers.Length, LengthUnit.FT),
    size=_scale(answers.Length, LengthUnit.INCH),
    section_area=_scale(answers.Area, AreaUnit.IN2),
    concrete_volume=_scale(answers.Volume, VolumeUnit.YD3),
    liquid_volume=_scale(answers.Volume, VolumeUnit.GAL_US),
    mass=_scale(answers.Mass, MassUnit.LB),
    mass_per_length=_scale(answers.MassPerLength, MassPerLengthUnit.LB_PER_FT),
    force=_scale(answers.Force, ForceUnit.LBF),
    force_per_length=_scale(answers.ForcePerLength, ForcePerLengthUnit.LBF_PER_FT),
    difference=_scale(answers.TemperatureDifference, TemperatureDifferenceUnit.DELTA_DEG_F),
    angle=_scale(answers.Angle, AngleUnit.DEG),
    duration=_scale(answers.Duration, DurationUnit.MIN),
)
METRIC = Telling(
    UnitSystem.METRIC,
    distance=_scale(answers.Length, LengthUnit.M),
    size=_scale(answers.Length, LengthUnit.MM),
    section_area=_scale(answers.Area, AreaUnit.MM2),
    concrete_volume=_scale(answers.Volume, VolumeUnit.M3),
    liquid_volume=_scale(answers.Volume, VolumeUnit.L),
    mass=_scale(answers.Mass, MassUnit.KG),
    mass_per_length=_scale(answers.MassPerLength, MassPerLengthUnit.KG_PER_M),
    force=_scale(answers.Force, ForceUnit.N),
    force_per_length=_scale(answers.ForcePerLength, ForcePerLengthUnit.N_PER_M),
    difference=_scale(answers.TemperatureDifference, TemperatureDifferenceUnit.DELTA_DEG_C),
    angle=_scale(answers.Angle, AngleUnit.DEG),
    duration=_scale(answers.Duration, DurationUnit.MIN),
)
TELLINGS = {UnitSystem.US: US, UnitSystem.METRIC: METRIC}
