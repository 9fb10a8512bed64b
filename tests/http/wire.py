"""Raw requests to the application in process: any bytes, headers, chunks; and one that waits, to a live server."""

from __future__ import annotations

import asyncio
import json
import socket
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from ductrun.http.app import create_app
from ductrun.kit.answering import answer_to
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS

APPLICATION = create_app(Settings())
ANSWERS = {operation.name: answer_to(operation) for operation in OPERATIONS}
JSON_TYPE = [("content-type", "application/json")]


FILL_HEAD = b"POST /v1/fill HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"


def at_work(port: int, head: bytes = FILL_HEAD) -> socket.socket:
    """Open a request of a live server of which it is known that it is at work: it was asked for its body."""
    connection = socket.create_connection(("127.0.0.1", port), timeout=50)
    connection.sendall(head + b"Expect: 100-continue\r\nContent-Length: 100\r\n\r\n")
    assert connection.recv(65_536) == b"HTTP/1.1 100 Continue\r\n\r\n"
    return connection


@dataclass(frozen=True)
class Reply:
    """What came back."""

    status: int
    headers: dict[str, str]
    body: bytes

    @property
    def json(self) -> Any:
        return json.loads(self.body)


def send(
    method: str,
    target: str,
    body: bytes | Iterable[bytes] = b"",
    headers: Iterable[tuple[str, str]] = (),
    application: Any = APPLICATION,
    *,
    hang_up: bool = False,
) -> Reply | None:
    """Send one request; None if nothing came back."""
    path, _, query = target.partition("?")
    chunks = [body] if isinstance(body, bytes) else list(body)
    scope = {
        "type": "http",
        "asgi": {"version": "3.0"},
        "http_version": "1.1",
        "method": method,
        "scheme": "http",
        "path": path,
        "raw_path": path.encode(),
        "root_path": "",
        "query_string": query.encode(),
        "headers": [(name.encode("latin-1"), value.encode("latin-1")) for name, value in headers],
        "client": ("127.0.0.1", 1),
        "server": ("127.0.0.1", 80),
        "state": {},
    }
    messages = [
        {"type": "http.request", "body": chunk, "more_body": hang_up or index < len(chunks) - 1}
        for index, chunk in enumerate(chunks)
    ]
    sent: list[dict[str, Any]] = []

    async def receive() -> dict[str, Any]:
        if not messages and not hang_up:
            await asyncio.Event().wait()  # a caller who stays says nothing more
        return messages.pop(0) if messages else {"type": "http.disconnect"}

    async def answer(message: dict[str, Any]) -> None:
        sent.append(message)

    async def run() -> None:
        try:
            await application(scope, receive, answer)
        except Exception:
            if not sent:
                raise

    asyncio.run(run())
    if not sent:
        return None
    found = {name.decode().lower(): value.decode() for name, value in sent[0]["headers"]}
    return Reply(sent[0]["status"], found, b"".join(message.get("body", b"") for message in sent[1:]))


def reply(*arguments: Any, **options: Any) -> Reply:
    """Send one request that is answered."""
    found = send(*arguments, **options)
    assert found is not None
    return found


def post(operation: str, body: Any, query: str = "", headers: Iterable[tuple[str, str]] = JSON_TYPE) -> Reply:
    """Post a body, written as JSON unless it is bytes already."""
    written = body if isinstance(body, bytes) else json.dumps(body).encode()
    return reply("POST", f"/v1/{operation}{query}", written, headers)
