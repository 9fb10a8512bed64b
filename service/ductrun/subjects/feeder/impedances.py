"""The printed impedances of Chapter 9: Table 9 to alternating current, Table 8 to direct current."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.conductor_resistance import table_resistance_at
from ductrun.kit.defaults import number, quantity
from ductrun.subjects.feeder.choices import CircuitConduit
from ductrun.subjects.parts.choices import ConductorMaterial
from ductrun.tables import TABLES
from ductrun.units import Temperature

TEMPERATURE = quantity("feeder.impedance_temperature", Temperature)
_COEFFICIENTS = {metal: number(f"feeder.{metal.value}_temperature_coefficient").value for metal in ConductorMaterial}
_KILOFOOT = 304.8


class Impedance(NamedTuple):
    """Of one conductor to neutral [ohm/m], to the current it carries."""

    resistance: float
    reactance: float


def _alternating(material: ConductorMaterial, conduit: CircuitConduit) -> dict[str, Impedance]:
    found = {}
    for row in TABLES["conductor_impedances"]:
        resistance = getattr(row, f"{material.value}_in_{conduit.value}_ohm_per_kft")
        steel = conduit is CircuitConduit.STEEL
        reactance = row.reactance_steel_ohm_per_kft if steel else row.reactance_nonmagnetic_ohm_per_kft
        if resistance is not None:
            found[row.size] = Impedance(float(resistance) / _KILOFOOT, float(reactance) / _KILOFOOT)
    return found


_ALTERNATING = {
    (metal, conduit): _alternating(metal, conduit) for metal in ConductorMaterial for conduit in CircuitConduit
}
# of a size that is made solid and stranded the row of the stranded one, which stands last
_DIRECT = {
    metal: {
        row.size: Impedance(float(getattr(row, f"{metal.value}_ohm_per_kft")) / _KILOFOOT, 0.0)
        for row in TABLES["conductor_resistances"]
    }
    for metal in ConductorMaterial
}


def impedance_of(
    material: ConductorMaterial, size: str, conduit: CircuitConduit, temperature: float, *, direct: bool
) -> Impedance:
    """Give the impedance of a listed size at a temperature [K]."""
    printed = listed(material, conduit, direct=direct)[size]
    resistance = table_resistance_at(printed.resistance, _COEFFICIENTS[material], TEMPERATURE.value.si, temperature)
    return Impedance(resistance, printed.reactance)


def listed(material: ConductorMaterial, conduit: CircuitConduit, *, direct: bool) -> dict[str, Impedance]:
    """Give the printed impedances of every size, of the columns for a thousand feet."""
    return _DIRECT[material] if direct else _ALTERNATING[material, conduit]
