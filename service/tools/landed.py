"""The contract that landed last, out of git, and which of the breaks since the changelog lists.

A row of the changelog lists a break if its first cell covers the place and the row has what changed in backticks. A
first cell covers a schema or a path by its name, all that an operation asks and answers by the operation's, and what
all calculations have in common by `every request`, `every answer` or `every calculation`.
"""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path
from typing import NamedTuple

from tools.comparison import Break, Node, breaks

_SPAN = re.compile(r"`([^`]+)`")
_GOES = re.compile("is gone|may be absent|is refused")
_RELEASE = re.compile(r"^## v?\d", re.MULTILINE)


def contract_before(contract: Path) -> Node | None:
    """Give the contract before its last change: that of HEAD if the file differs from it; None if git has none."""
    commit = _commit_before(contract)
    written = _git(contract.parent, "show", f"{commit}:./{contract.name}") if commit else None
    before: Node | None = json.loads(written) if written else None
    return before


def changelog_before(contract: Path, changelog: Path) -> str:
    """Give the changelog as it was with that contract: what it listed then has landed, and excuses nothing now."""
    commit = _commit_before(contract)
    return (_git(changelog.parent, "show", f"{commit}:./{changelog.name}") if commit else None) or ""


def _commit_before(contract: Path) -> str | None:
    path = f"./{contract.name}"
    if _git(contract.parent, "show", f"HEAD:{path}") != contract.read_text(encoding="utf-8"):
        return "HEAD"
    # along the first parents a merge is one change, with all that its branch brings
    last = _git(contract.parent, "log", "--first-parent", "-1", "--format=%H", "--", path)
    return f"{last.strip()}^" if last else None


def _git(folder: Path, *arguments: str) -> str | None:
    try:
        done = subprocess.run(["git", "-C", str(folder), *arguments], capture_output=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return None
    return done.stdout.decode("utf-8")


def unlisted(old: Node, new: Node, changelog: str, landed: str = "") -> list[Break]:
    """Give the breaks that no row of the changelog lists, above its first release and not `landed` before.

    What goes, may be absent or is refused must stand in the cell of what was before.
    """
    known = set(_lines(landed))
    rows = [_row(line) for line in _lines(changelog) if line not in known]
    covered = _places(old), _places(new)
    return [
        found
        for found in breaks(old, new)
        if not any(
            found.name in (row.before if _GOES.search(found.said) else row.names)
            and any(found.root in places.get(key, ()) for key in row.where for places in covered)
            for row in rows
        )
    ]


class _Row(NamedTuple):
    """What the first cell of a row covers, the names it has in backticks, and those of what was before."""

    where: set[str]
    names: set[str]
    before: set[str]


def _lines(text: str) -> list[str]:
    return [line for line in _RELEASE.split(text, maxsplit=1)[0].splitlines() if line.startswith("|")]


def _row(line: str) -> _Row:
    _, where, before, *_ = [*line.split("|"), "", ""]
    words = re.findall(r"every (?:request|answer|calculation)", where)
    return _Row({*words, *_SPAN.findall(where)}, _spans(line), _spans(before))


def _spans(text: str) -> set[str]:
    return {name for span in _SPAN.findall(text) for name in _names(span)}


def _names(span: str) -> set[str]:
    return {span, *span.split(), *re.split(r"[.\[\]\s]+", span)}


def _places(document: Node) -> dict[str, set[str]]:
    """Give the roots of breaks that each word of a first cell covers."""
    schemas = document["components"]["schemas"]
    places: dict[str, set[str]] = {name: {name} for name in schemas}
    paths, sides = set(), {"requestBody": _Side(), "responses": _Side()}
    for path, item in document["paths"].items():
        for method, operation in item.items():
            root = f"{method.upper()} {path}"
            everything = {root}
            for part, side in sides.items():
                reached = _reached(operation.get(part, {}), schemas)
                everything |= reached
                if method == "post" and not path.startswith("/v1/batch"):
                    side.add(operation.get(part, {}), reached)
                    paths.add(root)
            for name in {path, root, path.removeprefix("/v1/"), operation["operationId"]}:
                places.setdefault(name, set()).update(everything)
    places["every request"] = sides["requestBody"].common()
    places["every answer"] = sides["responses"].common()
    places["every calculation"] = places["every request"] | places["every answer"] | paths
    return places


class _Side:
    """What the calculations ask, or what they answer: the bodies themselves, and what all of them lead to."""

    def __init__(self) -> None:
        self.bodies: set[str] = set()
        self.reached: list[set[str]] = []

    def add(self, node: Node, reached: set[str]) -> None:
        self.bodies |= set(re.findall(r"'#/components/schemas/(\w+)'", str(node)))
        self.reached.append(reached)

    def common(self) -> set[str]:
        return self.bodies | set.intersection(*self.reached) if self.reached else set()


def _reached(node: object, schemas: Node) -> set[str]:
    """Give the names of the schemas that a node leads to."""
    found: set[str] = set()
    waiting = [node]
    while waiting:
        one = waiting.pop()
        if isinstance(one, list):
            waiting += one
        elif isinstance(one, dict):
            waiting += [value for key, value in one.items() if key not in ("example", "examples")]
            name = str(one.get("$ref", "")).rpartition("/")[2]
            if name in schemas and name not in found:
                found.add(name)
                waiting.append(schemas[name])
    return found
