"""The most that each form lets a caller ask for, or near it: what the bounds of cost are held against."""

from __future__ import annotations

import copy
import math
from collections.abc import Callable
from typing import Any

from ductrun.subjects import OPERATIONS

EXAMPLES: dict[str, Any] = {operation.name: operation.example for operation in OPERATIONS}
RUN = EXAMPLES["duct-run"]
WIRE = {"kind": "listed", "insulation": "XHHW-2", "size": "4/0 AWG", "material": "copper"}
BURIED: Request = {"kind": "direct_buried", "location": "not_otherwise_specified"}
Request = dict[str, Any]


def quantity(value: float, unit: str) -> Request:
    """Write a quantity."""
    return {"value": value, "unit": unit}


def line_of(sections: int, feet: float = 10.0) -> list[Request]:
    """Give straights with slight bends between them."""
    straight = {"kind": "straight", "length": quantity(feet, "ft")}
    bend = {"kind": "horizontal_bend", "angle": quantity(5, "deg"), "radius": quantity(36, "in")}
    return [bend if at % 2 else straight for at in range(sections)]


def measured(number: int) -> Request:
    """Give a conduit that is like no other of another number."""
    outside, inside = quantity(4.5, "in"), quantity(3.9 + number / 100_000, "in")
    size = {"type": "pvc_schedule_40", "trade_size": "4"}
    return {"kind": "measured", "outside_diameter": outside, "inside_diameter": inside} | size


def unlike_ducts(tiers: int, across: int) -> Request:
    """Give a bank each duct of which is of its own."""
    ducts = [[{"count": 1, "conduit": measured(tier * across + at)} for at in range(across)] for tier in range(tiers)]
    return {"conduit": measured(0), "tier_ducts": ducts}


def run_of(stretches: int, sections: int, circuits: int, *, apart: bool = True, unlike: bool = False) -> Request:
    """Give a run of so many stretches of so many sections, with so many circuits in a bank of 40 beside.

    With a pull point after each stretch if they lie `apart`; with the cables of the first, unless they are `unlike`.
    """
    run: Request = {name: copy.deepcopy(RUN[name]) for name in ("start", "pulling", "site", "digging")}
    run["bank"] = RUN["bank"] | {"tiers": [40] * max(1, -(-circuits // 40))}
    own: list[Request] = [{"cables": [{"count": 3, "cable": WIRE}]} for _ in range(circuits)]
    same = [own[0], *({"same_as": "C1"} for _ in range(1, circuits))] if circuits else []
    chosen = own if unlike else same
    run["circuits"] = [{"name": f"C{number}"} | one for number, one in enumerate(chosen, start=1)]
    setting: Request = BURIED | {"cover": quantity(30, "in")}
    run["stretches"] = [{"setting": setting, "sections": line_of(sections)} for _ in range(stretches)]
    for number, stretch in enumerate(run["stretches"][:-1] if apart else ()):
        stretch["pull_point"] = {"kind": "handhole", "name": f"H{number}"}
    return run | {"end": {"kind": "vault", "name": "V-2"}}


def loaded(run: Request) -> Request:
    """Give a run whose circuits have a load, by both methods."""
    first = run["circuits"][0]
    load = {"current": quantity(120, "A"), "power_factor": 0.85}
    for circuit in run["circuits"] if "cables" in run["circuits"][-1] else [first]:
        circuit |= {"voltage": quantity(480, "V"), "load": load}
    return run | {"rating": {"method": "both"}}


def with_boxes(run: Request, boxes: int = 50) -> Request:
    """Give a run whose pull points are held against fifty boxes each."""
    sizes = [{name: quantity(100 + at, "in") for name in ("length", "width", "depth")} for at in range(boxes)]
    for stretch in run["stretches"][:-1]:
        stretch["pull_point"] |= {"kind": "manhole", "box_sizes": sizes, "box": sizes[0], "spliced": True}
    for circuit in run["circuits"]:
        circuit |= {"voltage": quantity(480, "V")}
    return run


def under_earth(run: Request, water: float = 2) -> Request:
    """Give a run on whose ducts earth and traffic are asked under three covers, one of them that of the water [ft]."""
    sections = [section for stretch in run["stretches"] for section in stretch["sections"]]
    length = sum(10 if one["kind"] == "straight" else 3 * math.radians(5) for one in sections)
    for stretch in run["stretches"]:
        stretch["setting"] = BURIED
    points = [
        {"station": quantity(length * at / 499, "ft"), "ground": quantity(10, "ft"), "line": quantity(6 + at % 3, "ft")}
        for at in range(500)
    ]
    run["profile"] = {"reference": "top_of_duct", "points": points}
    return run | {
        "earth_load": RUN["earth_load"] | {"earth_load_method": "trench"},
        "site": run.get("site", {}) | {"groundwater_depth": quantity(water, "ft")},
    }


def above(run: Request, joints_count: int = 100) -> Request:
    """Give a run on a bridge that opens at a hundred joints."""
    joints = [{"position": quantity(at / 10, "ft"), "movement": quantity(1, "in")} for at in range(1, joints_count + 1)]
    for stretch in run["stretches"]:
        stretch["setting"] = {"kind": "above_ground", "uses": ["sunlight"], "structure_joints": joints}
    return run


def long_above(stretches: int, feet: float) -> Request:
    """Give a run of long straights above ground, in the heat of the example of `expansion`."""
    run = run_of(stretches, 1, 0)
    del run["circuits"]
    run["site"] = run["site"] | {"temperatures": EXAMPLES["expansion"]["temperatures"]}
    for stretch in run["stretches"]:
        stretch["setting"] = {"kind": "above_ground", "uses": ["sunlight"]}
        stretch["sections"] = line_of(1, feet)
    return run


def along_profile(circuits: int, points: int, pounds: float) -> Request:
    """Give a run of one straight that a profile cuts at each of its points, with cables that break a tension."""
    run = run_of(1, 1, circuits, unlike=True)
    run["stretches"][0] |= {"setting": BURIED, "sections": line_of(1, 998)}
    run["profile"] = {
        "reference": "top_of_duct",
        "points": [
            {
                "station": quantity(998 * at / (points - 1), "ft"),
                "ground": quantity(10, "ft"),
                "line": quantity(5 + at % 3 * 0.3, "ft"),
            }
            for at in range(points)
        ],
    }
    return run | {"pulling": run["pulling"] | {"allowable_tension": quantity(pounds, "lbf")}}


def many_runs(count: int, feet: float) -> Request:
    """Give as many straight runs that move with temperature, each with an opening table."""
    request = {name: value for name, value in EXAMPLES["expansion"].items() if name != "length"}
    openings = [quantity(40 + at, "degF") for at in range(50)]
    return request | {"straight_runs": [quantity(feet, "ft")] * count, "opening_temperatures": openings}


def rated(ducts: int) -> Request:
    """Give a rating of so many ducts, each a circuit, by both methods with every study."""
    request: Request = copy.deepcopy(EXAMPLES["ampacity"])
    request["bank"]["tiers"] = [6] * (ducts // 6)
    first = request["circuits"][0] | {"current": quantity(150, "A")}
    del first["overcurrent_device"]
    names = [f"{tier}-{place}" for tier in range(1, ducts // 6 + 1) for place in range(1, 7)]
    request["circuits"] = [first | {"name": name, "ducts": [name]} for name in names]
    return request


def boxed(entries: int) -> Request:
    """Give a box with so many entries, each of six circuits, held against fifty boxes."""
    request: Request = copy.deepcopy(EXAMPLES["pull-box"])
    cables = [{"count": 1, "cable": WIRE}]
    request["circuits"] = [{"name": f"c{at}", "cables": cables, "spliced": True} for at in range(100)]
    conduit = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "6"}
    walls = ("left", "right", "top", "bottom")
    names: list[list[str]] = [[] for _ in range(entries)]
    for at in range(entries * 6):
        names[at % entries].append(f"c{(at * 7 + at // entries) % 100}")
    request["entries"] = [
        {"wall": walls[at % 4], "row": 1 + at // 4 % 5, "conduit": conduit, "circuits": sorted(set(names[at]))}
        for at in range(entries)
    ]
    request["box_sizes"] = [
        {name: quantity(100 + at, "in") for name in ("length", "width", "depth")} for at in range(50)
    ]
    request["box"] = request["box_sizes"][0]
    return request


def pulled() -> Request:
    """Give a pull through 500 sections, with every study of it."""
    bend = {"kind": "horizontal_bend", "angle": quantity(0.5, "deg"), "radius": quantity(36, "in")}
    straight = {"kind": "straight", "length": quantity(6, "ft")}
    wires = [{"count": 5, "cable": WIRE | {"size": size}} for size in ("500 kcmil", "250 kcmil", "4/0 AWG", "1 AWG")]
    request: Request = EXAMPLES["pull-tension"] | {"sections": [straight, bend] * 250, "cables": wires}
    for member in ("conductor_counting", "device_limit", "allowable_sidewall_pressure"):
        del request[member]
    studies = {"find_largest": True, "profile_spacing": quantity(2, "ft"), "friction_range": {"low": 0.2, "high": 0.5}}
    limits = {"allowable_tension": quantity(99_999, "lbf"), "arrangement": "many", "attachment": "basket_grip"}
    return request | studies | limits | {"ordering": {}}


def planned() -> Request:
    """Give a search among 400 places along 500 sections."""
    listed = {"kind": "listed", "positions": [quantity(0.5 + at, "ft") for at in range(400)]}
    straight = {"kind": "straight", "length": quantity(1, "ft")}
    request: Request = EXAMPLES["pull-plan"] | {"sections": [straight] * 500, "box_positions": listed}
    return request


def full_bank(request: Request, **members: Any) -> Request:
    """Give a request about the largest bank of like ducts."""
    bank = EXAMPLES["encasement"]["bank"] | {"tiers": [40] * 30}
    return {name: value for name, value in request.items() if name not in ("conduit", "duct_density")} | {
        "bank": bank,
        **members,
    }


def breaking(run: Request) -> Request:
    """Give a run whose pulls break a limit, so that changes of it are tried."""
    return run | {"pulling": RUN["pulling"] | {"allowable_tension": quantity(60, "lbf")}}


def bare_run(run: Request, **members: Any) -> Request:
    """Give a run without circuits, in the largest bank."""
    del run["circuits"]
    run["bank"] = RUN["bank"] | {"tiers": [40] * 30}
    return run | members


def at_unlike_depths(run: Request) -> Request:
    """Give a run whose stretches are rated one by one."""
    for number, stretch in enumerate(run["stretches"]):
        stretch["setting"] = BURIED | {"cover": quantity(30 + number, "in")}
    return run


def compared(run: Callable[[], Request]) -> Request:
    """Give a comparison of nine runs."""
    return {"runs": [{"name": f"run {number}", "run": run()} for number in range(9)]}


def all_unlike() -> Request:
    """Give a run of 1,200 ducts of which none is like another, each pulled through sixteen stretches."""
    run = run_of(16, 1, 1) | {"bank": unlike_ducts(30, 40)}
    run["circuits"] = [{"name": "C1", "cables": [{"count": 3, "cable": WIRE}], "duct_count": 1_200}]
    return run
