"""The application: one list of endpoints, of which the dispatch and the contract are made, in FastAPI's house.

FastAPI keeps the start and the stop, the layers that a deployment adds and the routes it adds; what the service itself
answers stands in the list and is found by its method and path in one look.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, NamedTuple

from fastapi import FastAPI
from fastapi.middleware.asyncexitstack import AsyncExitStackMiddleware
from starlette.middleware.exceptions import ExceptionMiddleware
from starlette.types import ASGIApp, Receive, Scope, Send

from ductrun.http.aside import ClientGone
from ductrun.http.exchange import send_problem
from ductrun.http.gate import REQUEST_ID
from ductrun.http.problems import ProblemRaised
from ductrun.http.refusals import problem_of
from ductrun.kit.answering import REFUSALS


class Endpoint(NamedTuple):
    """A method at a path, what answers it, and what the contract says of it; None of what is not in the contract."""

    method: str
    path: str
    app: ASGIApp
    described: dict[str, Any] | None = None


class Dispatch:
    """Gives each request to its endpoint, and makes a problem of what that raises; the rest is for `elsewhere`."""

    def __init__(self, endpoints: Iterable[Endpoint], elsewhere: ASGIApp) -> None:
        """Make the map of paths and methods."""
        self._elsewhere = elsewhere
        self._at: dict[str, dict[str, ASGIApp]] = {}
        for endpoint in endpoints:
            self._at.setdefault(endpoint.path, {})[endpoint.method] = endpoint.app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a request."""
        try:
            await self._found(scope)(scope, receive, send)
        except ProblemRaised as problem:
            await send_problem(send, problem, scope[REQUEST_ID])
        except REFUSALS as refusal:
            await send_problem(send, problem_of(refusal), scope[REQUEST_ID])
        except ClientGone:
            return

    def _found(self, scope: Scope) -> ASGIApp:
        if scope["type"] != "http":
            return self._elsewhere
        here = self._at.get(scope["path"].removeprefix(scope.get("root_path", "")))
        if here is None:
            return self._elsewhere
        app = here.get(scope["method"])
        if app is None:
            raise not_allowed(", ".join(here))
        return app


def not_allowed(methods: str) -> ProblemRaised:
    """Give the problem of a method that a path does not take."""
    return ProblemRaised("method_not_allowed", f"Allowed here: {methods}.", headers=((b"allow", methods.encode()),))


class Api(FastAPI):
    """FastAPI less what this service has its own form of: telemetry, body limit, the dispatch of what is in the list.

    Layers and routes are added to it as to any other; a layer is around everything, list and routes alike.
    """

    def __init__(self, endpoints: Iterable[Endpoint], **options: Any) -> None:
        """Keep the endpoints."""
        super().__init__(**options)
        self.endpoints = tuple(endpoints)

    def build_middleware_stack(self) -> ASGIApp:
        """Put the layers that were added, the last one outermost, around the dispatch; failures are the gate's."""
        routes = ExceptionMiddleware(AsyncExitStackMiddleware(self.router), handlers=self.exception_handlers)
        app: ASGIApp = Dispatch(self.endpoints, routes)
        for layer, arguments, options in reversed(self.user_middleware):
            app = layer(app, *arguments, **options)
        return app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer without FastAPI's telemetry, which looks into the environment at every request."""
        if self.middleware_stack is None:
            self.middleware_stack = self.build_middleware_stack()
        scope["app"] = self
        await self.middleware_stack(scope, receive, send)
