"""The least cover that the tables of the code give for what is buried, and where it is buried."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering.rounding import over
from ductrun.kit.backing import Backing
from ductrun.kit.choices import Severity
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import BurialLocation, VoltageClass, WiringMethod
from ductrun.tables import TABLES
from ductrun.tables.ground_rows import CoverAbove1000V, CoverTo1000V
from ductrun.units import Length

_RACEWAYS = {WiringMethod.RMC_IMC, WiringMethod.NONMETALLIC_RACEWAY}
_TO_1000_V = {row.location: row for row in TABLES["cover_to_1000_v"]}
_ABOVE = {row.voltage: row for row in TABLES["cover_above_1000_v"]}
_METHOD_COLUMNS = {
    WiringMethod.DIRECT_BURIED_CABLE: "direct_buried_cable_in",
    WiringMethod.RMC_IMC: "rmc_imc_in",
    WiringMethod.NONMETALLIC_RACEWAY: "nonmetallic_raceway_in",
    WiringMethod.GFCI_RESIDENTIAL: "gfci_residential_in",
    WiringMethod.LOW_VOLTAGE_CONTROL: "low_voltage_control_in",
}
_ABOVE_METHODS = {
    WiringMethod.DIRECT_BURIED_CABLE: "direct_buried_cable_in",
    WiringMethod.RMC_IMC: "rmc_imc_in",
    WiringMethod.NONMETALLIC_RACEWAY: "rtrc_pvc_hdpe_in",
}
_ABOVE_LOCATIONS = {
    BurialLocation.UNDER_BUILDING: "under_building_or_slab_in",
    BurialLocation.UNDER_4_IN_EXTERIOR_SLAB_NO_VEHICLES: "under_building_or_slab_in",
    BurialLocation.AIRPORT_RUNWAY: "airport_runway_in",
    BurialLocation.STREET_ROAD_DRIVEWAY_PARKING_LOT: "vehicular_area_in",
    BurialLocation.DWELLING_DRIVEWAY: "vehicular_area_in",
}
_TOLD_PLACES = {"vehicular_area_in": "Under traffic", "airport_runway_in": "At an airport"}


class Places(NamedTuple):
    """Where what is said of something buried was given, relative to the sheet of the form that says it."""

    method: str = "wiring_method"
    location: str = "location"
    voltage: str = "voltage_class"
    encased: str = "encased"
    listed: str = "listed_for_direct_burial"
    cover: str = "cover"
    concrete: str = "concrete_above"
    around: str = "concrete_around"


_SIDE_BY_SIDE = Places()


class Buried(NamedTuple):
    """What is buried and where; `listed` is whether a raceway may lie in earth without concrete, None if unknown.

    `concrete_above` is what of its envelope lies above the raceway, `concrete_around` the least beside and below it;
    None where that is not known. `to_list` is what to do, in words, where nobody knows whether it is listed.
    """

    method: WiringMethod
    location: BurialLocation
    voltage: VoltageClass
    encased: bool
    listed: bool | None
    places: Places = _SIDE_BY_SIDE
    concrete_above: Length | None = None
    concrete_around: Length | None = None
    to_list: str = "give listed_for_direct_burial, or encase it"


def least_cover(buried: Buried, sheet: Worksheet) -> tuple[Length, Backing]:
    """Give the printed cover and the rule it stands in."""
    if buried.voltage is not VoltageClass.UP_TO_1000_V:
        return _least_above_1000_v(buried, sheet)
    rule = sheet.rule("cover_to_1000_v")
    row = _TO_1000_V[buried.location]
    sheet.cite(row.source)
    _note(row, rule, buried.places.location, sheet)
    return Length.parse(getattr(row, _METHOD_COLUMNS[buried.method]), "in"), rule


def _least_above_1000_v(buried: Buried, sheet: Worksheet) -> tuple[Length, Backing]:
    method, location = buried.method, buried.location
    if method not in _ABOVE_METHODS:
        raise UnanswerableError(
            sheet.fault(
                buried.places.method,
                "not_above_1000_v",
                f"Above 1000 V the table has no column for {method}.",
                [known.value for known in _ABOVE_METHODS],
            )
        )
    rule = sheet.rule("cover_above_1000_v")
    row = _ABOVE[buried.voltage]
    sheet.cite(row.source)
    if method is WiringMethod.NONMETALLIC_RACEWAY:  # of nothing else does the note speak
        _note(row, rule, buried.places.voltage, sheet)
    if location is BurialLocation.TRENCH_BELOW_2_IN_CONCRETE:
        sheet.find(
            Severity.NOTE,
            "concrete_above_is_not_a_row",
            "Above 1000 V the table has no row for a trench below concrete: the general column applies.",
            rule,
            member=buried.places.location,
        )
    column = _ABOVE_LOCATIONS.get(location, _ABOVE_METHODS[method])
    if method is WiringMethod.DIRECT_BURIED_CABLE and column == "under_building_or_slab_in":
        column = _ABOVE_METHODS[method]
    if column in _TOLD_PLACES:
        column = _larger(row, column, _ABOVE_METHODS[method], buried, rule, sheet)
    return Length.parse(getattr(row, column), "in"), rule


def _larger(row: CoverAbove1000V, local: str, general: str, buried: Buried, rule: Backing, sheet: Worksheet) -> str:
    """Give the column of the larger cover: traffic is no reason to lie less deep than elsewhere."""
    less, more = (Length.parse(getattr(row, column), "in") for column in (local, general))
    if not over(more.si, less.si):
        return local
    told = sheet.tell.given(more)
    sheet.find(
        Severity.CAUTION,
        "larger_of_two_covers",
        f"{_TOLD_PLACES[local]} the table gives {text_of(sheet.tell.given(less))}, and for this wiring method at this "
        f"voltage {text_of(told)} elsewhere: the larger is told here. Have the authority having jurisdiction say "
        "which holds.",
        rule,
        limit=told,
        member=buried.places.location,
    )
    return general


def _note(row: CoverTo1000V | CoverAbove1000V, rule: Backing, member: str, sheet: Worksheet) -> None:
    """Tell what the table adds to a row, as printed."""
    if row.note:
        sheet.find(Severity.NOTE, "table_note", f"The table adds, as printed: {row.note}.", rule, member=member)


def refer_to_a_raceway(buried: Buried, rule: Backing, sheet: Worksheet) -> None:
    """Say that a cable under a building belongs in a raceway, so that its cover alone complies with nothing.

    Above 1000 V the column of buildings holds for slabs as well, and for raceways alone.
    """
    if buried.method in _RACEWAYS:
        return
    above = buried.voltage is not VoltageClass.UP_TO_1000_V
    if above and _ABOVE_LOCATIONS.get(buried.location) == "under_building_or_slab_in":
        words = (
            "Under a building or slab the table gives a cover for raceways alone: put the cable in one. The general "
            "column for cable is told here."
        )
    elif not above and buried.location is BurialLocation.UNDER_BUILDING:
        words = (
            "Under a building the table gives this cover for a cable in a raceway, or of a type identified for direct "
            "burial: put the cable in a raceway. Whether it lies in one was not judged."
        )
    else:
        return
    sheet.judge(None)
    sheet.find(Severity.CAUTION, "only_in_a_raceway", words, rule, member=buried.places.method)
