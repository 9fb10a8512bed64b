"""The cables of a circuit as a box takes them: diameter, size, make-up and bending radius."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.kit.backing import PRACTICE, published
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import Default
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.parts.cables import Cable, CableLine
from ductrun.subjects.parts.choices import CableShielding, CableType, ConductorSize
from ductrun.subjects.parts.conductors import row_of
from ductrun.tables import TABLES
from ductrun.units import Length, LengthUnit, Volume

ORDER = list(ConductorSize)
_LARGE_FROM = ORDER.index(ConductorSize.AWG_4)
SPACES = {
    size: Length.parse(row.space_in, "in")
    for row in TABLES["bending_spaces"]
    for size in ORDER[ORDER.index(ConductorSize(row.size_from)) : ORDER.index(ConductorSize(row.size_to)) + 1]
}
ALLOWANCES = {ConductorSize(row.size): Volume.parse(row.volume_in3, "in3").si for row in TABLES["box_allowances"]}
_RADII = published("nfpa70-305-5")
_BY_TYPE = _RADII.of("by the cable type")._replace(standing=Standing.DERIVED)
_STRICTER = _RADII.of("the stricter, for no cable type is given")._replace(standing=Standing.DERIVED)
_SHIELDED = {
    CableType.CONTROL_SHIELDED_600_V,
    CableType.POWER_SHIELDED_5_TO_15_KV,
    CableType.POWER_SHIELDED_25_TO_46_KV,
}
_MULTIPLES: dict[str, list[float]] = {}
for _row in TABLES["cable_bend_radii"]:
    _MULTIPLES.setdefault(_row.key, []).append(_row.multiple)


class BoxCable(NamedTuple):
    """So many of one cable: its diameter [m], the size of its conductors, None where that is not known, and how many
    conductors one cable has. Its make-up and bending radius to the inner side [m] are settled above the threshold
    voltage alone, or where its maker's radius is given.
    """

    cable_count: int
    diameter: float
    size: ConductorSize | None
    conductors: int
    shielding: CableShielding | None
    radius: float | None

    @property
    def large(self) -> bool:
        """Whether its conductors are 4 AWG or larger, or not known to be smaller."""
        return self.size is None or ORDER.index(self.size) >= _LARGE_FROM


def settle_box_cables(lines: Sequence[CableLine], by_cable: bool, sheet: Worksheet) -> list[BoxCable]:
    """Settle the cables of a circuit, on the sheet of the list; `by_cable` is whether they size the box."""
    faults = Gathering()
    settled = []
    for index, line in enumerate(lines):
        with faults:
            settled.append(_settle(line, by_cable, sheet.within(f"{index}/cable")))
    faults.stop()
    return settled


def _settle(line: CableLine, by_cable: bool, sheet: Worksheet) -> BoxCable:
    cable = line.cable
    conductors = 1
    if cable.kind == "measured" or cable.kind == "multiconductor":  # noqa: PLR1714  (each narrows the type)
        diameter, size = cable.diameter.si, None
        if cable.conductor is not None:
            size, conductors = cable.conductor.size, cable.conductor.count
    else:
        row = row_of(cable, sheet)
        sheet.cite(row.source)
        if by_cable:
            _find_building_wire(sheet)
        diameter, size = float(row.diameter_in) * LengthUnit.INCH.scale, cable.size
    radius = None if cable.bending_radius is None else cable.bending_radius.si
    shielding = None
    if by_cable:
        shielding = _shielding(cable, sheet)
        radius = _radius(cable, shielding, diameter, sheet) if radius is None else radius
    return BoxCable(line.count, diameter, size, conductors, shielding, radius)


def _find_building_wire(sheet: Worksheet) -> None:
    """Say that what is listed by its insulation is wire of low voltage, in a box above that."""
    sheet.find(
        Severity.CAUTION,
        "insulation_below_the_voltage",
        "This is building wire, which is not made for the voltage of this box: give the cable by its diameter and "
        "shielding, or keep it behind a barrier if it belongs to another circuit.",
        PRACTICE,
        member="insulation",
    )


def _shielding(cable: Cable, sheet: Worksheet) -> CableShielding:
    if cable.shielding is not None:
        return cable.shielding
    unknown = cable.cable_type is None and cable.kind in ("measured", "multiconductor")
    shielded = unknown or cable.cable_type in _SHIELDED
    made = CableShielding.SHIELDED if shielded else CableShielding.NONSHIELDED
    return sheet.settle("shielding", None, Default(made, _STRICTER if unknown else _BY_TYPE))


def _radius(cable: Cable, shielding: CableShielding, diameter: float, sheet: Worksheet) -> float:
    """Give the least radius of the code [m], a multiple of the diameter of the cable, or of one of its conductors."""
    diameters = [diameter]
    if shielding is CableShielding.INDIVIDUALLY_SHIELDED:
        if cable.shielded_conductor_diameter is None:
            raise UnanswerableError(
                sheet.fault(
                    "shielded_conductor_diameter",
                    "missing",
                    "The bending radius of an individually shielded cable follows from one conductor: give its "
                    "diameter.",
                )
            )
        diameters = [cable.shielded_conductor_diameter.si, diameter]
    return max(multiple * one for multiple, one in zip(_MULTIPLES[shielding], diameters, strict=True))
