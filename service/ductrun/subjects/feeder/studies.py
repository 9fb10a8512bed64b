"""What may be asked beside an ampacity: what a change costs, and how far one may go."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from ductrun.engineering import cable_sets
from ductrun.engineering.bank import Envelope
from ductrun.engineering.buried_heat import Place
from ductrun.engineering.heat_balance import Load, RunawayError
from ductrun.engineering.roots import falling_root
from ductrun.engineering.rounding import over
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import number
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.checks import allowed_by_code
from ductrun.subjects.feeder.choices import AmpacityStudy
from ductrun.subjects.feeder.circuits import CircuitLoad
from ductrun.subjects.feeder.solving import Solved, least_ampacity
from ductrun.subjects.feeder.thermal import Question, Section, solve
from ductrun.subjects.feeder.wire_sizes import sized, sizes_of
from ductrun.subjects.parts.choices import ConductorSize

STEP = number("feeder.resistivity_step_percent")
RESISTIVITIES = (0.2, 10.0)  # [K.m/W] what may be asked
SEPARATIONS = (0.0, 240 * 0.0254)  # [m]
MOST_SENSITIVITIES = 3


class Sensitivity(NamedTuple):
    """What a member of the request, greater by the step, makes of the ampacity [A]."""

    member: str
    ampacity: float


class Studied(NamedTuple):
    """What was asked beside; None where nothing was asked, or nothing is enough.

    `size` that all circuits would take alike, earth `resistivity` [K.m/W], clear `separation` of all ducts [m].
    """

    sensitivities: tuple[Sensitivity, ...] = ()
    size: ConductorSize | None = None
    resistivity: float | None = None
    separation: float | None = None


def study(asked: Sequence[AmpacityStudy] | None, envelope: Envelope, solved: Solved, sheet: Worksheet) -> Studied:
    """Answer what was asked beside the ampacity."""
    if not asked:
        return Studied()
    question = solved.question
    if set(asked) - {AmpacityStudy.SENSITIVITY}:
        _refuse_without_currents(question.loads)
    found = Studied()
    if AmpacityStudy.SENSITIVITY in asked:
        found = found._replace(sensitivities=tuple(_sensitivities(question)))
    if AmpacityStudy.SMALLEST_SIZE in asked:
        found = found._replace(size=_smallest_size(question, sheet))
    if AmpacityStudy.LARGEST_EARTH_RESISTIVITY in asked:
        found = found._replace(resistivity=_largest_resistivity(question, sheet))
    if AmpacityStudy.SMALLEST_SEPARATION in asked:
        found = found._replace(separation=_smallest_separation(question, envelope, sheet))
    return found


def _refuse_without_currents(loads: Sequence[CircuitLoad]) -> None:
    faults = [
        load.sheet.fault("current", "missing", "Give the current: what still carries it is asked.")
        for load in loads
        if load.current is None
    ]
    if faults:
        raise UnanswerableError(*faults)


def _sensitivities(question: Question) -> Iterator[Sensitivity]:
    grown = 1.0 + STEP.value / 100.0
    earth, section = question.earth, question.section
    more = earth._replace(earth=earth.earth * grown)
    yield Sensitivity("earth_thermal_resistivity", least_ampacity(question._replace(earth=more)))
    if earth.concrete is not None:
        more = earth._replace(concrete=earth.concrete * grown)
        yield Sensitivity("concrete_thermal_resistivity", least_ampacity(question._replace(earth=more)))
    deeper = (section.center - section.height / 2.0) * (grown - 1.0)
    lowered = section._replace(
        places=[place._replace(depth=place.depth + deeper) for place in section.places], center=section.center + deeper
    )
    yield Sensitivity("cover", least_ampacity(question._replace(section=lowered)))


def _margin(question: Question) -> float:
    """Give how much all given currents may grow by (ratio), less 1: what is negative is too much."""
    loads = [Load(0.0, ((load.current or 0.0) / load.sets) ** 2) for load in question.loads]
    try:
        return math.sqrt(solve(question, loads).square) - 1.0
    except RunawayError:  # of the heat of insulation alone
        return -1.0


def _nothing(code: str, message: str, sheet: Worksheet) -> None:
    sheet.find(Severity.NOTE, code, message, WORKED_OUT, member="studies")


def _passing(question: Question, load: CircuitLoad) -> list[str]:
    """Give the sizes of the same wire with which the loaded conductors pass all ducts of a circuit."""
    bore = min([question.section.walls[duct].inside for duct in load.ducts])
    found = sizes_of(load.cable)
    return [size for size, diameter in found.items() if cable_sets.passes([diameter] * load.cable.cables, bore)]


def _smallest_size(question: Question, sheet: Worksheet) -> ConductorSize | None:
    """Give the smallest size with which every circuit carries its current, taken by all of them alike.

    What terminals allow, the device ahead and sets in parallel ask for decides too.
    """
    listed = [_passing(question, load) for load in question.loads]
    sizes = [size.value for size in ConductorSize if all(size.value in one for one in listed)]
    if not all(listed) or not sizes:
        _nothing(
            "no_size_to_choose", "No table lists other sizes of these cables: give the cable that is meant.", sheet
        )
        return None

    def carries(size: str) -> bool:
        loads = [load._replace(cable=sized(load.cable, size)) for load in question.loads]
        if not all(allowed_by_code(load) for load in loads):
            return False
        return not over(0.0, _margin(question._replace(loads=loads)) + 1e-9)

    low, high = 0, len(sizes) - 1
    if not carries(sizes[high]):
        _nothing(
            "no_size_carries_it",
            "No size on file carries these currents by heat and by code: take more sets.",
            sheet,
        )
        return None
    while low < high:
        middle = (low + high) // 2
        low, high = (low, middle) if carries(sizes[middle]) else (middle + 1, high)
    return ConductorSize(sizes[low])


def _largest_resistivity(question: Question, sheet: Worksheet) -> float | None:
    def margin(resistivity: float) -> float:
        return _margin(question._replace(earth=question.earth._replace(earth=resistivity)))

    found = falling_root(margin, *RESISTIVITIES, 1e-6)
    if found is not None and found >= RESISTIVITIES[1]:
        message = f"Even in earth of {RESISTIVITIES[1]:g} K.m/W, the most there is, the bank carries these currents."
        _nothing("any_earth_carries_it", message, sheet)
        return None
    if found is None:
        _nothing("no_earth_carries_it", "However good the earth, the bank does not carry these currents.", sheet)
    return found


def _smallest_separation(question: Question, envelope: Envelope, sheet: Worksheet) -> float | None:
    bank = envelope.bank
    if len(bank.ducts) < 2 or len({duct.diameter for duct in bank.ducts}) > 1 or math.isfinite(bank.gaps.power_signal):
        _nothing("separation_not_studied", "Only a bank of like ducts, two or more, has one separation to find.", sheet)
        return None

    def margin(nearness: float) -> float:
        return _margin(question._replace(section=spread(question.section, envelope, SEPARATIONS[1] - nearness)))

    found = falling_root(margin, *SEPARATIONS, 1e-6)
    if found is None:
        _nothing("no_separation_carries_it", "However far apart the ducts, they do not carry these currents.", sheet)
        return None
    return SEPARATIONS[1] - found


def spread(section: Section, envelope: Envelope, separation: float) -> Section:
    """Give a section with all ducts so far apart, clear [m], in tiers and between them, under the same cover."""
    bank = envelope.bank
    diameter = bank.ducts[0].diameter
    columns, tiers = max(bank.counts), len(bank.tier_tops)
    across = 1.0 if columns == 1 else (separation + diameter) / (bank.gaps.across + diameter)
    upward = 1.0 if tiers == 1 else (separation + diameter) / (bank.gaps.between + diameter)
    wider = 0.0 if columns == 1 else (columns - 1) * (separation - bank.gaps.across)
    taller = 0.0 if tiers == 1 else (tiers - 1) * (separation - bank.gaps.between)
    left, top = min([place.x for place in section.places]), min([place.depth for place in section.places])
    return section._replace(
        places=[Place(left + (one.x - left) * across, top + (one.depth - top) * upward) for one in section.places],
        width=section.width + wider,
        height=section.height + taller,
        center=section.center + taller / 2.0,
    )
