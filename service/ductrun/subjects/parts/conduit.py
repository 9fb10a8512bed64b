"""The conduit of a request, and the figures of its table row."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Annotated, Literal, NamedTuple

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering.fill import SCALE, Bore, Rule, bore_of, measured_bore
from ductrun.kit.forms import Diameter, Form, Omissible
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.tables import TABLES
from ductrun.tables.rows import Conduit as ConduitRow
from ductrun.units import Length, LengthUnit

_ONE = Decimal(f"{SCALE:e}")  # has one digit, so that a product with it is exact
# the inches in one of each unit, over and under the line
_INCHES = {unit: (Fraction(repr(unit.scale)) / Fraction("0.0254")).as_integer_ratio() for unit in LengthUnit}

SIZES: dict[str, dict[str, ConduitRow]] = {kind.value: {} for kind in ConduitType}
for _row in TABLES["conduits"]:
    SIZES[_row.type][_row.trade_size] = _row


def scaled(written: Decimal) -> int:
    """Give a figure as printed or written [in, in2] in the whole numbers that fill counts in; none is lost."""
    return int(written * _ONE)


def _bore_of(row: ConduitRow) -> Bore | None:
    if row.inside_diameter_in is None or row.area_in2 is None:
        return None
    printed = {
        Rule.ONE: row.area_53_in2,
        Rule.TWO: row.area_31_in2,
        Rule.OVER_TWO: row.area_40_in2,
        Rule.NIPPLE: row.area_60_in2,
    }
    return bore_of(
        scaled(row.inside_diameter_in),
        scaled(row.area_in2),
        {rule: scaled(area) for rule, area in printed.items() if area is not None},
    )


# the bore of every row with its printed limits; utility duct has no code row
BORES: dict[str, dict[TradeSize, Bore]] = {
    kind: {TradeSize(size): bore for size, row in sizes.items() if (bore := _bore_of(row)) is not None}
    for kind, sizes in SIZES.items()
}
_INSIDE: dict[tuple[str, str], float] = {
    (row.type, row.trade_size): row.inside_diameter.si for row in TABLES["conduits"] if row.inside_diameter
}


class ListedConduit(Form):
    """A conduit or duct by its type and trade size; its diameters come from the tables."""

    kind: Literal["listed"] = Field(description="Fixed text that says: by type and trade size.")
    type: ConduitType = Field(description="Type of conduit or duct.", examples=["pvc_schedule_40"])
    trade_size: TradeSize = Field(description="Trade size, as the trade writes it.", examples=["4"])


class MeasuredConduit(Form):
    """A conduit or duct by its diameters, for one that no table lists; take them from its maker."""

    kind: Literal["measured"] = Field(description="Fixed text that says: by diameters.")
    inside_diameter: Diameter = Field(description="Inside diameter.", examples=[{"value": 4.026, "unit": "in"}])
    outside_diameter: Omissible[Diameter] = Field(
        default=None,
        description="Outside diameter; needed where the duct takes room: in a bank, in concrete, in a trench.",
        examples=[{"value": 4.5, "unit": "in"}],
    )
    type: Omissible[ConduitType] = Field(
        default=None,
        description="Type of conduit or duct, for the rules that hang on it; its diameters stay those given.",
        examples=["rtrc"],
    )
    trade_size: Omissible[TradeSize] = Field(
        default=None, description="Trade size, for what is ordered and bent by it.", examples=["4"]
    )


Conduit = TypeAliasType(
    "Conduit",
    Annotated[
        ListedConduit | MeasuredConduit,
        Field(discriminator="kind", description="A conduit: by type and trade size, or by its measures."),
    ],
)


class PlacedConduit(NamedTuple):
    """A conduit with its bore for fill, and the `sheet` at its place."""

    given: ListedConduit | MeasuredConduit
    bore: Bore
    sheet: Worksheet


class PlacedType(NamedTuple):
    """A type of conduit, and the `sheet` at its place."""

    type: ConduitType
    sheet: Worksheet


def exact_inches(length: Length) -> int:
    """Give a length [in] as the decimal the caller wrote, in the whole numbers of fill, so that a tie stays a tie."""
    written = scaled(Decimal(repr(float(length.value))))
    if length.unit is LengthUnit.INCH:
        return written
    over, under = _INCHES[length.unit]
    return written * over // under


def find_row(conduit: ListedConduit, sheet: Worksheet) -> ConduitRow:
    """Give the table row of a listed conduit; a size the type lacks is answered with the sizes it has."""
    sizes = SIZES[conduit.type]
    row = sizes.get(conduit.trade_size)
    if row is None and not sizes:
        raise UnanswerableError(
            sheet.fault(
                "type",
                "dimensions_not_listed",
                f"The tables hold no dimensions of {conduit.type.value}: take them from its maker and give the conduit "
                "as kind measured.",
                [kind for kind, listed in SIZES.items() if listed],
            )
        )
    if row is None:
        has = list(sizes)
        raise UnanswerableError(
            sheet.fault(
                "trade_size",
                "trade_size_not_listed",
                f"{conduit.type.value} has no trade size {conduit.trade_size.value} in the tables. "
                f"It has {listing(has)}.",
                has,
            )
        )
    return row


def check_diameters(conduit: MeasuredConduit, sheet: Worksheet) -> None:
    """Refuse an outside diameter that does not exceed the inside one."""
    outside = conduit.outside_diameter
    if outside is not None and outside.si <= conduit.inside_diameter.si:
        raise UnanswerableError(
            sheet.fault(
                "outside_diameter/value",
                "outside_not_above_inside",
                f"The outside diameter must be above the inside diameter of {conduit.inside_diameter}.",
                minimum=conduit.inside_diameter,
            )
        )


def place_conduit(conduit: ListedConduit | MeasuredConduit, sheet: Worksheet) -> PlacedConduit:
    """Give a conduit with its bore for fill: the printed row of Table 4, or the circle of the diameter given."""
    if conduit.kind == "measured":
        check_diameters(conduit, sheet)
        return PlacedConduit(conduit, measured_bore(exact_inches(conduit.inside_diameter)), sheet)
    row = find_row(conduit, sheet)
    bore = BORES[conduit.type].get(conduit.trade_size)
    if bore is None:
        raise UnanswerableError(_no_bore(conduit, row, sheet))
    sheet.cite(row.source)
    return PlacedConduit(conduit, bore, sheet)


def inside_diameter(conduit: ListedConduit | MeasuredConduit, sheet: Worksheet) -> float:
    """Give the inside diameter [m]."""
    if conduit.kind == "measured":
        check_diameters(conduit, sheet)
        return conduit.inside_diameter.si
    row = find_row(conduit, sheet)
    bore = _INSIDE.get((conduit.type, conduit.trade_size))
    if bore is None:
        raise UnanswerableError(_no_bore(conduit, row, sheet))
    sheet.cite(row.source)
    return bore


def outside_diameter(conduit: ListedConduit | MeasuredConduit, sheet: Worksheet) -> float:
    """Give the outside diameter [m]."""
    if conduit.kind == "measured":
        check_diameters(conduit, sheet)
        if conduit.outside_diameter is None:
            raise UnanswerableError(
                sheet.fault(
                    "outside_diameter",
                    "missing",
                    "The duct takes room here: give its outside diameter.",
                )
            )
        return conduit.outside_diameter.si
    row = find_row(conduit, sheet)
    outside = row.outside_diameter
    if outside is None:
        raise UnanswerableError(
            sheet.fault(
                "type",
                "outside_diameter_not_listed",
                f"The tables hold no outside diameter for {conduit.type.value}: give the conduit as kind measured, "
                "with both diameters from its maker.",
                [
                    kind
                    for kind, listed in SIZES.items()
                    if listed and all(row.outside_diameter for row in listed.values())
                ],
            )
        )
    sheet.cite(row.wall_source)
    return outside.si


def refuse_without_bore(conduit_type: PlacedType) -> None:
    """Refuse a type whose bore no code table gives."""
    type_ = conduit_type.type
    if not BORES[type_]:
        raise UnanswerableError(
            conduit_type.sheet.fault(
                "",
                "inside_diameter_not_listed",
                f"No code table gives the bore of {type_.value}: ask its fill size by size, as kind measured.",
                _types_with_bore(),
            )
        )


def _types_with_bore() -> list[str]:
    return [kind for kind, sizes in SIZES.items() if sizes and all(row.inside_diameter_in for row in sizes.values())]


def _no_bore(conduit: ListedConduit, row: ConduitRow, sheet: Worksheet) -> Fault:
    """Say that utility duct has no bore in the code, and offer what its outside diameter and wall leave of it."""
    estimate = ""
    if row.outside_diameter_in is not None and row.minimum_wall_in is not None:
        bore = row.outside_diameter_in - 2 * row.minimum_wall_in
        estimate = (
            f" The outside diameter of {row.outside_diameter_in} in less two minimum walls leaves {bore} in "
            f"({row.wall_standing}): an estimate, and the largest it can be."
        )
    return sheet.fault(
        "type",
        "inside_diameter_not_listed",
        f"No code table gives the bore of {conduit.type.value}: take the inside diameter from its maker and give the "
        f"conduit as kind measured.{estimate}",
        _types_with_bore(),
    )
