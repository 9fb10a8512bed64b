"""The caller's rates: held against the takeoff, multiplied through it and summed up, in decimals."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import ROUND_HALF_UP, Decimal
from typing import NamedTuple

from msgspec import UNSET

from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.wording import without_noise
from ductrun.kit.worksheet import Fault, UnanswerableError, Worksheet
from ductrun.subjects.duct_run.form import Rate
from ductrun.subjects.duct_run.takeoff.entries import UNITS, Entry, kind_of, order_of
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.takeoff import TakeoffLine, TakeoffTotal

_CENT = Decimal("0.01")


class Priced(NamedTuple):
    """A line by the rate that fits it: what is ordered of it and the packages, the rate for one of the unit of the
    line, price to the cent, and the same of labor hours, to the hundredth. Nothing of a line without a rate.
    """

    order: tuple[float | None, int | None] | None
    unit_price: float | None
    price: float | None
    unit_hours: float | None
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


def rate_of(entry: Entry, rates: Sequence[Rate]) -> Rate | None:
    """Give the rate that says most of an entry; of alike ones the first."""
    fitting = [rate for rate in rates if _fits(rate, entry.item, entry.conduit_type, entry.size)]
    if not fitting:
        return None
    return max(fitting, key=lambda one: sum(key is not None for key in (one.conduit_type, one.size)))


def priced(rate: Rate, group: Sequence[Entry], exact: float, scale: float) -> Priced:
    """Price what makes one line, of an exact quantity [SI], told in a unit of a `scale` in SI.

    What is ordered is rounded in the unit of the rate: in what units an answer is told changes no price.
    """
    units = UNITS[kind_of(rate.item)]
    one = next(iter(units.values())) if rate.unit is None else units[rate.unit]
    ordered, packages = order_of(group, one)
    price = None if rate.unit_price is None else _product(rate.unit_price, exact / one if ordered is None else ordered)
    hours = None if rate.unit_labor_hours is None else _product(rate.unit_labor_hours, exact / one)
    order = None if ordered is None else without_noise(ordered * one / scale)
    return Priced(
        (order, packages),
        _for_one(rate.unit_price, scale / one),
        price,
        _for_one(rate.unit_labor_hours, scale / one),
        hours,
    )


def _for_one(rate: float | None, units: float) -> float | None:
    """Give a rate for one of another unit."""
    return rate if rate is None or units == 1.0 else without_noise(rate * units)


def _fits(rate: Rate, item: str, conduit_type: ConduitType | None, size: str | None) -> bool:
    return rate.item == item and rate.conduit_type in {None, conduit_type} and rate.size in {None, size}


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
