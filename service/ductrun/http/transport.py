"""A transport that sends what is written within one turn of the event loop in one write, at the end of the turn."""

from __future__ import annotations

import asyncio
from typing import Any

_LINGER = 1.0  # seconds


class GatheringTransport:
    """Gathers what is written; all else is the transport's.

    One that `lingers` closes its own half only, and the rest a little later: a caller who is still sending would lose
    the last answer to the reset of a connection that is gone.
    """

    def __init__(self, transport: asyncio.Transport) -> None:
        """Keep the transport, and at hand what every request asks of it."""
        self._transport = transport
        self._waiting: list[bytes] = []
        self._loop = asyncio.get_running_loop()
        self._call_soon = self._loop.call_soon
        self.lingers = False
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
        """Send what waits, then close; what is written after that is let fall."""
        self._leave()
        if self.lingers and not self.is_closing():
            self.is_closing = _yes
            self._transport.write_eof()
            self._transport.resume_reading()  # what comes yet is let fall as well: unread it would reset the connection
            self._loop.call_later(_LINGER, self._transport.close)
        else:
            self._transport.close()

    def _leave(self) -> None:
        if self._waiting and not self.is_closing():
            self._transport.writelines(self._waiting)
        self._waiting = []


def _yes() -> bool:
    return True
