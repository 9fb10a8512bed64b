"""What the cables of a pull and its gear may bear, each limit with its source and each open to the caller's own."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.pulling_limits import conductor_limit, counted_conductors
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import GIVEN, PRACTICE, Backing, backing_of
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import Default
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_mass import METAL_AREAS
from ductrun.subjects.parts.cable_set import CableSet, HeldConductor, Line
from ductrun.subjects.parts.cables import CABLE_TYPE, SHEATH, TEMPER, WIRE_TEMPER
from ductrun.subjects.parts.choices import ConductorMaterial, ConductorSize, ConductorTemper
from ductrun.subjects.pulling.choices import Attachment, ConductorCounting
from ductrun.subjects.pulling.practice import COUNTING, DEVICE_LIMIT
from ductrun.tables import TABLES
from ductrun.units import (
    ConductorAreaUnit,
    Force,
    ForcePerLength,
    ForcePerLengthUnit,
    ForceUnit,
)

_PASCALS = {  # of the units of the table
    "lbf/cmil": ForceUnit.LBF.scale / (ConductorAreaUnit.KCMIL.scale / 1000),
    "N/mm2": 1e6,
}


DEVICE_GIVEN, GRIP_GIVEN = GIVEN.of("pulling device"), GIVEN.of("basket grip")
_DEVICE = DEVICE_LIMIT.backing.of("pulling device")
_STRESS_GIVEN = Backing("the stress given", Standing.CALLER)


class Allowed(NamedTuple):
    """A limit [N] and the rule that decided."""

    limit: float
    rule: Backing


def _lowest_stresses() -> dict[tuple[str, str], tuple[float, Backing]]:
    """Give for each metal and temper the lowest published stress [Pa], and what backs it with the spread."""
    grouped: dict[tuple[str, str], list[tuple[float, Backing]]] = {}
    for row in TABLES["conductor_stress_limits"]:
        if row.key:
            pascals = row.limit * _PASCALS[row.unit]
            grouped.setdefault((row.material, row.key), []).append((pascals, backing_of(row)))
    lowest = {}
    for key, rows in grouped.items():
        pascals, backing = min(rows)
        most = max(rows)[0]
        spread = f"; published from {pascals / 1e6:.3g} to {most / 1e6:.3g} N/mm2" if most > pascals else ""
        lowest[key] = (pascals, backing.noting(spread))
    return lowest


def _lowest_pressures() -> dict[str, tuple[ForcePerLength, Backing]]:
    """Give for each kind of cable the lowest published sidewall pressure, and what backs it with the spread."""
    grouped: dict[str, list[tuple[float, ForcePerLength, Backing]]] = {}
    for row in TABLES["sidewall_limits"]:
        limit = ForcePerLength.parse(row.limit, row.unit)
        for key in row.keys:
            grouped.setdefault(key, []).append((limit.si, limit, backing_of(row)))
    lowest = {}
    for key, rows in grouped.items():
        least, limit, backing = min(rows, key=lambda row: row[0])
        most = max(row[0] for row in rows)
        spread = ""
        if over(most, least):
            pounds = [ForcePerLengthUnit.LBF_PER_FT.from_si(one) for one in (least, most)]
            spread = f"; published from {pounds[0]:,.0f} to {pounds[1]:,.0f} lbf/ft"
        lowest[key] = (limit, backing.noting(spread))
    return lowest


_STRESSES = _lowest_stresses()
_SIDEWALLS = _lowest_pressures()
_COUNTINGS = {row.key: row for row in TABLES["conductor_counting"] if row.key}
_GRIPS = {row.key: row for row in TABLES["basket_grip_limits"] if row.key}


class Bearing(NamedTuple):
    """What the conductors of one line bear: how many they are in all, metal `area` of one [m2], its `stress` [Pa]."""

    conductor_count: int
    material: ConductorMaterial
    area: float
    stress: float
    rule: Backing

    @property
    def each(self) -> float:
        """What one of them bears [N]."""
        return self.stress * self.area


def gear_limits(
    cables: CableSet, attachment: Attachment, device: Force | None, grip: Force | None, sheet: Worksheet
) -> list[Allowed]:
    """Give the tension [N] that device and, if the cable is held by its jacket, grip allow."""
    device_limit = sheet.settle("device_limit", device, DEVICE_LIMIT)
    limits = [Allowed(device_limit.si, _DEVICE if device is None else DEVICE_GIVEN)]
    if grip is not None:  # whatever the attachment: a limit that is given is never passed over
        return [*limits, Allowed(grip.si, GRIP_GIVEN)]
    if attachment is Attachment.BASKET_GRIP:
        limits += [_grip_limit(line, sheet) for line in cables.lines]
    return limits


def _grip_limit(line: Line, sheet: Worksheet) -> Allowed:
    row = _GRIPS[line.sheet.settle("sheath", line.given.sheath, SHEATH)]
    sheet.cite(row.source)
    return Allowed(Force.parse(row.limit, row.unit).si, backing_of(row).of("basket grip"))


def conductors_limit(cables: CableSet, counting: ConductorCounting | None, sheet: Worksheet) -> Allowed | None:
    """Give the tension [N] that the conductors bear; None, with a finding, where those of a line are not known.

    Of conductors that differ only the strongest count: the smaller ones, a ground beside phases, add nothing. They
    stretch alike, so where metals differ all are held to the lowest stress of any.
    """
    bearings: list[Bearing] = []
    unknown = False
    for line in cables.lines:
        if line.conductor is None:
            line.sheet.find(
                Severity.CAUTION,
                "tension_not_judged",
                "The conductors of a cable are not known: its tension is held against the pulling gear alone, and not "
                "judged. Give the conductor, or the allowable tension of the cable's maker.",
                PRACTICE,
                member="material" if line.is_wire else "conductor",
            )
            unknown = True
            continue
        bearings.append(_bearing(line, line.conductor, sheet))
    if unknown or not bearings:
        return None
    strongest, count, words = _counted(bearings)
    rule = _COUNTINGS[sheet.settle("conductor_counting", counting, COUNTING)]
    sheet.cite(rule.source)
    counted = counted_conductors(count, rule.three_counted, rule.more_than_three_factor)
    limit = conductor_limit(strongest.stress, strongest.area, counted)
    if sheet.working is not None:
        pounds = strongest.stress / _PASCALS["lbf/cmil"]
        circular_mils = strongest.area / ConductorAreaUnit.KCMIL.scale * 1000
        sheet.show(
            "T_conductors",
            "S x N x A",
            f"{pounds:.6g} lbf/cmil x {counted:g} of {count} x {circular_mils:.6g} cmil",
            sheet.tell.force(limit),
        )
    what = f"{counted:g} of {count} {strongest.material} conductors"
    return Allowed(limit, strongest.rule.of(what).noting(words))


def _counted(bearings: list[Bearing]) -> tuple[Bearing, int, str]:
    """Give the conductors that count, at the lowest stress of the set, how many they are, and the words for it."""
    if len(bearings) == 1:
        return bearings[0], bearings[0].conductor_count, ""
    words = ""
    if len({bearing.material for bearing in bearings}) > 1:
        weakest = min(bearings, key=lambda bearing: bearing.stress)
        bearings = [bearing._replace(stress=weakest.stress, rule=weakest.rule) for bearing in bearings]
        words = "; all at the lowest stress of their metals"
    most = max(bearing.each for bearing in bearings)
    strongest = [bearing for bearing in bearings if not under(bearing.each, most)]
    if len(strongest) < len(bearings):
        words += "; smaller ones add nothing"
    return strongest[0], sum(bearing.conductor_count for bearing in strongest), words


def _bearing(line: Line, conductor: HeldConductor, sheet: Worksheet) -> Bearing:
    area = metal_area(conductor)
    stress, rule = _stress_of(conductor, WIRE_TEMPER if line.is_wire else TEMPER, sheet)
    return Bearing(line.cable_count * conductor.in_one_cable, conductor.material, area, stress, rule)


def _stress_of(
    conductor: HeldConductor, tempers: dict[ConductorMaterial, Default[ConductorTemper]], sheet: Worksheet
) -> tuple[float, Backing]:
    """Give the pull per metal area [N/m2] and what backs it."""
    if conductor.allowable_stress is not None:
        return conductor.allowable_stress.si, _STRESS_GIVEN
    material = conductor.material
    temper = conductor.sheet.settle("temper", conductor.temper, tempers[material])
    found = _STRESSES.get((material, temper))
    if found is None:
        allowed = [key for metal, key in _STRESSES if metal == material]
        raise UnanswerableError(
            conductor.sheet.fault(
                "temper",
                "temper_not_listed",
                f"No pulling stress is on file for {material} of temper {temper}: {' or '.join(allowed)}, or "
                "give the allowable stress.",
                allowed,
            )
        )
    sheet.cite(found[1].source_id)
    return found


def metal_area(conductor: HeldConductor) -> float:
    """Give the metal area of one conductor [m2], from its size or as given."""
    size, area = conductor.size, conductor.area
    if (size is None) == (area is None):
        raise UnanswerableError(
            conductor.sheet.fault(
                "size" if size is None else "area",
                "one_of_two",
                "Give either the size or the area of the conductor.",
                [one.value for one in ConductorSize],
            )
        )
    if area is not None:
        return area.si
    assert size is not None  # noqa: S101  (one of the two is there)
    return METAL_AREAS[size]


def sidewall_limit(cables: CableSet, given: ForcePerLength | None, sheet: Worksheet) -> tuple[ForcePerLength, Backing]:
    """Give the sidewall pressure that the weakest of the cables allows, as printed or given, and what backs it."""
    if given is not None:
        return given, GIVEN
    limits = []
    for line in cables.lines:
        found = _SIDEWALLS[line.sheet.settle("cable_type", line.given.cable_type, CABLE_TYPE)]
        sheet.cite(found[1].source_id)
        limits.append(found)
    return min(limits, key=lambda one: one[0].si)
