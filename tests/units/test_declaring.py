"""A dimension needs its declaration and nothing else; here is one that no other file knows."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from typing import Annotated, Any

import msgspec
import pytest
from ductrun.http.contract import schemas
from ductrun.http.faults import errors_of
from ductrun.kit.forms import Form, between
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.kit.telling import METRIC, US, Telling
from ductrun.units import UNIT_CODES, Quantity, UnitCode
from ductrun.units.factors import read, settle
from ductrun.units.quantities import by_role
from pydantic import ValidationError
from tools.factors import written


class LuminanceUnitOfTheTests(UnitCode, si="lux"):
    """Units of illuminance."""

    LX = "lx", "lux", "lx", "metric", "fc"
    FC = "fc", "lumen / foot**2", "lm/[sft_i]", "us", "lx"


class LuminanceOfTheTests(Quantity, frozen=True):
    """An illuminance with its unit."""

    unit: LuminanceUnitOfTheTests
    told = by_role(illuminance=(LuminanceUnitOfTheTests.FC, LuminanceUnitOfTheTests.LX))


del UNIT_CODES[LuminanceOfTheTests]  # it is declared for the tests of this file alone

FACTOR = 10.763910416709722  # 1 / 0.3048**2


@pytest.fixture(autouse=True, scope="module")
def _declared() -> Iterator[None]:
    UNIT_CODES[LuminanceOfTheTests] = LuminanceUnitOfTheTests
    settle(
        "LuminanceOfTheTests", LuminanceUnitOfTheTests, read(written().splitlines())
    )  # what `make factors` does with a file
    yield
    del UNIT_CODES[LuminanceOfTheTests]


class LightResult(msgspec.Struct):
    level: LuminanceOfTheTests
    given: LuminanceOfTheTests


def light(request: Any, tell: Telling) -> LightResult:
    return LightResult(level=tell.of(LuminanceOfTheTests)(2 * request.level.si), given=tell.given(request.level))


def light_request() -> type[Form]:
    class LightRequest(Form):
        level: Annotated[LuminanceOfTheTests, between(LuminanceOfTheTests, 1, 10_000, "lx")]

    return LightRequest


def reading() -> Callable[[bytes], Any]:
    return reader_of(light_request())


def test_pint_gives_its_factors() -> None:
    assert LuminanceUnitOfTheTests.FC.scale == FACTOR
    assert LuminanceUnitOfTheTests.FC.counterpart is LuminanceUnitOfTheTests.LX
    assert LuminanceOfTheTests.parse(2, "fc").in_unit(LuminanceUnitOfTheTests.LX) == 2 * FACTOR


@pytest.mark.parametrize(
    ("tell", "level", "given"),
    [
        (US, {"value": 2 * (30 * FACTOR) / FACTOR, "unit": "fc"}, {"value": 30.0, "unit": "fc"}),
        (METRIC, {"value": 2 * (30 * FACTOR), "unit": "lx"}, {"value": 30 * FACTOR, "unit": "lx"}),
    ],
    ids=["us", "metric"],
)
def test_it_goes_through_a_form_a_calculation_and_an_answer(tell: Telling, level: Any, given: Any) -> None:
    request = reading()(b'{"level": {"value": 30, "unit": "fc"}}')
    assert json.loads(msgspec.json.encode(light(request, tell))) == {
        "level": level,
        "given": {"value": pytest.approx(given["value"], rel=1e-12), "unit": given["unit"]},
    }


def test_the_form_takes_what_the_reader_takes() -> None:
    form = light_request().model_validate_json(b'{"level": {"value": 30, "unit": "fc"}}')
    assert form.level == LuminanceOfTheTests(30.0, LuminanceUnitOfTheTests.FC)  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    ("level", "code", "pointer"),
    [
        ({"value": 0.5, "unit": "lx"}, "out_of_range", "#/level/value"),
        ({"value": 1000, "unit": "fc"}, "out_of_range", "#/level/value"),
        ({"value": 3, "unit": "ft"}, "not_allowed", "#/level/unit"),
        ({"value": "3", "unit": "lx"}, "wrong_type", "#/level/value"),
        ({"value": 3, "unit": "lx", "si": 3}, "unknown_member", "#/level/si"),
        (3, "wrong_type", "#/level"),
    ],
)
def test_the_form_says_what_is_wrong_with_it(level: Any, code: str, pointer: str) -> None:
    body = json.dumps({"level": level}).encode()
    with pytest.raises(REFUSED):
        reading()(body)
    form = light_request()
    with pytest.raises(ValidationError) as refused:
        form.model_validate_json(body)
    [error] = errors_of(refused.value, form)
    assert (error.code, error.pointer) == (code, pointer)


def test_it_has_one_schema_in_requests_and_answers() -> None:
    request = light_request().model_json_schema()["$defs"]
    _, answer = msgspec.json.schema_components([LightResult], ref_template="#/$defs/{name}")
    for definitions in (request, answer):
        assert definitions["LuminanceOfTheTests"]["description"] == "An illuminance with its unit."
        assert definitions["LuminanceOfTheTests"]["properties"]["unit"]["$ref"] == "#/$defs/LuminanceUnitOfTheTests"
        assert set(definitions["LuminanceUnitOfTheTests"]["enum"]) == {"lx", "fc"}


def test_what_no_operation_uses_is_not_in_the_contract() -> None:
    named = set(schemas())
    unused = {"LuminanceOfTheTests", "Ratio"}
    assert {dimension.__name__ for dimension in UNIT_CODES} >= unused
    assert not named & (unused | {f"{name}Unit" for name in unused})
    assert {"Length", "LengthUnit", "Grade", "GradeUnit"} <= named
