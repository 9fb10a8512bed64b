"""The request as it was sent, as a table: no figure is converted or rounded, no name is changed."""

from __future__ import annotations

from collections.abc import Collection
from typing import Any

from msgspec import json

from ductrun.drawings.markup import Markup, table
from ductrun.drawings.readable import place_of


def sent_table(request: dict[str, Any], withheld: Collection[str] = ()) -> Markup:
    """Give every member of a request in its order; an object of plain members stands in one row.

    Of members `withheld` it says that they were sent, and not what.
    """
    shown = {name: "sent, and not shown here" if name in withheld else value for name, value in request.items()}
    return table(("Member", "As sent"), _rows(shown, "#"), kind="sent")


def _rows(value: Any, pointer: str) -> list[tuple[str, str]]:
    if pointer != "#" and _is_plain(value):
        return [(place_of(pointer), _text(value))]
    members = value.items() if isinstance(value, dict) else enumerate(value)
    return [row for name, member in members for row in _rows(member, f"{pointer}/{_escaped(name)}")]


def _escaped(name: Any) -> str:
    return str(name).replace("~", "~0").replace("/", "~1")


def _is_plain(value: Any) -> bool:
    """Say whether a value is read in one line: it holds nothing deeper than a quantity."""
    if isinstance(value, dict):
        return all(_is_leaf(member) for member in value.values())
    if isinstance(value, list):
        return all(_is_leaf(member) for member in value)
    return True


def _is_leaf(value: Any) -> bool:
    return not isinstance(value, (dict, list)) or _is_quantity(value)


def _is_quantity(value: Any) -> bool:
    return isinstance(value, dict) and value.keys() == {"value", "unit"}


def _text(value: Any) -> str:
    if _is_quantity(value):
        return f"{_text(value['value'])} {value['unit']}"
    if isinstance(value, dict):
        return "; ".join([f"{name} {_text(member)}" for name, member in value.items()]) or "{}"
    if isinstance(value, list):
        return ", ".join(map(_text, value)) or "[]"
    return value if isinstance(value, str) else json.encode(value).decode()
