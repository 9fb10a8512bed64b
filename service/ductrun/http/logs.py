"""The log: one JSON object a line, to standard error."""

from __future__ import annotations

import logging
from datetime import UTC, datetime
from typing import Any

from msgspec import json


class JsonLines(logging.Formatter):
    """Writes a record as one line."""

    def format(self, record: logging.LogRecord) -> str:
        """Write a record; an exception with its trace."""
        told: dict[str, Any] = {
            "time": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "level": record.levelname.lower(),
            "event": record.name.replace("uvicorn.error", "server"),
            "message": record.getMessage(),
        }
        if record.exc_info:
            told["exception"] = self.formatException(record.exc_info)
        return json.encode(told).decode()


def log_config(log: str) -> dict[str, Any]:
    """Give the configuration of the log: everything, or what went wrong."""
    level = "INFO" if log == "requests" else "WARNING"
    handled = {"handlers": ["lines"], "level": level, "propagate": False}
    return {
        "version": 1,
        "disable_existing_loggers": False,
        "formatters": {"lines": {"()": "ductrun.http.logs.JsonLines"}},
        "handlers": {"lines": {"class": "logging.StreamHandler", "formatter": "lines", "stream": "ext://sys.stderr"}},
        "loggers": {"uvicorn": handled, "ductrun": handled},
    }
