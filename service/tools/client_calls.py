"""Write the calls of the Python client: a method for every operation of the contract, sync and async."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from typing import Any

from tools.client_models import attribute, type_of
from tools.client_schemas import Asked, Contract, named

_HEAD = '''\
"""The calls of the contract, written by `make clients`: change the contract, not this file."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Literal, overload

from . import models
from .giving import Given, Measured
from .operations import CALLS
from .requesting import Call


class {name}:
    """A method for every operation; what the members of a request mean stands at its model."""

    {define} _ask(self, call: Call, body: tuple[Any, ...], given: dict[str, Any]) -> Any:
        raise NotImplementedError

    {define} _write(self, call: Call, media_type: str, body: object, given: dict[str, Any]) -> bytes:
        raise NotImplementedError
'''


def calls_of(contract: Contract, *, in_a_loop: bool) -> str:
    """Write calls.py, or async_calls.py."""
    define, name = ("async def", "AsyncCalls") if in_a_loop else ("def", "Calls")
    told = [_HEAD.format(name=name, define=define)]
    for asked in contract.operations:
        told += _method(contract, asked, define, "await " if in_a_loop else "")
    told += _document(contract, define, "await " if in_a_loop else "")
    return "\n".join(told) + "\n"


def table_of(contract: Contract) -> str:
    """Write operations.py: what a call needs to know of each operation."""
    told = [
        '"""The operations by name, written by `make clients`: change the contract, not this file."""\n',
        "from typing import Final\n",
        "from . import models",
        "from .requesting import Call\n",
        "CALLS: Final[dict[str, Call]] = {",
    ]
    for asked in contract.operations:
        request: Any = f"models.{asked.request}" if asked.request else None
        query = tuple(one["name"] for one in asked.query)
        answer = f"models.{asked.answer}"
        told.append(
            f'    "{asked.name}": Call("{asked.method.upper()}", "{asked.path}", {answer}, {request}, {query!r}),'
        )
    return "\n".join([*told, "}"]) + "\n"


def _method(contract: Contract, asked: Asked, define: str, wait: str) -> Iterator[str]:
    summary = asked.described["summary"].rstrip(".")
    query = [_query(one) for one in asked.query]
    answer = f"models.{asked.answer}"
    call = f'return {wait}self._ask(CALLS["{asked.name}"], '
    if asked.request is None:
        told = f", *, {', '.join(query)}" if query else ""
        yield f"    {define} {asked.name}(self{told}) -> {answer}:"
        yield _documented(f"{summary}.")
        given = ", ".join(f'"{one["name"]}": {attribute(one["name"])}' for one in asked.query)
        yield f'        found: {answer} = {wait}self._ask(CALLS["{asked.name}"], (), {{{given}}})'
        yield "        return found\n"
        return
    whole = f"body: Given[models.{asked.request}], /" + (f", *, {', '.join(query)}" if query else "")
    members = ", ".join([*_members(contract, contract.schemas[asked.request]), *query])
    for taken in (whole, f"*, {members}"):
        yield "    @overload"
        yield f"    {define} {asked.name}(self, {taken}) -> {answer}: ...\n"
    yield f"    {define} {asked.name}(self, *body: Any, **given: Any) -> Any:"
    yield _documented(f"{summary}: give its members by name, or a whole request.")
    yield f"        {call}body, given)\n"


def _document(contract: Contract, define: str, wait: str) -> Iterator[str]:
    for asked in contract.operations:
        if asked.documents:
            media_types = ", ".join(f'"{one}"' for one in asked.documents)
            query = ", ".join(_query(one) for one in asked.taken_with(*asked.documents))
            yield "    @overload"
            yield (
                f'    {define} document(self, operation: Literal["{asked.name}"], media_type: Literal[{media_types}], '
                f"request: Given[models.{asked.request}], /, *, {query}) -> bytes: ...\n"
            )
    yield f"    {define} document(self, operation: str, media_type: str, request: object, /, **asked: Any) -> bytes:"
    yield _documented("Give an answer in another form that the contract has for it: a drawing, a sheet, a takeoff.")
    yield f"        return {wait}self._write(CALLS[operation], media_type, request, asked)\n"


def _members(contract: Contract, schema: dict[str, Any]) -> Iterator[str]:
    required = schema.get("required", [])
    for member in sorted(schema["properties"], key=lambda one: (one not in required, one)):
        taken = _taken(contract, schema["properties"][member])
        yield f"{attribute(member)}: {taken}" + ("" if member in required else " | None = None")


def _taken(contract: Contract, schema: dict[str, Any]) -> str:
    """Give what is taken for a member: of an object a mapping too, of a quantity also one of pint's."""
    if schema.get("type") == "array":
        return f"Sequence[{_taken(contract, schema['items'])}]"
    if "$ref" not in schema:
        return type_of(schema)
    name = named(schema["$ref"])
    if "enum" in contract.schemas[name]:
        return f"models.{name}"
    return f"{'Measured' if contract.is_quantity(name) else 'Given'}[models.{name}]"


def _query(parameter: dict[str, Any]) -> str:
    schema = parameter["schema"]
    kind = f"models.{named(schema['$ref'])}" if "$ref" in schema else type_of(schema)
    return f"{attribute(parameter['name'])}: {kind} | None = None"


def _documented(text: str) -> str:
    return "\n".join(textwrap.wrap(f'"""{text}"""', 100, initial_indent=" " * 8, subsequent_indent=" " * 8))
