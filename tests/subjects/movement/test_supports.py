"""Supports: how far apart straps may stand, and where they go."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from ductrun.tables import TABLES

from tests.asking import EXAMPLES, ask, codes, faults, problem, quantity

PLAIN = {name: value for name, value in EXAMPLES["supports"].items() if name != "fittings"}


def straps(**changes: Any) -> dict[str, Any]:
    return ask("supports", copy.deepcopy(PLAIN) | changes)


def listed(kind: str, size: str) -> dict[str, str]:
    return {"kind": "listed", "type": kind, "trade_size": size}


@pytest.mark.parametrize(
    "row", TABLES["support_spacing"], ids=lambda row: f"{row.type} {row.coupling} {row.trade_size_from}"
)
def test_every_row_of_the_support_tables_is_answered(row: Any) -> None:
    kind = {"pvc": "pvc_schedule_80", "lfnc": "lfnc_b"}.get(row.type, row.type)
    coupling = {"coupling": row.coupling} if row.coupling else {}
    for size in (row.trade_size_from, row.trade_size_to):
        request = PLAIN | {"conduit": listed(kind, size) | coupling}
        del request["end_distance"]
        answer = ask("supports", request)
        assert answer["result"]["support_spacing"] == quantity(row.maximum_spacing_ft, "ft")
        assert answer["result"]["end_distance"]["value"] == pytest.approx(
            min(row.securing_within_ft, row.maximum_spacing_ft)
        )
        if row.from_edition:
            [error] = faults("supports", request | {"code_edition": "2017"})
            assert (error["pointer"], error["code"]) == ("#/conduit/trade_size", "trade_size_not_listed")
            assert size not in error["allowed_values"]


@pytest.mark.parametrize(
    ("kind", "size", "edition", "section"),
    [
        ("emt", "2", "2023", "358.30(A)"),
        ("imc", "2", "2023", "342.30(B)(2)"),
        ("rmc", "2", "2023", "Table 344.30(B)"),
        ("rmc", "2", "2020", "Table 344.30(B)(2)"),
        ("fmc", "1", "2023", "348.30(A)"),
        ("lfmc", "1", "2023", "350.30(A)"),
        ("lfnc_a", "1", "2023", "356.30(1)"),
        ("ent", "1", "2023", "362.30(A)"),
    ],
)
def test_each_kind_is_held_by_its_own_section(kind: str, size: str, edition: str, section: str) -> None:
    answer = straps(conduit=listed(kind, size), code_edition=edition, end_distance=quantity(1, "ft"))
    [found] = [one for one in answer["findings"] if one["code"] == "straps_hold_it"]
    assert found["citation"] == f"NFPA 70-{edition}, {section}"


@pytest.mark.parametrize("kind", ["fmc", "lfmc", "lfnc_a", "lfnc_b"])
def test_flexible_conduit_is_held_within_a_foot_of_a_termination(kind: str) -> None:
    assert straps(conduit=listed(kind, "1"), end_distance=quantity(12, "in"))["verdict"] == "complies"
    assert straps(conduit=listed(kind, "1"), end_distance=quantity(13, "in"))["verdict"] == "violates"


@pytest.mark.parametrize("kind", ["rmc", "imc"])
def test_a_spacing_of_rigid_conduit_says_for_which_couplings_it_holds(kind: str) -> None:
    answer = straps(conduit=listed(kind, "3"))
    assert answer["result"]["support_spacing"] == quantity(20, "ft")
    [found] = [one for one in answer["findings"] if one["code"] == "spacing_of_threaded_couplings"]
    assert (found["severity"], found["limit"]) == ("caution", quantity(10, "ft"))
    assert "#/conduit/coupling" in {place for one in answer["assumptions"] for place in one["pointers"]}
    threadless = straps(conduit=listed(kind, "3") | {"coupling": "threadless"})
    assert threadless["result"]["support_spacing"] == quantity(10, "ft")
    assert "spacing_of_threaded_couplings" not in codes(threadless)
    assert "spacing_of_threaded_couplings" not in codes(straps(conduit=listed(kind, "1/2"))), "10 ft either way"


def test_a_coupling_is_asked_of_rigid_conduit_alone() -> None:
    [error] = faults("supports", PLAIN | {"conduit": listed("emt", "2") | {"coupling": "threaded"}})
    assert (error["pointer"], error["code"]) == ("#/conduit/coupling", "contradiction")


@pytest.mark.parametrize(("kind", "section"), [("pvc_schedule_40", "352.12(D)"), ("ent", "362.12(3)"), ("emt", None)])
def test_plastic_is_told_how_hot_its_air_may_be(kind: str, section: str | None) -> None:
    told = [one for one in straps(conduit=listed(kind, "1"))["cautions"] if one["code"] == "hot_air"]
    assert [one["citation"] for one in told] == ([f"NFPA 70-2023, {section}"] if section else [])
    assert all("122 degF" in one["message"] for one in told)


def test_a_hundred_feet_of_2_inch_pvc_needs_twenty_straps() -> None:
    found = straps()["result"]
    assert found["support_count"] == 20  # 94 ft between end straps in 19 gaps of at most 5 ft
    assert found["positions"][0] == quantity(3.0, "ft")
    assert found["positions"][-1]["value"] == pytest.approx(97)
    assert found["actual_spacing"]["value"] == pytest.approx(94 / 19)


def test_a_short_run_needs_one_strap_in_its_middle() -> None:
    found = straps(length=quantity(6, "ft"))["result"]
    assert found["support_count"] == 1
    assert found["positions"] == [quantity(3.0, "ft")]
    assert "actual_spacing" not in found


def test_a_run_that_goes_on_is_strapped_up_to_where_the_next_one_falls() -> None:
    found = straps(length=quantity(20, "ft"), termination_count=1)["result"]
    assert [place["value"] for place in found["positions"]] == pytest.approx([3, 8, 13, 18])


def test_small_conduit_has_its_end_strap_no_farther_than_its_spacing() -> None:
    found = straps(conduit=listed("pvc_schedule_40", "1/2"), length=quantity(10, "ft"))["result"]
    assert [place["value"] for place in found["positions"]] == pytest.approx([3, 5, 7])


def test_an_end_strap_beyond_3_ft_is_a_violation() -> None:
    answer = straps(end_distance=quantity(4, "ft"))
    assert "end_support_too_far" in codes(answer, "violation")


def test_a_size_without_a_row_is_answered_with_those_there_are() -> None:
    [error] = faults("supports", PLAIN | {"conduit": listed("rmc", "3/8")})
    assert error["allowed_values"][0] == "1/2"
    long = problem("supports", PLAIN | {"length": quantity(90_000, "ft")})
    assert long.errors is not None
    assert long.errors[0].pointer == "#/length/value"


def test_every_finding_says_which_member_it_is_about() -> None:
    answer = straps(end_distance=quantity(4, "ft"))
    assert {finding["code"]: finding["pointer"] for finding in answer["findings"]} == {
        "end_support_too_far": "#/end_distance",
        "straps_let_it_slide": "#/conduit",
    }


def test_the_end_straps_decide_the_verdict() -> None:
    assert straps(end_distance=quantity(3, "ft"))["verdict"] == "complies"
    assert straps(end_distance=quantity(37, "in"))["verdict"] == "violates"


def test_a_violation_is_told_in_the_units_of_the_answer() -> None:
    request = PLAIN | {"end_distance": quantity(4, "ft")}
    [found] = [one for one in ask("supports", request, "units=metric")["findings"] if one["severity"] == "violation"]
    assert found["message"] == "The end straps stand 1.2192 m from the terminations; 0.9144 m is the most."


def test_a_run_with_fittings_lies_between_two_fixed_points() -> None:
    [error] = faults("supports", PLAIN | {"termination_count": 1, "fittings": {"fitting_count": 1}})
    assert (error["pointer"], error["code"]) == ("#/termination_count", "contradiction")


def test_fittings_longer_than_their_pieces_are_refused_with_how_many_there_is_room_for() -> None:
    """Derived: 20 ft hold thirteen of 18 in."""
    request = PLAIN | {"length": quantity(20, "ft")}
    [error] = faults("supports", request | {"fittings": {"fitting_count": 14}})
    assert (error["pointer"], error["maximum"]["value"]) == ("#/fittings/fitting_count", 13)
    assert ask("supports", request | {"fittings": {"fitting_count": 13}})["result"]["support_count"] >= 13


def test_a_fitting_too_long_for_its_straps_is_refused_with_the_longest_travel() -> None:
    """Derived: straps of 1/2 in PVC stand 36 in apart, (2 x 36 - 6) / 3 = 22 in of travel."""
    request = PLAIN | {"conduit": listed("pvc_schedule_40", "1/2")}
    fittings = {"fitting_count": 1, "fitting_travel": quantity(23, "in")}
    [error] = faults("supports", request | {"fittings": fittings})
    assert (error["pointer"], error["code"]) == ("#/fittings/fitting_travel", "fitting_too_long")
    assert error["maximum"]["value"] == pytest.approx(22)
    longest = {"fittings": {"fitting_count": 1, "fitting_travel": quantity(22, "in")}}
    assert ask("supports", request | longest)["result"]["actual_spacing"]["value"] <= 3 + 1e-9


@pytest.mark.parametrize("kind", ["emt", "rmc", "imc", "fmc", "lfmc", "lfnc_a", "lfnc_b", "ent"])
def test_straps_of_metal_and_flexible_conduit_hold_it(kind: str) -> None:
    answer = straps(conduit=listed(kind, "1"), end_distance=quantity(1, "ft"))
    assert "straps_let_it_slide" not in codes(answer)
    [found] = [one for one in answer["findings"] if one["code"] == "straps_hold_it"]
    least = 1 if kind in ("fmc", "lfmc", "lfnc_a", "lfnc_b") else 3
    assert found["message"] == (
        f"Fasten the conduit securely at every strap, the first and last within {least} ft of the terminations: none "
        "is left loose."
    )
    assert answer["result"]["holding_strap_positions"] == answer["result"]["positions"]


@pytest.mark.parametrize("kind", ["pvc_schedule_80", "rtrc"])
def test_straps_of_rigid_plastic_let_it_slide(kind: str) -> None:
    answer = straps(conduit=listed(kind, "2"))
    assert "straps_hold_it" not in codes(answer)
    assert "straps_let_it_slide" in codes(answer)
    assert answer["result"]["holding_strap_positions"] == []


@pytest.mark.parametrize("kind", ["fmc", "lfmc", "lfnc_a", "lfnc_b", "ent"])
def test_flexible_conduit_has_no_expansion_fittings(kind: str) -> None:
    request = PLAIN | {"conduit": listed(kind, "2"), "end_distance": quantity(1, "ft")}
    [error] = faults("supports", request | {"fittings": {"fitting_count": 1}})
    assert (error["pointer"], error["code"]) == ("#/fittings", "contradiction")
    assert "Leave them out" in error["message"]


def test_metal_with_expansion_fittings_slides_between_its_anchors() -> None:
    answer = straps(conduit=listed("emt", "2"), fittings={"fitting_count": 2})
    assert "straps_let_it_slide" in codes(answer)
    held = [place["value"] for place in answer["result"]["holding_strap_positions"]]
    assert held == pytest.approx([49.5, 50.5])  # the anchor at 50 ft, a barrel clamped 6 in to either side


def test_an_end_strap_keeps_clear_of_an_open_piston_and_that_is_said() -> None:
    """Derived: 3 ft, the barrel at the far end; its piston ends 18 in from there when open, 6 in farther is 1 ft."""
    short = {"length": quantity(3, "ft"), "end_distance": quantity(2, "ft"), "fittings": {"fitting_count": 1}}
    answer = straps(**short)
    found = answer["result"]
    assert [place["value"] for place in found["positions"]] == pytest.approx([1, 2.5])
    assert found["piston_reaches"] == [{"value": pytest.approx(1.5), "unit": "ft"}]
    assert found["end_distance"]["value"] == pytest.approx(1)
    [moved] = [one for one in answer["findings"] if one["code"] == "end_strap_moved"]
    assert (moved["pointer"], moved["actual"]["value"], moved["limit"]["value"]) == (
        "#/end_distance",
        pytest.approx(1),
        pytest.approx(2),
    )
    assert moved["message"].startswith("An end strap stands 1 ft from its termination, not 2 ft:")
    assert "end_strap_moved" not in codes(straps(**short | {"end_distance": quantity(1, "ft")}))


def test_end_straps_on_both_sides_keep_clear_of_long_fittings() -> None:
    """Derived: 8 ft, an anchor at 4 ft; 2 x 12 + 6 = 30 in of open fitting each way, and 6 in more: 1 ft is left."""
    fittings = {"fitting_count": 2, "fitting_travel": quantity(12, "in")}
    answer = straps(length=quantity(8, "ft"), fittings=fittings)
    found = answer["result"]
    assert found["end_distance"]["value"] == pytest.approx(1)
    assert found["positions"][-1]["value"] == pytest.approx(7)
    assert [place["value"] for place in found["piston_reaches"]] == pytest.approx([1.5, 6.5])
    [moved] = [one for one in answer["findings"] if one["code"] == "end_strap_moved"]
    assert "not 3 ft" in moved["message"]


def test_without_fittings_every_strap_lets_the_run_slide() -> None:
    found = straps()["result"]
    assert found["holding_strap_positions"] == found["fitting_positions"] == found["anchor_positions"] == []
    assert found["piston_reaches"] == []
