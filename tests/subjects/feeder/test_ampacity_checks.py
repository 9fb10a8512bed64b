"""What the code says beside an ampacity, what is unwise, and what may be asked beside."""

from __future__ import annotations

from typing import Any

import pytest

from tests.asking import ask, assumed, codes, quantity, result
from tests.subjects.feeder.banks import GROUND, MEDIUM_VOLTAGE, WIRE, bank, buried, circuit, singles


def finding(answer: dict[str, Any], code: str) -> dict[str, Any]:
    found: list[dict[str, Any]] = [one for one in answer["findings"] if one["code"] == code]
    [only] = found
    return only


def test_the_table_is_corrected_for_the_earth_and_the_count_in_a_duct() -> None:
    """Table 310.16: 500 kcmil of copper 380 A at 75 degC; 20 degC of earth x 1.11; six in a duct x 0.80; two sets."""
    [three] = result("ampacity", bank([1], circuit("1-1")))["circuits"]
    assert three["table_ampacity"] == {"value": 380, "unit": "A"}
    assert three["adjusted_table_ampacity"]["value"] == pytest.approx(380 * 1.11)
    [six] = result("ampacity", bank([1], circuit("1-1", cables=singles(count=6))))["circuits"]
    assert six["parallel_count"] == 2
    assert six["table_ampacity"]["value"] == pytest.approx(760)
    assert six["adjusted_table_ampacity"]["value"] == pytest.approx(760 * 1.11 * 0.8)
    [hot] = result("ampacity", bank([1], circuit("1-1"), earth_temperature=quantity(33, "degC")))["circuits"]
    assert hot["adjusted_table_ampacity"]["value"] == pytest.approx(380 * 0.94)
    over = circuit("1-1", voltage=quantity(5, "kV"))
    assert "table_ampacity" not in result("ampacity", bank([1], over))["circuits"][0]


def test_why_the_table_differs_is_told_of_the_circuit_that_governs() -> None:
    many = ask("ampacity", bank([2, 2], *map(circuit, ("1-1", "1-2", "2-1", "2-2"))))
    assert "warm each other" in finding(many, "table_ampacity")["message"]
    one = ask("ampacity", bank([1], circuit("1-1")))
    assert finding(one, "table_ampacity")["limit"]["value"] == pytest.approx(421.8)
    assert finding(one, "table_ampacity")["actual"] == one["result"]["ampacity"]
    assert "ground of its own" in finding(one, "table_ampacity")["message"]


def test_without_device_and_current_terminals_are_taken_for_60_degrees_to_1_awg_and_75_above() -> None:
    """Table 310.16: 1 AWG of copper 110 A at 60 degC; 500 kcmil 380 A at 75 and 430 A at 90."""
    small = ask("ampacity", bank([1], circuit("1-1", cables=singles("1 AWG"))))
    assert small["result"]["circuits"][0]["terminal_ampacity"] == {"value": 110, "unit": "A"}
    assert small["result"]["circuits"][0]["terminal_temperature"]["value"] == pytest.approx(140)
    assert finding(small, "terminals_decide")["limit"]["value"] == 110
    large = result("ampacity", bank([1], circuit("1-1")))["circuits"][0]
    assert large["terminal_ampacity"]["value"] == 380
    marked = result("ampacity", bank([1], circuit("1-1", terminal_rating="90_degc")))["circuits"][0]
    assert marked["terminal_ampacity"]["value"] == 430


@pytest.mark.parametrize(
    ("amperes", "device", "allowed"),
    [(100, None, 110), (100.5, None, 130), (90, 125, 130), (90, 100, 110), (None, 125, 130), (None, 100, 110)],
)
def test_unmarked_terminals_go_by_the_device_or_else_by_the_current(
    amperes: float | None, device: float | None, allowed: float
) -> None:
    """Table 310.16: 1 AWG of copper 110 A at 60 degC, which holds to 100 A, and 130 A at 75."""
    more = {} if device is None else {"overcurrent_device": quantity(device, "A")}
    asked = bank([1], circuit("1-1", amperes=amperes, cables=singles("1 AWG"), **more))
    assert result("ampacity", asked)["circuits"][0]["terminal_ampacity"]["value"] == allowed


def test_a_circuit_over_100_amperes_takes_the_75_degree_column_of_1_awg() -> None:
    asked = circuit("1-1", amperes=120, cables=singles("1 AWG"), overcurrent_device=quantity(125, "A"))
    assert "over_terminal_rating" not in codes(ask("ampacity", bank([1], asked)))


def test_terminals_allow_no_more_than_the_insulation() -> None:
    """Table 310.16: 600 kcmil of aluminum 340 A at 75 degC and 385 A at 90; 4/0 150 A at 60 and 180 A at 75."""
    warm = singles("600 kcmil", insulation="THWN", material="aluminum")
    [thwn] = result("ampacity", bank([1], circuit("1-1", cables=warm, terminal_rating="90_degc")))["circuits"]
    assert thwn["terminal_ampacity"] == thwn["table_ampacity"] == {"value": 340, "unit": "A"}
    tw = circuit("1-1", amperes=170, cables=singles("4/0 AWG", insulation="TW", material="aluminum"))
    tw["temperature_limit"] = quantity(60, "degC")
    found = finding(ask("ampacity", bank([1], tw)), "over_terminal_rating")
    assert found["limit"] == {"value": 150, "unit": "A"}
    assert "insulation for 60 degC allows" in found["message"]


def test_more_than_terminals_allow_is_a_violation() -> None:
    answer = ask("ampacity", bank([1], circuit("1-1", amperes=131, cables=singles("1 AWG"))))
    assert answer["verdict"] == answer["result"]["circuits"][0]["verdict"] == "violates"
    assert finding(answer, "over_terminal_rating")["pointer"] == "#/circuits/0/current"


def test_the_least_grounding_conductor_follows_the_overcurrent_device() -> None:
    """Table 250.122: 1/0 of copper or 3/0 of aluminum to 800 A."""
    device = quantity(700, "A")
    bare = ask("ampacity", bank([1], circuit("1-1", overcurrent_device=device)))
    assert bare["result"]["circuits"][0]["grounding_conductor"] == {"copper": "1/0 AWG", "aluminum": "3/0 AWG"}
    assert finding(bare, "no_grounding_conductor")["pointer"] == "#/circuits/0/cables/0/cable"
    grounded = ask("ampacity", bank([1], circuit("1-1", overcurrent_device=device, cables=[*singles(), GROUND])))
    assert "no_grounding_conductor" not in codes(grounded)
    aluminum = GROUND["cable"] | {"material": "aluminum"}
    small = circuit("1-1", overcurrent_device=device, cables=[*singles(), {"count": 1, "cable": aluminum}])
    assert "no_grounding_conductor" in codes(ask("ampacity", bank([1], small)))
    fourth = circuit("1-1", overcurrent_device=device, cables=singles(count=4), loaded_conductor_count=3)
    assert "no_grounding_conductor" in codes(ask("ampacity", bank([1], fourth))), "the fourth is the neutral"


def test_a_raceway_in_the_ground_is_a_wet_place() -> None:
    """XHHW is rated at 75 degC where it is wet; THHN is for dry places; XHHW-2 is rated at 90 everywhere."""
    wet = circuit("1-1", cables=singles(insulation="XHHW"))
    del wet["temperature_limit"]
    assert result("ampacity", bank([1], wet))["circuits"][0]["temperature_limit"]["value"] == pytest.approx(167)
    dry = ask("ampacity", bank([1], wet | {"cables": singles(insulation="THHN")}))
    assert dry["verdict"] == "violates"
    assert finding(dry, "insulation_for_dry_places")["pointer"] == "#/circuits/0/cables/0/cable/insulation"
    assert assumed(dry)["#/circuits/0/temperature_limit"] == quantity(167, "degF")
    rated = ask("ampacity", bank([1], wet | {"cables": singles()}))
    assert rated["result"]["circuits"][0]["temperature_limit"]["value"] == pytest.approx(194)
    assert assumed(rated)["#/circuits/0/temperature_limit"] == quantity(194, "degF")
    hot = circuit("1-1", amperes=100, temperature_limit=quantity(105, "degC"))
    over = ask("ampacity", bank([1], hot))
    assert over["result"]["circuits"][0]["verdict"] == "violates"
    assert finding(over, "conductor_temperature_over_rating")["limit"]["value"] == pytest.approx(194)


def test_the_heat_of_steel_conduit_is_not_judged() -> None:
    answer = ask("ampacity", bank([1], circuit("1-1", amperes=200), duct_material="steel"))
    assert answer["verdict"] == answer["result"]["circuits"][0]["verdict"] == "not_judged"
    assert finding(answer, "steel_conduit_not_judged")["pointer"] == "#/circuits/0/ducts"
    assert answer["result"]["ducts"][0]["wall_resistance"]["value"] == 0
    direct = circuit("1-1", amperes=200, cables=singles(count=2), system="direct_current")
    assert ask("ampacity", bank([1], direct, duct_material="steel"))["verdict"] == "complies"


def test_an_envelope_beyond_the_method_is_told_and_allows_less() -> None:
    """Six ducts in a row: 51 by 10.5 in, more than 3 to 1."""
    asked = bank([6], circuit("1-3"))
    answer = ask("ampacity", asked)
    assert finding(answer, "envelope_beyond_the_method")["severity"] == "caution"
    alike = ask("ampacity", asked | {"concrete_thermal_resistivity": quantity(90, "degC.cm/W")})
    assert answer["result"]["ampacity"]["value"] > alike["result"]["ampacity"]["value"], "concrete still helps a little"
    assert "envelope_beyond_the_method" in codes(ask("ampacity", bank([1], circuit("1-1"), cover=quantity(0, "in"))))


def test_hot_earth_beside_bare_ducts_may_dry() -> None:
    asked = buried(circuit("1-1", temperature_limit=quantity(90, "degC")), earth_temperature=quantity(40, "degC"))
    answer = ask("ampacity", asked)
    assert finding(answer, "earth_may_dry")["actual"] == answer["result"]["ducts"][0]["duct_temperature"]
    assert "earth_may_dry" not in codes(ask("ampacity", buried(circuit("1-1"))))


def test_shields_between_ducts_are_a_caution_unless_grounded_at_one_point() -> None:
    apart = circuit("1-1", "1-2", "1-3", cables=[{"count": 1, "cable": MEDIUM_VOLTAGE}])
    answer = ask("ampacity", bank([3], apart))
    assert finding(answer, "shields_heat_between_ducts")["pointer"] == "#/circuits/0/shield_grounding"
    once = ask("ampacity", bank([3], apart | {"shield_grounding": "single_point"}))
    assert "shields_heat_between_ducts" not in codes(once)
    assert once["result"]["ampacity"]["value"] > answer["result"]["ampacity"]["value"]


STUDIES = ["sensitivity", "smallest_size", "largest_earth_resistivity", "smallest_separation"]
LOADED = [circuit(name, amperes=300) for name in ("1-1", "1-2", "2-1", "2-2")]


def test_ten_percent_more_is_what_it_costs_when_asked_so() -> None:
    asked = bank([2, 2], *LOADED, studies=STUDIES[:1])
    found = result("ampacity", asked)
    by_member = {one["member"]: one for one in found["sensitivities"]}
    assert list(by_member) == ["earth_thermal_resistivity", "concrete_thermal_resistivity", "cover"]
    for member, changed in (
        ("earth_thermal_resistivity", quantity(99, "degC.cm/W")),
        ("concrete_thermal_resistivity", quantity(93.5, "degC.cm/W")),
        ("cover", quantity(33, "in")),
    ):
        told, again = by_member[member], result("ampacity", asked | {member: changed})
        assert told["step_percent"] == 10
        assert told["ampacity"]["value"] == pytest.approx(again["ampacity"]["value"])
        share = told["ampacity"]["value"] / found["ampacity"]["value"] - 1
        assert told["ampacity_change_percent"] == pytest.approx(share * 100)
        assert told["ampacity_change_percent"] < 0


def test_what_was_found_to_carry_the_currents_just_carries_them() -> None:
    asked = bank([2, 2], *LOADED)
    found = result("ampacity", asked | {"studies": STUDIES})
    earth = found["largest_earth_resistivity"]
    assert earth["value"] > 90
    assert result("ampacity", asked | {"earth_thermal_resistivity": earth})["current_factor"] == pytest.approx(
        1, abs=1e-6
    )
    near = found["smallest_separation"]
    closer = asked | {"bank": asked["bank"] | {"horizontal_separation": near, "vertical_separation": near}}
    assert near["value"] < 3
    assert result("ampacity", closer)["current_factor"] == pytest.approx(1, abs=1e-6)


def test_ducts_must_lie_so_far_apart_that_the_currents_are_carried() -> None:
    loaded = [circuit(name, amperes=335) for name in ("1-1", "1-2", "2-1", "2-2")]
    asked = bank([2, 2], *loaded)
    assert result("ampacity", asked)["current_factor"] < 1
    wide = result("ampacity", asked | {"studies": STUDIES[3:]})["smallest_separation"]
    apart = asked | {"bank": asked["bank"] | {"horizontal_separation": wide, "vertical_separation": wide}}
    assert wide["value"] > 3
    assert result("ampacity", apart)["current_factor"] == pytest.approx(1, abs=1e-6)


def test_the_smallest_size_carries_and_the_one_below_it_does_not() -> None:
    asked = bank([2, 2], *LOADED)
    assert result("ampacity", asked | {"studies": STUDIES[1:2]})["smallest_size"] == "500 kcmil"
    for size, carries in (("500 kcmil", True), ("400 kcmil", False)):
        each = [one | {"cables": singles(size)} for one in LOADED]
        assert (result("ampacity", bank([2, 2], *each))["current_factor"] >= 1) is carries


def test_what_cannot_be_found_is_told() -> None:
    heaviest = [
        circuit(name, amperes=1100, cables=singles("2000 kcmil", count=1) * 3) for name in ("1-1", "1-2", "2-1", "2-2")
    ]
    heavy = ask("ampacity", bank([2, 2], *heaviest, studies=STUDIES[1:]))
    assert {"no_size_carries_it", "no_earth_carries_it", "no_separation_carries_it"} <= set(codes(heavy, "note"))
    assert not {"smallest_size", "largest_earth_resistivity", "smallest_separation"} & set(heavy["result"])
    shielded = circuit("1-1", amperes=100, cables=[{"count": 3, "cable": MEDIUM_VOLTAGE}])
    assert {"no_size_to_choose", "separation_not_studied"} <= set(
        codes(ask("ampacity", bank([1], shielded, studies=STUDIES)))
    )


def test_a_wire_of_compact_stranding_is_smaller_and_a_little_warmer_inside() -> None:
    """The conductor of a compact 500 kcmil is .905 of .813 in: more insulation of a smaller outside, .880 in."""
    compact = singles()[0]["cable"] | {"kind": "compact"}
    [duct] = result("ampacity", bank([1], circuit("1-1", cables=[{"count": 3, "cable": compact}])))["ducts"]
    [round_wire] = result("ampacity", bank([1], circuit("1-1", cables=[{"count": 3, "cable": WIRE}])))["ducts"]
    assert duct["insulation_resistance"]["value"] > round_wire["insulation_resistance"]["value"]
    assert duct["air_resistance"]["value"] > round_wire["air_resistance"]["value"]


def test_what_ten_percent_more_costs_beside_fixed_circuits_is_what_is_left() -> None:
    asked = bank([2], circuit("1-1", amperes=200), circuit("1-2"), studies=STUDIES[:1])
    first = result("ampacity", asked)["sensitivities"][0]
    again = result("ampacity", asked | {"earth_thermal_resistivity": quantity(99, "degC.cm/W")})
    assert first["ampacity"]["value"] == pytest.approx(again["ampacity"]["value"])
