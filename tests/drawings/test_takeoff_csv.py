"""The list of a takeoff, read back with the standard library."""

from __future__ import annotations

import csv
import io

import pytest
from ductrun.drawings.takeoff_csv import csv_of
from ductrun.subjects.parts.takeoff import Takeoff, TakeoffLine
from hypothesis import given
from hypothesis import strategies as st
from msgspec import UNSET

from tests.drawings.takeoffs import HOSTILE, SMALL, lines, long_takeoff, named

HEADER = (
    "line,group,item,conduit_type,size,description,exact_quantity,waste_percent,order_quantity,unit,measure,package,"
    "package_count,stretches,basis,pointer,unit_price,price,unit_labor_hours,labor_hours"
)


def read(written: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(written.decode("utf-8"), newline=""), strict=True))


def test_the_small_takeoff_reads_as_it_was_worked_by_hand() -> None:
    assert csv_of(SMALL).decode().split("\r\n") == [
        HEADER,
        '1,site_work,excavation,,,"Excavation, in the bank",66.6667,,,yd3,bank,,,road: 66.6667,'
        "120 ft x 3 ft x 5 ft / 27,#/result/stretches/0/trench/excavation_volume,,,0.12,8",
        '2,duct,conduit,pvc_schedule_40,4,"PVC Schedule 40, trade size 4, sticks of 10 ft",1899,3,1960,ft,,'
        "stick of 10 ft,196,road: 360; field: 1539,3 ducts x (120 ft + 513 ft),"
        "#/result/stretches/0/joints/straight_length,4.215,8261.4,0.05,94.95",
        '3,duct,end_bell,pvc_schedule_40,4,"End bell, trade size 4",6,,6,each,,,,road: 3; field: 3,3 ducts x 2 ends,'
        "#/result/stretches/0/joints/end_bell_count,,,,",
        "",
    ]


def test_every_line_is_there() -> None:
    assert [row["line"] for row in read(csv_of(long_takeoff(2000)))] == [str(number) for number in range(1, 2001)]


@pytest.mark.parametrize("text", HOSTILE)
def test_a_text_is_never_a_formula_and_is_otherwise_as_given(text: str) -> None:
    (row,) = read(csv_of(Takeoff(lines=[named(text)])))
    for column in ("description", "basis", "package", "size"):
        whole = text if column in ("description", "basis", "package") else text[:40]
        assert row[column] == (f"'{whole}" if text[0] in "=+-@\uff1d" else whole)
        assert row[column][0] not in "=+-@\t\r"
    assert row["stretches"].removeprefix("'") == f"{text}: 100.5"


@given(st.lists(lines(), max_size=5))
def test_what_is_written_is_read_back(given_lines: list[TakeoffLine]) -> None:
    rows = read(csv_of(Takeoff(lines=given_lines)))
    assert len(rows) == len(given_lines)
    for row, line in zip(rows, given_lines, strict=True):
        assert row["description"].removeprefix("'") == line.description.removeprefix("'")
        assert row["basis"].removeprefix("'") == line.basis.removeprefix("'")
        assert row["item"] == line.item
        assert float(row["exact_quantity"]) == pytest.approx(line.exact_quantity.value, abs=5e-5, rel=1e-5)
        assert "e" not in row["exact_quantity"].lower()
        assert (row["unit_price"] == "") == (line.unit_price is UNSET)
        if line.unit_price is not UNSET:
            assert float(row["unit_price"]) == line.unit_price
        assert all(not cell or cell[0] not in "=+-@\t\r\n" for cell in row.values())
