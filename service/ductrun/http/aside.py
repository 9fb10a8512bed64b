"""What takes long is finished beside the event loop, one at a time, in a thread that shares the core with it.

The loop gets its turns meanwhile, so that nobody else is delayed by more than a few milliseconds. More than one thread
would only share the same core. What waits for its turn is dropped if its caller goes away first, an item or a line also
if the service stops; what is at work is finished.
"""

from __future__ import annotations

import asyncio
import gc
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from functools import cache, partial
from math import ceil
from typing import Any, Final, TypeVar

from starlette.types import Receive

from ductrun.http.problems import ProblemRaised
from ductrun.http.stopping import STOPPING
from ductrun.kit.answering import PutOffError

Finished = TypeVar("Finished")
MOST_WAITING = 400_000.0  # steps: some four seconds; an item of a batch or a stream waits for its turn
STEPS_A_SECOND: Final = 100_000
_LONGEST_RETRY = 60  # seconds; streams and batches may have more than that waiting
_LOOK = 0.1  # seconds between looks at whether the caller is still there


class ClientGone(Exception):  # noqa: N818
    """The caller hung up; nothing more is done for it."""


class Leaving:
    """Watches whether a caller whose body has arrived goes away."""

    def __init__(self, receive: Receive) -> None:
        """Begin to watch."""
        self._gone = False
        self._task = asyncio.ensure_future(self._watch(receive))

    async def _watch(self, receive: Receive) -> None:
        self._gone = (await receive())["type"] == "http.disconnect"

    def gone(self) -> bool:
        """Tell whether the caller has gone, without waiting."""
        return self._gone

    def close(self) -> None:
        """Watch no more."""
        self._task.cancel()


class Aside:
    """The thread, and what it has to do."""

    def __init__(self) -> None:
        """Start with nothing to do."""
        self._jobs: list[tuple[Future[Any], float]] = []  # and their steps, in the order in which they are done

    def waiting(self) -> float | None:
        """Give how many steps wait behind what is at work; None if nothing is.

        What is at work is so until it is finished, whether its caller is still there or not.
        """
        self._jobs = [job for job in self._jobs if not job[0].done()]
        return sum(steps for _, steps in self._jobs[1:]) if self._jobs else None

    async def finish(
        self,
        put_off: PutOffError,
        gone: Callable[[], bool],
        begin: Callable[[float], object] = lambda _: None,
        stopped: Callable[[], Exception] | None = None,
    ) -> Any:
        """Give what was put off, or raise what it raises; raises ClientGone once the caller has gone.

        What is put off again, once it is known what it asks for, waits for its turn again; `begin` is told the steps of
        each, and may raise instead. What `stopped` gives is raised where the service stops before the work is begun;
        without it the work waits on.
        """
        while True:
            begin(put_off.steps)
            try:
                return await self._finish(put_off.finish, put_off.steps, gone, stopped)
            except PutOffError as again:
                put_off = again

    async def _finish(
        self,
        work: Callable[[], Finished],
        steps: float,
        gone: Callable[[], bool],
        stopped: Callable[[], Exception] | None,
    ) -> Finished:
        self.waiting()  # lets go of what is done
        submitted = _thread().submit(partial(_uncollected, work))
        self._jobs.append((submitted, steps))
        future = asyncio.wrap_future(submitted)
        try:
            while not (await asyncio.wait({future}, timeout=_LOOK))[0]:
                if gone():
                    raise ClientGone
                if stopped is not None and STOPPING.stopped and submitted.cancel():
                    raise stopped()
            return future.result()
        finally:
            submitted.cancel()  # at once, where the other would tell it in a later turn
            future.cancel()  # what it may raise yet is nobody's

    async def finish_one(self, put_off: PutOffError, receive: Receive) -> Any:
        """Finish a single request; raises ProblemRaised where too much waits already."""
        leaving = Leaving(receive)
        try:
            return await self.finish(put_off, leaving.gone, self._take)
        finally:
            leaving.close()

    def _take(self, steps: float) -> None:
        """Let work be done next, whatever it takes; let it wait where not too much would wait then."""
        waiting = self.waiting()
        if waiting is not None and waiting + steps > MOST_WAITING:
            seconds = min(ceil((waiting + steps - MOST_WAITING) / STEPS_A_SECOND), _LONGEST_RETRY)
            words = f"The service has all the work it can take. Try again in {seconds} second(s)."
            raise overloaded(words, seconds)


def overloaded(
    detail: str = "The service has all the work it can take. Try again in a second.", seconds: int = 1
) -> ProblemRaised:
    """Give the problem of a request that would have to wait too long, and after how many seconds to ask again."""
    return ProblemRaised("overloaded", detail, headers=((b"retry-after", b"%d" % seconds),))


def _uncollected(work: Callable[[], Finished]) -> Finished:
    """Do work without the garbage collector, which would hold everybody up to look through all that the work builds:
    a third of a second where that is much. What is built goes with its last reference.
    """
    if not gc.isenabled():
        return work()
    gc.disable()
    try:
        return work()
    finally:
        gc.enable()


@cache
def _thread() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(1, "aside")


ASIDE = Aside()
