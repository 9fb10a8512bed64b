"""What an operator sees: a line of the log and the figures of each request, written beside the path it takes.

A request leaves a record in memory and is gone. A thread makes lines and figures of what was left, a few at a time and
with pauses; what writes the lines is another, so that the figures stay right where nobody reads the log.
"""

from __future__ import annotations

import logging
import re
import threading
from collections import deque
from collections.abc import Iterable
from datetime import UTC, datetime
from typing import Any, Final, NamedTuple

from ductrun.http.logs import LOG
from ductrun.http.metrics import metrics

_log = logging.getLogger("ductrun")
ITEMS: Final = "ductrun.items"  # in the scope: how many items a request had
GONE: Final = 499  # no status of HTTP: the caller went before the answer
CUT: Final = 598  # nor is this: the service stopped before the end of the answer
_EVERY = 0.25  # seconds
_AT_ONCE = 64  # records, some tenths of a millisecond
_PAUSE = 0.002  # seconds
_MOST = 100_000
_TRACE = re.compile(rb"[0-9a-f]{2}-([0-9a-f]{32})-([0-9a-f]{16})-[0-9a-f]{2}\Z")


class Seen(NamedTuple):
    """One request that is over."""

    at: float  # seconds since 1970
    request_id: str
    path: str
    status: int
    seconds: float
    items: int | None
    traceparent: bytes


class Eyes:
    """Gathers what is over, and writes it; what is in flight is counted by the gate."""

    def __init__(self) -> None:
        """Start with closed eyes: nothing is gathered."""
        self.open = False
        self.in_flight = 0
        self.gathered: deque[Seen] = deque(maxlen=_MOST)
        self._operations: dict[str, str] = {}
        self._logs = self._counts = self._failing = False
        self._ended = threading.Event()
        self._thread: threading.Thread | None = None

    def name(self, paths: Iterable[str]) -> None:
        """Take the paths there are, which are told by what stands behind the version; all else is `other`."""
        self._operations = {path: path.removeprefix("/v1/").lstrip("/") or "front" for path in paths}

    def start(self, *, logs: bool, counts: bool) -> None:
        """Open the eyes for the log, the figures or both."""
        self._logs, self._counts = logs, counts
        self.open = logs or counts
        if self.open and self._thread is None:
            self._ended.clear()
            self._thread = threading.Thread(target=self._write_on, name="eyes", daemon=True)
            self._thread.start()

    def end(self) -> None:
        """Write what is left."""
        if self._thread is not None:
            self._ended.set()
            self._thread.join(5)
            self._thread = None
        self.open = False

    def write(self) -> None:
        """Write some of what was gathered."""
        seen = [self.gathered.popleft() for _ in range(min(len(self.gathered), _AT_ONCE))]
        if self._logs and seen:
            LOG.add([self._line(one).encode() for one in seen])
        if self._counts:
            self._count(seen)

    def _write_on(self) -> None:
        while not self._ended.wait(_PAUSE if self.gathered else _EVERY):
            self.write()
        while self.gathered:
            self.write()

    def _count(self, seen: list[Seen]) -> None:
        """Count what is over; what cannot be counted, as where a file has no room, ends neither log nor figures."""
        failed = None
        for one in seen:
            try:
                metrics().count(self._operations.get(one.path, "other"), one.status, one.seconds, one.items)
            except Exception as error:
                failed = error
        try:
            metrics().in_flight.set(self.in_flight)
        except Exception as error:
            failed = error
        if failed is None:
            self._failing = self._failing and not seen
        elif not self._failing:
            self._failing = True
            _log.error("not every request is counted", exc_info=failed)

    def _line(self, one: Seen) -> str:
        operation = self._operations.get(one.path, "other")
        items = "" if one.items is None else f',"items":{one.items}'
        trace = traced(one.traceparent)
        return (
            f'{{"time":"{datetime.fromtimestamp(one.at, UTC).isoformat(timespec="milliseconds")}","level":"info",'
            f'"event":"request","request_id":"{one.request_id}","operation":"{operation}",'
            f'"status":{one.status},"milliseconds":{one.seconds * 1e3:.3f}{items}{trace}}}\n'
        )


def traced(traceparent: bytes) -> str:
    """Write the ids of a trace as members of a line; nothing of a header that is none (W3C Trace Context)."""
    found: Any = _TRACE.match(traceparent) if traceparent else None
    if found is None or traceparent.startswith(b"ff") or not found[1].strip(b"0") or not found[2].strip(b"0"):
        return ""
    return f',"trace_id":"{found[1].decode()}","parent_id":"{found[2].decode()}"'


EYES = Eyes()
