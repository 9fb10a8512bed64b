"""The contract: OpenAPI 3.1 from the endpoints, the request models, the answer records; the same bytes everywhere."""

from __future__ import annotations

import copy
import json
import sys
from collections.abc import Iterable, Iterator
from enum import StrEnum
from typing import Annotated, Any, get_type_hints

import msgspec
from pydantic import TypeAdapter
from pydantic.json_schema import models_json_schema

from ductrun import __version__, subjects
from ductrun.drawings.documents import pages_of
from ductrun.http import batch_schemas
from ductrun.http.api import Endpoint
from ductrun.http.descriptions import AssumptionPolicy, Page, RequestBack, stem, subject_of, table_name
from ductrun.http.health import Alive, Ready
from ductrun.http.problems import Problem
from ductrun.kit.answering import Chosen, answer_to
from ductrun.kit.answers import NOTICE, PURPOSE, USE, Answer
from ductrun.kit.telling import UnitSystem
from ductrun.subjects import OPERATIONS, Operation
from ductrun.subjects.reference_tables import REFERENCE_TABLES, ReferenceTable
from ductrun.units import UNIT_CODES, Code

_TAGS = [
    {"name": "batches", "description": "Many calculations at once, in one answer or line by line."},
    {"name": "tables", "description": "Reference data with the source and standing of every row."},
    {"name": "health", "description": "Whether the service lives and is ready."},
]
_DESCRIPTION = f"""\
{USE} Every number in an answer
can be defended: what was assumed, which limit it was held against, where each coefficient comes from and, with
`working=true`, how it was worked out.

A physical quantity is always an object of `value` and `unit`; a bare number is a count, a ratio or a percentage, and
its name says which. Inputs may mix units freely; `units` picks those of the answer. A limit that is broken is a
finding of severity `violation` in a 200: that is the answer. A 4xx is a question without an answer, as
`application/problem+json` with every member that is wrong, the reason, what is taken there and, where a known value was
nearly given, which one was probably meant: it is never guessed. `/problems/invalid_request` explains the codes.

Answers may grow. `x-extensible-enum: true` beside an `enum` or a `oneOf` says that more values or objects may come: a
generated client must take one that it does not know, where a request still takes those that are listed alone.

Calculations are POST only because they carry a body: they change nothing, need no idempotency key and may be retried.
{NOTICE}
"""


_ENVELOPE = get_type_hints(Answer, include_extras=True)


def _answer_of(operation: Operation[Any, Any, Any]) -> type[msgspec.Struct]:
    """Give the answer that all share with the result of an operation in it; the request comes with its schema."""
    own: dict[str, Any] = {"result": operation.result}
    if operation.remedying is not None:
        own["remedies"] = operation.remedying.result | msgspec.UnsetType
    left_out = {"request", "remedies"} - own.keys()
    members: list[Any] = []
    for member in msgspec.structs.fields(Answer):
        if member.name not in left_out:
            hint = _ENVELOPE[member.name]
            kind = Annotated[own[member.name], *hint.__metadata__] if member.name in own else hint
            members.append((member.name, kind) if member.required else (member.name, kind, msgspec.UNSET))
    return msgspec.defstruct(
        f"{stem(operation)}Answer",
        members,
        kw_only=True,
        namespace={"__doc__": f"The answer of {operation.name} with everything that defends it."},
    )


def _table_of(table: ReferenceTable) -> type[msgspec.Struct]:
    rows: Any = list[table.row]  # type: ignore[name-defined]
    return msgspec.defstruct(
        table_name(table),
        [
            ("tables_version", Annotated[str, msgspec.Meta(description="Hash of all reference tables.")]),
            ("rows", Annotated[rows, msgspec.Meta(description="The rows, as the source has them.")]),
        ],
        namespace={"__doc__": f"{table.summary}, with the hash of all tables."},
    )


def schemas() -> dict[str, Any]:
    """Give every named schema: those of the answers, overlaid by those of the requests where a name is shared."""
    _, answers = msgspec.json.schema_components(
        [
            Alive,
            Ready,
            Problem,
            *map(_answer_of, OPERATIONS),
            *map(_table_of, REFERENCE_TABLES),
        ],
        ref_template="#/components/schemas/{name}",
    )
    template = "#/components/schemas/{model}"
    models: list[Any] = [(operation.request, "validation") for operation in OPERATIONS]
    _, requests = models_json_schema(models, ref_template=template)
    quantities: Any = [(dimension.__name__, "validation", TypeAdapter(dimension)) for dimension in UNIT_CODES]
    _, dimensions = TypeAdapter.json_schemas(quantities, ref_template=template)
    used = {name: schema for name, schema in dimensions["$defs"].items() if name.removesuffix("Unit") in answers}
    enums = {
        code.__name__: TypeAdapter(code).json_schema(ref_template=template)
        for code in _all_codes(Code)
        if code.__name__ in answers or code in _of_queries()
    }
    merged: dict[str, Any] = answers | enums | used | requests["$defs"] | batch_schemas.schemas()
    units = {code.__name__ for code in UNIT_CODES.values()}
    for name in answers:
        if "enum" in merged[name] and name not in units:  # the units of quantities are complete
            merged[name]["x-extensible-enum"] = True
    for schema in merged.values():
        if "enum" in schema and "x-extensible-enum" in schema:  # said in words too: these are what an editor shows
            schema["description"] = f"{schema['description'].rstrip('.')}. Answers may bring others."
    for operation in OPERATIONS:
        merged[f"{stem(operation)}Answer"]["properties"]["request"] = {
            "$ref": f"#/components/schemas/{operation.request.__name__}",
            "description": "The request with every default filled in, if asked for.",
        }
    return merged


def _of_queries() -> tuple[type[Code], ...]:
    several = any(len(pages_of(operation)) > 1 for operation in OPERATIONS)
    return (UnitSystem, AssumptionPolicy, RequestBack, *([Page] if several else []))


def _all_codes(base: type[Code]) -> Iterator[type[StrEnum]]:
    for code in base.__subclasses__():
        yield code
        yield from _all_codes(code)


def _tags() -> list[dict[str, str]]:
    """Give the subjects in the order in which a job first asks for them, each with what its folder says of it."""
    in_order = dict.fromkeys(map(subject_of, OPERATIONS))
    return [{"name": name, "description": _about(name)} for name in in_order] + _TAGS


def _about(subject: str) -> str:
    return sys.modules[f"{subjects.__name__}.{subject}"].__doc__ or ""


def _worked(operation: Operation[Any, Any, Any]) -> dict[str, Any]:
    """Give the answer to the example of an operation, less the hash of the tables: a row may change and no figure."""
    written = answer_to(operation)(json.dumps(operation.example).encode(), Chosen())
    answer: dict[str, Any] = json.loads(written)
    answer["basis"]["tables_version"] = "hash of all tables"
    return answer


_REQUEST_ID = {
    "description": "Id of the request, in the logs too: the caller's own, if it sent one that is short and safe.",
    "schema": {"type": "string", "maxLength": 200},
}
_KEY = {
    "type": "http",
    "scheme": "bearer",
    "description": "A key, where the deployment asks for one: it then asks on every path but the two of health.",
}


def build(endpoints: Iterable[Endpoint]) -> dict[str, Any]:
    """Build the contract of the application."""
    paths: dict[str, Any] = {}
    for endpoint in endpoints:
        if endpoint.described is not None:
            paths.setdefault(endpoint.path, {})[endpoint.method.lower()] = endpoint.described
    for operation in OPERATIONS:
        answer = paths[f"/v1/{operation.name}"]["post"]["responses"]["200"]["content"]["application/json"]
        answer["examples"] = {"worked": {"summary": "The answer to it, with its working", "value": _worked(operation)}}
    document: dict[str, Any] = {
        "openapi": "3.1.0",
        "info": {
            "title": "ductrun",
            "version": __version__,
            "summary": PURPOSE,
            "description": _DESCRIPTION,
            "license": {"name": "MIT", "identifier": "MIT"},
        },
        "servers": [
            {"url": "/", "description": "This server, whether local, staging or production.", "x-internal": False}
        ],
        "tags": _tags(),
        "security": [{}, {"key": []}],
        "paths": paths,
        "components": {
            "schemas": schemas(),
            "headers": {"RequestId": _REQUEST_ID},
            "securitySchemes": {"key": _KEY},
        },
    }
    document = copy.deepcopy(document)  # descriptions share their parts
    for described in (described for item in document["paths"].values() for described in item.values()):
        for answer in described["responses"].values():
            answer.setdefault("headers", {})["X-Request-ID"] = {"$ref": "#/components/headers/RequestId"}
    _tidy(document)
    return document


def _tidy(node: Any, *, of_properties: bool = False) -> None:
    """Say what generators and linters need: number formats, bounds of counts and texts, no titles, no null defaults."""
    if isinstance(node, list):
        for item in node:
            _tidy(item)
    if not isinstance(node, dict):
        return
    if not of_properties:
        _tidy_schema(node)
    for key, value in node.items():
        if key not in ("example", "examples", "value", "enum", "const", "default") or of_properties:
            _tidy(value, of_properties=key == "properties" and not of_properties)


def _tidy_schema(node: dict[str, Any]) -> None:
    kind = node.get("type")
    if isinstance(node.get("title"), str) and ("properties" in node or kind or "$ref" in node or "oneOf" in node):
        del node["title"]
    if "default" in node and node["default"] is None:
        del node["default"]
    if "x-minimum" in node:
        low, high = (f"{bound['value']:g} {bound['unit']}" for bound in (node["x-minimum"], node["x-maximum"]))
        node["description"] = f"{node.get('description', '')} From {low} to {high}.".strip()
    if kind == "number":
        node.setdefault("format", "double")
    elif kind == "integer":
        node.setdefault("format", "int32")
        node.setdefault("minimum", 0)  # every whole number that is told counts something
        node.setdefault("maximum", 2**31 - 1)
    elif kind == "string" and not {"enum", "const", "maxLength"} & set(node) and node.get("format") != "binary":
        node["maxLength"] = 2000
    elif kind == "array":
        node.setdefault("maxItems", 10_000)


def written(endpoints: Iterable[Endpoint]) -> str:
    """Write the contract to be read and compared, a member a line."""
    return json.dumps(_in_order(build(endpoints)), indent=2, ensure_ascii=False, allow_nan=False) + "\n"


def sent(endpoints: Iterable[Endpoint]) -> bytes:
    """Write the contract to be sent, without a blank: half as long."""
    return msgspec.json.encode(_in_order(build(endpoints)))


def _in_order(document: dict[str, Any]) -> dict[str, Any]:
    """Sort the members, but keep paths in the order of a job and examples in that of their reader."""
    paths = {path: _sorted(described) for path, described in document["paths"].items()}
    return {key: paths if key == "paths" else _sorted(document[key]) for key in sorted(document)}


def _sorted(node: Any) -> Any:
    if isinstance(node, list):
        return [_sorted(item) for item in node]
    if isinstance(node, dict):
        return {key: node[key] if key == "value" else _sorted(node[key]) for key in sorted(node)}
    return node
