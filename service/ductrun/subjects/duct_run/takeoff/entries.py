"""What one part of a run takes of an item, in what unit that is counted, and what is ordered of it."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum
from typing import NamedTuple

from msgspec import Struct

from ductrun.engineering.rounding import round_up
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of, without_noise
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.subjects.parts.takeoff import TakeoffItem, TakeoffUnit, VolumeMeasure
from ductrun.units import AreaUnit, LengthUnit, VolumeUnit


class Kind(Enum):
    """What an item is counted by."""

    COUNT = "count"
    LENGTH = "length"
    AREA = "area"
    VOLUME = "volume"
    LIQUID = "liquid"
    CEMENT = "cement"


_KINDS = {
    **dict.fromkeys(TakeoffItem, Kind.COUNT),
    **dict.fromkeys(
        (
            TakeoffItem.PAVEMENT_SAWCUT,
            TakeoffItem.BORE,
            TakeoffItem.CONDUIT,
            TakeoffItem.REINFORCING_BAR,
            TakeoffItem.TIE_BAR,
            TakeoffItem.BANK_GROUND,
            TakeoffItem.WARNING_TAPE,
            TakeoffItem.PULL_CORD,
            TakeoffItem.CABLE,
        ),
        Kind.LENGTH,
    ),
    **dict.fromkeys(
        (
            TakeoffItem.PAVEMENT_REMOVAL,
            TakeoffItem.SHORING,
            TakeoffItem.FORM,
            TakeoffItem.PAVEMENT_RESTORATION,
        ),
        Kind.AREA,
    ),
    **dict.fromkeys(
        (
            TakeoffItem.EXCAVATION,
            TakeoffItem.CONCRETE,
            TakeoffItem.BEDDING,
            TakeoffItem.SELECT_FILL,
            TakeoffItem.IMPORT,
            TakeoffItem.NATIVE_BACKFILL,
            TakeoffItem.SPOIL,
        ),
        Kind.VOLUME,
    ),
    TakeoffItem.LUBRICANT: Kind.LIQUID,
    TakeoffItem.SOLVENT_CEMENT: Kind.CEMENT,
    TakeoffItem.PRIMER: Kind.CEMENT,
}
# the units of a kind with what one is in SI, the US one first and the metric one last
UNITS: dict[Kind, dict[TakeoffUnit, float]] = {
    Kind.COUNT: {TakeoffUnit.EACH: 1.0},
    Kind.LENGTH: {TakeoffUnit.FT: LengthUnit.FT.scale, TakeoffUnit.M: 1.0},
    Kind.AREA: {TakeoffUnit.FT2: AreaUnit.FT2.scale, TakeoffUnit.M2: 1.0},
    Kind.VOLUME: {TakeoffUnit.YD3: VolumeUnit.YD3.scale, TakeoffUnit.M3: 1.0},
    Kind.LIQUID: {TakeoffUnit.GAL_US: VolumeUnit.GAL_US.scale, TakeoffUnit.L: VolumeUnit.L.scale},
    Kind.CEMENT: {TakeoffUnit.QT_US: VolumeUnit.QT_US.scale, TakeoffUnit.L: VolumeUnit.L.scale},
}
_US, _METRIC = ({kind: list(units.items())[at] for kind, units in UNITS.items()} for at in (0, -1))


class SizeOfLine(NamedTuple):
    """Conduit type and trade size of a line, as far as they are known."""

    conduit_type: ConduitType | None
    size: str | None


def sized(conduit: ListedConduit | MeasuredConduit, tell: Telling) -> SizeOfLine:
    """Give type and size of a conduit, of a measured one without trade size its inside diameter, said so."""
    size = None if conduit.trade_size is None else str(conduit.trade_size)
    if size is None and conduit.kind == "measured":
        size = f"{text_of(tell.given(conduit.inside_diameter))} inside"
    return SizeOfLine(conduit.type, size)


def ducts_in_words(count: int) -> str:
    """Say how many ducts there are."""
    return "1 duct" if count == 1 else f"{count} ducts"


def kind_of(item: TakeoffItem) -> Kind:
    """Say what an item is counted by."""
    return _KINDS[item]


def unit_of(item: TakeoffItem, *, metric: bool) -> tuple[TakeoffUnit, float]:
    """Give the unit in which an item is told, and what one is in SI."""
    return (_METRIC if metric else _US)[_KINDS[item]]


class Entry(Struct, frozen=True, gc=False):
    """What one part of a run takes of an item, in SI; `pointer` is within the result of the answer.

    Alike entries make one line, conduit of alike sticks. An `order` [SI] is that of this part alone, already rounded;
    without one the sum is rounded once, with its waste, if the item is `ordered`. Conduit comes in sticks [m],
    other things in packages of a size [SI].
    """

    item: TakeoffItem
    quantity: float
    stretch: int
    pointer: str
    basis: str
    conduit_type: ConduitType | None = None
    size: str | None = None
    angle: float | None = None
    radius: float | None = None
    measure: VolumeMeasure | None = None
    waste: float | None = None
    order: float | None = None
    package: str | None = None
    package_count: int | None = None
    package_size: float | None = None
    stick: float | None = None
    stick_count: int = 0
    ordered: bool = False


def order_of(group: Sequence[Entry], scale: float) -> tuple[float | None, int | None]:
    """Give what is ordered, in a unit of a `scale` in SI, and the packages; None of what is not ordered."""
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
    if first.package_size is not None:
        packages = round_up(wasted / first.package_size)
        return without_noise(packages * first.package_size / scale), packages
    whole = round_up(wasted / scale)
    return float(whole), whole if first.package is not None else None
