"""uvicorn's HTTP protocol, but for one thing: the head and the body of an answer leave in one write.

uvicorn writes the head as soon as the answer starts, which costs a system call, a packet and a waking of the caller of
their own. Here what is written within one turn of the event loop is gathered and leaves at its end.
"""

from __future__ import annotations

import asyncio
from typing import Any

from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol


class GatheringTransport:
    """A transport that sends what is written within one turn of the event loop at once; all else is the transport's."""

    def __init__(self, transport: asyncio.Transport) -> None:
        """Keep the transport, and at hand what every request asks of it."""
        self._transport = transport
        self._waiting: list[bytes] = []
        self._call_soon = asyncio.get_running_loop().call_soon
        self.is_closing = transport.is_closing
        self.pause_reading = transport.pause_reading
        self.resume_reading = transport.resume_reading

    def __getattr__(self, name: str) -> Any:
        """Give whatever else the transport has."""
        return getattr(self._transport, name)

    def write(self, data: bytes) -> None:
        """Send bytes at the end of this turn."""
        if not self._waiting:
            self._call_soon(self._leave)
        self._waiting.append(data)

    def close(self) -> None:
        """Send what waits, then close."""
        self._leave()
        self._transport.close()

    def _leave(self) -> None:
        if self._waiting and not self.is_closing():
            self._transport.writelines(self._waiting)
        self._waiting = []


class GatheringProtocol(HttpToolsProtocol):
    """The protocol with a transport that gathers."""

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Take a connection."""
        super().connection_made(GatheringTransport(transport))  # type: ignore[arg-type]
