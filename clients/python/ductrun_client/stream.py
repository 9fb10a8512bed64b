"""Any number of questions through one request: answers come back, in order, while questions are still going out.

Laid beside the generated modules and called in their manner: `stream.sync(client=..., body=...)`,
`stream.asyncio(client=..., body=...)`. The connection is the stream's own and goes straight to the service.
"""

import json
from asyncio import StreamReader, StreamWriter, create_task, new_event_loop, open_connection, sleep, wait
from collections.abc import AsyncGenerator, AsyncIterator, Iterable, Iterator, Sized
from contextlib import aclosing, suppress
from typing import Any

import h11
import httpx
from tqdm import tqdm

from .client import AuthenticatedClient, Client
from .errors import UnexpectedStatus
from .models import AssumptionPolicy, StreamProblem, StreamSummary, UnitSystem
from .unions import STREAM_ANSWER_BY_OPERATION, BatchItem, StreamAnswer

_READ = 65536


class CutOff(Exception):  # noqa: N818
    """The answer ended before its summary; `answered` questions were answered, the others can be asked again."""

    def __init__(self, answered: int) -> None:
        """Keep how many were answered."""
        super().__init__(f"the stream was cut off after {answered} answers")
        self.answered = answered


def sync(
    *,
    client: AuthenticatedClient | Client,
    body: Iterable[BatchItem],
    units: UnitSystem = UnitSystem.US,
    working: bool = False,
    assumptions: AssumptionPolicy = AssumptionPolicy.STATE,
    progress: bool = False,
) -> Iterator[StreamAnswer | StreamProblem]:
    """Ask one question after the other and give each answer as it comes; nothing is read ahead of the caller.

    An answer is of its operation (SpacersStreamAnswer), a question that has none ends in a StreamProblem. Raises
    UnexpectedStatus if the stream is refused, CutOff if it ends early; `progress` shows a bar on standard error.
    """
    loop = new_event_loop()
    answers = _answers(client, body, units, working, assumptions, progress)
    try:
        while True:
            try:
                yield from loop.run_until_complete(anext(answers))
            except StopAsyncIteration:
                return
    finally:
        loop.run_until_complete(answers.aclose())
        loop.close()


async def asyncio(
    *,
    client: AuthenticatedClient | Client,
    body: Iterable[BatchItem],
    units: UnitSystem = UnitSystem.US,
    working: bool = False,
    assumptions: AssumptionPolicy = AssumptionPolicy.STATE,
    progress: bool = False,
) -> AsyncIterator[StreamAnswer | StreamProblem]:
    """Do the same for a caller who runs an event loop."""
    answers = _answers(client, body, units, working, assumptions, progress)
    try:
        async for some in answers:
            for answer in some:
                yield answer
    finally:
        await answers.aclose()


async def _answers(
    client: AuthenticatedClient | Client,
    body: Iterable[BatchItem],
    units: UnitSystem,
    working: bool,
    assumptions: AssumptionPolicy,
    progress: bool,
) -> AsyncGenerator[list[StreamAnswer | StreamProblem], None]:
    """Give the answers as they arrive, those of one read together."""
    request = client.get_httpx_client().build_request(
        "POST",
        "/v1/batch/stream",
        params={"units": units.value, "working": str(working).lower(), "assumptions": assumptions.value},
        headers={"Content-Type": "application/jsonl", "Transfer-Encoding": "chunked"},
    )
    secure = request.url.scheme == "https"
    context = httpx.create_ssl_context(verify=client._verify_ssl) if secure else None
    reader, writer = await open_connection(request.url.host, request.url.port or (443 if secure else 80), ssl=context)
    wire = h11.Connection(h11.CLIENT)
    head = h11.Request(method="POST", target=request.url.raw_path, headers=request.headers.raw)
    writer.write(wire.send(head) or b"")
    sending = create_task(_send(body, wire, writer))
    status, answered, summary, rest, refusal = 0, 0, None, b"", b""
    bar = tqdm(total=len(body) if isinstance(body, Sized) else None, unit=" answers", disable=not progress)
    try:
        async with aclosing(_events(wire, reader)) as events:
            async for event in events:
                if isinstance(event, h11.Response):
                    status = event.status_code
                elif status != 200:
                    refusal += event.data
                else:
                    *lines, rest = (rest + event.data).split(b"\n")
                    found = [json.loads(line) for line in lines]
                    if found and found[-1]["type"] == "summary":
                        summary = StreamSummary.from_dict(found.pop())
                    answers = [_typed(one) for one in found if one["type"] not in {"basis", "stopped"}]
                    answered += len(answers)
                    bar.update(len(answers))
                    yield answers
        if sending.done():
            sending.result()  # what went wrong in the body is the caller's to know
    finally:
        sending.cancel()
        await wait([sending])
        writer.transport.abort()  # all is said, or nobody listens any more
        with suppress(OSError):
            await writer.wait_closed()
        bar.close()
    if status not in (0, 200):
        raise UnexpectedStatus(status, refusal)
    if summary is None or summary.item_count != answered:
        raise CutOff(answered)


def _typed(line: dict[str, Any]) -> StreamAnswer | StreamProblem:
    if line["type"] == "problem":
        return StreamProblem.from_dict(line)
    return STREAM_ANSWER_BY_OPERATION[line["operation"]].from_dict(line)


async def _send(body: Iterable[BatchItem], wire: h11.Connection, writer: StreamWriter) -> None:
    try:
        for number, item in enumerate(body):
            line = json.dumps(item.to_dict(), separators=(",", ":")).encode() + b"\n"
            writer.write(wire.send(h11.Data(data=line)) or b"")
            await writer.drain()
            if number % 100 == 0:
                await sleep(0)  # answers are read meanwhile
        writer.write(wire.send(h11.EndOfMessage()) or b"")
    except ConnectionError:
        return  # the reading side finds the end, and how far the answers came
    except BaseException:
        writer.close()  # a body that fails must not leave the reading side waiting
        raise


async def _events(wire: h11.Connection, reader: StreamReader) -> AsyncGenerator[h11.Response | h11.Data, None]:
    """Give what the service sends, until it ends or breaks off."""
    try:
        while not isinstance(event := wire.next_event(), h11.EndOfMessage | h11.ConnectionClosed):
            if event is h11.NEED_DATA:
                wire.receive_data(await reader.read(_READ))
            elif isinstance(event, h11.Response | h11.Data):
                yield event
    except (h11.RemoteProtocolError, ConnectionError):
        return
