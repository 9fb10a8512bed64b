"""The contract that landed last, out of git, and which of the breaks since the changelog lists.

A row of the changelog lists a break if its first cell covers the place and the row has what changed in backticks. A
first cell covers a schema or a path by its name, all that an operation asks and answers by the operation's, and what
all calculations have in common by `every request`, `every answer` or `every calculation`.
"""

from __future__ import annotations

import json
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path

from tools.comparison import Break, Node, breaks

_SPAN = re.compile(r"`([^`]+)`")
_RELEASE = re.compile(r"^## v?\d", re.MULTILINE)


def contract_before(contract: Path) -> Node | None:
    """Give the contract before its last change: that of HEAD if the file differs from it; None if git has none."""
    path = f"./{contract.name}"
    written = _git(contract.parent, "show", f"HEAD:{path}")
    if written == contract.read_text(encoding="utf-8"):
        # along the first parents a merge is one change, with all that its branch brings
        last = _git(contract.parent, "log", "--first-parent", "-1", "--format=%H", "--", path)
        written = _git(contract.parent, "show", f"{last.strip()}^:{path}") if last else None
    before: Node | None = json.loads(written) if written else None
    return before


def _git(folder: Path, *arguments: str) -> str | None:
    try:
        done = subprocess.run(["git", "-C", str(folder), *arguments], capture_output=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return None
    return done.stdout.decode("utf-8")


def unlisted(old: Node, new: Node, changelog: str) -> list[Break]:
    """Give the breaks that no row of the changelog lists, above its first release."""
    rows = list(_rows(_RELEASE.split(changelog, maxsplit=1)[0]))
    covered = _places(old), _places(new)
    return [
        found
        for found in breaks(old, new)
        if not any(
            found.name in names and any(found.root in places.get(key, ()) for key in where for places in covered)
            for where, names in rows
        )
    ]


def _rows(text: str) -> Iterator[tuple[set[str], set[str]]]:
    """Give of each row what its first cell covers, and every name it has in backticks."""
    for line in text.splitlines():
        if line.startswith("|"):
            where = line.split("|")[1]
            words = re.findall(r"every (?:request|answer|calculation)", where)
            yield {*words, *_SPAN.findall(where)}, {name for span in _SPAN.findall(line) for name in _names(span)}


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
