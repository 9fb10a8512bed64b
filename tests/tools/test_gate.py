"""The gate of the contract: what breaks a caller is caught, what is added passes."""

from __future__ import annotations

import copy
import json
from collections.abc import Callable
from typing import Any

import pytest
from tools.comparison import breaks
from tools.contract import CONTRACT
from tools.gate import main

TODAY: dict[str, Any] = json.loads(CONTRACT.read_text(encoding="utf-8"))
Change = Callable[[dict[str, Any]], Any]


def schema(document: dict[str, Any], name: str) -> dict[str, Any]:
    found: dict[str, Any] = document["components"]["schemas"][name]
    return found


def parameter(document: dict[str, Any], name: str) -> dict[str, Any]:
    found: list[dict[str, Any]] = document["paths"]["/v1/fill"]["post"]["parameters"]
    return next(one for one in found if one["name"] == name)


def changed(change: Change) -> dict[str, Any]:
    document = copy.deepcopy(TODAY)
    change(document)
    return document


BREAKS: dict[str, tuple[Change, str]] = {
    "an operation goes": (lambda new: new["paths"].pop("/v1/fill"), "POST /v1/fill: is gone"),
    "a parameter goes": (
        lambda new: new["paths"]["/v1/fill"]["post"]["parameters"].pop(0),
        "POST /v1/fill: the parameter units is gone",
    ),
    "a status goes": (
        lambda new: new["paths"]["/v1/fill"]["post"]["responses"].pop("422"),
        "POST /v1/fill: the status 422 is gone",
    ),
    "a member of a request goes": (
        lambda new: schema(new, "TrenchRequest")["properties"].pop("bedding"),
        "TrenchRequest.bedding: is gone",
    ),
    "a member of a request must be given": (
        lambda new: schema(new, "TrenchRequest")["required"].append("bedding"),
        "TrenchRequest.bedding: must be given now",
    ),
    "a value is refused": (lambda new: schema(new, "TradeSize")["enum"].remove("4"), "TradeSize: 4 is refused now"),
    "a bound is narrower": (
        lambda new: schema(new, "TrenchRequest")["properties"]["side_slope_ratio"].update(maximum=5),
        "TrenchRequest.side_slope_ratio: maximum was 10 and is 5",
    ),
    "a bound of a quantity is narrower": (
        lambda new: schema(new, "TrenchRequest")["properties"]["cover"]["x-maximum"].update(value=100),
        "TrenchRequest.cover: x-maximum was",
    ),
    "a type changes": (
        lambda new: schema(new, "FillResult")["properties"]["fill_percent"].update(type="string"),
        "FillResult.fill_percent: was number and is string",
    ),
    "a kind of a union goes": (
        lambda new: schema(new, "TrenchRequest") and schema(new, "Conduit")["discriminator"]["mapping"].pop("measured"),
        "Conduit: the kind measured is gone",
    ),
    "a member of an answer goes": (
        lambda new: schema(new, "FillResult")["properties"].pop("fill_percent"),
        "FillResult.fill_percent: is gone",
    ),
    "a member of an answer may be absent": (
        lambda new: schema(new, "FillResult")["required"].remove("fill_percent"),
        "FillResult.fill_percent: may be absent now",
    ),
    "what became of an item may be of a kind more": (
        lambda new: schema(new, "BatchItemAnswer")["discriminator"]["mapping"].update(
            pause="#/components/schemas/ItemProblem"
        ),
        "BatchItemAnswer: may be of the kind pause now",
    ),
    "a member of a line of a stream goes": (
        lambda new: schema(new, "StreamSummary")["properties"].pop("failed_count"),
        "StreamSummary.failed_count: is gone",
    ),
    "an operation of a batch goes": (
        lambda new: schema(new, "BatchItem")["discriminator"]["mapping"].pop("fill"),
        "BatchItem: the kind fill is gone",
    ),
    "a default of a parameter changes": (
        lambda new: parameter(new, "units")["schema"].update(default="metric"),
        "POST /v1/fill, parameter units: its default was us",
    ),
    "a parameter moves": (
        lambda new: parameter(new, "units").update({"in": "header"}),
        "POST /v1/fill: the parameter units was in the query",
    ),
    "a count of an answer may be larger": (
        lambda new: schema(new, "FillResult")["properties"]["conductor_count"].update(maximum=2**40),
        "FillResult.conductor_count: maximum was 2147483647 and is 1099511627776",
    ),
    "a union is told apart by another member": (
        lambda new: schema(new, "Conduit")["discriminator"].update(propertyName="sort"),
        "Conduit: its kinds were told apart by kind",
    ),
    "a set may not grow any more": (
        lambda new: schema(new, "Verdict").pop("x-extensible-enum"),
        "Verdict: may not grow any more",
    ),
    "a header goes": (
        lambda new: new["paths"]["/v1/tables/units"]["get"]["responses"]["200"]["headers"].pop("ETag"),
        "GET /v1/tables/units: the header ETag is gone",
    ),
    "a key is asked for": (
        lambda new: new["paths"]["/v1/fill"]["post"].update(security=[{"key": []}]),
        "POST /v1/fill: asks for a key now",
    ),
    "an answer may have a value more": (
        lambda new: schema(new, "FillItemAnswer")["properties"]["type"].update(const="reply"),
        "FillItemAnswer.type: may be reply now",
    ),
}


def one_operation_more(new: dict[str, Any]) -> None:
    for name, variant in (
        ("BatchItem", "FillItem"),
        ("ItemAnswer", "FillItemAnswer"),
        ("StreamAnswer", "FillStreamAnswer"),
    ):
        schema(new, name)["discriminator"]["mapping"].update(more=f"#/components/schemas/{variant}")
    schema(new, "OperationName")["enum"].append("more")


ADDITIONS: dict[str, Change] = {
    "a unit more": lambda new: schema(new, "AreaUnit")["enum"].append("acre"),
    "a line of a stream of a kind more": lambda new: schema(new, "StreamAnswerLine")["discriminator"]["mapping"].update(
        pause="#/components/schemas/StreamSummary"
    ),
    "a key may be sent": lambda new: new["paths"]["/v1/fill"]["post"].update(security=[{}, {"key": []}]),
    "an operation of a batch": one_operation_more,
    "an operation": lambda new: new["paths"].update({"/v1/more": new["paths"]["/v1/fill"]}),
    "a member that may be left out": lambda new: schema(new, "TrenchRequest")["properties"].update(
        more={"type": "number"}
    ),
    "a member of an answer": lambda new: schema(new, "FillResult")["properties"].update(more={"type": "number"}),
    "a value that is taken": lambda new: schema(new, "TopClosure")["enum"].append("lid"),
    "a wider bound": lambda new: schema(new, "TrenchRequest")["properties"]["side_slope_ratio"].update(maximum=20),
    "a value of a set that may grow": lambda new: schema(new, "Severity").update(
        {"enum": ["violation", "caution", "note", "worry"], "x-extensible-enum": True}
    ),
}


@pytest.mark.parametrize("name", BREAKS)
def test_what_breaks_a_caller_is_caught(name: str) -> None:
    change, expected = BREAKS[name]
    found = [str(one) for one in breaks(TODAY, changed(change))]
    assert any(one.startswith(expected) for one in found), found


@pytest.mark.parametrize("name", ADDITIONS)
def test_what_is_added_breaks_nobody(name: str) -> None:
    assert breaks(TODAY, changed(ADDITIONS[name])) == []


def test_the_gate_names_every_break_and_fails(tmp_path: Any, capsys: pytest.CaptureFixture[str]) -> None:
    older = copy.deepcopy(TODAY)
    older["components"]["schemas"]["FillResult"]["properties"]["lost"] = {"type": "number"}
    (tmp_path / "1.0.0.json").write_text(json.dumps(older), encoding="utf-8")
    assert main([str(tmp_path / "1.0.0.json")]) == 1
    assert "1.0.0.json: FillResult.lost: is gone" in capsys.readouterr().err
    assert main([]) == 0
