"""Whole runs side by side: figures by hand, ranks, gaps, findings gained and lost, faults of every run."""

from __future__ import annotations

import copy
import json
from random import Random
from typing import Any

import pytest
from ductrun.http.problems import ProblemRaised
from ductrun.subjects.duct_run.comparing.lines import beside
from ductrun.subjects.duct_run.comparing.ranking import Ranked, ranks_of
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, assumed, faults, quantity, result
from tests.properties.requests import RANDOMS, varied
from tests.subjects.duct_run.runs import BORE, MANHOLES, POLE, buried

COMPARE = "duct-run/compare"


def about(value: float, unit: str, rel: float = 1e-6) -> Any:
    """Give a quantity that is near enough."""
    return {"value": pytest.approx(value, rel=rel), "unit": unit}


def field(feet: float = 100, cover: float = 24, **more: Any) -> dict[str, Any]:
    """Give a run of one level stretch between handholes, with the smallest trench of the tables."""
    run = copy.deepcopy(POLE) | {"start": {"kind": "handhole"}, "end": {"kind": "handhole"}}
    run["stretches"] = [{"name": "field", "setting": buried(cover), "length": quantity(feet, "ft")}]
    return run | more


def priced(item: str, price: float, hours: float) -> dict[str, Any]:
    return {"item": item, "unit_price": price, "unit_labor_hours": hours}


def compared(*runs: dict[str, Any], **more: Any) -> dict[str, Any]:
    named = [{"name": f"run {number}", "run": run} for number, run in enumerate(runs, start=1)]
    return {"runs": named, **more}


def lines_of(found: dict[str, Any], item: str) -> list[dict[str, Any]]:
    return [line for line in found["lines"] if line["item"] == item]


def test_a_run_beside_itself_differs_in_nothing() -> None:
    for run in (POLE, MANHOLES, BORE):
        found = result(COMPARE, compared(run, run, rank_by="excavation"))
        alone = result("duct-run", run)
        assert found["lines"] == []
        assert found["alike_line_count"] == len(alone["takeoff"]["lines"])
        for one in found["runs"]:
            assert (one["findings_gained"], one["findings_lost"]) == ([], [])
            assert one["length"] == {"length": alone["length"]}
            assert one["plan_length"] == {"length": alone["plan_length"]}
        places = {one.get("rank") for one in found["runs"]}
        assert places == {1}, "alike runs share a place"


def test_a_longer_run_differs_by_what_it_is_longer() -> None:
    # derived: 125 ft against 100 ft is 25 ft and 25 percent more. One duct of 1 in PVC, trench 12 in wide at least;
    # its depth 24 in of cover + 1.315 in of duct + 3 in of bedding = 28.315 in.
    # excavation 100 ft x 1 ft x 2.359583 ft = 235.9583 ft3 = 8.739198 yd3, so 25 ft more are 2.184799 yd3.
    # conduit: 100 ft with 3 percent are 103 ft, 6 sticks of 20 ft; 125 ft are 128.75 ft, 7 sticks: 20 ft more
    found = result(COMPARE, compared(field(100), field(125), rank_by="conduit"))
    base, other = found["runs"]
    assert base["length"] == {"length": about(100, "ft")}
    assert other["length"]["difference"] == about(25, "ft")
    assert other["length"]["difference_percent"] == pytest.approx(25)
    assert other["plan_length"]["difference"] == about(25, "ft")
    [dug] = lines_of(found, "excavation")
    assert (dug["group"], dug["measure"]) == ("site_work", "bank")
    mine, theirs = dug["runs"]
    assert (mine["run"], theirs["run"]) == ("run 1", "run 2")
    assert mine["exact_quantity"] == {"quantity": about(8.739198, "yd3")}
    assert theirs["exact_quantity"]["difference"] == about(2.184799, "yd3")
    assert theirs["exact_quantity"]["difference_percent"] == pytest.approx(25)
    assert "order_quantity" not in theirs, "nobody orders an excavation"
    [conduit] = lines_of(found, "conduit")
    assert (conduit["conduit_type"], conduit["size"]) == ("pvc_schedule_40", "1")
    assert conduit["runs"][1]["exact_quantity"]["difference"] == about(25, "ft")
    assert conduit["runs"][0]["order_quantity"] == {"quantity": quantity(120, "ft")}
    assert conduit["runs"][1]["order_quantity"]["quantity"] == quantity(140, "ft")
    assert conduit["runs"][1]["order_quantity"]["difference"] == quantity(20, "ft")
    assert other["item_quantity"]["quantity"] == quantity(140, "ft"), "ranked by what is ordered"
    assert other["item_quantity"]["difference_percent"] == pytest.approx(100 / 6)
    assert (base["rank"], other["rank"]) == (1, 2)
    assert found["rank_by"] == "conduit"


def test_the_landing_with_its_field_in_concrete_by_hand() -> None:
    # derived: six ducts of 4.5 in, 2 in clear, make 17.5 x 11 in; with 3 in of concrete 23.5 x 17 = 399.5 in2, less
    # 6 x pi/4 x 4.5^2 = 95.426 in2 leaves 304.074 in2 = 2.11163 ft2. The field is 290 + 3 pi/4 + 218 + 3 = 513.356 ft
    # long in plan: 1,084.02 ft3 = 40.1487 yd3. Ordered with 5 percent, to a quarter yard a pour: 42.156, so 42.25 yd3
    # more than the 10 under the road; at 165 a yard 6,971.25 more than 1,650
    found = result(COMPARE, EXAMPLES[COMPARE])
    [concrete] = lines_of(found, "concrete")
    assert [one["run"] for one in concrete["runs"]] == ["as drawn", "field in concrete"]
    more = concrete["runs"][1]
    assert more["exact_quantity"]["difference"] == about(40.1487, "yd3", 1e-5)
    assert more["order_quantity"]["quantity"] == quantity(52.25, "yd3")
    assert more["order_quantity"]["difference"] == quantity(42.25, "yd3")
    assert more["order_quantity"]["difference_percent"] == pytest.approx(422.5)
    assert concrete["runs"][0]["price"] == {"value": 1650.0}
    assert more["price"]["difference"] == pytest.approx(6971.25)
    # 24 in instead of 30 in of cover, but 6 in of working space beside 23.5 in of concrete instead of 3 in beside
    # 17.5 in of ducts: 35.5 x (24 + 17) in2 against 23.5 x (30 + 11 + 3) in2 make 421.5 in2 = 2.92708 ft2 more
    [dug] = lines_of(found, "excavation")
    assert dug["runs"][1]["exact_quantity"]["difference"] == about(2.92708 * 513.356 / 27, "yd3", 1e-5)
    assert lines_of(found, "conduit") == [], "what is alike is not shown"


def test_what_one_run_alone_takes_stands_beside_nothing() -> None:
    encased = field(100)
    encased["stretches"][0]["setting"] |= {"kind": "encased"}
    found = result(COMPARE, compared(field(100), encased))
    [concrete] = lines_of(found, "concrete")
    nothing, all_of_it = (one["exact_quantity"] for one in concrete["runs"])
    assert nothing == {"quantity": quantity(0.0, "yd3")}
    assert all_of_it["difference"] == all_of_it["quantity"]
    assert "difference_percent" not in all_of_it, "there is no percentage of nothing"
    assert "rank_by" not in found
    assert all("rank" not in one and "not_ranked_because" not in one for one in found["runs"])


def test_price_and_hours_are_held_against_the_base_where_neither_has_gaps() -> None:
    taken = result("duct-run", field(100))["takeoff"]["lines"]
    items = list(dict.fromkeys(line["item"] for line in taken))
    rates = [priced(item, 2.0, 0.5) for item in items]
    # derived: price 2 for each unit ordered, or done where nothing is ordered; 0.5 h for each unit done
    price = sum(round(2 * line.get("order_quantity", line["exact_quantity"])["value"], 2) for line in taken)
    hours = sum(round(0.5 * line["exact_quantity"]["value"], 2) for line in taken)
    dearer = [priced(item, 3.0, 0.5) for item in items]
    found = result(COMPARE, compared(field(100, rates=rates), field(100, rates=dearer), rank_by="price"))
    base, other = found["runs"]
    assert base["price"] == {"value": pytest.approx(price, abs=0.02)}
    assert other["price"]["value"] == pytest.approx(1.5 * price, abs=0.1)
    assert other["price"]["difference_percent"] == pytest.approx(50, abs=0.01)
    assert base["labor_hours"] == {"value": pytest.approx(hours, abs=0.05)}
    assert "difference" not in other["labor_hours"]
    assert (base["rank"], other["rank"]) == (1, 2)
    assert {line["item"] for line in found["lines"]} == set(items), "every line is dearer"
    [conduit] = lines_of(found, "conduit")
    assert conduit["runs"][1]["price"] == {
        "value": pytest.approx(360.0),
        "difference": pytest.approx(120.0),
        "difference_percent": pytest.approx(50),
    }
    assert conduit["runs"][1]["labor_hours"] == {"value": pytest.approx(50.0)}


def test_a_measure_with_gaps_gives_no_place_and_says_which() -> None:
    rates = [priced("conduit", 2.0, 0.5)]
    found = result(COMPARE, compared(field(rates=rates), field(125), rank_by="price"))
    assert all("rank" not in one for one in found["runs"])
    assert found["runs"][0]["not_ranked_because"].startswith("Without a price: Excavation, bank, End bell, 1 in")
    assert found["runs"][1]["not_ranked_because"] == "No prices: give rates with a unit_price for what is ordered."
    gapped = found["runs"][0]
    assert gapped["price"]["value"] == pytest.approx(240.0), "6 sticks of 20 ft, 2 a foot"
    assert gapped["price_gap"] == gapped["not_ranked_because"]
    assert gapped["labor_hours_gap"].startswith("Without labor hours: Excavation, bank")
    assert "price_gap" not in found["runs"][1], "without rates there is no price to have a gap"
    beside_gaps = result(COMPARE, compared(field(rates=rates), field(125, rates=rates)))["runs"][1]
    assert beside_gaps["price"] == {"value": pytest.approx(280.0)}, "two prices with gaps have no difference"
    hours = result(COMPARE, compared(field(rates=rates), field(125), rank_by="labor_hours"))["runs"]
    assert hours[0]["not_ranked_because"].startswith("Without labor hours: Excavation, bank")
    assert hours[1]["not_ranked_because"] == "No labor hours: give rates with unit_labor_hours."


def test_what_a_takeoff_does_not_count_is_a_gap_of_its_item() -> None:
    # the joints of a conduit that is only measured are not on file
    drawn = copy.deepcopy(MANHOLES)
    found = result(COMPARE, compared(drawn, field(), rank_by="tie_down"))["runs"]
    assert found[0]["not_ranked_because"] == "The tie-downs of stretch 1 are not counted: give tie_down_capacity."
    assert found[1]["rank"] == 1, "a run without concrete needs none"
    assert "item_quantity" not in found[1]


def test_the_highest_use_of_pulling_limits_ranks_where_every_pull_was_judged() -> None:
    # derived: on the level, without tension at the entry, it is w K L: 100 ft take 100 / 125 of what 125 ft do
    freely = {"incoming_tension": quantity(0, "lbf")}
    drawn = compared(field(125, pulling=freely), field(100, pulling=freely), rank_by="highest_utilization")
    found = result(COMPARE, drawn)["runs"]
    long, short = (one["highest_utilization_percent"]["value"] for one in found)
    assert short / long == pytest.approx(0.8)
    assert [one["rank"] for one in found] == [2, 1]
    assert found[1]["highest_utilization_percent"]["difference"] == pytest.approx(short - long)
    unknown = field(100)
    unknown["circuits"][0]["cables"] = [
        {
            "count": 1,
            "cable": {
                "kind": "multiconductor",
                "diameter": quantity(0.5, "in"),
                "mass_per_length": quantity(0.2, "lb/ft"),
            },
        }
    ]
    found = result(COMPARE, compared(field(100), unknown, rank_by="highest_utilization"))["runs"]
    assert found[1]["unjudged_pull_count"] == 1
    assert found[1]["not_ranked_because"] == "1 pull was not judged."
    assert "difference" not in found[1]["highest_utilization_percent"]
    empty = field(100)
    del empty["circuits"]
    found = result(COMPARE, compared(field(100), empty, rank_by="highest_utilization"))["runs"]
    assert found[1]["not_ranked_because"] == "No cable is pulled."


def test_pulls_are_counted_one_a_duct_between_stops() -> None:
    two = field(100)
    two["stretches"][0]["pull_point"] = {"kind": "handhole"}
    two["stretches"].append({"setting": buried(24), "length": quantity(50, "ft")})
    found = result(COMPARE, compared(field(150), two, rank_by="pull_count"))["runs"]
    assert found[0]["pull_count"] == {"value": 1}
    assert found[1]["pull_count"] == {"value": 2, "difference": 1, "difference_percent": 100.0}
    fewer = result(COMPARE, compared(two, field(150), rank_by="pull_count"))["runs"]
    assert fewer[1]["pull_count"] == {"value": 1, "difference": -1, "difference_percent": -50.0}
    assert [one["rank"] for one in fewer] == [2, 1]


def test_a_run_that_does_not_comply_ranks_last_and_is_told_as_such() -> None:
    # 12 in are less than the 18 in of the table for PVC; the shallow run digs least
    answer = ask(COMPARE, compared(field(cover=24), field(cover=12), field(cover=30), rank_by="excavation"))
    assert answer["verdict"] == "violates"
    drawn, shallow, deep = answer["result"]["runs"]
    assert [one["verdict"] for one in (drawn, shallow, deep)] == ["complies", "violates", "complies"]
    assert [one["rank"] for one in (drawn, shallow, deep)] == [1, 3, 2]
    assert [one["violation_count"] for one in (drawn, shallow, deep)] == [0, 1, 0]
    [broken] = [one for one in shallow["findings_gained"] if one["severity"] == "violation"]
    assert (broken["code"], broken["pointer"]) == ("too_shallow", "#/runs/1/run/stretches/0")
    assert broken["message"].startswith("Field: A cover of 12 in is less than the 18 in required.")
    [found] = [one for one in answer["findings"] if one["severity"] == "violation"]
    assert found["message"] == f"run 2: {broken['message']}"
    back = result(COMPARE, compared(field(cover=12), field(cover=24)))["runs"][1]
    assert [one["code"] for one in back["findings_lost"] if one["severity"] == "violation"] == ["too_shallow"]
    assert back["findings_lost"][0]["pointer"] == "#/runs/0/run/stretches/0"


def test_a_violation_of_one_more_stretch_is_gained() -> None:
    both = field(cover=12)
    both["stretches"].append({"name": "yard", "setting": buried(12), "length": quantity(100, "ft")})
    one = copy.deepcopy(both)
    one["stretches"][1]["setting"] = buried(24)
    found = result(COMPARE, compared(one, both))["runs"][1]
    assert [each["code"] for each in found["findings_gained"] if each["severity"] == "violation"] == ["too_shallow"]


def test_ranks_stand_by_verdict_before_figure() -> None:
    figures = [Ranked(5.0, None), Ranked(1.0, None), Ranked(3.0, None), Ranked(None, "no price"), Ranked(2.0, None)]
    verdicts: list[Any] = ["complies", "violates", "not_judged", "complies", "complies"]
    assert ranks_of(figures, verdicts) == [2, 4, 3, None, 1]
    assert beside(3.0, 3.0 + 1e-12) == beside(3.0, 3.0), "noise is no difference"


ANSWERED = st.sampled_from(["complies", "not_judged", "violates", None])


@given(st.lists(st.tuples(st.one_of(st.none(), st.integers(0, 5)), ANSWERED), min_size=2, max_size=9))
def test_no_run_stands_before_one_that_is_better(runs: list[tuple[int | None, Any]]) -> None:
    ranked = [Ranked(None if value is None else float(value), None) for value, _ in runs]
    places = ranks_of(ranked, [verdict for _, verdict in runs])
    worth = {"complies": 0, None: 1, "not_judged": 1, "violates": 2}
    for (value, verdict), place in zip(runs, places, strict=True):
        assert (place is None) is (value is None), "a gap has no place, and all else has one"
        if value is not None:
            better = [one for one, of in runs if one is not None and (worth[of], one) < (worth[verdict], value)]
            assert place == len(better) + 1


@settings(max_examples=20, deadline=None)
@given(random=RANDOMS)
def test_any_run_beside_itself_differs_in_nothing(random: Random) -> None:
    run = varied("duct-run", random)
    try:
        found = result(COMPARE, compared(run, run, rank_by="labor_hours"))
    except ProblemRaised:
        return
    assert found["lines"] == []
    first, second = found["runs"]
    assert first | {"name": ""} == second | {"name": ""}
    assert (first["findings_gained"], first["findings_lost"]) == ([], [])
    assert "difference" not in json.dumps(found)


def test_faults_of_every_run_come_at_once_each_at_its_place() -> None:
    lame, twice = field(), field()
    del lame["stretches"][0]["setting"]["cover"]
    twice["circuits"][0]["ducts"] = ["2-1"]
    found = faults(COMPARE, compared(field(), lame, twice))
    assert [(one["pointer"], one["code"]) for one in found] == [
        ("#/runs/1/run/stretches/0/setting/cover", "missing"),
        ("#/runs/2/run/circuits/0/ducts/0", "no_such_duct"),
    ]
    alike = {"runs": [{"name": "A", "run": field()}, {"name": "A", "run": lame}]}
    assert [one["pointer"] for one in faults(COMPARE, alike)] == [
        "#/runs/1/name",
        "#/runs/1/run/stretches/0/setting/cover",
    ]


@pytest.mark.parametrize("count", [1, 10])
def test_two_to_nine_runs_are_compared(count: int) -> None:
    [found] = faults(COMPARE, compared(*[field()] * count))
    assert (found["pointer"], found["code"]) == ("#/runs", "too_few" if count == 1 else "too_many")


def test_a_measure_that_does_not_exist_is_refused_with_those_that_do() -> None:
    [found] = faults(COMPARE, compared(field(), field(), rank_by="prize"))
    assert (found["pointer"], found["code"]) == ("#/rank_by", "not_allowed")
    assert {"labor_hours", "pull_count", "highest_utilization", "conduit"} <= set(found["allowed_values"])


def test_every_run_follows_its_own_edition_and_keeps_its_own_assumptions() -> None:
    answer = ask(COMPARE, compared(field(code_edition="2017"), field()))
    assert answer["basis"]["code_edition"] == "NFPA 70-2017 and NFPA 70-2023"
    places = assumed(answer)
    assert "#/runs/0/run/code_edition" not in places
    assert places["#/runs/1/run/code_edition"] == "2023"
    [bedding] = [one for one in answer["assumptions"] if "#/runs/0/run/digging/bedding" in one["pointers"]]
    assert "#/runs/1/run/digging/bedding" in bedding["pointers"], "alike assumptions come once"
    codes = [one["code"] for one in answer["cautions"]]
    assert len(codes) == len(set(codes)), "cautions come once"


def test_figures_of_a_compared_run_are_those_of_the_run_alone() -> None:
    answer = ask(COMPARE, compared(MANHOLES, BORE), "working=true")
    for index, run in enumerate((MANHOLES, BORE)):
        alone = ask("duct-run", run, "working=true")
        told = answer["result"]["runs"][index]
        assert told["verdict"] == alone["verdict"]
        assert told["length"]["length"] == alone["result"]["length"]
        mine = [one for one in answer["findings"] if one["pointer"].startswith(f"#/runs/{index}/run")]
        assert [one["message"] for one in mine] == [f"run {index + 1}: {one['message']}" for one in alone["findings"]]
        assert [one["pointer"] for one in mine] == [
            f"#/runs/{index}/run{one['pointer'][1:]}" for one in alone["findings"]
        ]
        shown = [step for step in answer["working"] if step["pointer"].startswith(f"#/runs/{index}/run")]
        assert [step["symbol"] for step in shown] == [step["symbol"] for step in alone["working"]]
