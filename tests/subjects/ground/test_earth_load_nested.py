"""Ducts under earth and traffic along a run whose form has cover, bank and practice apart."""

from __future__ import annotations

import json
from typing import Annotated, Any

import pytest
from ductrun.kit.forms import Depth, Form
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.earth_loading import EarthAndWater
from ductrun.subjects.ground.laid_ducts import lay
from ductrun.subjects.ground.loaded_ducts import ducts_of_bank
from ductrun.subjects.ground.under_load import UnderLoad, bear
from ductrun.subjects.parts.bank import DuctBank, bank_of
from pydantic import Field

from tests.asking import ask, quantity, result
from tests.subjects.nested import refused_at, strays, told_by


class Stretch(Form):
    """A length at one depth."""

    depth: Depth = Field(description="Earth over the bank.")


class Run(Form):
    """A bank at several depths below one street."""

    ducts: DuctBank = Field(description="The bank.")
    street: EarthAndWater = Field(description="What passes over it.")
    stretches: Annotated[list[Stretch], Field(min_length=1, max_length=20)] = Field(description="The stretches.")


READ = reader_of(Run)
BANK = {"conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}, "tiers": [2]}
ASKED: dict[str, Any] = {
    "ducts": BANK,
    "street": {"traffic": "h_20"},
    "stretches": [{"depth": quantity(36, "in")}, {"depth": quantity(0, "in")}, {"depth": quantity(20, "in")}],
}


def asked(body: dict[str, Any]) -> tuple[list[UnderLoad], Worksheet]:
    sheet = Worksheet(US, working=True)
    run = READ(json.dumps(body).encode())
    place = sheet.within("ducts")
    placed = bank_of(run.ducts, place)
    found = []
    for index, stretch in enumerate(run.stretches):
        street = sheet.within("street", about=sheet.pointer(f"stretches/{index}"))
        ducts = ducts_of_bank(run.ducts, place, run.street, street)
        depth = sheet.within(f"stretches/{index}/depth")
        found.append(bear(run.street, lay(placed, ducts, None), stretch.depth.si, depth, street))
    return found, sheet


def test_everything_told_of_a_load_names_a_member_of_the_form_that_holds_it() -> None:
    _, sheet = asked(ASKED)
    told = told_by(sheet)
    assert strays(Run, told) == []
    assert {"#/street/compaction", "#/street/modulus", "#/stretches/1/depth", "#/ducts/conduit"} <= told
    where = {(one.code, one.pointer) for one in sheet.book.findings}
    assert ("too_little_cover_under_traffic", "#/stretches/1/depth") in where
    assert ("shallow_under_traffic", "#/stretches/2/depth") in where
    assert ("deflection_exceeded", "#/ducts/conduit") in where
    assert [one.code for one in sheet.book.cautions].count("excavation_safety") == 1


def test_the_figures_of_a_stretch_are_those_of_the_single_operation() -> None:
    found, _ = asked(ASKED)
    alone = result("earth-load", {"bank": BANK, "cover": quantity(36, "in"), "traffic": "h_20"})
    assert found[0].tiers[0].deflection == pytest.approx(alone["deflection_percent"])
    assert found[1].tiers[0].deflection is None
    assert ask("earth-load", {"bank": BANK, "cover": quantity(36, "in"), "traffic": "h_20"})["verdict"] == "violates"


def test_a_fault_lies_where_its_member_was_given() -> None:
    bad = ASKED | {"street": {"traffic": "none", "trench_width": quantity(2, "in")}}
    with pytest.raises(UnanswerableError) as refused:
        asked(bad)
    assert refused_at(refused.value) == {"#/street/trench_width/value": "narrower_than_the_bank"}
    metal = ASKED | {"ducts": BANK | {"conduit": {"kind": "listed", "type": "emt", "trade_size": "4"}}}
    with pytest.raises(UnanswerableError) as refused:
        asked(metal)
    assert set(refused_at(refused.value)) == {"#/ducts/conduit/type"}
