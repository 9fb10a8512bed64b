"""The factors between units: pint's, from the file that pint wrote, so that no start of the service waits for pint.

`make factors` has pint write that file from the declarations, and `make check` holds every figure against pint. A
conversion is a multiplication by one factor, with an added constant for temperatures and an arc tangent for a grade in
percent; a client's text never reaches pint. SI is the meeting point.
"""

from __future__ import annotations

import csv
from collections.abc import Iterable
from pathlib import Path
from typing import Final, NamedTuple

from ductrun.units.codes import UnitCode


class Factor(NamedTuple):
    """The size of one unit in SI, and what is added: the zero of a temperature in kelvin, nothing for all others."""

    scale: float
    zero: float


FACTORS: Final = Path(__file__).with_name("factors.csv")


def read(lines: Iterable[str]) -> dict[tuple[str, str], Factor]:
    """Read factors by the name of the dimension and the unit code."""
    _, *rows = csv.reader(lines)
    return {(dimension, code): Factor(float(scale), float(zero)) for dimension, code, scale, zero in rows}


_KNOWN: Final = read(FACTORS.read_text(encoding="utf-8").splitlines())


def settle(dimension: str, codes: type[UnitCode], known: dict[tuple[str, str], Factor] = _KNOWN) -> None:
    """Set the factor and the counterpart of every unit of a dimension.

    A unit that pint has not been asked about yet stays without a factor: it cannot convert, only be declared.
    """
    for code in codes:
        code.counterpart = codes(code.other)
        if (dimension, code.text) in known:
            code.scale, code.zero = known[dimension, code.text]
