"""One bank of 200 ft worked by hand, line by line: spacers, concrete, bars, ground, forms, flotation and trench.

Derived, all of it: 3 x 2 of trade 4 (4.5 in), 2 in between, in 4.5 in of concrete against forms. The bank is
3 x 4.5 + 2 x 2 = 17.5 in wide and 2 x 4.5 + 2 = 11 in high, its envelope 26.5 x 20 in = 530 in2.
"""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.asking import ask, codes, quantity, result

LENGTH = quantity(200, "ft")
BANK = {
    "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
    "tiers": [3, 3],
    "horizontal_separation": quantity(2, "in"),
    "vertical_separation": quantity(2, "in"),
    "separation_measure": "clear",
}
CONCRETE = {side: quantity(4.5, "in") for side in ("top", "bottom", "side")}
DUCTS = 6 * math.pi / 4 * 4.5**2  # in2: 95.43
FLOATING = {
    "bank": BANK,
    "medium": "concrete",
    "fluid_density": quantity(150, "lb/ft3"),
    "contents": "empty",
    "duct_mass_per_length": quantity(2, "lb/ft"),
    "station_spacing": quantity(5, "ft"),
    "safety_factor": 1.5,
    "length": LENGTH,
}


def yards(square_inches: float) -> Any:
    """Give the volume of a section over 200 ft [yd3]."""
    return pytest.approx(square_inches / 144 * 200 / 27)


def told(answer: dict[str, Any], *names: str) -> list[Any]:
    return [answer[name]["value"] if isinstance(answer[name], dict) else answer[name] for name in names]


def test_its_spacers() -> None:
    interval = {"kind": "distance", "distance": quantity(5, "ft")}
    asked = {"length": LENGTH, "bank": BANK, "interval": interval, "end_offset": quantity(2.5, "ft")}
    answer = ask("spacers", asked | {"stick_length": quantity(20, "ft"), "waste_percent": 5})
    found = answer["result"]
    # (200 - 2 x 2.5) / 5 = 39 intervals, 40 stations at 2.5, 7.5 ... 197.5 ft: 2.5 ft from every joint of 20 ft
    assert found["station_count"] == 40
    assert found["actual_spacing"]["value"] == pytest.approx(5)
    assert "stations_on_joints" not in codes(answer)
    # three under the bottom tier and three between the tiers at each: 240, with 5 percent 252
    kinds = ("base_spacer_count", "intermediate_spacer_count", "top_piece_count", "piece_count", "order_count")
    assert told(found, *kinds) == [120, 120, 0, 240, 252]
    [size] = found["sizes"]
    assert told(size, "outside_diameter", "order_count") == [pytest.approx(4.5), 252]


def test_its_concrete_and_what_is_in_it() -> None:
    bars = {"bar_count": 4, "bar_size": "no_4", "tie_size": "no_3", "edge_cover": quantity(3, "in")}
    bars |= {"tie_spacing": quantity(2, "ft"), "lap_length": quantity(20, "in"), "stock_length": quantity(20, "ft")}
    asked = {"length": LENGTH, "bank": BANK, "concrete_cover": CONCRETE, "concrete_density": quantity(150, "lb/ft3")}
    asked |= {"reinforcing": bars, "bank_ground": {"size": "4/0 AWG", "end_length": quantity(5, "ft")}}
    answer = ask("encasement", asked)
    found = answer["result"]
    assert told(found, "envelope_width", "envelope_height") == pytest.approx([26.5, 20])
    # 530 in2 are 27.26 yd3, the ducts 4.91 of them: 22.35 in place, 23.47 with 5 percent, 23.5 to the quarter
    assert told(found, "gross_volume", "duct_volume", "net_volume") == [yards(530), yards(DUCTS), yards(530 - DUCTS)]
    assert found["order_volume"]["value"] == pytest.approx(23.5)
    # three trucks of 10 yd3; 23.472 yd3 x 27 / 0.6 ft3 are 1056.2 bags of 80 lb
    assert told(found, "truck_load_count", "bag_count") == [3, 1057]
    assert found["concrete_mass"]["value"] == pytest.approx((530 - DUCTS) / 144 * 200 * 150)
    # both sides, 20 in high; the head of 20 in of 150 lb/ft3
    assert found["form_area"]["value"] == pytest.approx(2 * 20 / 12 * 200)
    assert found["form_pressure"] == {"value": pytest.approx(250), "unit": "psf"}
    # bars: (200 - 1.667) / (20 - 1.667) = 10.8, so 11 bars and 10 laps in each of 4 lines: 800 + 40 x 1.667 ft
    cage = found["reinforcing_takeoff"]
    assert told(cage, "lap_count", "longitudinal_length") == [40, pytest.approx(866.6667)]
    # ties each 2 ft: 101 of 2 x (26.5 + 20 - 12) + 2 x 4.25 = 77.5 in
    assert told(cage, "tie_count", "tie_length") == [101, pytest.approx(101 * 77.5 / 12)]
    assert cage["mass"]["value"] == pytest.approx(866.6667 * 0.668 + 101 * 77.5 / 12 * 0.376)
    # 3 in of edge cover, a tie of 3/8 and a bar of 1/2 in lie within the 4.5 in
    assert cage["least_concrete_cover"]["value"] == pytest.approx(3.875)
    assert answer["verdict"] == "complies"
    # one conductor of 200 ft and twice 5 ft, with 5 percent
    assert told(found["bank_ground_takeoff"], "conductor_length", "order_length") == pytest.approx([210, 220.5])


def test_its_flotation() -> None:
    # a duct displaces pi/4 x 0.375^2 x 150 = 16.567 lb/ft and weighs 2: 14.567; six push with 87.40 lbf/ft
    each = math.pi / 4 * 0.375**2 * 150 - 2
    found = result("flotation", FLOATING | {"tie_down_capacity": quantity(500, "lbf")})
    assert found["uplift_per_length"]["value"] == pytest.approx(6 * each)
    # on 5 ft 437.0 lbf, with the factor 655.5: two tie-downs of 500 at each of 41 stations
    assert told(found, "uplift_per_station", "hold_down_per_station") == pytest.approx([30 * each, 45 * each])
    assert told(found, "tie_down_count", "total_tie_down_count") == [2, 82]
    # tiers begin 6.5 in apart, so that a lift of 6 in reaches one: half of it, 327.8 lbf and one tie-down
    lift = result("flotation", FLOATING | {"tie_down_capacity": quantity(500, "lbf"), "lift_height": quantity(6, "in")})
    assert lift["hold_down_per_station"]["value"] == pytest.approx(22.5 * each)
    assert told(lift, "tie_down_count", "total_tie_down_count") == [1, 41]


def test_its_trench() -> None:
    found = result(
        "trench",
        {
            "length": LENGTH,
            "bank": BANK,
            "practice": "formed",
            "concrete_cover": CONCRETE,
            "cover": quantity(30, "in"),
            "fall": {"grade": quantity(0.5, "percent")},
            "working_space": quantity(6, "in"),
            "bedding": quantity(0, "in"),
            "side_slope_ratio": 0,
            "soil": "loam",
        },
    )
    # 26.5 in and 6 in on each side; 30 + 20 in deep, 12 in more at the end of a fall of 0.5 percent, 56 on average
    assert told(found, "width", "depth", "fall_height") == pytest.approx([38.5, 62, 12])
    assert found["excavation_volume"]["value"] == yards(38.5 * 56)
    assert found["envelope_volume"]["value"] == yards(530)
    # 2156 - 530 = 1626 in2 of backfill, which takes 1626 / 0.9 of the earth: 349.33 in2 are left, 1.25 as much loose
    assert found["backfill_volume"]["value"] == yards(1626)
    assert found["spoil_volume"]["value"] == yards((2156 - 1626 / 0.9) * 1.25)
    assert found["least_cover_over_ducts"]["value"] == pytest.approx(34.5)


@given(
    tiers=st.lists(st.integers(1, 6), min_size=1, max_size=4),
    medium=st.sampled_from(["concrete", "slurry", "groundwater"]),
    contents=st.sampled_from(["empty", "water"]),
    capacity=st.one_of(st.none(), st.floats(1, 5_000)),
)
def test_there_are_no_anchors_without_the_capacity_of_one(
    tiers: list[int], medium: str, contents: str, capacity: float | None
) -> None:
    asked = FLOATING | {"bank": BANK | {"tiers": tiers}, "medium": medium, "contents": contents}
    del asked["fluid_density"]
    if capacity is not None:
        asked["tie_down_capacity"] = quantity(capacity, "lbf")
    answer = ask("flotation", asked)
    found, pull = answer["result"], answer["result"]["hold_down_per_station"]["value"]
    assert ("tie_downs_not_counted" in codes(answer)) is (capacity is None and pull > 0)
    if pull == 0:
        assert found["tie_down_count"] == found["total_tie_down_count"] == 0
    elif capacity is None:
        assert not {"tie_down_count", "total_tie_down_count"} & set(found)
    else:
        assert found["tie_down_count"] * capacity >= pull * (1 - 1e-6)
        assert (found["tie_down_count"] - 1) * capacity < pull
        assert found["total_tie_down_count"] == 41 * found["tie_down_count"]
