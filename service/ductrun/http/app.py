"""The application, made from the registry of operations and the list of reference tables."""

from __future__ import annotations

import asyncio
import gc
import re
from collections.abc import AsyncIterator, Iterator, Sequence
from contextlib import asynccontextmanager
from functools import cache
from typing import Any

from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import Response
from starlette.staticfiles import StaticFiles
from starlette.types import ASGIApp

from ductrun import __version__
from ductrun.http import contract, descriptions
from ductrun.http.api import Api, Endpoint, not_allowed
from ductrun.http.batch import Batch
from ductrun.http.calculations import Calculation
from ductrun.http.documentation import ASSETS, Page, docs_page, front_door, problem_page, taking_no_query
from ductrun.http.endings import Ends, ending_described
from ductrun.http.eyes import EYES
from ductrun.http.gate import Gate
from ductrun.http.health import Alive, Health, Ready
from ductrun.http.items import EXAMPLES, Items
from ductrun.http.logs import LOG
from ductrun.http.metrics import metrics
from ductrun.http.origins import allowing
from ductrun.http.problems import KINDS, ProblemRaised
from ductrun.http.representations import representations_of
from ductrun.http.stopping import STOPPING
from ductrun.http.stream import MEDIA_TYPES, Stream
from ductrun.http.suggestions import probably_meant
from ductrun.http.tables import TableEndpoint, Tagged
from ductrun.kit.answering import answer_to
from ductrun.kit.operation import Ending
from ductrun.settings import Settings
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import REFERENCE_TABLES

_VERSION = re.compile(r"^(/v1)+(?=/)")


def create_app(settings: Settings | None = None) -> ASGIApp:
    """Make the application, its gate outermost; around it other origins, where a deployment allows some."""
    settings = settings or Settings.from_environment()
    return allowing(Gate(create_api(settings), settings), settings.cors_origins)


def create_api(settings: Settings) -> Api:
    """Make what is behind the gate; layers and routes may be added to it before it starts."""
    health = Health()

    @asynccontextmanager
    async def lifespan(_app: object) -> AsyncIterator[None]:
        # what start-up made lives as long as the process: the collector need not look at it, now or again
        gc.freeze()
        gc.enable()
        STOPPING.wait_on_term(settings.drain_seconds)
        LOG.start()
        EYES.start(logs=settings.log == "requests", counts=settings.metrics)
        health.ready = True
        yield
        health.ready = False
        EYES.end()
        LOG.end()

    described = list(_described(settings, health))
    endpoints = [*described, *_pages(described, counts=settings.metrics)]
    EYES.name(endpoint.path for endpoint in endpoints)
    api = Api(
        endpoints,
        title="ductrun",
        version=__version__,
        openapi_url=None,
        docs_url=None,
        redoc_url=None,
        redirect_slashes=False,
        lifespan=lifespan,
    )
    api.mount("/docs/assets", StaticFiles(directory=ASSETS), name="assets")
    api.add_exception_handler(HTTPException, _on_http)
    return api


async def _figures(_request: Request) -> Response:
    written = await asyncio.to_thread(lambda: metrics().written())  # made there too, if they are not yet
    return Response(written, media_type="text/plain; version=0.0.4", headers={"Cache-Control": "no-store"})


async def _on_http(request: Request, error: Exception) -> Response:
    """Make a problem of what FastAPI's router has to say of a path or a method."""
    assert isinstance(error, HTTPException)  # noqa: S101  (registered for it alone)
    if error.status_code == 405:
        raise not_allowed((error.headers or {}).get("Allow", "GET"))
    meant = _path_meant(request.scope["path"], [endpoint.path for endpoint in request.app.endpoints])
    words = f"Probably {meant} is meant." if meant else "See /docs for what there is."
    raise ProblemRaised("not_found", f"There is nothing at this path. {words}")


def _path_meant(given: str, known: Sequence[str]) -> str | None:
    """Give the path that was probably meant: written with other marks, nearly so, or behind an address with /v1."""
    paths = {_in_words(path): path for path in known}
    meant = probably_meant(_in_words(given), list(paths))
    return paths[meant] if meant else None


def _in_words(path: str) -> str:
    return _VERSION.sub("", path).strip("/").replace("/", " ")


def _described(settings: Settings, health: Health) -> Iterator[Endpoint]:
    """Give the endpoints that stand in the contract, in its order."""
    answers = {operation.name: answer_to(operation, puts_off=True) for operation in OPERATIONS}
    for operation in OPERATIONS:
        made = representations_of(operation, answers[operation.name])
        described = descriptions.calculation_options(operation, {one.media_type: one.query for one in made})
        calculation = Calculation(made, settings.max_body_bytes)
        yield _ending(Endpoint("POST", f"/v1/{operation.name}", calculation, described), operation.ending)
    items = Items(answers)
    batch = Batch(items, settings.max_batch_bytes, settings.max_body_bytes)
    yield Endpoint("POST", "/v1/batch", batch, descriptions.batch_options(EXAMPLES, settings))
    stream = Stream(items, settings.max_body_bytes, settings.stream_idle_seconds)
    shown = descriptions.stream_options(EXAMPLES, MEDIA_TYPES, settings)
    yield Endpoint("POST", "/v1/batch/stream", stream, shown)
    for table in REFERENCE_TABLES:
        yield Endpoint("GET", f"/v1/tables/{table.name}", TableEndpoint(table), descriptions.table_options(table))
    yield _page("/livez", health.livez, descriptions.health_options("check_alive", Alive))
    yield _page("/readyz", health.readyz, descriptions.health_options("check_ready", Ready, 503))


def _ending(endpoint: Endpoint, ending: Ending | None) -> Endpoint:
    if ending is None:
        return endpoint
    described = ending_described(endpoint.described or {}, ending)
    return endpoint._replace(app=Ends(endpoint.app, ending), described=described)


def _pages(described: Sequence[Endpoint], *, counts: bool) -> Iterator[Endpoint]:
    """Give the endpoints that only show what there is."""

    @cache  # made when it is first asked for: a start need not wait for it
    def written() -> Tagged:
        return Tagged(contract.sent(described), "no-cache")

    async def openapi(request: Request) -> Response:
        return (await asyncio.to_thread(written)).answer(request)

    yield _page("/", front_door)
    yield _page("/openapi.json", openapi)
    yield _page("/docs", docs_page)
    if counts:
        yield _page("/metrics", _figures)
    for kind in KINDS.values():
        yield _page(f"/problems/{kind.name}", problem_page(kind))


def _page(path: str, page: Page, described: dict[str, Any] | None = None) -> Endpoint:
    return Endpoint("GET", path, taking_no_query(page), described)
