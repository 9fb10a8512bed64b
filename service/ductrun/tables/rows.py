"""The rows of the reference tables, one frozen record a file, with the printed digits kept as they were printed.

Every row names its source (an id of sources.csv) and its standing: whether the figure was read in that source or
comes from memory. Columns that end in `_in`, `_in2`, `_mm` or `_ft` carry that unit; the inch column rules where
the two columns of a code table were rounded separately.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from ductrun.units import Length, LengthUnit

STANDINGS = frozenset(
    {
        "read",
        "read in two copies",
        "metric read, inch from memory",
        "metric read, inch converted",
        "from memory",
        "derived",
        "common practice, no source",
    }
)


@dataclass(frozen=True, slots=True)
class Source:
    """A cited document: `remark` says where its figures were read, if not in the document itself."""

    id: str
    citation: str
    remark: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """What every row carries: where the figure stands and whether it was read there."""

    source: str
    standing: str
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Conduit(Row):
    """One trade size of one conduit type. Utility duct has no bore here: no code table gives one."""

    type: str
    trade_size: str
    metric_designator: int
    inside_diameter_in: Decimal | None
    inside_diameter_mm: Decimal | None
    area_in2: Decimal | None
    area_mm2: Decimal | None
    area_60_in2: Decimal | None
    area_53_in2: Decimal | None
    area_31_in2: Decimal | None
    area_40_in2: Decimal | None
    outside_diameter_in: Decimal | None
    outside_diameter_mm: Decimal | None
    minimum_wall_in: Decimal | None
    minimum_wall_mm: Decimal | None
    wall_source: str
    wall_standing: str

    @property
    def inside_diameter(self) -> Length | None:
        """The bore, as printed in inches."""
        return None if self.inside_diameter_in is None else Length(float(self.inside_diameter_in), LengthUnit.INCH)

    @property
    def outside_diameter(self) -> Length | None:
        """The outside diameter, as printed in inches."""
        return None if self.outside_diameter_in is None else Length(float(self.outside_diameter_in), LengthUnit.INCH)


@dataclass(frozen=True, slots=True, kw_only=True)
class Conductor(Row):
    """One size of one conductor: Table 5 (insulated), 5A (compact) or 8 (bare; the area of its overall circle)."""

    table: str
    insulations: tuple[str, ...]
    stranding: str
    size: str
    diameter_in: Decimal
    diameter_mm: Decimal
    area_in2: Decimal
    area_mm2: Decimal
    circular_mils: int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class WireDensity(Row):
    """Density of a metal, or of the covering of some markings of insulation."""

    materials: tuple[str, ...]
    density_kg_per_m3: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Friction(Row):
    """A published range of the friction coefficient of one cable jacket against one conduit.

    `families` are those of the conduits it speaks of; none where it speaks of no conduit on file, or only in general.
    """

    jacket: str
    conduit: str
    families: tuple[str, ...]
    lubrication: str
    low: float
    high: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SidewallLimit(Row):
    """A published sidewall pressure of a kind of cable.

    `keys` are the kinds a caller chooses it by; the lowest row of a kind is its limit, and rows without one are there
    for comparison.
    """

    keys: tuple[str, ...]
    cable: str
    limit: float
    unit: str


@dataclass(frozen=True, slots=True, kw_only=True)
class GripLimit(Row):
    """A published force on a basket grip.

    `key` is what a caller chooses it by; rows without one are there for comparison.
    """

    key: str
    cable: str
    limit: float
    unit: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorStress(Row):
    """A published limit of the pull on a conductor per metal area.

    `key` is the temper a caller chooses it by; the lowest row of a temper is its limit.
    """

    key: str
    material: str
    cable: str
    limit: float
    unit: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorCounting(Row):
    """A published rule for how many of several conductors share the pull, as factors on their number."""

    key: str
    rule: str
    three_counted: float
    more_than_three_factor: float


@dataclass(frozen=True, slots=True, kw_only=True)
class JamBand(Row):
    """A published band of the jam ratio, plain (D/d) or with the 1.05 allowance for ovality in bends."""

    index: str
    low: float
    high: float
    verdict: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ConduitBend(Row):
    """Least center-line radius of a field bend."""

    trade_size: str
    metric_designator: int
    one_shot_in: float
    other_bends_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class HdpeBend(Row):
    """Least center-line radius of an HDPE field bend."""

    trade_size: str
    radius_in: float
    radius_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CableBend(Row):
    """Least bending radius of a cable as a multiple of a diameter."""

    key: str
    cable: str
    multiple: float
    of: str


@dataclass(frozen=True, slots=True, kw_only=True)
class VerticalSupport(Row):
    """Greatest rise of conductors of some sizes in a vertical raceway without a support."""

    size_from: str
    size_to: str
    aluminum_ft: float
    copper_ft: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Elbow(Row):
    """A center-line radius elbows are sold in."""

    item: str
    trade_size: str
    radius_in: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Support(Row):
    """Greatest distance between supports of conduit above ground, and from a termination to the nearest.

    `coupling` is the kind it holds for where that decides, `from_edition` the first code edition that has the sizes.
    """

    type: str
    coupling: str
    trade_size_from: str
    trade_size_to: str
    maximum_spacing_ft: float
    securing_within_ft: float
    from_edition: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Expansion(Row):
    """Coefficient of linear thermal expansion of a conduit material."""

    material: str
    coefficient: float
    unit: str
    coefficient_metric: float
    unit_metric: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ServiceTemperature(Row):
    """Highest temperature of the air that a material of conduit is permitted in; `rule` is that of the code."""

    material: str
    limit: float
    unit: str
    rule: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SpacerInterval(Row):
    """A published or customary interval between spacer stations, as a distance or as a count for each stick."""

    preset: str
    setting: str
    distance_ft: float | None
    count: int | None
    stick_length_ft: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Default(Row):
    """What is taken when the caller gives nothing: it always comes back under `assumptions`."""

    name: str
    value: str
    unit: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CodeSection(Row):
    """Where a rule stands in each edition of NFPA 70."""

    rule: str
    edition_2017: str
    edition_2020: str
    edition_2023: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FittingTravel(Row):
    """A travel expansion fittings are sold in."""

    travel_in: float
