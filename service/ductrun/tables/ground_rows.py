"""The rows of the tables about ducts in the ground; see rows.py for what every row carries."""

from __future__ import annotations

from dataclasses import dataclass

from ductrun.tables.rows import Row


@dataclass(frozen=True, slots=True, kw_only=True)
class Separation(Row):
    """A published clear separation between ducts."""

    services: str
    separation_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class EncasementCover(Row):
    """A published concrete cover outside the ducts: `usual`, or the `least` one that a rule allows."""

    top_in: float
    bottom_in: float
    side_in: float
    kind: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CoverTo1000V(Row):
    """Least cover of underground wiring to 1000 V at one location."""

    location: str
    direct_buried_cable_in: float
    rmc_imc_in: float
    nonmetallic_raceway_in: float
    gfci_residential_in: float
    low_voltage_control_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CoverAbove1000V(Row):
    """Least cover of underground wiring above 1000 V for one band of voltage."""

    voltage: str
    direct_buried_cable_in: float
    rtrc_pvc_hdpe_in: float
    rmc_imc_in: float
    under_building_or_slab_in: float
    airport_runway_in: float
    vehicular_area_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CementYield(Row):
    """Joints that one container of solvent cement makes; a quart makes fewer in the deeper sockets of pipe."""

    trade_size: str
    half_pint: int
    pint: int
    quart: int
    gallon: int
    plumbing_quart: int
    plumbing_standing: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SetTime(Row):
    """Time a joint is left alone, by temperature and size."""

    lowest_degf: float
    highest_degf: float
    trade_size_from: str
    trade_size_to: str
    minutes: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Soil(Row):
    """Loose and compacted volume of one volume of soil in the bank."""

    soil: str
    loose_per_bank: float
    compacted_per_bank: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SideSlope(Row):
    """Steepest side of an excavation under 20 ft deep, horizontal for one vertical."""

    soil_type: str
    horizontal_per_vertical: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ReinforcingBar(Row):
    """Nominal diameter and mass of a reinforcing bar."""

    bar: str
    diameter_in: float
    mass_lb_per_ft: float


@dataclass(frozen=True, slots=True, kw_only=True)
class AmbientLimit(Row):
    """What ambient a family of conduit bears: one that is `limited`, `unlimited`, or `by_listing`.

    It is limited to the service temperature of its `material`. `code_section` is the rule of the code that says so, in
    its editions; none where the listing alone does.
    """

    family: str
    rule: str
    material: str
    code_section: str


@dataclass(frozen=True, slots=True, kw_only=True)
class TieHook(Row):
    """What one hook of a tie takes of its bar."""

    bar: str
    hook_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DuctDensity(Row):
    """Density of what ducts are made of."""

    material: str
    density_lb_per_ft3: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PermittedUse(Row):
    """Whether a family of conduit may be used somewhere: yes, no, with the caution of the note, or left open by it.

    `from_edition` is the first code edition that the row holds for; a row without one holds until another takes over.
    """

    family: str
    use: str
    verdict: str
    from_edition: str
