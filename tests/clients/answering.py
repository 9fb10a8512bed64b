"""A client of answers that are made by hand."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import httpx
from ductrun_client import Client

SUMMARY = {"type": "summary", "item_count": 1, "failed_count": 0}


REFUSED = {"type": "/problems/starting", "title": "Starting", "status": 503, "detail": "Not yet.", "request_id": "i"}


def client_of(answer: Callable[[httpx.Request], httpx.Response], **options: Any) -> Client:
    connection = httpx.Client(base_url="http://service", transport=httpx.MockTransport(answer))
    return Client(http=connection, **options)


def stream_of(lines: list[Any], end: bytes = b"") -> Callable[[httpx.Request], httpx.Response]:
    text = "".join(json.dumps(line) + "\n" for line in lines).encode() + end
    return lambda _: httpx.Response(200, headers={"Content-Type": "application/jsonl"}, content=text)
