"""Fill, size and count: the awkward cases, decided and held."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from ductrun.subjects.parts.conduit import SIZES

from tests.asking import EXAMPLES, ask, codes, problem, quantity, result


def listed(insulation: str, size: str, count: int | None = None, kind: str = "listed") -> dict[str, Any]:
    line: dict[str, Any] = {"kind": kind, "insulation": insulation, "size": size}
    return line if count is None else line | {"count": count}


def pvc(trade_size: str) -> dict[str, str]:
    return {"kind": "listed", "type": "pvc_schedule_40", "trade_size": trade_size}


def fill(conduit: dict[str, Any], *conductors: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("fill", {"conduit": conduit, "conductors": list(conductors), "code_edition": "2023"} | more)


def size(*conductors: dict[str, Any], kind: str = "pvc_schedule_40", **more: Any) -> dict[str, Any]:
    return ask("conduit-size", {"type": kind, "conductors": list(conductors), "code_edition": "2023"} | more)


def count(conduit: dict[str, Any], conductor: dict[str, Any], **more: Any) -> dict[str, Any]:
    return ask("conductor-count", {"conduit": conduit, "conductor": conductor, "code_edition": "2023"} | more)


def cable(inches: float, number: int | None = None) -> dict[str, Any]:
    line: dict[str, Any] = {"kind": "cable", "major_diameter": quantity(inches, "in")}
    return line if number is None else line | {"count": number}


def test_a_sum_that_ties_with_the_printed_column_complies_though_the_circle_is_exceeded() -> None:
    """Two 2 AWG and two 6 AWG THWN-2 in a 1 inch: 0.3330 against the printed 0.333 and the unrounded 0.33265."""
    answer = fill(pvc("1"), listed("THWN-2", "2 AWG", 2), listed("THWN-2", "6 AWG", 2))
    found = answer["result"]
    assert found["conductor_area"]["value"] == found["limit_area"]["value"] == 0.333
    assert found["within_limit"]
    assert found["fill_percent"] == pytest.approx(40.02, abs=0.005)
    assert found["spare_area"]["value"] == 0


def test_the_eight_tenths_rule_lets_the_sum_exceed_40_percent_and_says_so() -> None:
    """Three 600 kcmil in a 3 inch Schedule 80."""
    conduit = {"kind": "listed", "type": "pvc_schedule_80", "trade_size": "3"}
    answer = fill(conduit, listed("THHN", "600 kcmil", 3))
    assert answer["result"]["within_limit"]
    assert answer["result"]["rounding_decided"]
    assert answer["result"]["fill_percent"] > 40
    assert answer["result"]["limit_reason"] == "More than two conductors or cables: 40 percent."
    assert "rounded_up" in codes(answer, "note")


def test_a_single_cable_over_53_percent_needs_the_option() -> None:
    """A 1.5 in cable in a 2 inch: 1.767 in2 against 1.744 in2, a quotient of 0.987."""
    refused = fill(pvc("2"), cable(1.5, 1))
    assert not refused["result"]["within_limit"]
    assert refused["result"]["smallest_trade_size"] == "2-1/2"
    admitted = fill(pvc("2"), cable(1.5, 1), single_cable_rounding=True)
    assert admitted["result"]["within_limit"]
    assert admitted["result"]["rounding_decided"]
    assert size(cable(1.5, 1))["result"]["trade_size"] == "2-1/2"
    assert size(cable(1.5, 1), single_cable_rounding=True)["result"]["trade_size"] == "2"
    assert count(pvc("2"), cable(1.5))["result"]["maximum_count"] == 0
    assert count(pvc("2"), cable(1.5), single_cable_rounding=True)["result"]["maximum_count"] == 1


def test_a_single_table_conductor_is_counted_as_annex_c_counts_it() -> None:
    answer = count(pvc("1/2"), listed("THHN", "1/0 AWG"))
    assert answer["result"]["maximum_count"] == 1
    assert answer["result"]["rounding_decided"]
    assert answer["result"]["limit_percent"] == 53
    assert fill(pvc("1/2"), listed("THHN", "1/0 AWG", 1))["result"]["within_limit"]


def test_equal_areas_of_different_insulation_are_equal_conductors() -> None:
    """8 AWG THW and 8 AWG XHHW-2 are both 0.0437 in2 in Table 5: Note 7 speaks of equal area, not of equal kind."""
    answer = fill(
        {"kind": "listed", "type": "emt", "trade_size": "1"}, listed("THW", "8 AWG", 4), listed("XHHW-2", "8 AWG", 4)
    )
    assert answer["result"]["rounding_decided"]
    assert answer["result"]["within_limit"]


def test_a_line_given_twice_counts_twice() -> None:
    once = fill(pvc("2"), listed("THHN", "3/0 AWG", 4))
    twice = fill(pvc("2"), listed("THHN", "3/0 AWG", 2), listed("THHN", "3/0 AWG", 2))
    assert once["result"] == twice["result"]


def test_a_line_of_none_is_refused() -> None:
    raised = problem("fill", {"conduit": pvc("2"), "conductors": [listed("THHN", "3/0 AWG", 0)]})
    assert raised.errors is not None
    assert raised.errors[0].allowed == {"minimum": 1, "maximum": 100000}


def test_grounding_conductors_count_insulated_or_bare() -> None:
    phases = listed("THHN", "3/0 AWG", 3)
    bare = {"kind": "bare", "size": "6 AWG", "stranding": "stranded", "count": 1}
    without, with_bare, with_green = (
        fill(pvc("2"), *lines)["result"]["conductor_area"]["value"]
        for lines in ((phases,), (phases, bare), (phases, listed("THHN", "6 AWG", 1)))
    )
    assert without < with_bare < with_green


def test_every_kind_of_conductor_mixes_in_one_list() -> None:
    answer = fill(
        pvc("4"),
        listed("THWN-2", "4/0 AWG", 3),
        listed("XHHW-2", "250 kcmil", 2, "compact"),
        {"kind": "bare", "size": "2 AWG", "stranding": "stranded", "count": 1},
        {"kind": "measured", "diameter": quantity(12, "mm"), "count": 2},
        cable(0.9, 1),
    )
    assert answer["result"]["conductor_count"] == 9
    assert answer["result"]["limit_rule"] == "over_two_conductors"


@pytest.mark.parametrize(
    "kind", [kind for kind, sizes in SIZES.items() if sizes and all(r.inside_diameter_in for r in sizes.values())]
)
def test_every_raceway_of_table_4_is_sized(kind: str) -> None:
    answer = size(listed("THHN", "12 AWG", 3), kind=kind)
    assert [candidate["trade_size"] for candidate in answer["result"]["candidates"]] == list(SIZES[kind])
    assert answer["result"]["trade_size"] in SIZES[kind]


def test_a_size_comes_with_the_next_one_and_what_would_change_it() -> None:
    found = size(
        listed("THWN-2", "3/0 AWG", 4), {"kind": "bare", "size": "6 AWG", "stranding": "stranded", "count": 1}
    )["result"]
    assert (found["trade_size"], found["next_trade_size"]) == ("2", "2-1/2")
    smallest = next(candidate for candidate in found["candidates"] if candidate["within_limit"])
    assert smallest["trade_size"] == "2"
    assert [(change["conductor_index"], change["change"], change["trade_size"]) for change in found["changes"]] == [
        (0, "one_more", "2-1/2"),
        (0, "one_size_larger", "2-1/2"),
        (1, "one_more", "2"),
        (1, "one_size_larger", "2"),
    ]


def test_the_last_size_of_a_table_has_none_larger() -> None:
    changes = size(listed("THHN", "1000 kcmil", 1), cable(0.5, 1))["result"]["changes"]
    assert [(change["conductor_index"], change["change"]) for change in changes] == [(0, "one_more"), (1, "one_more")]


def test_a_solid_bare_conductor_one_size_larger_takes_the_row_there_is() -> None:
    changes = size({"kind": "bare", "size": "8 AWG", "stranding": "solid", "count": 3})["result"]["changes"]
    assert [change["change"] for change in changes] == ["one_more", "one_size_larger"]


def test_room_kept_in_reserve_raises_the_size() -> None:
    conductors = listed("THHN", "12 AWG", 8)
    plain, spare = size(conductors), size(conductors, spare_percent=40)
    assert (plain["result"]["trade_size"], spare["result"]["trade_size"]) == ("1/2", "3/4")
    kept = next(candidate for candidate in spare["result"]["candidates"] if candidate["within_limit"])
    assert kept["spare_area"]["value"] >= 0.4 * kept["limit_area"]["value"]
    assert "#/spare_percent" in [place for assumption in plain["assumptions"] for place in assumption["pointers"]]


def test_a_set_that_no_size_of_the_type_holds_is_a_violation() -> None:
    answer = size(listed("THHN", "500 kcmil", 9), kind="ent")
    assert "no_size_complies" in codes(answer, "violation")
    assert "trade_size" not in answer["result"]
    assert not any(candidate["within_limit"] for candidate in answer["result"]["candidates"])
    assert not answer["result"]["candidates"][0]["passes_bore"]
    assert all("trade_size" not in change for change in answer["result"]["changes"])


def test_a_pair_refused_where_a_third_would_pass_is_a_caution() -> None:
    pair = listed("RHH*", "350 kcmil", 2)
    refused = fill({"kind": "listed", "type": "rmc", "trade_size": "2"}, pair)
    assert {"fill_exceeded", "third_would_pass"} <= set(codes(refused))
    sized = size(pair, kind="rmc")
    assert sized["result"]["trade_size"] == "2-1/2"
    [caution] = [finding for finding in sized["findings"] if finding["code"] == "third_would_pass"]
    assert "trade size 2 " in caution["message"]
    hopeless = fill({"kind": "listed", "type": "rmc", "trade_size": "2"}, listed("RHH*", "500 kcmil", 2))
    assert not hopeless["result"]["within_limit"]
    assert "third_would_pass" not in codes(hopeless)
    assert "third_would_pass" not in codes(fill(pvc("4"), pair))


def test_a_jam_names_the_nearest_sizes_outside_of_the_band() -> None:
    answer = fill(pvc("3"), cable(1.0, 3))
    [caution] = [finding for finding in answer["findings"] if finding["code"] == "jam_ratio_in_band"]
    assert "trade size 3-1/2" in caution["message"]
    assert answer["result"]["jam_ratio"] == pytest.approx(3.042)
    assert answer["result"]["jam_ratio_with_ovality"] == pytest.approx(1.05 * 3.042)
    better = fill(pvc("3-1/2"), cable(1.0, 3))
    assert "jam_ratio_in_band" not in codes(better)
    measured = fill({"kind": "measured", "inside_diameter": quantity(3, "in")}, cable(1.0, 3))
    assert any("Take another conduit size" in finding["message"] for finding in measured["findings"])


def test_a_jam_that_no_size_mends_says_so() -> None:
    answer = fill({"kind": "listed", "type": "lfnc_a", "trade_size": "2"}, cable(0.68, 3))
    [caution] = [finding for finding in answer["findings"] if finding["code"] == "jam_ratio_in_band"]
    assert "No size of the type is better" in caution["message"]


def test_a_duct_without_a_bore_is_answered_with_an_estimate() -> None:
    conduit = {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}
    raised = problem("fill", {"conduit": conduit, "conductors": [listed("THHN", "12 AWG", 3)]})
    assert raised.errors is not None
    [error] = raised.errors
    assert "maker" in error.message
    assert "from memory" in error.message
    estimate = error.allowed["estimate"]
    assert estimate["inside_diameter"] == quantity(4.258, "in")
    answer = fill(estimate, listed("THHN", "12 AWG", 3))
    assert "measured_bore" in codes(answer, "note")
    nameless = problem(
        "fill", {"conduit": conduit | {"type": "pvc_db_100"}, "conductors": [listed("THHN", "12 AWG", 3)]}
    )
    assert nameless.errors is not None
    assert "estimate" not in nameless.errors[0].allowed
    sized = problem("conduit-size", {"type": "pvc_eb_20", "conductors": [listed("THHN", "12 AWG", 3)]})
    assert sized.errors is not None
    assert sized.errors[0].pointer == "#/type"


def test_a_count_says_which_percentage_decided() -> None:
    two = count({"kind": "listed", "type": "emt", "trade_size": "1-1/4"}, listed("RHH", "1/0 AWG"))
    assert (two["result"]["maximum_count"], two["result"]["limit_percent"]) == (1, 53)
    assert "stricter_percentage" in codes(two, "note")
    none = count(pvc("1/2"), listed("THHN", "500 kcmil"))
    assert none["result"]["maximum_count"] == 0
    assert "not_even_one" in codes(none, "violation")
    nipple = count(pvc("2"), listed("THHN", "12 AWG"), nipple_length=quantity(600, "mm"))
    assert nipple["result"]["limit_percent"] == 60
    assert nipple["result"]["maximum_count"] > count(pvc("2"), listed("THHN", "12 AWG"))["result"]["maximum_count"]


def test_a_cable_wider_than_the_bore_is_counted_as_none() -> None:
    assert count(pvc("1/2"), cable(0.7))["result"]["maximum_count"] == 0


def test_all_faults_of_a_count_come_at_once() -> None:
    raised = problem(
        "conductor-count",
        {"conduit": {"kind": "listed", "type": "ent", "trade_size": "4"}, "conductor": listed("THHN", "2000 kcmil")},
    )
    assert raised.errors is not None
    assert {error.pointer for error in raised.errors} == {"#/conduit/trade_size", "#/conductor/size"}


def test_metric_measures_are_taken_to_the_last_digit() -> None:
    """25.4 mm is an inch: the same verdict, to the tie."""
    inch = {"kind": "measured", "inside_diameter": quantity(10, "in")}
    metric = {"kind": "measured", "inside_diameter": quantity(254, "mm")}
    for conduit, unit, factor in ((inch, "in", 1.0), (metric, "mm", 25.4)):
        tie = [
            {"kind": "measured", "diameter": quantity(3 * factor, unit), "count": 4},
            {"kind": "measured", "diameter": quantity(2 * factor, unit), "count": 1},
        ]
        assert fill(conduit, *tie)["result"]["within_limit"]


def test_examples_are_not_changed_by_asking() -> None:
    before = copy.deepcopy(EXAMPLES)
    for name, example in EXAMPLES.items():
        result(name, example, "working=true")
    assert before == EXAMPLES
