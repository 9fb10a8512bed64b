"""`ductrun doctor`: whether the service could start here, and answers right."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from ductrun.serving import RefusedError, check_free, check_open
from ductrun.settings import SettingError, Settings, unknown

# 323 ft of spacers no more than 5 ft apart and one at either end: ceil(323 / 5) + 1 (derived)
_QUESTION = (
    b'{"length":{"value":323,"unit":"ft"},"tiers":[3,3],'
    b'"interval":{"kind":"distance","distance":{"value":5,"unit":"ft"}}}'
)
_ANSWER = 66


def examine(host: str, port: int) -> Iterator[tuple[bool, str]]:
    """Give, of each thing that is looked at, whether it is well and what was found."""
    yield from (_looked(name, look) for name, look in _looks(host, port).items())


def _looks(host: str, port: int) -> dict[str, Callable[[], str]]:
    def settings() -> str:
        warnings = list(unknown())
        if warnings:
            raise RefusedError(" ".join(warnings))
        return " ".join(Settings.from_environment().shown())

    def address() -> str:
        check_open(host, Settings.from_environment())
        check_free(host, port)
        return f"{host} port {port} can be listened on"

    return {"tables": _tables, "settings": settings, "address": address, "answer": _answer}


def _looked(name: str, look: Callable[[], str]) -> tuple[bool, str]:
    try:
        return True, f"{name}: {look()}"
    except (RefusedError, SettingError) as fault:
        return False, f"{name}: {fault}"
    except Exception as fault:  # whatever is wrong here is to be told, not to end the examination
        return False, f"{name}: {type(fault).__name__}: {fault}"


def _tables() -> str:
    from ductrun.tables import TABLES  # noqa: PLC0415  (corrupt ones are to be told here)

    return f"in agreement, version {TABLES.hash}"


def _answer() -> str:
    from msgspec import json  # noqa: PLC0415

    from ductrun.kit.answering import Chosen, answer_to  # noqa: PLC0415
    from ductrun.subjects import OPERATIONS  # noqa: PLC0415

    [spacers] = [operation for operation in OPERATIONS if operation.name == "spacers"]
    found = json.decode(answer_to(spacers)(_QUESTION, Chosen()))["result"]["station_count"]
    if found != _ANSWER:
        raise RefusedError(f"{found} stations on 323 ft, where {_ANSWER} are right. Install the service anew.")
    return f"{found} stations on 323 ft, as by hand"
