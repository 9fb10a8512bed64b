"""The shore-power run worked by hand, every line of its takeoff; all of it derived.

Two tiers of three 4 in ducts, 4.500 in outside, 2 in apart: 3 x 4.5 + 2 x 2 = 17.5 in wide, 2 x 4.5 + 2 = 11 in high.
Under the road 120 ft in concrete, 3 in on every side: 23.5 x 17 in. Across the field 290 ft, a 45 deg elbow of 3 ft
radius, 218 ft, and an elbow of 90 deg up; up the wall 14 ft, an elbow back to level, 6 ft.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask

ANSWER = ask("duct-run", EXAMPLES["duct-run"])
RESULT: dict[str, Any] = ANSWER["result"]
LINES = {
    (line["item"], line.get("conduit_type"), line.get("size"), round(line.get("angle", {}).get("value", 0))): line
    for line in RESULT["takeoff"]["lines"]
}
ROAD, FIELD, WALL = RESULT["stretches"]
FIRST, SECOND = (pull for pull in RESULT["circuits"][0]["pulls"])
PLAN_FIELD = 290 + 3 * math.pi / 4 + 218 + 3
PLAN_WALL = 3 + 6
ALONG_FIELD = 290 + 3 * math.pi / 4 + 218 + 3 * math.pi / 2
ALONG_WALL = 14 + 3 * math.pi / 2 + 6
SCH40 = "pvc_schedule_40"
SCH80 = "pvc_schedule_80"
ROAD_BANK = 35.5 / 12 * (47 - 4) / 12 * 120 / 27  # yd3 below the pavement: 23.5 in and 6 in on either side; 30 + 17 in
FIELD_BANK = 23.5 / 12 * 44 / 12 * PLAN_FIELD / 27  # 17.5 in and 3 in on either side; 30 + 11 in over 3 in of bedding
ROAD_BACKFILL = ROAD_BANK - 23.5 * 17 / 144 * 120 / 27
DUCTS = 6 * math.pi / 4 * 4.5**2 / 144  # ft2
FIELD_BEDDING = 23.5 / 12 * 3 / 12 * PLAN_FIELD / 27
FIELD_BACKFILL = FIELD_BANK - FIELD_BEDDING - DUCTS * PLAN_FIELD / 27
SPOIL = 1.25 * (ROAD_BANK + FIELD_BANK - (ROAD_BACKFILL + FIELD_BACKFILL) / 0.9)
NET = (23.5 * 17 / 144 - DUCTS) * 120 / 27
CEMENTED = 6 * (6 - 1 + 2) + 6 * (26 + 2 - 1 + 1) + 6 * (1 + 1 + 2 - 1)


def line(item: str, kind: str | None = None, size: str | None = None, angle: int = 0) -> dict[str, Any]:
    found: dict[str, Any] = LINES[item, kind, size, angle]
    return found


@pytest.mark.parametrize(
    ("found", "exact", "unit", "order"),
    [
        # both sides, and across both ends, 12 in beyond each edge of the trench
        (line("pavement_sawcut", size="asphalt"), 2 * 120 + 2 * 59.5 / 12, "ft", None),
        (line("pavement_removal", size="asphalt"), 59.5 / 12 * 120, "ft2", None),
        (line("pavement_restoration", size="asphalt"), 59.5 / 12 * 120, "ft2", None),
        (line("excavation"), ROAD_BANK + FIELD_BANK, "yd3", None),
        # the sticks of the layout: 6 x 6 and 6 x 26; with 3 percent of waste 3,881.04 ft are 195 of them
        (line("conduit", SCH40, "4"), 6 * (120 + 508), "ft", 195 * 20),
        (line("conduit", SCH80, "4"), 6 * 20, "ft", 7 * 20),
        (line("elbow", SCH40, "4", 45), 6, "each", 6),
        (line("elbow", SCH40, "4", 90), 6, "each", 6),
        (line("elbow", SCH80, "4", 90), 6, "each", 6),
        (line("expansion_fitting", SCH80, "4"), 6 * 2, "each", 12),
        (line("terminal_adapter", SCH80, "4"), 6, "each", 6),
        (line("end_bell", SCH40, "4"), 6 * 3, "each", 18),
        # three spares at the vault and at either side of the handhole; at the cabinet in the conduit of the wall
        (line("duct_plug", SCH40, "4"), 3 * 3, "each", 9),
        (line("duct_plug", SCH80, "4"), 3, "each", 3),
        (line("wall_penetration", SCH40, "4"), 6, "each", None),
        # one belled joint less than sticks, and an end bell at either end of the road; in the field two elbows
        # more, one end bell; the wall begins with the joint to the field and ends with its adapter. There the 14 and
        # the 6 ft are two pieces of one stick, and two expansion fittings have two sockets each
        (line("joint", SCH40, "4"), 6 * (6 - 1 + 2) + 6 * (26 + 2 - 1 + 1), "each", None),
        (line("joint", SCH80, "4"), 6 * (1 + 2 + 1 - 1 + 1 + 2 * 2), "each", None),
        # at most 5 ft apart with both ends: 25 stations in 120 ft, 104 in 513.36 ft
        (line("base_spacer", size="4"), 3 * (25 + 104), "each", 387),
        (line("intermediate_spacer", size="4"), 3 * (25 + 104), "each", 387),
        # 6 ducts of 4.5 in displace 99.40 lbf/ft of concrete; less their own weight 87.84; held with 1.5 times that
        # over 5 ft: 658.8 lbf, two of 500 lbf at each of 25 stations
        (line("tie_down"), 2 * 25, "each", 50),
        (line("form"), 2 * 17 / 12 * 120, "ft2", None),
        (line("concrete"), NET, "yd3", 10.0),
        (line("bedding"), FIELD_BEDDING, "yd3", 10),
        (line("native_backfill"), ROAD_BACKFILL + FIELD_BACKFILL, "yd3", None),
        (line("warning_tape"), 1.05 * (120 + PLAN_FIELD), "ft", 666),
        (line("spoil"), SPOIL, "yd3", None),
        (line("haul_load"), SPOIL / 10, "each", 3),
        # on 14 ft: one on the barrel and at most 7 ft apart, 3 ft from the ends; on 6 ft likewise
        (line("strap", SCH80, "4"), 6 * 5, "each", 30),
        # 0.25 in less than the bore of 3.998 in; beyond the handhole than the 3.786 in of the wall
        (line("mandrel_pass", size="3.748 in"), 6, "each", None),
        (line("mandrel_pass", size="3.536 in"), 6, "each", None),
        (line("pull_cord"), 6 * (120 + 20) + 6 * (ALONG_FIELD + ALONG_WALL + 20), "ft", 4_199),
        # per pull with what it takes beyond its ends, up to the next 5 ft of each cable: 150 and 560 ft
        (
            line("cable", size="500 kcmil THWN-2 copper"),
            2 * 3 * (120 + 30 + ALONG_FIELD + ALONG_WALL + 20),
            "ft",
            2 * 3 * (150 + 560),
        ),
        (
            line("cable", size="3 AWG THWN-2 copper"),
            2 * (120 + 30 + ALONG_FIELD + ALONG_WALL + 20),
            "ft",
            2 * (150 + 560),
        ),
        (
            line("cable", size="18 AWG copper 0.72 in diameter"),
            120 + 30 + ALONG_FIELD + ALONG_WALL + 20,
            "ft",
            150 + 560,
        ),
        (line("pulling_eye"), 3 + 3, "each", 6),
    ],
    ids=lambda one: one["description"] if isinstance(one, dict) else "",
)
def test_a_line_of_the_takeoff_is_what_it_is_by_hand(
    found: dict[str, Any], exact: float, unit: str, order: float | None
) -> None:
    assert found["exact_quantity"] == {"value": pytest.approx(exact, rel=1e-9), "unit": unit}
    assert found.get("order_quantity") == (None if order is None else {"value": pytest.approx(order), "unit": unit})
    assert sum(share["quantity"]["value"] for share in found["shares"]) == pytest.approx(exact, rel=1e-9)


def test_cement_and_lubricant_are_bought_whole() -> None:
    cement, lubricant = line("solvent_cement"), line("lubricant")
    # 42, 168 and 48 joints at 30 a quart
    assert cement["exact_quantity"] == {"value": pytest.approx((42 + 168 + 48) / 30), "unit": "qt_us"}
    assert (cement["order_quantity"]["value"], cement["package_count"], cement["package"]) == (9, 9, "quart")
    # 0.0015 gal for each foot and inch of the bore of 3.998 in, of Schedule 80 3.786 in, of three ducts
    each = 0.0015 * (3.998 * (120 + ALONG_FIELD) + 3.786 * ALONG_WALL)
    assert lubricant["exact_quantity"] == {"value": pytest.approx(3 * each, rel=1e-3), "unit": "gal_us"}
    assert lubricant["order_quantity"]["value"] == 12


def test_every_item_of_the_run_is_on_the_list_in_the_order_of_building() -> None:
    numbers = [one["line"] for one in RESULT["takeoff"]["lines"]]
    assert numbers == list(range(1, 38))
    groups = [one["group"] for one in RESULT["takeoff"]["lines"]]
    assert list(dict.fromkeys(groups)) == ["site_work", "duct", "bank", "backfill", "supports", "cable"]
    assert line("excavation")["measure"] == "bank"
    assert line("spoil")["measure"] == "loose"
    assert line("native_backfill")["measure"] == "compacted"
    assert line("elbow", SCH40, "4", 45)["radius"] == {"value": 36, "unit": "in"}
    assert line("conduit", SCH40, "4")["basis"] == "under the road: 6 x 120 ft; across the field: 6 x 508 ft"
    assert [share["stretch"] for share in line("excavation")["shares"]] == ["under the road", "across the field"]


def test_the_callers_rates_are_multiplied_through_and_gaps_are_told() -> None:
    conduit, concrete, dug = line("conduit", SCH40, "4"), line("concrete"), line("excavation")
    assert (conduit["unit_price"], conduit["price"]) == (3.25, 12_675.00)  # 3,900 ft
    assert (conduit["unit_labor_hours"], conduit["labor_hours"]) == (0.05, 188.4)  # 3,768 ft
    assert concrete["price"] == 1_650.00  # 10 yd3
    assert dug["labor_hours"] == pytest.approx(0.12 * (ROAD_BANK + FIELD_BANK), abs=0.005)
    assert "price" not in line("conduit", SCH80, "4")
    total = RESULT["takeoff"]["total"]
    assert total["price"] == 14_325.00
    assert total["labor_hours"] == pytest.approx(188.4 + 0.9 * NET + 0.12 * (ROAD_BANK + FIELD_BANK), abs=0.02)
    assert total["complete"] is False
    assert line("tie_down")["line"] in total["unpriced_lines"]
    assert line("mandrel_pass", size="3.748 in")["line"] in total["unpriced_lines"], (
        "nobody orders a pass, but somebody is paid for it"
    )
    assert line("mandrel_pass", size="3.748 in")["line"] in total["lines_without_hours"]


def test_lengths_stations_and_ducts_are_those_of_the_drawing() -> None:
    plan, along = 120 + PLAN_FIELD + PLAN_WALL, 120 + ALONG_FIELD + ALONG_WALL
    assert RESULT["plan_length"] == {"value": pytest.approx(plan), "unit": "ft"}
    assert RESULT["length"] == {"value": pytest.approx(along), "unit": "ft"}
    assert [stretch["setting"] for stretch in RESULT["stretches"]] == ["encased", "direct_buried", "above_ground"]
    assert [one["station"]["value"] for one in RESULT["stretches"]] == pytest.approx([0, 120, 120 + PLAN_FIELD])
    assert FIELD["plan_length"]["value"] == pytest.approx(PLAN_FIELD)
    assert WALL["length"]["value"] == pytest.approx(ALONG_WALL)
    assert [(stop["name"], stop["kind"]) for stop in RESULT["stops"]] == [
        ("V-1", "vault"),
        ("HH-2", "handhole"),
        ("shore-power cabinet", "equipment"),
    ]
    assert [stop["station"]["value"] for stop in RESULT["stops"]] == pytest.approx([0, 120, plan])
    assert (RESULT["duct_count"], RESULT["spare_count"]) == (6, 3)
    assert RESULT["mandrel_diameter"] == {"value": pytest.approx(3.786 - 0.25), "unit": "in"}, "of the smallest bore"
    assert [duct["mandrel_diameter"]["value"] for duct in RESULT["ducts"]] == pytest.approx([3.786 - 0.25] * 6)
    lying = {duct["name"]: duct["circuits"] for duct in RESULT["ducts"]}
    assert lying["1-1"] == ["SP-1"]
    assert lying["2-3"] == ["dock telephone"]
    assert lying["2-1"] == []
    upper = next(duct for duct in RESULT["ducts"] if duct["name"] == "2-1")
    assert (upper["x"]["value"], upper["y"]["value"]) == (pytest.approx(2.25), pytest.approx(4.5 + 2 + 2.25))
    assert (upper["outside_diameter"]["value"], upper["signal"]) == (pytest.approx(4.5), False)
    assert RESULT["name"] == "Ferry landing, shore power"


def test_covers_are_held_against_the_code_with_their_margin() -> None:
    # a street asks for 24 in, any other place for 18; the concrete above the ducts counts too
    assert ROAD["cover"]["minimum_cover"] == {"value": 24, "unit": "in"}
    assert ROAD["cover"]["margin"] == {"value": pytest.approx(30 + 3 - 24), "unit": "in"}
    assert FIELD["cover"]["margin"] == {"value": pytest.approx(30 - 18), "unit": "in"}


def test_the_wall_moves_and_slides() -> None:
    # 3.38e-5 a degF over 100 - 0 + 30 degF of sun
    moved = [run["length_change"]["value"] for run in WALL["expansion"]["runs"]]
    assert moved == pytest.approx([3.38e-5 * 130 * 12 * 14, 3.38e-5 * 130 * 12 * 6], rel=1e-6)
    assert [one["support_count"] for one in WALL["supports"]] == [3, 2]
    assert WALL["permitted_uses"][0]["verdict"] == "complies"
    assert [use["use"] for use in WALL["permitted_uses"][0]["uses"]] == ["above_ground", "sunlight", "physical_damage"]


def test_the_first_pull_is_friction_alone_and_alike_both_ways() -> None:
    # level: T = f wc w L beside the feed of 20 m; three cables of 1.6662 lb/ft and one of 0.19127
    weight = 3 * 1.6662052 + 0.1912727
    factor = FIRST["pull"]["weight_correction_factor"]
    entering = 0.35 * weight * 20 / 0.3048
    assert FIRST["pull"]["tension"]["value"] == pytest.approx(entering + 0.35 * factor * weight * 120, rel=1e-6)
    assert FIRST["pull"]["reversed"]["tension"] == FIRST["pull"]["tension"]
    assert (FIRST["start"], FIRST["end"], FIRST["verdict"], FIRST["ducts"]) == ("V-1", "HH-2", "complies", ["1-1"])
    # an eye on two of three 500 kcmil conductors of soft copper: 0.008 lbf a circular mil
    assert FIRST["stop_tension"] == {"value": pytest.approx(0.008 * 2 * 500_000), "unit": "lbf"}


def test_the_second_pull_is_fed_from_the_cabinet_and_stops_before_a_bend_is_pressed_too_hard() -> None:
    assert (SECOND["direction"], SECOND["feed_from"], SECOND["pull_to"]) == ("reversed", "shore-power cabinet", "HH-2")
    assert SECOND["pull"]["better_direction"] == "reversed"
    assert SECOND["length"]["value"] == pytest.approx(ALONG_FIELD + ALONG_WALL)
    assert SECOND["stop_tension"]["value"] < FIRST["stop_tension"]["value"]
    assert SECOND["pull"]["reversed"]["tension"]["value"] < SECOND["stop_tension"]["value"]


def test_a_circuit_is_held_in_every_conduit_on_its_way() -> None:
    # 3 x 0.7073 + 0.0973 in2 in the 12.554 and the 11.258 in2 of the tables
    fills = RESULT["circuits"][0]["fills"]
    assert [one["conduit_type"] for one in fills] == [SCH40, SCH80]
    assert [one["fill"]["fill_percent"] for one in fills] == pytest.approx(
        [100 * (3 * 0.7073 + 0.0973) / area for area in (12.554, 11.258)], rel=1e-4
    )
    assert fills[0]["places"] == ["under the road", "across the field"]
    assert [one["trade_size"] for one in fills] == ["4", "4"]
    assert RESULT["circuits"][2]["service"] == "signal"
    assert [circuit["ducts"] for circuit in RESULT["circuits"]] == [["1-1"], ["1-2"], ["2-3"]]


def test_findings_name_their_place_and_come_by_weight_and_along_the_run() -> None:
    ranks = [("violation", "caution", "note").index(one["severity"]) for one in ANSWER["findings"]]
    assert ranks == sorted(ranks)
    first = ANSWER["findings"][0]
    assert first["message"].startswith("Under the road: The ducts (empty) push up")
    alike = [one for one in ANSWER["findings"] if one["code"] == "listing_decides"]
    assert [one["message"].split(":")[0] for one in alike] == ["Under the road, across the field, up the wall"]
    usual = [one["code"] for one in ANSWER["cautions"]]
    assert len(usual) == len(set(usual))
    assert {"confined_space", "rope_under_tension", "braked_cable", "excavation_safety"} <= set(usual)
    bank, cables = [one["message"] for one in ANSWER["findings"] if one["code"].endswith("not_judged")]
    assert bank.startswith("Under the road: Whether the concrete around the ducts bears the traffic over it")
    assert cables.startswith("Up the wall: What the circuits may carry was not judged, for it lies in air")
    assert ANSWER["verdict"] == "not_judged"


def test_the_request_fits_a_page() -> None:
    import json

    assert len(json.dumps(EXAMPLES["duct-run"])) < 4_000
