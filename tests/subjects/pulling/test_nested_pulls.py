"""A pull under another form: practice, cables, conduit and route lie elsewhere, and everything told points there."""

from __future__ import annotations

import copy
import json
from typing import Annotated, Any

import pytest
from ductrun.kit.completing import completed
from ductrun.kit.forms import Form, Omissible
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import US
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_set import settle_cables
from ductrun.subjects.parts.cables import CableLines
from ductrun.subjects.parts.conduit import Conduit
from ductrun.subjects.parts.route import Route, place_route
from ductrun.subjects.pulling.assessment import PullAssessment
from ductrun.subjects.pulling.cuts import BoxPositions
from ductrun.subjects.pulling.practice import PullPractice
from ductrun.subjects.pulling.pull_plan import plan
from ductrun.subjects.pulling.pull_tension import Studying, pull
from ductrun.subjects.pulling.settling import settle
from pydantic import Field

from tests.asking import EXAMPLES, ask, quantity
from tests.properties.requests import places


class Practice(PullPractice, Studying):
    """How every circuit is pulled."""

    boxes: Omissible[BoxPositions] = Field(default=None, description="Where pull points may stand.")


class Circuit(Form):
    """One circuit."""

    cables: CableLines = Field(description="Its cables.")


class Ducts(Form):
    """The ducts and where they run."""

    duct: Conduit = Field(description="The conduit.")
    sections: Route = Field(description="The route.")


class Job(Form):
    """Circuits pulled through one run by one practice."""

    pulling: Practice = Field(description="The practice.")
    circuits: Annotated[list[Circuit], Field(min_length=1, max_length=9)] = Field(description="The circuits.")
    run: Ducts = Field(description="The run.")


EXAMPLE = EXAMPLES["pull-tension"]
DOWN = [
    {"kind": "straight", "length": quantity(50, "ft"), "grade": quantity(0, "deg")},
    {
        "kind": "vertical_bend",
        "radius": quantity(3, "ft"),
        "entry_grade": quantity(0, "deg"),
        "exit_grade": quantity(-90, "deg"),
    },
    {"kind": "straight", "length": quantity(400, "ft")},
]
ASKED: dict[str, Any] = {
    "pulling": {},
    "circuits": [{"cables": EXAMPLE["cables"]}, {"cables": EXAMPLE["cables"]}],
    "run": {"duct": EXAMPLE["conduit"], "sections": DOWN},
}
READ = reader_of(Job)


def assess(job: Any, sheet: Worksheet) -> list[PullAssessment]:
    found, faults = [], Gathering()
    route = place_route(job.run.sections, job.run.duct, sheet.within("run/sections"), sheet.within("run/duct"))
    for index, circuit in enumerate(job.circuits):
        with faults:
            cables = settle_cables(circuit.cables, sheet.within(f"circuits/{index}/cables"))
            practice = sheet.within("pulling")
            pulling = settle(job.pulling, cables, route, practice)
            found.append(pull(job.pulling, pulling, practice))
            plan(job.pulling.boxes, pulling, practice)
    faults.stop()
    return found


def asked(body: dict[str, Any]) -> tuple[list[PullAssessment], Worksheet]:
    sheet = Worksheet(US, working=True)
    return assess(READ(json.dumps(body).encode()), sheet), sheet


def test_everything_told_of_a_nested_pull_points_to_its_place() -> None:
    _, sheet = asked(ASKED)
    schema = Job.model_json_schema()
    told = [*sheet.book.settled, *(str(one.pointer) for one in sheet.book.findings if one.pointer)]
    told += [step.pointer for step in sheet.book.working or ()]
    assert [pointer for pointer in told if not places(schema, pointer)] == []
    where = {(finding.code, finding.pointer) for finding in sheet.book.findings}
    assert ("brake_not_judged", "#/pulling/brake_limit") in where
    assert "#/run/sections/1/made" in sheet.book.settled
    assert "#/run/sections/2" in {step.pointer for step in sheet.book.working or ()}
    assert [one.code for one in sheet.book.cautions].count("rope_under_tension") == 1


def test_faults_of_a_nested_pull_point_to_their_places() -> None:
    bad = copy.deepcopy(ASKED)
    bad["circuits"][1]["cables"] = [{"count": 60, "cable": line["cable"]} for line in EXAMPLE["cables"] * 2]
    bad["pulling"]["friction_range"] = {"low": 0.9, "high": 1.0}
    with pytest.raises(UnanswerableError) as refused:
        asked(bad)
    assert {fault.pointer for fault in refused.value.faults} == {"#/circuits/1/cables", "#/pulling/friction_range/low"}
    close = copy.deepcopy(ASKED)
    close["pulling"]["profile_spacing"] = quantity(0.25, "ft")
    close["run"]["sections"] = [*DOWN, DOWN[0] | {"length": quantity(600, "ft"), "grade": quantity(-90, "deg")}]
    with pytest.raises(UnanswerableError) as refused:
        asked(close)
    assert {fault.pointer for fault in refused.value.faults} == {"#/pulling/profile_spacing"}


def test_a_nested_pull_completed_assumes_nothing_and_is_that_of_the_single_call() -> None:
    found, sheet = asked(ASKED)
    again, other = asked(completed(ASKED, sheet.book))
    assert other.assumptions == []
    assert [one.forward.pulling.case for one in again] == [one.forward.pulling.case for one in found]
    single = {"cables": EXAMPLE["cables"], "conduit": EXAMPLE["conduit"], "sections": DOWN}
    alone = ask("pull-tension", single)["result"]["tension"]["value"]
    assert US.force(found[1].forward.pulling.case.final).value == alone
