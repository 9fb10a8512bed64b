"""What the cables of a pull and its gear may bear, each limit with its source and each open to the caller's own."""

from __future__ import annotations

from ductrun.engineering.pulling_limits import conductor_limit, counted_conductors
from ductrun.operations.cable_set import CableSet, PulledConductor
from ductrun.operations.choices import (
    Attachment,
    CableSheath,
    CableType,
    ConductorCounting,
    ConductorMaterial,
    ConductorSize,
    ConductorTemper,
    Severity,
)
from ductrun.operations.defaults import choice, quantity, standing_of
from ductrun.operations.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.tables import TABLES
from ductrun.units import ConductorArea, ConductorAreaUnit, Force, ForcePerLength, ForceUnit

DEVICE_LIMIT = quantity("pulling.device_limit", Force)
COUNTING = choice("pulling.conductor_counting", ConductorCounting)
SHEATH = choice("pulling.sheath", CableSheath)
CABLE_TYPE = choice("pulling.cable_type", CableType)
TEMPER = {
    ConductorMaterial.COPPER: choice("pulling.copper_temper", ConductorTemper),
    ConductorMaterial.ALUMINUM: choice("pulling.aluminum_temper", ConductorTemper),
}
_PASCALS = ForceUnit.LBF.scale / (ConductorAreaUnit.KCMIL.scale / 1000)  # of one lbf/cmil
_STRESSES = {(row.material, row.key): row for row in TABLES["conductor_stress_limits"] if row.key}
_COUNTINGS = {row.key: row for row in TABLES["conductor_counting"] if row.key}
_GRIPS = {row.key: row for row in TABLES["basket_grip_limits"] if row.key}
_SIDEWALLS = {row.key: (ForcePerLength.parse(row.limit, row.unit), row) for row in TABLES["sidewall_limits"] if row.key}

# metal area [m2] of every size: Table 8 gives the circular mils of a gauge, a size in kcmil is its own area
_METAL_AREAS: dict[str, float] = {
    size: ConductorArea.parse(float(size.split()[0]), "kcmil").si for size in ConductorSize if size.endswith("kcmil")
} | {
    row.size: ConductorArea.parse(row.circular_mils / 1000, "kcmil").si
    for row in TABLES["conductors"]
    if row.table == "8" and row.size.endswith("AWG")
}


def allowable_tension(
    cables: CableSet,
    attachment: Attachment,
    counting: ConductorCounting | None,
    device: Force | None,
    grip: Force | None,
    sheet: Worksheet,
) -> tuple[float, str]:
    """Give the tension [N] that conductors, grip and device allow, and the words of the rule that decided."""
    device_limit = sheet.settle("#/device_limit", device, DEVICE_LIMIT)
    limits = [(device_limit.si, f"pulling device, {DEVICE_LIMIT.source if device is None else 'the limit given'}")]
    if attachment is Attachment.BASKET_GRIP:
        limits.append(_grip_limit(cables, grip, sheet))
    if cables.conductor is None:
        sheet.find(
            Severity.CAUTION,
            "conductor_not_given",
            "Without the conductor the tension is held only against the pulling gear: give the conductor, or the "
            "allowable tension of the cable's maker.",
            "common practice, no source",
        )
    else:
        limits.append(_conductor_limit(cables.count, cables.conductor, counting, sheet))
    return min(limits)


def _grip_limit(cables: CableSet, grip: Force | None, sheet: Worksheet) -> tuple[float, str]:
    if grip is not None:
        return grip.si, "basket grip, the limit given"
    row = _GRIPS[sheet.settle("#/cables/sheath", cables.sheath, SHEATH)]
    sheet.cite(row.source)
    return Force.parse(row.limit, row.unit).si, f"basket grip, {standing_of(row)}"


def _conductor_limit(
    cables: int, conductor: PulledConductor, counting: ConductorCounting | None, sheet: Worksheet
) -> tuple[float, str]:
    stress, source = _stress_of(conductor, sheet)
    rule = _COUNTINGS[sheet.settle("#/conductor_counting", counting, COUNTING)]
    sheet.cite(rule.source)
    count = cables * conductor.count
    counted = counted_conductors(count, rule.three_counted, rule.more_than_three_factor)
    area = metal_area(conductor)
    limit = conductor_limit(stress, area, counted)
    if sheet.working is not None:
        circular_mils = area / ConductorAreaUnit.KCMIL.scale * 1000
        sheet.show(
            "T_conductors",
            "S x N x A",
            f"{stress / _PASCALS:.6g} lbf/cmil x {counted:g} of {count} x {circular_mils:.6g} cmil",
            sheet.tell.force(limit),
        )
    return limit, f"{conductor.material} conductors, {source}"


def _stress_of(conductor: PulledConductor, sheet: Worksheet) -> tuple[float, str]:
    """Give the pull per metal area [N/m2] and the words of its source."""
    if conductor.allowable_stress is not None:
        return conductor.allowable_stress.si, "the stress given"
    temper = sheet.settle("#/cables/conductor/temper", conductor.temper, TEMPER[conductor.material])
    row = _STRESSES.get((conductor.material, temper))
    if row is None:
        allowed = [key for material, key in _STRESSES if material == conductor.material]
        raise UnanswerableError(
            Fault(
                "#/cables/conductor/temper",
                "temper_not_listed",
                f"No pulling stress is on file for {conductor.material} of temper {temper}: {' or '.join(allowed)}, or "
                "give the allowable stress.",
                allowed,
            )
        )
    sheet.cite(row.source)
    return row.limit * _PASCALS, standing_of(row)


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


def sidewall_limit(cables: CableSet, given: ForcePerLength | None, sheet: Worksheet) -> tuple[ForcePerLength, str]:
    """Give the sidewall pressure the cable allows, as printed or given, and the words of its source."""
    if given is not None:
        return given, "the limit given"
    limit, row = _SIDEWALLS[sheet.settle("#/cables/cable_type", cables.cable_type, CABLE_TYPE)]
    sheet.cite(row.source)
    return limit, standing_of(row)
