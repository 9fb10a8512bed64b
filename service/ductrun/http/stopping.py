"""How the process stops when it is told to: nothing that has begun is cut that ends in time.

First it says that it is not ready, and every answer closes its connection, while requests are still taken: whoever
sends them learns it in that time. Then no more are taken, streams end with a line that says so, and what has begun is
finished.
"""

from __future__ import annotations

import asyncio
import signal
from collections.abc import Callable
from types import FrameType
from typing import Any


class Stopping:
    """Whether the process is being stopped, and who is to be told that it stops."""

    def __init__(self) -> None:
        """Start as one that goes on."""
        self.draining = False
        self.stopped = False
        self._told: set[Callable[[], Any]] = set()

    def tell(self, listener: Callable[[], Any]) -> None:
        """Call a function once no more requests are taken; at once if none are."""
        if self.stopped:
            listener()
        else:
            self._told.add(listener)

    def forget(self, listener: Callable[[], Any]) -> None:
        """Call it no more."""
        self._told.discard(listener)

    def drain(self) -> None:
        """Be not ready, and close each connection with its answer."""
        self.draining = True

    def stop(self) -> None:
        """Tell everybody."""
        self.draining = self.stopped = True
        told, self._told = self._told, set()
        for listener in told:
            listener()

    def wait_on_term(self, seconds: float) -> None:
        """Put the wait before whatever happens at TERM; a second TERM does not wait."""
        ends = signal.getsignal(signal.SIGTERM)
        if not callable(ends):  # nothing that serves has asked for the signal
            return
        loop = asyncio.get_running_loop()

        def terminated(number: int, frame: FrameType | None) -> None:
            wait = 0.0 if self.draining else seconds
            self.drain()
            loop.call_soon_threadsafe(loop.call_later, wait, ends, number, frame)

        signal.signal(signal.SIGTERM, terminated)


STOPPING = Stopping()
