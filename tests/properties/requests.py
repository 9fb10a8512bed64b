"""Requests made of an operation's example: members left out, enums and unions turned, quantities scaled."""

from __future__ import annotations

import copy
import json
from collections.abc import Iterator, Sequence
from random import Random
from typing import Any

from ductrun.subjects import OPERATIONS
from hypothesis import strategies as st

from tests.asking import EXAMPLES

# one drawn number a body: drawing each of the thousand choices a body is made by takes longer than the answer does
RANDOMS = st.integers(min_value=0, max_value=2**32 - 1).map(Random)
_USUAL_SIZE = 1_500  # bytes of an example
SCHEMAS: dict[str, dict[str, Any]] = {operation.name: operation.request.model_json_schema() for operation in OPERATIONS}

_OF_A_RUN = (
    "bank",
    "tiers",
    "length",
    "sections",
    "radius",
    "cover",
    "circuits",
    "cables",
    "same_as",
    "name",
    "material",
    "mass_per_length",
)
# members that may be left out, but not all of them: the answer needs one of several
NEEDED: dict[str, tuple[str, ...]] = {
    "pull-tension": ("mass_per_length",),
    "pull-plan": ("mass_per_length",),
    "expansion": ("length", "straight_runs", "material"),
    "trench": ("cover", "tiers"),
    "spacers": ("tiers",),
    "encasement": ("tiers",),
    "flotation": ("tiers",),
    "ampacity": (
        "cover",
        "material",
        "conductor",
        "size",
        "layers",
        "tiers",
        "horizontal_separation",
        "vertical_separation",
    ),
    "voltage-drop": ("current", "material"),
    "earth-load": ("conduit", "tiers"),
    "pull-box": ("conduit",),
    "duct-run": _OF_A_RUN,
    "duct-run/compare": _OF_A_RUN,
}
KEPT_BESIDE = {"wall": "conduit"}  # where one is, the other is kept: no box has an answer without all its raceways


def resolved(node: dict[str, Any], root: dict[str, Any]) -> dict[str, Any]:
    """Follow references; what stands beside one is kept."""
    while "$ref" in node:
        node = root["$defs"][node["$ref"].rsplit("/", 1)[1]] | {k: v for k, v in node.items() if k != "$ref"}
    return node


def variants(node: dict[str, Any], root: dict[str, Any]) -> list[dict[str, Any]]:
    """Give every schema a value may have: the members of a union, with its default, or the schema itself."""
    node = resolved(node, root)
    if "oneOf" not in node:
        return [node]
    default = {"x-default": node["x-default"]} if "x-default" in node else {}
    return [one | default for member in node["oneOf"] for one in variants(member, root)]


def places(root: dict[str, Any], pointer: str) -> list[dict[str, Any]]:
    """Give the schemas of the member a pointer names, none if it names no member of the request."""
    assert pointer.startswith("#"), pointer
    nodes = variants(root, root)
    for step in pointer[2:].split("/") if pointer != "#" else []:
        nodes = [found for node in nodes for found in _step(node, step.replace("~1", "/").replace("~0", "~"), root)]
    return nodes


def _step(node: dict[str, Any], step: str, root: dict[str, Any]) -> list[dict[str, Any]]:
    if step in node.get("properties", {}):
        return variants(node["properties"][step], root)
    return variants(node["items"], root) if step.isdigit() and "items" in node else []


def shortest(operation: str) -> Any:
    """Give the example of an operation without any member that may be left out and is not needed for an answer."""
    root = SCHEMAS[operation]
    return _shortened(EXAMPLES[operation], [resolved(root, root)], root, NEEDED.get(operation, ()))


def _shortened(value: Any, nodes: list[dict[str, Any]], root: dict[str, Any], needed: tuple[str, ...]) -> Any:
    if isinstance(value, list):
        items = [one for node in nodes if "items" in node for one in variants(node["items"], root)]
        return [_shortened(item, items, root, needed) for item in value]
    if not isinstance(value, dict):
        return value
    [node] = [one for one in nodes if set(value) <= set(one.get("properties", {}))][:1]
    kept = [name for name in value if name in node.get("required", ()) or name in needed]
    return {name: _shortened(value[name], variants(node["properties"][name], root), root, needed) for name in kept}


def varied(operation: str, random: Random) -> Any:
    """Give the example of an operation, changed at random: it may have no answer then."""
    root = SCHEMAS[operation]
    body = copy.deepcopy(EXAMPLES[operation])
    left_out, changed = random.choice([0.0, 0.2, 0.6, 1.0]), random.choice([0.0, 0.1, 0.3])
    changed *= min(1.0, _USUAL_SIZE / len(json.dumps(body)))  # a large one has as many changes as a small one
    kept = NEEDED.get(operation, ()) if len(json.dumps(body)) > _USUAL_SIZE and random.random() < 0.7 else ()
    return _varied(body, [resolved(root, root)], root, random, left_out, changed, kept)


def _varied(
    value: Any,
    nodes: list[dict[str, Any]],
    root: dict[str, Any],
    random: Random,
    left_out: float,
    changed: float,
    needed: Sequence[str] = (),
) -> Any:
    if isinstance(value, list):
        items = [one for node in nodes if "items" in node for one in variants(node["items"], root)]
        made = [_varied(item, items, root, random, left_out, changed, needed) for item in value]
        return made + copy.deepcopy(made[: random.randrange(3)]) if random.random() < changed else made
    if isinstance(value, dict) and set(value) == {"value", "unit"}:
        factor = random.choice([0.5, 0.9, 1.1, 2.0, 3.0]) if random.random() < changed else 1.0
        return {"value": value["value"] * factor, "unit": value["unit"]}
    if isinstance(value, dict):
        return _varied_object(value, nodes, root, random, left_out, changed, needed)
    members = [member for node in nodes for member in node.get("enum", ())]
    if members and random.random() < changed:
        return random.choice(members)
    return value


def _varied_object(
    value: dict[str, Any],
    nodes: list[dict[str, Any]],
    root: dict[str, Any],
    random: Random,
    left_out: float,
    changed: float,
    needed: Sequence[str],
) -> Any:
    fitting = [node for node in nodes if set(value) <= set(node.get("properties", {}))] or nodes
    if len(nodes) > 1 and random.random() < changed:
        return made(random.choice(nodes), root, random)
    required = {*fitting[0].get("required", ()), *(kept for name, kept in KEPT_BESIDE.items() if name in value)}
    kept = {
        name: one for name, one in value.items() if name in required or name in needed or random.random() >= left_out
    }
    absent = [name for name in fitting[0].get("properties", {}) if name not in value]
    for name in absent:
        if random.random() < changed / 4:
            kept[name] = made(random.choice(variants(fitting[0]["properties"][name], root)), root, random)
    return {
        name: _varied(one, variants(fitting[0]["properties"][name], root), root, random, left_out, changed, needed)
        if name in fitting[0].get("properties", {})
        else one
        for name, one in kept.items()
    }


def made(node: dict[str, Any], root: dict[str, Any], random: Random) -> Any:
    """Make a value of a schema out of the examples and bounds it states."""
    node = resolved(node, root)
    if "const" in node:
        return node["const"]
    if "enum" in node:
        return random.choice(node["enum"])
    if "oneOf" in node and not node.get("examples"):
        return made(random.choice(node["oneOf"]), root, random)
    if node.get("examples"):
        return copy.deepcopy(random.choice(node["examples"]))
    match node["type"]:
        case "object":
            required = node.get("required", ())
            members = {n: one for n, one in node["properties"].items() if n in required or random.random() < 0.5}
            return {name: made(one, root, random) for name, one in members.items()}
        case "array":
            return [made(node["items"], root, random) for _ in range(max(1, node.get("minItems", 1)))]
        case "boolean":
            return random.random() < 0.5
        case _:
            return node.get("minimum", 1)


def figures(value: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Give every leaf of a document with its path."""
    if isinstance(value, dict):
        for name, one in value.items():
            yield from figures(one, f"{path}/{name}")
    elif isinstance(value, list):
        for index, one in enumerate(value):
            yield from figures(one, f"{path}/{index}")
    else:
        yield path, value


def written(body: Any) -> str:
    """Write a body for a message."""
    return json.dumps(body)


def at_the_edges(operation: str, random: Random) -> Any:
    """Give a varied request of an operation, some of its figures at the least or the greatest that may be asked."""
    root = SCHEMAS[operation]
    return _pushed(varied(operation, random), [resolved(root, root)], root, random, random.choice([0.1, 0.5, 0.9]))


def _pushed(value: Any, nodes: list[dict[str, Any]], root: dict[str, Any], random: Random, share: float) -> Any:
    if isinstance(value, list):
        items = [one for node in nodes if "items" in node for one in variants(node["items"], root)]
        return [_pushed(item, items, root, random, share) for item in value]
    if isinstance(value, dict) and set(value) == {"value", "unit"}:
        edges = [node[edge] for node in nodes for edge in ("x-minimum", "x-maximum") if edge in node]
        return dict(random.choice(edges)) if edges and random.random() < share else value
    if isinstance(value, dict):
        fitting = [node for node in nodes if set(value) <= set(node.get("properties", {}))]
        return {
            name: _pushed(one, variants(fitting[0]["properties"][name], root), root, random, share) if fitting else one
            for name, one in value.items()
        }
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return value
    edges = [node[edge] for node in nodes for edge in ("minimum", "maximum") if edge in node]
    return random.choice(edges) if edges and random.random() < share else value
