"""Write the models of the Python client: a record for every object of the contract, typed to its last member."""

from __future__ import annotations

import keyword
import re
import textwrap
from collections.abc import Iterator
from typing import Any

from ductrun.units import UNIT_CODES

from tools.client_schemas import Contract, in_capitals, named, variants

_HEAD = '''\
"""The requests and answers of the contract, written by `make clients`: change the contract, not this file.

What may be left out is None. A set of texts is the type of plain texts (`"ft"`); all of them are in its `..._VALUES`.
Answers may grow: members and texts that this version does not know do not disturb it.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, ClassVar, Final, Literal, TypeAlias

from msgspec import Raw, Struct, field

from .quantities import Quantity
'''
_THOUSAND = re.compile(r"1000 \* ")  # pint converts to a unit, not to a multiple of one
_PINT = {
    dimension.__name__: {code.text: _THOUSAND.sub("kilo", code.pint) for code in codes}
    for dimension, codes in UNIT_CODES.items()
}
_ANY_PINT = {code: unit for units in _PINT.values() for code, unit in units.items()} | {"each": "dimensionless"}


def models_of(contract: Contract) -> str:
    """Write models.py."""
    told = [_HEAD]
    told += [_texts(name, schema) for name, schema in contract.schemas.items() if "enum" in schema]
    for name, schema in contract.schemas.items():
        if "properties" in schema:
            told.append("\n".join(_record(contract, name, schema)))
    unions = [name for name, schema in contract.schemas.items() if "oneOf" in schema]
    for name in sorted(unions, key=contract.is_nested):  # a union of unions after those
        told.append(_union(contract, name, contract.schemas[name]))
    return "\n\n".join(told) + "\n"


def type_of(schema: dict[str, Any]) -> str:
    """Give the Python type of a schema."""
    if "$ref" in schema:
        return named(schema["$ref"])
    if "const" in schema:
        return f"Literal[{_text(schema['const'])}]"
    if schema["type"] == "array":
        return f"list[{type_of(schema['items'])}]"
    return {"string": "str", "number": "float", "integer": "int", "boolean": "bool", "object": "dict[str, Any]"}[
        schema["type"]
    ]


def _text(value: str) -> str:
    return '"' + value.replace("\\", "\\\\").replace('"', '\\"') + '"'


def _texts(name: str, schema: dict[str, Any]) -> str:
    values = ", ".join(_text(value) for value in schema["enum"])
    comma = "," if len(schema["enum"]) == 1 else ""
    return (
        f"if TYPE_CHECKING:\n    {name}: TypeAlias = Literal[{values}]\nelse:\n    {name} = str\n"
        f"{in_capitals(name)}_VALUES: Final[tuple[{name}, ...]] = ({values}{comma})\n{_documented(schema, '')}"
    )


def _record(contract: Contract, name: str, schema: dict[str, Any]) -> Iterator[str]:
    if contract.is_quantity(name):
        yield from _quantity(name, schema)
        return
    tag, value = contract.tags.get(name, (None, None))
    tagged = f", tag_field={_text(tag)}, tag={_text(value)}" if tag and value else ""
    yield f"class {name}(Struct, kw_only=True, omit_defaults=True, repr_omit_defaults=True{tagged}):"
    yield _documented(schema, "    ")
    required = schema.get("required", [])
    in_order = sorted(schema["properties"], key=lambda member: (member not in required, member))
    for member in in_order:
        described = schema["properties"][member]
        if member == tag:
            yield f"\n    {member}: ClassVar[{type_of(described)}] = {_text(described['const'])}"
            continue
        optional = "" if member in required else " | None"
        yield f"\n    {attribute(member)}: {type_of(described)}{optional}{_default(member, bool(optional))}"
        if "description" in described:
            yield _documented(described, "    ")


def attribute(member: str) -> str:
    """Give a member its name in Python: `from` becomes `from_`."""
    return f"{member}_" if keyword.iskeyword(member) else member


def _default(member: str, optional: bool) -> str:
    if not keyword.iskeyword(member):
        return " = None" if optional else ""
    return f' = field({"default=None, " if optional else ""}name="{member}")'


def _quantity(name: str, schema: dict[str, Any]) -> Iterator[str]:
    unit = type_of(schema["properties"]["unit"])
    pint = _PINT.get(name, _ANY_PINT)
    yield f"class {name}(Quantity, frozen=True):"
    yield _documented(schema, "    ")
    yield f"\n    unit: {unit}"
    yield f"\n    PINT: ClassVar[Mapping[str, str]] = {pint!r}"
    yield f"    CLOSED: ClassVar[bool] = {unit != 'str'}"


def _documented(schema: dict[str, Any], indent: str) -> str:
    text = " ".join(schema.get("description", "").split()).replace("\\", "\\\\").replace('"""', "'''")
    if text.endswith('"'):
        text += " "
    lines = textwrap.wrap(f'"""{text}"""', 100 - len(indent), break_long_words=False, break_on_hyphens=False)
    return "\n".join(indent + line for line in lines)


def _union(contract: Contract, name: str, schema: dict[str, Any]) -> str:
    kinds = variants(schema)
    joined = " | ".join(kinds.values())
    if contract.is_nested(name):  # told apart by two tags: read by hand
        return f"if TYPE_CHECKING:\n    {name}: TypeAlias = {joined}\nelse:\n    {name} = Raw"
    table = "".join(f"    {_text(value)}: {kind},\n" for value, kind in kinds.items())
    by_tag = f"{in_capitals(name)}_BY_{schema['discriminator']['propertyName'].upper()}"
    return f"{name}: TypeAlias = {joined}\n{by_tag}: Final[dict[str, type[{name}]]] = {{\n{table}}}"
