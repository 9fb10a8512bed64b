"""Dimensions of shape: lengths, areas, volumes, angles."""

import math

from ductrun.units.codes import UnitCode
from ductrun.units.quantities import Quantity, by_role


class LengthUnit(UnitCode, si="meter"):
    """Units of length."""

    MM = "mm", "millimeter", "mm", "metric", "in"
    CM = "cm", "centimeter", "cm", "metric", "in"
    M = "m", "meter", "m", "metric", "ft"
    INCH = "in", "inch", "[in_i]", "us", "mm"
    FT = "ft", "foot", "[ft_i]", "us", "m"
    YD = "yd", "yard", "[yd_i]", "us", "m"


class Length(Quantity, frozen=True):
    """A length with its unit."""

    unit: LengthUnit
    told = by_role(distance=(LengthUnit.FT, LengthUnit.M), size=(LengthUnit.INCH, LengthUnit.MM))


class AreaUnit(UnitCode, si="meter**2"):
    """Units of area."""

    MM2 = "mm2", "millimeter**2", "mm2", "metric", "in2"
    CM2 = "cm2", "centimeter**2", "cm2", "metric", "in2"
    M2 = "m2", "meter**2", "m2", "metric", "ft2"
    IN2 = "in2", "inch**2", "[sin_i]", "us", "mm2"
    FT2 = "ft2", "foot**2", "[sft_i]", "us", "m2"


class Area(Quantity, frozen=True):
    """An area with its unit."""

    unit: AreaUnit
    told = by_role(section_area=(AreaUnit.IN2, AreaUnit.MM2), surface=(AreaUnit.FT2, AreaUnit.M2))


class ConductorAreaUnit(UnitCode, si="meter**2"):
    """Units of the metal area of a conductor."""

    MM2 = "mm2", "millimeter**2", "mm2", "metric", "kcmil"
    KCMIL = "kcmil", "1000 * circular_mil", "10*3.[cml_i]", "us", "mm2"


class ConductorArea(Quantity, frozen=True):
    """The metal area of a conductor with its unit."""

    unit: ConductorAreaUnit
    told = by_role(conductor_area=(ConductorAreaUnit.KCMIL, ConductorAreaUnit.MM2))


class VolumeUnit(UnitCode, si="meter**3"):
    """Units of volume."""

    L = "L", "liter", "L", "metric", "gal_us"
    M3 = "m3", "meter**3", "m3", "metric", "yd3"
    IN3 = "in3", "inch**3", "[cin_i]", "us", "L"
    FT3 = "ft3", "foot**3", "[cft_i]", "us", "m3"
    YD3 = "yd3", "yard**3", "[cyd_i]", "us", "m3"
    QT_US = "qt_us", "quart", "[qt_us]", "us", "L"
    GAL_US = "gal_us", "gallon", "[gal_us]", "us", "L"


class Volume(Quantity, frozen=True):
    """A volume with its unit."""

    unit: VolumeUnit
    told = by_role(
        bulk_volume=(VolumeUnit.YD3, VolumeUnit.M3),
        liquid_volume=(VolumeUnit.GAL_US, VolumeUnit.L),
        box_volume=(VolumeUnit.IN3, VolumeUnit.L),
    )


class AngleUnit(UnitCode, si="radian"):
    """Units of angle."""

    DEG = "deg", "degree", "deg"
    RAD = "rad", "radian", "rad"


class Angle(Quantity, frozen=True):
    """An angle with its unit."""

    unit: AngleUnit
    told = by_role(angle=AngleUnit.DEG)


class GradeUnit(UnitCode, si="radian"):
    """Units of a grade: an angle from level, or the rise in percent of the level distance."""

    DEG = "deg", "degree", "deg"
    PERCENT = "percent", "percent", "%"

    @property
    def si_unit(self) -> str:
        """The SI unit, in words: of a percent it is reached by an arc tangent."""
        return "radian" if self is GradeUnit.DEG else "radian (arc tangent)"

    def to_si(self, value: float) -> float:
        """Give `value` of this unit in radians from level."""
        return value * self.scale if self is GradeUnit.DEG else math.atan(value * self.scale)

    def from_si(self, si: float) -> float:
        """Give `si` radians from level in this unit."""
        return si / self.scale if self is GradeUnit.DEG else math.tan(si) / self.scale


class Grade(Quantity, frozen=True):
    """A grade with its unit; positive climbs in the direction of travel."""

    unit: GradeUnit
    told = by_role(grade=GradeUnit.PERCENT)
