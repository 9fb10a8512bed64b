"""How `ductrun serve` starts its server."""

from __future__ import annotations

import gc
from typing import Any

import pytest
import uvicorn
from ductrun.serving import serve
from tools.live import free_port


def test_a_worker_that_loads_slowly_on_a_busy_machine_is_not_killed_for_it(monkeypatch: pytest.MonkeyPatch) -> None:
    given: dict[str, Any] = {}
    monkeypatch.setenv("DUCTRUN_METRICS", "false")
    monkeypatch.setattr(gc, "disable", lambda: None)
    monkeypatch.setattr(uvicorn, "run", lambda application, **options: given.update(options, app=application))
    assert serve("layered:application", "127.0.0.1", free_port(), 2) == 0
    config = uvicorn.Config(**{**given, "log_config": None})
    assert config.workers == 2
    assert config.timeout_worker_healthcheck >= 60  # uvicorn's five seconds kill it, and the next, for ever
