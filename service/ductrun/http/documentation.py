"""The docs page and the problem pages, from assets the service carries: they open without the internet."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from fastapi import Request, Response
from fastapi.responses import HTMLResponse

from ductrun.http.problems import KINDS, ProblemRaised, page_of

ASSETS: Final = Path(__file__).with_name("static")
_POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
_HEADERS: Final = {"Content-Security-Policy": _POLICY, "Cache-Control": "no-cache"}
_PAGE: Final = (ASSETS / "docs.html").read_text(encoding="utf-8")


async def docs_page(_request: Request) -> Response:
    """Give the page that shows the contract and lets a reader try it."""
    return HTMLResponse(_PAGE, headers=_HEADERS)


async def problem_page(request: Request) -> Response:
    """Give the page that explains one kind of problem."""
    kind = KINDS.get(request.path_params["name"])
    if kind is None:
        raise ProblemRaised("not_found", f"There is no such problem. There are: {', '.join(KINDS)}.")
    return HTMLResponse(page_of(kind), headers=_HEADERS)
