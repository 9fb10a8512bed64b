"""Dimensions of temperature, thermal movement and heat."""

from ductrun.units.codes import UnitCode
from ductrun.units.quantities import Quantity, by_role


class TemperatureUnit(UnitCode, si="kelvin"):
    """Units of temperature, each with its own zero."""

    DEG_C = "degC", "degree_Celsius", "Cel", "metric", "degF"
    DEG_F = "degF", "degree_Fahrenheit", "[degF]", "us", "degC"
    K = "K", "kelvin", "K"

    def to_si(self, value: float) -> float:
        """Give `value` of this unit in kelvin; a temperature below absolute zero is a ValueError."""
        kelvin = value * self.scale + self.zero
        if kelvin < 0.0:
            lowest = f"{-self.zero / self.scale:.2f} {self.text}"
            raise ValueError(f"a temperature must not lie below absolute zero, {lowest}")
        return kelvin

    def from_si(self, si: float) -> float:
        """Give `si` kelvin in this unit."""
        return (si - self.zero) / self.scale


class Temperature(Quantity, frozen=True):
    """A temperature with its unit."""

    unit: TemperatureUnit
    told = by_role(temperature=(TemperatureUnit.DEG_F, TemperatureUnit.DEG_C))


class TemperatureDifferenceUnit(UnitCode, si="kelvin"):
    """Units of a difference between two temperatures."""

    DELTA_DEG_C = "delta_degC", "delta_degree_Celsius", "K", "metric", "delta_degF"
    DELTA_DEG_F = "delta_degF", "delta_degree_Fahrenheit", "[degRe]", "us", "delta_degC"


class TemperatureDifference(Quantity, frozen=True):
    """A difference between two temperatures with its unit."""

    unit: TemperatureDifferenceUnit
    told = by_role(difference=(TemperatureDifferenceUnit.DELTA_DEG_F, TemperatureDifferenceUnit.DELTA_DEG_C))


class ExpansionCoefficientUnit(UnitCode, si="1 / kelvin"):
    """Units of a coefficient of thermal expansion."""

    PER_DEG_C = "1/degC", "1 / delta_degree_Celsius", "/K", "metric", "1/degF"
    PER_DEG_F = "1/degF", "1 / delta_degree_Fahrenheit", "/[degRe]", "us", "1/degC"


class ExpansionCoefficient(Quantity, frozen=True):
    """A coefficient of linear thermal expansion with its unit."""

    unit: ExpansionCoefficientUnit
    told = by_role(expansion_coefficient=(ExpansionCoefficientUnit.PER_DEG_F, ExpansionCoefficientUnit.PER_DEG_C))


class ThermalResistivityUnit(UnitCode, si="kelvin * meter / watt"):
    """Units of thermal resistivity; the trade in the US says its rho in degC.cm/W."""

    K_M_PER_W = "K.m/W", "kelvin * meter / watt", "K.m/W", "metric", "degC.cm/W"
    DEG_C_CM_PER_W = "degC.cm/W", "delta_degree_Celsius * centimeter / watt", "K.cm/W", "us", "K.m/W"


class ThermalResistivity(Quantity, frozen=True):
    """A thermal resistivity with its unit."""

    unit: ThermalResistivityUnit
    told = by_role(thermal_resistivity=(ThermalResistivityUnit.DEG_C_CM_PER_W, ThermalResistivityUnit.K_M_PER_W))


class ThermalResistanceUnit(UnitCode, si="kelvin * meter / watt"):
    """Units of thermal resistance of a length; the trade in the US says it in thermal ohm-feet."""

    K_M_PER_W = "K.m/W", "kelvin * meter / watt", "K.m/W", "metric", "degC.ft/W"
    DEG_C_FT_PER_W = "degC.ft/W", "delta_degree_Celsius * foot / watt", "K.[ft_i]/W", "us", "K.m/W"


class ThermalResistance(Quantity, frozen=True):
    """A thermal resistance of a length, as of a metre or a foot of a layer, with its unit."""

    unit: ThermalResistanceUnit
    told = by_role(thermal_resistance=(ThermalResistanceUnit.DEG_C_FT_PER_W, ThermalResistanceUnit.K_M_PER_W))


class PowerPerLengthUnit(UnitCode, si="watt / meter"):
    """Units of power per length."""

    W_PER_M = "W/m", "watt / meter", "W/m", "metric", "W/ft"
    W_PER_FT = "W/ft", "watt / foot", "W/[ft_i]", "us", "W/m"


class PowerPerLength(Quantity, frozen=True):
    """A power per length with its unit; the heat that a cable gives off is one."""

    unit: PowerPerLengthUnit
    told = by_role(power_per_length=(PowerPerLengthUnit.W_PER_FT, PowerPerLengthUnit.W_PER_M))
