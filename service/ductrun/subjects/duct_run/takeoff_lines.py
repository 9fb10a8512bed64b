"""The lines of a takeoff: what is alike summed up, rounded once to what is ordered, priced by the caller's rates."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import ROUND_HALF_UP, Decimal
from enum import Enum
from typing import Any, NamedTuple

from msgspec import UNSET

from ductrun.engineering.rounding import round_up
from ductrun.kit.telling import Telling, UnitSystem
from ductrun.kit.wording import text_of, without_noise
from ductrun.subjects.duct_run.form import Rate
from ductrun.subjects.parts.takeoff import (
    Takeoff,
    TakeoffGroup,
    TakeoffItem,
    TakeoffLine,
    TakeoffQuantity,
    TakeoffShare,
    TakeoffTotal,
    TakeoffUnit,
    VolumeMeasure,
)
from ductrun.units import AreaUnit, LengthUnit, VolumeUnit

_CENT = Decimal("0.01")


class Kind(Enum):
    """What a quantity is, and the units in which it is told, US and metric, with what one is in SI."""

    COUNT = (TakeoffUnit.EACH, 1.0), (TakeoffUnit.EACH, 1.0)
    LENGTH = (TakeoffUnit.FT, LengthUnit.FT.scale), (TakeoffUnit.M, 1.0)
    AREA = (TakeoffUnit.FT2, AreaUnit.FT2.scale), (TakeoffUnit.M2, 1.0)
    VOLUME = (TakeoffUnit.YD3, VolumeUnit.YD3.scale), (TakeoffUnit.M3, 1.0)
    LIQUID = (TakeoffUnit.GAL_US, VolumeUnit.GAL_US.scale), (TakeoffUnit.L, VolumeUnit.L.scale)
    CEMENT = (TakeoffUnit.QT_US, VolumeUnit.QT_US.scale), (TakeoffUnit.L, VolumeUnit.L.scale)


class Entry(NamedTuple):
    """What one part of a run takes of an item, in SI; `pointer` is within the result of the answer.

    Alike entries make one line, conduit of alike sticks. An `order` [SI] is that of this part alone, already rounded;
    without one the sum is rounded once, with its waste, if the item is `ordered`. Conduit comes in sticks [m].
    """

    item: TakeoffItem
    kind: Kind
    quantity: float
    stretch: int
    pointer: str
    basis: str
    conduit_type: str | None = None
    size: str | None = None
    angle: float | None = None
    radius: float | None = None
    measure: VolumeMeasure | None = None
    waste: float | None = None
    order: float | None = None
    package: str | None = None
    package_count: int | None = None
    stick: float | None = None
    stick_count: int = 0
    ordered: bool = False


_GROUPS: dict[TakeoffGroup, tuple[TakeoffItem, TakeoffItem]] = {
    TakeoffGroup.SITE_WORK: (TakeoffItem.PAVEMENT_SAWCUT, TakeoffItem.BORE_PIT),
    TakeoffGroup.DUCT: (TakeoffItem.CONDUIT, TakeoffItem.PRIMER),
    TakeoffGroup.BANK: (TakeoffItem.BASE_SPACER, TakeoffItem.BANK_GROUND),
    TakeoffGroup.BACKFILL: (TakeoffItem.BEDDING, TakeoffItem.PAVEMENT_RESTORATION),
    TakeoffGroup.SUPPORTS: (TakeoffItem.STRAP, TakeoffItem.HANGER),
    TakeoffGroup.CABLE: (TakeoffItem.MANDREL_PASS, TakeoffItem.PULLING_EYE),
}
_ORDER = {item: place for place, item in enumerate(TakeoffItem)}
GROUP_OF = {
    item: group
    for group, (first, last) in _GROUPS.items()
    for item in TakeoffItem
    if _ORDER[first] <= _ORDER[item] <= _ORDER[last]
}


def takeoff_of(entries: Iterable[Entry], names: Sequence[str], rates: Sequence[Rate] | None, tell: Telling) -> Takeoff:
    """Give the takeoff of a run: `names` are those of its stretches, `rates` the caller's."""
    alike: dict[tuple[object, ...], list[Entry]] = {}
    for entry in entries:
        if entry.quantity > 0:
            key = (
                entry.item,
                entry.conduit_type,
                entry.size,
                _near(entry.angle),
                _near(entry.radius),
                entry.measure,
                entry.stick,
            )
            alike.setdefault(key, []).append(entry)
    groups = sorted(alike.values(), key=lambda one: _ORDER[one[0].item])
    lines = [_line(number, group, names, rates or (), tell) for number, group in enumerate(groups, start=1)]
    return Takeoff(lines=lines, total=UNSET if not rates else _total(lines))


def _near(value: float | None) -> float | None:
    """Give a figure to nine digits: what was computed twice is alike."""
    return None if value is None else float(f"{value:.9g}")


def _line(number: int, group: list[Entry], names: Sequence[str], rates: Sequence[Rate], tell: Telling) -> TakeoffLine:
    first = group[0]
    unit, scale = first.kind.value[tell.system is UnitSystem.METRIC]
    exact = sum([entry.quantity for entry in group])
    order, packages = _order(group, scale)
    waste = max([entry.waste for entry in group if entry.waste is not None], default=None)
    rate = _rate(first, rates)
    price, hours = _priced(rate, exact / scale if order is None else order, exact / scale)
    return TakeoffLine(
        line=number,
        group=GROUP_OF[first.item],
        item=first.item,
        description=_description(first, tell),
        exact_quantity=TakeoffQuantity(exact / scale, unit),
        basis="; ".join(dict.fromkeys(_basis(entry, names) for entry in group))[:2_000],
        pointer=f"#/result/{first.pointer}",
        shares=_shares(group, names, unit, scale),
        conduit_type=_or_unset(first.conduit_type),
        size=_or_unset(first.size),
        angle=UNSET if first.angle is None else tell.angle(first.angle),
        radius=UNSET if first.radius is None else tell.size(first.radius),
        waste_percent=_or_unset(waste),
        order_quantity=UNSET if order is None else TakeoffQuantity(order, unit),
        measure=_or_unset(first.measure),
        package=_or_unset(first.package),
        package_count=_or_unset(packages),
        unit_price=_or_unset(None if rate is None else rate.unit_price),
        price=_or_unset(price),
        unit_labor_hours=_or_unset(None if rate is None else rate.unit_labor_hours),
        labor_hours=_or_unset(hours),
    )


def _or_unset(value: Any) -> Any:
    return UNSET if value is None else value


def _order(group: list[Entry], scale: float) -> tuple[float | None, int | None]:
    """Give what is ordered, in the unit of the line, and the packages; None of what is not ordered."""
    first = group[0]
    if first.order is not None:
        counts = [entry.package_count for entry in group if entry.package_count is not None]
        return without_noise(sum([entry.order or 0.0 for entry in group]) / scale), sum(counts) if counts else None
    if not first.ordered:
        return None, None
    wasted = sum([entry.quantity * (1 + (entry.waste or 0.0) / 100) for entry in group])
    if first.stick is not None:
        sticks = max(round_up(wasted / first.stick), sum(entry.stick_count for entry in group))
        return without_noise(sticks * first.stick / scale), sticks
    whole = round_up(wasted / scale)
    return float(whole), whole if first.package is not None else None


def _shares(group: list[Entry], names: Sequence[str], unit: TakeoffUnit, scale: float) -> list[TakeoffShare]:
    of_stretch: dict[int, float] = {}
    for entry in group:
        of_stretch[entry.stretch] = of_stretch.get(entry.stretch, 0.0) + entry.quantity
    return [
        TakeoffShare(names[index], TakeoffQuantity(share / scale, unit)) for index, share in sorted(of_stretch.items())
    ]


def _basis(entry: Entry, names: Sequence[str]) -> str:
    return f"{names[entry.stretch]}: {entry.basis}"


_WORDS = {
    TakeoffItem.PAVEMENT_SAWCUT: "saw cut of pavement",
    TakeoffItem.PAVEMENT_REMOVAL: "pavement taken up",
    TakeoffItem.PAVEMENT_RESTORATION: "pavement laid again",
    TakeoffItem.IMPORT: "fill brought in",
    TakeoffItem.DUCT_PLUG: "plug of a spare duct",
    TakeoffItem.MANDREL_PASS: "pass of the mandrel",
    TakeoffItem.BANK_GROUND: "bare ground in the envelope",
}


def _description(entry: Entry, tell: Telling) -> str:
    words = _WORDS.get(entry.item, entry.item.value.replace("_", " "))
    parts = [words]
    if entry.size is not None:
        parts.append(f"{entry.size} in" if entry.conduit_type is not None and entry.size[-1].isdigit() else entry.size)
    if entry.conduit_type is not None:
        parts.append(entry.conduit_type.replace("_", " "))
    if entry.angle is not None and entry.radius is not None:
        parts.append(f"{text_of(tell.angle(entry.angle))}, radius {text_of(tell.size(entry.radius))}")
    if entry.measure is not None:
        parts.append(entry.measure.value)
    told = ", ".join(parts)
    return f"{told[0].upper()}{told[1:]}"[:300]


def _rate(entry: Entry, rates: Sequence[Rate]) -> Rate | None:
    """Give the rate that says most of an entry; of alike ones the first."""
    fitting = [
        (sum(key is not None for key in (rate.conduit_type, rate.size)), rate)
        for rate in rates
        if rate.item is entry.item
        and rate.conduit_type in {None, entry.conduit_type}
        and rate.size in {None, entry.size}
    ]
    return max(fitting, key=lambda one: one[0])[1] if fitting else None


def _priced(rate: Rate | None, ordered: float, exact: float) -> tuple[float | None, float | None]:
    """Give price, to the cent, and labor hours, to the hundredth."""
    if rate is None:
        return None, None
    price = None if rate.unit_price is None else _product(rate.unit_price, ordered)
    hours = None if rate.unit_labor_hours is None else _product(rate.unit_labor_hours, exact)
    return price, hours


def _product(rate: float, quantity: float) -> float:
    exact = Decimal(repr(float(rate))) * Decimal(repr(float(quantity)))
    return float(exact.quantize(_CENT, ROUND_HALF_UP))


def _total(lines: Sequence[TakeoffLine]) -> TakeoffTotal:
    """Sum up prices and hours in decimals; say which lines have none."""
    unpriced = [line.line for line in lines if line.price is UNSET and line.order_quantity is not UNSET]
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
