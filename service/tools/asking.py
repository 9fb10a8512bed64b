"""Asking the service in process, from the bytes of a request to the bytes of its answer, without a socket."""

from __future__ import annotations

import asyncio
import json
from functools import cache
from typing import Any

import httpx
from ductrun.http.app import create_app
from ductrun.http.exchange import read_query
from ductrun.http.refusals import problem_of
from ductrun.kit.answering import REFUSALS, answer_to
from ductrun.subjects import OPERATIONS

_ANSWERS = {operation.name: answer_to(operation) for operation in OPERATIONS}
EXAMPLES: dict[str, dict[str, Any]] = {operation.name: operation.example for operation in OPERATIONS}


def ask(operation: str, request: Any, query: str = "") -> dict[str, Any]:
    """Ask one calculation; a problem is raised as ProblemRaised."""
    body = json.dumps(request).encode()
    chosen = read_query(query.encode())
    try:
        answer: dict[str, Any] = json.loads(_ANSWERS[operation](body, chosen))
    except REFUSALS as refusal:
        raise problem_of(refusal) from None
    return answer


@cache
def _transport() -> httpx.ASGITransport:
    return httpx.ASGITransport(create_app())


def post(path: str, body: bytes) -> dict[str, Any]:
    """Post a body the way of a request, query and all; gives what comes back, an answer or a problem."""

    async def sent() -> dict[str, Any]:
        async with httpx.AsyncClient(transport=_transport(), base_url="http://ductrun") as client:
            reply = await client.post(path, content=body, headers={"Content-Type": "application/json"})
            answer: dict[str, Any] = reply.json()
            return answer

    return asyncio.run(sent())
