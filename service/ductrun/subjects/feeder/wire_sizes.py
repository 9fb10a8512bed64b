"""The sizes that the tables list of a wire, and the same wire in another of them."""

from __future__ import annotations

from ductrun.engineering.conductor_resistance import resistance_of_area
from ductrun.engineering.neher_mcgrath import layer_resistance
from ductrun.subjects.feeder.cable_walls import COVERINGS, TABLE_8
from ductrun.subjects.feeder.loaded_cable import (
    COMPACT,
    MARKINGS,
    METAL_RESISTIVITIES,
    Dielectric,
    LoadedCable,
)
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.choices import ConductorSize
from ductrun.tables import TABLES

DIAMETERS: dict[tuple[str, str], dict[str, float]] = {}
for _row in TABLES["conductors"]:
    for _marking in _row.insulations:
        DIAMETERS.setdefault((_row.table, _marking), {})[_row.size] = float(_row.diameter_in) * 0.0254


def sizes_of(cable: LoadedCable) -> dict[str, float]:
    """Give the diameter [m] of every size that a table lists of the same wire, the smallest first; none of a cable."""
    if cable.marking is None:
        return {}
    return DIAMETERS["5A" if cable.given.kind == "compact" else "5", cable.marking]


def sized(cable: LoadedCable, size: str) -> LoadedCable:
    """Give the same wire in another size that its table lists."""
    diameter = sizes_of(cable)[size]
    compact = cable.given.kind == "compact"
    inner = TABLE_8[size] * (COMPACT if compact else 1.0)
    covering = COVERINGS[MARKINGS[str(cable.marking)].material]
    area = METAL_AREAS[size]
    return cable._replace(
        area=area,
        size=ConductorSize(size),
        resistance=resistance_of_area(METAL_RESISTIVITIES[cable.material], area),
        conductor_diameter=inner,
        core_diameter=diameter,
        diameter=diameter,
        insulation=layer_resistance(covering.resistivity_degc_cm_per_w / 100.0, inner, diameter),
        dielectric=Dielectric(covering, inner, diameter),
    )
