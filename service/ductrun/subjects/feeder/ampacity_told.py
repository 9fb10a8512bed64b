"""The ampacity of a bank in the units of the answer."""

from __future__ import annotations

import math
from typing import Annotated, NamedTuple

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.engineering.buried_heat import image_ratio
from ductrun.engineering.heat_balance import Path
from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.feeder.choices import AmpacityMethod
from ductrun.subjects.feeder.circuits import MOST_LOADED, CircuitLoad
from ductrun.subjects.feeder.findings import difference_percent, within_limits
from ductrun.subjects.feeder.rating import Ampacity, LoadedDuct, Rated
from ductrun.subjects.feeder.solving import Solved
from ductrun.subjects.feeder.studies import MOST_SENSITIVITIES, STEP, Studied
from ductrun.subjects.feeder.thermal import ground_of, paths_of
from ductrun.subjects.parts.choices import ConductorSize


class DuctHeat(Struct, frozen=True, gc=False, kw_only=True):
    """One loaded duct: where it lies, how warm it is, and what its heat has to cross."""

    duct: Annotated[str, Meta(description="Its name, as tier-position.")]
    pointer: Annotated[str, Meta(description="What its circuit carries, in the request.")]
    tier: Annotated[int, Meta(description="Tier, from 1 at the bottom.", ge=1)]
    x: Annotated[answers.Length, Meta(description="Distance of its center to the right of the left edge of the ducts.")]
    depth: Annotated[answers.Length, Meta(description="Depth of its center below grade.")]
    conductor_current: Annotated[answers.Current, Meta(description="Current in each of its loaded conductors.")]
    conductor_temperature: Annotated[answers.Temperature, Meta(description="Temperature of its conductors.")]
    temperature_limit: Annotated[answers.Temperature, Meta(description="Most that its conductors may reach.")]
    cable_temperature: Annotated[answers.Temperature, Meta(description="At the surface of the cables.")]
    air_temperature: Annotated[answers.Temperature, Meta(description="Mean of cable and duct.")]
    duct_temperature: Annotated[answers.Temperature, Meta(description="At the outside of the duct.")]
    mutual_rise: Annotated[answers.TemperatureDifference, Meta(description="What the other loaded ducts add.")]
    conductor_resistance: Annotated[
        answers.ResistancePerLength, Meta(description="Resistance of one conductor to the current, at its temperature.")
    ]
    conductor_loss: Annotated[answers.PowerPerLength, Meta(description="Heat of one conductor.")]
    shield_loss: Annotated[answers.PowerPerLength, Meta(description="Heat in one conductor's shield.")]
    dielectric_loss: Annotated[answers.PowerPerLength, Meta(description="Heat in one conductor's insulation.")]
    heat: Annotated[answers.PowerPerLength, Meta(description="Heat of all cables in the duct.")]
    insulation_resistance: Annotated[answers.ThermalResistance, Meta(description="For the heat of one conductor.")]
    jacket_resistance: Annotated[answers.ThermalResistance, Meta(description="For the heat of one cable.")]
    air_resistance: Annotated[answers.ThermalResistance, Meta(description="From cables to duct, for all their heat.")]
    wall_resistance: Annotated[answers.ThermalResistance, Meta(description="Of the wall of the duct, for all heat.")]
    earth_resistance: Annotated[
        answers.ThermalResistance,
        Meta(description="Of what surrounds the duct, for the heat of this duct as its load goes."),
    ]
    mutual_heating_factor: Annotated[
        float,
        Meta(description="Product over the other loaded ducts of image distance over distance; 1 of a single one."),
    ]


class GroundingSize(Struct, frozen=True, gc=False):
    """The least equipment grounding conductor in every duct of a circuit."""

    copper: Annotated[ConductorSize, Meta(description="Least size in copper.")]
    aluminum: Annotated[ConductorSize, Meta(description="Least size in aluminum.")]


class CircuitAmpacity(Struct, frozen=True, gc=False, kw_only=True):
    """One circuit, all its sets together."""

    name: Annotated[str | UnsetType, Meta(description="What the request calls it.")] = UNSET
    ducts: Annotated[list[str], Meta(description="Its ducts.", max_length=MOST_LOADED)]
    parallel_count: Annotated[int, Meta(description="Sets in parallel.")]
    current: Annotated[
        answers.Current, Meta(description="Current of the circuit, as given or as found that it may be.")
    ]
    conductor_current: Annotated[answers.Current, Meta(description="Current in each loaded conductor.")]
    conductor_temperature: Annotated[answers.Temperature, Meta(description="Temperature of the hottest conductor.")]
    temperature_limit: Annotated[answers.Temperature, Meta(description="Most that its conductors may reach.")]
    verdict: Annotated[Verdict | UnsetType, Meta(description="Where its current was given.")] = UNSET
    ampacity: Annotated[
        answers.Current | UnsetType,
        Meta(
            description="What it may carry: where currents are looked for, with the same in every conductor, so that a "
            "cooler circuit could carry more; where all are given, with all of them raised alike."
        ),
    ] = UNSET
    table_ampacity: Annotated[
        answers.Current | UnsetType, Meta(description="Ampacity of the circuit by the table of the code, to 2000 V.")
    ] = UNSET
    adjusted_table_ampacity: Annotated[
        answers.Current | UnsetType,
        Meta(description="table_ampacity, corrected for the earth and the count in a duct."),
    ] = UNSET
    terminal_temperature: Annotated[
        answers.Temperature | UnsetType, Meta(description="Temperature that the terminals are taken for.")
    ] = UNSET
    terminal_ampacity: Annotated[
        answers.Current | UnsetType, Meta(description="Current that terminals and insulation allow the circuit.")
    ] = UNSET
    grounding_conductor: Annotated[
        GroundingSize | UnsetType, Meta(description="Least grounding conductor, where the overcurrent device is given.")
    ] = UNSET


class OtherMethod(Struct, frozen=True, gc=False):
    """The method that allows more, where both were asked."""

    method: Annotated[AmpacityMethod, Meta(description="The method.")]
    ampacity: Annotated[answers.Current, Meta(description="What it allows.")]
    conductor_temperature: Annotated[answers.Temperature, Meta(description="Temperature of its hottest conductor.")]
    difference_percent: Annotated[float, Meta(description="By how much it allows more.")]


class AmpacitySensitivity(Struct, frozen=True, gc=False):
    """What a member of the request, greater by a step, makes of the ampacity."""

    member: Annotated[str, Meta(description="Name of the member that is greater, such as cover.", max_length=40)]
    step_percent: Annotated[float, Meta(description="By how much the member is greater.")]
    ampacity: Annotated[answers.Current, Meta(description="The ampacity then.")]
    ampacity_change_percent: Annotated[
        float, Meta(description="Change of the ampacity in percent; negative where it falls.")
    ]


class AmpacityResult(Struct, frozen=True, gc=False, kw_only=True):
    """What the bank may carry, and how warm it becomes."""

    method: Annotated[AmpacityMethod, Meta(description="The method of the figures; of both the one that allows less.")]
    ampacity: Annotated[answers.Current, Meta(description="The least of the circuits, each with all its sets.")]
    governing_duct: Annotated[str, Meta(description="The duct whose conductor is nearest to its limit.", max_length=7)]
    governing_temperature: Annotated[
        answers.Temperature, Meta(description="Temperature of the conductor of governing_duct.")
    ]
    current_factor: Annotated[
        float | UnsetType, Meta(description="By which all currents may be multiplied, where all are given.")
    ] = UNSET
    single_duct_ampacity: Annotated[
        answers.Current,
        Meta(description="Ampacity of the circuit that governs, all its sets, were each duct loaded alone."),
    ]
    single_duct_ratio: Annotated[
        float, Meta(description="What the circuit that governs may carry here, over single_duct_ampacity.")
    ]
    envelope_width: Annotated[answers.Length, Meta(description="Width of the concrete, or of the bare ducts.")]
    envelope_height: Annotated[answers.Length, Meta(description="Height of the concrete, or of the bare ducts.")]
    center_depth: Annotated[answers.Length, Meta(description="From grade to the center of the envelope.")]
    circuits: Annotated[
        list[CircuitAmpacity], Meta(description="The circuits, as in the request.", max_length=MOST_LOADED)
    ]
    ducts: Annotated[list[DuctHeat], Meta(description="Loaded ducts, circuit by circuit.", max_length=MOST_LOADED)]
    other_method: Annotated[OtherMethod | UnsetType, Meta(description="Where both were asked.")] = UNSET
    sensitivities: (
        Annotated[
            list[AmpacitySensitivity],
            Meta(
                description="What each figure of the earth does to the ampacity, if asked.",
                max_length=MOST_SENSITIVITIES,
            ),
        ]
        | UnsetType
    ) = UNSET
    smallest_size: Annotated[
        ConductorSize | UnsetType,
        Meta(description="Smallest size that carries the currents, taken by all circuits alike; if asked."),
    ] = UNSET
    largest_earth_resistivity: Annotated[
        answers.ThermalResistivity | UnsetType,
        Meta(description="Largest resistivity of the earth in which the currents are still carried; if asked."),
    ] = UNSET
    smallest_separation: Annotated[
        answers.Length | UnsetType,
        Meta(description="Smallest clear separation of all ducts at which the currents are still carried; if asked."),
    ] = UNSET


class Asked(NamedTuple):
    """A bank that was rated, with what was asked beside."""

    found: Ampacity
    studied: Studied


def tell(asked: Asked, telling: Telling) -> AmpacityResult:
    """Put the ampacity of a bank into the caller's units."""
    found, studied = asked
    solved, section = found.solved, found.solved.question.section
    load, duct = solved.governing
    current, temperature, size = telling.current, telling.temperature, telling.size
    may = _may_carry(solved, load)
    return AmpacityResult(
        method=solved.question.method,
        ampacity=current(solved.ampacity),
        governing_duct=found.names[duct],
        governing_temperature=temperature(solved.balance.ducts[solved.balance.governing].conductor),
        current_factor=UNSET if solved.current_factor is None else solved.current_factor,
        single_duct_ampacity=current(found.alone * load.sets),
        single_duct_ratio=may / found.alone if found.alone > 0.0 else 0.0,
        envelope_width=size(section.width),
        envelope_height=size(section.height),
        center_depth=size(section.center),
        circuits=[_circuit(rated, found, telling) for rated in found.circuits],
        ducts=_ducts(found, telling),
        other_method=UNSET if found.other is None else _other(found, found.other, telling),
        sensitivities=[
            AmpacitySensitivity(one.member, STEP.value, current(one.ampacity), _change(one.ampacity, solved.ampacity))
            for one in studied.sensitivities
        ]
        or UNSET,
        smallest_size=UNSET if studied.size is None else studied.size,
        largest_earth_resistivity=(
            UNSET if studied.resistivity is None else telling.thermal_resistivity(studied.resistivity)
        ),
        smallest_separation=UNSET if studied.separation is None else size(studied.separation),
    )


def _may_carry(solved: Solved, load: CircuitLoad) -> float:
    """Give what a conductor of a circuit may carry in the bank [A]."""
    at = next(index for index, one in enumerate(solved.question.loads) if one is load)
    return solved.currents[at] * (1.0 if solved.current_factor is None else solved.current_factor)


def _change(now: float, before: float) -> float:
    return (now / before - 1.0) * 100.0 if before > 0.0 else 0.0


def _other(found: Ampacity, other: Solved, telling: Telling) -> OtherMethod:
    return OtherMethod(
        other.question.method,
        telling.current(other.ampacity),
        telling.temperature(other.balance.ducts[other.balance.governing].conductor),
        difference_percent(found.solved, other),
    )


def _circuit(rated: Rated, found: Ampacity, telling: Telling) -> CircuitAmpacity:
    load, checked, current = rated.load, rated.checked, telling.current

    def amperes(value: float | None) -> answers.Current | UnsetType:
        return UNSET if value is None else current(value)

    grounding = checked.grounding
    return CircuitAmpacity(
        name=UNSET if load.name is None else load.name,
        ducts=[found.names[duct] for duct in load.ducts],
        parallel_count=load.sets,
        current=current(rated.conductor_current * load.sets),
        conductor_current=current(rated.conductor_current),
        conductor_temperature=telling.temperature(rated.conductor),
        temperature_limit=telling.temperature(load.limit),
        verdict=UNSET if load.current is None else Verdict.of(within_limits(rated, found)),
        ampacity=amperes(rated.ampacity),
        table_ampacity=amperes(checked.table),
        adjusted_table_ampacity=amperes(checked.adjusted),
        terminal_temperature=UNSET if checked.terminals is None else telling.temperature(checked.terminals + 273.15),
        terminal_ampacity=amperes(checked.terminal_ampacity),
        grounding_conductor=(
            UNSET
            if grounding is None
            else GroundingSize(ConductorSize(grounding.copper), ConductorSize(grounding.aluminum))
        ),
    )


def _ducts(found: Ampacity, telling: Telling) -> list[DuctHeat]:
    """Tell every loaded duct, circuit by circuit."""
    question, loaded = found.solved.question, found.loaded
    paths, ground = paths_of(question), ground_of(question)
    told = []
    for at, (one, path) in enumerate(zip(loaded, paths, strict=True)):
        factor = math.prod([image_ratio(one.place, other.place) for other in loaded if other is not one])
        own, idle = ground.cyclic[at][at], path.conductors * one.heat.dielectric_loss
        alone = own * (one.heat.heat - idle) + ground.steady[at][at] * idle
        rise = one.heat.outside - ground.ambient - alone
        told.append(_duct(found, one, path, (own, max(rise, 0.0) if len(loaded) > 1 else 0.0, factor), telling))
    return told


def _duct(
    found: Ampacity, one: LoadedDuct, path: Path, earth: tuple[float, float, float], telling: Telling
) -> DuctHeat:
    own, rise, factor = earth
    heat, placed = one.heat, found.envelope.bank.ducts[one.duct]
    temperature, watts, resistance = telling.temperature, telling.power_per_length, telling.thermal_resistance
    return DuctHeat(
        duct=one.name,
        pointer=found.solved.question.loads[one.circuit - 1].sheet.place,
        tier=placed.tier + 1,
        x=telling.size(placed.x),
        depth=telling.size(one.place.depth),
        conductor_current=telling.current(found.solved.currents[one.circuit - 1]),
        conductor_temperature=temperature(heat.conductor),
        temperature_limit=temperature(one.limit),
        cable_temperature=temperature(heat.cable),
        air_temperature=temperature(heat.air),
        duct_temperature=temperature(heat.outside),
        mutual_rise=telling.difference(rise),
        conductor_resistance=telling.resistance_per_length(heat.resistance),
        conductor_loss=watts(heat.conductor_loss),
        shield_loss=watts(heat.shield_loss),
        dielectric_loss=watts(heat.dielectric_loss),
        heat=watts(heat.heat),
        insulation_resistance=resistance(path.insulation),
        jacket_resistance=resistance(path.jacket),
        air_resistance=resistance(heat.air_resistance),
        wall_resistance=resistance(path.wall),
        earth_resistance=resistance(own),
        mutual_heating_factor=factor,
    )
