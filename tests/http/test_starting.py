"""How `ductrun serve` starts its server."""

from __future__ import annotations

import gc
import pickle
import subprocess
import sys
from typing import Any

import pytest
import uvicorn
from ductrun.serving import serve
from tools.live import free_port


def options_of(monkeypatch: pytest.MonkeyPatch) -> dict[str, Any]:
    """Give what uvicorn is started with."""
    given: dict[str, Any] = {}
    monkeypatch.setenv("DUCTRUN_METRICS", "false")
    monkeypatch.setattr(gc, "disable", lambda: None)
    monkeypatch.setattr(uvicorn, "run", lambda application, **options: given.update(options, app=application))
    assert serve("layered:application", "127.0.0.1", free_port(), 2) == 0
    return {**given, "log_config": None}


def test_a_worker_that_loads_slowly_on_a_busy_machine_is_not_killed_for_it(monkeypatch: pytest.MonkeyPatch) -> None:
    config = uvicorn.Config(**options_of(monkeypatch))
    assert config.workers == 2
    assert config.timeout_worker_healthcheck >= 20  # uvicorn's five seconds kill it, and the next, for ever


def test_a_worker_shows_that_it_lives_before_it_loads_the_calculations(monkeypatch: pytest.MonkeyPatch) -> None:
    given = options_of(monkeypatch)
    read = "import pickle, sys; pickle.load(sys.stdin.buffer); print('ductrun.subjects' in sys.modules)"
    sent = pickle.dumps(uvicorn.Config(**given))  # as a worker is sent it
    done = subprocess.run([sys.executable, "-c", read], input=sent, capture_output=True, check=True, timeout=60)
    assert done.stdout.strip() == b"False"
