"""FastAPI less what this service has its own form of, or no use for, on the way of every request."""

from __future__ import annotations

from collections.abc import Callable, Coroutine
from typing import Any

from fastapi import FastAPI, Request, Response
from fastapi.routing import APIRoute
from starlette.applications import Starlette
from starlette.middleware.exceptions import ExceptionMiddleware
from starlette.types import ASGIApp, Receive, Scope, Send

from ductrun.http.calculations import Answering, CalculationRoute


class Api(FastAPI):
    """The application: routes and contract are FastAPI's; telemetry, body limit and exit stacks are left out.

    A POST whose path is that of a calculation goes to it at once. Everything else, another method or a path behind a
    prefix among it, goes the way of the framework and its router.
    """

    def __init__(self, **options: Any) -> None:
        """Start without routes."""
        super().__init__(**options)
        self._calculations: dict[str, ASGIApp] = {}

    def add_calculation(self, path: str, endpoint: Answering, options: dict[str, Any]) -> None:
        """Add an endpoint that answers requests itself."""
        self.router.routes.append(CalculationRoute(path, endpoint, **options))
        self._calculations[path] = endpoint.app

    def build_middleware_stack(self) -> ASGIApp:
        """Put only the layer that turns exceptions into answers around the router; failures are the gate's."""
        return ExceptionMiddleware(self.router, handlers=self.exception_handlers)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer without FastAPI's telemetry, which looks into the environment at every request."""
        if scope["type"] == "http" and scope["method"] == "POST" and not scope.get("root_path"):
            calculation = self._calculations.get(scope["path"])
            if calculation is not None:
                await calculation(scope, receive, send)
                return
        await Starlette.__call__(self, scope, receive, send)


class PlainRoute(APIRoute):
    """A route whose endpoint takes the request and gives the response, with nothing to inject or validate."""

    def get_route_handler(self) -> Callable[[Request], Coroutine[Any, Any, Response]]:
        """Give the endpoint itself."""
        endpoint: Callable[[Request], Coroutine[Any, Any, Response]] = self.endpoint
        return endpoint
