"""The walls of the ducts of a bank, for the heat that crosses them."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import cable_sets
from ductrun.engineering.bank import Bank
from ductrun.engineering.fill import SCALE
from ductrun.engineering.pull_search import largest_complying
from ductrun.kit.defaults import choice
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.feeder.choices import WallMaterial
from ductrun.subjects.feeder.circuits import CircuitLoad
from ductrun.subjects.parts.bank import DuctBank, lines_of
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conductors import measures_of
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit, check_diameters, find_row, inside_diameter

DUCT_MATERIAL = choice("feeder.duct_material", WallMaterial)
MATERIALS = {
    ConduitType.HDPE_SCHEDULE_40: WallMaterial.HDPE,
    ConduitType.RTRC: WallMaterial.RTRC,
    ConduitType.EMT: WallMaterial.STEEL,
    ConduitType.IMC: WallMaterial.STEEL,
    ConduitType.RMC: WallMaterial.STEEL,
    ConduitType.FMC: WallMaterial.STEEL,
    ConduitType.LFMC: WallMaterial.STEEL,
}


class DuctWall(NamedTuple):
    """A duct by its inside and outside diameter [m], and what it is made of, None where no type tells."""

    inside: float
    outside: float
    material: WallMaterial | None
    sheet: Worksheet


def _material_of(kind: ConduitType | None) -> WallMaterial | None:
    """Say what a type of duct is made of; None where the type is not known."""
    return None if kind is None else MATERIALS.get(kind, WallMaterial.PVC)


def wall_of(conduit: ListedConduit | MeasuredConduit, outside: float, place: Worksheet) -> DuctWall:
    """Give the wall of a duct that was placed in a bank with its outside diameter [m].

    Of utility duct, which has no bore on file, the least wall tells it.
    """
    if conduit.kind == "measured":
        check_diameters(conduit, place)
        return DuctWall(conduit.inside_diameter.si, outside, _material_of(conduit.type), place)
    row = find_row(conduit, place)
    material = _material_of(conduit.type)
    if row.inside_diameter is None and row.minimum_wall_in is not None:
        return DuctWall(outside - 2.0 * float(row.minimum_wall_in) * 0.0254, outside, material, place)
    return DuctWall(inside_diameter(conduit, place), outside, material, place)


def walls_of(bank: DuctBank, placed: Bank, sheet: Worksheet) -> list[DuctWall]:
    """Give the wall of every duct of a bank as it is placed, alike ones once."""
    faults = Gathering()
    known: dict[int, DuctWall] = {}
    walls: list[DuctWall] = []
    for line in lines_of(bank, sheet):
        first = placed.ducts[len(walls)] if len(walls) < len(placed.ducts) else placed.ducts[-1]
        with faults:
            if id(line.conduit) not in known:
                known[id(line.conduit)] = wall_of(line.conduit, first.diameter, line.place)
            walls += [known[id(line.conduit)]] * line.duct_count
    faults.stop()
    return walls


def refuse_wide_cables(diameter: float, wall: DuctWall, sheet: Worksheet) -> None:
    """Refuse a cable that is wider than the duct it lies in."""
    if diameter > wall.inside:
        raise UnanswerableError(
            sheet.fault(
                "",
                "wider_than_bore",
                f"A cable of {diameter / 0.0254:.4g} in does not pass the inside diameter of "
                f"{wall.inside / 0.0254:.4g} in: take a larger duct.",
                maximum=sheet.tell.size(wall.inside),
            )
        )


def refuse_tight_set(load: CircuitLoad, wall: DuctWall) -> None:
    """Refuse cables that together do not pass the duct they lie in: their heat is that of no bank."""
    cable = load.cable
    beside: list[float] = []
    for index, line in enumerate(load.lines):
        if line.cable != cable.given:
            measure = measures_of(line.cable, load.cables_sheet.within(f"{index}/cable"))
            beside += [measure.diameter / SCALE * 0.0254] * line.count
    alike = sum([line.count for line in load.lines if line.cable == cable.given])

    def passes(diameter: float) -> bool:
        return cable_sets.passes(sorted([*beside, *[diameter] * alike], reverse=True), wall.inside)

    if passes(cable.diameter):
        return
    size = cable.sheet.tell.size
    most = largest_complying(passes, wall.inside * 1e-6, wall.inside)
    raise UnanswerableError(
        load.cables_sheet.fault(
            "",
            "cables_do_not_pass",
            f"The cables, {alike} of {text_of(size(cable.diameter))} among them, do not pass the inside diameter of "
            f"{text_of(size(wall.inside))}: take a larger duct, or fewer cables in it.",
            maximum=None if most is None else size(most),
        )
    )
