"""Asking the service in process, and reading the tables of published values."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

from ductrun.http.problems import ProblemRaised
from tools.asking import EXAMPLES, ask

__all__ = ["EXAMPLES", "ask", "codes", "document_of", "problem", "quantity", "result", "rows_of"]

PUBLISHED = Path(__file__).parent / "published" / "data"


def result(operation: str, request: Any, query: str = "") -> dict[str, Any]:
    """Ask one calculation and give the result alone."""
    found: dict[str, Any] = ask(operation, request, query)["result"]
    return found


def problem(operation: str, request: Any, query: str = "") -> ProblemRaised:
    """Ask a question that must end in a problem, and give the problem."""
    try:
        answer = ask(operation, request, query)
    except ProblemRaised as raised:
        return raised
    raise AssertionError(f"an answer where a problem was due: {answer}")


def codes(answer: dict[str, Any], severity: str | None = None) -> list[str]:
    """Give the codes of the findings, or of those of one severity."""
    return [found["code"] for found in answer["findings"] if severity in (None, found["severity"])]


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
