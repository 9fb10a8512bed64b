"""The reference tables as the API shows them: rows with their source and standing, as printed in either unit system."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated, Any

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit.backing import standing_of
from ductrun.kit.choices import Standing
from ductrun.kit.telling import UnitSystem
from ductrun.subjects.movement.choices import ConduitMaterial
from ductrun.subjects.parts.choices import ConductorSize, ConduitType, Insulation, TradeSize
from ductrun.tables import TABLES
from ductrun.units import UNIT_CODES, Area, Code, ExpansionCoefficient, Length

ConductorMarking: type[Code] = Code(  # type: ignore[call-arg, assignment]
    "ConductorMarking", {one.name: one.value for one in Insulation} | {"BARE": "bare"}
)
ConductorMarking.__doc__ = "What the rows of the conductor table go by: markings of insulation, and bare."


class ReferenceRow(Struct, frozen=True, kw_only=True):
    """Where a row stands and whether it was read there."""

    source_id: Annotated[str, Meta(description="Id of the source; see /v1/tables/sources.")]
    standing: Annotated[Standing, Meta(description="With what right it is given.")]
    note: Annotated[str | UnsetType, Meta(description="Remark on the row.")] = UNSET


class ConduitRow(ReferenceRow, frozen=True, kw_only=True):
    """One trade size of one conduit type; utility duct has no inside diameter here."""

    type: Annotated[ConduitType, Meta(description="Type of the conduit.")]
    trade_size: Annotated[TradeSize, Meta(description="Trade size.")]
    metric_designator: Annotated[int, Meta(description="Metric designator; a label, not a dimension.")]
    inside_diameter: Annotated[Length | UnsetType, Meta(description="Diameter of the bore.")] = UNSET
    area: Annotated[Area | UnsetType, Meta(description="Area of the bore.")] = UNSET
    outside_diameter: Annotated[Length | UnsetType, Meta(description="Outside diameter, as printed.")] = UNSET
    minimum_wall: Annotated[Length | UnsetType, Meta(description="Least thickness of the wall.")] = UNSET
    wall_source_id: Annotated[str | UnsetType, Meta(description="Source of outside diameter and wall.")] = UNSET
    wall_standing: Annotated[Standing | UnsetType, Meta(description="Standing of outside diameter and wall.")] = UNSET


class ConductorRow(ReferenceRow, frozen=True, kw_only=True):
    """One size of one conductor of Chapter 9, Table 5, 5A or 8."""

    table: Annotated[str, Meta(description="Table of Chapter 9.")]
    insulations: Annotated[
        tuple[ConductorMarking, ...],  # type: ignore[valid-type]
        Meta(description="Markings the row serves; an asterisk: without covering."),
    ]
    size: Annotated[ConductorSize, Meta(description="Size of the conductor.")]
    diameter: Annotated[Length, Meta(description="Diameter over the insulation; of a bare conductor, its own.")]
    area: Annotated[Area, Meta(description="Area over the insulation; of a bare conductor, its overall circle.")]
    stranding: Annotated[str | UnsetType, Meta(description="Make-up, where the table tells.")] = UNSET


class MaterialRow(ReferenceRow, frozen=True, kw_only=True):
    """Coefficient of linear expansion of one conduit material."""

    material: Annotated[ConduitMaterial, Meta(description="Material of the conduit.")]
    coefficient: Annotated[ExpansionCoefficient, Meta(description="Coefficient of linear expansion.")]


class FrictionRow(ReferenceRow, frozen=True, kw_only=True):
    """A published range of the coefficient of friction of a cable jacket against a conduit."""

    jacket: Annotated[str, Meta(description="Jacket of the cable, as the source names it.")]
    conduit: Annotated[str, Meta(description="Conduit, as the source names it.")]
    lubrication: Annotated[str, Meta(description="How the cable was lubricated.")]
    low_coefficient: Annotated[float, Meta(description="Lower end of the range.")]
    high_coefficient: Annotated[float, Meta(description="Upper end of the range.")]


class UnitRow(Struct, frozen=True):
    """One unit code: SI value = factor x value + offset; a grade in percent is the arc tangent of that."""

    dimension: Annotated[str, Meta(description="What it measures, such as mass_per_length.")]
    unit: Annotated[str, Meta(description="The code, as a request and an answer write it.")]
    ucum: Annotated[str, Meta(description="UCUM code.")]
    si_unit: Annotated[str, Meta(description="SI unit of the dimension.")]
    si_factor: Annotated[float, Meta(description="What a value is multiplied by.")]
    si_offset: Annotated[float, Meta(description="What is added then.")]


class SourceRow(Struct, frozen=True):
    """A cited document."""

    source_id: Annotated[str, Meta(description="Id by which rows and findings name the document.")]
    citation: Annotated[str, Meta(description="Title, publisher and date of the document.")]
    note: Annotated[str | UnsetType, Meta(description="Where its figures were read.")] = UNSET


@dataclass(frozen=True, slots=True)
class Filter:
    """A query parameter that picks rows by one column; `choices` where the column is a closed set.

    A column may hold several values at once (the markings a row serves): the row answers to each of them.
    """

    name: str
    description: str
    choices: type[Code] | None = None
    column: str = ""

    def values(self, row: Any) -> tuple[str, ...]:
        """Give the values by which a row is found."""
        held = getattr(row, self.column or self.name)
        if held is UNSET:
            return ()
        return held if isinstance(held, tuple) else (held,)

    def allowed(self, rows: list[Any]) -> list[str]:
        """Give the values that may be asked for: those of the set, else those the rows carry, in their order."""
        if self.choices is not None:
            return [choice.value for choice in self.choices]
        return list(dict.fromkeys(value for row in rows for value in self.values(row)))


@dataclass(frozen=True, slots=True)
class ReferenceTable:
    """One table of the API: its name in the path, what it holds, its rows in a unit system, what picks among them."""

    name: str
    summary: str
    description: str
    row: type[Struct]
    rows: Callable[[UnitSystem], list[Any]]
    filters: tuple[Filter, ...]
    has_quantities: bool = False

    @property
    def operation_id(self) -> str:
        """The id of the GET in the contract."""
        return f"list_{self.name}"


def _length(inches: Decimal | None, millimeters: Decimal | None, system: UnitSystem) -> Any:
    number, unit = (inches, "in") if system == UnitSystem.US else (millimeters, "mm")
    return UNSET if number is None else Length.parse(float(number), unit)


def _area(square_inches: Decimal | None, square_millimeters: Decimal | None, system: UnitSystem) -> Any:
    number, unit = (square_inches, "in2") if system == UnitSystem.US else (square_millimeters, "mm2")
    return UNSET if number is None else Area.parse(float(number), unit)


_SNAKE = re.compile(r"(?<=[a-z])(?=[A-Z])")


def _text(text: str) -> str | UnsetType:
    return text or UNSET


def _conduits(system: UnitSystem) -> list[ConduitRow]:
    return [
        ConduitRow(
            type=ConduitType(row.type),
            trade_size=TradeSize(row.trade_size),
            metric_designator=row.metric_designator,
            inside_diameter=_length(row.inside_diameter_in, row.inside_diameter_mm, system),
            area=_area(row.area_in2, row.area_mm2, system),
            outside_diameter=_length(row.outside_diameter_in, row.outside_diameter_mm, system),
            minimum_wall=_length(row.minimum_wall_in, row.minimum_wall_mm, system),
            wall_source_id=_text(row.wall_source),
            wall_standing=standing_of(row.wall_standing) if row.wall_standing else UNSET,
            source_id=row.source or row.wall_source,
            standing=standing_of(row.standing or row.wall_standing),
            note=_text(row.note),
        )
        for row in TABLES["conduits"]
    ]


def _conductors(system: UnitSystem) -> list[ConductorRow]:
    return [
        ConductorRow(
            table=row.table,
            insulations=tuple(map(ConductorMarking, row.insulations)),
            stranding=_text(row.stranding),
            size=ConductorSize(row.size),
            diameter=_length(row.diameter_in, row.diameter_mm, system),
            area=_area(row.area_in2, row.area_mm2, system),
            source_id=row.source,
            standing=standing_of(row.standing),
            note=_text(row.note),
        )
        for row in TABLES["conductors"]
    ]


def _materials(system: UnitSystem) -> list[MaterialRow]:
    us = system == UnitSystem.US
    return [
        MaterialRow(
            material=ConduitMaterial(row.material),
            coefficient=ExpansionCoefficient.parse(
                row.coefficient if us else row.coefficient_metric, "1/degF" if us else "1/degC"
            ),
            source_id=row.source,
            standing=standing_of(row.standing),
            note=_text(row.note),
        )
        for row in TABLES["expansion_coefficients"]
    ]


def _friction(_system: UnitSystem) -> list[FrictionRow]:
    return [
        FrictionRow(
            jacket=row.jacket,
            conduit=row.conduit,
            lubrication=row.lubrication,
            low_coefficient=row.low,
            high_coefficient=row.high,
            source_id=row.source,
            standing=standing_of(row.standing),
            note=_text(row.note),
        )
        for row in TABLES["friction_coefficients"]
    ]


def _units(_system: UnitSystem) -> list[UnitRow]:
    return [
        UnitRow(_SNAKE.sub("_", dimension.__name__).lower(), code.text, code.ucum, code.si_unit, code.scale, code.zero)
        for dimension, codes in UNIT_CODES.items()
        for code in codes
    ]


def _sources(_system: UnitSystem) -> list[SourceRow]:
    return [SourceRow(row.id, row.citation, _text(row.remark)) for row in TABLES["sources"]]


REFERENCE_TABLES: tuple[ReferenceTable, ...] = (
    ReferenceTable(
        "conduits",
        "Conduit and duct dimensions",
        "Inside and outside diameters, areas and walls of every type and trade size, as printed.",
        ConduitRow,
        _conduits,
        (
            Filter("type", "Type of the conduit.", ConduitType),
            Filter("trade_size", "Trade size.", TradeSize),
        ),
        has_quantities=True,
    ),
    ReferenceTable(
        "conductors",
        "Conductor dimensions",
        "Diameters and areas of insulated, compact and bare conductors, as printed.",
        ConductorRow,
        _conductors,
        (
            Filter("table", "Table of Chapter 9."),
            Filter("insulation", "A marking the row serves; or bare.", ConductorMarking, "insulations"),
            Filter("size", "Size of the conductor.", ConductorSize),
            Filter("stranding", "Make-up, where the table tells."),
        ),
        has_quantities=True,
    ),
    ReferenceTable(
        "materials",
        "Expansion coefficients",
        "Coefficients of linear thermal expansion.",
        MaterialRow,
        _materials,
        (Filter("material", "Material of the conduit.", ConduitMaterial),),
        has_quantities=True,
    ),
    ReferenceTable(
        "friction",
        "Friction coefficients",
        "Published coefficients of friction of cable against conduit.",
        FrictionRow,
        _friction,
        (
            Filter("jacket", "Jacket of the cable, as the source names it."),
            Filter("conduit", "Conduit, as the source names it."),
            Filter("lubrication", "How the cable was lubricated."),
        ),
    ),
    ReferenceTable(
        "units",
        "Unit codes",
        "Every unit code with its factor to SI and its UCUM code.",
        UnitRow,
        _units,
        (Filter("dimension", "Dimension of the unit."), Filter("unit", "Unit code.")),
    ),
    ReferenceTable(
        "sources",
        "Sources",
        "The documents that rows, defaults and findings cite.",
        SourceRow,
        _sources,
        (Filter("source_id", "Id by which rows and findings name the document."),),
    ),
)
