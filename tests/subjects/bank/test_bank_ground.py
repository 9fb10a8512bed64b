"""The ground of a bank under a form that has it."""

from __future__ import annotations

import json
from typing import Any

import pytest
from ductrun.kit.forms import Form
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.bank.bank_ground import BankGround, BankGroundTakeoff, ground, told_ground
from ductrun.units import Length
from pydantic import Field

from tests.asking import quantity
from tests.subjects.nested import strays, told_by


class Built(Form):
    """What is built."""

    bank_ground: BankGround = Field(description="Its ground.")


READ = reader_of(Built)


def grounded(feet: float, **given: Any) -> tuple[BankGroundTakeoff, Worksheet]:
    sheet = Worksheet(US, working=True)
    asked = READ(json.dumps({"bank_ground": {"size": "4/0 AWG"} | given}).encode()).bank_ground
    found = ground(asked, Length.parse(feet, "ft").si, sheet.within("bank_ground"))
    return told_ground(found, US), sheet


def test_a_ground_runs_from_end_to_end_and_up_to_both_structures() -> None:
    """Derived: 323 ft and twice 5 ft are 333 ft; with 5 percent 349.65 ft."""
    told, sheet = grounded(323)
    assert told.size == "4/0 AWG"
    assert told.conductor_length.value == pytest.approx(333)
    assert told.order_length.value == pytest.approx(349.65)
    assert strays(Built, told_by(sheet)) == []
    assert set(sheet.book.settled) == {
        "#/bank_ground/conductor_count",
        "#/bank_ground/end_length",
        "#/bank_ground/waste_percent",
    }


def test_everything_of_a_ground_can_be_given() -> None:
    """Derived: two conductors of 100 ft and twice 10 ft are 240 ft."""
    told, sheet = grounded(100, conductor_count=2, end_length=quantity(10, "ft"), waste_percent=0)
    assert told.conductor_length.value == pytest.approx(240)
    assert told.order_length.value == pytest.approx(240)
    assert sheet.book.settled == {}
