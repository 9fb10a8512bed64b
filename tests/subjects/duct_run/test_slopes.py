"""What a run takes on a slope, and how deep it lies there; all of it worked by hand.

A rise of 3 ft in 4 makes the slope 5 ft long, so that cos is 0.8: 400 ft in plan are 500 ft of duct. Two tiers of three
4 in ducts, 4.5 in outside and 2 in apart, in 3 in of concrete: 23.5 in wide, 17 in high square to the slope and
17 / 0.8 = 21.25 in plumb.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from tests.asking import ask, codes, quantity
from tests.subjects.duct_run.runs import listed, straight, upright_bend

DUCTS = 6 * math.pi / 4 * 4.5**2 / 144  # ft2
NET = 23.5 * 17 / 144 - DUCTS  # ft2


def points(*given: tuple[float, float, float]) -> list[dict[str, Any]]:
    return [
        {"station": quantity(at, "ft"), "ground": quantity(ground, "ft"), "line": quantity(line, "ft")}
        for at, ground, line in given
    ]


def uphill(reference: str = "top_of_envelope", below: float = 30, **setting: Any) -> dict[str, Any]:
    """Make a run of 400 ft in plan up a slope of 3 in 4, its line so many inches below the ground, plumb."""
    return {
        "bank": {
            "conduit": listed("4"),
            "tiers": [3, 3],
            "horizontal_separation": quantity(2, "in"),
            "vertical_separation": quantity(2, "in"),
            "separation_measure": "clear",
        },
        "start": {"kind": "handhole", "name": "A"},
        "stretches": [{"setting": {"kind": "encased"} | setting, "length": quantity(400, "ft")}],
        "end": {"kind": "handhole", "name": "B"},
        "profile": {
            "reference": reference,
            "points": points((0, 100, 100 - below / 12), (400, 400, 400 - below / 12)),
        },
        "concrete": {"bank_ground": {"size": "4/0 AWG", "end_length": quantity(5, "ft")}},
        "flotation": {"tie_down_capacity": quantity(500, "lbf")},
        "digging": {"width": quantity(36, "in"), "bedding": quantity(0, "in")},
    }


def with_reinforcing(run: dict[str, Any]) -> dict[str, Any]:
    run["concrete"]["reinforcing"] = {"bar_size": "no_4", "bar_count": 4}
    return run


def lines_of(run: dict[str, Any]) -> dict[str, float]:
    return {
        line["item"]: line["exact_quantity"]["value"] for line in ask("duct-run", run)["result"]["takeoff"]["lines"]
    }


def test_what_follows_the_ducts_is_as_long_as_they_are() -> None:
    found = lines_of(with_reinforcing(uphill()))
    assert found["conduit"] == pytest.approx(6 * 500)
    assert found["concrete"] == pytest.approx(NET * 500 / 27)
    assert found["form"] == pytest.approx(2 * 17 / 12 * 500)
    assert found["bank_ground"] == pytest.approx(500 + 2 * 5)
    assert found["warning_tape"] == pytest.approx(1.05 * 500)
    # at most 5 ft apart with both ends: 101 stations, three bases and three between the tiers at each
    assert (found["base_spacer"], found["intermediate_spacer"]) == (3 * 101, 3 * 101)


def test_ties_and_bars_are_counted_along_the_slope_as_on_level_ground_of_its_length() -> None:
    level = with_reinforcing(uphill())
    level["stretches"][0]["length"] = quantity(500, "ft")
    level["profile"]["points"] = points((0, 100, 97.5), (500, 100, 97.5))
    slope, flat = lines_of(with_reinforcing(uphill())), lines_of(level)
    for item in ("reinforcing_bar", "tie_bar", "tie_down", "base_spacer", "concrete", "form"):
        assert slope[item] == pytest.approx(flat[item]), item


def test_what_is_dug_is_as_long_as_the_plan_and_as_deep_as_the_envelope_measures_plumb() -> None:
    answer = ask("duct-run", uphill())
    trench = answer["result"]["stretches"][0]["trench"]
    assert trench["depth"] == quantity(pytest.approx(30 + 21.25), "in")  # type: ignore[arg-type]
    assert trench["excavation_volume"]["value"] == pytest.approx(3 * (30 + 21.25) / 12 * 400 / 27)
    assert trench["envelope_volume"]["value"] == pytest.approx(23.5 * 17 / 144 * 500 / 27)
    dug = 3 * (30 + 21.25) / 12 * 400 / 27
    assert trench["backfill_volume"]["value"] == pytest.approx(dug - 23.5 * 17 / 144 * 500 / 27)


def test_select_fill_lies_so_high_over_the_envelope_measured_plumb() -> None:
    run = uphill()
    run["digging"]["select_fill"] = quantity(6, "in")
    trench = ask("duct-run", run)["result"]["stretches"][0]["trench"]
    filled = 3 * (21.25 + 6) / 12 * 400 / 27
    assert trench["select_fill_volume"]["value"] == pytest.approx(filled - 23.5 * 17 / 144 * 500 / 27)


def buried_alone(below: float, *given: tuple[float, float, float]) -> dict[str, Any]:
    run = uphill(below=below, kind="direct_buried", location="street_road_driveway_parking_lot")
    run["bank"] = {"conduit": listed("4"), "tiers": [1]}
    run["circuits"] = [{"voltage": quantity(480, "V"), "cables": [{"count": 3, "cable": _CABLE}]}]
    run["pulling"] = {"brake_limit": quantity(5000, "lbf")}
    del run["concrete"], run["flotation"]
    if given:
        run["profile"]["points"] = points(*given)
    return run


_CABLE = {"kind": "listed", "insulation": "XHHW-2", "size": "4/0 AWG", "material": "copper"}


def test_cover_is_the_shortest_way_to_the_ground_and_not_the_plumb_one() -> None:
    answer = ask("duct-run", buried_alone(29))
    stretch = answer["result"]["stretches"][0]
    # 29 in plumb are 29 x 0.8 = 23.2 in square to the slope, under the 24 in below a street
    assert stretch["cover"]["cover_over_raceway"]["value"] == pytest.approx(23.2)
    assert stretch["cover"]["margin"]["value"] == pytest.approx(-0.8)
    assert stretch["trench"]["least_cover_over_ducts"]["value"] == pytest.approx(23.2)
    assert "too_shallow" in codes(answer)
    assert "too_shallow" not in codes(ask("duct-run", buried_alone(30.1)))  # 24.08 in


def test_a_drop_of_the_ground_beside_level_ducts_makes_their_cover_no_less() -> None:
    # 4 ft below a terrace that ends at 200 ft, where the ground drops 3 ft in 0.01: at its foot 1 ft is left
    run = buried_alone(0, (0, 100, 96), (200, 100, 96), (200.01, 97, 96), (400, 97, 96))
    assert ask("duct-run", run)["result"]["stretches"][0]["cover"]["cover_over_raceway"]["value"] == pytest.approx(12)


def test_a_cover_that_is_given_is_the_shortest_way_and_is_dug_deeper_plumb() -> None:
    run = uphill(cover=quantity(24, "in"))
    del run["profile"]
    run["stretches"][0] |= {"sections": [straight(500, math.degrees(math.atan(0.75)))]}
    del run["stretches"][0]["length"]
    stretch = ask("duct-run", run)["result"]["stretches"][0]
    assert stretch["plan_length"]["value"] == pytest.approx(400)
    assert stretch["trench"]["least_cover_over_ducts"]["value"] == pytest.approx(24 + 3)
    assert stretch["trench"]["depth"]["value"] == pytest.approx((24 + 17) / 0.8)
    assert stretch["encasement"]["net_volume"]["value"] == pytest.approx(NET * 500 / 27)
    assert stretch["spacers"]["station_count"] == 101


def test_what_bends_up_out_of_the_trench_counts_in_it_as_it_stands_in_plan() -> None:
    run = uphill(cover=quantity(24, "in"))
    del run["profile"], run["stretches"][0]["length"]
    run["stretches"][0]["sections"] = [straight(97, 0), upright_bend(90, 3), straight(8, 90)]
    stretch = ask("duct-run", run)["result"]["stretches"][0]
    assert stretch["encasement"]["net_volume"]["value"] == pytest.approx(NET * 100 / 27)
    assert stretch["trench"]["depth"]["value"] == pytest.approx(24 + 17)


def test_an_invert_is_the_bottom_of_the_bore_and_not_of_the_duct() -> None:
    # 4 in Schedule 40: 4.500 in outside with a wall of 0.237 in. 30 in lie over the bottom of its bore, and of that the
    # upper 4.5 - 0.237 = 4.263 in of the duct
    run = buried_alone(30)
    run["profile"]["reference"] = "duct_invert"
    run["profile"]["points"] = points((0, 100, 97.5), (400, 100, 97.5))
    stretch = ask("duct-run", run)["result"]["stretches"][0]
    assert stretch["cover"]["cover_over_raceway"]["value"] == pytest.approx(30 - 4.263)
    assert stretch["trench"]["depth"]["value"] == pytest.approx(30 + 0.237)


def in_water(water: float, **lies: Any) -> dict[str, Any]:
    """Give what holds a 6 in duct down in earth alone, in groundwater of a depth in feet, where it lies so."""
    run: dict[str, Any] = {
        "bank": {"conduit": listed("6"), "tiers": [1]},
        "start": {"kind": "handhole", "name": "A"},
        "end": {"kind": "handhole", "name": "B"},
        "site": {"groundwater_depth": quantity(water, "ft")},
        "earth_load": {"traffic": "none"},
    }
    profile = {"profile": lies.pop("profile")} if "profile" in lies else {}
    cover = {"cover": lies.pop("cover")} if "cover" in lies else {}
    stretch = {"setting": {"kind": "direct_buried"} | cover} | lies
    [told] = ask("duct-run", run | profile | {"stretches": [stretch]})["result"]["stretches"]
    [load] = told["earth_loads"]
    weight = told["groundwater_flotation"]["earth_weight_per_length"]["value"]
    return {name: load["in_service"][name]["value"] for name in ("uplift_per_length", "hold_down_per_length")} | {
        "earth": weight
    }


@pytest.mark.parametrize("water", [0, 2, 3])
def test_a_slope_holds_ducts_down_as_level_earth_does_that_is_as_deep_the_shortest_way(water: float) -> None:
    # 30 in plumb up 3 in 4 are 24 square to the slope, and a foot of duct lies under 0.8 ft of plan; water that stands
    # 3 ft down plumb stands 2.4 ft down square to the slope
    level = in_water(0.8 * water, length=quantity(500, "ft"), cover=quantity(24, "in"))
    by_profile = in_water(
        water,
        length=quantity(400, "ft"),
        profile={"reference": "top_of_duct", "points": points((0, 100, 97.5), (400, 400, 397.5))},
    )
    by_grade = in_water(water, sections=[straight(500, math.degrees(math.atan(0.75)))], cover=quantity(24, "in"))
    assert by_profile == pytest.approx(level)
    assert by_grade == pytest.approx(level)
