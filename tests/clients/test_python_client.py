"""The Python client against a live server, sync and async."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator, Iterator
from dataclasses import dataclass
from typing import Any

import msgspec
import pytest
from ductrun.http.items import NAMED
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import REFERENCE_TABLES
from ductrun.units import UNIT_CODES
from ductrun_client import AsyncClient, Client, ProblemError, in_pint, models
from ductrun_client.operations import CALLS
from tools.client_schemas import Contract
from tools.clients import main

from tests.asking import EXAMPLES, quantity

pytestmark = pytest.mark.live


@pytest.fixture
def client(address: str) -> Iterator[Client]:
    with Client(address) as opened:
        yield opened


def test_what_is_written_of_the_client_is_what_the_contract_says(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.argv", ["clients.py"])
    assert main() == 0


def named(operation: Any) -> str:
    """Give the name of an operation as code has it."""
    return str(operation.name.replace("-", "_").replace("/", "_"))


def test_every_operation_of_the_contract_has_its_method_in_both_clients() -> None:
    names = {asked.name for asked in Contract().operations}
    assert {named(operation) for operation in OPERATIONS} | {"batch"} <= names
    assert names == set(CALLS)
    for name in names:
        assert callable(getattr(Client, name))
        assert asyncio.iscoroutinefunction(getattr(AsyncClient, name))


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_every_example_goes_through_the_client_and_back(operation: Any, address: str, client: Client) -> None:
    name = named(operation)

    async def ask_again() -> Any:
        async with AsyncClient(address) as opened:
            return await getattr(opened, name)(operation.example)

    members = {f"{one}_" if one == "from" else one: value for one, value in operation.example.items()}
    answer = getattr(client, name)(**members)
    assert type(answer).__name__ == operation.result.__name__.removesuffix("Result") + "Answer"
    asked = '"code_edition"' in json.dumps(operation.example)
    assert (answer.basis.code_edition == "NFPA 70-2023") is asked
    assert asyncio.run(ask_again()) == answer


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_a_model_of_a_request_is_written_as_it_was_read(operation: Any) -> None:
    model = getattr(models, operation.request.__name__)
    assert msgspec.to_builtins(msgspec.convert(operation.example, model)) == operation.example


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_a_completed_request_is_sent_back_and_assumes_nothing(operation: Any, client: Client) -> None:
    ask = getattr(client, named(operation))
    completed = ask(operation.example, request="completed")
    again = ask(completed.request, assumptions="refuse")
    assert (again.result, again.assumptions) == (completed.result, [])


def test_a_request_is_written_in_types(client: Client) -> None:
    answer = client.fill(
        conduit=models.ListedConduit(type="pvc_schedule_40", trade_size="2"),
        cables=[models.CableLine(count=5, cable=models.ListedCable(insulation="THHN", size="4/0 AWG"))],
        units="metric",
        working=True,
    )
    assert answer.verdict == "violates"
    assert answer.findings[0].severity == "violation"
    assert answer.result.conduit_area.unit == "mm2"
    assert answer.working
    assert answer.assumptions[0].pointers[0] == "#/code_edition"


def test_the_run_of_a_remedy_is_typed_and_is_sent_as_it_came(client: Client) -> None:
    shallow = msgspec.convert(EXAMPLES["duct-run"], models.DuctRunRequest)
    setting = shallow.stretches[0].setting
    assert isinstance(setting, models.EncasedSetting)
    setting.cover = models.Length(6, "in")
    answer = client.duct_run(shallow, remedies=True)
    assert answer.remedies is not None
    [one] = [one for one in answer.remedies.found if one.change == "cover"]
    deeper = one.run.stretches[0].setting
    assert isinstance(deeper, models.EncasedSetting)
    assert deeper.cover == models.Length(21, "in"), "3 in of concrete make the 24 in"
    again = client.duct_run(one.run)
    assert again.verdict == one.verdict
    assert "too_shallow" not in {found.code for found in again.findings}


@dataclass
class Duct:
    kind: str
    type: str
    trade_size: str
    note: str | None = None


def test_models_mappings_and_dataclasses_may_be_mixed(client: Client) -> None:
    cable = models.ListedCable(insulation="THHN", size="4/0 AWG")
    duct: Any = Duct("listed", "pvc_schedule_40", "2")
    mixed = client.fill(conduit=duct, cables=({"count": 5, "cable": cable},))
    plain = client.fill(
        {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "2"},
            "cables": [{"count": 5, "cable": {"kind": "listed", "insulation": "THHN", "size": "4/0 AWG"}}],
        }
    )
    assert mixed == plain


def test_a_batch_comes_back_typed(client: Client) -> None:
    kinds = models.BATCH_ITEM_BY_OPERATION
    questions: list[Any] = [
        msgspec.convert({"id": f"a {name}", "operation": name, "request": operation.example}, kinds[name])
        for name, operation in NAMED.items()
    ]
    wide = EXAMPLES["encasement"] | {"trench_width": quantity(20, "in")}
    questions.append({"id": "wide", "operation": "encasement", "request": wide})
    found = client.batch(items=questions)
    assert (found.item_count, found.failed_count) == (len(questions), 1)
    *answers, problem = found.items
    assert [item.id for item in answers] == [question.id for question in questions[:-1]]
    assert isinstance(problem, models.ItemProblem)
    assert (problem.id, problem.status, problem.operation) == ("wide", 422, "encasement")
    assert problem.problem.errors
    assert problem.problem.errors[0].pointer == "#/request/trench_width/value"
    for (name, operation), item in zip(NAMED.items(), answers, strict=True):
        assert type(item) is models.ITEM_ANSWER_BY_OPERATION[name]
        assert item.answer == getattr(client, name)(operation.example)


def test_a_problem_is_raised_with_every_fault_of_it(client: Client) -> None:
    with pytest.raises(ProblemError) as told:
        client.spacers(length=models.Length(-1, "ft"), tiers=[99])
    assert (told.value.status, told.value.problem.type) == (422, "/problems/invalid_request")
    assert [fault.pointer for fault in told.value.faults] == ["#/length/value", "#/tiers/0"]
    assert all(f"{fault.pointer}: {fault.message}" in str(told.value) for fault in told.value.faults)
    with pytest.raises(ProblemError, match="Give us or metric"):
        client.spacers(EXAMPLES["spacers"], units="imperial")  # type: ignore[call-overload]


def test_a_unit_that_is_nearly_known_is_suggested_by_the_service_where_the_client_does_not_look(client: Client) -> None:
    with pytest.raises(ProblemError) as told:
        client.conduit_size(type="Sch. 40", cables=EXAMPLES["conduit-size"]["cables"])  # type: ignore[call-overload]
    assert [fault.suggestion for fault in told.value.faults] == ["pvc_schedule_40"]


def test_tables_and_health_are_there_too(client: Client) -> None:
    assert len(client.list_units().rows) == sum(len(codes) for codes in UNIT_CODES.values())
    metric = client.list_conduits(type="emt", trade_size="2", units="metric")
    assert [row.metric_designator for row in metric.rows] == [53]
    assert client.check_ready().status == "ready"
    for table in REFERENCE_TABLES:
        assert getattr(client, table.operation_id)().rows


def test_every_quantity_of_every_answer_becomes_one_of_pint(client: Client) -> None:
    import pint

    registry: pint.UnitRegistry[float] = pint.UnitRegistry()
    for operation in OPERATIONS:
        answer = getattr(client, named(operation))(operation.example, working=True)
        assert set(in_pint(answer, registry)) >= {"result", "findings", "basis"}
    area = client.fill(EXAMPLES["fill"]).result.conduit_area
    assert area.pint(registry).to("foot**2").magnitude == pytest.approx(area.value / 144)


def spacer_runs(count: int) -> Iterator[models.SpacersItem]:
    for feet in range(1, count + 1):
        request = models.SpacersRequest(length=models.Length(feet, "ft"), tiers=[3])
        yield models.SpacersItem(id=str(feet), request=request)


def test_a_stream_of_many_windows_comes_back_typed_and_in_order(client: Client) -> None:
    answered = station_count = 0
    for answer in client.stream(spacer_runs(2_600)):
        answered += 1
        assert isinstance(answer, models.SpacersStreamAnswer)
        assert (answer.line, answer.id, answer.status) == (answered, str(answered), 200)
        station_count = answer.answer.result.station_count
    assert answered == 2_600
    assert station_count == 521  # ceil(2600 / 5) + 1


def test_a_stream_takes_no_more_from_its_caller_than_is_being_asked(client: Client) -> None:
    taken: list[Any] = []

    def questions() -> Iterator[models.SpacersItem]:
        for item in spacer_runs(1_000_000):
            taken.append(item)
            yield item

    answers = client.stream(questions())
    assert next(answers).line == 1
    assert len(taken) <= 501


def test_a_stream_takes_the_query_and_an_event_loop(address: str) -> None:
    async def answers(**options: Any) -> list[Any]:
        async with AsyncClient(address) as opened:
            asked: AsyncIterator[Any] = opened.stream(spacer_runs(3), **options)
            return [answer async for answer in asked]

    metric = asyncio.run(answers(units="metric", working=True))
    assert [answer.answer.result.actual_spacing.unit for answer in metric] == ["m"] * 3
    assert all(answer.answer.working for answer in metric)
    refused = asyncio.run(answers(assumptions="refuse"))
    assert {type(problem) for problem in refused} == {models.StreamProblem}
    assert {problem.problem.type for problem in refused} == {"/problems/assumptions_refused"}


def test_a_stream_that_is_refused_says_so(address: str) -> None:
    with Client(f"{address}/nowhere") as lost, pytest.raises(ProblemError) as told:
        list(lost.stream(spacer_runs(3)))
    assert (told.value.status, told.value.problem.type) == (404, "/problems/not_found")


def test_a_body_that_fails_is_the_callers_own_error(client: Client) -> None:
    def questions() -> Iterator[models.SpacersItem]:
        yield from spacer_runs(3)
        raise LookupError("no fourth run")

    with pytest.raises(LookupError, match="no fourth run"):
        list(client.stream(questions()))
