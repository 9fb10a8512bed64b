"""What the clients need to know of the contract's schemas, read once: quantities, unions and their tags, operations."""

from __future__ import annotations

import json
import re
from functools import cached_property
from pathlib import Path
from typing import Any, NamedTuple

REPOSITORY = Path(__file__).resolve().parents[2]
CONTRACT = REPOSITORY / "openapi" / "v1.json"
JSON = "application/json"


class Asked(NamedTuple):
    """One operation as a client calls it."""

    name: str
    method: str
    path: str
    described: dict[str, Any]
    request: str | None
    answer: str | None

    @property
    def query(self) -> list[dict[str, Any]]:
        """What is asked beside the question where its answer is in JSON."""
        return self.taken_with(JSON)

    def taken_with(self, *media_types: str) -> list[dict[str, Any]]:
        """Give the query parameters that are taken with one of the media types of the answer."""
        return [
            one
            for one in self.described.get("parameters", [])
            if one["in"] == "query" and not set(media_types).isdisjoint(one.get("x-media-types", media_types))
        ]

    @property
    def documents(self) -> list[str]:
        """The media types, beside JSON, in which the answer is given."""
        return [one for one in self.described["responses"]["200"]["content"] if one != JSON]


class Contract:
    """The contract, with what stands in it only between the lines."""

    def __init__(self, document: dict[str, Any] | None = None) -> None:
        self.document = document or json.loads(CONTRACT.read_text(encoding="utf-8"))
        self.schemas: dict[str, Any] = self.document["components"]["schemas"]

    def is_quantity(self, name: str) -> bool:
        return set(self.schemas[name].get("properties", ())) == {"value", "unit"}

    def is_nested(self, name: str) -> bool:
        """Whether a union holds other unions, told apart by another tag than its own."""
        return any("oneOf" in self.schemas[place] for place in variants(self.schemas[name]).values())

    @cached_property
    def tags(self) -> dict[str, tuple[str, str]]:
        """The tag of every object of a union: its member and its text."""
        found: dict[str, tuple[str, str]] = {}
        for schema in self.schemas.values():
            for value, name in variants(schema).items():
                if "oneOf" not in self.schemas[name]:
                    found[name] = (schema["discriminator"]["propertyName"], value)
        return found

    @property
    def untyped(self) -> list[tuple[str, str]]:
        """Every member of which the contract says no more than that it is an object, as name and member."""
        return [
            (name, member)
            for name, schema in self.schemas.items()
            for member, described in schema.get("properties", {}).items()
            if described.get("type") == "object" and "properties" not in described
        ]

    @cached_property
    def operations(self) -> list[Asked]:
        """Every operation that takes one question; the stream is written by hand in each client."""
        found = []
        for path, methods in self.document["paths"].items():
            for method, described in methods.items():
                if not path.endswith("/stream"):
                    name = (
                        path.removeprefix("/v1/").replace("-", "_").replace("/", "_")
                        if method == "post"
                        else described["operationId"]
                    )
                    body = described.get("requestBody", {}).get("content", {}).get(JSON)
                    answer = described["responses"]["200"]["content"].get(JSON)
                    found.append(Asked(name, method, path, described, _name(body), _name(answer)))
        return found


def variants(schema: dict[str, Any]) -> dict[str, str]:
    """Give the schemas of a union by their tags; nothing of what is no union."""
    if "oneOf" not in schema:
        return {}
    return {value: named(place) for value, place in schema["discriminator"]["mapping"].items()}


def named(place: str) -> str:
    """Give the name a reference ends with."""
    return place.rsplit("/", 1)[1]


def in_capitals(name: str) -> str:
    """Write TradeSize as TRADE_SIZE."""
    return re.sub(r"(?<=[a-z0-9])(?=[A-Z])", "_", name).upper()


def _name(content: dict[str, Any] | None) -> str | None:
    return named(content["schema"]["$ref"]) if content else None
