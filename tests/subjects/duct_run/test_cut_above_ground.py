"""Conduit above ground is cut between elbows and expansion fittings; all of it derived."""

from __future__ import annotations

from typing import Any

import pytest
from ductrun.engineering.joints import sticks_to_cut

from tests.asking import ask, quantity
from tests.subjects.duct_run.runs import level_bend, listed, straight
from tests.subjects.duct_run.test_runs_of_several_conduits import ABOVE, exact, lines_of, run

PVC = "pvc_schedule_40"
# three straights of 11 ft: 33 ft end to end are two sticks of 20 ft, but cut they are three
CUT = {"setting": ABOVE, "sections": [part for _ in range(2) for part in (straight(11), level_bend(90, 3))]}
CUT["sections"] = [*CUT["sections"], straight(11)]


@pytest.mark.parametrize(
    ("lengths", "count"), [([14, 6], 1), ([11, 11, 11], 3), ([14, 6.1], 2), ([45, 15], 3), ([20, 20], 2), ([], 0)]
)
def test_what_is_left_of_a_stick_serves_for_the_longest_rest_that_fits(lengths: list[float], count: int) -> None:
    assert sticks_to_cut([length * 0.3048 for length in lengths], 20 * 0.3048) == count


def test_straights_between_elbows_are_cut_from_sticks_and_joined_each() -> None:
    answer = ask("duct-run", run(CUT))
    [conduit] = lines_of(answer, "conduit")
    assert (conduit["exact_quantity"]["value"], conduit["package_count"]) == (pytest.approx(2 * 33), 2 * 3)
    # three pieces and two elbows have four joints between them, and a bell at either end
    assert exact(answer, "joint") == {(PVC, "4"): 2 * (4 + 2)}
    assert exact(answer, "solvent_cement") == {(None, None): pytest.approx(12 / 30)}
    # with plain ends four couplings, of two sockets each
    plain = ask("duct-run", run(CUT, joining={"ends": "plain"}))
    assert exact(plain, "coupling") == {(PVC, "4"): 2 * 4}
    assert exact(plain, "joint") == {(PVC, "4"): 2 * (8 + 2)}


def test_an_expansion_fitting_has_two_sockets() -> None:
    site: dict[str, Any] = {"temperatures": {"kind": "difference", "difference": quantity(100, "delta_degF")}}
    # 60 ft move 2.43 in: one fitting a duct; 3 sticks with 2 joints between them, a bell at either end, and two sockets
    answer = ask("duct-run", run({"setting": ABOVE, "length": quantity(60, "ft")}, site=site))
    assert exact(answer, "expansion_fitting") == {(PVC, "4"): 2}
    assert exact(answer, "joint") == {(PVC, "4"): 2 * (2 + 2 + 2)}


def test_fittings_and_straps_are_of_the_size_of_their_duct() -> None:
    bank = {"conduit": listed("4"), "tier_ducts": [[{"count": 1}, {"count": 2, "conduit": listed("2")}]]}
    answer = ask("duct-run", run({"setting": ABOVE, "length": quantity(12, "ft")}, bank=bank))
    straps = exact(answer, "strap")
    assert straps[PVC, "2"] == 2 * straps[PVC, "4"] > 0
