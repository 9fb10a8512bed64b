"""uvicorn's HTTP protocol, but for seven things.

The head and the body of an answer leave in one write. uvicorn writes the head as soon as the answer starts, which costs
a system call, a packet and a waking of the caller of their own; see `transport.py`.

What is no HTTP is answered as everything else is, with a problem that has a request id, in its turn behind the requests
before it; where an answer to the broken request has begun, the connection closes and nothing is written into it.

A caller who has sent a request and says so by closing that half of the connection still gets the answer. One who has
gone looks the same until something is written to it: while an answer takes long, that is `100 Continue`.

A request that comes too slowly is refused, and a reader who does not read is left; see `watch.py`. Beyond a number of
requests at work the next is told at once to come back, before those that are at work grow slow.

A stream that the service ended closes its connection, whose sender may never send the rest.

A request that asks for another protocol is answered in this one. uvicorn's parser passes over the body of such a
request, and so come the first requests of some client libraries, which offer HTTP/2.
"""

from __future__ import annotations

import asyncio
import sys
from collections import deque
from collections.abc import Hashable
from functools import cache
from typing import Any

from httptools import HttpRequestParser
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol, RequestResponseCycle

from ductrun.http.aside import overloaded
from ductrun.http.gate import Gate
from ductrun.http.origins import allowing
from ductrun.http.problems import ProblemRaised
from ductrun.http.stopping import STOPPING
from ductrun.http.stream import CLOSES, IS_LOST
from ductrun.http.transport import GatheringTransport
from ductrun.http.watch import Watch
from ductrun.settings import Settings

LONGEST_TARGET = 8_192  # bytes of path and query
LONGEST_HEAD = 65_536  # bytes of all headers
_FIRST_ASKED = 0.25  # seconds after a caller closed its half; what is answered sooner is answered as ever


class CarefulProtocol(HttpToolsProtocol):
    """The protocol that gathers what it writes, refuses with problems, and answers callers who are half gone."""

    _gathering: GatheringTransport
    _in_head = False
    _head_size = 0  # bytes that came while a head was unfinished, after those it began with
    _began_with = 0  # bytes that came with the beginning of a head, and may be of what was before it
    _begins_here = False  # whether a head began in what is being read
    _wrong: ProblemRaised | None = None  # with the head that is being read
    _refused = False
    _arrived = b""  # what is being read
    _received = 0  # bytes, ever
    _pauses = 0  # of writing, ever
    _lost = False

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Take a connection."""
        self._gathering = GatheringTransport(transport)
        super().connection_made(self._gathering)  # type: ignore[arg-type]
        self._watch = Watch(self, self.loop, _settings())

    def data_received(self, data: bytes) -> None:
        """Read on, until a request is refused or the last one answered; a head without end is refused."""
        if self._refused or self.transport.is_closing():
            return
        self._received += len(data)
        self._begins_here = False
        self._arrived = data
        super().data_received(data)
        self._arrived = b""  # a connection that waits keeps nothing
        if self._in_head and self._begins_here:
            self._began_with = len(data)
        elif self._in_head:
            self._head_size += len(data)
            if self._head_size > LONGEST_TARGET + LONGEST_HEAD:
                self._refuse(_head_too_large())

    def eof_received(self) -> bool:  # type: ignore[override]
        """Stay, which True says, until all is answered: a caller who has sent everything may listen still."""
        cycle = self.cycle
        if self._in_head or (cycle is not None and cycle.more_body and not cycle.response_complete):
            self._refuse(ProblemRaised("malformed_http", "The request ended before it was complete."))
        elif cycle is None or cycle.response_complete:
            self.transport.close()
        else:
            cycle.keep_alive = False
            self.loop.call_later(_FIRST_ASKED, self._ask_whether_there, cycle, _FIRST_ASKED)
        return True

    def _ask_whether_there(self, cycle: RequestResponseCycle, waited: float) -> None:
        """Write what any client passes over: to one who is gone the first such is met by a reset, the next by an error,
        and then the connection is lost, which whoever answers can see.
        """
        at_work = cycle is self.cycle and not self.pipeline and not cycle.response_started
        if self._refused or not at_work or self.transport.is_closing() or cycle.scope["http_version"] != "1.1":
            return
        self.transport.write(b"HTTP/1.1 100 Continue\r\n\r\n")
        self.loop.call_later(2 * waited, self._ask_whether_there, cycle, 2 * waited)

    def on_message_begin(self) -> None:
        """Begin the head of a request."""
        super().on_message_begin()
        self._in_head = self._begins_here = True
        self._head_size = self._began_with = 0

    def on_headers_complete(self) -> None:
        """Hold the head against what uvicorn passes over, before anything is asked to answer it."""
        self._wrong = self._wrong_head()
        if self._wrong is not None:
            self.scope["method"] = self.parser.get_method().decode("ascii")
            raise self._wrong  # stops the parser, and comes back to `send_400_response`
        self._in_head = False
        scope: Any = self.scope
        scope[IS_LOST] = self._is_lost
        if len(self.tasks) < _settings().max_concurrent or self.url in _ALWAYS:
            super().on_headers_complete()
            return
        app, self.app = self.app, _busy_application()
        try:
            super().on_headers_complete()
        finally:
            self.app = app

    def on_response_complete(self) -> None:
        """Go on to the next request; none comes where an answer ended before its request did."""
        if self.scope and self.scope.get(CLOSES):  # none before the first request
            self._refused = True
            if not self.transport.is_closing():
                self._gathering.lingers = True
                self.transport.close()
        super().on_response_complete()

    def connection_lost(self, exc: Exception | None) -> None:
        """Let go of a connection."""
        self._lost = True
        self._watch.end()
        super().connection_lost(exc)

    def _is_lost(self) -> bool:
        """Tell whether uvicorn knows too that nobody is there: it takes an answer that ends before that for a fault."""
        return self._lost

    def pause_writing(self) -> None:
        """Hold up whoever answers while the reader is slow."""
        self._pauses += 1
        super().pause_writing()

    def shutdown(self) -> None:
        """End: at once where nothing is at work, else with the answer, whose sender may be sending still."""
        STOPPING.stop()
        if self.transport.is_closing():
            return
        self._gathering.lingers = self.cycle is not None and not self.cycle.response_complete
        super().shutdown()

    def waits_for(self) -> Hashable | None:
        """Tell what this connection should be sending, None if nothing: a head, a body, or a first request."""
        if self._refused:
            return None
        cycle = self.cycle
        if self._in_head:
            return "head", id(self.scope)
        if cycle is None:
            return "request"
        at_work = cycle.more_body and not cycle.response_complete and not self.flow.read_paused
        return ("body", id(cycle)) if at_work and not cycle.response_started else None

    def too_slow(self) -> None:
        """End a request that does not come."""
        if self._in_head or self.cycle is not None:
            self._refuse(ProblemRaised("too_slow", "The request did not come in time."))
        else:
            self.transport.close()

    def _wrong_head(self) -> ProblemRaised | None:
        hosts = [name for name, _ in self.headers].count(b"host")
        if len(self.url) > LONGEST_TARGET:
            return ProblemRaised("target_too_long", f"Path and query may have {LONGEST_TARGET} bytes.")
        arrived = self._began_with + self._head_size + len(self._arrived)  # no head is larger than what has arrived
        if arrived > LONGEST_HEAD and sum(len(name) + len(value) for name, value in self.headers) > LONGEST_HEAD:
            return _head_too_large()
        if hosts > 1 or (not hosts and self.parser.get_http_version() == "1.1"):
            return ProblemRaised("malformed_http", "A request must have one Host header.")
        return None

    def _should_upgrade(self) -> bool:
        """Leave a request that asks for another protocol to `handle_websocket_upgrade`."""
        return True

    def handle_websocket_upgrade(self) -> None:
        """Read a request that asks for another protocol once more, as one that does not ask."""
        method = self.parser.get_method()
        if method == b"CONNECT":
            self._refuse(ProblemRaised("malformed_http", "There is no way to anywhere else through here."))
            return
        # called where HttpParserUpgrade is caught, which says how far the parser came
        body = self._arrived[sys.exception().args[0] :]  # type: ignore[union-attr]
        head = [b"%b %b HTTP/1.1" % (method, self.url)]
        for name, value in self.headers:
            if name == b"connection":
                options = [option for option in value.split(b",") if option.strip().lower() != b"upgrade"]
                head.append(b"connection: %b" % b",".join(options))
            elif name != b"upgrade":
                head.append(b"%b: %b" % (name, value))
        self.parser = HttpRequestParser(self)
        self.data_received(b"\r\n".join([*head, b"", body]))

    def send_400_response(self, msg: str) -> None:  # noqa: ARG002  (the name is uvicorn's)
        """Answer a request that the parser refused."""
        self._refuse(self._wrong or ProblemRaised("malformed_http", "This is not a request of HTTP/1.1."))

    def _refuse(self, problem: ProblemRaised) -> None:
        """Answer the request that is being read with a problem, in its turn, and close."""
        if self._refused:
            return
        self._refused = True
        broken = self.cycle
        waits = broken is not None and not broken.response_complete
        if broken is not None and broken.more_body and not self._in_head:
            if broken.response_started:
                self.transport.close()
                return
            waits = any(waiting is broken for waiting, _ in self.pipeline)
            self.pipeline = deque(one for one in self.pipeline if one[0] is not broken)
            broken.disconnected = True  # whoever was to answer it need not
            broken.message_event.set()
        self.cycle = self._last_cycle()

        async def refuse(*_asked: Any) -> None:
            self._gathering.lingers = True
            raise problem

        app = _outermost(refuse)
        if waits:
            self.pipeline.appendleft((self.cycle, app))
        else:
            self._start_asgi_task(self.cycle, app)

    def _last_cycle(self) -> RequestResponseCycle:
        """Give the cycle of an answer after which the connection closes."""
        scope: Any = {"type": "http", "method": "GET", "headers": [], **(self.scope or {})}
        return RequestResponseCycle(
            scope=scope,
            transport=self.transport,
            flow=self.flow,
            logger=self.logger,
            access_logger=self.access_logger,
            access_log=self.access_log,
            default_headers=self.server_state.default_headers,
            message_event=asyncio.Event(),
            expect_100_continue=False,
            keep_alive=False,
            on_response=self.on_response_complete,
        )


async def _busy(*_asked: Any) -> None:
    raise overloaded()


_ALWAYS = frozenset({b"/livez", b"/readyz", b"/metrics"})
_settings = cache(Settings.from_environment)


def _outermost(app: Any) -> Any:
    """Put around what refuses a request what stands around every answer: pages of other origins may read it."""
    return allowing(Gate(app, Settings()), _settings().cors_origins)


@cache
def _busy_application() -> Any:
    return _outermost(_busy)


def _head_too_large() -> ProblemRaised:
    return ProblemRaised("head_too_large", f"The headers may have {LONGEST_HEAD} bytes.")
