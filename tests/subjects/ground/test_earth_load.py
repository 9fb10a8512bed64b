"""Ducts under earth and traffic: hand arithmetic, limits, what would comply, and what cannot be asked."""

from __future__ import annotations

import copy
import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.asking import EXAMPLES, ask, assumed, codes, problem, quantity, result
from tests.properties.test_requests import check_given_back


def listed(kind: str = "pvc_db_60", size: str = "4") -> dict[str, Any]:
    return {"kind": "listed", "type": kind, "trade_size": size}


# DB-60 of trade size 4 below 30 in of 120 lb/ft3 and H-20, on a flat bottom, in fine-grained soil of moderate density
PLAIN: dict[str, Any] = {
    "conduit": listed(),
    "cover": quantity(30, "in"),
    "traffic": "h_20",
    "groundwater_depth": quantity(10, "ft"),
    "compaction": "moderate",
}


def asked(**changes: Any) -> dict[str, Any]:
    body = copy.deepcopy(PLAIN) | changes
    return {name: value for name, value in body.items() if value is not None}


def tier(**changes: Any) -> dict[str, Any]:
    [only] = result("earth-load", asked(**changes))["tiers"]
    found: dict[str, Any] = only
    return found


def refused(body: dict[str, Any]) -> dict[str, str]:
    return {str(error.pointer): error.code for error in problem("earth-load", body).errors or ()}


def test_the_figures_of_one_duct_are_those_worked_by_hand() -> None:
    """Derived: 2.5 x 120 / 144 = 2.0833 psi of earth. The spread at 1 to 1: 16000 / (4.1667 x 3.3333) x (1 + 0.33 x
    0.6875) x 1.2 = 1696.03 psf, and the lane 640 x 1.2 / 12.5 = 61.44 psf: 12.2047 psi. Deflection 100 x 0.11 x 14.288
    / (0.149 x 60 + 0.061 x 400) = 4.7141 percent. Thrust 14.288 x 4.5 / 2 x 12 = 385.776 lb/ft, and over 0.121 in it is
    265.69 psi.
    """
    found = tier()
    assert found["tier"] == 1
    assert found["cover"] == quantity(30, "in")
    assert found["prism_pressure"]["value"] == pytest.approx(25 / 12)
    assert found["earth_pressure"] == found["prism_pressure"]
    assert "trench_pressure" not in found
    assert found["live_pressure"]["value"] == pytest.approx((1696.032 + 61.44) / 144)
    assert found["governing_method"] == "aashto_spread"
    assert found["pipe_stiffness"]["value"] == pytest.approx(60)
    assert found["deflection_percent"] == pytest.approx(4.714097, abs=1e-6)
    assert found["lowest_deflection_percent"] == pytest.approx(2.714097, abs=1e-6)
    assert found["highest_deflection_percent"] == pytest.approx(6.714097, abs=1e-6)
    assert found["deflection_verdict"] == found["wall_verdict"] == found["buckling_verdict"] == "complies"
    assert found["wall_thrust"]["value"] == pytest.approx(385.776)
    assert found["wall_stress"]["value"] == pytest.approx(265.68595)


def test_every_method_is_told_and_one_alone_where_it_is_named() -> None:
    """The table between 800 and 600 psf at 2 and 3 ft; Boussinesq by the sum over both tire prints, times 1.15."""
    loads = {one["method"]: one["pressure"]["value"] * 144 for one in tier()["live_loads"]}
    assert loads == {
        "handbook_table": pytest.approx(700),
        "aashto_spread": pytest.approx(1757.472),
        "boussinesq": pytest.approx(1215.87, abs=0.01),
    }
    alone = tier(live_load_method="handbook_table")
    assert [one["method"] for one in alone["live_loads"]] == ["handbook_table"]
    assert alone["governing_method"] == "handbook_table"


@pytest.mark.parametrize(
    ("pounds", "spread", "psf"),
    [
        (8000, 1.0, 909.456),  # 8000 x 1.226875 x 1.2 / (4.16667 x 3.33333) + 768 / 12.5 = 848.016 + 61.440
        (10000, 1.15, 933.804),  # 10000 x 1.226875 x 1.2 / (4.54167 x 3.70833) + 768 / 12.875 = 874.153 + 59.650
    ],
)
def test_the_lane_load_is_the_same_beside_any_wheel(pounds: float, spread: float, psf: float) -> None:
    """Below 2.5 ft the allowance is 0.33 (1 - 2.5/8) = 0.226875, and the lane has 640 x 1.2 = 768 lb/ft: derived."""
    given: dict[str, Any] = {"wheel_load": quantity(pounds, "lbf"), "load_spread_ratio": spread}
    found = tier(**given, live_load_method="aashto_spread")
    assert found["live_pressure"]["value"] * 144 == pytest.approx(psf, abs=0.01)


def test_buckling_is_that_worked_by_hand_above_and_below_groundwater() -> None:
    """Derived: B' = 4 (900 + 135) / (1.5 x 64.5 x 64.5) = 0.66342; E I/D3 = 60/53.6 x 0.35 psi; above the water qa =
    sqrt(32 x 0.66342 x 400 x 0.39179) / 2.5 = 23.072 psi against 14.288; with water at grade Rw = 0.67 and 18.885 psi
    against 62.4/1728 x 30 + 0.67 x 2.0833 + 12.2047 = 14.684.
    """
    dry, wet = tier(), tier(groundwater_depth=quantity(0, "ft"))
    assert dry["allowable_buckling_load"]["value"] == pytest.approx(23.0721, abs=1e-4)
    assert dry["buckling_load"]["value"] == pytest.approx(14.288, abs=1e-4)
    assert wet["allowable_buckling_load"]["value"] == pytest.approx(18.8853, abs=1e-4)
    assert wet["buckling_load"]["value"] == pytest.approx(14.6838, abs=1e-4)


def test_without_support_a_duct_bears_what_a_free_ring_bears() -> None:
    """3 x 60 x 0.35 / (6.7 x (1 - 0.38^2)) / 2 = 5.495 psi: derived."""
    found = tier(embedment="fine_grained_high_plasticity")
    assert found["allowable_buckling_load"]["value"] == pytest.approx(5.4949, abs=1e-4)
    assert found["buckling_verdict"] == "violates"
    assert "duct_buckles" in codes(ask("earth-load", asked(embedment="fine_grained_high_plasticity")), "violation")


def test_ducts_in_groundwater_are_held_down_by_earth_and_their_mass() -> None:
    """Derived for 4.5 in: uplift 6.8919 lb/ft; earth 62.6 x (2.5 + 0.1073 x 0.375) x 0.375 = 59.632; wall 1.0103."""
    found = result("earth-load", asked(groundwater_depth=quantity(0, "ft")))["in_service"]
    assert found["uplift_per_length"]["value"] == pytest.approx(6.89187, abs=1e-5)
    assert found["hold_down_per_length"]["value"] == pytest.approx(60.6424, abs=1e-4)
    assert found["safety_factor"] == pytest.approx(8.79912, abs=1e-5)
    assert found["verdict"] == "complies"
    above = result("earth-load", asked())["in_service"]
    assert above["uplift_per_length"]["value"] == 0
    assert "safety_factor" not in above
    # below 1 in of earth: 62.6 x (1/12 + 0.040238) x 0.375 + 1.0103 = 3.9111 against 6.8919
    shallow = ask("earth-load", asked(groundwater_depth=None, cover=quantity(1, "in"), traffic="none"))
    assert shallow["result"]["in_service"]["safety_factor"] == pytest.approx(3.9111 / 6.8919, abs=1e-4)
    assert "floats_in_service" in codes(shallow, "violation")


def test_groundwater_lifts_what_of_a_duct_lies_below_it() -> None:
    """Derived for 4.5 in below 2 in of earth, the water at its center, 4.25 in: half of 6.8919 lb/ft lifts; earth
    120 x 2/12 x 0.375 = 7.5, beside the crown 62.6 x 0.1073 x 0.375^2 = 0.9446, wall 1.0103: 9.4549.
    """
    shallow = {"cover": quantity(2, "in"), "traffic": "none"}
    found = result("earth-load", asked(groundwater_depth=quantity(4.25, "in"), **shallow))["in_service"]
    assert found["uplift_per_length"]["value"] == pytest.approx(6.89187 / 2, abs=1e-5)
    assert found["hold_down_per_length"]["value"] == pytest.approx(9.4549, abs=1e-4)
    assert found["safety_factor"] == pytest.approx(9.4549 / 3.44594, abs=1e-4)
    for inches, share in ((2, 1), (6.5, 0)):  # at its top and at its bottom
        edge = result("earth-load", asked(groundwater_depth=quantity(inches, "in"), **shallow))["in_service"]
        assert edge["uplift_per_length"]["value"] == pytest.approx(6.89187 * share, abs=1e-5)
        assert ("safety_factor" in edge) is bool(share)


def test_groundwater_lifts_what_of_an_envelope_lies_below_it() -> None:
    """17 in of concrete 17 in wide below 24 in of earth, the water at 30 in: 62.4 x 17 x 11 / 144 = 81.033 lb/ft."""
    given = {"encased": True, "cover": quantity(24, "in"), "traffic": "none"}
    wet = result("earth-load", asked(conduit=None, bank=BANK, groundwater_depth=quantity(30, "in"), **given))
    assert wet["in_service"]["uplift_per_length"]["value"] == pytest.approx(81.0333, abs=1e-4)
    dry = result("earth-load", asked(conduit=None, bank=BANK, groundwater_depth=quantity(41, "in"), **given))
    assert dry["in_service"]["uplift_per_length"]["value"] == 0


def test_the_least_cover_is_not_one_under_which_a_duct_begins_to_float() -> None:
    """DB-60 of 6.625 in in water at 6 in. Derived: below 5 in of earth 31.1990 in2 of it lie under water and lift
    13.520 lb/ft, held by 120 x 5/12 x 0.55208 + 62.6 x 0.1073 x 0.55208^2 + 2.2359 = 31.887: 2.359 times as much.
    Below 3 in it is 2.492 times, below 6 in 2.504: of 2.42 times, shallower covers comply again and are not told.
    """
    given: dict[str, Any] = {"conduit": listed("pvc_db_60", "6"), "groundwater_depth": quantity(6, "in")}
    given |= {"traffic": "none", "flotation_safety_factor": 2.42}
    answers = [ask("earth-load", asked(**given, cover=quantity(inches, "in"))) for inches in (3, 5, 6)]
    assert [answer["verdict"] for answer in answers] == ["complies", "violates", "complies"]
    factors = [answer["result"]["in_service"]["safety_factor"] for answer in answers]
    assert factors == [pytest.approx(factor, abs=1e-3) for factor in (2.492, 2.359, 2.504)]
    assert {answer["result"]["would_comply"]["least_cover"]["value"] for answer in answers} == {6}


def test_earth_over_the_gap_between_ducts_does_not_hold_them_down() -> None:
    """Schedule 40 of trade size 4 below 2 in of earth, 36 in apart: each lifts pi/4 x 0.375^2 x 62.4 = 6.8919 lb/ft.

    Derived: earth 62.6 x (2/12 + 0.1073 x 0.375) x 0.375 = 4.8571; wall pi/4 x (4.5^2 - 4.026^2)/144 x 87.4 = 1.9265;
    6.7836 in all, 0.98429 times as much, whether one lies there or two.
    """
    apart = {"tiers": [2], "horizontal_separation": quantity(36, "in"), "separation_measure": "clear"}
    shallow = {"cover": quantity(2, "in"), "traffic": "none", "groundwater_depth": None}
    pair = ask("earth-load", asked(conduit=None, bank={"conduit": listed("pvc_schedule_40")} | apart, **shallow))
    found = pair["result"]["in_service"]
    assert found["hold_down_per_length"]["value"] == pytest.approx(2 * 6.7836, abs=2e-3)
    assert found["uplift_per_length"]["value"] == pytest.approx(2 * 6.89187, abs=1e-4)
    assert found["safety_factor"] == pytest.approx(0.98429, abs=1e-4)
    assert found["verdict"] == pair["verdict"] == "violates"
    alone = result("earth-load", asked(conduit=listed("pvc_schedule_40"), **shallow))["in_service"]
    assert alone["safety_factor"] == pytest.approx(found["safety_factor"])


def test_ducts_over_each_other_share_the_earth_above_them_and_the_worst_of_a_bank_is_told() -> None:
    """DB-60 of trade size 4 in tiers of 2 and 1 at the left, 2 in clear, below 6 in of earth.

    Derived: the two over each other lift 13.7837 lb/ft and are held by 62.6 x (0.5 + 0.040238) x 0.375 = 12.6821 and
    2 x 1.0103; the third lies 6.5 in deeper: 62.6 x (12.5/12 + 0.040238) x 0.375 + 1.0103 = 26.4078 against 6.8919.
    """
    bank = BANK | {"conduit": listed(), "tiers": [2, 1], "alignment": "left"}
    request = asked(conduit=None, bank=bank, cover=quantity(6, "in"), traffic="none", groundwater_depth=None)
    answer = ask("earth-load", request)
    found = answer["result"]["in_service"]
    assert found["hold_down_per_length"]["value"] == pytest.approx(12.6821 + 2.0206 + 26.4078, abs=2e-3)
    assert found["safety_factor"] == pytest.approx((12.6821 + 2.0206) / 13.7837, abs=1e-4)
    assert "floats_in_service" in codes(answer, "violation")


def test_earth_arches_in_its_trench_with_a_lag() -> None:
    """Clay, K mu 0.13, in 24 in: Cd = (1 - exp(-0.26 x 1.25)) / 0.26 = 1.06720, times 120 x 2 / 144: derived."""
    arching: dict[str, Any] = {"trench_width": quantity(24, "in"), "arching_soil": "clay"}
    told = tier(**arching)
    assert told["trench_pressure"]["value"] == pytest.approx(1.77867, abs=1e-5)
    assert told["earth_pressure"] == told["prism_pressure"]
    taken = tier(**arching, earth_load_method="trench")
    assert taken["earth_pressure"] == taken["trench_pressure"]
    live = 1757.472 / 144
    expected = 100 * 0.11 * (1.5 * 1.77867 + live) / (0.149 * 60 + 0.061 * 400)
    assert taken["deflection_percent"] == pytest.approx(expected, abs=1e-4)
    whole = result("earth-load", asked(**arching, earth_load_method="trench"))
    assert whole["earth_load_method"] == "trench"
    assert whole["soil_modulus"]["value"] == pytest.approx(400)
    assert refused(asked(earth_load_method="trench")) == {"#/trench_width": "missing"}
    assert refused(asked(trench_width=quantity(3, "in"))) == {"#/trench_width/value": "narrower_than_the_bank"}


def test_what_nobody_said_is_taken_at_its_worst_and_told() -> None:
    taken = assumed(ask("earth-load", {"conduit": listed(), "cover": quantity(3, "ft"), "traffic": "h_20"}))
    expected = {
        "#/compaction": "dumped",
        "#/embedment": "fine_grained",
        "#/bedding_angle": quantity(0, "deg"),
        "#/groundwater_depth": quantity(0, "ft"),
        "#/live_load_method": "governing",
        "#/deflection_limit_percent": 5,
        "#/lag_factor": 1,
        "#/modulus": quantity(400_000, "psi"),
    }
    assert {place: taken[place] for place in expected} == expected


def test_over_its_limit_a_duct_is_a_violation_and_near_it_a_caution() -> None:
    over = ask("earth-load", asked(compaction="slight"))
    assert over["verdict"] == "violates"
    [found] = [one for one in over["findings"] if one["code"] == "deflection_exceeded"]
    # 100 x 0.11 x 14.288 / (8.94 + 12.2)
    assert found["actual"] == {"value": pytest.approx(7.43463, abs=1e-5), "unit": "percent"}
    assert found["limit"] == quantity(5, "percent")
    assert found["pointer"] == "#/conduit"
    near = ask("earth-load", asked())
    assert near["verdict"] == "complies"
    assert "deflection_near_limit" in codes(near, "caution")
    assert codes(ask("earth-load", asked(compaction="high")), "caution") == ["excavation_safety"]


def test_a_thin_wall_is_crushed() -> None:
    answer = ask("earth-load", asked(allowable_wall_stress=quantity(250, "psi")))
    [found] = [one for one in answer["findings"] if one["severity"] == "violation"]
    assert (found["code"], found["actual"]["value"]) == ("wall_crushed", pytest.approx(265.68595))
    assert answer["result"]["tiers"][0]["wall_verdict"] == "violates"


def test_a_wall_that_is_not_on_file_is_not_judged() -> None:
    answer = ask("earth-load", asked(conduit=listed("pvc_db_100"), compaction="high"))
    assert answer["verdict"] == "not_judged"
    assert "wall_not_judged" in codes(answer, "caution")
    [found] = answer["result"]["tiers"]
    assert found["wall_verdict"] == "not_judged"
    assert "wall_stress" not in found
    assert "least_cover" not in answer["result"]["would_comply"], "nothing is told to comply that was not judged"


def test_the_bore_is_told_flattened_for_mandrel_and_jam() -> None:
    """A bore of 4.026 in, 3.998 by the table; at the high end two points less."""
    found = tier(conduit=listed("pvc_schedule_40"))
    bore = 3.998
    assert found["deflected_bore"]["value"] == pytest.approx(bore * (1 - found["deflection_percent"] / 100))
    assert found["least_bore"]["value"] == pytest.approx(bore * (1 - found["highest_deflection_percent"] / 100))
    assert "least_bore" not in tier(), "no bore of utility duct is on file"


def test_little_cover_under_traffic_is_a_caution_and_none_is_a_violation_without_a_load() -> None:
    assert "shallow_under_traffic" in codes(ask("earth-load", asked(cover=quantity(23, "in"))), "caution")
    assert "shallow_under_traffic" not in codes(ask("earth-load", asked(cover=quantity(24, "in"))))
    answer = ask("earth-load", asked(cover=quantity(0, "in")))
    assert answer["verdict"] == "violates"
    [none] = [one for one in answer["findings"] if one["severity"] == "violation"]
    assert (none["code"], none["pointer"]) == ("too_little_cover_under_traffic", "#/cover")
    assert none["limit"] == quantity(24, "in")
    assert none["citation"] == "NFPA 70-2023, Table 300.5(A)"
    assert "live_load_not_judged" in codes(answer, "caution")
    [bare] = answer["result"]["tiers"]
    assert bare["live_loads"] == []
    assert {bare[f"{one}_verdict"] for one in ("deflection", "wall", "buckling")} == {"not_judged"}
    assert not {"live_pressure", "deflection_percent", "buckling_load"} & set(bare)
    light = ask("earth-load", asked(cover=quantity(0, "in"), traffic="none"))
    assert "too_little_cover_under_traffic" not in codes(light)
    assert light["result"]["tiers"][0]["deflection_percent"] == 0


def test_a_little_cover_under_traffic_is_as_much_a_violation_as_none() -> None:
    """Under a street 24 in, which is the row of Table 300.5(A) for every wiring method."""
    strong: dict[str, Any] = {"conduit": listed("pvc_schedule_80", "1"), "embedment": "crushed_rock"}
    for inches in (0.5, 1, 12, 23.9):
        answer = ask("earth-load", asked(**strong, cover=quantity(inches, "in")))
        assert codes(answer, "violation") == ["too_little_cover_under_traffic"], inches
        assert answer["verdict"] == "violates"
        assert answer["result"]["would_comply"]["least_cover"] == quantity(24, "in")
    assert ask("earth-load", asked(**strong, cover=quantity(24, "in")))["verdict"] == "complies"
    # concrete counts: the rule measures down to the raceway
    thick = asked(conduit=listed(), encased=True, cover=quantity(18, "in"))
    assert "too_little_cover_under_traffic" in codes(ask("earth-load", thick))
    thick["concrete_cover"] = {"top": quantity(6, "in")}
    assert "too_little_cover_under_traffic" not in codes(ask("earth-load", thick))


def test_without_cover_and_traffic_a_duct_is_a_free_ring() -> None:
    """3 x 60 x 0.35 / (6.7 x 0.8556) / 2 = 5.4949 psi against nothing: derived."""
    found = tier(cover=quantity(0, "in"), traffic="none")
    assert found["allowable_buckling_load"]["value"] == pytest.approx(5.4949, abs=1e-4)
    assert found["buckling_load"]["value"] == 0
    assert (found["live_loads"], found["live_pressure"]["value"]) == ([], 0)


def test_the_working_shows_what_was_put_in() -> None:
    plain = ask("earth-load", asked(trench_width=quantity(24, "in")), "working=true")
    symbols = ["P", "P arched", "W", "W", "W", "PS", "E'", "d", "s", "q", "q allowed"]
    assert [step["symbol"] for step in plain["working"]] == symbols
    steps = {step["symbol"]: step for step in plain["working"]}
    assert steps["d"]["quantity"]["value"] == pytest.approx(4.714097, abs=1e-6)
    assert steps["s"]["quantity"]["value"] == pytest.approx(265.68595)
    assert steps["E'"]["quantity"]["value"] == pytest.approx(400)
    assert steps["q allowed"]["quantity"]["value"] == pytest.approx(23.0721, abs=1e-4)
    # 16000 lbf on 4.1667 by 3.3333 ft, allowance 0.33 x 0.6875, and 640 lbf/ft on 12.5 ft
    [spread] = [step for step in plain["working"] if step["substituted"].startswith("aashto_spread")]
    assert "1 x 71171.5 N x (1 + 0.2269) x 1.2/(1.27 m x 1.016 m)" in spread["substituted"]
    wet = ask("earth-load", asked(groundwater_depth=None), "working=true")
    assert [step["symbol"] for step in wet["working"]][-3:] == ["U", "W down", "F"]
    assert wet["working"][-1]["quantity"]["value"] == pytest.approx(8.79912, abs=1e-5)
    encased = ask("earth-load", asked(conduit=None, bank=BANK, encased=True), "working=true")
    assert [step["quantity"]["value"] for step in encased["working"]] == [
        pytest.approx(14 * 150 / 1728),
        pytest.approx(7.5 * 150 / 1728),
    ]


def test_a_method_that_goes_no_shallower_leaves_the_load_open() -> None:
    answer = ask("earth-load", asked(cover=quantity(11, "in"), live_load_method="handbook_table", compaction="high"))
    assert codes(answer, "violation") == ["too_little_cover_under_traffic"], "and nothing else is held against it"
    assert "live_load_not_judged" in codes(answer, "caution")
    [only] = answer["result"]["tiers"]
    assert {only[f"{one}_verdict"] for one in ("deflection", "wall", "buckling")} == {"not_judged"}


def test_duct_for_concrete_alone_is_a_violation_in_earth_before_any_load() -> None:
    for kind in ("pvc_eb_20", "pvc_eb_35", "pvc_type_a"):
        answer = ask("earth-load", asked(conduit=listed(kind)))
        assert answer["verdict"] == "violates"
        assert codes(answer, "violation") == ["needs_concrete"]
        assert answer["result"] == {"tiers": [], "tiers_in_pour": []}
    assert [one["pointer"] for one in answer["findings"]] == ["#/conduit"]


BANK = {"conduit": listed("pvc_eb_20"), "tiers": [2, 2], "separation_measure": "clear"} | {
    f"{way}_separation": quantity(2, "in") for way in ("horizontal", "vertical")
}


def test_encased_ducts_are_held_against_wet_concrete_and_flotation_instead() -> None:
    """Derived: 3 in over two tiers of 4.5 in 2 in apart: heads 14 and 7.5 in of 150 lb/ft3; a ring of 20 psi bears
    3 x 20 / (6.7 x 0.8556) / 2 = 5.2333 psi. The envelope is 17 by 17 in; its concrete 225.38 in2 of 150 lb/ft3 with
    30 in of earth of 62.6 lb/ft3 over it, and the ducts, against 289 in2 of 62.4.
    """
    answer = ask("earth-load", asked(conduit=None, bank=BANK, encased=True, groundwater_depth=None))
    found = answer["result"]
    assert found["tiers"] == []
    assert [(one["tier"], one["head"]["value"]) for one in found["tiers_in_pour"]] == [
        (1, pytest.approx(14)),
        (2, pytest.approx(7.5)),
    ]
    assert [one["pressure"]["value"] for one in found["tiers_in_pour"]] == [
        pytest.approx(14 * 150 / 1728),
        pytest.approx(7.5 * 150 / 1728),
    ]
    assert found["tiers_in_pour"][0]["allowable_pressure"]["value"] == pytest.approx(5.23330, abs=1e-4)
    assert {one["verdict"] for one in found["tiers_in_pour"]} == {"complies"}
    assert "encased_ducts_do_not_deflect" in codes(answer, "note")
    concrete = (289 - 4 * math.pi / 4 * 4.5**2) / 144 * 150
    ducts = 4 * math.pi / 4 * (4.5**2 - (4.5 - 2 * 0.082) ** 2) / 144 * 87.4
    earth = 62.6 * 2.5 * 17 / 12
    factor = (concrete + ducts + earth) / (289 / 144 * 62.4)
    assert found["in_service"]["safety_factor"] == pytest.approx(factor, rel=1e-6)
    assert not {"would_comply", "deflection_percent", "soil_modulus"} & set(found)


def test_a_deep_pour_collapses_soft_duct_unless_it_comes_in_lifts() -> None:
    """16 tiers of 4 in at 6.5 in and 3 in over them: 105 in of 150 lb/ft3 is 9.115 psi against 5.233: derived."""
    deep = asked(conduit=None, bank=BANK | {"tiers": [1] * 16}, encased=True)
    answer = ask("earth-load", deep)
    [found] = [one for one in answer["findings"] if one["severity"] == "violation"]
    assert (found["code"], found["pointer"]) == ("duct_collapses_in_the_pour", "#/bank/conduit")
    assert found["actual"]["value"] == pytest.approx(105 * 150 / 1728)
    still = deep | {"lift_height": quantity(24, "in"), "traffic": "none"}
    assert ask("earth-load", still)["verdict"] == "complies"


def test_a_duct_without_a_class_is_not_judged_in_the_pour() -> None:
    quiet: dict[str, Any] = {"conduit": listed("pvc_type_eb"), "encased": True, "traffic": "none"}
    answer = ask("earth-load", asked(**quiet))
    assert answer["verdict"] == "not_judged"
    assert "stiffness_not_judged" in codes(answer, "caution")
    assert "allowable_pressure" not in answer["result"]["tiers_in_pour"][0]
    assert ask("earth-load", asked(**quiet, pipe_stiffness=quantity(20, "psi")))["verdict"] == "complies"


def test_whether_an_envelope_bears_traffic_is_not_judged() -> None:
    for inches in (1, 36):
        request = asked(conduit=None, bank=BANK, encased=True, cover=quantity(inches, "in"))
        answer = ask("earth-load", request)
        [found] = [one for one in answer["findings"] if one["code"] == "envelope_under_traffic_not_judged"]
        assert (found["severity"], found["pointer"]) == ("caution", "#/cover")
        assert answer["verdict"] == ("violates" if inches < 24 else "not_judged")
        quiet = ask("earth-load", request | {"traffic": "none"})
        assert "envelope_under_traffic_not_judged" not in codes(quiet)
        assert quiet["verdict"] == "complies"
        assert not any("carries" in one["message"] for one in (*answer["findings"], *quiet["findings"]))


def test_ducts_that_differ_within_a_tier_are_each_told_by_their_own_figures() -> None:
    """DB-60 of 6.625 in beside Schedule 40 of 4.5 in, on one level below 30 in of 120 lb/ft3 without traffic.

    Derived: the smaller one lies 2.125 in deeper. 120 x 30/1728 = 2.0833 psi, and 32.125/1728 of it 2.2309 psi; thrust
    2.0833 x 6.625/2 x 12 = 82.81 and 2.2309 x 4.5/2 x 12 = 60.234 lbf/ft; stress 2.0833 x 6.625/0.364 = 37.918 and
    2.2309 x 4.5/0.474 = 21.180 psi: neither the thrust of the one over the wall of the other.
    """
    large, small = listed("pvc_db_60", "6"), listed("pvc_schedule_40")
    lines = [[{"count": 1, "conduit": large}, {"count": 1, "conduit": small}, {"count": 1, "conduit": dict(large)}]]
    bank = {"conduit": small, "tier_ducts": lines}
    answer = ask("earth-load", asked(conduit=None, bank=bank, traffic="none"))
    told = answer["result"]["tiers"]
    assert [(one["tier"], one["pointer"]) for one in told] == [
        (1, "#/bank/tier_ducts/0/0/conduit"),
        (1, "#/bank/tier_ducts/0/1/conduit"),
    ]
    named = [(one["conduit_type"], one["trade_size"], one["outside_diameter"]["value"]) for one in told]
    assert named == [("pvc_db_60", "6", pytest.approx(6.625)), ("pvc_schedule_40", "4", pytest.approx(4.5))]
    assert [one["cover"]["value"] for one in told] == pytest.approx([30, 32.125])
    assert [one["prism_pressure"]["value"] for one in told] == pytest.approx([2.0833, 2.2309], abs=1e-4)
    assert [one["wall_thrust"]["value"] for one in told] == pytest.approx([82.8125, 60.234], abs=1e-2)
    assert [one["wall_stress"]["value"] for one in told] == pytest.approx([37.918, 21.180], abs=1e-2)
    alone = result("earth-load", asked(conduit=large, traffic="none"))["tiers"][0]
    assert {name: one for name, one in told[0].items() if name != "pointer"} == {
        name: one for name, one in alone.items() if name != "pointer"
    }


def test_the_worst_duct_of_a_tier_is_found_at_its_own_conduit() -> None:
    """Below 30 in under H-20 and dumped earth of 50 psi, 14.288 psi: DB-60 by 100 x 0.11 x 14.288/(8.94 + 3.05) = 13.11
    percent, DB-120 by 100 x 0.11 x 14.288/(17.88 + 3.05) = 7.51: derived.
    """
    soft, stiff = listed("pvc_db_60"), listed("pvc_db_120")
    bank = {"conduit": stiff, "tier_ducts": [[{"count": 1}, {"count": 1, "conduit": soft}]]}
    answer = ask("earth-load", asked(conduit=None, bank=bank, embedment="fine_grained", compaction="dumped"))
    [found] = [one for one in answer["findings"] if one["code"] == "deflection_exceeded"]
    assert found["pointer"] == "#/bank/tier_ducts/0/1/conduit"
    assert found["actual"]["value"] == pytest.approx(13.11, abs=0.01)
    assert [one["deflection_percent"] for one in answer["result"]["tiers"]] == pytest.approx([7.51, 13.11], abs=0.01)
    assert answer["result"]["deflection_percent"] == pytest.approx(13.11, abs=0.01)


def test_ducts_that_differ_within_a_tier_bear_the_pour_each_by_their_own_stiffness() -> None:
    """A ring of 20 psi bears 5.2333 psi; one of 60 psi three times as much, 15.700: derived."""
    bank = {"conduit": listed("pvc_eb_20"), "tier_ducts": [[{"count": 1}, {"count": 1, "conduit": listed()}]]}
    pour = result("earth-load", asked(conduit=None, bank=bank, encased=True))["tiers_in_pour"]
    assert [(one["tier"], one["pointer"]) for one in pour] == [
        (1, "#/bank/conduit"),
        (1, "#/bank/tier_ducts/0/1/conduit"),
    ]
    named = [(one["conduit_type"], one["trade_size"], one["outside_diameter"]["value"]) for one in pour]
    assert named == [("pvc_eb_20", "4", pytest.approx(4.5)), ("pvc_db_60", "4", pytest.approx(4.5))]
    assert [one["allowable_pressure"]["value"] for one in pour] == pytest.approx([5.2333, 15.6999], abs=1e-3)


def test_every_tier_of_a_bank_lies_as_much_deeper_as_the_bank_is_higher() -> None:
    bank = BANK | {"conduit": listed()}
    lower, upper = result("earth-load", asked(conduit=None, bank=bank))["tiers"]
    assert (upper["cover"], lower["cover"]["value"]) == (quantity(30, "in"), pytest.approx(36.5))
    assert upper["deflection_percent"] == pytest.approx(tier()["deflection_percent"])
    alone = tier(cover=quantity(36.5, "in"))
    assert lower["deflection_percent"] == pytest.approx(alone["deflection_percent"])
    most = max((upper, lower), key=lambda one: float(one["deflection_percent"]))
    whole = result("earth-load", asked(conduit=None, bank=bank))
    band = [f"{end}deflection_percent" for end in ("", "lowest_", "highest_")]
    assert [whole[end] for end in band] == [most[end] for end in band]


def complies(**changes: Any) -> bool:
    return bool(ask("earth-load", asked(**changes))["verdict"] == "complies")


@pytest.mark.parametrize("kind", ["pvc_db_60", "pvc_db_120", "pvc_schedule_40"])
@pytest.mark.parametrize("compaction", ["slight", "moderate", "high"])
def test_the_covers_told_to_comply_are_the_first_and_the_last_inch_that_do(kind: str, compaction: str) -> None:
    given = {"conduit": listed(kind), "compaction": compaction, "live_load_method": "boussinesq"}
    found = result("earth-load", asked(**given))["would_comply"]
    every_foot = [foot for foot in range(1, 41) if complies(**given, cover=quantity(foot, "ft"))]
    if not every_foot:
        assert not {"least_cover", "greatest_cover"} & set(found)
        return
    least, greatest = found["least_cover"]["value"], found.get("greatest_cover", {"value": 1200})["value"]
    assert least == int(least)
    assert least <= every_foot[0] * 12 <= every_foot[-1] * 12 <= greatest
    for inches, holds in ((least, True), (least - 1, False), (greatest, True), (greatest + 1, False)):
        if 0 < inches <= 1200:
            assert complies(**given, cover=quantity(inches, "in")) is holds, inches


def test_the_least_stiffness_class_and_compaction_are_the_first_that_comply() -> None:
    """100 x 0.11 x 14.288 / 5 = 31.4336, less 0.061 x 400, over 0.149: 47.207 psi, which DB-60 has: derived."""
    found = result("earth-load", asked())["would_comply"]
    least = found["least_pipe_stiffness"]
    assert least["value"] == pytest.approx(47.2054, abs=1e-3)
    assert found["least_class"] == "pvc_db_60"
    assert found["least_compaction"] == "moderate"
    assert complies(pipe_stiffness=quantity(least["value"] * 1.0001, "psi"))
    assert not complies(pipe_stiffness=quantity(least["value"] * 0.999, "psi"))
    assert [complies(compaction=one) for one in ("dumped", "slight", "moderate", "high")] == [False, False, True, True]
    weak = result("earth-load", asked(compaction="slight"))["would_comply"]
    # (31.4336 - 12.2) / 0.149 = 129.1 psi: no class of direct-burial duct has it
    assert weak["least_pipe_stiffness"]["value"] == pytest.approx(129.084, abs=1e-2)
    assert "least_class" not in weak
    given = result("earth-load", asked(compaction=None, soil_modulus=quantity(400, "psi")))
    assert "least_compaction" not in given["would_comply"]
    measured = {"outside_diameter": quantity(4.5, "in"), "inside_diameter": quantity(4.026, "in"), "trade_size": "4"}
    unknown = result("earth-load", asked(conduit={"kind": "measured"} | measured))
    assert "least_class" not in unknown["would_comply"], "what is given of a duct without a type is no other's"


SHALLOW_AND_WET = {"traffic": "none", "groundwater_depth": None}
THIN_WALL = {
    "conduit": listed("hdpe_schedule_40"),
    "cover": quantity(30, "in"),
    "embedment": "coarse_grained",
    "compaction": "dumped",
    "allowable_wall_stress": quantity(100, "psi"),
}


@pytest.mark.parametrize(
    "changes",
    [
        {"conduit": listed("pvc_schedule_80", "6"), "cover": quantity(4, "in"), **SHALLOW_AND_WET},
        {"cover": quantity(3, "in"), "embedment": "coarse_grained"},
        THIN_WALL,
    ],
    ids=["it floats", "no cover", "wall"],
)
def test_no_stiffness_is_told_to_do_what_stiffness_does_not(changes: dict[str, Any]) -> None:
    found = result("earth-load", asked(**changes))["would_comply"]
    assert not {"least_pipe_stiffness", "least_class"} & set(found)
    assert not complies(**changes, pipe_stiffness=quantity(5000, "psi"))


def test_no_class_is_told_that_floats_where_the_heavier_duct_stays_down() -> None:
    heavy = {"conduit": listed("pvc_schedule_80", "6"), "cover": quantity(6, "in"), **SHALLOW_AND_WET}
    assert complies(**heavy)
    assert "least_class" not in result("earth-load", asked(**heavy))["would_comply"]
    assert "floats_in_service" in codes(ask("earth-load", asked(**heavy | {"conduit": listed("pvc_db_60", "6")})))


@settings(max_examples=100, deadline=None)
@given(
    kind=st.sampled_from(["pvc_db_60", "pvc_db_100", "pvc_schedule_40", "pvc_schedule_80", "hdpe_schedule_40"]),
    size=st.sampled_from(["2", "4", "6"]),
    cover=st.integers(1, 240),
    embedment=st.sampled_from(["fine_grained", "coarse_grained", "crushed_rock"]),
    compaction=st.sampled_from(["dumped", "slight", "high"]),
    traffic=st.sampled_from(["none", "h_20"]),
    water=st.sampled_from([0, 0.5, 2, 20]),
)
def test_whatever_is_told_to_comply_complies_when_it_is_sent_back(
    kind: str, size: str, cover: int, embedment: str, compaction: str, traffic: str, water: float
) -> None:
    changes: dict[str, Any] = {"conduit": listed(kind, size), "cover": quantity(cover, "in"), "embedment": embedment}
    changes |= {"compaction": compaction, "traffic": traffic, "groundwater_depth": quantity(water, "ft")}
    found = result("earth-load", asked(**changes))["would_comply"]
    sent_back = {
        "least_cover": "cover",
        "greatest_cover": "cover",
        "least_pipe_stiffness": "pipe_stiffness",
        "least_compaction": "compaction",
    }
    for told, member in sent_back.items():
        if told in found:
            assert complies(**changes | {member: found[told]}), told
    if "least_class" in found:
        assert complies(**changes | {"conduit": listed(found["least_class"], size)})


@settings(max_examples=60, deadline=None)
@given(
    cover=st.floats(min_value=2, max_value=500),
    deeper=st.floats(min_value=0.1, max_value=100),
    method=st.sampled_from(["governing", "aashto_spread", "boussinesq"]),
)
def test_more_cover_never_raises_the_live_load_and_stiffer_never_deflects_more(
    cover: float, deeper: float, method: str
) -> None:
    high = tier(cover=quantity(cover, "in"), live_load_method=method)
    low = tier(cover=quantity(cover + deeper, "in"), live_load_method=method)
    assert low["live_pressure"]["value"] <= high["live_pressure"]["value"] * (1 + 1e-9)
    stiff = tier(cover=quantity(cover, "in"), live_load_method=method, conduit=listed("pvc_db_120"))
    assert stiff["deflection_percent"] <= high["deflection_percent"]


def test_what_cannot_be_asked_is_refused_with_its_pointer() -> None:
    assert refused(asked(conduit=None)) == {"#/conduit": "missing"}
    assert refused(asked(bank=BANK)) == {"#/conduit": "contradiction"}
    assert refused(asked(conduit=listed("rmc"))) == {"#/conduit/type": "not_a_plastic_duct"}
    assert refused(asked(cover=quantity(-1, "in"))) == {"#/cover/value": "out_of_range"}
    bare = {"kind": "measured", "inside_diameter": quantity(4, "in")}
    assert refused(asked(conduit=bare)) == {"#/conduit/outside_diameter": "missing"}
    assert refused(asked(concrete_cover={})) == {"#/concrete_cover": "contradiction"}


def test_a_duct_by_its_diameters_is_taken_for_the_softer_plastic() -> None:
    """4.47 x 110000 / (4.5/0.25 - 1)^3 = 100.08 psi: derived."""
    measured = {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.5, "in")}
    answer = ask("earth-load", asked(conduit=measured))
    assert assumed(answer)["#/duct_material"] == "hdpe"
    assert answer["result"]["tiers"][0]["pipe_stiffness"]["value"] == pytest.approx(100.08, abs=0.01)
    assert tier(conduit=measured, duct_material="pvc")["pipe_stiffness"]["value"] == pytest.approx(363.93, abs=0.01)


def of_type(kind: str) -> dict[str, Any]:
    measured = {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.3, "in")}
    return measured | {"type": kind}


def test_a_duct_by_its_diameters_is_made_of_what_its_type_says() -> None:
    """4.47 E / (4.3/0.15 - 1)^3: 84.430 psi of 400,000 and 23.218 of 110,000: derived; a class is its number."""
    assert tier(conduit=of_type("pvc_db_60"))["pipe_stiffness"]["value"] == pytest.approx(60)
    assert tier(conduit=of_type("pvc_schedule_40"))["pipe_stiffness"]["value"] == pytest.approx(84.430, abs=0.01)
    assert tier(conduit=of_type("hdpe_schedule_40"))["pipe_stiffness"]["value"] == pytest.approx(23.218, abs=0.01)
    assert "#/duct_material" not in assumed(ask("earth-load", asked(conduit=of_type("pvc_schedule_40"))))
    for kind in ("rtrc", "emt", "rmc"):
        assert refused(asked(conduit=of_type(kind))) == {"#/conduit/type": "not_a_plastic_duct"}


@pytest.mark.parametrize("conduit", [of_type("hdpe_schedule_40"), listed("hdpe_schedule_40")])
def test_a_material_other_than_that_of_the_type_is_a_contradiction(conduit: dict[str, Any]) -> None:
    assert refused(asked(conduit=conduit, duct_material="pvc")) == {"#/duct_material": "contradiction"}
    assert tier(conduit=conduit, duct_material="hdpe") == tier(conduit=conduit)
    assert refused(asked(conduit=listed(), duct_material="hdpe")) == {"#/duct_material": "contradiction"}


def test_encased_ducts_assume_nothing_that_plays_no_part() -> None:
    """All else of earth, support and traffic changes no figure of the answer."""
    bank: dict[str, Any] = {"conduit": listed("pvc_eb_20"), "tiers": [2], "separation_measure": "clear"}
    plain: dict[str, Any] = {
        "bank": bank | {"horizontal_separation": quantity(2, "in")},
        "traffic": "h_20",
        "encased": True,
    }
    plain["cover"] = quantity(30, "in")
    answer = ask("earth-load", plain)
    own = {place for place in assumed(answer) if not place.startswith(("#/bank", "#/concrete_cover", "#/code_edition"))}
    assert own == {
        "#/soil_density",
        "#/saturated_soil_density",
        "#/groundwater_depth",
        "#/flotation_safety_factor",
        "#/duct_density",
        "#/concrete_density",
    }
    by_wall = ask("earth-load", plain | {"bank": plain["bank"] | {"conduit": listed("pvc_schedule_40")}})
    assert "#/modulus" in assumed(by_wall), "from which its stiffness comes"


def test_a_pour_around_ducts_in_earth_is_a_contradiction() -> None:
    poured = {"lift_height": quantity(12, "in"), "concrete_density": quantity(150, "lb/ft3")}
    assert refused(asked(**poured)) == {f"#/{name}": "contradiction" for name in poured}


def test_metal_in_concrete_is_refused_without_a_word_of_deflection() -> None:
    [error] = list(problem("earth-load", asked(conduit=listed("rmc"), encased=True)).errors or ())
    assert (error.pointer, error.code) == ("#/conduit/type", "not_a_plastic_duct")
    assert "deflection" not in error.message


def test_an_open_trench_is_cautioned_whatever_lies_in_it() -> None:
    assert "excavation_safety" in codes(ask("earth-load", asked()))
    assert "excavation_safety" in codes(ask("earth-load", asked(conduit=listed("pvc_eb_20"))))
    assert EXAMPLES["earth-load"]["conduit"]["type"] == "pvc_db_60"


def test_a_bank_of_different_ducts_tells_every_kind_of_every_tier() -> None:
    soft, stiff = ({"kind": "listed", "type": f"pvc_db_{psi}", "trade_size": "4"} for psi in (60, 120))
    lines = [[{"count": 2}], [{"count": 1, "conduit": stiff}], [{"count": 1}, {"count": 1, "conduit": stiff}]]
    asked = {"bank": {"conduit": soft, "tier_ducts": lines}, "cover": quantity(30, "in"), "traffic": "none"}
    tiers = result("earth-load", asked)["tiers"]
    assert [one["tier"] for one in tiers] == [1, 2, 3, 3]
    assert [one["pipe_stiffness"]["value"] for one in tiers] == pytest.approx([60, 120, 60, 120])
    alone = {"conduit": soft, "cover": quantity(30, "in"), "traffic": "none"}
    [top] = result("earth-load", alone)["tiers"]
    assert tiers[2]["deflection_percent"] == top["deflection_percent"]


def test_of_two_ducts_of_which_one_has_no_wall_on_file_its_missing_mass_is_noted() -> None:
    bank = {"conduit": listed("pvc_db_100"), "tier_ducts": [[{"count": 1}, {"count": 1, "conduit": listed()}]]}
    request = asked(conduit=None, bank=bank)
    request.pop("duct_mass_per_length", None)
    answer = ask("earth-load", request)
    [note] = [one for one in answer["findings"] if one["code"] == "duct_mass_left_out"]
    assert (note["severity"], note["pointer"]) == ("note", "#/duct_mass_per_length")
    check_given_back("earth-load", request, answer)
    alone = ask("earth-load", request | {"bank": bank | {"tier_ducts": [[{"count": 2}]]}})
    assert "duct_mass_left_out" not in {one["code"] for one in alone["findings"]}
    assert "#/duct_mass_per_length" in [place for one in alone["assumptions"] for place in one["pointers"]]
