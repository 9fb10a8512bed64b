"""The server's own protocol: an answer leaves in one write, and nothing that waits is lost."""

from __future__ import annotations

import asyncio
import http.client
from collections.abc import Callable
from typing import Any

import pytest
from ductrun.http.server import GatheringProtocol, GatheringTransport
from tools.live import serving
from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol


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


def test_the_protocol_is_uvicorns_but_for_its_transport() -> None:
    own = {name for name in vars(GatheringProtocol) if not name.startswith("__")}
    assert issubclass(GatheringProtocol, HttpToolsProtocol)
    assert own == {"connection_made"}


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
