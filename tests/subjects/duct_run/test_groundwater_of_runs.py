"""Groundwater where a run lies: water in its trench, and empty ducts that nothing was asked to hold down."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, faults, quantity
from tests.subjects.duct_run.runs import buried, listed
from tests.subjects.duct_run.test_runs_of_several_conduits import run, stretch

EARTH = {"traffic": "none", "embedment": "coarse_grained", "compaction": "moderate"}
WET = {"groundwater_depth": quantity(0, "ft")}


def six_ducts(*stretches: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Give six empty ducts of 6 in under 26 in of earth."""
    laid = stretches or (stretch(buried(26), name="lot"),)
    return run(*laid, bank={"conduit": listed("6"), "tiers": [3, 3]}, **more)


def unjudged(answer: dict[str, Any]) -> list[tuple[str, str]]:
    return [(one["pointer"], one["message"]) for one in answer["findings"] if one["code"] == "flotation_not_judged"]


def in_the_trench(answer: dict[str, Any]) -> int:
    return [one["code"] for one in answer["cautions"]].count("water_in_the_trench")


@pytest.mark.parametrize("more", [{}, {"flotation": {"medium": "groundwater"}}])
def test_whether_empty_ducts_float_is_not_judged_without_an_earth_load(more: dict[str, Any]) -> None:
    answer = ask("duct-run", six_ducts(site=WET, **more))
    assert answer["verdict"] == "not_judged"
    [(pointer, message)] = unjudged(answer)
    assert pointer == "#/stretches/0"
    assert message == (
        "Lot: Groundwater stands above the bottom of this stretch: whether the ducts float when they are empty was not "
        "judged; give earth_load."
    )


def test_an_earth_load_of_the_run_or_of_the_stretch_judges_whether_they_float() -> None:
    for given in (six_ducts(site=WET, earth_load=EARTH), six_ducts(stretch(buried(26), earth_load=EARTH), site=WET)):
        answer = ask("duct-run", given)
        assert unjudged(answer) == []
        [loads] = answer["result"]["stretches"][0]["earth_loads"]
        assert loads["in_service"]["verdict"] == "complies"


def test_groundwater_asked_for_whose_depth_is_not_given_is_not_judged() -> None:
    answer = ask("duct-run", six_ducts(flotation={"medium": "groundwater"}))
    [(_, message)] = unjudged(answer)
    assert "How deep the groundwater stands is not given" in message
    assert message.endswith("give it in site, and give earth_load.")
    assert in_the_trench(answer) == 0


def test_water_in_the_trench_is_cautioned_of_once_and_only_where_it_stands_above_the_floor() -> None:
    # derived: 26 in of earth, two ducts of 6.625 in with 2 in between, 3 in of bedding: the floor lies 44.25 in deep,
    # and the lowest duct 41.25 in
    two = (stretch(buried(26), name="a"), stretch(buried(26), name="b"))
    for inches, water, wet in ((0, 1, True), (41, 1, True), (42, 1, False), (44, 1, False), (44.5, 0, False)):
        answer = ask("duct-run", six_ducts(*two, site={"groundwater_depth": quantity(inches, "in")}))
        assert in_the_trench(answer) == water, inches
        assert bool(unjudged(answer)) is wet, inches


def test_steel_that_sinks_is_not_asked_whether_it_floats() -> None:
    # a conduit of 2.375 in displaces 62.4 pi/4 (2.375/12)^2 = 1.92 lb/ft of water, and weighs 3.5 here
    steel = run(stretch(buried(26)), bank={"conduit": listed("2", "rmc"), "tiers": [1]}, site=WET)
    [(_, message)] = unjudged(ask("duct-run", steel))
    assert message.endswith("give duct_mass_per_length in flotation, and ask a structural engineer.")
    answer = ask("duct-run", steel | {"flotation": {"duct_mass_per_length": quantity(3.5, "lb/ft")}})
    assert unjudged(answer) == []
    assert in_the_trench(answer) == 1


def test_a_burial_duct_of_no_known_listing_is_told_what_a_run_takes() -> None:
    duct = {
        "kind": "measured",
        "type": "pvc_db_60",
        "inside_diameter": quantity(4.2, "in"),
        "outside_diameter": quantity(4.5, "in"),
    }
    cable = {"kind": "listed", "insulation": "XHHW-2", "size": "4/0 AWG", "material": "copper"}
    circuit = {"ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": [{"count": 3, "cable": cable}]}
    answer = ask("duct-run", run(stretch(buried(30)), bank={"conduit": duct, "tiers": [1]}, circuits=[circuit]))
    [found] = [one for one in answer["findings"] if one["code"] == "listing_not_judged"]
    assert "listed_for_direct_burial" not in found["message"]
    assert found["message"].endswith(
        "ask its maker for the listing, encase it, or take conduit of a type for direct burial, such as "
        "pvc_schedule_40."
    )


def assumed(answer: dict[str, Any]) -> list[str]:
    return [one for told in answer["assumptions"] for one in told["pointers"] if one.endswith("/groundwater_depth")]


@pytest.mark.parametrize("feet", [0, 2.5, 30])
@pytest.mark.parametrize("of_the_run", [True, False])
def test_one_groundwater_stands_under_a_run_and_all_of_it_is_held_against_that(
    feet: float, *, of_the_run: bool
) -> None:
    site = {"groundwater_depth": quantity(feet, "ft")}
    laid = () if of_the_run else (stretch(buried(26), earth_load=EARTH),)
    answer = ask("duct-run", six_ducts(*laid, site=site, **({"earth_load": EARTH} if of_the_run else {})))
    [found] = answer["result"]["stretches"]
    [loads] = found["earth_loads"]
    assert assumed(answer) == []
    # the lowest of two tiers ends 26 + 2 x 6.625 + 2 in below grade, 41.25 in (derived)
    stands = feet * 12 < 41.25
    assert (loads["in_service"]["uplift_per_length"]["value"] > 0) is stands
    assert ("groundwater_flotation" in found) is stands
    assert in_the_trench(answer) == stands


def test_an_earth_load_has_no_groundwater_of_its_own_beside_that_of_the_site() -> None:
    own = EARTH | {"groundwater_depth": quantity(30, "ft")}
    asked = six_ducts(stretch(buried(26), earth_load=own), earth_load=own, site=WET)
    assert sorted((one["code"], one["pointer"]) for one in faults("duct-run", asked)) == [
        ("unknown_member", "#/earth_load/groundwater_depth"),
        ("unknown_member", "#/stretches/0/earth_load/groundwater_depth"),
    ]


def test_groundwater_that_an_earth_load_assumes_is_that_of_the_site_and_floats_all() -> None:
    answer = ask("duct-run", six_ducts(earth_load=EARTH), "request=completed")
    assert assumed(answer) == ["#/site/groundwater_depth"]
    assert answer["request"]["site"]["groundwater_depth"] == quantity(0, "ft")
    given = ask("duct-run", six_ducts(earth_load=EARTH, site=WET))
    assert answer["result"] == given["result"]
    assert "groundwater_flotation" in answer["result"]["stretches"][0]
    assert assumed(ask("duct-run", six_ducts())) == []
