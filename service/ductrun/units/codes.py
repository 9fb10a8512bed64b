"""The unit codes of every dimension: closed sets, so that a unit of the wrong dimension is a schema error."""

from __future__ import annotations

import math
from collections.abc import Callable
from enum import StrEnum
from typing import Any, Self


class Code(StrEnum):
    """A closed set of texts; the contract names its members, so that no generator has to guess a name.

    A member finds in a dict what its text finds: its hash is that of the text, where Enum would take the name's.
    """

    __hash__ = str.__hash__

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: Callable[[Any], Any]) -> Any:
        """Take the text of a member wherever the member is taken: a text is how a code comes in."""
        schema = handler(source)
        schema["strict"] = False
        return schema

    @classmethod
    def __get_pydantic_json_schema__(cls, core_schema: Any, handler: Callable[[Any], dict[str, Any]]) -> Any:
        """Add the member names to the JSON schema of the set."""
        schema = handler.resolve_ref_schema(handler(core_schema))  # type: ignore[attr-defined]
        schema["x-enum-varnames"] = [member.name for member in cls]
        return schema


class UnitCode(Code):
    """The units one dimension allows. `scale` is the size of one unit in SI; factors.py sets the attributes once."""

    scale: float
    si: str
    ucum: str
    system: str
    counterpart: Self

    def to_si(self, value: float) -> float:
        """Give `value` of this unit in SI."""
        return value * self.scale

    def from_si(self, si: float) -> float:
        """Give the SI value `si` in this unit: divided by the exact factor, which rounds once."""
        return si / self.scale


class LengthUnit(UnitCode):
    """Units of length."""

    MM = "mm"
    CM = "cm"
    M = "m"
    INCH = "in"
    FT = "ft"
    YD = "yd"


class AreaUnit(UnitCode):
    """Units of area."""

    MM2 = "mm2"
    CM2 = "cm2"
    M2 = "m2"
    IN2 = "in2"
    FT2 = "ft2"


class ConductorAreaUnit(UnitCode):
    """Units of the metal area of a conductor."""

    MM2 = "mm2"
    KCMIL = "kcmil"


class VolumeUnit(UnitCode):
    """Units of volume."""

    L = "L"
    M3 = "m3"
    FT3 = "ft3"
    YD3 = "yd3"
    QT_US = "qt_us"
    GAL_US = "gal_us"


class MassUnit(UnitCode):
    """Units of mass."""

    KG = "kg"
    T = "t"
    LB = "lb"
    SHORT_TON = "short_ton"


class MassPerLengthUnit(UnitCode):
    """Units of mass per length."""

    KG_PER_M = "kg/m"
    KG_PER_KM = "kg/km"
    LB_PER_FT = "lb/ft"
    LB_PER_1000FT = "lb/1000ft"


class ForceUnit(UnitCode):
    """Units of force."""

    N = "N"
    KN = "kN"
    LBF = "lbf"
    KGF = "kgf"


class ForcePerLengthUnit(UnitCode):
    """Units of force per length."""

    N_PER_M = "N/m"
    KN_PER_M = "kN/m"
    LBF_PER_FT = "lbf/ft"


class PressureUnit(UnitCode):
    """Units of pressure and stress."""

    KPA = "kPa"
    MPA = "MPa"
    PSI = "psi"
    PSF = "psf"


class DensityUnit(UnitCode):
    """Units of mass per volume."""

    KG_PER_M3 = "kg/m3"
    LB_PER_FT3 = "lb/ft3"
    LB_PER_YD3 = "lb/yd3"


class TemperatureUnit(UnitCode):
    """Units of temperature, each with its own zero."""

    DEG_C = "degC"
    DEG_F = "degF"
    K = "K"

    zero: float

    def to_si(self, value: float) -> float:
        """Give `value` of this unit in kelvin; a temperature below absolute zero is a ValueError."""
        kelvin = value * self.scale + self.zero
        if kelvin < 0.0:
            lowest = f"{-self.zero / self.scale:.2f} {self.value}"
            raise ValueError(f"a temperature must not lie below absolute zero, {lowest}")
        return kelvin

    def from_si(self, si: float) -> float:
        """Give `si` kelvin in this unit."""
        return (si - self.zero) / self.scale


class TemperatureDifferenceUnit(UnitCode):
    """Units of a difference between two temperatures."""

    DELTA_DEG_C = "delta_degC"
    DELTA_DEG_F = "delta_degF"


class ExpansionCoefficientUnit(UnitCode):
    """Units of a coefficient of thermal expansion."""

    PER_DEG_C = "1/degC"
    PER_DEG_F = "1/degF"


class DurationUnit(UnitCode):
    """Units of time."""

    MIN = "min"
    H = "h"


class AngleUnit(UnitCode):
    """Units of angle."""

    DEG = "deg"
    RAD = "rad"


class GradeUnit(UnitCode):
    """Units of a grade: an angle from level, or the rise in percent of the level distance."""

    DEG = "deg"
    PERCENT = "percent"

    def to_si(self, value: float) -> float:
        """Give `value` of this unit in radians from level."""
        return value * self.scale if self is GradeUnit.DEG else math.atan(value * self.scale)

    def from_si(self, si: float) -> float:
        """Give `si` radians from level in this unit."""
        return si / self.scale if self is GradeUnit.DEG else math.tan(si) / self.scale
