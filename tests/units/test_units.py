"""Every unit against pint itself, and the promises a conversion makes."""

from __future__ import annotations

import math
from itertools import product

import pint
import pytest
from ductrun.kit.forms import Form, RunLength
from ductrun.units import DEFINITIONS, UNIT_CODES, Grade, Length, LengthUnit, Quantity, Temperature, UnitCode
from hypothesis import given
from hypothesis import strategies as st

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
PAIRS = [
    (dimension, one, other)
    for dimension, units in UNIT_CODES.items()
    for one, other in product(units, units)
    if dimension is not Grade
]
NUMBERS = st.floats(min_value=1e-6, max_value=1e6)


def by_pint(value: float, one: UnitCode, other: UnitCode) -> float:
    first, second = DEFINITIONS[one.value].pint, DEFINITIONS[other.value].pint
    if one.value.startswith("deg"):  # an offset unit must not be parsed with a number before it
        return float(REGISTRY.Quantity(value, first).to(second).magnitude)
    scale = REGISTRY.parse_expression(second)
    return float((value * REGISTRY.parse_expression(first) / scale).to("dimensionless").magnitude)


@pytest.mark.parametrize(("dimension", "one", "other"), PAIRS, ids=lambda part: getattr(part, "value", None))
@given(value=NUMBERS)
def test_a_conversion_agrees_with_pint(dimension: type[Quantity], one: UnitCode, other: UnitCode, value: float) -> None:
    if dimension is Temperature:
        first, second = (DEFINITIONS[unit.value].pint for unit in (one, other))
        expected = float(REGISTRY.Quantity(value, first).to(second).magnitude)
        assert dimension.parse(value, one.value).in_unit(other) == pytest.approx(expected, rel=1e-12, abs=1e-9)
    else:
        assert dimension(value, one).in_unit(other) == pytest.approx(by_pint(value, one, other), rel=1e-12)


@given(value=st.floats(allow_nan=False, allow_infinity=False, min_value=-1e300, max_value=1e300))
def test_a_value_asked_for_in_its_own_unit_comes_back_bit_for_bit(value: float) -> None:
    for unit in LengthUnit:
        assert Length(value, unit).in_unit(unit) == value


@given(degrees=st.floats(min_value=-89.9, max_value=89.9))
def test_a_grade_in_percent_is_the_tangent_of_its_angle(degrees: float) -> None:
    percent = Grade.parse(degrees, "deg").in_unit(UNIT_CODES[Grade]("percent"))
    assert percent == pytest.approx(100 * math.tan(math.radians(degrees)), rel=1e-12, abs=1e-12)
    assert Grade.parse(percent, "percent").si == pytest.approx(math.radians(degrees), rel=1e-12, abs=1e-12)


@pytest.mark.parametrize(("value", "unit"), [(-459.68, "degF"), (-273.16, "degC"), (-0.01, "K")])
def test_a_temperature_below_absolute_zero_is_refused(value: float, unit: str) -> None:
    with pytest.raises(ValueError, match="below absolute zero"):
        Temperature.parse(value, unit)


def test_exact_factors_are_exact() -> None:
    exact = {
        "ft": 0.3048,
        "in": 0.0254,
        "yd": 0.9144,
        "lbf": 4.4482216152605,
        "lb": 0.45359237,
        "gal_us": 0.003785411784,
    }
    scales = {code.text: code.scale for units in UNIT_CODES.values() for code in units}
    assert {code: scales[code] for code in exact} == exact


CODES = {
    "Length": "mm cm m in ft yd",
    "Area": "mm2 cm2 m2 in2 ft2",
    "ConductorArea": "mm2 kcmil",
    "Volume": "L m3 in3 ft3 yd3 qt_us gal_us",
    "Mass": "kg t lb short_ton",
    "MassPerLength": "kg/m kg/km lb/ft lb/1000ft",
    "Force": "N kN lbf kgf",
    "ForcePerLength": "N/m kN/m lbf/ft",
    "Pressure": "kPa MPa psi psf",
    "Density": "kg/m3 lb/ft3 lb/yd3",
    "Temperature": "degC degF K",
    "TemperatureDifference": "delta_degC delta_degF",
    "ExpansionCoefficient": "1/degC 1/degF",
    "Angle": "deg rad",
    "Grade": "deg percent",
    "Duration": "s min h",
    "Current": "A kA",
    "Voltage": "V kV",
    "Power": "W kW",
    "ApparentPower": "kVA",
    "Energy": "kWh",
    "Ratio": "1 percent",
    "PowerPerLength": "W/m W/ft",
    "ResistancePerLength": "ohm/km ohm/1000ft",
    "ThermalResistivity": "K.m/W degC.cm/W",
    "Frequency": "Hz",
}


def test_the_unit_codes_are_closed_sets() -> None:
    declared = {one.__name__: " ".join(codes) for one, codes in UNIT_CODES.items()}
    assert {name: declared.get(name) for name in CODES} == CODES, "a code more or less breaks clients"


def test_every_unit_has_a_counterpart_in_the_other_system() -> None:
    for units in UNIT_CODES.values():
        for code in units:
            other = code.counterpart
            assert isinstance(other, type(code))
            assert {code.system, other.system} in ({"us", "metric"}, {"both"})


def test_a_quantity_reads_like_a_measure() -> None:
    assert str(Length.parse(0.25, "in")) == "0.25 in"


def test_a_form_writes_a_quantity_as_it_was_given() -> None:
    class Reach(Form):
        length: RunLength

    body = '{"length":{"value":12.5,"unit":"ft"}}'
    assert Reach.model_validate_json(body).model_dump_json() == body
