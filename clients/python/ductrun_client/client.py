"""The client: five lines for a question and its answer, sync or async.

from ductrun_client import Client

with Client("http://127.0.0.1:8000") as ductrun:
    answer = ductrun.spacers(length={"value": 300, "unit": "ft"}, tiers=[3, 3, 2])
    print(answer.result.station_count)
"""

from __future__ import annotations

import asyncio
import time
from collections.abc import AsyncIterator, Iterable, Iterator
from typing import Any, Self

import httpx

from . import models
from .async_calls import AsyncCalls
from .calls import Calls
from .errors import UnexpectedAnswerError
from .items import StreamItem, item_of
from .operations import CALLS
from .requesting import Call, Retries, Wire, answer_of, expected, wire_of
from .streaming import Question, answers_of, windows

_TIMEOUT = 30.0


class Client(Calls):
    """Asks one service.

    Everything of the connection is httpx's: give `timeout`, or a client of your own as `http` (with its base URL,
    proxies, transport, TLS, headers), which then is yours to close. `retries` is how often to ask again.
    """

    def __init__(
        self,
        url: str = "",
        *,
        timeout: float | httpx.Timeout = _TIMEOUT,
        retries: int | Retries = 0,
        http: httpx.Client | None = None,
    ) -> None:
        """Take the address of the service; nothing is connected yet."""
        _one_of(url, http)
        self._own = http is None
        self._http = http or httpx.Client(base_url=url, timeout=timeout)
        self._retries = retries if isinstance(retries, Retries) else Retries(retries)

    def _send(self, wire: Wire) -> httpx.Response:
        tried = 0
        while True:
            tried += 1
            try:
                response = self._http.send(wire.request(self._http))
            except httpx.TransportError as fault:
                wait = self._retries.wait_after(tried, fault)
                if wait is None:
                    raise
            else:
                wait = self._retries.wait_after(tried, response)
                if wait is None:
                    return response
            time.sleep(wait)

    def _ask(self, call: Call, body: tuple[Any, ...], given: dict[str, Any]) -> Any:
        return _read(call, self._send(wire_of(call, body, given)))

    def stream(
        self,
        items: Iterable[Question],
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> Iterator[StreamItem]:
        """Ask any number of questions and give each answer in order, taking no more `items` than are being asked."""
        for window in windows(items, {"units": units, "working": working, "assumptions": assumptions}):
            yield from answers_of(self._send(window.wire), window)

    def document(self, operation: models.OperationName, media_type: str, *body: Any, **given: Any) -> bytes:
        """Give an answer in another form that the contract has for it: a drawing, a sheet, a takeoff."""
        return _document(self._send(_wire_of_document(operation, media_type, body, given)), media_type)

    def close(self) -> None:
        """Close the connections, unless they are those of a client that was given."""
        if self._own:
            self._http.close()

    def __enter__(self) -> Self:
        """Enter a block that closes the connections at its end."""
        return self

    def __exit__(self, *_: object) -> None:
        """Close the connections."""
        self.close()


class AsyncClient(AsyncCalls):
    """Does the same for a caller who runs an event loop; `http` is then a client of httpx for one."""

    def __init__(
        self,
        url: str = "",
        *,
        timeout: float | httpx.Timeout = _TIMEOUT,
        retries: int | Retries = 0,
        http: httpx.AsyncClient | None = None,
    ) -> None:
        """Take the address of the service; nothing is connected yet."""
        _one_of(url, http)
        self._own = http is None
        self._http = http or httpx.AsyncClient(base_url=url, timeout=timeout)
        self._retries = retries if isinstance(retries, Retries) else Retries(retries)

    async def _send(self, wire: Wire) -> httpx.Response:
        tried = 0
        while True:
            tried += 1
            try:
                response = await self._http.send(wire.request(self._http))
            except httpx.TransportError as fault:
                wait = self._retries.wait_after(tried, fault)
                if wait is None:
                    raise
            else:
                wait = self._retries.wait_after(tried, response)
                if wait is None:
                    return response
            await asyncio.sleep(wait)

    async def _ask(self, call: Call, body: tuple[Any, ...], given: dict[str, Any]) -> Any:
        return _read(call, await self._send(wire_of(call, body, given)))

    async def stream(
        self,
        items: Iterable[Question],
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> AsyncIterator[StreamItem]:
        """Ask any number of questions and give each answer in order, taking no more `items` than are being asked."""
        for window in windows(items, {"units": units, "working": working, "assumptions": assumptions}):
            for answer in answers_of(await self._send(window.wire), window):
                yield answer

    async def document(self, operation: models.OperationName, media_type: str, *body: Any, **given: Any) -> bytes:
        """Give an answer in another form that the contract has for it: a drawing, a sheet, a takeoff."""
        return _document(await self._send(_wire_of_document(operation, media_type, body, given)), media_type)

    async def close(self) -> None:
        """Close the connections, unless they are those of a client that was given."""
        if self._own:
            await self._http.aclose()

    async def __aenter__(self) -> Self:
        """Enter a block that closes the connections at its end."""
        return self

    async def __aexit__(self, *_: object) -> None:
        """Close the connections."""
        await self.close()


def _one_of(url: str, http: object) -> None:
    if bool(url) == (http is not None):
        raise TypeError("give the address of the service, or as `http` a client of httpx that has it")


def _read(call: Call, response: httpx.Response) -> Any:
    answer = answer_of(response, call.answer)
    if call.answer is models.BatchAnswer:
        answer.items = [item_of(one) for one in answer.items]
    return answer


def _wire_of_document(operation: str, media_type: str, body: tuple[Any, ...], given: dict[str, Any]) -> Wire:
    wire = wire_of(CALLS[operation], body, given)
    wire.headers["Accept"] = media_type
    return wire


def _document(response: httpx.Response, media_type: str) -> bytes:
    if expected(response) != media_type or not response.is_success:
        raise UnexpectedAnswerError(
            response.status_code, response.headers.get("Content-Type", ""), response.content, f"no {media_type} came"
        )
    return response.content
