"""Questions at the edges of what may be asked have an answer the contract describes, or a problem."""

from __future__ import annotations

import json
import os
from functools import cache
from random import Random

import pytest
from ductrun.http.descriptions import stem
from ductrun.http.problems import ProblemRaised
from ductrun.subjects import OPERATIONS
from hypothesis import given, settings
from jsonschema import Draft202012Validator

from tests.asking import ask
from tests.contract.test_contract import DOCUMENT
from tests.properties.requests import RANDOMS, at_the_edges, written

STEMS = {operation.name: stem(operation) for operation in OPERATIONS}
MANY = settings(max_examples=int(os.environ.get("DUCTRUN_FUZZ_EXAMPLES", "8")), deadline=None)


@cache
def closed(name: str) -> Draft202012Validator:
    """Give the schema of an answer with every object taken as closed."""
    document = json.loads(json.dumps(DOCUMENT))
    for each in document["components"]["schemas"].values():
        if "properties" in each:
            each["additionalProperties"] = False
    return Draft202012Validator({"$ref": f"#/components/schemas/{name}Answer", **document})


@pytest.mark.parametrize("operation", STEMS)
@MANY
@given(random=RANDOMS)
def test_an_answer_at_the_edges_is_what_the_contract_says(operation: str, random: Random) -> None:
    body = at_the_edges(operation, random)
    try:
        answer = ask(operation, body, "working=true")
    except ProblemRaised:
        return
    faults = [f"{one.json_path}: {one.message[:200]}" for one in closed(STEMS[operation]).iter_errors(answer)]
    assert faults == [], written(body)
