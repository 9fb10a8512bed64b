"""The fast reader against the form it is made of: the same verdict on every body, and the same values."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from itertools import islice
from typing import Annotated, Any, TypeVar

import pytest
from ductrun.kit.forms import Form
from ductrun.kit.reading import REFUSED, reader_of
from ductrun.subjects import OPERATIONS
from ductrun.units import Quantity
from pydantic import Field, ValidationError

OPERATION = pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
STRANGE: tuple[Any, ...] = (
    *(None, True, False, "", "x", "3", 0, 1, 3, -1, 2.0, 0.5, 1e-9, 1e300, -1e300, 2**31, 10**25, [], [1], {}),
    *({"value": 1, "unit": "ft"}, {"value": 1, "unit": "degF"}, {"value": "1", "unit": "in"}, {"kind": "listed"}),
)
_Change = TypeVar("_Change")
UNKNOWN = ("si", "dimension", "kind", "Kind", "")


def complete(node: dict[str, Any], definitions: dict[str, Any], choice: int) -> Any:
    """Make a value with every member a schema has; `choice` picks the variant of unions and the member of enums."""
    if "$ref" in node:
        node = definitions[node["$ref"].rsplit("/", 1)[1]] | {k: v for k, v in node.items() if k != "$ref"}
    if "oneOf" in node:
        variants = node["oneOf"]
        return complete(variants[choice % len(variants)], definitions, choice)
    if "const" in node:
        return node["const"]
    if "x-minimum" in node:
        return node["x-maximum" if choice % 3 == 1 else "x-minimum"]
    if "enum" in node:
        return node["enum"][choice % len(node["enum"])]
    match node["type"]:
        case "object":
            return {name: complete(member, definitions, choice) for name, member in node["properties"].items()}
        case "array":
            length = max(node.get("minItems", 0), 1 + choice % 3)
            return [complete(node["items"], definitions, choice + at) for at in range(length)]
        case "integer" | "number":
            return node.get("maximum" if choice % 2 else "minimum", 1)
        case "boolean":
            return bool(choice % 2)
        case "string":
            return f"text {choice}" if node.get("maxLength", 0) > 20 else "1-1"
    raise AssertionError(f"no value is known for {node}")


def bodies(operation: Any) -> list[Any]:
    """Give the example, and complete requests that have every variant of every union among them."""
    schema = operation.request.model_json_schema()
    return [operation.example, *(complete(schema, schema.get("$defs", {}), choice) for choice in range(6))]


def changed(node: Any) -> Iterator[Any]:
    """Give every body that differs from one in one place: a value replaced, a member left out or added."""
    yield from STRANGE
    if isinstance(node, dict):
        for name in node:
            rest = {key: value for key, value in node.items() if key != name}
            yield rest
            yield from (rest | {name: other} for other in changed(node[name]))
        yield from (node | {name: 1} for name in UNKNOWN if name not in node)
    elif isinstance(node, list) and node:
        yield node * 600
        yield from ([other, *node[1:]] for other in changed(node[0]))


_STEPS = (1, 3, 7, 13, 31, 61, 127, 251, 509, 1021)  # primes, so that every kind of change comes somewhere
_LONG = "DUCTRUN_FUZZ_EXAMPLES" in os.environ
_BYTES = 4_000 if _LONG else 500  # of a body whose every change is tried


def sampled(body: Any, changes: Iterator[_Change]) -> Iterator[_Change]:
    """Give all the changes of a short body, and of a long one as many."""
    size = len(json.dumps(body)) // _BYTES
    step = next((one for one in _STEPS if one >= size), _STEPS[-1])
    return islice(changes, 0, None, step)


def changed_here_and_there(body: Any) -> Iterator[Any]:
    """Give bodies that differ from one in one place: every such of a short one, and of a long one as many."""
    return sampled(body, changed(body))


def verdict(read: Any, body: bytes) -> Any:
    try:
        return read(body)
    except (*REFUSED, ValidationError):
        return None


def same(record: Any, form: Any) -> bool:
    """Tell whether a record has the attributes of a form, all the way down."""
    if isinstance(form, Form):
        return all(same(getattr(record, name), getattr(form, name)) for name in type(form).model_fields)
    if isinstance(form, list):
        return len(record) == len(form) and all(map(same, record, form))
    if isinstance(form, Quantity):
        metric = [one.in_system("metric") for one in (record, form)]
        told = [(one.value, one.unit, one.si, str(one)) for one in (record, form, *metric)]
        return told[0] == told[1] and told[2] == told[3] and record.dimension is type(form)
    return type(record) is type(form) and bool(record == form)


@OPERATION
def test_a_complete_request_gives_the_same_values(operation: Any) -> None:
    read, validate = reader_of(operation.request), operation.request.model_validate_json
    taken = 0
    for request in bodies(operation):
        body = json.dumps(request).encode()
        form = verdict(validate, body)
        record = verdict(read, body)
        assert (record is None) == (form is None), request
        if form is not None:
            taken += 1
            assert same(record, form), request
    assert taken >= 5


@OPERATION
def test_a_change_anywhere_gives_the_same_verdict(operation: Any) -> None:
    read, validate = reader_of(operation.request), operation.request.model_validate_json
    refused = 0
    for request in bodies(operation):
        for other in changed_here_and_there(request):
            body = json.dumps(other).encode()
            form, record = verdict(validate, body), verdict(read, body)
            assert (record is None) == (form is None), other
            refused += form is None
            if form is not None:
                assert same(record, form), other
    assert refused > 300


def doubled(node: Any) -> Iterator[str]:
    """Write a body once for each of its members, that member twice, its name once plain and once with an escape."""
    if isinstance(node, list):
        for at, item in enumerate(node):
            for text in doubled(item):
                yield f"[{','.join([*map(json.dumps, node[:at]), text, *map(json.dumps, node[at + 1 :])])}]"
    if isinstance(node, dict):
        members = {name: f"{json.dumps(name)}: {json.dumps(value)}" for name, value in node.items()}
        for name, value in node.items():
            rest = [member for other, member in members.items() if other != name]
            escaped = f'"\\u{ord(name[0]):04x}{name[1:]}": {json.dumps(value)}'
            for again in (members[name], escaped):
                yield f"{{{','.join([members[name], *rest, again])}}}"
            for text in doubled(value):
                yield f"{{{','.join([*rest, f'{json.dumps(name)}: {text}'])}}}"


@OPERATION
def test_a_member_given_twice_is_not_taken(operation: Any) -> None:
    read = reader_of(operation.request)
    for request in bodies(operation)[: 4 if _LONG else 2]:
        assert verdict(read, json.dumps(request, indent=1).encode()) is not None
        count = 0
        for body in sampled(request, doubled(request)):
            count += 1
            assert verdict(read, body.encode()) is None, body
        assert count > 8


@pytest.mark.parametrize("number", ["1e400", "-1e400", "1e309", "NaN", "Infinity", "01", "1.", ".5", "+1", "1_0"])
def test_what_is_no_finite_number_of_json_is_not_taken(number: str) -> None:
    read = reader_of(next(operation.request for operation in OPERATIONS if operation.name == "spacers"))
    assert verdict(read, b'{"length":{"value":100,"unit":"ft"},"tiers":[3]}') is not None
    assert verdict(read, b'{"length":{"value":%b,"unit":"ft"},"tiers":[3]}' % number.encode()) is None


def test_a_field_that_the_reader_would_misread_stops_the_start() -> None:
    class Patterned(Form):
        text: Annotated[str, Field(pattern="a+")]

    class Long(Form):
        count: Annotated[int, Field(multiple_of=2)]

    class Defaulted(Form):
        count: int = 3

    class Mapping(Form):
        counts: dict[str, int]

    class Unchecked(Form):
        text: Annotated[str, Field(max_length=9)]

    for form in (Patterned, Long, Defaulted, Mapping, Unchecked):
        with pytest.raises((TypeError, KeyError)):
            reader_of(form)
