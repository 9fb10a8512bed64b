"""Loads, boxes and earth on a whole run: what only a run can say of them, and what it does not know."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, faults, quantity
from tests.properties.test_requests import check_given_back
from tests.subjects.duct_run.runs import BRIDGE, MANHOLES, buried, listed, single, straight, upright_bend

WIRE = {"kind": "listed", "insulation": "XHHW-2", "size": "500 kcmil", "material": "copper"}
STEEL = {
    "kind": "measured",
    "type": "rmc",
    "inside_diameter": quantity(4.05, "in"),
    "outside_diameter": quantity(4.5, "in"),
}
RUN: dict[str, Any] = {
    "bank": {"conduit": listed("4"), "tiers": [2, 2]},
    "circuits": [
        {
            "name": "A",
            "ducts": ["1-1"],
            "voltage": quantity(480, "V"),
            "cables": [{"count": 3, "cable": WIRE}],
            "load": {
                "current": quantity(340, "A"),
                "power_factor": 0.85,
                "temperature_limit": quantity(75, "degC"),
            },
        },
        {"name": "B", "ducts": ["2-2"], "same_as": "A"},
    ],
    "start": {"kind": "vault", "name": "V-1"},
    "stretches": [
        {
            "name": "first",
            "setting": buried(30),
            "length": quantity(200, "ft"),
            "pull_point": {"kind": "handhole", "name": "HH-2"},
        },
        {"name": "second", "setting": buried(60), "length": quantity(100, "ft")},
    ],
    "end": {"kind": "vault", "name": "V-3"},
}


def run_with(change: Any = None, **members: Any) -> dict[str, Any]:
    run = copy.deepcopy(RUN) | members
    if change is not None:
        change(run)
    return run


def found_in(answer: dict[str, Any], code: str) -> list[dict[str, Any]]:
    return [one for one in answer["findings"] if one["code"] == code]


def test_a_load_loses_its_voltage_over_the_length_of_its_circuit() -> None:
    [first, second] = ask("duct-run", RUN)["result"]["circuits"]
    # sqrt(3) x 340 A x 300 ft x (0.027 x 0.85 + 0.039 x sin(acos 0.85)) ohm/1000ft = 7.68 V, by the table (derived)
    assert first["length"] == quantity(300, "ft")
    assert first["voltage_drop"]["table_drop"]["value"] == pytest.approx(7.684, abs=5e-3)
    assert second["voltage_drop"] == first["voltage_drop"]


def test_the_deeper_stretch_carries_less() -> None:
    shallow, deep = (one["ampacity"] for one in ask("duct-run", RUN)["result"]["stretches"])
    assert deep["ampacity"]["value"] < shallow["ampacity"]["value"]
    assert [one["name"] for one in deep["circuits"]] == ["A", "B"]
    # 60 + (2 x 4.5 + 2)/2 (derived): the ducts lie 2 in apart
    assert deep["center_depth"]["value"] == pytest.approx(65.5)


def test_a_run_along_a_profile_is_rated_where_it_is_deepest() -> None:
    run = copy.deepcopy(MANHOLES)
    for circuit in run["circuits"]:
        circuit["cables"] = [{"count": 3, "cable": WIRE}]
        circuit.pop("same_as", None)
        circuit |= {"voltage": quantity(480, "V"), "load": {"current": quantity(100, "A")}}
    [stretch] = ask("duct-run", run)["result"]["stretches"]
    # 14.2 - 11.0 = 3.2 ft of earth at the start, the most, over an envelope of 4 x 5.563 + 2 x 3 + 4 + 8 (derived)
    assert stretch["ampacity"]["center_depth"]["value"] == pytest.approx(38.4 + (4 * 5.563 + 2 * 3 + 4 + 8) / 2)


def test_a_current_over_what_the_bank_carries_is_a_violation_that_names_circuit_and_stretch() -> None:
    run = run_with(lambda run: run["circuits"][0]["load"].update(current=quantity(600, "A")))
    answer = ask("duct-run", run)
    assert answer["verdict"] == "violates"
    hot = found_in(answer, "conductor_too_hot")
    assert {one["message"].split(":")[0] for one in hot} == {"A, B, first", "A, B, second"}
    assert {one["pointer"] for one in hot} == {"#/circuits/0/load/current"}


def test_a_load_by_its_power_is_its_current_at_the_voltage_of_the_circuit() -> None:
    load = {"power": quantity(225, "kW"), "power_factor": 0.85}
    answer = ask("duct-run", run_with(lambda run: run["circuits"][0].update(load=load)))["result"]
    # 225 000/(sqrt(3) x 480 x 0.85) = 318.4 A (derived)
    assert answer["circuits"][0]["voltage_drop"]["current"]["value"] == pytest.approx(318.39, abs=0.01)
    [rated, _] = answer["stretches"][0]["ampacity"]["circuits"]
    assert rated["current"]["value"] == pytest.approx(318.39, abs=0.01)


def test_a_load_without_a_current_is_asked_what_it_may_be() -> None:
    answer = ask("duct-run", run_with(lambda run: run["circuits"][0].update(load={})))["result"]
    assert "voltage_drop" not in answer["circuits"][0]
    bank = answer["stretches"][0]["ampacity"]
    assert bank["circuits"][0]["ampacity"] == bank["circuits"][0]["current"]


def test_a_run_without_loads_says_nothing_of_them() -> None:
    def unload(run: dict[str, Any]) -> None:
        del run["circuits"][0]["load"]

    answer = ask("duct-run", run_with(unload))
    assert all("ampacity" not in one for one in answer["result"]["stretches"])
    assert all("voltage_drop" not in one for one in answer["result"]["circuits"])
    assert all("earth_loads" not in one for one in answer["result"]["stretches"])
    told = [place for one in answer["assumptions"] for place in one["pointers"]]
    assert not [place for place in told if "rating" in place or "site/" in place or "earth_load" in place]


def test_a_power_circuit_without_a_load_beside_loaded_ones_is_not_judged() -> None:
    wires = {"cables": [{"count": 3, "cable": WIRE}], "voltage": quantity(480, "V")}
    answer = ask("duct-run", run_with(lambda run: run["circuits"].append({"name": "C", **wires})))
    [told] = found_in(answer, "load_not_given")
    assert told["pointer"] == "#/circuits/2"
    assert told["message"].startswith("C: No load is given")
    assert answer["verdict"] == "not_judged"
    ends = {"start": "V-1", "end": "HH-2"}
    apart = run_with(
        lambda run: (
            run["circuits"].append({"name": "C", "start": "HH-2", "end": "V-3", **wires}),
            run["circuits"][0].update(ends),
            run["circuits"][1].update(ends),
        )
    )
    assert found_in(ask("duct-run", apart), "load_not_given") == []


@pytest.mark.parametrize(
    ("change", "why"),
    [
        (lambda run: run["circuits"][0].update(cables=single(1.1, 2.0, "500 kcmil")), "the layers of the cables of A"),
        (lambda run: run["stretches"][1].update(setting={"kind": "above_ground"}), "it lies in air"),
        (lambda run: run["stretches"][1].update(setting={"kind": "existing"}), "the ducts that are there"),
        (
            lambda run: run["stretches"][1].update(setting={"kind": "bored", "cover": quantity(30, "in")}),
            "how its ducts lie in the bore",
        ),
    ],
)
def test_what_cannot_be_rated_is_not_judged_and_says_why(change: Any, why: str) -> None:
    answer = ask("duct-run", run_with(change))
    [told] = found_in(answer, "ampacity_not_judged")[-1:]
    assert why in told["message"]
    assert "ampacity" not in answer["result"]["stretches"][1]
    assert answer["result"]["circuits"][0]["voltage_drop"]["drop"]["value"] > 0
    assert answer["verdict"] in ("not_judged", "violates")


def test_a_circuit_in_steel_on_its_way_loses_what_it_would_in_steel() -> None:
    plastic = ask("duct-run", RUN)["result"]["circuits"][0]["voltage_drop"]
    riser = run_with(
        lambda run: run["stretches"].append(
            {"setting": {"kind": "above_ground"}, "conduit": STEEL, "length": quantity(1, "ft")}
        )
    )
    steel = ask("duct-run", riser)["result"]["circuits"][0]["voltage_drop"]
    # Chapter 9, Table 9: 500 kcmil has 0.039 ohm/1000ft of reactance in PVC, 0.048 in steel
    assert plastic["reactance"]["value"] == pytest.approx(0.039)
    assert steel["reactance"]["value"] == pytest.approx(0.048)


def test_the_earth_of_a_stretch_is_that_of_the_site_or_its_own() -> None:
    damp = run_with(site={"earth_thermal_resistivity": quantity(60, "degC.cm/W")})
    first, second = (one["ampacity"]["ampacity"]["value"] for one in ask("duct-run", damp)["result"]["stretches"])
    damp["stretches"][1]["rating"] = {"earth_thermal_resistivity": quantity(120, "degC.cm/W")}
    same, dry = (one["ampacity"]["ampacity"]["value"] for one in ask("duct-run", damp)["result"]["stretches"])
    assert same == first
    assert dry < second


def test_a_load_at_no_voltage_is_refused_at_its_circuit() -> None:
    def strip(run: dict[str, Any]) -> None:
        del run["circuits"][0]["voltage"]

    [told] = faults("duct-run", run_with(strip))  # that of B, which has all of A, is the same
    assert (told["pointer"], told["code"]) == ("#/circuits/0/voltage", "missing")


def test_more_loaded_ducts_than_one_answer_carries_are_refused() -> None:
    run = run_with()
    run["bank"]["tiers"] = [8, 4]
    run["circuits"] = [
        {**run["circuits"][0], "name": f"C {number}", "ducts": None, "load": {"current": quantity(50, "A")}}
        for number in range(12)
    ]
    for circuit in run["circuits"]:
        del circuit["ducts"]
    run["stretches"] = [{"setting": buried(24 + at), "length": quantity(10, "ft")} for at in range(41)]
    # 40 banks of 12 loaded ducts are 480, one more is too many (derived)
    told = faults("duct-run", run)
    assert [(one["pointer"], one["code"]) for one in told] == [("#/circuits", "too_many_loaded_ducts")]
    for stretch in run["stretches"]:
        stretch["setting"] = buried(24)
    assert ask("duct-run", run)["result"]["stretches"][40]["ampacity"]["ampacity"]["value"] > 50


def test_a_box_is_sized_for_what_passes_it() -> None:
    [_, stop, _] = ask("duct-run", RUN)["result"]["stops"]
    # eight times trade size 4, straight through (derived)
    assert stop["box"]["least_length"]["least"] == quantity(32, "in")
    assert stop["box"]["structure"] == "handhole"
    assert stop["box"]["least_length"]["pointers"] == ["#/stretches/0", "#/stretches/1"]


def test_ducts_that_leave_by_another_wall_turn() -> None:
    run = run_with(lambda run: run["stretches"][0]["pull_point"].update(exit_wall="top"))
    box = ask("duct-run", run)["result"]["stops"][1]["box"]
    assert {one["kind"] for one in box["pulls"]} == {"angle"}
    # one duct in each row: six times trade size 4 (derived)
    assert box["least_length"]["least"] == quantity(24, "in")
    assert box["least_width"]["least"] == quantity(24, "in")


def test_ends_of_a_duct_whose_distance_is_open_are_named_and_what_to_ask_is_said() -> None:
    size = {"length": quantity(48, "in"), "width": quantity(36, "in"), "depth": quantity(36, "in")}
    answer = ask("duct-run", run_with(lambda run: run["stretches"][0]["pull_point"].update(exit_wall="top", box=size)))
    [told] = found_in(answer, "entry_distance_not_judged")
    assert told["message"].startswith("HH-2: Both ends of duct 1-1 hold the same conductors")
    assert "ask for this box alone, as a pull box with position and offset of each entry" in told["message"]
    assert answer["verdict"] == "not_judged"


def test_a_box_that_is_too_small_violates_at_its_place() -> None:
    size = {"length": quantity(24, "in"), "width": quantity(24, "in"), "depth": quantity(24, "in")}
    answer = ask("duct-run", run_with(lambda run: run["stretches"][0]["pull_point"].update(box=size)))
    [told] = found_in(answer, "box_too_small")
    assert told["message"].startswith("HH-2: The length of")
    assert told["pointer"] == "#/stretches/0/pull_point/box/length"
    assert answer["verdict"] == "violates"


@pytest.mark.parametrize(
    ("change", "why"),
    [
        (lambda run: run["circuits"][0].pop("voltage"), "the voltage of A, B is not given"),
        (
            lambda run: run["stretches"][1].update(
                sections=[straight(30, 90), upright_bend(0, 3)], setting={"kind": "above_ground"}
            ),
            "ducts come up or down to it",
        ),
    ],
)
def test_a_box_that_cannot_be_sized_is_told_with_the_reason(change: Any, why: str) -> None:
    def lay(run: dict[str, Any]) -> None:
        del run["circuits"][0]["load"]
        del run["stretches"][1]["length"]
        run["stretches"][1]["sections"] = [straight(100)]
        change(run)

    run = run_with(lay)
    answer = ask("duct-run", run)
    [told] = found_in(answer, "box_not_sized")
    assert why in told["message"]
    assert "box" not in answer["result"]["stops"][1]
    size = {"length": quantity(60, "in"), "width": quantity(60, "in"), "depth": quantity(60, "in")}
    run["stretches"][0]["pull_point"]["box"] = size
    answer = ask("duct-run", run)
    [told] = found_in(answer, "box_not_judged")
    assert why in told["message"]
    assert answer["verdict"] in ("not_judged", "violates")


def test_circuits_that_end_in_a_box_are_left_out_and_told() -> None:
    run = run_with(lambda run: run["circuits"][1].update(end="HH-2"))
    answer = ask("duct-run", run)
    [told] = found_in(answer, "entries_left_out")
    assert told["message"].startswith("HH-2: B begins or ends there")
    assert {one["circuit"] for one in answer["result"]["stops"][1]["box"]["pulls"]} == {"A"}


def test_a_box_at_an_end_of_the_run_is_not_judged() -> None:
    size = {"length": quantity(60, "in"), "width": quantity(60, "in"), "depth": quantity(60, "in")}
    answer = ask("duct-run", run_with(end={"kind": "pull_box", "name": "PB", "box": size}))
    [told] = found_in(answer, "box_not_judged")
    assert (told["pointer"], answer["verdict"]) == ("#/end", "not_judged")


@pytest.mark.parametrize(
    ("place", "pointer"),
    [({"exit_wall": "front"}, "exit_wall"), ({"removable_cover": "left"}, "removable_cover")],
)
def test_ducts_do_not_enter_by_the_cover(place: dict[str, str], pointer: str) -> None:
    told = faults("duct-run", run_with(lambda run: run["stretches"][0]["pull_point"].update(place)))
    assert [(one["pointer"], one["code"]) for one in told] == [
        (f"#/stretches/0/pull_point/{pointer}", "entry_in_the_cover")
    ]


def test_earth_and_traffic_are_told_under_the_least_and_the_greatest_cover() -> None:
    run = copy.deepcopy(MANHOLES) | {"earth_load": {"traffic": "h_20"}}
    run["stretches"][0]["setting"] = {"kind": "direct_buried"}
    run["bank"] = {"conduit": listed("5", "pvc_db_60"), "tiers": [1]}
    run["circuits"] = []
    [stretch] = ask("duct-run", run)["result"]["stretches"]
    # 13.1 - 10.2 = 2.9 ft and 14.2 - 11.0 = 3.2 ft of earth, the ground falling 7 in 1,000 (derived)
    covers = [one["tiers"][0]["cover"]["value"] for one in stretch["earth_loads"]]
    assert covers == pytest.approx([12 * 2.9, 12 * 3.2], rel=1e-4)
    live = [one["tiers"][0]["live_pressure"]["value"] for one in stretch["earth_loads"]]
    assert live[0] > live[1]


def test_groundwater_between_the_least_and_the_greatest_cover_is_judged_where_it_just_covers_the_ducts() -> None:
    """Trade 5 of DB-60, 5.563 in, below 2.9 to 3.2 ft of earth with water at 3 ft: derived, dry earth at 3 ft holds it
    with 120 x 3 x 0.46358 = 166.89, beside its crown 62.6 x 0.1073 x 0.46358^2 = 1.4435 and its own weight.
    """
    run = copy.deepcopy(MANHOLES) | {
        "earth_load": {"traffic": "none"},
        "site": {"groundwater_depth": quantity(3, "ft")},
    }
    run["stretches"][0]["setting"] = {"kind": "direct_buried"}
    run["bank"] = {"conduit": listed("5", "pvc_db_60"), "tiers": [1]}
    run["circuits"] = []
    [stretch] = ask("duct-run", run)["result"]["stretches"]
    covers = [one["tiers"][0]["cover"]["value"] for one in stretch["earth_loads"]]
    assert covers == pytest.approx([12 * 2.9, 36, 12 * 3.2], rel=1e-4)  # the ground falls 7 in 1,000
    above, within, below = (one["in_service"] for one in stretch["earth_loads"])
    displaced = 62.4 * math.pi / 4 * (5.563 / 12) ** 2
    assert within["uplift_per_length"]["value"] == pytest.approx(displaced, rel=1e-5)
    assert below["uplift_per_length"]["value"] == pytest.approx(displaced, rel=1e-5)
    assert above["uplift_per_length"]["value"] < displaced
    assert 168.33 < within["hold_down_per_length"]["value"] < 170.5
    assert within["safety_factor"] < min(above["safety_factor"], below["safety_factor"])


def test_a_stretch_may_have_another_load_of_earth_than_the_run_or_one_alone() -> None:
    run = run_with(earth_load={"traffic": "none", "compaction": "high"})
    run["stretches"][1]["earth_load"] = {"traffic": "h_20"}
    first, second = ask("duct-run", run)["result"]["stretches"]
    assert first["earth_loads"][0]["tiers"][0]["live_loads"] == []
    assert second["earth_loads"][0]["tiers"][0]["live_loads"] != []
    assert first["earth_loads"][0]["soil_modulus"] == second["earth_loads"][0]["soil_modulus"]
    del run["earth_load"]
    first, second = ask("duct-run", run)["result"]["stretches"]
    assert "earth_loads" not in first
    assert second["earth_loads"][0]["tiers"]


def test_earth_arches_in_the_trench_of_the_run() -> None:
    run = run_with(earth_load={"traffic": "none", "earth_load_method": "trench"}, digging={"side_slope_ratio": 0.5})
    stretch = ask("duct-run", run)["result"]["stretches"][0]
    top = stretch["earth_loads"][0]["tiers"][1]
    assert top["earth_pressure"] == top["trench_pressure"]
    assert top["trench_pressure"]["value"] < top["prism_pressure"]["value"]


def test_what_is_no_plastic_duct_or_lies_in_no_trench_is_not_judged_under_earth() -> None:
    run = run_with(earth_load={"traffic": "h_20"})
    run["stretches"][1]["conduit"] = STEEL
    answer = ask("duct-run", run)
    [told] = found_in(answer, "earth_load_not_judged")
    assert told["message"].startswith("Second: What earth and traffic do")
    assert "plastic duct alone" in told["message"]
    bored = run_with(earth_load={"traffic": "h_20"})
    bored["stretches"][1]["setting"] = {"kind": "bored", "cover": quantity(60, "in")}
    [told] = found_in(ask("duct-run", bored), "earth_load_not_judged")
    assert "do not lie in a trench" in told["message"]


def test_what_lies_above_ground_has_no_earth_on_it() -> None:
    answer = ask("duct-run", copy.deepcopy(BRIDGE) | {"earth_load": {"traffic": "h_20"}})
    west, bridge, *_ = answer["result"]["stretches"]
    assert west["earth_loads"]
    assert "earth_loads" not in bridge


def test_duct_for_encasement_alone_in_earth_is_a_violation_before_any_load() -> None:
    run = run_with(earth_load={"traffic": "h_20"})
    run["bank"]["conduit"] = listed("4", "pvc_eb_35")
    run["circuits"] = []
    answer = ask("duct-run", run)
    assert answer["verdict"] == "violates"
    assert [one["tiers"] for one in answer["result"]["stretches"][0]["earth_loads"]] == [[]]


def test_a_mass_that_one_kind_of_duct_lacks_is_not_given_to_another() -> None:
    # no wall of Type A is on file, so that nothing of its mass is counted; the other stretch has its own wall
    run = copy.deepcopy(EXAMPLES["duct-run"])
    run["stretches"][0]["conduit_type"] = "pvc_type_a"
    answer = ask("duct-run", run)
    check_given_back("duct-run", run, answer)


def of_two_conduits(other: str) -> dict[str, Any]:
    """Give a run in concrete in groundwater, whose second stretch is of another conduit."""
    concrete = {"kind": "encased", "cover": quantity(30, "in"), "location": "not_otherwise_specified"}
    return run_with(
        lambda run: (
            run.pop("circuits"),
            run["stretches"][0].update(setting=concrete),
            run["stretches"][1].update(setting=concrete, conduit_type=other),
        ),
        site={"groundwater_depth": quantity(1, "ft")},
    )


def taken_here(answer: dict[str, Any]) -> dict[str, str]:
    """Give what is told of one stretch alone, by its first words."""
    found = found_in(answer, "taken_here_alone")
    assert {(one["severity"], one["pointer"]) for one in found} <= {("note", f"#/stretches/{at}") for at in (0, 1)}
    return {one["message"].split(" is not given")[0]: one["message"].split(": ")[-1] for one in found}


@pytest.mark.parametrize("loads", [{}, {"earth_load": {"traffic": "none"}}])
def test_a_stretch_whose_ducts_are_taken_without_mass_says_so(loads: dict[str, Any]) -> None:
    # no wall of Type A is on file: no mass holds its empty ducts down, while those of the other stretch have a wall
    run = of_two_conduits("pvc_type_a") | loads
    answer = ask("duct-run", run)
    assert taken_here(answer) == {"Second: Duct mass per length": "0 lb/ft is taken here."}
    [note] = found_in(answer, "taken_here_alone")
    assert "no wall on file" in note["citation"]
    first, second = (one["flotation"]["tier_uplifts"] for one in answer["result"]["stretches"])
    assert all(one["mass_per_length"]["value"] > 0 for one in first)
    assert all(one["mass_per_length"]["value"] == 0 for one in second)
    check_given_back("duct-run", run, answer)


def test_where_no_stretch_has_a_wall_on_file_the_mass_is_assumed_once() -> None:
    run = of_two_conduits("pvc_db_100")
    run["bank"]["conduit"] = listed("4", "pvc_type_a")
    answer = ask("duct-run", run)
    assert found_in(answer, "taken_here_alone") == []
    assert "#/flotation/duct_mass_per_length" in [place for one in answer["assumptions"] for place in one["pointers"]]
    check_given_back("duct-run", run, answer)


def test_the_densities_of_two_plastics_are_told_with_their_stretches_and_can_be_given_back() -> None:
    run = of_two_conduits("hdpe_schedule_40")
    answer = ask("duct-run", run)
    # 1400 kg/m3 of PVC and 950 of HDPE
    assert taken_here(answer) == {
        "First: Duct density": "87.4 lb/ft3 is taken here.",
        "Second: Duct density": "59.3 lb/ft3 is taken here.",
    }
    check_given_back("duct-run", run, answer)
