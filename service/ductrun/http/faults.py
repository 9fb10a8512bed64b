"""Validation faults as a caller needs them: the pointer of the field, a stable code, a sentence, what is allowed.

The pointer follows the JSON schema of the request, because the validator's own location also names the chosen variant
of a union, which is no part of the body; the schema also knows what would be allowed at the place of the fault.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from typing import Any

from pydantic import BaseModel, ValidationError

from ductrun.http.problems import ProblemError
from ductrun.kit.worksheet import Fault

Schema = dict[str, Any]

_SENTENCES = {
    "missing": "This field is required.",
    "extra_forbidden": "There is no such field here.",
    "unexpected_keyword_argument": "There is no such field here.",
    "model_type": "An object is expected here.",
    "dataclass_type": "An object of value and unit is expected here: a bare number has no unit.",
    "model_attributes_type": "An object is expected here.",
    "union_tag_not_found": "The object must say its kind.",
    "union_tag_invalid": "There is no such kind here.",
    "float_type": "A number is expected here, not a text or true or false.",
    "int_type": "A whole number is expected here, not a text or true or false.",
    "int_from_float": "A whole number is expected here.",
    "finite_number": "The number must be finite.",
    "dict_type": "An object is expected here.",
    "bool_type": "true or false is expected here.",
    "list_type": "An array is expected here.",
    "enum": "This is not one of the allowed values.",
    "string_type": "A text is expected here.",
    "literal_error": "This is not the allowed value.",
}
_CODES = {
    "unexpected_keyword_argument": "extra_forbidden",
    "dataclass_type": "model_type",
    "model_attributes_type": "model_type",
    "value_error": "below_absolute_zero",  # the only validator of our own that raises a plain ValueError
}


class RequestSchema:
    """The JSON schema of one request model, walked along the location of a fault."""

    def __init__(self, schema: Schema) -> None:
        """Keep the schema with its definitions."""
        self.root = schema
        self.definitions: Schema = schema.get("$defs", {})

    def _resolve(self, node: Schema) -> Schema:
        while "$ref" in node:
            node = self.definitions[node["$ref"].rsplit("/", 1)[1]] | {k: v for k, v in node.items() if k != "$ref"}
        return node

    def follow(self, location: Iterable[int | str]) -> tuple[str, Schema]:
        """Give the JSON Pointer of a validator's location and the schema node that stands there."""
        pointer, node = "#", self._resolve(self.root)
        for item in location:
            if "discriminator" in node:
                mapping = node["discriminator"]["mapping"]
                if item in mapping:
                    node = self._resolve({"$ref": mapping[item]})
                    continue
            pointer += "/" + str(item).replace("~", "~0").replace("/", "~1")
            child = node.get("items", {}) if isinstance(item, int) else node.get("properties", {}).get(item, {})
            node = self._resolve(child)
        return pointer, node


def _allowed(code: str, pointer_node: Schema, parent: Schema) -> Any:
    if code == "extra_forbidden":
        return sorted(parent.get("properties", {}))
    if code in {"union_tag_not_found", "union_tag_invalid"}:
        return sorted(pointer_node.get("discriminator", {}).get("mapping", {}))
    if "enum" in pointer_node:
        return pointer_node["enum"]
    if "const" in pointer_node:
        return [pointer_node["const"]]
    bounds = {
        name: pointer_node[key]
        for key, name in (
            ("minimum", "minimum"),
            ("maximum", "maximum"),
            ("x-minimum", "minimum"),
            ("x-maximum", "maximum"),
            ("minItems", "minimum_items"),
            ("maxItems", "maximum_items"),
        )
        if key in pointer_node
    }
    return bounds or None


@cache
def _schema_of(model: type[BaseModel]) -> RequestSchema:
    return RequestSchema(model.model_json_schema())


def errors_of(error: ValidationError, model: type[BaseModel]) -> list[ProblemError]:
    """Give every fault of a validation, without a trace of what was sent.

    The schema of the model is made at its first fault: most services never see one of most models.
    """
    schema = _schema_of(model)
    found: list[ProblemError] = []
    for fault in error.errors(include_url=False, include_input=False):
        kind = fault["type"]
        code = _CODES.get(kind, kind)
        pointer, node = schema.follow(fault["loc"])
        _, parent = schema.follow(fault["loc"][:-1])
        allowed = _allowed(code, node, parent)
        message = _SENTENCES.get(kind) or fault["msg"].removeprefix("Value error, ")
        if kind in {"too_short", "too_long"}:
            bounds = fault["ctx"]
            message = (
                f"At least {bounds['min_length']} must be given here."
                if kind == "too_short"
                else f"No more than {bounds['max_length']} can be given here."
            )
        if kind.startswith("union_tag"):
            pointer += "/kind"
        elif kind in {"quantity_out_of_range", "value_error"}:
            pointer += "/value"
        if isinstance(allowed, list) and allowed and len(allowed) <= 40:
            message += f" Allowed: {', '.join(map(str, allowed))}."
        found.append(_error(code, message, pointer, allowed))
    return found


def errors_of_faults(faults: Iterable[Fault]) -> list[ProblemError]:
    """Give the faults of a question without an answer."""
    return [_error(fault.code, fault.message, fault.pointer, fault.allowed) for fault in faults]


def _error(code: str, message: str, pointer: str, allowed: Any) -> ProblemError:
    # no part of a body may make a problem longer than its contract allows
    if allowed is None:
        return ProblemError(code=code, message=message[:2000], pointer=_short(pointer))
    return ProblemError(code=code, message=message[:2000], pointer=_short(pointer), allowed=allowed)


def _short(pointer: str) -> str:
    return pointer if len(pointer) <= 500 else "#"
