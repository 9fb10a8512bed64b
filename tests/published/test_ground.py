"""Trenches, soils, cement and cover against the figures published for them."""

from __future__ import annotations

from typing import Any

import pytest
from ductrun.engineering import trench
from ductrun.tables import TABLES

from tests.asking import document_of, quantity, result

CHECKS = {check["id"]: check for check in document_of("construction.json")["checks"]}
CEMENT = [identity for identity in CHECKS if identity.startswith("CEM-") and not identity.startswith("CEM-P")]
CEMENT_PLUMBING = [identity for identity in CHECKS if identity.startswith("CEM-P")]


def direct_buried(outside: float, cover: float, **changes: Any) -> dict[str, Any]:
    conduit = {
        "kind": "measured",
        "inside_diameter": quantity(outside * 0.9, "in"),
        "outside_diameter": quantity(outside, "in"),
    }
    return {
        "length": quantity(2000, "ft"),
        "bank": {"conduit": conduit, "tiers": [1]},
        "practice": "direct_buried",
        "bedding": quantity(0, "in"),
        "cover": quantity(cover, "in"),
        **changes,
    }


@pytest.mark.parametrize("identity", ["TRN-01", "TRN-03"])
def test_the_bottom_lies_at_cover_and_outside_diameter(identity: str) -> None:
    given, published = CHECKS[identity]["inputs"], CHECKS[identity]["published"]
    found = result("trench", direct_buried(given["od_in"], given["cover_in"]))
    assert found["depth"]["value"] == pytest.approx(published["depth_in"])


def test_two_thousand_feet_of_narrow_trench_with_bedding_and_backfill() -> None:
    dug, filled = CHECKS["TRN-05"], CHECKS["TRN-07"]
    outside = filled["inputs"]["pipe_od_in"]
    bedding = filled["inputs"]["bedding_yd3"] * 27 / (2000 * 5 / 12) * 12
    request = direct_buried(
        outside,
        dug["inputs"]["depth_ft"] * 12 - bedding - outside,
        bedding=quantity(bedding, "in"),
        width=quantity(dug["inputs"]["width_in"], "in"),
    )
    found = result("trench", request)
    assert found["excavation_volume"]["value"] == pytest.approx(dug["published"]["bank_yd3"], abs=0.005)
    assert found["bedding_volume"]["value"] == pytest.approx(filled["inputs"]["bedding_yd3"])
    # the source rounds each part to two digits before it subtracts
    assert found["backfill_volume"]["value"] == pytest.approx(filled["published"]["backfill_yd3"], abs=0.015)


def test_earth_of_3400_pounds_a_yard_swells_26_percent() -> None:
    given, published = CHECKS["SOI-01"]["inputs"], CHECKS["SOI-01"]["published"]
    loose = given["bank_lb_per_yd3"] / given["loose_lb_per_yd3"]
    found = result("trench", direct_buried(4.5, 36, loose_volume_factor=loose))
    share = found["loose_excavation_volume"]["value"] / found["excavation_volume"]["value"]
    assert (share - 1) * 100 == pytest.approx(published["swell_pct"], abs=0.5)
    tons = 2000 / given["bank_lb_per_yd3"]
    assert tons == pytest.approx(published["bank_yd3_per_ton"], abs=0.005)
    assert tons * share == pytest.approx(published["loose_yd3_per_ton"], abs=0.005)


def test_five_hundred_compacted_yards_take_526_from_the_bank() -> None:
    given, published = CHECKS["SOI-03"]["inputs"], CHECKS["SOI-03"]["published"]
    assert trench.spoil(published["bank_yd3"], given["compacted_yd3"], 1.0, given["shrinkage_factor"]) == pytest.approx(
        0, abs=0.5
    )


@pytest.mark.parametrize("identity", CEMENT)
def test_a_quart_makes_the_joints_of_the_conduit_table(identity: str) -> None:
    check = CHECKS[identity]
    names = {0.5: "1/2", 1: "1", 1.5: "1-1/2", 2.5: "2-1/2", 3.5: "3-1/2", 5: "5"}
    size = names[check["inputs"]["trade_size_in"]]
    [row] = [row for row in TABLES["cement_yields"] if row.trade_size == size]
    printed = check["published"]
    assert (row.half_pint, row.pint, row.quart, row.gallon) == tuple(
        printed[container] for container in ("half_pint", "pint", "quart", "gallon")
    )
    # one duct of n sticks has n - 1 joints and two end bells
    request = {
        "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": size},
        "length": quantity((printed["quart"] - 1) * 10, "ft"),
        "duct_count": 1,
        "stick_length": quantity(10, "ft"),
        "ends": "belled",
        "cement_per_joint": quantity(1 / row.quart, "qt_us"),
    }
    found = result("joints", request)
    assert (found["joint_count"], found["cement_order_volume"]) == (printed["quart"], quantity(0.25, "gal_us"))
    assert found["cement_volume"]["value"] == pytest.approx(0.25)
    one_more = result("joints", request | {"length": quantity(printed["quart"] * 10, "ft")})
    assert one_more["cement_order_volume"] == quantity(0.5, "gal_us")


@pytest.mark.parametrize("identity", CEMENT_PLUMBING)
def test_the_plumbing_table_gives_two_fifths_to_two_thirds_of_the_joints(identity: str) -> None:
    """The published spread: sockets are deeper and coated twice there."""
    check = CHECKS[identity]
    names = {0.75: "3/4", 1.5: "1-1/2", 3: "3", 6: "6"}
    [row] = [row for row in TABLES["cement_yields"] if row.trade_size == names[check["inputs"]["pipe_size_in"]]]
    assert 0.4 <= check["published"]["quart_cement"] / row.quart <= 0.67
    assert row.plumbing_quart == check["published"]["quart_cement"]
    assert check["published"]["quart_primer"] == 2 * check["published"]["quart_cement"]
