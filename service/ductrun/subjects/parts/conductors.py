"""The conductors and cables of a fill request, and the area each takes."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Annotated, Literal, NamedTuple

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import fill as engineering
from ductrun.kit.backing import published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice
from ductrun.kit.forms import Count, Diameter, Form, Omissible
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cables import BareCable, CompactCable, ListedCable
from ductrun.subjects.parts.choices import BareStranding, ConductorSize, Insulation
from ductrun.subjects.parts.conduit import exact_inches
from ductrun.tables import TABLES
from ductrun.tables.rows import Conductor as ConductorRow
from ductrun.units import Area, AreaUnit, Length, LengthUnit

BARE_STRANDING = choice("fill.bare_stranding", BareStranding)

_ROWS: dict[tuple[str, str, str], dict[str, ConductorRow]] = {}
for _row in TABLES["conductors"]:
    for _insulation in _row.insulations:
        _ROWS.setdefault((_row.table, _insulation, _row.stranding), {})[_row.size] = _row


class OneListedConductor(Form):
    """An insulated conductor by marking and size, from Chapter 9, Table 5."""

    kind: Literal["listed"] = Field(description="Fixed text that says: by insulation and size.")
    insulation: Insulation = Field(
        description="Insulation as marked; an asterisk means without an outer covering.", examples=["THWN-2"]
    )
    size: ConductorSize = Field(description="Conductor size.", examples=["500 kcmil"])


class OneCompactConductor(Form):
    """An insulated conductor of compact stranding by marking and size, from Chapter 9, Table 5A."""

    kind: Literal["compact"] = Field(description="Fixed text that says: compact stranding.")
    insulation: Insulation = Field(description="Insulation as marked.", examples=["XHHW-2"])
    size: ConductorSize = Field(description="Conductor size.", examples=["250 kcmil"])


class OneBareConductor(Form):
    """A bare conductor by size, from Chapter 9, Table 8; the circle around all strands counts."""

    kind: Literal["bare"] = Field(description="Fixed text that says: bare.")
    size: ConductorSize = Field(description="Conductor size.", examples=["3 AWG"])
    stranding: Omissible[BareStranding] = Field(
        default=None, description="Solid or stranded, where Table 8 has both.", examples=["stranded"]
    )


class OneMeasuredConductor(Form):
    """A single conductor by measured diameter over the insulation (Chapter 9, Table 1, Note 5)."""

    kind: Literal["measured"] = Field(description="Fixed text that says: by diameter.")
    diameter: Diameter = Field(description="Outside diameter of one.", examples=[{"value": 0.7, "unit": "in"}])


class OneCable(Form):
    """A multiconductor cable or cord: it counts as one, an elliptical one by its major diameter (Note 9)."""

    kind: Literal["cable"] = Field(description="Fixed text that says: a cable with an overall jacket.")
    major_diameter: Diameter = Field(
        description="Outside diameter, the larger one if elliptical.", examples=[{"value": 0.75, "unit": "in"}]
    )


class ListedConductor(OneListedConductor):
    """Insulated conductors by marking and size, from Chapter 9, Table 5."""

    count: Count = Field(description="How many, grounding and bonding conductors included.", examples=[3])


class CompactConductor(OneCompactConductor):
    """Insulated conductors of compact stranding by marking and size, from Chapter 9, Table 5A."""

    count: Count = Field(description="How many, grounding and bonding conductors included.", examples=[4])


class BareConductor(OneBareConductor):
    """Bare conductors by size, from Chapter 9, Table 8; the circle around all strands counts."""

    count: Count = Field(description="How many, grounding and bonding conductors included.", examples=[1])


class MeasuredConductor(OneMeasuredConductor):
    """Single conductors by measured diameter over the insulation (Chapter 9, Table 1, Note 5)."""

    count: Count = Field(description="How many, grounding and bonding conductors included.", examples=[3])


class Cable(OneCable):
    """Multiconductor cables or cords; each counts as one, an elliptical one by its major diameter (Note 9)."""

    count: Count = Field(description="How many.", examples=[1])


Conductor = TypeAliasType(
    "Conductor",
    Annotated[
        ListedConductor | CompactConductor | BareConductor | MeasuredConductor | Cable,
        Field(discriminator="kind"),
    ],
)
OneConductor = TypeAliasType(
    "OneConductor",
    Annotated[
        OneListedConductor | OneCompactConductor | OneBareConductor | OneMeasuredConductor | OneCable,
        Field(discriminator="kind"),
    ],
)
Conductors = Annotated[list[Conductor], Field(min_length=1, max_length=200)]
# Annex C counts a single one of these by the 0.8 rule; for a cable, or one only measured, it is the caller's choice
LISTED_KINDS = ("listed", "compact", "bare")
_SIZE_MEMBER = {
    "listed": "size",
    "compact": "size",
    "bare": "size",
    "measured": "diameter",
    "cable": "major_diameter",
}
Wire = OneListedConductor | OneCompactConductor | OneBareConductor | ListedCable | CompactCable | BareCable


class ConductorSet(NamedTuple):
    """Everything in a conduit: the lines as given, and the area, diameter and number of each."""

    given: Sequence[Conductor]
    groups: Sequence[engineering.Group]


def _row_of(insulation: Insulation, size: ConductorSize, table: str, stranding: str, sheet: Worksheet) -> ConductorRow:
    sizes = _ROWS.get((table, insulation.value, stranding), {})
    row = sizes.get(size.value)
    if row is None:
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
    return row


def _bare_row(conductor: OneBareConductor | BareCable, sheet: Worksheet) -> ConductorRow:
    made = {name: _ROWS["8", "bare", name].get(conductor.size.value) for name in ("solid", "stranded")}
    listed = {name: row for name, row in made.items() if row is not None}
    stranding = conductor.stranding
    if stranding is None and len(listed) > 1:
        stranding = sheet.settle("stranding", None, BARE_STRANDING)
    row = listed.get(stranding.value) if stranding is not None else next(iter(listed.values()))
    if row is None:
        raise UnanswerableError(
            sheet.fault(
                "stranding",
                "conductor_not_listed",
                f"Table 8 lists bare {conductor.size.value} {listing(list(listed))} only.",
                list(listed),
            )
        )
    return row


def _circle(diameter: Length) -> tuple[Decimal, Decimal]:
    inches = exact_inches(diameter)
    return engineering.circle_area(inches), inches


def row_of(conductor: Wire, sheet: Worksheet) -> ConductorRow:
    """Give the table row of a conductor by its size."""
    if conductor.kind == "listed":
        row = _row_of(conductor.insulation, conductor.size, "5", "", sheet)
        if conductor.insulation is Insulation.USE_2:
            sheet.find(
                Severity.NOTE,
                "use_2_row",
                "USE-2 has no row of its own in Table 5: the row of RHW-2 without an outer covering was used.",
                published(row.source),
                member="insulation",
            )
    elif conductor.kind == "compact":
        row = _row_of(conductor.insulation, conductor.size, "5A", "compact", sheet)
    else:
        row = _bare_row(conductor, sheet)
    sheet.cite(row.source)
    return row


def measures_of(conductor: OneConductor, sheet: Worksheet) -> tuple[Decimal, Decimal]:
    """Give the area [in2] and the diameter [in] of one conductor, from its table or its measure."""
    if conductor.kind == "measured":
        return _circle(conductor.diameter)
    if conductor.kind == "cable":
        return _circle(conductor.major_diameter)
    row = row_of(conductor, sheet)
    return row.area_in2, row.diameter_in


def next_larger(conductor: Conductor) -> Conductor | None:
    """Give the same line of conductors one size up, or None where the table ends or the conductor is measured."""
    if conductor.kind == "measured" or conductor.kind == "cable":  # noqa: PLR1714  (each comparison narrows the type)
        return None
    if conductor.kind == "bare":
        sizes = list(_ROWS["8", "bare", "stranded"])
    else:
        listed = conductor.kind == "listed"
        sizes = list(_ROWS["5" if listed else "5A", conductor.insulation, "" if listed else "compact"])
    after = sizes.index(conductor.size) + 1
    if after == len(sizes):
        return None
    size, count = ConductorSize(sizes[after]), conductor.count
    if conductor.kind == "bare":
        return BareConductor(kind="bare", size=size, count=count)
    if conductor.kind == "listed":
        return ListedConductor(kind="listed", insulation=conductor.insulation, size=size, count=count)
    return CompactConductor(kind="compact", insulation=conductor.insulation, size=size, count=count)


def conductor_set(conductors: Sequence[Conductor], sheet: Worksheet) -> ConductorSet:
    """Give a set of conductors with the measures of every line; all faults at once."""
    groups = []
    faults = Gathering()
    for index, conductor in enumerate(conductors):
        with faults:
            area, diameter = measures_of(conductor, sheet.within(str(index)))
            groups.append(engineering.Group(area, diameter, conductor.count))
    faults.stop()
    return ConductorSet(conductors, groups)


def check_bore(conductors: ConductorSet, bore: engineering.Bore, sheet: Worksheet) -> None:
    """Refuse conductors that cannot be in the conduit at all: one wider than the bore, or more area than there is."""
    faults = [
        sheet.fault(
            f"{index}/{_SIZE_MEMBER[conductor.kind]}",
            "wider_than_bore",
            f"A diameter of {group.diameter.normalize():f} in does not pass the inside diameter of "
            f"{bore.diameter.normalize():f} in.",
            maximum=Length(float(bore.diameter), LengthUnit.INCH),
        )
        for index, (group, conductor) in enumerate(zip(conductors.groups, conductors.given, strict=True))
        if group.diameter >= bore.diameter
    ]
    total = sum(group.area * group.count for group in conductors.groups)
    if not faults and total > bore.area:
        faults = [
            sheet.fault(
                "",
                "more_than_the_bore",
                f"The conductors take {float(total):.4g} in2; the conduit has {float(bore.area):.4g} in2 inside.",
                maximum=Area(float(bore.area), AreaUnit.IN2),
            )
        ]
    if faults:
        raise UnanswerableError(*faults)
