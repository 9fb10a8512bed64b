"""The table ampacities of the code, and what hangs on a size alone."""

from __future__ import annotations

from ductrun.kit.defaults import choice
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize
from ductrun.tables import TABLES
from ductrun.tables.feeder_rows import TableAmpacity

LEAST_IN_PARALLEL = choice("feeder.least_size_in_parallel", ConductorSize)
TABLE_VOLTAGE = 2000.0  # [V] the scope of the table
_AMPACITIES: dict[str, TableAmpacity] = {row.size: row for row in TABLES["ampacities"]}
_SMALL = set(list(ConductorSize)[: list(ConductorSize).index(ConductorSize.AWG_1) + 1])


def table_ampacity(material: ConductorMaterial, size: str, column: int) -> float | None:
    """Give the ampacity of one conductor at the temperature of a column [degC]; None where it has none [A]."""
    row = _AMPACITIES.get(size)
    return None if row is None else getattr(row, f"{material.value}_{column}_a")


def terminal_degrees(size: ConductorSize) -> int:
    """Give what unmarked terminals are taken for by the size of the conductor [degC]."""
    return 60 if size in _SMALL else 75


def terminal_ampacity(material: ConductorMaterial, size: ConductorSize) -> float | None:
    """Give what unmarked terminals allow one conductor [A]."""
    return table_ampacity(material, size, terminal_degrees(size))


def too_small_in_parallel(sets: int, area: float) -> bool:
    """Say whether conductors of an area [m2] are too small to lie in so many sets in parallel."""
    return sets > 1 and area < METAL_AREAS[LEAST_IN_PARALLEL.value]
