"""Ampacity through the API: one duct worked by hand, what is looked for and what is given, and every member told."""

from __future__ import annotations

import math

import pytest

from tests.asking import ask, assumed, codes, judged, quantity, result
from tests.subjects.feeder.banks import GROUND, MEDIUM_VOLTAGE, bank, buried, circuit, singles

OHM_FOOT = 0.3048  # K.m/W in a thermal ohm-foot
NEAR = 1e-6


def resistance(celsius: float, spacing: float = 0.943) -> float:
    """Give the resistance of a conductor of 500 kcmil of copper [microhm/ft] by hand: three at a spacing [in]."""
    direct = 12.9 / 0.5 * (234.5 + celsius) / 309.5
    skin = 11.0 / (direct + 4 / direct - 2.56 / direct**2) ** 2
    near = (0.813 / spacing) ** 2
    return direct * (1 + skin + skin * near * (0.312 * near + 1.18 / (skin + 0.27)))


def test_one_duct_in_earth_is_as_warm_as_worked_by_hand() -> None:
    """Thermal ohm-feet: insulation .012 x 450 log(.943/.813), air 17/(1 + (3.0 + .014 x 60) 2.15 x .943), wall
    .0104 x 650 x .25/4.25, earth .012 x 90 log(4 x 36/4.5); the exact constant is ln(10)/(2 pi)/.3048/100 for .012.
    """
    asked = buried(circuit("1-1", amperes=340), duct_air_temperature=quantity(60, "degC"))
    verdict, found = judged("ampacity", asked, "units=us")
    [duct] = found["ducts"]
    exact = math.log(10) / (2 * math.pi) / OHM_FOOT / 100
    insulation = exact * 450 * math.log10(0.943 / 0.813)
    air = 17 / (1 + (3.0 + 0.014 * 60) * 2.15 * 0.943)
    wall = 0.0104 * 650 * 0.25 / 4.25
    earth = exact * 90 * math.log10(4 * 36 / 4.5)
    celsius = (duct["conductor_temperature"]["value"] - 32) / 1.8
    loss = 340**2 * resistance(celsius) * 1e-6
    assert celsius == pytest.approx(20 + loss * (insulation + 3 * (air + wall + earth)), abs=1e-4)
    assert verdict == "complies"
    assert duct["duct"] == "1-1"
    assert (duct["pointer"], duct["tier"]) == ("#/circuits/0", 1)
    assert duct["x"] == {"value": pytest.approx(2.25), "unit": "in"}
    assert duct["depth"] == {"value": pytest.approx(36), "unit": "in"}
    assert duct["conductor_current"] == {"value": 340, "unit": "A"}
    assert duct["temperature_limit"]["value"] == pytest.approx(167)
    assert duct["insulation_resistance"] == {"value": pytest.approx(insulation), "unit": "degC.ft/W"}
    assert duct["jacket_resistance"]["value"] == 0
    assert duct["air_resistance"]["value"] == pytest.approx(air)
    assert duct["wall_resistance"]["value"] == pytest.approx(wall)
    assert duct["earth_resistance"]["value"] == pytest.approx(earth)
    assert duct["conductor_resistance"] == {"value": pytest.approx(resistance(celsius) / 1000), "unit": "ohm/1000ft"}
    assert duct["conductor_loss"] == {"value": pytest.approx(loss), "unit": "W/ft"}
    assert duct["shield_loss"]["value"] == 0
    assert duct["dielectric_loss"]["value"] == 0
    assert duct["heat"]["value"] == pytest.approx(3 * loss)
    assert duct["mutual_rise"] == {"value": pytest.approx(0, abs=1e-6), "unit": "delta_degF"}
    assert duct["mutual_heating_factor"] == 1
    cable = celsius - loss * insulation
    assert (duct["cable_temperature"]["value"] - 32) / 1.8 == pytest.approx(cable)
    assert (duct["air_temperature"]["value"] - 32) / 1.8 == pytest.approx(cable - 3 * loss * air / 2)
    assert (duct["duct_temperature"]["value"] - 32) / 1.8 == pytest.approx(20 + 3 * loss * earth)


def test_what_is_looked_for_brings_the_hottest_conductor_to_its_limit() -> None:
    answer = ask("ampacity", bank([2, 2], *(circuit(name) for name in ("1-1", "1-2", "2-1", "2-2"))), "units=metric")
    found = answer["result"]
    hottest = max(duct["conductor_temperature"]["value"] for duct in found["ducts"])
    assert hottest == pytest.approx(75, abs=0.01)
    assert found["governing_temperature"] == {"value": pytest.approx(75, abs=0.01), "unit": "degC"}
    assert found["governing_duct"] in ("1-1", "1-2"), "the lower ones lie deeper"
    assert found["method"] == "neher_mcgrath"
    assert "current_factor" not in found
    assert "verdict" not in answer, "nothing was asked to be carried"
    assert [one["ampacity"] for one in found["circuits"]] == [found["ampacity"]] * 4
    assert found["circuits"][0]["current"] == found["circuits"][0]["conductor_current"] == found["ampacity"]
    assert "verdict" not in found["circuits"][0]


def test_the_envelope_is_told_with_its_depth_and_the_duct_alone_carries_more() -> None:
    """2 x 4.5 + 3 + 2 x 3 = 18 in each way, its center 30 + 9 in down; alone it is a bank with one loaded duct."""
    names = ("1-1", "1-2", "2-1", "2-2")
    found = result("ampacity", bank([2, 2], *map(circuit, names)))
    assert found["envelope_width"] == found["envelope_height"] == {"value": pytest.approx(18), "unit": "in"}
    assert found["center_depth"] == {"value": pytest.approx(39), "unit": "in"}
    alone = result("ampacity", bank([2, 2], circuit(found["governing_duct"])))
    assert found["single_duct_ampacity"]["value"] == pytest.approx(alone["ampacity"]["value"])
    assert found["single_duct_ratio"] == pytest.approx(found["ampacity"]["value"] / alone["ampacity"]["value"])
    assert alone["single_duct_ratio"] == pytest.approx(1)


def test_depth_and_cover_say_the_same() -> None:
    one = bank([2, 2], circuit("1-1"))
    by_depth = {member: value for member, value in one.items() if member != "cover"} | {"depth": quantity(39, "in")}
    assert result("ampacity", by_depth)["ampacity"]["value"] == pytest.approx(
        result("ampacity", one)["ampacity"]["value"]
    )


def test_the_others_warm_a_duct_by_their_heat_and_the_images_of_their_ducts() -> None:
    """Two ducts 7.5 in apart at 36 in: F = sqrt(7.5^2 + 72^2)/7.5 = 9.652; each adds .9/(2 pi) ln F of its heat."""
    asked = buried(circuit("1-1", amperes=300), circuit("1-2", amperes=200), tiers=[2])
    left, right = result("ampacity", asked, "units=metric")["ducts"]
    factor = math.hypot(7.5, 72) / 7.5
    assert left["mutual_heating_factor"] == right["mutual_heating_factor"] == pytest.approx(factor)
    for one, other in ((left, right), (right, left)):
        assert one["mutual_rise"]["value"] == pytest.approx(
            other["heat"]["value"] * 0.9 / (2 * math.pi) * math.log(factor)
        )


def test_beside_fixed_circuits_the_others_are_looked_for() -> None:
    asked = bank([2, 2], circuit("1-1", amperes=300), circuit("1-2", amperes=300), circuit("2-1"))
    verdict, found = judged("ampacity", asked)
    fixed, _, sought = found["circuits"]
    assert "ampacity" not in fixed
    assert sought["current"] == sought["ampacity"] == found["ampacity"]
    carried = found["ampacity"]["value"]
    again = bank([2, 2], circuit("1-1", amperes=300), circuit("1-2", amperes=300), circuit("2-1", amperes=carried))
    hottest = max(duct["conductor_temperature"]["value"] for duct in result("ampacity", again)["ducts"])
    assert verdict == "complies"
    assert hottest == pytest.approx(167, abs=0.02)


def test_where_fixed_circuits_leave_nothing_it_is_a_violation() -> None:
    answer = ask("ampacity", bank([2, 2], circuit("1-1", amperes=460), circuit("1-2", amperes=460), circuit("2-1")))
    assert answer["verdict"] == "violates"
    assert answer["result"]["ampacity"]["value"] == 0
    assert {"nothing_left_to_carry", "conductor_too_hot"} <= set(codes(answer, "violation"))


def test_a_current_over_the_limit_is_an_answer_with_what_may_be_carried() -> None:
    answer = ask("ampacity", bank([2, 2], *(circuit(name, amperes=360) for name in ("1-1", "1-2", "2-1", "2-2"))))
    found = answer["result"]
    assert answer["verdict"] == "violates"
    assert [one["verdict"] for one in found["circuits"]] == ["violates"] * 4
    first = next(one for one in answer["findings"] if one["code"] == "conductor_too_hot")
    assert first["pointer"] == "#/circuits/0/current"
    assert first["limit"]["value"] == pytest.approx(167)
    assert first["actual"] == found["circuits"][0]["conductor_temperature"]
    assert found["current_factor"] < 1
    may = found["circuits"][0]["ampacity"]["value"]
    assert may == pytest.approx(360 * found["current_factor"])
    equal = result("ampacity", bank([2, 2], *map(circuit, ("1-1", "1-2", "2-1", "2-2"))))
    assert may == pytest.approx(equal["ampacity"]["value"])


def test_both_methods_are_told_the_lower_one_first() -> None:
    asked = bank([2, 2], circuit("1-1"), circuit("1-2"))
    alone = {name: result("ampacity", asked | {"method": name}) for name in ("neher_mcgrath", "iec_60287")}
    found = result("ampacity", asked | {"method": "both"})
    lower = min(alone, key=lambda name: float(alone[name]["ampacity"]["value"]))
    other = found["other_method"]
    assert found["method"] == lower
    assert found["ampacity"] == alone[lower]["ampacity"]
    assert {found["method"], other["method"]} == set(alone)
    assert other["ampacity"] == alone[other["method"]]["ampacity"]
    assert other["conductor_temperature"]["value"] == pytest.approx(167, abs=0.02)
    ratio = other["ampacity"]["value"] / found["ampacity"]["value"]
    assert other["difference_percent"] == pytest.approx((ratio - 1) * 100)
    assert other["difference_percent"] < 5


def test_methods_that_part_are_a_caution_and_a_steady_load_is_told() -> None:
    asked = bank([2, 2], circuit("1-1", load_factor_percent=50), circuit("1-2", load_factor_percent=50), method="both")
    answer = ask("ampacity", asked)
    assert answer["result"]["method"] == "iec_60287", "it knows no daily cycle, and allows less"
    assert "methods_apart" in codes(answer, "caution")
    assert "steady_load_taken" in codes(answer, "note")


def test_sets_in_parallel_share_the_current() -> None:
    found = result("ampacity", bank([2, 2], circuit("2-1", "2-2", amperes=600, name="Feeder 1")))
    [told] = found["circuits"]
    assert told["name"] == "Feeder 1"
    assert told["ducts"] == ["2-1", "2-2"]
    assert told["parallel_count"] == 2
    assert told["current"] == {"value": pytest.approx(600), "unit": "A"}
    assert told["conductor_current"]["value"] == pytest.approx(300)
    assert told["temperature_limit"]["value"] == pytest.approx(167)
    assert told["conductor_temperature"]["value"] == max(
        duct["conductor_temperature"]["value"] for duct in found["ducts"]
    )


def test_one_conductor_in_each_duct_makes_a_set_of_three() -> None:
    found = result("ampacity", bank([3], circuit("1-1", "1-2", "1-3", cables=singles(count=1))))
    assert found["circuits"][0]["parallel_count"] == 1
    middle = found["ducts"][1]
    assert found["governing_duct"] == middle["duct"] == "1-2"
    assert middle["conductor_resistance"]["value"] < resistance(75) / 1000, "no neighbor in its duct"


def test_a_neutral_and_a_ground_carry_no_heat() -> None:
    plain = result("ampacity", bank([1], circuit("1-1")))
    four = circuit("1-1", cables=[*singles(count=4), GROUND], loaded_conductor_count=3)
    assert result("ampacity", bank([1], four))["ampacity"] == plain["ampacity"]


def test_direct_current_has_no_skin_effect() -> None:
    """25.8 microhm/ft at 75 degC is 0.0258 ohm for 1000 ft."""
    asked = bank([1], circuit("1-1", cables=singles(count=2), system="direct_current"))
    duct = result("ampacity", asked)["ducts"][0]
    assert duct["conductor_resistance"]["value"] == pytest.approx(0.0258, rel=NEAR)


def test_shields_grounded_at_both_ends_and_insulation_under_voltage_give_heat() -> None:
    """Rs = 17.241e-9/16e-6 at 20 degC, taken 10 K below the conductor; X = 2 w 1e-7 ln(2 x 1.35/.968) of three singles.

    The insulation is .528 + 2 x .22 = .968 in, and so is the shield; the jacket begins at 1.35 - 2 x .08 = 1.19 in.
    Wd = w C U0^2 tan d at 15 kV.
    """
    asked = bank([1], circuit("1-1", amperes=200, cables=[{"count": 3, "cable": MEDIUM_VOLTAGE}]))
    asked["circuits"][0] |= {"voltage": quantity(15, "kV"), "temperature_limit": quantity(90, "degC")}
    [duct] = result("ampacity", asked, "units=metric")["ducts"]
    celsius = duct["conductor_temperature"]["value"]
    own = 17.241e-9 / 16e-6 * (234.5 + celsius - 10) / 254.5
    omega = 2 * math.pi * 60
    reactance = 2 * omega * 1e-7 * math.log(2 * 1.35 / (0.528 + 2 * 0.22))
    factor = own / (duct["conductor_resistance"]["value"] / 1000) / (1 + (own / reactance) ** 2)
    assert duct["shield_loss"]["value"] == pytest.approx(factor * duct["conductor_loss"]["value"])
    capacitance = 2.5 / (18e9 * math.log((0.528 + 2 * 0.22) / 0.528))
    loss = omega * capacitance * (15_000 / math.sqrt(3)) ** 2 * 0.004
    assert duct["dielectric_loss"]["value"] == pytest.approx(loss)
    losses = duct["conductor_loss"]["value"] + duct["shield_loss"]["value"] + loss
    assert duct["heat"]["value"] == pytest.approx(3 * losses)
    jacket = 4.5 / (2 * math.pi) * math.log(1.35 / 1.19)
    assert duct["jacket_resistance"] == {"value": pytest.approx(jacket), "unit": "K.m/W"}
    asked["circuits"][0] |= {"shield_grounding": "single_point"}
    [grounded_once] = result("ampacity", asked, "units=metric")["ducts"]
    assert grounded_once["shield_loss"]["value"] == 0
    assert grounded_once["conductor_temperature"]["value"] < celsius


def test_a_cable_of_three_conductors_is_one_cable_with_three_heats() -> None:
    """Images of three line sources: a = core/sqrt 3, b the inside of the jacket; ln((b^6 - a^6)/(3 a^2 b^3 r))."""
    cable = {
        "kind": "multiconductor",
        "diameter": quantity(2.4, "in"),
        "conductor": {"material": "copper", "size": "500 kcmil", "count": 3},
        "layers": {
            "insulation": {"material": "rubber", "thickness": quantity(0.095, "in")},
            "jacket": {"material": "pvc", "thickness": quantity(0.11, "in")},
        },
    }
    [duct] = result("ampacity", bank([1], circuit("1-1", cables=[{"count": 1, "cable": cable}])), "units=metric")[
        "ducts"
    ]
    a, b, r = 1.003 / math.sqrt(3), 1.09, 0.813 / 2
    expected = 5.0 / (2 * math.pi) * math.log((b**6 - a**6) / (3 * a**2 * b**3 * r))
    assert duct["insulation_resistance"]["value"] == pytest.approx(expected)
    assert duct["jacket_resistance"]["value"] == pytest.approx(6.5 / (2 * math.pi) * math.log(2.4 / 2.18))
    assert duct["heat"]["value"] == pytest.approx(3 * duct["conductor_loss"]["value"])


def test_the_working_leads_from_the_conductor_to_the_outside_of_the_duct() -> None:
    answer = ask("ampacity", bank([2], circuit("1-1", amperes=300)), "working=true&units=metric")
    [duct] = answer["result"]["ducts"]
    shown = {step["symbol"]: step["quantity"]["value"] for step in answer["working"]}
    assert shown["Tcable"] == pytest.approx(duct["cable_temperature"]["value"])
    assert shown["Tduct outside"] == pytest.approx(duct["duct_temperature"]["value"])
    assert shown["W"] == pytest.approx(duct["conductor_loss"]["value"])
    assert "(rho_e - rho_c) G/(2 pi)" in shown
    for symbol, member in (("Ri", "insulation"), ("Rsd", "air"), ("Rd", "wall")):
        assert shown[symbol] == duct[f"{member}_resistance"]["value"]


def test_what_layers_and_walls_are_made_of_is_assumed_by_its_table() -> None:
    asked = bank([1], circuit("1-1", cables=[{"count": 3, "cable": MEDIUM_VOLTAGE}]))
    taken = assumed(ask("ampacity", asked))
    layers = "#/circuits/0/cables/0/cable/layers"
    assert taken[f"{layers}/insulation/thermal_resistivity"] == quantity(450, "degC.cm/W")
    assert taken[f"{layers}/jacket/thermal_resistivity"] == quantity(450, "degC.cm/W")
    assert taken["#/duct_thermal_resistivity"] == quantity(650, "degC.cm/W")
    assert taken["#/duct_material"] == "pvc"


def test_what_always_holds_is_told_once() -> None:
    answer = ask("ampacity", bank([2, 2], *map(circuit, ("1-1", "1-2", "2-1"))))
    told = [one["code"] for one in answer["cautions"]]
    assert sorted(told) == ["energized_parts", "engineering_supervision"]
