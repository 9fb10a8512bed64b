"""Printed ampacities of cables in ducts in concrete, and the worked sheet of nine ducts component by component."""

from __future__ import annotations

import math
from statistics import mean
from typing import Any

import pytest
from ductrun.engineering import iec_60287, neher_mcgrath
from ductrun.engineering.buried_heat import envelope_radius, geometric_factor, mutual_resistance

from tests.asking import document_of, quantity, result

DOCUMENT = document_of("feeders.json")
CELLS = [(row, case) for row in DOCUMENT["ampacity"] for case in row["amperes"]]
DIAMETERS = {  # of a stranded conductor, Chapter 9, Table 8 [in]
    size: inches
    for sizes, unit in (
        ({"8": 0.146, "6": 0.184, "4": 0.232, "3": 0.260, "2": 0.292, "1": 0.332, "1/0": 0.372, "2/0": 0.418}, "AWG"),
        ({"3/0": 0.470, "4/0": 0.528}, "AWG"),
        ({"250": 0.575, "300": 0.630, "350": 0.681, "400": 0.728, "500": 0.813, "600": 0.893, "700": 0.964}, "kcmil"),
        ({"750": 0.998, "800": 1.030, "900": 1.094, "1000": 1.152, "1250": 1.289, "1500": 1.412}, "kcmil"),
        ({"1750": 1.526, "2000": 1.632}, "kcmil"),
    )
    for size, inches in ((f"{name} {unit}", inches) for name, inches in sizes.items())
}
# the banks of the figures: sides [in], ducts at 7.5 in; three ducts lie in a bank of four ways, one of them empty
BANKS: dict[int, tuple[tuple[float, float], list[int], list[str]]] = {
    1: ((11.5, 11.5), [1], ["1-1"]),
    3: ((19, 19), [2, 2], ["2-1", "2-2", "1-1"]),
    6: ((19, 27), [2, 2, 2], ["1-1", "1-2", "2-1", "2-2", "3-1", "3-2"]),
    9: ((27, 27), [3, 3, 3], [f"{tier}-{at}" for tier in (1, 2, 3) for at in (1, 2, 3)]),
}
# The tables do not tell the duct, its constants or the concrete. These were found to meet the table of three singles in
# a duct, and serve the others: a duct of 5.0 and 6.0 in with a wall of 480 (for one single 3.0 and 3.5 in of PVC, 650),
# the constants of asbestos cement in concrete at a fixed 60 degC, concrete of 85, the top of the bank 30 in down.
WIDE = (5.0, 6.0, 480)
NARROW = (3.0, 3.5, 650)


def size_of(row: dict[str, Any]) -> str:
    size = row["size"]
    return f"{size} kcmil" if "/" not in size and int(size) >= 250 else f"{size} AWG"


def bank(count: int, duct: tuple[float, float, int]) -> dict[str, Any]:
    (width, height), tiers, _ = BANKS[count]
    inside, outside, wall = duct
    side = (width - 7.5 * (max(tiers) - 1) - outside) / 2
    end = (height - 7.5 * (len(tiers) - 1) - outside) / 2
    return {
        "bank": {
            "conduit": {
                "kind": "measured",
                "inside_diameter": quantity(inside, "in"),
                "outside_diameter": quantity(outside, "in"),
            },
            "tiers": tiers,
            "horizontal_separation": quantity(7.5, "in"),
            "vertical_separation": quantity(7.5, "in"),
            "separation_measure": "center_to_center",
        },
        "setting": "encased",
        "concrete_cover": {"top": quantity(end, "in"), "bottom": quantity(end, "in"), "side": quantity(side, "in")},
        "cover": quantity(30, "in"),
        "duct_material": "asbestos_cement",
        "duct_thermal_resistivity": quantity(wall, "degC.cm/W"),
        "duct_air_temperature": quantity(60, "degC"),
        "concrete_thermal_resistivity": quantity(85, "degC.cm/W"),
        "earth_temperature": quantity(20, "degC"),
    }


def wire(row: dict[str, Any]) -> dict[str, Any]:
    return {"kind": "listed", "insulation": "RHW*", "size": size_of(row), "material": row["material"]}


def in_ducts(row: dict[str, Any], case: str) -> dict[str, Any]:
    """Give the question of a cell of Tables (5), (6) and (7): so many ducts, earth, load factor; 75 degC."""
    count, earth, load = case.split("|")
    table = row["table"][-3:]
    duct = NARROW if table == "(5)" else WIDE
    cable, singles = (three_core(row), 1) if table == "(6)" else (wire(row), 1 if table == "(5)" else 3)
    ducts = BANKS[int(count)][2]
    groups = [ducts[at : at + 3] for at in range(0, len(ducts), 3)] if table == "(5)" else [[one] for one in ducts]
    circuit = {
        "cables": [{"count": singles, "cable": cable}],
        "load_factor_percent": int(load.removeprefix("LF")),
        "temperature_limit": quantity(75, "degC"),
    }
    return bank(int(count), duct) | {
        "earth_thermal_resistivity": quantity(int(earth.removeprefix("rho")), "degC.cm/W"),
        "circuits": [circuit | {"ducts": group} for group in groups],
    }


def three_core(row: dict[str, Any]) -> dict[str, Any]:
    """Give a cable of three conductors; the table does not tell its make-up: rubber of usual walls, a PVC jacket."""
    conductor = DIAMETERS[size_of(row)]
    wall = 0.060 if conductor < 0.3 else 0.080 if conductor < 0.55 else 0.095 if conductor < 0.85 else 0.110
    core = conductor + 2 * wall
    inside = core * (1 + 2 / math.sqrt(3)) * 1.0001
    jacket = 0.080 if inside < 1.5 else 0.110
    return {
        "kind": "multiconductor",
        "diameter": quantity(inside + 2 * jacket, "in"),
        "conductor": {"material": row["material"], "size": size_of(row), "count": 3},
        "layers": {
            "insulation": {"material": "rubber", "thickness": quantity(wall, "in")},
            "jacket": {"material": "pvc", "thickness": quantity(jacket, "in")},
        },
    }


# another copy of the table has 310 A here, which is not how the column goes on
SUSPECT = {("MV80-al-1000", "6 circuits|5001-35000V|90C")}


def shielded_three_core(row: dict[str, Any], case: str) -> dict[str, Any]:
    """Give the question of a cell of Tables (79) and (80): one cable of three conductors, 90 mil of insulation at 5 kV,
    175 and a copper tape of 5 mil on each core at 15 kV, with 5 mil of screens, which the tables do not tell.
    """
    asked = medium_voltage(row, case)
    low = "2001-5000V" in case
    over = DIAMETERS[size_of(row)] + 2 * (0.090 if low else 0.175) + 0.010
    inside = over * (1 + 2 / math.sqrt(3)) * 1.0001
    jacket = 0.08 if inside < 1.5 else 0.11 if inside < 2.5 else 0.14
    layers: dict[str, Any] = {
        "insulation": {"material": "xlpe", "thickness": quantity(0.095 if low else 0.180, "in")},
        "jacket": {"material": "pvc", "thickness": quantity(jacket, "in")},
    }
    if not low:
        ohms = 11.8 / (4 * over * 1000 * 5) * 1000
        layers["shield"] = {"resistance": quantity(ohms, "ohm/1000ft"), "mean_diameter": quantity(over, "in")}
    cable = {
        "kind": "multiconductor",
        "diameter": quantity(inside + 2 * jacket, "in"),
        "conductor": {"material": row["material"], "size": size_of(row), "count": 3},
        "layers": layers,
    }
    return asked | {"circuits": [one | {"cables": [{"count": 1, "cable": cable}]} for one in asked["circuits"]]}


def medium_voltage(row: dict[str, Any], case: str) -> dict[str, Any]:
    """Give the question of a cell of Tables (77) and (78): three singles in a duct, 110 mil of insulation and 45 of
    jacket at 5 kV, 175 and 80 with a copper tape of 5 mil at 15 kV, which the tables do not tell.
    """
    circuits, volts, limit = case.split("|")
    low = volts == "2001-5000V"
    wall, jacket = (0.110, 0.045) if low else (0.175, 0.080)
    over = DIAMETERS[size_of(row)] + 2 * wall
    layers: dict[str, Any] = {
        "insulation": {"material": "xlpe", "thickness": quantity(wall, "in")},
        "jacket": {"material": "pvc", "thickness": quantity(jacket, "in")},
    }
    if not low:
        # copper tape: 11.8 / (4 Dsm t) ohm for a foot, in mils
        ohms = 11.8 / (4 * (over + 0.005) * 1000 * 5) * 1000
        layers["shield"] = {"resistance": quantity(ohms, "ohm/1000ft"), "mean_diameter": quantity(over + 0.005, "in")}
    cable = {
        "kind": "measured",
        "diameter": quantity(over + 2 * jacket + (0.0 if low else 0.010), "in"),
        "conductor": {"material": row["material"], "size": size_of(row), "count": 1},
        "layers": layers,
    }
    count = int(circuits.split()[0])
    circuit = {
        "cables": [{"count": 3, "cable": cable}],
        "voltage": quantity(5 if low else 15, "kV"),
        "temperature_limit": quantity(int(limit.removesuffix("C")), "degC"),
    }
    return bank(count, WIDE) | {
        "earth_thermal_resistivity": quantity(90, "degC.cm/W"),
        "circuits": [circuit | {"ducts": [one]} for one in BANKS[count][2]],
    }


def of_a_figure(row: dict[str, Any], case: str) -> dict[str, Any]:
    """Give the question of a figure's note: 9 ducts of three singles, or 12 of one, concrete 5 better than earth.

    Its load factor is taken as in the tables; the margins are scaled from the drawing.
    """
    earth = int(case.removeprefix("rho"))
    nine = row["table"].endswith("(3)")
    trade, outside, pitch, wide, columns = (
        ("4", 114.3, 190, (675, 900), 3) if nine else ("3", 88.9, 250, (1100, 1100), 4)
    )
    side = (wide[0] - pitch * (columns - 1) - outside) / 2
    top = wide[1] - side - 2 * pitch - outside
    names = [[f"{tier}-{at}" for tier in (3, 2, 1)] for at in range(1, columns + 1)]
    groups = [[name] for column in names for name in column] if nine else names
    circuit = {
        "cables": [{"count": 3 if nine else 1, "cable": wire(row)}],
        "load_factor_percent": 50 if earth == 60 else 100,
        "temperature_limit": quantity(75, "degC"),
    }
    return {
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": trade},
            "tiers": [columns] * 3,
            "horizontal_separation": quantity(pitch, "mm"),
            "vertical_separation": quantity(pitch, "mm"),
            "separation_measure": "center_to_center",
        },
        "setting": "encased",
        "concrete_cover": {"top": quantity(top, "mm"), "bottom": quantity(side, "mm"), "side": quantity(side, "mm")},
        "cover": quantity(600 - top - outside / 2, "mm"),
        "earth_thermal_resistivity": quantity(earth, "degC.cm/W"),
        "concrete_thermal_resistivity": quantity(earth - 5, "degC.cm/W"),
        "circuits": [circuit | {"ducts": group} for group in groups],
    }


def errors(table: str, material: str) -> dict[str, tuple[float, float]]:
    """Give the error of every cell of a table [percent], and the printed value [A]."""
    asked = of_a_figure if "Figure" in table else in_ducts
    if table.startswith("Table 310-60"):
        asked = medium_voltage if table[-4:] in ("(77)", "(78)") else shielded_three_core
    found = {}
    for row, case in CELLS:
        if row["table"] == table and row["material"] == material and (row["id"], case) not in SUSPECT:
            printed = row["amperes"][case]
            amperes = result("ampacity", asked(row, case))["ampacity"]["value"]
            found[f"{row['size']}|{case}"] = ((amperes / printed - 1) * 100, printed)
    return found


# mean of the errors without sign, and the worst [percent], within which the method is known to meet each table. The
# tables for 5 and 15 kV are printed to 5 A from 100 A on, and like the figures tell no make-up of cables and ducts.
KNOWN = {
    ("Table B.310.15(B)(2)(7)", "copper"): (0.8, 3.4),
    ("Table B.310.15(B)(2)(7)", "aluminum"): (0.7, 3.6),
    ("Table B.310.15(B)(2)(5)", "copper"): (1.9, 10.2),
    ("Table B.310.15(B)(2)(5)", "aluminum"): (1.3, 7.0),
    ("Table B.310.15(B)(2)(6)", "copper"): (2.7, 8.4),
    ("Table B.310.15(B)(2)(6)", "aluminum"): (2.8, 5.2),
    ("Table 310-60(c)(77)", "copper"): (2.7, 8.1),
    ("Table 310-60(c)(78)", "aluminum"): (2.7, 8.1),
    ("Table 310-60(c)(79)", "copper"): (2.7, 8.0),
    ("Table 310-60(c)(80)", "aluminum"): (2.7, 8.0),
    ("Figure B.310.15(B)(2)(3)", "copper"): (5.0, 9.0),
    ("Figure B.310.15(B)(2)(4)", "copper"): (5.0, 9.0),
}


@pytest.mark.parametrize(("table", "material"), KNOWN, ids=str)
def test_a_printed_table_is_met_as_closely_as_the_method_is_known_to(table: str, material: str) -> None:
    found = errors(table, material)
    unsigned, worst = KNOWN[table, material]
    assert len(found) >= 6
    assert mean(abs(error) for error, _ in found.values()) <= unsigned + 0.05
    for cell, (error, printed) in found.items():
        assert abs(error) <= worst, (cell, error, printed)


def test_one_single_in_a_duct_is_met_but_for_nine_ducts_of_the_largest_sizes() -> None:
    """There the printed table drops off, and the method does not."""
    for material in ("copper", "aluminum"):
        for cell, (error, _) in errors("Table B.310.15(B)(2)(5)", material).items():
            size, ducts, *_ = cell.split("|")
            if not (ducts == "9" and int(size) >= 1000):
                assert abs(error) <= 5.0, (cell, error)


def test_500_kcmil_in_three_ducts_carries_340_amperes_with_the_resistances_of_the_worked_check() -> None:
    """Thermal ohm-feet: Ri 0.547; duct air 4.634 and wall 1.362 for the heat of three, which here is told for all; the
    resistance rises by 6.3 percent with the alternating current.
    """
    [row] = [one for one in DOCUMENT["ampacity"] if one["id"] == "B7-cu-500"]
    found = result("ampacity", in_ducts(row, "3|rho90|LF100"))
    duct = next(one for one in found["ducts"] if one["duct"] == found["governing_duct"])
    assert row["amperes"]["3|rho90|LF100"] == 341
    assert found["ampacity"]["value"] == pytest.approx(339.9, abs=0.6)
    assert duct["insulation_resistance"] == {"value": pytest.approx(0.547, abs=0.002), "unit": "degC.ft/W"}
    assert duct["air_resistance"]["value"] * 3 == pytest.approx(4.634, abs=0.001)
    assert duct["wall_resistance"]["value"] * 3 == pytest.approx(1.362, abs=0.001)
    assert duct["mutual_heating_factor"] == pytest.approx(100.97, abs=0.02)
    assert duct["conductor_resistance"]["value"] == pytest.approx(0.0258 * 1.063, abs=0.00003)


def test_the_worked_sheet_of_nine_ducts_is_met_to_the_printed_digit() -> None:
    given, printed = DOCUMENT["components"]["inputs"], DOCUMENT["components"]["expected"]
    inner, jacket = given["dc_mm"], given["Da_mm"]
    t1 = neher_mcgrath.layer_resistance(given["rho_insulation"], inner, inner + 2 * given["t1_mm"])
    t3 = neher_mcgrath.layer_resistance(given["rho_jacket"], jacket, jacket + 2 * given["t3_mm"])
    constants = neher_mcgrath.AirConstants(given["U"], given["V"], given["Y"])
    air = neher_mcgrath.duct_air_resistance(constants, given["De_mm"] / 1000, given["mean_temp_C"] + 273.15)
    duct = neher_mcgrath.layer_resistance(given["rho_duct"], given["duct_inside_mm"], given["duct_outside_mm"])
    radius = envelope_radius(given["bank_x_mm"], given["bank_y_mm"])
    beyond = given["rho_soil"] - given["rho_concrete"]
    correction = given["N"] / (2 * math.pi) * beyond * geometric_factor(given["LG_mm"], radius)
    own = iec_60287.earth_resistance(given["rho_concrete"], given["duct_outside_mm"], given["L_mm"])
    mutual = own + sum(mutual_resistance(given["rho_concrete"], ratio) for ratio in given["image_ratios"])
    assert round(t1, 1) == printed["T1"]
    assert round(t3, 3) == printed["T3"]
    assert round(air, 3) == printed["T4_air"]
    assert round(duct, 3) == printed["T4_duct"]
    assert round(radius) == printed["rb_mm"]
    assert round(given["LG_mm"] / radius, 3) == printed["u_bank"]
    assert round(correction, 3) == printed["T4_concrete_correction"]
    assert 2 * given["L_mm"] / given["duct_outside_mm"] == printed["u_duct"]
    assert round(mutual, 2) == printed["T4_mutual"]
    assert round(air + duct + correction + mutual, 3) == printed["T4_total"]
