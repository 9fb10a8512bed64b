"""Every figure of a run is that of the single operation for the same input, over runs made at random."""

from __future__ import annotations

import math
from random import Random
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import ask, quantity, result
from tests.subjects.duct_run.runs import buried, level_bend, listed, single, straight, upright_bend

SEEDS = st.integers(0, 2**32 - 1)
SIZES = ["2", "3", "4", "5", "6"]
UPRIGHT = 1e-9  # relative: a length is read in feet, and summed up


def made(random: Random) -> dict[str, Any]:
    """Make a run of three stretches: in concrete, in earth, and on a wall."""
    tiers = [random.randint(1, 4) for _ in range(random.randint(1, 4))]
    tiers.sort(reverse=True)
    radius = random.choice([3, 4, 6, 12.5])
    return {
        "bank": {
            "conduit": listed(random.choice(SIZES)),
            "tiers": tiers,
            "horizontal_separation": quantity(random.choice([1.5, 2, 3]), "in"),
        },
        "circuits": [
            {
                "ducts": ["1-1"],
                "voltage": quantity(random.choice([480, 4_160, 13_800]), "V"),
                "cables": single(random.choice([0.4, 0.5]), 0.5, "4/0 AWG"),
            }
        ],
        "start": {"kind": "vault", "name": "A"},
        "stretches": [
            {
                "setting": {
                    "kind": "encased",
                    "cover": quantity(random.randint(24, 60), "in"),
                    "concrete_cover": {"top": quantity(random.choice([3, 4, 6]), "in")},
                    "pour": random.choice(["formed", "trench_formed"]),
                },
                "length": quantity(random.uniform(20, 300), "ft"),
                "pull_point": {"kind": "handhole", "name": "B"},
            },
            {
                "setting": buried(random.randint(24, 48)),
                "sections": [
                    straight(random.uniform(20, 200), random.choice([-4, 0, 3])),
                    level_bend(random.choice([22.5, 45, 90]), radius, made="factory_elbow"),
                    straight(random.uniform(20, 200), 0),
                    upright_bend(90, radius, made="factory_elbow"),
                ],
            },
            {
                "setting": {"kind": "above_ground", "fitting_travel": quantity(random.choice([4, 6, 8]), "in")},
                "sections": [straight(random.uniform(8, 30))],
            },
        ],
        "end": {"kind": "pull_box", "name": "C"},
        "site": {"temperatures": {"kind": "range", "lowest": quantity(0, "degF"), "highest": quantity(100, "degF")}},
        "digging": {"side_slope_ratio": random.choice([0, 0.5, 1]), "soil": random.choice(["loam", "clay", "sand"])},
        "pulling": {"friction_coefficient": random.choice([0.2, 0.35, 0.5]), "brake_limit": quantity(2_000, "lbf")},
    }


def alike(found: Any, alone: Any, where: str = "") -> None:
    """Hold two results against each other, figure by figure."""
    assert type(found) is type(alone), where
    if isinstance(found, dict):
        assert set(found) == set(alone), where
        for name, value in found.items():
            alike(value, alone[name], f"{where}/{name}")
    elif isinstance(found, list):
        assert len(found) == len(alone), where
        for index, (one, other) in enumerate(zip(found, alone, strict=True)):
            alike(one, other, f"{where}/{index}")
    elif isinstance(found, float):
        assert found == pytest.approx(alone, rel=UPRIGHT, abs=1e-9), where
    else:
        assert found == alone, where


@settings(max_examples=40, deadline=None)
@given(seed=SEEDS)
def test_what_is_dug_and_poured_is_what_the_single_operations_say(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    run["stretches"][1]["sections"][0]["grade"] = quantity(0, "deg")  # alone, a trench is dug in level ground
    encased, earth, _ = ask("duct-run", run)["result"]["stretches"]
    bank, setting, length = run["bank"], run["stretches"][0]["setting"], run["stretches"][0]["length"]
    pour = {"concrete_cover": setting["concrete_cover"], "bank": bank, "length": length}
    trench = result("trench", run["digging"] | pour | {"practice": setting["pour"], "cover": setting["cover"]})
    alike(encased["trench"], trench)
    asked = dict(pour)
    if setting["pour"] == "trench_formed":
        asked |= {"trench_width": trench["envelope_width"], "side_slope_ratio": run["digging"]["side_slope_ratio"]}
    alike(encased["encasement"], result("encasement", asked))
    alike(encased["spacers"], result("spacers", {"bank": bank, "length": length}))
    alike(encased["flotation"], result("flotation", {"bank": bank, "length": length}))
    buried_alone = {"practice": "direct_buried", "bank": bank, "length": earth["plan_length"]}
    alike(
        earth["trench"],
        result("trench", run["digging"] | buried_alone | {"cover": run["stretches"][1]["setting"]["cover"]}),
    )


@settings(max_examples=40, deadline=None)
@given(seed=SEEDS)
def test_what_is_joined_and_moves_is_what_the_single_operations_say(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    encased, earth, wall = ask("duct-run", run)["result"]["stretches"]
    ducts = {"conduit": run["bank"]["conduit"], "duct_count": sum(run["bank"]["tiers"])}
    [piece] = encased["conduits"]
    alike(piece["joints"], result("joints", ducts | {"length": encased["length"]}))
    elbows = [
        {"radius": one["radius"], "angle": one.get("angle", quantity(90, "deg")), "count": 1}
        for one in run["stretches"][1]["sections"]
        if one["kind"] != "straight"
    ]
    [piece] = earth["conduits"]
    asked = ducts | {"length": earth["length"], "elbows": elbows, "start": "end_bell", "end": "none"}
    alike(piece["joints"], result("joints", asked))
    length = run["stretches"][2]["sections"][0]["length"]
    travel = run["stretches"][2]["setting"]["fitting_travel"]
    moves = {"material": "pvc", "length": length, "fitting_travel": travel, **run["site"]}
    openings = {"opening_temperatures": [quantity(at, "degF") for at in range(0, 131, 10)]}
    alike(wall["expansion"], result("expansion", moves | openings))
    count = wall["expansion"]["fitting_count"]
    fittings = {"fittings": {"fitting_count": count, "fitting_travel": travel}} if count else {}
    [straps] = wall["supports"]
    alike(straps, result("supports", {"conduit": run["bank"]["conduit"], "length": length} | fittings))


@settings(max_examples=40, deadline=None)
@given(seed=SEEDS)
def test_a_circuit_is_filled_and_pulled_as_the_single_operations_say(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    encased, earth, _ = ask("duct-run", run)["result"]["stretches"]
    [circuit] = ask("duct-run", run)["result"]["circuits"]
    conduit, cables = run["bank"]["conduit"], run["circuits"][0]["cables"]
    alike(circuit["fills"][0]["fill"], result("fill", {"conduit": conduit, "cables": cables}))
    first, second = circuit["pulls"]
    pull = {"conduit": conduit, "cables": cables} | run["pulling"]
    alone = result("pull-tension", pull | {"sections": [straight(encased["length"]["value"], 0)]})
    alike(first["pull"], alone)
    sections = run["stretches"][1]["sections"] + run["stretches"][2]["sections"]
    alike(second["pull"], result("pull-tension", pull | {"sections": sections}))
    for stretch, place in ((encased, run["stretches"][0]), (earth, run["stretches"][1])):
        volts = run["circuits"][0]["voltage"]["value"]
        asked = {
            "wiring_method": "nonmetallic_raceway",
            "location": place["setting"].get("location", "street_road_driveway_parking_lot"),
            "voltage_class": "up_to_1000_v" if volts < 1_000 else "over_1_kv_to_22_kv",
            "listed_for_direct_burial": True,
            "cover": place["setting"]["cover"],
        }
        if place["setting"]["kind"] == "encased":
            asked |= {"encased": True, "concrete_above": place["setting"]["concrete_cover"]["top"]}
        alike(stretch["cover"], result("cover", asked))


@settings(max_examples=60, deadline=None)
@given(seed=SEEDS)
def test_shares_and_stretches_add_up_to_the_whole(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    found = ask("duct-run", run)["result"]
    assert math.isclose(found["length"]["value"], sum(one["length"]["value"] for one in found["stretches"]))
    for line in found["takeoff"]["lines"]:
        shares = sum(share["quantity"]["value"] for share in line["shares"])
        assert math.isclose(line["exact_quantity"]["value"], shares, rel_tol=1e-9), line["item"]
        order = line.get("order_quantity")
        assert order is None or order["value"] >= line["exact_quantity"]["value"] * (1 - 1e-9), line["item"]
