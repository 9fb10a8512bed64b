"""The mass of a wire that a table lists, from the areas of its row and the densities of what it is made of."""

from __future__ import annotations

from ductrun.engineering.cable_mass import conductor_mass, covering_mass
from ductrun.kit.defaults import number
from ductrun.subjects.parts.choices import ConductorMaterial
from ductrun.tables import TABLES
from ductrun.tables.rows import Conductor as ConductorRow
from ductrun.units import AreaUnit, ConductorArea

_DENSITIES: dict[str, float] = {
    material: row.density_kg_per_m3 for row in TABLES["wire_densities"] for material in row.materials
}
_LAY = number("wire_mass.lay_factor").value
_COMPACT = number("wire_mass.compact_diameter_ratio").value

# of every size the bare row of Table 8, stranded where it is made so: the smaller circle is that of the solid one, but
# nearly all wire is stranded
_BARE: dict[str, ConductorRow] = {}
for _row in TABLES["conductors"]:
    if _row.table == "8" and (_row.stranding == "stranded" or _row.size not in _BARE):
        _BARE[_row.size] = _row


# metal area [m2] of every size: Table 8 gives the circular mils of a gauge, a size in kcmil is its own area
METAL_AREAS: dict[str, float] = {
    size: ConductorArea.parse(
        float(size.removesuffix(" kcmil")) if row.circular_mils is None else row.circular_mils / 1000, "kcmil"
    ).si
    for size, row in _BARE.items()
}


def wire_mass(row: ConductorRow, material: ConductorMaterial, insulation: str | None) -> float:
    """Give the mass per length [kg/m] of one wire of a table row: its metal, and its insulation if it has one."""
    metal = conductor_mass(METAL_AREAS[row.size], _DENSITIES[material], _LAY)
    if insulation is None:
        return metal
    # the printed square inches, not the more exact metric ones: with those the smallest wires come out lighter
    shrunk = _COMPACT * _COMPACT if row.table == "5A" else 1.0
    square_inch = AreaUnit.IN2.scale
    overall, conductor = float(row.area_in2) * square_inch, float(_BARE[row.size].area_in2) * shrunk * square_inch
    return metal + covering_mass(overall, conductor, _DENSITIES[insulation])
