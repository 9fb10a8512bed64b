"""The application, made from the registry of operations and the list of reference tables."""

from __future__ import annotations

import asyncio
import gc
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from functools import cache
from typing import Any

from fastapi import Request, Response
from fastapi.staticfiles import StaticFiles
from starlette.exceptions import HTTPException
from starlette.types import ASGIApp

from ductrun import __version__
from ductrun.http import contract, descriptions
from ductrun.http.api import Api, PlainRoute
from ductrun.http.batch import Batch
from ductrun.http.calculations import Calculation
from ductrun.http.documentation import ASSETS, docs_page, front_door, problem_page
from ductrun.http.exchange import read_parameters
from ductrun.http.gate import REQUEST_ID, Gate
from ductrun.http.health import Alive, Health, Ready
from ductrun.http.items import EXAMPLES, Items
from ductrun.http.problems import KINDS, MEDIA_TYPE, ProblemError, ProblemRaised, body_of
from ductrun.http.stream import MEDIA_TYPES, Stream
from ductrun.http.tables import TableEndpoint, Tagged
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import REFERENCE_TABLES

Page = Callable[[Request], Awaitable[Response]]


def _problem(
    request: Request,
    name: str,
    detail: str,
    headers: dict[str, str] | None = None,
    errors: list[ProblemError] | None = None,
) -> Response:
    kind = KINDS[name]
    request_id = request.scope.get(REQUEST_ID, "")
    all_headers = {"Cache-Control": "no-store", **(headers or {})}
    return Response(body_of(kind, detail, request_id, errors), kind.status, all_headers, MEDIA_TYPE)


async def _on_raised(request: Request, error: Exception) -> Response:
    assert isinstance(error, ProblemRaised)  # noqa: S101  (registered for it alone)
    return _problem(request, error.kind.name, error.detail, errors=error.errors)


async def _on_http(request: Request, error: Exception) -> Response:
    assert isinstance(error, HTTPException)  # noqa: S101  (registered for it alone)
    headers = dict(error.headers or {})
    if error.status_code == 405:
        return _problem(request, "method_not_allowed", f"Allowed here: {headers.get('Allow', 'nothing')}.", headers)
    return _problem(request, "not_found", "There is nothing at this path. See /docs for what there is.", headers)


def create_app(settings: Settings | None = None) -> ASGIApp:
    """Make the application, its gate outermost."""
    return Gate(create_api(settings or Settings.from_environment()))


def create_api(settings: Settings) -> Api:
    """Make the FastAPI application with every route."""
    health = Health()

    @asynccontextmanager
    async def lifespan(_app: object) -> AsyncIterator[None]:
        # what start-up made lives as long as the process: the collector need not look at it, now or again
        gc.freeze()
        gc.enable()
        health.ready = True
        yield
        health.ready = False

    api = Api(
        title="ductrun",
        version=__version__,
        openapi_url=None,
        docs_url=None,
        redoc_url=None,
        redirect_slashes=False,
        lifespan=lifespan,
    )
    api.router.route_class = PlainRoute
    api.add_exception_handler(ProblemRaised, _on_raised)
    api.add_exception_handler(HTTPException, _on_http)
    _add_calculations(api, settings)
    for table in REFERENCE_TABLES:
        api.add_api_route(
            f"/v1/tables/{table.name}", TableEndpoint(table), methods=["GET"], **descriptions.table_options(table)
        )
    _add_health(api, health)
    _add_pages(api)
    return api


def _add_calculations(api: Api, settings: Settings) -> None:
    for operation in OPERATIONS:
        calculation = Calculation(operation, settings.max_body_bytes)
        api.add_calculation(f"/v1/{operation.name}", calculation, descriptions.calculation_options(operation))
    items = Items()
    batch = Batch(items, settings.max_batch_bytes)
    api.add_calculation("/v1/batch", batch, descriptions.batch_options(EXAMPLES, settings))
    stream = Stream(items, settings.max_body_bytes)
    api.add_calculation("/v1/batch/stream", stream, descriptions.stream_options(EXAMPLES, MEDIA_TYPES, settings))


def _add_health(api: Api, health: Health) -> None:
    _add_get(api, "/livez", health.livez, **descriptions.health_options("check_alive", Alive))
    _add_get(api, "/readyz", health.readyz, **descriptions.health_options("check_ready", Ready, 503))


def _add_pages(api: Api) -> None:
    @cache  # made when it is first asked for: a start need not wait for it
    def written() -> Tagged:
        return Tagged(contract.written(api).encode(), "no-cache")

    async def openapi(request: Request) -> Response:
        return (await asyncio.to_thread(written)).answer(request)

    _add_get(api, "/", front_door, include_in_schema=False)
    _add_get(api, "/openapi.json", openapi, include_in_schema=False)
    _add_get(api, "/docs", docs_page, include_in_schema=False)
    _add_get(api, "/problems/{name}", problem_page, include_in_schema=False)
    api.mount("/docs/assets", StaticFiles(directory=ASSETS), name="assets")


def _add_get(api: Api, path: str, page: Page, **options: Any) -> None:
    """Add a page that takes no query, and says so rather than pass one over."""

    async def unasked(request: Request) -> Response:
        read_parameters(request.scope["query_string"], {})
        return await page(request)

    api.add_api_route(path, unasked, methods=["GET"], **options)
