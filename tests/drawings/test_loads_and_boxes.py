"""What the drawings of a loaded bank and of a box show: temperatures, entries, the dimensions and what decided them."""

from __future__ import annotations

import copy
from typing import Any

from ductrun.drawings.registry import DRAWINGS
from ductrun.kit.telling import METRIC, US

from tests.asking import EXAMPLES, quantity
from tests.drawings.made import assessed, assessed_of
from tests.drawings.seen import SPACE, assert_readable, read, told, words_of

WIRES = [{"count": 3, "cable": {"kind": "listed", "insulation": "XHHW-2", "size": "500 kcmil", "material": "copper"}}]


def bank(*tiers: int, amperes: float, ducts: int = 6) -> dict[str, Any]:
    names = [f"{tier}-{at}" for tier, count in enumerate(tiers, start=1) for at in range(1, count + 1)]
    return {
        "bank": {"conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "5"}, "tiers": list(tiers)},
        "setting": "direct_buried",
        "cover": quantity(30, "in"),
        "circuits": [
            {"name": f"F {one}", "ducts": [one], "cables": WIRES, "current": quantity(amperes, "A")}
            for one in names[:ducts]
        ],
    }


def rings(svg: str) -> list[str]:
    """Give the role of every thick ring."""
    circles = [node.attrib for node in read(svg).iter(f"{SPACE}circle")]
    return [one["class"] for one in circles if float(one.get("stroke-width", 0)) > 3.0]


def test_every_loaded_duct_has_its_temperature_and_the_governing_one_its_ring() -> None:
    svg = DRAWINGS["ampacity"](assessed("ampacity"), US)
    words = words_of(svg)
    assert words.count("137 °F") == 2
    assert {"1-1", "1-2", "2-1", "2-2"} <= set(words)
    assert rings(svg) == ["s-ink"]
    told_in_lines = " ".join(words)
    assert (
        "Feeder 1, two sets in parallel in 2-1, 2-2: 640 A, 136.82 °F of 167 °F; the bank lets it carry 758.66 A"
        in told_in_lines
    )
    assert "Concrete of 85 degC.cm/W." in told_in_lines
    _, description = told(svg)
    assert description.startswith("Conductors: 2-1 137 °F, 2-2 137 °F.")


def test_ducts_that_are_too_hot_are_in_the_colour_of_limits() -> None:
    svg = DRAWINGS["ampacity"](assessed_of("ampacity", bank(4, 4, amperes=400), METRIC), METRIC)
    assert rings(svg) == ["s-limit"] * 6
    assert "Red rings: over the limit" in " ".join(words_of(svg))
    cool = DRAWINGS["ampacity"](assessed_of("ampacity", bank(4, 4, amperes=100), METRIC), METRIC)
    assert rings(cool) == ["s-ink"]
    assert "Red rings" not in " ".join(words_of(cool))


def test_ducts_too_small_for_their_figures_have_them_in_a_list() -> None:
    svg = DRAWINGS["ampacity"](assessed_of("ampacity", bank(20, 20, amperes=50, ducts=2)), US)
    assert "By duct, tier and position from the bottom left: 1-1 " in " ".join(words_of(svg)).replace(
        "left:  ", "left: "
    )
    assert_readable(svg)


def test_a_box_shows_its_dimensions_and_the_entries_that_decided_them() -> None:
    svg = DRAWINGS["pull-box"](assessed("pull-box"), US)
    words = " ".join(words_of(svg))
    # six times trade size 3 (derived)
    assert "Least length 1 ft 6 in: opposite wall, by entry 1; it has 2 ft." in words
    assert "Least width 1 ft 6 in: opposite wall, by entry 2; it has 2 ft." in words
    assert "Left, row 1: 1 (feeder 1)" in words
    assert "entries that decided a dimension" in words
    title, description = told(svg)
    assert title == "Pull box: least size"
    assert "Bottom, row 1: 2 (feeder 1)." in description


def test_a_box_that_is_too_small_says_so_in_the_colour_of_limits() -> None:
    small = {name: quantity(12, "in") for name in ("length", "width", "depth")}
    body = copy.deepcopy(EXAMPLES["pull-box"]) | {"box": small}
    for entry in body["entries"]:
        entry["position"], entry["offset"] = quantity(6, "in"), quantity(3, "in")
    svg = DRAWINGS["pull-box"](assessed_of("pull-box", body), US)
    short = [node.text or "" for node in read(svg).iter(f"{SPACE}text") if node.attrib["class"] == "f-limit"]
    assert [one for one in short if one.startswith("Least length")]
    assert [one for one in short if one.startswith("Least depth")] == []


def test_as_many_entries_as_a_wall_has_no_room_for_are_counted() -> None:
    conduit = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "1"}
    names = [f"C {at}" for at in range(50)]
    entries = [{"wall": wall, "conduit": conduit, "circuits": [name]} for name in names for wall in ("left", "right")]
    body = {"voltage": quantity(480, "V"), "entries": entries, "circuits": [{"name": name} for name in names]}
    svg = DRAWINGS["pull-box"](assessed_of("pull-box", body), US)
    assert words_of(svg).count("50") == 2
    assert_readable(svg)


def test_circuits_that_are_spliced_are_broken_lines() -> None:
    body = copy.deepcopy(EXAMPLES["pull-box"])
    plain = DRAWINGS["pull-box"](assessed_of("pull-box", body), US)
    body["circuits"][0]["spliced"] = True
    spliced = DRAWINGS["pull-box"](assessed_of("pull-box", body), US)
    assert "Broken lines: spliced." in words_of(spliced)
    assert "stroke-dasharray" in spliced
    assert "stroke-dasharray" not in plain
