"""The calculation sheet: what it says, that every text stays text, that it loads nothing."""

from __future__ import annotations

import hashlib
import json
from typing import Any

import pytest
from ductrun.drawings.calculation_sheet import calculation_sheet
from ductrun.drawings.readable import figure_text, place_of, quantity_text, shown, titled
from ductrun.kit.answering import Chosen, made_by, told_of
from ductrun.kit.answers import NOTICE, AnyQuantity
from ductrun.kit.choices import Verdict
from ductrun.subjects import OPERATIONS, Operation

from tests.asking import EXAMPLES
from tests.drawings.pages import Read, assert_harmless
from tests.drawings.takeoffs import HOSTILE

NAMED = {operation.name: operation for operation in OPERATIONS}


def sheet_of(name: str, request: dict[str, Any], drawings: tuple[str, ...] = ()) -> Read:
    body = json.dumps(request).encode()
    answer, _ = made_by(NAMED[name], told_of(NAMED[name]))(body, Chosen(working=True))
    written = calculation_sheet(NAMED[name].summary, answer, body, drawings)
    return assert_harmless(written.written, written.policy)


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_every_operation_has_a_sheet_with_all_that_its_answer_says(operation: Operation[Any, Any, Any]) -> None:
    body = json.dumps(operation.example).encode()
    answer, _ = made_by(operation, told_of(operation))(body, Chosen(working=True))
    sheet = sheet_of(operation.name, operation.example)
    assert sheet.texts("h1") == [operation.summary]
    assert hashlib.sha256(body).hexdigest() in sheet.text
    assert answer.basis.tables_version in sheet.text
    assert NOTICE in sheet.text
    for finding in answer.findings:
        assert finding.message in sheet.text
    for caution in answer.cautions:
        assert caution.message in sheet.text
    first_cells = [row[0] for row in sheet.rows() if row]
    for member in operation.result.__struct_fields__:
        value = getattr(answer.result, member)
        if isinstance(value, (int, float, AnyQuantity)):
            assert titled(member) in first_cells
    assert isinstance(answer.working, list)
    for step in answer.working:
        assert step.formula in sheet.text
    assert [row for row in sheet.rows() if row[:1] == list(answer.basis.source_ids[:1])] or not answer.basis.source_ids


def test_inputs_stand_as_they_were_sent_to_the_last_digit() -> None:
    request = EXAMPLES["encasement"] | {"length": {"value": 323.123456789, "unit": "ft"}}
    rows = sheet_of("encasement", request).rows()
    assert ["length", "323.123456789 ft"] in rows
    assert ["bank, conduit", "kind listed; type pvc_schedule_40; trade_size 4"] in rows
    assert ["bank, tiers", "3, 3, 3"] in rows


def test_what_was_assumed_stands_apart_with_its_standing() -> None:
    request = {name: value for name, value in EXAMPLES["encasement"].items() if name != "waste_percent"}
    rows = sheet_of("encasement", request).rows()
    header = rows.index(["For want of", "Assumed", "After", "Standing"])
    assert rows[header + 1][0] == "waste percent"
    assert rows[header + 1][3] in ("practice", "published", "memory")
    assert "None: everything was given." in sheet_of("encasement", EXAMPLES["encasement"]).text


def test_the_verdict_is_one_sentence_and_says_how_many_limits_are_broken() -> None:
    broken = sheet_of("pull-tension", EXAMPLES["pull-tension"])  # its bend exceeds the pressure that the caller gave
    assert "✗ Does not comply: one limit is broken." in broken.texts("p")
    assert "Limits broken" in broken.texts("h2")
    kept = sheet_of("fill", EXAMPLES["fill"])
    assert "✓ Complies with every limit it was held against." in kept.texts("p")
    assert "Limits broken" not in kept.texts("h2")
    assert "Nothing here is held against a limit." in sheet_of("spacers", EXAMPLES["spacers"]).texts("p")


def test_what_was_not_judged_stands_under_its_own_heading() -> None:
    without_size = json.loads(json.dumps(EXAMPLES["pull-tension"]))
    del without_size["cables"][0]["cable"]["conductor"]
    without_size["allowable_sidewall_pressure"]["value"] = 5000
    body = json.dumps(without_size).encode()
    answer, _ = made_by(NAMED["pull-tension"], told_of(NAMED["pull-tension"]))(body, Chosen())
    assert answer.verdict is Verdict.NOT_JUDGED
    sheet = sheet_of("pull-tension", without_size)
    assert "Not judged" in sheet.texts("h2")
    assert any(text.startswith("? Not judged") for text in sheet.texts("p"))


@pytest.mark.parametrize("text", HOSTILE)
def test_a_text_of_the_caller_stays_text(text: str) -> None:
    answer, _ = made_by(NAMED["fill"], told_of(NAMED["fill"]))(json.dumps(EXAMPLES["fill"]).encode(), Chosen())
    body = json.dumps({"name": text, "note": text, "points": [{"name": text}]}).encode()
    written = calculation_sheet("Fill", answer, body)
    page = assert_harmless(written.written, written.policy)
    assert page.texts("title") == [f"{text} - Fill"]
    assert page.texts("dd").count(text) == 2
    assert ["points no. 1", f"name {text}"] in page.rows()


def test_a_drawing_stands_in_the_sheet_and_its_style_is_allowed() -> None:
    from ductrun.drawings.registry import DRAWINGS

    body = json.dumps(EXAMPLES["encasement"]).encode()
    answer, found = made_by(NAMED["encasement"], told_of(NAMED["encasement"]))(body, Chosen())
    drawing = DRAWINGS["encasement"](found, Chosen().telling)
    written = calculation_sheet("Concrete encasement", answer, body, [drawing])
    page = assert_harmless(written.written, written.policy)
    assert [one.name for one in page.elements].count("svg") == 1
    assert len(page.texts("style")) == 3


@pytest.mark.parametrize(
    "value, member, words",
    [
        (AnyQuantity(469.4247779607694, "ft"), "length", "469 ft 5 in"),
        (AnyQuantity(33.98737465659035, "yd3"), "net_volume", "33.987 yd³"),
        (AnyQuantity(180.0, "deg"), "bend_total", "180°"),
        (AnyQuantity(3.38e-05, "1/degF"), "coefficient", "3.38 × 10⁻⁵ 1/°F"),  # noqa: RUF001  (the sign is meant)
        (AnyQuantity(137648.86735919092, "lb"), "mass", "137,649 lb"),
        (35.996147495872314, "fill_percent", "35.996 %"),
        (1606, "bag_count", "1,606"),
        (True, "fitting_required", "yes"),
        (Verdict.NOT_JUDGED, "verdict", "not judged"),
        ([AnyQuantity(3.0, "ft"), AnyQuantity(7.65, "ft")], "positions", "3 ft; 7 ft 7-3/4 in"),
        ([], "positions", "none"),
    ],
)
def test_values_are_written_for_reading(value: Any, member: str, words: str) -> None:
    assert shown(value, member) == words


def test_places_count_from_one() -> None:
    assert place_of("#/sections/3/radius") == "sections no. 4, radius"
    assert place_of("#") == "the whole request"
    assert quantity_text(AnyQuantity(0.5, "1")) == "0.5"
    assert figure_text(1e20) == "100,000,000,000,000,000,000"
