"""A takeoff as comma-separated values, for a program or a spreadsheet."""

from __future__ import annotations

import csv
import io
from typing import Final

from ductrun.drawings.takeoff_rows import COLUMNS, Cell, as_given, rounded, row_of
from ductrun.subjects.parts.takeoff import Takeoff

_RATES: Final = {"unit_price", "unit_labor_hours"}
_FORMULA_STARTS: Final = tuple("=+-@\t\r\n\uff1d\uff0b\uff0d\uff20")  # full-width forms are read as formulas too


def csv_of(takeoff: Takeoff) -> bytes:
    r"""Give the lines by RFC 4180: a header, CRLF, quotes where a text needs them; UTF-8 without a byte order mark.

    Figures stand bare, with a point and without separators: computed ones rounded for reading, rates as they were
    given. A spreadsheet takes a text that begins with `=`, `+`, `-`, `@`, a tab or a line break (or the full-width form
    of one) for a formula. Such a text is kept as text by an apostrophe before it: `=SUM(A1)` stands as `'=SUM(A1)`.
    """
    written = io.StringIO(newline="")
    writer = csv.writer(written, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for line in takeoff.lines:
        writer.writerow([_written(column, cell) for column, cell in row_of(line).items()])
    return written.getvalue().encode()


def _written(column: str, cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, str):
        return f"'{cell}" if cell.startswith(_FORMULA_STARTS) else cell
    return as_given(cell) if column in _RATES else rounded(cell)
