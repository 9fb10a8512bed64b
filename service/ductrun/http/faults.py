"""Validation faults as a caller needs them: the pointer of the member, a code and a sentence of our own, what is taken.

The pointer follows the JSON schema of the request, because the validator's own location also names the chosen variant
of a union, which is no part of the body; the schema also knows what would be taken at the place of the fault.
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import islice
from typing import Any, Final, NamedTuple

from msgspec import UNSET, UnsetType, structs
from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from ductrun.http.problems import MOST_ERRORS, MOST_TAKEN_VALUES, Fault
from ductrun.http.suggestions import probably_meant
from ductrun.http.wanted import MUST_HAVE, members_of, wanted_at
from ductrun.kit import worksheet
from ductrun.units import AnyQuantity

Schema = dict[str, Any]

CODES: Final = {  # by the code of the validator, which never leaves the service
    "missing": "missing",
    "extra_forbidden": "unknown_member",
    "unexpected_keyword_argument": "unknown_member",
    "union_tag_not_found": "kind_missing",
    "union_tag_invalid": "unknown_kind",
    "enum": "not_allowed",
    "literal_error": "not_allowed",
    "int_from_float": "not_an_integer",
    "greater_than": "out_of_range",
    "greater_than_equal": "out_of_range",
    "less_than": "out_of_range",
    "less_than_equal": "out_of_range",
    "finite_number": "out_of_range",
    "quantity_out_of_range": "out_of_range",
    "value_error": "out_of_range",  # below absolute zero, which no bound of a temperature is
    "too_short": "too_few",
    "too_long": "too_many",
    "string_too_short": "too_short",
    "string_too_long": "too_long",
    "control_character": "control_character",
} | dict.fromkeys(
    (
        *("model_type", "model_attributes_type", "dataclass_type", "dict_type", "list_type"),
        *("float_type", "int_type", "bool_type", "string_type"),
    ),
    "wrong_type",
)
SENTENCES = {
    "missing": "This member is required.",
    "unknown_member": "There is no such member here.",
    "wrong_type": "This is of another type than the one taken here.",
    "not_an_integer": "A whole number is written without a point or an exponent.",
    "not_allowed": "This is none of the values taken here.",
    "kind_missing": "The object must say its kind.",
    "unknown_kind": "There is no such kind here.",
    "out_of_range": "This is out of range.",
    "too_few": "These are too few.",
    "too_many": "These are too many.",
    "too_short": "This text is too short.",
    "too_long": "This text is too long.",
    "control_character": "A text here holds no characters that control a screen or turn the direction of writing.",
}
_SIZES = {  # where the schema keeps the bounds that a fault of size names
    "too_few": ("minItems", "maxItems"),
    "too_many": ("minItems", "maxItems"),
    "too_short": ("minLength", "maxLength"),
    "too_long": ("minLength", "maxLength"),
}
_MOST_SUGGESTIONS = 20  # of one problem: a suggestion takes longer than a fault
_LONGEST_NAME = 100


class Place(NamedTuple):
    """Where a fault lies: its pointer and name, what the schema says there and of the object around it."""

    pointer: str
    name: int | str
    node: Schema
    around: Schema


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

    def _with_kinds(self, node: Schema) -> Schema:
        """Give a node with what each object of it must have, if it is a choice of objects."""
        if "discriminator" not in node:
            return node
        kinds = {
            kind: [name for name in self._resolve({"$ref": place}).get("required", []) if name != "kind"]
            for kind, place in node["discriminator"]["mapping"].items()
        }
        return node | {MUST_HAVE: kinds}

    def follow(self, location: Iterable[int | str]) -> Place:
        """Give the place of a validator's location; that of a member whose name is overlong is its object."""
        place = Place("#", "", self._resolve(self.root), {})
        for item in location:
            pointer, _, node, _ = place
            if "discriminator" in node:
                mapping = node["discriminator"]["mapping"]
                if item in mapping:
                    place = place._replace(node=self._resolve({"$ref": mapping[item]}))
                    continue
            name = str(item)
            if len(name) <= _LONGEST_NAME:
                pointer += "/" + name.replace("~", "~0").replace("/", "~1")
            child = node.get("items", {}) if isinstance(item, int) else node.get("properties", {}).get(item, {})
            place = Place(pointer, item, self._resolve(child), node)
        return place._replace(node=self._with_kinds(place.node))


_SCHEMAS: dict[type[BaseModel], RequestSchema] = {}


def is_told_before(model: type[BaseModel]) -> bool:
    """Tell whether a fault of a model was told before: the first takes a third of a second where the model is large."""
    return model in _SCHEMAS


def _schema_of(model: type[BaseModel]) -> RequestSchema:
    if model not in _SCHEMAS:
        _SCHEMAS[model] = RequestSchema(model.model_json_schema())
    return _SCHEMAS[model]


def errors_of(error: ValidationError, model: type[BaseModel]) -> list[Fault]:
    """Give the faults of a validation, as many as are told, without a trace of the values that were sent.

    The schema of the model is made at its first fault: most services never see one of most models.
    """
    schema = _schema_of(model)
    found = error.errors(include_url=False)
    return _with_few_values(
        _error_of(fault, schema.follow(fault["loc"]), suggest=number < _MOST_SUGGESTIONS)
        for number, fault in enumerate(found[:MOST_ERRORS])
    )


def _with_few_values(faults: Iterable[Fault]) -> list[Fault]:
    """Give faults without the values that would be taken where those before them have told enough."""
    told, values = [], 0
    for fault in faults:
        values += len(fault.allowed_values or ())
        told.append(fault if values <= MOST_TAKEN_VALUES else structs.replace(fault, allowed_values=UNSET))
    return told


def _error_of(fault: ErrorDetails, place: Place, *, suggest: bool) -> Fault:
    code = _code_of(fault)
    values = _values_at(code, place)
    given = _given_in(fault, code, place)
    suggestion = probably_meant(given, values) if suggest and values and given is not None else None
    meant = f"Probably {suggestion} is meant." if suggestion else ""
    wanted = members_of(place.around) if code == "unknown_member" else wanted_at(place.node, place.around)
    sentences = (SENTENCES[code], meant, wanted)
    minimum, maximum = _bounds_at(code, place)
    return Fault(
        code,
        " ".join(filter(None, sentences))[:2000],
        place.pointer + _deeper(code, place),
        minimum=minimum,
        maximum=maximum,
        allowed_values=values or UNSET,
        suggestion=suggestion or UNSET,
    )


def _code_of(fault: ErrorDetails) -> str:
    kind, given = fault["type"], fault["input"]
    if kind == "int_type" and isinstance(given, float):
        return "not_an_integer"
    if kind in ("enum", "literal_error") and not isinstance(given, str):
        return "wrong_type"
    return CODES.get(kind, "not_allowed")


def _given_in(fault: ErrorDetails, code: str, place: Place) -> Any:
    """Give what was sent where one of some values is taken: the name of a member, a kind, or the value itself."""
    if code == "unknown_member":
        return place.name
    if code == "unknown_kind":
        return fault["ctx"]["tag"]
    return None if code in ("missing", "kind_missing") else fault["input"]


def _deeper(code: str, place: Place) -> str:
    """Give the rest of a pointer, where the validator names the object and means its kind or its value."""
    if code in ("kind_missing", "unknown_kind"):
        return "/kind"
    return "/value" if code == "out_of_range" and "x-minimum" in place.node else ""


def _values_at(code: str, place: Place) -> list[str]:
    node = place.node
    if code == "unknown_member":
        return sorted(place.around.get("properties", {}))
    if code in ("kind_missing", "unknown_kind"):
        return sorted(node["discriminator"]["mapping"])
    return [str(value) for value in node.get("enum", [node["const"]] if "const" in node else [])]


def _bounds_at(code: str, place: Place) -> tuple[AnyQuantity | UnsetType, AnyQuantity | UnsetType]:
    name, node = place.name, place.node
    if name == "value" and "x-minimum" in place.around:
        node = place.around
    if "x-minimum" in node:
        return AnyQuantity(**node["x-minimum"]), AnyQuantity(**node["x-maximum"])
    keys = _SIZES.get(code) or (("minimum", "maximum") if node.get("type") in ("integer", "number") else ())
    unit = "percent" if str(name).endswith("_percent") else "1"
    least, most = (AnyQuantity(node[key], unit) if key in node else UNSET for key in keys or ("", ""))
    return least, most


def errors_of_faults(faults: Iterable[worksheet.Fault]) -> list[Fault]:
    """Give the faults of a question without an answer, as many as are told."""
    return _with_few_values(
        Fault(
            fault.code,
            fault.message[:2000],
            fault.pointer,
            minimum=UNSET if fault.minimum is None else fault.minimum,
            maximum=UNSET if fault.maximum is None else fault.maximum,
            allowed_values=list(fault.allowed_values) or UNSET,
        )
        for fault in islice(faults, MOST_ERRORS)
    )
