"""What the contract says of each endpoint: its operation object of OpenAPI."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Any

import msgspec

from ductrun.http.problems import KINDS, MEDIA_TYPE
from ductrun.kit.telling import UnitSystem
from ductrun.settings import Settings
from ductrun.subjects import Operation
from ductrun.subjects.reference_tables import Filter, ReferenceTable
from ductrun.units import Code

_USUAL = Settings()


class AssumptionPolicy(Code):
    """What to do where a field was left out: state what was assumed, or refuse to assume."""

    STATE = "state"
    REFUSE = "refuse"


class RequestBack(Code):
    """How the request comes back with the answer, if asked for: with every default filled in."""

    COMPLETED = "completed"


def stem(operation: Operation[Any, Any, Any]) -> str:
    """Give the common beginning of an operation's schema names: FillRequest, FillResult, FillAnswer."""
    return operation.result.__name__.removesuffix("Result")


def table_name(table: ReferenceTable) -> str:
    """Give the schema name of a table: ConduitTable."""
    return f"{table.row.__name__.removesuffix('Row')}Table"


def problem_responses(*statuses: int) -> dict[str, dict[str, Any]]:
    """Give the documented problems of an operation."""
    content = {MEDIA_TYPE: {"schema": {"$ref": "#/components/schemas/Problem"}}}
    titles = {
        status: "; or: ".join(kind.title for kind in KINDS.values() if kind.status == status) for status in statuses
    }
    responses: dict[str, dict[str, Any]] = {
        str(status): {"description": f"{titles[status]}.", "content": content} for status in statuses
    }
    return responses | {"default": {"description": "Any other problem.", "content": content}}


def _post(
    operation_id: str, summary: str, description: str, body: dict[str, Any], answer: dict[str, Any]
) -> dict[str, Any]:
    return {
        "operationId": operation_id,
        "summary": summary,
        "description": description,
        "tags": ["calculations"],
        "responses": {"200": answer} | problem_responses(400, 405, 413, 415, 422),
        "parameters": _asked(),
        "requestBody": {"required": True} | body,
    }


def calculation_options(operation: Operation[Any, Any, Any]) -> dict[str, Any]:
    """Describe a calculation."""
    body = {
        "schema": {"$ref": f"#/components/schemas/{operation.request.__name__}"},
        "examples": {"complete": {"summary": "A complete request", "value": operation.example}},
    }
    answer = {"application/json": {"schema": {"$ref": f"#/components/schemas/{stem(operation)}Answer"}}}
    return _post(
        operation.operation_id,
        operation.summary,
        operation.description,
        {"content": {"application/json": body}},
        {"description": "The answer.", "content": answer},
    )


def batch_options(examples: list[dict[str, Any]], settings: Settings = _USUAL) -> dict[str, Any]:
    """Describe the batch."""
    body = {
        "schema": {"$ref": "#/components/schemas/BatchRequest"},
        "examples": {"complete": {"summary": "Two questions", "value": {"items": examples}}},
    }
    answer = {"application/json": {"schema": {"$ref": "#/components/schemas/BatchAnswer"}}}
    return _post(
        "calculate_batch",
        "Many calculations at once",
        "Answers up to 1,000 questions of any calculations in order, each with the status it would have by itself: a "
        "question without an answer is that item's problem and no other's. A large answer comes in chunks.",
        {
            "description": f"The questions, each in at most {settings.max_body_bytes:,} bytes, and all in at most "
            f"{settings.max_batch_bytes:,} bytes.",
            "content": {"application/json": body},
        },
        {"description": "What became of each question.", "content": answer},
    )


def stream_options(
    examples: list[dict[str, Any]], media_types: Sequence[str], settings: Settings = _USUAL
) -> dict[str, Any]:
    """Describe the stream."""
    lines = "".join(json.dumps(example) + "\n" for example in examples)
    shown = {"examples": {"complete": {"summary": "Two questions", "value": lines}}}
    return _post(
        "calculate_stream",
        "Any number of calculations, line by line",
        "Takes JSON Lines of any length, one question a line, and answers each as it is ready, in order, while the "
        "rest is still arriving: read while you send. A line that is malformed, too long or without an answer is that "
        "line's problem and no other's. The first line tells what all answers rest on; the last is a summary, or "
        "says that the service stopped; an answer without either was cut off.",
        _lines(
            f"One BatchItem a line, each in at most {settings.max_body_bytes:,} bytes; any number of lines.",
            "BatchItem",
            media_types,
            shown,
        ),
        _lines(
            "One StreamAnswerLine a line: first a StreamBasis; then a StreamAnswer or a StreamProblem for each line "
            "that is not blank, in order; last a StreamSummary or a StreamStopped.",
            "StreamAnswerLine",
            media_types,
            {},
        ),
    )


def _lines(description: str, line: str, media_types: Sequence[str], more: dict[str, Any]) -> dict[str, Any]:
    """Describe JSON Lines; OpenAPI 3.1 has no word for the schema of a line: `x-item-schema` says it."""
    content = {
        "schema": {"type": "string", "format": "binary", "description": description},
        "x-item-schema": {"$ref": f"#/components/schemas/{line}"},
    }
    return {"description": description, "content": dict.fromkeys(media_types, content | more)}


def _asked() -> list[dict[str, Any]]:
    return [
        _parameter("units", "Units of the answer.", UnitSystem, "us"),
        {
            "name": "working",
            "in": "query",
            "description": "Whether to add the working, step by step.",
            "schema": {"type": "boolean", "default": False},
        },
        _parameter("assumptions", "Whether defaults are stated or refused.", AssumptionPolicy, "state"),
        _parameter("request", "Whether the answer gives the request back, completed.", RequestBack),
    ]


def _parameter(name: str, description: str, choices: type[Code], default: str | None = None) -> dict[str, Any]:
    schema = {"$ref": f"#/components/schemas/{choices.__name__}"} | ({"default": default} if default else {})
    return {"name": name, "in": "query", "description": description, "schema": schema}


_TAG_HEADERS = {
    "ETag": {"description": "Entity tag of the content.", "schema": {"type": "string", "maxLength": 100}},
    "Cache-Control": {"description": "How long to keep it.", "schema": {"type": "string", "maxLength": 100}},
}
_IF_NONE_MATCH = {
    "name": "If-None-Match",
    "in": "header",
    "description": "Entity tag of the version the caller has.",
    "schema": {"type": "string", "maxLength": 200},
}


def table_options(table: ReferenceTable) -> dict[str, Any]:
    """Describe a table."""
    content = {"application/json": {"schema": {"$ref": f"#/components/schemas/{table_name(table)}"}}}
    parameters = [_filter_parameter(one) for one in table.filters]
    if table.has_quantities:
        parameters.append(_parameter("units", "Units of the rows, each as printed in them.", UnitSystem, "us"))
    return {
        "operationId": table.operation_id,
        "summary": table.summary,
        "description": f"{table.description} Whole, or the rows that match every filter exactly.",
        "tags": ["tables"],
        "responses": {
            "200": {"description": "The rows.", "content": content, "headers": _TAG_HEADERS},
            "304": {"description": "The caller has this version already.", "headers": _TAG_HEADERS},
        }
        | problem_responses(405, 422),
        "parameters": [*parameters, _IF_NONE_MATCH],
    }


def _filter_parameter(one: Filter) -> dict[str, Any]:
    if one.choices is not None:
        return _parameter(one.name, one.description, one.choices)
    return {
        "name": one.name,
        "in": "query",
        "description": f"{one.description} A value that no row carries is refused with those that rows do carry.",
        "schema": {"type": "string", "maxLength": 200},
    }


def health_options(operation_id: str, state: type[msgspec.Struct], *problems: int) -> dict[str, Any]:
    """Describe a health check."""
    meaning = (state.__doc__ or "").rstrip(".")
    content = {"application/json": {"schema": {"$ref": f"#/components/schemas/{state.__name__}"}}}
    return {
        "operationId": operation_id,
        "summary": meaning,
        "description": f"{meaning}.",
        "tags": ["health"],
        "responses": problem_responses(405, *problems) | {"200": {"description": "Yes.", "content": content}},
    }
