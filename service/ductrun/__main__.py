"""The command: `ductrun serve`, `answer`, `doctor`, `key`, `contract`, `version`."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence

from ductrun import __version__


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; returns the exit status."""
    chosen = _parser().parse_args(arguments)
    if chosen.command == "version":
        sys.stdout.write(f"{__version__}\n")
        return 0
    from ductrun.serving import RefusedError  # noqa: PLC0415  (the version needs none of it)
    from ductrun.settings import SettingError  # noqa: PLC0415

    try:
        return int(_COMMANDS[chosen.command](chosen))
    except (RefusedError, SettingError) as error:
        sys.stderr.write(f"ductrun: {error}\n")
        return 1
    except Exception as error:
        from ductrun.tables.checks import CorruptTableError  # noqa: PLC0415  (the tables load with the service)

        if isinstance(error, CorruptTableError):
            sys.stderr.write(f"ductrun: {error}\n")
            return 1
        raise


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="ductrun", description="The engineering behind a conduit run, over HTTP.")
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="answer requests")
    doctor = commands.add_parser("doctor", help="look whether the service could start here and answers right")
    for command in (serve, doctor):
        command.add_argument("--host", default="127.0.0.1", help="address to listen on (default: %(default)s)")
        command.add_argument("--port", type=_port, default=8000, help="port to listen on (default: %(default)s)")
    serve.add_argument("--workers", type=_workers, default=1, help="processes (default: %(default)s)")
    serve.add_argument(
        "--application",
        default="ductrun.http.app:create_app",
        help="what makes the application, as module:function; one of your own adds layers to it (default: %(default)s)",
    )
    answer = commands.add_parser("answer", help="answer lines from standard input, as a stream does, without a server")
    answer.add_argument("--workers", type=_workers, default=1, help="processes (default: %(default)s)")
    answer.add_argument("--query", default="", help="how answers are wanted, as in a URL: units=metric&working=true")
    commands.add_parser("key", help="make a key, and the hash of it that the service is given")
    commands.add_parser("contract", help="write the OpenAPI contract to standard output")
    commands.add_parser("version", help="write the version")
    return parser


def _port(text: str) -> int:
    return _between(text, 1, 65535, "a port lies in 1 to 65535")


def _workers(text: str) -> int:
    return _between(text, 1, 256, "there are 1 to 256 processes")


def _between(text: str, least: int, most: int, otherwise: str) -> int:
    digits = text.isascii() and text.isdecimal() and len(text) < 12
    if not digits or not least <= int(text) <= most:
        raise argparse.ArgumentTypeError(otherwise)
    return int(text)


def _contract(_chosen: argparse.Namespace) -> int:
    from ductrun.http import app, contract  # noqa: PLC0415  (a slow import, and one that reads the tables)
    from ductrun.settings import Settings  # noqa: PLC0415

    sys.stdout.write(contract.written(app.create_api(Settings()).endpoints))
    return 0


def _serve(chosen: argparse.Namespace) -> int:
    from ductrun import serving  # noqa: PLC0415

    return serving.serve(chosen.application, chosen.host, chosen.port, chosen.workers)


def _doctor(chosen: argparse.Namespace) -> int:
    from ductrun.doctor import examine  # noqa: PLC0415

    well = True
    for good, found in examine(chosen.host, chosen.port):
        well &= good
        sys.stdout.write(f"{'well ' if good else 'WRONG'}  {found}\n")
    return 0 if well else 1


def _answer(chosen: argparse.Namespace) -> int:
    from ductrun import lines  # noqa: PLC0415  (a slow import, and one that reads the tables)
    from ductrun.http.exchange import read_query  # noqa: PLC0415
    from ductrun.http.problems import ProblemRaised  # noqa: PLC0415
    from ductrun.serving import RefusedError  # noqa: PLC0415
    from ductrun.settings import Settings  # noqa: PLC0415

    try:
        read_query(chosen.query.encode())
    except ProblemRaised as problem:
        raise RefusedError(" ".join([problem.detail, *(error.message for error in problem.errors or ())])) from None
    limit = Settings.from_environment().max_body_bytes
    try:
        lines.answer(sys.stdin.buffer, sys.stdout.buffer, chosen.query.encode(), chosen.workers, limit)
    except lines.BrokenProcessPool:
        raise RefusedError("a process ended before its time, and with it the answers. Run it again.") from None
    except BrokenPipeError:  # nobody reads on
        return 1
    return 0


def _key(_chosen: argparse.Namespace) -> int:
    from ductrun.http.keys import hash_of, new_key  # noqa: PLC0415

    key = new_key()
    sys.stdout.write(f"key, for the caller alone: {key}\nDUCTRUN_KEY_HASHES={hash_of(key.encode())}\n")
    return 0


_COMMANDS = {
    "serve": _serve,
    "doctor": _doctor,
    "answer": _answer,
    "key": _key,
    "contract": _contract,
}


if __name__ == "__main__":
    sys.exit(main())
