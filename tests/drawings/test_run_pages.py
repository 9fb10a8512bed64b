"""The pages of a whole run: what the sheet of a submittal holds, and what a crew works by."""

from __future__ import annotations

import copy
import json
import math
import re
from typing import Any

import pytest
from ductrun.drawings.documents import Answered, pages_of
from ductrun.drawings.run_drawings import alike_pulls
from ductrun.kit.answering import Chosen, made_by, told_of
from ductrun.kit.answers import Answer
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import METRIC
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.duct_run import OPERATION

from tests.asking import quantity
from tests.drawings.pages import Read, assert_harmless
from tests.drawings.takeoffs import HOSTILE
from tests.subjects.duct_run.runs import BRIDGE, MANHOLES, buried, level_bend, listed, single, straight, upright_bend
from tests.subjects.duct_run.test_runs_of_several_conduits import run

TOLD = made_by(OPERATION, told_of(OPERATION))
PAGES = pages_of(OPERATION)
EXAMPLE: dict[str, Any] = OPERATION.example
WORKED = Chosen(working=True)
LEAVING = ("tension leaving", "sidewall pressure")


def answered(request: dict[str, Any], chosen: Chosen = WORKED) -> Answered:
    body = json.dumps(request).encode()
    answer, run = TOLD(body, chosen)
    return Answered(OPERATION, answer, run, chosen.telling, body)


def page_of(name: str, request: dict[str, Any] = EXAMPLE, chosen: Chosen = WORKED) -> Read:
    written = PAGES[name](answered(request, chosen))
    return assert_harmless(written.written, written.policy)


def changed(**members: Any) -> dict[str, Any]:
    return copy.deepcopy(EXAMPLE) | members


def heavy() -> dict[str, Any]:
    """Give the run with a cable that breaks a limit: conductors of so little metal cannot bear the pull."""
    request = copy.deepcopy(EXAMPLE)
    cable = request["circuits"][2]["cables"][0]["cable"]
    cable["conductor"]["count"] = 1
    cable["mass_per_length"]["value"] = 3.0
    return request


def test_a_run_has_three_pages_the_sheet_first() -> None:
    assert list(PAGES) == ["sheet", "takeoff", "crew"]


def test_the_sheet_holds_every_subject_of_the_run() -> None:
    sheet = page_of("sheet")
    headings = sheet.texts("h2")
    for subject in ("Drawings", "Inputs as sent", "Assumptions", "The run", "Cover", "Permitted use", "Trench"):
        assert subject in headings
    for subject in ("Spacers", "Concrete", "Ducts and joints", "Movement", "Supports", "Fill", "Pulls", "Working"):
        assert subject in headings
    drawn = [one.name for one in sheet.elements].count("svg")
    assert (
        drawn == 1 + 2 + 2 + 1 + 1 + 4
    )  # the route, two trenches and their temperatures, a box, a wall, two pulls of power alike twice, two of signal
    answer = answered(EXAMPLE).answer
    for finding in answer.findings:
        assert finding.message in sheet.text


def test_the_sheet_gives_the_figures_of_the_answer() -> None:
    rows = page_of("sheet").rows()
    # 30 in of earth over 3 in of concrete; 480 V in PVC asks for 18 in below the road, derived
    cover = next(row for row in rows if row[:2] == ["under the road", "33 in"])
    assert cover[3] == f"{33 - float(cover[2].removesuffix(' in')):g} in"
    assert ["1-3", "spare", "4.5 in"] in rows
    assert ["1-1", "SP-1", "4.5 in"] in rows
    spaced = next(row for row in rows if row[:3] == ["under the road", "25", "5 ft"])
    assert spaced[3:5] == ["75", "75"]  # 25 stations 5 ft apart over 120 ft, three ducts in each of two tiers


def test_the_sheet_shows_what_circuits_carry_and_lose_the_boxes_and_the_earth() -> None:
    sheet = page_of("sheet").text
    for heading in ("Ampacity", "Voltage drop", "Boxes", "Earth and traffic", "Ducts in wet concrete"):
        assert heading in sheet
    plain = changed(earth_load=None)
    del plain["earth_load"], plain["circuits"][0]["load"]
    without = page_of("sheet", plain).text
    assert "Earth and traffic" not in without
    assert "Voltage drop" not in without
    assert "temperatures" in sheet  # the title of the drawing of a loaded bank
    assert "HH-2: least size" in sheet


def test_different_ducts_of_one_tier_are_told_apart_in_the_table_of_the_earth() -> None:
    """DB-60 beside a duct measured at 5 in, both in tier 1: a row each, by what it is."""
    duct = {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}
    sizes = {"inside_diameter": quantity(4.5, "in"), "outside_diameter": quantity(5, "in")}
    bank = {
        "conduit": duct,
        "tier_ducts": [[{"count": 1}, {"count": 1, "conduit": {"kind": "measured"} | sizes}]],
        "separation_measure": "clear",
        "horizontal_separation": quantity(2, "in"),
        "vertical_separation": quantity(2, "in"),
    }
    stretch = {"name": "First", "setting": buried(), "length": quantity(100, "ft")}
    rows = page_of("sheet", run(stretch, bank=bank, earth_load={"traffic": "none"})).rows()
    ducts = [row[2] for row in rows if len(row) == 10 and row[:2] == ["First", "1"]]
    assert ducts == ["PVC DB 60, trade size 4, 4.5 in outside", "5 in outside"]


def test_the_table_of_the_earth_says_in_which_way_ducts_do_not_comply() -> None:
    bank = {"conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"}, "tiers": [1]}
    stretches = {f"{depth} in": {"setting": buried(depth)} for depth in (30, 300)}
    told = [{"name": name, "length": quantity(100, "ft"), **one} for name, one in stretches.items()]
    given = run(*told, bank=bank, earth_load={"traffic": "none"}, site={"groundwater_depth": quantity(60, "ft")})
    written = page_of("sheet", given).rows()
    rows = {row[0]: row for row in written if len(row) == 10 and row[0] in stretches}
    # 25 ft of earth press with 20.8 psi: dumped soil lets DB-60 flatten by more than 5 percent, and the wall bears it
    assert rows["30 in"][-1] == "complies"
    assert rows["300 in"][-1].startswith("deflection violates")
    assert "wall" not in rows["300 in"][-1]
    [header] = [row for row in written if row[:2] == ["Stretch", "Tier"] and "Traffic" in row]
    assert len(set(header)) == len(header) == 10, "no two columns are called alike"


def test_alike_pulls_are_told_once_and_then_by_reference() -> None:
    sheet = page_of("sheet")
    assert "As SP-1, V-1 to HH-2, in duct 1-2." in sheet.texts("p")
    run: DuctRun = answered(EXAMPLE).assessment
    assert [pull.circuits for pull in alike_pulls(run)] == [
        ["SP-1", "SP-2"],
        ["SP-1", "SP-2"],
        *[["dock telephone"]] * 2,
    ]


def test_both_directions_stand_beside_each_other_from_the_start_of_the_run() -> None:
    given = answered(EXAMPLE)
    pull = given.answer.result.circuits[0].pulls[1].pull
    rows = page_of("sheet").rows()
    header = ["Section", *[f"Toward the {end}: {what}" for end in ("end", "start") for what in LEAVING]]
    places = [index for index, row in enumerate(rows) if row == header]
    first = rows[places[1] + 1]
    assert first[1] == f"{pull.sections[0].tension_out.value:,.5g} lbf"
    assert first[3] == f"{pull.reversed.sections[-1].tension_out.value:,.5g} lbf"
    assert first[3] == f"{pull.reversed.tension.value:,.5g} lbf"  # the last section of that way is the first of the run


def test_the_owners_engineer_does_not_get_prices() -> None:
    sheet = page_of("sheet", changed(rates=[{"item": "concrete", "unit_price": 165.4321}]))
    assert "165.4321" not in sheet.text
    assert ["rates", "sent, and not shown here"] in sheet.rows()
    assert "165.4321" in page_of("takeoff", changed(rates=[{"item": "concrete", "unit_price": 165.4321}])).text


def test_the_takeoff_page_has_every_line_of_the_answer() -> None:
    lines = answered(EXAMPLE).answer.result.takeoff.lines
    rows = [row for row in page_of("takeoff").rows() if len(row) == 12][1:]
    assert [row[0] for row in rows] == [str(line.line) for line in lines]
    assert [row[1] for row in rows] == [line.description for line in lines]


def test_order_and_exact_quantity_of_a_line_share_the_unit() -> None:
    for line in answered(EXAMPLE).answer.result.takeoff.lines:
        if hasattr(line.order_quantity, "unit"):
            assert line.order_quantity.unit == line.exact_quantity.unit


def test_a_crew_reads_where_how_deep_and_what_to_set_and_call_for() -> None:
    rows = page_of("crew").rows()
    (dug,) = [row for row in rows if row[0] == "under the road" and len(row) == 7]
    assert dug[1:3] == ["0 ft to 120 ft", "encased"]
    assert dug[5] == "2 ft 9 in"  # 30 in of earth and 3 in of concrete over the ducts, derived
    (set_,) = [row for row in rows if row[0] == "under the road" and len(row) == 5]
    assert set_[1] == "25, the first at station 0 ft, then every 5 ft"
    assert set_[2].startswith("2 at each station")
    assert set_[3] == "1 ft"
    order = answered(EXAMPLE).answer.result.stretches[0].encasement.order_volume.value
    assert set_[4] == f"{order:g} yd³, 1 load"


def test_a_crew_reads_how_far_a_piston_is_opened_in_steps_of_ten_degrees() -> None:
    rows = page_of("crew").rows()
    place = next(index for index, row in enumerate(rows) if row[0] == "Conduit at")
    assert rows[place][1:] == [f"{degrees} °F" for degrees in range(0, 131, 10)]  # to 100 degF and 30 of sun
    assert rows[place + 1][1] == "6 in"  # fully open at the lowest
    assert rows[place + 1][-1] == "0 in"


def on_a_wall() -> dict[str, Any]:
    seen = {"kind": "range", "lowest": quantity(-7, "degF"), "highest": quantity(103, "degF"), "direct_sun": False}
    wall = {"setting": {"kind": "above_ground"}, "length": quantity(220, "ft")}
    seen["installation"] = quantity(60, "degF")
    return run(wall, site={"temperatures": seen})


def test_a_crew_sets_a_piston_from_the_lowest_to_the_highest_of_the_site_each_once() -> None:
    request = on_a_wall()
    rows = page_of("crew", request).rows()
    [row] = [row for row in rows if row[0] == "Conduit at"]
    degrees = [-7, 0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 103]
    assert row[1:] == [f"{at} °F" for at in degrees]
    [told] = answered(request).answer.result.stretches[0].expansion.runs
    assert [one.temperature.value for one in told.piston_openings] == degrees


def test_the_fittings_over_joints_of_a_structure_are_placed_on_page_sheet_and_drawing() -> None:
    crew = page_of("crew", BRIDGE)
    said = " ".join(crew.texts("p"))
    assert "an expansion fitting at 0 ft (moves 1 in; 8 in travel), 150 ft (moves 2 in; 8 in travel)" in said
    [row] = [row for row in crew.rows() if row[0] == "Structure at"]
    assert (row[1], row[-1]) == ("-20 °F", "100 °F")
    sheet = page_of("sheet", BRIDGE)
    assert ["150 ft", "2 in", "8 in"] in [list(row) for row in sheet.rows()]
    drawn = " ".join(sheet.texts("text")).replace("\N{NO-BREAK SPACE}", " ")
    assert "Over joints of the structure every duct has a fitting more: 2, at 0 ft, 150 ft from the start." in drawn


def test_a_crew_that_digs_nothing_has_no_table_of_digging() -> None:
    assert "Dig" not in page_of("crew", on_a_wall()).texts("h2")
    assert "Dig" in page_of("crew").texts("h2")


def test_a_crew_reads_from_where_to_pull_and_when_to_stop_never_late() -> None:
    pull = answered(EXAMPLE).answer.result.circuits[0].pulls[1]
    (row,) = [
        row for row in page_of("crew").rows() if row[0].startswith("SP-1") and row[1].startswith("shore-power cabinet ")
    ]
    assert row[0] == "SP-1 in 1-1; SP-2 in 1-2"
    stop = float(row[3].split(" lbf")[0].replace(",", ""))
    assert stop <= pull.stop_tension.value < stop * 1.01
    assert stop == pytest.approx(pull.stop_tension.value, rel=1e-4)  # what is expected lies too close to round it down
    assert row[4].startswith("up to "), "at the friction it is pulled with it needs no brake"
    brake = float(row[4].removeprefix("up to ").removesuffix(" lbf"))
    assert brake >= pull.pull.reversed.braking_case.brake_tension.value


def test_a_crew_reads_from_where_on_its_stop_rests_on_the_friction_assumed() -> None:
    # 600 lbf behind an elbow of 2 ft and 300 lbf/ft, those without friction at the end too; 0.35 x 5 lb/ft x 1,000 ft
    bent = {"setting": buried(), "sections": [level_bend(90, 2), straight(1000)]}
    cables = single(1.5, 5, "750 kcmil", 1)
    circuit = {"name": "F", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": cables}
    practice = {"friction_coefficient": 0.35, "incoming_tension": quantity(100, "lbf")}
    request = run(bent, circuits=[circuit], pulling=practice)
    [row] = [row for row in page_of("crew", request).rows() if row[0] == "F in 1-1"]
    assert row[3] == "2,350 lbf; see below", "a long text would take the row from the other columns"
    assert (
        "F from A to B: above 600 lbf go slowly, stop if it rises faster than expected: a bend may be over its "
        "limit unseen."
    ) in page_of("crew", request).texts("p")
    assert float(row[2].removesuffix(" lbf").replace(",", "")) < 2_350
    [told] = [row for row in page_of("sheet", request).rows() if row[0] == "Stop tension"]
    assert told[1:] == ["2,350 lbf", "at the pulling end: at the friction assumed; safe at any friction to 600 lbf"]


@pytest.mark.parametrize(("brake", "top", "held_by"), [(100, "B", "rope"), (5_000, "B", "reel brake")])
def test_a_crew_reads_where_a_cable_on_a_slope_is_made_fast(brake: float, top: str, held_by: str) -> None:
    # derived: one cable of 5 lb/ft, 500 ft up 30 degrees to B: 2,500 lb x (sin 30 deg - 0.15 cos 30 deg) = 925.2 lbf
    slope = {"setting": buried(), "sections": [straight(500, 30)]}
    cables = single(1.5, 5, "500 kcmil", 1)
    circuit = {"name": "F", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": cables}
    practice = {"incoming_tension": quantity(0, "lbf"), "brake_limit": quantity(brake, "lbf")}
    said = page_of("crew", run(slope, circuits=[circuit], pulling=practice)).texts("li")
    braked = ["Brake only as much as keeps the cable taut."] if held_by == "reel brake" else []
    assert said[: len(braked)] == braked
    assert said[len(braked)] == (
        f"F in 1-1: the cable slides down from {top} with up to 926 lbf when it is let go: make it fast at {top} "
        f"before the {held_by} is released; nobody below it."
    )


def test_a_crew_is_told_where_nobody_knows_whether_its_cable_needs_supports() -> None:
    shaft = {"setting": buried(), "sections": [straight(224, 90)]}
    unknown = {"kind": "multiconductor", "diameter": quantity(2, "in"), "mass_per_length": quantity(5, "lb/ft")}
    circuit = {"name": "F", "ducts": ["1-1"], "cables": [{"count": 1, "cable": unknown}]}
    practice = {"brake_limit": quantity(5_000, "lbf"), "allowable_tension": quantity(3_000, "lbf")}
    request = run(shaft, circuits=[circuit], pulling=practice)
    said = "F in 1-1: cable supports between A and B are not known: ask before you pull."
    assert said in page_of("crew", request).texts("li")
    known = run(shaft, circuits=[circuit | {"cables": single(2, 5, "500 kcmil", 1)}], pulling=practice)
    assert not any("are not known" in text for text in page_of("crew", known).texts("li"))


def test_a_crew_sets_a_fitting_on_a_moving_structure_in_the_shade() -> None:
    for sun, words in ((True, ", in the shade, with the structure as warm:"), (False, ":")):
        site = {"temperatures": BRIDGE["site"]["temperatures"] | {"direct_sun": sun}}
        told = " ".join(page_of("crew", BRIDGE | {"site": site}).texts("p"))
        assert f"Set the piston by the conduit's own temperature{words}" in told


def test_a_crew_is_told_that_groundwater_stands_in_its_trench() -> None:
    wet = changed(site=EXAMPLE["site"] | {"groundwater_depth": quantity(1, "ft")})
    assert any("Groundwater stands above the trench floor" in text for text in page_of("crew", wet).texts("li"))
    assert not any("Groundwater" in text for text in page_of("crew").texts("li"))


def test_a_crew_is_told_not_to_pull_what_breaks_a_limit() -> None:
    request = heavy()
    answer: Answer = answered(request).answer
    assert answer.verdict is Verdict.VIOLATES
    page = page_of("crew", request)
    assert "Do not build it so. Ask the office about:" in page.texts("p")
    assert any("over a limit: do not pull it so" in cell for row in page.rows() for cell in row)
    assert "Do not build it so" not in page_of("crew").text


def test_a_crew_gets_a_line_of_caution_for_digging_setting_and_pulling_as_the_run_has_them() -> None:
    page = page_of("crew")
    braked, made_fast, digging, setting, pulling = page.texts("li")
    assert braked == "Brake only as much as keeps the cable taut."
    assert made_fast.startswith("SP-1 in 1-1; SP-2 in 1-2: the cable slides down from shore-power cabinet with up to ")
    assert "before the air is tested: ventilate, permit entry." in digging
    assert "float in fresh concrete" in setting
    assert "Nobody in line with a rope" in pulling
    small = changed(start={"kind": "equipment"}, circuits=[])
    small["stretches"] = [{"setting": EXAMPLE["stretches"][1]["setting"], "length": {"value": 40, "unit": "ft"}}]
    said = page_of("crew", small).texts("li")
    assert said[0] == "Locate utilities before digging; nobody enters an unprotected trench."
    assert said[1:] == ["Cement vapor is flammable and harmful: ventilate, no flame."]


def test_a_crew_reads_how_much_cable_to_leave() -> None:
    rows = page_of("crew").rows()
    (power,) = [row for row in rows if row[0] == "SP-1 in 1-1; SP-2 in 1-2" and row[1].startswith("V-1 ")]
    assert power[1] == "V-1 (leave 20 ft) to HH-2 (leave 10 ft)"
    assert power[6] == "3 x 150 ft; 1 x 150 ft"  # 120 ft and 30, derived
    unsaid = copy.deepcopy(EXAMPLE)
    del unsaid["start"]["cable_allowance"]
    rows = page_of("crew", unsaid).rows()
    (power,) = [row for row in rows if row[0] == "SP-1 in 1-1; SP-2 in 1-2" and row[1].startswith("V-1 ")]
    assert re.fullmatch(r"V-1 to HH-2 \(leave 10 ft\); leave \d+ ft, both ends together", power[1])


def test_metric_pages_speak_metric() -> None:
    for name in ("takeoff", "crew"):
        text = page_of(name, EXAMPLE, Chosen(METRIC, working=True)).text
        assert not re.search(r"\d (lbf|ft|yd³)\b", text)
        assert re.search(r"\d m\b", text)


@pytest.mark.parametrize("text", HOSTILE)
def test_names_of_a_run_stay_text_on_every_page(text: str) -> None:
    request = changed(name=text, note=text)
    request["stretches"][0]["name"] = text
    request["stretches"][0]["pull_point"]["name"] = f"{text} 2"
    request["circuits"][0]["name"] = f"{text} 3"
    request["circuits"][1]["same_as"] = f"{text} 3"
    for name in PAGES:
        page = page_of(name, request)
        assert text in page.text
        assert text in page.texts("title")[0]


@pytest.mark.parametrize(
    ("sections", "known", "asked"),
    [
        ([straight(300, 0)], False, "not known: ask the cable's maker what it bears"),
        ([straight(100, 0), straight(100, 20)], True, "not known: a bend is left out, ask for its radius"),
    ],
)
def test_a_crew_reads_no_tension_to_stop_at_where_nobody_knows_one(
    sections: list[dict[str, Any]], known: bool, asked: str
) -> None:
    cables = single(1.5, 5, "750 kcmil", 1)
    if not known:
        del cables[0]["cable"]["conductor"]
    circuit = {"name": "F", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": cables}
    request = run({"setting": buried(), "sections": sections}, circuits=[circuit])
    crew, sheet = page_of("crew", request), page_of("sheet", request)
    assert asked in crew.text
    assert "STOP at" in crew.text
    assert asked.removeprefix("not known: ") in sheet.text
    assert "whatever the friction" not in sheet.text


def on_a_shaft(**practice: Any) -> dict[str, Any]:
    """Give three conductors of 500 kcmil copper on their way up 220 ft, with an elbow at either end."""
    up = [straight(20), upright_bend(90, 3), straight(220), upright_bend(0, 3), straight(15)]
    shaft = {"name": "shaft", "setting": {"kind": "above_ground", "uses": ["within_building"]}, "sections": up}
    circuit = {"name": "R", "ducts": ["1-1"], "voltage": quantity(480, "V"), "cables": single(0.9, 1.7, "500 kcmil")}
    pulling = {"friction_coefficient": 0.35, "brake_limit": quantity(1_500, "lbf"), **practice}
    site = {"temperatures": {"kind": "difference", "difference": quantity(20, "delta_degF")}}
    return run(
        shaft, circuits=[circuit], pulling=pulling, site=site, bank={"conduit": listed("4", "rmc"), "tiers": [1]}
    )


def test_a_crew_is_told_how_many_cable_supports_a_shaft_takes_and_no_page_says_bare_that_it_complies() -> None:
    # NFPA 70, Table 300.19(A): 50 ft for 500 kcmil copper, so at the top, 50, 100, 150 and 200 ft below it
    request = on_a_shaft()
    crew, sheet, takeoff = (page_of(name, request) for name in ("crew", "sheet", "takeoff"))
    assert "5 cable supports in each duct over the rise of 224 ft 3 in, section 2 of shaft to section 4" in crew.text
    assert "at its top, and below it at most 50 ft apart, in boxes" in crew.text
    for page in (crew, sheet):
        assert "Complies with every limit it was held against, with the cable supports it asks for." in page.text
    [line] = [one for one in answered(request).answer.result.takeoff.lines if one.item == "cable_support"]
    assert (line.exact_quantity.value, line.order_quantity.value, line.group, line.size) == (5, 5, "cable", "4")
    assert line.basis.startswith("shaft: 1 duct x 5, at the top and every 50 ft below it, there in boxes that are not")
    assert "over a rise of 224 ft 3 in, R, A to B" in line.basis
    assert "Cable support, 4 in, rmc" in takeoff.text


def test_a_crew_reads_the_range_of_its_brake_and_that_more_would_break_a_limit() -> None:
    request = on_a_shaft()
    answer = answered(request).answer
    [pull] = answer.result.circuits[0].pulls
    way = pull.pull.reversed
    least, most = way.brake_tension.value, way.braking_case.brake_tension.value
    assert (pull.feed_from, least < most) == ("B", True)
    [needed] = [one for one in answer.findings if one.code == "brake_needed"]
    assert needed.actual.value == pytest.approx(most)
    crew = page_of("crew", request).text
    assert re.findall(r"[\d,]+ lbf to [\d,]+ lbf", crew) == [f"{math.ceil(least)} lbf to {math.ceil(most)} lbf"]
    assert "Brake only as much as keeps the cable taut." in crew
    [toward] = [row for row in page_of("sheet", request).rows() if row[0] == "Brake toward the start"]
    assert toward[1] == f"{least:,.5g} lbf to {most:,.5g} lbf"
    tight = on_a_shaft(allowable_sidewall_pressure=quantity((least + most) / 2 / 3, "lbf/ft"))
    assert "brake_no_more_than_needed" in {one.code for one in answered(tight).answer.findings}
    told = f"keeps the cable taut. R from B: held back with {math.ceil(most)} lbf while friction is high, it is pulled"
    assert told in page_of("crew", tight).text


def test_a_crew_digs_by_station_and_elevation_where_the_run_has_a_profile() -> None:
    # 14.2 - 11.0 = 3.2 ft over the concrete, which is 4 x 5.563 + 3 + 3 + 4 + 4 + 4 = 40.252 in high: 6.554 ft deep;
    # of 4 in below the ducts the floor lies at 14.2 - 6.554 = 7.646, the ducts at 7.979 (derived)
    page = page_of("crew", MANHOLES)
    rows = [row for row in page.rows() if row[0] in ("0+00", "1+60", "4+19.4")]
    assert rows[0] == ["0+00", "6 ft 6-5/8 in", "3 ft 6-3/8 in", "14.20 ft", "7.98 ft", "7.65 ft"]
    assert [row[1] for row in rows] == ["6 ft 6-5/8 in", "6 ft 3 in", "6 ft 4-1/4 in"]
    assert "deepest" in page.text
    assert "11.0 ft" in page.text
    level = copy.deepcopy(MANHOLES)
    del level["profile"]
    level["stretches"][0]["setting"]["cover"] = quantity(30, "in")
    assert "Floor of the trench" not in page_of("crew", level).text
    assert "deepest" not in page_of("crew", level).text


def test_crew_and_sheet_name_the_steel_of_a_pour() -> None:
    crew, sheet = page_of("crew", MANHOLES), page_of("sheet", MANHOLES)
    assert "8 no. 4 bars, lapped 20 in; 421 no. 3 ties, 1 ft apart, 2 in of concrete outside them" in crew.text
    [row] = [row for row in sheet.rows() if row[1:3] == ["8", "no. 4"]]
    assert row[5:9] == ["421", "no. 3", "1 ft", "2 in"]
    assert "Reinforcing bar, no. 4" in page_of("takeoff", MANHOLES).text
    assert "Steel" not in page_of("crew").text


def bored() -> dict[str, Any]:
    """Give a bore of 75 ft down 12 degrees and 75 ft up 10, in 22 in, between two trenches."""
    turns = [straight(75), upright_bend(0, 300), straight(115), upright_bend(10, 300), straight(75)]
    down, up = upright_bend(-12, 25, made="laid_on_curve"), upright_bend(0, 25, made="laid_on_curve")
    bore = {"kind": "bored", "bore_diameter": quantity(22, "in"), "cover": quantity(15, "ft")}
    ends = [{"setting": buried(36), "sections": one} for one in ([straight(60), down], [up, straight(140)])]
    request = run(bank={"conduit": listed("6", "hdpe_schedule_40"), "tiers": [3]})
    return request | {"stretches": [ends[0], {"name": "bore", "setting": bore, "sections": turns}, ends[1]]}


def test_a_driller_reads_the_length_along_the_bore_its_size_and_the_angles_of_its_ends() -> None:
    # 75 + 300 x 12 deg + 115 + 300 x 10 deg + 75 = 265 + 300 x 22 deg in radians = 380.2 ft (derived)
    page = page_of("crew", bored())
    [row] = [row for row in page.rows() if row[0] == "bore"]
    assert row[2:] == ["380 ft 2 in", "22 in", "12° down", "10° up", "15 ft", "not given: ask"]
    assert "Bore" not in page_of("crew").texts("h2")


def test_the_ducts_of_a_rack_are_drawn_with_the_names_they_have_there() -> None:
    request = copy.deepcopy(BRIDGE)
    crew, sheet = page_of("crew", request), page_of("sheet", request)
    for page in (crew, sheet):
        assert {"bridge: section", "3-2", "Not to scale."} <= set(page.texts("text"))
    assert "bridge: section" not in page_of("crew", on_a_shaft()).text, "one duct is no rack"


def test_a_measured_conduit_and_its_spacers_say_which_diameter_they_are_ordered_by() -> None:
    request = copy.deepcopy(MANHOLES)
    del request["bank"]["conduit"]["trade_size"]
    lines = answered(request).answer.result.takeoff.lines
    words = {line.item: line.description for line in lines}
    assert words["conduit"] == "Conduit, 5.047 in inside, pvc eb 35"
    assert words["base_spacer"] == "Base spacer, 5.563 in outside"
    assert words["tie_bar"] == "Tie bar, no. 3"
    assert any("US gal, F-21" in line.basis for line in lines if line.item == "lubricant")
    rows = page_of("sheet", request).rows()
    assert "measured PVC eb 35" in {row[3] for row in rows if row[0] == "F-21"}
    assert "measured PVC eb 35" in {row[1] for row in rows if row[0] == "stretch 1"}


def test_a_crew_digs_deeper_plumb_where_the_ducts_climb() -> None:
    # ground and concrete climb 3 in 4, 3.2 ft apart plumb: 40.252 in of concrete measure 40.252 / 0.8 = 50.315 plumb,
    # so that the trench is 3.2 x 12 + 50.315 = 88.715 in = 7.393 ft deep; the 4 in over and below the ducts are 5:
    # ducts at 14.2 - 7.393 + 0.417 = 7.224 (derived)
    steep = copy.deepcopy(MANHOLES)
    ends = [steep["profile"]["points"][0], steep["profile"]["points"][-1]]
    far = ends[1]["station"]["value"]
    for point, climbed in zip(ends, (0, 0.75 * far), strict=True):
        point.update(ground=quantity(14.2 + climbed, "ft"), line=quantity(11 + climbed, "ft"))
    steep["profile"]["points"] = ends
    [row] = [row for row in page_of("crew", steep).rows() if row[0] == "0+00"]
    assert row == ["0+00", "7 ft 4-3/4 in", "3 ft 7-3/8 in", "14.20 ft", "7.22 ft", "6.81 ft"]
