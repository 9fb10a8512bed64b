"""The server's own protocol: an answer leaves in one write, and nothing that waits is lost."""

from __future__ import annotations

import asyncio
import http.client
import inspect
from collections.abc import Callable
from typing import Any

import pytest
from ductrun.http.app import create_app
from ductrun.http.server import CarefulProtocol
from ductrun.http.transport import GatheringTransport
from ductrun.settings import Settings
from tools.live import serving
from uvicorn import Config
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol, RequestResponseCycle
from uvicorn.server import ServerState


class Recorded:
    """A transport that keeps what is asked of it."""

    def __init__(self) -> None:
        self.asked: list[Any] = []
        self.closing = False

    def writelines(self, data: list[bytes]) -> None:
        self.asked.append(b"".join(data))

    def close(self) -> None:
        self.asked.append("close")
        self.closing = True

    def is_closing(self) -> bool:
        return self.closing

    def pause_reading(self) -> None:
        self.asked.append("pause")

    def resume_reading(self) -> None:
        self.asked.append("resume")

    def write_eof(self) -> None:
        self.asked.append("eof")

    def get_extra_info(self, name: str) -> str:
        return f"info of {name}"


def asked_of(use: Callable[[Any], Any]) -> list[Any]:
    transport = Recorded()

    async def run() -> None:
        use(GatheringTransport(transport))  # type: ignore[arg-type]
        transport.asked.append("turn")
        await asyncio.sleep(0)

    asyncio.run(run())
    return transport.asked


def test_what_is_written_in_one_turn_leaves_in_one_write_at_its_end() -> None:
    assert asked_of(lambda transport: [transport.write(b"head "), transport.write(b"body")]) == ["turn", b"head body"]


def test_a_close_sends_what_waits_first() -> None:
    assert asked_of(lambda transport: [transport.write(b"last"), transport.close()]) == [b"last", "close", "turn"]


def test_one_that_lingers_closes_its_own_half_first_and_once() -> None:
    def last(transport: Any) -> None:
        transport.lingers = True
        transport.write(b"last")
        transport.close()
        transport.close()

    assert asked_of(last) == [b"last", "eof", "resume", "close", "turn"]


def test_nothing_is_written_behind_the_last_answer_of_one_that_lingers() -> None:
    def late(transport: Any) -> None:
        transport.lingers = True
        transport.write(b"last")
        transport.close()
        assert transport.is_closing()
        transport.write(b"late")

    assert asked_of(late) == [b"last", "eof", "resume", "turn"]


def test_nothing_is_written_once_the_caller_has_gone() -> None:
    def gone(transport: Any) -> None:
        transport.write(b"late")
        transport._transport.closing = True

    assert asked_of(gone) == ["turn"]


def test_all_else_is_the_transports() -> None:
    asked = asked_of(lambda transport: [transport.pause_reading(), transport.resume_reading()])
    assert asked == ["pause", "resume", "turn"]
    assert asked_of(lambda transport: transport.write(transport.get_extra_info("peername").encode()))[1:] == [
        b"info of peername"
    ]


REPLACED = {
    "connection_made": ["transport"],
    "data_received": ["data"],
    "eof_received": [],
    "connection_lost": ["exc"],
    "pause_writing": [],
    "shutdown": [],
    "on_message_begin": [],
    "on_headers_complete": [],
    "_should_upgrade": [],
    "handle_websocket_upgrade": [],
    "send_400_response": ["msg"],
    "on_response_complete": [],
}
USED = {"_start_asgi_task": ["cycle", "app"]}
CYCLE = [
    *("scope", "transport", "flow", "logger", "access_logger", "access_log", "default_headers"),
    *("message_event", "expect_100_continue", "keep_alive", "on_response"),
]


def parameters(function: Any) -> list[str]:
    return [name for name in inspect.signature(function).parameters if name != "self"]


def test_what_is_replaced_or_used_of_uvicorns_protocol_is_there_as_it_was() -> None:
    own = {name for name, value in vars(CarefulProtocol).items() if inspect.isfunction(value)}
    assert own & set(vars(HttpToolsProtocol)) == set(REPLACED)
    for name, names in REPLACED.items():
        assert parameters(vars(CarefulProtocol)[name]) == names
    for name, names in (REPLACED | USED).items():
        assert parameters(vars(HttpToolsProtocol)[name]) == names
    assert parameters(RequestResponseCycle) == CYCLE


def test_a_connection_is_made_once_and_with_its_transport() -> None:
    made: list[Any] = []

    class Watched(CarefulProtocol):
        def connection_made(self, transport: Any) -> None:
            made.append(transport)
            super().connection_made(transport)

    async def asked() -> bytes:
        config = Config(create_app(Settings()), http=Watched, lifespan="off", log_config=None)
        config.load()
        loop = asyncio.get_running_loop()
        state = ServerState()
        server = await loop.create_server(lambda: Watched(config, state, {}), "127.0.0.1", 0)
        reader, writer = await asyncio.open_connection(*server.sockets[0].getsockname())
        for _ in range(2):
            writer.write(b"GET /livez HTTP/1.1\r\nHost: a\r\n\r\n")
        writer.write_eof()
        answers = await reader.read()
        writer.close()
        server.close()
        return answers

    assert asyncio.run(asked()).count(b'{"status":"alive"}') == 2
    [transport] = made
    assert isinstance(transport, asyncio.Transport)
    assert not isinstance(transport, GatheringTransport)


def test_uvicorn_writes_through_the_transport_it_was_given() -> None:
    config = Config(create_app(Settings()), lifespan="off", log_config=None)
    config.load()

    class Nowhere(Recorded):
        def get_extra_info(self, name: str) -> Any:  # noqa: ARG002  (the name is asyncio's)
            return None

    async def run() -> Any:
        protocol = CarefulProtocol(config, ServerState(), {})
        protocol.connection_made(Nowhere())  # type: ignore[arg-type]
        return protocol

    protocol = asyncio.run(run())
    assert isinstance(protocol.transport, GatheringTransport)
    assert protocol.flow._transport is protocol.transport
    fresh = vars(protocol)
    assert {"cycle", "pipeline", "parser", "scope", "headers", "logger", "server_state"} <= set(fresh)


@pytest.mark.live
@pytest.mark.parametrize("version", ["HTTP/1.1", "HTTP/1.0"])
def test_answers_of_every_kind_come_whole(version: str) -> None:
    with serving() as address:
        host, port = address.removeprefix("http://").split(":")
        connection = http.client.HTTPConnection(host, int(port), timeout=10)
        connection._http_vsn_str = version  # type: ignore[attr-defined]
        for method, path, status in (
            ("GET", "/livez", 200),
            ("HEAD", "/v1/tables/units", 200),
            ("GET", "/v1/tables/units", 200),
            ("GET", "/nowhere", 404),
            ("POST", "/v1/fill", 415),
            ("GET", "/openapi.json", 200),
        ):
            connection.request(method, path)
            answer = connection.getresponse()
            body = answer.read()
            assert answer.status == status
            assert bool(body) == (method != "HEAD")
            assert method == "HEAD" or len(body) == int(answer.headers["content-length"])
        connection.close()
