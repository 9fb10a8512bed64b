"""What to give at a place of a request, in a sentence made of what the JSON schema says there."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

Schema = dict[str, Any]

MUST_HAVE = "x-must-have"  # of a choice of objects: what each must have beside its kind
_LONGEST_LIST = 40  # of values in a sentence


def members_of(node: Schema) -> str:
    """Say which members an object takes."""
    members = sorted(node.get("properties", {}))
    return f"There are: {_listed(members)}." if 0 < len(members) <= _LONGEST_LIST else "Leave it out."


def wanted_at(node: Schema, around: Schema) -> str:
    """Say what to give at a node of a schema; `around` is the node of the object or array it stands in."""
    if MUST_HAVE in node:
        return f"Give an object whose kind is one of: {_listed(_kinds(node[MUST_HAVE]))}."
    if "const" in node:
        return f"Give {node['const']}."
    if "enum" in node:
        values = [str(value) for value in node["enum"]]
        return f"Give one of: {_listed(values)}." if len(values) <= _LONGEST_LIST else "Give an allowed value."
    if "x-minimum" in node:
        return f"Give an object of value and unit, from {_between(node)}."
    kind = node.get("type")
    if kind == "number" and "x-minimum" in around:
        return f"Give a number, with its unit from {_between(around)}."
    if kind in ("number", "integer"):
        return f"Give a {'whole ' if kind == 'integer' else ''}number{_bounds(node, 'minimum', 'maximum')}."
    if kind == "string":
        return f"Give a text{_bounds(node, 'minLength', 'maxLength', ' characters long')}."
    if kind == "array":
        return f"Give an array{_bounds(node, 'minItems', 'maxItems', ' items long')}."
    if kind == "boolean":
        return "Give true or false."
    return _object(node)


def _object(node: Schema) -> str:
    """Say what an object is made of: first what it must have, then what it may have."""
    required = node.get("required", [])
    members = [name for name in node.get("properties", {}) if name not in required]
    may = f"it may have: {_listed(members)}" if 0 < len(members) <= _LONGEST_LIST else ""
    must = f"Give an object of: {_listed(required)}" if required else "Give an object"
    return f"{must}{'; ' if may else ''}{may}."


def _kinds(members: dict[str, list[str]]) -> list[str]:
    return [f"{kind} (with {' and '.join(members[kind])})" if members[kind] else kind for kind in sorted(members)]


def _listed(values: Sequence[str]) -> str:
    return ", ".join(values)


def _between(node: Schema) -> str:
    low, high = node["x-minimum"], node["x-maximum"]
    return f"{_figure(low['value'])} {low['unit']} to {_figure(high['value'])} {high['unit']}"


def _bounds(node: Schema, least: str, most: str, unit: str = "") -> str:
    if least in node and most in node:
        return f" from {_figure(node[least])} to {_figure(node[most])}{unit}"
    return f" up to {_figure(node[most])}{unit}" if most in node else ""


def _figure(value: float) -> str:
    return f"{value:,.10g}"
