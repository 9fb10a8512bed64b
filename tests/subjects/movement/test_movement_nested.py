"""Movement and supports under one form that has their parts elsewhere: everything told points there."""

from __future__ import annotations

import json
from typing import Annotated, Any

import pytest
from ductrun.kit.forms import Expansivity, Form, Omissible, RunLength
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import METRIC
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import ConduitMaterial
from ductrun.subjects.movement.findings import coefficient_of
from ductrun.subjects.movement.moving import Movement, Moving, move, setting_of
from ductrun.subjects.movement.runs import StraightRun
from ductrun.subjects.movement.spacing import SupportedConduit, spacing_of
from ductrun.subjects.movement.strapping import Supported, Supporting, support
from ductrun.subjects.movement.temperatures import Temperatures, seen_by
from pydantic import Field

from tests.asking import EXAMPLES, quantity
from tests.subjects.nested import pointer_of, refused_at, strays, told_by


class Material(Form):
    """What the conduit is made of."""

    material: Omissible[ConduitMaterial] = Field(default=None, description="By name.")
    coefficient: Omissible[Expansivity] = Field(default=None, description="By its coefficient.")


class Practice(Form):
    """How runs above ground are built."""

    moving: Moving = Field(description="What takes up their movement.")
    supporting: Supporting = Field(description="What holds them.")


class Site(Form):
    """The place."""

    temperatures: Temperatures = Field(description="What the conduit sees.")


class Risers(Form):
    """Lengths of conduit above ground, with the practice once and the place once."""

    conduit: SupportedConduit = Field(description="The conduit.")
    made_of: Material = Field(description="Its material.")
    site: Site = Field(description="The place.")
    lengths: Annotated[list[RunLength], Field(max_length=20)] = Field(description="Its straight lengths.")
    practice: Practice = Field(description="Practice.")


READ = reader_of(Risers)
ASKED: dict[str, Any] = {
    "conduit": {"kind": "listed", "type": "rmc", "trade_size": "2"},
    "made_of": {"material": "steel"},
    "site": {"temperatures": EXAMPLES["expansion"]["temperatures"]},
    "lengths": [quantity(10, "ft"), quantity(380, "ft")],
    "practice": {
        "moving": {
            "emerges_from_grade": True,
            "crosses_structural_joint": True,
            "opening_temperatures": [quantity(40, "degF")],
        },
        "supporting": {"end_distance": quantity(4, "ft")},
    },
}


def asked(**changes: Any) -> tuple[Movement, Supported, Worksheet]:
    sheet = Worksheet(METRIC, working=True)
    given = READ(json.dumps(ASKED | changes).encode())
    coefficient = coefficient_of(given.made_of.material, given.made_of.coefficient, sheet.within("made_of"))
    setting = setting_of(given.practice.moving, sheet.within("practice/moving"))
    seen = seen_by(given.site.temperatures, setting, sheet.within("site/temperatures"))
    runs = [StraightRun(one.si, sheet.within(f"lengths/{index}")) for index, one in enumerate(given.lengths)]
    practice = sheet.within("practice")
    moved = move(given.practice.moving, coefficient, runs, seen, practice.within("moving"))
    spacing = spacing_of(given.conduit, sheet.within("conduit"))
    supported = support(given.practice.supporting, spacing, runs[-1], practice.within("supporting"))
    return moved, supported, sheet


def test_everything_told_names_a_member_of_the_form_that_holds_it() -> None:
    _, _, sheet = asked()
    told = told_by(sheet)
    assert strays(Risers, told) == []
    assert {
        "#/made_of/material",
        "#/lengths/1",
        "#/conduit",
        "#/practice/moving/emerges_from_grade",
        "#/practice/moving/fitting_travel",
        "#/practice/moving/setting",
        "#/practice/supporting/end_distance",
        "#/practice/supporting/termination_count",
    } <= told


def test_a_borrowed_trigger_points_to_what_the_material_was_given_by() -> None:
    assert pointer_of(asked()[2], "trigger_borrowed") == "#/made_of/material"
    given = asked(made_of={"coefficient": quantity(6.5e-6, "1/degF")})[2]
    assert pointer_of(given, "trigger_borrowed") == "#/made_of/coefficient"


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"made_of": {}}, {"#/made_of/material": "one_of_two"}),
        ({"lengths": [quantity(90_000, "ft")]}, {"#/lengths/0/value": "too_long_for_one_list"}),
        (
            {"conduit": {"kind": "listed", "type": "rmc", "trade_size": "3/8"}},
            {"#/conduit/trade_size": "trade_size_not_listed"},
        ),
        (
            {"practice": {"moving": {"opening_temperatures": [quantity(400, "degF")]}, "supporting": {}}},
            {"#/practice/moving/opening_temperatures/0/value": "installation_outside_range"},
        ),
        (
            {"site": {"temperatures": {"kind": "difference", "difference": quantity(50, "delta_degF")}}},
            {"#/practice/moving/opening_temperatures": "needs_a_range"},
        ),
    ],
)
def test_a_fault_lies_where_its_member_was_given(changes: dict[str, Any], expected: dict[str, str]) -> None:
    with pytest.raises(UnanswerableError) as refused:
        asked(**changes)
    assert refused_at(refused.value) == expected
    assert strays(Risers, expected) == []
