"""How else each unit is written, as pint's registry knows it: never taken, but it tells which unit was probably meant.

`make factors` has pint write the file; it is read when the first unit is refused.
"""

from __future__ import annotations

import csv
from functools import cache
from pathlib import Path
from typing import Final

UNIT_SPELLINGS: Final = Path(__file__).with_name("spellings.csv")


@cache
def ways_to_write() -> dict[str, list[str]]:
    """Give the ways to write each unit, by its code."""
    ways: dict[str, list[str]] = {}
    _, *rows = csv.reader(UNIT_SPELLINGS.read_text(encoding="utf-8").splitlines())
    for unit, spelling in rows:
        ways.setdefault(unit, []).append(spelling)
    return ways
