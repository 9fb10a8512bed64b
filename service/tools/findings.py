"""Every code that an answer or a problem may carry, read from the source: docs/findings.md, written by tools.pages."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

import ductrun
from ductrun.http.descriptions import subject_of
from ductrun.http.problems import ASSUMPTION_CODES, QUERY_CODES, REQUEST_CODES
from ductrun.subjects import OPERATIONS

from tools.sentences import BLANK, Module, module_at

SUBJECTS = Path(ductrun.__file__).parent / "subjects"
_HEAD = f"""\
# Every code of a finding, a caution or a fault

Written by `tools.pages` from the source. A code keeps its meaning; its sentence may be worded better, and more codes
may come. `{BLANK}` stands for the figures and names of the question.

| | where it is told |
|---|---|
| violation, caution, note | `findings` of an answer, by `severity` |
| usual caution | `cautions` of an answer |
| fault | `errors` of a problem: the question has no answer |
"""
_IN_ORDER = ("violation", "caution", "note", "usual caution", "fault")


class Told(NamedTuple):
    """A code with its sentence and what it is: the severity of a finding, a usual caution, a fault."""

    code: str
    kind: str
    sentence: str


def page() -> str:
    """Write the page: what any request may be told, then each subject in the order of a job."""
    parts = [_HEAD, _part("Any request", "", _of_any_request())]
    operations: dict[str, list[str]] = {}
    for operation in OPERATIONS:
        operations.setdefault(subject_of(operation), []).append(f"`{operation.name}`")
    folders = {path.name: path for path in SUBJECTS.iterdir() if (path / "__init__.py").exists()}
    for subject in [*operations, *sorted(folders.keys() - operations.keys())]:
        named = ", ".join(operations.get(subject, ["what several operations take"]))
        about = ast.get_docstring(ast.parse((folders[subject] / "__init__.py").read_text(encoding="utf-8"))) or ""
        parts.append(_part(f"{subject.replace('_', ' ').capitalize()}: {named}", about, told_in(folders[subject])))
    return "\n".join(parts)


def codes() -> set[str]:
    """Give every code there is."""
    return {one.code for one in told_in(SUBJECTS)} | {one.code for one in _of_any_request()}


def _of_any_request() -> list[Told]:
    told = [one for several in (REQUEST_CODES, QUERY_CODES, ASSUMPTION_CODES) for one in several.items()]
    return [Told(code, "fault", sentence) for code, sentence in told]


def told_in(folder: Path) -> list[Told]:
    """Give what the modules of a folder may tell, by code, the graver first."""
    found = {told for path in sorted(folder.rglob("*.py")) for told in _told(module_at(path))}
    return sorted(found, key=lambda one: (one.code, _IN_ORDER.index(one.kind), one.sentence))


def _told(module: Module) -> Iterator[Told]:
    for call in module.calls:
        if not isinstance(call.func, ast.Attribute):
            continue
        given = {one.arg: one.value for one in call.keywords}
        if call.func.attr == "find" and len(call.args) + len(given) >= 4:
            severity, code, message = (*call.args[:3], *[None] * 3)[:3]
            yield from _together(module, severity or given.get("severity"), code or given.get("code"), message)
        elif call.func.attr == "caution":
            yield from _together(module, ast.Constant("usual caution"), call.args[0], call.args[1])
        elif call.func.attr == "fault":
            yield from _together(module, ast.Constant("fault"), call.args[1], call.args[2])


def _together(module: Module, kind: ast.AST | None, code: ast.AST | None, message: ast.AST | None) -> Iterator[Told]:
    for severity in module.texts(kind):
        for one in module.texts(code):
            both = one.beside(severity.choices)
            for sentence in module.texts(message) if both is not None else ():
                if sentence.beside(both or {}) is not None:
                    yield Told(one.text, severity.text, _tidy(sentence.text))


def _tidy(sentence: str) -> str:
    """Write blanks that meet as one, and nothing that a table would take for its own."""
    text = re.sub(rf"{BLANK}(?:[ ,]*{BLANK})+", BLANK, " ".join(sentence.split())).replace("|", "\\|")
    text = re.sub(rf"{BLANK}(?=[A-Za-z])", f"{BLANK} ", text)
    return "worded by the case" if text == BLANK else text


def _part(title: str, about: str, told: list[Told]) -> str:
    rows = [f"| `{one.code}` | {one.kind} | {one.sentence} |" for one in told]
    head = [f"## {title}", "", *([about.partition("\n\n")[0].replace("\n", " "), ""] if about else [])]
    return "\n".join([*head, "| code | is a | sentence |", "|---|---|---|", *rows, ""])
