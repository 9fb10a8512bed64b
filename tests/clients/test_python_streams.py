"""What the Python client makes of a stream: its windows, its lines, its end."""

from __future__ import annotations

import asyncio
import inspect
import math
import threading
from collections.abc import AsyncIterator, Callable, Iterator
from typing import Any

import httpx
import pytest
from ductrun_client import AsyncClient, Client, CutOffError, models
from tools.client_schemas import Contract

from tests.clients.answering import REFUSED, SUMMARY, client_of, stream_of

FEET = models.Length(300, "ft")


def refusing(request: httpx.Request) -> httpx.Response:
    """Answer each line of a window with a problem."""
    lines = request.content.count(b"\n")
    problem = {"type": "problem", "status": 422, "problem": REFUSED}
    told = [problem | {"line": line} for line in range(1, lines + 1)]
    return stream_of([*told, SUMMARY | {"item_count": lines}])(request)


@pytest.mark.parametrize("kind", [Client, AsyncClient])
def test_a_stream_takes_what_the_contract_says_of_its_query(kind: Any) -> None:
    document = Contract().document["paths"]
    asked = {
        path: {one["name"] for one in document[path]["post"]["parameters"]} for path in document if "batch" in path
    }
    assert (
        asked["/v1/batch/stream"]
        == asked["/v1/batch"]
        == set(inspect.signature(kind.stream).parameters) - {"self", "items", "connections", "window"}
    )


@pytest.mark.parametrize(
    "answer",
    [
        stream_of([{"type": "basis"}]),
        stream_of([{"type": "basis"}], b'{"type":"ans'),
        stream_of([{"type": "problem", "line": 1, "status": 422, "problem": REFUSED}]),
        stream_of([SUMMARY]),
    ],
)
def test_a_stream_that_ends_without_its_summary_was_cut_off(answer: Callable[..., httpx.Response]) -> None:
    with pytest.raises(CutOffError, match="after 0 answers") as told:
        list(client_of(answer).stream([{"id": "a", "operation": "cover", "request": {}}]))
    assert told.value.answered == 0
    assert told.value.reason is None


def test_a_stream_that_the_service_ends_says_why() -> None:
    stopped = {"type": "stopped", "reason": "stopping", "line": 0, "item_count": 0, "failed_count": 0}
    ended = client_of(stream_of([{"type": "basis"}, stopped]))
    with pytest.raises(CutOffError, match=r"ended by the service \(stopping\) after 0 answers") as told:
        list(ended.stream([{"id": "a", "operation": "cover", "request": {}}]))
    assert (told.value.answered, told.value.reason) == (0, "stopping")


def test_a_line_that_cannot_be_sent_is_its_own_problem_and_ends_nothing() -> None:
    asked: list[int] = []

    def answer(request: httpx.Request) -> httpx.Response:
        asked.append(request.content.count(b"\n"))
        return refusing(request)

    def item(name: str, length: Any) -> dict[str, Any]:
        return {"id": name, "operation": "spacers", "request": {"length": length, "tiers": [3]}}

    furlong = {"value": 1, "unit": "furlong"}
    nameless = {"operation": "spacers", "request": {"length": furlong, "tiers": [3]}}
    lines = [
        item("a", FEET),
        item("b", furlong),
        item("c", FEET),
        item("d", {"value": math.nan, "unit": "ft"}),
        nameless,
    ]
    found = list(client_of(answer).stream(lines))
    assert [one.line for one in found] == [1, 2, 3, 4, 5]
    assert [one.problem.status for one in found if isinstance(one, models.StreamProblem)] == [503, 422, 503, 422, 422]
    assert [one.id for one in found] == [None, "b", None, "d", None]
    told = found[1]
    assert isinstance(told, models.StreamProblem)
    assert told.operation == "spacers"
    [fault] = told.problem.errors or []
    assert fault.pointer == "#/request/length"
    assert "'furlong' is no unit" in fault.message
    assert asked == [2]
    [lost] = client_of(answer).stream([nameless])
    assert lost.line == 1
    assert asked == [2]  # nothing is asked where nothing can be sent


def test_an_event_loop_may_give_its_questions_as_they_come() -> None:
    async def questions() -> AsyncIterator[dict[str, Any]]:
        for number in range(1200):
            await asyncio.sleep(0)
            yield {"id": f"{number}", "operation": "cover", "request": {}}

    async def lines() -> list[Any]:
        connection = httpx.AsyncClient(base_url="http://service", transport=httpx.MockTransport(refusing))
        async with connection, AsyncClient(http=connection) as opened:
            return [one.line async for one in opened.stream(questions())]

    assert asyncio.run(lines()) == list(range(1, 1201))


def questions_of(count: int) -> list[dict[str, Any]]:
    return [{"id": f"{number}", "operation": "cover", "request": {}} for number in range(count)]


def test_windows_on_several_connections_are_asked_at_once_and_answered_in_order() -> None:
    met = threading.Barrier(4, timeout=10)  # opens only where four windows are under way together

    def answer(request: httpx.Request) -> httpx.Response:
        met.wait()
        return refusing(request)

    found = [one.line for one in client_of(answer).stream(questions_of(2_000), connections=4)]
    assert found == list(range(1, 2_001))


def test_an_event_loop_has_several_connections_too() -> None:
    async def lines() -> list[Any]:
        met = asyncio.Barrier(4)

        async def answer(request: httpx.Request) -> httpx.Response:
            await asyncio.wait_for(met.wait(), 10)
            return refusing(request)

        connection = httpx.AsyncClient(base_url="http://service", transport=httpx.MockTransport(answer))
        async with connection, AsyncClient(http=connection) as opened:
            return [one.line async for one in opened.stream(questions_of(2_000), connections=4)]

    assert asyncio.run(lines()) == list(range(1, 2_001))


@pytest.mark.parametrize("connections", [1, 3])
def test_no_more_questions_are_taken_than_are_under_way(connections: int) -> None:
    taken = []

    def questions() -> Iterator[dict[str, Any]]:
        for one in questions_of(10_000):
            taken.append(one)
            yield one

    stream = client_of(refusing).stream(questions(), connections=connections)
    assert next(stream).line == 1
    assert len(taken) <= 500 * connections + 1


def test_a_window_that_is_cut_ends_the_stream_with_what_was_answered_before_it() -> None:
    def answer(request: httpx.Request) -> httpx.Response:
        if b'"id":"500"' in request.content:
            return stream_of([{"type": "basis"}])(request)
        return refusing(request)

    found: list[Any] = []
    stream = client_of(answer).stream(questions_of(2_000), connections=2)
    with pytest.raises(CutOffError) as told:
        found.extend(stream)
    assert [one.line for one in found] == list(range(1, 501))
    assert told.value.answered == 500


def test_a_small_window_asks_for_few_at_a_time() -> None:
    asked = []

    def answer(request: httpx.Request) -> httpx.Response:
        asked.append(request.content.count(b"\n"))
        return refusing(request)

    found = [one.line for one in client_of(answer).stream(questions_of(7), window=3)]
    assert (found, asked) == ([1, 2, 3, 4, 5, 6, 7], [3, 3, 1])
    with pytest.raises(ValueError, match="window: give 1 or more"):
        next(client_of(refusing).stream(questions_of(1), window=0))


def test_a_stream_has_one_connection_at_least() -> None:
    with pytest.raises(ValueError, match="connections: give 1 or more"):
        next(client_of(refusing).stream(questions_of(1), connections=0))


def test_a_window_stays_under_what_a_server_reads_ahead() -> None:
    sizes = []

    def answer(request: httpx.Request) -> httpx.Response:
        sizes.append((request.content.count(b"\n"), len(request.content)))
        return refusing(request)

    items = [{"id": "a" * 1000, "operation": "cover", "request": {}}] * 100 + [{"id": "b" * 60_000}] * 2
    lines = [one.line for one in client_of(answer).stream(items)]
    assert lines == list(range(1, 103))
    assert all(size < 49_152 or count == 1 for count, size in sizes)
    assert sum(count for count, _ in sizes) == 102
