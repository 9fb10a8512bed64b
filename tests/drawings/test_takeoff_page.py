"""The takeoff as a page: every line, its header, what the rates come to."""

from __future__ import annotations

import pytest
from ductrun.drawings.takeoff_page import takeoff_page
from ductrun.kit.answers import Basis
from ductrun.subjects.parts.takeoff import Takeoff

from tests.drawings.pages import Read, assert_harmless
from tests.drawings.takeoffs import BELLS, EXCAVATION, HOSTILE, SMALL, long_takeoff, named

BASIS = Basis("1.0.0", "abc", ())


def page_of(takeoff: Takeoff, name: str = "Shore power") -> Read:
    written = takeoff_page(takeoff, {"name": name}, BASIS, b'{"name": "Shore power"}')
    return assert_harmless(written.written, written.policy)


def test_the_small_takeoff_reads_as_it_was_worked_by_hand() -> None:
    rows = page_of(SMALL).rows()
    plain = ["Line", "Item", "Exact", "Waste", "Order", "Package", "By stretch", "Worked out"]
    assert rows[0] == [*plain, "Unit price", "Price", "Hours each", "Hours"]
    assert rows[1] == ["Site work"]
    assert rows[2][2] == "66.667 yd³, bank"
    assert rows[3] == ["Duct"]
    assert rows[4] == [
        "2",
        "PVC Schedule 40, trade size 4, sticks of 10 ft",
        "1,899 ft",
        "3 %",
        "1,960 ft",
        "196 x stick of 10 ft",
        "road: 360; field: 1,539",
        "3 ducts x (120 ft + 513 ft)",
        "4.215",
        "8,261.40",
        "0.05",
        "94.95",
    ]


def test_totals_tell_their_gaps() -> None:
    text = page_of(SMALL).text
    assert "Price of the lines that have one: 8,261.40." in text
    assert "The price has gaps: no price for line 3." in text
    assert "Labor hours of the lines that have a rate: 102.95." in text


def test_without_rates_there_are_no_columns_for_them() -> None:
    page = page_of(Takeoff(lines=[EXCAVATION, BELLS]))
    assert len(page.rows()[0]) == 8
    assert "price" not in page.text.lower()


def test_a_long_takeoff_keeps_every_row_and_one_header_that_paper_repeats() -> None:
    page = page_of(long_takeoff(2000))
    assert [row[0] for row in page.rows() if len(row) == 12][1:] == [str(number) for number in range(1, 2001)]
    assert [one.name for one in page.elements].count("thead") == 1
    assert "thead{display:table-header-group}" in "".join(page.texts("style"))


@pytest.mark.parametrize("text", HOSTILE)
def test_a_text_of_the_caller_stays_text(text: str) -> None:
    page = page_of(Takeoff(lines=[named(text)]), name=text)
    row = page.rows()[2]
    assert text in row[1]
    assert row[7] == text
    assert row[6] == f"{text}: 100.5"
