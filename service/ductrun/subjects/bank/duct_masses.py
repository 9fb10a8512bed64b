"""What the ducts of a bank weigh, with what is in them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import flotation as engineering
from ductrun.kit.backing import backing_of
from ductrun.kit.defaults import Default, quantity
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import DuctContents, DuctMaterial
from ductrun.subjects.bank.flotation_practice import DUCT_MATERIAL, Floating
from ductrun.subjects.parts.bank import DuctBank, lines_of
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import SIZES, ListedConduit, MeasuredConduit
from ductrun.subjects.parts.duct_mass import settle_unknown_masses
from ductrun.tables import TABLES
from ductrun.tables.rows import Conduit as ConduitRow
from ductrun.units import Density, Length

WATER_DENSITY = quantity("flotation.water_density", Density)
DUCT_DENSITIES = {
    DuctMaterial(row.material): Default(Density.parse(row.density_lb_per_ft3, "lb/ft3"), backing_of(row))
    for row in TABLES["duct_densities"]
}
# types with diameters on file; what else a bank is made of is given by its diameters
_MATERIALS: dict[str, DuctMaterial] = {
    kind: DuctMaterial.HDPE if kind is ConduitType.HDPE_SCHEDULE_40 else DuctMaterial.PVC
    for kind in ConduitType
    if kind is ConduitType.HDPE_SCHEDULE_40 or kind.value.startswith("pvc_")
}


class DuctWall(NamedTuple):
    """Like ducts of a tier: its index and their number, what they are made of, diameter, wall and bore [m].

    Material, wall and bore are None where they are not known. `place` is the sheet of the conduit.
    """

    tier: int
    duct_count: int
    material: DuctMaterial | None
    outside: float
    wall: float | None
    bore: float | None
    place: Worksheet


_Known = tuple[DuctMaterial | None, float, float | None, float | None]  # material, outside diameter, wall, bore


def _listed(row: ConduitRow) -> _Known:
    outside = 0.0 if row.outside_diameter is None else row.outside_diameter.si
    wall = None if row.minimum_wall_in is None else Length.parse(float(row.minimum_wall_in), "in").si
    bore = None if wall is None else outside - 2 * wall
    if row.inside_diameter is not None:
        bore = row.inside_diameter.si
    return _MATERIALS.get(row.type), outside, wall, bore


_LISTED = {(kind, size): _listed(row) for kind, sizes in SIZES.items() for size, row in sizes.items()}


def walls_of(bank: DuctBank, sheet: Worksheet) -> list[DuctWall]:
    """Give what is known of the walls of ducts that were placed in a bank: each has an outside diameter."""
    return [DuctWall(tier, count, *_known(conduit), place) for tier, count, conduit, place in lines_of(bank, sheet)]


def _known(conduit: ListedConduit | MeasuredConduit) -> _Known:
    """Give material, outside diameter, wall and bore [m] of a duct, as far as they are known."""
    if conduit.kind == "listed":
        return _LISTED[conduit.type, conduit.trade_size]
    outside = 0.0 if conduit.outside_diameter is None else conduit.outside_diameter.si
    material = None if conduit.type is None else _MATERIALS.get(conduit.type)
    return material, outside, (outside - conduit.inside_diameter.si) / 2, conduit.inside_diameter.si


def empty_masses(given: Floating, walls: Sequence[DuctWall], sheet: Worksheet) -> list[float]:
    """Give the mass of an empty duct [kg/m] for every wall: as given, from the wall, or none where none is known."""
    if given.duct_mass_per_length is not None:
        return [given.duct_mass_per_length.si] * len(walls)
    thick = [wall for wall in walls if wall.wall is not None]
    settle_unknown_masses(len(walls) - len(thick), len(walls), sheet)
    if not thick:
        return [0.0] * len(walls)
    density = _density(given, thick, sheet)
    return [0.0 if wall.wall is None else engineering.wall_mass(wall.outside, wall.wall, density) for wall in walls]


def _density(given: Floating, walls: Sequence[DuctWall], sheet: Worksheet) -> float:
    """Give the density of the ducts [kg/m3]: that of the lightest of what they are made of."""
    if given.duct_density is not None:
        return given.duct_density.si
    materials = {wall.material for wall in walls if wall.material is not None}
    if any(wall.material is None for wall in walls):
        materials.add(sheet.settle("duct_material", given.duct_material, DUCT_MATERIAL))
    lightest = min([DUCT_DENSITIES[material] for material in materials], key=lambda one: one.value.si)
    return sheet.settle("duct_density", None, lightest).si


def contents_mass(given: Floating, contents: DuctContents, wall: DuctWall, sheet: Worksheet) -> float:
    """Give the mass per length [kg/m] of what is in one duct."""
    if contents is DuctContents.EMPTY:
        return 0.0
    if contents is DuctContents.CABLE:
        if given.cable_mass_per_length is None:
            raise UnanswerableError(
                sheet.fault("cable_mass_per_length", "missing", "Give the mass of the cables in each duct.")
            )
        return given.cable_mass_per_length.si
    if wall.bore is None:
        raise UnanswerableError(
            wall.place.fault(
                "", "inside_diameter_not_listed", "The bore is unknown: give the conduit as kind measured."
            )
        )
    sheet.cite(WATER_DENSITY.backing.source_id)
    return engineering.contents_mass(wall.bore, WATER_DENSITY.value.si)
