"""From the start of the process to its first ready answer, against importing FastAPI, and the memory it then has."""

from __future__ import annotations

import os
import socket
import statistics
import subprocess
import sys
import time
from pathlib import Path

from tools.benchmarks.figures import Figure
from tools.live import REPOSITORY, free_port

# bytecode is kept between starts, as an installed service keeps it
_ENVIRONMENT = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
_READY = b"GET /readyz HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n"


def is_ready(port: int) -> bool:
    try:
        with socket.create_connection(("127.0.0.1", port), 1) as asked:
            asked.sendall(_READY)
            return asked.recv(64).startswith(b"HTTP/1.1 200")
    except OSError:
        return False


def start() -> tuple[float, float]:
    """Start the service once; gives the seconds until it was ready and its resident memory [MB] then."""
    port = free_port()
    begun = time.perf_counter()
    command = [sys.executable, "-m", "ductrun", "serve", "--port", str(port)]
    server = subprocess.Popen(command, cwd=REPOSITORY, env=_ENVIRONMENT, stderr=subprocess.DEVNULL)
    try:
        while not is_ready(port):
            assert server.poll() is None, "the service did not start"
            assert time.perf_counter() - begun < 30, "the service was not ready in 30 s"
            time.sleep(0.005)
        taken = time.perf_counter() - begun
        status = Path(f"/proc/{server.pid}/status").read_text(encoding="utf-8")
        return taken, int(status.partition("VmRSS:")[2].split()[0]) / 1024
    finally:
        server.terminate()
        server.wait(30)


def import_fastapi() -> float:
    begun = time.perf_counter()
    subprocess.run([sys.executable, "-c", "import fastapi"], check=True, env=_ENVIRONMENT)
    return time.perf_counter() - begun


def measure(rounds: int) -> list[Figure]:
    start()
    import_fastapi()
    ratios, resident = [], 0.0
    ready = imported = 0.0
    for _ in range(rounds):
        imported = import_fastapi()
        ready, resident = start()
        ratios.append(ready / imported)
    detail = f"{ready:.2f} s against {imported:.2f} s in the last of {rounds} rounds"
    return [
        Figure("start to ready against importing FastAPI", statistics.median(ratios), detail, 2.0, at_most=True),
        Figure("resident memory when ready", resident, "one worker", unit="MB"),
    ]
