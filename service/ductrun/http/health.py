"""Whether the process lives, and whether it is ready: outside the version prefix, never cached."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta, Struct, json
from starlette.requests import Request
from starlette.responses import Response

from ductrun.http.problems import ProblemRaised
from ductrun.http.stopping import STOPPING
from ductrun.tables import TABLES


class Alive(Struct, frozen=True):
    """The process answers."""

    status: Annotated[str, Meta(description="The word `alive`.")]


class Ready(Struct, frozen=True):
    """The tables are loaded and requests are welcome."""

    status: Annotated[str, Meta(description="The word `ready`.")]
    tables_version: Annotated[str, Meta(description="Hash of all reference tables.")]


class Health:
    """Readiness, set when the service has started and taken back when it stops."""

    def __init__(self) -> None:
        """Start as not ready."""
        self.ready = False

    async def livez(self, _request: Request) -> Response:
        """Say that the process answers."""
        return _no_store(Alive("alive"))

    async def readyz(self, _request: Request) -> Response:
        """Say that requests are welcome, or answer with a problem."""
        if not self.ready or STOPPING.draining:
            soon = ((b"retry-after", b"1"),)
            raise ProblemRaised("not_ready", "The service is starting or stopping.", headers=soon)
        return _no_store(Ready("ready", TABLES.hash))


def _no_store(state: Struct) -> Response:
    return Response(json.encode(state), media_type="application/json", headers={"Cache-Control": "no-store"})
