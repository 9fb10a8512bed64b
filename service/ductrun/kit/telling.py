"""Putting SI numbers into the units of the answer."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Any, TypeVar

from msgspec import Struct, defstruct

from ductrun.kit import answers
from ductrun.units import UNIT_CODES, AnyQuantity, Code, Quantity, UnitCode

Q = TypeVar("Q", bound=Quantity)


class UnitSystem(Code):
    """Units of the answer: US customary or metric."""

    US = "us"
    METRIC = "metric"


@cache
def _record_of(dimension: type[Quantity]) -> type[Struct]:
    """Give the record of a told quantity: it is written and not computed with, so it has no value in SI."""
    return defstruct(dimension.__name__, [], bases=(AnyQuantity,), frozen=True, gc=False)


def _scale(dimension: type[Quantity], unit: UnitCode) -> Callable[[float], Any]:
    record: Any = _record_of(dimension)
    factor, text = unit.scale, unit.text
    if type(unit).from_si is UnitCode.from_si:
        return lambda si: record(si / factor, text)
    return lambda si: record(unit.from_si(si), text)


class Telling:
    """One unit system of answers: each member takes an SI number and gives it with its unit.

    The members are the roles that the dimensions declare. Those named here are known to a type checker too; `of` gives
    any role of any dimension, typed.
    """

    __slots__ = ("_functions", "system", *(role for dimension in UNIT_CODES for role in dimension.told))

    system: UnitSystem
    distance: Callable[[float], answers.Length]
    size: Callable[[float], answers.Length]
    section_area: Callable[[float], answers.Area]
    surface: Callable[[float], answers.Area]
    bulk_volume: Callable[[float], answers.Volume]
    liquid_volume: Callable[[float], answers.Volume]
    mass: Callable[[float], answers.Mass]
    mass_per_length: Callable[[float], answers.MassPerLength]
    force: Callable[[float], answers.Force]
    force_per_length: Callable[[float], answers.ForcePerLength]
    difference: Callable[[float], answers.TemperatureDifference]
    angle: Callable[[float], answers.Angle]
    grade: Callable[[float], answers.Grade]
    duration: Callable[[float], answers.Duration]
    conductor_area: Callable[[float], answers.ConductorArea]
    pressure: Callable[[float], answers.Pressure]
    pressure_on_forms: Callable[[float], answers.Pressure]
    density: Callable[[float], answers.Density]
    temperature: Callable[[float], answers.Temperature]
    expansion_coefficient: Callable[[float], answers.ExpansionCoefficient]
    thermal_resistivity: Callable[[float], answers.ThermalResistivity]
    thermal_resistance: Callable[[float], answers.ThermalResistance]
    power_per_length: Callable[[float], answers.PowerPerLength]
    current: Callable[[float], answers.Current]
    voltage: Callable[[float], answers.Voltage]
    power: Callable[[float], answers.Power]
    apparent_power: Callable[[float], answers.ApparentPower]
    energy: Callable[[float], answers.Energy]
    resistance_per_length: Callable[[float], answers.ResistancePerLength]
    frequency: Callable[[float], answers.Frequency]
    ratio: Callable[[float], answers.Ratio]
    percentage: Callable[[float], answers.Ratio]

    def __init__(self, system: UnitSystem) -> None:
        """Make the function of every role."""
        self.system = system
        self._functions: dict[tuple[type[Quantity], str], Callable[[float], Any]] = {}
        for dimension in UNIT_CODES:
            for role in dimension.told:
                setattr(self, role, self.of(dimension, role))

    def of(self, dimension: type[Q], role: str = "") -> Callable[[float], Q]:
        """Give the function that tells an SI number of a dimension, in one of its roles or, without one, its first."""
        key = (dimension, role)
        if key not in self._functions:
            units = dimension.told[role] if role else next(iter(dimension.told.values()))
            self._functions[key] = _scale(dimension, units.us if self.system is UnitSystem.US else units.metric)
        return self._functions[key]

    def given(self, quantity: Q) -> Q:
        """Tell a quantity that the caller gave or a table holds: untouched if its unit belongs to this system, else
        converted.
        """
        told = quantity.in_system(self.system)
        return AnyQuantity(told.value, told.unit)  # type: ignore[return-value]


US = Telling(UnitSystem.US)
METRIC = Telling(UnitSystem.METRIC)
TELLINGS = {UnitSystem.US: US, UnitSystem.METRIC: METRIC}
