"""What an answer tells is in the units of the system asked for, in the roles that the dimensions declare."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product
from typing import Any, get_args, get_type_hints

import msgspec
import pytest
from ductrun.kit import answers
from ductrun.kit.telling import METRIC, TELLINGS, US, Telling, UnitSystem
from ductrun.subjects import OPERATIONS
from ductrun.units import (
    DEFINITIONS,
    UNIT_CODES,
    Current,
    Grade,
    Length,
    LengthUnit,
    Quantity,
    Temperature,
    Volume,
)
from hypothesis import given
from hypothesis import strategies as st

from tests.asking import EXAMPLES, result

ROLES = {role: (dimension, told) for dimension in UNIT_CODES for role, told in dimension.told.items()}
VALUES = st.floats(allow_nan=False, allow_infinity=False, min_value=-1e6, max_value=1e6)


def quantities(node: Any) -> Iterator[dict[str, Any]]:
    if isinstance(node, list):
        for item in node:
            yield from quantities(item)
    elif isinstance(node, dict) and set(node) == {"value", "unit"}:
        yield node
    elif isinstance(node, dict):
        for item in node.values():
            yield from quantities(item)


@pytest.mark.parametrize(("name", "system"), list(product([one.name for one in OPERATIONS], ["us", "metric"])))
def test_every_quantity_of_a_result_is_in_the_system_asked_for(name: str, system: str) -> None:
    found = result(name, EXAMPLES[name], f"units={system}")
    for told in quantities(found):
        if told["unit"] == "each":  # a count of a takeoff
            continue
        assert DEFINITIONS[told["unit"]].system in (system, "both"), told


def test_a_role_belongs_to_one_dimension_and_its_units_to_the_system() -> None:
    assert len(ROLES) == sum(len(dimension.told) for dimension in UNIT_CODES)
    for dimension, told in ROLES.values():
        assert {type(unit) for unit in told} == {UNIT_CODES[dimension]}
        assert told.us.system in ("us", "both")
        assert told.metric.system in ("metric", "both")


def test_the_members_that_a_type_checker_knows_are_roles_of_the_dimension_they_name() -> None:
    hints = get_type_hints(Telling)
    del hints["system"]
    for role, kind in hints.items():
        assert get_args(kind)[1] is ROLES[role][0], role


@pytest.mark.parametrize("role", ROLES)
def test_an_si_number_is_told_in_the_units_of_its_role(role: str) -> None:
    dimension, units = ROLES[role]
    for tell, unit in ((US, units.us), (METRIC, units.metric)):
        told = getattr(tell, role)(0.25)
        assert (told.value, told.unit) == (unit.from_si(0.25), unit.text)
        assert dimension.parse(told.value, told.unit).si == pytest.approx(0.25)
        assert msgspec.json.decode(msgspec.json.encode(told)) == {"value": told.value, "unit": unit.text}


def test_a_dimension_is_told_in_its_first_role_or_in_the_one_named() -> None:
    assert US.of(Length)(0.3048) == US.distance(0.3048)
    assert US.of(Length, "size")(0.0254).unit == "in"
    assert METRIC.of(Volume, "liquid_volume")(0.001).unit == "L"
    assert US.of(Current)(3.0).value == 3.0
    assert US.of(Temperature)(273.15).value == pytest.approx(32.0)
    assert US.of(Grade)(0.0).value == 0.0
    assert US.of(Length) is US.of(Length)


@given(value=VALUES, system=st.sampled_from(UnitSystem), data=st.data())
def test_what_is_given_in_the_system_comes_back_bit_for_bit(value: float, system: UnitSystem, data: Any) -> None:
    codes = [code for codes in UNIT_CODES.values() for code in codes if code.system in (system, "both")]
    unit = data.draw(st.sampled_from([code for code in codes if type(code).to_si is type(LengthUnit.FT).to_si]))
    dimension = next(one for one, units in UNIT_CODES.items() if type(unit) is units)
    told = TELLINGS[system].given(dimension.parse(value, unit.text))
    assert (told.value, told.unit) == (value, unit)


def test_what_is_told_has_no_value_in_si() -> None:
    for told in (US.size(0.3), US.given(Length.parse(3, "ft")), Length(3.0, LengthUnit.FT.value)):
        assert msgspec.json.encode(told).endswith(b"}")
        with pytest.raises(AttributeError):
            _ = told.si


def test_the_quantities_of_answers_are_the_dimensions_declared() -> None:
    for dimension in UNIT_CODES:
        assert getattr(answers, dimension.__name__) is dimension
        assert issubclass(dimension, Quantity)
