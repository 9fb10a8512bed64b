"""The log: one JSON object a line, to standard error, written by one thread.

Whoever reads the log may stop reading, and whoever logs must not wait for that, least of all the event loop: a line is
left in memory and is gone. What finds no room there is let fall, and the log says how much was.
"""

from __future__ import annotations

import logging
import os
import threading
from collections import deque
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from typing import Any, Final

from msgspec import json

MOST_WAITING: Final = 4_194_304  # bytes
_AT_ONCE = 4_096  # bytes, which a pipe takes in one piece (POSIX: PIPE_BUF)
_LAST_WAIT = 2.0  # seconds for what is left when the service ends
_LAST_LINE_WAIT = 0.5  # and for each line after that


class Log:
    """What waits to be written, and the thread that writes it."""

    def __init__(self, write: Callable[[bytes], Any]) -> None:
        """Keep what takes the bytes: it may take its time, or raise OSError."""
        self._write = write
        self._changed = threading.Condition()
        self._waiting: deque[bytes] = deque()
        self._size = self._dropped = 0
        self._writing = False
        self._thread: threading.Thread | None = None
        self._ends = False

    def add(self, lines: Iterable[bytes]) -> None:
        """Leave whole lines to be written."""
        with self._changed:
            for line in lines:
                if self._size + len(line) > MOST_WAITING:
                    self._dropped += 1
                else:
                    self._waiting.append(line)
                    self._size += len(line)
            if self._thread is None:
                self._thread = threading.Thread(target=self._write_on, name="log", daemon=True)
                self._thread.start()
            self._changed.notify_all()
        if self._ends:
            self.flush(_LAST_LINE_WAIT)

    def flush(self, seconds: float = _LAST_WAIT) -> None:
        """Wait until all is written, but no longer than that."""
        with self._changed:
            self._changed.wait_for(lambda: not self._waiting and not self._writing, seconds)

    def start(self) -> None:
        """Wait for no line, from now on."""
        self._ends = False

    def end(self) -> None:
        """Write what is left, and wait for what comes yet: the process may be gone with the next instruction."""
        self._ends = True
        self.flush()

    def _write_on(self) -> None:
        while True:
            with self._changed:
                self._writing = False
                self._changed.notify_all()
                self._changed.wait_for(lambda: self._waiting)
                self._writing = True
                lines = self._taken()
                told = self._dropped if not self._waiting else 0
                self._dropped -= told
            try:
                self._write(b"".join([*lines, _told_of(told)] if told else lines))
            except OSError:  # nobody reads on, or there is no room: there may be again
                with self._changed:
                    self._dropped += told + len(lines)

    def _taken(self) -> list[bytes]:
        """Take lines that a pipe takes at once, so that those of several workers do not mix."""
        lines = [self._waiting.popleft()]
        size = len(lines[0])
        while self._waiting and size + len(self._waiting[0]) <= _AT_ONCE:
            lines.append(self._waiting.popleft())
            size += len(lines[-1])
        self._size -= size
        return lines


def _told_of(dropped: int) -> bytes:
    return _line(datetime.now(UTC), "warning", "log", f"{dropped} line(s) were dropped: the log was not read")


def _line(at: datetime, level: str, event: str, message: str, **more: str) -> bytes:
    told = {"time": at.isoformat(timespec="milliseconds"), "level": level, "event": event, "message": message}
    return json.encode(told | more) + b"\n"


def _to_standard_error(written: bytes) -> None:
    while written:
        written = written[os.write(2, written) :]


LOG: Final = Log(_to_standard_error)


class JsonLines(logging.Handler):
    """Leaves each record as one line."""

    def emit(self, record: logging.LogRecord) -> None:
        """Leave a record; an exception with its trace."""
        try:
            LOG.add([line_of(record)])
        except Exception:
            self.handleError(record)

    def flush(self) -> None:
        """Wait for what is left, when the process ends."""
        LOG.flush()


def line_of(record: logging.LogRecord) -> bytes:
    """Write a record as one line."""
    at, event = datetime.fromtimestamp(record.created, UTC), record.name.replace("uvicorn.error", "server")
    more = {}
    if record.exc_info:
        more["exception"] = logging.Formatter().formatException(record.exc_info)
    return _line(at, record.levelname.lower(), event, record.getMessage(), **more)


def log_config(log: str) -> dict[str, Any]:
    """Give the configuration of the log: everything, or what went wrong."""
    level = "INFO" if log == "requests" else "WARNING"
    handled = {"handlers": ["lines"], "level": level, "propagate": False}
    return {
        "version": 1,
        "disable_existing_loggers": False,
        "handlers": {"lines": {"class": "ductrun.http.logs.JsonLines"}},
        "loggers": {"uvicorn": handled, "ductrun": handled},
        "root": {"handlers": ["lines"], "level": "WARNING"},  # what the event loop itself has to say
    }
