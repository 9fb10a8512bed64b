"""A real server on loopback for tests and benchmarks: started, waited for, stopped."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
import urllib.request
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

EMPTY: Mapping[str, str] = {}
QUIET = {"DUCTRUN_LOG": "failures", "DUCTRUN_DRAIN_SECONDS": "0"}  # unless the caller's environment says otherwise
REPOSITORY = Path(__file__).resolve().parents[2]


def free_port() -> int:
    """Find a port nobody listens on."""
    with socket.socket() as trial:
        trial.bind(("127.0.0.1", 0))
        return int(trial.getsockname()[1])


@contextmanager
def running(command: list[str], port: int, ready: str) -> Iterator[str]:
    """Run a server until the block ends; gives its address once `ready` answers."""
    with started(command, port, ready) as (address, _):
        yield address


@contextmanager
def started(
    command: list[str] | None = None, port: int = 0, ready: str = "/readyz", environment: Mapping[str, str] = EMPTY
) -> Iterator[tuple[str, subprocess.Popen[bytes]]]:
    """Run a server, the service unless another is named, until the block ends; gives its address and its process."""
    port = port or free_port()
    command = command or ["ductrun", "serve", "--port", str(port)]
    server = subprocess.Popen(
        [sys.executable, "-m", *command], cwd=REPOSITORY, env=QUIET | dict(os.environ) | dict(environment)
    )
    address = f"http://127.0.0.1:{port}"
    try:
        deadline = time.monotonic() + 60  # a machine may be busy with much else
        while True:
            try:
                urllib.request.urlopen(address + ready, timeout=1).close()
                break
            except OSError:
                if time.monotonic() > deadline or server.poll() is not None:
                    raise
                time.sleep(0.05)
        yield address, server
    finally:
        server.terminate()
        server.wait(30)


@contextmanager
def serving(**environment: str) -> Iterator[str]:
    """Run the service as its command starts it."""
    with started(environment=environment) as (address, _):
        yield address
