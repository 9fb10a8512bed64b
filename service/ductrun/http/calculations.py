"""A single calculation: bytes in, bytes out, on the event loop; what takes long is finished aside."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from starlette.types import Receive, Scope, Send

from ductrun.drawings.markup import Document
from ductrun.http.aside import ASIDE
from ductrun.http.exchange import media_type_asked, read_body, read_query, send_written
from ductrun.http.representations import Representation
from ductrun.kit.answering import PutOffError

_USUAL: Final = frozenset({None, b"*/*", b"application/json"})  # for which nothing is weighed


class Calculation:
    """The endpoint of one operation, whose answer is given as what the Accept header asks for."""

    def __init__(self, representations: Sequence[Representation], max_body_bytes: int) -> None:
        """Keep what makes the answer, and the limit of a body."""
        self.offered = tuple(one.media_type for one in representations)
        self.made = {
            one.media_type: (one.answer, one.query, one.usual, one.content_type, one.headers) for one in representations
        }
        self.usual = self.made[self.offered[0]]
        self.taken_with = {
            name: " or ".join(one.media_type for one in representations if name in one.query)
            for name in dict.fromkeys(name for one in representations for name in one.query)
        }
        self.max_body_bytes = max_body_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        headers: dict[bytes, bytes] = dict(scope["headers"])
        made = self.usual
        if headers.get(b"accept") not in _USUAL or len(headers) < len(scope["headers"]):
            made = self.made[media_type_asked(scope["headers"], self.offered)]
        answer, query, usual, content_type, more_headers = made
        body = await read_body(headers, receive, self.max_body_bytes)
        try:
            written = answer(body, read_query(scope["query_string"], query, usual, self.taken_with))
        except PutOffError as put_off:
            written = await ASIDE.finish_one(put_off, receive)
        if isinstance(written, Document):
            written, policy = written
            more_headers = (*more_headers, (b"content-security-policy", policy.encode()))
        await send_written(send, 200, content_type, written, *more_headers)
