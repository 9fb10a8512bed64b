"""What ducts take at their ends, where their conduit changes, and beside ducts that are there; all of it derived."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, quantity
from tests.subjects.duct_run.runs import buried, listed
from tests.subjects.duct_run.test_runs_of_several_conduits import ABOVE, exact, lines_of, run, stretch

EXISTING = {"kind": "existing"}
PVC, RMC, HDPE = "pvc_schedule_40", "rmc", "hdpe_schedule_40"


def place(kind: str, name: str, **more: Any) -> dict[str, Any]:
    return {"kind": kind, "name": name, **more}


def shares(answer: dict[str, Any], item: str) -> dict[str, float]:
    [line] = lines_of(answer, item)
    return {share["stretch"]: share["quantity"]["value"] for share in line["shares"]}


def test_one_body_serves_both_sides_of_a_pull_point() -> None:
    first = stretch(ABOVE, name="wall", pull_point=place("conduit_body", "LB"))
    answer = ask("duct-run", run(first, stretch(ABOVE, name="eave")))
    assert exact(answer, "conduit_body") == {(PVC, "4"): 2}
    assert shares(answer, "conduit_body") == {"wall": 2}
    ends = run(stretch(ABOVE), start=place("conduit_body", "A"), end=place("conduit_body", "B"))
    assert exact(ask("duct-run", ends), "conduit_body") == {(PVC, "4"): 4}


def test_caps_and_plugs_are_of_the_size_of_their_duct_and_lie_where_they_are() -> None:
    bank = {"conduit": listed("4"), "tier_ducts": [[{"count": 1}, {"count": 2, "conduit": listed("2")}]]}
    stretches = [stretch(buried(), name="near"), stretch(buried(), name="far")]
    answer = ask("duct-run", run(*stretches, bank=bank, end=place("capped", "stub")))
    assert exact(answer, "cap") == {(PVC, "4"): 1, (PVC, "2"): 2}
    assert [one["shares"][0]["stretch"] for one in lines_of(answer, "cap")] == ["far", "far"]
    # a spare is open at the handhole alone
    assert exact(answer, "duct_plug") == {(PVC, "4"): 1, (PVC, "2"): 2}
    assert [one["shares"][0]["stretch"] for one in lines_of(answer, "duct_plug")] == ["near", "near"]
    priced = ask("duct-run", run(*stretches, bank=bank, rates=[{"item": "duct_plug", "size": "2", "unit_price": 3}]))
    assert {one["size"]: one.get("price") for one in lines_of(priced, "duct_plug")} == {"4": None, "2": 12}


@pytest.mark.parametrize(("kind", "plugs"), [("vault", 4), ("existing_duct", 2), ("conduit_body", 2)])
def test_a_spare_is_plugged_where_it_is_open(kind: str, plugs: int) -> None:
    answer = ask("duct-run", run(stretch(buried()), end=place(kind, "B")))
    assert exact(answer, "duct_plug") == {(PVC, "4"): plugs}


def test_beside_ducts_that_are_there_only_what_is_new_is_bought() -> None:
    request = run(stretch(EXISTING, name="old"), stretch(buried(), name="new"))
    request |= {"start": place("vault", "V"), "end": place("vault", "W")}
    answer = ask("duct-run", request)
    assert shares(answer, "wall_penetration") == {"new": 2}
    assert shares(answer, "duct_plug") == {"new": 2}
    alone = ask("duct-run", run(stretch(EXISTING), start=place("vault", "V"), end=place("vault", "W")))
    assert {one["item"] for one in alone["result"]["takeoff"]["lines"]} == {"mandrel_pass", "pull_cord"}
    # 2 x (100 + 2 x 10) ft of cord
    assert exact(alone, "pull_cord") == {(None, None): 240}
    short = ask("duct-run", run(stretch(EXISTING), joining={"cord_tail": quantity(4, "ft")}))
    assert exact(short, "pull_cord") == {(None, None): pytest.approx(216)}


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(
    ("kind", "item", "joints"),
    [
        # 5 sticks of PVC with 4 joints between, a bell at the handhole and the fitting: 6; 10 of steel with 9 between,
        # 5 of HDPE with 4
        (RMC, "terminal_adapter", {(PVC, "4"): 2 * 6, (RMC, "4"): 2 * 9}),
        (HDPE, "coupling", {(PVC, "4"): 2 * 6}),
    ],
)
def test_where_the_kind_of_conduit_changes_there_is_a_fitting_on_the_cemented_side(
    kind: str, item: str, joints: dict[tuple[str, str], float], turned: bool
) -> None:
    stretches = [stretch(buried(), name="plastic"), stretch(buried(), name="other", conduit_type=kind)]
    answer = ask("duct-run", run(*(stretches[::-1] if turned else stretches)))
    assert exact(answer, item)[PVC, "4"] == 2
    assert exact(answer, "joint") == joints
    [fitting] = [one for one in lines_of(answer, item) if one["conduit_type"] == PVC]
    change = f"2 at the change to 4 in {kind.replace('_', ' ')}"
    assert fitting["basis"] == f"plastic: {change if kind == RMC else f'2 ducts, with {change}'}"
    assert exact(answer, "solvent_cement") == {(None, None): pytest.approx(12 / 30)}
    if kind == HDPE:
        assert exact(answer, "fusion_joint") == {(HDPE, "4"): 2 * 4}


def test_each_fitting_is_told_where_it_is() -> None:
    stretches = [stretch(buried(), name="plastic"), stretch(buried(), name="steel", conduit_type=RMC)]
    answer = ask("duct-run", run(*stretches, start=place("equipment", "A"), end=place("equipment", "B")))
    told = {one["conduit_type"]: one["basis"] for one in lines_of(answer, "terminal_adapter")}
    assert told == {PVC: "plastic: 2 at A, 2 at the change to 4 in rmc", RMC: "steel: 2 at B"}
    assert exact(answer, "terminal_adapter") == {(PVC, "4"): 4, (RMC, "4"): 2}


def test_one_duct_is_told_as_one() -> None:
    alone = run(
        stretch(buried()), end=place("pole_base", "P", height=quantity(3, "ft"), riser_radius=quantity(3, "ft"))
    )
    alone["bank"] = {"conduit": alone["bank"]["conduit"], "tiers": [1]}
    assert [one["basis"] for one in lines_of(ask("duct-run", alone), "strap")] == ["stretch 1: 1 duct x 1 at P"]


def test_a_riser_of_steel_is_met_by_an_adapter_and_one_of_other_pvc_by_its_joint() -> None:
    def risen(kind: str) -> dict[str, Any]:
        more = {"height": quantity(3, "ft"), "riser_radius": quantity(3, "ft"), "riser_conduit_type": kind}
        return ask("duct-run", run(stretch(buried()), end=place("pole_base", "P", **more)))

    steel = risen(RMC)
    assert exact(steel, "terminal_adapter") == {(PVC, "4"): 2}
    assert exact(risen("pvc_schedule_80"), "end_bell") == {(PVC, "4"): 2, ("pvc_schedule_80", "4"): 2}
    assert not lines_of(risen("pvc_schedule_80"), "terminal_adapter")


def test_new_ducts_are_coupled_to_those_that_are_there() -> None:
    # 5 sticks with 4 joints between them, and one at each coupling
    answer = ask("duct-run", run(stretch(EXISTING), stretch(buried(), name="new"), stretch(EXISTING)))
    assert exact(answer, "coupling") == {(PVC, "4"): 2 * 2}
    assert exact(answer, "joint") == {(PVC, "4"): 2 * 6}


def test_ducts_of_one_bank_may_change_each_in_its_own_way() -> None:
    steel = [[{"count": 1}, {"count": 1, "conduit": listed("4", RMC)}]]
    own: dict[str, Any] = {"bank": {"conduit": listed("4"), "tier_ducts": steel}}
    answer = ask("duct-run", run(stretch(buried(), name="plastic"), stretch(buried(), name="mixed", **own)))
    assert exact(answer, "terminal_adapter") == {(PVC, "4"): 1}
    plain, mixed = answer["result"]["stretches"]
    assert [one["duct_count"] for one in plain["conduits"]] == [1, 1]
    assert [one["joints"]["adapter_count"] for one in plain["conduits"]] == [0, 1]
    assert [one["conduit_type"] for one in mixed["conduits"]] == [PVC, RMC]
