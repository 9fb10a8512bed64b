"""The table ampacities of the code, and the column that terminals and insulation leave of them."""

from __future__ import annotations

from ductrun.engineering.rounding import over
from ductrun.kit.defaults import choice, quantity
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize
from ductrun.tables import TABLES
from ductrun.tables.feeder_rows import TableAmpacity
from ductrun.units import Current

LEAST_IN_PARALLEL = choice("feeder.least_size_in_parallel", ConductorSize)
TABLE_VOLTAGE = 2000.0  # [V] the scope of the table
COLUMNS = (60, 75, 90)
_ZERO_CELSIUS = 273.15
_SMALL_CIRCUIT = quantity("feeder.unmarked_terminal_current", Current).value.si
_AMPACITIES: dict[str, TableAmpacity] = {row.size: row for row in TABLES["ampacities"]}
_SMALL = set(list(ConductorSize)[: list(ConductorSize).index(ConductorSize.AWG_1) + 1])


def table_ampacity(material: ConductorMaterial, size: str, column: int) -> float | None:
    """Give the ampacity of one conductor at the temperature of a column [degC]; None where it has none [A]."""
    row = _AMPACITIES.get(size)
    return None if row is None else getattr(row, f"{material.value}_{column}_a")


def column_of(temperature: float) -> int | None:
    """Give the warmest column [degC] that a conductor of a temperature [K] may be read from, None where none is."""
    return max([one for one in COLUMNS if one + _ZERO_CELSIUS <= temperature + 1e-6], default=None)


def unmarked_degrees(rated: float) -> int:
    """Give what unmarked terminals are taken for [degC], by what the circuit is rated: its device or else its current
    [A].
    """
    return 75 if over(rated, _SMALL_CIRCUIT) else 60


def degrees_by_size(size: ConductorSize) -> int:
    """Give what unmarked terminals are taken for [degC] where it is not known what the circuit is rated."""
    return 60 if size in _SMALL else 75


def too_small_in_parallel(sets: int, area: float) -> bool:
    """Say whether conductors of an area [m2] are too small to lie in so many sets in parallel."""
    return sets > 1 and area < METAL_AREAS[LEAST_IN_PARALLEL.value]
