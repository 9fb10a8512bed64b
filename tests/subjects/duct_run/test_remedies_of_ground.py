"""What lies too shallow, is crushed or is not made for earth, each by hand; each run that is told is sent again."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from ductrun.subjects.duct_run.remedies import trials

from tests.asking import EXAMPLES, ask, quantity
from tests.subjects.duct_run.remedied import altered, by_kind, remedied, set_in, violations
from tests.subjects.duct_run.runs import KILN, MANHOLES, listed

EB_35 = {
    "kind": "measured",
    "type": "pvc_eb_35",
    "trade_size": "4",
    "inside_diameter": quantity(4.2, "in"),
    "outside_diameter": quantity(4.5, "in"),
}


def test_under_concrete_no_more_cover_is_taken_than_the_conduit_needs() -> None:
    # derived: 24 in over the conduit, of which the 3 in of concrete on it are part: 21 in over the concrete
    for run, others in ((KILN, "complies"), (EXAMPLES["duct-run"], "not_judged")):
        shallow = altered(run, lambda run: run["stretches"][0]["setting"].update(cover=quantity(6, "in")))
        one = by_kind(shallow)["cover"]
        assert set_in(one) == {"#/stretches/0/setting/cover": quantity(21, "in")}
        assert (one["verdict"], one["remaining_violation_count"]) == (others, 0)
        less = copy.deepcopy(one["run"])
        less["stretches"][0]["setting"]["cover"] = quantity(20, "in")
        assert {code for code, _ in violations(ask("duct-run", less))} >= {"too_shallow"}, "an inch less is too little"


def test_what_two_rules_ask_of_a_cover_is_met_at_once() -> None:
    # 18 in for PVC to 1,000 V, 24 in under traffic
    shallow = altered(KILN, lambda run: run["stretches"][1]["setting"].update(cover=quantity(10, "in")))
    one = by_kind(shallow)["cover"]
    assert set_in(one) == {"#/stretches/1/setting/cover": quantity(24, "in")}
    assert [each["code"] for each in one["removed"]] == ["too_shallow", "too_little_cover_under_traffic"]


def test_duct_for_concrete_is_changed_in_the_stretches_that_lie_in_earth_alone() -> None:
    one = by_kind(altered(KILN, lambda run: run["bank"].update(conduit=EB_35)))["conduit_type"]
    assert set_in(one) == {f"#/stretches/{at}/conduit_type": "pvc_schedule_40" for at in (1, 2)}
    assert one["message"] == "Take Schedule 40 PVC in yard, lawn."
    assert one["verdict"] == "complies"


def test_duct_for_burial_is_told_with_its_condition() -> None:
    def empty(run: dict[str, Any]) -> None:
        del run["circuits"], run["earth_load"], run["stretches"][0]["earth_load"]
        run["bank"]["conduit"] = listed("4", "pvc_eb_35")

    run = altered(KILN, empty)
    [one] = [each for each in remedied(run)["found"] if "DB-120" in each["message"]]
    assert set_in(one) == {f"#/stretches/{at}/conduit_type": "pvc_db_120" for at in (1, 2)}
    assert one["message"].endswith("It is permitted under a condition, which its answer names: use_under_condition.")
    assert "use_under_condition" in {each["code"] for each in ask("duct-run", one["run"])["findings"]}
    assert one["verdict"] == "not_judged"


def test_duct_that_flattens_is_bedded_better_or_taken_stiffer_or_encased() -> None:
    def dumped(run: dict[str, Any]) -> None:
        run["bank"]["conduit"] = EB_35 | {"type": "pvc_db_60"}
        run["earth_load"]["compaction"] = "dumped"

    found = by_kind(altered(KILN, dumped))
    assert set(found) == {"compaction", "conduit_type", "encasement"}
    assert "slightly" in found["compaction"]["message"], "the next grade, not the best"
    assert set_in(found["conduit_type"]) == {f"#/stretches/{at}/conduit_type": "pvc_schedule_40" for at in (1, 2)}
    assert set_in(found["encasement"]) == {f"#/stretches/{at}/setting/kind": "encased" for at in (1, 2)}
    for one in found.values():
        assert [each["code"] for each in one["removed"]] == ["deflection_exceeded"]


def test_a_cage_that_meets_the_ducts_gets_the_concrete_that_is_missing() -> None:
    # derived: edge cover, tie and bar take 2.875 in of 2 in: an inch more
    def thin(run: dict[str, Any]) -> None:
        run["stretches"][0]["setting"]["concrete_cover"] = {
            side: quantity(2, "in") for side in ("top", "side", "bottom")
        }

    one = by_kind(altered(MANHOLES, thin))["concrete_cover"]
    [sides] = set_in(one).values()
    assert sides == {side: quantity(3, "in") for side in ("top", "side", "bottom")}
    assert one["remaining_violation_count"] == 0


def test_runs_that_take_more_than_their_room_are_cut_and_the_answer_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    shallow = altered(KILN, lambda run: run["stretches"][1]["setting"].update(cover=quantity(10, "in")))
    shallow["circuits"][0]["load"]["overcurrent_device"] = quantity(500, "A")
    whole = remedied(shallow)
    assert len(whole["found"]) == 2
    assert whole["cut_short"] is False
    monkeypatch.setattr(trials, "MOST_BYTES", 3_000)
    cut = ask("duct-run", shallow, "remedies=true")["remedies"]
    assert cut["found"] == whole["found"][:1], "one run of some 2,000 bytes has room in 3,000"
    assert cut["cut_short"] is True
    assert [one["message"] for one in cut["not_found"]] == [
        "A change was found that removes it, and is left out: the answer is full. Mend what is told, and ask again."
    ]


def without(code: str, one: dict[str, Any]) -> bool:
    """Say whether a remedy, sent again, has nothing of a code left."""
    return code not in {each["code"] for each in ask("duct-run", one["run"])["findings"]}


def test_ducts_that_float_in_every_stretch_told_lie_deeper_in_all_of_them() -> None:
    # 6 in of earth hold down 1.07 times what lifts them, under 1.5; twice that cover holds down more than 1.5 times
    def afloat(run: dict[str, Any]) -> None:
        del run["circuits"]
        run["bank"]["conduit"] = listed("4", "pvc_db_60")
        run["site"]["groundwater_depth"] = quantity(0, "ft")
        run["earth_load"]["traffic"] = "none"
        for stretch in run["stretches"][1:]:
            stretch["setting"]["cover"] = quantity(6, "in")

    found = by_kind(altered(KILN, afloat))
    assert set_in(found["cover"]) == {f"#/stretches/{at}/setting/cover": quantity(12, "in") for at in (1, 2)}
    assert set_in(found["encasement"]) == {f"#/stretches/{at}/setting/kind": "encased" for at in (1, 2)}
    assert all(without("floats_in_service", one) for one in found.values())


def deep_pour(**lift: Any) -> dict[str, Any]:
    """Give 16 tiers of EB-20 at 6.5 in: 105 in of concrete over the lowest."""
    return {
        "bank": {"conduit": EB_35 | {"type": "pvc_eb_20"}, "tiers": [1] * 16},
        "start": {"kind": "vault", "name": "A"},
        "end": {"kind": "vault", "name": "B"},
        "stretches": [
            {
                "name": "deep",
                "length": quantity(100, "ft"),
                "setting": {
                    "kind": "encased",
                    "cover": quantity(36, "in"),
                    "location": "not_otherwise_specified",
                    "concrete_cover": {side: quantity(3, "in") for side in ("top", "side", "bottom")},
                },
            }
        ],
        "earth_load": {"traffic": "none"},
        **lift,
    }


@pytest.mark.parametrize(
    ("lift", "path", "most", "words"),
    [
        ({}, "#/earth_load/lift_height", quantity(60, "in"), "Pour in lifts of 60 in."),
        (
            {"earth_load": {"traffic": "none", "lift_height": quantity(10, "ft")}},
            "#/earth_load/lift_height",
            quantity(5, "ft"),
            "Pour in lifts of 5 ft instead of 10 ft.",
        ),
        (
            {"flotation": {"lift_height": quantity(2.5, "m")}},
            "#/flotation/lift_height",
            quantity(1.5, "m"),
            "Pour in lifts of 1.5 m instead of 2.5 m.",
        ),
    ],
)
def test_a_pour_that_collapses_its_ducts_comes_in_lifts_where_those_are_said(
    lift: dict[str, Any], path: str, most: dict[str, Any], words: str
) -> None:
    # derived: a ring of 20 psi bears 5.2333 psi, 5.2333 x 1728 / 150 = 60.29 in of concrete: 5.02 ft, 1.531 m
    found = by_kind(deep_pour(**lift))
    one = found["lift_height"]
    assert (set_in(one), one["message"]) == ({path: most}, words)
    assert set_in(found["conduit_type"]) == {
        "#/bank/conduit": {"kind": "listed", "type": "pvc_eb_35", "trade_size": "4"}
    }
    assert all(without("duct_collapses_in_the_pour", each) for each in found.values())


def test_the_lifts_in_which_ducts_are_held_down_are_those_that_press_on_them() -> None:
    answer = ask("duct-run", deep_pour(flotation={"lift_height": quantity(24, "in")}))
    [load] = answer["result"]["stretches"][0]["earth_loads"]
    assert max(one["head"]["value"] for one in load["tiers_in_pour"]) == pytest.approx(24)
    assert "duct_collapses_in_the_pour" not in {one["code"] for one in answer["findings"]}
    other = deep_pour(flotation={"lift_height": quantity(24, "in")})
    other["earth_load"]["lift_height"] = quantity(48, "in")
    [own] = ask("duct-run", other)["result"]["stretches"][0]["earth_loads"]
    assert max(one["head"]["value"] for one in own["tiers_in_pour"]) == pytest.approx(48), (
        "what it says of its own goes first"
    )
