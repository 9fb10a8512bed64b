"""Cover: every cell of its tables, and what is said of a run that lies too shallow."""

from __future__ import annotations

import copy
from typing import Annotated, Any

import pytest
from ductrun.kit.forms import Depth, Form
from ductrun.kit.telling import US
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import BurialLocation, VoltageClass, WiringMethod
from ductrun.subjects.ground.cover import judge_cover
from ductrun.subjects.ground.least_cover import Buried, Places
from ductrun.units import Length
from pydantic import Field

from tests.asking import EXAMPLES, ask, assumed, codes, problem, quantity, result
from tests.subjects.nested import refused_at, strays, told_by


def example(name: str, **changes: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLES[name]) | changes


def refused(name: str, request: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem(name, request).errors or ()}


# NFPA 70, Table 300.5 and Table 300.50 / 305.15, in inches: the columns of the two tables in print order
COVER_TO_1000_V = {
    "not_otherwise_specified": (24, 6, 18, 12, 6),
    "trench_below_2_in_concrete": (18, 6, 12, 6, 6),
    "under_building": (0, 0, 0, 0, 0),
    "under_4_in_exterior_slab_no_vehicles": (18, 4, 4, 6, 6),
    "street_road_driveway_parking_lot": (24, 24, 24, 24, 24),
    "dwelling_driveway": (18, 18, 18, 12, 18),
    "airport_runway": (18, 18, 18, 18, 18),
}
METHODS = ("direct_buried_cable", "rmc_imc", "nonmetallic_raceway", "gfci_residential", "low_voltage_control")
COVER_ABOVE = {
    "over_1_kv_to_22_kv": (30, 6, 18),
    "over_22_kv_to_40_kv": (36, 6, 24),
    "over_40_kv": (42, 6, 30),
}


@pytest.mark.parametrize("location", COVER_TO_1000_V)
@pytest.mark.parametrize("column", range(5))
def test_every_cell_of_the_cover_table_to_1000_volts(location: str, column: int) -> None:
    request = example("cover", location=location, wiring_method=METHODS[column])
    assert result("cover", request)["minimum_cover"] == quantity(COVER_TO_1000_V[location][column], "in")


@pytest.mark.parametrize("voltage", COVER_ABOVE)
@pytest.mark.parametrize("column", range(3))
def test_every_cell_of_the_cover_table_above_1000_volts(voltage: str, column: int) -> None:
    def cover(location: str) -> float:
        request = example("cover", voltage_class=voltage, location=location, wiring_method=METHODS[column])
        found: float = result("cover", request)["minimum_cover"]["value"]
        return found

    general = COVER_ABOVE[voltage][column]
    assert cover("not_otherwise_specified") == cover("trench_below_2_in_concrete") == general
    assert cover("under_building") == (general if column == 0 else 4)
    assert cover("airport_runway") == max(18, general)
    assert cover("street_road_driveway_parking_lot") == max(24, general)


def test_above_1000_volts_a_cable_under_a_building_needs_a_raceway() -> None:
    request = example(
        "cover", voltage_class="over_40_kv", location="under_building", wiring_method="direct_buried_cable"
    )
    assert "only_in_a_raceway" in codes(ask("cover", request), "caution")
    assert refused("cover", request | {"wiring_method": "low_voltage_control"}) == {
        "#/wiring_method": "not_above_1000_v"
    }


def test_a_run_too_shallow_is_a_violation_with_both_figures() -> None:
    request = example("cover", location="not_otherwise_specified", cover=quantity(12, "in"))
    [shallow] = [found for found in ask("cover", request)["findings"] if found["severity"] == "violation"]
    assert (shallow["code"], shallow["actual"], shallow["limit"]) == (
        "too_shallow",
        quantity(12, "in"),
        quantity(18, "in"),
    )
    assert "too_shallow" not in codes(ask("cover", request | {"cover": quantity(18, "in")}))
    assert "too_shallow" not in codes(ask("cover", request | {"cover": quantity(457.2, "mm")}))


def test_a_raceway_not_listed_for_direct_burial_needs_its_concrete() -> None:
    request = example("cover", listed_for_direct_burial=False, encased=False)
    assert "needs_concrete" in codes(ask("cover", request), "violation")
    encased = ask("cover", request | {"encased": True})
    assert "concrete_not_judged" in codes(encased, "caution")
    assert "encasement_does_not_reduce" in codes(encased)
    assert encased["result"]["concrete_required"] == quantity(2, "in")


def test_cover_is_told_in_the_system_asked_for() -> None:
    request = example("cover", location="not_otherwise_specified")
    assert result("cover", request, "units=metric")["minimum_cover"] == {"value": pytest.approx(457.2), "unit": "mm"}


def test_an_excavation_is_always_cautioned() -> None:
    assert "excavation_safety" in codes(ask("cover", example("cover")), "caution")


def test_every_finding_of_a_cover_says_where() -> None:
    request = example(
        "cover",
        voltage_class="over_40_kv",
        location="under_building",
        wiring_method="direct_buried_cable",
        cover=quantity(6, "in"),
    )
    found = {finding["code"]: finding.get("pointer") for finding in ask("cover", request)["findings"]}
    assert found == {
        "only_in_a_raceway": "#/wiring_method",
        "encasement_does_not_reduce": "#/encased",
        "too_shallow": "#/cover",
    }


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({"cover": quantity(24, "in")}, "complies"),
        ({"cover": quantity(23, "in")}, "violates"),
        ({"cover": None}, None),
        ({"cover": quantity(24, "in"), "listed_for_direct_burial": False}, "not_judged"),
        ({"cover": None, "listed_for_direct_burial": False}, "not_judged"),
        ({"cover": quantity(23, "in"), "listed_for_direct_burial": False}, "violates"),
        ({"cover": quantity(24, "in"), "listed_for_direct_burial": False, "encased": False}, "violates"),
        ({"wiring_method": "direct_buried_cable", "location": "under_building"}, "not_judged"),
        ({"wiring_method": "low_voltage_control", "location": "under_building", "cover": None}, "not_judged"),
        ({"wiring_method": "rmc_imc", "location": "under_building"}, "complies"),
        (
            {"wiring_method": "direct_buried_cable", "location": "under_building", "voltage_class": "over_40_kv"}
            | {"cover": quantity(42, "in")},
            "not_judged",
        ),
        (
            {
                "wiring_method": "rmc_imc",
                "location": "under_4_in_exterior_slab_no_vehicles",
                "voltage_class": "over_40_kv",
            },
            "complies",
        ),
    ],
)
def test_a_cover_complies_only_where_all_that_decides_was_judged(changes: dict[str, Any], verdict: str | None) -> None:
    request = {name: value for name, value in example("cover", **changes).items() if value is not None}
    answer = ask("cover", request)
    assert answer.get("verdict") == verdict
    if verdict == "not_judged":
        assert {"concrete_not_judged", "only_in_a_raceway"} & set(codes(answer, "caution")), "a finding names it"


def test_sentences_follow_the_units_of_the_answer() -> None:
    request = example("cover", listed_for_direct_burial=False)
    found = {one["code"]: one for one in ask("cover", request, "units=metric")["findings"]}
    assert "at least 50.8 mm:" in found["concrete_not_judged"]["message"]
    assert "in of concrete" not in found["encasement_does_not_reduce"]["message"]


class Duct(Form):
    """What is laid."""

    method: WiringMethod = Field(description="What is buried.")
    listed: bool = Field(description="Whether it may lie in earth.")
    above: Depth = Field(description="Concrete above it.")
    around: Depth = Field(description="Concrete beside and below it.")


class Place(Form):
    """Where it is laid."""

    where: BurialLocation = Field(description="Where.")
    earth: Depth = Field(description="Earth over it.")
    in_concrete: bool = Field(description="Whether it is encased.")


class Laid(Form):
    """A duct at several places of a run."""

    duct: Duct = Field(description="The duct.")
    circuit: VoltageClass = Field(description="Its voltage.")
    stretches: Annotated[list[Place], Field(max_length=20)] = Field(description="Its places.")


PLACES = Places(
    method="duct/method",
    location="stretches/1/where",
    voltage="circuit",
    encased="stretches/1/in_concrete",
    listed="duct/listed",
    cover="stretches/1/earth",
    concrete="duct/above",
    around="duct/around",
)


def laid(
    voltage: str,
    method: str = "nonmetallic_raceway",
    where: str = "trench_below_2_in_concrete",
    above: Length | None = None,
    around: Length | None = None,
) -> Worksheet:
    """Judge a shallow duct that is not listed, whose members lie all over a form."""
    sheet = Worksheet(US, working=True)
    kind, location, volts = WiringMethod(method), BurialLocation(where), VoltageClass(voltage)
    judge_cover(Buried(kind, location, volts, True, False, PLACES, above, around), Length.parse(1, "in"), sheet)
    return sheet


def test_everything_told_of_a_cover_points_to_where_it_was_given() -> None:
    sheets = [
        laid("up_to_1000_v"),
        laid("over_40_kv"),
        laid("over_40_kv", above=Length.parse(1, "in")),
        laid("over_40_kv", around=Length.parse(1, "in")),
        laid("over_40_kv", "direct_buried_cable", "under_building"),
        laid("up_to_1000_v", "direct_buried_cable", "under_building"),
    ]
    told = set().union(*(told_by(sheet) for sheet in sheets))
    assert strays(Laid, told) == []
    found = {pointer for sheet in sheets for pointer in (str(one.pointer) for one in sheet.book.findings)}
    assert found == {f"#/{place}" for place in PLACES}
    with pytest.raises(UnanswerableError) as refused_here:
        laid("over_40_kv", "low_voltage_control")
    assert refused_at(refused_here.value) == {"#/duct/method": "not_above_1000_v"}


STREET = {"wiring_method": "direct_buried_cable", "location": "street_road_driveway_parking_lot"}


def test_a_cable_above_40_kv_under_a_street_lies_as_deep_as_anywhere() -> None:
    """The table prints 24 in under traffic and 42 in elsewhere: the larger, with a caution that names both."""
    answer = ask("cover", example("cover", **STREET, voltage_class="over_40_kv", cover=quantity(36, "in")))
    assert answer["result"]["minimum_cover"] == quantity(42, "in")
    assert answer["verdict"] == "violates"
    [found] = [one for one in answer["findings"] if one["code"] == "larger_of_two_covers"]
    assert (found["severity"], found["pointer"], found["limit"]) == ("caution", "#/location", quantity(42, "in"))
    assert "24 in" in found["message"]
    assert "42 in" in found["message"]


def test_up_to_1000_volts_no_street_has_two_figures() -> None:
    assert "larger_of_two_covers" not in codes(ask("cover", example("cover", **STREET)))


@pytest.mark.parametrize(("inches", "margin"), [(30, 6), (24, 0), (21.5, -2.5)])
def test_a_cover_as_built_has_its_margin(inches: float, margin: float) -> None:
    found = result("cover", example("cover", cover=quantity(inches, "in")))
    assert found["cover_over_raceway"] == quantity(inches, "in")
    assert found["margin"] == {"value": pytest.approx(margin), "unit": "in"}


def test_no_cover_has_no_margin() -> None:
    request = example("cover")
    del request["cover"]
    assert {"cover_over_raceway", "margin"} & set(result("cover", request)) == set()


def test_the_rules_measure_through_the_concrete_above_a_raceway() -> None:
    """Derived: 22 in of earth over 3 in of concrete is 25 in over the raceway, one more than the 24 in required."""
    request = example("cover", cover=quantity(22, "in"), concrete_above=quantity(3, "in"))
    answer = ask("cover", request)
    assert answer["verdict"] == "complies"
    assert answer["result"]["cover_over_raceway"] == quantity(25, "in")
    assert answer["result"]["margin"]["value"] == pytest.approx(1)
    alone = ask("cover", example("cover", cover=quantity(22, "in")))
    assert alone["verdict"] == "violates"
    assert (alone["result"]["cover_over_raceway"], alone["assumptions"]) == (quantity(22, "in"), []), "none is counted"


def test_what_is_not_encased_has_no_concrete_above_it() -> None:
    bare = example("cover", encased=False, concrete_above=quantity(3, "in"))
    assert refused("cover", bare) == {"#/concrete_above": "contradiction"}
    assert ask("cover", bare | {"concrete_above": quantity(0, "in")})["verdict"] == "complies"


def test_too_little_concrete_above_an_unlisted_raceway_is_a_violation() -> None:
    request = example("cover", listed_for_direct_burial=False)
    thin = ask("cover", request | {"concrete_above": quantity(1.5, "in")})
    [found] = [one for one in thin["findings"] if one["code"] == "needs_concrete"]
    assert (thin["verdict"], found["severity"], found["actual"]) == ("violates", "violation", quantity(1.5, "in"))
    assert found["pointer"] == "#/concrete_above"
    assert ask("cover", request | {"concrete_above": quantity(2, "in")})["verdict"] == "not_judged", "nor its sides"


def test_a_cover_that_reads_like_the_least_is_told_to_the_digit_that_parts_them() -> None:
    answer = ask("cover", example("cover", cover=quantity(23.999999, "in")))
    [shallow] = [one for one in answer["findings"] if one["code"] == "too_shallow"]
    assert "A cover of 23.999999 in is less than the 24 in required." in shallow["message"]


def test_a_raceway_of_which_nobody_says_that_it_is_listed_is_not_judged() -> None:
    request = {name: one for name, one in example("cover", encased=False).items() if name != "listed_for_direct_burial"}
    answer = ask("cover", request)
    assert answer["verdict"] == "not_judged"
    [found] = [one for one in answer["findings"] if one["code"] == "listing_not_judged"]
    assert found["pointer"] == "#/listed_for_direct_burial"
    assert answer["result"]["concrete_required"] == quantity(2, "in")
    assert "#/listed_for_direct_burial" not in assumed(answer)


def test_cover_is_measured_from_the_raceway_and_not_from_its_concrete() -> None:
    """NFPA 70, note 1 to Table 300.5(A): between the top surface of the raceway and the top of finished grade."""
    told = result("cover", example("cover"))["measured_from"]
    assert told.startswith("from the top of the cable or raceway, not of its envelope")
    assert told.endswith("to the top of finished grade")


def test_a_cable_above_40_kv_at_an_airport_lies_as_deep_as_anywhere() -> None:
    """The table prints 18 in at an airport and 42 in elsewhere: the larger, with a caution that names both."""
    asked = example(
        "cover", **STREET | {"location": "airport_runway"}, voltage_class="over_40_kv", cover=quantity(18, "in")
    )
    answer = ask("cover", asked)
    assert (answer["result"]["minimum_cover"], answer["verdict"]) == (quantity(42, "in"), "violates")
    [found] = [one for one in answer["findings"] if one["code"] == "larger_of_two_covers"]
    assert found["message"].startswith("At an airport the table gives 18 in,")
    assert "42 in elsewhere" in found["message"]
    pipe = ask("cover", asked | {"wiring_method": "rmc_imc"})
    assert (pipe["result"]["minimum_cover"], codes(pipe).count("larger_of_two_covers")) == (quantity(18, "in"), 0)


def test_an_envelope_given_all_round_an_unlisted_raceway_is_judged() -> None:
    request = example("cover", listed_for_direct_burial=False)

    def around(above: float | None, beside: float | None) -> dict[str, Any]:
        given = {"concrete_above": above, "concrete_around": beside}
        return ask("cover", request | {name: quantity(one, "in") for name, one in given.items() if one is not None})

    assert around(3, 2)["verdict"] == "complies"
    assert "concrete_not_judged" not in codes(around(3, 2))
    [open_] = [one for one in around(3, None)["findings"] if one["code"] == "concrete_not_judged"]
    assert "how much there is beside or below it was not given" in open_["message"]
    assert around(None, 3)["verdict"] == "not_judged"
    thin = around(3, 1.5)
    [found] = [one for one in thin["findings"] if one["code"] == "needs_concrete"]
    assert (thin["verdict"], found["pointer"], found["actual"]) == (
        "violates",
        "#/concrete_around",
        quantity(1.5, "in"),
    )
    unsaid = {name: one for name, one in request.items() if name != "listed_for_direct_burial"}
    assert ask("cover", unsaid | {"concrete_above": quantity(1, "in")})["verdict"] == "not_judged"


def test_the_note_about_nonmetallic_raceways_stands_on_their_cover_alone() -> None:
    notes = {
        method: "table_note" in codes(ask("cover", example("cover", voltage_class="over_40_kv", wiring_method=method)))
        for method in METHODS[:3]
    }
    assert notes == {"direct_buried_cable": False, "rmc_imc": False, "nonmetallic_raceway": True}
