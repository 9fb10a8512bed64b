"""Looks after one connection, now and then: a sender or a reader that is too slow does not hold it for ever."""

from __future__ import annotations

import asyncio
from collections.abc import Hashable
from typing import Any, Final, Protocol

from ductrun.settings import Settings

LEAST_RATE: Final = 1_024  # bytes a second, over as long as somebody may be silent
_LOOKS = 8  # in as long as somebody may be silent


class Watched(Protocol):
    """What is asked of a connection."""

    transport: Any
    _received: int
    _pauses: int

    def waits_for(self) -> Hashable | None:
        """Tell what it should be sending."""

    def too_slow(self) -> None:
        """End a request that does not come."""


class Watch:
    """The watch over one connection, until it ends."""

    def __init__(self, connection: Watched, loop: asyncio.AbstractEventLoop, settings: Settings) -> None:
        """Begin to watch."""
        self._connection = connection
        self._loop = loop
        self._settings = settings
        self._wait = min(settings.sender_seconds, settings.reader_seconds, settings.keep_alive_seconds) / _LOOKS
        self._asked: Hashable | None = None
        self._sending = self._reading = loop.time()
        self._received = self._pauses = self._unread = 0
        self._next = loop.call_later(self._wait, self._look)

    def end(self) -> None:
        """Watch no more."""
        self._next.cancel()

    def _look(self) -> None:
        self._next = self._loop.call_later(self._wait, self._look)
        now = self._loop.time()
        self._look_at_sender(now)
        self._look_at_reader(now)

    def _look_at_sender(self, now: float) -> None:
        connection, asked = self._connection, self._connection.waits_for()
        received = connection._received
        seconds = self._settings.keep_alive_seconds if asked == "request" else self._settings.sender_seconds
        body = isinstance(asked, tuple) and asked[0] == "body"
        enough = body and received - self._received >= LEAST_RATE * seconds
        if asked is None or asked != self._asked or (enough and now - self._sending >= seconds):
            self._asked, self._sending, self._received = asked, now, received
        elif now - self._sending >= seconds:
            self._sending = now
            connection.too_slow()

    def _look_at_reader(self, now: float) -> None:
        connection = self._connection
        unread, seconds = connection.transport.get_write_buffer_size(), self._settings.reader_seconds
        if not unread or connection._pauses != self._pauses or self._unread - unread >= LEAST_RATE * seconds:
            self._reading, self._pauses, self._unread = now, connection._pauses, unread
        elif now - self._reading >= seconds:
            connection.transport.abort()
