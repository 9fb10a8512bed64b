"""Spacers, concrete and flotation under one form that has their parts elsewhere: everything told points there."""

from __future__ import annotations

import json
from typing import Any

import pytest
from ductrun.kit.forms import Form, Omissible, RunLength
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.duct_masses import walls_of
from ductrun.subjects.bank.encasing import Encasing, encase
from ductrun.subjects.bank.floating import float_bank
from ductrun.subjects.bank.flotation_practice import Floating
from ductrun.subjects.bank.spacing import runs_of, space
from ductrun.subjects.bank.spacing_practice import Spacing
from ductrun.subjects.parts.bank import DuctBank, bank_of, tiers_of
from ductrun.subjects.parts.envelope import (
    AskedPour,
    ConcreteCover,
    PourShape,
    concrete_of,
    poured,
    poured_in_trench,
)
from pydantic import Field

from tests.asking import quantity
from tests.subjects.nested import pointer_of, refused_at, strays, told_by


class Pour(Form):
    """How concrete is shaped."""

    around: Omissible[ConcreteCover] = Field(default=None, description="Concrete outside the ducts.")
    shape: Omissible[PourShape] = Field(default=None, description="Whether it steps.")


class Section(Form):
    """What is built."""

    ducts: DuctBank = Field(description="The bank.")
    pour: Pour = Field(description="Its concrete.")


class Practice(Form):
    """How it is built."""

    spacing: Spacing = Field(description="Its spacers.")
    concrete: Encasing = Field(description="Its concrete.")
    floating: Floating = Field(description="What holds it down.")


class Built(Form):
    """A length of a bank, with the practice once."""

    length: RunLength = Field(description="Its length.")
    section: Section = Field(description="What is built.")
    practice: Practice = Field(description="How.")


READ = reader_of(Built)
ASKED: dict[str, Any] = {
    "length": quantity(100, "ft"),
    "section": {
        "ducts": {
            "conduit": {"kind": "listed", "type": "pvc_eb_20", "trade_size": "4"},
            "tiers": [2, 3],
            "horizontal_separation": quantity(0.5, "in"),
        },
        "pour": {"around": {"top": quantity(1, "in")}},
    },
    "practice": {
        "spacing": {
            "interval": {"kind": "preset", "preset": "telecom_direct_10ft"},
            "piece_system": "whole_tier",
            "stick_length": quantity(20, "ft"),
        },
        "concrete": {
            "maximum_aggregate_size": quantity(2, "in"),
            "pigment_percent": 11,
            "reinforcing": {"bar_count": 4, "bar_size": "no_4"},
        },
        "floating": {"lift_height": quantity(12, "in")},
    },
}


def asked(*, trench: bool = False, **changes: Any) -> Worksheet:
    sheet = Worksheet(US, working=True)
    given = READ(json.dumps(ASKED | changes).encode())
    section, practice = sheet.within("section"), sheet.within("practice")
    place = section.within("ducts")
    placed = bank_of(given.section.ducts, place)
    shape, around = section.within("pour/shape"), section.within("pour/around")
    pour = AskedPour(given.section.ducts, place, given.section.pour.around, around, given.section.pour.shape, shape)
    concrete = concrete_of(pour)
    envelope = poured_in_trench(placed, pour, concrete, 1.0) if trench else poured(placed, pour, concrete)
    length = given.length.si
    ducts = runs_of([tier.diameters for tier in tiers_of(given.section.ducts, place)])
    space(given.practice.spacing, ducts, length, practice.within("spacing"))
    encase(given.practice.concrete, envelope, length, practice.within("concrete"))
    walls = walls_of(given.section.ducts, place)
    float_bank(given.practice.floating, envelope, walls, 0.5, length, practice.within("floating"))
    return sheet


def test_everything_told_names_a_member_of_the_form_that_holds_it() -> None:
    sheet = asked()
    told = told_by(sheet)
    assert strays(Built, told) == []
    assert {
        "#/section/ducts/tiers/1",
        "#/section/ducts/horizontal_separation",
        "#/section/pour/around/top",
        "#/section/pour/around/side",
        "#/section/pour/shape",
        "#/practice/spacing/interval",
        "#/practice/spacing/stick_length",
        "#/practice/spacing/piece_system",
        "#/practice/concrete/pigment_percent",
        "#/practice/concrete/maximum_aggregate_size",
        "#/practice/concrete/reinforcing/tie_size",
        "#/practice/floating/contents",
        "#/practice/floating/duct_density",
        "#/practice/floating/tie_down_capacity",
    } <= told
    assert pointer_of(sheet, "thin_envelope") == "#/section/pour/around/top"


SECTION = ASKED["section"]


@pytest.mark.parametrize(
    ("changes", "trench", "expected"),
    [
        (
            {"section": SECTION | {"pour": {"shape": "stepped"}}},
            True,
            {"#/section/pour/shape": "not_with_a_trench_form"},
        ),
        (
            {"section": SECTION | {"ducts": SECTION["ducts"] | {"signal_ducts": [3, 0]}}},
            False,
            {"#/section/ducts/signal_ducts/0": "more_than_the_tier"},
        ),
        (
            {"practice": ASKED["practice"] | {"floating": {"contents": "cable"}}},
            False,
            {"#/practice/floating/cable_mass_per_length": "missing"},
        ),
        (
            {
                "practice": ASKED["practice"]
                | {"concrete": {"reinforcing": {"bar_count": 4, "bar_size": "no_4", "edge_cover": quantity(9, "in")}}}
            },
            False,
            {"#/practice/concrete/reinforcing/edge_cover": "does_not_fit"},
        ),
        (
            {
                "practice": ASKED["practice"]
                | {
                    "spacing": {
                        "interval": {"kind": "per_stick", "count": 2, "stick_length": quantity(10, "ft")},
                        "end_offset": quantity(1, "ft"),
                    }
                }
            },
            False,
            {"#/practice/spacing/end_offset": "not_with_per_stick"},
        ),
    ],
)
def test_a_fault_lies_where_its_member_was_given(
    changes: dict[str, Any], trench: bool, expected: dict[str, str]
) -> None:
    with pytest.raises(UnanswerableError) as refused:
        asked(trench=trench, **changes)
    assert refused_at(refused.value) == expected
    assert strays(Built, expected) == []
