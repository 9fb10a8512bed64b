"""The generated Python client against a live server, sync and async."""

from __future__ import annotations

import asyncio
import importlib
import json
import sys
from collections.abc import Iterator
from types import SimpleNamespace
from typing import Any

import pytest
from ductrun.http.items import NAMED
from ductrun.subjects import OPERATIONS
from ductrun.units import UNIT_CODES
from tools.clients import CLIENT, main
from tools.live import serving

from tests.asking import EXAMPLES, quantity

pytestmark = pytest.mark.live


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    with serving() as started:
        yield started


@pytest.fixture(scope="module")
def library() -> Iterator[SimpleNamespace]:
    sys.path.insert(0, str(CLIENT))
    try:
        yield SimpleNamespace(
            root=importlib.import_module("ductrun_client"),
            models=importlib.import_module("ductrun_client.models"),
            calls={
                operation.name: importlib.import_module(f"ductrun_client.api.calculations.{operation.operation_id}")
                for operation in OPERATIONS
            },
            batch=importlib.import_module("ductrun_client.api.calculations.calculate_batch"),
            units=importlib.import_module("ductrun_client.api.tables.list_units"),
            ready=importlib.import_module("ductrun_client.api.health.check_ready"),
            unions=importlib.import_module("ductrun_client.unions"),
            stream=importlib.import_module("ductrun_client.stream"),
            errors=importlib.import_module("ductrun_client.errors"),
        )
    finally:
        sys.path.remove(str(CLIENT))


@pytest.fixture
def client(address: str, library: SimpleNamespace) -> Iterator[Any]:
    with library.root.Client(base_url=address, raise_on_unexpected_status=True) as opened:
        yield opened


def test_the_client_is_what_the_generator_makes_of_the_contract(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "argv", ["drift.py"])
    assert main() == 0


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_every_example_goes_through_the_client_and_back(
    operation: Any, address: str, client: Any, library: SimpleNamespace
) -> None:
    async def ask_again() -> Any:
        async with library.root.Client(base_url=address, raise_on_unexpected_status=True) as opened:
            return await library.calls[operation.name].asyncio(client=opened, body=request)

    request = getattr(library.models, operation.request.__name__).from_dict(operation.example)
    assert request.to_dict() == operation.example
    answer = library.calls[operation.name].sync(client=client, body=request)
    assert type(answer).__name__ == operation.result.__name__.removesuffix("Result") + "Answer"
    asked = '"code_edition"' in json.dumps(operation.example)
    assert (answer.basis.code_edition == "NFPA 70-2023") is asked
    assert asyncio.run(ask_again()) == answer


def test_a_request_is_written_in_types(client: Any, library: SimpleNamespace) -> None:
    models = library.models
    request = models.FillRequest(
        conduit=models.ListedConduit(
            kind="listed", type_=models.ConduitType.PVC_SCHEDULE_40, trade_size=models.TradeSize.SIZE_2
        ),
        cables=[
            models.CableLine(
                count=5,
                cable=models.ListedCable(
                    kind="listed", insulation=models.Insulation.THHN, size=models.ConductorSize.AWG_4_0
                ),
            )
        ],
    )
    answer = library.calls["fill"].sync(client=client, body=request, units=models.UnitSystem.METRIC, working=True)
    assert answer.verdict is models.Verdict.VIOLATES
    assert answer.findings[0].severity is models.Severity.VIOLATION
    assert answer.result.conduit_area.unit is models.AreaUnit.MM2
    assert answer.working
    assert answer.assumptions[0].pointers[0] == "#/code_edition"


def test_a_batch_comes_back_typed(client: Any, library: SimpleNamespace) -> None:
    models = library.models
    kinds = library.unions.BATCH_ITEM_BY_OPERATION
    questions = [
        kinds[name].from_dict({"id": f"a {name}", "operation": name, "request": operation.example})
        for name, operation in NAMED.items()
    ]
    wide = library.models.EncasementRequest.from_dict(EXAMPLES["encasement"] | {"trench_width": quantity(20, "in")})
    questions.append(models.EncasementItem(id="wide", operation="encasement", request=wide))
    found = library.batch.sync(client=client, body=models.BatchRequest(items=questions))
    assert (found.item_count, found.failed_count) == (len(questions), 1)
    assert [item.id for item in found.items] == [question.id for question in questions]
    *answers, problem = found.items
    assert type(problem) is models.ItemProblem
    assert (problem.status, problem.operation) == (422, models.OperationName.ENCASEMENT)
    assert problem.problem.errors[0].pointer == f"#/items/{len(OPERATIONS)}/request/trench_width/value"
    for (name, operation), item in zip(NAMED.items(), answers, strict=True):
        assert type(item) is library.unions.ITEM_ANSWER_BY_OPERATION[name]
        request = getattr(models, operation.request.__name__).from_dict(operation.example)
        assert item.answer == library.calls[operation.name].sync(client=client, body=request)


def test_a_problem_comes_back_typed(client: Any, library: SimpleNamespace) -> None:
    models = library.models
    request = models.SpacersRequest(length=models.Length(value=-1.0, unit=models.LengthUnit.FT), tiers=[3])
    problem = library.calls["spacers"].sync(client=client, body=request)
    assert isinstance(problem, models.Problem)
    assert problem.status == 422
    assert problem.errors[0].pointer == "#/length/value"


def test_tables_and_health_are_there_too(client: Any, library: SimpleNamespace) -> None:
    found = library.units.sync_detailed(client=client)
    assert found.status_code == 200
    assert len(found.parsed.rows) == sum(len(codes) for codes in UNIT_CODES.values())
    unchanged = library.units.sync_detailed(client=client, if_none_match=found.headers["ETag"])
    assert unchanged.status_code == 304
    assert library.ready.sync(client=client).status == "ready"


def spacer_runs(library: SimpleNamespace, count: int) -> Iterator[Any]:
    for feet in range(1, count + 1):
        request = {"length": {"value": feet, "unit": "ft"}, "tiers": [3]}
        yield library.models.SpacersItem.from_dict({"id": str(feet), "operation": "spacers", "request": request})


def test_a_stream_many_times_larger_than_any_buffer_comes_back_typed_and_in_order(
    client: Any, library: SimpleNamespace
) -> None:
    answered = 0
    for answer in library.stream.sync(client=client, body=spacer_runs(library, 20_000)):
        answered += 1
        assert (answer.line, answer.id, answer.status) == (answered, str(answered), 200)
    assert answered == 20_000
    assert type(answer) is library.models.SpacersStreamAnswer
    assert answer.answer.result.station_count == 4001


def test_a_stream_is_sent_no_further_than_its_answers_are_read(client: Any, library: SimpleNamespace) -> None:
    taken: list[Any] = []

    def questions() -> Iterator[Any]:
        for item in spacer_runs(library, 1_000_000):
            taken.append(item)
            yield item

    answers = library.stream.sync(client=client, body=questions())
    assert next(answers).line == 1
    answers.close()
    assert len(taken) < 200_000  # what the buffers of both sockets hold


def test_a_stream_shows_its_progress_when_asked(client: Any, library: SimpleNamespace, capsys: Any) -> None:
    items = list(spacer_runs(library, 50))
    assert len(list(library.stream.sync(client=client, body=items, progress=True))) == 50
    assert "50/50" in capsys.readouterr().err
    assert len(list(library.stream.sync(client=client, body=items))) == 50
    assert capsys.readouterr().err == ""


def test_a_stream_takes_the_query_and_an_event_loop(client: Any, library: SimpleNamespace) -> None:
    models = library.models

    async def answers(**options: Any) -> list[Any]:
        asked = library.stream.asyncio(client=client, body=spacer_runs(library, 3), **options)
        return [answer async for answer in asked]

    metric = asyncio.run(answers(units=models.UnitSystem.METRIC, working=True))
    assert [answer.answer.result.actual_spacing.unit for answer in metric] == [models.LengthUnit.M] * 3
    assert all(answer.answer.working for answer in metric)
    refused = asyncio.run(answers(assumptions=models.AssumptionPolicy.REFUSE))
    assert {type(problem) for problem in refused} == {models.StreamProblem}
    assert {problem.problem.type_ for problem in refused} == {"/problems/assumptions_refused"}


def test_a_stream_that_is_refused_says_so(address: str, library: SimpleNamespace) -> None:
    with (
        library.root.Client(base_url=f"{address}/nowhere") as lost,
        pytest.raises(library.errors.UnexpectedStatus) as told,
    ):
        list(library.stream.sync(client=lost, body=spacer_runs(library, 3)))
    assert told.value.status_code == 404
    assert b"/problems/not_found" in told.value.content


def test_a_body_that_fails_is_the_callers_own_error(client: Any, library: SimpleNamespace) -> None:
    def questions() -> Iterator[Any]:
        yield from spacer_runs(library, 3)
        raise LookupError("no fourth run")

    with pytest.raises(LookupError, match="no fourth run"):
        list(library.stream.sync(client=client, body=questions()))


@pytest.mark.parametrize("end", [b"", b"0\r\n\r\n"])
def test_an_answer_without_its_summary_was_cut_off(end: bytes, library: SimpleNamespace) -> None:
    basis = b'{"type":"basis","service_version":"1","tables_version":"t"}\n'
    problem = b'{"type":"/problems/unanswerable","title":"t","status":422,"detail":"d","request_id":"i"}'
    line = basis + b'{"type":"problem","line":1,"id":"1","status":422,"problem":' + problem + b"}\n"
    head = b"HTTP/1.1 200 OK\r\nContent-Type: application/jsonl\r\nTransfer-Encoding: chunked\r\n\r\n"

    async def answer(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        await reader.readuntil(b"\r\n\r\n")
        writer.write(head + b"%x\r\n%b\r\n" % (len(line), line) + end)
        await writer.drain()
        writer.close()

    async def ask() -> list[Any]:
        found = []
        async with await asyncio.start_server(answer, "127.0.0.1", 0) as server:
            port = server.sockets[0].getsockname()[1]
            client = library.root.Client(base_url=f"http://127.0.0.1:{port}")
            answers = library.stream.asyncio(client=client, body=spacer_runs(library, 3))
            found.append((await anext(answers)).id)
            with pytest.raises(library.stream.CutOff, match="after 1 answers") as told:
                await anext(answers)
            assert told.value.answered == 1
        return found

    assert asyncio.run(ask()) == ["1"]
