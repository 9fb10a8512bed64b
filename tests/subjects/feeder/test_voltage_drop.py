"""Voltage drop through the API, every figure by hand."""

from __future__ import annotations

import math
from typing import Any

import pytest

from tests.asking import ask, assumed, codes, faults, quantity, result

WIRE = {"kind": "listed", "insulation": "XHHW-2", "size": "500 kcmil", "material": "copper"}
ASKED: dict[str, Any] = {
    "system": "three_phase",
    "voltage": quantity(480, "V"),
    "current": quantity(340, "A"),
    "power_factor": 0.85,
    "length": quantity(300, "ft"),
    "cable": WIRE,
    "conduit_material": "pvc",
    "conductor_temperature": quantity(75, "degC"),
}


def without(*members: str, **more: Any) -> dict[str, Any]:
    return {name: one for name, one in ASKED.items() if name not in members} | more


def test_a_feeder_of_three_phases_loses_what_phasors_and_tables_say() -> None:
    """Table 9: 500 kcmil of copper in PVC 0.027 and 0.039 ohm for 1000 ft; k I L = sqrt 3 x 340 x 0.3 = 176.67 A.kft.

    IR 4.770 V, IX 6.890 V; table: 4.770 x .85 + 6.890 x .52678 = 7.684 V. Across: 6.890 x .85 - 4.770 x .52678
    = 3.344 V, so that sqrt(480^2 - 3.344^2) - 7.684 = 472.304 V is left.
    """
    found = result("voltage-drop", ASKED)
    assert found["current"] == {"value": 340, "unit": "A"}
    assert found["resistance"] == {"value": pytest.approx(0.027), "unit": "ohm/1000ft"}
    assert found["reactance"] == {"value": pytest.approx(0.039), "unit": "ohm/1000ft"}
    assert found["table_drop"] == {"value": pytest.approx(7.684, abs=0.001), "unit": "V"}
    assert found["load_voltage"]["value"] == pytest.approx(472.304, abs=0.001)
    assert found["drop"]["value"] == pytest.approx(7.696, abs=0.001)
    assert found["drop_percent"] == pytest.approx(7.696 / 4.8, abs=0.001)
    assert found["table_drop_percent"] == pytest.approx(7.684 / 4.8, abs=0.001)
    assert found["limit_percent"] == 3


def test_heat_of_three_conductors_and_its_energy_in_a_year() -> None:
    """3 x 340^2 x 0.027 x 0.3 = 2809 W; in 4000 h 11,236 kWh."""
    found = result("voltage-drop", ASKED | {"duration_per_year": quantity(4000, "h")})
    assert found["loss"] == {"value": pytest.approx(2809.08), "unit": "W"}
    assert found["energy_loss"] == {"value": pytest.approx(11236.32), "unit": "kWh"}
    assert "energy_loss" not in result("voltage-drop", ASKED)


def test_two_wires_lose_there_and_back() -> None:
    """Table 9: 12 AWG of copper 2.0 and 0.054 ohm for 1000 ft; 2 x 16 A x .1 x 2.0 = 6.4 V at a power factor of 1."""
    single = ASKED | {
        "system": "single_phase",
        "voltage": quantity(120, "V"),
        "current": quantity(16, "A"),
        "power_factor": 1,
        "length": quantity(100, "ft"),
        "cable": WIRE | {"size": "12 AWG"},
    }
    found = result("voltage-drop", single)
    assert found["table_drop"]["value"] == pytest.approx(6.4)
    assert found["drop"]["value"] == pytest.approx(120 - (math.sqrt(120**2 - (3.2 * 0.054) ** 2) - 6.4))
    assert found["loss"]["value"] == pytest.approx(2 * 16**2 * 2.0 * 0.1)


def test_direct_current_meets_the_resistance_of_table_8_alone() -> None:
    """Table 8: 4/0 of copper 0.0608 ohm for 1000 ft; 2 x 100 A x .5 x .0608 = 6.08 V; power 48 V x 100 A = 4.8 kW."""
    direct = without("power_factor", "current", "conduit_material", system="direct_current", voltage=quantity(48, "V"))
    direct |= {"length": quantity(500, "ft"), "cable": WIRE | {"size": "4/0 AWG"}, "power": quantity(4.8, "kW")}
    answer = ask("voltage-drop", direct)
    found = answer["result"]
    assert found["current"]["value"] == pytest.approx(100)
    assert found["drop"]["value"] == pytest.approx(6.08)
    assert found["table_drop"]["value"] == pytest.approx(6.08)
    assert found["reactance"]["value"] == 0
    assert set(assumed(answer)) == {"#/code_edition", "#/parallel_count"}


def test_a_hotter_conductor_loses_more() -> None:
    """Note 2 of Table 8: 1 + 0.00323 (90 - 75) for copper, 1 + 0.00330 x 15 for aluminum."""
    hot = {"conductor_temperature": quantity(90, "degC")}
    copper = result("voltage-drop", ASKED | hot)["resistance"]["value"]
    assert copper == pytest.approx(0.027 * (1 + 0.00323 * 15))
    aluminum = result("voltage-drop", ASKED | hot | {"cable": WIRE | {"material": "aluminum"}})["resistance"]["value"]
    assert aluminum == pytest.approx(0.043 * (1 + 0.00330 * 15))


def test_sets_in_parallel_share_the_current() -> None:
    one, two = result("voltage-drop", ASKED), result("voltage-drop", ASKED | {"parallel_count": 2})
    assert two["table_drop"]["value"] == pytest.approx(one["table_drop"]["value"] / 2)
    assert two["loss"]["value"] == pytest.approx(one["loss"]["value"] / 2)


@pytest.mark.parametrize(
    ("size", "worst"),
    [
        ("500 kcmil", 0.8),  # Table 9: 0.027 and 0.039 ohm, 0.027 / 0.04743 = 0.569, under the least that is usual
        ("1/0 AWG", 0.12 / math.hypot(0.12, 0.044)),  # 0.9389
        ("12 AWG", 2.0 / math.hypot(2.0, 0.054)),  # 0.9996
    ],
)
def test_without_a_power_factor_the_one_that_loses_the_most_is_taken(size: str, worst: float) -> None:
    asked = without("power_factor", cable=WIRE | {"size": size}, length=quantity(30, "ft"))
    answer = ask("voltage-drop", asked)
    assert assumed(answer)["#/power_factor"] == pytest.approx(worst)
    lost = answer["result"]["table_drop"]["value"]
    for other in (0.8, 0.85, 0.9, 0.95, 1.0):
        assert result("voltage-drop", asked | {"power_factor": other})["table_drop"]["value"] <= lost * (1 + 1e-12)


def test_the_smallest_size_without_a_power_factor_loses_the_most_at_its_own() -> None:
    """k I L = sqrt 3 x 40 A x .3 = 20.78 A.kft, 2 percent are 9.6 V; 6 AWG: 0.49 and 0.051 ohm, together 0.4926.

    10.2 V are too many. At 0.85 6 AWG loses 0.4434 x 20.78 = 9.21 V, and keeps it.
    """
    asked = without("power_factor", current=quantity(40, "A"), limit_percent=2)
    assert result("voltage-drop", asked)["smallest_size"] == "4 AWG"
    assert result("voltage-drop", asked | {"power_factor": 0.85})["smallest_size"] == "6 AWG"


def test_a_load_of_given_power_draws_the_most_at_the_least_power_factor() -> None:
    """12 kW at 480 V and 0.8: 12,000 / (sqrt 3 x 480 x .8) = 18.04 A."""
    powered = without("power_factor", "current", power=quantity(12, "kW"), cable=WIRE | {"size": "12 AWG"})
    answer = ask("voltage-drop", powered)
    assert assumed(answer)["#/power_factor"] == 0.8
    assert answer["result"]["current"]["value"] == pytest.approx(18.042, abs=0.001)


def test_the_load_may_be_given_as_power() -> None:
    """sqrt 3 x 480 V x 340 A = 282.67 kVA, 240.27 kW at 0.85."""
    kva = math.sqrt(3) * 480 * 340 / 1000
    apparent = result("voltage-drop", without("current", apparent_power=quantity(kva, "kVA")))
    real = result("voltage-drop", without("current", power=quantity(kva * 0.85, "kW")))
    assert apparent["current"]["value"] == real["current"]["value"] == pytest.approx(340)
    assert apparent["drop"]["value"] == pytest.approx(result("voltage-drop", ASKED)["drop"]["value"])


def test_the_longest_run_is_just_within_the_limit() -> None:
    found = result("voltage-drop", ASKED | {"limit_percent": 2})
    longest = found["longest_length"]
    assert longest["unit"] == "ft"
    again = result("voltage-drop", ASKED | {"limit_percent": 2, "length": longest})
    assert again["drop_percent"] == pytest.approx(2, abs=1e-9)


def test_the_smallest_size_keeps_the_limit_and_the_one_below_does_not() -> None:
    """Table 310.16 has 310 A for 350 kcmil of copper at 75 degC."""
    asked = ASKED | {"current": quantity(300, "A"), "length": quantity(340, "ft")}
    assert result("voltage-drop", asked | {"limit_percent": 2})["smallest_size"] == "350 kcmil"
    for size, within in (("350 kcmil", True), ("300 kcmil", False)):
        percent = result("voltage-drop", asked | {"cable": WIRE | {"size": size}})["drop_percent"]
        assert (percent <= 2) is within


@pytest.mark.parametrize(
    ("changed", "size"),
    [
        ({}, "500 kcmil"),  # 340 A: 400 kcmil has 335 A at 75 degC
        ({"current": quantity(100, "A")}, "1 AWG"),  # 110 A at 60 degC; 2 AWG has 95
        ({"current": quantity(60, "A"), "parallel_count": 2}, "1/0 AWG"),  # the least in parallel
        ({"system": "direct_current", "current": quantity(50, "A"), "voltage": quantity(600, "V")}, "6 AWG"),
    ],
)
def test_the_smallest_size_carries_the_current_too(changed: dict[str, Any], size: str) -> None:
    asked = without("power_factor", "conduit_material") if "system" in changed else ASKED
    assert result("voltage-drop", asked | {"limit_percent": 4} | changed)["smallest_size"] == size


@pytest.mark.parametrize(
    ("insulation", "amperes", "size"),
    [
        ("TW", 232, "500 kcmil"),  # at 60 degC 350 kcmil has 210 A, 400 kcmil 225, 500 kcmil 260
        ("THW", 232, "350 kcmil"),  # at 75 degC 300 kcmil has 230 A, 350 kcmil 250
        ("THWN-2", 232, "350 kcmil"),  # unmarked terminals leave the column of 75 degC
        ("THHN", 90, "1/0 AWG"),  # to 100 A that of 60 degC: 1 AWG has 85 A, 1/0 100
    ],
)
def test_the_smallest_size_goes_by_its_insulation(insulation: str, amperes: float, size: str) -> None:
    """Table 310.16, aluminum."""
    wire = WIRE | {"insulation": insulation, "material": "aluminum", "size": "4/0 AWG"}
    asked = ASKED | {"cable": wire, "current": quantity(amperes, "A"), "length": quantity(10, "ft")}
    assert result("voltage-drop", asked)["smallest_size"] == size


def test_a_current_over_the_column_of_the_insulation_is_a_caution() -> None:
    """Table 310.16: 4/0 of aluminum 150 A at 60 degC, 180 A at 75."""
    wire = WIRE | {"material": "aluminum", "size": "4/0 AWG"}
    asked = ASKED | {"current": quantity(170, "A"), "length": quantity(10, "ft")}
    answer = ask("voltage-drop", asked | {"cable": wire | {"insulation": "TW"}})
    [found] = [one for one in answer["findings"] if one["code"] == "over_table_ampacity"]
    assert found["limit"] == {"value": 150, "unit": "A"}
    assert "over_table_ampacity" not in codes(ask("voltage-drop", asked | {"cable": wire | {"insulation": "THW"}}))


def test_a_current_over_100_amperes_takes_the_75_degree_column_of_a_small_conductor() -> None:
    """Table 310.16: 1 AWG of copper 110 A at 60 degC, 130 A at 75."""
    asked = ASKED | {"cable": WIRE | {"size": "1 AWG"}, "length": quantity(10, "ft")}
    assert "over_table_ampacity" not in codes(ask("voltage-drop", asked | {"current": quantity(120, "A")}))
    assert "over_table_ampacity" in codes(ask("voltage-drop", asked | {"current": quantity(131, "A")}))


@pytest.mark.parametrize(
    ("conductor", "told"),
    [({"size": "1 AWG"}, True), ({"size": "1/0 AWG"}, False), ({"area": quantity(50, "mm2")}, True)],
)
def test_conductors_too_small_in_parallel_are_a_violation(conductor: dict[str, Any], told: bool) -> None:
    """1/0 AWG, 53.5 mm2, is the least in parallel."""
    cable = {
        "kind": "measured",
        "diameter": quantity(1, "in"),
        "conductor": {"material": "copper", "count": 1} | conductor,
    }
    given = {"resistance": quantity(0.1, "ohm/1000ft"), "reactance": quantity(0.04, "ohm/1000ft")}
    asked = without("conduit_material", "conductor_temperature", cable=cable, length=quantity(10, "ft"), **given)
    assert "too_small_in_parallel" not in codes(ask("voltage-drop", asked))
    answer = ask("voltage-drop", asked | {"parallel_count": 2})
    assert ("too_small_in_parallel" in codes(answer, "violation")) is told
    assert answer.get("verdict") == ("violates" if told else None)
    if told:
        [found] = [one for one in answer["findings"] if one["code"] == "too_small_in_parallel"]
        assert found["pointer"] == "#/cable/conductor"
        assert (found["actual"]["value"], found["limit"]["value"]) == (2, 1)


def test_no_longest_run_is_told_that_no_request_may_have() -> None:
    """R pf + X sin = 0.027 x 0.85 + 0.039 x 0.5268 = 0.04349 ohm in 1000 ft: 14.4 V at 1 A are lost in 191,000 ft."""
    assert "longest_length" not in result("voltage-drop", ASKED | {"current": quantity(1, "A")})
    near = result("voltage-drop", ASKED | {"current": quantity(2, "A")})["longest_length"]
    assert near["value"] == pytest.approx(14.4 / (math.sqrt(3) * 2 * 0.04349) * 1000, rel=0.01)


def test_above_the_scope_of_the_tables_no_smallest_size_is_told() -> None:
    answer = ask("voltage-drop", ASKED | {"voltage": quantity(12.47, "kV")})
    assert "smallest_size" not in answer["result"]
    assert "size_needs_ampacity" in codes(answer, "note")


def test_a_current_over_the_tables_is_a_caution() -> None:
    """12 AWG of copper has 20 A at 60 degC, two sets 40 A."""
    small = ASKED | {"cable": WIRE | {"size": "12 AWG"}, "current": quantity(41, "A"), "parallel_count": 2}
    answer = ask("voltage-drop", small)
    [found] = [one for one in answer["findings"] if one["code"] == "over_table_ampacity"]
    assert (found["severity"], found["pointer"]) == ("caution", "#/current")
    assert found["limit"] == {"value": 40, "unit": "A"}
    assert "over_table_ampacity" not in codes(ask("voltage-drop", small | {"current": quantity(40, "A")}))


def test_what_would_do_is_something_that_does() -> None:
    far = ASKED | {"limit_percent": 0.5, "length": quantity(900, "ft")}
    [over] = [one for one in ask("voltage-drop", far)["findings"] if one["code"] == "voltage_drop_over_limit"]
    assert "larger conductors" not in over["message"], "there is none"
    assert "percent, 3 percent" not in over["message"]


def test_a_limit_that_was_given_is_judged_and_the_recommended_one_is_told() -> None:
    given = ask("voltage-drop", ASKED | {"limit_percent": 1})
    assert given["verdict"] == "violates"
    [over] = [one for one in given["findings"] if one["code"] == "voltage_drop_over_limit"]
    assert (over["severity"], over["pointer"]) == ("violation", "#/limit_percent")
    assert over["limit"] == {"value": 1, "unit": "percent"}
    far = ask("voltage-drop", ASKED | {"length": quantity(900, "ft")})
    assert "verdict" not in far
    assert "voltage_drop_over_limit" in codes(far, "caution")
    assert ask("voltage-drop", ASKED | {"limit_percent": 3})["verdict"] == "complies"
    assert codes(given, "caution") == ["drop_of_feeder_and_branch"]


def test_where_no_size_is_enough_it_is_told() -> None:
    answer = ask(
        "voltage-drop", ASKED | {"length": quantity(9000, "ft"), "voltage": quantity(2000, "V"), "limit_percent": 0.5}
    )
    assert "no_size_within_limit" in codes(answer, "note")
    assert "smallest_size" not in answer["result"]


def test_impedances_that_are_given_need_no_table() -> None:
    given = {"resistance": quantity(0.1, "ohm/km"), "reactance": quantity(0, "ohm/km")}
    asked = without("conduit_material", "conductor_temperature", power_factor=1, length=quantity(100, "m"), **given)
    answer = ask("voltage-drop", asked)
    assert answer["result"]["drop"]["value"] == pytest.approx(math.sqrt(3) * 340 * 0.01)
    assert set(assumed(answer)) == {"#/code_edition", "#/parallel_count"}
    assert "nfpa70-ch9-t9" not in answer["basis"]["source_ids"]
    assert "smallest_size" not in answer["result"]


def test_the_working_shows_the_phasors_and_the_table_form() -> None:
    answer = ask("voltage-drop", ASKED, "working=true")
    shown = {step["symbol"]: step["quantity"] for step in answer["working"]}
    assert shown == {
        "Vr": answer["result"]["load_voltage"],
        "VD": answer["result"]["table_drop"],
        "P": answer["result"]["loss"],
    }


@pytest.mark.parametrize(
    ("asked", "pointer", "code"),
    [
        (without("current"), "#/current", "missing"),
        (ASKED | {"power": quantity(1, "kW")}, "#/current", "contradiction"),
        (ASKED | {"cable": WIRE | {"size": "1250 kcmil"}}, "#/cable/size", "impedance_not_listed"),
        (
            ASKED | {"cable": {name: one for name, one in WIRE.items() if name != "material"}},
            "#/cable/material",
            "missing",
        ),
        (
            ASKED | {"cable": {"kind": "measured", "diameter": quantity(1, "in")}},
            "#/cable/conductor",
            "missing",
        ),
        (
            ASKED
            | {
                "cable": {
                    "kind": "measured",
                    "diameter": quantity(1, "in"),
                    "conductor": {"material": "copper", "area": quantity(240, "mm2"), "count": 1},
                }
            },
            "#/cable/conductor/size",
            "impedance_not_listed",
        ),
        (ASKED | {"length": quantity(90_000, "ft")}, "#/voltage/value", "cannot_drive_the_current"),
    ],
)
def test_a_question_without_an_answer_is_refused_at_its_place(asked: dict[str, Any], pointer: str, code: str) -> None:
    assert [(fault["pointer"], fault["code"]) for fault in faults("voltage-drop", asked)] == [(pointer, code)]


def test_a_multiconductor_cable_is_known_by_its_conductor() -> None:
    cable = {
        "kind": "multiconductor",
        "diameter": quantity(2, "in"),
        "conductor": {"material": "copper", "size": "500 kcmil", "count": 3},
    }
    assert result("voltage-drop", ASKED | {"cable": cable}) == result("voltage-drop", ASKED)


def test_three_phases_need_three_conductors() -> None:
    cable = {
        "kind": "multiconductor",
        "diameter": quantity(2, "in"),
        "conductor": {"material": "copper", "size": "500 kcmil", "count": 2},
    }
    [fault] = faults("voltage-drop", ASKED | {"cable": cable})
    assert (fault["pointer"], fault["code"]) == ("#/cable/conductor/count", "too_few_conductors")
    assert fault["minimum"]["value"] == 3
    assert result("voltage-drop", ASKED | {"cable": cable, "system": "single_phase"})["drop"]["value"] > 0


def test_what_direct_current_does_not_have_is_refused() -> None:
    asked = ASKED | {"system": "direct_current", "reactance": quantity(0.04, "ohm/1000ft")}
    found = {fault["pointer"]: fault["code"] for fault in faults("voltage-drop", asked)}
    assert found == dict.fromkeys(("#/power_factor", "#/reactance", "#/conduit_material"), "not_of_direct_current")


def test_a_voltage_that_does_not_drive_the_current_is_told_one_that_does() -> None:
    """k I L = sqrt 3 x 340 x 90 = 53,001 A.kft; |Z| = 0.04744: 2514 V across, and a little more at the source."""
    far = ASKED | {"length": quantity(90_000, "ft")}
    [fault] = faults("voltage-drop", far)
    assert fault["minimum"] == {"value": pytest.approx(53_001 * math.hypot(0.027, 0.039) * 1.01, rel=1e-4), "unit": "V"}
    assert result("voltage-drop", far | {"voltage": fault["minimum"]})["load_voltage"]["value"] > 0
    powered = without("current", length=quantity(90_000, "ft"), power=quantity(240, "kW"))
    [fault] = faults("voltage-drop", powered)
    assert result("voltage-drop", powered | {"voltage": fault["minimum"]})["load_voltage"]["value"] > 0
