"""Write the TypeScript client's types and calls: an interface an object of the contract, a method an operation."""

from __future__ import annotations

import json
import re
import textwrap
from collections.abc import Iterator
from typing import Any

from tools.client_schemas import Asked, Contract, in_capitals, named, variants

_HEAD = "// Written by `make clients` from the contract: change the contract, not this file.\n"
_ASK = "  protected abstract ask(method: string, path: string, body: unknown, options: Options): Promise<unknown>;"


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
    """Write calls.ts: the options of the operations, what other forms they answer in, and a method for each."""
    names, told = _options(contract)
    return "\n".join(
        [
            _HEAD,
            'import type * as models from "./models.js";\n',
            "/** What every call takes beside its question. */",
            "export interface Options {",
            "  /** Ends the call, and the wait before another try. */\n  signal?: AbortSignal;\n}\n",
            *told,
            "/** What is asked for an answer in another form, by the path of its calculation. */",
            "export interface Documents {",
            *(_document(asked, names) for asked in contract.operations if asked.documents),
            "}\n",
            "/** A method for every operation. */",
            "export abstract class Calls {",
            _ASK,
            *("\n".join(["", *_method(asked, names[_query(asked.query)])]) for asked in contract.operations),
            "}\n",
        ]
    )


def _options(contract: Contract) -> tuple[dict[str, str], list[str]]:
    """Name every set of query parameters: what most calculations take, what a batch takes, others by their first."""
    calculations = [asked for asked in contract.operations if asked.documents]
    names: dict[str, str] = {"": "Options"}
    for name, sets in (
        ("CalculationOptions", [_query(asked.query) for asked in calculations]),
        ("RemedyingOptions", [_query(asked.query) for asked in contract.operations if asked.name == "batch"]),
        ("DocumentOptions", [_query(asked.taken_with(*asked.documents)) for asked in calculations]),
    ):
        names[max(sets, key=sets.count)] = name
    for asked in contract.operations:
        names.setdefault(_query(asked.query), f"{_pascal(asked.name)}Options")
        if asked.documents:
            names.setdefault(_query(asked.taken_with(*asked.documents)), f"{_pascal(asked.name)}DocumentOptions")
    told = [f"export interface {name} extends Options {{\n{members}}}\n" for members, name in names.items() if members]
    return names, told


def _document(asked: Asked, names: dict[str, str]) -> str:
    media_types = " | ".join(json.dumps(one) for one in asked.documents)
    options = names[_query(asked.taken_with(*asked.documents))]
    return (
        f'  "{asked.path}": {{\n    mediaType: {media_types};\n'
        f"    request: models.{asked.request};\n    options: {options};\n  }};"
    )


def _query(parameters: list[dict[str, Any]]) -> str:
    return "".join(
        f"{_documented(one, '  ')}  {one['name']}?: {type_of(one['schema'], 'models.')};\n" for one in parameters
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
