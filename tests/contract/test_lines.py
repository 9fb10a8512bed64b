"""What batch and stream take and give, held against the contract: every item, answer, problem and line is of a name."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

import pytest
from ductrun.http.batch import MOST_ITEMS
from ductrun.http.items import NAMED
from ductrun.settings import Settings
from jsonschema import Draft202012Validator

from tests.contract.test_contract import CALCULATIONS, DOCUMENT, SCHEMAS
from tests.http.wire import JSON_TYPE, reply

GOOD = [{"id": f"a {name}", "operation": name, "request": each.example} for name, each in NAMED.items()]
BAD: list[Any] = [7, {"id": "b", "operation": "dig"}, {"id": "c", "operation": "fill", "request": {}}]
QUERY = "?working=true&request=completed"


def faults(name: str, value: Any) -> Iterator[str]:
    """Give what is wrong with a value by a schema of the contract, with every object taken as closed."""
    schema = {"$ref": f"#/components/schemas/{name}", **json.loads(json.dumps(DOCUMENT))}
    for each in schema["components"]["schemas"].values():
        if "properties" in each:
            each["additionalProperties"] = False
    for fault in Draft202012Validator(schema).iter_errors(value):
        yield f"{fault.json_path}: {fault.message[:300]}"


def test_an_item_takes_the_request_of_its_operation_and_no_other() -> None:
    assert list(faults("BatchRequest", {"items": GOOD})) == []
    for bad in BAD:
        assert list(faults("BatchItem", bad))
    assert list(faults("BatchItem", GOOD[0] | {"operation": GOOD[1]["operation"]}))
    assert set(SCHEMAS["OperationName"]["enum"]) == set(NAMED) == set(SCHEMAS["BatchItem"]["discriminator"]["mapping"])


def test_what_a_batch_gives_is_what_the_contract_says() -> None:
    found = reply("POST", f"/v1/batch{QUERY}", json.dumps({"items": GOOD + BAD}).encode(), JSON_TYPE).json
    assert [one["type"] for one in found["items"]] == ["answer"] * len(GOOD) + ["problem"] * len(BAD)
    assert list(faults("BatchAnswer", found)) == []


def test_every_line_a_stream_gives_is_what_the_contract_says() -> None:
    body = b"".join(json.dumps(one).encode() + b"\n" for one in GOOD + BAD) + b"{\n"
    found = reply("POST", f"/v1/batch/stream{QUERY}", body, [("content-type", "application/jsonl")])
    lines = [json.loads(text) for text in found.body.splitlines()]
    assert [line["type"] for line in lines] == [
        "basis",
        *["answer"] * len(GOOD),
        *["problem"] * (len(BAD) + 1),
        "summary",
    ]
    for line in lines:
        assert list(faults("StreamAnswerLine", line)) == []


@pytest.mark.parametrize("suffix", ["ItemAnswer", "StreamAnswer"])
def test_an_answer_is_of_its_operation(suffix: str) -> None:
    for name, operation in NAMED.items():
        stem = operation.result.__name__.removesuffix("Result")
        members = SCHEMAS[f"{stem}{suffix}"]["properties"]
        assert members["operation"]["const"] == name
        assert members["answer"]["$ref"].endswith(f"/{stem}Answer")


def test_a_stream_takes_and_gives_lines_alone() -> None:
    stream = CALCULATIONS["/v1/batch/stream"]
    for content, line in (
        (stream["requestBody"]["content"], "BatchItem"),
        (stream["responses"]["200"]["content"], "StreamAnswerLine"),
    ):
        assert set(content) == {"application/jsonl", "application/x-ndjson"}
        for lines in content.values():
            assert lines["x-item-schema"] == {"$ref": f"#/components/schemas/{line}"}
            assert line in lines["schema"]["description"]
    assert set(SCHEMAS["StreamSummary"]["required"]) == {"type", "item_count", "failed_count"}


def test_the_limits_of_batch_and_stream_stand_in_the_contract() -> None:
    for name in ("BatchRequest", "BatchAnswer"):
        assert SCHEMAS[name]["properties"]["items"]["maxItems"] == MOST_ITEMS
    assert f"{Settings().max_batch_bytes:,} bytes" in CALCULATIONS["/v1/batch"]["requestBody"]["description"]
    assert f"{Settings().max_body_bytes:,} bytes" in CALCULATIONS["/v1/batch/stream"]["requestBody"]["description"]
