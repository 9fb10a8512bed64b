"""The caller's rates: held against the takeoff, multiplied through it and summed up, in decimals."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import ROUND_HALF_UP, Decimal
from typing import NamedTuple

from msgspec import UNSET

from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.form import Rate
from ductrun.subjects.duct_run.takeoff_entries import UNITS, Entry, kind_of, order_of
from ductrun.subjects.parts.takeoff import TakeoffLine, TakeoffTotal, TakeoffUnit

_CENT = Decimal("0.01")


class Priced(NamedTuple):
    """A line by the rate that fits it: price to the cent, labor hours to the hundredth, and the unit of the rate."""

    rate: Rate
    unit: TakeoffUnit
    price: float | None
    hours: float | None


def check_rates(rates: Sequence[Rate], sheet: Worksheet) -> None:
    """Refuse rates that say nothing, and those for a unit in which their item is not counted."""
    faults: list[Fault] = []
    for index, rate in enumerate(rates):
        place = sheet.within(f"rates/{index}")
        if rate.unit_price is None and rate.unit_labor_hours is None:
            faults.append(place.fault("unit_price", "missing", "Give a price, labor hours, or both."))
        fitting = list(UNITS[kind_of(rate.item)])
        if rate.unit is not None and rate.unit not in fitting:
            words = f"The takeoff counts {rate.item.value.replace('_', ' ')} in other units."
            faults.append(place.fault("unit", "other_dimension", words, [unit.value for unit in fitting]))
    if faults:
        raise UnanswerableError(*faults)


def find_idle_rates(rates: Sequence[Rate], entries: Iterable[Entry], sheet: Worksheet) -> None:
    """Note every rate that fits no line."""
    lines = {(entry.item, entry.conduit_type, entry.size) for entry in entries if entry.quantity > 0}
    for index, rate in enumerate(rates):
        if not any(_fits(rate, *line) for line in lines):
            sheet.find(
                Severity.NOTE,
                "rate_fits_no_line",
                f"Rate {index + 1}, for {rate.item.value.replace('_', ' ')}, fits no line of the takeoff: leave it "
                "out, or write conduit_type and size as the line has them.",
                WORKED_OUT,
                member=f"rates/{index}",
            )


def _fits(rate: Rate, item: str, conduit_type: str | None, size: str | None) -> bool:
    return rate.item == item and rate.conduit_type in {None, conduit_type} and rate.size in {None, size}


def priced(group: Sequence[Entry], rates: Sequence[Rate]) -> Priced | None:
    """Price what makes one line by the rate that says most of it; of alike ones the first.

    It is ordered in the unit of the rate: in what units an answer is told changes no price.
    """
    first = group[0]
    fitting = [rate for rate in rates if _fits(rate, first.item, first.conduit_type, first.size)]
    if not fitting:
        return None
    rate = max(fitting, key=lambda one: sum(key is not None for key in (one.conduit_type, one.size)))
    units = UNITS[kind_of(first.item)]
    unit = next(iter(units)) if rate.unit is None else rate.unit
    exact = sum([entry.quantity for entry in group]) / units[unit]
    order, _ = order_of(group, units[unit])
    price = None if rate.unit_price is None else _product(rate.unit_price, exact if order is None else order)
    hours = None if rate.unit_labor_hours is None else _product(rate.unit_labor_hours, exact)
    return Priced(rate, unit, price, hours)


def _product(rate: float, quantity: float) -> float:
    exact = Decimal(repr(float(rate))) * Decimal(repr(float(quantity)))
    return float(exact.quantize(_CENT, ROUND_HALF_UP))


def total_of(lines: Sequence[TakeoffLine]) -> TakeoffTotal:
    """Sum up prices and hours in decimals; say which lines have none."""
    unpriced = [line.line for line in lines if line.price is UNSET]
    idle = [line.line for line in lines if line.labor_hours is UNSET]
    prices = [Decimal(repr(line.price)) for line in lines if line.price is not UNSET]
    hours = [Decimal(repr(line.labor_hours)) for line in lines if line.labor_hours is not UNSET]
    return TakeoffTotal(
        unpriced_lines=unpriced,
        lines_without_hours=idle,
        complete=not unpriced,
        price=float(sum(prices)) if prices else UNSET,
        labor_hours=float(sum(hours)) if hours else UNSET,
    )
