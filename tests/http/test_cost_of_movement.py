"""What lies above ground and moves, and what a profile cuts, costs more than its few words: reckoned and bounded."""

from __future__ import annotations

import json
from typing import Any

import pytest
from ductrun.kit.answering import STEPS_ON_THE_LOOP, Chosen, PutOffError, answer_to
from ductrun.kit.reading import reader_of
from ductrun.subjects import OPERATIONS
from tools.costly_requests import BURIED, along_profile, long_above, many_runs, run_of

from tests.asking import EXAMPLES, quantity
from tests.http.wire import post

BY_NAME = {operation.name: operation for operation in OPERATIONS}


def steps_of(name: str, request: dict[str, Any]) -> float:
    operation = BY_NAME[name]
    assert operation.steps is not None
    return operation.steps(reader_of(operation.request)(json.dumps(request).encode()))


def test_expansion_of_many_runs_is_put_off_and_a_usual_one_is_not() -> None:
    put_off = answer_to(BY_NAME["expansion"], puts_off=True)
    assert put_off(json.dumps(EXAMPLES["expansion"]).encode(), Chosen())
    # 200 runs: 5 each and 0.3 for each of 51 openings (derived), and its fittings
    with pytest.raises(PutOffError) as raised:
        put_off(json.dumps(many_runs(200, 2_000)).encode(), Chosen())
    assert raised.value.steps > 200 * (5 + 0.3 * 51) > STEPS_ON_THE_LOOP


def test_more_fittings_than_anybody_lists_are_refused_at_the_run_that_goes_beyond() -> None:
    # 3.38e-5 x 140 degF x 50,000 ft x 12 in is 2,839 in, which 526 fittings of 6 in take up with 90 percent of their
    # travel: 9 runs have 4,734, and the tenth has the 5,001st (derived)
    told = post("expansion", many_runs(9, 50_000)).json
    assert told["result"]["fitting_count"] == 9 * 526
    found = post("expansion", many_runs(200, 50_000))
    assert found.status == 422
    [error] = found.json["errors"]
    assert (error["code"], error["pointer"]) == ("too_many_fittings", "#/straight_runs/9/value")
    assert error["message"].endswith("give fewer, and ask for the others by themselves.")


def test_supports_cost_their_straps_and_fittings() -> None:
    request = {name: value for name, value in EXAMPLES["supports"].items() if name != "fittings"}
    short, long = (steps_of("supports", request | {"length": quantity(feet, "ft")}) for feet in (30, 13_000))
    # a strap every 3 ft at most, half a step each (derived)
    assert long - short == pytest.approx(0.5 * (13_000 - 30) / 3)
    with_fittings = request | {"length": quantity(13_000, "ft"), "fittings": {"fitting_count": 1_999}}
    assert steps_of("supports", with_fittings) - long == pytest.approx(0.5 * 3 * 1_999)


def test_a_run_costs_the_straps_of_its_length_above_ground() -> None:
    # a strap every 3 ft of 990 ft more, half a step each, in 5 stretches; and three for every fitting that has room:
    # 6 in of travel and of engagement reach 18 in (derived)
    more = 5 * 0.5 * (990 / 3 + 3 * 990 / 1.5)
    assert steps_of("duct-run", long_above(5, 1_000)) - steps_of("duct-run", long_above(5, 10)) == pytest.approx(more)
    close = long_above(1, 100)
    close["stretches"][0]["setting"]["support_spacing"] = quantity(1, "ft")
    assert steps_of("duct-run", close) - steps_of("duct-run", long_above(1, 100)) == pytest.approx(
        0.5 * (100 - 100 / 3)
    )


def test_a_run_of_more_straps_than_anybody_places_is_refused_once_where_it_goes_beyond() -> None:
    run = long_above(9, 10_000)
    del run["site"]["temperatures"]
    for stretch in run["stretches"]:
        stretch["setting"]["support_spacing"] = quantity(3, "ft")
    found = post("duct-run", run)
    # 10,000 ft at 3 ft, 3 ft from either end: 3,333 straps; the seventh stretch has the 20,001st (derived)
    [error] = found.json["errors"]
    assert (found.status, error["code"]) == (422, "too_many_supports")
    assert error["pointer"] == "#/stretches/6/sections/0/length/value"
    assert error["message"].startswith("With this one the run has more than 20,000 straps")
    assert post("duct-run", run | {"stretches": run["stretches"][3:]}).status == 200


def test_what_a_profile_cuts_is_reckoned() -> None:
    searched = along_profile(4, 100, 600)
    plain = run_of(1, 1, 4, unlike=True)
    plain["stretches"][0] |= {"setting": BURIED | {"cover": quantity(4, "ft")}}
    # 4 circuits through a straight that 100 points cut: 5 for each section of a pull, and for the search 1.2 for each
    # pair of 101 sections (derived)
    more = steps_of("duct-run", searched) - steps_of("duct-run", plain)
    assert more >= 4 * (100 * 5 + 1.2 * (101**2 - 1))
    with pytest.raises(PutOffError):
        answer_to(BY_NAME["duct-run"], puts_off=True)(json.dumps(searched).encode(), Chosen())
    assert post("duct-run", searched).json["verdict"] == "violates"
