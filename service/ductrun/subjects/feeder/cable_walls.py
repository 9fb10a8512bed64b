"""The walls of a cable given by its layers: what lies over what, what they are made of, and its shield."""

from __future__ import annotations

import math
from typing import NamedTuple

from ductrun.engineering.conductor_resistance import resistance_of_area
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import WORKED_OUT, backing_of
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import Default, number
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_layers import CableInsulation, CableJacketLayer, CableLayers
from ductrun.subjects.parts.choices import ConductorSize
from ductrun.tables import TABLES
from ductrun.tables.feeder_rows import ThermalMaterial
from ductrun.units import ThermalResistivity

COVERINGS: dict[str, ThermalMaterial] = {
    row.material: row for row in TABLES["thermal_resistivities"] if row.part == "conductor"
}
RESISTIVITIES = {
    material: Default(ThermalResistivity.parse(row.resistivity_degc_cm_per_w, "degC.cm/W"), backing_of(row))
    for material, row in COVERINGS.items()
}
TABLE_8 = {row.size: float(row.diameter_in) * 0.0254 for row in TABLES["conductors"] if row.table == "8"}
_SHIELD_RESISTIVITY = number("feeder.shield_resistivity").value * 1e-9  # ohm.mm2/km is 1e-9 ohm.m


class LoadedShield(NamedTuple):
    """A shield: its resistance at 20 degC [ohm/m] and its mean diameter [m]."""

    resistance: float
    mean_diameter: float


def conductor_diameter(layers: CableLayers, size: ConductorSize | None, place: Worksheet) -> float:
    """Give the diameter of a conductor [m], as given or of its size."""
    if layers.conductor_diameter is not None:
        return layers.conductor_diameter.si
    if size is None:
        raise UnanswerableError(
            place.fault("conductor_diameter", "missing", "Give the diameter of a conductor that is known by its area.")
        )
    return TABLE_8[size]


def core_diameter(layers: CableLayers, inner: float, inside: float, cores: int, sheet: Worksheet) -> float:
    """Give the diameter of one conductor over its insulation [m]; refuse layers that the cable has no room for.

    `sheet` is that of the cable.
    """
    thickness, around = layers.insulation.thickness, 1.0 if cores == 1 else 1.0 + 1.0 / math.sin(math.pi / cores)
    room = inside / around
    core = room if thickness is None else inner + 2.0 * thickness.si
    if room > inner and not over(core, room):
        return core
    if room > inner or (thickness is None and room > 0.0):
        raise UnanswerableError(
            sheet.fault(
                "layers/conductor_diameter" if thickness is None else "layers/insulation/thickness/value",
                "no_room_for_insulation",
                "The conductor with its insulation and jacket is wider than the cable: check its diameter, that of the "
                "conductor and the walls.",
                maximum=sheet.tell.size(room if thickness is None else (room - inner) / 2.0),
            )
        )
    jacket = 0.0 if layers.jacket is None else 2.0 * layers.jacket.thickness.si
    walls = "conductor and jacket" if thickness is None else "conductor, insulation and jacket"
    least = sheet.tell.size((inner if thickness is None else core) * around + jacket)
    raise UnanswerableError(
        sheet.fault(
            "diameter/value",
            "no_room_for_insulation",
            f"Its {walls} alone make the cable {text_of(least)} across: check its diameter and its walls.",
            minimum=least,
        )
    )


def insulation_outside(layers: CableLayers, inner: float, core: float, inside: float, place: Worksheet) -> float:
    """Give the diameter that the heat of a single core leaves its insulation at [m].

    Its wall where one is given and a shield lies over it. What is left without a shield is taken for insulation too,
    which asks less of the cable; that it is left is told, under a shield where it is more than the wall itself.
    """
    thickness = layers.insulation.thickness
    if thickness is None:
        return inside
    told_from = core - inner if layers.shield is not None else 1e-6
    if over(inside - core, told_from):
        gap = place.tell.size((inside - core) / 2.0)
        how = "is taken for insulation" if layers.shield is None else "is taken for metal that lets heat through"
        place.find(
            Severity.CAUTION,
            "layers_leave_a_gap",
            f"Between insulation and jacket {text_of(gap)} is left, which {how}: check the cable and its walls.",
            WORKED_OUT,
            gap,
            place.tell.given(thickness),
            member="insulation/thickness",
        )
    return inside if layers.shield is None else core


def resistivity_of(layer: CableJacketLayer | CableInsulation, place: Worksheet) -> float:
    """Give the thermal resistivity of a layer [K.m/W], as given or of its material, on the sheet of the layer."""
    return place.settle("thermal_resistivity", layer.thermal_resistivity, RESISTIVITIES[layer.material]).si


def shield_of(layers: CableLayers, inner: float, core: float, place: Worksheet) -> LoadedShield | None:
    """Give the shield over an insulation [m], if there is one; refuse one that would lie within it."""
    shield = layers.shield
    if shield is None:
        return None
    if (shield.metal_area is None) == (shield.resistance is None):
        raise UnanswerableError(
            place.fault("shield", "missing", "Give the area of the shield's copper, or its resistance: one of the two.")
        )
    if shield.resistance is not None:
        resistance = shield.resistance.si
    else:
        resistance = resistance_of_area(_SHIELD_RESISTIVITY, shield.metal_area.si)  # type: ignore[union-attr]
    if shield.mean_diameter is None:
        return LoadedShield(resistance, core)
    least = inner if layers.insulation.thickness is None else core
    if under(shield.mean_diameter.si, least):
        raise UnanswerableError(
            place.fault(
                "shield/mean_diameter/value",
                "shield_within_insulation",
                f"A shield lies around the insulation, {text_of(place.tell.size(least))} or more across.",
                minimum=place.tell.size(least),
            )
        )
    return LoadedShield(resistance, shield.mean_diameter.si)
