"""The contract as a document: valid, stable, closed where it must be, and true of the code."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Iterator
from typing import Any

import pytest
from ductrun.http.problems import ASSUMPTION_CODES, QUERY_CODES, REQUEST_CODES
from ductrun.subjects import OPERATIONS
from openapi_spec_validator import OpenAPIV31SpecValidator
from tools.contract import CONTRACT, main

from tests.asking import ask

DOCUMENT: dict[str, Any] = json.loads(CONTRACT.read_text(encoding="utf-8"))
SCHEMAS: dict[str, Any] = DOCUMENT["components"]["schemas"]
CALCULATIONS = {path: item["post"] for path, item in DOCUMENT["paths"].items() if "post" in item}


def nodes(node: Any) -> Iterator[dict[str, Any]]:
    if isinstance(node, dict):
        yield node
        for key, value in node.items():
            if key not in {"example", "examples", "value"}:
                yield from nodes(value)
    elif isinstance(node, list):
        for item in node:
            yield from nodes(item)


def test_the_committed_contract_is_what_the_code_says() -> None:
    assert main() == 0


def test_the_contract_is_a_valid_openapi_3_1_document() -> None:
    assert DOCUMENT["openapi"].startswith("3.1")
    OpenAPIV31SpecValidator(DOCUMENT).validate()


def test_every_operation_but_the_two_of_health_may_ask_for_a_key_and_be_out_of_room() -> None:
    assert DOCUMENT["security"] == [{}, {"key": []}]
    assert DOCUMENT["components"]["securitySchemes"]["key"]["scheme"] == "bearer"
    for path, item in DOCUMENT["paths"].items():
        for described in item.values():
            asks = path not in {"/livez", "/readyz"}
            assert described.get("security") == (None if asks else [])
            assert {"401", "403", "503"} <= set(described["responses"]) or not asks
            assert "408" in described["responses"] or "requestBody" not in described


def test_the_contract_does_not_depend_on_the_order_of_hashes() -> None:
    written = [
        subprocess.run(
            [sys.executable, "-m", "ductrun", "contract"],
            capture_output=True,
            check=True,
            env={"PYTHONHASHSEED": seed, "PATH": ""},
        ).stdout
        for seed in ("1", "2")
    ]
    assert written[0] == written[1]


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_an_operation_has_its_route_and_a_complete_example_that_is_answered(operation: Any) -> None:
    described = CALCULATIONS[f"/v1/{operation.name}"]
    assert described["operationId"] == operation.operation_id
    [example] = described["requestBody"]["content"]["application/json"]["examples"].values()
    assert example["value"] == operation.example
    assert ask(operation.name, example["value"])["result"]
    missing = set(SCHEMAS[operation.request.__name__]["required"]) - set(example["value"])
    assert not missing


def test_every_calculation_of_the_contract_is_one_of_the_registry() -> None:
    assert set(CALCULATIONS) == {f"/v1/{operation.name}" for operation in OPERATIONS} | {
        "/v1/batch",
        "/v1/batch/stream",
    }


def test_operation_ids_are_unique() -> None:
    identities = [operation["operationId"] for path in DOCUMENT["paths"].values() for operation in path.values()]
    assert len(identities) == len(set(identities)) >= len(OPERATIONS)


def test_requests_are_closed_and_answers_open() -> None:
    for operation in OPERATIONS:
        stem = operation.request.__name__.removesuffix("Request")
        assert SCHEMAS[f"{stem}Request"]["additionalProperties"] is False
        assert "additionalProperties" not in SCHEMAS[f"{stem}Result"]


def test_no_schema_is_split_in_two_or_left_to_a_generator_to_name() -> None:
    assert not [name for name in SCHEMAS if name.endswith(("-Input", "-Output"))]
    assert "HTTPValidationError" not in SCHEMAS
    for name, schema in SCHEMAS.items():
        if "enum" in schema:
            names = schema["x-enum-varnames"]
            assert len(names) == len(set(names)) == len(schema["enum"]), name


TAGS = {  # of every other union it is `kind`
    "BatchItem": "operation",
    "BatchItemAnswer": "type",
    "ItemAnswer": "operation",
    "StreamAnswer": "operation",
    "StreamAnswerLine": "type",
}


def objects_of(name: str) -> Iterator[dict[str, Any]]:
    """Give the objects of a union, those of the unions in it among them."""
    schema = SCHEMAS[name]
    if "oneOf" not in schema:
        yield schema
    for reference in schema.get("oneOf", ()):
        yield from objects_of(reference["$ref"].rsplit("/", 1)[1])


def test_a_union_is_named_objects_with_a_required_tag_of_one_value() -> None:
    assert not [node for node in nodes({**DOCUMENT, "components": {}}) if "oneOf" in node]
    for node in nodes(DOCUMENT):
        assert "allOf" not in node
    for name, union in SCHEMAS.items():
        if "oneOf" not in union:
            assert not [node for node in nodes(union) if "oneOf" in node], name
            continue
        tag = union["discriminator"]["propertyName"]
        assert tag == TAGS.get(name, "kind")
        mapping = union["discriminator"]["mapping"]
        assert set(mapping.values()) == {reference["$ref"] for reference in union["oneOf"]}
        for value, place in mapping.items():
            for variant in objects_of(place.rsplit("/", 1)[1]):
                assert tag in variant["required"]
                assert variant["properties"][tag]["const"] == value
                assert set(variant["properties"][tag]) >= {"const", "type"}
                assert "default" not in variant["properties"][tag]


def test_nothing_is_nullable_and_everything_has_a_bound() -> None:
    for node in nodes(DOCUMENT):
        assert node.get("type") != "null"
        if node.get("type") == "string" and node.get("format") != "binary":  # a stream has any length
            assert {"enum", "const", "maxLength"} & set(node), node
        if node.get("type") == "integer":
            assert {"minimum", "maximum", "format"} <= set(node), node
        if node.get("type") == "array":
            assert "maxItems" in node, node


def schemas_in(node: Any) -> Iterator[dict[str, Any]]:
    """Give every schema of the contract: those with a name, those of parameters and bodies, and all that they hold."""
    if isinstance(node, list):
        for item in node:
            yield from schemas_in(item)
    if not isinstance(node, dict):
        return
    for key, value in node.items():
        if key in {"schemas", "properties"}:
            for schema in value.values():
                yield schema
                yield from schemas_in(schema)
        elif key in {"schema", "items", "x-item-schema"}:
            yield value
            yield from schemas_in(value)
        elif key not in {"example", "examples"}:
            yield from schemas_in(value)


def test_everything_has_one_type_that_a_generator_can_name() -> None:
    found = list(schemas_in(DOCUMENT))
    assert len(found) > 1000
    for schema in found:
        assert len({"type", "$ref", "oneOf"} & set(schema)) == 1, schema
        assert not {"anyOf", "allOf", "not"} & set(schema), schema
        assert isinstance(schema.get("type", ""), str), schema
        assert schema.get("type") != "object" or schema.get("properties"), "members of any kind are no type"
    assert '"anyOf"' not in CONTRACT.read_text(encoding="utf-8")


def test_no_schema_is_there_for_nothing() -> None:
    text = CONTRACT.read_text(encoding="utf-8")
    assert [name for name in SCHEMAS if f'"#/components/schemas/{name}"' not in text] == []


def test_a_problem_is_typed_to_its_last_member() -> None:
    assert set(SCHEMAS["Problem"]["properties"]) == {"type", "title", "status", "detail", "request_id", "errors"}
    members = SCHEMAS["Fault"]["properties"]
    for bound in ("minimum", "maximum"):
        assert members[bound]["$ref"].endswith("/AnyQuantity")
    assert members["allowed_values"]["items"]["type"] == members["suggestion"]["type"] == "string"
    assert members["assumption"]["$ref"].endswith("/RefusedAssumption")
    assert all(code in members["code"]["description"] for code in (*REQUEST_CODES, *QUERY_CODES, *ASSUMPTION_CODES))


def test_every_schema_and_every_member_of_one_says_what_it_is() -> None:
    without = [name for name, schema in SCHEMAS.items() if not schema.get("description")]
    members = {
        f"{name}.{member}": described.get("description", "")
        for name, schema in SCHEMAS.items()
        for member, described in schema.get("properties", {}).items()
    }
    assert len(members) > 1_900
    assert without + [member for member, description in members.items() if not description.endswith((".", "?"))] == []


def test_a_setting_is_told_by_one_of_the_kinds_that_are_asked_for() -> None:
    kinds = set(SCHEMAS["Setting"]["discriminator"]["mapping"])
    assert set(SCHEMAS["SettingKind"]["enum"]) == kinds
    assert SCHEMAS["RunStretch"]["properties"]["setting"]["$ref"].endswith("/SettingKind")
    assert SCHEMAS["RunStop"]["properties"]["kind"]["$ref"].endswith("/PlaceKind")


def test_the_words_of_answers_may_grow_and_the_units_of_quantities_may_not() -> None:
    assert SCHEMAS["TakeoffUnit"]["x-extensible-enum"] is True
    assert SCHEMAS["TakeoffItem"]["x-extensible-enum"] is True
    assert "x-extensible-enum" not in SCHEMAS["LengthUnit"]


def test_a_quantity_is_the_same_in_request_and_answer() -> None:
    assert set(SCHEMAS["Length"]["properties"]) == {"value", "unit"}
    assert SCHEMAS["FillResult"]["properties"]["conduit_area"]["$ref"].endswith("/Area")
    assert SCHEMAS["Area"]["properties"]["unit"]["$ref"].endswith("/AreaUnit")


def test_a_set_of_texts_says_in_words_whether_answers_may_bring_others() -> None:
    texts = {name: schema for name, schema in SCHEMAS.items() if "enum" in schema}
    told = {name for name, schema in texts.items() if "Answers may bring others." in schema["description"]}
    assert told == {name for name, schema in texts.items() if schema.get("x-extensible-enum")}
    assert "Severity" in told
    assert "LengthUnit" not in told


def test_a_query_parameter_says_with_which_forms_of_the_answer_it_is_taken() -> None:
    run, cover = ({one["name"]: one for one in _asked(path)} for path in ("/v1/duct-run", "/v1/cover"))
    assert run["page"]["x-media-types"] == ["text/html"]
    assert run["request"]["x-media-types"] == run["remedies"]["x-media-types"] == ["application/json"]
    assert run["working"]["x-media-types"] == ["application/json", "text/html"]
    assert "x-media-types" not in run["units"]
    assert "x-media-types" not in cover["working"]


def _asked(path: str) -> Any:
    return DOCUMENT["paths"][path]["post"]["parameters"]
