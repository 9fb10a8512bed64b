"""The validator's own codes never leave the service: each that a form can raise has one of ours.

Two ways to know them all: what every kind of schema the forms are made of can raise, and what bodies that are wrong in
every place did raise.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

import pytest
from ductrun.http import faults
from ductrun.http.items import Item
from ductrun.http.problems import REQUEST_CODES
from ductrun.kit.forms import Form
from ductrun.subjects import OPERATIONS
from pydantic import ValidationError

from tests.kit.test_free_text import Whole
from tests.kit.test_reading import bodies, changed_here_and_there

# what a schema of pydantic-core can raise for JSON that is strict; a kind that is not here must be looked up first
CAN_RAISE: dict[str, set[str]] = {
    "model": {"model_type", "model_attributes_type"},
    "model-fields": {"missing", "extra_forbidden", "model_type", "model_attributes_type"},
    "model-field": set(),
    "dataclass": {"dataclass_type"},
    "dataclass-args": {"missing", "unexpected_keyword_argument", "dataclass_type"},
    "dataclass-field": set(),
    "tagged-union": {"union_tag_not_found", "union_tag_invalid", "model_attributes_type"},
    "int": {"int_type", "int_from_float", "greater_than_equal", "less_than_equal", "greater_than", "less_than"},
    "float": {"float_type", "finite_number", "greater_than_equal", "less_than_equal", "greater_than", "less_than"},
    "bool": {"bool_type"},
    "str": {"string_type", "string_too_short", "string_too_long"},
    "list": {"list_type", "too_short", "too_long"},
    "dict": {"dict_type"},
    "enum": {"enum"},
    "literal": {"literal_error"},
    "any": set(),
    "default": set(),
    "definitions": set(),
    "definition-ref": set(),
    "json-or-python": set(),
    "function-wrap": set(),
    "function-after": {"value_error", "quantity_out_of_range", "control_character"},  # those of our own
}
FORMS: list[type[Form]] = [*(operation.request for operation in OPERATIONS), Item, Whole]


def _schemas(node: Any) -> Iterator[dict[str, Any]]:
    if isinstance(node, dict):
        if isinstance(node.get("type"), str):
            yield node
        for key, value in node.items():
            if key not in ("metadata", "serialization", "expected", "members", "python_schema", "function"):
                yield from _schemas(value)
    elif isinstance(node, (list, tuple)):
        for item in node:
            yield from _schemas(item)


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.__name__)
def test_every_code_that_a_form_can_raise_has_one_of_ours(form: type[Form]) -> None:
    for schema in _schemas(form.__pydantic_core_schema__):
        assert CAN_RAISE[schema["type"]] <= faults.CODES.keys()
        assert "pattern" not in schema or schema["type"] != "str"


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_every_code_that_was_raised_has_one_of_ours(operation: Any) -> None:
    raised: set[str] = set()
    for request in bodies(operation)[:3]:
        for body in changed_here_and_there(request):
            try:
                operation.request.model_validate_json(json.dumps(body))
            except ValidationError as error:
                raised |= {fault["type"] for fault in error.errors(include_url=False, include_input=False)}
                errors = faults.errors_of(error, operation.request)
                assert all(found.code in REQUEST_CODES and len(found.message) <= 2000 for found in errors)
    assert len(raised) > 8
    assert raised <= faults.CODES.keys()


def test_every_code_of_ours_is_explained_and_used() -> None:
    assert set(faults.CODES.values()) == set(REQUEST_CODES)
    assert set(faults.SENTENCES) == set(REQUEST_CODES)
