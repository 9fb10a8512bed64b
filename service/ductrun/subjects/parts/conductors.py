"""The cables of a request as fill takes them: the area and the diameter of each."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import fill as engineering
from ductrun.engineering.fill import SCALE
from ductrun.kit.backing import published
from ductrun.kit.choices import Severity
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cables import BARE_STRANDING, BareCable, Cable, CableLine, CompactCable, ListedCable
from ductrun.subjects.parts.choices import BareStranding, ConductorSize, Insulation
from ductrun.subjects.parts.conduit import exact_inches, scaled
from ductrun.tables import TABLES
from ductrun.tables.rows import Conductor as ConductorRow
from ductrun.units import Length, LengthUnit


class Measures(NamedTuple):
    """What one cable takes: its `area` [in2] and `diameter` [in], in the whole numbers of fill."""

    area: int
    diameter: int


class Listed(NamedTuple):
    """A row of a conductor table, with its measures."""

    row: ConductorRow
    measures: Measures


_ROWS: dict[tuple[str, str, str], dict[str, Listed]] = {}
for _row in TABLES["conductors"]:
    _listed = Listed(_row, Measures(scaled(_row.area_in2), scaled(_row.diameter_in)))
    for _insulation in _row.insulations:
        _ROWS.setdefault((_row.table, _insulation, _row.stranding), {})[_row.size] = _listed

# Annex C counts a single one of these by the 0.8 rule; for a cable, or one only measured, it is the caller's choice
LISTED_KINDS = ("listed", "compact", "bare")
Wire = ListedCable | CompactCable | BareCable


class PlacedCable(NamedTuple):
    """One cable as fill takes it, and the `sheet` at its place."""

    given: Cable
    measures: Measures
    sheet: Worksheet


class ConductorSet(NamedTuple):
    """Everything in a conduit: the lines as given, the area, diameter and number of each, and the `sheet` at the place
    of the lines.
    """

    given: Sequence[CableLine]
    groups: Sequence[engineering.Group]
    sheet: Worksheet


def _row_of(insulation: Insulation, size: ConductorSize, table: str, stranding: str, sheet: Worksheet) -> Listed:
    sizes = _ROWS.get((table, insulation, stranding), {})
    listed = sizes.get(size)
    if listed is None:
        has = list(sizes)
        text = f"It has {listing(has)}." if has else f"Table {table} does not list it: give the measured diameter."
        raise UnanswerableError(
            sheet.fault(
                "size" if has else "insulation",
                "conductor_not_listed",
                f"Table {table} has no {insulation.value} of {size.value}. {text}",
                has or sorted({insulation for where, insulation, _ in _ROWS if where == table}),
            )
        )
    return listed


def _bare_row(cable: BareCable, sheet: Worksheet) -> Listed:
    made = {name: _ROWS["8", "bare", name].get(cable.size) for name in ("solid", "stranded")}
    listed = {name: row for name, row in made.items() if row is not None}
    stranding = cable.stranding
    if stranding is None and len(listed) > 1:
        stranding = sheet.settle("stranding", None, BARE_STRANDING)
    row = listed.get(stranding) if stranding is not None else next(iter(listed.values()))
    if row is None:
        raise UnanswerableError(
            sheet.fault(
                "stranding",
                "conductor_not_listed",
                f"Table 8 lists bare {cable.size.value} {listing(list(listed))} only.",
                list(listed),
            )
        )
    return row


def _circle(diameter: Length) -> Measures:
    inches = exact_inches(diameter)
    return Measures(engineering.circle_area(inches), inches)


def row_of(cable: Wire, sheet: Worksheet) -> ConductorRow:
    """Give the table row of a conductor by its size."""
    return _listed_as(cable, sheet).row


def _listed_as(cable: Wire, sheet: Worksheet) -> Listed:
    if cable.kind == "listed":
        listed = _row_of(cable.insulation, cable.size, "5", "", sheet)
        if cable.insulation is Insulation.USE_2:
            sheet.find(
                Severity.NOTE,
                "use_2_row",
                "USE-2 has no row of its own in Table 5: the row of RHW-2 without an outer covering was used.",
                published(listed.row.source),
                member="insulation",
            )
    elif cable.kind == "compact":
        listed = _row_of(cable.insulation, cable.size, "5A", "compact", sheet)
    else:
        listed = _bare_row(cable, sheet)
    sheet.cite(listed.row.source)
    return listed


def measures_of(cable: Cable, sheet: Worksheet) -> Measures:
    """Give what one cable takes, by its table or its measure."""
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each comparison narrows the type)
        return _circle(cable.diameter)
    return _listed_as(cable, sheet).measures


def place_cable(cable: Cable, sheet: Worksheet) -> PlacedCable:
    """Give one cable with its measures, on the sheet of its place."""
    return PlacedCable(cable, measures_of(cable, sheet), sheet)


def next_larger(cable: Cable) -> Measures | None:
    """Give the measures of the same cable one size up, None where the table ends or the cable is measured.

    A bare conductor stays as it is made where the larger one is listed so.
    """
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each comparison narrows the type)
        return None
    if cable.kind == "bare":
        rows = _ROWS["8", "bare", "stranded"]
        if cable.stranding is BareStranding.SOLID:
            rows = rows | _ROWS["8", "bare", "solid"]
    elif cable.kind == "listed":
        rows = _ROWS["5", cable.insulation, ""]
    else:
        rows = _ROWS["5A", cable.insulation, "compact"]
    sizes = list(rows)
    after = sizes.index(cable.size) + 1
    if after == len(sizes):
        return None
    return rows[sizes[after]].measures


def conductor_set(lines: Sequence[CableLine], sheet: Worksheet) -> ConductorSet:
    """Give a set of cables with the measures of every line, on the sheet of the list; all faults at once."""
    groups = []
    faults = Gathering()
    for index, line in enumerate(lines):
        with faults:
            groups.append(engineering.Group(*measures_of(line.cable, sheet.within(f"{index}/cable")), line.count))
    faults.stop()
    return ConductorSet(lines, groups, sheet)


def wider_than(bore: engineering.Bore, conductors: ConductorSet) -> UnanswerableError:
    """Give the refusal of cables that cannot be in the conduit at all: wider than the bore. What is too much is an
    answer.
    """
    return UnanswerableError(
        *(
            conductors.sheet.fault(
                f"{index}/cable/{'size' if line.cable.kind in LISTED_KINDS else 'diameter/value'}",
                "wider_than_bore",
                f"A diameter of {group.diameter / SCALE:.12g} in does not pass the inside diameter of "
                f"{bore.diameter / SCALE:.12g} in.",
                maximum=Length(bore.diameter / SCALE, LengthUnit.INCH),
            )
            for index, (group, line) in enumerate(zip(conductors.groups, conductors.given, strict=True))
            if group.diameter > bore.diameter
        )
    )
