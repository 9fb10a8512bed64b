"""The reference tables as the API shows them: every row in both unit systems, with its source and standing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated, Any

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.subjects.movement.choices import ConduitMaterial
from ductrun.subjects.parts.choices import ConductorSize, ConduitType, Insulation, TradeSize
from ductrun.tables import TABLES
from ductrun.units import UNIT_CODES, Area, Code, Length


class ReferenceRow(Struct, frozen=True, kw_only=True):
    """Where a row stands and whether it was read there."""

    source: Annotated[str, Meta(description="Id of the source; see /v1/tables/sources.")]
    standing: Annotated[str, Meta(description="Read in the source, or from memory.")]
    note: Annotated[str | UnsetType, Meta(description="Remark on the row.")] = UNSET


class ConduitRow(ReferenceRow, frozen=True, kw_only=True):
    """One trade size of one conduit type; utility duct has no inside diameter here."""

    type: ConduitType
    trade_size: TradeSize
    metric_designator: Annotated[int, Meta(description="Metric designator; a label, not a dimension.")]
    inside_diameter: Length | UnsetType = UNSET
    inside_diameter_metric: Length | UnsetType = UNSET
    area: Area | UnsetType = UNSET
    area_metric: Area | UnsetType = UNSET
    outside_diameter: Length | UnsetType = UNSET
    outside_diameter_metric: Length | UnsetType = UNSET
    minimum_wall: Length | UnsetType = UNSET
    minimum_wall_metric: Length | UnsetType = UNSET
    wall_source: Annotated[str | UnsetType, Meta(description="Source of outside diameter and wall.")] = UNSET
    wall_standing: Annotated[str | UnsetType, Meta(description="Standing of outside diameter and wall.")] = UNSET


class ConductorRow(ReferenceRow, frozen=True, kw_only=True):
    """One size of one conductor of Chapter 9, Table 5, 5A or 8."""

    table: Annotated[str, Meta(description="Table of Chapter 9.")]
    insulations: Annotated[tuple[str, ...], Meta(description="Markings the row serves; an asterisk: without covering.")]
    size: ConductorSize
    diameter: Length
    diameter_metric: Length
    area: Annotated[Area, Meta(description="Area over the insulation; of a bare conductor, its overall circle.")]
    area_metric: Area
    stranding: Annotated[str | UnsetType, Meta(description="Make-up, where the table tells.")] = UNSET


class MaterialRow(ReferenceRow, frozen=True, kw_only=True):
    """Coefficient of linear expansion of one conduit material."""

    material: ConduitMaterial
    coefficient_per_degf: float
    coefficient_per_degc: float


class FrictionRow(ReferenceRow, frozen=True, kw_only=True):
    """A published range of the coefficient of friction of a cable jacket against a conduit."""

    jacket: str
    conduit: str
    lubrication: str
    low_coefficient: float
    high_coefficient: float


class UnitRow(Struct, frozen=True):
    """One unit code: SI value = factor x value + offset; a grade in percent is the arc tangent of that."""

    dimension: str
    unit: str
    ucum: Annotated[str, Meta(description="UCUM code.")]
    si_unit: str
    si_factor: float
    si_offset: float


class SourceRow(Struct, frozen=True):
    """A cited document."""

    id: str
    citation: str
    remark: Annotated[str | UnsetType, Meta(description="Where its figures were read.")] = UNSET


@dataclass(frozen=True, slots=True)
class ReferenceTable:
    """One table of the API: its name in the path, what it holds, and its rows."""

    name: str
    summary: str
    description: str
    row: type[Struct]
    rows: Callable[[], list[Any]]

    @property
    def operation_id(self) -> str:
        """The id of the GET in the contract."""
        return f"list_{self.name}"


@dataclass(frozen=True, slots=True)
class Picker:
    """The rows of one table that belong to one choice, for a list a person picks from, page by page."""

    table: ReferenceTable
    parameter: str
    choices: type[Code]
    belongs: Callable[[Any, str], bool]

    @property
    def operation_id(self) -> str:
        """The id of the GET in the contract."""
        return f"pick_{self.table.name}"

    def rows(self, choice: str) -> list[Any]:
        """Give the rows of one choice, in the order of the table."""
        return [row for row in self.table.rows() if self.belongs(row, choice)]


def _length(number: Decimal | None, unit: str) -> Length | UnsetType:
    return UNSET if number is None else Length.parse(float(number), unit)


def _area(number: Decimal | None, unit: str) -> Area | UnsetType:
    return UNSET if number is None else Area.parse(float(number), unit)


def _text(text: str) -> str | UnsetType:
    return text or UNSET


def _conduits() -> list[ConduitRow]:
    return [
        ConduitRow(
            type=ConduitType(row.type),
            trade_size=TradeSize(row.trade_size),
            metric_designator=row.metric_designator,
            inside_diameter=_length(row.inside_diameter_in, "in"),
            inside_diameter_metric=_length(row.inside_diameter_mm, "mm"),
            area=_area(row.area_in2, "in2"),
            area_metric=_area(row.area_mm2, "mm2"),
            outside_diameter=_length(row.outside_diameter_in, "in"),
            outside_diameter_metric=_length(row.outside_diameter_mm, "mm"),
            minimum_wall=_length(row.minimum_wall_in, "in"),
            minimum_wall_metric=_length(row.minimum_wall_mm, "mm"),
            wall_source=_text(row.wall_source),
            wall_standing=_text(row.wall_standing),
            source=row.source or row.wall_source,
            standing=row.standing or row.wall_standing,
            note=_text(row.note),
        )
        for row in TABLES["conduits"]
    ]


def _conductors() -> list[ConductorRow]:
    return [
        ConductorRow(
            table=row.table,
            insulations=row.insulations,
            stranding=_text(row.stranding),
            size=ConductorSize(row.size),
            diameter=Length.parse(float(row.diameter_in), "in"),
            diameter_metric=Length.parse(float(row.diameter_mm), "mm"),
            area=Area.parse(float(row.area_in2), "in2"),
            area_metric=Area.parse(float(row.area_mm2), "mm2"),
            source=row.source,
            standing=row.standing,
            note=_text(row.note),
        )
        for row in TABLES["conductors"]
    ]


def _materials() -> list[MaterialRow]:
    return [
        MaterialRow(
            material=ConduitMaterial(row.material),
            coefficient_per_degf=row.coefficient,
            coefficient_per_degc=row.coefficient_metric,
            source=row.source,
            standing=row.standing,
            note=_text(row.note),
        )
        for row in TABLES["expansion_coefficients"]
    ]


def _friction() -> list[FrictionRow]:
    return [
        FrictionRow(
            jacket=row.jacket,
            conduit=row.conduit,
            lubrication=row.lubrication,
            low_coefficient=row.low,
            high_coefficient=row.high,
            source=row.source,
            standing=row.standing,
            note=_text(row.note),
        )
        for row in TABLES["friction_coefficients"]
    ]


def _units() -> list[UnitRow]:
    return [
        UnitRow(dimension.__name__, code.text, code.ucum, code.si_unit, code.scale, code.zero)
        for dimension, codes in UNIT_CODES.items()
        for code in codes
    ]


def _sources() -> list[SourceRow]:
    return [SourceRow(row.id, row.citation, _text(row.remark)) for row in TABLES["sources"]]


CONDUITS = ReferenceTable(
    "conduits",
    "Conduit and duct dimensions",
    "Inside and outside diameters, areas and walls of every type and trade size, as printed.",
    ConduitRow,
    _conduits,
)
CONDUCTORS = ReferenceTable(
    "conductors",
    "Conductor dimensions",
    "Diameters and areas of insulated, compact and bare conductors, as printed.",
    ConductorRow,
    _conductors,
)
REFERENCE_TABLES: tuple[ReferenceTable, ...] = (
    CONDUITS,
    CONDUCTORS,
    ReferenceTable(
        "materials", "Expansion coefficients", "Coefficients of linear thermal expansion.", MaterialRow, _materials
    ),
    ReferenceTable(
        "friction",
        "Friction coefficients",
        "Published coefficients of friction of cable against conduit.",
        FrictionRow,
        _friction,
    ),
    ReferenceTable("units", "Unit codes", "Every unit code with its factor to SI and its UCUM code.", UnitRow, _units),
    ReferenceTable("sources", "Sources", "The documents that rows, defaults and findings cite.", SourceRow, _sources),
)
PICKERS: tuple[Picker, ...] = (
    Picker(CONDUITS, "type", ConduitType, lambda row, choice: row.type == choice),
    Picker(CONDUCTORS, "insulation", Insulation, lambda row, choice: choice in row.insulations),
)
