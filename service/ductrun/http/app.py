"""The application, made from the registry of operations and the list of reference tables."""

from __future__ import annotations

import asyncio
import gc
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from functools import cache

from fastapi import Request, Response
from fastapi.staticfiles import StaticFiles
from starlette.exceptions import HTTPException
from starlette.types import ASGIApp

from ductrun import __version__
from ductrun.http import contract, descriptions
from ductrun.http.api import Api, PlainRoute
from ductrun.http.batch import Batch
from ductrun.http.calculations import Calculation
from ductrun.http.documentation import ASSETS, docs_page, problem_page
from ductrun.http.gate import REQUEST_ID, Gate
from ductrun.http.health import Alive, Health, Ready
from ductrun.http.items import EXAMPLES, Items
from ductrun.http.problems import KINDS, MEDIA_TYPE, ProblemError, ProblemRaised, body_of
from ductrun.http.stream import MEDIA_TYPES, Stream
from ductrun.http.tables import PickerEndpoint, TableEndpoint
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import PICKERS, REFERENCE_TABLES


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
    for picker in PICKERS:
        path = f"/v1/tables/{picker.table.name}/{{{picker.parameter}}}"
        api.add_api_route(path, PickerEndpoint(picker), methods=["GET"], **descriptions.picker_options(picker))
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
    api.add_api_route("/livez", health.livez, methods=["GET"], **descriptions.health_options("check_alive", Alive))
    api.add_api_route(
        "/readyz", health.readyz, methods=["GET"], **descriptions.health_options("check_ready", Ready, 503)
    )


def _add_pages(api: Api) -> None:
    written = cache(contract.written)  # made when it is first asked for: a start need not wait for it

    async def openapi(_request: Request) -> Response:
        document = await asyncio.to_thread(written, api)
        return Response(document, media_type="application/json", headers={"Cache-Control": "no-cache"})

    api.add_api_route("/openapi.json", openapi, methods=["GET"], include_in_schema=False)
    api.add_api_route("/docs", docs_page, methods=["GET"], include_in_schema=False)
    api.add_api_route("/problems/{name}", problem_page, methods=["GET"], include_in_schema=False)
    api.mount("/docs/assets", StaticFiles(directory=ASSETS), name="assets")
