"""A takeoff as a workbook: rates may be filled in or changed there, prices, hours and totals follow by formula.

Written with XlsxWriter, which has no dependencies, only writes, and puts a value beside each formula, so that a reader
that does not calculate shows the figures too. It is imported when a workbook is first asked for.
"""

from __future__ import annotations

import io
from datetime import UTC, datetime
from typing import TYPE_CHECKING, Any, Final

from msgspec import UNSET

from ductrun.drawings.markup import legible
from ductrun.drawings.takeoff_rows import COLUMNS, Cell, row_of
from ductrun.subjects.parts.takeoff import Takeoff, TakeoffGroup, TakeoffLine

if TYPE_CHECKING:
    from xlsxwriter import Workbook
    from xlsxwriter.worksheet import Worksheet

_MADE: Final = datetime(2000, 1, 1, tzinfo=UTC).replace(tzinfo=None)  # the same takeoff, the same bytes
_LETTER_OF: Final = {column: chr(ord("A") + place) for place, column in enumerate(COLUMNS)}
_WIDTHS: Final = {"description": 44, "stretches": 34, "basis": 44, "pointer": 30, "package": 20}
_MOST_WIDE: Final = 24
_MONEY: Final = {"unit_price", "price"}
_FORMATS: Final = {
    "header": {"bold": True, "bg_color": "#E4E8EC", "bottom": 1, "text_wrap": True, "valign": "vcenter"},
    "text": {"text_wrap": True, "valign": "top"},
    "whole": {"num_format": "#,##0", "valign": "top"},
    "figure": {"num_format": "#,##0.00", "valign": "top"},
    "fine": {"num_format": "#,##0.0000", "valign": "top"},
    "total": {"num_format": "#,##0.00", "bold": True, "top": 1},
    "total_text": {"bold": True, "top": 1},
    "total_whole": {"num_format": "#,##0", "bold": True, "top": 1},
}
_UNPRICED: Final = "Lines without a price"
_HOURLESS: Final = "Lines without labor hours"


def workbook_of(takeoff: Takeoff) -> bytes:
    """Give a workbook of two sheets: the lines under a frozen header, and the totals by group and in all."""
    from xlsxwriter import Workbook  # noqa: PLC0415  (no start waits for it)

    written = io.BytesIO()
    with Workbook(written, {"in_memory": True, "default_date_format": "yyyy-mm-dd"}) as book:
        book.set_properties({"title": "Takeoff", "created": _MADE})
        formats = {name: book.add_format(form) for name, form in _FORMATS.items()}
        _write_lines(book, takeoff.lines, formats)
        _write_totals(book, takeoff.lines, formats)
    return written.getvalue()


def _set_up(sheet: Worksheet, title: str) -> None:
    """Set a sheet up for paper: across, as wide as the page, the header on each, numbered."""
    sheet.set_landscape()
    sheet.set_paper(1)
    sheet.set_margins(left=0.4, right=0.4, top=0.7, bottom=0.7)
    sheet.fit_to_pages(1, 0)
    sheet.repeat_rows(0)
    sheet.set_header(f"&L{title}")
    sheet.set_footer("&RPage &P of &N")
    sheet.freeze_panes(1, 0)


def _write_lines(book: Workbook, lines: list[TakeoffLine], formats: dict[str, Any]) -> None:
    sheet = book.add_worksheet("Takeoff")
    rows = [row_of(line) for line in lines]
    for place, column in enumerate(COLUMNS):
        sheet.write_string(0, place, _titled(column), formats["header"])
        sheet.set_column(place, place, _width_of(column, rows))
    for number, row in enumerate(rows, start=1):
        for place in range(len(COLUMNS)):
            _write_cell(sheet, number, place, row, formats)
    sheet.autofilter(0, 0, max(len(rows), 1), len(COLUMNS) - 1)
    _set_up(sheet, "Takeoff")


def _titled(column: str) -> str:
    return column.replace("_", " ").capitalize()


def _width_of(column: str, rows: list[dict[str, Cell]]) -> float:
    """Give the width of a column in letters: of what stands in it, up to where texts are wrapped."""
    longest = max([len(word) for word in column.split("_")])
    for row in rows:
        cell = row[column]
        longest = max(longest, len(cell) if isinstance(cell, str) else 0 if cell is None else len(f"{cell:,.4f}"))
    return min(longest + 3, _WIDTHS.get(column, _MOST_WIDE))


def _write_cell(sheet: Worksheet, number: int, place: int, row: dict[str, Cell], formats: dict[str, Any]) -> None:
    column = COLUMNS[place]
    formula = _formula(column, number + 1, row)
    cell = row[column]
    if formula:
        value = "" if cell is None else cell
        sheet.write_formula(number, place, formula, formats["figure"], value)
    elif isinstance(cell, str):
        sheet.write_string(number, place, legible(cell), formats["text"])
    elif cell is None:
        sheet.write_blank(number, place, None, formats["fine" if column in _MONEY else "figure"])
    else:
        sheet.write_number(number, place, cell, formats[_format_of(cell)])


def _format_of(value: float) -> str:
    """Give a figure the decimals it has, two or four; whole ones none."""
    if value == round(value):
        return "whole"
    return "figure" if value == round(value, 2) or abs(value) >= 1 else "fine"


def _formula(column: str, row: int, cells: dict[str, Cell]) -> str:
    """Give the formula of a price or of hours, which stays empty until there is a rate; others have none."""
    at = {name: f"{letter}{row}" for name, letter in _LETTER_OF.items()}
    if column == "price":
        rate, paid = at["unit_price"], at["exact_quantity" if cells["order_quantity"] is None else "order_quantity"]
        return f'=IF({rate}="","",ROUND({paid}*{rate},2))'
    if column == "labor_hours":
        rate = at["unit_labor_hours"]
        return f'=IF({rate}="","",{at["exact_quantity"]}*{rate})'
    return ""


def _write_totals(book: Workbook, lines: list[TakeoffLine], formats: dict[str, Any]) -> None:
    """Write what prices and hours come to by group and in all, and of how many lines they are not known."""
    sheet = book.add_worksheet("Totals")
    for place, title in enumerate(("Group", "Price", "Labor hours", _UNPRICED, _HOURLESS)):
        sheet.write_string(0, place, title, formats["header"])
    sheet.set_column(0, 0, 18)
    sheet.set_column(1, 4, 18)
    groups = [group for group in TakeoffGroup if any(line.group is group for line in lines)]
    for row, group in enumerate(groups, start=1):
        sheet.write_string(row, 0, str(group), formats["text"])
        of_group = [line for line in lines if line.group is group]
        for place, (formula, value) in enumerate(_group_totals(row + 1, len(lines) + 1, of_group), start=1):
            sheet.write_formula(row, place, formula, formats["figure" if place < 3 else "whole"], value)
    last = len(groups) + 1
    sheet.write_string(last, 0, "All", formats["total_text"])
    for place, (value, form) in enumerate(zip(_sums(lines), ("total",) * 2 + ("total_whole",) * 2, strict=True), 1):
        letter = chr(ord("A") + place)
        formula = f"=SUM({letter}2:{letter}{last})" if groups else "=0"
        sheet.write_formula(last, place, formula, formats[form], value)
    gaps = f'=IF(D{last + 1}=0,"Every line has a price.","The price has gaps: see the lines without.")'
    complete = _sums(lines)[2] == 0
    told = "Every line has a price." if complete else "The price has gaps: see the lines without."
    sheet.write_formula(last + 1, 0, gaps, None, told)
    _set_up(sheet, "Totals of the takeoff")


def _group_totals(row: int, last: int, lines: list[TakeoffLine]) -> list[tuple[str, float]]:
    """Give the formulas of a group, each with its value."""
    column = {name: f"Takeoff!${letter}$2:${letter}${last}" for name, letter in _LETTER_OF.items()}
    group = f"{column['group']},$A{row}"
    formulas = (
        f"=SUMIFS({column['price']},{group})",
        f"=SUMIFS({column['labor_hours']},{group})",
        f'=COUNTIFS({group},{column["unit_price"]},"")',
        f'=COUNTIFS({group},{column["unit_labor_hours"]},"")',
    )
    return list(zip(formulas, _sums(lines), strict=True))


def _sums(lines: list[TakeoffLine]) -> tuple[float, float, float, float]:
    """Give price, hours, how many lines have no price, and how many no hours."""
    return (
        round(sum([0.0 if line.price is UNSET else line.price for line in lines]), 2),
        sum([0.0 if line.labor_hours is UNSET else line.labor_hours for line in lines]),
        sum([line.unit_price is UNSET for line in lines]),
        sum([line.unit_labor_hours is UNSET for line in lines]),
    )
