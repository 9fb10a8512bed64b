"""What the contract says of each endpoint: its operation object of OpenAPI."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping, Sequence
from typing import Any

import msgspec

from ductrun.drawings.documents import CSV, WORKBOOK, pages_of
from ductrun.http.problems import KINDS, MEDIA_TYPE
from ductrun.http.representations import HTML, JSON, SVG
from ductrun.kit.telling import UnitSystem
from ductrun.settings import Settings
from ductrun.subjects import Operation
from ductrun.subjects.reference_tables import Filter, ReferenceTable
from ductrun.units import Code

_USUAL = Settings()
_SHORT_TEXT = {"type": "string", "maxLength": 100}


class AssumptionPolicy(Code):
    """What to do where a field was left out: state what was assumed, or refuse to assume."""

    STATE = "state"
    REFUSE = "refuse"


class RequestBack(Code):
    """How the request comes back with the answer, if asked for: with every default filled in."""

    COMPLETED = "completed"


class Page(Code):
    """Pages on which an answer may be read: the calculation sheet, the takeoff, and what the crew needs."""

    SHEET = "sheet"
    TAKEOFF = "takeoff"
    CREW = "crew"


def stem(operation: Operation[Any, Any, Any]) -> str:
    """Give the common beginning of an operation's schema names: FillRequest, FillResult, FillAnswer."""
    return operation.result.__name__.removesuffix("Result")


def subject_of(operation: Operation[Any, Any, Any]) -> str:
    """Give the subject of an operation, which is the folder it stands in."""
    return operation.assess.__module__.split(".")[2]


def table_name(table: ReferenceTable) -> str:
    """Give the schema name of a table: ConduitTable."""
    return f"{table.row.__name__.removesuffix('Row')}Table"


_AT_ANY_TIME = (401, 403, 503)  # of everything but the two of health: no key, or no room
_TOLD_WITH: dict[int, dict[str, Any]] = {
    405: {"headers": {"Allow": {"description": "The methods that the path takes.", "schema": _SHORT_TEXT}}},
    401: {"headers": {"WWW-Authenticate": {"description": "How to send a key.", "schema": _SHORT_TEXT}}},
}
_RETRY_AFTER = {
    "Retry-After": {
        "description": "With a 429 or a 503: after how many seconds, or from when, it is worth asking again.",
        "schema": _SHORT_TEXT,
    }
}


def problem_responses(*statuses: int) -> dict[str, dict[str, Any]]:
    """Give the documented problems of an operation."""
    content = {MEDIA_TYPE: {"schema": {"$ref": "#/components/schemas/Problem"}}}
    titles = {
        status: "; or: ".join(kind.title for kind in KINDS.values() if kind.status == status) for status in statuses
    }
    responses: dict[str, dict[str, Any]] = {
        str(status): {"description": f"{titles[status]}.", "content": content} | _TOLD_WITH.get(status, {})
        for status in statuses
    }
    if "503" in responses:
        responses["503"]["headers"] = _RETRY_AFTER
    rest = {"description": "Any other problem, also of a gateway before it.", "content": content}
    return responses | {"default": rest | {"headers": _RETRY_AFTER}}


def _post(
    operation_id: str,
    summary: str,
    description: str,
    body: dict[str, Any],
    answer: dict[str, Any],
    *,
    remedying: bool = True,
) -> dict[str, Any]:
    return {
        "operationId": operation_id,
        "summary": summary,
        "description": description,
        "tags": ["batches"],
        "responses": {"200": answer} | problem_responses(400, 405, 406, 408, 413, 415, 422, *_AT_ANY_TIME),
        "parameters": [*_asked(), *([_REMEDIES] if remedying else [])],
        "requestBody": {"required": True} | body,
    }


_LONGEST_DOCUMENT = 200_000_000  # characters: the sheet of a run grows with its answer
_DRAWN_OR_WRITTEN = {
    SVG: {
        "type": "string",
        "description": "A picture of the answer, 360 units wide, with a title and a description in words; no script, "
        "no reference to anything outside. It takes `units` and `assumptions` alone of the query.",
        "maxLength": 2_000_000,
    },
    HTML: {
        "type": "string",
        "description": "The calculation sheet, to read, print and hand in, with the drawing if there is one and with "
        "the working unless `working=false`; no script, no reference to anything outside. It does not take `request`.",
        "maxLength": _LONGEST_DOCUMENT,
    },
    CSV: {
        "type": "string",
        "description": "The lines of the takeoff, RFC 4180 with a header; a text that a spreadsheet would take for a "
        "formula has an apostrophe before it. It takes `units` and `assumptions` alone of the query.",
        "maxLength": _LONGEST_DOCUMENT,
    },
    WORKBOOK: {
        "type": "string",
        "format": "binary",
        "description": "The takeoff as a workbook: prices, hours and totals follow by formula from rates that may be "
        "filled in. It takes `units` and `assumptions` alone of the query.",
        "maxLength": _LONGEST_DOCUMENT,
    },
}


def calculation_options(
    operation: Operation[Any, Any, Any], media_types: Mapping[str, Collection[str]]
) -> dict[str, Any]:
    """Describe a calculation, whose answer is given as each of the media types by the Accept header; with which of the
    query parameters, stands beside each of them.
    """
    body = {
        "schema": {"$ref": f"#/components/schemas/{operation.request.__name__}"},
        "examples": {"complete": {"summary": "A complete request", "value": operation.example}},
    }
    schemas = {JSON: {"$ref": f"#/components/schemas/{stem(operation)}Answer"}} | _DRAWN_OR_WRITTEN
    answer = {media_type: {"schema": schemas[media_type]} for media_type in media_types}
    described = _post(
        operation.operation_id,
        operation.summary,
        operation.description,
        {"content": {"application/json": body}},
        {"description": "The answer, as the Accept header asks for it.", "content": answer} | _saved(answer),
        remedying=operation.remedying is not None,
    )
    if len(pages_of(operation)) > 1:
        described["parameters"].append(
            _parameter("page", "Which page of the answer as text/html; no other form takes it.", Page, "sheet")
        )
    described["parameters"] = [_taken_with(one, media_types) for one in described["parameters"]]
    return described | {"tags": [subject_of(operation)]}


def _saved(media_types: Collection[str]) -> dict[str, Any]:
    """Say that an answer which may be a file comes with a name for it."""
    named = {"description": "A name to save it by; of a takeoff alone.", "schema": _SHORT_TEXT}
    return {"headers": {"Content-Disposition": named}} if {CSV, WORKBOOK} & set(media_types) else {}


def _taken_with(parameter: dict[str, Any], media_types: Mapping[str, Collection[str]]) -> dict[str, Any]:
    """Say with which media types a parameter is taken, unless it is with all of them."""
    taken = [one for one, names in media_types.items() if parameter["name"] in names]
    return parameter if len(taken) == len(media_types) else parameter | {"x-media-types": taken}


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
        "question without an answer is that item's problem and no other's. A large answer comes in chunks. Beyond "
        "about a minute of items that take long the next of them are the problem `too_costly`.",
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


_REMEDIES = {
    "name": "remedies",
    "in": "query",
    "description": "Whether to add, where a limit is broken, what would keep it: the request changed in one thing, and "
    "tried; of a whole run alone.",
    "schema": {"type": "boolean", "default": False},
}


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
    "ETag": {"description": "Entity tag of the content.", "schema": _SHORT_TEXT},
    "Cache-Control": {"description": "How long to keep it.", "schema": _SHORT_TEXT},
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
        | problem_responses(405, 406, 422, *_AT_ANY_TIME),
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
        "security": [],
        "responses": problem_responses(405, 422, *problems) | {"200": {"description": "Yes.", "content": content}},
    }
