"""The lines of a takeoff as rows: the columns that list, workbook and page share, and how a figure is written plain."""

from __future__ import annotations

import math
from decimal import Decimal
from typing import Final, TypeVar

from msgspec import UNSET, UnsetType

from ductrun.subjects.parts.takeoff import TakeoffLine

COLUMNS: Final = (
    "line",
    "group",
    "item",
    "conduit_type",
    "size",
    "description",
    "exact_quantity",
    "waste_percent",
    "order_quantity",
    "unit",
    "measure",
    "package",
    "package_count",
    "stretches",
    "basis",
    "pointer",
    "unit_price",
    "price",
    "unit_labor_hours",
    "labor_hours",
)
Cell = str | float | None
T = TypeVar("T")


def row_of(line: TakeoffLine) -> dict[str, Cell]:
    """Give the cells of a line by column; what the line does not have is None. Order and exact share the unit."""
    return {
        "line": line.line,
        "group": str(line.group),
        "item": str(line.item),
        "conduit_type": None if line.conduit_type is UNSET else str(line.conduit_type),
        "size": _given(line.size),
        "description": line.description,
        "exact_quantity": line.exact_quantity.value,
        "waste_percent": _given(line.waste_percent),
        "order_quantity": None if line.order_quantity is UNSET else line.order_quantity.value,
        "unit": str(line.exact_quantity.unit),
        "measure": None if line.measure is UNSET else str(line.measure),
        "package": _given(line.package),
        "package_count": _given(line.package_count),
        "stretches": "; ".join(f"{share.stretch}: {rounded(share.quantity.value)}" for share in line.shares),
        "basis": line.basis,
        "pointer": line.pointer,
        "unit_price": _given(line.unit_price),
        "price": _given(line.price),
        "unit_labor_hours": _given(line.unit_labor_hours),
        "labor_hours": _given(line.labor_hours),
    }


def _given(member: T | UnsetType) -> T | None:
    return None if isinstance(member, UnsetType) else member


def rounded(value: float) -> str:
    """Write a computed figure to four decimals, or six digits where that is more; no exponent, no separators."""
    if not value:
        return "0"
    decimals = max(4, 5 - math.floor(math.log10(abs(value))))
    return as_given(round(value, decimals))


def as_given(value: float) -> str:
    """Write a figure that the caller gave, every digit of it, without an exponent."""
    text = format(Decimal(repr(value)), "f")
    return text.rstrip("0").rstrip(".") if "." in text else text
