"""Dimensions of circuits, and the plain ratio."""

from ductrun.units.codes import UnitCode
from ductrun.units.quantities import Quantity, by_role


class CurrentUnit(UnitCode, si="ampere"):
    """Units of electric current."""

    A = "A", "ampere", "A"
    KA = "kA", "kiloampere", "kA"


class Current(Quantity, frozen=True):
    """An electric current with its unit."""

    unit: CurrentUnit
    told = by_role(current=CurrentUnit.A)


class VoltageUnit(UnitCode, si="volt"):
    """Units of voltage."""

    V = "V", "volt", "V"
    KV = "kV", "kilovolt", "kV"


class Voltage(Quantity, frozen=True):
    """A voltage with its unit."""

    unit: VoltageUnit
    told = by_role(voltage=VoltageUnit.V)


class PowerUnit(UnitCode, si="watt"):
    """Units of power."""

    W = "W", "watt", "W"
    KW = "kW", "kilowatt", "kW"


class Power(Quantity, frozen=True):
    """A power with its unit."""

    unit: PowerUnit
    told = by_role(power=PowerUnit.W)


class ApparentPowerUnit(UnitCode, si="volt * ampere"):
    """Units of apparent power."""

    KVA = "kVA", "kilovolt * ampere", "kV.A"


class ApparentPower(Quantity, frozen=True):
    """An apparent power with its unit."""

    unit: ApparentPowerUnit
    told = by_role(apparent_power=ApparentPowerUnit.KVA)


class EnergyUnit(UnitCode, si="joule"):
    """Units of energy."""

    KWH = "kWh", "kilowatt * hour", "kW.h"


class Energy(Quantity, frozen=True):
    """An energy with its unit."""

    unit: EnergyUnit
    told = by_role(energy=EnergyUnit.KWH)


class ResistancePerLengthUnit(UnitCode, si="ohm / meter"):
    """Units of electric resistance per length."""

    OHM_PER_KM = "ohm/km", "ohm / kilometer", "Ohm/km", "metric", "ohm/1000ft"
    OHM_PER_1000FT = "ohm/1000ft", "ohm / (1000 * foot)", "Ohm/(10*3.[ft_i])", "us", "ohm/km"


class ResistancePerLength(Quantity, frozen=True):
    """An electric resistance per length with its unit."""

    unit: ResistancePerLengthUnit
    told = by_role(resistance_per_length=(ResistancePerLengthUnit.OHM_PER_1000FT, ResistancePerLengthUnit.OHM_PER_KM))


class FrequencyUnit(UnitCode, si="hertz"):
    """Units of frequency."""

    HZ = "Hz", "hertz", "Hz"


class Frequency(Quantity, frozen=True):
    """A frequency with its unit."""

    unit: FrequencyUnit
    told = by_role(frequency=FrequencyUnit.HZ)


class RatioUnit(UnitCode, si="dimensionless"):
    """Units of a ratio: one, or the hundredth."""

    ONE = "1", "dimensionless", "1"
    PERCENT = "percent", "percent", "%"


class Ratio(Quantity, frozen=True):
    """A ratio with its unit: only in answers, where a figure may be of any dimension; a request gives bare numbers."""

    unit: RatioUnit
    told = by_role(ratio=RatioUnit.ONE, percentage=RatioUnit.PERCENT)
