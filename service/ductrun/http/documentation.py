"""The front door, the docs page and the problem pages, whose assets the service carries: they need no internet."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Final

from starlette.requests import Request
from starlette.responses import HTMLResponse, RedirectResponse, Response
from starlette.types import ASGIApp, Receive, Scope, Send

from ductrun.http.accepting import weight_of
from ductrun.http.exchange import read_parameters
from ductrun.http.problems import Kind, page_of

Page = Callable[[Request], Awaitable[Response]]

ASSETS: Final = Path(__file__).with_name("static")
_POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
_HEADERS: Final = {"Content-Security-Policy": _POLICY, "Cache-Control": "no-cache"}
_PAGE: Final = (ASSETS / "docs.html").read_text(encoding="utf-8")


async def front_door(request: Request) -> Response:
    """Send a browser to the docs page, and a program to the contract."""
    accepted = request.headers.get("accept", "")
    page = "/docs" if weight_of(accepted, "text/html") > weight_of(accepted, "application/json") else "/openapi.json"
    place = request.scope.get("root_path", "") + page
    return RedirectResponse(place, 307, headers={"Vary": "Accept", "Cache-Control": "no-cache"})


async def docs_page(_request: Request) -> Response:
    """Give the page that shows the contract and lets a reader try it."""
    return HTMLResponse(_PAGE, headers=_HEADERS)


def problem_page(kind: Kind) -> Page:
    """Give the page that explains one kind of problem."""

    async def explained(_request: Request) -> Response:
        return HTMLResponse(page_of(kind), headers=_HEADERS)

    return explained


def taking_no_query(page: Page) -> ASGIApp:
    """Give the application of a page that takes no query, and says so rather than pass one over."""

    async def app(scope: Scope, receive: Receive, send: Send) -> None:
        read_parameters(scope["query_string"], {})
        answer = await page(Request(scope))
        await answer(scope, receive, send)

    return app
