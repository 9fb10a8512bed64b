"""Asking the service in process, and reading the tables of published values."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

from ductrun.http.problems import ProblemRaised
from msgspec import to_builtins
from tools.asking import EXAMPLES, ask

__all__ = [
    "EXAMPLES",
    "ask",
    "assumed",
    "codes",
    "document_of",
    "faults",
    "judged",
    "problem",
    "quantity",
    "result",
    "rows_of",
    "value_of",
    "verdict_of",
]

PUBLISHED = Path(__file__).parent / "published" / "data"


def result(operation: str, request: Any, query: str = "") -> dict[str, Any]:
    """Ask one calculation and give the result alone."""
    found: dict[str, Any] = ask(operation, request, query)["result"]
    return found


def judged(operation: str, request: Any, query: str = "") -> tuple[str, dict[str, Any]]:
    """Ask one calculation and give its verdict and its result."""
    answer = ask(operation, request, query)
    return answer["verdict"], answer["result"]


def verdict_of(operation: str, request: Any) -> str:
    """Ask one calculation and give its verdict alone."""
    return judged(operation, request)[0]


def problem(operation: str, request: Any, query: str = "") -> ProblemRaised:
    """Ask a question that must end in a problem, and give the problem."""
    try:
        answer = ask(operation, request, query)
    except ProblemRaised as raised:
        return raised
    raise AssertionError(f"an answer where a problem was due: {answer}")


def faults(operation: str, request: Any, query: str = "") -> list[dict[str, Any]]:
    """Ask a question that must end in a problem, and give its errors as a caller reads them."""
    errors: list[dict[str, Any]] = to_builtins(problem(operation, request, query).errors)
    return errors


def assumed(answer: dict[str, Any]) -> dict[str, Any]:
    """Give what was assumed by its place: a quantity, a bare number where it is a ratio or in percent, or the text."""
    return {place: value_of(one) for one in answer["assumptions"] for place in one["pointers"]}


def value_of(assumption: dict[str, Any]) -> Any:
    """Give the value of an assumption as a request would hold it."""
    told = assumption.get("quantity")
    if told is None:
        return {"true": True, "false": False}.get(assumption["text"], assumption["text"])
    return told["value"] if told["unit"] in {"1", "percent"} else told


def codes(answer: dict[str, Any], severity: str | None = None) -> list[str]:
    """Give the codes of the findings and cautions, or of those of one severity."""
    found = [found["code"] for found in answer["findings"] if severity in (None, found["severity"])]
    return found + [one["code"] for one in answer["cautions"] if severity in (None, "caution")]


def quantity(value: float, unit: str) -> dict[str, Any]:
    """Write a quantity."""
    return {"value": value, "unit": unit}


def rows_of(name: str) -> list[dict[str, str]]:
    """Read a table of published values."""
    with (PUBLISHED / name).open(encoding="utf-8", newline="") as handle:
        return list(csv.DictReader(handle))


def document_of(name: str) -> Any:
    """Read a document of published values."""
    return json.loads((PUBLISHED / name).read_text(encoding="utf-8"))
