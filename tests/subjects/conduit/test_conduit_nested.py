"""The cores of joints and permitted use under another request: practice given once, the parts a run."""

from __future__ import annotations

import json
from typing import Annotated, Any

import pytest
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form, Omissible, RunLength
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.conduit.choices import RunEnd
from ductrun.subjects.conduit.elbows import DuctElbow, elbows_of
from ductrun.subjects.conduit.joining import Ducts, Joining, join, method_of
from ductrun.subjects.conduit.permitted_use import Using, judge
from ductrun.subjects.parts.conduit import ListedConduit, PlacedType, find_row
from pydantic import Field

from tests.asking import quantity
from tests.properties.requests import places


class Run(Form):
    """Ducts of one kind, and where they lie."""

    duct: ListedConduit = Field(description="The duct.")
    length: RunLength = Field(description="Its length.")
    bends: Annotated[list[DuctElbow], Field(max_length=9)] = Field(description="Its elbows.")
    setting: Omissible[Using] = Field(default=None, description="What it meets.")


class Job(Form):
    """Runs joined by one practice."""

    joining: Joining = Field(description="How they are joined.")
    runs: Annotated[list[Run], Field(min_length=1, max_length=9)] = Field(description="The runs.")


READ = reader_of(Job)
SCHEMA = Job.model_json_schema()
ELBOW = {"angle": quantity(90, "deg"), "count": 1}
GOOD = {
    "duct": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
    "length": quantity(100, "ft"),
    "bends": [ELBOW],
    "setting": {"uses": ["direct_burial"]},
}


def assess(job: Any, sheet: Worksheet) -> list[Any]:
    """Join the ducts of every run and judge where it lies; all faults at once."""
    found: list[Any] = []
    faults = Gathering()
    for index, run in enumerate(job.runs):
        here, joining = sheet.within(f"runs/{index}"), sheet.within("joining", about=sheet.pointer(f"runs/{index}"))
        duct = here.within("duct")
        with faults:
            elbows = elbows_of(run.bends, run.duct, here.within("bends"))
            method, ends = method_of(run.duct.type, duct), (RunEnd.END_BELL, RunEnd.NONE)
            ducts = Ducts(find_row(run.duct, duct).trade_size, None, method, 4, run.length.si, elbows, ends, 0, duct)
            found.append(join(job.joining, ducts, joining))
        if run.setting is not None:
            placed = PlacedType(run.duct.type, duct.within("type"))
            found.append(judge(run.setting, placed, here.within("setting")))
    faults.stop()
    return found


def asked(*runs: dict[str, Any], **joining: Any) -> tuple[dict[str, Any], Worksheet, list[Any]]:
    body = {"joining": joining, "runs": list(runs)}
    sheet = Worksheet(US, working=True)
    return body, sheet, assess(READ(json.dumps(body).encode()), sheet)


AWKWARD = [
    GOOD | {"bends": [ELBOW | {"radius": quantity(37, "in")}, ELBOW]},
    GOOD | {"setting": {"uses": ["above_ground", "physical_damage", "emerging_from_grade"]}, "bends": []},
    GOOD | {"setting": {"uses": ["above_ground"], "ambient_temperature": quantity(150, "degF")}},
]


def test_every_pointer_told_names_a_member_of_the_job() -> None:
    _, sheet, _ = asked(*AWKWARD)
    findings, steps = sheet.book.findings, sheet.book.working or []
    told = [*sheet.book.settled, *(str(one.pointer) for one in findings), *(step.pointer for step in steps)]
    assert [pointer for pointer in told if not places(SCHEMA, pointer)] == []
    where = {(finding.code, finding.pointer) for finding in findings}
    assert where >= {
        ("elbow_radius_not_on_file", "#/runs/0/bends/0/radius"),
        ("make_the_joint", "#/runs/1/duct"),
        ("listing_decides", "#/runs/1/duct/type"),
        ("use_not_permitted", "#/runs/1/setting/uses/1"),
        ("use_under_condition", "#/runs/1/setting/uses/2"),
        ("ambient_exceeded", "#/runs/2/setting/ambient_temperature"),
    }
    assert {"#/runs/0/bends/1/radius", "#/runs/0/bends/0/tangent", "#/joining/ends"} <= set(sheet.book.settled)


def test_what_was_assumed_can_be_given_back_in_its_place() -> None:
    body, sheet, found = asked(*AWKWARD)
    again = Worksheet(US)
    alike = assess(READ(json.dumps(completed(body, sheet.book)).encode()), again)
    assert again.assumptions == []
    assert [one.stick_count for one in alike if hasattr(one, "stick_count")] == [
        one.stick_count for one in found if hasattr(one, "stick_count")
    ]


def test_faults_of_all_runs_come_at_once_and_point_right() -> None:
    steel = {"kind": "listed", "type": "rmc", "trade_size": "4"}
    bad = [
        GOOD | {"duct": steel},
        GOOD | {"length": quantity(1, "ft")},
        GOOD | {"duct": steel | {"trade_size": "3/8"}, "bends": []},
        GOOD | {"duct": {"kind": "listed", "type": "fmc", "trade_size": "3/8"}, "bends": []},
    ]
    with pytest.raises(UnanswerableError) as refused:
        asked(*bad)
    pointers = {fault.pointer for fault in refused.value.faults}
    assert pointers == {
        "#/runs/0/bends/0/radius",
        "#/runs/1/bends",
        "#/runs/2/duct/trade_size",
        "#/runs/3/duct/type",
    }
    with pytest.raises(UnanswerableError) as refused:
        asked(GOOD | {"duct": steel, "bends": []}, ends="belled")
    assert [(fault.pointer, fault.code) for fault in refused.value.faults] == [("#/joining/ends", "no_bell_fits")]
