"""The factors between units: pint's, from the file that pint wrote, so that no start of the service waits for pint.

`make factors` has pint write the last two columns of that file, and `make check` holds every figure against pint. A
conversion is a multiplication by one factor, with an added constant for temperatures and an arc tangent for a grade in
percent; a client's text never reaches pint. SI is the meeting point.
"""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Final, NamedTuple

from ductrun.units.codes import GradeUnit, TemperatureUnit
from ductrun.units.quantities import UNIT_CODES


class Definition(NamedTuple):
    """What a unit code means: pint's expression, the SI unit, the UCUM code, the system, its counterpart there.

    `factor` is the size of one unit in SI, `zero` the zero of a temperature in kelvin.
    """

    pint: str
    si: str
    ucum: str
    system: str
    counterpart: str
    factor: str
    zero: str


FACTORS: Final = Path(__file__).with_name("factors.csv")


def _read() -> dict[str, Definition]:
    with FACTORS.open(encoding="utf-8", newline="") as handle:
        _, *rows = csv.reader(handle)
    return {code: Definition(*definition) for code, *definition in rows}


def _apply(definitions: dict[str, Definition]) -> None:
    for codes in UNIT_CODES.values():
        by_text = {code.value: code for code in codes}
        for code in codes:
            definition = definitions[code.value]
            code.si, code.ucum, code.system = definition[1:4]
            code.counterpart = next(by_text[text] for text in definition.counterpart.split("|") if text in by_text)
            code.scale = float(definition.factor)
            if isinstance(code, TemperatureUnit):
                code.zero = float(definition.zero)
            elif code is GradeUnit.PERCENT:
                code.si = "radian (arc tangent)"


DEFINITIONS: Final = _read()
_apply(DEFINITIONS)
