"""The factors between units, read from pint once when the package is imported, and never again.

Afterwards a conversion is a multiplication by one factor, with an added constant for temperatures and an arc tangent
for a grade in percent; a client's text never reaches pint. SI is the meeting point.
"""

from __future__ import annotations

from decimal import Decimal
from typing import Final, NamedTuple

import pint

from ductrun.units.codes import GradeUnit, TemperatureUnit
from ductrun.units.quantities import UNIT_CODES


class Definition(NamedTuple):
    """What a unit code means: pint's expression, the SI unit, the UCUM code, the system, its counterpart there."""

    pint: str
    si: str
    ucum: str
    system: str
    counterpart: str


DEFINITIONS: Final[dict[str, Definition]] = {
    "mm": Definition("millimeter", "meter", "mm", "metric", "in"),
    "cm": Definition("centimeter", "meter", "cm", "metric", "in"),
    "m": Definition("meter", "meter", "m", "metric", "ft"),
    "in": Definition("inch", "meter", "[in_i]", "us", "mm"),
    "ft": Definition("foot", "meter", "[ft_i]", "us", "m"),
    "yd": Definition("yard", "meter", "[yd_i]", "us", "m"),
    "mm2": Definition("millimeter**2", "meter**2", "mm2", "metric", "in2|kcmil"),
    "cm2": Definition("centimeter**2", "meter**2", "cm2", "metric", "in2"),
    "m2": Definition("meter**2", "meter**2", "m2", "metric", "ft2"),
    "in2": Definition("inch**2", "meter**2", "[sin_i]", "us", "mm2"),
    "ft2": Definition("foot**2", "meter**2", "[sft_i]", "us", "m2"),
    "kcmil": Definition("1000 * circular_mil", "meter**2", "10*3.[cml_i]", "us", "mm2"),
    "L": Definition("liter", "meter**3", "L", "metric", "gal_us"),
    "m3": Definition("meter**3", "meter**3", "m3", "metric", "yd3"),
    "ft3": Definition("foot**3", "meter**3", "[cft_i]", "us", "m3"),
    "yd3": Definition("yard**3", "meter**3", "[cyd_i]", "us", "m3"),
    "qt_us": Definition("quart", "meter**3", "[qt_us]", "us", "L"),
    "gal_us": Definition("gallon", "meter**3", "[gal_us]", "us", "L"),
    "kg": Definition("kilogram", "kilogram", "kg", "metric", "lb"),
    "t": Definition("metric_ton", "kilogram", "t", "metric", "short_ton"),
    "lb": Definition("pound", "kilogram", "[lb_av]", "us", "kg"),
    "short_ton": Definition("short_ton", "kilogram", "[ston_av]", "us", "t"),
    "kg/m": Definition("kilogram / meter", "kilogram / meter", "kg/m", "metric", "lb/ft"),
    "kg/km": Definition("kilogram / kilometer", "kilogram / meter", "kg/km", "metric", "lb/1000ft"),
    "lb/ft": Definition("pound / foot", "kilogram / meter", "[lb_av]/[ft_i]", "us", "kg/m"),
    "lb/1000ft": Definition("pound / (1000 * foot)", "kilogram / meter", "[lb_av]/(10*3.[ft_i])", "us", "kg/km"),
    "N": Definition("newton", "newton", "N", "metric", "lbf"),
    "kN": Definition("kilonewton", "newton", "kN", "metric", "lbf"),
    "lbf": Definition("force_pound", "newton", "[lbf_av]", "us", "N"),
    "kgf": Definition("force_kilogram", "newton", "kgf", "metric", "lbf"),
    "N/m": Definition("newton / meter", "newton / meter", "N/m", "metric", "lbf/ft"),
    "kN/m": Definition("kilonewton / meter", "newton / meter", "kN/m", "metric", "lbf/ft"),
    "lbf/ft": Definition("force_pound / foot", "newton / meter", "[lbf_av]/[ft_i]", "us", "N/m"),
    "kPa": Definition("kilopascal", "pascal", "kPa", "metric", "psi"),
    "MPa": Definition("megapascal", "pascal", "MPa", "metric", "psi"),
    "psi": Definition("force_pound / inch**2", "pascal", "[psi]", "us", "kPa"),
    "psf": Definition("force_pound / foot**2", "pascal", "[lbf_av]/[sft_i]", "us", "kPa"),
    "kg/m3": Definition("kilogram / meter**3", "kilogram / meter**3", "kg/m3", "metric", "lb/ft3"),
    "lb/ft3": Definition("pound / foot**3", "kilogram / meter**3", "[lb_av]/[cft_i]", "us", "kg/m3"),
    "lb/yd3": Definition("pound / yard**3", "kilogram / meter**3", "[lb_av]/[cyd_i]", "us", "kg/m3"),
    "degC": Definition("degree_Celsius", "kelvin", "Cel", "metric", "degF"),
    "degF": Definition("degree_Fahrenheit", "kelvin", "[degF]", "us", "degC"),
    "K": Definition("kelvin", "kelvin", "K", "both", "K"),
    "delta_degC": Definition("delta_degree_Celsius", "kelvin", "K", "metric", "delta_degF"),
    "delta_degF": Definition("delta_degree_Fahrenheit", "kelvin", "[degRe]", "us", "delta_degC"),
    "1/degC": Definition("1 / delta_degree_Celsius", "1 / kelvin", "/K", "metric", "1/degF"),
    "1/degF": Definition("1 / delta_degree_Fahrenheit", "1 / kelvin", "/[degRe]", "us", "1/degC"),
    "min": Definition("minute", "second", "min", "both", "min"),
    "h": Definition("hour", "second", "h", "both", "h"),
    "deg": Definition("degree", "radian", "deg", "both", "deg"),
    "rad": Definition("radian", "radian", "rad", "both", "rad"),
    "percent": Definition("percent", "dimensionless", "%", "both", "percent"),
}


def _read_factors() -> None:
    # Decimal, so that a foot is 0.3048 m to the last digit: pint's own float chain ends one step below it
    registry: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)
    for codes in UNIT_CODES.values():
        by_text = {code.value: code for code in codes}
        for code in codes:
            definition = DEFINITIONS[code.value]
            name, code.si, code.ucum, code.system = definition[:4]
            code.counterpart = next(by_text[text] for text in definition.counterpart.split("|") if text in by_text)
            if isinstance(code, TemperatureUnit):
                code.zero = float(registry.Quantity(Decimal(0), name).to("kelvin").magnitude)
                name = "kelvin" if code is TemperatureUnit.K else f"delta_{name}"
            elif code is GradeUnit.PERCENT:
                code.si = "radian (arc tangent)"
            factor = registry.parse_expression(name).to(definition.si)
            code.scale = float(factor.magnitude)


_read_factors()
