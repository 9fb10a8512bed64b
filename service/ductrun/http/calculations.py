"""A single calculation: bytes in, bytes out, on the event loop; what takes long is finished aside."""

from __future__ import annotations

from starlette.types import Receive, Scope, Send

from ductrun.http.aside import ASIDE
from ductrun.http.exchange import read_body, read_query, send_written
from ductrun.kit.answering import Answering, PutOffError


class Calculation:
    """The endpoint of one operation."""

    def __init__(self, answer: Answering, max_body_bytes: int) -> None:
        """Keep what answers, and the limit of a body."""
        self.answer = answer
        self.max_body_bytes = max_body_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        body = await read_body(scope, receive, self.max_body_bytes)
        try:
            written = self.answer(body, read_query(scope["query_string"]))
        except PutOffError as put_off:
            written = await ASIDE.finish_one(put_off.finish, receive)
        await send_written(send, 200, b"application/json", written)
