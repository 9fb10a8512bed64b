"""What is no good HTTP, byte for byte on a live server: each has its problem, with a request id, in its turn."""

from __future__ import annotations

import json
import socket
import time
from collections.abc import Iterator
from contextlib import contextmanager

import pytest
from ductrun.http.server import LONGEST_HEAD, LONGEST_TARGET
from ductrun.kit.bounding import LARGE
from tools.costly_requests import bare_run, run_of, under_earth
from tools.live import serving

from tests.asking import EXAMPLES
from tests.http.test_problems import assert_problem
from tests.http.wire import Reply

pytestmark = pytest.mark.live
FILL = json.dumps(EXAMPLES["fill"]).encode()
LINE = json.dumps({"id": "a", "operation": "fill", "request": EXAMPLES["fill"]}).encode() + b"\n"
LIVEZ = b"GET /livez HTTP/1.1\r\nHost: a\r\n\r\n"


def posted(*headers: bytes, body: bytes = FILL, path: bytes = b"/v1/fill") -> bytes:
    """Write a request; a header that is given stands before those every request has."""
    usual = (b"Host: a", b"Content-Type: application/json", b"Content-Length: %d" % len(body))
    return b"\r\n".join([b"POST %b HTTP/1.1" % path, *headers, *usual, b"", body])


def chunked(path: bytes, media_type: bytes, *chunks: bytes) -> bytes:
    head = b"POST %b HTTP/1.1\r\nHost: a\r\nContent-Type: %b\r\nTransfer-Encoding: chunked\r\n\r\n" % (path, media_type)
    return head + b"".join(b"%x\r\n%b\r\n" % (len(chunk), chunk) for chunk in chunks)


@pytest.fixture(scope="module")
def port() -> Iterator[int]:
    with serving() as address:
        yield int(address.rpartition(":")[2])


def exchange(port: int, *parts: bytes, half_close: bool = False) -> bytes:
    """Send some bytes, in parts with a breath between them, and read until the server closes."""
    with socket.create_connection(("127.0.0.1", port), timeout=50) as connection:
        for number, part in enumerate(parts):
            time.sleep(0.2 if number else 0)
            connection.sendall(part)
        if half_close:
            connection.shutdown(socket.SHUT_WR)
        return b"".join(iter(lambda: connection.recv(65_536), b""))


def exchange_once_answered(port: int, first: bytes, answer: bytes, second: bytes) -> bytes:
    """Send some bytes, and more once so much of the answer is there; read until the server closes."""
    with socket.create_connection(("127.0.0.1", port), timeout=50) as connection:
        connection.sendall(first)
        found = b""
        while answer not in found:
            found += (came := connection.recv(65_536))
            assert came, found
        connection.sendall(second)
        return found + b"".join(iter(lambda: connection.recv(65_536), b""))


def replies_in(answered: bytes) -> list[Reply]:
    """Take apart answers whose length is told."""
    found = []
    while answered:
        head, _, rest = answered.partition(b"\r\n\r\n")
        status, *lines = head.decode().split("\r\n")
        headers = {name.lower(): value for name, value in (line.split(": ", 1) for line in lines)}
        length = int(headers["content-length"])
        assert len(rest) >= length
        found.append(Reply(int(status.split()[1]), headers, rest[:length]))
        answered = rest[length:]
    return found


FAULTS: dict[str, tuple[bytes, str]] = {
    "an unknown method": (b"BREW /v1/fill HTTP/1.1\r\nHost: a\r\n\r\n", "malformed_http"),
    "a NUL in the head": (b"GET /livez HTTP/1.1\r\nHost: a\r\nX-A: zanzibar\0\r\n\r\n", "malformed_http"),
    "a NUL in the path": (b"GET /zanzi\0bar HTTP/1.1\r\nHost: a\r\n\r\n", "malformed_http"),
    "another version": (b"GET /livez HTTP/7.7\r\nHost: a\r\n\r\n", "malformed_http"),
    "the greeting of TLS": (b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03", "malformed_http"),
    "the preface of HTTP/2": (b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n", "malformed_http"),
    "a chunk without size": (chunked(b"/v1/fill", b"application/json") + b"zanzibar\r\n", "malformed_http"),
    "a later chunk without size": (chunked(b"/v1/fill", b"application/json", FILL) + b"zz\r\n", "malformed_http"),
    "a length and chunks": (posted(b"Transfer-Encoding: chunked"), "malformed_http"),
    "two lengths": (posted(b"Content-Length: 1"), "malformed_http"),
    "a way to elsewhere": (b"CONNECT zanzibar:443 HTTP/1.1\r\nHost: a\r\n\r\n", "malformed_http"),
    "no host": (b"GET /livez HTTP/1.1\r\n\r\n", "malformed_http"),
    "two hosts": (posted(b"Host: zanzibar"), "malformed_http"),
    "a long path": (b"GET /%b HTTP/1.1\r\nHost: a\r\n\r\n" % (b"a" * LONGEST_TARGET), "target_too_long"),
    "a very long path": (b"GET /%b HTTP/1.1\r\nHost: a\r\n\r\n" % (b"a" * 70_000), "target_too_long"),
    "a long query": (b"GET /?%b HTTP/1.1\r\nHost: a\r\n\r\n" % (b"a" * LONGEST_TARGET), "target_too_long"),
    "a long header": (posted(b"X-A: " + b"a" * LONGEST_HEAD), "head_too_large"),
    "many headers": (posted(*[b"X-A: zanzibar"] * (LONGEST_HEAD // 10)), "head_too_large"),
    "a header without end": (b"GET / HTTP/1.1\r\nHost: a\r\nX-A: " + b"a" * 2_000_000, "head_too_large"),
    "a path without end": (b"GET /" + b"a" * 2_000_000, "head_too_large"),
}


@pytest.mark.parametrize("name", FAULTS)
def test_what_is_no_good_http_has_its_problem(port: int, name: str) -> None:
    sent, problem = FAULTS[name]
    [found] = replies_in(exchange(port, sent))
    assert_problem(found, problem)
    assert found.headers["connection"] == "close"
    assert found.headers["x-content-type-options"] == "nosniff"


@pytest.mark.parametrize("first", [40, 30_000, 60_000])
def test_a_head_that_comes_in_pieces_is_measured_whole(port: int, first: int) -> None:
    sent = posted(b"X-A: " + b"a" * LONGEST_HEAD)
    [found] = replies_in(exchange(port, sent[:first], sent[first:]))
    assert_problem(found, "head_too_large")


@pytest.mark.parametrize("sent", [posted()[:-10], posted()[:40], b"G"], ids=["body", "head", "method"])
def test_a_request_that_ends_before_its_time_is_told_so(port: int, sent: bytes) -> None:
    [found] = replies_in(exchange(port, sent, half_close=True))
    assert "before it was complete" in assert_problem(found, "malformed_http")["detail"]


def test_the_id_of_a_request_that_is_refused_is_kept_where_it_could_be_read(port: int) -> None:
    sent = b"GET /livez HTTP/1.1\r\nX-Request-ID: bid-7\r\nHost: a\r\nHost: b\r\n\r\n"
    [found] = replies_in(exchange(port, sent))
    assert found.headers["x-request-id"] == "bid-7"
    good = LIVEZ.replace(b"Host", b"X-Request-ID: bid-8\r\nHost")
    _, refused = replies_in(exchange(port, good + b"BREW / HTTP/1.1\r\n\r\n"))
    assert_problem(refused, "malformed_http")
    assert refused.headers["x-request-id"] != "bid-8"


def test_requests_before_the_one_that_is_refused_are_answered_first(port: int) -> None:
    *answered, refused = replies_in(exchange(port, posted() + LIVEZ + posted() + b"BREW / HTTP/1.1\r\n\r\n" + LIVEZ))
    assert [found.status for found in answered] == [200, 200, 200]
    assert answered[0].json == answered[2].json
    assert_problem(refused, "malformed_http")


def test_a_body_that_breaks_while_its_request_waits_is_refused_in_its_turn(port: int) -> None:
    answered, refused = replies_in(exchange(port, posted() + chunked(b"/v1/fill", b"application/json") + b"zz\r\n"))
    assert answered.status == 200
    assert_problem(refused, "malformed_http")


def test_an_answer_that_has_begun_is_cut_off_and_nothing_is_written_into_it(port: int) -> None:
    begun = chunked(b"/v1/batch/stream", b"application/jsonl", LINE)
    answered = exchange_once_answered(port, begun, b'"type":"answer"', b"zz\r\n")
    assert answered.startswith(b"HTTP/1.1 200")
    assert answered.count(b"HTTP/1.1") == 1
    assert b'"type":"answer"' in answered
    assert b'"type":"summary"' not in answered
    assert not answered.endswith(b"0\r\n\r\n")


def test_a_refusal_after_an_answer_that_came_early_closes_the_connection(port: int) -> None:
    early = chunked(b"/v1/fill", b"text/plain", b"zanzibar")
    [found] = replies_in(exchange_once_answered(port, early, b"/problems/unsupported_media_type", b"zz\r\n"))
    assert_problem(found, "unsupported_media_type")


@pytest.mark.parametrize("version", [b"1.1", b"1.0"])
@pytest.mark.parametrize("sent", [posted(), LIVEZ, posted() + LIVEZ], ids=["post", "get", "both"])
def test_a_caller_who_has_closed_the_sending_half_is_answered(port: int, sent: bytes, version: bytes) -> None:
    requests = sent.replace(b"HTTP/1.1", b"HTTP/" + version)
    expected = 1 if version == b"1.0" else sent.count(b"HTTP/1.1")
    found = replies_in(exchange(port, requests, half_close=True))
    assert [one.status for one in found] == [200] * expected


def test_a_stream_whose_sender_is_done_is_answered_to_its_end(port: int) -> None:
    whole = posted(body=LINE * 300, path=b"/v1/batch/stream").replace(b"application/json", b"application/jsonl")
    answered = exchange(port, whole, half_close=True)
    assert answered.count(b'"type":"answer"') == 300
    assert answered.endswith(b'{"type":"summary","item_count":300,"failed_count":0}\n\r\n0\r\n\r\n')


OFFERS = {
    "HTTP/2": [b"Connection: Upgrade, HTTP2-Settings", b"Upgrade: h2c", b"HTTP2-Settings: AAMAAABkAAQCAAAAAAIAAAAA"],
    "a websocket": [b"Connection: keep-alive, Upgrade", b"Upgrade: websocket", b"Sec-WebSocket-Version: 13"],
}


@pytest.mark.parametrize("offer", OFFERS)
def test_a_request_that_offers_another_protocol_is_answered_in_this_one(port: int, offer: str) -> None:
    offering = posted(*OFFERS[offer])
    found = replies_in(exchange(port, offering + LIVEZ, half_close=True))
    assert [one.status for one in found] == [200, 200]
    assert found[0].json == replies_in(exchange(port, posted(), half_close=True))[0].json
    cut = len(offering) - 20
    [in_parts] = replies_in(exchange(port, offering[:30], offering[30:cut], offering[cut:], half_close=True))
    assert in_parts.status == 200
    chunks = chunked(b"/v1/fill", b"application/json", FILL[:9], FILL[9:], b"")
    offered = chunks.replace(b"Host", b"\r\n".join([*OFFERS[offer], b"Host"]), 1)
    assert [one.status for one in replies_in(exchange(port, offered, half_close=True))] == [200]


def test_a_request_of_the_old_version_needs_no_host(port: int) -> None:
    [found] = replies_in(exchange(port, b"GET /livez HTTP/1.0\r\n\r\n"))
    assert found.json == {"status": "alive"}


def test_the_server_lives_on(port: int) -> None:
    [found] = replies_in(exchange(port, LIVEZ, half_close=True))
    assert found.status == 200


# a second or so; not large, so that it is read and begun when it comes
LONG_ENOUGH = json.dumps(bare_run(under_earth(run_of(8, 4, 0))), separators=(",", ":")).encode()
assert len(LONG_ENOUGH) < LARGE


@contextmanager
def behind_long_work(port: int) -> Iterator[None]:
    """Have a request at work for which those that follow must wait, so that a quick machine takes long as well."""
    with socket.create_connection(("127.0.0.1", port), timeout=50) as ahead:
        ahead.sendall(posted(b"Accept: text/html", body=LONG_ENOUGH, path=b"/v1/duct-run"))
        yield
        assert ahead.recv(15) == b"HTTP/1.1 200 OK"


def test_a_caller_who_closed_its_half_of_a_long_request_still_gets_the_answer(port: int) -> None:
    with behind_long_work(port):
        answered = exchange(port, posted(body=LONG_ENOUGH, path=b"/v1/duct-run"), half_close=True)
    between, _, answer = answered.rpartition(b"HTTP/1.1 100 Continue\r\n\r\n")
    assert between.replace(b"HTTP/1.1 100 Continue\r\n\r\n", b"") == b""
    assert answered.startswith(b"HTTP/1.1 100 Continue\r\n\r\n")
    [reply] = replies_in(answer)
    assert (reply.status, reply.headers["connection"]) == (200, "close")


def test_a_caller_of_http_1_0_is_sent_nothing_before_its_answer(port: int) -> None:
    asked = posted(body=LONG_ENOUGH, path=b"/v1/duct-run").replace(b" HTTP/1.1", b" HTTP/1.0", 1)
    [reply] = replies_in(exchange(port, asked, half_close=True))
    assert reply.status == 200


def test_a_caller_who_went_while_its_answer_was_made_is_noticed(port: int) -> None:
    def left() -> float:
        told = exchange(port, b"GET /metrics HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n").decode()
        counts = (line for line in told.splitlines() if line.startswith("ductrun_requests_total{"))
        return sum(float(line.rpartition(" ")[2]) for line in counts if 'status="499"' in line)

    before = left()
    asked = posted(body=LONG_ENOUGH, path=b"/v1/duct-run")
    with behind_long_work(port):
        with socket.create_connection(("127.0.0.1", port), timeout=50) as connection:
            connection.sendall(asked)
            time.sleep(0.1)
        began = time.monotonic()
        while left() == before and time.monotonic() - began < 50:
            time.sleep(0.05)
        assert left() == before + 1
