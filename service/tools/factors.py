"""Whether units/factors.csv holds what pint says of every unit; with --write, make it so.

Exits 1 and names the command that mends it if a figure has drifted, in its last digit too. To add a unit, write its row
with 1 for the factor (and 0 for the zero of a temperature), then let pint fill it in.
"""

from __future__ import annotations

import csv
import io
import sys
from decimal import Decimal

import pint
from ductrun.units import UNIT_CODES, Temperature
from ductrun.units.factors import DEFINITIONS, FACTORS, Definition


def written() -> str:
    """Write the file as pint gives it: worked out in decimals, so that a foot is 0.3048 m to the last digit."""
    registry: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)
    text = io.StringIO()
    rows = csv.writer(text, lineterminator="\n")
    rows.writerow(["unit", *Definition._fields])
    for code, definition in DEFINITIONS.items():
        name, zero = definition.pint, ""
        if code in set(UNIT_CODES[Temperature]):
            zero = repr(float(registry.Quantity(Decimal(0), name).to("kelvin").magnitude))
            name = "kelvin" if code == "K" else f"delta_{name}"
        factor = repr(float(registry.parse_expression(name).to(definition.si).magnitude))
        rows.writerow([code, *definition._replace(factor=factor, zero=zero)])
    return text.getvalue()


def main() -> int:
    fresh = written()
    if "--write" in sys.argv:
        FACTORS.write_text(fresh, encoding="utf-8")
        return 0
    if FACTORS.read_text(encoding="utf-8") == fresh:
        return 0
    sys.stderr.write("units/factors.csv has drifted from pint: make factors\n")
    return 1


if __name__ == "__main__":
    sys.exit(main())
