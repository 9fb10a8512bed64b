"""The generated parts of the pages: real answers in README.md and docs/, and every operation in openapi/examples/.

With --write they are written anew; tests/docs holds them against the service. An example of a page is a command that a
reader can copy; the answer is written below it. The hash of the tables is masked, so that a row that touches no figure
changes no page.
"""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

from ductrun.http.descriptions import batch_options, stream_options
from ductrun.http.stream import MEDIA_TYPES
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import REFERENCE_TABLES

from tools.asking import post
from tools.contract import CONTRACT
from tools.findings import page as page_of_codes

REPOSITORY = Path(__file__).resolve().parents[2]
README = REPOSITORY / "README.md"
QUESTIONS = REPOSITORY / "docs" / "questions.md"
PAGES = (README, QUESTIONS, *(REPOSITORY / "docs" / f"{name}.md" for name in ("deployment", "documents", "stream")))
CODES = REPOSITORY / "docs" / "findings.md"
EXAMPLES = CONTRACT.parent / "examples"
JOB = EXAMPLES / "whole_job_request.json"
RUN = EXAMPLES / "duct_run_request.json"
_RUN = next(one for one in OPERATIONS if one.name == "duct-run")
_SHOWN = {"conduit", "concrete", "cable"}
WIDTH = 118
MASKED = {
    "tables_version": "hash of all tables",
    "instance": "id of the request",
    "request_id": "id of the request",
}
EXAMPLE = re.compile(
    r"(?P<call>```sh\ncurl -s 'http://127\.0\.0\.1:8000(?P<path>\S+)' -H 'Content-Type: application/json' "
    r"-d '(?P<body>{.*?})'\n```\n)\n```json\n(?P<answer>.*?)\n```\n",
    re.DOTALL,
)
PART = re.compile(r"<!-- (operations|tables|run|openings) -->\n.*?<!-- /\1 -->", re.DOTALL)
QUESTION = re.compile(r"^## (.+) \(`(\S+)`\)$", re.MULTILINE)


class Example(NamedTuple):
    """An example of a page: the call as it is typed, the path with its query and the body in it, the answer below."""

    call: str
    path: str
    body: str
    answer: str


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


def masked(node: Any) -> Any:
    """Give an answer without what changes from request to request, or with a row of a table."""
    if isinstance(node, list):
        return [masked(item) for item in node]
    if isinstance(node, dict):
        return {key: MASKED.get(key) or masked(value) for key, value in node.items()}
    return node


def examples(text: str) -> Iterator[Example]:
    """Give every example of a page."""
    yield from (Example(*found.group("call", "path", "body", "answer")) for found in EXAMPLE.finditer(text))


def answered(found: re.Match[str]) -> str:
    """Write one example: the call as it stands, and its answer."""
    answer = pretty(masked(post(found["path"], found["body"].encode())))
    return f"{found['call']}\n```json\n{answer}\n```\n"


def questions() -> dict[str, str]:
    """Give the question that each operation answers, from the page about them."""
    return {name: question for question, name in QUESTION.findall(QUESTIONS.read_text(encoding="utf-8"))}


def operations() -> str:
    """Write the table of operations, in the order of a job."""
    asked = questions()
    rows = [
        f"| `POST /v1/{one.name}` | [{asked[one.name]}](docs/questions.md#{anchor(asked[one.name], one.name)}) "
        f"| [example](openapi/examples/{file_of(one.name)}) |"
        for one in OPERATIONS
    ]
    rows += [
        f"| `POST /v1/batch` | {batch_options([])['summary']}. | [example](openapi/examples/whole_job.json) |",
        f"| `POST /v1/batch/stream` | {stream_options([], MEDIA_TYPES)['summary']}. | [page](docs/stream.md) |",
    ]
    return "\n".join(["| operation | question | call and answer |", "|---|---|---|", *rows])


def file_of(name: str) -> str:
    """Give the name of the file with the example of an operation."""
    return f"{name.replace('/', '-')}.json"


def anchor(question: str, name: str) -> str:
    """Give the anchor that a heading of the page of questions has."""
    return re.sub(r"[^a-z0-9 -]", "", f"{question} {name}".lower()).replace(" ", "-")


def tables() -> str:
    """Write the list of reference tables with what picks among their rows."""
    rows = []
    for one in REFERENCE_TABLES:
        filters = [f"`{each.name}`" for each in one.filters] + (["`units`"] if one.has_quantities else [])
        rows.append(f"| `GET /v1/tables/{one.name}` | {one.description} | {', '.join(filters)} |")
    return "\n".join(["| table | holds | parameters |", "|---|---|---|", *rows])


_VERDICTS = {
    "complies": "The run complies. What is found of it begins:",
    "violates": "The run breaks a limit. What is found of it begins:",
    "not_judged": "No limit is broken; `not_judged`, because others must look at this:",
}


def run() -> str:
    """Write what a whole run is found to be, and what of it is ordered first."""
    answer = post("/v1/duct-run", json.dumps(_RUN.example).encode())
    lines = {one["item"]: one for one in reversed(answer["result"]["takeoff"]["lines"]) if one["item"] in _SHOWN}
    rows = [
        f"| {one['description']} | {_told(one['exact_quantity'])} | {_told(one['order_quantity'])} |"
        for one in sorted(lines.values(), key=lambda one: one["line"])
    ]
    verdict = answer["verdict"]
    due = "_not_judged" if verdict == "not_judged" else ""
    found = [
        f"- {one['message']}" for one in answer["findings"] if one["severity"] != "note" and one["code"].endswith(due)
    ]
    table = ["| line of the takeoff | exact | order |", "|---|---|---|", *rows]
    return "\n".join([_VERDICTS[verdict], "", *found[:2], "", *table])


def _told(quantity: dict[str, Any]) -> str:
    return f"{quantity['value']:,.2f}".rstrip("0").rstrip(".") + f" {quantity['unit']}"


def openings() -> str:
    """Write the openings of the expansion example as a table."""
    [shown] = [one for one in examples(QUESTIONS.read_text(encoding="utf-8")) if one.path == "/v1/expansion"]
    [run] = post(shown.path, shown.body.encode())["result"]["runs"]
    lines = sorted((line["temperature"]["value"], line["opening"]["value"]) for line in run["piston_openings"])
    cells = [f"| {temperature:g} degF | {opening:.2f} in |" for temperature, opening in lines]
    return "\n".join(["| conduit at | open the piston by |", "|---|---|", *cells])


PARTS = {"operations": operations, "tables": tables, "run": run, "openings": openings}


def renewed(text: str) -> str:
    """Write the generated parts of a page anew."""
    text = EXAMPLE.sub(answered, text)
    return PART.sub(lambda found: f"<!-- {found[1]} -->\n{PARTS[found[1]]()}\n<!-- /{found[1]} -->", text)


def example_files() -> dict[str, dict[str, Any]]:
    """Give what stands in openapi/examples/: of every operation its example, of a whole job its batch."""
    calls = {one.name: (f"/v1/{one.name}?working=true", one.example) for one in OPERATIONS}
    calls["whole_job"] = ("/v1/batch", json.loads(JOB.read_text(encoding="utf-8")))
    return {
        file_of(name): {
            "call": f"POST {path}",
            "request": request,
            "answer": masked(post(path, json.dumps(request).encode())),
        }
        for name, (path, request) in calls.items()
    }


def write() -> None:
    """Write everything anew."""
    RUN.write_text(pretty(_RUN.example) + "\n", encoding="utf-8")
    for name, example in example_files().items():
        (EXAMPLES / name).write_text(pretty(example) + "\n", encoding="utf-8")
    CODES.write_text(page_of_codes(), encoding="utf-8")
    for page in PAGES:
        page.write_text(renewed(page.read_text(encoding="utf-8")), encoding="utf-8")


if __name__ == "__main__" and "--write" in sys.argv:
    write()
