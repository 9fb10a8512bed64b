"""The generated parts of README.md: the table of operations and one worked example a calculation, from real answers.

With --write they are written anew; the test beside this module holds them against the service.
"""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from ductrun.http.descriptions import batch_options, stream_options
from ductrun.http.stream import MEDIA_TYPES
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import PICKERS, REFERENCE_TABLES

from tools.asking import ask

README = Path(__file__).resolve().parents[2] / "README.md"
WIDTH = 118
EXAMPLE = re.compile(r"<!-- example: (\S+)\n(.*?)\n-->\n(.*?)<!-- /example -->", re.DOTALL)
CREW = re.compile(r"<!-- crew table -->\n.*?<!-- /crew table -->", re.DOTALL)
LIST = re.compile(r"<!-- operations -->\n.*?<!-- /operations -->", re.DOTALL)


def pretty(node: Any, indent: int = 0) -> str:
    """Write JSON with whatever fits a line on one line."""
    line = json.dumps(node, ensure_ascii=False)
    if len(line) + indent <= WIDTH or not isinstance(node, dict | list) or not node:
        return line
    pad = " " * (indent + 2)
    if isinstance(node, dict):
        inner = [f"{pad}{json.dumps(key)}: {pretty(value, indent + 2)}" for key, value in node.items()]
        return "{\n" + ",\n".join(inner) + "\n" + " " * indent + "}"
    return "[\n" + ",\n".join(pad + pretty(item, indent + 2) for item in node) + "\n" + " " * indent + "]"


def masked(answer: dict[str, Any]) -> dict[str, Any]:
    """Give an answer without the hash of the tables, so that a row of a table changes no page."""
    return answer | {"basis": answer["basis"] | {"tables_version": "hash of all tables"}}


def block(operation: str, request: str) -> str:
    """Write one example: the call and its answer."""
    answer = pretty(masked(ask(operation, json.loads(request))))
    call = f"curl -s http://127.0.0.1:8000/v1/{operation} -H 'Content-Type: application/json' -d '{request}'"
    return f"\n```sh\n{call}\n```\n\n```json\n{answer}\n```\n\n"


def operations() -> str:
    """Write the table of operations."""
    rows = [f"| `POST /v1/{operation.name}` | {operation.description} |" for operation in OPERATIONS]
    rows += [f"| `POST /v1/batch` | {batch_options([])['description']} |"]
    rows += [f"| `POST /v1/batch/stream` | {stream_options([], MEDIA_TYPES)['description']} |"]
    rows += [f"| `GET /v1/tables/{table.name}` | {table.description} |" for table in REFERENCE_TABLES]
    rows += [
        f"| `GET /v1/tables/{picker.table.name}/{{{picker.parameter}}}` | Rows of one {picker.parameter}, by pages. |"
        for picker in PICKERS
    ]
    rows += ["| `GET /livez`, `GET /readyz` | Whether the process answers; whether it is ready. |"]
    return "\n".join(["| operation | gives |", "|---|---|", *rows])


def crew_table(text: str) -> str:
    """Write the openings of the expansion example as a table."""
    request = next(json.loads(request) for operation, request, _ in examples(text) if operation == "expansion")
    [run] = ask("expansion", request)["result"]["runs"]
    lines = sorted((line["temperature"]["value"], line["opening"]["value"]) for line in run["piston_openings"])
    cells = [f"| {temperature:g} degF | {opening:.2f} in |" for temperature, opening in lines]
    return "\n".join(["| conduit at | open the piston by |", "|---|---|", *cells])


def examples(text: str) -> Iterator[tuple[str, str, str]]:
    """Give operation, request and the text below of every example."""
    for found in EXAMPLE.finditer(text):
        yield found[1], found[2], found[3]


def renewed(text: str) -> str:
    """Write the generated parts of the page anew."""
    text = EXAMPLE.sub(
        lambda found: f"<!-- example: {found[1]}\n{found[2]}\n-->\n{block(found[1], found[2])}<!-- /example -->", text
    )
    text = CREW.sub(lambda _: f"<!-- crew table -->\n{crew_table(text)}\n<!-- /crew table -->", text)
    return LIST.sub(lambda _: f"<!-- operations -->\n{operations()}\n<!-- /operations -->", text)


if __name__ == "__main__":
    page = README.read_text(encoding="utf-8")
    if "--write" in sys.argv:
        README.write_text(renewed(page), encoding="utf-8")
