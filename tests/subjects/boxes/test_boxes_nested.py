"""A box under a form that has its parts elsewhere: everything told points there."""

from __future__ import annotations

import json
from typing import Any

import pytest
from ductrun.kit.forms import Form
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.boxes.boxing import Boxing
from ductrun.subjects.boxes.choices import BoxWall, PullKind
from ductrun.subjects.boxes.entries import Circuits, Entries
from ductrun.subjects.boxes.placing import Circuit, Entered, Entry, enter, pulls_of
from ductrun.subjects.boxes.pull_box_told import tell
from ductrun.subjects.boxes.sizing import Sized, cover_of, size_box
from pydantic import Field

from tests.asking import quantity
from tests.subjects.nested import pointer_of, refused_at, strays, told_by


class PullPoint(Form):
    """A place where a run is pulled through."""

    built: Boxing = Field(description="What it is.")
    holes: Entries = Field(description="What enters it.")


class Line(Form):
    """Circuits with one of their pull points."""

    feeders: Circuits = Field(description="The circuits.")
    point: PullPoint = Field(description="The pull point.")


READ = reader_of(Line)
DUCT = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"}
ASKED: dict[str, Any] = {
    "feeders": [
        {"name": "a", "cables": [{"count": 3, "cable": {"kind": "measured", "diameter": quantity(1.5, "in")}}]}
    ],
    "point": {
        "built": {
            "structure": "handhole",
            "box": {name: quantity(48, "in") for name in ("length", "width", "depth")},
            "box_sizes": [{name: quantity(12, "in") for name in ("length", "width", "depth")}],
            "racking": {"offset": quantity(6, "in")},
        },
        "holes": [
            {"wall": "left", "position": quantity(6, "in"), "offset": quantity(6, "in"), "conduit": DUCT}
            | {"circuits": ["a"]},
            {"wall": "bottom", "position": quantity(6, "in"), "offset": quantity(6, "in"), "conduit": DUCT}
            | {"circuits": ["a"]},
        ],
    },
}


def asked(body: dict[str, Any]) -> tuple[Sized, Worksheet]:
    sheet = Worksheet(US, working=True)
    line = READ(json.dumps(body).encode())
    point = sheet.within("point")
    built = point.within("built")
    cover = cover_of(line.point.built, built)
    entered = enter(line.point.holes, line.feeders, True, cover, point.within("holes"), sheet.within("feeders"))
    return size_box(line.point.built, entered, cover, built), sheet


def test_everything_told_of_a_box_names_a_member_of_the_form_that_holds_it() -> None:
    found, sheet = asked(ASKED)
    told = told_by(sheet)
    assert strays(Line, told) == []
    assert {
        "#/feeders/0/spliced",
        "#/feeders/0/cables/0/cable/shielding",
        "#/point/holes/0/row",
        "#/point/built/removable_cover",
        "#/point/built/racking/straight_out",
    } <= told
    assert pointer_of(sheet, "entries_too_close") == "#/point/holes/1/position"
    assert pointer_of(sheet, "no_size_large_enough") == "#/point/built/box_sizes"
    told_answer = tell(found, US)
    assert told_answer.candidates[0].pointer == "#/point/built/box_sizes/0"
    assert told_answer.pulls[0].pointers == ["#/point/holes/0", "#/point/holes/1"]


def test_a_fault_lies_where_its_member_was_given() -> None:
    lost = json.loads(json.dumps(ASKED))
    lost["point"]["holes"][1]["circuits"] = ["b"]
    with pytest.raises(UnanswerableError) as refused:
        asked(lost)
    assert refused_at(refused.value) == {"#/point/holes/1/circuits/0": "no_such_circuit"}
    lost["point"]["holes"].pop()
    with pytest.raises(UnanswerableError) as refused:
        asked(lost)
    assert refused_at(refused.value) == {"#/point/holes/0/circuits/0": "never_leaves"}


def test_a_box_is_sized_from_parts_that_no_form_of_it_gave() -> None:
    """Two raceways of trade 4 straight through, made by whoever knows the ducts of both sides: 8 x 4 = 32 in."""
    sheet = Worksheet(US)
    four, outside = 4 * 0.0254, 4.5 * 0.0254
    entries = [
        Entry(wall, 1, None, None, four, outside, (0,), sheet.within(f"stretches/{number}"))
        for number, wall in enumerate((BoxWall.LEFT, BoxWall.RIGHT))
    ]
    circuits = [Circuit("a", None, False, sheet.within("circuits/0"))]
    pulls = pulls_of(entries, circuits)
    assert [pull.kind for pull in pulls] == [PullKind.STRAIGHT]
    given = READ(json.dumps(ASKED | {"point": ASKED["point"] | {"built": {}}}).encode()).point.built
    found = size_box(given, Entered(entries, circuits, pulls, False), BoxWall.FRONT, sheet.within("box"))
    length = tell(found, US).least_length
    assert length
    assert (length.least.value, length.pointers) == (32, ["#/stretches/0", "#/stretches/1"])
    assert found.box is None
    assert [one.entries for one in found.requirements if one.axis == 0] == [(0, 1)]
