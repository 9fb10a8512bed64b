"""Whether units/factors.csv and spellings.csv hold what pint says of every unit; with --write, make it so.

Exits 1 and names the command that mends it if a figure has drifted, in its last digit too. A unit that is declared
needs nothing else: pint is asked for its factor here.
"""

from __future__ import annotations

import csv
import io
import sys
from decimal import Decimal

import pint
from ductrun.units import UNIT_CODES, Temperature, UnitCode
from ductrun.units.factors import FACTORS
from ductrun.units.spellings import UNIT_SPELLINGS

from tools import unit_spellings


def written() -> str:
    """Write the file as pint gives it: worked out in decimals, so that a foot is 0.3048 m to the last digit."""
    registry: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)
    text = io.StringIO()
    rows = csv.writer(text, lineterminator="\n")
    rows.writerow(["dimension", "unit", "factor", "zero"])
    for dimension, codes in UNIT_CODES.items():
        for code in codes:
            zero = _zero(code, registry) if dimension is Temperature else 0.0
            rows.writerow([dimension.__name__, code.text, repr(_factor(code, registry)), repr(zero)])
    return text.getvalue()


def _factor(code: UnitCode, registry: pint.UnitRegistry[Decimal]) -> float:
    steps = {"degree_Celsius": "delta_degree_Celsius", "degree_Fahrenheit": "delta_degree_Fahrenheit"}
    unit = registry.parse_expression(steps.get(code.pint, code.pint))
    return float(unit.to(type(code).si).magnitude)


def _zero(code: UnitCode, registry: pint.UnitRegistry[Decimal]) -> float:
    return float(registry.Quantity(Decimal(0), code.pint).to("kelvin").magnitude)


def main() -> int:
    files = {FACTORS: written(), UNIT_SPELLINGS: unit_spellings.written()}
    if "--write" in sys.argv:
        for path, fresh in files.items():
            path.write_text(fresh, encoding="utf-8")
        return 0
    drifted = [path.name for path, fresh in files.items() if path.read_text(encoding="utf-8") != fresh]
    if drifted:
        sys.stderr.write(f"{' and '.join(drifted)} of units has drifted from pint: make factors\n")
    return 1 if drifted else 0


if __name__ == "__main__":
    sys.exit(main())
