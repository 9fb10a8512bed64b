"""A stream while it runs: answers flow, a slow reader is waited for, a caller who goes ends it, others get turns."""

from __future__ import annotations

import asyncio
import json
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

from ductrun.http import aside
from ductrun.http.api import Dispatch, Endpoint
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items
from ductrun.http.stopping import STOPPING
from ductrun.http.stream import IS_LOST, Stream
from ductrun.kit.answering import Chosen, PutOffError

from tests.http.test_stream import BASIS, line, summary_of
from tests.http.wire import ANSWERS


class Caller:
    """A caller one can drive step by step: gives chunks, takes what is sent, reads slowly, goes away."""

    def __init__(self, items: Items | None = None) -> None:
        self.chunks: asyncio.Queue[Any] = asyncio.Queue()
        self.taken: asyncio.Queue[Any] = asyncio.Queue()
        self.reads = asyncio.Event()
        self.reads.set()
        self.waits = asyncio.Event()  # set while what is sent waits for the reader
        self.asked = 0
        self.lost = False
        self.endpoint = Stream(items or Items(ANSWERS), 10_000, idle_seconds=60)

    async def receive(self) -> Any:
        self.asked += 1
        return await self.chunks.get()

    async def send(self, message: Any) -> None:
        if not self.reads.is_set():
            self.waits.set()
        await self.reads.wait()
        if message["type"] == "http.response.body":
            self.taken.put_nowait(message["body"])

    def give(self, chunk: bytes, *, more: bool = True) -> None:
        self.chunks.put_nowait({"type": "http.request", "body": chunk, "more_body": more})

    def go(self) -> None:
        self.chunks.put_nowait({"type": "http.disconnect"})

    async def take(self) -> list[Any]:
        return [json.loads(text) for text in (await asyncio.wait_for(self.taken.get(), 60)).splitlines()]

    def start(self) -> asyncio.Task[None]:
        headers = [(b"content-type", b"application/jsonl")]
        scope: dict[str, Any] = {"type": "http", "method": "POST", "path": "/", "headers": headers, "query_string": b""}
        scope[IS_LOST] = lambda: self.lost
        dispatch = Dispatch([Endpoint("POST", "/", self.endpoint)], self.endpoint)
        return asyncio.create_task(dispatch(scope | {REQUEST_ID: "r"}, self.receive, self.send))


def test_answers_flow_while_the_request_is_still_arriving() -> None:
    async def talk() -> None:
        caller = Caller()
        running = caller.start()
        assert await caller.take() == [BASIS]  # before anything is asked
        for number in range(1, 4):
            caller.give(line("cover")[:50])
            caller.give(line("cover")[50:])
            [found] = await caller.take()
            assert (found["line"], found["status"]) == (number, 200)
        caller.give(b"", more=False)
        [summary] = await caller.take()
        assert summary == summary_of(3, 0)
        await asyncio.wait_for(running, 60)

    asyncio.run(talk())


def counting(done: list[int], cost: Callable[[], None] = lambda: None) -> Items:
    items = Items(ANSWERS)

    def answer(_body: bytes, _chosen: Chosen) -> bytes:
        done.append(1)
        cost()
        return b"{}"

    items.answers["cover"] = answer
    return items


def busy() -> None:
    for _ in range(20_000):
        pass


def test_a_caller_who_goes_away_stops_the_work_at_once() -> None:
    async def leave(at_the_end: bool) -> int:
        done: list[int] = []
        caller = Caller(counting(done, busy))
        running = caller.start()
        caller.give(line("cover") * 5000, more=not at_the_end)
        await caller.take()  # the basis
        await caller.take()
        caller.go()
        await asyncio.wait_for(running, 60)
        return len(done)

    assert asyncio.run(leave(at_the_end=False)) < 500
    assert asyncio.run(leave(at_the_end=True)) < 500


def test_a_caller_who_goes_away_with_a_chunk_unread_stops_the_work_at_once() -> None:
    async def leave() -> int:
        done: list[int] = []
        caller = Caller(counting(done, busy))
        running = caller.start()
        for _ in range(2):  # the second hides from who receives that the caller went
            caller.give(line("cover") * 5000)
        caller.go()
        await caller.take()  # the basis
        await caller.take()
        caller.lost = True
        await asyncio.wait_for(running, 60)
        return len(done)

    assert asyncio.run(leave()) < 500


def putting_off(work: Callable[[], bytes]) -> Items:
    def answer(_body: bytes, _chosen: Chosen) -> bytes:
        raise PutOffError(work, 2_000.0)

    items = Items(ANSWERS)
    items.answers["cover"] = answer
    return items


@contextmanager
def thread_at_work() -> Iterator[None]:
    """Keep the thread beside the loop at something else."""
    began, go_on = threading.Event(), threading.Event()

    def work() -> None:
        began.set()
        go_on.wait(60)

    busy = aside._thread().submit(work)
    assert began.wait(60)
    try:
        yield
    finally:
        go_on.set()
        busy.result(60)


def test_in_a_stop_a_stream_that_waits_for_the_thread_ends_with_a_line_that_says_so(monkeypatch: Any) -> None:
    done: list[int] = []

    def work() -> bytes:
        done.append(1)
        return b"{}"

    async def stop() -> list[Any]:
        callers = [Caller(putting_off(work)) for _ in range(3)]
        running = [caller.start() for caller in callers]
        for caller in callers:
            caller.give(line("fill", "f") + line("cover") * 2)
            await caller.take()  # the basis
        monkeypatch.setattr(STOPPING, "stopped", True)
        await asyncio.wait_for(asyncio.gather(*running), 60)
        return [[found for _ in range(caller.taken.qsize()) for found in await caller.take()] for caller in callers]

    with thread_at_work():
        for answer, last in asyncio.run(stop()):
            assert (answer["line"], answer["status"]) == (1, 200)
            assert last == {"type": "stopped", "reason": "stopping", "line": 1, "item_count": 1, "failed_count": 0}
    assert done == []


def test_a_stop_that_waits_no_longer_for_a_line_at_work_ends_its_stream_with_a_line_that_says_so(
    monkeypatch: Any,
) -> None:
    began, go_on = threading.Event(), threading.Event()

    def work() -> bytes:
        began.set()
        go_on.wait(60)
        return b"{}"

    async def stop() -> list[Any]:
        caller = Caller(putting_off(work))
        running = caller.start()
        caller.give(line("fill", "f") + line("cover"))
        await caller.take()  # the basis
        assert await asyncio.to_thread(began.wait, 60)
        monkeypatch.setattr(STOPPING, "stopped", True)
        running.cancel()
        await asyncio.wait_for(running, 60)
        return [found for _ in range(caller.taken.qsize()) for found in await caller.take()]

    try:
        answer, last = asyncio.run(stop())
    finally:
        go_on.set()
    assert answer["line"] == 1
    assert last == {"type": "stopped", "reason": "stopping", "line": 1, "item_count": 1, "failed_count": 0}


def test_a_slow_reader_is_waited_for_and_nothing_piles_up() -> None:
    async def read_slowly() -> None:
        done: list[int] = []
        caller = Caller(counting(done, busy))
        running = caller.start()
        caller.give(line("cover"))
        await caller.take()  # the basis
        await caller.take()
        caller.reads.clear()
        for _ in range(20):
            caller.give(line("cover") * 50)
        await asyncio.wait_for(caller.waits.wait(), 60)
        before = len(done)
        assert 1 < before <= 51
        for _ in range(1_000):
            await asyncio.sleep(0)
        assert caller.asked <= 4
        assert len(done) == before
        caller.reads.set()
        caller.give(b"", more=False)
        await asyncio.wait_for(running, 120)
        assert len(done) == 1001

    asyncio.run(read_slowly())


def test_other_requests_get_their_turn_while_a_stream_is_at_work() -> None:
    async def both() -> None:
        caller = Caller(counting([], busy))
        running = caller.start()
        caller.give(line("cover") * 2000, more=False)
        turns = 0
        while not running.done():
            turns += 1
            await asyncio.sleep(0)
        assert turns > 100

    asyncio.run(both())


def test_a_failure_of_one_line_is_logged_and_spares_the_others(caplog: Any) -> None:
    async def fail() -> list[Any]:
        items = Items(ANSWERS)

        def broken(_body: bytes, _chosen: Chosen) -> bytes:
            raise ZeroDivisionError

        items.answers["fill"] = broken
        caller = Caller(items)
        running = caller.start()
        caller.give(line("fill", "f") + line("cover"), more=False)
        await running
        return [found for _ in range(caller.taken.qsize()) for found in await caller.take()]

    _, failure, answer, _ = asyncio.run(fail())
    assert (failure["status"], failure["id"], answer["status"]) == (500, "f", 200)
    assert "ZeroDivisionError" in caplog.text
    assert '"line":1' in caplog.text
