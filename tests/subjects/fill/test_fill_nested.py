"""The cores of fill under another request: practice given once, conduit and cables a run."""

from __future__ import annotations

import json
from typing import Annotated, Any

import pytest
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.fill.conductor_count import count
from ductrun.subjects.fill.conduit_size import Sizing, size
from ductrun.subjects.fill.fill import hold
from ductrun.subjects.parts.cables import Cable, CableLines
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conductors import conductor_set, place_cable
from ductrun.subjects.parts.conduit import Conduit, PlacedType, place_conduit
from pydantic import Field

from tests.asking import quantity
from tests.properties.requests import places
from tests.subjects.fill.sets import bare, cable, listed, pvc


class Run(Form):
    """A conduit with its cables, one that is sized, and one cable that is counted."""

    conduit: Conduit = Field(description="The conduit.")
    wires: CableLines = Field(description="What is in it.")
    other_type: ConduitType = Field(description="The type that is sized for the same.")
    spare: Cable = Field(description="The cable that is counted.")


class Job(Form):
    """Runs of one practice."""

    practice: Sizing = Field(description="How they are filled.")
    runs: Annotated[list[Run], Field(min_length=1, max_length=9)] = Field(description="The runs.")


READ = reader_of(Job)
SCHEMA = Job.model_json_schema()
GOOD = {
    "conduit": pvc("3"),
    "wires": [listed("THHN", "500 kcmil", 3)],
    "other_type": "emt",
    "spare": listed("THHN", "12 AWG"),
}


def assess(job: Any, sheet: Worksheet) -> list[Any]:
    """Ask all three questions of every run; all faults at once."""
    found: list[Any] = []
    faults = Gathering()
    for index, run in enumerate(job.runs):
        here, practice = sheet.within(f"runs/{index}"), sheet.within("practice", about=sheet.pointer(f"runs/{index}"))
        with faults:
            wires = conductor_set(run.wires, here.within("wires"))
            with faults:
                conduit = place_conduit(run.conduit, here.within("conduit"))
                found.append(hold(job.practice, conduit, wires, practice))
                found.append(count(job.practice, conduit, place_cable(run.spare, here.within("spare")), practice))
            found.append(size(job.practice, PlacedType(run.other_type, here.within("other_type")), wires, practice))
    faults.stop()
    return found


def asked(*runs: dict[str, Any], **practice: Any) -> tuple[dict[str, Any], Worksheet]:
    body = {"practice": practice, "runs": list(runs)}
    sheet = Worksheet(US, working=True)
    assess(READ(json.dumps(body).encode()), sheet)
    return body, sheet


AWKWARD = [
    GOOD | {"wires": [bare("10 AWG", 2), listed("USE-2", "4/0 AWG", 1)]},
    GOOD | {"conduit": {"kind": "measured", "inside_diameter": quantity(3, "in")}, "wires": [cable(1.0, 3)]},
    GOOD | {"conduit": pvc("1/2"), "wires": [listed("THHN", "12 AWG", 500)], "spare": listed("THHN", "500 kcmil")},
    GOOD | {"conduit": pvc("6"), "wires": [listed("THHN", "500 kcmil", 38)], "spare": bare("10 AWG")},
    GOOD
    | {
        "conduit": {"kind": "listed", "type": "rmc", "trade_size": "2"},
        "wires": [listed("RHH*", "350 kcmil", 2)],
        "other_type": "rmc",
    },
    GOOD
    | {
        "conduit": {"kind": "listed", "type": "pvc_schedule_80", "trade_size": "3"},
        "wires": [listed("THHN", "600 kcmil", 3)],
        "spare": listed("THHN", "14 AWG"),
        "other_type": "pvc_schedule_80",
    },
]


@pytest.mark.parametrize("nipple", [None, quantity(18, "in"), quantity(30, "in")])
def test_every_pointer_told_names_a_member_of_the_job(nipple: dict[str, Any] | None) -> None:
    _, sheet = asked(*AWKWARD, **({} if nipple is None else {"nipple_length": nipple}))
    findings, steps = sheet.book.findings, sheet.book.working or []
    told = [*sheet.book.settled, *(str(one.pointer) for one in findings), *(step.pointer for step in steps)]
    assert [pointer for pointer in told if not places(SCHEMA, pointer)] == []
    assert all(one.pointer for one in findings)


def test_findings_are_about_the_part_they_are_found_in() -> None:
    _, sheet = asked(*AWKWARD, nipple_length=quantity(30, "in"))
    where = {(finding.code, finding.pointer) for finding in sheet.book.findings}
    assert where >= {
        ("use_2_row", "#/runs/0/wires/1/cable/insulation"),
        ("jam_ratio_in_band", "#/runs/1/wires"),
        ("measured_bore", "#/runs/1/conduit/inside_diameter"),
        ("fill_exceeded", "#/runs/2/wires"),
        ("not_even_one", "#/runs/2/spare"),
        ("no_size_complies", "#/runs/3/wires"),
        ("third_would_pass", "#/runs/4/wires"),
        ("rounded_up", "#/runs/5/wires"),
        ("too_long_for_a_nipple", "#/runs/0"),
    }
    assert set(sheet.book.settled) == {
        "#/runs/0/wires/0/cable/stranding",
        "#/runs/3/spare/stranding",
        "#/practice/spare_percent",
    }


def test_what_was_assumed_can_be_given_back_in_its_place() -> None:
    body, sheet = asked(*AWKWARD)
    again = Worksheet(US)
    assess(READ(json.dumps(completed(body, sheet.book)).encode()), again)
    assert again.assumptions == []


def test_faults_of_all_runs_come_at_once_and_point_right() -> None:
    bad = [
        GOOD | {"conduit": pvc("3") | {"type": "ent"}, "other_type": "pvc_db_60"},
        GOOD | {"conduit": pvc("1/2"), "wires": [cable(0.9, 1), listed("THHN", "1000 kcmil", 1)]},
        GOOD | {"conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}},
        GOOD | {"wires": [bare("500 kcmil", 1, stranding="solid"), listed("USE-2", "250 kcmil", 1, "compact")]},
        GOOD | {"spare": listed("THHN", "2000 kcmil")},
    ]
    with pytest.raises(UnanswerableError) as refused:
        asked(*bad)
    pointers = {fault.pointer for fault in refused.value.faults}
    assert pointers == {
        "#/runs/0/conduit/trade_size",
        "#/runs/0/other_type",
        "#/runs/1/wires/0/cable/diameter/value",
        "#/runs/1/wires/1/cable/size",
        "#/runs/2/conduit/type",
        "#/runs/3/wires/0/cable/stranding",
        "#/runs/3/wires/1/cable/insulation",
        "#/runs/4/spare/size",
    }
    assert [pointer for pointer in pointers if not places(SCHEMA, pointer)] == []
