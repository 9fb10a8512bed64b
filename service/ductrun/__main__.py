"""The command: `ductrun serve`, `ductrun contract`, `ductrun version`."""

from __future__ import annotations

import argparse
import errno
import gc
import socket
import sys
from collections.abc import Sequence

from ductrun import __version__


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; returns the exit status."""
    parser = argparse.ArgumentParser(prog="ductrun", description="The engineering behind a conduit run, over HTTP.")
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="answer requests")
    serve.add_argument("--host", default="127.0.0.1", help="address to listen on (default: %(default)s)")
    serve.add_argument("--port", type=_port, default=8000, help="port to listen on (default: %(default)s)")
    serve.add_argument("--workers", type=int, default=1, help="processes (default: %(default)s)")
    serve.add_argument(
        "--application",
        default="ductrun.http.app:create_app",
        help="what makes the application, as module:function; one of your own adds layers to it (default: %(default)s)",
    )
    commands.add_parser("contract", help="write the OpenAPI contract to standard output")
    commands.add_parser("version", help="write the version")
    chosen = parser.parse_args(arguments)
    if chosen.command == "version":
        sys.stdout.write(f"{__version__}\n")
        return 0
    try:
        return _contract() if chosen.command == "contract" else _serve(chosen)
    except Exception as error:
        from ductrun.tables.checks import CorruptTableError  # noqa: PLC0415  (the tables load with the service)

        if isinstance(error, CorruptTableError | _RefusedError):
            sys.stderr.write(f"ductrun: {error}\n")
            return 1
        raise


class _RefusedError(Exception):
    """A start that cannot be; the message says what to do."""


def _port(text: str) -> int:
    port = int(text)
    if not 1 <= port <= 65535:
        raise argparse.ArgumentTypeError("a port lies in 1 to 65535")
    return port


def _contract() -> int:
    from ductrun.http import app, contract  # noqa: PLC0415  (a slow import, and one that reads the tables)
    from ductrun.settings import Settings  # noqa: PLC0415

    sys.stdout.write(contract.written(app.create_api(Settings()).endpoints))
    return 0


def _serve(chosen: argparse.Namespace) -> int:
    _check_free(chosen.host, chosen.port)
    gc.disable()  # a start makes little garbage; the application lets the collector in when it is ready
    import uvicorn  # noqa: PLC0415  (a slow import)

    import ductrun.tables  # noqa: PLC0415, F401  (a corrupt table stops the start here, with its own message)
    from ductrun.http.server import CarefulProtocol  # noqa: PLC0415

    uvicorn.run(
        chosen.application,
        factory=True,
        http=CarefulProtocol,
        host=chosen.host,
        port=chosen.port,
        workers=chosen.workers,
        access_log=False,
        server_header=False,
        proxy_headers=False,
        timeout_keep_alive=75,
        timeout_graceful_shutdown=20,
    )
    return 0


def _check_free(host: str, port: int) -> None:
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    with socket.socket(family, socket.SOCK_STREAM) as trial:
        trial.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            trial.bind((host, port))
        except OSError as error:
            if error.errno == errno.EADDRINUSE:
                raise _RefusedError(
                    f"port {port} on {host} is taken. Stop what uses it, or choose another: make serve PORT={port + 1}"
                ) from None
            raise _RefusedError(f"cannot listen on {host} port {port}: {error.strerror}") from None


if __name__ == "__main__":
    sys.exit(main())
