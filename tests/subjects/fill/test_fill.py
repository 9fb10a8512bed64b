"""Fill: the awkward cases, decided and held."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity, result
from tests.subjects.fill.sets import bare, cable, count, fill, listed, measured, pvc, size


def asked(**changes: Any) -> dict[str, Any]:
    return ask("fill", copy.deepcopy(EXAMPLES["fill"]) | changes)


def test_a_sum_that_ties_with_the_printed_column_complies_though_the_circle_is_exceeded() -> None:
    """Two 2 AWG and two 6 AWG THWN-2 in a 1 inch: 0.3330 against the printed 0.333 and the unrounded 0.33265."""
    answer = fill(pvc("1"), listed("THWN-2", "2 AWG", 2), listed("THWN-2", "6 AWG", 2))
    found = answer["result"]
    assert found["conductor_area"]["value"] == found["limit_area"]["value"] == 0.333
    assert answer["verdict"] == "complies"
    assert found["fill_percent"] == pytest.approx(40.02, abs=0.005)
    assert found["spare_area"]["value"] == 0


def test_the_eight_tenths_rule_lets_the_sum_exceed_40_percent_and_says_so() -> None:
    """Three 600 kcmil in a 3 inch Schedule 80."""
    conduit = {"kind": "listed", "type": "pvc_schedule_80", "trade_size": "3"}
    answer = fill(conduit, listed("THHN", "600 kcmil", 3))
    assert answer["verdict"] == "complies"
    assert answer["result"]["rounding_decided"]
    assert answer["result"]["fill_percent"] > 40
    assert answer["result"]["limit_reason"] == "More than two conductors or cables: 40 percent."
    assert "rounded_up" in codes(answer, "note")


def test_a_single_cable_over_53_percent_needs_the_option() -> None:
    """A 1.5 in cable in a 2 inch: 1.767 in2 against 1.744 in2, a quotient of 0.987."""
    refused = fill(pvc("2"), cable(1.5, 1))
    assert refused["verdict"] == "violates"
    assert refused["result"]["smallest_trade_size"] == "2-1/2"
    admitted = fill(pvc("2"), cable(1.5, 1), single_cable_rounding=True)
    assert admitted["verdict"] == "complies"
    assert admitted["result"]["rounding_decided"]
    assert size(cable(1.5, 1))["result"]["trade_size"] == "2-1/2"
    assert size(cable(1.5, 1), single_cable_rounding=True)["result"]["trade_size"] == "2"
    assert count(pvc("2"), cable(1.5))["result"]["maximum_count"] == 0
    assert count(pvc("2"), cable(1.5), single_cable_rounding=True)["result"]["maximum_count"] == 1


def test_equal_areas_of_different_insulation_are_equal_conductors() -> None:
    """8 AWG THW and 8 AWG XHHW-2 are both 0.0437 in2 in Table 5: Note 7 speaks of equal area, not of equal kind."""
    answer = fill(
        {"kind": "listed", "type": "emt", "trade_size": "1"}, listed("THW", "8 AWG", 4), listed("XHHW-2", "8 AWG", 4)
    )
    assert answer["result"]["rounding_decided"]
    assert answer["verdict"] == "complies"


@pytest.mark.parametrize("written", [(50.8, "mm"), (5.08, "cm"), (0.0508, "m")])
def test_a_measure_that_ties_in_another_unit_ties_exactly(written: tuple[float, str]) -> None:
    """Ten cables fill a fifth of the diameter each to 40 percent; and what is as wide as the bore is not wider."""
    conduit = {"kind": "measured", "inside_diameter": quantity(2, "in")}
    assert fill(conduit, measured(quantity(*written), 1))["verdict"] == "violates"
    other = {"kind": "measured", "inside_diameter": quantity(*written)}
    answer = fill(other, cable(0.4, 10))
    assert answer["result"] == fill(conduit, cable(0.4, 10))["result"]
    assert (answer["verdict"], answer["result"]["rounding_decided"]) == ("complies", False)
    assert answer["result"]["fill_percent"] == 40


def test_a_line_given_twice_counts_twice() -> None:
    once = fill(pvc("2"), listed("THHN", "3/0 AWG", 4))
    twice = fill(pvc("2"), listed("THHN", "3/0 AWG", 2), listed("THHN", "3/0 AWG", 2))
    assert once["result"] == twice["result"]


def test_a_line_of_none_is_refused() -> None:
    [error] = faults("fill", {"conduit": pvc("2"), "cables": [listed("THHN", "3/0 AWG", 0)]})
    assert (error["minimum"], error["maximum"]) == (quantity(1, "1"), quantity(100_000, "1"))


def test_grounding_conductors_count_insulated_or_bare() -> None:
    phases = listed("THHN", "3/0 AWG", 3)
    ground = bare("6 AWG", 1, stranding="stranded")
    without, with_bare, with_green = (
        fill(pvc("2"), *lines)["result"]["conductor_area"]["value"]
        for lines in ((phases,), (phases, ground), (phases, listed("THHN", "6 AWG", 1)))
    )
    assert without < with_bare < with_green


def test_every_kind_of_conductor_mixes_in_one_list() -> None:
    answer = fill(
        pvc("4"),
        listed("THWN-2", "4/0 AWG", 3),
        listed("XHHW-2", "250 kcmil", 2, "compact"),
        bare("2 AWG", 1, stranding="stranded"),
        measured(quantity(12, "mm"), 2),
        cable(0.9, 1),
    )
    assert answer["result"]["conductor_count"] == 9
    assert answer["result"]["limit_rule"] == "over_two_conductors"


def test_a_pair_refused_where_a_third_would_pass_is_a_caution() -> None:
    pair = listed("RHH*", "350 kcmil", 2)
    refused = fill({"kind": "listed", "type": "rmc", "trade_size": "2"}, pair)
    assert {"fill_exceeded", "third_would_pass"} <= set(codes(refused))
    sized = size(pair, kind="rmc")
    assert sized["result"]["trade_size"] == "2-1/2"
    [caution] = [finding for finding in sized["findings"] if finding["code"] == "third_would_pass"]
    assert "trade size 2 " in caution["message"]
    hopeless = fill({"kind": "listed", "type": "rmc", "trade_size": "2"}, listed("RHH*", "500 kcmil", 2))
    assert hopeless["verdict"] == "violates"
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
    [error] = faults("fill", {"conduit": conduit, "cables": [listed("THHN", "12 AWG", 3)]})
    assert "maker" in error["message"]
    assert "from memory" in error["message"]
    assert "pvc_db_60" not in error["allowed_values"]
    assert "of 4.500 in less two minimum walls leaves 4.258 in" in error["message"]
    estimate = {"inside_diameter": quantity(4.258, "in"), "outside_diameter": quantity(4.5, "in")}
    answer = fill({"kind": "measured", **estimate}, listed("THHN", "12 AWG", 3))
    assert "measured_bore" in codes(answer, "note")
    nameless = problem("fill", {"conduit": conduit | {"type": "pvc_db_100"}, "cables": [listed("THHN", "12 AWG", 3)]})
    assert nameless.errors is not None
    assert "estimate" not in nameless.errors[0].message
    sized = problem("conduit-size", {"type": "pvc_eb_20", "cables": [listed("THHN", "12 AWG", 3)]})
    assert sized.errors is not None
    assert sized.errors[0].pointer == "#/type"


def test_metric_measures_are_taken_to_the_last_digit() -> None:
    """25.4 mm is an inch: the same verdict, to the tie."""
    inch = {"kind": "measured", "inside_diameter": quantity(10, "in")}
    metric = {"kind": "measured", "inside_diameter": quantity(254, "mm")}
    for conduit, unit, factor in ((inch, "in", 1.0), (metric, "mm", 25.4)):
        tie = [
            measured(quantity(3 * factor, unit), 4),
            measured(quantity(2 * factor, unit), 1),
        ]
        assert fill(conduit, *tie)["verdict"] == "complies"


def test_a_set_over_its_limit_is_an_answer_with_a_violation() -> None:
    answer = asked(cables=[listed("THHN", "500 kcmil", 5)])
    assert answer["verdict"] == "violates"
    [violation] = [finding for finding in answer["findings"] if finding["severity"] == "violation"]
    assert violation["code"] == "fill_exceeded"
    assert violation["actual"]["value"] > 40
    assert violation["limit"] == quantity(40, "percent")
    assert "NFPA 70-2023, Chapter 9, Table 1" in violation["citation"]


def test_a_nipple_over_24_inches_is_a_complete_run() -> None:
    answer = asked(nipple_length=quantity(25, "in"))
    assert "too_long_for_a_nipple" in codes(answer, "caution")
    assert answer["result"]["limit_percent"] == 40


def test_three_conductors_in_the_jam_band_get_a_caution() -> None:
    def three(diameter: float, count: int = 3) -> dict[str, Any]:
        return ask(
            "fill",
            {
                "conduit": {"kind": "measured", "inside_diameter": quantity(3, "in")},
                "cables": [measured(quantity(diameter, "in"), count)],
            },
        )

    assert "jam_ratio_in_band" in codes(three(1.0))
    assert "jam_ratio_in_band" in codes(three(1.1))
    assert "jam_ratio_in_band" not in codes(three(0.9))
    assert "jam_ratio_in_band" not in codes(three(1.2))
    assert "jam_ratio" not in three(0.7, 4)["result"]


def test_bare_conductors_take_the_larger_row_unless_told() -> None:
    def ground(**more: str) -> dict[str, Any]:
        return asked(cables=[bare("10 AWG", 1, **more)])

    assumed = ground()
    assert [place for assumption in assumed["assumptions"] for place in assumption["pointers"]] == [
        "#/cables/0/cable/stranding"
    ]
    assert assumed["result"]["conductor_area"] == ground(stranding="stranded")["result"]["conductor_area"]
    assert ground(stranding="solid")["result"]["conductor_area"]["value"] < assumed["result"]["conductor_area"]["value"]


def test_use_2_is_answered_with_the_row_it_borrows() -> None:
    answer = asked(cables=[listed("USE-2", "4/0 AWG", 3)])
    assert "use_2_row" in codes(answer, "note")
    same = asked(cables=[listed("RHW-2*", "4/0 AWG", 3)])
    assert same["result"]["conductor_area"] == answer["result"]["conductor_area"]


def test_a_set_that_no_size_holds_says_so() -> None:
    cables = [listed("THHN", "500 kcmil", 38)]
    answer = asked(conduit=EXAMPLES["fill"]["conduit"] | {"trade_size": "6"}, cables=cables)
    assert "no_size_complies" in codes(answer, "caution")
    assert "smallest_trade_size" not in answer["result"]


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        (
            {"conduit": {"kind": "listed", "type": "emt", "trade_size": "6"}},
            {"#/conduit/trade_size": "trade_size_not_listed"},
        ),
        (
            {"conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}},
            {"#/conduit/type": "inside_diameter_not_listed"},
        ),
        (
            {
                "conduit": {
                    "kind": "measured",
                    "inside_diameter": quantity(4, "in"),
                    "outside_diameter": quantity(100, "mm"),
                }
            },
            {"#/conduit/outside_diameter/value": "outside_not_above_inside"},
        ),
        (
            {
                "conduit": {"kind": "listed", "type": "emt", "trade_size": "6"},
                "cables": [
                    listed("THHN", "1250 kcmil", 1),
                    listed("USE-2", "250 kcmil", 1, "compact"),
                    bare("500 kcmil", 1, stranding="solid"),
                ],
            },
            {
                "#/conduit/trade_size": "trade_size_not_listed",
                "#/cables/0/cable/size": "conductor_not_listed",
                "#/cables/1/cable/insulation": "conductor_not_listed",
                "#/cables/2/cable/stranding": "conductor_not_listed",
            },
        ),
        (
            {"cables": [cable(3.1, 1), listed("THHN", "12 AWG", 3), measured(quantity(80, "mm"), 1)]},
            {
                "#/cables/0/cable/diameter/value": "wider_than_bore",
                "#/cables/2/cable/diameter/value": "wider_than_bore",
            },
        ),
        (
            {"conduit": pvc("1/2"), "cables": [listed("THHN", "750 kcmil", 1)]},
            {"#/cables/0/cable/size": "wider_than_bore"},
        ),
    ],
)
def test_a_set_that_cannot_be_held_names_the_member(changes: dict[str, Any], expected: dict[str, str]) -> None:
    raised = problem("fill", copy.deepcopy(EXAMPLES["fill"]) | changes)
    assert {str(error.pointer): error.code for error in raised.errors or ()} == expected


def test_every_finding_says_which_member_it_is_about() -> None:
    conduit = {"kind": "measured", "inside_diameter": quantity(3, "in")}
    answer = fill(conduit, cable(1.0, 3), nipple_length=quantity(18, "in"))
    places = {finding["code"]: finding["pointer"] for finding in answer["findings"]}
    assert places == {
        "nipple_limit": "#/nipple_length",
        "jam_ratio_in_band": "#/cables",
        "measured_bore": "#/conduit/inside_diameter",
    }
    borrowed = fill(pvc("4"), listed("THHN", "4/0 AWG", 1), listed("USE-2", "4/0 AWG", 3))
    assert [finding["pointer"] for finding in borrowed["findings"]] == ["#/cables/1/cable/insulation"]


def test_a_fill_over_its_limit_names_the_note_on_complete_runs() -> None:
    [exceeded] = fill(pvc("2"), cable(1.5, 1))["findings"]
    assert exceeded["message"].endswith("not of a short length that only protects exposed wiring.")
    assert exceeded["citation"].endswith("; NFPA 70-2023, Chapter 9, Table 1, Note 2")


def test_a_smaller_ground_beside_three_phases_leaves_their_jam_ratio() -> None:
    phase: dict[str, Any] = {"kind": "listed", "insulation": "THWN-2", "size": "500 kcmil"}
    conduit = {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "3"}
    ground = phase | {"size": "3 AWG"}
    copper = {"material": "copper"}
    cables = [{"count": 3, "cable": phase | copper}, {"count": 1, "cable": ground | copper}]
    found = result("fill", {"conduit": conduit, "cables": cables})
    assert found["jam_ratio"] == pytest.approx(3.042 / 0.949)
    sections = [{"kind": "straight", "length": quantity(100, "ft")}]
    pull = result("pull-tension", {"conduit": conduit, "cables": cables, "sections": sections})
    assert pull["jam_ratio"] == pytest.approx(found["jam_ratio"])


@pytest.mark.parametrize(
    ("conduit", "cables", "percent"),
    [
        (pvc("1/2"), [listed("THHN", "12 AWG", 1000)], 4_680),
        (pvc("3"), [measured(quantity(1.6, "in"), 5)], 138),
        ({"kind": "measured", "inside_diameter": quantity(2, "in")}, [cable(1.0, 4)], 100),
        ({"kind": "measured", "inside_diameter": quantity(2, "in")}, [cable(2.0, 1)], 100),
        ({"kind": "measured", "inside_diameter": quantity(2, "in")}, [cable(2.0, 1), cable(0.5, 2)], 112.5),
    ],
)
def test_however_full_the_answer_is_a_violation(
    conduit: dict[str, Any], cables: list[dict[str, Any]], percent: float
) -> None:
    answer = fill(conduit, *cables)
    assert answer["verdict"] == "violates"
    assert answer["result"]["fill_percent"] == pytest.approx(percent, rel=0.01)
    assert answer["result"]["spare_area"]["value"] < 0
    [exceeded] = [finding for finding in answer["findings"] if finding["code"] == "fill_exceeded"]
    assert exceeded["actual"]["value"] == answer["result"]["fill_percent"]
    assert exceeded["pointer"] == "#/cables"


def test_a_cable_wider_than_the_bore_is_refused_with_the_widest_there_is_room_for() -> None:
    conduit = {"kind": "measured", "inside_diameter": quantity(2, "in")}
    raised = problem("fill", {"conduit": conduit, "cables": [cable(2.01, 1)]})
    assert raised.errors is not None
    [error] = raised.errors
    assert (error.pointer, error.code) == ("#/cables/0/cable/diameter/value", "wider_than_bore")
    assert str(error.maximum) == "2 in"


def test_the_cables_of_a_pull_are_filled_as_they_are() -> None:
    pulled = EXAMPLES["pull-tension"]["cables"]
    answer = fill(pvc("6"), *copy.deepcopy(pulled))
    assert answer["result"]["conductor_count"] == sum(line["count"] for line in pulled)
    plain = [measured(line["cable"]["diameter"], line["count"]) for line in pulled]
    assert answer["result"] == fill(pvc("6"), *plain)["result"]


@pytest.mark.parametrize("trade_size", ["1-1/2", "2", "2-1/2", "3", "4"])
def test_the_verdict_is_that_of_the_area_against_its_limit(trade_size: str) -> None:
    answer = fill(pvc(trade_size), listed("THWN-2", "3/0 AWG", 4), listed("THWN-2", "6 AWG", 1))
    over = answer["result"]["spare_area"]["value"] < 0
    assert answer["verdict"] == ("violates" if over else "complies")
    assert over is (trade_size == "1-1/2")


@pytest.mark.parametrize(("kcmil", "holds"), [("350", "2"), ("2000", "none")])
def test_what_a_conduit_holds_is_told_in_whole_conductors(kcmil: str, holds: str) -> None:
    """NFPA 70 Annex C, Table C.11: two of 350 kcmil THWN-2 in a trade 2 Schedule 40."""
    wire = measured(quantity(2.0, "in"), 3) if kcmil == "2000" else listed("THWN-2", f"{kcmil} kcmil", 4)
    answer = fill(pvc("2"), wire)
    [exceeded] = [finding for finding in answer["findings"] if finding["code"] == "fill_exceeded"]
    assert f"the conduit holds {holds} of them. Take" in exceeded["message"]
