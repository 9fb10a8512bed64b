"""Conduit size: every size of a type, and what a small change would do."""

from __future__ import annotations

import pytest
from ductrun.subjects.parts.conduit import SIZES

from tests.asking import codes, quantity
from tests.subjects.fill.sets import bare, cable, listed, size


@pytest.mark.parametrize(
    "kind", [kind for kind, sizes in SIZES.items() if sizes and all(r.inside_diameter_in for r in sizes.values())]
)
def test_every_raceway_of_table_4_is_sized(kind: str) -> None:
    answer = size(listed("THHN", "12 AWG", 3), kind=kind)
    assert [candidate["trade_size"] for candidate in answer["result"]["candidates"]] == list(SIZES[kind])
    assert answer["result"]["trade_size"] in SIZES[kind]


def test_a_size_comes_with_the_next_one_and_what_would_change_it() -> None:
    found = size(listed("THWN-2", "3/0 AWG", 4), bare("6 AWG", 1, stranding="stranded"))["result"]
    assert (found["trade_size"], found["next_trade_size"]) == ("2", "2-1/2")
    smallest = next(candidate for candidate in found["candidates"] if candidate["verdict"] == "complies")
    assert smallest["trade_size"] == "2"
    assert [(change["pointer"], change["change"], change["trade_size"]) for change in found["changes"]] == [
        ("#/cables/0", "one_more", "2-1/2"),
        ("#/cables/0", "one_size_larger", "2-1/2"),
        ("#/cables/1", "one_more", "2"),
        ("#/cables/1", "one_size_larger", "2"),
    ]


def test_the_last_size_of_a_table_has_none_larger() -> None:
    changes = size(listed("THHN", "1000 kcmil", 1), cable(0.5, 1))["result"]["changes"]
    assert [(change["pointer"], change["change"]) for change in changes] == [
        ("#/cables/0", "one_more"),
        ("#/cables/1", "one_more"),
    ]


def test_a_solid_bare_conductor_one_size_larger_takes_the_row_there_is() -> None:
    changes = size(bare("8 AWG", 3, stranding="solid"))["result"]["changes"]
    assert [change["change"] for change in changes] == ["one_more", "one_size_larger"]


def test_room_kept_in_reserve_raises_the_size() -> None:
    conductors = listed("THHN", "12 AWG", 8)
    plain, spare = size(conductors), size(conductors, spare_percent=40)
    assert (plain["result"]["trade_size"], spare["result"]["trade_size"]) == ("1/2", "3/4")
    kept = next(candidate for candidate in spare["result"]["candidates"] if candidate["verdict"] == "complies")
    assert kept["spare_area"]["value"] >= 0.4 * kept["limit_area"]["value"]
    assert "#/spare_percent" in [place for assumption in plain["assumptions"] for place in assumption["pointers"]]


def test_a_set_that_no_size_of_the_type_holds_is_a_violation() -> None:
    answer = size(listed("THHN", "500 kcmil", 9), kind="ent")
    assert "no_size_complies" in codes(answer, "violation")
    assert "trade_size" not in answer["result"]
    assert not any(candidate["verdict"] == "complies" for candidate in answer["result"]["candidates"])
    assert not answer["result"]["candidates"][0]["passes_bore"]
    assert all("trade_size" not in change for change in answer["result"]["changes"])


def test_a_set_that_no_size_holds_says_how_full_the_largest_is() -> None:
    answer = size(listed("THHN", "500 kcmil", 9), kind="ent")
    assert answer["verdict"] == "violates"
    [violation] = [finding for finding in answer["findings"] if finding["severity"] == "violation"]
    assert violation["actual"] == quantity(answer["result"]["candidates"][-1]["fill_percent"], "percent")
    assert violation["limit"] == quantity(40, "percent")
    assert violation["citation"].startswith("NFPA 70-2023, Chapter 9, Table 1")
    assert violation["pointer"] == "#/cables"


def test_a_cable_wider_than_every_bore_is_a_violation_too() -> None:
    answer = size(cable(8, 1))
    assert answer["verdict"] == "violates"
    assert not any(candidate["passes_bore"] for candidate in answer["result"]["candidates"])


def test_a_spare_that_no_size_leaves_breaks_the_limit_of_the_caller_and_not_that_of_the_code() -> None:
    wires = listed("THHN", "500 kcmil", 12)
    plain, spare = size(wires), size(wires, spare_percent=60)
    assert plain["verdict"] == "complies"
    assert spare["verdict"] == "violates"
    assert "trade_size" not in spare["result"]
    [violation] = [finding for finding in spare["findings"] if finding["severity"] == "violation"]
    assert violation["code"] == "no_size_complies"
    assert "60 percent of the permitted area" in violation["message"]
    assert violation["standing"] == "caller"
    assert violation["limit"]["value"] == pytest.approx(16)
    assert violation["actual"]["value"] > 16


def test_a_larger_bare_conductor_stays_as_it_is_made_where_the_table_has_it() -> None:
    """One 10 AWG bare one size up is 8 AWG: solid it takes less than stranded, and the changes show it."""

    def larger(**more: str) -> str:
        line = bare("10 AWG", 7, **more)
        [changed] = [
            change["trade_size"]
            for change in size(line, kind="emt")["result"]["changes"]
            if change["change"] == "one_size_larger"
        ]
        return str(changed)

    def smallest(**more: str) -> str:
        return str(size(bare("8 AWG", 7, **more), kind="emt")["result"]["trade_size"])

    assert larger(stranding="solid") == smallest(stranding="solid")
    assert larger(stranding="stranded") == larger() == smallest(stranding="stranded")
