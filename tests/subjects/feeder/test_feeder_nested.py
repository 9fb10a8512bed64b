"""Ampacity and voltage drop under one form that has their parts elsewhere: everything told points there."""

from __future__ import annotations

import json
from typing import Annotated, Any

import pytest
from ductrun.engineering.bank import Envelope, bare, encased
from ductrun.kit.forms import Depth, Form, Omissible, RunLength
from ductrun.kit.reading import reader_of
from ductrun.kit.telling import METRIC
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.circuits import Loading, load_of
from ductrun.subjects.feeder.dropping import Drop, Dropping, conductor_in, drop
from ductrun.subjects.feeder.findings import report
from ductrun.subjects.feeder.rating import Ampacity, Rating, rate
from ductrun.subjects.feeder.studies import study
from ductrun.subjects.feeder.voltage_drop import report as report_drop
from ductrun.subjects.feeder.walls import walls_of
from ductrun.subjects.feeder.working import show
from ductrun.subjects.parts.bank import DuctBank, bank_of
from ductrun.subjects.parts.cables import PulledLines
from ductrun.subjects.parts.duct_names import DuctName, ducts_of
from ductrun.subjects.parts.envelope import AskedPour, ConcreteCover, concrete_of
from pydantic import Field

from tests.asking import quantity, result
from tests.subjects.feeder.banks import WIRE, bank, circuit
from tests.subjects.nested import pointer_of, refused_at, strays, told_by


class Site(Form):
    """The place."""

    earth: Rating = Field(description="What the bank lies in.")
    over: Depth = Field(description="Earth over it.")
    around: Omissible[ConcreteCover] = Field(default=None, description="Concrete outside the ducts.")


class Feeder(Form):
    """A circuit of the run."""

    where: Annotated[list[DuctName], Field(max_length=20)] = Field(description="Its ducts.")
    wires: PulledLines = Field(description="What lies in each.")
    loading: Loading = Field(description="How they are loaded.")
    losing: Dropping = Field(description="What it feeds.")


class Run(Form):
    """A bank with its feeders, the place given once."""

    length: RunLength = Field(description="Its length.")
    built: DuctBank = Field(description="Its bank.")
    site: Site = Field(description="The place.")
    feeders: Annotated[list[Feeder], Field(max_length=20)] = Field(description="Its circuits.")


READ = reader_of(Run)
WIRES = [{"count": 3, "cable": WIRE}]


def feeder(*where: str, amperes: float = 320, wires: Any = WIRES, **loading: Any) -> dict[str, Any]:
    return {
        "where": list(where),
        "wires": wires,
        "loading": {"current": quantity(amperes, "A"), **loading},
        "losing": {"voltage": quantity(480, "V"), "current": quantity(amperes, "A"), "limit_percent": 1},
    }


ASKED: dict[str, Any] = {
    "length": quantity(300, "ft"),
    "built": bank([2, 2])["bank"],
    "site": {"earth": {"method": "both"}, "over": quantity(30, "in")},
    "feeders": [feeder("1-1"), feeder("1-2", load_factor_percent=60)],
}


def envelope_of(given: Any, sheet: Worksheet, *, direct: bool) -> Envelope:
    place, around = sheet.within("built"), sheet.within("site/around")
    placed = bank_of(given.built, place)
    if direct:
        return bare(placed)
    return encased(
        placed, concrete_of(AskedPour(given.built, place, given.site.around, around, None, place)), stepped=False
    )


def asked(*, direct: bool = False, **changes: Any) -> tuple[Worksheet, Ampacity, list[Drop]]:
    sheet = Worksheet(METRIC, working=True)
    given = READ(json.dumps(ASKED | changes).encode())
    envelope = envelope_of(given, sheet, direct=direct)
    walls = walls_of(given.built, envelope.bank, sheet.within("built"))
    loads, drops = [], []
    for index, one in enumerate(given.feeders):
        place = sheet.within(f"feeders/{index}")
        where, wires = place.within("where"), place.within("wires")
        ducts = ducts_of(one.where, envelope.bank, where)
        loads.append(load_of(one.loading, None, ducts, where, one.wires, wires, place.within("loading")))
        losing = place.within("losing")
        drops.append(drop(one.losing, conductor_in(one.wires, wires), given.length.si, losing))
        report_drop(one.losing, drops[-1], losing)
    earth = sheet.within("site/earth")
    found = rate(given.site.earth, envelope, walls, given.site.over.si, loads, earth)
    report(found, earth)
    study(given.site.earth.studies, envelope, found.solved, earth)
    show(found, earth)
    return sheet, found, drops


def test_everything_told_names_a_member_of_the_form_that_holds_it() -> None:
    device = quantity(400, "A")
    hot = feeder("1-2", amperes=450, load_factor_percent=60, overcurrent_device=device)
    sheet, _, _ = asked(feeders=[feeder("1-1", amperes=450), hot])
    told = told_by(sheet)
    assert strays(Run, told) == []
    assert {
        "#/site/earth/earth_thermal_resistivity",
        "#/site/earth/concrete_thermal_resistivity",
        "#/site/earth/method",
        "#/site/around/top",
        "#/feeders/0/loading/system",
        "#/feeders/0/loading/current",
        "#/feeders/0/losing/power_factor",
        "#/feeders/0/losing/limit_percent",
    } <= told
    assert pointer_of(sheet, "no_grounding_conductor") == "#/feeders/1/wires/0/cable"
    assert pointer_of(sheet, "methods_apart") == "#/site/earth/method"


def test_bare_ducts_of_steel_in_hot_earth_are_told_where_they_are_given() -> None:
    earth = {"duct_material": "steel", "earth_temperature": quantity(45, "degC"), "studies": ["smallest_size"]}
    sheet, _, _ = asked(direct=True, site=ASKED["site"] | {"earth": earth})
    assert strays(Run, told_by(sheet)) == []
    assert pointer_of(sheet, "steel_conduit_not_judged") == "#/feeders/0/where"


def test_the_cores_give_what_the_operations_give() -> None:
    _, found, [first, _] = asked(feeders=[feeder("1-1"), feeder("1-2")], site=ASKED["site"] | {"earth": {}})
    whole = bank(
        [2, 2],
        *({**circuit(name, amperes=320), "temperature_limit": quantity(90, "degC")} for name in ("1-1", "1-2")),
    )
    told = result("ampacity", whole, "units=metric")
    assert found.solved.current_factor == pytest.approx(told["current_factor"])
    assert found.circuits[0].conductor - 273.15 == pytest.approx(told["circuits"][0]["conductor_temperature"]["value"])
    single = {
        "voltage": quantity(480, "V"),
        "current": quantity(320, "A"),
        "length": quantity(300, "ft"),
        "cable": WIRE,
    }
    assert first.drop == pytest.approx(result("voltage-drop", single)["drop"]["value"])


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"feeders": [feeder("1-1"), feeder("1-1")]}, {"#/feeders/1/where/0": "duct_loaded_twice"}),
        ({"feeders": [feeder("9-1")]}, {"#/feeders/0/where/0": "no_such_duct"}),
        (
            {"feeders": [feeder("1-1", loaded_conductor_count=2)]},
            {"#/feeders/0/loading/loaded_conductor_count": "conductors_make_no_sets"},
        ),
        (
            {"feeders": [feeder("1-1", wires=[{"count": 3, "cable": WIRE | {"size": "1250 kcmil"}}])]},
            {"#/feeders/0/wires/0/cable/size": "impedance_not_listed"},
        ),
        ({"feeders": [feeder("1-1", amperes=2500)]}, {"#/feeders/0/loading/current/value": "no_steady_temperature"}),
    ],
)
def test_a_fault_lies_where_its_member_was_given(changes: dict[str, Any], expected: dict[str, str]) -> None:
    with pytest.raises(UnanswerableError) as refused:
        asked(**changes)
    assert refused_at(refused.value) == expected
    assert strays(Run, expected) == []
