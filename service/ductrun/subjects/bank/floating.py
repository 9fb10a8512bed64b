"""Ducts in a fluid: how hard they push upward, and what holds them down."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import flotation as engineering
from ductrun.engineering.bank import Bank, Envelope
from ductrun.engineering.spacing import stations_by_distance
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import DuctContents, FlotationMedium
from ductrun.subjects.bank.duct_masses import DuctWall, contents_mass, empty_masses
from ductrun.subjects.bank.flotation_practice import (
    CONTENTS,
    DENSITIES,
    EARTH_DENSITY,
    ENVELOPE_DENSITY,
    MEDIUM,
    SAFETY_FACTOR,
    STATION_SPACING,
    Floating,
)

CONTENTS_IN_WORDS = {
    DuctContents.EMPTY: "empty",
    DuctContents.WATER: "full of water",
    DuctContents.CABLE: "with cable in them",
}


class LineUplift(NamedTuple):
    """Like ducts of a tier, by its index: their number and outside diameter [m], the mass of one empty duct [kg/m] and
    its uplift [N/m], negative if it sinks.
    """

    tier: int
    duct_count: int
    outside: float
    duct_mass: float
    uplift: float


class Weights(NamedTuple):
    """What holds a bank down in groundwater, per length [N/m], less what it displaces; None where none was given."""

    concrete: float | None
    earth: float | None

    @property
    def both(self) -> float:
        """All that counts."""
        return (self.concrete or 0.0) + (self.earth or 0.0)


class Flotation(NamedTuple):
    """A bank that floats or sinks: uplift per length [N/m], forces on a station [N], tie-downs if they are counted."""

    bank: Bank
    lines: tuple[LineUplift, ...]
    weights: Weights
    full_uplift: float
    live_uplift: float
    station_spacing: float
    safety_factor: float
    station_uplift: float
    hold_down: float
    tie_downs: int | None
    all_tie_downs: int | None


def float_bank(
    given: Floating,
    envelope: Envelope,
    walls: Sequence[DuctWall],
    cover: float | None,
    length: float | None,
    sheet: Worksheet,
) -> Flotation:
    """Give the uplift of a bank and the tie-downs that hold it.

    The concrete of its envelope and the earth over it, `cover` [m], count in groundwater alone; `length` [m] of the run
    to count all tie-downs.
    """
    medium = sheet.settle("medium", given.medium, MEDIUM)
    density = sheet.settle("fluid_density", given.fluid_density, DENSITIES[medium]).si
    contents = sheet.settle("contents", given.contents, CONTENTS)
    lines = _lines(given, contents, walls, density, sheet)
    full = sum([line.uplift * line.duct_count for line in lines])
    ducts = _live_uplift(given, medium, envelope, lines, full, sheet)
    weights = Weights(None, None)
    if medium is FlotationMedium.GROUNDWATER:
        weights = _weights(given, envelope, cover, density, sheet)
    spacing = sheet.settle("station_spacing", given.station_spacing, STATION_SPACING).si
    factor = sheet.settle("safety_factor", given.safety_factor, SAFETY_FACTOR)
    live = max(0.0, ducts - weights.both)
    held = engineering.hold_down(ducts, factor, weights.both) * spacing
    at_each = _tie_downs(given, held)
    of_all = None
    if at_each is not None and length is not None:
        of_all = at_each * stations_by_distance(length, spacing, 0.0)
    found = Flotation(
        envelope.bank, tuple(lines), weights, full, live, spacing, factor, live * spacing, held, at_each, of_all
    )
    _report(found, medium, contents, sheet)
    if sheet.working is not None:
        _show(found, density, ducts, sheet)
    return found


def uplift_in_fluid(
    given: Floating, walls: Sequence[DuctWall], contents: DuctContents, density: float, sheet: Worksheet
) -> float:
    """Give the uplift of all ducts together [N/m] in a fluid of a density [kg/m3], negative if they sink."""
    return sum([line.uplift * line.duct_count for line in _lines(given, contents, walls, density, sheet)])


def _lines(
    given: Floating, contents: DuctContents, walls: Sequence[DuctWall], density: float, sheet: Worksheet
) -> list[LineUplift]:
    """Give the ducts of every tier with their uplift in a fluid of a density [kg/m3]."""
    masses = empty_masses(given, walls, sheet)
    return [
        LineUplift(
            wall.tier,
            wall.duct_count,
            wall.outside,
            mass,
            engineering.uplift(wall.outside, density, mass + contents_mass(given, contents, wall, sheet)),
        )
        for wall, mass in zip(walls, masses, strict=True)
    ]


def _live_uplift(
    given: Floating,
    medium: FlotationMedium,
    envelope: Envelope,
    lines: Sequence[LineUplift],
    full: float,
    sheet: Worksheet,
) -> float:
    """Give the uplift of the ducts per length [N/m] in the worst lift that is liquid at once; of all without lifts."""
    if given.lift_height is None:
        return max(0.0, full)
    if medium is FlotationMedium.GROUNDWATER:
        raise UnanswerableError(
            sheet.fault("lift_height", "only_in_a_pour", "Groundwater does not stiffen: leave the lift out.")
        )
    tiers = [0.0] * len(envelope.bank.tier_bottoms)
    for line in lines:
        tiers[line.tier] += line.uplift * line.duct_count
    return engineering.governing_lift(list(zip(envelope.bank.tier_bottoms, tiers, strict=True)), given.lift_height.si)


def _weights(given: Floating, envelope: Envelope, cover: float | None, density: float, sheet: Worksheet) -> Weights:
    """Give what lies on the ducts in groundwater of a density [kg/m3]: only what was given counts."""
    concrete = earth = None
    if envelope.concrete is not None:
        of_concrete = sheet.settle("concrete_density", given.concrete_density, ENVELOPE_DENSITY).si
        concrete = engineering.buoyant_weight(envelope.area - envelope.duct_area, of_concrete, density)
    if cover is not None:
        of_earth = sheet.settle("saturated_soil_density", given.saturated_soil_density, EARTH_DENSITY).si
        earth = engineering.buoyant_weight(envelope.width * cover, of_earth, density)
    return Weights(concrete, earth)


def _tie_downs(given: Floating, held: float) -> int | None:
    """Count the tie-downs for the force of a station [N], 0 where it stays down; None without the capacity of one."""
    if held <= 0.0:
        return 0
    if given.tie_down_capacity is None:
        return None
    return engineering.tie_downs(held, given.tie_down_capacity.si)


def _report(found: Flotation, medium: FlotationMedium, contents: DuctContents, sheet: Worksheet) -> None:
    if found.hold_down <= 0.0:
        return
    tell = sheet.tell
    held, apart = tell.force(found.hold_down), tell.distance(found.station_spacing)
    sheet.find(
        Severity.CAUTION,
        "bank_floats",
        f"The ducts ({CONTENTS_IN_WORDS[contents]}) push up{_against(found, medium, sheet)}: hold down "
        f"{text_of(held)} at each station with the factor of {found.safety_factor:g}.{_ADVICE[medium]}",
        WORKED_OUT,
        held,
        member="contents",
    )
    if found.tie_downs is None:
        sheet.find(
            Severity.CAUTION,
            "tie_downs_not_counted",
            f"Give the capacity of a tie-down to count them: each station, {text_of(apart)} from the next, must hold "
            f"{text_of(held)}.",
            WORKED_OUT,
            held,
            member="tie_down_capacity",
        )


_ADVICE = {
    FlotationMedium.CONCRETE: " Pour in lifts and let each stiffen.",
    FlotationMedium.SLURRY: "",
    FlotationMedium.GROUNDWATER: " More concrete or earth over them holds as well.",
}


def _against(found: Flotation, medium: FlotationMedium, sheet: Worksheet) -> str:
    """Say with how much ducts push up, and in groundwater what lies on them."""
    tell = sheet.tell.force_per_length
    if medium is not FlotationMedium.GROUNDWATER:
        return f" with {text_of(tell(found.live_uplift))}"
    weights = (("concrete", found.weights.concrete), ("earth", found.weights.earth))
    counted = [f"{text_of(tell(weight))} of {what}" for what, weight in weights if weight is not None]
    left = [what for what, weight in weights if weight is None]
    words = f" with {text_of(tell(found.full_uplift))}"
    if counted:
        words += f" against {' and '.join(counted)}, weighed in the water"
    return f"{words} (no {' and no '.join(left)} was counted)" if left else words


def _show(found: Flotation, density: float, ducts: float, sheet: Worksheet) -> None:
    tell = sheet.tell
    most = tell.force_per_length(max([line.uplift for line in found.lines]))
    sheet.show("u", "(pi/4 OD^2 rho - m) g", f"rho = {density:.6g} kg/m3", most)
    sheet.show(
        "F",
        "(uplift of the ducts x factor - weight on them) x spacing",
        f"({ducts:.6g} N/m x {found.safety_factor:g} - {found.weights.both:.6g} N/m) x {found.station_spacing:.6g} m",
        tell.force(found.hold_down),
    )
