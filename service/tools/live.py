"""A real server on loopback for tests and benchmarks: started, waited for, stopped."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
import urllib.request
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path

EMPTY: Mapping[str, str] = {}
QUIET = {"DUCTRUN_LOG": "failures", "DUCTRUN_DRAIN_SECONDS": "0"}  # unless the caller's environment says otherwise
_START_SECONDS = 120  # of a machine that is very busy
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
    command: list[str] | None = None,
    port: int = 0,
    ready: str = "/readyz",
    environment: Mapping[str, str] = EMPTY,
    errors: int | None = None,
    options: Sequence[str] = (),
) -> Iterator[tuple[str, subprocess.Popen[bytes]]]:
    """Run a server, the service unless another is named, until the block ends; gives its address and its process.

    A `command` has its `port`, the service its `options`. `errors` is where standard error goes, if not to our own.
    """
    at = port or free_port()
    server = _begun(command or _service_at(at, options), environment, errors)
    try:
        if not _comes(server, at, ready) and not port:  # somebody took the port after it was found free
            at = free_port()
            server = _begun(_service_at(at, options), environment, errors)
            _comes(server, at, ready)
        assert server.poll() is None, f"the server ended with {server.returncode} before it answered"
        yield f"http://127.0.0.1:{at}", server
    finally:
        _ended(server)


def _service_at(port: int, options: Sequence[str]) -> list[str]:
    return ["ductrun", "serve", "--port", str(port), *options]


def _begun(command: list[str], environment: Mapping[str, str], errors: int | None) -> subprocess.Popen[bytes]:
    return subprocess.Popen(
        [sys.executable, "-m", *command],
        cwd=REPOSITORY,
        env=QUIET | dict(os.environ) | dict(environment),
        stderr=errors,
    )


def _comes(server: subprocess.Popen[bytes], port: int, ready: str) -> bool:
    """Wait until a server answers; no if it ended instead."""
    deadline = time.monotonic() + _START_SECONDS
    while server.poll() is None:
        try:
            urllib.request.urlopen(f"http://127.0.0.1:{port}{ready}", timeout=5).close()
        except OSError:
            if time.monotonic() > deadline:
                raise
            time.sleep(0.05)
        else:
            return True
    return False


def _ended(server: subprocess.Popen[bytes]) -> None:
    server.terminate()
    if server.stderr is not None:
        server.stderr.close()
    try:
        server.wait(30)
    except subprocess.TimeoutExpired:
        server.kill()
        server.wait(30)
        raise


@contextmanager
def serving(**environment: str) -> Iterator[str]:
    """Run the service as its command starts it."""
    with started(environment=environment) as (address, _):
        yield address
