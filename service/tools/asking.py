"""Asking the service in process, from the bytes of a request to the bytes of its answer, without a socket."""

from __future__ import annotations

import json
from typing import Any

from ductrun.http.calculations import answer_to
from ductrun.http.exchange import read_query
from ductrun.subjects import OPERATIONS

_ANSWERS = {operation.name: answer_to(operation) for operation in OPERATIONS}
EXAMPLES: dict[str, dict[str, Any]] = {operation.name: operation.example for operation in OPERATIONS}


def ask(operation: str, request: Any, query: str = "") -> dict[str, Any]:
    """Ask one calculation; a problem is raised as ProblemRaised."""
    body = json.dumps(request).encode()
    chosen = read_query(query.encode())
    answer: dict[str, Any] = json.loads(_ANSWERS[operation](body, chosen))
    return answer
