"""Elbows and sweeps of a duct: the radius they are sold in, and the length they take of the run."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, NamedTuple

from pydantic import Field

from ductrun.engineering import joints as engineering
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import backing_of
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import Default, by_rule, quantity
from ductrun.kit.forms import BendAngle, BendRadius, Clearance, Form, Omissible
from ductrun.kit.wording import listing
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit
from ductrun.tables import TABLES
from ductrun.tables.rows import Elbow as ElbowRow
from ductrun.units import Length

TANGENT = quantity("joints.tangent", Length)
_STANDARD: dict[str, Default[Length]] = {}
_SOLD: dict[str, list[tuple[Length, ElbowRow]]] = {}
for _row in TABLES["elbows"]:
    _radius = Length.parse(_row.radius_in, "in")
    _SOLD.setdefault(_row.trade_size, []).append((_radius, _row))
    if _row.item == "standard_radius_elbow":
        _STANDARD[_row.trade_size] = Default(_radius, backing_of(_row))
_SWEEP = "special_radius_sweep"
_METAL = frozenset({ConduitType.RMC, ConduitType.IMC, ConduitType.EMT})
_OF_METAL: dict[str, Default[Length]] = {}
for _bend in TABLES["conduit_bend_radii"]:
    _backing = backing_of(_bend).of("factory elbows of metal by the one-shot column")
    _OF_METAL[_bend.trade_size] = Default(
        Length.parse(_bend.one_shot_in, "in"), _backing._replace(standing=Standing.DERIVED)
    )
_SOLD_RADII = {size: {radius.si for radius, _ in sold} for size, sold in _SOLD.items()}


class DuctElbow(Form):
    """Elbows or sweeps of one kind in each duct."""

    radius: Omissible[BendRadius] = Field(
        default=None,
        description="Radius to the center line; of PVC and metal that of the standard elbow of its size, if left out.",
        examples=[{"value": 36, "unit": "in"}],
        json_schema_extra=by_rule("of PVC and metal the standard elbow of its size"),
    )
    angle: BendAngle = Field(description="Angle.", examples=[{"value": 90, "unit": "deg"}])
    tangent: Omissible[Clearance] = Field(
        default=None,
        description="Straight part at either end.",
        examples=[{"value": 6, "unit": "in"}],
        json_schema_extra=TANGENT.stated,
    )
    count: Annotated[int, Field(ge=1, le=100)] = Field(description="How many in each duct.", examples=[2])


class Elbows(NamedTuple):
    """How many elbows and sweeps a duct has, their developed length together [m], and the `sheet` at their place."""

    elbow_count: int
    length: float
    sheet: Worksheet


def sold_radii(kind: str | None, size: str | None) -> list[Length]:
    """Give the radii in which elbows and sweeps of a trade size are on file, the tightest first: of PVC all, of metal
    the sweeps; none of what else is made to order.
    """
    if kind is None or size is None:
        return []
    rows = [] if not kind.startswith("pvc_") and kind not in _METAL else _SOLD.get(size, [])
    fitting = [radius for radius, row in rows if kind not in _METAL or row.item == _SWEEP]
    return sorted(fitting, key=lambda radius: radius.si)


def elbows_of(given: Sequence[DuctElbow], conduit: ListedConduit, sheet: Worksheet) -> Elbows:
    """Give the elbows of one duct, on the sheet of their list."""
    count, length, arcs_alone = 0, 0.0, False
    for index, elbow in enumerate(given):
        at = sheet.within(str(index))
        radius = _radius_of(elbow, conduit, at)
        tangent = at.settle("tangent", elbow.tangent, TANGENT).si
        count += elbow.count
        arcs_alone = arcs_alone or not tangent
        length += elbow.count * engineering.developed_length(radius, elbow.angle.si, tangent)
    if arcs_alone:
        _note_tangents(sheet)
    return Elbows(count, length, sheet)


def _note_tangents(sheet: Worksheet) -> None:
    sheet.find(
        Severity.NOTE,
        "elbows_without_tangents",
        "With a tangent of 0 the length of the elbows is that of their arcs alone, and the sticks are rather too many "
        "than too few: take the length of their straight ends from the maker.",
        TANGENT.backing,
        member="",
    )


def _radius_of(elbow: DuctElbow, conduit: ListedConduit, sheet: Worksheet) -> float:
    """Give the radius of an elbow [m], and note one that is not sold."""
    radius = elbow.radius
    if radius is not None and conduit.type.startswith("pvc_"):
        sold = _SOLD_RADII.get(conduit.trade_size)
        if sold is not None and radius.si not in sold:
            _note_radius(radius, conduit, sheet)
    return standard_radius(radius, conduit, sheet, "radius")


def standard_radius(
    given: Length | None, conduit: ListedConduit | MeasuredConduit, sheet: Worksheet, member: str
) -> float:
    """Give the radius of an elbow [m]: the one given, or that of the standard elbow of PVC or metal."""
    if given is not None:
        return given.si
    kind, size = conduit.type, conduit.trade_size
    standard = None
    if kind is not None and size is not None:
        standard = _OF_METAL.get(size) if kind in _METAL else _STANDARD.get(size) if kind.startswith("pvc_") else None
    if standard is None:
        what = "this conduit" if kind is None else f"{kind} of this size"
        raise UnanswerableError(
            sheet.fault(member, "missing", f"No standard elbow of {what} is on file: give the radius.")
        )
    return sheet.settle(member, None, standard).si


def _note_radius(radius: Length, conduit: ListedConduit, sheet: Worksheet) -> None:
    sold = _SOLD[conduit.trade_size]
    if any(not over(radius.si, one.si) and not under(radius.si, one.si) for one, _ in sold):
        return
    sheet.cite(*(row.source for _, row in sold))
    sheet.find(
        Severity.NOTE,
        "elbow_radius_not_on_file",
        f"Elbows and sweeps of trade size {conduit.trade_size} are on file with a radius of "
        f"{listing([f'{one.value:g}' for one, _ in sold])} in; {radius} is made to order or bent in the field.",
        backing_of(sold[-1][1]),
        sheet.tell.given(radius),
        member="radius",
    )
