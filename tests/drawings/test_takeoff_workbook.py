"""The workbook of a takeoff, unzipped and read as the XML it is."""

from __future__ import annotations

import io
import zipfile
from typing import NamedTuple
from xml.etree import ElementTree

import pytest
from ductrun.drawings.takeoff_rows import COLUMNS
from ductrun.drawings.takeoff_workbook import workbook_of
from ductrun.subjects.parts.takeoff import Takeoff, TakeoffLine
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec import UNSET

from tests.drawings.takeoffs import HOSTILE, SMALL, lines, long_takeoff, named

MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"


class Cell(NamedTuple):
    text: str
    formula: str
    kind: str


class Book(NamedTuple):
    parts: dict[str, bytes]

    def xml(self, name: str) -> ElementTree.Element:
        return ElementTree.fromstring(self.parts[name])  # noqa: S314  (our own)

    def cells(self, sheet: int) -> dict[str, Cell]:
        """Give the cells of a sheet by their place: what they show, by which formula."""
        texts = ["".join(item.itertext()) for item in self.xml("xl/sharedStrings.xml")]
        found = {}
        for cell in self.xml(f"xl/worksheets/sheet{sheet}.xml").iter(f"{MAIN}c"):
            value, kind = cell.findtext(f"{MAIN}v", ""), cell.get("t", "n")
            text = texts[int(value)] if kind == "s" else value
            found[str(cell.get("r"))] = Cell(text, cell.findtext(f"{MAIN}f", ""), kind)
        return found


def read(takeoff: Takeoff) -> Book:
    with zipfile.ZipFile(io.BytesIO(workbook_of(takeoff))) as opened:
        return Book({name: opened.read(name) for name in opened.namelist()})


def at(column: str, row: int) -> str:
    return f"{chr(ord('A') + COLUMNS.index(column))}{row}"


def test_prices_and_hours_follow_by_formula_and_show_what_was_worked_by_hand() -> None:
    cells = read(SMALL).cells(1)
    assert cells["A1"].text == "Line"
    assert cells[at("description", 3)].text == "PVC Schedule 40, trade size 4, sticks of 10 ft"
    assert float(cells[at("exact_quantity", 2)].text) == 66.66666666666667
    price, hours = cells[at("price", 3)], cells[at("labor_hours", 3)]
    assert (price.formula, price.text) == ('IF(Q3="","",ROUND(I3*Q3,2))', "8261.4")
    assert (hours.formula, hours.text) == ('IF(S3="","",G3*S3)', "94.95")
    # work without an order is paid by what is done; without a rate a price waits for one
    assert (cells[at("price", 2)].formula, cells[at("price", 2)].text) == ('IF(Q2="","",ROUND(G2*Q2,2))', "")
    assert (cells[at("price", 4)].formula, cells[at("price", 4)].text) == ('IF(Q4="","",ROUND(I4*Q4,2))', "")


def test_totals_by_group_and_in_all_are_formulas_and_say_where_there_are_gaps() -> None:
    cells = read(SMALL).cells(2)
    assert [cells[place].text for place in ("A2", "A3", "A4")] == ["site_work", "duct", "All"]
    assert cells["B3"] == Cell("8261.4", "SUMIFS(Takeoff!$R$2:$R$4,Takeoff!$B$2:$B$4,$A3)", "n")
    assert cells["C4"] == Cell("102.95", "SUM(C2:C3)", "n")
    assert [cells[place].text for place in ("D2", "D3", "D4", "E4")] == ["1", "1", "2", "1"]
    assert cells["A5"].text == "The price has gaps: see the lines without."


def test_the_header_is_frozen_on_screen_and_repeated_on_paper_and_columns_have_their_width() -> None:
    book = read(SMALL)
    sheet = book.xml("xl/worksheets/sheet1.xml")
    pane = sheet.find(f".//{MAIN}pane")
    assert pane is not None
    assert (pane.get("ySplit"), pane.get("state")) == ("1", "frozen")
    defined = [name.text for name in book.xml("xl/workbook.xml").iter(f"{MAIN}definedName")]
    assert {"Takeoff!$1:$1", "Totals!$1:$1"} <= set(defined)
    setup = sheet.find(f"{MAIN}pageSetup")
    assert setup is not None
    assert (setup.get("orientation"), setup.get("fitToHeight")) == ("landscape", "0")
    widths = [
        float(str(column.get("width")))
        for column in sheet.iter(f"{MAIN}col")
        for _ in range(int(str(column.get("min"))), int(str(column.get("max"))) + 1)
    ]
    assert len(widths) == len(COLUMNS)
    assert all(4 < width < 60 for width in widths)
    assert widths[COLUMNS.index("description")] > widths[COLUMNS.index("line")]


@pytest.mark.parametrize("text", HOSTILE)
def test_a_text_is_a_text_and_no_formula(text: str) -> None:
    cell = read(Takeoff(lines=[named(text)])).cells(1)[at("description", 2)]
    assert cell.kind == "s"
    assert cell.formula == ""
    # what looks like an escape of the format has its own escape
    assert cell.text.replace("_x005F_", "_") == text


@settings(max_examples=40, deadline=None)
@given(st.lists(lines(), max_size=4))
def test_every_line_is_there_whatever_its_texts(given_lines: list[TakeoffLine]) -> None:
    cells = read(Takeoff(lines=given_lines)).cells(1)
    assert sum(place[0] == "A" for place in cells) == len(given_lines) + 1
    for row, line in enumerate(given_lines, start=2):
        shown = cells[at("description", row)]
        assert shown.kind == "s"
        assert len(shown.text.replace("_x005F_", "_")) >= len(line.description)
        written = float(cells[at("exact_quantity", row)].text)  # sixteen digits, one more than a spreadsheet keeps
        assert written == pytest.approx(line.exact_quantity.value, rel=1e-15)
        paid = "G" if line.order_quantity is UNSET else "I"
        assert f"ROUND({paid}{row}*" in cells[at("price", row)].formula


def test_the_same_takeoff_has_the_same_bytes() -> None:
    assert workbook_of(SMALL) == workbook_of(SMALL)
    assert b"2000-01-01T00:00:00Z" in read(SMALL).parts["docProps/core.xml"]


def test_two_thousand_lines_keep_every_row() -> None:
    cells = read(long_takeoff(2000)).cells(1)
    assert cells["A2001"].text == "2000"
    assert cells["A2"].text == "1"
