"""What ampacity and voltage drop take where nothing is given is told, and can be refused."""

from __future__ import annotations

import pytest

from tests.asking import ask, assumed, codes, faults, quantity, result
from tests.subjects.feeder.banks import MEDIUM_VOLTAGE, bank, circuit, singles
from tests.subjects.feeder.test_voltage_drop import ASKED, without

MEDIUM = circuit("1-1", amperes=200, cables=[{"count": 3, "cable": MEDIUM_VOLTAGE}])


def test_voltage_and_terminals_are_assumptions() -> None:
    taken = assumed(ask("ampacity", bank([1], circuit("1-1", amperes=200))))
    assert taken["#/circuits/0/voltage"] == quantity(600, "V")
    assert taken["#/circuits/0/terminal_rating"] == "unmarked"
    missing = {fault["pointer"] for fault in faults("ampacity", bank([1], circuit("1-1")), "assumptions=refuse")}
    assert {"#/circuits/0/voltage", "#/circuits/0/terminal_rating"} <= missing
    small = circuit("1-1", terminal_rating="unmarked", cables=singles("1 AWG"))
    assert result("ampacity", bank([1], small))["circuits"][0]["terminal_ampacity"]["value"] == 110


def test_a_shielded_cable_without_a_voltage_is_a_caution() -> None:
    assert "voltage_not_given" in codes(ask("ampacity", bank([1], MEDIUM)), "caution")
    given = MEDIUM | {"voltage": quantity(15, "kV")}
    assert "voltage_not_given" not in codes(ask("ampacity", bank([1], given)))


def test_the_constants_of_the_air_are_told_with_their_source() -> None:
    """17 thermal ohm-feet x .3048 = 5.182; 2.9 x 10/25.4 = 1.142; .029 x 10/25.4 = .01142."""
    [note] = [
        one for one in ask("ampacity", bank([1], circuit("1-1")))["findings"] if one["code"] == "duct_air_constants"
    ]
    assert "U 5.182, V 1.142 and Y 0.01142" in note["message"]
    assert note["source_id"] == "neher-mcgrath-1957"
    by_iec = ask("ampacity", bank([1], circuit("1-1"), method="iec_60287"))
    [note] = [one for one in by_iec["findings"] if one["code"] == "duct_air_constants"]
    assert "U 1.87" in note["message"]
    assert note["source_id"] == "nine-duct-sheet"


@pytest.mark.parametrize(
    ("material", "setting", "method", "told"),
    [
        # 17 x .3048 = 5.182; 3.0 and .014, of fiber 2.1 and .016, in concrete 2.3 and .024, each x 10/25.4
        ("pvc", "direct_buried", "neher_mcgrath", "asbestos cement in air, U 5.182, V 1.181 and Y 0.00551"),
        (
            "asbestos_cement",
            "direct_buried",
            "neher_mcgrath",
            "asbestos cement in air, U 5.182, V 1.181 and Y 0.00551",
        ),
        ("fiber", "direct_buried", "neher_mcgrath", "fiber duct in air, U 5.182, V 0.8268 and Y 0.0063"),
        ("fiber", "encased", "neher_mcgrath", "fiber duct in concrete, U 5.182, V 0.9055 and Y 0.00945"),
        ("fiber", "direct_buried", "iec_60287", "fiber duct in air, U 5.2, V 0.83 and Y 0.006"),
        ("pvc", "direct_buried", "iec_60287", "plastic, U 1.87, V 0.312 and Y 0.0037"),
    ],
)
def test_the_air_in_ducts_in_earth_lets_less_heat_through(material: str, setting: str, method: str, told: str) -> None:
    measured = {"kind": "measured", "inside_diameter": quantity(4, "in"), "outside_diameter": quantity(4.5, "in")}
    asked = bank([1], circuit("1-1"), setting=setting, method=method, duct_material=material)
    asked["bank"] = asked["bank"] | {"conduit": measured}
    [note] = [one for one in ask("ampacity", asked)["findings"] if one["code"] == "duct_air_constants"]
    assert f"constants of {told}" in note["message"]
    assert ("none are for ducts in earth" in note["message"]) is told.startswith(("asbestos", "fiber duct in air"))


def test_the_reactance_of_the_table_goes_with_the_frequency() -> None:
    """500 kcmil in PVC: 0.039 ohm for 1000 ft at 60 Hz, 0.0325 at 50."""
    assert result("voltage-drop", ASKED | {"frequency": quantity(50, "Hz")})["reactance"]["value"] == pytest.approx(
        0.0325
    )
    assert assumed(ask("voltage-drop", ASKED))["#/frequency"] == quantity(60, "Hz")
    [fault] = faults("voltage-drop", ASKED | {"frequency": quantity(400, "Hz")})
    assert (fault["pointer"], fault["code"]) == ("#/frequency/value", "frequency_over_table")
    assert fault["maximum"] == quantity(60, "Hz")
    direct = without("power_factor", "conduit_material", system="direct_current", frequency=quantity(60, "Hz"))
    assert [fault["pointer"] for fault in faults("voltage-drop", direct)] == ["#/frequency"]


def test_the_table_of_building_wire_is_a_caution_at_medium_voltage() -> None:
    asked = ASKED | {"voltage": quantity(12.47, "kV")}
    assert "impedance_of_building_wire" in codes(ask("voltage-drop", asked), "caution")
    given = {"resistance": quantity(0.1, "ohm/km"), "reactance": quantity(0.1, "ohm/km")}
    assert "impedance_of_building_wire" not in codes(ask("voltage-drop", asked | given))
    assert "impedance_of_building_wire" not in codes(ask("voltage-drop", ASKED))
