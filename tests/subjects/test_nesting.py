"""Cores of several subjects under one request: everything told points to its place, and is told once."""

from __future__ import annotations

import copy
import json
from typing import Annotated, Any

import pytest
from ductrun.kit.completing import completed
from ductrun.kit.forms import Depth, Form, Omissible, RunLength
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.bank.encasing import Encasement, Encasing, encase
from ductrun.subjects.ground.digging import Digging, Trench, dig
from ductrun.subjects.ground.filling import EarthCover
from ductrun.subjects.parts.bank import DuctBank, bank_of
from ductrun.subjects.parts.envelope import AskedPour, ConcreteCover, PourShape, buried_directly, concrete_of, poured
from pydantic import Field

from tests.asking import quantity, result
from tests.properties.requests import places


class Stretch(Form):
    """A length of a run, with what differs there."""

    length: RunLength = Field(description="Its length.")
    cover: Depth = Field(description="Earth over the envelope.")
    bank: Omissible[DuctBank] = Field(default=None, description="The bank, where it differs.")
    concrete_cover: Omissible[ConcreteCover] = Field(default=None, description="Concrete outside the ducts.")
    pour_shape: Omissible[PourShape] = Field(default=None, description="How it is poured.")


class Run(Form):
    """A bank in concrete through several stretches, dug and poured by one practice."""

    bank: DuctBank = Field(description="The bank.")
    digging: Digging = Field(description="How it is dug.")
    pouring: Encasing = Field(description="How it is poured.")
    stretches: Annotated[list[Stretch], Field(min_length=1, max_length=20)] = Field(description="The stretches.")


READ = reader_of(Run)
BANK = {"conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"}, "tiers": [3, 1]}
ASKED: dict[str, Any] = {
    "bank": BANK,
    "digging": {},
    "pouring": {},
    "stretches": [
        {"length": quantity(100, "ft"), "cover": quantity(30, "in")},
        {
            "length": quantity(50, "ft"),
            "cover": quantity(72, "in"),
            "bank": BANK | {"tiers": [2, 3]},
            "concrete_cover": {"top": quantity(1, "in")},
        },
    ],
}


def pour_asked(run: Any, stretch: Any, sheet: Worksheet, here: Worksheet) -> AskedPour:
    cover, shape = here.within("concrete_cover"), here.within("pour_shape")
    bank, place = (run.bank, sheet.within("bank")) if stretch.bank is None else (stretch.bank, here.within("bank"))
    return AskedPour(bank, place, stretch.concrete_cover, cover, stretch.pour_shape, shape)


def assess(run: Any, sheet: Worksheet) -> list[tuple[Trench, Encasement]]:
    """Assess every stretch; all faults of all stretches at once."""
    found = []
    faults = Gathering()
    shared = None
    with faults:
        shared = bank_of(run.bank, sheet.within("bank"))
    for index, stretch in enumerate(run.stretches):
        about = sheet.pointer(f"stretches/{index}")
        here = sheet.within(f"stretches/{index}")
        with faults:
            placed = shared if stretch.bank is None else bank_of(stretch.bank, here.within("bank"))
            if placed is None:
                continue
            pour = pour_asked(run, stretch, sheet, here)
            envelope = poured(placed, pour, concrete_of(pour))
            length, cover = stretch.length.si, stretch.cover.si
            earth = EarthCover(cover, cover, ((0.0, cover), (length, cover)), here.within("cover"))
            trench = dig(run.digging, envelope, earth, length, sheet.within("digging", about=about))
            found.append((trench, encase(run.pouring, envelope, length, sheet.within("pouring", about=about))))
    faults.stop()
    return found


def asked(changes: dict[str, Any] | None = None) -> tuple[list[tuple[Trench, Encasement]], Worksheet]:
    sheet = Worksheet(US)
    return assess(READ(json.dumps(ASKED | (changes or {})).encode()), sheet), sheet


def test_findings_point_to_the_stretch_they_are_about_and_cautions_come_once() -> None:
    _, sheet = asked()
    where = [(finding.code, finding.pointer) for finding in sheet.book.findings]
    assert ("needs_egress", "#/stretches/1/cover") in where, "so deep for its cover"
    assert ("needs_protection", "#/stretches/1") in where, "asked of the digging, found of the stretch"
    assert ("thin_envelope", "#/stretches/1/concrete_cover/top") in where
    assert ("tier_overhangs", "#/stretches/1/bank/tiers/1") in where
    usual = [caution.code for caution in sheet.book.cautions]
    assert usual.count("wet_concrete") == usual.count("empty_ducts_float") == 1


def test_what_both_stretches_assume_is_told_once_with_every_place() -> None:
    _, sheet = asked()
    pointers = [assumption.pointers for assumption in sheet.assumptions]
    assert len([places for places in pointers if "#/digging/side_slope_ratio" in places]) == 1
    [covers] = [places for places in pointers if "#/stretches/0/concrete_cover/top" in places]
    assert "#/stretches/1/concrete_cover/side" in covers
    assert "#/stretches/1/concrete_cover/top" not in covers
    [across] = [places for places in pointers if "#/bank/horizontal_separation" in places]
    assert "#/stretches/1/bank/horizontal_separation" in across


def test_every_pointer_names_a_member_and_the_completed_request_assumes_nothing() -> None:
    found, sheet = asked()
    schema = Run.model_json_schema()
    told = [*sheet.book.settled, *(str(finding.pointer) for finding in sheet.book.findings if finding.pointer)]
    assert [pointer for pointer in told if not places(schema, pointer)] == []
    again = Worksheet(US)
    assert assess(READ(json.dumps(completed(ASKED, sheet.book)).encode()), again) == found
    assert again.assumptions == []


def test_two_defaults_of_one_practice_are_both_told() -> None:
    sheet = Worksheet(US)
    bank = bank_of(READ(json.dumps(ASKED).encode()).bank, sheet.within("bank"))
    earth = EarthCover(0.5, 0.5, ((0.0, 0.5), (30.0, 0.5)), sheet)
    run = READ(json.dumps(ASKED).encode())
    pour = pour_asked(run, run.stretches[0], sheet, sheet.within("stretches/0"))
    envelopes = (poured(bank, pour, concrete_of(pour)), buried_directly(bank, pour))
    for envelope in envelopes:
        dig(READ(json.dumps(ASKED).encode()).digging, envelope, earth, 30.0, sheet.within("digging"))
    bedding = [one.text for one in sheet.assumptions if one.pointers == ["#/digging/bedding"]]
    assert bedding == ["0 in", "3 in"]
    assert "bedding" not in completed(ASKED, sheet.book)["digging"], "no one value would give the same trenches"


def test_faults_of_all_places_come_at_once_and_point_right() -> None:
    bad = copy.deepcopy(ASKED)
    bad["stretches"][1]["bank"]["signal_ducts"] = [0, 9]
    bad["digging"]["width"] = quantity(4, "in")
    with pytest.raises(UnanswerableError) as refused:
        asked(bad)
    pointers = {fault.pointer for fault in refused.value.faults}
    assert pointers == {"#/digging/width/value", "#/stretches/1/bank/signal_ducts/1"}


def test_figures_equal_those_of_the_single_operations() -> None:
    [(trench, pour), _], _ = asked()
    single = {"length": quantity(100, "ft"), "bank": BANK}
    assert US.bulk_volume(pour.order).value == result("encasement", single)["order_volume"]["value"]
    alone = result("trench", single | {"cover": quantity(30, "in")})
    assert US.bulk_volume(trench.volumes.backfill).value == pytest.approx(alone["backfill_volume"]["value"])
    assert US.bulk_volume(pour.gross).value == pytest.approx(alone["envelope_volume"]["value"])
