"""A single calculation: bytes in, bytes out, on the event loop, never in a thread."""

from __future__ import annotations

from starlette.types import Receive, Scope, Send

from ductrun.http.exchange import read_body, read_query, send_written
from ductrun.kit.answering import Answering


class Calculation:
    """The endpoint of one operation."""

    def __init__(self, answer: Answering, max_body_bytes: int, *, suggesting: bool = False) -> None:
        """Keep what answers, the limit of a body, and whether suggestions may be asked for."""
        self.answer = answer
        self.max_body_bytes = max_body_bytes
        self.suggesting = suggesting

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        body = await read_body(scope, receive, self.max_body_bytes)
        written = self.answer(body, read_query(scope["query_string"], suggesting=self.suggesting))
        await send_written(send, 200, b"application/json", written)
