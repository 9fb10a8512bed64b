"""What of the cables in a duct carries current, and what its heat has to cross."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering.conductor_resistance import CIRCULAR_MIL_FOOT, resistance_of_area
from ductrun.engineering.neher_mcgrath import cores_resistance, layer_resistance
from ductrun.kit.defaults import number
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.cable_walls import (
    COVERINGS,
    TABLE_8,
    LoadedShield,
    conductor_diameter,
    core_diameter,
    insulation_outside,
    resistivity_of,
    shield_of,
)
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.cables import Cable, CableLine, MeasuredCable, MulticonductorCable
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize, Insulation
from ductrun.subjects.parts.conductors import Wire, row_of
from ductrun.tables import TABLES
from ductrun.tables.feeder_rows import InsulationTemperature, ThermalMaterial

ZERO_CELSIUS = 273.15
MARKINGS: dict[str, InsulationTemperature] = {row.marking: row for row in TABLES["insulation_temperatures"]}
COMPACT = number("wire_mass.compact_diameter_ratio").value
METAL_RESISTIVITIES = {
    metal: number(f"feeder.{metal.value}_resistance").value * CIRCULAR_MIL_FOOT for metal in ConductorMaterial
}
ZERO_TEMPERATURE = {
    metal: ZERO_CELSIUS - number(f"feeder.{metal.value}_zero_temperature").value for metal in ConductorMaterial
}


class Dielectric(NamedTuple):
    """The insulation as a capacitor: what it is made of, and its diameters [m]."""

    material: ThermalMaterial
    inner: float
    outer: float


class LoadedCable(NamedTuple):
    """The conductors in a duct that carry current, all alike: `conductors` of them in so many `cables`.

    Metal and `area` [m2], `size` and `marking` where they have one; `resistance` [ohm/m] at the `reference` [K];
    diameters of conductor, core and cable [m]; `insulation` [K.m/W] for the heat of one conductor, `jacket` [K.m/W] for
    that of one cable. `given` is the cable, `sheet` its place.
    """

    conductors: int
    cables: int
    material: ConductorMaterial
    area: float
    size: ConductorSize | None
    marking: Insulation | None
    resistance: float
    reference: float
    conductor_diameter: float
    core_diameter: float
    diameter: float
    insulation: float
    jacket: float
    shield: LoadedShield | None
    dielectric: Dielectric | None
    given: Cable
    sheet: Worksheet

    @property
    def cores(self) -> int:
        """Conductors in one cable."""
        return -(-self.conductors // self.cables)


class LoadedLine(NamedTuple):
    """What of the cables in a duct carries the current: the index of its line, conductors, those in a cable."""

    at: int
    conductors: int
    cores: int


def loaded_line(lines: Sequence[CableLine], count: int | None, sheet: Worksheet, place: Worksheet) -> LoadedLine:
    """Give what carries current in a duct: the conductors of the largest size, or so many of them as are counted.

    Smaller ones beside them ground the circuit or carry what is left of a neutral current, and bare ones never count.
    `sheet` is that of the list of lines, `place` that of the count.
    """
    areas = _areas(lines, sheet)
    largest = max(areas)
    if largest <= 0.0:
        raise UnanswerableError(
            sheet.fault("", "no_insulated_conductor", "A bare conductor carries no load: give the insulated ones.")
        )
    which = [index for index, area in enumerate(areas) if not area < largest]
    first = lines[which[0]].cable
    if any(lines[index].cable != first for index in which):
        raise UnanswerableError(
            sheet.fault(
                f"{which[-1]}/cable",
                "loaded_conductors_differ",
                "The largest conductors in the duct are not alike: those that carry current must be.",
            )
        )
    cores = cores_of(first)
    there = cores * sum([lines[index].count for index in which])
    if count is not None and count > there:
        raise UnanswerableError(
            place.fault(
                "",
                "more_than_in_the_duct",
                f"The duct has {there} conductors of the largest size: no smaller one carries this current. A neutral "
                "that counts is as large as the phases.",
                maximum=there,
            )
        )
    return LoadedLine(which[0], count or there, cores)


def loaded_cable(lines: Sequence[CableLine], count: int | None, sheet: Worksheet, place: Worksheet) -> LoadedCable:
    """Give what carries current in a duct, with what its heat has to cross."""
    line = loaded_line(lines, count, sheet, place)
    return made(lines[line.at].cable, line.conductors, line.cores, sheet.within(f"{line.at}/cable"))


def _areas(lines: Sequence[CableLine], sheet: Worksheet) -> list[float]:
    return [_area_of(line.cable, sheet.within(f"{index}/cable")) for index, line in enumerate(lines)]


def largest_line(lines: Sequence[CableLine], sheet: Worksheet) -> int:
    """Give the line (index) of the conductors that carry the current, on the sheet of the list."""
    areas = _areas(lines, sheet)
    return areas.index(max(areas))


def made(cable: Cable, conductors: int, cores: int, sheet: Worksheet) -> LoadedCable:
    """Give so many loaded conductors of a cable, which has so many cores."""
    cables = -(-conductors // cores)
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each narrows the type)
        return _layered(cable, conductors, cables, cores, sheet)
    return _wire(cable, conductors, cables, sheet)


def cores_of(cable: Cable) -> int:
    """Count the conductors in one cable; a wire is one."""
    if cable.kind != "measured" and cable.kind != "multiconductor":  # noqa: PLR1714  (each narrows the type)
        return 1
    return 1 if cable.conductor is None else cable.conductor.count


def _area_of(cable: Cable, sheet: Worksheet) -> float:
    """Give the metal area of one conductor [m2]; 0 of a bare one."""
    if cable.kind == "bare":
        return 0.0
    if cable.kind != "measured" and cable.kind != "multiconductor":  # noqa: PLR1714
        return METAL_AREAS[cable.size]
    conductor = cable.conductor
    if conductor is None:
        raise UnanswerableError(sheet.fault("conductor", "missing", "Give the conductor that carries the current."))
    if (conductor.size is None) == (conductor.area is None):
        raise UnanswerableError(sheet.fault("conductor", "missing", "Give the size of the conductor, or its area."))
    return METAL_AREAS[conductor.size] if conductor.area is None else conductor.area.si  # type: ignore[index]


def _wire(cable: Wire, conductors: int, cables: int, sheet: Worksheet) -> LoadedCable:
    if cable.material is None:
        raise UnanswerableError(
            sheet.fault("material", "missing", "Give the metal: aluminum carries less than copper of the same size.")
        )
    row, marking = row_of(cable, sheet), cable.insulation  # type: ignore[union-attr]
    covering = COVERINGS[MARKINGS[marking].material]
    sheet.cite(covering.source, MARKINGS[marking].source)
    diameter = float(row.diameter_in) * 0.0254
    inner = TABLE_8[cable.size] * (COMPACT if cable.kind == "compact" else 1.0)
    area = METAL_AREAS[cable.size]
    return LoadedCable(
        conductors,
        cables,
        cable.material,
        area,
        cable.size,
        marking,
        resistance_of_area(METAL_RESISTIVITIES[cable.material], area),
        75.0 + ZERO_CELSIUS,
        inner,
        diameter,
        diameter,
        layer_resistance(covering.resistivity_degc_cm_per_w / 100.0, inner, diameter),
        0.0,
        None,
        Dielectric(covering, inner, diameter),
        cable,
        sheet,
    )


def _layered(
    cable: MeasuredCable | MulticonductorCable, conductors: int, cables: int, cores: int, sheet: Worksheet
) -> LoadedCable:
    layers, conductor = cable.layers, cable.conductor
    if layers is None or conductor is None:
        raise UnanswerableError(
            sheet.fault("layers", "missing", "Give the layers of the cable: its heat crosses them.")
        )
    place = sheet.within("layers")
    area = _area_of(cable, sheet)
    inner = conductor_diameter(layers, conductor.size, place)
    inside = cable.diameter.si - (2.0 * layers.jacket.thickness.si if layers.jacket is not None else 0.0)
    core = core_diameter(layers, inner, inside, cores, sheet)
    resistivity = resistivity_of(layers.insulation, place.within("insulation"))
    if cores > 1:
        insulation = cores_resistance(resistivity, cores, inner, core, inside)
    else:
        insulation = layer_resistance(resistivity, inner, insulation_outside(layers, inner, core, inside, place))
    jacket = 0.0
    if layers.jacket is not None:
        jacket = layer_resistance(resistivity_of(layers.jacket, place.within("jacket")), inside, cable.diameter.si)
    given = layers.conductor_resistance
    return LoadedCable(
        conductors,
        cables,
        conductor.material,
        area,
        conductor.size,
        None,
        resistance_of_area(METAL_RESISTIVITIES[conductor.material], area) if given is None else given.si,
        (75.0 if given is None else 20.0) + ZERO_CELSIUS,
        inner,
        core if cores > 1 else cable.diameter.si,
        cable.diameter.si,
        insulation,
        jacket,
        shield_of(layers, inner, core, place),
        Dielectric(COVERINGS[layers.insulation.material], inner, core),
        cable,
        sheet,
    )
