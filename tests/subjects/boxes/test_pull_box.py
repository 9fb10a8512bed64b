"""Boxes by what enters them: hand arithmetic, what is judged, and what cannot be asked."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, assumed, codes, problem, quantity, result


def inches(value: float) -> dict[str, Any]:
    return quantity(value, "in")


def raceway(wall: str, size: str, *circuits: str, kind: str = "pvc_schedule_40", **more: Any) -> dict[str, Any]:
    return {
        "wall": wall,
        "conduit": {"kind": "listed", "type": kind, "trade_size": size},
        "circuits": list(circuits),
        **more,
    }


def wires(size: str, count: int = 3) -> list[dict[str, Any]]:
    return [{"count": count, "cable": {"kind": "listed", "insulation": "THWN-2", "size": size}}]


def cables(count: int, diameter: float, shielding: str | None = "shielded") -> list[dict[str, Any]]:
    cable: dict[str, Any] = {"kind": "measured", "diameter": inches(diameter)}
    return [{"count": count, "cable": cable if shielding is None else cable | {"shielding": shielding}}]


def box(entries: list[dict[str, Any]], volts: float = 480, circuits: Any = None, **more: Any) -> dict[str, Any]:
    names = list(dict.fromkeys(name for entry in entries for name in entry["circuits"]))
    known = circuits or {}
    return {
        "voltage": quantity(volts, "V"),
        "entries": entries,
        "circuits": [{"name": name, **known.get(name, {})} for name in names],
        **more,
    }


def leasts(request: dict[str, Any]) -> list[Any]:
    """Give least, rule and the entries that decided, of length, width and depth."""
    found = result("pull-box", request)
    told = [found.get(f"least_{name}") for name in ("length", "width", "depth")]
    return [
        one and (one["least"]["value"], one["rule"], [int(at.rsplit("/")[-1]) for at in one["pointers"]])
        for one in told
    ]


def refused(body: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem("pull-box", body).errors or ()}


MIXED = box(
    [raceway("left", "3", "a"), raceway("right", "3", "a"), raceway("left", "2", "b"), raceway("top", "2", "b")]
)


def test_a_straight_and_an_angle_pull_in_one_box_ask_for_the_larger() -> None:
    """Length: 8 x 3 = 24 against 6 x 3 + 2 = 20; width: 6 x 2 = 12; depth: a raceway of 3.5 in: derived."""
    assert leasts(MIXED) == [
        (24, "straight_pull", [0, 1]),
        (12, "opposite_wall", [3]),
        (3.5, "room_for_entries", [0]),
    ]
    citations = [result("pull-box", MIXED)[f"least_{one}"]["citation"] for one in ("length", "width")]
    assert citations == ["NFPA 70-2023, 314.28(A)(1)", "NFPA 70-2023, 314.28(A)(2)"]


def test_each_row_of_a_wall_is_counted_by_itself() -> None:
    """Rows of 4, 2 and of 3, 3, 3: 6 x 4 + 2 = 26 and 6 x 3 + 6 = 24: derived."""
    entries = [raceway("left", size, "a", row=1) for size in ("4",)] + [raceway("left", "2", "b", row=1)]
    entries += [raceway("left", "3", name, row=2) for name in "cde"]
    entries += [raceway("bottom", "4", name) for name in "abcde"]
    length, width, depth = leasts(box(entries))
    assert length == (26, "opposite_wall", [0])
    assert width == (6 * 4 + 16, "opposite_wall", [5])
    assert depth == (4.5 + 3.5, "room_for_entries", [0, 2])


def test_entries_of_a_u_pull_stand_six_times_apart_along_their_wall() -> None:
    """Trade 4 on the bottom: 24 in between edges of 4.5 in raceways, 33 in; and 6 x 4 + 4 = 28 up: derived."""
    request = box([raceway("bottom", "4", "a"), raceway("bottom", "4", "a")])
    assert leasts(request)[:2] == [(33, "entries_apart", [0, 1]), (28, "opposite_wall", [0])]
    [pull] = result("pull-box", request)["pulls"]
    assert pull == {
        "circuit": "a",
        "kind": "u_pull",
        "spliced": False,
        "pointers": ["#/entries/0", "#/entries/1"],
        "least_entry_distance": inches(24),
        "verdict": "not_judged",
    }


def test_a_splice_asks_for_the_opposite_walls_and_not_for_eight_times() -> None:
    spliced = box([raceway("left", "3", "a"), raceway("right", "3", "a")], circuits={"a": {"spliced": True}})
    assert leasts(spliced)[0] == (18, "opposite_wall", [0])
    [pull] = result("pull-box", spliced)["pulls"]
    assert (pull["kind"], pull["spliced"], pull["least_entry_distance"]) == ("straight", True, inches(18))


def test_opposite_the_cover_the_room_to_bend_is_enough() -> None:
    """Table 312.6(A), one wire per terminal: 500 kcmil 6 in, 4 AWG 2 in; without sizes 6 x 3 = 18 in."""
    entries = [raceway("back", "3", "a"), raceway("top", "3", "a")]
    known = box(entries, circuits={"a": {"cables": wires("500 kcmil")}})
    assert leasts(known)[2] == (6, "bending_space", [0])
    assert leasts(known)[1] == (18, "opposite_wall", [1])
    small = box(entries, circuits={"a": {"cables": wires("4 AWG")}})
    assert leasts(small)[2] == (3.5, "room_for_entries", [1])
    assert leasts(box(entries))[2] == (18, "opposite_wall", [0])
    elsewhere = known | {"removable_cover": "left"}
    assert leasts(elsewhere)[2] == (18, "opposite_wall", [0]), "the cover is no longer opposite"


SPACES = {"8 AWG": 1.5, "6 AWG": 1.5, "4 AWG": 2, "3 AWG": 2, "2 AWG": 2.5, "1 AWG": 3, "1/0 AWG": 3.5, "2/0 AWG": 3.5}
SPACES |= {"3/0 AWG": 4, "4/0 AWG": 4, "250 kcmil": 4.5, "300 kcmil": 5, "350 kcmil": 5, "400 kcmil": 6}
SPACES |= {"500 kcmil": 6, "600 kcmil": 8, "700 kcmil": 8, "750 kcmil": 8, "900 kcmil": 8, "1000 kcmil": 10}


@pytest.mark.parametrize("size", [size for size in SPACES if size not in ("8 AWG", "6 AWG")])
def test_the_room_to_bend_is_that_of_the_table(size: str) -> None:
    """Beside half-inch raceways, so that nothing else decides the depth."""
    entries = [raceway("back", "1/2", "a"), raceway("top", "1/2", "a")]
    depth = leasts(box(entries, circuits={"a": {"cables": wires(size)}}))[2]
    assert depth == (SPACES[size], "bending_space", [0])


def test_above_1000_volts_cables_count_and_not_raceways() -> None:
    """Derived from the multiples: three shielded cables of 1.5 in at an angle and one nonshielded of 1.0 in straight.

    From the left 36 x 1.5 + 2 x 1.5 + 1.0 = 58 against 32 x 1.0; from the top 36 x 1.5 + 3.0 = 57; entries 54 apart.
    """
    entries: list[dict[str, Any]] = [
        {"wall": "left", "circuits": ["a"]},
        {"wall": "top", "circuits": ["a"]},
        {"wall": "left", "row": 2, "circuits": ["b"]},
        {"wall": "right", "circuits": ["b"]},
    ]
    lines: dict[str, Any] = {"a": {"cables": cables(3, 1.5)}, "b": {"cables": cables(1, 1.0, "nonshielded")}}
    request = box(entries, volts=15_000, circuits=lines)
    assert leasts(request) == [
        (58, "opposite_wall", [0]),
        (57, "opposite_wall", [1]),
        (2.5, "room_for_entries", [0, 2]),
    ]
    pulls = result("pull-box", request)["pulls"]
    assert [one.get("least_entry_distance") for one in pulls] == [inches(54), None]
    assert result("pull-box", request)["least_length"]["citation"] == "NFPA 70-2023, 314.71(B)"


@pytest.mark.parametrize(
    ("shielding", "length"), [("shielded", 72), ("individually_shielded", 72), ("nonshielded", 48)]
)
def test_a_straight_pull_of_cable_is_48_or_32_diameters_long(shielding: str, length: float) -> None:
    line = cables(3, 1.5, shielding)
    line[0]["cable"]["shielded_conductor_diameter"] = inches(0.6)
    entries = [{"wall": "left", "circuits": ["a"]}, {"wall": "right", "circuits": ["a"]}]
    request = box(entries, volts=1001, circuits={"a": {"cables": line}})
    assert leasts(request)[0] == (length, "straight_pull", [0, 1])


def test_the_threshold_is_that_of_the_edition_and_cable_of_no_type_is_taken_as_shielded() -> None:
    entries = [raceway("left", "3", "a"), raceway("right", "3", "a")]
    lines = {"a": {"cables": cables(3, 1.0, None)}}
    for edition in ("2017", "2020", "2023"):
        to, above = (box(entries, volts, lines, code_edition=edition) for volts in (1000, 1000.1))
        assert leasts(to)[0] == (24, "straight_pull", [0, 1])
        assert leasts(above)[0] == (48, "straight_pull", [0, 1])
        answer = ask("pull-box", above)
        assert answer["result"]["least_length"]["citation"] == f"NFPA 70-{edition}, 314.71(A)"
    assert assumed(answer)["#/circuits/0/cables/0/cable/shielding"] == "shielded"
    assert refused(box(entries, 15_000)) == {"#/circuits/0/cables": "missing"}
    wire = box(entries, 15_000, {"a": {"cables": wires("500 kcmil")}})
    assert assumed(ask("pull-box", wire))["#/circuits/0/cables/0/cable/shielding"] == "nonshielded"


def test_the_make_up_of_a_cable_decides_its_bending_radius() -> None:
    """Individually shielded: the larger of 12 x 0.9 = 10.8 and 7 x 2 = 14 in, and 12 x 1.3 = 15.6 in."""
    entries = [{"wall": "back", "circuits": ["a"]}, {"wall": "top", "circuits": ["a"]}]
    line = cables(1, 2.0, "individually_shielded")
    request = box(entries, 15_000, {"a": {"cables": line}})
    assert refused(request) == {"#/circuits/0/cables/0/cable/shielded_conductor_diameter": "missing"}
    for conductor, radius in ((0.9, 14), (1.3, 15.6)):
        line[0]["cable"]["shielded_conductor_diameter"] = inches(conductor)
        assert leasts(request)[2] == (radius, "bending_radius", [0])


def test_conductors_within_a_cable_count_each() -> None:
    """Two cables of four 12 AWG: 8 x 2.25 = 18.0 in3; of 2 AWG they size the box by its raceways."""
    entries = [raceway("left", "1", "a"), raceway("right", "1", "a")]
    cable: dict[str, Any] = {"kind": "multiconductor", "diameter": inches(0.4)}
    cable["conductor"] = {"material": "copper", "size": "12 AWG", "count": 4}
    request = box(entries, circuits={"a": {"cables": [{"count": 2, "cable": cable}]}})
    small = result("pull-box", request)["small_conductors"]
    assert (small["conductor_count"], small["least_volume"]["value"]) == (8, pytest.approx(18))
    cable["conductor"]["size"] = "2 AWG"
    found = result("pull-box", request)
    assert found["least_length"]["least"] == inches(8)
    assert "small_conductors" not in found


def test_opposite_the_cover_cable_needs_its_bending_radius() -> None:
    """12 x 1.5 = 18 in shielded; the section is 300.34 before 2023."""
    entries = [{"wall": "back", "circuits": ["a"]}, {"wall": "top", "circuits": ["a"]}]
    request = box(entries, 15_000, {"a": {"cables": cables(1, 1.5)}}, code_edition="2020")
    assert leasts(request)[2] == (18, "bending_radius", [0])
    assert result("pull-box", request)["least_depth"]["citation"] == "NFPA 70-2020, 300.34"
    own = copy.deepcopy(request)
    own["circuits"][0]["cables"][0]["cable"]["bending_radius"] = inches(21)
    assert leasts(own)[2] == (21, "bending_radius", [0])


SMALL = {"a": {"cables": [*wires("12 AWG", 6), *wires("10 AWG", 3)]}}


def test_small_conductors_take_volume_and_no_length() -> None:
    """6 x 2.25 + 3 x 2.50 = 21.0 in3, which the square box of 4 x 1-1/2 has; spliced it is counted twice."""
    entries = [raceway("left", "3/4", "a"), raceway("right", "3/4", "a")]
    found = result("pull-box", box(entries, circuits=SMALL))
    assert "least_length" not in found
    small = found["small_conductors"]
    assert (small["conductor_count"], small["least_volume"]) == (9, {"value": pytest.approx(21), "unit": "in3"})
    assert small["standard_box"] == {"size": "4 x 1-1/2", "kind": "square", "volume": quantity(21, "in3")}
    spliced = {"a": SMALL["a"] | {"spliced": True}}
    twice = result("pull-box", box(entries, circuits=spliced))["small_conductors"]
    assert (twice["conductor_count"], twice["least_volume"]["value"]) == (18, pytest.approx(42))
    assert twice["standard_box"]["size"] == "4-11/16 x 2-1/8"
    metric = result("pull-box", box(entries, circuits=SMALL), "units=metric")["small_conductors"]["least_volume"]
    assert metric == {"value": pytest.approx(21 * 0.016387064), "unit": "L"}
    tight = box(entries, circuits=SMALL, box={"length": inches(4), "width": inches(4), "depth": inches(1.25)})
    assert codes(ask("pull-box", tight), "violation") == ["box_volume_too_small"]
    beside = box(
        [*entries, raceway("left", "2", "b"), raceway("right", "2", "b")],
        circuits=SMALL | {"b": {"cables": wires("1/0 AWG")}},
    )
    both = result("pull-box", beside)
    assert both["least_length"]["least"] == inches(16)
    assert "standard_box" not in both["small_conductors"]


@pytest.mark.parametrize("kind", ["rmc", "emt", "fmc", "lfmc"])
def test_a_raceway_narrower_than_pipe_takes_the_hole_of_its_trade_size(kind: str) -> None:
    """Five of trade 2, 2.375 in each, straight through: 11.875 in of wall."""
    entries = [raceway(wall, "2", f"{number}", kind=kind) for number in range(5) for wall in ("left", "right")]
    assert leasts(box(entries))[1][:2] == (11.875, "room_for_entries")
    if kind not in ("rmc", "emt"):
        small = [raceway(wall, "3/8", "a", kind=kind) for wall in ("left", "right")]
        assert leasts(box(small))[1][:2] == (0.84, "room_for_entries")


def test_a_cable_turns_no_tighter_than_its_maker_says() -> None:
    """A cable of 2 in that asks for 30 in: 30 + 2 = 32 in against 6 x 4 = 24: derived."""
    line: dict[str, Any] = {"kind": "measured", "diameter": inches(2), "bending_radius": inches(30)}
    entries = [raceway("left", "4", "a"), raceway("top", "4", "a")]
    stiff = box(entries, circuits={"a": {"cables": [{"count": 1, "cable": line}]}})
    assert leasts(stiff)[:2] == [(32, "bending_radius", [0]), (32, "bending_radius", [1])]
    entries[1]["wall"] = "right"
    assert leasts(stiff)[0] == (32, "straight_pull", [0, 1]), "8 x 4, and nothing turns"


def sides(length: float, width: float, depth: float) -> dict[str, Any]:
    return {"length": inches(length), "width": inches(width), "depth": inches(depth)}


def placed(size: float) -> dict[str, Any]:
    entries = [raceway("left", "4", "a", position=inches(size)), raceway("bottom", "4", "a", position=inches(size))]
    return box(entries, box=sides(30, 30, 8))


def test_a_box_is_held_against_every_least_dimension() -> None:
    answer = ask("pull-box", MIXED | {"box": sides(23, 11, 4)})
    found = [(one["code"], one["pointer"], one["actual"], one["limit"]) for one in answer["findings"][:2]]
    assert found == [
        ("box_too_small", "#/box/length", inches(23), inches(24)),
        ("box_too_small", "#/box/width", inches(11), inches(12)),
    ]
    assert answer["verdict"] == "violates"
    assert answer["findings"][0]["citation"] == "NFPA 70-2023, 314.28(A)(1)"
    straight = box([raceway("left", "3", "a"), raceway("right", "3", "a")], box=sides(24, 6, 6))
    assert ask("pull-box", straight)["verdict"] == "complies"
    assert "verdict" not in ask("pull-box", MIXED), "nothing is held against a limit"


def test_entries_of_one_conductor_are_judged_by_their_positions() -> None:
    """Both 20 in from the corner: (20 - 2.25) x sqrt 2 = 25.10 in against 24; both 19 in: 23.69 in: derived.

    One at the back and one at the front of a box 12 in deep, 7.5 in: with 19 tan a = 7.5 - 2.25 sin a, a = 19.55 deg,
    twice 19 - 2.25 cos a = 16.880 in and 7.5 - 4.5 sin a = 5.994 in make 24.61 in, so that is open.
    """
    far, near = ask("pull-box", placed(20)), ask("pull-box", placed(19) | {"box": sides(30, 30, 12)})
    assert far["verdict"] == "complies", "how deep each lies is not said, but they cannot be nearer"
    assert "entry_distance" not in far["result"]["pulls"][0]
    deep = copy.deepcopy(placed(20))
    for entry in deep["entries"]:
        entry["offset"] = inches(4)
    answer = ask("pull-box", deep)
    assert answer["verdict"] == "complies"
    [pull] = answer["result"]["pulls"]
    assert pull["entry_distance"]["value"] == pytest.approx(17.75 * math.sqrt(2))
    assert pull["verdict"] == "complies"
    assert "entry_distance_not_judged" in codes(near, "caution")
    for entry in deep["entries"]:
        entry["position"] = inches(19)
    close = ask("pull-box", deep)
    [found] = [one for one in close["findings"] if one["severity"] == "violation"]
    assert (found["code"], found["pointer"]) == ("entries_too_close", "#/entries/1/position")
    assert found["actual"]["value"] == pytest.approx(16.75 * math.sqrt(2))
    assert found["limit"] == inches(24)


def test_entries_exactly_so_far_apart_as_the_rule_asks_comply() -> None:
    """Derived: trade 4, 4.5 in, at 2.25 and 30.75 in of one wall leave 24; trade 3, 3.5 in, in two rows at 1.75 and
    23.25 in leave 18; in walls 18 in apart they are 18 in apart, 3 in aside of each other too.
    """

    def at(wall: str, size: str, position: float, offset: float, row: int = 1) -> dict[str, Any]:
        return raceway(wall, size, "a", position=inches(position), offset=inches(offset), row=row)

    along = box([at("left", "4", 2.25, 4), at("left", "4", 30.75, 4)], box=sides(28, 33, 8))
    across = box([at("left", "3", 2, 1.75), at("left", "3", 2, 23.25, row=2)], box=sides(18, 4, 25))
    facing = box([at("left", "3", 3, 4), at("right", "3", 6, 4)], circuits={"a": {"spliced": True}})
    for request, least in ((along, 24), (across, 18), (facing | {"box": sides(18, 8, 8)}, 18)):
        answer = ask("pull-box", request)
        [pull] = answer["result"]["pulls"]
        assert pull["entry_distance"]["value"] == pytest.approx(least, rel=1e-12)
        assert answer["verdict"] == pull["verdict"] == "complies"
    for request, member in ((along, "position"), (across, "offset")):
        closer = copy.deepcopy(request)
        closer["entries"][1][member]["value"] -= 0.001
        assert ask("pull-box", closer)["verdict"] == "violates"


def test_entries_of_two_rows_that_touch_are_no_way_apart() -> None:
    """Trade 3 takes 3.5 in: in a wall of 3.5 by 7 in both touch, whatever their diameters leave in metres."""
    touching = box([raceway("right", "3", "a"), raceway("right", "3", "a", row=2)], box=sides(18, 3.5, 7))
    [found] = [one for one in ask("pull-box", touching)["findings"] if one["severity"] == "violation"]
    assert (found["code"], found["actual"]) == ("entries_too_close", inches(0))
    assert "at most 0 in apart" in found["message"]


def test_without_positions_a_box_with_a_turn_is_not_judged_as_a_whole() -> None:
    answer = ask("pull-box", MIXED | {"box": sides(24, 24, 8)})
    assert answer["verdict"] == "not_judged"
    assert codes(answer, "violation") == []
    assert "entry_distance_not_judged" in codes(answer, "caution")


def test_the_smallest_of_the_boxes_at_hand_is_named_turned_if_need_be() -> None:
    sizes = [sides(36, 36, 10), sides(12, 24, 6), sides(24, 12, 3), sides(24, 24, 8)]
    found = result("pull-box", MIXED | {"box_sizes": sizes})
    verdicts = [(one["verdict"], one["turned"]) for one in found["candidates"]]
    assert verdicts == [("not_judged", False), ("not_judged", True), ("violates", False), ("not_judged", False)]
    smallest = found["smallest_box"]
    assert (smallest["pointer"], smallest["turned"]) == ("#/box_sizes/1", True)
    assert [smallest[one] for one in ("length", "width", "depth")] == [inches(12), inches(24), inches(6)]
    straight = box([raceway("left", "3", "a"), raceway("right", "3", "a")], box_sizes=sizes)
    answer = ask("pull-box", straight)
    verdicts = [(one["verdict"], one["turned"]) for one in answer["result"]["candidates"]]
    assert verdicts == [("complies", False), ("complies", True), ("violates", False), ("complies", False)]
    assert answer["verdict"] == answer["result"]["smallest_box"]["verdict"] == "complies"
    none = ask("pull-box", MIXED | {"box_sizes": sizes[2:3]})
    assert none["verdict"] == "violates"
    assert "smallest_box" not in none["result"]
    assert codes(none, "violation") == ["no_size_large_enough"]


def test_a_box_at_hand_is_judged_by_its_own_dimensions_whatever_else_can_be_had() -> None:
    """Trade size 3 straight through takes 8 x 3 = 24 in."""
    straight = box([raceway("left", "3", "a"), raceway("right", "3", "a")], box_sizes=[sides(12, 12, 6)])
    built = ask("pull-box", straight | {"box": sides(24, 24, 8)})
    assert built["verdict"] == "complies"
    assert codes(built, "violation") == []
    assert "no_size_large_enough" in codes(built, "note")
    small = straight | {"box": sides(20, 24, 8), "box_sizes": [sides(24, 24, 8)]}
    assert codes(ask("pull-box", small), "violation") == ["box_too_small"]
    assert ask("pull-box", straight)["verdict"] == "violates"


CORNER = box([raceway("left", "4", "a"), raceway("bottom", "1", "a")])


def test_a_box_in_which_entries_cannot_lie_so_far_apart_is_not_told_to_hold_them() -> None:
    """Trade 4 and 1 ask for 24 in. In 24 x 6 x 6 in: the centers (23.3425, 3.75, 3.0925) in apart at most. 3.75 tan a =
    3.0925 - 0.6575 sin b and 23.3425 tan b = 3.0925 - 2.25 sin a: sin a = 0.63042, sin b = 0.07156; the near edges are
    (22.6867, 2.0034, 1.6270) in apart, 22.833 in. Derived.
    """
    answer = ask("pull-box", CORNER | {"box_sizes": [sides(24, 6, 6)]})
    [candidate] = answer["result"]["candidates"]
    assert (candidate["verdict"], answer["verdict"]) == ("violates", "violates")
    assert "smallest_box" not in answer["result"]
    built = ask("pull-box", CORNER | {"box": sides(24, 6, 6)})
    [found] = [one for one in built["findings"] if one["severity"] == "violation"]
    assert (found["code"], found["limit"]) == ("entries_too_close", inches(24))
    assert found["actual"]["value"] == pytest.approx(22.833, abs=0.001)
    assert "at most" in found["message"]
    wide = ask("pull-box", CORNER | {"box_sizes": [sides(24, 6, 6), sides(30, 24, 6)]})
    assert wide["result"]["smallest_box"]["pointer"] == "#/box_sizes/1"
    assert wide["result"]["smallest_box"]["verdict"] == wide["verdict"] == "not_judged"
    [open_one] = [one for one in wide["findings"] if one["code"] == "entry_distance_not_judged"]
    assert "at least 24 in" in open_one["message"]
    plain = ask("pull-box", CORNER)
    assert "least_box_too_small_for_distance" in codes(plain, "caution")
    assert "verdict" not in plain


def test_a_candidate_in_which_an_entry_would_reach_beyond_its_wall_does_not_hold_it() -> None:
    found = result("pull-box", placed(20) | {"box_sizes": [sides(22, 40, 8), sides(24, 24, 8)]})
    assert [one["verdict"] for one in found["candidates"]] == ["violates", "complies"]


def test_the_working_of_a_box_shows_the_arithmetic_of_every_dimension() -> None:
    steps = [(one["symbol"], one["substituted"]) for one in ask("pull-box", MIXED, "working=true")["working"]]
    assert ("L", "left row 1, right row 1: 8 x 3 in") in steps
    assert ("L", "left row 1: 6 x 3 in + 2 in") in steps
    assert ("W", "top row 1: 6 x 2 in + 0 in") in steps


MANHOLE = box(
    [{"wall": "left", "circuits": ["a"]}, {"wall": "right", "circuits": ["a"]}],
    15_000,
    {"a": {"cables": cables(3, 1.5), "spliced": True}},
    structure="manhole",
)


def test_a_manhole_has_its_published_size_and_the_wall_of_its_racks() -> None:
    """R = 12 x 1.5 + 0.75 = 18.75 in; S = 12 in: sqrt(4 R S - S2) = 27.495 in; 2 (12 + 27.495) + 72 = 150.99 in."""
    plain = leasts(MANHOLE)
    assert plain == [(72, "straight_pull", [0, 1]), (48, "least_structure", []), (72, "least_structure", [])]
    racked = result("pull-box", MANHOLE | {"racking": {"offset": inches(12)}})
    assert racked["racking"]["centerline_radius"]["value"] == pytest.approx(18.75)
    assert racked["racking"]["offset_length"]["value"] == pytest.approx(27.4955, abs=1e-4)
    assert racked["racking"]["wall_length"]["value"] == pytest.approx(150.9909, abs=1e-4)
    assert racked["least_length"]["rule"] == "racking"
    assert racked["least_access_opening"] == inches(30)
    assert racked["structure"] == "manhole"
    through = copy.deepcopy(MANHOLE)
    through["circuits"][0]["spliced"] = False
    straight = result("pull-box", through | {"racking": {"offset": inches(0)}})
    assert straight["racking"]["wall_length"]["value"] == pytest.approx(24), "only straight out of both ducts"
    no_cables = box([raceway("left", "3", "a"), raceway("right", "3", "a")], racking={"offset": inches(6)})
    assert refused(no_cables) == {"#/racking/bending_radius": "missing"}
    given = result("pull-box", no_cables | {"racking": {"offset": inches(6), "bending_radius": inches(20)}})
    assert given["racking"]["centerline_radius"]["value"] == pytest.approx(20)


def test_who_goes_into_a_manhole_is_cautioned() -> None:
    manhole = codes(ask("pull-box", MANHOLE), "caution")
    assert {"confined_space", "treat_as_energized", "structural_design", "excavation_safety"} <= set(manhole)
    plain = codes(ask("pull-box", MIXED), "caution")
    assert plain == ["treat_as_energized"]
    assert "rack_the_conductors" in codes(ask("pull-box", MANHOLE | {"racking": {"offset": inches(12)}}), "caution")


def test_a_handhole_holds_no_splice_and_is_no_manhole() -> None:
    answer = ask("pull-box", MANHOLE | {"structure": "handhole"})
    found = {one["code"]: one["pointer"] for one in answer["findings"]}
    assert found["splice_in_a_handhole"] == "#/circuits/0/spliced"
    assert found["larger_than_a_handhole"] == "#/structure"
    small = box([raceway("left", "4", "a"), raceway("right", "4", "a")], structure="handhole")
    assert codes(ask("pull-box", small)) == ["treat_as_energized", "excavation_safety", "structural_design"]


def test_conductors_are_racked_in_a_box_of_more_than_six_feet() -> None:
    entries = [raceway("left", "4", "a"), raceway("right", "4", "a")]
    assert "rack_the_conductors" in codes(ask("pull-box", box(entries, box=sides(72.1, 12, 12))))
    assert "rack_the_conductors" not in codes(ask("pull-box", box(entries, box=sides(72, 12, 12))))


def test_a_circuit_that_enters_and_never_leaves_has_no_answer() -> None:
    lost = box([raceway("left", "3", "a", "b"), raceway("right", "3", "a")])
    assert refused(lost) == {"#/entries/0/circuits/1": "never_leaves"}
    assert refused(box([raceway("left", "3", "a")], circuits={"a": {"spliced": True}})) == {
        "#/entries/0/circuits/0": "never_leaves"
    }
    idle = copy.deepcopy(MIXED)
    idle["circuits"].append({"name": "spare"})
    assert refused(idle) == {"#/circuits/2/name": "enters_nowhere"}


def test_an_entry_larger_than_its_wall_has_no_answer() -> None:
    """Trade 4 has 4.5 in; a box 4 in deep has no wall for it, and one 4 in wide none on its left."""
    for narrow in (sides(40, 30, 4), sides(40, 4, 30)):
        request = box([raceway("left", "4", "a"), raceway("right", "4", "a")], box=narrow)
        one, other = list(problem("pull-box", request).errors or ())
        assert (one.pointer, one.code) == ("#/entries/0/conduit", "larger_than_its_wall")
        assert other.pointer == "#/entries/1/conduit"
        assert one.maximum is not None
        assert one.maximum.value == pytest.approx(4)
    beyond = placed(29)
    assert refused(beyond) == {
        "#/entries/0/position/value": "outside_its_wall",
        "#/entries/1/position/value": "outside_its_wall",
    }
    assert refused(placed(1)) == refused(beyond)


def test_a_cable_larger_than_its_wall_has_no_answer() -> None:
    entries: list[dict[str, Any]] = [{"wall": "left", "circuits": ["a"]}, {"wall": "right", "circuits": ["a"]}]
    request = box(entries, 15_000, {"a": {"cables": cables(1, 2.0)}})
    assert refused(request | {"box": sides(100, 1, 1)}) == {
        f"#/entries/{at}/wall": "larger_than_its_wall" for at in (0, 1)
    }
    assert leasts(request)[1:] == [(2, "room_for_entries", [0]), (2, "room_for_entries", [0])]


def test_raceways_that_lie_over_each_other_have_no_answer() -> None:
    """Trade 4 has 4.5 in: centers 1 in apart overlap, and 4.5 in apart touch."""

    def two(apart: float, **more: Any) -> dict[str, Any]:
        entries = [raceway("left", "4", name, position=inches(at), **more) for name, at in (("a", 6), ("b", 6 + apart))]
        far = [raceway("right", "4", name) for name in ("a", "b")]
        return box(entries + far, box=sides(36, 24, 6))

    for more in ({}, {"offset": inches(3)}):
        assert refused(two(1, **more)) == {"#/entries/1/position": "overlaps_another_entry"}
        assert ask("pull-box", two(4.5, **more))["verdict"] == "complies"
    apart = two(1)
    apart["entries"][1]["row"] = 2
    assert ask("pull-box", apart | {"box": sides(36, 24, 12)})["verdict"] == "complies"


def test_a_u_pull_between_two_rows_may_be_apart_across_them() -> None:
    """Trade 3 at offsets of 2 and 24 in: 22 - 3.5 = 18.5 in against 18, in a box 12 in wide: derived."""
    entries = [raceway("left", "3", "a", row=row, offset=inches(at)) for row, at in ((1, 2), (2, 24))]
    for entry in entries:
        entry["position"] = inches(6)
    answer = ask("pull-box", box(entries, box=sides(24, 12, 30)))
    assert answer["verdict"] == "complies"
    [pull] = answer["result"]["pulls"]
    assert pull["entry_distance"]["value"] == pytest.approx(18.5)
    assert leasts(box(entries))[1] == (3.5, "room_for_entries", [0])


def test_a_handhole_larger_than_handholes_are_built_is_cautioned() -> None:
    entries = [raceway("left", "4", "a"), raceway("right", "4", "a")]
    large = ask("pull-box", box(entries, structure="handhole", box=sides(60, 40, 48)))
    assert codes(large, "caution").count("larger_than_a_handhole") == 3
    most = ask("pull-box", box(entries, structure="handhole", box=sides(48, 36, 36)))
    assert "larger_than_a_handhole" not in codes(most)


def test_racks_above_the_threshold_are_practice_and_building_wire_is_cautioned_there() -> None:
    answer = ask("pull-box", MANHOLE | {"racking": {"offset": inches(12)}})
    [racks] = [one for one in answer["findings"] if one["code"] == "rack_the_conductors"]
    assert "314.28" not in racks["citation"]
    entries = [raceway("left", "3", "a"), raceway("right", "3", "a")]
    wire = ask("pull-box", box(entries, 15_000, {"a": {"cables": wires("500 kcmil")}}))
    [found] = [one for one in wire["findings"] if one["code"] == "insulation_below_the_voltage"]
    assert found["pointer"] == "#/circuits/0/cables/0/cable/insulation"
    assert "insulation_below_the_voltage" not in codes(
        ask("pull-box", box(entries, 480, {"a": {"cables": wires("500 kcmil")}}))
    )


def test_what_else_cannot_be_asked_is_refused_with_its_pointer() -> None:
    unknown = copy.deepcopy(MIXED)
    unknown["entries"][3]["circuits"] = ["c"]
    assert refused(unknown) == {"#/entries/3/circuits/0": "no_such_circuit"}
    twice = copy.deepcopy(MIXED)
    twice["circuits"].append({"name": "a"})
    twice["entries"][0]["circuits"] = ["a", "a"]
    assert refused(twice) == {"#/circuits/2/name": "name_given_twice", "#/entries/0/circuits/1": "name_given_twice"}
    front = copy.deepcopy(MIXED)
    front["entries"][1]["wall"] = "front"
    assert refused(front) == {"#/entries/1/wall": "entry_in_the_cover"}
    third = box([raceway("left", "3", "a"), raceway("right", "3", "a"), raceway("top", "3", "a")])
    assert refused(third) == {"#/circuits/0/spliced": "more_than_two_entries"}
    many = box([raceway("left", "3", "a", row=row) for row in range(1, 10)], circuits={"a": {"spliced": True}})
    assert refused(many) == {"#/circuits/0/spliced": "too_many_entries"}
    assert len(result("pull-box", many | {"entries": many["entries"][:8]})["pulls"]) == 28
    without = copy.deepcopy(MIXED)
    del without["entries"][2]["conduit"]
    assert refused(without) == {"#/entries/2/conduit": "missing"}


def test_a_tap_pairs_every_two_of_its_entries() -> None:
    entries = [raceway("left", "3", "a"), raceway("right", "2", "a"), raceway("top", "2", "a")]
    found = result("pull-box", box(entries, circuits={"a": {"spliced": True}}))
    assert [(one["kind"], one["least_entry_distance"]["value"]) for one in found["pulls"]] == [
        ("straight", 18),
        ("angle", 18),
        ("angle", 12),
    ]


@pytest.mark.parametrize(("outside", "size"), [(4.5, 4), (3.5, 3.5), (2.375, 2), (0.84, 0.75), (8.625, 8.625)])
def test_a_raceway_by_its_diameters_counts_as_no_less_than_its_trade_size(outside: float, size: float) -> None:
    conduit = {"kind": "measured", "inside_diameter": inches(outside * 0.8), "outside_diameter": inches(outside)}
    entries = [{"wall": wall, "conduit": conduit, "circuits": ["a"]} for wall in ("left", "right")]
    assert leasts(box(entries))[0] == (pytest.approx(8 * size), "straight_pull", [0, 1])


def test_the_example_is_a_whole_box() -> None:
    found = result("pull-box", EXAMPLES["pull-box"])
    assert found["smallest_box"]["pointer"] == "#/box_sizes/1", "of the other one an entry 19 in up reaches beyond"
    assert [one["verdict"] for one in found["pulls"]] == ["complies"]
