"""What batch and stream take and give, for the contract: a named object an operation, told apart by one-value tags.

An item is of its `operation`. What becomes of it is of its `type`, an answer or a problem; an answer is then of its
`operation` too, and a problem names it only where it could be read.
"""

from __future__ import annotations

from typing import Any

from pydantic import TypeAdapter

from ductrun.http.batch import MOST_ITEMS
from ductrun.http.descriptions import stem
from ductrun.http.items import LONGEST_ID, NAMED, OperationName

Schema = dict[str, Any]

_ID = {"type": "string", "maxLength": LONGEST_ID}
_STATUS = {"type": "integer", "description": "HTTP status the question would have had by itself."}
_COUNT = {"type": "integer", "minimum": 0}
_FAILED = "How many of the questions ended in a problem."


def schemas() -> dict[str, Schema]:
    """Give every schema that only batch and stream have."""
    return _of_batch() | _of_stream() | _of_operations()


def _of_batch() -> dict[str, Schema]:
    return {
        "OperationName": _names() | {"x-extensible-enum": True},
        "BatchRequest": _object(
            "Questions to answer in one go.",
            {"items": _items("BatchItem") | {"description": "The questions, of any calculations in any order."}},
            additionalProperties=False,
        ),
        "BatchItem": _of_each("Item", "One question of a batch, or one line of a stream."),
        "BatchAnswer": _object(
            "What became of each question, in order.",
            {
                "item_count": _COUNT | {"description": "How many questions the batch had."},
                "failed_count": _COUNT | {"description": _FAILED},
                "items": _items("BatchItemAnswer") | {"description": "What became of each, in the order asked."},
            },
        ),
        "BatchItemAnswer": _union(
            "What became of one question: its answer or its problem.",
            "type",
            {"answer": "ItemAnswer", "problem": "ItemProblem"},
        ),
        "ItemAnswer": _of_each("ItemAnswer", "The answer to one question of a batch.", answered=True),
        "ItemProblem": _problem(
            "A question of a batch that has no answer.", {}, "The problem; its pointers start at the item."
        ),
    }


def _names() -> Schema:
    names: Any = OperationName
    return TypeAdapter(names).json_schema()


def _of_stream() -> dict[str, Schema]:
    return {
        "StreamAnswerLine": _union(
            "One line of what a stream gives: the basis first, then an answer or a problem for each line that is not "
            "blank, in order, and the summary last; or, where the service ends it before, that it stopped.",
            "type",
            {
                "basis": "StreamBasis",
                "answer": "StreamAnswer",
                "problem": "StreamProblem",
                "summary": "StreamSummary",
                "stopped": "StreamStopped",
            },
            grows=True,
        ),
        "StreamBasis": _object(
            "The first line of a stream: what all its answers rest on.",
            {
                "type": _tag("basis"),
                "service_version": {"type": "string", "maxLength": 100, "description": "Version of the service."},
                "tables_version": {"type": "string", "maxLength": 100, "description": "Hash of all tables."},
            },
        ),
        "StreamAnswer": _of_each("StreamAnswer", "The answer to one line of a stream.", answered=True),
        "StreamProblem": _problem(
            "A line of a stream that has no answer.", _line(), "The problem; its pointers start at the line."
        ),
        "StreamSummary": _object(
            "The last line of a stream; an answer without it was cut off.",
            {
                "type": _tag("summary"),
                "item_count": _COUNT | {"description": "Lines that were answered, blank ones not counted."},
                "failed_count": _COUNT | {"description": _FAILED},
            },
        ),
        "StreamStopped": _object(
            "The last line of a stream that the service ended before its sender did: what was answered counts, and the "
            "lines after `line` can be sent again.",
            {
                "type": _tag("stopped"),
                "reason": {
                    "type": "string",
                    "enum": ["stopping", "idle"],
                    "x-extensible-enum": True,
                    "description": "`stopping`: this process is being stopped; `idle`: nothing came for too long.",
                },
                "line": {"type": "integer", "minimum": 0, "description": "Number of the last line that was looked at."},
                "item_count": _COUNT | {"description": "Lines that were answered, blank ones not counted."},
                "failed_count": _COUNT | {"description": _FAILED},
            },
        ),
    }


def _of_operations() -> dict[str, Schema]:
    found: dict[str, Schema] = {}
    for name, operation in NAMED.items():
        request = _reference(operation.request.__name__, f"The body of `POST /v1/{operation.name}`.")
        item = {
            "id": _ID | {"description": "Any text of the caller's, given back with the answer.", "examples": ["run-1"]},
            "operation": _tag(name),
            "request": request,
        }
        found[f"{stem(operation)}Item"] = _object(f"A question of {name}.", item, additionalProperties=False)
        for suffix, place in (("ItemAnswer", {}), ("StreamAnswer", _line())):
            found[f"{stem(operation)}{suffix}"] = _object(
                f"An answer of {name}.",
                {
                    "type": _tag("answer"),
                    **place,
                    "id": _ID | {"description": "Id of the question."},
                    "operation": _tag(name),
                    "status": _STATUS | {"minimum": 200, "maximum": 299},
                    "answer": _reference(f"{stem(operation)}Answer", f"The answer of `POST /v1/{operation.name}`."),
                },
            )
    return found


def _problem(description: str, place: dict[str, Schema], of_problem: str) -> Schema:
    return _object(
        description,
        {
            "type": _tag("problem"),
            **place,
            "id": _ID | {"description": "Id of the question; left out if it had none that could be read."},
            "operation": _reference("OperationName", "The calculation asked for; left out if it could not be read."),
            "status": _STATUS | {"minimum": 400, "maximum": 599},
            "problem": _reference("Problem", of_problem),
        },
        optional=("id", "operation"),
    )


def _line() -> dict[str, Schema]:
    return {
        "line": {"type": "integer", "minimum": 1, "description": "Number of the line, from 1, blank lines counted."}
    }


def _of_each(suffix: str, description: str, *, answered: bool = False) -> Schema:
    """Give the union of what each operation has; that of answers grows with the operations, of which one asks."""
    variants = {name: f"{stem(operation)}{suffix}" for name, operation in NAMED.items()}
    return _union(description, "operation", variants, grows=answered)


def _union(description: str, tag: str, variants: dict[str, str], *, grows: bool = False) -> Schema:
    places = {value: f"#/components/schemas/{name}" for value, name in variants.items()}
    return {
        "description": description,
        "discriminator": {"propertyName": tag, "mapping": places},
        "oneOf": [{"$ref": place} for place in places.values()],
    } | ({"x-extensible-enum": True} if grows else {})


def _object(description: str, members: dict[str, Schema], optional: tuple[str, ...] = (), **more: Any) -> Schema:
    return {
        "type": "object",
        "description": description,
        "properties": members,
        "required": [name for name in members if name not in optional],
        **more,
    }


def _items(name: str) -> Schema:
    return {"type": "array", "minItems": 1, "maxItems": MOST_ITEMS, "items": _reference(name)}


def _tag(value: str) -> Schema:
    return {"type": "string", "const": value, "description": f"Fixed text that says: {value.replace('_', ' ')}."}


def _reference(name: str, description: str = "") -> Schema:
    return {"$ref": f"#/components/schemas/{name}"} | ({"description": description} if description else {})
