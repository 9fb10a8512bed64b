"""The cables of a pull: how they lie in the conduit and what they may bear."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from pydantic import Field

from ductrun.engineering import cables as engineering
from ductrun.engineering.pulling_limits import conductor_limit
from ductrun.operations.choices import (
    Attachment,
    CableArrangement,
    ConductorMaterial,
    ConductorSize,
    Severity,
)
from ductrun.operations.defaults import number, quantity
from ductrun.operations.inputs import CableMass, Diameter, Form, MetalArea, Omissible
from ductrun.operations.jam import caution_in_jam_band
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet, text_of
from ductrun.tables import TABLES
from ductrun.units import STANDARD_GRAVITY, ConductorArea, ConductorAreaUnit, Force, ForceUnit, Length

MANY_CABLES = number("pulling.many_cables_weight_correction")
CLEARANCE_MINIMUM = quantity("pulling.clearance_minimum", Length)
DEVICE_LIMIT = quantity("pulling.device_limit", Force)
BASKET_GRIP_LIMIT = quantity("pulling.basket_grip_limit", Force)
MORE_THAN_THREE = number("pulling.more_than_three_conductors")
STRESS = {
    ConductorMaterial.COPPER: number("pulling.copper_stress"),
    ConductorMaterial.ALUMINUM: number("pulling.aluminum_stress"),
}
_PASCALS = ForceUnit.LBF.scale / (ConductorAreaUnit.KCMIL.scale / 1000)  # of one lbf/cmil

# metal area [m2] of every size: Table 8 gives the circular mils of a gauge, a size in kcmil is its own area
_METAL_AREAS: dict[str, float] = {
    size: ConductorArea.parse(float(size.split()[0]), "kcmil").si for size in ConductorSize if size.endswith("kcmil")
} | {
    row.size: ConductorArea.parse(row.circular_mils / 1000, "kcmil").si
    for row in TABLES["conductors"]
    if row.table == "8" and row.size.endswith("AWG")
}


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
    weight_correction_factor: Omissible[Annotated[float, Field(ge=1, le=10)]] = Field(
        default=None,
        description="Factor on friction for cables side by side, in place of the one of their arrangement.",
        examples=[1.4],
    )


@dataclass(frozen=True, slots=True)
class Lie:
    """How a set of cables lies in a conduit, and the factors that follow; `weight` of all cables [N/m]."""

    arrangement: engineering.Arrangement
    ratio: float
    weight_correction: float
    sidewall_factor: float
    weight: float
    clearance: float | None


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
    given = engineering.Arrangement(cables.arrangement)
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


def allowable_tension(cables: CableSet, attachment: Attachment, sheet: Worksheet) -> tuple[float, str]:
    """Give the tension [N] the conductors, the grip and the device allow, and the words of the rule that decided."""
    limits = [(DEVICE_LIMIT.value.si, f"pulling device, {DEVICE_LIMIT.source}")]
    sheet.cite(DEVICE_LIMIT.source_id)
    if attachment is Attachment.BASKET_GRIP:
        limits.append((BASKET_GRIP_LIMIT.value.si, f"basket grip, {BASKET_GRIP_LIMIT.source}"))
        sheet.cite(BASKET_GRIP_LIMIT.source_id)
    if cables.conductor is None:
        sheet.find(
            Severity.CAUTION,
            "conductor_not_given",
            "Without the conductor the tension is held only against the pulling gear: give the conductor, or the "
            "allowable tension of the cable's maker.",
            "common practice, no source",
        )
    else:
        conductor = cables.conductor
        stress = STRESS[conductor.material]
        count = cables.count * conductor.count
        area = metal_area(conductor)
        limit = conductor_limit(stress.value * _PASCALS, area, count, MORE_THAN_THREE.value)
        limits.append((limit, f"{conductor.material} conductors, {stress.source}"))
        sheet.cite(stress.source_id)
        if sheet.working is not None:
            shared = f" x {MORE_THAN_THREE.value:g}" if count > 3 else ""
            circular_mils = area / ConductorAreaUnit.KCMIL.scale * 1000
            sheet.show(
                "T_conductors",
                "S x N x A, times 0.8 above three conductors",
                f"{stress.value:g} lbf/cmil x {count} x {circular_mils:.6g} cmil{shared}",
                sheet.tell.force(limit),
            )
    return min(limits)


def metal_area(conductor: PulledConductor) -> float:
    """Give the metal area of one conductor [m2], from its size or as given."""
    if (conductor.size is None) == (conductor.area is None):
        raise UnanswerableError(
            Fault(
                "#/cables/conductor/size" if conductor.size is None else "#/cables/conductor/area",
                "one_of_two",
                "Give either the size or the area of the conductor.",
                [size.value for size in ConductorSize],
            )
        )
    if conductor.area is not None:
        return conductor.area.si
    assert conductor.size is not None  # noqa: S101  (one of the two is there)
    return _METAL_AREAS[conductor.size]
