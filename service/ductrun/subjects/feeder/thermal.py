"""A bank with its loaded circuits as one question to the balance of heat, by either method."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import iec_60287, neher_mcgrath
from ductrun.engineering.buried_heat import Place, Surround, image_ratio, mutual_resistance, surround_of
from ductrun.engineering.heat_balance import Balance, Ground, Load, Metal, Path, Shield, balance
from ductrun.engineering.neher_mcgrath import AirConstants, loss_factor
from ductrun.engineering.shields import dielectric_loss, shield_reactance
from ductrun.kit.defaults import number, quantity
from ductrun.subjects.feeder.choices import AmpacityMethod, CircuitSystem, WallMaterial
from ductrun.subjects.feeder.circuits import CircuitLoad
from ductrun.subjects.feeder.loaded_cable import ZERO_CELSIUS, ZERO_TEMPERATURE, LoadedCable
from ductrun.subjects.parts.choices import ConductorMaterial
from ductrun.tables import TABLES
from ductrun.tables.feeder_rows import DuctAir
from ductrun.units import Length, TemperatureDifference

CYCLE_DIAMETER = quantity("feeder.daily_cycle_diameter", Length)
SHIELD_DROP = quantity("feeder.shield_temperature_drop", TemperatureDifference)
_LEAST_VOLTAGE = number("feeder.dielectric_least_voltage")

AIR: dict[str, DuctAir] = {row.duct: row for row in TABLES["duct_air_constants"]}
_PRINTED_TABLES = "asbestos_cement_in_concrete"
_AIR_OF = {
    WallMaterial.PVC: "plastic",
    WallMaterial.HDPE: "plastic",
    WallMaterial.RTRC: "plastic",
    WallMaterial.FIBER: "fiber_duct_in_concrete",
    WallMaterial.ASBESTOS_CEMENT: "asbestos_cement_in_concrete",
    WallMaterial.EARTHENWARE: "earthenware",
    WallMaterial.ALUMINUM: "metallic_conduit",
    WallMaterial.STEEL: "metallic_conduit",
}
# no row is for ducts in earth: of the two there are that in air lets less heat through
_IN_EARTH = {
    "fiber_duct_in_concrete": "fiber_duct_in_air",
    "asbestos_cement_in_concrete": "asbestos_cement_in_air",
}


class Wall(NamedTuple):
    """A duct wall: diameters inside and outside [m], what it is made of, its thermal resistivity [K.m/W]."""

    inside: float
    outside: float
    material: WallMaterial
    resistivity: float


class Section(NamedTuple):
    """The section of a buried bank: the place of every duct and its wall, and its envelope.

    `width` and `height` of the envelope [m], the depth of its `center` [m].
    """

    places: Sequence[Place]
    walls: Sequence[Wall]
    width: float
    height: float
    center: float


class Earth(NamedTuple):
    """What lies around: resistivity of the `earth` and of the `concrete`, None without one [K.m/W], `ambient` [K]."""

    earth: float
    concrete: float | None
    ambient: float


class Question(NamedTuple):
    """Everything that decides the temperatures of loaded ducts but their currents; `air` [K] in them if it is set."""

    method: AmpacityMethod
    section: Section
    earth: Earth
    frequency: float
    air: float | None
    loads: Sequence[CircuitLoad]


def air_row(material: WallMaterial, method: AmpacityMethod, *, encased: bool) -> DuctAir:
    """Give the constants of the air in a duct of a material, in concrete or in earth.

    Neher and McGrath have no row of plastic: the one is taken with which the printed tables of the code are met, which
    allows a little less than that of IEC.
    """
    kind = _AIR_OF[material]
    if kind == "plastic" and method is AmpacityMethod.NEHER_MCGRATH:
        kind = _PRINTED_TABLES
    return AIR[kind if encased else _IN_EARTH.get(kind, kind)]


def air_of(material: WallMaterial, method: AmpacityMethod, *, encased: bool) -> AirConstants:
    """Give the constants of a method; where Neher and McGrath have none, those of IEC."""
    row = air_row(material, method, encased=encased)
    if method is AmpacityMethod.NEHER_MCGRATH and row.a is not None and row.b is not None and row.c is not None:
        return neher_mcgrath.air_constants(row.a, row.b, row.c)
    return AirConstants(row.u, row.v, row.y)


def surround(question: Question) -> Surround:
    """Give what surrounds the ducts: earth alone, or concrete in earth."""
    earth, section = question.earth, question.section
    if earth.concrete is None:
        return Surround(earth.earth, 0.0, True)
    return surround_of(section.width, section.height, section.center, earth.concrete, earth.earth)


def ground_of(question: Question) -> Ground:
    """Give what the heat of every loaded duct does at every one."""
    around = surround(question)
    section = question.section
    loaded = [(duct, load) for load in question.loads for duct in load.ducts]
    places = [section.places[duct] for duct, _ in loaded]
    iec = question.method is AmpacityMethod.IEC_60287
    losses = [1.0 if iec else loss_factor(load.load_factor) for _, load in loaded]
    count = range(len(loaded))
    steady = [[0.0] * len(loaded) for _ in count]
    for i in count:
        for j in range(i):
            between = mutual_resistance(around.resistivity, image_ratio(places[i], places[j])) + around.correction
            steady[i][j] = steady[j][i] = between
    cyclic = [[between * loss for between, loss in zip(row, losses, strict=True)] for row in steady]
    for i in count:
        outside, depth = section.walls[loaded[i][0]].outside, places[i].depth
        steady[i][i] = _own(around, outside, depth, 1.0, iec=iec)
        cyclic[i][i] = _own(around, outside, depth, losses[i], iec=iec)
    return Ground(cyclic, steady, question.earth.ambient)


def _own(around: Surround, outside: float, depth: float, losses: float, *, iec: bool) -> float:
    """Give what a duct's heat takes on its own way through the ground [K.m/W]."""
    if iec:
        return iec_60287.earth_resistance(around.resistivity, outside, depth) + around.correction
    cycle = CYCLE_DIAMETER.value.si
    own = neher_mcgrath.earth_resistance(around.resistivity, outside, depth, cycle, losses)
    return own + losses * around.correction


def paths_of(question: Question) -> list[Path]:
    """Give the way of the heat in every loaded duct, in the order of the circuits and their ducts."""
    found = []
    known: dict[tuple[int, Wall], Path] = {}
    for index, load in enumerate(question.loads):
        for duct in load.ducts:
            wall = question.section.walls[duct]
            if (index, wall) not in known:
                known[index, wall] = _path(question, load, wall)
            found.append(known[index, wall])
    return found


def _path(question: Question, load: CircuitLoad, wall: Wall) -> Path:
    cable, iec = load.cable, question.method is AmpacityMethod.IEC_60287
    frequency = 0.0 if load.system is CircuitSystem.DIRECT_CURRENT else question.frequency
    zero = ZERO_TEMPERATURE[cable.material]
    neighbors = min(cable.conductors, 3)
    metal = Metal(
        cable.resistance,
        cable.reference,
        zero,
        cable.conductor_diameter,
        cable.core_diameter,
        neighbors,
        frequency,
        iec,
    )
    wall_form = neher_mcgrath.layer_resistance if iec else neher_mcgrath.duct_wall_resistance
    return Path(
        conductors=cable.conductors,
        cables=cable.cables,
        metal=metal,
        shield=_shield(question, load, frequency),
        insulation=cable.insulation,
        jacket=cable.jacket,
        air=air_of(wall.material, question.method, encased=question.earth.concrete is not None),
        bundle=neher_mcgrath.bundle_diameter(cable.diameter, cable.cables),
        air_temperature=question.air,
        wall=wall_form(wall.resistivity, wall.inside, wall.outside),
        dielectric=_dielectric(cable, load, frequency, iec=iec),
        limit=load.limit,
    )


def _shield(question: Question, load: CircuitLoad, frequency: float) -> Shield | None:
    shield = load.cable.shield
    if shield is None or not load.grounded_at_both_ends or frequency <= 0.0:
        return None
    spacing = load.cable.core_diameter if load.cable.conductors > 1 else spacing_of(question, load)
    if spacing is None:
        return None
    reactance = shield_reactance(spacing, shield.mean_diameter, frequency)
    reference, zero = 20.0 + ZERO_CELSIUS, ZERO_TEMPERATURE[ConductorMaterial.COPPER]
    return Shield(shield.resistance, reference, zero, reactance, SHIELD_DROP.value.si)


def spacing_of(question: Question, load: CircuitLoad) -> float | None:
    """Give the largest distance of the ducts of a circuit with one conductor in each [m]: it asks most of shields."""
    places = [question.section.places[duct] for duct in load.ducts]
    apart = [math.hypot(one.x - two.x, one.depth - two.depth) for one in places for two in places]
    return max(apart) or None


def _dielectric(cable: LoadedCable, load: CircuitLoad, frequency: float, *, iec: bool) -> float:
    """Give the heat of the insulation of one conductor [W/m]: above 2000 V, of IEC from the voltage of its material."""
    insulation = cable.dielectric
    if insulation is None or frequency <= 0.0:
        return 0.0
    row = insulation.material
    if row.permittivity is None or row.loss_factor is None or load.voltage <= _LEAST_VOLTAGE.value:
        return 0.0
    to_ground = load.voltage / math.sqrt(3.0) if load.system is CircuitSystem.THREE_PHASE else load.voltage
    if iec and row.least_kv is not None and to_ground < row.least_kv * 1000.0:
        return 0.0
    return dielectric_loss(to_ground, frequency, row.permittivity, row.loss_factor, insulation.inner, insulation.outer)


def solve(question: Question, currents: Sequence[Load]) -> Balance:
    """Give the balance of a question for the load of every circuit; a RunawayError where there is none."""
    loads = [load for load, circuit in zip(currents, question.loads, strict=True) for _ in circuit.ducts]
    return balance(paths_of(question), loads, ground_of(question))
