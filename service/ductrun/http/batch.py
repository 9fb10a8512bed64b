"""POST /v1/batch: many questions in one request, each answered or refused by itself, in the order they came."""

from __future__ import annotations

import asyncio
import re
from collections.abc import Sequence
from time import perf_counter, thread_time
from typing import Annotated, Any

from msgspec import UNSET, DecodeError, Raw, Struct, UnsetType, defstruct, json, structs
from pydantic import Field
from starlette.types import Receive, Scope, Send

from ductrun.http.aside import ASIDE, STEPS_A_SECOND, ClientGone, Leaving, overloaded
from ductrun.http.exchange import JSON, media_type_asked, read_body, read_query, send_written
from ductrun.http.eyes import ITEMS
from ductrun.http.gate import REQUEST_ID
from ductrun.http.items import Items, refused
from ductrun.http.problems import ProblemRaised
from ductrun.http.stopping import STOPPING
from ductrun.kit.answering import Chosen, PutOffError, read_slowly
from ductrun.kit.bounding import LARGE, TooManyValuesError, check_syntax, marks_by_turns
from ductrun.kit.forms import Form
from ductrun.kit.reading import REFUSED
from ductrun.kit.strict_json import NotStrictError

MOST_ITEMS = 1_000
MOST_BATCH_STEPS = 6_000_000.0  # of items that take long: about a minute
_SLICE = 0.001  # seconds of work before other requests get their turn
_PIECE = 262_144  # bytes of an answer that is sent in pieces
_MOST_MARKS = 4_000_000  # values of a batch: cutting it takes some ten milliseconds, in which nobody has a turn

# an array that is read as a record with a place for each item: one item too many stops the reader there and then,
# where an array of any length would be built first
_Places: Any = defstruct(
    "_Places",
    [(f"item_{number}", Raw, None) for number in range(MOST_ITEMS)],
    array_like=True,
    forbid_unknown_fields=True,
    gc=False,
)


class _Envelope(Struct, forbid_unknown_fields=True, gc=False):
    items: _Places


class _Loose(Struct, gc=False):
    items: Raw | UnsetType = UNSET


class _Opaque(Form):
    items: Annotated[list[Any], Field(min_length=1, max_length=MOST_ITEMS)]


_read_envelope = json.Decoder(_Envelope).decode
_read_loose = json.Decoder(_Loose).decode
_UNKNOWN = re.compile(r"unknown field `(.{1,100}?)`", re.DOTALL)


async def _items_of(body: bytes) -> Sequence[Raw]:
    """Cut a body into its items, none of which is looked at yet; raises one of REFUSALS if it is no batch.

    Each pass over a large body is a turn of its own.
    """
    if len(body) > LARGE:
        marks = 0
        for counted in marks_by_turns(body):
            marks += counted
            if marks > _MOST_MARKS:
                raise TooManyValuesError(_MOST_MARKS)
            await asyncio.sleep(0)
    try:
        items = [item for item in structs.astuple(_read_envelope(body).items) if item is not None]
    except REFUSED as error:
        if len(body) <= LARGE:
            read_slowly(_Opaque, body)
        read_slowly(_Opaque, await _in_small(body, error))
        raise
    if not items:
        read_slowly(_Opaque, b'{"items":[]}')
    if len(body) > LARGE:
        await asyncio.sleep(0)
    colons = body.count(b":")
    for item in items:
        colons -= bytes(item).count(b":")
        if memoryview(item).nbytes > LARGE:
            await asyncio.sleep(0)
    if colons != 1:
        raise NotStrictError("duplicate_member", "The batch has two members of the name items.")
    return items


async def _in_small(body: bytes, error: Exception) -> bytes:
    """Give a small body with the fault of a large one that is no batch, so that nothing large is built to tell it."""
    if "at most length" in str(error):
        return json.encode({"items": [0] * (MOST_ITEMS + 1)})
    await asyncio.sleep(0)
    check_syntax(body)
    await asyncio.sleep(0)
    unknown = _UNKNOWN.search(str(error))
    try:
        items = bytes(_read_loose(body).items or b"")
    except DecodeError:
        return b"0"
    told: dict[str, Any] = {"items": [0] if items.startswith(b"[") else 0} if items else {}
    if unknown is not None:
        told[unknown.group(1)] = 0
    return json.encode(told)


class _Answering:
    """The answer as it grows: sent in one piece, or, where it grows large, in pieces that are kept no longer."""

    def __init__(self, send: Send, count: int) -> None:
        """Begin with what comes before the first item."""
        self._send = send
        self._written = [b'{"item_count":%d,"items":[' % count]
        self._size = 0
        self._failed = 0
        self._begun = False

    async def add(self, status: int, answer: bytes) -> None:
        """Add what became of the next item; waits while the reader is slow."""
        self._written += (answer, b",")
        self._failed += status != 200
        self._size += len(answer)
        if self._size > _PIECE:
            await self._pass_on(last=False)

    async def end(self) -> None:
        """Send what is left."""
        comma = self._written.pop()  # behind the last item
        assert comma == b","  # noqa: S101  (a batch has an item)
        self._written.append(b'],"failed_count":%d}' % self._failed)
        if self._begun:
            await self._pass_on(last=True)
        else:
            await send_written(self._send, 200, b"application/json", b"".join(self._written))

    async def _pass_on(self, *, last: bool) -> None:
        if not self._begun:
            self._begun = True
            headers = [(b"content-type", b"application/json"), (b"cache-control", b"no-store")]
            await self._send({"type": "http.response.start", "status": 200, "headers": headers})
        kept = [] if last else [self._written.pop()]  # it may be the comma behind the last item
        body = b"".join(self._written)
        self._written, self._size = kept, 0
        await self._send({"type": "http.response.body", "body": body, "more_body": not last})


class Batch:
    """The endpoint of batches."""

    def __init__(self, items: Items, max_body_bytes: int, max_item_bytes: int) -> None:
        """Keep what answers an item, and the limits of a body and of an item."""
        self.items = items
        self.max_body_bytes = max_body_bytes
        self.max_item_bytes = max_item_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one batch, with breaks in which other requests are answered; a caller who goes away ends it."""
        media_type_asked(scope["headers"], JSON)
        body = await read_body(dict(scope["headers"]), receive, self.max_body_bytes)
        chosen = read_query(scope["query_string"])
        items = await _items_of(body)
        scope[ITEMS] = len(items)
        answering = _Answering(send, len(items))
        leaving = Leaving(receive)
        turn, share = perf_counter(), _Share()
        try:
            for item in items:
                try:
                    if STOPPING.stopped:
                        raise _stopping()
                    settled = self._one(bytes(item), chosen, scope[REQUEST_ID])
                except ProblemRaised as problem:
                    settled = refused(problem, scope[REQUEST_ID], self.items.name_of(bytes(item)))
                except PutOffError as put_off:
                    try:
                        settled = await ASIDE.finish(share.measured(put_off), leaving.gone, share.take, _stopping)
                        share.give_back()
                    except ProblemRaised as problem:
                        settled = refused(problem, scope[REQUEST_ID], self.items.name_of(bytes(item)))
                await answering.add(*settled)
                if perf_counter() - turn > _SLICE:
                    await asyncio.sleep(0)
                    if leaving.gone():
                        raise ClientGone
                    turn = perf_counter()
            await answering.end()
        finally:
            leaving.close()

    def _one(self, item: bytes, chosen: Chosen, instance: str) -> tuple[int, bytes]:
        if len(item) > self.max_item_bytes:
            too_large = ProblemRaised("body_too_large", f"An item may have {self.max_item_bytes} bytes.")
            return refused(too_large, instance, b"")
        return self.items.settle(item, chosen, instance)


def _stopping() -> ProblemRaised:
    return overloaded("The service is being stopped. Ask the item again.")


class _Share:
    """The work that is done for one batch: items that take long take of it until it is used up.

    An item takes what it was reckoned to need before it begins, and gives back what it did not need: of the processor's
    time, so that the same batch has the same answer beside whatever else is at work.
    """

    def __init__(self) -> None:
        """Start with nothing taken."""
        self.taken = self._reckoned = self._needed = 0.0

    def take(self, steps: float) -> None:
        """Take the steps of an item; raises ProblemRaised if they are not there, or if the service stops."""
        self.give_back()
        if STOPPING.stopped:
            raise _stopping()
        if self.taken + steps > MOST_BATCH_STEPS:
            words = "The items before this one take all the work that is done for a batch. Ask it by itself."
            raise ProblemRaised("too_costly", words)
        self.taken += steps
        self._reckoned = steps

    def measured(self, put_off: PutOffError) -> PutOffError:
        """Give work that tells, when it is finished, what it needed; so does what it puts off again."""

        def finish() -> Any:
            began = thread_time()
            try:
                return put_off.finish()
            except PutOffError as again:
                raise self.measured(again) from None
            finally:
                self._needed = (thread_time() - began) * STEPS_A_SECOND

        return PutOffError(finish, put_off.steps)

    def give_back(self) -> None:
        """Give back what was reckoned for the last item and not needed, now that it is finished."""
        self.taken -= max(0.0, self._reckoned - self._needed)
        self._reckoned = self._needed = 0.0
