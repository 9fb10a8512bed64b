"""The cables of a pull in SI: what each weighs and holds, and how the set lies in a bore."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import cable_sets as engineering
from ductrun.engineering.cables import Arrangement
from ductrun.engineering.pull_search import largest_complying
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import Backing
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import Default, choice, number, quantity
from ductrun.kit.wording import apart, in_percent
from ductrun.kit.worksheet import Fault, Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cable_mass import wire_mass
from ductrun.subjects.parts.cables import MOST_PULLED, Cable, CableLine
from ductrun.subjects.parts.choices import (
    CableArrangement,
    ConductorMaterial,
    ConductorSize,
    ConductorTemper,
    Insulation,
)
from ductrun.subjects.parts.conductors import row_of
from ductrun.subjects.parts.jam import caution_in_jam_band
from ductrun.tables.rows import Conductor as ConductorRow
from ductrun.units import STANDARD_GRAVITY, ConductorArea, Length, LengthUnit, Pressure

ARRANGEMENT = choice("pulling.arrangement", CableArrangement)
MANY_CABLES = number("pulling.many_cables_weight_correction")
CRADLE_RATIO = number("pulling.cradle_least_ratio")
TIGHT_PAIR = number("pulling.tight_pair_factor")
CLEARANCE_MINIMUM = quantity("pulling.clearance_minimum", Length)
_FILL_PERCENT = [number(f"fill.percent_{rule}") for rule in ("one_conductor", "two_conductors", "over_two_conductors")]
_ARRANGEMENTS = {arrangement.value: arrangement for arrangement in Arrangement}


class HeldConductor(NamedTuple):
    """The conductors within one cable, which a pulling eye holds; `sheet` is at the place where they are given."""

    material: ConductorMaterial
    size: ConductorSize | None
    area: ConductorArea | None
    temper: ConductorTemper | None
    allowable_stress: Pressure | None
    in_one_cable: int
    sheet: Worksheet


class Line(NamedTuple):
    """So many of one cable: `diameter` [m], `mass` of one [kg/m], its conductors if they are known, the cable as given
    and the `sheet` at its place. Building wire and bare conductor are out of a table (`is_wire`).
    """

    cable_count: int
    diameter: float
    mass: float
    conductor: HeldConductor | None
    is_wire: bool
    given: Cable
    sheet: Worksheet


class BorePlace(NamedTuple):
    """A conduit the cables lie in: the `sheet` at its place, and the section it is of, if it is not that of all;
    `filled` where what fills it, and whether that may jam, is judged beside the pull.
    """

    sheet: Worksheet
    section: int | None
    filled: bool = False


class CableSet(NamedTuple):
    """All cables of a pull: the lines, every diameter [m] in falling order, the `weight` of all [N/m], and the `sheet`
    at the place of the lines.
    """

    lines: list[Line]
    diameters: list[float]
    weight: float
    sheet: Worksheet


def settle_cables(lines: Sequence[CableLine], sheet: Worksheet) -> CableSet:
    """Settle what every line of cables is, on the sheet of the list; all faults at once."""
    faults = Gathering()
    settled: list[Line] = []
    for index, line in enumerate(lines):
        with faults:
            settled.append(_settle_line(line, sheet.within(f"{index}/cable")))
    faults.faults += _too_many(lines, sheet)
    faults.stop()
    diameters: list[float] = []
    mass = 0.0
    for one in settled:
        diameters += [one.diameter] * one.cable_count
        mass += one.cable_count * one.mass
    diameters.sort(reverse=True)
    return CableSet(settled, diameters, mass * STANDARD_GRAVITY, sheet)


def _too_many(lines: Sequence[CableLine], sheet: Worksheet) -> list[Fault]:
    total = sum([line.count for line in lines])
    if total <= MOST_PULLED:
        return []
    message = f"{total} cables: {MOST_PULLED} are the most."
    return [sheet.fault("", "too_many_cables", message, maximum=MOST_PULLED)]


def _settle_line(line: CableLine, sheet: Worksheet) -> Line:
    cable = line.cable
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each narrows the type)
        if cable.mass_per_length is None:
            raise UnanswerableError(
                sheet.fault("mass_per_length", "missing", "The pull needs the mass of the cable per length: give it.")
            )
        held = cable.conductor
        conductor = None
        if held is not None:
            metal = (held.material, held.size, held.area, held.temper, held.allowable_stress)
            conductor = HeldConductor(*metal, held.count, sheet.within("conductor"))
        return Line(line.count, cable.diameter.si, cable.mass_per_length.si, conductor, False, cable, sheet)
    row = row_of(cable, sheet)
    insulation = None if cable.kind == "bare" else cable.insulation
    mass = cable.mass_per_length
    kilograms = _derived_mass(row, cable.material, insulation, sheet) if mass is None else mass.si
    conductor = None
    if cable.material is not None:
        metal = (cable.material, cable.size, None, cable.temper, cable.allowable_stress)
        conductor = HeldConductor(*metal, 1, sheet)
    diameter = float(row.diameter_in) * LengthUnit.INCH.scale
    return Line(line.count, diameter, kilograms, conductor, True, cable, sheet)


_DERIVED = Backing(
    "derived: metal and insulation of the tables (a maker's figure governs)", Standing.DERIVED, "wire-mass-derivation"
)


def _derived_mass(
    row: ConductorRow, material: ConductorMaterial | None, insulation: Insulation | None, sheet: Worksheet
) -> float:
    """Give the mass [kg/m] that metal and insulation of the tables make; the caller may give another."""
    if material is None:
        raise UnanswerableError(
            sheet.fault(
                "material",
                "missing",
                "The mass of the wire follows from its metal: give the material, or the mass per length.",
                [metal.value for metal in ConductorMaterial],
            )
        )
    mass = wire_mass(row, material, insulation)
    sheet.settle("mass_per_length", None, Default(sheet.tell.mass_per_length(mass), _DERIVED))
    return mass


def settle_arrangement(cables: CableSet, given: CableArrangement | None, sheet: Worksheet) -> Arrangement | None:
    """Give the arrangement that is sure, None where it is not; refuses one in which so many cables cannot lie.

    Where several are possible and none is given, each check takes the worst of them, which is told as assumed.
    """
    diameters = cables.diameters
    possible = engineering.possible_arrangements(diameters)
    if given is None and len(possible) > 1:
        given = sheet.settle("arrangement", None, ARRANGEMENT)
    if given is None or given is CableArrangement.WORST_CASE:
        return None
    arrangement = _ARRANGEMENTS[given]
    if arrangement not in possible:
        allowed = [*(one.value for one in possible), CableArrangement.WORST_CASE.value]
        raise UnanswerableError(
            sheet.fault(
                "arrangement",
                "arrangement_impossible",
                f"{len(diameters)} such cables cannot lie {given.value}: {' or '.join(allowed)}.",
                allowed,
            )
        )
    return arrangement


def lie_in(
    cables: CableSet,
    bore: float,
    arrangement: Arrangement | None,
    factor: float | None,
    sheet: Worksheet,
    where: BorePlace,
) -> engineering.Lie:
    """Settle how the cables lie in a bore [m], that of `where`; refuses cables that do not pass."""
    diameters = cables.diameters
    if not engineering.passes(diameters, bore):
        raise UnanswerableError(_too_large(cables, bore, where))
    lie = engineering.lie_of(diameters, bore, arrangement, factor, MANY_CABLES.value, CRADLE_RATIO.value)
    if lie.arrangement is Arrangement.MANY:  # of several ways it may be another that rubs most
        sheet.settle("weight_correction_factor", factor, MANY_CABLES)
    else:
        sheet.leave("weight_correction_factor")
    sheet.cite("wall-reactions", "pulling-arrangement")
    if not where.filled:
        _caution_fill(diameters, bore, where.sheet)
    ratio = None if where.filled else engineering.jam_ratio(diameters, bore)
    if ratio is not None:
        caution_in_jam_band(ratio, where.sheet, triplexed=arrangement is Arrangement.TRIPLEXED)
    if len(diameters) == 2 and factor is None and lie.weight_correction > TIGHT_PAIR.value:
        where.sheet.find(
            Severity.CAUTION,
            "two_cables_wedge",
            f"Two cables have almost no room side by side: they wedge against each other and the wall, and multiply "
            f"friction by {lie.weight_correction:.2f}. Take a larger conduit.",
            TIGHT_PAIR.backing,
            lie.weight_correction,
            TIGHT_PAIR.value,
            member="",
        )
    if lie.clearance is not None and under(lie.clearance, CLEARANCE_MINIMUM.value.si):
        told, least = sheet.tell.size(lie.clearance), sheet.tell.given(CLEARANCE_MINIMUM.value)
        free, usual = apart(told, least)
        where.sheet.find(
            Severity.CAUTION,
            "little_clearance",
            f"Only {free} is free above the cables; {usual} is the usual least.",
            CLEARANCE_MINIMUM.backing,
            told,
            least,
            member="",
        )
    return lie


def _caution_fill(diameters: Sequence[float], bore: float, sheet: Worksheet) -> None:
    """Caution where the cables take more of a bore than conduit may be filled to: that is not the pull's to judge."""
    share = sum([diameter * diameter for diameter in diameters]) / (bore * bore) * 100
    most = _FILL_PERCENT[min(len(diameters), 3) - 1]
    if over(share, most.value):
        sheet.find(
            Severity.CAUTION,
            "conduit_overfilled",
            f"The cables take {share:.0f} percent of the conduit; {most.value:g} is the most for so many, unless "
            "rounding or a nipple lets them in. Take a larger conduit, or ask fill.",
            most.backing,
            in_percent(share),
            in_percent(most.value),
            member="",
        )


def _too_large(cables: CableSet, bore: float, where: BorePlace) -> Fault:
    """Say that the set does not pass, and how large its largest cable could be beside the others."""
    largest = max(cables.lines, key=lambda line: line.diameter)
    others = [
        diameter for line in cables.lines if line is not largest for diameter in [line.diameter] * line.cable_count
    ]

    def passes(diameter: float) -> bool:
        return engineering.passes(sorted([*others, *[diameter] * largest.cable_count], reverse=True), bore)

    cable = largest.given
    unit = LengthUnit.INCH
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each narrows the type)
        unit = cable.diameter.unit
    member = "size" if largest.is_wire else "diameter/value"
    most = largest_complying(passes, bore * 1e-6, bore)
    section = "" if where.section is None else f" of section {where.section + 1}"
    inside = f"the inside diameter{section}, {unit.from_si(bore):.4g} {unit.value}"
    what = f"{len(cables.diameters)} cables, the largest of {unit.from_si(largest.diameter):.4g} {unit.value}, "
    if most is None:
        return cables.sheet.fault(
            "", "cables_do_not_pass", f"{what}do not pass {inside}, however small the largest were."
        )
    most = min(most, largest.diameter)
    return largest.sheet.fault(
        member,
        "cables_do_not_pass",
        f"{what}do not pass {inside}: at most {unit.from_si(most):.4g} {unit.value} each for the largest.",
        maximum=Length(unit.from_si(most), unit),
    )
