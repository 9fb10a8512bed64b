"""POST /v1/batch: many questions in one request, each answered or refused by itself, in the order they came."""

from __future__ import annotations

import asyncio
from time import perf_counter
from typing import Annotated, Any

from msgspec import Meta, Raw, Struct, json
from pydantic import Field
from starlette.types import Receive, Scope, Send

from ductrun.http.exchange import read_body, read_query, send_written
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items
from ductrun.kit import strict_json
from ductrun.kit.answering import read_slowly
from ductrun.kit.forms import Form
from ductrun.kit.reading import REFUSED

MOST_ITEMS = 1_000
_SLICE = 0.001  # seconds of work before other requests get their turn


class _Envelope(Struct, forbid_unknown_fields=True, gc=False):
    items: Annotated[list[Raw], Meta(min_length=1, max_length=MOST_ITEMS)]


class _Opaque(Form):
    items: Annotated[list[Any], Field(min_length=1, max_length=MOST_ITEMS)]


_read_envelope = json.Decoder(_Envelope).decode


def _items_of(body: bytes) -> list[bytes]:
    """Cut a body into its items, none of which is looked at yet; raises one of REFUSALS if it is no batch."""
    try:
        items = [bytes(item) for item in _read_envelope(body).items]
    except REFUSED:
        read_slowly(_Opaque, body)
        raise
    if body.count(b":") != 1 + sum(item.count(b":") for item in items):
        strict_json.check(body)  # `items` given twice, or an escape in its name
    return items


class Batch:
    """The endpoint of batches."""

    def __init__(self, items: Items, max_body_bytes: int) -> None:
        """Keep what answers an item, and the limit of a body."""
        self.items = items
        self.max_body_bytes = max_body_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one batch, with breaks in which other requests are answered."""
        body = await read_body(dict(scope["headers"]), receive, self.max_body_bytes)
        chosen = read_query(scope["query_string"])
        items = _items_of(body)
        answers = []
        failed = 0
        turn = perf_counter()
        for index, item in enumerate(items):
            status, answer = self.items.settle(item, chosen, scope[REQUEST_ID], f"#/items/{index}")
            answers.append(answer)
            failed += status != 200
            if perf_counter() - turn > _SLICE:
                await asyncio.sleep(0)
                turn = perf_counter()
        written = b'{"item_count":%d,"failed_count":%d,"items":[%b]}' % (len(items), failed, b",".join(answers))
        await send_written(send, 200, b"application/json", written)
