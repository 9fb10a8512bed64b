"""Solvent cement: how much the joints of ducts take, and how long they set."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.rounding import over, round_up, under
from ductrun.kit.backing import PRACTICE, WORKED_OUT, Backing, backing_of, published
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import Default, quantity
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import SIZES
from ductrun.tables import TABLES, TRADE_SIZES
from ductrun.tables.ground_rows import CementYield, SetTime
from ductrun.units import Duration, Length, Temperature, TemperatureUnit, Volume, VolumeUnit

STAGGER = quantity("joints.stagger", Length)
_YIELDS: dict[str, CementYield] = {row.trade_size: row for row in TABLES["cement_yields"]}
_SET_TIMES: dict[str, list[tuple[SetTime, Duration]]] = {size: [] for size in _YIELDS}
for _row in TABLES["set_times"]:
    for _size in TRADE_SIZES[TRADE_SIZES.index(_row.trade_size_from) : TRADE_SIZES.index(_row.trade_size_to) + 1]:
        _SET_TIMES[_size].append((_row, Duration.parse(_row.minutes, "min")))
_OUTSIDES = sorted(
    (row.outside_diameter.si, size)
    for size, row in SIZES[ConduitType.PVC_SCHEDULE_40].items()
    if row.outside_diameter is not None and size in _YIELDS
)
QUART = Volume.parse(1, "qt_us")
_MAKING = (
    "Cut square, deburr inside and out, clean, cement the spigot and seat it with a quarter turn. The set time is the "
    "initial set, before the joint is handled or moved, half as long again in damp air; the laying goes on meanwhile. "
    f"Nothing is pulled before it has cured. Stagger joints of neighboring ducts at least {STAGGER.value}."
)
_MAKING_BACKING = backing_of(TABLES["set_times"][0]).beside(STAGGER.backing.of("stagger"))


class Cement(NamedTuple):
    """The cement of all joints and that in whole quarts [m3], and the time a joint sets before it may be handled."""

    volume: float
    order_volume: float
    set_time: Duration


def size_by_diameter(outside: float | None, bore: float) -> str | None:
    """Give the trade size whose sockets take conduit of a diameter [m], the next larger one; by the bore [m] where the
    outside is not known, None beyond those of which a yield is on file.
    """
    for diameter, size in _OUTSIDES:
        if over(diameter, bore) if outside is None else not under(diameter, outside):
            return size
    return None


def find_size(size: str | None, sheet: Worksheet) -> None:
    """Say by which trade size cement is counted where none is given, or that it is not counted."""
    if size is None:
        words = "No cement yield is on file for conduit so large: the cement of its joints is not counted. Count it by "
        sheet.find(Severity.CAUTION, "cement_not_counted", f"{words}its maker's list.", PRACTICE, member="")
        return
    sheet.find(
        Severity.NOTE,
        "cement_by_diameter",
        f"Cement and set time are those of trade size {size}, the first that is as large as this conduit: give its "
        "trade_size where it is another.",
        WORKED_OUT,
        member="",
    )


def cement_of(
    joints: int, size: str, per_joint: Volume | None, temperature: Temperature, sheet: Worksheet, conduit: Worksheet
) -> Cement:
    """Give the cement of so many joints, by the fewer that a quart is published to make, and how long they set.

    `sheet` is that of the practice, `conduit` that of the conduit.
    """
    yields = _yields_of(size, conduit)
    most = Default(Volume(1.0 / yields.plumbing_quart, VolumeUnit.QT_US), _plumbing(yields))
    volume = joints * sheet.settle("cement_per_joint", per_joint, most).si
    set_time = _set_time(size, temperature, sheet)
    _remind(yields, conduit)
    return Cement(volume, round_up(volume / QUART.si) * QUART.si, set_time)


def _plumbing(yields: CementYield) -> Backing:
    backing = published("plastics-technical-manual").noting(
        f"; {yields.plumbing_quart} joints a quart, where the conduit table says {yields.quart}"
    )
    if yields.plumbing_standing == "read":
        return backing
    return backing.of("that of the next larger size")._replace(standing=Standing.DERIVED)


def _yields_of(size: str, sheet: Worksheet) -> CementYield:
    yields = _YIELDS.get(size)
    if yields is None:
        raise UnanswerableError(
            sheet.fault("trade_size", "no_cement_yield", "No cement yield is on file for this size.", list(_YIELDS))
        )
    sheet.cite(yields.source)
    return yields


def _set_time(size: str, temperature: Temperature, sheet: Worksheet) -> Duration:
    """Give the printed set time, at a bound of two bands the longer; refuses a temperature below or above the table."""
    degrees = temperature.in_unit(TemperatureUnit.DEG_F)
    times = [
        (minutes.si, minutes, row.source)
        for row, minutes in _SET_TIMES[size]
        if not under(degrees, row.lowest_degf) and not over(degrees, row.highest_degf)
    ]
    if times:
        _, longest, source = max(times, key=lambda time: time[0])
        sheet.cite(source)
        return longest
    lowest = min(row.lowest_degf for row in TABLES["set_times"])
    highest = max(row.highest_degf for row in TABLES["set_times"])
    raise UnanswerableError(
        sheet.fault(
            "temperature/value",
            "no_set_time",
            f"Set times are on file from {lowest:g} to {highest:g} degF: ask the maker of the cement for others.",
            minimum=Temperature(lowest, TemperatureUnit.DEG_F),
            maximum=Temperature(highest, TemperatureUnit.DEG_F),
        )
    )


def _remind(yields: CementYield, sheet: Worksheet) -> None:
    sheet.find(
        Severity.NOTE,
        "cement_spread",
        f"A quart makes {yields.quart} joints by the conduit table, {yields.plumbing_quart} in the deeper sockets of "
        "pipe, coated twice: the fewer are taken unless cement_per_joint is given. Primer only where it is specified.",
        published("conduit-catalogue-cement"),
        member="",
    )
    sheet.find(Severity.NOTE, "make_the_joint", _MAKING, _MAKING_BACKING, member="")
    sheet.cite("trade-practice")
    sheet.caution(
        "solvent_vapor",
        "Solvent cement gives off flammable, harmful vapor: ventilate the trench, keep flames away, wear gloves and "
        "eye protection.",
        PRACTICE,
    )
