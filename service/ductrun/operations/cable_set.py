"""The cables of a pull: how they lie in the conduit and what they may bear."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import cables as engineering
from ductrun.operations.choices import (
    CableArrangement,
    CableSheath,
    CableShielding,
    CableType,
    ConductorMaterial,
    ConductorSize,
    ConductorTemper,
    Severity,
)
from ductrun.operations.defaults import number, quantity
from ductrun.operations.inputs import CableMass, Diameter, Form, MetalArea, Omissible, PullingStress
from ductrun.operations.jam import caution_in_jam_band
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.units import STANDARD_GRAVITY, Length

_ARRANGEMENTS = {arrangement.value: arrangement for arrangement in engineering.Arrangement}
MANY_CABLES = number("pulling.many_cables_weight_correction")
CLEARANCE_MINIMUM = quantity("pulling.clearance_minimum", Length)


class PulledConductor(Form):
    """The conductors within one cable."""

    material: ConductorMaterial = Field(description="Metal of the conductor.", examples=["copper"])
    size: Omissible[ConductorSize] = Field(
        default=None, description="Conductor size; give this or the area.", examples=["500 kcmil"]
    )
    area: Omissible[MetalArea] = Field(
        default=None,
        description="Metal area of one conductor; give this or the size.",
        examples=[{"value": 240, "unit": "mm2"}],
    )
    temper: Omissible[ConductorTemper] = Field(
        default=None, description="Temper or alloy of the metal.", examples=["aa_8000"]
    )
    allowable_stress: Omissible[PullingStress] = Field(
        default=None,
        description="Pull per metal area that the conductor bears, in place of the published one.",
        examples=[{"value": 70.2, "unit": "MPa"}],
    )
    count: Annotated[int, Field(ge=1, le=200)] = Field(
        description="Conductors of this size in one cable, shields and grounds not counted.", examples=[1]
    )


class CableSet(Form):
    """Equal cables pulled together."""

    count: Annotated[int, Field(ge=1, le=100)] = Field(description="Cables pulled together.", examples=[3])
    diameter: Diameter = Field(description="Outside diameter of one cable.", examples=[{"value": 1.42, "unit": "in"}])
    mass_per_length: CableMass = Field(
        description="Mass per length of one cable.", examples=[{"value": 2.6, "unit": "lb/ft"}]
    )
    conductor: Omissible[PulledConductor] = Field(
        default=None, description="What the pulling eye holds; without it only the gear limits the tension."
    )
    arrangement: Omissible[CableArrangement] = Field(
        default=None,
        description="How the cables lie; factory-triplexed cable is triangular.",
        examples=["triangular"],
    )
    cable_type: Omissible[CableType] = Field(
        default=None, description="Kind of cable, for its sidewall pressure.", examples=["power_shielded_5_to_35_kv"]
    )
    shielding: Omissible[CableShielding] = Field(
        default=None, description="Make-up of the cable, for its bending radius.", examples=["shielded"]
    )
    shielded_conductor_diameter: Omissible[Diameter] = Field(
        default=None,
        description="Outside diameter of one shielded conductor within an individually shielded cable.",
        examples=[{"value": 0.9, "unit": "in"}],
    )
    sheath: Omissible[CableSheath] = Field(
        default=None, description="What a basket grip would hold.", examples=["nonmetallic"]
    )
    weight_correction_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None,
        description="Factor on friction for cables side by side, in place of the one of their arrangement.",
        examples=[1.4],
    )


class Lie(NamedTuple):
    """How a set of cables lies in a conduit, and the factors that follow; `weight` of all cables [N/m]."""

    arrangement: engineering.Arrangement
    ratio: float
    weight_correction: float
    sidewall_factor: float
    weight: float
    clearance: float | None
    handbook_clearance: float | None


def lie_of(cables: CableSet, bore: float, sheet: Worksheet) -> Lie:
    """Settle how the cables lie in a bore [m]; refuses cables that do not pass."""
    diameter, count = cables.diameter.si, cables.count
    ratio = bore / diameter
    if ratio < engineering.least_ratio(count) * (1 - 1e-9):
        unit = cables.diameter.unit
        largest = unit.from_si(bore / engineering.least_ratio(count))
        raise UnanswerableError(
            Fault(
                "#/cables/diameter/value",
                "cables_do_not_pass",
                f"{count} cables of {cables.diameter} do not pass an inside diameter of {unit.from_si(bore):.4g} "
                f"{unit.value}: at most {largest:.4g} {unit.value} each.",
                {"maximum": {"value": largest, "unit": unit.value}},
            )
        )
    arrangement = _arrangement(cables, ratio, sheet)
    if count > 4 or cables.weight_correction_factor is not None:
        given = cables.weight_correction_factor
        weight_correction = sheet.settle("#/cables/weight_correction_factor", given, MANY_CABLES)
    else:
        weight_correction = engineering.weight_correction_factor(arrangement, ratio)
    sheet.cite("wall-reactions")
    if count == 3:
        caution_in_jam_band(ratio, sheet)
    clearance = engineering.clearance(arrangement, bore, diameter)
    if clearance is not None and clearance < CLEARANCE_MINIMUM.value.si:
        told = sheet.tell.size(clearance)
        sheet.find(
            Severity.CAUTION,
            "little_clearance",
            f"Only {text_of(told)} is free above the cables; {CLEARANCE_MINIMUM.value} is the usual least.",
            CLEARANCE_MINIMUM.source,
            told,
            sheet.tell.given(CLEARANCE_MINIMUM.value),
        )
    return Lie(
        arrangement,
        ratio,
        weight_correction,
        engineering.sidewall_factor(arrangement, weight_correction),
        count * cables.mass_per_length.si * STANDARD_GRAVITY,
        clearance,
        engineering.handbook_clearance(arrangement, bore, diameter),
    )


def _arrangement(cables: CableSet, ratio: float, sheet: Worksheet) -> engineering.Arrangement:
    if cables.arrangement is None:
        chosen = engineering.arrangement_for(cables.count, ratio)
        if cables.count == 3:
            sheet.assume(
                "#/cables/arrangement",
                chosen.value,
                f"from memory: by the ratio of conduit to cable diameter, {ratio:.2f} (triangular below 2.5, else the "
                "cradle, whose friction is higher)",
                "pulling-arrangement",
            )
        return chosen
    possible = engineering.ARRANGEMENTS_OF.get(cables.count, (engineering.Arrangement.MANY,))
    given = _ARRANGEMENTS[cables.arrangement]
    if given not in possible:
        allowed = [arrangement.value for arrangement in possible]
        raise UnanswerableError(
            Fault(
                "#/cables/arrangement",
                "arrangement_impossible",
                f"{cables.count} cables cannot lie {given.value}: {' or '.join(allowed)}.",
                allowed,
            )
        )
    return given
