"""Dimensions of mass, force and time."""

from ductrun.units.codes import UnitCode
from ductrun.units.quantities import Quantity, by_role


class MassUnit(UnitCode, si="kilogram"):
    """Units of mass."""

    KG = "kg", "kilogram", "kg", "metric", "lb"
    T = "t", "metric_ton", "t", "metric", "short_ton"
    LB = "lb", "pound", "[lb_av]", "us", "kg"
    SHORT_TON = "short_ton", "short_ton", "[ston_av]", "us", "t"


class Mass(Quantity, frozen=True):
    """A mass with its unit; a force is not a mass: see Force."""

    unit: MassUnit
    told = by_role(mass=(MassUnit.LB, MassUnit.KG))


class MassPerLengthUnit(UnitCode, si="kilogram / meter"):
    """Units of mass per length."""

    KG_PER_M = "kg/m", "kilogram / meter", "kg/m", "metric", "lb/ft"
    KG_PER_KM = "kg/km", "kilogram / kilometer", "kg/km", "metric", "lb/1000ft"
    LB_PER_FT = "lb/ft", "pound / foot", "[lb_av]/[ft_i]", "us", "kg/m"
    LB_PER_1000FT = "lb/1000ft", "pound / (1000 * foot)", "[lb_av]/(10*3.[ft_i])", "us", "kg/km"


class MassPerLength(Quantity, frozen=True):
    """A mass per length with its unit."""

    unit: MassPerLengthUnit
    told = by_role(mass_per_length=(MassPerLengthUnit.LB_PER_FT, MassPerLengthUnit.KG_PER_M))


class ForceUnit(UnitCode, si="newton"):
    """Units of force."""

    N = "N", "newton", "N", "metric", "lbf"
    KN = "kN", "kilonewton", "kN", "metric", "lbf"
    LBF = "lbf", "force_pound", "[lbf_av]", "us", "N"
    KGF = "kgf", "force_kilogram", "kgf", "metric", "lbf"


class Force(Quantity, frozen=True):
    """A force with its unit; tension is a force."""

    unit: ForceUnit
    told = by_role(force=(ForceUnit.LBF, ForceUnit.N))


class ForcePerLengthUnit(UnitCode, si="newton / meter"):
    """Units of force per length."""

    N_PER_M = "N/m", "newton / meter", "N/m", "metric", "lbf/ft"
    KN_PER_M = "kN/m", "kilonewton / meter", "kN/m", "metric", "lbf/ft"
    LBF_PER_FT = "lbf/ft", "force_pound / foot", "[lbf_av]/[ft_i]", "us", "N/m"


class ForcePerLength(Quantity, frozen=True):
    """A force per length with its unit; sidewall pressure is one."""

    unit: ForcePerLengthUnit
    told = by_role(force_per_length=(ForcePerLengthUnit.LBF_PER_FT, ForcePerLengthUnit.N_PER_M))


class PressureUnit(UnitCode, si="pascal"):
    """Units of pressure and stress."""

    KPA = "kPa", "kilopascal", "kPa", "metric", "psi"
    MPA = "MPa", "megapascal", "MPa", "metric", "psi"
    PSI = "psi", "force_pound / inch**2", "[psi]", "us", "kPa"
    PSF = "psf", "force_pound / foot**2", "[lbf_av]/[sft_i]", "us", "kPa"


class Pressure(Quantity, frozen=True):
    """A pressure or stress with its unit."""

    unit: PressureUnit
    told = by_role(
        pressure=(PressureUnit.PSI, PressureUnit.KPA),
        pressure_on_forms=(PressureUnit.PSF, PressureUnit.KPA),
    )


class DensityUnit(UnitCode, si="kilogram / meter**3"):
    """Units of mass per volume."""

    KG_PER_M3 = "kg/m3", "kilogram / meter**3", "kg/m3", "metric", "lb/ft3"
    LB_PER_FT3 = "lb/ft3", "pound / foot**3", "[lb_av]/[cft_i]", "us", "kg/m3"
    LB_PER_YD3 = "lb/yd3", "pound / yard**3", "[lb_av]/[cyd_i]", "us", "kg/m3"


class Density(Quantity, frozen=True):
    """A mass per volume with its unit."""

    unit: DensityUnit
    told = by_role(density=(DensityUnit.LB_PER_FT3, DensityUnit.KG_PER_M3))


class DurationUnit(UnitCode, si="second"):
    """Units of time."""

    S = "s", "second", "s"
    MIN = "min", "minute", "min"
    H = "h", "hour", "h"


class Duration(Quantity, frozen=True):
    """A time with its unit."""

    unit: DurationUnit
    told = by_role(duration=DurationUnit.MIN)
