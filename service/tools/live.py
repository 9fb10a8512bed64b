"""A real server on loopback for tests and benchmarks: started, waited for, stopped."""

from __future__ import annotations

import socket
import subprocess
import sys
import time
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

REPOSITORY = Path(__file__).resolve().parents[2]


def free_port() -> int:
    """Find a port nobody listens on."""
    with socket.socket() as trial:
        trial.bind(("127.0.0.1", 0))
        return int(trial.getsockname()[1])


@contextmanager
def running(command: list[str], port: int, ready: str) -> Iterator[str]:
    """Run a server until the block ends; gives its address once `ready` answers."""
    server = subprocess.Popen([sys.executable, "-m", *command], cwd=REPOSITORY)
    address = f"http://127.0.0.1:{port}"
    try:
        deadline = time.monotonic() + 30
        while True:
            try:
                urllib.request.urlopen(address + ready, timeout=1).close()
                break
            except OSError:
                if time.monotonic() > deadline or server.poll() is not None:
                    raise
                time.sleep(0.05)
        yield address
    finally:
        server.terminate()
        server.wait(30)


@contextmanager
def serving() -> Iterator[str]:
    """Run the service as its command starts it."""
    port = free_port()
    with running(["ductrun", "serve", "--port", str(port)], port, "/readyz") as address:
        yield address
