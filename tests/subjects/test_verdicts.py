"""The verdict on the example of every operation: absent where nothing is held against a limit."""

from __future__ import annotations

import pytest
from ductrun.subjects import OPERATIONS

from tests.asking import EXAMPLES, ask, codes

VERDICTS = {
    "fill": "complies",
    "conduit-size": "complies",
    "conductor-count": "complies",
    "expansion": "complies",
    "supports": "complies",
    "spacers": None,
    "encasement": None,
    "flotation": None,
    "trench": None,
    "cover": "complies",
    "permitted-use": "not_judged",
    "joints": None,
    "earth-load": "complies",
    "pull-box": "complies",
    "pull-tension": "violates",
    "pull-plan": "complies",
    "duct-run/compare": "not_judged",
    "duct-run": "not_judged",
    "ampacity": "complies",
    "voltage-drop": "complies",
}


@pytest.mark.parametrize("name", [operation.name for operation in OPERATIONS])
def test_the_verdict_on_an_example_is_that_of_the_list(name: str) -> None:
    answer = ask(name, EXAMPLES[name])
    assert answer.get("verdict") == VERDICTS[name]
    assert ("violation" in [found["severity"] for found in answer["findings"]]) == (VERDICTS[name] == "violates")


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({}, None),
        ({"pigment_percent": 5, "cement_content": {"value": 564, "unit": "lb/yd3"}}, "complies"),
        ({"pigment_percent": 11}, "violates"),
        ({"maximum_aggregate_size": {"value": 2, "unit": "in"}}, None),
    ],
)
def test_concrete_has_a_verdict_where_color_is_dosed(changes: dict[str, object], verdict: str | None) -> None:
    assert ask("encasement", EXAMPLES["encasement"] | changes).get("verdict") == verdict


def test_what_is_only_unwise_gives_no_verdict() -> None:
    for name, changes, code in (
        ("expansion", {"material": "steel", "service_temperature": None}, "expansion_fitting_required"),
        ("flotation", {}, "bank_floats"),
        ("trench", {"cover": {"value": 60, "unit": "in"}}, "needs_protection"),
        ("spacers", {"tiers": [2, 3]}, "tier_overhangs"),
    ):
        request = EXAMPLES[name] | changes
        answer = ask(name, {member: value for member, value in request.items() if value is not None})
        assert code in codes(answer, "caution")
        assert "verdict" not in answer
