"""What must hold of the tables before anything is computed from them.

Each check compares printed figures with each other within the digits they were printed to: a slip of one digit in a
diameter, an area or a metric column is caught at start-up with the file and the row.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import fields
from decimal import Decimal
from itertools import pairwise
from typing import Any

from ductrun.tables.feeder_rows import ConductorImpedance, ConductorResistance, TableAmpacity
from ductrun.tables.rows import STANDINGS, Conductor, Conduit
from ductrun.units import UNIT_CODES

# a printed oddity of the code itself: kept as printed, and the reason why the check lets it pass
ODDITIES = {
    ("imc", "4"): "the code prints 105.4 mm beside 4.166 in, which is 105.8 mm",
    (
        "8",
        "12 AWG",
    ): "the code prints 0.006 in2 for a stranded conductor of 0.092 in, whose circle is 0.0066 in2",
}

TRADE_SIZES = ("3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6")
CONDUCTOR_SIZES = (
    *(f"{gauge} AWG" for gauge in (18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, "1/0", "2/0", "3/0", "4/0")),
    *(f"{kcmil} kcmil" for kcmil in (250, 300, 350, 400, 500, 600, 700, 750, 800, 900)),
    *(f"{kcmil} kcmil" for kcmil in (1000, 1250, 1500, 1750, 2000)),
)
_EXTRA_UNITS = {"lbf/cmil", "N/mm2", "kgf/mm2", "gal_us/(ft.in)", "ohm.cmil/ft", "ohm.mm2/km", ""}


class CorruptTableError(Exception):
    """A table that must not be computed from; the message names the file and the row."""

    def __init__(self, file: str, line: int, fault: str) -> None:
        """Say which file, which line of it (the heading is line 1) and what is wrong."""
        super().__init__(f"corrupt table {file}, line {line}: {fault}")


def _half_digit(number: Decimal) -> float:
    """Half a unit of the last printed digit."""
    return 0.5 * 10.0 ** int(number.as_tuple().exponent)


def _circle_fault(diameter: Decimal, area: Decimal, share: float = 1.0) -> str | None:
    exact = share * math.pi / 4 * float(diameter) ** 2
    slack = share * math.pi / 2 * float(diameter) * _half_digit(diameter) + _half_digit(area) + 1e-9
    if abs(exact - float(area)) > slack:
        return f"area {area} does not belong to diameter {diameter} (a circle gives {exact:.4f})"
    return None


def _metric_fault(inch: Decimal, metric: Decimal, factor: float = 25.4) -> str | None:
    slack = factor * _half_digit(inch) + _half_digit(metric) + 1e-9
    if abs(float(inch) * factor - float(metric)) > slack:
        return f"the metric column {metric} does not belong to the inch column {inch} ({float(inch) * factor:.4f})"
    return None


def conduit_faults(row: Conduit) -> Iterator[str]:
    """Faults within one conduit row."""
    if row.trade_size not in TRADE_SIZES:
        yield f"unknown trade size {row.trade_size!r}"
    bore, outside, wall = row.inside_diameter_in, row.outside_diameter_in, row.minimum_wall_in
    if bore is None and outside is None:
        yield "neither an inside nor an outside diameter"
    if bore is not None:
        columns = {
            1.0: row.area_in2,
            0.6: row.area_60_in2,
            0.53: row.area_53_in2,
            0.31: row.area_31_in2,
            0.4: row.area_40_in2,
        }
        for share, area in columns.items():
            yield from _present(None if area is None else _circle_fault(bore, area, share), area)
        metric, metric_area = row.inside_diameter_mm, row.area_mm2
        if metric is None or metric_area is None:
            yield "an inside diameter without its metric column"
        elif (row.type, row.trade_size) not in ODDITIES:
            yield from filter(None, (_metric_fault(bore, metric), _circle_fault(metric, metric_area)))
        if outside is not None and bore >= outside:
            yield f"inside diameter {bore} in is not below the outside diameter {outside} in"
    if outside is not None and row.outside_diameter_mm is not None:
        yield from filter(None, (_metric_fault(outside, row.outside_diameter_mm),))
    if wall is not None and (outside is None or not 0 < wall < outside / 4):
        yield f"minimum wall {wall} in is out of range"
    elif wall is not None and row.minimum_wall_mm is not None:
        yield from filter(None, (_metric_fault(wall, row.minimum_wall_mm),))


def _present(fault: str | None, area: Decimal | None) -> Iterator[str]:
    if area is None:
        yield "an inside diameter without its areas"
    elif fault:
        yield fault


def conductor_faults(row: Conductor) -> Iterator[str]:
    """Faults within one conductor row."""
    if row.size not in CONDUCTOR_SIZES:
        yield f"unknown conductor size {row.size!r}"
    yield from filter(None, (_metric_fault(row.diameter_in, row.diameter_mm),))
    if (row.table, row.size) not in ODDITIES:
        yield from filter(None, (_circle_fault(row.diameter_in, row.area_in2),))
    if row.table == "8":
        yield from filter(None, (_circle_fault(row.diameter_mm, row.area_mm2),))
    else:  # Tables 5 and 5A convert the printed inch area; they do not compute it from the metric diameter
        yield from filter(None, (_metric_fault(row.area_in2, row.area_mm2, 645.16),))
    if row.table == "8" and row.circular_mils is None:
        yield "a bare conductor without its circular mils"


def resistance_faults(row: ConductorResistance | ConductorImpedance) -> Iterator[str]:
    """Faults between the column in feet and the one in kilometres of one row of Table 8 or 9."""
    if row.size not in CONDUCTOR_SIZES:
        yield f"unknown conductor size {row.size!r}"
    for field in fields(row):
        name, _, kilofeet = field.name.partition("_ohm_per_")
        if kilofeet != "kft":
            continue
        feet, metric = getattr(row, field.name), getattr(row, f"{name}_ohm_per_km")
        if feet is not None and metric is not None and (fault := _resistance_fault(feet, metric)):
            yield f"{name}: {fault}"


def _resistance_fault(feet: Decimal, metric: Decimal) -> str | None:
    # the two columns of Table 8 were rounded apart: they part by up to a percent in a dozen cells
    exact = float(feet) / 0.3048
    slack = _half_digit(feet) / 0.3048 + _half_digit(metric) + 0.01 * exact
    if abs(exact - float(metric)) > slack:
        return f"{metric} ohm/km does not belong to {feet} ohm/1000ft ({exact:.5g})"
    return None


def ampacity_faults(row: TableAmpacity) -> Iterator[str]:
    """Faults within one row of table ampacities: a conductor that may be hotter carries more, one of copper too."""
    for metal in ("copper", "aluminum"):
        rising = [one for at in (60, 75, 90) if (one := getattr(row, f"{metal}_{at}_a")) is not None]
        if sorted(set(rising)) != rising:
            yield f"the ampacities of {metal} must rise with the temperature"
    if row.aluminum_75_a is not None and row.copper_75_a is not None and row.aluminum_75_a >= row.copper_75_a:
        yield "aluminum must carry less than copper"


def _growth_faults(keyed: Iterable[tuple[int, Any, Any, float | None]], what: str) -> Iterator[tuple[int, str]]:
    """Within one group of rows (line, group, size rank, measure) both the size and the measure must rise."""
    for (_, group, rank, measure), (line, group_after, rank_after, measure_after) in pairwise(keyed):
        if group != group_after:
            continue
        if rank_after <= rank:
            yield line, "sizes must rise down the table, each once"
        if measure is not None and measure_after is not None and measure_after <= measure:
            yield line, f"{what} {measure_after} must be above {measure}, the row before"


def _number_faults(row: Any) -> Iterator[str]:
    for field in fields(row):
        value = getattr(row, field.name)
        if isinstance(value, (float, int, Decimal)) and not (math.isfinite(value) and 0 <= value < 1e8):
            yield f"{field.name} is out of range: {value}"
    low, high = getattr(row, "low", None), getattr(row, "high", None)
    if low is not None and high is not None and low > high:
        yield f"low {low} is above high {high}"
    unit = getattr(row, "unit", "")
    if unit not in _EXTRA_UNITS and not any(unit in codes.__members__.values() for codes in UNIT_CODES.values()):
        yield f"unknown unit {unit!r}"


def _rank(order: tuple[str, ...], size: str) -> int:
    return order.index(size) if size in order else -1


def check(files: dict[str, tuple[Any, ...]]) -> None:
    """Check every file against itself and against the sources; raises CorruptTableError at the first fault."""
    known = {source.id for source in files["sources"]}
    for name, rows in files.items():
        file = f"{name}.csv"
        if not rows:
            raise CorruptTableError(file, 1, "there are no rows")
        for line, row in enumerate(rows, start=2):
            for fault in _row_faults(name, row, known):
                raise CorruptTableError(file, line, fault)
    conduits = [
        (
            line,
            row.type,
            _rank(TRADE_SIZES, row.trade_size),
            row.inside_diameter_in or row.outside_diameter_in,
        )
        for line, row in enumerate(files["conduits"], start=2)
    ]
    conductors = [
        (line, (r.table, r.insulations, r.stranding), _rank(CONDUCTOR_SIZES, r.size), r.diameter_in)
        for line, r in enumerate(files["conductors"], start=2)
    ]
    for name, keyed in (("conduits", conduits), ("conductors", conductors)):
        for line, fault in _growth_faults(keyed, "diameter"):
            raise CorruptTableError(f"{name}.csv", line, fault)


def _row_faults(name: str, row: Any, known: set[str]) -> Iterator[str]:
    if name == "sources":
        return
    yield from _number_faults(row)
    cited = [(row.source, row.standing)]
    if isinstance(row, Conduit):
        cited = [(row.source, row.standing)] if row.inside_diameter_in is not None else []
        cited += [(row.wall_source, row.wall_standing)] if row.outside_diameter_in is not None else []
        yield from conduit_faults(row)
    if isinstance(row, Conductor):
        yield from conductor_faults(row)
    if isinstance(row, (ConductorResistance, ConductorImpedance)):
        yield from resistance_faults(row)
    if isinstance(row, TableAmpacity):
        yield from ampacity_faults(row)
    for source, standing in cited:
        if source not in known:
            yield f"the source {source!r} is not in sources.csv"
        if standing not in STANDINGS:
            yield f"the standing {standing!r} is not one of {sorted(STANDINGS)}"
