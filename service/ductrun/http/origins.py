"""Which other origins a browser may ask from (CORS); outermost, and there only if a deployment allows some."""

from __future__ import annotations

from typing import Final

from starlette.types import ASGIApp, Message, Receive, Scope, Send

_PREFLIGHT: Final = (
    (b"access-control-allow-methods", b"GET, HEAD, POST"),
    (b"access-control-allow-headers", b"Accept, Authorization, Content-Type, If-None-Match, Traceparent, X-Request-ID"),
    (b"access-control-max-age", b"3600"),
    (b"vary", b"Origin, Access-Control-Request-Method, Access-Control-Request-Headers"),
    (b"x-content-type-options", b"nosniff"),
)
_SHOWN: Final = (
    b"access-control-expose-headers",
    b"Deprecation, ETag, Link, Retry-After, Sunset, WWW-Authenticate, X-Request-ID",
)


def allowing(app: ASGIApp, origins: tuple[str, ...]) -> ASGIApp:
    """Put the origins around an application, where a deployment allows some."""
    return Origins(app, origins) if origins else app


class Origins:
    """Answers the preflight of an origin that is allowed and marks its answers; of any other, nothing is changed."""

    def __init__(self, app: ASGIApp, origins: tuple[str, ...]) -> None:
        """Keep the application and the origins; `*` allows all."""
        self.app = app
        self.all = "*" in origins
        self.origins = frozenset(origin.encode("latin-1") for origin in origins)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a preflight, or pass a request on."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        headers = dict(scope["headers"])
        origin: bytes = headers.get(b"origin", b"")
        allowed = bool(origin) and (self.all or origin in self.origins)
        taken = (b"access-control-allow-origin", b"*" if self.all else origin)
        if allowed and scope["method"] == "OPTIONS" and b"access-control-request-method" in headers:
            await send({"type": "http.response.start", "status": 204, "headers": [taken, *_PREFLIGHT]})
            await send({"type": "http.response.body", "body": b""})
            return

        async def send_on(message: Message) -> None:
            if message["type"] == "http.response.start":
                marked = [taken, _SHOWN] if allowed else []
                vary = [] if self.all else [(b"vary", b"Origin")]
                message["headers"] = [*message["headers"], *marked, *vary]
            await send(message)

        await self.app(scope, receive, send_on)
