"""The lines of a takeoff: what is alike summed up, rounded once to what is ordered, priced by the caller's rates."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any, TypeVar

from msgspec import UNSET, structs

from ductrun.kit import answers
from ductrun.kit.telling import Telling, UnitSystem
from ductrun.kit.wording import text_of, without_noise
from ductrun.subjects.duct_run.form import Rate
from ductrun.subjects.duct_run.takeoff.entries import Entry, order_of, unit_of
from ductrun.subjects.duct_run.takeoff.rates import Priced, priced, rate_of, total_of
from ductrun.subjects.parts.takeoff import (
    Takeoff,
    TakeoffGroup,
    TakeoffItem,
    TakeoffLine,
    TakeoffQuantity,
    TakeoffShare,
    TakeoffUnit,
)

_GROUPS: dict[TakeoffGroup, tuple[TakeoffItem, TakeoffItem]] = {
    TakeoffGroup.SITE_WORK: (TakeoffItem.PAVEMENT_SAWCUT, TakeoffItem.BORE_PIT),
    TakeoffGroup.DUCT: (TakeoffItem.CONDUIT, TakeoffItem.PRIMER),
    TakeoffGroup.BANK: (TakeoffItem.BASE_SPACER, TakeoffItem.BANK_GROUND),
    TakeoffGroup.BACKFILL: (TakeoffItem.BEDDING, TakeoffItem.PAVEMENT_RESTORATION),
    TakeoffGroup.SUPPORTS: (TakeoffItem.STRAP, TakeoffItem.HANGER),
    TakeoffGroup.CABLE: (TakeoffItem.MANDREL_PASS, TakeoffItem.CABLE_SUPPORT),
}
_ORDER = {item: place for place, item in enumerate(TakeoffItem)}
GROUP_OF = {
    item: group
    for group, (first, last) in _GROUPS.items()
    for item in TakeoffItem
    if _ORDER[first] <= _ORDER[item] <= _ORDER[last]
}


Q = TypeVar("Q", answers.Angle, answers.Length)
_NO_RATE = Priced(None, None, None, None, None)


def takeoff_of(entries: Iterable[Entry], names: Sequence[str], rates: Sequence[Rate] | None, tell: Telling) -> Takeoff:
    """Give the takeoff of a run: `names` are those of its stretches, `rates` the caller's."""
    alike: dict[tuple[object, ...], list[Entry]] = {}
    for entry in entries:
        if entry.quantity > 0:
            alike.setdefault(_key(entry), []).append(entry)
    groups = sorted(alike.values(), key=lambda one: _ORDER[one[0].item])
    lines = [_line(number, group, names, rates or (), tell) for number, group in enumerate(groups, start=1)]
    return Takeoff(lines=lines, total=UNSET if not rates else total_of(lines))


def _key(entry: Entry) -> tuple[object, ...]:
    """Give what is the same of alike entries: of bends to nine digits, for what was computed twice is alike."""
    bend = None if entry.angle is None else f"{entry.angle:.9g} {entry.radius:.9g}"
    return entry.item, entry.conduit_type, entry.size, bend, entry.measure, entry.stick


def _line(number: int, group: list[Entry], names: Sequence[str], rates: Sequence[Rate], tell: Telling) -> TakeoffLine:
    first = group[0]
    unit, scale = unit_of(first.item, metric=tell.system is UnitSystem.METRIC)
    exact = sum([entry.quantity for entry in group])
    waste = max([entry.waste for entry in group if entry.waste is not None], default=None)
    rate = rate_of(first, rates) if rates else None
    by_rate = _NO_RATE if rate is None else priced(rate, group, exact, scale)
    order, packages = by_rate.order or order_of(group, scale)
    return TakeoffLine(
        line=number,
        group=GROUP_OF[first.item],
        item=first.item,
        description=_description(first, tell),
        exact_quantity=TakeoffQuantity(exact / scale, unit),
        basis=_basis(group, names),
        pointer=f"#/result/{first.pointer}",
        shares=_shares(group, names, unit, scale),
        conduit_type=_or_unset(first.conduit_type),
        size=_or_unset(first.size),
        angle=UNSET if first.angle is None else _plain(tell.angle(first.angle)),
        radius=UNSET if first.radius is None else _plain(tell.size(first.radius)),
        waste_percent=_or_unset(waste),
        order_quantity=UNSET if order is None else TakeoffQuantity(order, unit),
        measure=_or_unset(first.measure),
        package=_or_unset(first.package),
        package_count=_or_unset(packages),
        unit_price=_or_unset(by_rate.unit_price),
        price=_or_unset(by_rate.price),
        unit_labor_hours=_or_unset(by_rate.unit_hours),
        labor_hours=_or_unset(by_rate.hours),
    )


def _plain(told: Q) -> Q:
    """Give a quantity as it is ordered: 30 deg, not what its conversion leaves of that."""
    return structs.replace(told, value=without_noise(told.value))


def _or_unset(value: Any) -> Any:
    return UNSET if value is None else value


def _shares(group: list[Entry], names: Sequence[str], unit: TakeoffUnit, scale: float) -> list[TakeoffShare]:
    of_stretch: dict[int, float] = {}
    for entry in group:
        of_stretch[entry.stretch] = of_stretch.get(entry.stretch, 0.0) + entry.quantity
    return [
        TakeoffShare(names[index], TakeoffQuantity(share / scale, unit)) for index, share in sorted(of_stretch.items())
    ]


def _basis(group: list[Entry], names: Sequence[str]) -> str:
    """Give the arithmetic of a line: what alike parts of a stretch take is written once, and how often it is taken."""
    if len(group) == 1:
        return f"{names[group[0].stretch]}: {group[0].basis}"[:2_000]
    times: dict[tuple[int, str], int] = {}
    for entry in group:
        key = entry.stretch, entry.basis
        times[key] = times.get(key, 0) + 1
    parts = [
        f"{names[stretch]}: {basis if count == 1 else f'{count} x ({basis})'}"
        for (stretch, basis), count in times.items()
    ]
    return "; ".join(parts)[:2_000]


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
        inches = entry.conduit_type is not None and entry.size[-1].isdigit()
        parts.append(f"{entry.size} in" if inches else entry.size.replace("no_", "no. "))
    if entry.conduit_type is not None:
        parts.append(entry.conduit_type.replace("_", " "))
    if entry.angle is not None and entry.radius is not None:
        parts.append(f"{text_of(tell.angle(entry.angle))}, radius {text_of(tell.size(entry.radius))}")
    if entry.measure is not None:
        parts.append(entry.measure.value)
    told = ", ".join(parts)
    return f"{told[0].upper()}{told[1:]}"[:300]
