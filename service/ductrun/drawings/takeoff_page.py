"""The takeoff as a page of its own, for paper across: every line with its order, its stretches and its arithmetic."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import groupby
from typing import Any, Final

from msgspec import UNSET, UnsetType

from ductrun.drawings.calculation_sheet import title_of
from ductrun.drawings.markup import NOTHING, Document, Markup, element, joined
from ductrun.drawings.readable import figure_text, titled, unit_sign
from ductrun.drawings.sheet_parts import hash_of, page, title_block
from ductrun.kit.answers import NOTICE, Basis
from ductrun.subjects.parts.takeoff import Takeoff, TakeoffLine, TakeoffQuantity, TakeoffTotal

_PLAIN: Final = ("Line", "Item", "Exact", "Waste", "Order", "Package", "By stretch", "Worked out")
_RATED: Final = ("Unit price", "Price", "Hours each", "Hours")
_FIGURES: Final = {"Line", "Exact", "Waste", "Order", *_RATED}


def takeoff_page(takeoff: Takeoff, request: Mapping[str, Any], basis: Basis, body: bytes) -> Document:
    """Write the takeoff of a run; columns of price and hours only if the caller gave rates."""
    request_hash = hash_of(body)
    return page(
        title_of("Takeoff", dict(request)),
        request_hash,
        [
            element("p", "To order, to dig and to do", kind="kicker"),
            element("h1", "Takeoff"),
            title_block(request, basis, request_hash),
            takeoff_table(takeoff),
            NOTHING if takeoff.total is UNSET else _total(takeoff.total),
            element("footer", NOTICE),
        ],
        paper="size:landscape;",
    )


def takeoff_table(takeoff: Takeoff) -> Markup:
    """Give the lines by group under a header that every page repeats."""
    rated = takeoff.total is not UNSET
    header = (*_PLAIN, *_RATED) if rated else _PLAIN
    head = [element("th", title, kind=_kind(title), scope="col") for title in header]
    bodies = [
        element("tbody", _group_row(str(group), len(header)), *[_row(line, header) for line in lines])
        for group, lines in groupby(takeoff.lines, key=lambda line: line.group)
    ]
    return element("table", element("thead", element("tr", *head)), *bodies, kind="dense takeoff")


def _group_row(group: str, columns: int) -> Markup:
    return element("tr", element("th", titled(group), colspan=str(columns), scope="rowgroup"), kind="group")


def _kind(title: str) -> str:
    return "figure" if title in _FIGURES else ""


def _row(line: TakeoffLine, header: Sequence[str]) -> Markup:
    cells = [element("td", _cell(line, title), kind=_kind(title), data_label=title) for title in header]
    return element("tr", *cells)


def _cell(line: TakeoffLine, title: str) -> str:
    match title:
        case "Line":
            return str(line.line)
        case "Item":
            return line.description
        case "Exact":
            return _amount(line.exact_quantity, line)
        case "Waste":
            return "" if line.waste_percent is UNSET else f"{figure_text(line.waste_percent)} %"
        case "Order":
            return "" if line.order_quantity is UNSET else _amount(line.order_quantity, line)
        case "Package":
            return _package(line)
        case "By stretch":
            return "; ".join([f"{share.stretch}: {figure_text(share.quantity.value)}" for share in line.shares])
        case "Worked out":
            return line.basis
        case "Unit price":
            return _rate(line.unit_price)
        case "Price":
            return _money(line.price)
        case "Hours each":
            return _rate(line.unit_labor_hours)
        case _:
            return "" if line.labor_hours is UNSET else figure_text(line.labor_hours)


def _amount(quantity: TakeoffQuantity, line: TakeoffLine) -> str:
    measure = "" if line.measure is UNSET else f", {line.measure}"
    return f"{figure_text(quantity.value)} {unit_sign(str(quantity.unit))}{measure}"


def _package(line: TakeoffLine) -> str:
    count = "" if line.package_count is UNSET else f"{line.package_count:,} x "
    return "" if line.package is UNSET else f"{count}{line.package}"


def _rate(rate: float | UnsetType) -> str:
    return "" if rate is UNSET else f"{rate:,.10g}"


def _money(price: float | UnsetType) -> str:
    return "" if price is UNSET else f"{price:,.2f}"


def _total(total: TakeoffTotal) -> Markup:
    """Say what the rates come to, and which lines the sums lack."""
    said = [
        f"Price of the lines that have one: {_money(total.price)}."
        if total.price is not UNSET
        else "No line has a price.",
        "Every line has a price."
        if total.complete
        else f"The price has gaps: no price for {_lines(total.unpriced_lines)}.",
        f"Labor hours of the lines that have a rate: {figure_text(total.labor_hours)}."
        if total.labor_hours is not UNSET
        else "No line has a rate of labor hours.",
        f"No rate of hours for {_lines(total.lines_without_hours)}." if total.lines_without_hours else "",
    ]
    return joined([element("h2", "Totals"), *[element("p", text) for text in said if text]])


def _lines(numbers: Sequence[int]) -> str:
    return f"line{'s' if len(numbers) > 1 else ''} {', '.join(map(str, numbers))}"
