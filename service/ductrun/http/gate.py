"""The outermost layer: a request id for every request, safe headers on every response, HEAD for every GET.

A failure that nothing inside made an answer of is logged here and answered as a problem, if an answer has not begun.
"""

from __future__ import annotations

import logging
import os
import re
from typing import Final

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from ductrun.http.exchange import send_problem
from ductrun.http.problems import ProblemRaised, failure

REQUEST_ID: Final = "ductrun.request_id"
_log = logging.getLogger("ductrun")
_SAFE = re.compile(rb"[A-Za-z0-9._-]{1,64}\Z")
_ALWAYS: Final = ((b"x-content-type-options", b"nosniff"), (b"referrer-policy", b"no-referrer"))


class Gate:
    """Wraps the application. A caller's X-Request-ID is kept if it is short and safe, else one is made."""

    def __init__(self, app: ASGIApp) -> None:
        """Keep the application."""
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass a request on with its id; answer HEAD as a GET whose body is not sent."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        request_id: bytes = dict(scope["headers"]).get(b"x-request-id", b"")
        if not _SAFE.match(request_id):
            request_id = os.urandom(16).hex().encode()
        scope[REQUEST_ID] = request_id.decode()
        head = scope["method"] == "HEAD"
        if head:
            scope = {**scope, "method": "GET"}  # a copy: the server itself must know that the body is not sent
        begun = False

        async def send_on(message: Message) -> None:
            nonlocal begun
            if message["type"] == "http.response.start":
                begun = True
                message["headers"] = [*message.get("headers", ()), (b"x-request-id", request_id), *_ALWAYS]
            elif head:
                message = {**message, "body": b""}
            await send(message)

        try:
            await self.app(scope, receive, send_on)
        except ProblemRaised as problem:  # by a layer that a deployment added
            if begun:
                raise
            await send_problem(send_on, problem, scope[REQUEST_ID])
        except Exception:
            _log.exception("request %s failed", scope[REQUEST_ID])
            if begun:
                raise
            await send_problem(send_on, failure(), scope[REQUEST_ID])
