"""The outermost layer: a request id for every request, safe headers on every response, HEAD for every GET.

It is the one door: where keys are set, they are asked for here and nowhere else, of everything but the two probes.

A failure that nothing inside made an answer of is logged here and answered as a problem, if an answer has not begun.
"""

from __future__ import annotations

import logging
import os
import re
from time import perf_counter, time
from typing import Final

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from ductrun.http.exchange import send_problem
from ductrun.http.eyes import EYES, GONE, ITEMS, Seen
from ductrun.http.keys import Keys
from ductrun.http.problems import ProblemRaised, failure
from ductrun.http.stopping import STOPPING
from ductrun.settings import Settings

REQUEST_ID: Final = "ductrun.request_id"
_log = logging.getLogger("ductrun")
_SAFE = re.compile(rb"[A-Za-z0-9._-]{1,64}\Z")
OPEN_TO_ALL: Final = frozenset({"/livez", "/readyz"})
_CLOSES = (b"connection", b"close")
_ALWAYS: Final = ((b"x-content-type-options", b"nosniff"), (b"referrer-policy", b"no-referrer"))


class Gate:
    """Wraps the application. A caller's X-Request-ID is kept if it is short and safe, else one is made."""

    def __init__(self, app: ASGIApp, settings: Settings | None = None) -> None:
        """Keep the application, and the keys that the settings, those of the environment if none are given, name."""
        self.app = app
        hashes = (settings or Settings.from_environment()).key_hashes
        self._keys = Keys(hashes) if hashes else None

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass a request on with its id; answer HEAD as a GET whose body is not sent."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        headers = dict(scope["headers"])
        request_id: bytes = headers.get(b"x-request-id", b"")
        if not _SAFE.match(request_id):
            request_id = os.urandom(16).hex().encode()
        scope[REQUEST_ID] = request_id.decode()
        head = scope["method"] == "HEAD"
        if head:
            scope = {**scope, "method": "GET"}  # a copy: the server itself must know that the body is not sent
        status = 0

        async def send_on(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                message["headers"] = [*message.get("headers", ()), (b"x-request-id", request_id), *_ALWAYS]
                if STOPPING.draining:
                    message["headers"].append(_CLOSES)
            elif head:
                message = {**message, "body": b""}
            await send(message)

        began = perf_counter()
        EYES.in_flight += 1
        try:
            if self._keys is not None and scope["path"] not in OPEN_TO_ALL:
                self._keys.check(headers.get(b"authorization", b""))
            await self.app(scope, receive, send_on)
        except ProblemRaised as problem:  # no key, or what a layer says that a deployment added
            if status:
                raise
            await send_problem(send_on, problem, scope[REQUEST_ID])
        except Exception:
            _log.exception("request %s failed", scope[REQUEST_ID])
            if status:
                raise
            await send_problem(send_on, failure(), scope[REQUEST_ID])
        finally:
            EYES.in_flight -= 1
            if EYES.open:
                EYES.gathered.append(
                    Seen(
                        time(),
                        scope[REQUEST_ID],
                        scope.get("path", ""),
                        status or GONE,
                        perf_counter() - began,
                        scope.get(ITEMS),
                        headers.get(b"traceparent", b""),
                    )
                )
