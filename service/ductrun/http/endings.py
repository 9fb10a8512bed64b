"""An operation that is to end says so with every answer and every problem (RFC 9745 and RFC 8594)."""

from __future__ import annotations

from email.utils import format_datetime
from typing import Any

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from ductrun.http.problems import ProblemRaised
from ductrun.http.refusals import problem_of
from ductrun.kit.answering import REFUSALS
from ductrun.kit.operation import Ending

_TEXT = {"type": "string", "maxLength": 200}


class Ends:
    """The endpoint of an operation that is to end."""

    def __init__(self, app: ASGIApp, ending: Ending) -> None:
        """Write the headers."""
        self.app = app
        self.headers = (
            (b"deprecation", b"@%d" % ending.deprecated.timestamp()),
            (b"sunset", format_datetime(ending.sunset, usegmt=True).encode()),
            (b"link", f'</v1/{ending.successor}>; rel="successor-version"'.encode()),
        )

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer, and say that it will not be answered for ever."""

        async def send_on(message: Message) -> None:
            if message["type"] == "http.response.start":
                message["headers"] = [*message["headers"], *self.headers]
            await send(message)

        try:
            await self.app(scope, receive, send_on)
        except ProblemRaised as problem:
            raise self._marked(problem) from None
        except REFUSALS as refusal:
            raise self._marked(problem_of(refusal)) from refusal

    def _marked(self, problem: ProblemRaised) -> ProblemRaised:
        problem.headers = (*problem.headers, *self.headers)
        return problem


def ending_described(described: dict[str, Any], ending: Ending) -> dict[str, Any]:
    """Say in the contract that an operation is to end, when, and what to ask instead."""
    end = ending.sunset.date().isoformat()
    told = f"Deprecated: ends on {end} at the earliest. Ask `POST /v1/{ending.successor}` instead."
    headers = {
        "Deprecation": {"description": "From when it is deprecated (RFC 9745).", "schema": _TEXT},
        "Sunset": {"description": "When it ends at the earliest (RFC 8594).", "schema": _TEXT},
        "Link": {"description": "What to ask instead.", "schema": _TEXT},
    }
    answer = described["responses"]["200"]
    return described | {
        "deprecated": True,
        "description": f"{described['description']} {told}",
        "responses": described["responses"] | {"200": answer | {"headers": headers}},
    }
