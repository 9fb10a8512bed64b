"""What the Python client makes of faults: of what is given, of what comes back, of the connection."""

from __future__ import annotations

import asyncio
import socket
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

import httpx
import numpy as np
import pint
import pytest
from ductrun_client import (
    AsyncClient,
    Client,
    ProblemError,
    QuantityError,
    Retries,
    UnexpectedAnswerError,
    UnknownAnswer,
    models,
)
from ductrun_client.giving import to_send
from ductrun_client.operations import CALLS

from tests.asking import EXAMPLES, ask
from tests.clients.answering import REFUSED, SUMMARY, client_of, stream_of

UREG: pint.UnitRegistry[float] = pint.UnitRegistry()
FEET = models.Length(300, "ft")


def sent(kind: Any, **members: Any) -> Any:
    return to_send(members, kind)


@pytest.mark.parametrize(
    ("given", "told"),
    [
        (300 * UREG.ft, {"value": 300.0, "unit": "ft"}),
        (12 * UREG.inch, {"value": 12.0, "unit": "in"}),
        (0.1 * UREG.km, {"value": 100.0, "unit": "m"}),
        (FEET, {"value": 300, "unit": "ft"}),
        ({"value": np.float64(2.5), "unit": "m"}, {"value": 2.5, "unit": "m"}),
        ({"value": np.int64(2), "unit": "m"}, {"value": 2, "unit": "m"}),
    ],
)
def test_a_length_is_taken_in_many_forms(given: Any, told: dict[str, Any]) -> None:
    assert sent(models.SpacersRequest, length=given, tiers=[3])["length"] == pytest.approx(told)


def test_a_quantity_of_pint_is_taken_wherever_one_stands() -> None:
    asked = sent(
        models.PullTensionRequest,
        sections=[{"kind": "horizontal_bend", "radius": 4 * UREG.ft, "angle": 90 * UREG.degree}],
        incoming_tension=100 * UREG.force_pound,
    )
    assert asked["sections"][0]["radius"] == {"value": 4.0, "unit": "ft"}
    assert asked["sections"][0]["angle"] == {"value": 90.0, "unit": "deg"}
    assert asked["incoming_tension"] == {"value": 100.0, "unit": "lbf"}
    swing = sent(models.TemperatureSpread, difference=UREG.Quantity(100, "delta_degF"))
    assert swing["difference"] == {"value": 100.0, "unit": "delta_degF"}
    size = sent(models.CableConductor, area=UREG.Quantity(750, "kcmil"))["area"]
    assert size == {"value": 750.0, "unit": "kcmil"}


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        (models.Length(1, "furlong"), "'furlong' is no unit of what is asked here; give a length in mm, cm, m, in"),  # type: ignore[arg-type]
        ({"value": 1, "unit": "lbf"}, "/length: 'lbf' is no unit"),
        (3 * UREG.lb, "/length: 3 pound is of another dimension"),
        (float("nan") * UREG.ft, "nan is no number"),
        ({"value": float("inf"), "unit": "ft"}, "/length/value: inf is no number"),
        (["300", "ft"], "give a length in"),
    ],
)
def test_a_quantity_that_is_none_is_refused_before_anything_is_sent(given: Any, sentence: str) -> None:
    with Client("http://127.0.0.1:1") as nowhere, pytest.raises(QuantityError, match=sentence):
        nowhere.spacers(length=given, tiers=[3])


@pytest.mark.parametrize(
    ("kind", "member", "given"),
    [
        (models.StraightSection, "grade", 0.05 * UREG.radian),
        (models.StraightSection, "grade", UREG.Quantity(0.05, "dimensionless")),
        (models.TemperatureSpread, "difference", UREG.Quantity(40, "degC")),
        (models.TemperatureRange, "lowest", UREG.Quantity(40, "delta_degC")),
        (models.SpacersRequest, "waste_percent", 5 * UREG.percent),
    ],
)
def test_what_pint_would_convert_into_something_else_is_refused(kind: Any, member: str, given: Any) -> None:
    with pytest.raises(QuantityError, match=f"/{member}"):
        to_send({member: given}, kind)


def test_what_cannot_be_sent_at_all_is_a_type_error_that_says_where() -> None:
    with pytest.raises(TypeError, match="/tiers/0: object cannot be sent"):
        sent(models.SpacersRequest, tiers=[object()])
    with (
        Client("http://127.0.0.1:1") as nowhere,
        pytest.raises(TypeError, match=r"one whole request, and beside it units, .*; not length"),
    ):
        nowhere.spacers(EXAMPLES["spacers"], length=FEET)  # type: ignore[call-overload]


def answer_with(**changes: Any) -> Callable[[httpx.Request], httpx.Response]:
    answer = ask("fill", EXAMPLES["fill"]) | changes
    return lambda _: httpx.Response(200, json=answer)


def test_a_newer_service_does_not_disturb_an_older_client() -> None:
    client = client_of(answer_with(verdict="complies_with_care", brand_new={"value": 1}, assumptions=[]))
    answer = client.fill(EXAMPLES["fill"])
    assert answer.verdict == "complies_with_care"  # type: ignore[comparison-overlap]
    assert answer.result.conductor_count == sum(line["count"] for line in EXAMPLES["fill"]["cables"])


def test_an_item_of_an_operation_that_is_not_known_keeps_its_values() -> None:
    item = {"type": "answer", "id": "a", "operation": "brand_new", "status": 200, "answer": {"result": {"x": 1}}}
    batch = client_of(lambda _: httpx.Response(200, json={"item_count": 1, "failed_count": 0, "items": [item]}))
    [found] = batch.batch(items=[{"id": "a", "operation": "brand_new", "request": {}}]).items
    assert isinstance(found, UnknownAnswer)
    assert found.answer == {"result": {"x": 1}}
    lines = [{"type": "basis"}, item | {"line": 1}, {"type": "news"}, SUMMARY]
    [one] = client_of(stream_of(lines)).stream([{"id": "a", "operation": "brand_new", "request": {}}])
    assert isinstance(one, UnknownAnswer)


@pytest.mark.parametrize(
    ("status", "media_type", "content"),
    [
        (502, "text/html; charset=utf-8", b"<html><h1>502 Bad Gateway</h1>"),
        (200, "text/html", b"<html>Sign in"),
        (200, "application/json", b'{"result": '),
        (200, "application/json", b'{"result": {}}'),
        (502, "application/problem+json", b"no JSON"),
        (401, "application/problem+json", b'{"title": "Unauthorized", "status": 401}'),
        (404, "application/json", b'{"detail":"Not Found"}'),
        (302, "", b""),
    ],
)
def test_what_is_no_answer_of_the_service_is_an_error_of_its_own(status: int, media_type: str, content: bytes) -> None:
    headers = {"Content-Type": media_type} if media_type else {}
    client = client_of(lambda _: httpx.Response(status, headers=headers, content=content))
    for call in (lambda: client.fill(EXAMPLES["fill"]), lambda: list(client.stream([{"id": "a"}]))):
        with pytest.raises(UnexpectedAnswerError, match=f"status {status}") as told:
            call()
        assert (told.value.status, told.value.content) == (status, content)
        assert told.value.content_type == media_type.partition(";")[0]
        assert told.value.headers.get("Content-Type", "") == media_type


def failing(*outcomes: Any) -> tuple[Callable[[httpx.Request], httpx.Response], list[int]]:
    """Answer with each outcome in turn, raising what is an exception; the calls are counted."""
    left, calls = list(outcomes), [0]

    def answer(_: httpx.Request) -> httpx.Response:
        calls[0] += 1
        outcome = left.pop(0)
        if isinstance(outcome, Exception):
            raise outcome
        assert isinstance(outcome, httpx.Response)
        return httpx.Response(outcome.status_code, headers=outcome.headers, content=outcome.content)

    return answer, calls


def busy(status: int, **headers: str) -> httpx.Response:
    headers["Content-Type"] = "application/problem+json"
    return httpx.Response(status, headers=headers, json=REFUSED | {"status": status})


FINE = httpx.Response(200, json={"status": "ready", "tables": "t"})
QUICK = Retries(2, first_wait=0.001)


@pytest.mark.parametrize(
    "fault", [busy(503), busy(429), httpx.ConnectError("no"), httpx.ReadError("cut"), httpx.ReadTimeout("stalled")]
)
def test_what_may_pass_is_asked_again_only_if_that_was_asked_for(fault: Any) -> None:
    answer, calls = failing(fault, fault, FINE)
    assert client_of(answer, retries=QUICK).check_ready().status == "ready"
    assert calls == [3]
    answer, calls = failing(fault)
    with pytest.raises((ProblemError, httpx.TransportError)):
        client_of(answer).check_ready()
    assert calls == [1]


def test_a_stream_and_an_event_loop_ask_again_too() -> None:
    line = {"type": "problem", "line": 1, "status": 422, "problem": REFUSED}
    whole = stream_of([line, SUMMARY])(httpx.Request("GET", "http://x"))
    answer, calls = failing(busy(503), whole)
    [one] = client_of(answer, retries=QUICK).stream([{"id": "a", "operation": "cover", "request": {}}])
    assert (one.status, calls) == (422, [2])

    async def ready(answer: Any) -> models.Ready:
        connection = httpx.AsyncClient(base_url="http://service", transport=httpx.MockTransport(answer))
        async with connection, AsyncClient(http=connection, retries=QUICK) as client:
            return await client.check_ready()

    answer, calls = failing(httpx.ConnectError("no"), busy(429), FINE)
    assert asyncio.run(ready(answer)).status == "ready"
    assert calls == [3]


@pytest.mark.parametrize("fault", [busy(500), httpx.UnsupportedProtocol("odd"), busy(503, **{"Retry-After": "3600"})])
def test_what_will_not_pass_soon_is_not_asked_again(fault: Any) -> None:
    answer, calls = failing(fault, FINE)
    with pytest.raises((ProblemError, httpx.UnsupportedProtocol)):
        client_of(answer, retries=QUICK).check_ready()
    assert calls == [1]


def test_each_wait_doubles_and_keeps_to_what_the_service_asks() -> None:
    retries = Retries(9, first_wait=1, longest_wait=5)
    for tried, most in ((1, 1), (2, 2), (3, 4), (4, 5), (9, 5)):
        wait = retries.wait_after(tried, busy(503))
        assert wait is not None
        assert most / 2 <= wait <= most
    assert retries.wait_after(10, busy(503)) is None
    assert retries.wait_after(1, busy(429, **{"Retry-After": "4"})) == 4
    assert retries.wait_after(1, busy(429, **{"Retry-After": "Thu, 01 Jan 1970 00:00:00 GMT"})) is not None
    assert retries.wait_after(1, busy(429, **{"Retry-After": "soon"})) is not None


@pytest.fixture
def silent() -> Iterator[str]:
    """A server that takes connections and never says a word."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        yield f"http://127.0.0.1:{server.getsockname()[1]}"


def test_a_server_that_stalls_ends_a_call_and_a_stream_alike(silent: str) -> None:
    async def in_a_loop() -> None:
        async with AsyncClient(silent, timeout=0.1) as client:
            with pytest.raises(httpx.ReadTimeout):
                _ = [one async for one in client.stream([{"id": "a"}])]

    with Client(silent, timeout=0.1) as client:
        with pytest.raises(httpx.ReadTimeout):
            client.check_ready()
        with pytest.raises(httpx.ReadTimeout):
            list(client.stream([{"id": "a"}]))
    asyncio.run(in_a_loop())


def test_headers_and_transport_of_a_given_connection_hold_for_calls_and_stream() -> None:
    seen = []

    def answer(request: httpx.Request) -> httpx.Response:
        seen.append((request.url.path, request.headers["Authorization"]))
        return busy(503)

    connection = httpx.Client(
        base_url="http://service/prefix", headers={"Authorization": "a"}, transport=httpx.MockTransport(answer)
    )
    with connection, Client(http=connection) as client:
        for call in (client.check_ready, lambda: list(client.stream([{"id": "a"}]))):
            with pytest.raises(ProblemError):
                call()
        client.close()
        assert not connection.is_closed
    assert seen == [("/prefix/readyz", "a"), ("/prefix/v1/batch/stream", "a")]


def test_an_operation_that_is_to_end_is_warned_of() -> None:
    headers = {"Deprecation": "@1767225600", "Sunset": "Thu, 31 Dec 2026 23:59:59 GMT"}
    client = client_of(lambda _: httpx.Response(200, headers=headers, json={"status": "ready", "tables": "t"}))
    with pytest.warns(DeprecationWarning, match="/readyz is deprecated and ends on Thu, 31 Dec 2026") as told:
        client.check_ready()
    assert told[0].filename == __file__  # what asked, not the client


def test_another_form_of_an_answer_is_given_as_it_came() -> None:
    def answer(request: httpx.Request) -> httpx.Response:
        assert request.headers["Accept"] == "image/svg+xml"
        return httpx.Response(200, headers={"Content-Type": "image/svg+xml"}, content=b"<svg/>")

    assert client_of(answer).document("fill", "image/svg+xml", EXAMPLES["fill"]) == b"<svg/>"
    with pytest.raises(UnexpectedAnswerError, match="no image/svg"):
        client_of(answer_with()).document("fill", "image/svg+xml", EXAMPLES["fill"])


def test_the_headers_of_a_problem_can_be_read() -> None:
    with pytest.raises(ProblemError) as told:
        client_of(lambda _: busy(503, **{"Retry-After": "7"})).check_ready()
    assert told.value.headers["retry-after"] == "7"


def test_a_model_is_shown_without_what_was_left_out() -> None:
    assert repr(models.SpacersRequest(length=FEET, tiers=[3])) == (
        "SpacersRequest(length=Length(value=300, unit='ft'), tiers=[3])"
    )


@dataclass
class Odd:
    value: float
    unit: str


def test_a_dataclass_is_a_quantity_where_its_members_are() -> None:
    assert sent(models.SpacersRequest, length=Odd(3, "ft"))["length"] == {"value": 3, "unit": "ft"}


def test_every_call_knows_its_models() -> None:
    assert all(call.answer is not None for call in CALLS.values())
    with pytest.raises(TypeError, match="address"):
        Client()
    with httpx.Client() as connection, pytest.raises(TypeError, match="address"):
        Client("http://service", http=connection)
