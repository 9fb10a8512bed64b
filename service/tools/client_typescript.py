"""Write the TypeScript client's types and calls: an interface an object of the contract, a method an operation."""

from __future__ import annotations

import json
import re
import textwrap
from collections.abc import Iterator
from typing import Any

from tools.client_schemas import Asked, Contract, in_capitals, named, variants

_HEAD = "// Written by `make clients` from the contract: change the contract, not this file.\n"


def models_of(contract: Contract) -> str:
    """Write models.ts."""
    told = [_HEAD]
    for name, schema in contract.schemas.items():
        if "enum" in schema:
            told.append(_texts(name, schema))
        elif "oneOf" in schema:
            kinds = "".join(f"\n  | {kind}" for kind in variants(schema).values())
            told.append(f"{_documented(schema, '')}export type {name} ={kinds};\n")
        else:
            told.append(f"{_documented(schema, '')}export interface {name} {{")
            told += list(_members(schema))
            told.append("}\n")
    return "\n".join(told)


def calls_of(contract: Contract) -> str:
    """Write calls.ts; operations that take the same query share its type."""
    told = [
        _HEAD,
        'import type * as models from "./models.js";\n',
        "/** What every call takes beside its question. */",
        "export interface Options {\n  /** Ends the call. */\n  signal?: AbortSignal;\n}\n",
    ]
    names: dict[str, str] = {"": "Options"}
    for asked in contract.operations:
        members = _query(asked)
        if members not in names:
            first = asked.request and "CalculationOptions" not in names.values()
            names[members] = "CalculationOptions" if first else f"{_pascal(asked.name)}Options"
            told.append(f"export interface {names[members]} extends Options {{\n{members}}}\n")
    told += [
        "/** A method for every operation. */",
        "export abstract class Calls {",
        "  protected abstract ask(method: string, path: string, body: unknown, options: Options): Promise<unknown>;",
        *("\n" + "\n".join(_method(asked, names[_query(asked)])) for asked in contract.operations),
        "}\n",
    ]
    return "\n".join(told)


def _query(asked: Asked) -> str:
    return "".join(
        f"{_documented(one, '  ')}  {one['name']}?: {type_of(one['schema'], 'models.')};\n" for one in asked.query
    )


def _pascal(name: str) -> str:
    return "".join(word.title() for word in name.split("_"))


def _texts(name: str, schema: dict[str, Any]) -> str:
    """Write a set of texts; one that may grow takes any, and still offers those that are known."""
    values = ", ".join(json.dumps(value) for value in schema["enum"])
    constant = f"{in_capitals(name)}_VALUES"
    more = " | (string & {})" if schema.get("x-extensible-enum") else ""
    return (
        f"export const {constant} = [{values}] as const;\n"
        f"{_documented(schema, '')}export type {name} = (typeof {constant})[number]{more};\n"
    )


def _members(schema: dict[str, Any]) -> Iterator[str]:
    required = schema.get("required", [])
    for member in sorted(schema["properties"], key=lambda one: (one not in required, one)):
        described = schema["properties"][member]
        yield f"{_documented(described, '  ')}  {member}{'' if member in required else '?'}: {type_of(described)};"


def type_of(schema: dict[str, Any], prefix: str = "") -> str:
    """Give the TypeScript type of a schema."""
    if "$ref" in schema:
        return prefix + named(schema["$ref"])
    if "const" in schema:
        return json.dumps(schema["const"])
    if schema["type"] == "array":
        return f"{type_of(schema['items'], prefix)}[]"
    return {
        "string": "string",
        "number": "number",
        "integer": "number",
        "boolean": "boolean",
        "object": "Record<string, unknown>",
    }[schema["type"]]


def _method(asked: Asked, options: str) -> Iterator[str]:
    name = re.sub(r"_(\w)", lambda found: found[1].upper(), asked.name)
    body = f"request: models.{asked.request}, " if asked.request else ""
    answer = f"models.{asked.answer}"
    sent = "request" if asked.request else "undefined"
    yield f"  /** {asked.described['summary'].rstrip('.')}. */"
    yield f"  {name}({body}options: {options} = {{}}): Promise<{answer}> {{"
    yield f'    return this.ask("{asked.method.upper()}", "{asked.path}", {sent}, options) as Promise<{answer}>;'
    yield "  }"


def _documented(schema: dict[str, Any], indent: str) -> str:
    text = " ".join(schema.get("description", "").split()).replace("*/", "* /")
    if not text:
        return ""
    if len(text) + len(indent) < 110:
        return f"{indent}/** {text} */\n"
    lines = textwrap.wrap(text, 110 - len(indent), break_long_words=False, break_on_hyphens=False)
    return f"{indent}/**\n" + "".join(f"{indent} * {line}\n" for line in lines) + f"{indent} */\n"
