"""`ductrun serve`: what is checked before a server starts, and how it starts."""

from __future__ import annotations

import errno
import gc
import ipaddress
import os
import shutil
import socket
import sys
import tempfile

from ductrun.settings import PREFIX, Settings, unknown

_WORKER_START_SECONDS = (
    60  # a worker that is silent for so long is started anew; a busy machine takes long to start one
)


class RefusedError(Exception):
    """A start that cannot be; the message says what to do."""


def serve(application: str, host: str, port: int, workers: int) -> int:
    """Answer requests until the process is told to stop."""
    settings = Settings.from_environment()
    check_open(host, settings)
    check_free(host, port)
    gc.disable()  # a start makes little garbage; the application lets the collector in when it is ready
    import uvicorn  # noqa: PLC0415  (a slow import)

    import ductrun.tables  # noqa: PLC0415, F401  (a corrupt table stops the start here, with its own message)
    from ductrun.http.logs import log_config  # noqa: PLC0415
    from ductrun.http.metrics import SHARED  # noqa: PLC0415
    from ductrun.http.server import CarefulProtocol  # noqa: PLC0415

    _tell(settings)
    shared = tempfile.mkdtemp(prefix="ductrun-") if workers > 1 and settings.metrics else None
    if shared:
        os.environ[SHARED] = shared
    try:
        uvicorn.run(
            application,
            factory=True,
            http=CarefulProtocol,
            host=host,
            port=port,
            workers=workers,
            access_log=False,
            log_config=log_config(settings.log),
            server_header=False,
            proxy_headers=False,
            timeout_keep_alive=settings.keep_alive_seconds,
            timeout_graceful_shutdown=settings.stop_seconds,
            timeout_worker_healthcheck=_WORKER_START_SECONDS,
        )
    finally:
        if shared:
            shutil.rmtree(shared, ignore_errors=True)
    return 0


def _tell(settings: Settings) -> None:
    for warning in unknown():
        sys.stderr.write(f"ductrun: {warning}\n")
    if settings.log == "requests":
        sys.stderr.write(f"ductrun: {' '.join(settings.shown())}\n")


def check_open(host: str, settings: Settings) -> None:
    """Refuse an address that others can reach, where nobody asks them for a key."""
    if settings.key_hashes or settings.open_behind_gateway or _is_loopback(host):
        return
    raise RefusedError(
        f"{host} can be reached by others, and no key is asked for. Set {PREFIX}KEY_HASHES (`ductrun key` makes a key) "
        f"or {PREFIX}OPEN_BEHIND_GATEWAY=true if a gateway in front checks who may ask."
    )


def _is_loopback(host: str) -> bool:
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"


def check_free(host: str, port: int) -> None:
    """Refuse a port that is taken, or an address that is not of this machine."""
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    with socket.socket(family, socket.SOCK_STREAM) as trial:
        trial.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            trial.bind((host, port))
        except OSError as error:
            if error.errno == errno.EADDRINUSE:
                raise RefusedError(
                    f"port {port} on {host} is taken. Stop what uses it, or choose another: make serve PORT={port + 1}"
                ) from None
            raise RefusedError(f"cannot listen on {host} port {port}: {error.strerror}") from None
