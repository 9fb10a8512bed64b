"""The pages of a whole run: what the sheet of a submittal holds, and what a crew works by."""

from __future__ import annotations

import copy
import json
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
from tests.subjects.duct_run.runs import BRIDGE, buried, level_bend, single, straight
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
    ducts = [row[2] for row in rows if len(row) == 12 and row[:2] == ["First", "1"]]
    assert ducts == ["PVC DB 60, trade size 4, 4.5 in outside", "5 in outside"]


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
    brake = float(row[4].removesuffix(" lbf"))
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
    assert said[0] == (
        f"F in 1-1: the cable slides down from {top} with up to 926 lbf when it is let go: make it fast at {top} "
        f"before the {held_by} is released; nobody below it."
    )


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
    made_fast, digging, setting, pulling = page.texts("li")
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
