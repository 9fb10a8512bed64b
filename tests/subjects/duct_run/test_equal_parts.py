"""Loads, boxes and earth on a run are what the single operations say, over runs made at random."""

from __future__ import annotations

from random import Random
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import ask, quantity, result
from tests.subjects.duct_run.runs import buried, listed, straight
from tests.subjects.duct_run.test_equal_to_single import alike

SEEDS = st.integers(0, 2**32 - 1)
FEW = settings(max_examples=25, deadline=None)
COVER = {side: quantity(4, "in") for side in ("top", "bottom", "side")}


def wires(size: str, count: int = 3) -> list[dict[str, Any]]:
    wire = {"kind": "listed", "insulation": "XHHW-2", "size": size, "material": "copper"}
    return [{"count": count, "cable": wire}]


def made(random: Random) -> dict[str, Any]:
    """Make a run of two stretches with a place between that two circuits pass."""
    neutrals = random.randint(0, 1)
    return {
        "bank": {
            "conduit": listed(random.choice(["3", "4", "5"])),
            "tiers": [random.randint(2, 4), 2],
            "horizontal_separation": quantity(random.choice([1.5, 3, 7.5]), "in"),
        },
        "circuits": [
            {
                "name": "one",
                "ducts": ["1-1", "1-2"],
                "voltage": quantity(480, "V"),
                "cables": wires(random.choice(["4/0 AWG", "350 kcmil"])),
                "load": {
                    "current": quantity(random.randint(100, 900), "A"),
                    "load_factor_percent": random.choice([60, 100]),
                    "power_factor": random.choice([0.8, 0.9, 1]),
                },
            },
            {
                "name": "two",
                "ducts": ["2-1"],
                "voltage": quantity(208, "V"),
                "cables": wires("2 AWG", 3 + neutrals),
                "load": {
                    "current": quantity(random.randint(10, 120), "A"),
                    "limit_percent": 4,
                    "loaded_neutral_count": neutrals,
                },
            },
        ],
        "start": {"kind": "vault", "name": "A"},
        "stretches": [
            {
                "setting": {
                    "kind": "encased",
                    "cover": quantity(random.randint(24, 90), "in"),
                    "concrete_cover": COVER,
                    "pour": random.choice(["formed", "trench_formed"]),
                },
                "length": quantity(random.uniform(20, 300), "ft"),
                "pull_point": {
                    "kind": random.choice(["pull_box", "handhole", "manhole"]),
                    "name": "B",
                    "exit_wall": random.choice(["right", "top", "left", "bottom"]),
                    "spliced": random.choice([False, True]),
                },
            },
            {"setting": buried(random.randint(24, 90)), "sections": [straight(random.uniform(20, 200))]},
        ],
        "end": {"kind": "vault", "name": "C"},
        "site": {
            "earth_temperature": quantity(random.choice([15, 25]), "degC"),
            "earth_thermal_resistivity": quantity(random.choice([60, 120]), "degC.cm/W"),
            "groundwater_depth": quantity(random.choice([1, 20]), "ft"),
        },
        "rating": {
            "concrete_thermal_resistivity": quantity(70, "degC.cm/W"),
            "frequency": quantity(random.choice([50, 60]), "Hz"),
        },
        "earth_load": {
            "traffic": random.choice(["none", "h_20"]),
            "compaction": random.choice(["moderate", "high"]),
        },
    }


@FEW
@given(seed=SEEDS)
def test_circuits_carry_and_lose_what_the_single_operations_say(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    found = ask("duct-run", run)["result"]
    around: list[dict[str, Any]] = [{"setting": "encased", "concrete_cover": COVER}, {"setting": "direct_buried"}]
    loading = ("current", "load_factor_percent", "loaded_neutral_count")
    circuits = [
        {name: one[name] for name in ("name", "ducts", "voltage", "cables")}
        | {name: one["load"][name] for name in loading if name in one["load"]}
        for one in run["circuits"]
    ]
    earth = {name: run["site"][name] for name in ("earth_temperature", "earth_thermal_resistivity")}
    for stretch, given_stretch, setting in zip(found["stretches"], run["stretches"], around, strict=True):
        asked: dict[str, Any] = (
            {"bank": run["bank"], "cover": given_stretch["setting"]["cover"], "circuits": circuits} | earth | setting
        )
        rating = dict(run["rating"])
        if setting["setting"] == "direct_buried":
            del rating["concrete_thermal_resistivity"]
        alike(told_apart(stretch["ampacity"]), told_apart(result("ampacity", asked | rating)))
    length = {"value": sum(one["length"]["value"] for one in found["stretches"]), "unit": "ft"}
    for circuit, one in zip(found["circuits"], run["circuits"], strict=True):
        alike(circuit["length"], length)
        given_load = {name: value for name, value in one["load"].items() if name not in loading[1:]}
        asked = given_load | {
            "voltage": one["voltage"],
            "length": circuit["length"],
            "cable": one["cables"][0]["cable"],
            "parallel_count": len(one["ducts"]),
            "conduit_material": "pvc",
            "conductor_temperature": quantity(90, "degC"),
            "frequency": run["rating"]["frequency"],
        }
        alike(circuit["voltage_drop"], result("voltage-drop", asked))


def told_apart(told: dict[str, Any]) -> dict[str, Any]:
    """Give a result without what names its request: pointers, and names of circuits."""
    if isinstance(told, dict):
        own = ("pointer", "pointers", "circuit")
        return {name: told_apart(value) for name, value in told.items() if name not in own}
    return [told_apart(one) for one in told] if isinstance(told, list) else told


@FEW
@given(seed=SEEDS)
def test_a_box_measures_what_its_own_operation_says(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    box = ask("duct-run", run)["result"]["stops"][1]["box"]
    place = run["stretches"][0]["pull_point"]
    entries, circuits = [], []
    for one in run["circuits"]:
        for duct in one["ducts"]:
            circuits.append({"name": f"{one['name']} {duct}", "cables": one["cables"], "spliced": place["spliced"]})
            for wall in ("left", place["exit_wall"]):
                row = {"wall": wall, "row": int(duct[0]), "conduit": run["bank"]["conduit"]}
                entries.append(row | {"circuits": [circuits[-1]["name"]]})
    asked = {"structure": place["kind"], "voltage": quantity(480, "V"), "entries": entries, "circuits": circuits}
    alike(told_apart(box), told_apart(result("pull-box", asked)))


@FEW
@given(seed=SEEDS)
def test_earth_and_traffic_do_what_their_own_operation_says(seed: int) -> None:
    run = made(Random(seed))  # noqa: S311  (no secret)
    found = ask("duct-run", run)["result"]["stretches"]
    shared = run["earth_load"] | {"bank": run["bank"], "groundwater_depth": run["site"]["groundwater_depth"]}
    for stretch, place in zip(found, run["stretches"], strict=True):
        encased = place["setting"]["kind"] == "encased"
        asked = shared | {"cover": place["setting"]["cover"], "encased": encased}
        [load] = stretch["earth_loads"]
        alike(load, result("earth-load", asked | ({"concrete_cover": COVER} if encased else {})))
