"""The outermost layer: a request id for every request, safe headers on every response, HEAD for every GET.

It is the one door: where keys are set, they are asked for here and nowhere else, of everything but the two probes.

A failure that nothing inside made an answer of is logged here and answered as a problem, if an answer has not begun.
What a stop waits for no longer is told to ask again, or, where its answer has begun, is cut and logged as that.
"""

from __future__ import annotations

import asyncio
import logging
import os
import re
from time import perf_counter, time
from typing import Final

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from ductrun.http.aside import overloaded
from ductrun.http.exchange import send_problem
from ductrun.http.eyes import CUT, EYES, GONE, ITEMS, Seen
from ductrun.http.keys import Keys
from ductrun.http.problems import ProblemRaised, failure
from ductrun.http.stopping import STOPPING
from ductrun.settings import Settings

REQUEST_ID: Final = "ductrun.request_id"
_log = logging.getLogger("ductrun")
_SAFE = re.compile(rb"[A-Za-z0-9._-]{1,64}\Z")
OPEN_TO_ALL: Final = frozenset({"/livez", "/readyz"})
_TOO_LATE = "The service is being stopped, and this took longer than it waits. Send the request again."
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
        except BaseException as error:
            problem = _problem_of(error, scope[REQUEST_ID], begun=status > 0)
            if problem is not None:
                await send_problem(send_on, problem, scope[REQUEST_ID])
            elif _is_cut(error):  # returning before the end of the answer closes the connection
                status = CUT
            else:
                raise
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


def _is_cut(error: BaseException) -> bool:
    return STOPPING.stopped and isinstance(error, asyncio.CancelledError)


def _problem_of(error: BaseException, request_id: str, *, begun: bool) -> ProblemRaised | None:
    """Give what a request is told whose answer has not begun, None where nothing can be told; logs what failed."""
    if isinstance(error, ProblemRaised):  # no key, or what a layer says that a deployment added
        return None if begun else error
    if _is_cut(error):
        if begun:
            _log.warning("request %s was cut: the service stops and waited for it no longer", request_id)
        return None if begun else overloaded(_TOO_LATE)
    if isinstance(error, Exception):
        _log.error("request %s failed", request_id, exc_info=error)
        return None if begun else failure()
    return None
