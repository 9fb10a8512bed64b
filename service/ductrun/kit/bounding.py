"""The most that a body of a form can hold, known from the form: what holds more is refused before anything is built.

A body of a mebibyte can hold a third of a million empty arrays, each of which takes a hundred times its two bytes once
it is built. No request of this service needs so many, and counting costs next to nothing: each value but the first
follows an opening bracket, an opening brace or a comma.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any

from msgspec import DecodeError, Raw, json
from pydantic import BaseModel

from ductrun.kit.strict_json import NotStrictError

SMALL = 4_096  # bytes up to which a body that cannot be used is told its faults at once
LARGE = 65_536  # bytes from which a body is counted first
MOST_VALUES = 20_000  # of any request: forms within forms have room for millions, which nobody has to say
_PIECE = 1_048_576  # bytes
_MARKS = (b"[", b"{", b",")
_read_over = json.Decoder(Raw).decode


class TooManyValuesError(Exception):
    """A large body with more values than are taken of its kind; carries that number."""

    def __init__(self, most: int) -> None:
        """Keep the most there can be."""
        super().__init__("The request has more values than are taken, its members and items all counted.")
        self.most = most


class TooCostlyError(Exception):
    """A request that asks for more work than is done for one; says what to do."""


def check_values(form: type[BaseModel], body: bytes) -> None:
    """Refuse a body with more values than the form can hold."""
    check_marks(body, most_values(form))


def check_marks(body: bytes, most: int) -> None:
    """Refuse a body with more values than `most`, or say first that it is no JSON; nothing is built of it."""
    if sum(map(body.count, _MARKS)) > most:
        check_syntax(body)
        raise TooManyValuesError(most)


def marks_by_turns(body: bytes) -> Iterator[int]:
    """Count the values of a very large body, a piece at a time."""
    for start in range(0, len(body), _PIECE):
        yield sum(body.count(mark, start, start + _PIECE) for mark in _MARKS)


def check_syntax(body: bytes) -> None:
    """Refuse a large body that is not JSON or nested too deeply, without building anything of it."""
    try:
        _read_over(body)
    except RecursionError:
        raise NotStrictError("too_deep", "The body is nested too deeply.") from None
    except (DecodeError, UnicodeDecodeError):
        raise NotStrictError("malformed_json", "The body is not valid JSON.") from None


def most_values(form: Any) -> int:
    """Count the openings and commas of the largest body that is taken; a text may be of commas alone."""
    return min(_most_values(form), MOST_VALUES)


@cache
def _most_values(form: type[BaseModel]) -> int:
    schema = form.model_json_schema()
    definitions = schema.get("$defs", {})

    @cache
    def most_of(name: str) -> int:
        return most_in(definitions[name])

    def most_in(node: dict[str, Any]) -> int:
        if "$ref" in node:
            return most_of(node["$ref"].rpartition("/")[2])
        choice = [*node.get("anyOf", ()), *node.get("oneOf", ()), *node.get("allOf", ())]
        if choice:
            return max(map(most_in, choice))
        if "properties" in node:
            return sum(map(most_in, node["properties"].values())) + len(node["properties"])
        if "items" in node:
            return int(node["maxItems"]) * (most_in(node["items"]) + 1)
        if "enum" in node or "const" in node:
            return max(sum(map(str(value).count, "[{,")) for value in node.get("enum", [node.get("const")]))
        return int(node["maxLength"]) if node.get("type") == "string" else 0

    return most_in(schema) + 1
