"""The client: five lines for a question and its answer, sync or async.

from ductrun_client import Client

with Client("http://127.0.0.1:8000") as ductrun:
    answer = ductrun.spacers(length={"value": 300, "unit": "ft"}, tiers=[3, 3, 2])
    print(answer.result.station_count)
"""

from __future__ import annotations

import asyncio
import time
from collections.abc import AsyncIterable, AsyncIterator, Iterable, Iterator
from typing import Any, Self

import httpx

from . import models
from .async_calls import AsyncCalls
from .calls import Calls
from .items import StreamItem, item_of
from .requesting import Call, Retries, Wire, answer_of, document_of, wire_of, wire_of_document
from .streaming import LINES, Question, Window, answers_of, async_in_turn, async_windows_of, in_turn, windows_of

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

    def _write(self, call: Call, media_type: str, body: object, given: dict[str, Any]) -> bytes:
        return document_of(self._send(wire_of_document(call, media_type, body, given)), media_type)

    def stream(
        self,
        items: Iterable[Question],
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
        remedies: bool | None = None,
        connections: int = 1,
        window: int = LINES,
    ) -> Iterator[StreamItem]:
        """Ask any number of questions and give each answer in order, taking no more `items` than are being asked.

        A question that has no answer is a `StreamProblem` in its place, and ends nothing. A `window` of questions is
        sent at a time, fewer where they are long; with more `connections` as many windows are under way at once, so
        that several replicas or workers are at it. Questions that come slowly are answered sooner in small windows.
        """
        asked = {
            "units": units,
            "working": working,
            "assumptions": assumptions,
            "request": request,
            "remedies": remedies,
        }
        windows = windows_of(items, asked, _checked("window", window))
        if _checked("connections", connections) == 1:
            for one in windows:
                yield from self._answered(one)
        else:
            yield from in_turn(windows, self._answered, connections)

    def _answered(self, window: Window) -> list[StreamItem]:
        if not window.numbers:
            return list(window.refused)
        return answers_of(self._send(window.wire), window)

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

    async def _write(self, call: Call, media_type: str, body: object, given: dict[str, Any]) -> bytes:
        return document_of(await self._send(wire_of_document(call, media_type, body, given)), media_type)

    async def stream(
        self,
        items: Iterable[Question] | AsyncIterable[Question],
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
        remedies: bool | None = None,
        connections: int = 1,
        window: int = LINES,
    ) -> AsyncIterator[StreamItem]:
        """Ask any number of questions and give each answer in order, taking no more `items` than are being asked.

        A question that has no answer is a `StreamProblem` in its place, and ends nothing. A `window` of questions is
        sent at a time, fewer where they are long; with more `connections` as many windows are under way at once, so
        that several replicas or workers are at it. Questions that come slowly are answered sooner in small windows.
        """
        asked = {
            "units": units,
            "working": working,
            "assumptions": assumptions,
            "request": request,
            "remedies": remedies,
        }
        windows = async_windows_of(_each(items), asked, _checked("window", window))
        async for answer in async_in_turn(windows, self._answered, _checked("connections", connections)):
            yield answer

    async def _answered(self, window: Window) -> list[StreamItem]:
        if not window.numbers:
            return list(window.refused)
        return answers_of(await self._send(window.wire), window)

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


def _checked(name: str, given: int) -> int:
    if given < 1:
        raise ValueError(f"{name}: give 1 or more")
    return given


def _read(call: Call, response: httpx.Response) -> Any:
    answer = answer_of(response, call.answer)
    if call.answer is models.BatchAnswer:
        answer.items = [item_of(one) for one in answer.items]
    return answer


async def _each(items: Iterable[Question] | AsyncIterable[Question]) -> AsyncIterator[Question]:
    if isinstance(items, AsyncIterable):
        async for item in items:
            yield item
    else:
        for item in items:
            yield item
