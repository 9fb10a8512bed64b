"""The takeoffs of several runs line by line: those in which a run differs from the base."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Any

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.engineering.rounding import over, under
from ductrun.kit import answers
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.duct_run.comparing.form import MOST_RUNS
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.takeoff import (
    Takeoff,
    TakeoffGroup,
    TakeoffItem,
    TakeoffLine,
    TakeoffQuantity,
    TakeoffUnit,
    VolumeMeasure,
)

_Percent = Annotated[float | UnsetType, Meta(description="The difference in percent of the base.")]


class ComparedNumber(Struct, frozen=True, gc=False):
    """A figure of a run beside that of the base."""

    value: Annotated[float, Meta(description="The number of this run.")]
    difference: Annotated[float | UnsetType, Meta(description="Less that of the base, where it differs.")] = UNSET
    difference_percent: _Percent = UNSET


class ComparedQuantity(Struct, frozen=True, gc=False):
    """A quantity of a takeoff beside that of the base."""

    quantity: Annotated[TakeoffQuantity, Meta(description="The quantity of this run.")]
    difference: Annotated[TakeoffQuantity | UnsetType, Meta(description="Less that of the base, where it differs.")] = (
        UNSET
    )
    difference_percent: _Percent = UNSET


class LineOfRun(Struct, frozen=True, gc=False):
    """What one run takes of a line, beside the base."""

    run: Annotated[str, Meta(description="Name of the run.", max_length=MOST_NAME)]
    exact_quantity: Annotated[ComparedQuantity, Meta(description="What is laid, dug or done, without waste.")]
    order_quantity: Annotated[ComparedQuantity | UnsetType, Meta(description="What is ordered, if it is.")] = UNSET
    price: Annotated[ComparedNumber | UnsetType, Meta(description="Of the order, by the rates of the run.")] = UNSET
    labor_hours: Annotated[ComparedNumber | UnsetType, Meta(description="By the rates of the run.")] = UNSET


class ComparedLine(Struct, frozen=True, gc=False, kw_only=True):
    """One line of the takeoffs that is not the same in all runs."""

    group: Annotated[TakeoffGroup, Meta(description="The part of the work it belongs to.")]
    item: Annotated[TakeoffItem, Meta(description="What it is a line of.")]
    description: Annotated[str, Meta(description="The item in words.", max_length=300)]
    conduit_type: Annotated[ConduitType | UnsetType, Meta(description="Type of the conduit.")] = UNSET
    size: Annotated[
        Annotated[str, Meta(max_length=40)] | UnsetType, Meta(description="Trade size, conductor size or bar size.")
    ] = UNSET
    angle: Annotated[answers.Angle | UnsetType, Meta(description="Angle of an elbow or a field bend.")] = UNSET
    radius: Annotated[answers.Length | UnsetType, Meta(description="Radius of an elbow or a field bend.")] = UNSET
    measure: Annotated[VolumeMeasure | UnsetType, Meta(description="How a volume of earth is measured.")] = UNSET
    runs: Annotated[list[LineOfRun], Meta(description="Every run in order, the base first.", max_length=MOST_RUNS)]


def differ(value: float, base: float) -> bool:
    """Say whether two figures are not the same."""
    return over(value, base) or under(value, base)


def percent_of(value: float, base: float) -> float | UnsetType:
    """Give by how many percent of the base a figure is more; of nothing there are none."""
    return (value / base - 1) * 100 if base else UNSET


def beside(value: float, base: float) -> ComparedNumber:
    """Tell a figure beside that of the base."""
    if not differ(value, base):
        return ComparedNumber(value)
    return ComparedNumber(value, value - base, percent_of(value, base))


def beside_quantity(quantity: TakeoffQuantity, base: float) -> ComparedQuantity:
    """Tell a quantity beside that of the base, which is in the same unit."""
    value, unit = quantity.value, quantity.unit
    if not differ(value, base):
        return ComparedQuantity(quantity)
    return ComparedQuantity(quantity, TakeoffQuantity(value - base, unit), percent_of(value, base))


def compared_lines(takeoffs: Sequence[Takeoff], names: Sequence[str]) -> tuple[list[ComparedLine], int]:
    """Give the lines in which a run differs from the first, in the order of building, and how many are alike."""
    found: dict[tuple[object, ...], list[TakeoffLine | None]] = {}
    for index, takeoff in enumerate(takeoffs):
        for line in takeoff.lines:
            found.setdefault(_key(line), [None] * len(takeoffs))[index] = line
    order = {item: place for place, item in enumerate(TakeoffItem)}
    differing = [lines for lines in found.values() if any(not _alike(lines[0], line) for line in lines[1:])]
    told = [_line(lines, names) for lines in differing]
    return sorted(told, key=lambda line: order[line.item]), len(found) - len(told)


def _key(line: TakeoffLine) -> tuple[object, ...]:
    return (line.item, line.conduit_type, line.size, _near(line.angle), _near(line.radius), line.measure, line.package)


def _near(told: Any) -> Any:
    return told if told is UNSET else float(f"{told.value:.9g}")


def _figures(line: TakeoffLine) -> tuple[float | None, ...]:
    order = None if line.order_quantity is UNSET else line.order_quantity.value
    price = None if line.price is UNSET else line.price
    return line.exact_quantity.value, order, price, None if line.labor_hours is UNSET else line.labor_hours


def _alike(one: TakeoffLine | None, other: TakeoffLine | None) -> bool:
    if one is None or other is None:
        return one is other
    return all(
        mine is theirs if mine is None or theirs is None else not differ(mine, theirs)
        for mine, theirs in zip(_figures(one), _figures(other), strict=True)
    )


def _line(lines: Sequence[TakeoffLine | None], names: Sequence[str]) -> ComparedLine:
    first = next(line for line in lines if line is not None)
    ordered = any(line is not None and line.order_quantity is not UNSET for line in lines)
    rows = [
        LineOfRun(
            name,
            _quantity(line, lines[0], "exact_quantity", first.exact_quantity.unit),
            _quantity(line, lines[0], "order_quantity", first.exact_quantity.unit) if ordered else UNSET,
            _figure(line, lines[0], "price"),
            _figure(line, lines[0], "labor_hours"),
        )
        for name, line in zip(names, lines, strict=True)
    ]
    return ComparedLine(
        group=first.group,
        item=first.item,
        description=first.description,
        conduit_type=first.conduit_type,
        size=first.size,
        angle=first.angle,
        radius=first.radius,
        measure=first.measure,
        runs=rows,
    )


def _quantity(line: TakeoffLine | None, base: TakeoffLine | None, name: str, unit: TakeoffUnit) -> ComparedQuantity:
    value, other = (_value(one, name) for one in (line, base))
    return beside_quantity(TakeoffQuantity(value, unit), other)


def _value(line: TakeoffLine | None, name: str) -> float:
    told = UNSET if line is None else getattr(line, name)
    return 0.0 if told is UNSET else float(told.value)


def _figure(line: TakeoffLine | None, base: TakeoffLine | None, name: str) -> ComparedNumber | UnsetType:
    """Tell price or hours of a line; without a rate in one of both there is nothing to subtract."""
    value, other = (0.0 if one is None else getattr(one, name) for one in (line, base))
    if value is UNSET or (line is None and (base is None or other is UNSET)):
        return UNSET
    return ComparedNumber(value) if other is UNSET else beside(value, other)
